/* Tubes and walls with a cover. */
#include "tube_kernel.h"

#define TEMPERATURE_MIN 20.0
#define TEMPERATURE_MAX 2000.0
#define THICKNESS_MAX 1e6
/* An aged elastomeric foam, W/(m K), from memory. */
#define COVER_DEFAULT 0.04
#define INSIDE_DEFAULT 1e6

static vtx_status check_temperature(double t) { return check_positive(t, TEMPERATURE_MIN, TEMPERATURE_MAX); }
static vtx_status check_film(double h) { return check_positive(h, 0.01, 1e5); }

vtx_status vtx_covered_tube_init(vtx_covered_tube *tube)
{
    if (!tube)
        return VTX_BAD_ARGUMENT;
    memset(tube, 0, sizeof *tube);
    tube->inside_coefficient = INSIDE_DEFAULT;
    tube->cover_conductivity = COVER_DEFAULT;
    return VTX_OK;
}

vtx_status check_covered_tube(const vtx_covered_tube *t)
{
    if (!t)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(t->inside_diameter, 1e-4, 2), check_positive(t->outside_diameter, 1e-4, 3));
    status = worse(status, worse(check_positive(t->wall_conductivity, 0.01, 3000), check_positive(t->inside_coefficient, 1, 1e6)));
    status = worse(status, worse(check_amount(t->cover_thickness, 1), check_positive(t->cover_conductivity, 0.001, 100)));
    status = worse(status, require(are_zero(t->reserved, ARRAY_LENGTH(t->reserved))));
    return status != VTX_OK ? status : require(t->outside_diameter > t->inside_diameter);
}

vtx_status vtx_covered_tube_heat(const vtx_covered_tube *tube, double inside_temperature, double outside_coefficient,
                                 double outside_temperature, vtx_tube_heat *heat)
{
    vtx_status status = worse(require(heat != NULL), worse(check_covered_tube(tube), check_temperature(inside_temperature)));
    status = worse(status, worse(check_film(outside_coefficient), check_temperature(outside_temperature)));
    if (status != VTX_OK)
        return POISON_STRUCT(heat, vtx_tube_heat, cover_adds_heat, status);
    vtx_tube_heat h = { .advisories = 0 };
    const double difference = outside_temperature - inside_temperature;
    const double tube_part = bare_tube_resistance(tube), cover = cover_resistance(tube);
    const double bare = tube_part + film_resistance(tube->outside_diameter, outside_coefficient);
    h.outside_resistance = film_resistance(covered_diameter(tube), outside_coefficient);
    h.resistance = tube_part + cover + h.outside_resistance;
    h.heat_gain = difference / h.resistance;
    h.surface_temperature = outside_temperature - h.heat_gain * h.outside_resistance;
    h.tube_temperature = inside_temperature + h.heat_gain * tube_part;
    h.cover_difference = h.heat_gain * cover;
    h.bare_heat_gain = difference / bare;
    h.critical_radius = tube->cover_conductivity / outside_coefficient;
    h.cover_adds_heat = h.resistance < bare;
    *heat = h;
    return VTX_OK;
}

vtx_status vtx_cover_inside_temperature(double heat_per_length, double inner_radius, double outer_radius, double conductivity,
                                        double outside_coefficient, double outside_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), check_range(heat_per_length, -1e6, 1e6));
    status = worse(status, worse(check_positive(inner_radius, 1e-6, 10), check_positive(outer_radius, 1e-6, 20)));
    status = worse(status, worse(check_positive(conductivity, 0.001, 1000), check_film(outside_coefficient)));
    status = worse(status, check_temperature(outside_temperature));
    if (status == VTX_OK)
        status = require(inner_radius <= outer_radius);
    if (status != VTX_OK)
        return poison(temperature, status);
    const double resistance = ring_resistance(inner_radius, outer_radius, conductivity)
                            + film_resistance(2 * outer_radius, outside_coefficient);
    const double t = outside_temperature + heat_per_length * resistance;
    if (t < 1 || t > 1e5)
        return poison(temperature, VTX_OUT_OF_RANGE);
    *temperature = t;
    return VTX_OK;
}

vtx_status vtx_critical_radius(double conductivity, double outside_coefficient, double *radius)
{
    vtx_status status = worse(require(radius != NULL), check_positive(conductivity, 0.001, 1000));
    status = worse(status, check_film(outside_coefficient));
    if (status != VTX_OK)
        return poison(radius, status);
    *radius = conductivity / outside_coefficient;
    return VTX_OK;
}

/* The plane thickness (k/h)(Ts - Ti)/(Ta - Ts); 0 when the bare surface is there already, NO_SOLUTION beyond the room. */
static vtx_status plane_thickness(double conductivity, double inside, double film, double room, double wanted, double *thickness)
{
    const double sign = inside < room ? 1 : -1;
    const double done = sign * (wanted - inside), left = sign * (room - wanted);
    *thickness = 0;
    if (done <= 0)
        return VTX_OK;
    if (left <= 0)
        return VTX_NO_SOLUTION;
    if (conductivity / film * done > THICKNESS_MAX * left)
        return VTX_OUT_OF_RANGE;
    *thickness = conductivity / film * done / left;
    return VTX_OK;
}

/* Lambert's W of x >= 0: u with u exp(u) = x. ln u + u is rising and concave, so Newton on it from a start below the root never passes
 * the root. */
static double lambert(double x)
{
    double u = x < 1 ? x / (1 + x) : 0.5 * log1p(x);
    if (x <= 0)
        return 0;
    for (int i = 0; i < 40; i++) {
        const double step = (log(x / u) - u) / (1 / u + 1);
        u += step;
        if (fabs(step) <= 1e-15 * u)
            break;
    }
    return u;
}

static vtx_status check_wish(double conductivity, double inside, double film, double room, double wanted)
{
    return worse(worse(check_positive(conductivity, 0.001, 100), check_film(film)),
                 worse(check_temperature(inside), worse(check_temperature(room), check_temperature(wanted))));
}

vtx_status vtx_insulation_thickness(double radius, double conductivity, double tube_temperature, double outside_coefficient,
                                    double outside_temperature, double wanted_temperature, double *thickness)
{
    double plane = 0;
    vtx_status status = worse(require(thickness != NULL), check_positive(radius, 1e-5, 10));
    status = worse(status, check_wish(conductivity, tube_temperature, outside_coefficient, outside_temperature, wanted_temperature));
    if (status == VTX_OK)
        status = plane_thickness(conductivity, tube_temperature, outside_coefficient, outside_temperature, wanted_temperature, &plane);
    if (status == VTX_OK && plane > THICKNESS_MAX * radius)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(thickness, status);
    *thickness = radius * expm1(lambert(plane / radius));
    return VTX_OK;
}

vtx_status vtx_wall_insulation_thickness(double conductivity, double wall_temperature, double outside_coefficient,
                                         double outside_temperature, double wanted_temperature, double *thickness)
{
    vtx_status status = worse(require(thickness != NULL),
                              check_wish(conductivity, wall_temperature, outside_coefficient, outside_temperature, wanted_temperature));
    if (status == VTX_OK)
        status = plane_thickness(conductivity, wall_temperature, outside_coefficient, outside_temperature, wanted_temperature, thickness);
    return status == VTX_OK ? status : poison(thickness, status);
}
