/* The laws no vortex tube can break, for air as a perfect gas: balances, limits, exergy, efficiencies.
 *
 * Not a prediction of what a tube does (separation.h); not real gas or water (balance.h).
 * See also: cold_fraction.h for the cold fraction of a running tube with its uncertainty.
 *
 * All temperatures and pressures are stagnation values. "per kg" means per kg of inlet air. */
#ifndef VTX_LAWS_H
#define VTX_LAWS_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Energy that the two outlets lack against the inlet: cp (T0 - mu Tc - (1 - mu) Th). Zero for an adiabatic tube;
 * above zero heat is lost to the surroundings, below zero it is gained.
 *
 * heat_capacity      in   J/(kg K)  100..20000
 * inlet_temperature  in   K     50..1000
 * cold_temperature   in   K     50..1000
 * hot_temperature    in   K     50..1000
 * cold_fraction      in   -     0..1
 * residual           out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding of the difference: 1e-15 of cp T0
 * note      real air is colder by the Joule-Thomson drop, 1.6 K from 8 bar: that alone looks like 1600 J/kg lost (balance.h knows it)
 * source    first law, steady flow, constant heat capacity
 */
VTX_API vtx_status vtx_first_law_residual(double heat_capacity, double inlet_temperature, double cold_temperature,
                                          double hot_temperature, double cold_fraction, double *residual);

/* Hot outlet temperature that closes the first law at a cold temperature: T0 + mu (T0 - Tc) / (1 - mu).
 *
 * inlet_temperature  in   K     50..1000
 * cold_temperature   in   K     50..1000
 * cold_fraction      in   -     0..1       1 is OUT_OF_RANGE: nothing leaves at the hot end
 * hot_temperature    out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    first law, steady flow, constant heat capacity
 */
VTX_API vtx_status vtx_hot_temperature_from_balance(double inlet_temperature, double cold_temperature, double cold_fraction,
                                                    double *hot_temperature);

/* Cold fraction that closes the first law: (Th - T0) / (Th - Tc). Exact for a perfect gas, adiabatic.
 *
 * inlet_temperature  in   K     50..1000
 * cold_temperature   in   K     50..1000   at most the inlet's, else BAD_ARGUMENT
 * hot_temperature    in   K     50..1000   at least the inlet's and above the cold one, else BAD_ARGUMENT
 * cold_fraction      out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for a perfect gas; real air from 8 bar reads 0.016 (cold fraction 1) to 0.04 (0.1) too low, because of the
 *           Joule-Thomson drop (vtx_cold_fraction_from_thermometers knows it); a hot end losing heat adds to the error
 * note      thermometers decide: 1 K on each of the three is 0.025 at 50 K between the outlets
 * source    first law, steady flow, constant heat capacity
 */
VTX_API vtx_status vtx_cold_fraction_from_temperatures(double inlet_temperature, double cold_temperature, double hot_temperature,
                                                       double *cold_fraction);

/* Refrigeration capacity of a cold stream: m cp (reference - Tc). Negative when the stream is warmer than the reference.
 *
 * cold_mass_flow         in   kg/s  0..100
 * heat_capacity          in   J/(kg K)  100..20000
 * reference_temperature  in   K     50..1000   supply temperature (the usual figure of the literature) or that of what is cooled
 * cold_temperature       in   K     50..1000
 * capacity               out  W
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for constant heat capacity
 * source    first law
 */
VTX_API vtx_status vtx_refrigeration_capacity(double cold_mass_flow, double heat_capacity, double reference_temperature,
                                              double cold_temperature, double *capacity);

/* Entropy generated per kg of inlet air. Below zero the readings contradict the second law.
 *
 * heat_capacity       in   J/(kg K)  100..20000
 * gas_constant        in   J/(kg K)  10..5000   below the heat capacity
 * inlet_pressure      in   Pa    1e3..1e8
 * inlet_temperature   in   K     50..1000
 * cold_pressure       in   Pa    1e3..1e8
 * cold_temperature    in   K     50..1000
 * hot_pressure        in   Pa    1e3..1e8
 * hot_temperature     in   K     50..1000
 * cold_fraction       in   -     0..1
 * entropy_generation  out  J/(kg K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for a perfect gas; no balance is asked for: the states are taken as given
 * source    second law, perfect gas of constant heat capacity
 */
VTX_API vtx_status vtx_entropy_generation(double heat_capacity, double gas_constant, double inlet_pressure,
                                          double inlet_temperature, double cold_pressure, double cold_temperature,
                                          double hot_pressure, double hot_temperature, double cold_fraction,
                                          double *entropy_generation);

/* Coldest cold outlet the second law allows at a cold fraction, for a perfect adiabatic tube.
 *
 * gamma              in   -     1.01..1.7   ratio of heat capacities
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * cold_pressure      in   Pa    1e3..1e8   at most the inlet's, else BAD_ARGUMENT
 * hot_pressure       in   Pa    1e3..1e8   at most the inlet's, else BAD_ARGUMENT
 * cold_fraction      in   -     0..1       0 and 1 are OUT_OF_RANGE
 * cold_temperature   out  K              tends to 0 with the cold fraction, and is 0 where it is too small for a number
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  1e-9 of the tabulated limits, which were computed independently
 * note      a very weak bound: at small cold fractions it lies far below the isentropic expansion temperature, which is
 *           the practical ceiling. Use it to reject impossible readings. With the two outlets exchanged
 *           (hot_pressure, cold_pressure, 1 - cold_fraction) it gives the coldest hot outlet.
 * source    energy and entropy balance of a perfect gas, solved for the lower root
 */
VTX_API vtx_status vtx_second_law_limit(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                        double hot_pressure, double cold_fraction, double *cold_temperature);

/* Isentropic drop of temperature T0 (1 - (pc/p0)^((gamma-1)/gamma)): the practical ceiling of the cold drop.
 *
 * gamma              in   -     1.01..1.7
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * cold_pressure      in   Pa    1e3..1e8   at most the inlet's, else BAD_ARGUMENT
 * drop               out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding, also for nearly equal pressures
 * caution   not T0 ((p0/pc)^k - 1), which is the rise in compression, 1.74 times as large at a ratio of 7: an efficiency
 *           taken with it is too small by that factor
 * source    isentropic expansion of a perfect gas
 */
VTX_API vtx_status vtx_isentropic_drop(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                       double *drop);

/* What an ideal vortex could do: gas enters at the rim at the swirl Mach number, turns as a solid body, leaves at the axis. */
typedef struct vtx_vortex {
    double swirl_mach;                 /* -    Mach number at the rim that expands the axis to the cold pressure */
    double rim_temperature;            /* K    static, at the rim */
    double axis_temperature;           /* K    at the axis, at rest */
    double work_drop;                  /* K    ceiling if all swirl work leaves the cold gas: equals the isentropic drop */
    double kinetic_drop;               /* K    ceiling if the cold gas loses only its own entry kinetic energy: half of it */
    double sonic_work_drop;            /* K    work_drop when the entry is at most sonic (a converging nozzle) */
    double sonic_kinetic_drop;         /* K    kinetic_drop when the entry is at most sonic */
    double sonic_pressure_ratio;       /* -    inlet over cold pressure at which the entry becomes sonic */
    double outlet_temperature_ratio;   /* -    hot over cold stagnation temperature of adiabatic eddies at this entry */
} vtx_vortex;

/* Ceilings of an ideal vortex.
 *
 * gamma              in   -     1.01..1.7
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * cold_pressure      in   Pa    1e3..1e8   at most the inlet's, else BAD_ARGUMENT
 * hot_pressure       in   Pa    1e3..1e8   at most the inlet's, else BAD_ARGUMENT
 * vortex             out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for the idealisation, which no tube reaches: tubes give 0.15..0.45 of work_drop (from memory)
 * source    derived: forced vortex, adiabatic radial profile; after the ideas of Ahlborn et al. 1994, Liew et al. 2012 and
 *           Polihronov and Straatman 2012 (from memory)
 */
VTX_API vtx_status vtx_ideal_vortex(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                    double hot_pressure, vtx_vortex *vortex);

/* Exergy of flowing air against surroundings: the most work it could give. Negative only below their pressure.
 *
 * heat_capacity         in   J/(kg K)  100..20000
 * gas_constant          in   J/(kg K)  10..5000   below the heat capacity
 * pressure              in   Pa    1e3..1e8
 * temperature           in   K     50..1000
 * ambient_pressure      in   Pa    1e3..1e8
 * ambient_temperature   in   K     50..1000
 * exergy                out  J/kg
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding: 1e-13 of cp T
 * source    definition of flow exergy, perfect gas
 */
VTX_API vtx_status vtx_flow_exergy(double heat_capacity, double gas_constant, double pressure, double temperature,
                                   double ambient_pressure, double ambient_temperature, double *exergy);

/* Where the exergy of the inlet air goes. */
typedef struct vtx_exergy_account {
    double inlet;         /* J/kg  flow exergy of the inlet air */
    double cold;          /* J/kg  with the cold stream, per kg of inlet air */
    double hot;           /* J/kg  with the hot stream, per kg of inlet air */
    double destruction;   /* J/kg  ambient temperature times entropy generated */
    double heat_exergy;   /* J/kg  with heat to the surroundings: inlet - cold - hot - destruction; 0 for an adiabatic tube */
    double cold_share;    /* -     cold / inlet; NaN when the inlet has no exergy */
    double total_share;   /* -     (cold + hot) / inlet; NaN when the inlet has no exergy */
    int32_t advisories;   /* FIELD_UNAVAILABLE: the shares are NaN */
    int32_t spare;        /* 0 */
} vtx_exergy_account;

/* Exergy of each stream and its destruction.
 *
 * heat_capacity         in   J/(kg K)  100..20000
 * gas_constant          in   J/(kg K)  10..5000   below the heat capacity
 * inlet_pressure        in   Pa    1e3..1e8
 * inlet_temperature     in   K     50..1000
 * cold_pressure         in   Pa    1e3..1e8
 * cold_temperature      in   K     50..1000
 * hot_pressure          in   Pa    1e3..1e8
 * hot_temperature       in   K     50..1000
 * cold_fraction         in   -     0..1
 * ambient_pressure      in   Pa    1e3..1e8
 * ambient_temperature   in   K     50..1000
 * account               out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  closes to 1e-10 of the inlet exergy with states that keep the first law
 * note      as a source of cold the tube is a device of well under one percent; that is physics, not a fault
 * source    Gouy-Stodola theorem, perfect gas
 */
VTX_API vtx_status vtx_exergy_balance(double heat_capacity, double gas_constant, double inlet_pressure, double inlet_temperature,
                                      double cold_pressure, double cold_temperature, double hot_pressure, double hot_temperature,
                                      double cold_fraction, double ambient_pressure, double ambient_temperature,
                                      vtx_exergy_account *account);

/* Isentropic temperature efficiency of the cold stream: (T0 - Tc) over the isentropic drop to the cold pressure.
 *
 * gamma              in   -     1.01..1.7
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * cold_pressure      in   Pa    1e3..1e8   below the inlet's, else BAD_ARGUMENT
 * cold_temperature   in   K     50..1000
 * efficiency         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * note      the cold pressure, not the ambient one, belongs here
 * source    definition
 */
VTX_API vtx_status vtx_isentropic_temperature_efficiency(double gamma, double inlet_pressure, double inlet_temperature,
                                                         double cold_pressure, double cold_temperature, double *efficiency);

/* Cold fraction times isentropic temperature efficiency: what much of the literature calls adiabatic efficiency.
 *
 * gamma              in   -     1.01..1.7
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * cold_pressure      in   Pa    1e3..1e8   below the inlet's, else BAD_ARGUMENT
 * cold_temperature   in   K     50..1000
 * cold_fraction      in   -     0..1
 * efficiency         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition; Merkulov 1969 (from memory)
 */
VTX_API vtx_status vtx_adiabatic_efficiency(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                            double cold_temperature, double cold_fraction, double *efficiency);

/* Coefficient of performance against reversible isothermal compression: mu cp (T0 - Tc) / (R T ln(p0 / intake)).
 *
 * heat_capacity       in   J/(kg K)  100..20000
 * gas_constant        in   J/(kg K)  10..5000   below the heat capacity
 * intake_pressure     in   Pa    1e3..1e8   where the compressor draws, not the cold outlet; below the inlet's, else BAD_ARGUMENT
 * intake_temperature  in   K     50..1000
 * inlet_pressure      in   Pa    1e3..1e8
 * inlet_temperature   in   K     50..1000
 * cold_temperature    in   K     50..1000
 * cold_fraction       in   -     0..1
 * performance         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition
 */
VTX_API vtx_status vtx_cop_isothermal(double heat_capacity, double gas_constant, double intake_pressure, double intake_temperature,
                                      double inlet_pressure, double inlet_temperature, double cold_temperature,
                                      double cold_fraction, double *performance);

/* Coefficient of performance against isentropic compression: mu (T0 - Tc) / (T ((p0 / intake)^k - 1)).
 *
 * heat_capacity       in   J/(kg K)  100..20000
 * gas_constant        in   J/(kg K)  10..5000   below the heat capacity
 * intake_pressure     in   Pa    1e3..1e8   where the compressor draws, not the cold outlet; below the inlet's, else BAD_ARGUMENT
 * intake_temperature  in   K     50..1000
 * inlet_pressure      in   Pa    1e3..1e8
 * inlet_temperature   in   K     50..1000
 * cold_temperature    in   K     50..1000
 * cold_fraction       in   -     0..1
 * performance         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition
 */
VTX_API vtx_status vtx_cop_adiabatic(double heat_capacity, double gas_constant, double intake_pressure, double intake_temperature,
                                     double inlet_pressure, double inlet_temperature, double cold_temperature,
                                     double cold_fraction, double *performance);

/* Coefficient of performance the user pays for: mu cp (T0 - Tc) over the electrical work of the compressor.
 *
 * heat_capacity      in   J/(kg K)  100..20000
 * inlet_temperature  in   K     50..1000
 * cold_temperature   in   K     50..1000
 * cold_fraction      in   -     0..1
 * electrical_work    in   J/kg  1e3..1e8   per kg of compressed air delivered, dryer and leaks included
 * performance        out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition
 */
VTX_API vtx_status vtx_cop_electrical(double heat_capacity, double inlet_temperature, double cold_temperature, double cold_fraction,
                                      double electrical_work, double *performance);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_first_law_residual_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *hot_temperature, ptrdiff_t hot_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *residual, ptrdiff_t residual_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_hot_temperature_from_balance_batch(size_t n, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *hot_temperature,
        ptrdiff_t hot_temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_fraction_from_temperatures_batch(size_t n, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *hot_temperature, ptrdiff_t hot_temperature_stride, double *cold_fraction,
        ptrdiff_t cold_fraction_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_refrigeration_capacity_batch(size_t n, const double *cold_mass_flow, ptrdiff_t cold_mass_flow_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        double *capacity, ptrdiff_t capacity_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_entropy_generation_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        const double *hot_temperature, ptrdiff_t hot_temperature_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *entropy_generation, ptrdiff_t entropy_generation_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_second_law_limit_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_isentropic_drop_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        double *drop, ptrdiff_t drop_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_ideal_vortex_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, vtx_vortex *vortex, ptrdiff_t vortex_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_flow_exergy_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *ambient_pressure,
        ptrdiff_t ambient_pressure_stride, const double *ambient_temperature, ptrdiff_t ambient_temperature_stride,
        double *exergy, ptrdiff_t exergy_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_exergy_balance_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        const double *hot_temperature, ptrdiff_t hot_temperature_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        const double *ambient_temperature, ptrdiff_t ambient_temperature_stride, vtx_exergy_account *account,
        ptrdiff_t account_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_isentropic_temperature_efficiency_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, double *efficiency,
        ptrdiff_t efficiency_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_adiabatic_efficiency_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *efficiency, ptrdiff_t efficiency_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_cop_isothermal_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *intake_pressure,
        ptrdiff_t intake_pressure_stride, const double *intake_temperature, ptrdiff_t intake_temperature_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *performance,
        ptrdiff_t performance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cop_adiabatic_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *intake_pressure,
        ptrdiff_t intake_pressure_stride, const double *intake_temperature, ptrdiff_t intake_temperature_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *performance,
        ptrdiff_t performance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cop_electrical_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        const double *electrical_work, ptrdiff_t electrical_work_stride, double *performance,
        ptrdiff_t performance_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
