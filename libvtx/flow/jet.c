/* Free round air jets. */
#include "../base/root.h"
#include "jet_kernel.h"

vtx_status vtx_jet_init(vtx_jet *jet)
{
    if (!jet)
        return VTX_BAD_ARGUMENT;
    memset(jet, 0, sizeof *jet);
    jet->mass_flow = 1e-3;
    jet->diameter = 5e-3;
    jet->temperature = 263.15;
    jet->ambient_pressure = standard_atmosphere;
    jet->ambient_temperature = 293.15;
    jet->velocity_decay = 6.0;
    jet->temperature_decay = 5.0;
    jet->entrainment = 0.32;
    return VTX_OK;
}

vtx_status check_jet(const vtx_jet *jet)
{
    if (!jet)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(jet->mass_flow, 1e-8, 10), check_positive(jet->diameter, 1e-4, 0.2));
    status = worse(status, worse(check_positive(jet->temperature, 100, 600), check_positive(jet->ambient_pressure, 2e4, 2e6)));
    status = worse(status, worse(check_positive(jet->ambient_temperature, 200, 500), check_positive(jet->velocity_decay, 4, 8)));
    status = worse(status, worse(check_positive(jet->temperature_decay, 3, 8), check_positive(jet->entrainment, 0.1, 0.6)));
    status = worse(status, require(are_zero(jet->reserved, ARRAY_LENGTH(jet->reserved))));
    if (status != VTX_OK)
        return status;
    /* More than any compressor of a shop drives through such an outlet. */
    const double flux = jet->mass_flow / (0.25 * pi * square(jet->diameter));
    return flux * sqrt(jet_gas_constant() * jet->temperature) > critical_flow_function(dry_air_gamma) * FLOW_PRESSURE_MAX ? VTX_OUT_OF_RANGE : VTX_OK;
}

static vtx_status check_distance(double distance) { return check_amount(distance, JET_DISTANCE_MAX); }

vtx_status vtx_jet_outlet_at(const vtx_jet *jet, vtx_jet_outlet *outlet)
{
    const vtx_status status = worse(require(outlet != NULL), check_jet(jet));
    if (status != VTX_OK)
        return POISON_STRUCT(outlet, vtx_jet_outlet, advisories, status);
    jet_outlet_of(jet, outlet);
    return VTX_OK;
}

vtx_status vtx_jet_at(const vtx_jet *jet, double distance, vtx_jet_state *state)
{
    vtx_jet_outlet outlet;
    const vtx_status status = worse(require(state != NULL), worse(check_jet(jet), check_distance(distance)));
    if (status != VTX_OK)
        return POISON_STRUCT(state, vtx_jet_state, advisories, status);
    jet_outlet_of(jet, &outlet);
    jet_state_of(jet, &outlet, distance, state);
    return VTX_OK;
}

/* The farthest distance with a share of the outlet's value, for a share of 1 or less but for rounding. */
static vtx_status give_distance(double decay, double equivalent_diameter, double share, double *distance)
{
    const double core = decay * equivalent_diameter;
    if (core > JET_DISTANCE_MAX * share)
        return poison(distance, VTX_OUT_OF_RANGE);
    *distance = core / smaller(share, 1);
    return VTX_OK;
}

vtx_status vtx_jet_distance_for_temperature(const vtx_jet *jet, double temperature, double *distance, double *attainable_temperature)
{
    vtx_jet_outlet outlet;
    const vtx_status status = worse(require(distance != NULL), worse(check_jet(jet), check_positive(temperature, 50, 1000)));
    poison(attainable_temperature, status);
    if (status != VTX_OK)
        return poison(distance, status);
    const double difference = jet->temperature - jet->ambient_temperature;
    const double wanted = temperature - jet->ambient_temperature;
    const int towards = difference < 0 ? wanted < 0 : wanted > 0;
    const double excess = fabs(wanted) - fabs(difference);
    if (!towards || excess > LIMIT_ROUNDING * jet->temperature) {
        if (attainable_temperature)
            *attainable_temperature = towards ? jet->temperature : jet->ambient_temperature;
        return poison(distance, VTX_NO_SOLUTION);
    }
    jet_outlet_of(jet, &outlet);
    const vtx_status found = give_distance(jet->temperature_decay, outlet.equivalent_diameter, wanted / difference, distance);
    if (attainable_temperature && found == VTX_OK)
        *attainable_temperature = temperature;
    return found;
}

vtx_status vtx_jet_distance_for_velocity(const vtx_jet *jet, double velocity, double *distance, double *attainable_velocity)
{
    vtx_jet_outlet outlet;
    vtx_status status = worse(require(distance != NULL), worse(check_jet(jet), check_positive(velocity, 1e-3, 1500)));
    poison(attainable_velocity, status);
    if (status != VTX_OK)
        return poison(distance, status);
    jet_outlet_of(jet, &outlet);
    status = velocity > outlet.velocity * (1 + LIMIT_ROUNDING) ? poison(distance, VTX_NO_SOLUTION)
        : give_distance(jet->velocity_decay, outlet.equivalent_diameter, velocity / outlet.velocity, distance);
    if (attainable_velocity && status != VTX_OUT_OF_RANGE)
        *attainable_velocity = outlet.velocity;
    return status;
}

struct pressure_wish {
    const vtx_jet *jet;
    vtx_jet_outlet outlet;
    double logarithm;
};

static double pressure_at(const struct pressure_wish *wish, double distance)
{
    vtx_jet_state state;
    jet_state_of(wish->jet, &wish->outlet, distance, &state);
    return state.impact_pressure;
}

static double excess_of_pressure(double log_distance, void *context)
{
    const struct pressure_wish *wish = context;
    return log(pressure_at(wish, exp(log_distance))) - wish->logarithm;
}

/* From here on the impact pressure only falls. A cold jet loses it as soon as either core ends; a hot one grows denser until the
 * core of the velocity ends. */
static double last_strong_distance(const struct pressure_wish *wish)
{
    const vtx_jet *jet = wish->jet;
    const double decay = jet->temperature > jet->ambient_temperature ? jet->velocity_decay : smaller(jet->velocity_decay, jet->temperature_decay);
    return decay * wish->outlet.equivalent_diameter;
}

static vtx_status farthest(struct pressure_wish *wish, double nearest, double *distance)
{
    double x = 0;
    const double low = log(nearest), high = log(JET_DISTANCE_MAX);
    *distance = nearest;
    if (!(low < high) || excess_of_pressure(high, wish) > 0)
        return poison(distance, VTX_OUT_OF_RANGE);
    if (excess_of_pressure(low, wish) <= 0)
        return VTX_OK;
    const vtx_status status = find_root(excess_of_pressure, wish, low, high, 1e-14, &x);
    *distance = exp(x);
    return status == VTX_OK ? VTX_OK : poison(distance, VTX_NOT_CONVERGED);
}

vtx_status vtx_jet_distance_for_impact_pressure(const vtx_jet *jet, double impact_pressure, double *distance,
                                                double *attainable_impact_pressure)
{
    struct pressure_wish wish = { .jet = jet };
    vtx_status status = worse(require(distance != NULL), worse(check_jet(jet), check_positive(impact_pressure, 1e-3, 1e7)));
    poison(attainable_impact_pressure, status);
    if (status != VTX_OK)
        return poison(distance, status);
    jet_outlet_of(jet, &wish.outlet);
    const double nearest = last_strong_distance(&wish), most = pressure_at(&wish, nearest);
    wish.logarithm = log(impact_pressure);
    status = impact_pressure > most * (1 + LIMIT_ROUNDING) ? poison(distance, VTX_NO_SOLUTION) : farthest(&wish, nearest, distance);
    if (attainable_impact_pressure && (status == VTX_OK || status == VTX_NO_SOLUTION))
        *attainable_impact_pressure = most;
    return status;
}

vtx_status vtx_jet_working_distance(const vtx_jet *jet, double temperature_share, double impact_pressure, double *distance)
{
    vtx_jet_outlet outlet;
    double cold = 0, strong = 0;
    vtx_status status = worse(require(distance && temperature_share > 0), check_share(temperature_share));
    status = worse(status, vtx_jet_distance_for_impact_pressure(jet, impact_pressure, &strong, NULL));
    if (status != VTX_OK)
        return poison(distance, status);
    jet_outlet_of(jet, &outlet);
    status = give_distance(jet->temperature_decay, outlet.equivalent_diameter, temperature_share, &cold);
    *distance = status == VTX_OK ? smaller(cold, strong) : strong;
    return VTX_OK;
}

vtx_status vtx_jet_impact_force(const vtx_jet *jet, double distance, double face_area, double *force)
{
    vtx_jet_outlet outlet;
    vtx_jet_state state;
    vtx_status status = worse(require(force != NULL), worse(check_jet(jet), check_distance(distance)));
    status = worse(status, check_positive(face_area, 1e-8, 100));
    if (status != VTX_OK)
        return poison(force, status);
    jet_outlet_of(jet, &outlet);
    jet_state_of(jet, &outlet, distance, &state);
    *force = outlet.thrust * -expm1(-2 * log(2) * face_area / (pi * square(state.half_width)));
    return VTX_OK;
}
