/* A part as one mass. */
#include <vtx/part.h>
#include <vtx/material.h>

#include "../base/quadrature.h"
#include "radiation_kernel.h"

#define AIR_MIN 50.0
#define AIR_MAX 2000.0
#define SOLID_MAX 3000.0
#define RESULT_MAX 5000.0
#define FILM_MIN 0.1
#define FILM_MAX 1e5
#define TIME_MAX 1e9
#define LUMPED_BIOT 0.1
/* Above this no air jet gets; a needed coefficient beyond 1e9 is no number to act on. */
#define JET_FILM 2000.0
#define NEEDED_FILM_MAX 1e9
/* Below the glass transition of an amorphous plastic, common practice from memory. */
#define GLASS_CLEARANCE 20.0

vtx_status vtx_part_init(vtx_part *part)
{
    if (!part)
        return VTX_BAD_ARGUMENT;
    memset(part, 0, sizeof *part);
    part->body = VTX_BODY_WALL;
    return VTX_OK;
}

static vtx_status check_part(const vtx_part *p)
{
    if (!p || p->body < VTX_BODY_WALL || p->body > VTX_BODY_SPHERE)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(p->mass, 1e-9, 1e6), check_positive(p->heat_capacity, 50, 10000));
    status = worse(status, worse(check_positive(p->area, 1e-9, 1e5), check_positive(p->conductivity, 0.01, 3000)));
    status = worse(status, worse(check_positive(p->half_thickness, 1e-6, 5), check_amount(p->heat_load, 1e7)));
    status = worse(status, require(are_zero(p->reserved, ARRAY_LENGTH(p->reserved))));
    return worse(status, require(p->reserved_code == 0));
}

static vtx_status check_air(double air_temperature) { return check_positive(air_temperature, AIR_MIN, AIR_MAX); }
static vtx_status check_solid(double temperature) { return check_positive(temperature, AIR_MIN, SOLID_MAX); }

/* Volume over area of wall, cylinder and sphere. */
static double characteristic_length(const vtx_part *p) { return p->half_thickness / (p->body - VTX_BODY_WALL + 1); }

/* Mean inside to surface: L/(3k), r/(4k), r/(5k), m2 K/W; from memory. */
static double inside_resistance(const vtx_part *p)
{
    return p->half_thickness / ((p->body - VTX_BODY_WALL + 3) * p->conductivity);
}

static double biot_of(const vtx_part *p, double film_coefficient)
{
    return film_coefficient * characteristic_length(p) / p->conductivity;
}

/* Film and inside in series; without the inside resistance a switch at the Biot limit would be a step of 2 to 3 %. */
static double effective_film(const vtx_part *p, double film_coefficient)
{
    return film_coefficient / (1 + film_coefficient * inside_resistance(p));
}

/* (1 - exp(-x))/x, 1 at 0. */
static double mean_decay(double x) { return x > 0 ? -expm1(-x) / x : 1; }

vtx_status vtx_cooling_duty(double mass, double heat_capacity, double start_temperature, double end_temperature, double time,
                            double *heat_flow)
{
    vtx_status status = worse(require(heat_flow != NULL), worse(check_amount(mass, 1e6), check_positive(heat_capacity, 50, 10000)));
    status = worse(status, worse(check_positive(start_temperature, 20, SOLID_MAX), check_positive(end_temperature, 20, SOLID_MAX)));
    status = worse(status, check_positive(time, 1e-3, TIME_MAX));
    if (status != VTX_OK)
        return poison(heat_flow, status);
    *heat_flow = mass * heat_capacity * (start_temperature - end_temperature) / time;
    return VTX_OK;
}

vtx_status vtx_biot_number(double film_coefficient, double length, double conductivity, double *biot)
{
    vtx_status status = worse(require(biot != NULL), check_amount(film_coefficient, 1e6));
    status = worse(status, worse(check_positive(length, 1e-7, 100), check_positive(conductivity, 0.01, 3000)));
    if (status != VTX_OK)
        return poison(biot, status);
    *biot = film_coefficient * length / conductivity;
    return VTX_OK;
}

vtx_status vtx_time_constant(double mass, double heat_capacity, double film_coefficient, double area, double *time_constant)
{
    vtx_status status = worse(require(time_constant != NULL), check_positive(mass, 1e-12, 1e6));
    status = worse(status, worse(check_positive(heat_capacity, 50, 10000), check_positive(film_coefficient, FILM_MIN, 1e6)));
    status = worse(status, check_positive(area, 1e-12, 1e5));
    if (status != VTX_OK)
        return poison(time_constant, status);
    *time_constant = mass * heat_capacity / (film_coefficient * area);
    return VTX_OK;
}

static void judge_biot(double biot, int32_t *lumped, int32_t *advisories)
{
    *lumped = biot < LUMPED_BIOT;
    *advisories |= *lumped ? 0 : VTX_ADVISORY_NOT_LUMPED;
}

vtx_status vtx_part_temperature(const vtx_part *part, double film_coefficient, double air_temperature, double start_temperature,
                                double time, vtx_part_state *state)
{
    vtx_status status = worse(require(state != NULL), worse(check_part(part), check_positive(film_coefficient, FILM_MIN, FILM_MAX)));
    status = worse(status, worse(check_air(air_temperature), check_solid(start_temperature)));
    status = worse(status, check_amount(time, TIME_MAX));
    if (status != VTX_OK)
        return POISON_STRUCT(state, vtx_part_state, lumped, status);
    const double film = effective_film(part, film_coefficient);
    const double conductance = film * part->area;
    vtx_part_state s = { .biot = biot_of(part, film_coefficient) };
    s.time_constant = part->mass * part->heat_capacity / conductance;
    const double x = time / s.time_constant;
    const double steady_rise = part->heat_load / conductance;
    const double start_rise = start_temperature - air_temperature;
    const double rise = steady_rise - (steady_rise - start_rise) * exp(-x);
    s.steady_temperature = air_temperature + steady_rise;
    s.temperature = air_temperature + rise;
    s.surface_temperature = air_temperature + rise * film / film_coefficient;
    s.heat_flow = conductance * rise;
    s.mean_heat_flow = conductance * (steady_rise + (start_rise - steady_rise) * mean_decay(x));
    judge_biot(s.biot, &s.lumped, &s.advisories);
    if (s.temperature > RESULT_MAX)
        return POISON_STRUCT(state, vtx_part_state, lumped, VTX_OUT_OF_RANGE);
    *state = s;
    return VTX_OK;
}

vtx_status vtx_part_cooling_time(const vtx_part *part, double film_coefficient, double air_temperature, double start_temperature,
                                 double wanted_temperature, vtx_cooling_time *cooling)
{
    vtx_status status = worse(require(cooling != NULL), worse(check_part(part), check_positive(film_coefficient, FILM_MIN, FILM_MAX)));
    status = worse(status, worse(check_air(air_temperature), check_solid(start_temperature)));
    status = worse(status, check_solid(wanted_temperature));
    if (status != VTX_OK)
        return POISON_STRUCT(cooling, vtx_cooling_time, lumped, status);
    vtx_cooling_time c = { .biot = biot_of(part, film_coefficient) };
    const double conductance = effective_film(part, film_coefficient) * part->area;
    const double steady = air_temperature + part->heat_load / conductance;
    const double covered = start_temperature - wanted_temperature, left = wanted_temperature - steady;
    c.time_constant = part->mass * part->heat_capacity / conductance;
    c.attainable_temperature = steady;
    judge_biot(c.biot, &c.lumped, &c.advisories);
    if (covered != 0 && (left == 0 || (covered > 0) != (left > 0))) {
        POISON_STRUCT(cooling, vtx_cooling_time, lumped, VTX_NO_SOLUTION);
        cooling->attainable_temperature = steady;
        return VTX_NO_SOLUTION;
    }
    c.time = covered == 0 ? 0 : c.time_constant * log1p(covered / left);
    *cooling = c;
    return VTX_OK;
}

/* x = conductance time / (mass heat capacity) at which start exp(-x) + load (1 - exp(-x))/x falls to wanted: convex and falling, so
 * Newton from x = 0 climbs to the root without passing it. Load: rise over the air that heat_load alone would add in the time. */
static double needed_transfer(double start, double load, double wanted)
{
    double x = 0;
    if (load <= 0)
        return log1p((start - wanted) / wanted);
    for (int i = 0; i < 200; i++) {
        const double e = exp(-x), phi = mean_decay(x);
        const double slope = -start * e + load * (x > 1e-4 ? (e - phi) / x : -0.5 + x / 3);
        const double step = (start * e + load * phi - wanted) / -slope;
        x += step;
        if (step <= 1e-14 * x)
            break;
    }
    return x;
}

/* Rise over the air after a transfer x. */
static double rise_after(double start, double load, double x) { return start * exp(-x) + load * mean_decay(x); }

vtx_status vtx_part_film_coefficient(const vtx_part *part, double air_temperature, double start_temperature,
                                     double wanted_temperature, double time, vtx_needed_film *needed)
{
    vtx_status status = worse(require(needed != NULL), worse(check_part(part), check_air(air_temperature)));
    status = worse(status, worse(check_solid(start_temperature), check_solid(wanted_temperature)));
    status = worse(status, check_positive(time, 1e-3, TIME_MAX));
    if (status == VTX_OK && part->heat_load > 0 && start_temperature < air_temperature)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return POISON_STRUCT(needed, vtx_needed_film, lumped, status);
    const double capacity = part->mass * part->heat_capacity;
    /* A part that is warmed is the mirror image of one that is cooled. */
    const double sign = start_temperature < air_temperature ? -1 : 1;
    const double start = sign * (start_temperature - air_temperature), wanted = sign * (wanted_temperature - air_temperature);
    const double load = part->heat_load * time / capacity;
    const double x_per_film = part->area * time / capacity;
    const double x_inside = x_per_film / inside_resistance(part);
    vtx_needed_film n = { .attainable_temperature = air_temperature + sign * rise_after(start, load, x_inside) };
    const double x = wanted >= start + load ? 0 : wanted > 0 ? needed_transfer(start, load, wanted) : x_inside;
    if (x >= x_inside) {
        POISON_STRUCT(needed, vtx_needed_film, lumped, VTX_NO_SOLUTION);
        needed->attainable_temperature = n.attainable_temperature;
        return VTX_NO_SOLUTION;
    }
    n.film_coefficient = x / x_per_film / (1 - x / x_inside);
    n.mean_heat_flow = x > 0 ? (capacity * (start_temperature - wanted_temperature)) / time + part->heat_load : 0;
    n.biot = biot_of(part, n.film_coefficient);
    judge_biot(n.biot, &n.lumped, &n.advisories);
    if (n.film_coefficient > JET_FILM)
        n.advisories |= VTX_ADVISORY_OUTSIDE_CORRELATION;
    if (n.film_coefficient > NEEDED_FILM_MAX)
        return POISON_STRUCT(needed, vtx_needed_film, lumped, VTX_OUT_OF_RANGE);
    *needed = n;
    return VTX_OK;
}

/* Balance film (T - air) + emissivity sigma (T^4 - surroundings^4) = flux: rising and convex, so Newton from above falls to the root
 * without passing it. Both bounds lie above it. */
static double face_temperature(double heat_flux, double film, double air, double emissivity, double surroundings)
{
    const double grey = emissivity * STEFAN_BOLTZMANN;
    const double fourth = square(square(surroundings));
    double t = smaller(larger(air, surroundings) + heat_flux / film, RESULT_MAX);
    for (int i = 0; i < 60; i++) {
        const double cube = t * square(t);
        const double step = (film * (t - air) + grey * (t * cube - fourth) - heat_flux) / (film + 4 * grey * cube);
        t -= step;
        if (step <= 1e-15 * t)
            break;
    }
    return t;
}

static vtx_status check_radiating(double film, double air, double emissivity, double surroundings)
{
    return worse(worse(check_positive(film, FILM_MIN, 1e6), check_air(air)), worse(check_share(emissivity), check_air(surroundings)));
}

vtx_status vtx_face_temperature(double heat_flux, double film_coefficient, double air_temperature, double emissivity,
                                double surroundings_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), check_amount(heat_flux, 1e8));
    status = worse(status, check_radiating(film_coefficient, air_temperature, emissivity, surroundings_temperature));
    if (status == VTX_OK) {
        const double lost = film_coefficient * (RESULT_MAX - air_temperature)
            + radiation_coefficient(emissivity, RESULT_MAX, surroundings_temperature) * (RESULT_MAX - surroundings_temperature);
        status = lost < heat_flux ? VTX_OUT_OF_RANGE : VTX_OK;
    }
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = face_temperature(heat_flux, film_coefficient, air_temperature, emissivity, surroundings_temperature);
    return VTX_OK;
}

vtx_status vtx_face_film_coefficient(double heat_flux, double air_temperature, double wanted_temperature, double *film_coefficient)
{
    vtx_status status = worse(require(film_coefficient != NULL), check_amount(heat_flux, 1e8));
    status = worse(status, worse(check_air(air_temperature), check_solid(wanted_temperature)));
    if (status == VTX_OK && wanted_temperature <= air_temperature)
        status = VTX_NO_SOLUTION;
    if (status == VTX_OK && heat_flux > NEEDED_FILM_MAX * (wanted_temperature - air_temperature))
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(film_coefficient, status);
    *film_coefficient = heat_flux / (wanted_temperature - air_temperature);
    return VTX_OK;
}

struct radiating {
    double film, grey, steady;
};

/* Flux over distance from the steady temperature: film + grey (Ts + T)(Ts^2 + T^2). */
static double gain(const struct radiating *r, double t)
{
    return r->film + r->grey * (r->steady + t) * (square(r->steady) + square(t));
}

/* What is left of 1/flux when its pole at the steady temperature is taken out. */
static double smooth_part(const struct radiating *r, double t)
{
    return r->grey * (3 * square(r->steady) + 2 * r->steady * t + square(t)) / (gain(r, t) * gain(r, r->steady));
}

/* Integral of the smooth part over ln T in four panels. */
static double smooth_integral(const struct radiating *r, double from, double to)
{
    enum { PANELS = 4 };
    const double half = 0.5 * log(to / from) / PANELS;
    double sum = 0;
    for (int panel = 0; panel < PANELS; panel++) {
        const double middle = log(from) + (2 * panel + 1) * half;
        for (int i = 0; i < GAUSS_HALF; i++) {
            const double a = exp(middle - half * gauss_node[i]), b = exp(middle + half * gauss_node[i]);
            sum += gauss_weight[i] * (a * smooth_part(r, a) + b * smooth_part(r, b));
        }
    }
    return sum * half;
}

vtx_status vtx_radiating_part_time(double areal_heat_capacity, double film_coefficient, double air_temperature, double emissivity,
                                   double surroundings_temperature, double start_temperature, double wanted_temperature, double *time)
{
    vtx_status status = worse(require(time != NULL), check_positive(areal_heat_capacity, 1, 1e9));
    status = worse(status, worse(check_air(start_temperature), check_air(wanted_temperature)));
    status = worse(status, check_radiating(film_coefficient, air_temperature, emissivity, surroundings_temperature));
    if (status == VTX_OK)
        status = film_coefficient > FILM_MAX ? VTX_OUT_OF_RANGE : VTX_OK;
    if (status != VTX_OK)
        return poison(time, status);
    const double steady = face_temperature(0, film_coefficient, air_temperature, emissivity, surroundings_temperature);
    const struct radiating r = { film_coefficient, emissivity * STEFAN_BOLTZMANN, steady };
    const double covered = start_temperature - wanted_temperature, left = wanted_temperature - steady;
    if (covered != 0 && (left == 0 || (covered > 0) != (left > 0)))
        return poison(time, VTX_NO_SOLUTION);
    *time = covered == 0 ? 0 : areal_heat_capacity * (log1p(covered / left) / gain(&r, steady)
                                                      + smooth_integral(&r, start_temperature, wanted_temperature));
    return VTX_OK;
}

vtx_status vtx_thermal_growth(double expansion, double length, double temperature_change, double *growth)
{
    vtx_status status = worse(require(growth != NULL), worse(check_amount(expansion, 1e-3), check_amount(length, 1000)));
    status = worse(status, check_range(temperature_change, -2000, 2000));
    if (status != VTX_OK)
        return poison(growth, status);
    *growth = expansion * length * temperature_change;
    return VTX_OK;
}

vtx_status vtx_softening_margin(int32_t material, double temperature, vtx_softening *softening)
{
    vtx_material_properties m;
    vtx_status status = worse(require(softening != NULL), worse(vtx_material(material, &m), check_positive(temperature, AIR_MIN, AIR_MAX)));
    if (status == VTX_OK && !is_finite(m.deflection_temperature.low) && !is_finite(m.service_limit.low))
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return POISON_STRUCT(softening, vtx_softening, exceeded, status);
    vtx_softening s = { .advisories = 0 };
    s.loaded_limit = is_finite(m.service_limit.low) ? m.service_limit.low : m.deflection_temperature.low;
    s.light_limit = m.crystalline ? m.light_deflection_temperature.low : m.glass_transition.low - GLASS_CLEARANCE;
    s.loaded_margin = s.loaded_limit - temperature;
    s.light_margin = s.light_limit - temperature;
    s.exceeded = s.loaded_margin < 0;
    if (!is_finite(s.light_limit))
        s.advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    else
        s.exceeded += s.light_margin < 0;
    *softening = s;
    return VTX_OK;
}
