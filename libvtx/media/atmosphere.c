/* The standard atmosphere of ISO 2533. */
#include <vtx/atmosphere.h>

#include "../base/exact_units.h"
#include "../base/numeric.h"

/* ISO 2533:1975. */
#define SEA_LEVEL_PRESSURE 101325.0
#define SEA_LEVEL_TEMPERATURE 288.15
#define LAPSE_RATE 0.0065
#define GAS_CONSTANT 287.05287
#define EARTH_RADIUS 6356766.0
#define EXPONENT (GRAVITY / (GAS_CONSTANT * LAPSE_RATE))

#define ALTITUDE_MIN (-2000.0)
#define ALTITUDE_MAX 11000.0

static inline double temperature_at(double altitude) { return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * altitude; }

static inline double pressure_at(double altitude)
{
    return SEA_LEVEL_PRESSURE * pow(temperature_at(altitude) / SEA_LEVEL_TEMPERATURE, EXPONENT);
}

static inline double altitude_of(double pressure)
{
    return -SEA_LEVEL_TEMPERATURE / LAPSE_RATE * expm1(log(pressure / SEA_LEVEL_PRESSURE) / EXPONENT);
}

static vtx_status check_altitude(double altitude, const double *output)
{
    return worse(require(output != NULL), check_range(altitude, ALTITUDE_MIN, ALTITUDE_MAX));
}

vtx_status vtx_atmosphere_pressure(double altitude, double *pressure)
{
    const vtx_status status = check_altitude(altitude, pressure);
    if (status != VTX_OK)
        return poison(pressure, status);
    *pressure = pressure_at(altitude);
    return VTX_OK;
}

vtx_status vtx_atmosphere_temperature(double altitude, double *temperature)
{
    const vtx_status status = check_altitude(altitude, temperature);
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = temperature_at(altitude);
    return VTX_OK;
}

vtx_status vtx_atmosphere_density(double altitude, double *density)
{
    const vtx_status status = check_altitude(altitude, density);
    if (status != VTX_OK)
        return poison(density, status);
    *density = pressure_at(altitude) / (GAS_CONSTANT * temperature_at(altitude));
    return VTX_OK;
}

vtx_status vtx_atmosphere_altitude(double pressure, double *altitude)
{
    vtx_status status = worse(require(altitude != NULL), check_positive(pressure, 0, DBL_MAX));
    if (status == VTX_OK)
        status = check_range(pressure, pressure_at(ALTITUDE_MAX), pressure_at(ALTITUDE_MIN));
    if (status != VTX_OK)
        return poison(altitude, status);
    *altitude = altitude_of(pressure);
    return VTX_OK;
}

vtx_status vtx_geopotential_altitude(double geometric, double *geopotential)
{
    const vtx_status status = worse(require(geopotential != NULL), check_range(geometric, ALTITUDE_MIN, ALTITUDE_MAX + 20));
    if (status != VTX_OK)
        return poison(geopotential, status);
    *geopotential = EARTH_RADIUS * geometric / (EARTH_RADIUS + geometric);
    return VTX_OK;
}

vtx_status vtx_geometric_altitude(double geopotential, double *geometric)
{
    const vtx_status status = check_altitude(geopotential, geometric);
    if (status != VTX_OK)
        return poison(geometric, status);
    *geometric = EARTH_RADIUS * geopotential / (EARTH_RADIUS - geopotential);
    return VTX_OK;
}

/* The altimeter reads the site's altitude when its zero is moved to the reduced pressure. */
vtx_status vtx_station_pressure(double sea_level_pressure, double altitude, double *pressure)
{
    vtx_status status = worse(require(pressure != NULL), check_positive(sea_level_pressure, 87000, 108500));
    status = worse(status, check_range(altitude, -500, 5000));
    if (status != VTX_OK)
        return poison(pressure, status);
    *pressure = pressure_at(altitude + altitude_of(sea_level_pressure));
    return VTX_OK;
}
