/* Gas through valves by Kv. */
#include "../base/root.h"
#include "valve_kernel.h"

vtx_status vtx_valve_init(vtx_valve *valve)
{
    if (!valve)
        return VTX_BAD_ARGUMENT;
    memset(valve, 0, sizeof *valve);
    valve->flow_coefficient = 1;
    valve->pressure_ratio_factor = 0.7;
    return VTX_OK;
}

/* The largest Kv for which the reducer formulas hold; without reducers any. */
static double largest_kv(const vtx_valve *valve)
{
    return valve->size > 0 ? smaller(kv_per_size_squared_max * square(valve->size), KV_MAX) : KV_MAX;
}

static vtx_status check_body(const vtx_valve *valve)
{
    if (!valve || !is_finite(valve->size) || valve->size < 0)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_factor(valve->pressure_ratio_factor), require(are_zero(valve->reserved, ARRAY_LENGTH(valve->reserved))));
    if (!(valve->size > 0))
        return status;
    status = worse(status, worse(check_positive(valve->size, 0.002, 2), check_positive(valve->inlet_pipe, 0.002, 4)));
    status = worse(status, check_positive(valve->outlet_pipe, 0.002, 4));
    return worse(status, require(!(valve->inlet_pipe < valve->size) && !(valve->outlet_pipe < valve->size)));
}

static vtx_status check_valve(const vtx_valve *valve)
{
    const vtx_status status = check_body(valve);
    if (!valve)
        return status;
    return worse(status, worse(check_positive(valve->flow_coefficient, KV_MIN, KV_MAX),
                               valve->flow_coefficient > largest_kv(valve) ? VTX_OUT_OF_RANGE : VTX_OK));
}

vtx_status vtx_valve_critical_ratio(double gamma, double pressure_ratio_factor, double *ratio)
{
    const vtx_status status = worse(require(ratio != NULL), worse(check_gamma(gamma), check_factor(pressure_ratio_factor)));
    if (status != VTX_OK)
        return poison(ratio, status);
    const double x = gamma / 1.4 * pressure_ratio_factor;
    if (x >= 1)
        return poison(ratio, VTX_NO_SOLUTION);
    *ratio = 1 - x;
    return VTX_OK;
}

vtx_status vtx_valve_mass_flow(const vtx_gas *gas, const vtx_valve *valve, double inlet_pressure, double inlet_temperature,
                               double outlet_pressure, double *mass_flow, int32_t *choked)
{
    int32_t sonic;
    vtx_status status = worse(require(mass_flow != NULL), worse(check_gas(gas), check_valve(valve)));
    status = worse(status, check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status != VTX_OK) {
        poison_integer(choked, status);
        return poison(mass_flow, status);
    }
    const struct valve_law law = valve_law_of(gas->heat_capacity_ratio, valve, valve->flow_coefficient);
    *mass_flow = valve_mass_flow(gas, &law, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (choked)
        *choked = sonic;
    return VTX_OK;
}

struct kv_wish {
    const vtx_gas *gas;
    const vtx_valve *valve;
    double mass_flow, inlet_pressure, inlet_temperature, outlet_pressure;
};

static double flow_of_kv(const struct kv_wish *wish, double kv)
{
    int32_t sonic;
    const struct valve_law law = valve_law_of(wish->gas->heat_capacity_ratio, wish->valve, kv);
    return valve_mass_flow(wish->gas, &law, wish->inlet_pressure, wish->inlet_temperature, wish->outlet_pressure, &sonic);
}

static double excess_of_kv(double kv, void *context)
{
    const struct kv_wish *wish = context;
    return flow_of_kv(wish, kv) - wish->mass_flow;
}

/* Without reducers the flow is proportional to Kv. */
static vtx_status solve_kv(struct kv_wish *wish, double limit, double *kv)
{
    const double largest = largest_kv(wish->valve);
    *kv = largest * (wish->mass_flow / limit);
    if (!(wish->valve->size > 0) || wish->mass_flow >= limit)
        return VTX_OK;
    /* Reducers may help (a diffuser behind) or hinder; never by a factor of two within the allowed Kv. */
    const double low = 0.25 * *kv;
    return find_root(excess_of_kv, wish, low, smaller(4 * *kv, largest), larger(1e-15 * low, DBL_MIN), kv);
}

vtx_status vtx_valve_flow_coefficient(const vtx_gas *gas, const vtx_valve *valve, double mass_flow, double inlet_pressure,
                                      double inlet_temperature, double outlet_pressure, double *flow_coefficient,
                                      double *attainable_mass_flow)
{
    vtx_status status = worse(require(flow_coefficient != NULL), worse(check_gas(gas), check_body(valve)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_ends(inlet_pressure, inlet_temperature, outlet_pressure)));
    poison(attainable_mass_flow, status);
    if (status != VTX_OK)
        return poison(flow_coefficient, status);
    struct kv_wish wish = { gas, valve, mass_flow, inlet_pressure, inlet_temperature, outlet_pressure };
    const double limit = flow_of_kv(&wish, largest_kv(valve));
    if (mass_flow > limit * (1 + LIMIT_ROUNDING))
        status = VTX_NO_SOLUTION;
    else if (mass_flow > 0)
        status = solve_kv(&wish, limit, flow_coefficient) == VTX_OK ? check_positive(*flow_coefficient, KV_MIN, KV_MAX) : VTX_NOT_CONVERGED;
    else
        *flow_coefficient = 0;
    if (attainable_mass_flow && (status == VTX_OK || status == VTX_NO_SOLUTION))
        *attainable_mass_flow = limit;
    return status == VTX_OK ? VTX_OK : poison(flow_coefficient, status);
}

/* A valve that never chokes ends at x = 1, a vacuum behind it. */
static double largest_z(const struct valve_law *law) { return law->x_choked < 1 ? 1 : 1 / sqrt(law->x_choked); }

vtx_status vtx_valve_outlet_pressure(const vtx_gas *gas, const vtx_valve *valve, double mass_flow, double inlet_pressure,
                                     double inlet_temperature, double *outlet_pressure, double *attainable_mass_flow)
{
    vtx_status status = worse(require(outlet_pressure != NULL), worse(check_gas(gas), check_valve(valve)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_upstream(inlet_pressure, inlet_temperature)));
    poison(attainable_mass_flow, status);
    if (status != VTX_OK)
        return poison(outlet_pressure, status);
    const struct valve_law law = valve_law_of(gas->heat_capacity_ratio, valve, valve->flow_coefficient);
    const double scale = valve_scale(&law, gas, inlet_pressure, inlet_temperature);
    const double limit = scale * cubic(largest_z(&law));
    if (!flow_passes(mass_flow, limit, attainable_mass_flow))
        return poison(outlet_pressure, VTX_NO_SOLUTION);
    *outlet_pressure = inlet_pressure - inlet_pressure * law.x_choked * square(cubic_root(mass_flow / scale));
    return finish_outlet_pressure(outlet_pressure, attainable_mass_flow);
}

/* pull = flow over the scale at the outlet pressure: z (1 - z^2/3)/(1 - x_choked z^2), the last factor being p1/p2. */
struct valve_wish {
    double x_choked, pull;
};

static double excess_of_z(double z, void *context)
{
    const struct valve_wish *wish = context;
    return cubic(z) - wish->pull * (1 - wish->x_choked * square(z));
}

/* The factor 1 - z^2/3 lies in 2/3..1, which makes two quadratics enclose the root. */
static double quadratic_z(const struct valve_wish *wish, double pull)
{
    return 2 * pull / (1 + sqrt(1 + 4 * wish->x_choked * square(pull)));
}

vtx_status vtx_valve_inlet_pressure(const vtx_gas *gas, const vtx_valve *valve, double mass_flow, double inlet_temperature,
                                    double outlet_pressure, double *inlet_pressure)
{
    vtx_status status = worse(require(inlet_pressure != NULL), worse(check_gas(gas), check_valve(valve)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_upstream(outlet_pressure, inlet_temperature)));
    if (status != VTX_OK)
        return poison(inlet_pressure, status);
    const struct valve_law law = valve_law_of(gas->heat_capacity_ratio, valve, valve->flow_coefficient);
    struct valve_wish wish = { law.x_choked, mass_flow / valve_scale(&law, gas, outlet_pressure, inlet_temperature) };
    double z = 0;
    if (law.x_choked < 1 && wish.pull * (1 - law.x_choked) >= cubic(1)) {
        *inlet_pressure = outlet_pressure * (wish.pull / cubic(1));
        return *inlet_pressure <= FLOW_PRESSURE_MAX ? VTX_OK : poison(inlet_pressure, VTX_OUT_OF_RANGE);
    }
    const double low = quadratic_z(&wish, wish.pull) * (1 - LIMIT_ROUNDING);
    const double high = smaller(quadratic_z(&wish, 1.5 * wish.pull), largest_z(&law)) * (1 + LIMIT_ROUNDING);
    if (low > DBL_MIN / DBL_EPSILON)
        status = find_root(excess_of_z, &wish, low, high, 1e-15 * low, &z);
    if (status != VTX_OK)
        return poison(inlet_pressure, VTX_NOT_CONVERGED);
    const double x = law.x_choked * square(z);
    *inlet_pressure = x < 1 ? outlet_pressure + outlet_pressure * x / (1 - x) : FLOW_PRESSURE_MAX * 2;
    return *inlet_pressure <= FLOW_PRESSURE_MAX ? VTX_OK : poison(inlet_pressure, VTX_OUT_OF_RANGE);
}
