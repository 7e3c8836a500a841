/* From one measure of a restriction's size to another: effective area, sonic conductance, Kv, Cv, loss coefficient.
 *
 * Not flows: restriction.h, conductance.h and valve.h have those.
 * See also: conductance.h for restrictions in series and side by side.
 *
 * Between Kv and conductance there is no single factor: they are matched where both are choked, which takes xT. */
#ifndef VTX_FLOW_COEFFICIENT_H
#define VTX_FLOW_COEFFICIENT_H

#include <vtx/isentropic.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Kv of a Cv: 0.864978 m3/h at 1 bar is one US gallon a minute at 1 psi.
 *
 * cv   in   Cv  0..1e6
 * kv   out  Kv
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding; the standard rounds to 0.865
 * source    definitions of both, IEC 60534-1
 */
VTX_API vtx_status vtx_kv_from_cv(double cv, double *kv);

/* Cv of a Kv.
 *
 * kv   in   Kv  0..1e6
 * cv   out  Cv
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_kv_from_cv
 */
VTX_API vtx_status vtx_cv_from_kv(double kv, double *cv);

/* Hydraulic effective area of a Kv: the area that water would pass with sqrt(2 dp/rho).
 *
 * kv    in   Kv  0..1e6
 * area  out  m2  19.642 mm2 a Kv
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition of Kv with water of 1000 kg/m3, IEC 60534-1
 */
VTX_API vtx_status vtx_area_from_kv(double kv, double *area);

/* Kv of a hydraulic effective area.
 *
 * area  in   m2  0..10
 * kv    out  Kv
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_area_from_kv
 */
VTX_API vtx_status vtx_kv_from_area(double area, double *kv);

/* Sonic conductance of an effective area, discharge coefficient times area of a choked nozzle.
 *
 * gas          in   -           dry air by vtx_gas_init
 * area         in   m2          0..10
 * conductance  out  m3/(s Pa)   0.1992 dm3/(s bar) a mm2
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    ISO 6358 with ISO 8778, choked nozzle of isentropic.h
 */
VTX_API vtx_status vtx_conductance_from_area(const vtx_gas *gas, double area, double *conductance);

/* Effective area of a sonic conductance.
 *
 * gas          in   -           dry air by vtx_gas_init
 * conductance  in   m3/(s Pa)   0..1
 * area         out  m2
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_conductance_from_area
 */
VTX_API vtx_status vtx_area_from_conductance(const vtx_gas *gas, double conductance, double *area);

/* Sonic conductance of a valve without reducers, matched where both laws are choked.
 *
 * gas                    in   -           dry air by vtx_gas_init
 * kv                     in   Kv          0..1e6
 * pressure_ratio_factor  in   -           0.1..1   xT
 * conductance            out  m3/(s Pa)   4.5 dm3/(s bar) a Kv at xT 0.7
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding in the conversion; subsonic flows differ by some per cent because the laws do
 * source    IEC 60534-2-1:2011 at choking, ISO 6358 with ISO 8778
 */
VTX_API vtx_status vtx_conductance_from_kv(const vtx_gas *gas, double kv, double pressure_ratio_factor, double *conductance);

/* Kv of a valve without reducers from its sonic conductance, matched where both laws are choked.
 *
 * gas                    in   -           dry air by vtx_gas_init
 * conductance            in   m3/(s Pa)   0..1
 * pressure_ratio_factor  in   -           0.1..1   xT
 * kv                     out  Kv
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_conductance_from_kv
 * source    as vtx_conductance_from_kv
 */
VTX_API vtx_status vtx_kv_from_conductance(const vtx_gas *gas, double conductance, double pressure_ratio_factor, double *kv);

/* Loss coefficient of a Kv in a pipe: pressure loss over the velocity head of the bore.
 *
 * kv        in   Kv  1e-6..1e6
 * diameter  in   m   0.001..2
 * loss      out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition of Kv; 1.6e9 d^4/Kv^2 in round figures
 */
VTX_API vtx_status vtx_loss_from_kv(double kv, double diameter, double *loss);

/* Kv of a loss coefficient in a pipe.
 *
 * loss      in   -   1e-12..1e23
 * diameter  in   m   0.001..2
 * kv        out  Kv
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_loss_from_kv
 */
VTX_API vtx_status vtx_kv_from_loss(double loss, double diameter, double *kv);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_kv_from_cv_batch(size_t n, const double *cv, ptrdiff_t cv_stride, double *kv, ptrdiff_t kv_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cv_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, double *cv, ptrdiff_t cv_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_area_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, double *area,
        ptrdiff_t area_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_kv_from_area_batch(size_t n, const double *area, ptrdiff_t area_stride, double *kv,
        ptrdiff_t kv_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_from_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *area,
        ptrdiff_t area_stride, double *conductance, ptrdiff_t conductance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_area_from_conductance_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *conductance, ptrdiff_t conductance_stride, double *area, ptrdiff_t area_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_from_kv_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *kv,
        ptrdiff_t kv_stride, const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride,
        double *conductance, ptrdiff_t conductance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_kv_from_conductance_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *pressure_ratio_factor,
        ptrdiff_t pressure_ratio_factor_stride, double *kv, ptrdiff_t kv_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_loss_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, const double *diameter,
        ptrdiff_t diameter_stride, double *loss, ptrdiff_t loss_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_kv_from_loss_batch(size_t n, const double *loss, ptrdiff_t loss_stride, const double *diameter,
        ptrdiff_t diameter_stride, double *kv, ptrdiff_t kv_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
