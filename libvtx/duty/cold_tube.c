/* Cold tubes in a humid room. */
#include <vtx/cold_tube.h>

#include "../base/root.h"
#include "convection_kernel.h"
#include "surface_kernel.h"
#include "tube_kernel.h"

#define GAS_MIN 110.0
#define GAS_MAX 400.0
#define COVER_MAX 1.0

/* A tube in a room, as the root finder sees it. */
struct tube_problem {
    const vtx_room *room;
    const vtx_covered_tube *tube;
    struct humid_room humidity;
    vtx_surface_coefficient coefficient; /* of the last evaluation */
    double gas_temperature;
    double resistance; /* K m/W, gas to surface */
    double diameter;   /* m, outside */
    double wanted;     /* K, surface temperature to be reached, when the cover is the unknown */
    int wet;           /* deposit counts */
};

/* W/m that the room gives to a surface; NaN where the film leaves air.h, which ends the search. */
static double given_by_room(struct tube_problem *p, double surface_temperature)
{
    vtx_surface_coefficient *c = &p->coefficient;
    if (room_coefficient(VTX_BODY_CYLINDER, p->room->pressure, surface_temperature, p->room->temperature, p->room->air_speed,
                         p->diameter, p->room->emissivity, walls(p->room), c) != VTX_OK)
        return quiet_nan();
    double flux = c->heat_flux;
    if (p->wet && collects(&p->humidity, surface_temperature)) {
        const double lewis = c->film_diffusivity
                           / vapour_diffusivity(p->room->pressure, 0.5 * (p->room->temperature + surface_temperature));
        const double mass_coefficient = mass_transfer_coefficient(c->convective, c->film_density, c->film_heat_capacity, lewis);
        flux += deposit_flux(p->room, &p->humidity, surface_temperature, mass_coefficient) * latent_heat(surface_temperature);
    }
    return pi * p->diameter * flux;
}

/* Heat that goes on to the gas less heat that the room gives: rises with the surface temperature. */
static double surface_excess(double surface_temperature, void *context)
{
    struct tube_problem *p = context;
    return (surface_temperature - p->gas_temperature) / p->resistance - given_by_room(p, surface_temperature);
}

static void set_cover(struct tube_problem *p, double thickness)
{
    vtx_covered_tube t = *p->tube;
    t.cover_thickness = thickness;
    p->resistance = bare_tube_resistance(&t) + cover_resistance(&t);
    p->diameter = covered_diameter(&t);
}

/* Surface temperature as if nothing collected: between the coldest and the warmest of gas, air and walls. */
static vtx_status dry_temperature(struct tube_problem *p, double *temperature)
{
    const double low = smaller(p->gas_temperature, smaller(p->room->temperature, walls(p->room)));
    const double high = larger(p->gas_temperature, larger(p->room->temperature, walls(p->room)));
    p->wet = 0;
    return find_root(surface_excess, p, low, high, 1e-11, temperature);
}

/* With deposit: what collects warms the surface, but never beyond the limit. */
static vtx_status wet_temperature(struct tube_problem *p, double dry, double *temperature)
{
    *temperature = dry;
    if (!collects(&p->humidity, dry))
        return VTX_OK;
    p->wet = 1;
    return find_root(surface_excess, p, dry, p->humidity.limit, 1e-11, temperature);
}

static vtx_status check_tube_problem(const vtx_room *room, const vtx_covered_tube *tube, double gas_temperature)
{
    return worse(check_room(room), worse(check_covered_tube(tube), check_positive(gas_temperature, GAS_MIN, GAS_MAX)));
}

static void fill_tube(struct tube_problem *p, double dry, double surface_temperature, vtx_tube_surface *s)
{
    s->surface_temperature = surface_temperature;
    s->dry_temperature = dry;
    s->dew_point = p->humidity.dew_point;
    s->frost_point = p->humidity.frost_point;
    s->limit = p->humidity.limit;
    s->margin = dry - p->humidity.limit;
    s->heat_gain = (surface_temperature - p->gas_temperature) / p->resistance;
    p->wet = 0;
    const double sensible = given_by_room(p, surface_temperature);
    s->coefficient = p->coefficient.total;
    s->convective = p->coefficient.convective;
    s->verdict = verdict_of(&p->humidity, surface_temperature);
    /* From the balance, not from the rate: at 273.16 K water and ice stand together and only part of the deposit freezes. */
    s->latent_gain = s->verdict == VTX_SURFACE_DRY ? 0 : larger(s->heat_gain - sensible, 0);
    s->deposit = s->latent_gain / latent_heat(smaller(surface_temperature, p->room->temperature));
    s->advisories = advisory_of(s->verdict) | missing_points(&p->humidity) | p->coefficient.advisories;
}

vtx_status vtx_tube_in_room(const vtx_room *room, const vtx_covered_tube *tube, double gas_temperature, vtx_tube_surface *surface)
{
    struct tube_problem p = { .room = room, .tube = tube, .gas_temperature = gas_temperature };
    double dry, temperature;
    vtx_status status = worse(require(surface != NULL), check_tube_problem(room, tube, gas_temperature));
    if (status == VTX_OK)
        status = humidity_of(room, &p.humidity);
    if (status == VTX_OK) {
        set_cover(&p, tube->cover_thickness);
        status = dry_temperature(&p, &dry);
    }
    if (status == VTX_OK)
        status = wet_temperature(&p, dry, &temperature);
    if (status != VTX_OK)
        return POISON_STRUCT(surface, vtx_tube_surface, verdict, status);
    fill_tube(&p, dry, temperature, surface);
    return VTX_OK;
}

/* Heat that the room gives less heat that goes on, at the wanted temperature: rises with the cover. */
static double cover_excess(double thickness, void *context)
{
    struct tube_problem *p = context;
    set_cover(p, thickness);
    return given_by_room(p, p->wanted) - (p->wanted - p->gas_temperature) / p->resistance;
}

static vtx_status find_cover(struct tube_problem *p, vtx_dry_cover *c)
{
    double bare, temperature;
    set_cover(p, 0);
    vtx_status status = dry_temperature(p, &bare);
    if (status != VTX_OK)
        return status;
    c->bare_verdict = verdict_of(&p->humidity, bare);
    set_cover(p, COVER_MAX);
    status = dry_temperature(p, &c->attainable_temperature);
    if (status != VTX_OK)
        return status;
    c->thickness = 0;
    if (bare < p->wanted) {
        if (c->attainable_temperature < p->wanted)
            return VTX_NO_SOLUTION;
        status = find_root(cover_excess, p, 0, COVER_MAX, 1e-13, &c->thickness);
    }
    set_cover(p, c->thickness);
    temperature = bare < p->wanted ? p->wanted : bare;
    c->surface_temperature = temperature;
    c->heat_gain = given_by_room(p, temperature);
    c->coefficient = p->coefficient.total;
    c->limit = p->humidity.limit;
    c->advisories = advisory_of(c->bare_verdict) | p->coefficient.advisories;
    return status;
}

vtx_status vtx_cover_to_stay_dry(const vtx_room *room, const vtx_covered_tube *tube, double gas_temperature, double margin,
                                 vtx_dry_cover *cover)
{
    struct tube_problem p = { .room = room, .tube = tube, .gas_temperature = gas_temperature };
    vtx_dry_cover c = { .advisories = 0 };
    vtx_status status = worse(require(cover != NULL), check_tube_problem(room, tube, gas_temperature));
    status = worse(status, check_amount(margin, 30));
    if (status == VTX_OK)
        status = humidity_of(room, &p.humidity);
    if (status == VTX_OK && !is_finite(p.humidity.limit))
        status = VTX_OUT_OF_RANGE;
    if (status == VTX_OK) {
        p.wanted = p.humidity.limit + margin;
        status = find_cover(&p, &c);
    }
    if (status != VTX_OK) {
        POISON_STRUCT(cover, vtx_dry_cover, bare_verdict, status);
        if (status == VTX_NO_SOLUTION)
            cover->attainable_temperature = c.attainable_temperature;
        return status;
    }
    *cover = c;
    return VTX_OK;
}
