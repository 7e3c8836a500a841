/* Air receivers: how long they bridge, how large they must be, and leakage found with their help.
 *
 * Not the pressure along a line: chain.h. The air in the receiver is taken at the temperature of the free air; 10 K more is 3 % less air.
 * See also: compressor.h for cycle times at a steady demand. */
#ifndef VTX_RECEIVER_H
#define VTX_RECEIVER_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Time in which a receiver falls from one pressure to a lower one while more air is drawn than supplied.
 *
 * volume             in   m3    1e-4..1e5
 * high_pressure      in   Pa    1e3..1e8, at the start
 * low_pressure       in   Pa    1e3..high_pressure
 * free_air_pressure  in   Pa    1e4..2e5, at which demand and supply are counted
 * demand             in   m3/s  1e-9..1e3, free air
 * supply             in   m3/s  0..1e3, free air; 0 when the compressor stands
 * time               out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the supply covers the demand: the pressure does not fall)
 * accuracy  isothermal, perfect gas; a fast blow-down cools the air and is up to 29 % shorter
 * source    t = V (p1 - p2)/(pa (Qd - Qs))
 */
VTX_API vtx_status vtx_receiver_time(double volume, double high_pressure, double low_pressure, double free_air_pressure,
                                     double demand, double supply, double *time);

/* Volume of the receiver that bridges a time.
 *
 * time               in   s     1e-3..1e7
 * high_pressure      in   Pa    1e3..1e8, at the start
 * low_pressure       in   Pa    1e3.., below high_pressure
 * free_air_pressure  in   Pa    1e4..2e5
 * demand             in   m3/s  0..1e3, free air
 * supply             in   m3/s  0..1e3, free air
 * volume             out  m3    0 when the supply covers the demand
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_receiver_time
 * source    inverse of vtx_receiver_time
 */
VTX_API vtx_status vtx_receiver_volume(double time, double high_pressure, double low_pressure, double free_air_pressure,
                                       double demand, double supply, double *volume);

/* Leakage of a net, from the rhythm of its compressor while nothing is in use.
 *
 * free_air_delivery  in   m3/s  1e-6..1e3
 * loaded_time        in   s     1e-3..1e7, mean of several cycles
 * unloaded_time      in   s     1e-3..1e7
 * leakage            out  m3/s  free air, at the mean net pressure
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for load-unload control; time ten cycles or more
 * source    Q = FAD t1/(t1 + t2) (common practice, no source)
 */
VTX_API vtx_status vtx_leakage_from_cycle(double free_air_delivery, double loaded_time, double unloaded_time, double *leakage);

/* Leakage of a net, from its fall in pressure while the compressor stands and nothing is in use.
 *
 * volume             in   m3    1e-4..1e5, receivers and pipes
 * high_pressure      in   Pa    1e3..1e8, at the start
 * low_pressure       in   Pa    at least 2 free_air_pressure, below high_pressure
 * time               in   s     1..1e7
 * free_air_pressure  in   Pa    1e4..2e5
 * net_pressure       in   Pa    at least 2 free_air_pressure, for which the leakage is wanted
 * leakage            out  m3/s  free air
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also below 2 free_air_pressure, where leaks are not sonic)
 * accuracy  sonic leaks: their flow is proportional to the absolute pressure, which falls exponentially
 * source    Q = V p/(pa t) ln(p1/p2), from dp/dt = -p/tau
 */
VTX_API vtx_status vtx_leakage_from_decay(double volume, double high_pressure, double low_pressure, double time,
                                          double free_air_pressure, double net_pressure, double *leakage);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_receiver_time_batch(size_t n, const double *volume, ptrdiff_t volume_stride,
        const double *high_pressure, ptrdiff_t high_pressure_stride, const double *low_pressure,
        ptrdiff_t low_pressure_stride, const double *free_air_pressure, ptrdiff_t free_air_pressure_stride,
        const double *demand, ptrdiff_t demand_stride, const double *supply, ptrdiff_t supply_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_receiver_volume_batch(size_t n, const double *time, ptrdiff_t time_stride,
        const double *high_pressure, ptrdiff_t high_pressure_stride, const double *low_pressure,
        ptrdiff_t low_pressure_stride, const double *free_air_pressure, ptrdiff_t free_air_pressure_stride,
        const double *demand, ptrdiff_t demand_stride, const double *supply, ptrdiff_t supply_stride, double *volume,
        ptrdiff_t volume_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_leakage_from_cycle_batch(size_t n, const double *free_air_delivery,
        ptrdiff_t free_air_delivery_stride, const double *loaded_time, ptrdiff_t loaded_time_stride,
        const double *unloaded_time, ptrdiff_t unloaded_time_stride, double *leakage, ptrdiff_t leakage_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_leakage_from_decay_batch(size_t n, const double *volume, ptrdiff_t volume_stride,
        const double *high_pressure, ptrdiff_t high_pressure_stride, const double *low_pressure,
        ptrdiff_t low_pressure_stride, const double *time, ptrdiff_t time_stride, const double *free_air_pressure,
        ptrdiff_t free_air_pressure_stride, const double *net_pressure, ptrdiff_t net_pressure_stride,
        double *leakage, ptrdiff_t leakage_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
