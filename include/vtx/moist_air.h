/* Moist air: states from any humidity measure, dew and frost points, in an ideal and a real-gas model.
 *
 * Not processes: what happens to moist air on its way is in process.h.
 * See also: water.h for pure water, air.h for dry air.
 *
 * Both models answer from 100 to 473.15 K and 1 kPa to 5 MPa. REAL is meant for 173.15 to 373.15 K and 0.01 to 2 MPa; a struct
 * result outside says so by VTX_ADVISORY_EXTRAPOLATED. REAL also needs pressure <= 0.4 MPa (temperature / 100 K)^4, below which
 * air itself is far from condensing. */
#ifndef VTX_MOIST_AIR_H
#define VTX_MOIST_AIR_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* How moist air is computed: a selector of every call that concerns it. */
enum vtx_air_model {
    VTX_AIR_IDEAL = 1, /* handbook mixture of ideal gases, what is taught in class */
    VTX_AIR_REAL = 2   /* virial equation of state, condensate in true equilibrium */
};

/* Measures of a state of moist air; the humidity measures are the first seven. */
enum vtx_moist_property {
    VTX_HUMIDITY_RATIO = 10,        /* kg water per kg dry air; as an input the total water, what exceeds saturation condenses */
    VTX_RELATIVE_HUMIDITY = 11,     /* mole fraction over that of saturation over liquid, at every temperature, 0..1 */
    VTX_RELATIVE_HUMIDITY_ICE = 12, /* the same over ice below 273.16 K, equal to the other above it */
    VTX_DEW_POINT = 13,             /* K, over liquid, supercooled below 273.16 K */
    VTX_FROST_POINT = 14,           /* K, over ice */
    VTX_WET_BULB = 15,              /* K, of adiabatic saturation; below 273.16 K the wick is iced */
    VTX_VAPOUR_FRACTION = 16,       /* mole fraction of water in the gas */
    VTX_ABSOLUTE_HUMIDITY = 17,     /* kg vapour per m3 of gas */
    VTX_TEMPERATURE = 18,           /* K */
    VTX_ENTHALPY = 19,              /* J per kg dry air */
    VTX_ENTROPY = 20,               /* J/K per kg dry air */
    VTX_VOLUME = 21                 /* m3 per kg dry air */
};

/* Dew point of air that holds a humidity ratio: the temperature at which it is saturated over liquid water.
 *
 * model           in   -      vtx_air_model
 * pressure        in   Pa     1e3..5e6
 * humidity_ratio  in   kg/kg  0..10, vapour per dry air; 0 has no dew point: OUT_OF_RANGE
 * temperature     out  K      233.15..473.15, supercooled liquid below 273.16
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where the dew point lies outside its range), NOT_CONVERGED
 * accuracy  REAL 5e-5 K of ASHRAE RP-1485 from 1 to 10 bar, 3e-4 K at 20 bar; back to the humidity ratio within 1e-12 K
 * source    IAPWS R7-97(2012) saturation; REAL: virial equation of state of RP-1485 (Herrmann, Kretzschmar, Gatley 2009)
 */
VTX_API vtx_status vtx_dew_point(int32_t model, double pressure, double humidity_ratio, double *temperature);

/* Frost point of air that holds a humidity ratio: the temperature at which it is saturated over ice.
 *
 * model           in   -      vtx_air_model
 * pressure        in   Pa     1e3..5e6
 * humidity_ratio  in   kg/kg  0..10, vapour per dry air; 0 has no frost point: OUT_OF_RANGE
 * temperature     out  K      100..273.16
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where there is a dew point above 273.16 K instead), NOT_CONVERGED
 * accuracy  REAL 1e-4 K of ASHRAE RP-1485 from 1 to 10 bar, 1e-3 K at 20 bar; back to the humidity ratio within 1e-12 K
 * source    IAPWS R14-08(2011) sublimation; REAL: virial equation of state of RP-1485 (Herrmann, Kretzschmar, Gatley 2009)
 */
VTX_API vtx_status vtx_frost_point(int32_t model, double pressure, double humidity_ratio, double *temperature);

/* Humidity ratio of saturated air, over liquid from 273.16 K and over ice below.
 *
 * model           in   -      vtx_air_model
 * pressure        in   Pa     1e3..5e6
 * temperature     in   K      100..473.15
 * humidity_ratio  out  kg/kg  vapour per dry air
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also at and above the boiling point, where air holds any amount of vapour)
 * accuracy  REAL 5e-6 of ASHRAE RP-1485 to 10 bar and 80 degC, 8e-5 at 20 bar; from 273.16 to 285 K up to 7.5e-4 high at 8 bar so
 *           that liquid and ice meet at 273.16 K under every pressure; IDEAL 0.4 to 0.7 % low at 1 atm, 2 to 5 % at 8 bar
 * source    as vtx_dew_point and vtx_frost_point; IDEAL: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20
 */
VTX_API vtx_status vtx_saturation_humidity_ratio(int32_t model, double pressure, double temperature, double *humidity_ratio);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_dew_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_frost_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_saturation_humidity_ratio_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *temperature, ptrdiff_t temperature_stride, double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
