/* The feed's own water in the cold air. */
#include <vtx/air_quality.h>
#include <vtx/freezing.h>
#include <vtx/purity.h>

#include "../flow/throat_kernel.h"
#include "surface_kernel.h"

#define COLD_MIN 120.0

/* What the feed may hold so that air stays free at a pressure and temperature, as its point at the supply; NaN when even saturated feed
 * stays free. */
static double required_point(int32_t model, double supply_pressure, double supply_temperature, double pressure, double temperature)
{
    const double allowed = moist_saturation_fraction(model, pressure, temperature, stable_phase(temperature));
    const double most = moist_saturation_fraction(model, supply_pressure, supply_temperature, stable_phase(supply_temperature));
    return allowed < most ? deposit_limit(model, supply_pressure, allowed) : quiet_nan();
}

static int32_t class_to_ask(double point)
{
    int32_t water_class;
    if (!is_finite(point))
        return VTX_AIR_CLASS_X;
    return vtx_water_class_to_ask(point, &water_class) == VTX_OK ? water_class : point < triple_temperature ? 0 : VTX_AIR_CLASS_X;
}

static vtx_status check_feed(int32_t model, double supply_pressure, double supply_temperature, int32_t property, double value,
                             double cold_pressure, double cold_temperature)
{
    vtx_status status = require(property >= VTX_HUMIDITY_RATIO && property <= VTX_ABSOLUTE_HUMIDITY && is_finite(value));
    status = worse(status, worse(check_positive(supply_pressure, 5e4, 5e6), check_positive(supply_temperature, BELOW_ZERO(40), 373.15)));
    status = worse(status, worse(check_positive(cold_pressure, 3e4, 5e6), check_positive(cold_temperature, COLD_MIN, 373.15)));
    status = worse(status, moist_check(model, supply_pressure, supply_temperature));
    if (status != VTX_OK)
        return status;
    return worse(require(cold_pressure <= supply_pressure), check_positive(cold_temperature, COLD_MIN, supply_temperature));
}

static void fill_throat(int32_t model, double supply_pressure, double supply_temperature, double cold_pressure, double vapour_fraction,
                        vtx_feed_water *w)
{
    const struct throat throat = throat_of(supply_pressure, supply_temperature, cold_pressure);
    w->throat_pressure = throat.pressure;
    w->throat_temperature = throat.temperature;
    w->throat_margin = w->throat_temperature - deposit_limit(model, w->throat_pressure, vapour_fraction);
    w->throat_required_point = required_point(model, supply_pressure, supply_temperature, w->throat_pressure, w->throat_temperature);
    w->throat_required_class = class_to_ask(w->throat_required_point);
    if (throat_freezes(model, &throat, vapour_fraction))
        w->advisories |= VTX_ADVISORY_STATIC_FREEZING;
}

static void fill_cold_stream(int32_t model, double pressure, double temperature, double mass_flow, const struct moist_mixture *feed,
                             vtx_feed_water *w)
{
    struct moist_mixture cold;
    moist_equilibrium(model, pressure, temperature, feed->total_water, &cold);
    w->condensate_rate = mass_flow / (1 + feed->total_water) * cold.condensed;
    w->ice_rate = w->condensate_rate * cold.frozen_share;
    w->condensed_phase = cold.phase;
    if (cold.phase & PHASE_LIQUID || feed->phase != PHASE_NONE)
        w->advisories |= VTX_ADVISORY_CONDENSING;
    if (cold.phase & PHASE_ICE)
        w->advisories |= VTX_ADVISORY_FREEZING;
}

static int some_field_is_missing(const vtx_feed_water *w)
{
    return !is_finite(w->feed_point) || !is_finite(w->margin) || !is_finite(w->required_point) || !is_finite(w->throat_margin)
        || !is_finite(w->throat_required_point);
}

vtx_status vtx_feed_freezing(int32_t model, double supply_pressure, double supply_temperature, int32_t property, double value,
                             double cold_pressure, double cold_temperature, double cold_mass_flow, double margin,
                             vtx_feed_water *water)
{
    struct moist_mixture feed;
    vtx_feed_water w = { .advisories = 0 };
    vtx_status status = worse(require(water != NULL), check_feed(model, supply_pressure, supply_temperature, property, value, cold_pressure,
                                                                 cold_temperature));
    status = worse(status, worse(check_amount(cold_mass_flow, 100), check_amount(margin, 30)));
    if (status == VTX_OK)
        status = worse(moist_check(model, cold_pressure, cold_temperature), check_positive(cold_temperature - margin, COLD_MIN, 373.15));
    if (status == VTX_OK)
        status = moist_from_humidity(model, supply_pressure, supply_temperature, property, value, &feed);
    if (status != VTX_OK)
        return POISON_STRUCT(water, vtx_feed_water, required_class, status);
    const double vapour_fraction = moist_vapour_fraction(model, feed.total_water);
    w.humidity_ratio = feed.total_water;
    w.feed_point = deposit_limit(model, supply_pressure, feed.vapour_fraction);
    w.coldest_temperature = deposit_limit(model, cold_pressure, vapour_fraction);
    w.margin = cold_temperature - w.coldest_temperature;
    w.required_point = required_point(model, supply_pressure, supply_temperature, cold_pressure, cold_temperature - margin);
    w.required_class = class_to_ask(w.required_point);
    fill_cold_stream(model, cold_pressure, cold_temperature, cold_mass_flow, &feed, &w);
    fill_throat(model, supply_pressure, supply_temperature, cold_pressure, vapour_fraction, &w);
    if (some_field_is_missing(&w))
        w.advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    *water = w;
    return VTX_OK;
}
