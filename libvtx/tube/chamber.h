/* Flow balance of the swirl chamber: inlet nozzle in series with two ways out, at stream temperatures that the caller knows. Internal. */
#ifndef VTX_TUBE_CHAMBER_H
#define VTX_TUBE_CHAMBER_H

#include "../flow/restriction_kernel.h"

/* The tube's own opening, then what is screwed on. */
struct way_out {
    double area;
    double conductance, critical_ratio; /* conductance 0: nothing screwed on */
    double end_pressure;
    double temperature;
};

struct chamber {
    vtx_gas gas;
    double inlet_area, inlet_pressure, inlet_temperature;
    struct way_out cold, hot;
    double cold_fraction; /* where it is held */
};

static inline double flow_in(const struct chamber *c, double pressure, int32_t *choked)
{
    return c->inlet_area * orifice_flux(&c->gas, c->inlet_pressure, c->inlet_temperature, pressure, choked);
}

/* Through the opening alone, against the pressure directly behind it. */
static inline double flow_through(const struct chamber *c, const struct way_out *o, double pressure, double behind)
{
    int32_t choked;
    return behind >= pressure ? 0 : o->area * orifice_flux(&c->gas, pressure, o->temperature, behind, &choked);
}

/* Directly behind the opening, where this much leaves. */
static inline double pressure_behind(const struct way_out *o, double mass_flow)
{
    if (o->conductance <= 0)
        return o->end_pressure;
    return conductance_inlet_pressure(o->critical_ratio, mass_flow / conductance_slope(o->conductance, o->temperature), o->end_pressure);
}

/* Through the opening and what is screwed on; nothing is drawn in. */
double flow_out(const struct chamber *c, const struct way_out *o, double pressure);

/* What leaves at a pressure less what enters: rises with the pressure. chamber: a struct chamber. */
double chamber_excess(double pressure, void *chamber);

/* What a chamber that holds its cold fraction takes in, and the pressures in it and directly behind its cold opening; whatever the hot one is.
 *
 * OK, NOT_CONVERGED */
vtx_status chamber_at_cold_fraction(struct chamber *c, double *mass_flow, double *pressure, double *cold_pressure, int32_t *choked);

#endif
