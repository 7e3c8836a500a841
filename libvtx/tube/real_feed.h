/* Real moist air on its way through the tube: what it can give, and the streams that have an enthalpy. Internal.
 *
 * The work that the cold stream can give is that of its gas, all water kept as vapour: condensation happens after the separation
 * and warms the stream by its latent heat. It is at most what the isentropic expansion in equilibrium gives, so that no accepted
 * efficiency breaks the second law. */
#ifndef VTX_TUBE_REAL_FEED_H
#define VTX_TUBE_REAL_FEED_H

#include "../flow/throat_kernel.h"
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

/* Ice in a sonic throat. The chamber's pressure is not known here: no throat is judged where even the cold outlet's leaves it below Mach 1. */
static inline int32_t throat_advisory(double inlet_pressure, double inlet_temperature, double vapour_fraction, double cold_pressure)
{
    if (vapour_fraction == 0 || !is_choked(dry_air_gamma, inlet_pressure, cold_pressure))
        return 0;
    const struct throat t = throat_of(inlet_pressure, inlet_temperature, cold_pressure);
    return throat_freezes(VTX_AIR_REAL, &t, vapour_fraction) ? VTX_ADVISORY_STATIC_FREEZING : 0;
}

/* OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status real_feed_at(double inlet_pressure, double inlet_temperature, double humidity_ratio, struct real_feed *feed);
vtx_status real_feed_expand(double cold_pressure, struct real_feed *feed);

/* Equilibrium at a temperature or of an enthalpy. Above the media layer's range, where only hot outlets get, the heat capacity is
 * held: 473.15 K, 1 % off at 570 K. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status real_stream_at(double pressure, double temperature, double total_water, struct moist_mixture *out);
vtx_status real_stream_of(double pressure, double total_water, double enthalpy, double start, struct moist_mixture *out);

#endif
