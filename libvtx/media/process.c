/* Processes of moist air. */
#include <vtx/process.h>

#include "process_kernel.h"

/* An inlet in equilibrium; nothing is written unless it is sound. */
static vtx_status inlet_state(int32_t model, double pressure, double temperature, double humidity_ratio, struct moist_mixture *inlet)
{
    const vtx_status status = worse(moist_check(model, pressure, temperature), moist_check_water(humidity_ratio));
    if (status == VTX_OK)
        moist_equilibrium(model, pressure, temperature, humidity_ratio, inlet);
    return status;
}

/* A pressure that some temperature goes with; the search finds which. */
static vtx_status check_outlet_pressure(int32_t model, double pressure)
{
    return moist_check(model, pressure, MOIST_TEMPERATURE_MAX);
}

/* Not worse: a downstream pressure above the inlet's is a contradiction even where one of them is out of range. */
static vtx_status check_throttle(double inlet_pressure, double outlet_pressure)
{
    return require(!(outlet_pressure > inlet_pressure));
}

static vtx_status poison_outlet(vtx_moist_air *outlet, double *other, vtx_status status)
{
    poison(other, status);
    return POISON_STRUCT(outlet, vtx_moist_air, advisories, status);
}

static vtx_status isentropic(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, double outlet_pressure,
                             struct moist_mixture *inlet, struct moist_mixture *outlet)
{
    const vtx_status status = worse(inlet_state(model, inlet_pressure, inlet_temperature, humidity_ratio, inlet),
                                    check_outlet_pressure(model, outlet_pressure));
    return status == VTX_OK ? moist_expand(model, inlet, outlet_pressure, outlet) : status;
}

static vtx_status throttled(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, double outlet_pressure,
                            struct moist_mixture *inlet, struct moist_mixture *outlet)
{
    vtx_status status = worse(inlet_state(model, inlet_pressure, inlet_temperature, humidity_ratio, inlet),
                              check_outlet_pressure(model, outlet_pressure));
    status = worse(status, check_throttle(inlet_pressure, outlet_pressure));
    return status == VTX_OK ? moist_throttle(model, inlet, outlet_pressure, outlet) : status;
}

vtx_status vtx_expansion_isentropic(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                    double outlet_pressure, double *outlet_temperature)
{
    struct moist_mixture inlet, outlet;
    vtx_status status = require(outlet_temperature != NULL);
    if (status == VTX_OK)
        status = isentropic(model, inlet_pressure, inlet_temperature, humidity_ratio, outlet_pressure, &inlet, &outlet);
    if (status != VTX_OK)
        return poison(outlet_temperature, status);
    *outlet_temperature = outlet.temperature;
    return VTX_OK;
}

vtx_status vtx_expansion_throttle(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                  double outlet_pressure, double *outlet_temperature)
{
    struct moist_mixture inlet, outlet;
    vtx_status status = require(outlet_temperature != NULL);
    if (status == VTX_OK)
        status = throttled(model, inlet_pressure, inlet_temperature, humidity_ratio, outlet_pressure, &inlet, &outlet);
    if (status != VTX_OK)
        return poison(outlet_temperature, status);
    *outlet_temperature = outlet.temperature;
    return VTX_OK;
}

vtx_status vtx_expanded_isentropic(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                   double outlet_pressure, vtx_moist_air *outlet, double *work)
{
    return vtx_expanded_with_efficiency(model, inlet_pressure, inlet_temperature, humidity_ratio, outlet_pressure, 1, outlet, work);
}

vtx_status vtx_expanded_throttle(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                 double outlet_pressure, vtx_moist_air *outlet, double *entropy_generation)
{
    struct moist_mixture inlet, mixture;
    vtx_status status = require(outlet != NULL);
    if (status == VTX_OK)
        status = throttled(model, inlet_pressure, inlet_temperature, humidity_ratio, outlet_pressure, &inlet, &mixture);
    if (status != VTX_OK)
        return poison_outlet(outlet, entropy_generation, status);
    moist_state(model, &mixture, outlet);
    if (entropy_generation)
        *entropy_generation = mixture.entropy - inlet.entropy;
    return VTX_OK;
}

/* Efficiency 1 keeps the state that the search for the entropy has found. */
static vtx_status with_efficiency(int32_t model, const struct moist_mixture *inlet, double outlet_pressure, double efficiency,
                                  struct moist_mixture *outlet)
{
    const vtx_status status = moist_expand(model, inlet, outlet_pressure, outlet);
    if (status != VTX_OK || efficiency == 1)
        return status;
    const double share = outlet_pressure > inlet->pressure ? 1 / efficiency : efficiency;
    const double enthalpy = inlet->enthalpy + share * (outlet->enthalpy - inlet->enthalpy);
    const double start = inlet->temperature + share * (outlet->temperature - inlet->temperature);
    return moist_of_enthalpy(model, outlet_pressure, inlet->total_water, enthalpy, start, outlet);
}

vtx_status vtx_expanded_with_efficiency(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                        double outlet_pressure, double efficiency, vtx_moist_air *outlet, double *work)
{
    struct moist_mixture inlet, mixture;
    vtx_status status = worse(require(outlet != NULL), check_share(efficiency));
    status = worse(status, inlet_state(model, inlet_pressure, inlet_temperature, humidity_ratio, &inlet));
    status = worse(status, check_outlet_pressure(model, outlet_pressure));
    if (status == VTX_OK)
        status = require(efficiency > 0 || outlet_pressure <= inlet_pressure);
    if (status == VTX_OK)
        status = with_efficiency(model, &inlet, outlet_pressure, efficiency, &mixture);
    if (status != VTX_OK)
        return poison_outlet(outlet, work, status);
    moist_state(model, &mixture, outlet);
    if (work)
        *work = inlet.enthalpy - mixture.enthalpy;
    return VTX_OK;
}

vtx_status vtx_heat_to_temperature(int32_t model, double pressure, double inlet_temperature, double humidity_ratio,
                                   double outlet_temperature, double *heat, double *condensed)
{
    struct moist_mixture inlet, outlet;
    vtx_status status = worse(require(heat != NULL), inlet_state(model, pressure, inlet_temperature, humidity_ratio, &inlet));
    status = worse(status, inlet_state(model, pressure, outlet_temperature, humidity_ratio, &outlet));
    if (status != VTX_OK) {
        poison(condensed, status);
        return poison(heat, status);
    }
    *heat = outlet.enthalpy - inlet.enthalpy;
    if (condensed)
        *condensed = outlet.condensed;
    return VTX_OK;
}

vtx_status vtx_heated(int32_t model, double pressure, double inlet_temperature, double humidity_ratio, double heat, vtx_moist_air *outlet)
{
    struct moist_mixture inlet, mixture;
    vtx_status status = worse(require(outlet != NULL), check_range(heat, -1e8, 1e8));
    status = worse(status, inlet_state(model, pressure, inlet_temperature, humidity_ratio, &inlet));
    if (status == VTX_OK)
        status = moist_of_enthalpy(model, pressure, humidity_ratio, inlet.enthalpy + heat,
                                   inlet_temperature + heat / inlet.heat_capacity, &mixture);
    if (status != VTX_OK)
        return poison_outlet(outlet, NULL, status);
    moist_state(model, &mixture, outlet);
    return VTX_OK;
}

vtx_status vtx_condensate_drained(int32_t model, double pressure, double temperature, double humidity_ratio, double drained_share,
                                  double *drained, vtx_moist_air *outlet)
{
    struct moist_mixture mixture;
    vtx_status status = worse(require(drained != NULL), check_share(drained_share));
    status = worse(status, inlet_state(model, pressure, temperature, humidity_ratio, &mixture));
    if (status != VTX_OK) {
        poison_outlet(outlet, NULL, status);
        return poison(drained, status);
    }
    *drained = drained_share * mixture.condensed;
    if (outlet) {
        if (drained_share == 1)
            moist_vapour(model, pressure, temperature, mixture.humidity_ratio, &mixture);
        else
            moist_equilibrium(model, pressure, temperature, humidity_ratio - *drained, &mixture);
        moist_state(model, &mixture, outlet);
    }
    return VTX_OK;
}

/* Sums over streams, for the mixture's enthalpy, water and entropy per kg of dry air. */
struct mixing {
    double dry_air, enthalpy, water, entropy, temperature;
};

static void add_stream(struct mixing *sum, const struct moist_mixture *stream, double dry_air)
{
    sum->dry_air += dry_air;
    sum->enthalpy += dry_air * stream->enthalpy;
    sum->water += dry_air * stream->total_water;
    sum->entropy += dry_air * stream->entropy;
    sum->temperature += dry_air * stream->temperature;
}

static vtx_status mix(int32_t model, double pressure, const struct mixing *sum, vtx_moist_air *mixed, double *entropy_generation)
{
    struct moist_mixture mixture;
    const double dry_air = sum->dry_air;
    const vtx_status status = moist_of_enthalpy(model, pressure, sum->water / dry_air, sum->enthalpy / dry_air, sum->temperature / dry_air, &mixture);
    if (status != VTX_OK)
        return poison_outlet(mixed, entropy_generation, status);
    moist_state(model, &mixture, mixed);
    if (entropy_generation)
        *entropy_generation = mixture.entropy - sum->entropy / dry_air;
    return VTX_OK;
}

vtx_status vtx_mixed(int32_t model, double pressure, double first_temperature, double first_humidity_ratio, double first_dry_air,
                     double second_temperature, double second_humidity_ratio, double second_dry_air, vtx_moist_air *mixed,
                     double *entropy_generation)
{
    struct moist_mixture first, second;
    struct mixing sum = { 0, 0, 0, 0, 0 };
    vtx_status status = worse(require(mixed != NULL), worse(check_amount(first_dry_air, 1e9), check_amount(second_dry_air, 1e9)));
    status = worse(status, inlet_state(model, pressure, first_temperature, first_humidity_ratio, &first));
    status = worse(status, inlet_state(model, pressure, second_temperature, second_humidity_ratio, &second));
    if (status == VTX_OK)
        status = require(first_dry_air + second_dry_air > 0);
    if (status != VTX_OK)
        return poison_outlet(mixed, entropy_generation, status);
    /* Shares: flows below 1e-300 would lose their digits in the sums. */
    const double whole = larger(first_dry_air, second_dry_air);
    add_stream(&sum, &first, first_dry_air / whole);
    add_stream(&sum, &second, second_dry_air / whole);
    return mix(model, pressure, &sum, mixed, entropy_generation);
}

vtx_status vtx_mixed_streams(int32_t model, double pressure, size_t n, const double *inlet_pressure, const double *inlet_temperature,
                             const double *humidity_ratio, const double *dry_air, vtx_moist_air *mixed, double *entropy_generation)
{
    struct mixing sum = { 0, 0, 0, 0, 0 };
    double whole = 0;
    vtx_status status = worse(require(mixed && n > 0 && inlet_pressure && inlet_temperature && humidity_ratio && dry_air),
                              check_outlet_pressure(model, pressure));
    for (size_t i = 0; i < n && status == VTX_OK; i++) {
        status = worse(check_amount(dry_air[i], 1e9), check_throttle(inlet_pressure[i], pressure));
        whole = larger(whole, dry_air[i]);
    }
    if (status == VTX_OK)
        status = require(whole > 0);
    for (size_t i = 0; i < n && status == VTX_OK; i++) {
        struct moist_mixture inlet;
        status = inlet_state(model, inlet_pressure[i], inlet_temperature[i], humidity_ratio[i], &inlet);
        if (status == VTX_OK)
            add_stream(&sum, &inlet, dry_air[i] / whole);
    }
    if (status != VTX_OK)
        return poison_outlet(mixed, entropy_generation, status);
    return mix(model, pressure, &sum, mixed, entropy_generation);
}
