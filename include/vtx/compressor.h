/* Compressors: least power of compression, specific power, package efficiency, a compressor at a demand.
 *
 * Not a design of the machine: what it delivers and draws comes from the caller. Free air is air at the intake state.
 * See also: receiver.h for storage and leakage, air_cost.h for a year's bill, standard_flow.h to turn mass flow into free air. */
#ifndef VTX_COMPRESSOR_H
#define VTX_COMPRESSOR_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Power of compression at constant temperature: the least that any machine can need.
 *
 * intake_pressure     in   Pa    1e3..1e8
 * discharge_pressure  in   Pa    intake_pressure..1e8
 * free_air            in   m3/s  0..1e3, at the intake state
 * power               out  W
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  perfect gas
 * source    P = p1 Q ln(p2/p1)
 */
VTX_API vtx_status vtx_isothermal_compression_power(double intake_pressure, double discharge_pressure, double free_air,
                                                    double *power);

/* Power of compression without losses or cooling, in one stage.
 *
 * gamma               in   -     1.01..1.7, 1.4 for air
 * intake_pressure     in   Pa    1e3..1e8
 * discharge_pressure  in   Pa    intake_pressure..1e8
 * free_air            in   m3/s  0..1e3, at the intake state
 * power               out  W
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  perfect gas; 0.06 % of the work of real dry air up to 4 bar from 273 to 313 K
 * source    P = gamma/(gamma-1) p1 Q ((p2/p1)^((gamma-1)/gamma) - 1)
 */
VTX_API vtx_status vtx_isentropic_compression_power(double gamma, double intake_pressure, double discharge_pressure,
                                                    double free_air, double *power);

/* Power of compression without losses in stages of equal pressure ratio, cooled to the intake temperature between them.
 *
 * gamma               in   -     1.01..1.7
 * stages              in   -     1..100
 * intake_pressure     in   Pa    1e3..1e8
 * discharge_pressure  in   Pa    intake_pressure..1e8
 * free_air            in   m3/s  0..1e3, at the intake state
 * power               out  W
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  perfect gas, perfect intercoolers without pressure drop
 * source    as vtx_isentropic_compression_power, stages times
 */
VTX_API vtx_status vtx_staged_compression_power(double gamma, int32_t stages, double intake_pressure, double discharge_pressure,
                                                double free_air, double *power);

/* Specific power of a package: 60 kJ/m3 is 1 kW/(m3/min).
 *
 * power           in   W     1e-3..1e9, drawn by the whole package
 * free_air        in   m3/s  1e-9..1e3
 * specific_power  out  J/m3
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    ISO 1217: package input power over free air delivery
 */
VTX_API vtx_status vtx_specific_power(double power, double free_air, double *specific_power);

/* Isentropic efficiency of a package: the power of a loss-free uncooled compression over the power drawn.
 *
 * gamma               in   -     1.01..1.7, 1.4 for air
 * intake_pressure     in   Pa    1e3..1e8
 * discharge_pressure  in   Pa    intake_pressure..1e8
 * free_air            in   m3/s  1e-9..1e3
 * power               in   W     1e-3..1e9, drawn by the whole package
 * efficiency          out  -
 *
 * status    OK, BAD_ARGUMENT (also when the power is below that of vtx_isothermal_compression_power, which no machine can do), OUT_OF_RANGE
 * accuracy  perfect gas
 * source    ISO 1217, isentropic efficiency (from memory); 0.5 to 0.8 is usual near 8 bar (common practice, no source)
 */
VTX_API vtx_status vtx_package_efficiency(double gamma, double intake_pressure, double discharge_pressure, double free_air,
                                          double power, double *efficiency);

/* Power that a package of given isentropic efficiency draws.
 *
 * gamma               in   -     1.01..1.7, 1.4 for air
 * intake_pressure     in   Pa    1e3..1e8
 * discharge_pressure  in   Pa    intake_pressure..1e8
 * free_air            in   m3/s  0..1e3
 * efficiency          in   -     0.01..1 (0..1 possible)
 * power               out  W
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  perfect gas
 * source    inverse of vtx_package_efficiency
 */
VTX_API vtx_status vtx_package_power(double gamma, double intake_pressure, double discharge_pressure, double free_air,
                                     double efficiency, double *power);

/* Power that a pascal more of discharge pressure costs: what a loaded filter or a narrow pipe adds to the bill.
 *
 * gamma               in   -     1.01..1.7, 1.4 for air
 * intake_pressure     in   Pa    1e3..1e8
 * discharge_pressure  in   Pa    intake_pressure..1e8
 * free_air            in   m3/s  0..1e3
 * efficiency          in   -     0.01..1 (0..1 possible)
 * slope               out  W/Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  perfect gas, constant efficiency; 8 % of the power a bar at 8 bar
 * source    derivative of vtx_package_power: Q/efficiency (p1/p2)^(1/gamma)
 */
VTX_API vtx_status vtx_power_per_pressure(double gamma, double intake_pressure, double discharge_pressure, double free_air,
                                          double efficiency, double *slope);

/* A compressor with its receiver, as its owner knows it. */
typedef struct vtx_compressor {
    double free_air_delivery;    /* m3/s, 1e-6..1e3, at the intake state; no default */
    double intake_pressure;      /* Pa, absolute, 1e4..2e5; default 1e5 */
    double full_load_power;      /* W, 1..1e9, at the terminals or at the shaft; no default */
    double motor_efficiency;     /* 0.01..1; default 1: full_load_power is taken at the terminals */
    double unloaded_power_share; /* 0..1, of the full-load power while delivering nothing; default 0.3 (common practice, no source); 0 when it stops */
    double leakage;              /* m3/s, 0..1e3, free air lost while the net is under pressure; default 0 */
    double receiver_volume;      /* m3, 1e-4..1e5; default 0: no receiver, no cycle times */
    double cut_in_pressure;      /* Pa, absolute, at which it starts to deliver; default 7.5e5 */
    double cut_out_pressure;     /* Pa, absolute, at which it stops to deliver; default 8e5 */
    double reserved[4];          /* 0 */
} vtx_compressor;

/* Sets the defaults; free_air_delivery and full_load_power are 0 and must be given.
 *
 * compressor  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_compressor_init(vtx_compressor *compressor);

/* What a compressor does at a steady demand. */
typedef struct vtx_compressor_duty {
    double reserve;           /* m3/s, delivery less demand and leakage; negative: the net pressure falls */
    double duty_cycle;        /* share of the time it delivers; 1 when the draw reaches its delivery */
    double average_power;     /* W at the terminals, unloaded running included */
    double specific_power;    /* J/m3 at full load */
    double energy_per_volume; /* J/m3 of demand met, unloaded running and leakage included; NaN without demand */
    double loaded_time;       /* s from cut-in to cut-out; NaN without receiver or reserve */
    double unloaded_time;     /* s from cut-out to cut-in, the ride-through of the receiver; NaN without receiver or draw */
    double cycle_rate;        /* 1/s, 0 when it never starts or never stops; NaN without receiver */
    int32_t demand_met;       /* 1 or 0 */
    int32_t advisories;       /* FIELD_UNAVAILABLE when a field is NaN */
} vtx_compressor_duty;

/* Free air delivery against demand: reserve, duty cycle, cycle times, power.
 *
 * compressor  in
 * demand      in   m3/s  0..1e3, free air, steady
 * duty        out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for steady demand, on-off or load-unload control and a receiver at the intake temperature
 * source    balance of air in the receiver: t = V dp/(p1 Q)
 * advisory  FIELD_UNAVAILABLE
 * note      how long the receiver helps when the demand exceeds the delivery: vtx_receiver_time
 * note      a receiver 10 K warmer than the intake holds 3 % less free air and cycles that much faster
 */
VTX_API vtx_status vtx_compressor_at_demand(const vtx_compressor *compressor, double demand, vtx_compressor_duty *duty);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_isothermal_compression_power_batch(size_t n, const double *intake_pressure,
        ptrdiff_t intake_pressure_stride, const double *discharge_pressure, ptrdiff_t discharge_pressure_stride,
        const double *free_air, ptrdiff_t free_air_stride, double *power, ptrdiff_t power_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_isentropic_compression_power_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride, double *power,
        ptrdiff_t power_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_staged_compression_power_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, int32_t stages,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride, double *power,
        ptrdiff_t power_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_specific_power_batch(size_t n, const double *power, ptrdiff_t power_stride, const double *free_air,
        ptrdiff_t free_air_stride, double *specific_power, ptrdiff_t specific_power_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_package_efficiency_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride, const double *power,
        ptrdiff_t power_stride, double *efficiency, ptrdiff_t efficiency_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_package_power_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride,
        const double *efficiency, ptrdiff_t efficiency_stride, double *power, ptrdiff_t power_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_power_per_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride,
        const double *efficiency, ptrdiff_t efficiency_stride, double *slope, ptrdiff_t slope_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_compressor_at_demand_batch(size_t n, const vtx_compressor *compressor, ptrdiff_t compressor_stride,
        const double *demand, ptrdiff_t demand_stride, vtx_compressor_duty *duty, ptrdiff_t duty_stride,
        int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
