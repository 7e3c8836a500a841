/* The state of moist air from any two of its properties at a pressure.
 *
 * Not the everyday call: where the temperature and a humidity are known, vtx_moist_air_at is direct and a hundred times faster.
 * See also: moist_air.h for the properties and states, process.h for what leads from one state to another. */
#ifndef VTX_MOIST_PAIR_H
#define VTX_MOIST_PAIR_H

#include <vtx/moist_air.h>

#ifdef __cplusplus
extern "C" {
#endif

/* State of moist air that has two given properties.
 *
 * Any two of vtx_moist_property in any order, except two that say the same at a pressure: humidity ratio, vapour fraction, dew point
 * and frost point are four names of one property. Humidity ratio is total water beside temperature, enthalpy, entropy or volume; every
 * other humidity describes vapour and goes up to saturation over liquid, and so does humidity ratio beside it. Enthalpy, entropy and
 * volume with the temperature may describe fog or frost; two of them together describe equilibrium, not vapour supersaturated over ice.
 *
 * model       in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure    in   Pa     1000..5e6   absolute
 * property_a  in   -      vtx_moist_property
 * a           in   SI     as vtx_moist_air_at; enthalpy -1e8..1e8, entropy -1e6..1e6, volume above 0 to 1e4
 * property_b  in   -      vtx_moist_property, another one than property_a
 * b           in   SI     as a
 * state       out  -
 *
 * status    OK, BAD_ARGUMENT (also: the two are one property, or dry air leaves the temperature open), OUT_OF_RANGE (one of them alone),
 *           NO_SOLUTION (no state between 100 and 473.15 K has both), NOT_CONVERGED (never seen)
 * accuracy  both properties come back within 1e-9 of their size; the others as far as the two determine them
 * advisory  those of the state; INDISTINGUISHABLE when several states have both properties: the one without condensate is given,
 *           of several such the warmest
 * source    bracketed search on the states of moist_air.h
 * note      several states: temperature below freezing with enthalpy or entropy (vapour or frost); two of enthalpy, entropy and volume
 *           (vapour, or fog and frost of up to 10 kg/kg); wet bulb below freezing with entropy
 * note      nearly parallel pairs fix the state poorly: wet bulb near 0 degC with enthalpy; enthalpy with entropy near saturation at 0 degC
 */
VTX_API vtx_status vtx_moist_air_from_pair(int32_t model, double pressure, int32_t property_a, double a, int32_t property_b, double b,
                                           vtx_moist_air *state);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_moist_air_from_pair_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        int32_t property_a, const double *a, ptrdiff_t a_stride, int32_t property_b, const double *b,
        ptrdiff_t b_stride, vtx_moist_air *state, ptrdiff_t state_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
