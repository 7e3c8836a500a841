/* The forward pass: network flow at ideal stream temperatures, then one separation of the real air. */
#include "operate.h"

#include <vtx/material.h>
#include <vtx/standard_flow.h>
#include <vtx/touch.h>

#include "../duty/surface_kernel.h"
#include "../flow/throat_kernel.h"
#include "../tube/perfect_air.h"
#include "../tube/separation_kernel.h"

/* Real air whatever the setting's model: the data sheet's volume means one mass flow only. */
static vtx_status rated_mass_flow(const vtx_cooler *c, double *mass_flow)
{
    double dry_air_flow;
    return vtx_mass_flow_from_standard(VTX_AIR_REAL, c->reference_pressure, c->reference_temperature, c->reference_humidity,
                                       c->rated_free_air_flow, mass_flow, &dry_air_flow);
}

vtx_status vtx_cooler_rated_mass_flow(const vtx_cooler *cooler, double *mass_flow)
{
    vtx_status status = worse(require(mass_flow != NULL), check_cooler(cooler));
    if (status == VTX_OK)
        status = rated_mass_flow(cooler, mass_flow);
    return status == VTX_OK ? VTX_OK : poison(mass_flow, status);
}

vtx_status vtx_cooler_inlet_area(const vtx_cooler *cooler, double *area)
{
    struct network_areas areas;
    double mass_flow;
    vtx_status status = worse(require(area != NULL), check_cooler(cooler));
    if (status == VTX_OK)
        status = rated_mass_flow(cooler, &mass_flow);
    if (status == VTX_OK)
        status = network_rate(cooler, mass_flow, &areas);
    if (status != VTX_OK)
        return poison(area, status);
    *area = areas.inlet * cooler->inlet_area_factor;
    return VTX_OK;
}

vtx_status operation_open(struct operation *o, const vtx_cooler *cooler, const vtx_supply *supply, const vtx_site *site,
                          const vtx_cooler_setting *setting)
{
    vtx_status status = worse(worse(check_cooler(cooler), check_supply(supply)), worse(check_site(site), check_setting(setting)));
    if (status != VTX_OK)
        return status;
    if (setting->held == VTX_HELD_COLD_FRACTION) {
        const double mu = setting->cold_fraction;
        const int fixed_elsewhere = cooler->kind == VTX_COOLER_FIXED && mu != cooler->rated_cold_fraction;
        if (fixed_elsewhere || mu < cooler->cold_fraction_min || mu > cooler->cold_fraction_max)
            return VTX_OUT_OF_RANGE;
    } else if (cooler->kind == VTX_COOLER_FIXED && setting->valve_opening != 1) {
        return VTX_OUT_OF_RANGE;
    }
    o->cooler = cooler;
    o->supply = supply;
    o->site = site;
    o->setting = setting;
    o->tube = cooler->tube;
    o->tube.ambient_temperature = site->temperature;
    status = vtx_supply_humidity_ratio(supply, setting->model, &o->humidity_ratio);
    if (status == VTX_OK)
        status = rated_mass_flow(cooler, &o->rated_mass_flow);
    return status == VTX_OK ? network_rate(cooler, o->rated_mass_flow, &o->areas) : status;
}

vtx_status operation_flow(const struct operation *o, double inlet_pressure, struct network_flow *flow)
{
    const struct network_ends ends = { inlet_pressure, o->supply->temperature, o->site->pressure + o->setting->cold_back_pressure,
                                       o->site->pressure + o->setting->hot_back_pressure };
    if (!(inlet_pressure > 1.05 * larger(ends.cold_pressure, ends.hot_pressure)))
        return VTX_OUT_OF_RANGE;
    if (o->setting->held == VTX_HELD_VALVE_OPENING)
        return network_at_opening(o->cooler, &o->areas, &ends, o->setting->valve_opening, flow);
    return network_at_cold_fraction(o->cooler, &o->areas, &ends, o->setting->cold_fraction, flow);
}

/* Sensible heat only: ice that flies past the work rarely melts on it. cp at the mean temperature. */
static double stream_heat_capacity(int32_t model, double pressure, double temperature, double humidity_ratio)
{
    struct moist_mixture gas;
    if (model == VTX_AIR_IDEAL)
        return perfect_air_heat_capacity;
    moist_vapour(model, pressure, temperature, humidity_ratio, &gas);
    return gas.gas_heat_capacity;
}

static void fill_capacities(const struct operation *o, double target_temperature, const vtx_streams *s, vtx_operating_point *p)
{
    const double vapour = larger(p->humidity_ratio - s->condensed, 0);
    const double inlet = p->inlet_temperature;
    const double to_inlet = p->cold_mass_flow
        * stream_heat_capacity(o->setting->model, p->cold_pressure, 0.5 * (inlet + s->cold_temperature), vapour);
    const double to_target = p->cold_mass_flow
        * stream_heat_capacity(o->setting->model, p->cold_pressure, 0.5 * (target_temperature + s->cold_temperature), vapour);
    p->capacity = to_inlet * (inlet - s->cold_temperature);
    p->capacity_low = to_inlet * (inlet - s->cold_temperature_high);
    p->capacity_high = to_inlet * (inlet - s->cold_temperature_low);
    p->target_capacity = to_target * (target_temperature - s->cold_temperature);
    p->target_capacity_low = to_target * (target_temperature - s->cold_temperature_high);
    p->target_capacity_high = to_target * (target_temperature - s->cold_temperature_low);
}

static void fill_water(const struct operation *o, const struct network_flow *flow, const vtx_streams *s, vtx_operating_point *p)
{
    const int32_t model = o->setting->model;
    const double fraction = moist_vapour_fraction(model, p->humidity_ratio);
    const struct throat throat = throat_of(p->inlet_pressure, p->inlet_temperature, flow->chamber_pressure);
    p->feed_dew_point = moist_dew_or_frost_point(model, p->inlet_pressure, fraction, PHASE_LIQUID);
    p->feed_frost_point = moist_dew_or_frost_point(model, p->inlet_pressure, fraction, PHASE_ICE);
    p->cold_saturation_point = deposit_limit(model, p->cold_pressure, fraction);
    p->condensed = s->condensed;
    p->condensed_phase = s->condensed_phase;
    p->ice_flow = p->cold_mass_flow / (1 + p->humidity_ratio) * s->condensed * s->frozen_share;
    p->throat_temperature = throat.temperature;
    /* The tube took the throat for sonic; here the chamber's pressure is known. */
    p->advisories &= ~VTX_ADVISORY_STATIC_FREEZING;
    if (throat_freezes(model, &throat, fraction))
        p->advisories |= VTX_ADVISORY_STATIC_FREEZING;
    if (!is_finite(p->feed_dew_point) || !is_finite(p->feed_frost_point) || !is_finite(p->cold_saturation_point))
        p->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

/* Bare aluminium, W s^0.5/(m2 K): of the metals a nozzle is made of the one that takes most heat from a finger. */
static const double bare_metal_effusivity = 20000;
static const double finger_contact_time = 10;

/* An opening found for an end of the range must not be called beyond it. */
static const double fraction_rounding = 1e-9;

static int32_t touch_advisories(double surface_temperature)
{
    vtx_skin skin;
    vtx_touch touch;
    if (vtx_skin_init(&skin) != VTX_OK
        || vtx_touch_surface(&skin, VTX_CONTACT_METAL, bare_metal_effusivity, surface_temperature, finger_contact_time, &touch) != VTX_OK)
        return 0;
    return touch.advisories & (VTX_ADVISORY_TOUCH_COLD | VTX_ADVISORY_TOUCH_HOT);
}

/* Both streams, and the coldest end that the freezing question allows. */
static vtx_status separate(const struct operation *o, double inlet_pressure, const struct network_flow *flow, vtx_streams *s,
                           double *coldest_temperature)
{
    vtx_tube careful;
    vtx_status status = vtx_tube_for_question(&o->tube, VTX_QUESTION_FREEZING, &careful);
    if (status == VTX_OK)
        status = separate_checked(&o->tube, o->setting->model, inlet_pressure, o->supply->temperature, o->humidity_ratio, flow->cold_pressure,
                                  flow->hot_pressure, flow->cold_fraction, s, careful.peak_efficiency, coldest_temperature);
    return status;
}

/* A bare cold tube as cold as the air in it: the careful side. */
/* A valve that is held may leave the range that the cooler is described for; a cold fraction that is held is refused there. */
static int32_t range_advisory(const struct operation *o, double cold_fraction)
{
    const double below = o->cooler->cold_fraction_min - cold_fraction, above = cold_fraction - o->cooler->cold_fraction_max;
    return larger(below, above) > fraction_rounding ? VTX_ADVISORY_EXTRAPOLATED : 0;
}

static void fill_surroundings(const struct operation *o, vtx_operating_point *p)
{
    const int32_t model = o->setting->model;
    const double saturated = moist_saturation_fraction(model, o->site->pressure, o->site->temperature, PHASE_LIQUID);
    const struct humid_room room = humid_room_of(model, o->site->pressure, o->site->relative_humidity * saturated);
    p->ambient_dew_point = room.dew_point;
    p->ambient_frost_point = room.frost_point;
    p->advisories |= advisory_of(verdict_of(&room, p->coldest_temperature)) | missing_points(&room) | touch_advisories(p->coldest_temperature)
        | touch_advisories(p->hot_temperature_high);
}

/* More hot flow than any opening of the valve passes: what is behind it would have to push more than the chamber does. Asked of the answer only:
 * a search for the pressure in front may pass such states. */
static int no_opening(const struct network_flow *flow)
{
    return !is_finite(flow->valve_opening) && flow->hot_pressure > flow->chamber_pressure * (1 + LIMIT_ROUNDING);
}

vtx_status operation_point(const struct operation *o, double inlet_pressure, const struct network_flow *flow, double target_temperature,
                           vtx_operating_point *p)
{
    vtx_streams s;
    double coldest_temperature;
    const vtx_status status = no_opening(flow) ? VTX_NO_SOLUTION : separate(o, inlet_pressure, flow, &s, &coldest_temperature);
    if (status != VTX_OK)
        return status;
    memset(p, 0, sizeof *p);
    p->inlet_pressure = inlet_pressure;
    p->inlet_temperature = o->supply->temperature;
    p->humidity_ratio = o->humidity_ratio;
    p->mass_flow = flow->mass_flow;
    p->cold_mass_flow = flow->cold_fraction * flow->mass_flow;
    p->hot_mass_flow = flow->mass_flow - p->cold_mass_flow;
    p->free_air_flow = flow->mass_flow * o->cooler->rated_free_air_flow / o->rated_mass_flow;
    p->cold_fraction = flow->cold_fraction;
    p->valve_opening = flow->valve_opening;
    p->chamber_pressure = flow->chamber_pressure;
    p->cold_pressure = flow->cold_pressure;
    p->hot_pressure = flow->hot_pressure;
    p->cold_temperature = s.cold_temperature;
    p->coldest_temperature = coldest_temperature;
    p->cold_temperature_low = s.cold_temperature_low;
    p->cold_temperature_high = s.cold_temperature_high;
    p->hot_temperature = s.hot_temperature;
    p->hot_temperature_low = s.hot_temperature_low;
    p->hot_temperature_high = s.hot_temperature_high;
    p->isentropic_efficiency = s.isentropic_efficiency;
    p->joule_thomson_drop = s.joule_thomson_drop;
    p->entropy_generation = s.entropy_generation;
    p->advisories = s.advisories | (flow->choked ? VTX_ADVISORY_CHOKED : 0)
        | (is_finite(flow->valve_opening) ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE)
        | (o->cooler->inlet_area_factor != 1 ? VTX_ADVISORY_EFFICIENCY_ASSUMED : 0);
    p->advisories |= range_advisory(o, flow->cold_fraction);
    fill_capacities(o, target_temperature, &s, p);
    fill_water(o, flow, &s, p);
    fill_surroundings(o, p);
    return VTX_OK;
}

vtx_status vtx_operating_point_at(const vtx_cooler *cooler, const vtx_supply *supply, const vtx_site *site, const vtx_cooler_setting *setting,
                                  double target_temperature, vtx_operating_point *point)
{
    struct operation o;
    struct network_flow flow;
    vtx_status status = worse(require(point != NULL), check_positive(target_temperature, 150, 500));
    status = worse(status, operation_open(&o, cooler, supply, site, setting));
    if (status == VTX_OK)
        status = operation_flow(&o, supply->pressure, &flow);
    if (status == VTX_OK)
        status = operation_point(&o, supply->pressure, &flow, target_temperature, point);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(point, vtx_operating_point, advisories, status);
}
