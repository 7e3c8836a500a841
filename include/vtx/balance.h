/* The balances of a tube in real or perfect air: energy, entropy and exergy of three given states.
 *
 * Not a prediction (separation.h): the states may be readings, and may contradict the laws.
 * See also: laws.h for any perfect gas, reading.h for readings with their uncertainty and a verdict. */
#ifndef VTX_BALANCE_H
#define VTX_BALANCE_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Balances per kg of inlet air, and the limits of its expansion. */
typedef struct vtx_balance {
    double energy_residual;        /* J/kg      inlet enthalpy minus outlets'; above 0 heat is lost, below 0 gained */
    double entropy_generation;     /* J/(K kg)  outlets' entropy minus the inlet's; below 0 an adiabatic tube cannot be so */
    double isentropic_temperature; /* K         after isentropic expansion to the cold pressure: the practical limit */
    double throttle_temperature;   /* K         after throttling to the cold pressure */
    double joule_thomson_drop;     /* K         inlet minus throttle temperature */
    double isentropic_efficiency;  /* -         cold drop over isentropic drop; NaN without expansion */
    double inlet_exergy;           /* J/kg      against the surroundings, water as in the feed */
    double cold_exergy;            /* J/kg      with the cold stream */
    double hot_exergy;             /* J/kg      with the hot stream */
    double exergy_destruction;     /* J/kg      inlet minus outlets: ambient temperature times entropy generated, but for energy_residual */
    int32_t advisories;            /* bits of enum vtx_advisory */
    int32_t spare;                 /* 0 */
} vtx_balance;

/* Balances of an inlet and two outlets at a cold fraction.
 *
 * model                in   -     enum vtx_air_model; IDEAL as in vtx_tube_separate
 * inlet_pressure       in   Pa    1e4..1e7 IDEAL, 1e4..5e6 REAL
 * inlet_temperature    in   K     150..450
 * humidity_ratio       in   -     0..0.2   of all three streams; water beyond saturation is condensed in equilibrium
 * cold_pressure        in   Pa    1e3..inlet pressure; above it BAD_ARGUMENT
 * cold_temperature     in   K     100..1000
 * hot_pressure         in   Pa    1e3..inlet pressure; above it BAD_ARGUMENT
 * hot_temperature      in   K     100..1000
 * cold_fraction        in   -     0..1
 * ambient_pressure     in   Pa    1e3..5e6
 * ambient_temperature  in   K     150..450
 * balance              out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * accuracy  states of moist_air.h; 1e-6 J/kg of them
 * advisory  CONDENSING, FREEZING, EXTRAPOLATED, FIELD_UNAVAILABLE
 * note      at 273.16 K condensate is taken as liquid
 * source    first and second law; flow exergy h - ha - Ta (s - sa)
 */
VTX_API vtx_status vtx_tube_balance(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                    double cold_pressure, double cold_temperature, double hot_pressure, double hot_temperature,
                                    double cold_fraction, double ambient_pressure, double ambient_temperature,
                                    vtx_balance *balance);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_tube_balance_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *hot_temperature,
        ptrdiff_t hot_temperature_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        const double *ambient_pressure, ptrdiff_t ambient_pressure_stride, const double *ambient_temperature,
        ptrdiff_t ambient_temperature_stride, vtx_balance *balance, ptrdiff_t balance_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
