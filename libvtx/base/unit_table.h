/* What the units are worth, and the search among them. Internal to units.c and quantity.c. */
#ifndef VTX_UNIT_TABLE_H
#define VTX_UNIT_TABLE_H

#include <vtx/units.h>

#include "numeric.h"

/* si = (value + offset) * factor, and the ambient pressure on top for gauge units. */
struct unit_scale {
    double factor, offset;
    int gauge;
};

/* The unit named by the first `length` bytes of text; VTX_UNIT_FAULT_NONE or what is wrong with it. */
int32_t find_unit(const char *text, size_t length, int32_t dimension, struct unit_scale *scale);

int is_dimension(int32_t dimension);

/* Both directions for a unit already found; ambient_pressure is used by gauge units only. */
int32_t scale_to_si(const struct unit_scale *scale, int32_t dimension, double ambient_pressure, double value, double *si);
int32_t scale_from_si(const struct unit_scale *scale, int32_t dimension, double ambient_pressure, double si, double *value);

/* What a barometer can show: -700 m to 15 km of altitude, with room for mines and chambers. */
static inline vtx_status check_ambient_pressure(double pressure) { return check_positive(pressure, 10000, 200000); }

#endif
