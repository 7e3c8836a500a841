/* Heat transfer between a surface and a room or a stream. */
#include <vtx/air.h>

#include "../base/exact_units.h"
#include "../flow/crossflow_kernel.h"
#include "convection_kernel.h"
#include "radiation_kernel.h"

#define RAYLEIGH_MAX 1e12
#define LAMINAR_RAYLEIGH_MAX 1e9
#define SPHERE_RAYLEIGH_MAX 1e11
#define OUTWARD_RAYLEIGH_MIN 1e4
#define OUTWARD_RAYLEIGH_MAX 1e11
#define INWARD_RAYLEIGH_MIN 1e5
#define INWARD_RAYLEIGH_MAX 1e10
#define CROSS_FLOW_PECLET_MIN 0.2
#define CROSS_FLOW_REYNOLDS_MAX 1e7
#define SPHERE_REYNOLDS_MAX 7.6e4
#define PLATE_REYNOLDS_MAX 1e8
#define TRANSITION_REYNOLDS 5e5
/* Sides of a square over its area per perimeter. */
#define SQUARE_SIDE 4.0

static vtx_status check_prandtl(double prandtl) { return check_positive(prandtl, 0.01, 1000); }

static double fourth_root(double x) { return sqrt(sqrt(x)); }

/* 1 + (c/Pr)^(9/16) */
static double prandtl_term(double c, double prandtl) { return 1 + pow(c / prandtl, 9.0 / 16); }

/* Churchill and Chu 1975. */
static double horizontal_cylinder(double rayleigh, double prandtl)
{
    return square(0.60 + 0.387 * cbrt(sqrt(rayleigh)) / pow(prandtl_term(0.559, prandtl), 8.0 / 27));
}

static double vertical_plate(double rayleigh, double prandtl)
{
    return square(0.825 + 0.387 * cbrt(sqrt(rayleigh)) / pow(prandtl_term(0.492, prandtl), 8.0 / 27));
}

static double vertical_plate_laminar(double rayleigh, double prandtl)
{
    return 0.68 + 0.670 * fourth_root(rayleigh) / pow(prandtl_term(0.492, prandtl), 4.0 / 9);
}

/* Churchill 1983, laminar with its turbulent factor. */
static double sphere_natural(double rayleigh, double prandtl)
{
    const double term = prandtl_term(0.469, prandtl);
    return 2 + 0.589 * fourth_root(rayleigh) / pow(term, 4.0 / 9) * pow(1 + 7.44e-8 * rayleigh / pow(term, 16.0 / 9), 1.0 / 12);
}

/* Incropera, equations 9.30 to 9.32. The laws of 9.30 and 9.31 cross at 3.6^12 = 4.74e6: the larger one is continuous. */
static double plate_outward_laminar(double rayleigh) { return 0.54 * fourth_root(rayleigh); }
static double plate_outward(double rayleigh) { return larger(plate_outward_laminar(rayleigh), 0.15 * cbrt(rayleigh)); }
static double plate_inward(double rayleigh) { return 0.27 * fourth_root(rayleigh); }

/* Whitaker 1972. */
static double sphere_in_stream(double reynolds, double prandtl, double viscosity_ratio)
{
    return 2 + (0.4 * sqrt(reynolds) + 0.06 * square(cbrt(reynolds))) * pow(prandtl, 0.4) * fourth_root(viscosity_ratio);
}

/* Incropera, equations 7.30 and 7.38, from memory; 871 carried to where the two meet at 5e5. */
static double plate_in_stream(double reynolds, double prandtl)
{
    const double along = reynolds <= TRANSITION_REYNOLDS
        ? 0.664 * sqrt(reynolds)
        : 0.664 * sqrt(TRANSITION_REYNOLDS) + 0.037 * (pow(reynolds, 0.8) - pow(TRANSITION_REYNOLDS, 0.8));
    return along * cbrt(prandtl);
}

vtx_status vtx_rayleigh_number(double gravity, double expansion, double temperature_difference, double length,
                               double kinematic_viscosity, double diffusivity, double *rayleigh)
{
    vtx_status status = worse(require(rayleigh != NULL), worse(check_positive(gravity, 0.1, 30), check_positive(expansion, 1e-5, 0.05)));
    status = worse(status, worse(check_range(temperature_difference, -3000, 3000), check_positive(length, 1e-6, 100)));
    status = worse(status, worse(check_positive(kinematic_viscosity, 1e-9, 0.1), check_positive(diffusivity, 1e-9, 0.1)));
    if (status != VTX_OK)
        return poison(rayleigh, status);
    *rayleigh = gravity * expansion * fabs(temperature_difference) * length * square(length) / (kinematic_viscosity * diffusivity);
    return VTX_OK;
}

vtx_status vtx_nusselt_horizontal_cylinder(double rayleigh, double prandtl, double *nusselt)
{
    const vtx_status status = worse(require(nusselt != NULL), worse(check_amount(rayleigh, RAYLEIGH_MAX), check_prandtl(prandtl)));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = horizontal_cylinder(rayleigh, prandtl);
    return VTX_OK;
}

vtx_status vtx_nusselt_vertical_plate(double rayleigh, double prandtl, double *nusselt)
{
    const vtx_status status = worse(require(nusselt != NULL), worse(check_amount(rayleigh, RAYLEIGH_MAX), check_prandtl(prandtl)));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = vertical_plate(rayleigh, prandtl);
    return VTX_OK;
}

vtx_status vtx_nusselt_vertical_plate_laminar(double rayleigh, double prandtl, double *nusselt)
{
    const vtx_status status = worse(require(nusselt != NULL), worse(check_amount(rayleigh, LAMINAR_RAYLEIGH_MAX), check_prandtl(prandtl)));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = vertical_plate_laminar(rayleigh, prandtl);
    return VTX_OK;
}

vtx_status vtx_nusselt_sphere_natural(double rayleigh, double prandtl, double *nusselt)
{
    vtx_status status = worse(require(nusselt != NULL), check_amount(rayleigh, SPHERE_RAYLEIGH_MAX));
    status = worse(status, check_positive(prandtl, 0.7, 1000));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = sphere_natural(rayleigh, prandtl);
    return VTX_OK;
}

vtx_status vtx_nusselt_plate_outward(double rayleigh, double *nusselt)
{
    const vtx_status status = worse(require(nusselt != NULL), check_amount(rayleigh, OUTWARD_RAYLEIGH_MAX));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = plate_outward(rayleigh);
    return VTX_OK;
}

vtx_status vtx_nusselt_plate_outward_laminar(double rayleigh, double *nusselt)
{
    const vtx_status status = worse(require(nusselt != NULL), check_amount(rayleigh, 2e7));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = plate_outward_laminar(rayleigh);
    return VTX_OK;
}

vtx_status vtx_nusselt_plate_inward(double rayleigh, double *nusselt)
{
    const vtx_status status = worse(require(nusselt != NULL), check_amount(rayleigh, INWARD_RAYLEIGH_MAX));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = plate_inward(rayleigh);
    return VTX_OK;
}

vtx_status vtx_nusselt_cross_flow(double reynolds, double prandtl, double *nusselt)
{
    vtx_status status = worse(require(nusselt != NULL), check_positive(reynolds, 1e-3, CROSS_FLOW_REYNOLDS_MAX));
    status = worse(status, check_prandtl(prandtl));
    if (status == VTX_OK && reynolds * prandtl < CROSS_FLOW_PECLET_MIN)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = crossflow_nusselt(reynolds, prandtl);
    return VTX_OK;
}

vtx_status vtx_nusselt_cross_flow_power(double reynolds, double prandtl, double surface_prandtl, double *nusselt)
{
    vtx_status status = worse(require(nusselt != NULL), check_positive(reynolds, 1e3, 2e5));
    status = worse(status, worse(check_positive(prandtl, 0.1, 10), check_positive(surface_prandtl, 0.1, 10)));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = 0.26 * pow(reynolds, 0.6) * pow(prandtl, 0.37) * fourth_root(prandtl / surface_prandtl);
    return VTX_OK;
}

vtx_status vtx_nusselt_sphere_in_stream(double reynolds, double prandtl, double viscosity_ratio, double *nusselt)
{
    vtx_status status = worse(require(nusselt != NULL), worse(check_amount(reynolds, 1e6), check_prandtl(prandtl)));
    status = worse(status, check_positive(viscosity_ratio, 0.1, 10));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = sphere_in_stream(reynolds, prandtl, viscosity_ratio);
    return VTX_OK;
}

vtx_status vtx_nusselt_plate_in_stream(double reynolds, double prandtl, double *nusselt)
{
    vtx_status status = worse(require(nusselt != NULL), check_amount(reynolds, PLATE_REYNOLDS_MAX));
    status = worse(status, check_positive(prandtl, 0.6, 60));
    if (status != VTX_OK)
        return poison(nusselt, status);
    *nusselt = plate_in_stream(reynolds, prandtl);
    return VTX_OK;
}

static double cube(double x) { return x * square(x); }

vtx_status vtx_nusselt_mixed(double forced, double natural, double *assisting, double *opposing)
{
    vtx_status status = worse(require(assisting != NULL), worse(check_amount(forced, 1e6), check_amount(natural, 1e6)));
    if (status != VTX_OK) {
        poison(opposing, status);
        return poison(assisting, status);
    }
    *assisting = cbrt(cube(forced) + cube(natural));
    if (opposing)
        *opposing = cbrt(fabs(cube(forced) - cube(natural)));
    return VTX_OK;
}

vtx_status vtx_radiation_coefficient(double emissivity, double surface_temperature, double surroundings_temperature,
                                     double *coefficient)
{
    vtx_status status = worse(require(coefficient != NULL), check_share(emissivity));
    status = worse(status, worse(check_positive(surface_temperature, 1, 3000), check_positive(surroundings_temperature, 1, 3000)));
    if (status != VTX_OK)
        return poison(coefficient, status);
    *coefficient = radiation_coefficient(emissivity, surface_temperature, surroundings_temperature);
    return VTX_OK;
}

static vtx_status line_coefficient(double constant, double slope, double temperature_difference, double *coefficient)
{
    vtx_status status = worse(require(coefficient != NULL), check_amount(constant, 20));
    status = worse(status, check_amount(temperature_difference, 60));
    if (status != VTX_OK)
        return poison(coefficient, status);
    *coefficient = constant + slope * temperature_difference;
    return VTX_OK;
}

/* ISO 12241, simplified forms, from memory. */
vtx_status vtx_horizontal_pipe_coefficient(double finish_constant, double temperature_difference, double *coefficient)
{
    return line_coefficient(finish_constant, 0.05, temperature_difference, coefficient);
}

vtx_status vtx_vertical_pipe_coefficient(double finish_constant, double temperature_difference, double *coefficient)
{
    return line_coefficient(finish_constant, 0.09, temperature_difference, coefficient);
}

/* Nusselt numbers of a body by buoyancy and by a stream, the conduction limit they share, and whether data cover them. */
struct nusselt_parts {
    double natural;
    double forced;
    double conduction;
    int outside;
};

static struct nusselt_parts nusselt_of(int32_t body, double rayleigh, double reynolds, double prandtl)
{
    struct nusselt_parts n = { 0, 0, 0, 0 };
    switch (body) {
    case VTX_BODY_CYLINDER:
        n.natural = horizontal_cylinder(rayleigh, prandtl);
        n.forced = crossflow_nusselt(reynolds, prandtl);
        n.conduction = crossflow_nusselt(0, prandtl);
        n.outside = rayleigh > RAYLEIGH_MAX || reynolds > CROSS_FLOW_REYNOLDS_MAX;
        break;
    case VTX_BODY_SPHERE:
        n.natural = sphere_natural(rayleigh, prandtl);
        n.forced = sphere_in_stream(reynolds, prandtl, 1);
        n.conduction = 2;
        n.outside = rayleigh > SPHERE_RAYLEIGH_MAX || reynolds > SPHERE_REYNOLDS_MAX;
        break;
    case VTX_BODY_WALL:
        n.natural = vertical_plate(rayleigh, prandtl);
        n.forced = plate_in_stream(reynolds, prandtl);
        n.outside = rayleigh > RAYLEIGH_MAX || reynolds > PLATE_REYNOLDS_MAX;
        break;
    default:
        n.natural = body == VTX_BODY_PLATE_OUTWARD ? plate_outward(rayleigh) : plate_inward(rayleigh);
        n.forced = plate_in_stream(SQUARE_SIDE * reynolds, prandtl) / SQUARE_SIDE;
        n.outside = body == VTX_BODY_PLATE_OUTWARD ? rayleigh < OUTWARD_RAYLEIGH_MIN || rayleigh > OUTWARD_RAYLEIGH_MAX
                                                   : rayleigh < INWARD_RAYLEIGH_MIN || rayleigh > INWARD_RAYLEIGH_MAX;
        break;
    }
    return n;
}

vtx_status room_coefficient(int32_t body, double pressure, double surface_temperature, double air_temperature, double air_speed,
                            double length, double emissivity, double surroundings_temperature, vtx_surface_coefficient *out)
{
    vtx_dry_air film;
    const double film_temperature = 0.5 * (surface_temperature + air_temperature);
    const vtx_status status = vtx_dry_air_at(pressure, film_temperature, &film);
    if (status != VTX_OK)
        return status;
    const double viscosity = film.viscosity / film.density;
    out->film_diffusivity = film.conductivity / (film.density * film.heat_capacity);
    out->film_conductivity = film.conductivity;
    out->film_density = film.density;
    out->film_heat_capacity = film.heat_capacity;
    out->prandtl = viscosity / out->film_diffusivity;
    out->rayleigh = GRAVITY * fabs(surface_temperature - air_temperature) / film_temperature * cube(length)
                  / (viscosity * out->film_diffusivity);
    out->reynolds = air_speed * length / viscosity;
    const struct nusselt_parts n = nusselt_of(body, out->rayleigh, out->reynolds, out->prandtl);
    out->natural_nusselt = n.natural;
    out->forced_nusselt = n.forced;
    out->convective = (n.conduction + cbrt(cube(n.natural - n.conduction) + cube(n.forced - n.conduction))) * film.conductivity / length;
    out->radiative = radiation_coefficient(emissivity, surface_temperature, surroundings_temperature);
    out->total = out->convective + out->radiative;
    out->heat_flux = out->convective * (air_temperature - surface_temperature)
                   + out->radiative * (surroundings_temperature - surface_temperature);
    out->advisories = (n.outside ? VTX_ADVISORY_OUTSIDE_CORRELATION : 0) | film.advisories;
    out->reserved_code = 0;
    return VTX_OK;
}

vtx_status vtx_room_coefficient(int32_t body, double pressure, double surface_temperature, double air_temperature, double air_speed,
                                double length, double emissivity, double surroundings_temperature,
                                vtx_surface_coefficient *coefficient)
{
    vtx_surface_coefficient c;
    vtx_status status = require(coefficient && body >= VTX_BODY_WALL && body <= VTX_BODY_PLATE_INWARD);
    status = worse(status, worse(check_positive(pressure, 1e4, 1e6), check_positive(surface_temperature, 110, 600)));
    status = worse(status, worse(check_positive(air_temperature, 200, 400), check_amount(air_speed, 100)));
    status = worse(status, worse(check_positive(length, 1e-4, 20), check_share(emissivity)));
    status = worse(status, check_positive(surroundings_temperature, 110, 600));
    if (status == VTX_OK)
        status = room_coefficient(body, pressure, surface_temperature, air_temperature, air_speed, length, emissivity,
                                  surroundings_temperature, &c);
    if (status != VTX_OK)
        return POISON_STRUCT(coefficient, vtx_surface_coefficient, advisories, status);
    *coefficient = c;
    return VTX_OK;
}
