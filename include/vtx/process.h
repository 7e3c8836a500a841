/* What happens to moist air on its way: expanding, throttling, heating, cooling, draining, mixing.
 *
 * Not the vortex tube (separation.h), not compressor power (compressor.h).
 * See also: moist_air.h for states, atmosphere.h and standard_flow.h for the air at the inlet.
 *
 * Amounts are per kg of dry air, which no process here creates or removes. Humidity ratios are total water: what exceeds saturation
 * is liquid or ice in equilibrium with the vapour, and a mixture of both at 273.16 K. Slow processes: a fast expansion may leave
 * vapour supersaturated for a while.
 *
 * Both models keep enthalpy to 1e-6 J/kg. Entropy never falls in the REAL model (2e-9 J/(kg K) at worst on random mixtures, 5e-8 on
 * nearly equal saturated streams up to 5 MPa, by what the second note of vtx_moist_air_at leaves between vapour and condensate); in
 * the IDEAL model it may by 0.2 J/(kg K) per kg of ice or fog, because the handbook's heats of condensate and the saturation
 * pressure do not quite belong together: 2.1 t for ice at -60 degC is a fifth too much. */
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

/* State after a reversible adiabatic expansion or compression: vtx_expansion_isentropic with all that is known.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * inlet_pressure      in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   total water
 * outlet_pressure     in   Pa  1000..5e6   absolute, above or below the inlet's
 * outlet              out  -   state with condensed, condensed_phase and frozen_share
 * work                out  J/kg  may be null; enthalpy given up, negative for compression
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * accuracy  as vtx_expansion_isentropic
 * advisory  those of the outlet state
 * source    as vtx_expansion_isentropic
 */
VTX_API vtx_status vtx_expanded_isentropic(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                           double outlet_pressure, vtx_moist_air *outlet, double *work);

/* State behind a throttle: vtx_expansion_throttle with all that is known.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * inlet_pressure      in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   total water
 * outlet_pressure     in   Pa  1000..inlet_pressure   absolute
 * outlet              out  -   state with condensed, condensed_phase and frozen_share
 * entropy_generation  out  J/(kg K)  may be null; per kg dry air
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * accuracy  as vtx_expansion_throttle
 * advisory  those of the outlet state
 * source    as vtx_expansion_throttle
 */
VTX_API vtx_status vtx_expanded_throttle(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                         double outlet_pressure, vtx_moist_air *outlet, double *entropy_generation);

/* State after a real expansion or compression with an isentropic efficiency: 0 throttles, 1 is reversible.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * inlet_pressure      in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   total water
 * outlet_pressure     in   Pa  1000..5e6   absolute; above the inlet's it is a compression
 * efficiency          in   -   0..1   expansion: work over isentropic work; compression: the reverse, 0 is BAD_ARGUMENT
 * outlet              out  -   state with condensed, condensed_phase and frozen_share
 * work                out  J/kg  may be null; enthalpy given up, negative for compression
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * accuracy  as vtx_expansion_isentropic
 * advisory  those of the outlet state
 * source    definition of isentropic efficiency
 * note      an adiabatic compression to 8 bar in one stage leaves the range of temperature: see vtx_condensate_drained for what
 *           the aftercooler leaves
 */
VTX_API vtx_status vtx_expanded_with_efficiency(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                                double outlet_pressure, double efficiency, vtx_moist_air *outlet, double *work);

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

/* State after adding or removing heat at constant pressure, all water staying with the air.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure            in   Pa  1000..5e6   absolute
 * inlet_temperature   in   K   100..473.15
 * humidity_ratio      in   -   0..10   total water
 * heat                in   J/kg  -1e8..1e8   per kg dry air, positive when added
 * outlet              out  -   state with condensed, condensed_phase and frozen_share
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the outlet would leave 100..473.15 K), NOT_CONVERGED (never seen)
 * accuracy  enthalpy kept to 1e-6 J/kg
 * advisory  those of the outlet state
 * source    first law
 */
VTX_API vtx_status vtx_heated(int32_t model, double pressure, double inlet_temperature, double humidity_ratio, double heat,
                              vtx_moist_air *outlet);

/* What a separator drains from air that was compressed, cooled or both, and the state that goes on.
 *
 * model           in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure        in   Pa  1000..5e6   absolute, at the separator
 * temperature     in   K   100..473.15   at the separator
 * humidity_ratio  in   -   0..10   total water, as it entered the compressor or cooler
 * drained_share   in   -   0..1   of the condensate; 1 for a perfect separator
 * drained         out  -   kg per kg dry air
 * outlet          out  -   may be null; state behind the separator, with the condensate that was not drained
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the saturation of moist_air.h; IDEAL drains 2 to 5 % too much of what stays vapour at 8 bar
 * advisory  those of the outlet state
 * source    water balance
 */
VTX_API vtx_status vtx_condensate_drained(int32_t model, double pressure, double temperature, double humidity_ratio,
                                          double drained_share, double *drained, vtx_moist_air *outlet);

/* State of two streams mixed without heat loss at one pressure.
 *
 * model                  in   -     VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure               in   Pa    1000..5e6   absolute, of both streams and the mixture
 * first_temperature      in   K     100..473.15
 * first_humidity_ratio   in   -     0..10   total water
 * first_dry_air          in   kg/s  0..1e9   flow of dry air; any unit that both share
 * second_temperature     in   K     100..473.15
 * second_humidity_ratio  in   -     0..10   total water
 * second_dry_air         in   kg/s  0..1e9   not both zero
 * mixed                  out  -     state with condensed, condensed_phase and frozen_share
 * entropy_generation     out  J/(kg K)  may be null; per kg dry air of the mixture
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * accuracy  enthalpy kept to 1e-6 J/kg
 * advisory  those of the mixed state: CONDENSING where two clear streams make fog
 * source    balances of dry air, water and enthalpy
 */
VTX_API vtx_status vtx_mixed(int32_t model, double pressure, double first_temperature, double first_humidity_ratio, double first_dry_air,
                             double second_temperature, double second_humidity_ratio, double second_dry_air, vtx_moist_air *mixed,
                             double *entropy_generation);

/* State of n streams mixed without heat loss, each throttled to the mixture's pressure.
 *
 * model               in   -     VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure            in   Pa    1000..5e6   absolute, of the mixture
 * n                   in   -     1 and up
 * inlet_pressure      in   Pa    n values, pressure..5e6; below the mixture's is BAD_ARGUMENT
 * inlet_temperature   in   K     n values, 100..473.15
 * humidity_ratio      in   -     n values, 0..10   total water
 * dry_air             in   kg/s  n values, 0..1e9   not all zero
 * mixed               out  -     state with condensed, condensed_phase and frozen_share
 * entropy_generation  out  J/(kg K)  may be null; per kg dry air of the mixture
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * accuracy  enthalpy kept to 1e-6 J/kg
 * advisory  those of the mixed state
 * source    balances of dry air, water and enthalpy
 */
VTX_API vtx_status vtx_mixed_streams(int32_t model, double pressure, size_t n, const double *inlet_pressure,
                                     const double *inlet_temperature, const double *humidity_ratio, const double *dry_air,
                                     vtx_moist_air *mixed, double *entropy_generation);

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
VTX_API vtx_status vtx_expanded_isentropic_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, vtx_moist_air *outlet, ptrdiff_t outlet_stride, double *work,
        ptrdiff_t work_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_expanded_throttle_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, vtx_moist_air *outlet, ptrdiff_t outlet_stride, double *entropy_generation,
        ptrdiff_t entropy_generation_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_expanded_with_efficiency_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, const double *efficiency, ptrdiff_t efficiency_stride,
        vtx_moist_air *outlet, ptrdiff_t outlet_stride, double *work, ptrdiff_t work_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_heat_to_temperature_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        double *heat, ptrdiff_t heat_stride, double *condensed, ptrdiff_t condensed_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_heated_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *heat, ptrdiff_t heat_stride, vtx_moist_air *outlet,
        ptrdiff_t outlet_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_condensate_drained_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *drained_share, ptrdiff_t drained_share_stride,
        double *drained, ptrdiff_t drained_stride, vtx_moist_air *outlet, ptrdiff_t outlet_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_mixed_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *first_temperature, ptrdiff_t first_temperature_stride, const double *first_humidity_ratio,
        ptrdiff_t first_humidity_ratio_stride, const double *first_dry_air, ptrdiff_t first_dry_air_stride,
        const double *second_temperature, ptrdiff_t second_temperature_stride, const double *second_humidity_ratio,
        ptrdiff_t second_humidity_ratio_stride, const double *second_dry_air, ptrdiff_t second_dry_air_stride,
        vtx_moist_air *mixed, ptrdiff_t mixed_stride, double *entropy_generation,
        ptrdiff_t entropy_generation_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
