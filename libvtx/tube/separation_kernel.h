/* Separation with a second look at the cold outlet, checked. Internal. */
#ifndef VTX_TUBE_SEPARATION_KERNEL_H
#define VTX_TUBE_SEPARATION_KERNEL_H

#include <vtx/separation.h>

/* vtx_tube_separate, and where other_cold_temperature is not null the cold outlet's temperature if the tube's peak efficiency were
 * the other one, for little more than the separation alone. Streams are not poisoned. */
vtx_status separate_checked(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                            double cold_pressure, double hot_pressure, double cold_fraction, vtx_streams *streams,
                            double other_efficiency, double *other_cold_temperature);

#endif
