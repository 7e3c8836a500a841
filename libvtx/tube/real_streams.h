/* Separation of real moist air, unchecked. Internal. */
#ifndef VTX_TUBE_REAL_STREAMS_H
#define VTX_TUBE_REAL_STREAMS_H

#include "feed.h"

/* other_cold_temperature may be null; else it is the cold outlet's if the tube's peak efficiency were the other one.
 * OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status separate_real(const vtx_tube *tube, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                         double cold_pressure, double hot_pressure, double cold_fraction, vtx_streams *out, double other_efficiency,
                         double *other_cold_temperature);

#endif
