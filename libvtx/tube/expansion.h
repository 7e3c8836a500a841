/* What the inlet air can give on its way to the cold pressure, in enthalpies per kg dry air, for both models. Internal.
 *
 * In enthalpies the curve has closed-form inverses for both models: only temperatures need a solver. */
#ifndef VTX_TUBE_EXPANSION_H
#define VTX_TUBE_EXPANSION_H

#include "feed.h"

struct expansion {
    int32_t model;
    double inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure;
    double log_ratio;      /* ln(inlet / cold pressure) */
    double inlet_enthalpy;
    double work;           /* isentropic drop of enthalpy to the cold pressure */
};

/* The feed alone: no cold pressure, no work. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status feed_at(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, struct expansion *e);

/* The feed and what it can give down to the cold pressure. Arguments were checked. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status expand(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, double cold_pressure,
                  struct expansion *e);

/* Enthalpy of the feed's air at another state, and the temperature that has an enthalpy. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status feed_enthalpy(const struct expansion *e, double pressure, double temperature, double *enthalpy);
vtx_status feed_temperature(const struct expansion *e, double pressure, double enthalpy, double *temperature);

static inline double peak_work(const struct expansion *e, const vtx_tube *tube, double efficiency)
{
    return smaller(efficiency_gain(tube, e->log_ratio) * efficiency, 1) * e->work;
}

/* per kg dry air -> per kg inlet air */
static inline double per_inlet_air(const struct expansion *e, double per_dry_air) { return per_dry_air / (1 + e->humidity_ratio); }

#endif
