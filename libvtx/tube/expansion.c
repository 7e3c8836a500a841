/* Enthalpies of the feed for both models. */
#include "expansion.h"

#include "laws_kernel.h"
#include "perfect_air.h"

vtx_status feed_at(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, struct expansion *e)
{
    memset(e, 0, sizeof *e);
    e->model = model;
    e->inlet_pressure = e->cold_pressure = inlet_pressure;
    e->inlet_temperature = inlet_temperature;
    e->humidity_ratio = model == AIR_IDEAL ? 0 : humidity_ratio;
    return feed_enthalpy(e, inlet_pressure, inlet_temperature, &e->inlet_enthalpy);
}

vtx_status expand(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio, double cold_pressure,
                  struct expansion *e)
{
    vtx_status status = feed_at(model, inlet_pressure, inlet_temperature, humidity_ratio, e);
    e->cold_pressure = cold_pressure;
    e->log_ratio = log_pressure_ratio(inlet_pressure, cold_pressure);
    e->work = -e->inlet_enthalpy * expm1(-perfect_air_gas_constant / perfect_air_heat_capacity * e->log_ratio);
    return status;
}

vtx_status feed_enthalpy(const struct expansion *e, double pressure, double temperature, double *enthalpy)
{
    (void)e, (void)pressure;
    *enthalpy = perfect_air_heat_capacity * temperature;
    return VTX_OK;
}

vtx_status feed_temperature(const struct expansion *e, double pressure, double enthalpy, double *temperature)
{
    (void)e, (void)pressure;
    *temperature = enthalpy / perfect_air_heat_capacity;
    return VTX_OK;
}
