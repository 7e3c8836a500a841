/* Energy, entropy and exergy of three given states. */
#include <vtx/balance.h>

#include "feed.h"
#include "laws_kernel.h"
#include "perfect_air.h"
#include "real_feed.h"

/* Per kg dry air. */
struct point {
    double enthalpy, entropy;
    int32_t advisories;
};

struct points {
    struct point inlet, cold, hot, ambient;
    double isentropic_temperature, throttle_temperature;
};

static struct point perfect_point(double pressure, double temperature)
{
    return (struct point){ perfect_air_heat_capacity * temperature,
                           entropy_change(perfect_air_heat_capacity, perfect_air_gas_constant, 1e5, 300, pressure, temperature), 0 };
}

static vtx_status point_at(int32_t model, double pressure, double temperature, double humidity_ratio, struct point *p)
{
    struct moist_mixture m;
    if (model == VTX_AIR_IDEAL) {
        *p = perfect_point(pressure, temperature);
        return VTX_OK;
    }
    vtx_status status = real_stream_at(pressure, temperature, humidity_ratio, &m);
    if (status == VTX_OK)
        *p = (struct point){ m.enthalpy, m.entropy, m.advisories };
    return status;
}

static vtx_status find_limits(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                              double cold_pressure, struct points *p)
{
    struct moist_mixture inlet, m;
    p->throttle_temperature = p->isentropic_temperature = inlet_temperature;
    if (cold_pressure == inlet_pressure)
        return VTX_OK;
    if (model == VTX_AIR_IDEAL) {
        const double k = perfect_air_gas_constant / perfect_air_heat_capacity;
        p->isentropic_temperature -= inlet_temperature * decay(k * log_pressure_ratio(inlet_pressure, cold_pressure));
        return VTX_OK;
    }
    moist_equilibrium(VTX_AIR_REAL, inlet_pressure, inlet_temperature, humidity_ratio, &inlet);
    vtx_status status = moist_expand(VTX_AIR_REAL, &inlet, cold_pressure, &m);
    p->isentropic_temperature = m.temperature;
    if (status == VTX_OK)
        status = moist_throttle(VTX_AIR_REAL, &inlet, cold_pressure, &m);
    p->throttle_temperature = m.temperature;
    return status;
}

vtx_status vtx_tube_balance(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                            double cold_pressure, double cold_temperature, double hot_pressure, double hot_temperature,
                            double cold_fraction, double ambient_pressure, double ambient_temperature, vtx_balance *balance)
{
    struct points p;
    vtx_status status = worse(require(balance != NULL), check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio));
    status = worse(status, worse(check_outlet(model, inlet_pressure, cold_pressure), check_outlet(model, inlet_pressure, hot_pressure)));
    status = worse(status, worse(check_positive(cold_temperature, 100, 1000), check_positive(hot_temperature, 100, 1000)));
    status = worse(status, worse(check_share(cold_fraction), check_positive(ambient_pressure, outlet_pressure_min, 5e6)));
    status = worse(status, check_positive(ambient_temperature, inlet_temperature_min, inlet_temperature_max));
    if (status == VTX_OK)
        status = point_at(model, inlet_pressure, inlet_temperature, humidity_ratio, &p.inlet);
    if (status == VTX_OK)
        status = point_at(model, cold_pressure, cold_temperature, humidity_ratio, &p.cold);
    if (status == VTX_OK)
        status = point_at(model, hot_pressure, hot_temperature, humidity_ratio, &p.hot);
    if (status == VTX_OK)
        status = point_at(model, ambient_pressure, ambient_temperature, humidity_ratio, &p.ambient);
    if (status == VTX_OK)
        status = find_limits(model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, &p);
    if (status != VTX_OK)
        return POISON_STRUCT(balance, vtx_balance, advisories, status);
    const double mu = cold_fraction, per_air = model == VTX_AIR_REAL ? 1 / (1 + humidity_ratio) : 1;
    const double dead = p.ambient.enthalpy - ambient_temperature * p.ambient.entropy;
    const double drop = inlet_temperature - p.isentropic_temperature;
    balance->energy_residual = per_air * (mu * (p.inlet.enthalpy - p.cold.enthalpy) + (1 - mu) * (p.inlet.enthalpy - p.hot.enthalpy));
    balance->entropy_generation = per_air * (mu * (p.cold.entropy - p.inlet.entropy) + (1 - mu) * (p.hot.entropy - p.inlet.entropy));
    balance->isentropic_temperature = p.isentropic_temperature;
    balance->throttle_temperature = p.throttle_temperature;
    balance->joule_thomson_drop = inlet_temperature - p.throttle_temperature;
    balance->isentropic_efficiency = drop > 0 ? (inlet_temperature - cold_temperature) / drop : quiet_nan();
    balance->inlet_exergy = per_air * (p.inlet.enthalpy - ambient_temperature * p.inlet.entropy - dead);
    balance->cold_exergy = per_air * mu * (p.cold.enthalpy - ambient_temperature * p.cold.entropy - dead);
    balance->hot_exergy = per_air * (1 - mu) * (p.hot.enthalpy - ambient_temperature * p.hot.entropy - dead);
    balance->exergy_destruction = balance->energy_residual + ambient_temperature * balance->entropy_generation;
    balance->advisories = p.inlet.advisories | p.cold.advisories | p.hot.advisories | (drop > 0 ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE);
    balance->spare = 0;
    return VTX_OK;
}
