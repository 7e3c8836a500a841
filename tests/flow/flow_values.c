/* Values of the flow layer for the comparison with another library: reads lines `name number number ...`, prints a number each. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <vtx/bore.h>
#include <vtx/flow_coefficient.h>
#include <vtx/friction.h>
#include <vtx/isentropic.h>
#include <vtx/line.h>
#include <vtx/restriction.h>
#include <vtx/sharp_orifice.h>
#include <vtx/valve.h>

enum { NUMBERS_MAX = 12 };

typedef vtx_status value_function(const double *x, double *value);

static vtx_status critical_ratio(const double *x, double *value) { return vtx_critical_pressure_ratio(x[0], value); }
static vtx_status critical_flow_function(const double *x, double *value) { return vtx_critical_flow_function(x[0], value); }
static vtx_status temperature_ratio(const double *x, double *value) { return vtx_isentropic_temperature_ratio(x[0], x[1], value); }
static vtx_status pressure_ratio(const double *x, double *value) { return vtx_isentropic_pressure_ratio(x[0], x[1], value); }
static vtx_status isentropic(const double *x, double *value) { return vtx_isentropic_temperature(x[0], x[1], x[2], x[3], value); }
static vtx_status expansibility(const double *x, double *value) { return vtx_orifice_expansibility(x[0], x[1], x[2], x[3], value); }
static vtx_status kv_from_cv(const double *x, double *value) { return vtx_kv_from_cv(x[0], value); }
static vtx_status loss_from_kv(const double *x, double *value) { return vtx_loss_from_kv(x[0], x[1], value); }

/* molar mass, gamma, Z, area, p1, T1, p2 */
static vtx_status orifice(const double *x, double *value)
{
    const vtx_gas gas = { .molar_mass = x[0], .heat_capacity_ratio = x[1], .compressibility = x[2] };
    return vtx_orifice_mass_flow(&gas, x[3], 1, x[4], x[5], x[6], value, NULL);
}

/* molar mass, gamma, Z, xT, mass flow, p1, T1, p2 */
static vtx_status valve_kv(const double *x, double *value)
{
    const vtx_gas gas = { .molar_mass = x[0], .heat_capacity_ratio = x[1], .compressibility = x[2] };
    const vtx_valve valve = { .pressure_ratio_factor = x[3] };
    return vtx_valve_flow_coefficient(&gas, &valve, x[4], x[5], x[6], x[7], value, NULL);
}

static vtx_status churchill(const double *x, double *value) { return vtx_darcy_friction_factor(VTX_FRICTION_CHURCHILL, x[0], x[1], value); }
static vtx_status colebrook(const double *x, double *value) { return vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, x[0], x[1], value); }
static vtx_status haaland(const double *x, double *value) { return vtx_darcy_friction_factor(VTX_FRICTION_HAALAND, x[0], x[1], value); }

static vtx_status pipe_bore(const double *x, double *value)
{
    vtx_bore bore;
    const vtx_status status = vtx_bore_at_least(VTX_BORE_SCHEDULE_40, x[0], &bore);
    *value = bore.diameter;
    return status;
}

/* R, T, D, L, f, p1, p2, mass flow */
static void make_pipe(const double *x, vtx_gas *gas, vtx_line *line)
{
    vtx_gas_init(gas);
    vtx_line_init(line);
    gas->molar_mass = 8.314462618 / x[0];
    line->law = VTX_LINE_ISOTHERMAL;
    line->inlet = VTX_INLET_STATIC;
    line->minor_loss = 0;
    line->diameter = x[2];
    line->length = x[3];
    line->friction_factor = x[4];
}

static vtx_status isothermal_flow(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    make_pipe(x, &gas, &line);
    return vtx_line_mass_flow(&gas, &line, x[5], x[1], x[6], value, NULL);
}

static vtx_status isothermal_outlet(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    make_pipe(x, &gas, &line);
    return vtx_line_outlet_pressure(&gas, &line, x[7], x[5], x[1], value, NULL);
}

static vtx_status isothermal_inlet(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    make_pipe(x, &gas, &line);
    return vtx_line_inlet_pressure(&gas, &line, x[7], x[1], x[6], value, NULL);
}

static vtx_status isothermal_length(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    make_pipe(x, &gas, &line);
    return vtx_line_length(&gas, &line, x[7], x[5], x[1], x[6], value, NULL);
}

static vtx_status isothermal_diameter(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    make_pipe(x, &gas, &line);
    return vtx_line_diameter(&gas, &line, x[7], x[5], x[1], x[6], value, NULL);
}

static vtx_status isothermal_critical(const double *x, double *value)
{
    vtx_gas gas;
    vtx_line line;
    vtx_line_state state;
    double flow;
    make_pipe(x, &gas, &line);
    const vtx_status status = vtx_line_mass_flow(&gas, &line, x[5], x[1], 1e3, &flow, &state);
    *value = state.outlet_pressure;
    return status;
}

static const struct {
    const char *name;
    value_function *value;
} known[] = {
    { "average_density_slip", isothermal_flow },
    { "churchill", churchill },
    { "colebrook", colebrook },
    { "haaland", haaland },
    { "isothermal_critical", isothermal_critical },
    { "isothermal_diameter", isothermal_diameter },
    { "isothermal_flow", isothermal_flow },
    { "isothermal_inlet", isothermal_inlet },
    { "isothermal_length", isothermal_length },
    { "isothermal_outlet", isothermal_outlet },
    { "pipe_bore", pipe_bore },
    { "critical_ratio", critical_ratio },
    { "critical_flow_function", critical_flow_function },
    { "expansibility", expansibility },
    { "isentropic_temperature", isentropic },
    { "kv_from_cv", kv_from_cv },
    { "loss_from_kv", loss_from_kv },
    { "orifice", orifice },
    { "pressure_ratio", pressure_ratio },
    { "temperature_ratio", temperature_ratio },
    { "valve_kv", valve_kv },
};

static value_function *named(const char *name)
{
    for (size_t i = 0; i < sizeof known / sizeof known[0]; i++)
        if (strcmp(name, known[i].name) == 0)
            return known[i].value;
    return NULL;
}

int main(void)
{
    char line[1024];
    while (fgets(line, sizeof line, stdin)) {
        double number[NUMBERS_MAX] = { 0 }, value = (double)NAN;
        char *rest = line + strcspn(line, " "), *end;
        *rest++ = 0;
        for (int n = 0; n < NUMBERS_MAX; n++, rest = end) {
            number[n] = strtod(rest, &end);
            if (end == rest)
                break;
        }
        value_function *f = named(line);
        if (!f) {
            fprintf(stderr, "unknown quantity %s\n", line);
            return EXIT_FAILURE;
        }
        const vtx_status status = f(number, &value);
        printf("%.17g %d\n", value, (int)status);
    }
    return EXIT_SUCCESS;
}
