/* Tools and faces with heat entering at one place. */
#include <vtx/tool.h>

#include "../base/numeric.h"

#define FILM_MIN 0.1
#define FILM_MAX 1e5
/* Above this no air jet gets. */
#define JET_FILM 2000.0
#define RESULT_MAX 5000.0
#define HOLDER_DEFAULT 293.15
#define FAST_PECLET 20.0
#define SLOW_PECLET 0.4
/* Below this a source stands: its moving limit would be endless. */
#define PECLET_AT_REST 1e-6

static vtx_status check_conductivity(double k) { return check_positive(k, 0.01, 3000); }
static vtx_status check_air(double t) { return check_positive(t, 50, 2000); }
static vtx_status check_flux(double q) { return check_amount(q, 1e11); }

static vtx_status check_bar(double film, double perimeter, double section, double conductivity)
{
    return worse(worse(check_positive(film, FILM_MIN, FILM_MAX), check_positive(perimeter, 1e-5, 5)),
                 worse(check_positive(section, 1e-10, 1), check_conductivity(conductivity)));
}

static void fill_fin(double film, double perimeter, double section, double conductivity, double length, vtx_fin *fin)
{
    fin->parameter = sqrt(film * perimeter / (conductivity * section));
    fin->long_conductance = sqrt(film * perimeter * conductivity * section);
    fin->length_number = fin->parameter * length;
    fin->conductance = fin->long_conductance * tanh(fin->length_number);
    fin->efficiency = tanh(fin->length_number) / fin->length_number;
    /* 1/cosh, which would overflow. */
    const double e = exp(-fin->length_number);
    fin->tip_share = 2 * e / (1 + square(e));
}

vtx_status vtx_fin_of_bar(double film_coefficient, double perimeter, double section, double conductivity, double length,
                          vtx_fin *fin)
{
    vtx_status status = worse(require(fin != NULL), check_bar(film_coefficient, perimeter, section, conductivity));
    status = worse(status, check_positive(length, 1e-6, 100));
    if (status != VTX_OK)
        return poison_record(fin, sizeof *fin / sizeof(double), 0, status);
    fill_fin(film_coefficient, perimeter, section, conductivity, length, fin);
    return VTX_OK;
}

vtx_status vtx_tool_init(vtx_tool *tool)
{
    if (!tool)
        return VTX_BAD_ARGUMENT;
    memset(tool, 0, sizeof *tool);
    tool->holder_temperature = HOLDER_DEFAULT;
    return VTX_OK;
}

static vtx_status check_tool(const vtx_tool *t)
{
    if (!t)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_bar(t->film_coefficient, t->perimeter, t->section, t->conductivity), check_positive(t->length, 1e-4, 2));
    status = worse(status, worse(check_amount(t->face_area, 1), check_amount(t->face_coefficient, FILM_MAX)));
    status = worse(status, worse(check_amount(t->holder_conductance, 1e4), check_air(t->holder_temperature)));
    status = worse(status, worse(check_amount(t->tip_length, 1), check_positive(t->tip_section, 1e-10, 1)));
    status = worse(status, t->contact_radius == 0 ? VTX_OK : check_positive(t->contact_radius, 1e-6, 0.1));
    status = worse(status, require(are_zero(t->reserved, ARRAY_LENGTH(t->reserved))));
    return status;
}

static double shank_conductance(const vtx_tool *t)
{
    vtx_fin fin;
    fill_fin(t->film_coefficient, t->perimeter, t->section, t->conductivity, t->length, &fin);
    return fin.conductance;
}

/* Disc of even temperature and of even flux on a half space, K/W, from memory. */
static double constriction_low(const vtx_tool *t) { return t->contact_radius > 0 ? 1 / (4 * t->conductivity * t->contact_radius) : 0; }
static double constriction_high(const vtx_tool *t)
{
    return t->contact_radius > 0 ? 8 / (3 * square(pi) * t->conductivity * t->contact_radius) : 0;
}

vtx_status vtx_tool_temperature(const vtx_tool *tool, double heat_flow, double air_temperature, vtx_tool_temperatures *temperatures)
{
    vtx_tool_temperatures t;
    vtx_status status = worse(require(temperatures != NULL), worse(check_tool(tool), check_amount(heat_flow, 1e5)));
    status = worse(status, check_air(air_temperature));
    if (status != VTX_OK)
        return poison_record(temperatures, sizeof t / sizeof(double), 0, status);
    const double shank = shank_conductance(tool), face = tool->face_area * tool->face_coefficient;
    t.conductance = shank + face + tool->holder_conductance;
    const double holder_drive = tool->holder_conductance * (tool->holder_temperature - air_temperature);
    const double rise = (heat_flow + holder_drive) / t.conductance;
    const double along = tool->tip_length / (tool->conductivity * tool->tip_section);
    t.base_temperature = air_temperature + rise;
    t.tip_temperature_low = t.base_temperature + heat_flow * (along + constriction_low(tool));
    t.tip_temperature_high = t.base_temperature + heat_flow * (along + constriction_high(tool));
    t.shank_heat = shank * rise;
    t.face_heat = face * rise;
    t.holder_heat = tool->holder_conductance * (t.base_temperature - tool->holder_temperature);
    if (t.tip_temperature_high > RESULT_MAX)
        return poison_record(temperatures, sizeof t / sizeof(double), 0, VTX_OUT_OF_RANGE);
    *temperatures = t;
    return VTX_OK;
}

vtx_status vtx_tool_film_coefficient(const vtx_tool *tool, double heat_flow, double air_temperature, double wanted_temperature,
                                     vtx_tool_film *film)
{
    vtx_status status = worse(require(film != NULL), worse(check_tool(tool), check_amount(heat_flow, 1e5)));
    status = worse(status, worse(check_air(air_temperature), check_positive(wanted_temperature, 50, 3000)));
    if (status == VTX_OK)
        status = check_positive(tool->face_area, 1e-9, 1);
    if (status != VTX_OK)
        return POISON_STRUCT(film, vtx_tool_film, advisories, status);
    vtx_tool_film f = { .advisories = 0 };
    const double fixed = shank_conductance(tool) + tool->holder_conductance;
    const double drive = heat_flow + tool->holder_conductance * (tool->holder_temperature - air_temperature);
    const double wanted_rise = wanted_temperature - air_temperature;
    /* drive = (fixed + face) rise. Already cold enough without: nothing needed. */
    const double surplus = drive - fixed * wanted_rise;
    f.attainable_temperature = air_temperature + drive / (fixed + tool->face_area * FILM_MAX);
    if (surplus > 0 && !(wanted_rise > 0 && surplus <= tool->face_area * FILM_MAX * wanted_rise)) {
        POISON_STRUCT(film, vtx_tool_film, advisories, VTX_NO_SOLUTION);
        film->attainable_temperature = f.attainable_temperature;
        return VTX_NO_SOLUTION;
    }
    f.face_heat = larger(surplus, 0);
    f.face_coefficient = surplus > 0 ? surplus / (tool->face_area * wanted_rise) : 0;
    f.advisories = f.face_coefficient > JET_FILM ? VTX_ADVISORY_OUTSIDE_CORRELATION : 0;
    *film = f;
    return VTX_OK;
}

/* One-dimensional flow of heat into the body while the band passes. */
static double moving_largest(double flux, double conductivity, double diffusivity, double speed, double length)
{
    return 2 * flux / conductivity * sqrt(diffusivity * length / (pi * speed));
}

vtx_status vtx_moving_band_rise(double heat_flux, double conductivity, double diffusivity, double speed, double length,
                                double *mean_rise, double *largest_rise)
{
    vtx_status status = worse(require(mean_rise != NULL), worse(check_flux(heat_flux), check_conductivity(conductivity)));
    status = worse(status, worse(check_positive(diffusivity, 1e-9, 2e-3), check_positive(speed, 1e-6, 1000)));
    status = worse(status, check_positive(length, 1e-7, 1));
    if (status == VTX_OK && speed * length < FAST_PECLET * diffusivity)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK) {
        poison(largest_rise, status);
        return poison(mean_rise, status);
    }
    const double largest = moving_largest(heat_flux, conductivity, diffusivity, speed, length);
    *mean_rise = 2 * largest / 3;
    if (largest_rise)
        *largest_rise = largest;
    return VTX_OK;
}

static double disc_centre(double flux, double conductivity, double radius) { return flux * radius / conductivity; }
static double disc_mean(double flux, double conductivity, double radius) { return 8 * flux * radius / (3 * pi * conductivity); }

vtx_status vtx_standing_disc_rise(double heat_flux, double conductivity, double radius, double *mean_rise, double *centre_rise)
{
    vtx_status status = worse(require(mean_rise != NULL), worse(check_flux(heat_flux), check_conductivity(conductivity)));
    status = worse(status, check_positive(radius, 1e-7, 1));
    if (status != VTX_OK) {
        poison(centre_rise, status);
        return poison(mean_rise, status);
    }
    *mean_rise = disc_mean(heat_flux, conductivity, radius);
    if (centre_rise)
        *centre_rise = disc_centre(heat_flux, conductivity, radius);
    return VTX_OK;
}

/* Inverse squares added; the ratio is 0 at rest. */
static double joined(double standing, double standing_over_moving)
{
    return standing / sqrt(1 + square(standing_over_moving));
}

vtx_status vtx_moving_source_rise(double heat_flux, double conductivity, double diffusivity, double speed, double length,
                                  double width, vtx_moving_source *source)
{
    vtx_status status = worse(require(source != NULL), worse(check_flux(heat_flux), check_conductivity(conductivity)));
    status = worse(status, worse(check_positive(diffusivity, 1e-9, 2e-3), check_amount(speed, 1000)));
    status = worse(status, worse(check_positive(length, 1e-7, 1), check_positive(width, 1e-7, 1)));
    if (status != VTX_OK)
        return POISON_STRUCT(source, vtx_moving_source, advisories, status);
    vtx_moving_source s = { .advisories = 0 };
    const double radius = sqrt(length * width / pi);
    s.peclet = speed * length / diffusivity;
    s.standing_mean = disc_mean(heat_flux, conductivity, radius);
    s.standing_centre = disc_centre(heat_flux, conductivity, radius);
    /* Ratios per unit flux: no 0/0 without flux or without speed. */
    const double per_speed = sqrt(pi * speed / (diffusivity * length));
    const double mean_ratio = 8 * radius / (3 * pi) * per_speed * 0.75, largest_ratio = 0.5 * radius * per_speed;
    s.mean_rise = joined(s.standing_mean, mean_ratio);
    s.largest_rise = joined(s.standing_centre, largest_ratio);
    if (s.peclet > PECLET_AT_REST) {
        s.moving_largest = moving_largest(heat_flux, conductivity, diffusivity, speed, length);
        s.moving_mean = 2 * s.moving_largest / 3;
    } else {
        s.moving_largest = s.moving_mean = quiet_nan();
        s.advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    }
    if (s.peclet > SLOW_PECLET && s.peclet < FAST_PECLET)
        s.advisories |= VTX_ADVISORY_EXTRAPOLATED;
    *source = s;
    return VTX_OK;
}
