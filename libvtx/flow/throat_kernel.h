/* The throat of a nozzle that feeds from rest: its static state, and whether the water of the air freezes there. Internal. */
#ifndef VTX_THROAT_KERNEL_H
#define VTX_THROAT_KERNEL_H

#include "../media/moist_kernel.h"
#include "isentropic_kernel.h"

struct throat {
    double pressure, temperature; /* static */
};

/* Sonic, or expanded to the pressure behind; as dry air of ratio 1.4. NACA 1135, equations 43 and 44. */
static inline struct throat throat_of(double inlet_pressure, double inlet_temperature, double pressure_behind)
{
    struct throat t;
    t.pressure = larger(critical_pressure_ratio(dry_air_gamma) * inlet_pressure, pressure_behind);
    t.temperature = isentropic_temperature(dry_air_gamma, inlet_pressure, inlet_temperature, t.pressure);
    return t;
}

/* vapour_fraction: of all the water. Ice in air never wants less vapour than pure ice, nor three times as much (1.74 at 5 MPa and 188 K):
 * what lies outside needs no enhancement factor. */
static inline int throat_freezes(int32_t model, const struct throat *t, double vapour_fraction)
{
    const double temperature = larger(t->temperature, moist_temperature_min(model, t->pressure));
    const double partial = vapour_fraction * t->pressure, over_ice = ice_sublimation_pressure(temperature);
    if (t->temperature >= triple_temperature || partial <= over_ice)
        return 0;
    return partial > 3 * over_ice || vapour_fraction > moist_saturation_fraction(model, t->pressure, temperature, PHASE_ICE);
}

#endif
