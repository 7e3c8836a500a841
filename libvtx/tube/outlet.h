/* One outlet of a tube as a function of the cold fraction, and the cold fractions at which it has an enthalpy. Internal. */
#ifndef VTX_TUBE_OUTLET_H
#define VTX_TUBE_OUTLET_H

#include <vtx/setting.h>

#include "../base/root.h"
#include "outlet_kernel.h"

/* A wish for exactly the end of a branch may miss it by rounding: a share of the work. */
static const double end_rounding = 1e-11;

/* How close a minimum over the cold fraction is followed: rounding makes its valley flat below. */
static const double valley = 1e-7;

struct outlet {
    const vtx_tube *tube;
    struct expansion e;
    double peak;             /* work given at the coldest fraction, for the efficiency in question */
    double ambient_enthalpy; /* at the outlet's pressure; used with a leak only */
    double target_enthalpy;  /* of what is cooled */
    double wanted;
};

/* The cold outlet. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status open_outlet(struct outlet *o, const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                       double humidity_ratio, double cold_pressure);

static inline void set_efficiency(struct outlet *o, double efficiency) { o->peak = peak_work(&o->e, o->tube, efficiency); }

static inline double cold_enthalpy(const struct outlet *o, double mu)
{
    return cold_outlet_enthalpy(&o->e, o->tube, o->peak, mu, o->ambient_enthalpy);
}

static inline double hot_enthalpy(const struct outlet *o, double mu)
{
    return hot_outlet_enthalpy(&o->e, o->tube, o->peak, mu, o->ambient_enthalpy);
}

/* Root of f between two cold fractions; a wish that an end misses by rounding, end_rounding of scale, is met there. */
vtx_status root_between(root_function *f, struct outlet *o, double low, double high, double scale, double *mu);

/* Where the cold outlet is coldest, the hot one hottest, and the ends of a branch of the cold curve. OK, NOT_CONVERGED */
vtx_status coldest_fraction_of(struct outlet *o, double *mu);
vtx_status hottest_fraction_of(struct outlet *o, double *mu);
vtx_status branch_ends(struct outlet *o, int32_t branch, double *low, double *high);

/* The cold fraction at which the outlet has the wanted enthalpy; the hot outlet has one branch only. OK, NO_SOLUTION, NOT_CONVERGED */
vtx_status cold_fraction_of(struct outlet *o, int32_t branch, double *mu);
vtx_status hot_fraction_of(struct outlet *o, int32_t branch, double *mu);

static inline vtx_status check_supply(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                      double humidity_ratio, double cold_pressure)
{
    return worse(worse(check_tube(tube), check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio)),
                 check_outlet(model, inlet_pressure, cold_pressure));
}

#endif
