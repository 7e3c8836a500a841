/* Pass or fail by a measured value with its uncertainty: decision rules for a limit.
 *
 * Not where the uncertainty comes from (uncertainty.h, calibration.h), nor what is measured (acceptance.h). Values, limits and uncertainties are all in one unit,
 * any unit. What was known before the measurement is taken to be poor, so that the true value is spread about the measured one as the errors are. */
#ifndef VTX_DECISION_H
#define VTX_DECISION_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* On which side of the tolerance limit the true value has to lie. */
enum vtx_tolerance {
    VTX_TOLERANCE_UPPER = 180,   /* at most the limit */
    VTX_TOLERANCE_LOWER = 181,   /* at least the limit */
    VTX_TOLERANCE_INTERVAL = 182 /* between two limits: the calls named _between */
};

/* What a measured value decides. */
enum vtx_decision {
    VTX_VERDICT_PASS = 185,         /* conforms, at no more than the stated risk */
    VTX_VERDICT_FAIL = 186,         /* does not conform, at no more than the stated risk */
    VTX_VERDICT_NOT_DECIDABLE = 187 /* too near the limit for these instruments */
};

/* Conformance probability: that the true value lies on the right side of one limit.
 *
 * side                in   -     VTX_TOLERANCE_UPPER, VTX_TOLERANCE_LOWER
 * limit               in   unit  -1e12..1e12
 * value               in   unit  -1e12..1e12    measured
 * uncertainty         in   unit  1e-12..1e12    standard
 * degrees_of_freedom  in   -     0..100000      of the uncertainty; 1 and up, 0: infinitely many (normal law)
 * probability         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-12
 * source    JCGM 106:2012, 7.3; Student's law for a finite number of degrees of freedom: JCGM 106:2012, 7.2.2
 */
VTX_API vtx_status vtx_conformance_probability(int32_t side, double limit, double value, double uncertainty, double degrees_of_freedom,
                                               double *probability);

/* Conformance probability for two limits.
 *
 * lower_limit         in   unit  -1e12..1e12
 * upper_limit         in   unit  -1e12..1e12    above the lower one
 * value               in   unit  -1e12..1e12    measured
 * uncertainty         in   unit  1e-12..1e12    standard
 * degrees_of_freedom  in   -     0..100000      as vtx_conformance_probability
 * probability         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-12
 * source    JCGM 106:2012, 7.4
 */
VTX_API vtx_status vtx_conformance_probability_between(double lower_limit, double upper_limit, double value, double uncertainty,
                                                       double degrees_of_freedom, double *probability);

/* Guard band: how far inside a limit a value must be measured so that accepting it is wrong with no more than the consumer's risk.
 *
 * consumer_risk       in   -     1e-6..0.4      highest probability that a value at the limit is accepted, 0.05 by common practice
 * uncertainty         in   unit  1e-12..1e12    standard
 * degrees_of_freedom  in   -     0..100000      as vtx_conformance_probability
 * guard_band          out  unit
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-11 relative
 * source    JCGM 106:2012, 8.3; 1.645 standard uncertainties for 5 %
 * note      the supplier's rule of ISO 14253-1 is the same with a guard band of one expanded uncertainty (2.3 % risk at twice the standard one)
 */
VTX_API vtx_status vtx_guard_band(double consumer_risk, double uncertainty, double degrees_of_freedom, double *guard_band);

/* Acceptance limit: a tolerance limit moved inwards by the guard band.
 *
 * side              in   -     VTX_TOLERANCE_UPPER, VTX_TOLERANCE_LOWER
 * limit             in   unit  -1e12..1e12
 * guard_band        in   unit  -1e12..1e12    below 0: moved outwards, which guards rejection
 * acceptance_limit  out  unit
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    JCGM 106:2012, 8.3.2 and 8.3.3
 */
VTX_API vtx_status vtx_acceptance_limit(int32_t side, double limit, double guard_band, double *acceptance_limit);

/* Pass, fail or not decidable against one limit.
 *
 * side        in   -     VTX_TOLERANCE_UPPER, VTX_TOLERANCE_LOWER
 * limit       in   unit  -1e12..1e12
 * value       in   unit  -1e12..1e12    measured
 * guard_band  in   unit  0..1e12
 * verdict     out  -     enum vtx_decision
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact; with the guard band of a risk, no more than that share of the values at the limit is passed, and no more is failed
 * source    ISO 14253-1 (from memory); JCGM 106:2012, 8.3
 */
VTX_API vtx_status vtx_decide(int32_t side, double limit, double value, double guard_band, int32_t *verdict);

/* Pass, fail or not decidable against two limits.
 *
 * lower_limit  in   unit  -1e12..1e12
 * upper_limit  in   unit  -1e12..1e12    above the lower one
 * value        in   unit  -1e12..1e12    measured
 * guard_band   in   unit  0..1e12        passes nothing when it is more than half the distance of the limits
 * verdict      out  -     enum vtx_decision
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_decide
 * source    as vtx_decide
 */
VTX_API vtx_status vtx_decide_between(double lower_limit, double upper_limit, double value, double guard_band, int32_t *verdict);

/* The largest standard uncertainty with which a value at this distance from the limit could still be decided.
 *
 * consumer_risk       in   -     1e-6..0.4
 * margin              in   unit  0..1e12        distance of the measured value from the limit
 * degrees_of_freedom  in   -     0..100000      as vtx_conformance_probability
 * uncertainty         out  unit
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-11 relative
 * source    inverse of vtx_guard_band
 */
VTX_API vtx_status vtx_deciding_uncertainty(double consumer_risk, double margin, double degrees_of_freedom, double *uncertainty);

/* Global risks against one limit: of all that a process makes, the share that is accepted and should not have been, and the share
 * that is rejected and should not have been.
 *
 * side               in   -     VTX_TOLERANCE_UPPER, VTX_TOLERANCE_LOWER
 * limit              in   unit  -1e12..1e12
 * acceptance_limit   in   unit  -1e12..1e12
 * process_mean       in   unit  -1e12..1e12
 * process_deviation  in   unit  1e-6..1e12    standard deviation of what the process makes
 * uncertainty        in   unit  1e-12..1e12   standard, of the measurement: 1e-6 to 1e6 process deviations
 * consumer_risk      out  -
 * producer_risk      out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-12
 * source    JCGM 106:2012, 9.5; normal laws, quadrature
 */
VTX_API vtx_status vtx_global_risk(int32_t side, double limit, double acceptance_limit, double process_mean, double process_deviation,
                                   double uncertainty, double *consumer_risk, double *producer_risk);

/* Global risks against two limits.
 *
 * lower_limit        in   unit  -1e12..1e12
 * upper_limit        in   unit  -1e12..1e12   above the lower one
 * lower_acceptance   in   unit  -1e12..1e12
 * upper_acceptance   in   unit  -1e12..1e12   above the lower one
 * process_mean       in   unit  -1e12..1e12
 * process_deviation  in   unit  1e-6..1e12    standard deviation of what the process makes
 * uncertainty        in   unit  1e-12..1e12   standard, of the measurement: 1e-6 to 1e6 process deviations
 * consumer_risk      out  -
 * producer_risk      out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-12
 * source    JCGM 106:2012, 9.5; normal laws, quadrature
 */
VTX_API vtx_status vtx_global_risk_between(double lower_limit, double upper_limit, double lower_acceptance, double upper_acceptance,
                                           double process_mean, double process_deviation, double uncertainty, double *consumer_risk,
                                           double *producer_risk);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_conformance_probability_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride,
        const double *value, ptrdiff_t value_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        const double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, double *probability,
        ptrdiff_t probability_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conformance_probability_between_batch(size_t n, const double *lower_limit,
        ptrdiff_t lower_limit_stride, const double *upper_limit, ptrdiff_t upper_limit_stride, const double *value,
        ptrdiff_t value_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        const double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, double *probability,
        ptrdiff_t probability_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_guard_band_batch(size_t n, const double *consumer_risk, ptrdiff_t consumer_risk_stride,
        const double *uncertainty, ptrdiff_t uncertainty_stride, const double *degrees_of_freedom,
        ptrdiff_t degrees_of_freedom_stride, double *guard_band, ptrdiff_t guard_band_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_acceptance_limit_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride,
        const double *guard_band, ptrdiff_t guard_band_stride, double *acceptance_limit,
        ptrdiff_t acceptance_limit_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_decide_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride, const double *value,
        ptrdiff_t value_stride, const double *guard_band, ptrdiff_t guard_band_stride, int32_t *verdict,
        ptrdiff_t verdict_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_decide_between_batch(size_t n, const double *lower_limit, ptrdiff_t lower_limit_stride,
        const double *upper_limit, ptrdiff_t upper_limit_stride, const double *value, ptrdiff_t value_stride,
        const double *guard_band, ptrdiff_t guard_band_stride, int32_t *verdict, ptrdiff_t verdict_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_deciding_uncertainty_batch(size_t n, const double *consumer_risk, ptrdiff_t consumer_risk_stride,
        const double *margin, ptrdiff_t margin_stride, const double *degrees_of_freedom,
        ptrdiff_t degrees_of_freedom_stride, double *uncertainty, ptrdiff_t uncertainty_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_global_risk_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride,
        const double *acceptance_limit, ptrdiff_t acceptance_limit_stride, const double *process_mean,
        ptrdiff_t process_mean_stride, const double *process_deviation, ptrdiff_t process_deviation_stride,
        const double *uncertainty, ptrdiff_t uncertainty_stride, double *consumer_risk,
        ptrdiff_t consumer_risk_stride, double *producer_risk, ptrdiff_t producer_risk_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_global_risk_between_batch(size_t n, const double *lower_limit, ptrdiff_t lower_limit_stride,
        const double *upper_limit, ptrdiff_t upper_limit_stride, const double *lower_acceptance,
        ptrdiff_t lower_acceptance_stride, const double *upper_acceptance, ptrdiff_t upper_acceptance_stride,
        const double *process_mean, ptrdiff_t process_mean_stride, const double *process_deviation,
        ptrdiff_t process_deviation_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        double *consumer_risk, ptrdiff_t consumer_risk_stride, double *producer_risk, ptrdiff_t producer_risk_stride,
        int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
