/* Where the feed's water freezes in the cold outlet. */
#include <vtx/icing.h>

#include "outlet.h"
#include "real_feed.h"

/* First condensate and first ice at the cold pressure; liquid forms first where the dew point is above 273.16 K. */
static void onset(double humidity_ratio, double pressure, double *fog, double *ice)
{
    const double x = moist_vapour_fraction(VTX_AIR_REAL, humidity_ratio);
    const double frost = moist_saturation_temperature(VTX_AIR_REAL, pressure, x, PHASE_ICE);
    *fog = frost <= triple_temperature ? frost : moist_saturation_temperature(VTX_AIR_REAL, pressure, x, PHASE_LIQUID);
    *ice = smaller(frost, triple_temperature);
}

/* Both ends of the range in which the outlet is colder than wanted; 0 when it never is. */
static vtx_status icing_range(struct outlet *o, double efficiency, double *from, double *to, int *ices)
{
    double coldest;
    set_efficiency(o, efficiency);
    *from = *to = quiet_nan();
    vtx_status status = coldest_fraction_of(o, &coldest);
    *ices = status == VTX_OK && cold_enthalpy(o, coldest) < o->wanted;
    if (!*ices)
        return status;
    *from = 0;
    *to = 1;
    if (cold_enthalpy(o, 0) > o->wanted)
        status = cold_fraction_of(o, VTX_BRANCH_LESS_COLD_AIR, from);
    if (status == VTX_OK && cold_enthalpy(o, 1) > o->wanted)
        status = cold_fraction_of(o, VTX_BRANCH_MORE_COLD_AIR, to);
    return status;
}

static vtx_status describe_coldest(struct outlet *o, vtx_icing *icing)
{
    struct moist_mixture m;
    double coldest = 0;
    set_efficiency(o, o->tube->peak_efficiency);
    vtx_status status = coldest_fraction_of(o, &coldest);
    const double enthalpy = cold_enthalpy(o, coldest);
    if (status == VTX_OK)
        status = real_stream_of(o->e.cold_pressure, o->e.humidity_ratio, enthalpy,
                                o->e.inlet_temperature - (o->e.inlet_enthalpy - enthalpy) / 1005, &m);
    icing->coldest_temperature = m.temperature;
    icing->most_ice = m.condensed * m.frozen_share;
    return status;
}

static vtx_status find_icing(const vtx_tube *tube, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                             double cold_pressure, vtx_icing *icing)
{
    struct outlet o;
    int typical = 0, widest = 0;
    icing->fog_temperature = icing->ice_temperature = quiet_nan();
    icing->icing_from = icing->icing_to = icing->widest_from = icing->widest_to = quiet_nan();
    vtx_status status = open_outlet(&o, tube, VTX_AIR_REAL, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure);
    if (status == VTX_OK)
        status = describe_coldest(&o, icing);
    if (status == VTX_OK && humidity_ratio > 0) {
        onset(humidity_ratio, cold_pressure, &icing->fog_temperature, &icing->ice_temperature);
        if (icing->ice_temperature > moist_temperature_min(VTX_AIR_REAL, cold_pressure)) {
            status = feed_enthalpy(&o.e, cold_pressure, icing->ice_temperature, &o.wanted);
            if (status == VTX_OK)
                status = icing_range(&o, tube->peak_efficiency, &icing->icing_from, &icing->icing_to, &typical);
            if (status == VTX_OK)
                status = icing_range(&o, tube->efficiency_high, &icing->widest_from, &icing->widest_to, &widest);
        }
    }
    icing->advisories = (tube->basis == VTX_TUBE_UNCALIBRATED ? VTX_ADVISORY_UNCALIBRATED : 0) |
                        (typical ? VTX_ADVISORY_FREEZING : 0) | (typical && widest ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE) |
                        throat_advisory(inlet_pressure, inlet_temperature, moist_vapour_fraction(VTX_AIR_REAL, humidity_ratio), cold_pressure);
    icing->spare = 0;
    return status;
}

vtx_status vtx_icing_range(const vtx_tube *tube, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                           double cold_pressure, vtx_icing *icing)
{
    vtx_status status = worse(require(icing != NULL), check_supply(tube, VTX_AIR_REAL, inlet_pressure, inlet_temperature,
                                                                   humidity_ratio, cold_pressure));
    if (status == VTX_OK)
        status = find_icing(tube, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, icing);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(icing, vtx_icing, advisories, status);
}

vtx_status vtx_cold_condensate_flow(const vtx_streams *streams, double humidity_ratio, double inlet_mass_flow, double *ice_flow,
                                    double *liquid_flow)
{
    vtx_status status = worse(worse(require(ice_flow != NULL && streams != NULL), check_amount(humidity_ratio, humidity_ratio_max)),
                              check_amount(inlet_mass_flow, 100));
    if (streams)
        status = worse(status, worse(check_share(streams->cold_fraction),
                                     worse(check_share(streams->frozen_share),
                                           require(streams->condensed >= 0 && streams->condensed <= humidity_ratio))));
    if (status != VTX_OK)
        return poison(liquid_flow, poison(ice_flow, status));
    const double condensed = inlet_mass_flow * streams->cold_fraction / (1 + humidity_ratio) * streams->condensed;
    const double frozen_share = streams->frozen_share;
    *ice_flow = condensed * frozen_share;
    if (liquid_flow)
        *liquid_flow = condensed * (1 - frozen_share);
    return VTX_OK;
}
