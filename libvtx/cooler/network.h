/* Inlet nozzle, swirl chamber, cold outlet and hot valve as restrictions that share one chamber pressure, tube/chamber.h. Internal.
 *
 * Stream temperatures at the outlets come from the ideal separation curve, at the rated point and in service alike: flow
 * depends on their square root only, and what the ideal curve leaves out (2 K of 265 K) cancels between the two. */
#ifndef VTX_NETWORK_H
#define VTX_NETWORK_H

#include <vtx/cooler.h>

#include "../base/numeric.h"

/* Effective areas (discharge coefficient included), m2. */
struct network_areas {
    double inlet, cold, hot;
};

/* What surrounds the tube in service. */
struct network_ends {
    double inlet_pressure, inlet_temperature;
    double cold_pressure, hot_pressure; /* Pa, behind the accessories */
};

struct network_flow {
    double mass_flow, cold_fraction;
    double chamber_pressure, cold_pressure, hot_pressure; /* the last two directly at the outlets */
    double valve_opening;                                 /* NaN where no opening gives this cold fraction */
    int32_t choked;                                       /* the inlet nozzle */
};

/* Areas that reproduce the rated point. OK, OUT_OF_RANGE (chamber pressure below an outlet's). */
vtx_status network_rate(const vtx_cooler *cooler, double rated_mass_flow, struct network_areas *areas);

/* Flow at a held cold fraction (0..1). */
vtx_status network_at_cold_fraction(const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends,
                                    double cold_fraction, struct network_flow *flow);

/* Flow at a held valve opening (0 and up). */
vtx_status network_at_opening(const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends,
                              double valve_opening, struct network_flow *flow);

#endif
