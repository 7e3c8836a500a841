/* make bench-solver: inverses of the library beside GSL's Brent solver alone on the same forward call, which is what a caller without the
 * inverse would write. With a file name as argument the same numbers go there as JSON. */
#include <math.h>

#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>

#include <vtx.h>

#include "machine.h"
#include "timing.h"

enum { ITEMS = 256, STEPS_MAX = 100 };

static const double tolerance = 1e-9; /* K */

static gsl_root_fsolver *solver;
static double given[ITEMS], answer[ITEMS];
static size_t evaluations, failures;

/* An inverse: the call that answers it, and the forward call it inverts. */
struct inverse {
    const char *what;
    vtx_status (*forward)(double x, double *value);
    vtx_status (*inverse)(double value, double *x);
    double low, high;       /* of the answers */
    double bracket_low, bracket_high;
};

static vtx_status real_saturation(double temperature, double *humidity) { return vtx_saturation_humidity_ratio(VTX_AIR_REAL, 8e5, temperature, humidity); }
static vtx_status real_dew_point(double humidity, double *temperature) { return vtx_dew_point(VTX_AIR_REAL, 8e5, humidity, temperature); }
static vtx_status real_frost_point(double humidity, double *temperature) { return vtx_frost_point(VTX_AIR_REAL, 8e5, humidity, temperature); }
static vtx_status ideal_saturation(double temperature, double *humidity) { return vtx_saturation_humidity_ratio(VTX_AIR_IDEAL, 101325, temperature, humidity); }
static vtx_status ideal_frost_point(double humidity, double *temperature) { return vtx_frost_point(VTX_AIR_IDEAL, 101325, humidity, temperature); }

static vtx_status humidity_of_wet_bulb(double wet_bulb, double *humidity)
{
    return vtx_moist_air_humidity(VTX_AIR_IDEAL, 101325, 313.15, VTX_WET_BULB, wet_bulb, VTX_HUMIDITY_RATIO, humidity);
}

static vtx_status wet_bulb_of_humidity(double humidity, double *wet_bulb)
{
    return vtx_moist_air_humidity(VTX_AIR_IDEAL, 101325, 313.15, VTX_HUMIDITY_RATIO, humidity, VTX_WET_BULB, wet_bulb);
}

static const struct inverse inverses[] = {
    { "saturation temperature over liquid", vtx_water_saturation_pressure, vtx_water_saturation_temperature, 275, 340, 273.16, 373.15 },
    { "sublimation temperature", vtx_ice_sublimation_pressure, vtx_ice_sublimation_temperature, 200, 272, 173.15, 273.16 },
    { "dew point at 8 bar, REAL", real_saturation, real_dew_point, 275, 320, 273.16, 330 },
    { "frost point at 8 bar, REAL", real_saturation, real_frost_point, 220, 272, 200, 273.15 },
    { "frost point at 1 atm, IDEAL", ideal_saturation, ideal_frost_point, 220, 272, 200, 273.15 },
    { "wet bulb at 40 degC, IDEAL", humidity_of_wet_bulb, wet_bulb_of_humidity, 292, 312, 288.15, 313.15 },
};

static const struct inverse *current;

static double difference(double x, void *value)
{
    double there = 0;
    evaluations++;
    failures += current->forward(x, &there) != VTX_OK;
    return there - *(const double *)value;
}

static double brent(double value)
{
    gsl_function f = { difference, &value };
    if (gsl_root_fsolver_set(solver, &f, current->bracket_low, current->bracket_high) != GSL_SUCCESS)
        failures++;
    for (int i = 0; i < STEPS_MAX; i++) {
        if (gsl_root_fsolver_iterate(solver) != GSL_SUCCESS)
            failures++;
        if (gsl_root_test_interval(gsl_root_fsolver_x_lower(solver), gsl_root_fsolver_x_upper(solver), tolerance, 0) == GSL_SUCCESS)
            return gsl_root_fsolver_root(solver);
    }
    failures++;
    return 0;
}

static void brent_loop(size_t n)
{
    for (size_t i = 0; i < n; i++)
        answer[i % ITEMS] = brent(given[i % ITEMS]);
}

static void inverse_loop(size_t n)
{
    size_t bad = 0;
    for (size_t i = 0; i < n; i++)
        bad += current->inverse(given[i % ITEMS], &answer[i % ITEMS]) != VTX_OK;
    failures += bad;
}

/* Largest deviation, K, of a loop's answers from those that the forward call was given. */
static double deviation(timed_loop *loop)
{
    double most = 0;
    loop(ITEMS);
    for (size_t i = 0; i < ITEMS; i++) {
        const double share = (double)(i * 89 % ITEMS) / ITEMS;
        most = fmax(most, fabs(answer[i] - (current->low + share * (current->high - current->low))));
    }
    return most;
}

static void report(const struct inverse *inverse, FILE *json)
{
    current = inverse;
    for (size_t i = 0; i < ITEMS; i++) {
        const double share = (double)(i * 89 % ITEMS) / ITEMS;
        failures += inverse->forward(inverse->low + share * (inverse->high - inverse->low), &given[i]) != VTX_OK;
    }
    evaluations = 0;
    const double brent_deviation = deviation(brent_loop), calls = (double)evaluations / ITEMS, own_deviation = deviation(inverse_loop);
    const double own = time_loop(inverse_loop).median, other = time_loop(brent_loop).median;
    printf("%-40s %10.1f %10.1f %8.1f %8.1f %10.1e %10.1e\n", inverse->what, own, other, other / own, calls, own_deviation, brent_deviation);
    if (json)
        fprintf(json, "{ \"call\": \"%s\", \"ns\": %.5g, \"gsl_ns\": %.5g, \"ratio\": %.4g, \"evaluations\": %.3g, \"deviation\": %.3g, \"gsl_deviation\": %.3g }",
                inverse->what, own, other, other / own, calls, own_deviation, brent_deviation);
}

int main(int argc, char **argv)
{
    FILE *json = argc > 1 ? fopen(argv[1], "w") : NULL;
    gsl_set_error_handler_off();
    solver = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
    if (!solver)
        return 1;
    print_machine();
    printf("\n%-40s %10s %10s %8s %8s %10s %10s\n", "inverse", "libvtx ns", "Brent ns", "ratio", "calls", "libvtx K", "Brent K");
    if (json) {
        fprintf(json, "{ ");
        print_machine_json(json);
        fprintf(json, "\"calls\": [");
    }
    for (size_t i = 0; i < sizeof inverses / sizeof inverses[0]; i++) {
        if (json)
            fprintf(json, "%s\n  ", i ? "," : "");
        report(&inverses[i], json);
    }
    if (json)
        fprintf(json, "\n] }\n");
    gsl_root_fsolver_free(solver);
    if (failures)
        fprintf(stderr, "%zu calls failed: the numbers above are worth nothing\n", failures);
    return failures || (json && fclose(json) != 0);
}
