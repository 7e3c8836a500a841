/* From readings of a tube to a vtx_tube that predicts it, and what that prediction is worth.
 *
 * Not the readings themselves nor their verdict under the laws (reading.h).
 * See also: separation.h for what the tube then gives; thermometry.h before entering a temperature.
 *
 * One reading scales the curve. Two or more also find the coldest fraction; more, at several pressures, the pressure exponent;
 * hot outlets with a known cold fraction, the leak of the hot end. What the readings cannot see stays at its prior and its
 * uncertainty stays in every interval. */
#ifndef VTX_CALIBRATION_H
#define VTX_CALIBRATION_H

#include <vtx/reading.h>
#include <vtx/separation.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What a calibration found. Fit coordinates, in this order wherever four stand together: logit of peak efficiency,
 * logit of twice the coldest fraction, pressure exponent, hot leak. */
typedef struct vtx_calibration {
    double confidence;                 /* -     of the intervals in this record and of the tube's band */
    double peak_efficiency_deviation;  /* -     standard deviation */
    double coldest_fraction_deviation; /* -     standard deviation */
    double pressure_exponent_deviation;/* -     standard deviation */
    double hot_leak_deviation;         /* -     standard deviation */
    double data_share[4];              /* -     0..1  of what is known of each coordinate, the share that the readings brought */
    double covariance[64];             /* -     row by row: of the four fit coordinates, then of the four departures */
    double efficiency_scatter;         /* -     standard deviation of the logit of efficiency from reading to reading that no
                                                uncertainty explains; 0 when the curve fits */
    double energy_scale;               /* -     1 up  by which energy balances scatter more than the uncertainties explain */
    double departure[4];               /*       what the residuals show of other shapes, as admitted to the covariance (root mean square over all
                                                that may be so); 0: not seen. Relative rise of efficiency to either end of the cold fraction,
                                                its fall per square of the logarithm of the pressure ratio, cold leak, hot leak per that logarithm */
    double chi_square;                 /* -     of the readings in use, before any widening */
    double degrees_of_freedom;         /* -     what the readings leave over; need not be whole */
    double chi_square_probability;     /* -     chance of a larger chi_square; NaN without freedom to tell */
    double cold_left_out;              /* K     root mean square error of each cold outlet predicted from the other readings; NaN when none can be */
    double hot_left_out;               /* K     the same, hot outlet */
    double energy_residual;            /* J/kg  weighted mean over the readings in use; above 0 heat is lost; NaN when not read */
    double energy_uncertainty;         /* J/kg  standard, of that mean */
    vtx_tube tube;                     /* the calibrated tube: its band is the interval of peak efficiency at the stated confidence */
    int32_t model;                     /* enum vtx_air_model that it was fitted with; use it with this one */
    int32_t readings_used;             /* -     */
    int32_t readings_set_aside;        /* -     outliers that are not used */
    int32_t readings_impossible;       /* -     against a law */
    int32_t readings_incomplete;       /* -     */
    int32_t fraction_held;             /* 1: coldest fraction kept at its prior, 0: fitted */
    int32_t exponent_held;             /* 1: pressure exponent kept at its prior, 0: fitted */
    int32_t leak_held;                 /* 1: hot leak kept at its prior, 0: fitted */
    int32_t advisories;                /* bits of enum vtx_advisory */
    int32_t spare;                     /* 0 */
} vtx_calibration;

/* Fits a tube to readings.
 *
 * Weighted non-linear least squares in both outlet temperatures; uncertainties of pressures, inlet and cold fraction count
 * through the slopes of the curve. The prior's band of peak efficiency is read as holding 80 % of tubes; so are
 * 0.2..0.4 around the default coldest fraction and +-0.3 for the pressure exponent: pseudo-readings that fade as real ones come.
 * Half of all hot ends are taken not to leak, 80 % of the others by less than 0.04 (a prior that leaks: by about as much); the tube's
 * hot leak is the mean of what is known of it, never below 0. A coordinate is fitted when the readings at least halve its prior deviation, else held; the exponent
 * needs three readings, all but the peak two.
 *
 * A tube may depart from the family of curves in four ways (field departure) and in any of them together. Once one explains more than
 * chance does in three quarters of tubes of the family, all are admitted to the covariance by Akaike's weights: the tube stays the family's, the
 * intervals cover both. A reading that the others contradict (one in a hundred calibrations by chance) is set aside, if that is more probable
 * than a tube that departs (one in ten does). Up to seven readings cannot outvote one: there each instrument of each is supposed wrong in turn
 * (5 % of readings hold a gross error); the tube is the mean over what is then believed, and the most probable supposition is named; its
 * instrument counts little and the reading stays in use. When chi-square is larger than chance allows (5 %), the efficiency is taken to
 * scatter from reading to reading by as much as explains it, and all intervals widen.
 *
 * readings     in   -  count records
 * count        in   -  1..100
 * model        in   -  enum vtx_air_model
 * prior        in   -  the tube before any reading; may be null: vtx_tube_init. Its cold leak is kept, its reference ratio is not
 * confidence   in   -  0.5..0.999
 * calibration  out  -
 * checks       out  -  count records; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (no usable reading; vtx_reading_examine says why),
 *           NOT_CONVERGED (readings that contradict each other beyond any fit). checks is not written when count is out of range
 * accuracy  synthetic readings, 0.5 K, 12 of them: the cold curve to 0.26 K root mean square. From two readings on, 95 % intervals of
 *           the curve hold 95.0..97.4 % of tubes of this shape; of tubes of another shape 43..100 %, no more than the residuals
 *           can show (bench/calibration_coverage.md). One bad reading among six or more makes the error at most 1.8
 *           times as large, among four up to 3 times (1.5 were it known which instrument is wrong)
 * advisory  OUTLIER, IMPOSSIBLE_READINGS, PARAMETER_HELD, POORLY_DETERMINED (peak efficiency hardly known, or two coordinates not
 *           told apart), MODEL_MISFIT, FIELD_UNAVAILABLE
 * note      an error common to all readings (one thermometer reading 1 K low throughout) cannot be seen and is not in the
 *           intervals. Takes about 140 kB of stack.
 * caution   readings are taken on a pressurised tube with cold, hot and loud ends: protect skin, eyes and ears
 * source    least squares: More 1978; effective variance: Orear 1982 (from memory); scatter: Mandel and Paule 1970 (from memory);
 *           robust: Huber 1964, Beaton and Tukey 1974; share of gross errors: Hampel 1986 (from memory), weighed by Bayes's rule with
 *           Laplace's method, as the leak is; Occam's window: Madigan and Raftery 1994, departures: Akaike's weights, Burnham and
 *           Anderson 2002, and Sidak 1967 (all from memory); intervals: JCGM 100:2008
 */
VTX_API vtx_status vtx_tube_calibrate(const vtx_reading *readings, size_t count, int32_t model, const vtx_tube *prior,
                                      double confidence, vtx_calibration *calibration, vtx_reading_check *checks);

/* A calibrated tube at one point: two intervals for each outlet. */
typedef struct vtx_calibrated_point {
    double cold_temperature;       /* K  on the curve */
    double cold_deviation;         /* K  standard deviation of the curve */
    double cold_low;               /* K  interval of the curve at exactly this state */
    double cold_high;              /* K */
    double cold_reading_low;       /* K  interval of the next reading, its own uncertainties included */
    double cold_reading_high;      /* K */
    double hot_temperature;        /* K  on the curve; hot fields are NaN above a cold fraction of 0.98 */
    double hot_deviation;          /* K  standard deviation of the curve */
    double hot_low;                /* K  interval of the curve at exactly this state */
    double hot_high;               /* K */
    double hot_reading_low;        /* K  interval of the next reading, its own uncertainties included */
    double hot_reading_high;       /* K */
    int32_t advisories;            /* EXTRAPOLATED, FIELD_UNAVAILABLE, and those of the calibration that concern its worth */
    int32_t spare;                 /* 0 */
} vtx_calibrated_point;

/* Curve and next reading at a point, with intervals.
 *
 * calibration  in   -  of vtx_tube_calibrate
 * point        in   -  state as a reading: inlet pressure and temperature and a cold fraction (or flows) must be there, outlet
 *                      temperatures are not looked at, their uncertainties are those of the next reading
 * confidence   in   -  0.5..0.999
 * prediction   out  -
 *
 * status    OK, BAD_ARGUMENT (also: too little given to place the point), OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  of tubes of this shape, uncertainties true, two readings and more: 95 % intervals of the curve hold 95.0..97.4 %, 90 %
 *           intervals of the next reading 88.8..93.0 %; of other tubes fewer, of the next cold reading 72..100 %
 *           (bench/calibration_coverage.md)
 * advisory  EXTRAPOLATED, FIELD_UNAVAILABLE, PARAMETER_HELD, POORLY_DETERMINED, MODEL_MISFIT
 * source    linear propagation of the fit's covariance; Student's t when the scatter was found from the readings, else normal
 */
VTX_API vtx_status vtx_calibration_predict(const vtx_calibration *calibration, const vtx_reading *point, double confidence,
                                           vtx_calibrated_point *prediction);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_calibration_predict_batch(size_t n, const vtx_calibration *calibration, ptrdiff_t calibration_stride,
        const vtx_reading *point, ptrdiff_t point_stride, const double *confidence, ptrdiff_t confidence_stride,
        vtx_calibrated_point *prediction, ptrdiff_t prediction_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
