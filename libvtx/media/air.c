/* Dry air as a real gas. */
#include <vtx/air.h>

#include "../base/root.h"
#include "air_kernel.h"

/* The throat is a fifth colder and must still be far from condensing at half the pressure. */
#define NOZZLE_TEMPERATURE_MIN 200.0

static vtx_status check_air(double pressure, double temperature) { return moist_check(VTX_AIR_REAL, pressure, temperature); }

static struct real_gas dry_air(double pressure, double temperature)
{
    const struct real_temperature t = real_temperature(temperature);
    return real_gas(&t, pressure, 0);
}

vtx_status vtx_dry_air_at(double pressure, double temperature, vtx_dry_air *air)
{
    const vtx_status status = worse(require(air != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return POISON_STRUCT(air, vtx_dry_air, advisories, status);
    const struct real_gas gas = dry_air(pressure, temperature);
    air->pressure = pressure;
    air->temperature = temperature;
    air->density = moist_air_molar_mass / gas.volume;
    air->compressibility = gas.compressibility;
    air->enthalpy = gas.enthalpy / moist_air_molar_mass;
    air->entropy = gas.entropy / moist_air_molar_mass;
    air->heat_capacity = gas.heat_capacity / moist_air_molar_mass;
    air->heat_capacity_constant_volume = gas.cv / moist_air_molar_mass;
    air->heat_capacity_ratio = gas.heat_capacity / gas.cv;
    air->sound_speed = gas.sound_speed;
    air->joule_thomson = gas.joule_thomson;
    air->viscosity = air_viscosity(temperature, 1 / gas.volume);
    air->conductivity = air_conductivity(temperature, 1 / gas.volume);
    air->prandtl_number = air->viscosity * air->heat_capacity / air->conductivity;
    air->advisories = moist_extrapolated(pressure, temperature);
    air->unused = 0;
    return VTX_OK;
}

vtx_status vtx_air_compressibility(double pressure, double temperature, double *compressibility)
{
    const vtx_status status = worse(require(compressibility != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(compressibility, status);
    *compressibility = pressure / (gas_constant * temperature * dry_air_density(pressure, temperature));
    return VTX_OK;
}

vtx_status vtx_air_density(double pressure, double temperature, double *density)
{
    const vtx_status status = worse(require(density != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(density, status);
    *density = moist_air_molar_mass * dry_air_density(pressure, temperature);
    return VTX_OK;
}

vtx_status vtx_air_enthalpy(double pressure, double temperature, double *enthalpy)
{
    const vtx_status status = worse(require(enthalpy != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(enthalpy, status);
    *enthalpy = dry_air(pressure, temperature).enthalpy / moist_air_molar_mass;
    return VTX_OK;
}

vtx_status vtx_air_entropy(double pressure, double temperature, double *entropy)
{
    const vtx_status status = worse(require(entropy != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(entropy, status);
    *entropy = dry_air(pressure, temperature).entropy / moist_air_molar_mass;
    return VTX_OK;
}

vtx_status vtx_air_heat_capacity(double pressure, double temperature, double *heat_capacity)
{
    const vtx_status status = worse(require(heat_capacity != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(heat_capacity, status);
    *heat_capacity = dry_air(pressure, temperature).heat_capacity / moist_air_molar_mass;
    return VTX_OK;
}

vtx_status vtx_air_heat_capacity_ratio(double pressure, double temperature, double *ratio)
{
    const vtx_status status = worse(require(ratio != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(ratio, status);
    const struct real_gas gas = dry_air(pressure, temperature);
    *ratio = gas.heat_capacity / gas.cv;
    return VTX_OK;
}

vtx_status vtx_air_sound_speed(double pressure, double temperature, double *speed)
{
    const vtx_status status = worse(require(speed != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(speed, status);
    *speed = dry_air(pressure, temperature).sound_speed;
    return VTX_OK;
}

vtx_status vtx_air_joule_thomson(double pressure, double temperature, double *coefficient)
{
    const vtx_status status = worse(require(coefficient != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(coefficient, status);
    *coefficient = dry_air(pressure, temperature).joule_thomson;
    return VTX_OK;
}

vtx_status vtx_air_viscosity(double pressure, double temperature, double *viscosity)
{
    const vtx_status status = worse(require(viscosity != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(viscosity, status);
    *viscosity = air_viscosity(temperature, dry_air_density(pressure, temperature));
    return VTX_OK;
}

vtx_status vtx_air_conductivity(double pressure, double temperature, double *conductivity)
{
    const vtx_status status = worse(require(conductivity != NULL), check_air(pressure, temperature));
    if (status != VTX_OK)
        return poison(conductivity, status);
    *conductivity = air_conductivity(temperature, dry_air_density(pressure, temperature));
    return VTX_OK;
}

/* A nozzle's stagnation state and, at the last throat tried, what flows there. */
struct nozzle {
    struct real_gas inlet;
    double pressure;
    double temperature;
    double mass_flux; /* kg/(s m2) */
};

/* The gas of the inlet's entropy at a temperature: Newton on ln p, whose entropy falls by nearly R each unit. */
static struct real_gas on_isentrope(const struct nozzle *n, double temperature)
{
    const struct real_temperature t = real_temperature(temperature);
    double pressure = n->pressure * pow(temperature / n->temperature, 3.5);
    struct real_gas gas = real_gas(&t, pressure, 0);
    for (int i = 0; i < 20; i++) {
        const double step = (gas.entropy - n->inlet.entropy) / gas_constant;
        pressure *= exp(within(step, -1, 1));
        gas = real_gas(&t, pressure, 0);
        if (fabs(step) < 1e-13)
            break;
    }
    return gas;
}

/* Energy left over, J/mol, when the gas on the isentrope moves at the speed of sound: falls with its temperature. */
static double throat_excess(double temperature, void *context)
{
    struct nozzle *n = context;
    const struct real_gas gas = on_isentrope(n, temperature);
    n->mass_flux = moist_air_molar_mass / gas.volume * gas.sound_speed;
    return n->inlet.enthalpy - gas.enthalpy - 0.5 * moist_air_molar_mass * square(gas.sound_speed);
}

vtx_status vtx_air_critical_flow_factor(double pressure, double temperature, double *factor)
{
    struct nozzle n = { .pressure = pressure, .temperature = temperature };
    double throat;
    vtx_status status = worse(require(factor != NULL), check_air(pressure, temperature));
    if (status == VTX_OK && temperature < NOZZLE_TEMPERATURE_MIN)
        status = VTX_OUT_OF_RANGE;
    if (status == VTX_OK) {
        n.inlet = dry_air(pressure, temperature);
        status = find_root(throat_excess, &n, 0.7 * temperature, 0.95 * temperature, 1e-9 * temperature, &throat);
    }
    if (status != VTX_OK)
        return poison(factor, status);
    throat_excess(throat, &n);
    *factor = n.mass_flux / pressure * sqrt(gas_constant * temperature / moist_air_molar_mass);
    return VTX_OK;
}
