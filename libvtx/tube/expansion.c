/* Enthalpies of the feed for both models. */
#include "expansion.h"

#include "laws_kernel.h"
#include "perfect_air.h"
#include "real_feed.h"

static void describe(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, double cold_pressure,
                     struct expansion *e)
{
    memset(e, 0, sizeof *e);
    e->model = model;
    e->inlet_pressure = inlet_pressure;
    e->inlet_temperature = inlet_temperature;
    e->humidity_ratio = model == VTX_AIR_REAL ? humidity_ratio : 0;
    e->cold_pressure = cold_pressure;
    e->log_ratio = log_pressure_ratio(inlet_pressure, cold_pressure);
}

vtx_status feed_at(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, struct expansion *e)
{
    describe(model, inlet_pressure, inlet_temperature, humidity_ratio, inlet_pressure, e);
    return feed_enthalpy(e, inlet_pressure, inlet_temperature, &e->inlet_enthalpy);
}

vtx_status expand(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, double cold_pressure,
                  struct expansion *e)
{
    struct real_feed feed;
    describe(model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, e);
    if (model == VTX_AIR_IDEAL) {
        e->inlet_enthalpy = perfect_air_heat_capacity * inlet_temperature;
        e->work = e->inlet_enthalpy * decay(perfect_air_gas_constant / perfect_air_heat_capacity * e->log_ratio);
        return VTX_OK;
    }
    vtx_status status = real_feed_at(inlet_pressure, inlet_temperature, humidity_ratio, &feed);
    if (status == VTX_OK)
        status = real_feed_expand(cold_pressure, &feed);
    e->inlet_enthalpy = feed.inlet.enthalpy;
    e->work = feed.work;
    return status;
}

vtx_status feed_enthalpy(const struct expansion *e, double pressure, double temperature, double *enthalpy)
{
    struct moist_mixture m;
    if (e->model == VTX_AIR_IDEAL) {
        *enthalpy = perfect_air_heat_capacity * temperature;
        return VTX_OK;
    }
    vtx_status status = real_stream_at(pressure, temperature, e->humidity_ratio, &m);
    *enthalpy = status == VTX_OK ? m.enthalpy : 0;
    return status;
}

vtx_status feed_temperature(const struct expansion *e, double pressure, double enthalpy, double *temperature)
{
    struct moist_mixture m;
    if (e->model == VTX_AIR_IDEAL) {
        *temperature = enthalpy / perfect_air_heat_capacity;
        return VTX_OK;
    }
    const double start = e->inlet_temperature + (enthalpy - e->inlet_enthalpy) / perfect_air_heat_capacity;
    vtx_status status = real_stream_of(pressure, e->humidity_ratio, enthalpy, start, &m);
    *temperature = status == VTX_OK ? m.temperature : 0;
    return status;
}
