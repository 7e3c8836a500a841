/* What some calls cost and answer, for bench/compare_peers to set beside general-purpose Python packages: a head of `name text`, then a line
 * `cost name ns exp_ns` and lines `at name answer inputs...` a call. */
#include <stddef.h>

#include <vtx.h>

#include "machine.h"
#include "timing.h"

enum { POINTS = 16, INPUTS_MAX = 4 };

typedef vtx_status value_function(const double *x, double *value);

static vtx_status water_pressure(const double *x, double *value) { return vtx_water_saturation_pressure(x[0], value); }
static vtx_status water_temperature(const double *x, double *value) { return vtx_water_saturation_temperature(x[0], value); }
static vtx_status ice_pressure(const double *x, double *value) { return vtx_ice_sublimation_pressure(x[0], value); }

static vtx_status moist_density(const double *x, double *value)
{
    vtx_moist_air state;
    const vtx_status status = vtx_moist_air_at(VTX_AIR_REAL, x[0], x[1], VTX_HUMIDITY_RATIO, x[2], &state);
    *value = state.density;
    return status;
}

static vtx_status critical_ratio(const double *x, double *value) { return vtx_critical_pressure_ratio(x[0], value); }
static vtx_status isentropic(const double *x, double *value) { return vtx_isentropic_temperature(x[0], x[1], x[2], x[3], value); }
static vtx_status expansibility(const double *x, double *value) { return vtx_orifice_expansibility(x[0], x[1], x[2], x[3], value); }
static vtx_status churchill(const double *x, double *value) { return vtx_darcy_friction_factor(VTX_FRICTION_CHURCHILL, x[0], x[1], value); }
static vtx_status colebrook(const double *x, double *value) { return vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, x[0], x[1], value); }

/* Mass flow of air from p1 to p2 through 20 m of 13 mm pipe of known friction factor, 293.15 K. */
static vtx_status pipe_flow(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    vtx_gas_init(&gas);
    vtx_line_init(&line);
    line.law = VTX_LINE_ISOTHERMAL;
    line.inlet = VTX_INLET_STATIC;
    line.minor_loss = 0;
    line.diameter = 0.013;
    line.length = 20;
    line.friction_factor = x[2];
    return vtx_line_mass_flow(&gas, &line, x[0], 293.15, x[1], value, NULL);
}

static const struct peer {
    const char *name;
    value_function *value;
    int inputs;
    double low[INPUTS_MAX], high[INPUTS_MAX];
} peers[] = {
    { "saturation pressure over liquid", water_pressure, 1, { 275 }, { 370 } },
    { "saturation temperature over liquid", water_temperature, 1, { 700 }, { 9e4 } },
    { "sublimation pressure", ice_pressure, 1, { 200 }, { 272 } },
    { "moist-air state, REAL", moist_density, 3, { 2e5, 290, 1e-4 }, { 9e5, 320, 1e-3 } },
    { "critical pressure ratio", critical_ratio, 1, { 1.1 }, { 1.66 } },
    { "isentropic temperature", isentropic, 4, { 1.3, 6e5, 280, 1e5 }, { 1.66, 9e5, 320, 5e5 } },
    { "orifice expansibility", expansibility, 4, { 1.3, 0.2, 6e5, 5.2e5 }, { 1.66, 0.7, 6.5e5, 5.9e5 } },
    { "friction factor, Churchill", churchill, 2, { 1e4, 1e-5 }, { 1e6, 1e-2 } },
    { "friction factor, Colebrook", colebrook, 2, { 1e4, 1e-5 }, { 1e6, 1e-2 } },
    { "isothermal pipe flow", pipe_flow, 3, { 6e5, 4e5, 0.02 }, { 8e5, 5e5, 0.03 } },
};

static const struct peer *current;
static double inputs[POINTS][INPUTS_MAX], answers[POINTS];
static size_t failures;

static void value_loop(size_t n)
{
    size_t bad = 0;
    for (size_t i = 0; i < n; i++)
        bad += current->value(inputs[i % POINTS], &answers[i % POINTS]) != VTX_OK;
    failures += bad;
}

static void report(const struct peer *peer)
{
    current = peer;
    for (int i = 0; i < POINTS; i++)
        for (int k = 0; k < peer->inputs; k++)
            inputs[i][k] = peer->low[k] + (peer->high[k] - peer->low[k]) * ((i * (2 * k + 3)) % POINTS) / POINTS;
    value_loop(POINTS);
    printf("cost\t%s\t%.5g\t%.4g\n", peer->name, time_loop(value_loop).median, time_loop(exp_loop).median);
    for (int i = 0; i < POINTS; i++) {
        printf("at\t%s\t%.17g", peer->name, answers[i]);
        for (int k = 0; k < peer->inputs; k++)
            printf("\t%.17g", inputs[i][k]);
        printf("\n");
    }
}

int main(void)
{
    print_machine();
    for (size_t i = 0; i < sizeof peers / sizeof peers[0]; i++)
        report(&peers[i]);
    if (failures)
        fprintf(stderr, "%zu calls failed: the numbers are worth nothing\n", failures);
    return failures != 0;
}
