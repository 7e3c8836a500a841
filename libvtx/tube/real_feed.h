/* Real moist air on its way through the tube: what it can give, and the streams that have an enthalpy. Internal.
 *
 * The work that the cold stream can give is that of its gas, all water kept as vapour: condensation happens after the separation
 * and warms the stream by its latent heat. It is at most what the isentropic expansion in equilibrium gives, so that no accepted
 * efficiency breaks the second law. */
#ifndef VTX_TUBE_REAL_FEED_H
#define VTX_TUBE_REAL_FEED_H

#include "isobar.h"

struct real_feed {
    struct moist_mixture inlet;
    double cold_pressure;
    struct knot isentropic;        /* the inlet's gas expanded without condensation; its enthalpy is the gas's at the inlet less work */
    double work;                   /* J/kg dry air */
    double isentropic_temperature; /* expanded in equilibrium */
};

/* J/kg, for starts of searches only. */
static inline double latent_heat(int32_t phase) { return phase == PHASE_ICE ? 2.835e6 : 2.48e6; }

/* Ice in a sonic throat, where static pressure and temperature are 0.528 and 0.833 of the stagnation values (gamma 1.4). */
static inline int32_t throat_advisory(double inlet_pressure, double inlet_temperature, double vapour_fraction, double log_ratio)
{
    const double sonic_log_ratio = 0.6381254487788413, pressure = 0.528281787717174 * inlet_pressure, temperature = inlet_temperature / 1.2;
    if (vapour_fraction == 0 || log_ratio < sonic_log_ratio || temperature >= triple_temperature)
        return 0;
    return vapour_fraction * pressure > ice_sublimation_pressure(temperature) ? VTX_ADVISORY_STATIC_FREEZING : 0;
}

/* OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status real_feed_at(double inlet_pressure, double inlet_temperature, double humidity_ratio, struct real_feed *feed);
vtx_status real_feed_expand(double cold_pressure, struct real_feed *feed);

/* Equilibrium at a temperature or of an enthalpy. Above the media layer's range, where only hot outlets get, the heat capacity is
 * held: 473.15 K, 1 % off at 570 K. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status real_stream_at(double pressure, double temperature, double total_water, struct moist_mixture *out);
vtx_status real_stream_of(double pressure, double total_water, double enthalpy, double start, struct moist_mixture *out);

#endif
