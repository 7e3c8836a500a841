/* Humidity at one pressure and temperature. Internal to the moist_air room. */
#ifndef VTX_MOIST_PLACE_H
#define VTX_MOIST_PLACE_H

#include "moist_ideal.h"
#include "moist_real.h"

/* Where the air is, and what depends on its temperature alone (REAL). */
struct moist_place {
    int32_t model;
    double pressure;
    struct real_temperature at;
    double over_liquid, over_ice; /* what reference_fraction has found, 0 before */
};

/* Filled in place: an ideal mixture needs no virials, not even copied. */
static inline void put_moist_place(struct moist_place *place, int32_t model, double pressure, double temperature)
{
    place->model = model;
    place->pressure = pressure;
    place->over_liquid = place->over_ice = 0;
    place->at.temperature = temperature;
    if (model == VTX_AIR_REAL)
        place->at = real_temperature(temperature);
}

/* The same for measures of humidity other than the wet bulb, which alone asks for enthalpies. */
static inline void put_measured_place(struct moist_place *place, int32_t model, double pressure, double temperature, int enthalpies)
{
    place->model = model;
    place->pressure = pressure;
    place->over_liquid = place->over_ice = 0;
    place->at.temperature = temperature;
    if (model == VTX_AIR_REAL)
        place->at = enthalpies ? real_temperature(temperature) : plain_temperature(temperature);
}

/* What relative humidity refers to: the mole fraction at saturation over a phase. Where air holds any amount of vapour the
 * enhancement factor is held at 1 and it is saturation pressure over pressure, above 1. */
double reference_fraction(struct moist_place *place, int32_t phase);

/* A mixture whose vapour is x and that carries nothing else. */
void vapour_mixture(struct moist_place *place, double x, struct moist_mixture *out);

/* The gas that a humidity measure describes: mole fraction of its vapour, and whether more water than that was given, which then is
 * condensed over the stable phase. OK, BAD_ARGUMENT, OUT_OF_RANGE */
vtx_status vapour_of_humidity(struct moist_place *place, int32_t property, double value, double *x, int *condenses);

/* Wet bulb of air that holds no condensate; NaN when none is found. Sets VTX_ADVISORY_TWO_WET_BULBS in advisories. */
double wet_bulb_of_vapour(struct moist_place *place, double x, int32_t *advisories);

/* Humidity ratio of air that has a wet bulb; below zero when the air would have to be drier than dry, above most (the ratio at
 * saturation over liquid) when it would have to be wetter than wet. */
double humidity_ratio_of_wet_bulb(struct moist_place *place, double wet_bulb, double most);

#endif
