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
 * source    IAPWS R7-97(2012), equation 30, table 34; to 373.15 K as a polynomial within 4e-14 of it
 */
VTX_API vtx_status vtx_water_saturation_pressure(double temperature, double *pressure);

/* Temperature at which liquid water has a given saturation pressure: the inverse of vtx_water_saturation_pressure.
 *
 * pressure     in   Pa  18.95676..22.064e6   below 611.657 Pa supercooled, extrapolated
 * temperature  out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  returns to the temperature within 1e-12 K below 473 K, 4e-11 K up to the critical point
 * source    IAPWS R7-97(2012), equation 31, in the other algebraic form below 0.2 MPa
 */
VTX_API vtx_status vtx_water_saturation_temperature(double pressure, double *temperature);

/* How fast the saturation pressure over liquid water rises with temperature.
 *
 * temperature  in   K     233.15..647.096   below 273.16 K supercooled, extrapolated
 * slope        out  Pa/K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-4 of IAPWS-95 (by its latent heat) from 0 to 100 degC
 * source    IAPWS R7-97(2012), equation 29, differentiated
 */
VTX_API vtx_status vtx_water_saturation_slope(double temperature, double *slope);

/* Density of liquid water at its saturation pressure.
 *
 * temperature  in   K      253.15..647.096   below 273.16 K supercooled, extrapolated
 * density      out  kg/m3
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  6e-6 of IAPWS-95 from 0 to 100 degC, 4e-5 at -20 degC, 6e-5 to 500 K, 1e-3 at 647 K
 * source    IAPWS SR1-86(1992), equation 2
 */
VTX_API vtx_status vtx_water_density(double temperature, double *density);

/* Enthalpy of liquid water at its saturation pressure. Zero: IAPWS, internal energy 0 at the triple point, where the
 * enthalpy is 0.6 J/kg.
 *
 * temperature  in   K     253.15..647.096   below 273.16 K supercooled, extrapolated
 * enthalpy     out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  4 J/kg of IAPWS-95 from 0 to 100 degC, 60 J/kg at -20 degC, 130 J/kg to 500 K, 1.5 kJ/kg at 647 K
 * note      the condensate of moist_air.h has the enthalpy that equilibrium with the vapour demands: within 240 J/kg of this
 * source    IAPWS SR1-86(1992), equations 4 and 6, coefficients from memory and checked against IAPWS-95
 */
VTX_API vtx_status vtx_water_enthalpy(double temperature, double *enthalpy);

/* Sublimation pressure: saturation pressure of water over ice. Joins the one over liquid at 273.16 K within 2e-11.
 *
 * temperature  in   K   50..273.16
 * pressure     out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  reproduces the release's check value at 230 K to 3e-7
 * source    IAPWS R14-08(2011), equation 6; from 150 K as a polynomial within 1.3e-13 of it
 */
VTX_API vtx_status vtx_ice_sublimation_pressure(double temperature, double *pressure);

/* Temperature at which ice has a given sublimation pressure: the inverse of vtx_ice_sublimation_pressure.
 *
 * pressure     in   Pa  1.93495e-40..611.657
 * temperature  out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  returns to the temperature within 1e-13 K
 * source    IAPWS R14-08(2011), equation 6, solved by Newton's method
 */
VTX_API vtx_status vtx_ice_sublimation_temperature(double pressure, double *temperature);

/* How fast the sublimation pressure rises with temperature.
 *
 * temperature  in   K     50..273.16
 * slope        out  Pa/K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  4e-5 of IAPWS R10-06 with IAPWS-95 (by its latent heat) from -100 to 0 degC
 * source    IAPWS R14-08(2011), equation 6, differentiated
 */
VTX_API vtx_status vtx_ice_sublimation_slope(double temperature, double *slope);

/* Density of ice.
 *
 * pressure     in   Pa     1e-6..200e6   not compared with the melting pressure
 * temperature  in   K      50..273.16
 * density      out  kg/m3
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  reproduces the release's check values to 1e-9
 * source    IAPWS R10-06(2009), equation 1, table 2
 */
VTX_API vtx_status vtx_ice_density(double pressure, double temperature, double *density);

/* Enthalpy of ice, with the zero of vtx_water_enthalpy.
 *
 * pressure     in   Pa    1e-6..200e6   not compared with the melting pressure
 * temperature  in   K     50..273.16
 * enthalpy     out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  reproduces the release's check values to 1e-9
 * note      the ice of moist_air.h has the enthalpy that equilibrium with the vapour demands: within 100 J/kg of this
 * source    IAPWS R10-06(2009), equation 1, table 2
 */
VTX_API vtx_status vtx_ice_enthalpy(double pressure, double temperature, double *enthalpy);

/* Heat of vaporisation of water at saturation.
 *
 * temperature  in   K     253.15..473.15   below 273.16 K supercooled, extrapolated
 * enthalpy     out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  40 J/kg of IAPWS-95 from 0 to 100 degC, 370 J/kg to 200 degC
 * source    vapour: virial equation, second and third coefficient of IAPWS-95; liquid: vtx_water_enthalpy
 */
VTX_API vtx_status vtx_water_vaporisation_enthalpy(double temperature, double *enthalpy);

/* Heat of sublimation of ice at saturation. At 273.16 K it is the heat of vaporisation plus the heat of fusion.
 *
 * temperature  in   K     100..273.16
 * enthalpy     out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  75 J/kg of IAPWS-95 with IAPWS R10-06
 * source    vapour: virial equation, second and third coefficient of IAPWS-95; ice: vtx_ice_enthalpy
 */
VTX_API vtx_status vtx_ice_sublimation_enthalpy(double temperature, double *enthalpy);

/* Heat of fusion of ice into (below 273.16 K supercooled) water of the same temperature.
 *
 * temperature  in   K     253.15..273.16
 * enthalpy     out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1 J/kg of IAPWS-95 with IAPWS R10-06 at 273.16 K; that of vtx_water_enthalpy below
 * source    vtx_water_enthalpy and vtx_ice_enthalpy
 */
VTX_API vtx_status vtx_ice_fusion_enthalpy(double temperature, double *enthalpy);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_water_saturation_pressure_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *pressure, ptrdiff_t pressure_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_water_saturation_temperature_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        double *temperature, ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_water_saturation_slope_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *slope, ptrdiff_t slope_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_water_density_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *density, ptrdiff_t density_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_water_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_sublimation_pressure_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *pressure, ptrdiff_t pressure_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_sublimation_temperature_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        double *temperature, ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_sublimation_slope_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *slope, ptrdiff_t slope_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_density_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *density, ptrdiff_t density_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_enthalpy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *enthalpy, ptrdiff_t enthalpy_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_water_vaporisation_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_sublimation_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ice_fusion_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
