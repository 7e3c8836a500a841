/* Dry air as a real gas: density, heat, sound, viscosity, conductivity, choked flow.
 *
 * Not moist air and not a perfect gas: see moist_air.h and isentropic.h.
 * See also: process.h for expansions, restriction.h for nozzles of a perfect gas.
 *
 * All calls take 1 kPa to 5 MPa and 100 to 473.15 K with pressure <= 0.4 MPa (temperature / 100 K)^4, which stays well clear of
 * condensing air. They are meant for 0.01 to 2 MPa and 173.15 to 373.15 K, where the accuracies are stated. */
#ifndef VTX_AIR_H
#define VTX_AIR_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Dry air at a pressure and temperature. Enthalpy and entropy are 0 at 273.15 K and 101325 Pa. */
typedef struct vtx_dry_air {
    double pressure;                      /* Pa */
    double temperature;                   /* K */
    double density;                       /* kg/m3 */
    double compressibility;               /* p v / (R T) */
    double enthalpy;                      /* J/kg */
    double entropy;                       /* J/(kg K) */
    double heat_capacity;                 /* J/(kg K), at constant pressure */
    double heat_capacity_constant_volume; /* J/(kg K) */
    double heat_capacity_ratio;           /* of the two */
    double sound_speed;                   /* m/s */
    double joule_thomson;                 /* K/Pa, temperature drop per pressure drop of a throttle */
    double viscosity;                     /* Pa s */
    double conductivity;                  /* W/(m K) */
    double prandtl_number;                /* viscosity times heat capacity over conductivity */
    int32_t advisories;                   /* vtx_advisory: EXTRAPOLATED */
    int32_t unused;                       /* 0 */
} vtx_dry_air;

/* Everything this room knows of dry air at a pressure and temperature.
 *
 * pressure     in   Pa  1e3..5e6
 * temperature  in   K   100..473.15
 * air          out  -   result
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  EXTRAPOLATED
 * accuracy  that of the calls below
 * source    as the calls below
 */
VTX_API vtx_status vtx_dry_air_at(double pressure, double temperature, vtx_dry_air *air);

/* Compressibility factor of dry air, p v / (R T).
 *
 * pressure         in   Pa  1e3..5e6
 * temperature      in   K   100..473.15
 * compressibility  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_air_density
 * source    as vtx_air_density
 */
VTX_API vtx_status vtx_air_compressibility(double pressure, double temperature, double *compressibility);

/* Density of dry air.
 *
 * pressure     in   Pa     1e3..5e6
 * temperature  in   K      100..473.15
 * density      out  kg/m3
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000, from 213 K: 3e-5 to 1 MPa, 1e-4 to 1.5 MPa, 2.6e-4 to 2 MPa; from
 *           173 K 5e-5, 2.3e-4, 6e-4
 * source    virial equation to the third coefficient, Lemmon, Jacobsen, Penoncello, Friend 2000 at low density; molar mass 28.966 g/mol
 */
VTX_API vtx_status vtx_air_density(double pressure, double temperature, double *density);

/* Enthalpy of dry air, 0 at 273.15 K and 101325 Pa.
 *
 * pressure     in   Pa    1e3..5e6
 * temperature  in   K     100..473.15
 * enthalpy     out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000, from 213 K: 4 J/kg to 1 MPa, 10 J/kg to 1.5 MPa, 22 J/kg to 2 MPa;
 *           from 173 K half as much again
 * source    as vtx_air_density, with the ideal part of the same paper fitted to 1.2e-6 R in heat capacity
 */
VTX_API vtx_status vtx_air_enthalpy(double pressure, double temperature, double *enthalpy);

/* Entropy of dry air, 0 at 273.15 K and 101325 Pa.
 *
 * pressure     in   Pa        1e3..5e6
 * temperature  in   K         100..473.15
 * entropy      out  J/(kg K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000, from 213 K: 0.03 J/(kg K) to 1 MPa, 0.1 to 2 MPa
 * source    as vtx_air_enthalpy
 */
VTX_API vtx_status vtx_air_entropy(double pressure, double temperature, double *entropy);

/* Heat capacity of dry air at constant pressure.
 *
 * pressure       in   Pa        1e3..5e6
 * temperature    in   K         100..473.15
 * heat_capacity  out  J/(kg K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000: 5e-5 to 1 MPa, 2.4e-4 to 2 MPa
 * source    as vtx_air_enthalpy
 */
VTX_API vtx_status vtx_air_heat_capacity(double pressure, double temperature, double *heat_capacity);

/* Ratio of the heat capacities of dry air, at constant pressure over at constant volume.
 *
 * pressure     in   Pa  1e3..5e6
 * temperature  in   K   100..473.15
 * ratio        out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000: 5e-5 to 1 MPa, 5e-4 to 2 MPa
 * note      a real gas's isentropic exponent is not this ratio; for choked flow use vtx_air_critical_flow_factor
 * source    as vtx_air_enthalpy
 */
VTX_API vtx_status vtx_air_heat_capacity_ratio(double pressure, double temperature, double *ratio);

/* Speed of sound in dry air.
 *
 * pressure     in   Pa   1e3..5e6
 * temperature  in   K    100..473.15
 * speed        out  m/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000, from 213 K: 5e-5 to 1 MPa, 4e-4 to 2 MPa; from 173 K 1.1e-4 and
 *           9e-4
 * source    as vtx_air_enthalpy
 */
VTX_API vtx_status vtx_air_sound_speed(double pressure, double temperature, double *speed);

/* Joule-Thomson coefficient of dry air: how fast its temperature falls with pressure through a throttle.
 *
 * pressure     in   Pa    1e3..5e6
 * temperature  in   K     100..473.15
 * coefficient  out  K/Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the full equation of Lemmon and others 2000: 0.2 % to 1 MPa, 0.7 % to 2 MPa
 * source    as vtx_air_enthalpy
 */
VTX_API vtx_status vtx_air_joule_thomson(double pressure, double temperature, double *coefficient);

/* Dynamic viscosity of dry air.
 *
 * pressure     in   Pa    1e3..5e6
 * temperature  in   K     100..473.15
 * viscosity    out  Pa s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  reproduces the paper's table to its last digit; density adds at most 5e-5 to 2 MPa
 * source    Lemmon and Jacobsen 2004, equations 2 to 5, table 3; density of vtx_air_density
 */
VTX_API vtx_status vtx_air_viscosity(double pressure, double temperature, double *viscosity);

/* Thermal conductivity of dry air.
 *
 * pressure      in   Pa       1e3..5e6
 * temperature   in   K        100..473.15
 * conductivity  out  W/(m K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  reproduces the paper's table to its last digit; 1e-3 of the full equation from 213 K to 2 MPa, 4e-3 from 173 K,
 *           most of it the critical enhancement, which is left out
 * source    Lemmon and Jacobsen 2004, equations 6 to 8, table 4; density of vtx_air_density
 */
VTX_API vtx_status vtx_air_conductivity(double pressure, double temperature, double *conductivity);

/* Critical flow factor of dry air: choked mass flow of an ideal nozzle is factor times throat area times inlet pressure over
 * sqrt(R / M temperature), as in ISO 9300, with stagnation pressure and temperature.
 *
 * pressure     in   Pa  1e3..5e6
 * temperature  in   K   200..473.15
 * factor       out  -   0.6847 for a perfect gas of ratio 1.4
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  of the full equation of Lemmon and others 2000: 2e-6 at 1 MPa, 1.3e-5 at 2 MPa and 20 degC
 * source    energy and entropy conserved to the throat where the speed is that of sound, with the gas of vtx_air_density
 */
VTX_API vtx_status vtx_air_critical_flow_factor(double pressure, double temperature, double *factor);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_dry_air_at_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, vtx_dry_air *air, ptrdiff_t air_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_compressibility_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *compressibility,
        ptrdiff_t compressibility_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_density_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *density, ptrdiff_t density_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_enthalpy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *enthalpy, ptrdiff_t enthalpy_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_entropy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *entropy, ptrdiff_t entropy_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_heat_capacity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *heat_capacity,
        ptrdiff_t heat_capacity_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_heat_capacity_ratio_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *ratio, ptrdiff_t ratio_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_sound_speed_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *speed, ptrdiff_t speed_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_joule_thomson_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_viscosity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *viscosity, ptrdiff_t viscosity_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_conductivity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *conductivity, ptrdiff_t conductivity_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_air_critical_flow_factor_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *factor, ptrdiff_t factor_stride,
        int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
