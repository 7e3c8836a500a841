/* A room's humidity against a surface, and the vapour that reaches it. Internal. */
#ifndef VTX_SURFACE_KERNEL_H
#define VTX_SURFACE_KERNEL_H

#include <vtx/surface.h>

#include "../media/moist_kernel.h"
#include "../media/water_kernel.h"

/* The room's humidity as a surface meets it. */
struct humid_room {
    double vapour_fraction;
    double dew_point;
    double frost_point;
    double limit;
};

/* Below this temperature air that holds so much vapour lets it fall: the frost point, above 273.16 K the dew point; NaN without vapour. */
static inline double deposit_limit(int32_t model, double pressure, double vapour_fraction)
{
    const double frost = moist_dew_or_frost_point(model, pressure, vapour_fraction, PHASE_ICE);
    return is_finite(frost) ? frost : moist_dew_or_frost_point(model, pressure, vapour_fraction, PHASE_LIQUID);
}

static inline struct humid_room humid_room_of(int32_t model, double pressure, double vapour_fraction)
{
    struct humid_room h = { .vapour_fraction = vapour_fraction };
    h.dew_point = moist_dew_or_frost_point(model, pressure, vapour_fraction, PHASE_LIQUID);
    h.frost_point = moist_dew_or_frost_point(model, pressure, vapour_fraction, PHASE_ICE);
    h.limit = is_finite(h.frost_point) ? h.frost_point : h.dew_point;
    return h;
}

static inline double walls(const vtx_room *r) { return r->surroundings_temperature > 0 ? r->surroundings_temperature : r->temperature; }

static inline int collects(const struct humid_room *h, double surface_temperature)
{
    return is_finite(h->limit) && surface_temperature < h->limit;
}

static inline int32_t missing_points(const struct humid_room *h)
{
    return is_finite(h->dew_point) && is_finite(h->frost_point) ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
}

/* Cengel, Heat and Mass Transfer, example 14.10; m2/s. */
static inline double vapour_diffusivity(double pressure, double temperature)
{
    return 1.87e-10 * pow(temperature, 2.072) * standard_atmosphere / pressure;
}

/* Chilton and Colburn 1934, m/s. */
static inline double mass_transfer_coefficient(double convective, double density, double heat_capacity, double lewis)
{
    return convective / (density * heat_capacity * square(cbrt(lewis)));
}

static inline double vapour_flux(double coefficient, double air_pressure, double air_temperature, double surface_pressure,
                          double surface_temperature)
{
    return coefficient * water_molar_mass / gas_constant * (air_pressure / air_temperature - surface_pressure / surface_temperature);
}

/* Clausius and Clapeyron with ideal vapour, J/kg. */
static inline double latent_heat(double temperature)
{
    const struct saturation s = temperature < triple_temperature ? ice_saturation(temperature) : liquid_saturation(temperature);
    return gas_constant / water_molar_mass * square(temperature) * s.slope / s.pressure;
}

vtx_status check_room(const vtx_room *room);
vtx_status humidity_of(const vtx_room *room, struct humid_room *h);
int32_t verdict_of(const struct humid_room *h, double surface_temperature);
int32_t advisory_of(int32_t verdict);

/* Deposit on a surface below the limit, kg/(m2 s). Both vapour densities at the film temperature: the flux starts at the limit. */
double deposit_flux(const vtx_room *room, const struct humid_room *h, double surface_temperature, double mass_coefficient);

#endif
