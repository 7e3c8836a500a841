/* How to set a vortex tube: the cold fraction, pressure or inlet temperature that fulfils a wish.
 *
 * Not how big a tube must be or whether the air supply can feed it (sizing.h); every answer solves the forward pass of separation.h.
 * See also: cold_fraction.h for what an existing valve setting gives.
 *
 * A wish rests on the tube you pass: take the careful one of vtx_tube_for_question first. Each answer comes with its values
 * at the ends of the tube's band; an end that cannot fulfil the wish is NaN, with FIELD_UNAVAILABLE. */
#ifndef VTX_SETTING_H
#define VTX_SETTING_H

#include <vtx/separation.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Two cold fractions give the same cold temperature, on either side of the coldest one. */
enum vtx_branch {
    VTX_BRANCH_LESS_COLD_AIR = 305, /* at and below the coldest cold fraction: little air, scarcely used */
    VTX_BRANCH_MORE_COLD_AIR = 306  /* at and above it: more cooling at the same temperature */
};

/* A cold fraction that fulfils a wish. */
typedef struct vtx_fraction_setting {
    double cold_fraction;        /* -  */
    double cold_fraction_low;    /* -  numerically lowest over the band; NaN when an end of the band cannot fulfil the wish */
    double cold_fraction_high;   /* -  numerically highest over the band; NaN when an end of the band cannot fulfil the wish */
    double attainable_low;       /* K or J/kg  smallest value of the wished quantity that the typical tube can reach; also with NO_SOLUTION */
    double attainable_high;      /* K or J/kg  largest value of the wished quantity that the typical tube can reach; also with NO_SOLUTION */
    int32_t advisories;          /* bits of enum vtx_advisory */
    int32_t spare;               /* 0 */
} vtx_fraction_setting;

/* Cold fraction at which the cold outlet has a wanted temperature, on a named branch.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2
 * cold_pressure      in   Pa    as vtx_tube_separate
 * cold_temperature   in   K     50..1000
 * branch             in   -     enum vtx_branch
 * setting            out  -     attainable fields: K, of this branch
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (colder or warmer than this branch can be), NOT_CONVERGED
 * accuracy  the cold temperature returns within 1e-9 K
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * source    inverse of vtx_tube_separate, in closed form unless heat leaks
 */
VTX_API vtx_status vtx_cold_fraction_for_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                     double inlet_temperature, double humidity_ratio, double cold_pressure,
                                                     double cold_temperature, int32_t branch, vtx_fraction_setting *setting);

/* Cold fraction at which the hot outlet has a wanted temperature; with a leaking hot end the lower one.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2
 * cold_pressure      in   Pa    as vtx_tube_separate
 * hot_pressure       in   Pa    as vtx_tube_separate
 * hot_temperature    in   K     50..1000
 * setting            out  -     attainable fields: K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * accuracy  the hot temperature returns within 1e-9 K
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * note      real hot ends lose heat: at high cold fractions they are cooler than the adiabatic curve says
 * source    inverse of vtx_tube_separate, in closed form unless heat leaks
 */
VTX_API vtx_status vtx_cold_fraction_for_hot_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                         double inlet_temperature, double humidity_ratio, double cold_pressure,
                                                         double hot_pressure, double hot_temperature, vtx_fraction_setting *setting);

/* The cold fraction of most cooling, and the cooling there. */
typedef struct vtx_best_setting {
    double cold_fraction;          /* -     where the cooling of the typical tube is largest */
    double cold_fraction_low;      /* -     numerically lowest over the band; NaN when an end of the band cannot cool this target */
    double cold_fraction_high;     /* -     numerically highest over the band; NaN likewise */
    double cold_temperature;       /* K     of the typical tube there */
    double cooling;                /* J/kg  per kg inlet air, from the cold outlet up to the target */
    double cooling_low;            /* J/kg  at cold_fraction with efficiency_low; may be negative */
    double cooling_high;           /* J/kg  at cold_fraction with efficiency_high */
    double attainable_temperature; /* K     the coldest outlet of the typical tube; also with NO_SOLUTION */
    int32_t advisories;            /* bits of enum vtx_advisory */
    int32_t spare;                 /* 0 */
} vtx_best_setting;

/* Cold fraction of the largest cooling of a target held at a temperature: (2m + sqrt(m^2 + 3 (1-m)^2 (1 + delta))) / 3, at most 1,
 * with m the coldest fraction and delta = (target - inlet) over the largest cold drop.
 *
 * tube                in   -
 * model               in   -     enum vtx_air_model
 * inlet_pressure      in   Pa    as vtx_tube_separate
 * inlet_temperature   in   K     150..450
 * humidity_ratio      in   -     0..0.2
 * cold_pressure       in   Pa    as vtx_tube_separate
 * target_temperature  in   K     50..1000   what the cold air may warm up to; the inlet temperature gives the literature's figure
 * best                out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the target is colder than any cold outlet), NOT_CONVERGED
 * accuracy  exact for the curve; the curve's best cold fraction at the inlet temperature is 0.600..0.638 for a coldest fraction of
 *           0.2..0.4, and studies say 0.6..0.7
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * note      a target warmer than the inlet wants more air, a colder one less; flat optimum: 0.05 off costs about 1 %
 * source    derived from the curve of vtx_tube_separate
 */
VTX_API vtx_status vtx_best_cold_fraction(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                          double humidity_ratio, double cold_pressure, double target_temperature,
                                          vtx_best_setting *best);

/* Cold fraction at which a target held at a temperature gets a wanted cooling, below or above the best one.
 *
 * tube                in   -
 * model               in   -     enum vtx_air_model
 * inlet_pressure      in   Pa    as vtx_tube_separate
 * inlet_temperature   in   K     150..450
 * humidity_ratio      in   -     0..0.2
 * cold_pressure       in   Pa    as vtx_tube_separate
 * target_temperature  in   K     50..1000
 * cooling             in   J/kg  -1e7..1e7   per kg inlet air
 * branch              in   -     enum vtx_branch: less or more cold air than the best cold fraction
 * setting             out  -     attainable fields: J/kg, of this branch
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (more or less than this branch gives), NOT_CONVERGED
 * accuracy  the cooling returns within 1e-9 of cp T0
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * source    inverse of the forward pass
 */
VTX_API vtx_status vtx_cold_fraction_for_cooling(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                 double inlet_temperature, double humidity_ratio, double cold_pressure,
                                                 double target_temperature, double cooling, int32_t branch,
                                                 vtx_fraction_setting *setting);

/* Cold fraction of the coldest outlet, and its temperature.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2
 * cold_pressure      in   Pa    as vtx_tube_separate
 * cold_fraction      out  -
 * cold_temperature   out  K     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  exact for the curve; the published points leave 0.2..0.4 open
 * note      with a leaking cold end it lies above the tube's coldest_fraction
 * source    the curve of vtx_tube_separate
 */
VTX_API vtx_status vtx_coldest_outlet(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                      double humidity_ratio, double cold_pressure, double *cold_fraction, double *cold_temperature);

/* A pressure or temperature that fulfils a wish. The search ends where REAL no longer covers the expansion (vtx_tube_separate). */
typedef struct vtx_condition_setting {
    double value;               /* Pa or K */
    double value_low;           /* Pa or K  numerically lowest over the band; NaN when an end of the band cannot fulfil the wish */
    double value_high;          /* Pa or K  numerically highest over the band; NaN likewise */
    double attainable_coldest;  /* K        coldest outlet the typical tube reaches in the range searched; also with NO_SOLUTION */
    double attainable_warmest;  /* K        warmest outlet in the range searched; also with NO_SOLUTION */
    int32_t advisories;         /* bits of enum vtx_advisory */
    int32_t spare;              /* 0 */
} vtx_condition_setting;

/* Lowest inlet pressure at which the cold outlet is as cold as wanted.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * largest_pressure   in   Pa    the search ends here: what the supply can give; at least the cold pressure, else BAD_ARGUMENT
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2   the feed's water, the same at every pressure
 * cold_pressure      in   Pa    as vtx_tube_separate
 * cold_fraction      in   -     0..1
 * cold_temperature   in   K     50..1000
 * setting            out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * accuracy  the cold temperature returns within 1e-8 K
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * source    root of the forward pass
 */
VTX_API vtx_status vtx_inlet_pressure_for_temperature(const vtx_tube *tube, int32_t model, double largest_pressure,
                                                      double inlet_temperature, double humidity_ratio, double cold_pressure,
                                                      double cold_fraction, double cold_temperature,
                                                      vtx_condition_setting *setting);

/* Highest back-pressure of the cold outlet at which it is still as cold as wanted: what a muffler or a hose behind it may cost.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2
 * cold_fraction      in   -     0..1   held, by turning the hot valve after the pressure
 * cold_temperature   in   K     50..1000
 * setting            out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * accuracy  the cold temperature returns within 1e-8 K
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * source    root of the forward pass
 */
VTX_API vtx_status vtx_cold_pressure_for_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                     double inlet_temperature, double humidity_ratio, double cold_fraction,
                                                     double cold_temperature, vtx_condition_setting *setting);

/* Warmest inlet at which the cold outlet is still as cold as wanted.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * humidity_ratio     in   -     0..0.2
 * cold_pressure      in   Pa    as vtx_tube_separate
 * cold_fraction      in   -     0..1
 * cold_temperature   in   K     50..1000
 * setting            out  K     searched in 150..450
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * accuracy  the cold temperature returns within 1e-8 K
 * advisory  UNCALIBRATED, EXTRAPOLATED, FIELD_UNAVAILABLE
 * source    root of the forward pass
 */
VTX_API vtx_status vtx_inlet_temperature_for_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                         double humidity_ratio, double cold_pressure, double cold_fraction,
                                                         double cold_temperature, vtx_condition_setting *setting);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_cold_fraction_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t branch,
        vtx_fraction_setting *setting, ptrdiff_t setting_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_fraction_for_hot_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *hot_temperature,
        ptrdiff_t hot_temperature_stride, vtx_fraction_setting *setting, ptrdiff_t setting_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_best_cold_fraction_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *target_temperature,
        ptrdiff_t target_temperature_stride, vtx_best_setting *best, ptrdiff_t best_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_cold_fraction_for_cooling_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *target_temperature,
        ptrdiff_t target_temperature_stride, const double *cooling, ptrdiff_t cooling_stride, int32_t branch,
        vtx_fraction_setting *setting, ptrdiff_t setting_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_coldest_outlet_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_inlet_pressure_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *largest_pressure, ptrdiff_t largest_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, vtx_condition_setting *setting, ptrdiff_t setting_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_cold_pressure_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, vtx_condition_setting *setting,
        ptrdiff_t setting_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_inlet_temperature_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, vtx_condition_setting *setting, ptrdiff_t setting_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
