/* Water and ice at saturation: pressures, temperatures, densities, enthalpies.
 *
 * Not moist air: the pressure of other gases is not considered here.
 * See also: moist_air.h for humidity, process.h for condensation. */
#ifndef VTX_WATER_H
#define VTX_WATER_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Saturation pressure of water over a plane liquid surface.
 *
 * temperature  in   K   233.15..647.096   below 273.16 K supercooled, extrapolated
 * pressure     out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  7e-5 of IAPWS-95 from 0 to 100 degC; 0.24 % of Murphy and Koop 2005 at -40 degC
 * source    IAPWS R7-97(2012), equation 30, table 34
 */
VTX_API vtx_status vtx_water_saturation_pressure(double temperature, double *pressure);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_water_saturation_pressure_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *pressure, ptrdiff_t pressure_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
