/* Descriptions: defaults, checks, rated flow and areas. */
#include <vtx/cooler.h>

#include <vtx/atmosphere.h>

#include "../media/moist_kernel.h"
#include "../tube/curve.h"
#include "operate.h"

vtx_status vtx_supply_init(vtx_supply *supply)
{
    if (!supply)
        return VTX_BAD_ARGUMENT;
    *supply = (vtx_supply){ .pressure = quiet_nan(), .temperature = 293.15, .humidity = quiet_nan(), .humidity_kind = VTX_SUPPLY_DEW_POINT };
    return VTX_OK;
}

vtx_status vtx_site_init(vtx_site *site)
{
    if (!site)
        return VTX_BAD_ARGUMENT;
    *site = (vtx_site){ .pressure = 101325, .temperature = 293.15, .relative_humidity = 0.5 };
    return VTX_OK;
}

vtx_status vtx_site_at_altitude(double altitude, double temperature, double relative_humidity, vtx_site *site)
{
    vtx_site found = { .temperature = temperature, .relative_humidity = relative_humidity };
    vtx_status status = worse(require(site != NULL), vtx_atmosphere_pressure(altitude, &found.pressure));
    if (status == VTX_OK)
        status = check_site(&found);
    if (status != VTX_OK)
        return POISON_STRUCT(site, vtx_site, reserved, status);
    *site = found;
    return VTX_OK;
}

vtx_status vtx_cooler_init(vtx_cooler *cooler)
{
    if (!cooler)
        return VTX_BAD_ARGUMENT;
    *cooler = (vtx_cooler){ .rated_free_air_flow = quiet_nan(), .reference_pressure = 1e5, .reference_temperature = 293.15,
                            .reference_humidity = 0.65, .rated_pressure = 8e5, .rated_temperature = 293.15,
                            .rated_cold_pressure = 101325, .rated_hot_pressure = 101325, .rated_cold_fraction = 0.6,
                            .cold_fraction_min = 0.2, .cold_fraction_max = 0.8, .chamber_pressure_ratio = 0.5,
                            .inlet_area_factor = 1, .cold_area_factor = 1, .outlet_diameter = 0.006, .noise_distance = 1,
                            .kind = VTX_COOLER_ADJUSTABLE, .outlets = 1 };
    return vtx_tube_init(&cooler->tube);
}

vtx_status vtx_cooler_setting_init(vtx_cooler_setting *setting)
{
    if (!setting)
        return VTX_BAD_ARGUMENT;
    *setting = (vtx_cooler_setting){ .cold_fraction = 0.6, .valve_opening = 1, .held = VTX_HELD_COLD_FRACTION, .model = VTX_AIR_REAL };
    return VTX_OK;
}

static vtx_status check_accessory(double conductance, double critical_ratio)
{
    return worse(check_amount(conductance, 1e-4), require(is_finite(critical_ratio) && critical_ratio >= 0 && critical_ratio < 1));
}

vtx_status check_cooler(const vtx_cooler *c)
{
    if (!c)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(c->rated_free_air_flow, 1e-6, 1), check_positive(c->reference_pressure, 5e4, 2e5));
    status = worse(status, check_positive(c->reference_temperature, 250, 320));
    status = worse(status, check_share(c->reference_humidity));
    status = worse(status, check_positive(c->rated_pressure, 1.1e5, 2e6));
    status = worse(status, check_positive(c->rated_temperature, 250, 350));
    status = worse(status, check_positive(c->rated_cold_pressure, 1e4, 1e6));
    status = worse(status, check_positive(c->rated_hot_pressure, 1e4, 1e6));
    status = worse(status, require(c->rated_cold_fraction > 0 && c->rated_cold_fraction < 1));
    status = worse(status, check_share(c->cold_fraction_min));
    status = worse(status, check_share(c->cold_fraction_max));
    status = worse(status, require(c->cold_fraction_min <= c->rated_cold_fraction && c->rated_cold_fraction <= c->cold_fraction_max));
    status = worse(status, require(c->chamber_pressure_ratio > 0 && c->chamber_pressure_ratio < 1));
    status = worse(status, check_positive(c->inlet_area_factor, 0.01, 100));
    status = worse(status, check_positive(c->cold_area_factor, 0.01, 100));
    status = worse(status, check_accessory(c->outlet_conductance, c->outlet_critical_ratio));
    status = worse(status, check_accessory(c->hot_conductance, c->hot_critical_ratio));
    status = worse(status, check_positive(c->outlet_diameter, 1e-4, 0.2));
    status = worse(status, worse(check_amount(c->noise_level, 200), check_positive(c->noise_distance, 0.05, 100)));
    status = worse(status, require(c->kind == VTX_COOLER_ADJUSTABLE || c->kind == VTX_COOLER_FIXED));
    status = worse(status, require(c->outlets >= 1 && c->outlets <= 8 && are_zero(c->reserved, ARRAY_LENGTH(c->reserved))));
    return worse(status, check_tube(&c->tube));
}

vtx_status check_supply(const vtx_supply *s)
{
    if (!s)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(s->pressure, 2e4, 2e6), check_positive(s->temperature, 230, 373.15));
    status = worse(status, check_amount(s->humidity_pressure, 2e6));
    status = worse(status, require(s->reserved_kind == 0 && are_zero(s->reserved, ARRAY_LENGTH(s->reserved))));
    if (s->humidity_kind == VTX_SUPPLY_HUMIDITY_RATIO)
        return worse(status, check_amount(s->humidity, 0.2));
    status = worse(status, require(s->humidity_kind == VTX_SUPPLY_DEW_POINT || s->humidity_kind == VTX_SUPPLY_FROST_POINT));
    return worse(status, check_positive(s->humidity, 173.15, 373.15));
}

vtx_status check_site(const vtx_site *s)
{
    if (!s)
        return VTX_BAD_ARGUMENT;
    return worse(worse(check_positive(s->pressure, 2e4, 1.2e5), check_positive(s->temperature, BELOW_ZERO(40), 350)),
                 worse(check_share(s->relative_humidity), require(are_zero(s->reserved, ARRAY_LENGTH(s->reserved)))));
}

vtx_status check_setting(const vtx_cooler_setting *s)
{
    if (!s)
        return VTX_BAD_ARGUMENT;
    vtx_status status = require((s->model == VTX_AIR_IDEAL || s->model == VTX_AIR_REAL) && are_zero(s->reserved, ARRAY_LENGTH(s->reserved)));
    status = worse(status, check_amount(s->cold_back_pressure, 1e6));
    status = worse(status, check_amount(s->hot_back_pressure, 1e6));
    if (s->held == VTX_HELD_COLD_FRACTION)
        return worse(status, check_share(s->cold_fraction));
    return worse(worse(status, require(s->held == VTX_HELD_VALVE_OPENING)), check_amount(s->valve_opening, 100));
}

static vtx_status supply_humidity_ratio(const vtx_supply *s, int32_t model, double *humidity_ratio)
{
    const double pressure = s->humidity_pressure > 0 ? s->humidity_pressure : s->pressure;
    if (s->humidity_kind == VTX_SUPPLY_HUMIDITY_RATIO) {
        *humidity_ratio = s->humidity;
        return VTX_OK;
    }
    const int32_t phase = s->humidity_kind == VTX_SUPPLY_DEW_POINT ? PHASE_LIQUID : PHASE_ICE;
    const double low = phase == PHASE_LIQUID ? BELOW_ZERO(40) : BELOW_ZERO(100), high = phase == PHASE_LIQUID ? 373.15 : triple_temperature;
    vtx_status status = worse(check_range(s->humidity, low, high), moist_check(model, pressure, s->humidity));
    if (status != VTX_OK)
        return status;
    const double fraction = moist_saturation_fraction(model, pressure, s->humidity, phase);
    if (fraction >= 1)
        return VTX_BAD_ARGUMENT;
    *humidity_ratio = moist_humidity_ratio(model, fraction);
    return check_amount(*humidity_ratio, 0.2);
}

vtx_status vtx_supply_humidity_ratio(const vtx_supply *supply, int32_t model, double *humidity_ratio)
{
    vtx_status status = worse(require(humidity_ratio != NULL && (model == VTX_AIR_IDEAL || model == VTX_AIR_REAL)), check_supply(supply));
    if (status == VTX_OK)
        status = supply_humidity_ratio(supply, model, humidity_ratio);
    return status == VTX_OK ? VTX_OK : poison(humidity_ratio, status);
}
