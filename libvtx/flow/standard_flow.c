/* Volume flows at reference states. */
#include <vtx/standard_flow.h>

#include "../base/exact_units.h"
#include "../media/moist_kernel.h"

vtx_status vtx_reference_state(int32_t reference, double *pressure, double *temperature, double *relative_humidity)
{
    static const struct {
        int32_t name;
        double pressure, temperature, relative_humidity;
    } states[] = {
        { VTX_REFERENCE_ISO_2533, 101325, 288.15, 0 },
        { VTX_REFERENCE_ISO_8778, 100000, 293.15, 0.65 },
        { VTX_REFERENCE_DIN_1343, 101325, 273.15, 0 },
        { VTX_REFERENCE_ISO_1217, 100000, 293.15, 0 },
        { VTX_REFERENCE_US_36_PERCENT, 14.7 * PSI, 293.15, 0.36 },
        { VTX_REFERENCE_US_GAS, 101325, (60 + 459.67) / 1.8, 0 },
        { VTX_REFERENCE_US_COMPRESSOR, 14.5 * PSI, 293.15, 0 },
        { VTX_REFERENCE_US_FAN, 101325, (70 + 459.67) / 1.8, 0 },
    };
    for (size_t i = 0; pressure && i < ARRAY_LENGTH(states); i++) {
        if (states[i].name != reference)
            continue;
        *pressure = states[i].pressure;
        if (temperature)
            *temperature = states[i].temperature;
        if (relative_humidity)
            *relative_humidity = states[i].relative_humidity;
        return VTX_OK;
    }
    poison(temperature, VTX_BAD_ARGUMENT);
    poison(relative_humidity, VTX_BAD_ARGUMENT);
    return poison(pressure, VTX_BAD_ARGUMENT);
}

struct reference_density {
    double moist, dry;
};

/* OK and the density, or what is wrong with the state. */
static vtx_status density_of(int32_t model, double pressure, double temperature, double relative_humidity, struct reference_density *density)
{
    struct moist_mixture air;
    vtx_status status = worse(require(model == VTX_AIR_IDEAL || model == VTX_AIR_REAL), check_positive(pressure, 10000, 1e6));
    status = worse(status, worse(check_positive(temperature, BELOW_ZERO(40), 373.15), check_share(relative_humidity)));
    if (status != VTX_OK)
        return status;
    const double x = relative_humidity > 0 ? relative_humidity * moist_saturation_fraction(model, pressure, temperature, PHASE_LIQUID) : 0;
    if (x >= 1)
        return VTX_BAD_ARGUMENT;
    const double humidity_ratio = moist_humidity_ratio(model, x);
    if (humidity_ratio > MOIST_WATER_MAX)
        return VTX_OUT_OF_RANGE;
    moist_vapour(model, pressure, temperature, humidity_ratio, &air);
    density->dry = 1 / air.gas_volume;
    density->moist = (1 + humidity_ratio) / air.gas_volume;
    return VTX_OK;
}

static vtx_status check_flow(double flow, const double *output)
{
    return worse(require(output != NULL), check_range(flow, -1e6, 1e6));
}

vtx_status vtx_reference_density(int32_t model, double pressure, double temperature, double relative_humidity, double *density,
                                 double *dry_air_density)
{
    struct reference_density found;
    const vtx_status status = worse(require(density != NULL), density_of(model, pressure, temperature, relative_humidity, &found));
    if (status != VTX_OK) {
        poison(dry_air_density, status);
        return poison(density, status);
    }
    *density = found.moist;
    if (dry_air_density)
        *dry_air_density = found.dry;
    return VTX_OK;
}

vtx_status vtx_mass_flow_from_standard(int32_t model, double reference_pressure, double reference_temperature, double reference_humidity,
                                       double volume_flow, double *mass_flow, double *dry_air_flow)
{
    struct reference_density density;
    const vtx_status status = worse(check_flow(volume_flow, mass_flow),
                                    density_of(model, reference_pressure, reference_temperature, reference_humidity, &density));
    if (status != VTX_OK) {
        poison(dry_air_flow, status);
        return poison(mass_flow, status);
    }
    *mass_flow = volume_flow * density.moist;
    if (dry_air_flow)
        *dry_air_flow = volume_flow * density.dry;
    return VTX_OK;
}

vtx_status vtx_standard_flow(int32_t model, double reference_pressure, double reference_temperature, double reference_humidity,
                             double mass_flow, double *volume_flow)
{
    struct reference_density density;
    const vtx_status status = worse(check_flow(mass_flow, volume_flow),
                                    density_of(model, reference_pressure, reference_temperature, reference_humidity, &density));
    if (status != VTX_OK)
        return poison(volume_flow, status);
    *volume_flow = mass_flow / density.moist;
    return VTX_OK;
}

vtx_status vtx_standard_flow_at(int32_t model, double reference_pressure, double reference_temperature, double reference_humidity,
                                double volume_flow, double new_pressure, double new_temperature, double new_humidity,
                                double *new_volume_flow)
{
    struct reference_density from, to;
    vtx_status status = worse(check_flow(volume_flow, new_volume_flow),
                              density_of(model, reference_pressure, reference_temperature, reference_humidity, &from));
    status = worse(status, density_of(model, new_pressure, new_temperature, new_humidity, &to));
    if (status != VTX_OK)
        return poison(new_volume_flow, status);
    *new_volume_flow = volume_flow * from.dry / to.dry;
    return VTX_OK;
}

vtx_status vtx_free_air_delivered(int32_t model, double ambient_pressure, double temperature, double relative_humidity,
                                  double dry_air_flow, double *volume_flow)
{
    struct reference_density density;
    const vtx_status status = worse(check_flow(dry_air_flow, volume_flow),
                                    density_of(model, ambient_pressure, temperature, relative_humidity, &density));
    if (status != VTX_OK)
        return poison(volume_flow, status);
    *volume_flow = dry_air_flow / density.dry;
    return VTX_OK;
}
