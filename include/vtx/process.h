/* What happens to moist air on its way: expanding, throttling, heating, cooling, draining, mixing.
 *
 * Not the vortex tube (separation.h), not compressor power (compressor.h).
 * See also: moist_air.h for states, atmosphere.h and standard_flow.h for the air at the inlet.
 *
 * Amounts are per kg of dry air, which no process here creates or removes. Humidity ratios are total water: what exceeds saturation
 * is liquid or ice in equilibrium with the vapour, and a mixture of both at 273.16 K. Slow processes: a fast expansion may leave
 * vapour supersaturated for a while. */
#ifndef VTX_PROCESS_H
#define VTX_PROCESS_H

#include <vtx/moist_air.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Temperature after a reversible adiabatic expansion or compression; water condenses, freezes or evaporates as it must.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * inlet_pressure      in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   kg water per kg dry air, vapour and condensate together
 * outlet_pressure     in   Pa  1000..5e6   absolute, above or below the inlet's
 * outlet_temperature  out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the outlet would leave 100..473.15 K), NOT_CONVERGED (never seen)
 * accuracy  entropy kept to 3e-9 J/(kg K)
 * source    equality of entropy over the states of moist_air.h, 4 of which are evaluated on average, 12 at most
 * note      IDEAL is the handbook mixture: constant heat capacities, ideal gases; dry air follows T2 = T1 (p2/p1)^(287.042/1006)
 */
VTX_API vtx_status vtx_expansion_isentropic(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                            double outlet_pressure, double *outlet_temperature);

/* Temperature behind a throttle: an adiabatic expansion that does no work; water condenses, freezes or evaporates as it must.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * inlet_pressure      in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   kg water per kg dry air, vapour and condensate together
 * outlet_pressure     in   Pa  1000..inlet_pressure   absolute; above the inlet's is BAD_ARGUMENT
 * outlet_temperature  out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the outlet would be colder than 100 K), NOT_CONVERGED (never seen)
 * accuracy  enthalpy kept to 1e-6 J/kg; REAL drop of dry air within 0.01 K of the full equation of state (bench/accuracy)
 * source    equality of enthalpy over the states of moist_air.h, 3 of which are evaluated on average, 12 at most
 * note      IDEAL dry air keeps its temperature: the Joule-Thomson drop is a real-gas effect
 */
VTX_API vtx_status vtx_expansion_throttle(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                          double outlet_pressure, double *outlet_temperature);

/* Heat that changes the temperature at constant pressure, all water staying with the air.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure            in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   total water
 * outlet_temperature  in   K   100..473.15
 * heat                out  J/kg  per kg dry air, positive when added
 * condensed           out  -   may be null; kg water or ice per kg dry air at the outlet: below the dew point a cooler yields it
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the enthalpies of moist_air.h
 * source    first law
 * note      the same heat whether the condensate leaves at the outlet temperature or stays
 */
VTX_API vtx_status vtx_heat_to_temperature(int32_t model, double pressure, double inlet_temperature, double humidity_ratio,
                                           double outlet_temperature, double *heat, double *condensed);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_expansion_isentropic_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_expansion_throttle_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_heat_to_temperature_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        double *heat, ptrdiff_t heat_stride, double *condensed, ptrdiff_t condensed_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
