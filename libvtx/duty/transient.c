/* Temperatures inside a body: one term of the series, half space, contact. */
#include <vtx/part.h>
#include <vtx/transient.h>

#include "../base/root.h"
#include "contact_kernel.h"

#define TEMPERATURE_MIN 50.0
#define TEMPERATURE_MAX 3000.0
#define RESULT_MAX 1e5
#define BIOT_MIN 1e-6
#define BIOT_MAX 1e6
#define FOURIER_MIN 0.2
#define FOURIER_MAX 1e9
#define TIME_MIN 1e-9
#define TIME_MAX 1e10
#define DEPTH_MAX 100.0

static vtx_status check_body(int32_t body) { return require(body >= VTX_BODY_WALL && body <= VTX_BODY_SPHERE); }
static vtx_status check_temperature(double t) { return check_positive(t, TEMPERATURE_MIN, TEMPERATURE_MAX); }
static vtx_status check_conductivity(double k) { return check_positive(k, 0.01, 3000); }
static vtx_status check_diffusivity(double a) { return check_positive(a, 1e-9, 2e-3); }
static vtx_status check_depth_and_time(double depth, double time)
{
    return worse(check_amount(depth, DEPTH_MAX), check_positive(time, TIME_MIN, TIME_MAX));
}

/* J0 and J1 by their power series: arguments stay below 2.405, where it is quick and loses no digits. libm's j0 and j1 are not C11. */
static double bessel(int order, double x)
{
    const double q = -0.25 * square(x);
    double term = order ? 0.5 * x : 1, sum = term;
    for (int k = 1; k < 20; k++) {
        term *= q / (k * (k + order));
        sum += term;
    }
    return sum;
}

/* sin z - z cos z and 2z - sin 2z without the cancellation at small z. */
static double sine_less_z_cosine(double z)
{
    if (z > 1)
        return sin(z) - z * cos(z);
    double power = z * square(z), sum = 0, factorial = 6;
    for (int k = 1; k < 12; k++) {
        sum += (k % 2 ? 2 * k : -2 * k) * power / factorial;
        power *= square(z);
        factorial *= (2 * k + 2) * (2 * k + 3);
    }
    return sum;
}

static double twice_less_sine_of_twice(double z)
{
    const double x = 2 * z;
    if (x > 1)
        return x - sin(x);
    double term = x * square(x) / 6, sum = term;
    for (int k = 2; k < 12; k++) {
        term *= -square(x) / (2 * k * (2 * k + 1));
        sum += term;
    }
    return sum;
}

/* The transcendental equation and its slope. Both rise from z = 0 to the pole. */
static double left_side(int32_t body, double z, double *slope)
{
    if (body == VTX_BODY_WALL) {
        const double t = tan(z);
        *slope = t + z * (1 + square(t));
        return z * t;
    }
    if (body == VTX_BODY_CYLINDER) {
        const double ratio = bessel(1, z) / bessel(0, z);
        *slope = z * (1 + square(ratio));
        return z * ratio;
    }
    *slope = 0.5 * twice_less_sine_of_twice(z) / square(sin(z));
    return sine_less_z_cosine(z) / sin(z);
}

/* End of the first branch: pi/2, the first zero of J0 (Abramowitz and Stegun, table 9.5), pi. */
static double branch_end(int32_t body)
{
    return body == VTX_BODY_WALL ? 0.5 * pi : body == VTX_BODY_CYLINDER ? 2.4048255576957728 : pi;
}

/* Newton inside a bracket that shrinks; the start is right at both ends of the Biot number. */
static double eigenvalue(int32_t body, double biot)
{
    const double end = branch_end(body), n = body - VTX_BODY_WALL + 1;
    double low = 0, high = end, z = sqrt(n * biot / (1 + n * biot / square(end)));
    for (int i = 0; i < 60; i++) {
        double slope;
        const double excess = left_side(body, z, &slope) - biot;
        const double before = z;
        if (excess > 0)
            high = z;
        else
            low = z;
        z -= excess / slope;
        if (!(z >= low && z <= high))
            z = 0.5 * (low + high);
        if (fabs(z - before) <= 2e-16 * z)
            break;
    }
    return z;
}

static double coefficient(int32_t body, double z)
{
    if (body == VTX_BODY_WALL)
        return 4 * sin(z) / (2 * z + sin(2 * z));
    if (body == VTX_BODY_CYLINDER)
        return 2 * bessel(1, z) / (z * (square(bessel(0, z)) + square(bessel(1, z))));
    return 4 * sine_less_z_cosine(z) / twice_less_sine_of_twice(z);
}

/* Shape of the first mode: 1 in the middle. */
static double profile(int32_t body, double z, double position)
{
    const double y = z * position;
    return body == VTX_BODY_WALL ? cos(y) : body == VTX_BODY_CYLINDER ? bessel(0, y) : y > 1e-8 ? sin(y) / y : 1;
}

static double mean_profile(int32_t body, double z)
{
    return body == VTX_BODY_WALL ? sin(z) / z : body == VTX_BODY_CYLINDER ? 2 * bessel(1, z) / z : 3 * sine_less_z_cosine(z) / (z * square(z));
}

vtx_status vtx_transient_eigenvalue(int32_t body, double biot, double *eigenvalue_out, double *coefficient_out)
{
    const vtx_status status = worse(require(eigenvalue_out != NULL), worse(check_body(body), check_positive(biot, BIOT_MIN, BIOT_MAX)));
    if (status != VTX_OK) {
        poison(coefficient_out, status);
        return poison(eigenvalue_out, status);
    }
    *eigenvalue_out = eigenvalue(body, biot);
    if (coefficient_out)
        *coefficient_out = coefficient(body, *eigenvalue_out);
    return VTX_OK;
}

static void shares(int32_t body, double biot, double fourier, double position, vtx_transient *t)
{
    t->eigenvalue = eigenvalue(body, biot);
    t->coefficient = coefficient(body, t->eigenvalue);
    t->centre_share = t->coefficient * exp(-square(t->eigenvalue) * fourier);
    t->share = t->centre_share * profile(body, t->eigenvalue, position);
    t->surface_share = t->centre_share * profile(body, t->eigenvalue, 1);
    t->mean_share = t->centre_share * mean_profile(body, t->eigenvalue);
}

vtx_status vtx_transient_shares(int32_t body, double biot, double fourier, double position, vtx_transient *transient)
{
    vtx_status status = worse(require(transient != NULL), worse(check_body(body), check_positive(biot, BIOT_MIN, BIOT_MAX)));
    status = worse(status, worse(check_positive(fourier, FOURIER_MIN, FOURIER_MAX), check_share(position)));
    if (status != VTX_OK)
        return poison_record(transient, sizeof *transient / sizeof(double), 0, status);
    shares(body, biot, fourier, position, transient);
    return VTX_OK;
}

static vtx_status fourier_for_share(int32_t body, double biot, double position, double share, double *fourier)
{
    const double z = eigenvalue(body, biot);
    *fourier = log(coefficient(body, z) * profile(body, z, position) / share) / square(z);
    return *fourier < FOURIER_MIN || *fourier > FOURIER_MAX ? VTX_OUT_OF_RANGE : VTX_OK;
}

vtx_status vtx_transient_fourier(int32_t body, double biot, double position, double share, double *fourier)
{
    vtx_status status = worse(require(fourier != NULL), worse(check_body(body), check_positive(biot, BIOT_MIN, BIOT_MAX)));
    status = worse(status, check_share(position));
    status = worse(status, worse(check_share(share), check_positive(share, 1e-12, 1)));
    if (status == VTX_OK)
        status = fourier_for_share(body, biot, position, share, fourier);
    return status == VTX_OK ? status : poison(fourier, status);
}

static vtx_status check_body_inputs(int32_t body, double half_thickness, double conductivity, double diffusivity, double film,
                                    double air, double start, double position)
{
    vtx_status status = worse(check_body(body), worse(check_positive(half_thickness, 1e-6, 10), check_conductivity(conductivity)));
    status = worse(status, worse(check_diffusivity(diffusivity), check_positive(film, 0.1, 1e6)));
    status = worse(status, worse(check_temperature(air), check_temperature(start)));
    status = worse(status, check_share(position));
    return status != VTX_OK ? status : check_positive(film * half_thickness / conductivity, BIOT_MIN, BIOT_MAX);
}

vtx_status vtx_body_temperatures(int32_t body, double half_thickness, double conductivity, double diffusivity,
                                 double film_coefficient, double air_temperature, double start_temperature, double position,
                                 double time, vtx_body_state *state)
{
    vtx_transient t;
    const double fourier = diffusivity * (time / half_thickness) / half_thickness;
    vtx_status status = worse(require(state != NULL), check_body_inputs(body, half_thickness, conductivity, diffusivity, film_coefficient,
                                                                        air_temperature, start_temperature, position));
    status = worse(status, check_positive(time, 1e-6, TIME_MAX));
    if (status == VTX_OK)
        status = check_positive(fourier, FOURIER_MIN, FOURIER_MAX);
    if (status != VTX_OK)
        return poison_record(state, sizeof *state / sizeof(double), 0, status);
    const double difference = start_temperature - air_temperature;
    state->biot = film_coefficient * half_thickness / conductivity;
    state->fourier = fourier;
    shares(body, state->biot, fourier, position, &t);
    state->temperature = air_temperature + difference * t.share;
    state->centre_temperature = air_temperature + difference * t.centre_share;
    state->surface_temperature = air_temperature + difference * t.surface_share;
    state->mean_temperature = air_temperature + difference * t.mean_share;
    return VTX_OK;
}

vtx_status vtx_body_time(int32_t body, double half_thickness, double conductivity, double diffusivity, double film_coefficient,
                         double air_temperature, double start_temperature, double wanted_temperature, double position, double *time)
{
    vtx_status status = worse(require(time != NULL), check_body_inputs(body, half_thickness, conductivity, diffusivity, film_coefficient,
                                                                       air_temperature, start_temperature, position));
    status = worse(status, check_temperature(wanted_temperature));
    if (status == VTX_OK) {
        const double left = wanted_temperature - air_temperature, whole = start_temperature - air_temperature;
        if (left == 0 || (left > 0) != (whole > 0) || fabs(left) > fabs(whole))
            status = VTX_NO_SOLUTION;
        else
            status = fourier_for_share(body, film_coefficient * half_thickness / conductivity, position, left / whole, time);
    }
    if (status != VTX_OK)
        return poison(time, status);
    *time *= square(half_thickness) / diffusivity;
    return VTX_OK;
}

/* x over 2 sqrt(diffusivity time). */
static double similarity(double diffusivity, double depth, double time) { return 0.5 * depth / sqrt(diffusivity * time); }

vtx_status vtx_depth_temperature_fixed_surface(double diffusivity, double depth, double time, double start_temperature,
                                               double surface_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), worse(check_diffusivity(diffusivity), check_depth_and_time(depth, time)));
    status = worse(status, worse(check_temperature(start_temperature), check_temperature(surface_temperature)));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = surface_temperature + (start_temperature - surface_temperature) * erf(similarity(diffusivity, depth, time));
    return VTX_OK;
}

/* y with erf y = share, rest = 1 - share: a start by Winitzki 2008, then Newton on erf or on ln erfc, whichever keeps its digits. */
static double inverse_error_function(double share, double rest)
{
    const double l = log(rest * (1 + share)), b = 2 / (pi * 0.147) + 0.5 * l;
    double y = sqrt(larger(sqrt(square(b) - l / 0.147) - b, 0));
    for (int i = 0; i < 20; i++) {
        const double slope = 2 / sqrt(pi) * exp(-square(y)), e = erfc(y);
        const double step = share < 0.5 ? (erf(y) - share) / slope : -log(e / rest) * e / slope;
        y -= step;
        if (fabs(step) <= 1e-15 * y)
            break;
    }
    return y;
}

vtx_status vtx_penetration_depth(double diffusivity, double time, double start_temperature, double surface_temperature,
                                 double wanted_temperature, double *depth)
{
    vtx_status status = worse(require(depth != NULL), worse(check_diffusivity(diffusivity), check_positive(time, TIME_MIN, TIME_MAX)));
    status = worse(status, worse(check_temperature(start_temperature), check_temperature(surface_temperature)));
    status = worse(status, check_temperature(wanted_temperature));
    const double whole = start_temperature - surface_temperature;
    const double come = wanted_temperature - surface_temperature, rest = start_temperature - wanted_temperature;
    if (status == VTX_OK && (rest == 0 || (rest > 0) != (whole > 0) || fabs(rest) > fabs(whole)))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(depth, status);
    *depth = come == 0 ? 0 : 2 * inverse_error_function(come / whole, rest / whole) * sqrt(diffusivity * time);
    return VTX_OK;
}

static vtx_status give_temperature(double *temperature, double value)
{
    if (value <= 0 || value > RESULT_MAX)
        return poison(temperature, VTX_OUT_OF_RANGE);
    *temperature = value;
    return VTX_OK;
}

vtx_status vtx_depth_temperature_fixed_flux(double conductivity, double diffusivity, double heat_flux, double depth, double time,
                                            double start_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), worse(check_conductivity(conductivity), check_diffusivity(diffusivity)));
    status = worse(status, worse(check_range(heat_flux, -1e9, 1e9), check_depth_and_time(depth, time)));
    status = worse(status, check_temperature(start_temperature));
    if (status != VTX_OK)
        return poison(temperature, status);
    const double a = similarity(diffusivity, depth, time);
    const double reach = 2 * sqrt(diffusivity * time / pi) * exp(-square(a)) - depth * erfc(a);
    return give_temperature(temperature, start_temperature + heat_flux / conductivity * reach);
}

/* exp(x^2) erfc(x), x >= 0: from 6 on by its continued fraction, Abramowitz and Stegun 7.1.14. */
static double scaled_erfc(double x)
{
    if (x < 6)
        return exp(square(x)) * erfc(x);
    double tail = 0;
    for (int k = 30; k > 0; k--)
        tail = 0.5 * k / (x + tail);
    return 1 / (sqrt(pi) * (x + tail));
}

/* Share of the way from start to air. */
static double stream_response(double conductivity, double diffusivity, double film, double depth, double time)
{
    const double a = similarity(diffusivity, depth, time), b = film * sqrt(diffusivity * time) / conductivity;
    return erfc(a) - exp(-square(a)) * scaled_erfc(a + b);
}

vtx_status vtx_depth_temperature_in_stream(double conductivity, double diffusivity, double film_coefficient, double depth, double time,
                                           double start_temperature, double air_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), worse(check_conductivity(conductivity), check_diffusivity(diffusivity)));
    status = worse(status, worse(check_amount(film_coefficient, 1e7), check_depth_and_time(depth, time)));
    status = worse(status, worse(check_temperature(start_temperature), check_temperature(air_temperature)));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = start_temperature + (air_temperature - start_temperature)
                 * stream_response(conductivity, diffusivity, film_coefficient, depth, time);
    return VTX_OK;
}

struct stream_wish {
    double conductivity, diffusivity, film, depth, share;
};

static double stream_excess(double log_time, void *context)
{
    const struct stream_wish *w = context;
    return stream_response(w->conductivity, w->diffusivity, w->film, w->depth, exp(log_time)) - w->share;
}

vtx_status vtx_depth_time_in_stream(double conductivity, double diffusivity, double film_coefficient, double depth,
                                    double start_temperature, double air_temperature, double wanted_temperature, double *time)
{
    vtx_status status = worse(require(time != NULL), worse(check_conductivity(conductivity), check_diffusivity(diffusivity)));
    status = worse(status, worse(check_positive(film_coefficient, 1e-3, 1e7), check_amount(depth, DEPTH_MAX)));
    status = worse(status, worse(check_temperature(start_temperature), check_temperature(air_temperature)));
    status = worse(status, check_temperature(wanted_temperature));
    const double whole = air_temperature - start_temperature, come = wanted_temperature - start_temperature;
    if (status == VTX_OK && (come == 0 || (come > 0) != (whole > 0) || fabs(come) >= fabs(whole)))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(time, status);
    struct stream_wish wish = { conductivity, diffusivity, film_coefficient, depth, come / whole };
    double log_time;
    status = find_root(stream_excess, &wish, log(TIME_MIN), log(TIME_MAX), 1e-13, &log_time);
    if (status != VTX_OK)
        return poison(time, status == VTX_NO_SOLUTION ? VTX_OUT_OF_RANGE : status);
    *time = exp(log_time);
    return VTX_OK;
}

vtx_status vtx_depth_temperature_pulse(double volumetric_heat_capacity, double diffusivity, double energy, double depth, double time,
                                       double start_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), check_positive(volumetric_heat_capacity, 1e4, 1e8));
    status = worse(status, worse(check_diffusivity(diffusivity), check_amount(energy, 1e10)));
    status = worse(status, worse(check_depth_and_time(depth, time), check_temperature(start_temperature)));
    if (status != VTX_OK)
        return poison(temperature, status);
    const double a = similarity(diffusivity, depth, time);
    return give_temperature(temperature, start_temperature
                            + energy / (volumetric_heat_capacity * sqrt(pi * diffusivity * time)) * exp(-square(a)));
}

vtx_status vtx_thermal_diffusivity(double conductivity, double density, double heat_capacity, double *diffusivity)
{
    vtx_status status = worse(require(diffusivity != NULL), check_conductivity(conductivity));
    status = worse(status, worse(check_positive(density, 1, 30000), check_positive(heat_capacity, 50, 10000)));
    if (status != VTX_OK)
        return poison(diffusivity, status);
    *diffusivity = conductivity / (density * heat_capacity);
    return VTX_OK;
}

vtx_status vtx_thermal_effusivity(double conductivity, double diffusivity, double *effusivity)
{
    const vtx_status status = worse(require(effusivity != NULL), worse(check_conductivity(conductivity), check_diffusivity(diffusivity)));
    if (status != VTX_OK)
        return poison(effusivity, status);
    *effusivity = conductivity / sqrt(diffusivity);
    return VTX_OK;
}

static vtx_status check_touching(double effusivity, double temperature)
{
    return worse(check_positive(effusivity, 1, 1e5), check_positive(temperature, 20, TEMPERATURE_MAX));
}

vtx_status vtx_contact_temperature(double first_effusivity, double first_temperature, double second_effusivity,
                                   double second_temperature, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), check_touching(first_effusivity, first_temperature));
    status = worse(status, check_touching(second_effusivity, second_temperature));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = contact_temperature(first_effusivity, first_temperature, second_effusivity, second_temperature);
    return VTX_OK;
}
