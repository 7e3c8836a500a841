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
