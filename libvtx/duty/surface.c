/* Surfaces in a humid room. */
#include <vtx/air.h>

#include "surface_kernel.h"

/* kg/m3, from memory. */
#define FROST_DENSITY_LOW 100.0
#define FROST_DENSITY_HIGH 400.0
#define WATER_DENSITY 1000.0
#define SURFACE_MIN 110.0
#define SURFACE_MAX 600.0

vtx_status vtx_room_init(vtx_room *room)
{
    if (!room)
        return VTX_BAD_ARGUMENT;
    memset(room, 0, sizeof *room);
    room->pressure = standard_atmosphere;
    room->temperature = 293.15;
    room->relative_humidity = 0.5;
    room->emissivity = 0.9;
    room->model = VTX_AIR_REAL;
    return VTX_OK;
}

vtx_status check_room(const vtx_room *r)
{
    if (!r)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(r->pressure, 3e4, 2e5), check_positive(r->temperature, BELOW_ZERO(40), 343.15));
    status = worse(status, worse(check_share(r->relative_humidity), check_amount(r->air_speed, 100)));
    status = worse(status, worse(check_share(r->emissivity),
                                 r->surroundings_temperature == 0 ? VTX_OK : check_positive(r->surroundings_temperature, 200, 400)));
    status = worse(status, require(are_zero(r->reserved, ARRAY_LENGTH(r->reserved))));
    return worse(status, require(r->reserved_code == 0 && (r->model == VTX_AIR_IDEAL || r->model == VTX_AIR_REAL)));
}

static vtx_status check_surface(double temperature) { return check_positive(temperature, SURFACE_MIN, SURFACE_MAX); }

vtx_status humidity_of(const vtx_room *room, struct humid_room *h)
{
    struct moist_mixture air;
    const vtx_status status = moist_from_humidity(room->model, room->pressure, room->temperature, VTX_RELATIVE_HUMIDITY,
                                                  room->relative_humidity, &air);
    if (status != VTX_OK)
        return status;
    *h = humid_room_of(room->model, room->pressure, air.vapour_fraction);
    return VTX_OK;
}

int32_t verdict_of(const struct humid_room *h, double surface_temperature)
{
    if (!collects(h, surface_temperature))
        return VTX_SURFACE_DRY;
    return surface_temperature < triple_temperature ? VTX_SURFACE_FROSTING : VTX_SURFACE_SWEATING;
}

int32_t advisory_of(int32_t verdict)
{
    return verdict == VTX_SURFACE_SWEATING ? VTX_ADVISORY_SWEATING : verdict == VTX_SURFACE_FROSTING ? VTX_ADVISORY_FROSTING : 0;
}

vtx_status vtx_judge_surface(const vtx_room *room, double surface_temperature, vtx_surface_state *state)
{
    struct humid_room h;
    vtx_status status = worse(require(state != NULL), worse(check_room(room), check_surface(surface_temperature)));
    if (status == VTX_OK)
        status = humidity_of(room, &h);
    if (status != VTX_OK)
        return POISON_STRUCT(state, vtx_surface_state, verdict, status);
    state->dew_point = h.dew_point;
    state->frost_point = h.frost_point;
    state->limit = h.limit;
    state->margin = surface_temperature - h.limit;
    state->verdict = verdict_of(&h, surface_temperature);
    state->advisories = advisory_of(state->verdict) | missing_points(&h);
    return VTX_OK;
}

double deposit_flux(const vtx_room *room, const struct humid_room *h, double surface_temperature, double mass_coefficient)
{
    const double film_temperature = 0.5 * (room->temperature + surface_temperature);
    const double saturated = moist_saturation_fraction(room->model, room->pressure, surface_temperature, stable_phase(surface_temperature));
    const double flux = vapour_flux(mass_coefficient, h->vapour_fraction * room->pressure, film_temperature, saturated * room->pressure,
                                    film_temperature);
    return larger(flux, 0);
}

vtx_status vtx_deposition_rate(const vtx_room *room, double surface_temperature, double convective_coefficient,
                               vtx_deposition *deposition)
{
    struct humid_room h;
    vtx_dry_air film;
    vtx_deposition d = { .advisories = 0 };
    vtx_status status = worse(require(deposition != NULL), worse(check_room(room), check_surface(surface_temperature)));
    status = worse(status, check_amount(convective_coefficient, 1e4));
    if (status == VTX_OK)
        status = worse(humidity_of(room, &h), vtx_dry_air_at(room->pressure, 0.5 * (room->temperature + surface_temperature), &film));
    if (status != VTX_OK)
        return POISON_STRUCT(deposition, vtx_deposition, verdict, status);
    d.lewis = film.conductivity / (film.density * film.heat_capacity) / vapour_diffusivity(film.pressure, film.temperature);
    d.mass_transfer_coefficient = mass_transfer_coefficient(convective_coefficient, film.density, film.heat_capacity, d.lewis);
    d.convective_flux = convective_coefficient * (room->temperature - surface_temperature);
    d.limit = h.limit;
    d.verdict = verdict_of(&h, surface_temperature);
    d.advisories = advisory_of(d.verdict) | (is_finite(h.limit) ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE);
    if (d.verdict != VTX_SURFACE_DRY) {
        const int frost = d.verdict == VTX_SURFACE_FROSTING;
        d.mass_flux = deposit_flux(room, &h, surface_temperature, d.mass_transfer_coefficient);
        d.latent_flux = d.mass_flux * latent_heat(surface_temperature);
        d.growth_low = d.mass_flux / (frost ? FROST_DENSITY_HIGH : WATER_DENSITY);
        d.growth_high = d.mass_flux / (frost ? FROST_DENSITY_LOW : WATER_DENSITY);
    }
    *deposition = d;
    return VTX_OK;
}

vtx_status vtx_vapour_diffusivity(double pressure, double temperature, double *diffusivity)
{
    vtx_status status = worse(require(diffusivity != NULL), check_positive(pressure, 1e3, 5e6));
    status = worse(status, check_positive(temperature, 150, 500));
    if (status != VTX_OK)
        return poison(diffusivity, status);
    *diffusivity = vapour_diffusivity(pressure, temperature);
    return VTX_OK;
}

vtx_status vtx_mass_transfer_coefficient(double convective_coefficient, double density, double heat_capacity, double lewis,
                                         double *coefficient)
{
    vtx_status status = worse(require(coefficient != NULL), check_amount(convective_coefficient, 1e5));
    status = worse(status, worse(check_positive(density, 1e-3, 100), check_positive(heat_capacity, 500, 5000)));
    status = worse(status, check_positive(lewis, 0.1, 10));
    if (status != VTX_OK)
        return poison(coefficient, status);
    *coefficient = mass_transfer_coefficient(convective_coefficient, density, heat_capacity, lewis);
    return VTX_OK;
}

vtx_status vtx_vapour_flux(double coefficient, double air_vapour_pressure, double air_temperature, double surface_vapour_pressure,
                           double surface_temperature, double *mass_flux)
{
    vtx_status status = worse(require(mass_flux != NULL), check_amount(coefficient, 100));
    status = worse(status, worse(check_amount(air_vapour_pressure, 1e5), check_positive(air_temperature, 150, 500)));
    status = worse(status, worse(check_amount(surface_vapour_pressure, 1e5), check_positive(surface_temperature, 110, 500)));
    if (status != VTX_OK)
        return poison(mass_flux, status);
    *mass_flux = vapour_flux(coefficient, air_vapour_pressure, air_temperature, surface_vapour_pressure, surface_temperature);
    return VTX_OK;
}

vtx_status vtx_wet_surface_flux(double convective_coefficient, double radiative_coefficient, double air_temperature,
                                double surface_temperature, double mass_flux, double latent, double *heat_flux)
{
    vtx_status status = worse(require(heat_flux != NULL), check_amount(convective_coefficient, 1e5));
    status = worse(status, worse(check_amount(radiative_coefficient, 1e3), check_positive(air_temperature, 150, 500)));
    status = worse(status, worse(check_surface(surface_temperature), check_range(mass_flux, -10, 10)));
    status = worse(status, check_amount(latent, 3e6));
    if (status != VTX_OK)
        return poison(heat_flux, status);
    *heat_flux = (convective_coefficient + radiative_coefficient) * (air_temperature - surface_temperature) + mass_flux * latent;
    return VTX_OK;
}

vtx_status vtx_evaporation_drop(double pressure, double surface_vapour_pressure, double air_vapour_pressure, double latent,
                                double heat_capacity, double lewis, double *drop)
{
    vtx_status status = worse(require(drop != NULL), check_positive(pressure, 1e3, 5e6));
    status = worse(status, worse(check_amount(surface_vapour_pressure, 5e6), check_amount(air_vapour_pressure, 5e6)));
    status = worse(status, worse(check_amount(latent, 3e6), check_positive(heat_capacity, 500, 5000)));
    status = worse(status, check_positive(lewis, 0.1, 10));
    if (status == VTX_OK)
        status = require(surface_vapour_pressure <= pressure && air_vapour_pressure <= pressure);
    if (status != VTX_OK)
        return poison(drop, status);
    *drop = latent * water_molar_mass / moist_air_molar_mass * (surface_vapour_pressure - air_vapour_pressure)
          / (heat_capacity * square(cbrt(lewis)) * pressure);
    return VTX_OK;
}
