/* An uncertainty budget by hand: from readings and beliefs to a combined uncertainty and its coverage factor, as the GUM teaches.
 *
 * Not the budget of a cooler's figure, which finds its sensitivities itself (uncertainty.h), nor a line through readings (trend.h). To first
 * order: where a result bends over its inputs' uncertainties more terms count (GUM 5.1.2).
 * See also: decision.h for what a result with its uncertainty decides. */
#ifndef VTX_BUDGET_H
#define VTX_BUDGET_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Repeated readings of one quantity: their mean and its standard uncertainty (type A), with count - 1 degrees of freedom.
 *
 * readings            in   any unit   count readings, each -1e15..1e15
 * count               in   -          2..100000
 * mean                out  that unit
 * uncertainty         out  that unit  standard, of the mean; may be null
 * standard_deviation  out  that unit  of a single reading; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  to rounding
 * source    JCGM 100:2008 (GUM), 4.2, equations 3 to 5
 */
VTX_API vtx_status vtx_type_a_uncertainty(const double *readings, size_t count, double *mean, double *uncertainty,
                                          double *standard_deviation);

/* Correlation coefficient of the means of two quantities that were read together.
 *
 * first        in   any unit  count readings, each -1e15..1e15
 * second       in   any unit  count readings taken at the same times, each -1e15..1e15
 * count        in   -         2..100000
 * correlation  out  -         -1..1
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also: one of the two does not vary)
 * accuracy  to rounding
 * source    JCGM 100:2008 (GUM), 5.2.2 and 5.2.3, equations 14 and 17
 */
VTX_API vtx_status vtx_correlation_of_means(const double *first, const double *second, size_t count, double *correlation);

/* Degrees of freedom of an uncertainty that rests on judgement (type B) and is itself doubtful by a share.
 *
 * doubt               in   -  0.001..0.7   relative uncertainty of the standard uncertainty: 0.25 when it is believed to a quarter
 * degrees_of_freedom  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  to rounding
 * source    JCGM 100:2008 (GUM), G.4.2, equation G.3
 */
VTX_API vtx_status vtx_type_b_degrees_of_freedom(double doubt, double *degrees_of_freedom);

/* Combined standard uncertainty of a result.
 *
 * sensitivity  in   result's unit per input's  count sensitivity coefficients dy/dx, each 0 or 1e-30..1e30, either sign
 * uncertainty  in   each input's               count standard uncertainties, each 0 or 1e-30..1e30
 * correlation  in   -                          count x count coefficients, row by row: 1 on the diagonal, symmetric; may be null: independent inputs
 * count        in   -                          1..1000
 * combined     out  result's unit
 *
 * status    OK, BAD_ARGUMENT (also: correlations that no quantities can have, where they make the variance negative), OUT_OF_RANGE
 * accuracy  of first order, to rounding
 * source    JCGM 100:2008 (GUM), 5.1.2 and 5.2.2, equations 10 and 16
 */
VTX_API vtx_status vtx_combined_standard_uncertainty(const double *sensitivity, const double *uncertainty, const double *correlation,
                                                     size_t count, double *combined);

/* Covariance of two results of the same inputs; over the product of their combined uncertainties it is their correlation coefficient.
 *
 * first_sensitivity   in   first result's unit per input's   count coefficients, each 0 or 1e-30..1e30, either sign
 * second_sensitivity  in   second result's unit per input's  count coefficients, each 0 or 1e-30..1e30, either sign
 * uncertainty         in   each input's                      count standard uncertainties, each 0 or 1e-30..1e30
 * correlation         in   -                                 as vtx_combined_standard_uncertainty; may be null: independent inputs
 * count               in   -                                 1..1000
 * covariance          out  product of the results' units
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of first order, to rounding
 * source    JCGM 100:2008 (GUM), H.2.3, equation H.9
 */
VTX_API vtx_status vtx_combined_covariance(const double *first_sensitivity, const double *second_sensitivity, const double *uncertainty,
                                           const double *correlation, size_t count, double *covariance);

/* Effective degrees of freedom of a combined uncertainty of independent contributions.
 *
 * contribution        in   result's unit  count of them, sensitivity times standard uncertainty, each 0 or 1e-30..1e30, either sign
 * degrees_of_freedom  in   -              count of them, 1..1e15 each; 0: infinitely many, an uncertainty that is exactly known
 * count               in   -              1..1000
 * effective           out  -              1 and up; 0: infinitely many, or more than 1e15, which no coverage factor can tell from them
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  to rounding
 * source    Welch and Satterthwaite; JCGM 100:2008 (GUM), G.4.1, equation G.2b
 * note      the GUM's examples cut the answer to a whole number, which is on the safe side; vtx_coverage_factor takes it as it is
 */
VTX_API vtx_status vtx_effective_degrees_of_freedom(const double *contribution, const double *degrees_of_freedom, size_t count,
                                                    double *effective);

/* Coverage factor: how many standard uncertainties to either side hold the stated share. Times the combined standard uncertainty it
 * is the expanded uncertainty.
 *
 * coverage            in   -  0.1..0.9999   level of confidence, 0.95 by common practice
 * degrees_of_freedom  in   -  0..1e15       1 and up, need not be whole; 0: infinitely many (normal law)
 * factor              out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-11
 * source    JCGM 100:2008 (GUM), G.3 and table G.2: Student's law; above 1e5 degrees of freedom its expansion about the normal law
 *           (Abramowitz and Stegun 1964, 26.7.5)
 */
VTX_API vtx_status vtx_coverage_factor(double coverage, double degrees_of_freedom, double *factor);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_type_b_degrees_of_freedom_batch(size_t n, const double *doubt, ptrdiff_t doubt_stride,
        double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_coverage_factor_batch(size_t n, const double *coverage, ptrdiff_t coverage_stride,
        const double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, double *factor,
        ptrdiff_t factor_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
