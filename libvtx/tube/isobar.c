/* Gas of fixed composition along one pressure. */
#include "isobar.h"

enum { ITERATIONS_MAX = 20 };

typedef struct knot gas_function(double pressure, double temperature, double humidity_ratio);

static struct knot real_gas_at(double pressure, double temperature, double humidity_ratio)
{
    return gas_at(pressure, temperature, humidity_ratio);
}

struct knot working_gas_at(double pressure, double temperature, double humidity_ratio)
{
    struct knot k = gas_at(pressure, temperature, 0);
    if (humidity_ratio > 0) {
        const double moles = humidity_ratio / water_molar_mass;
        const struct ideal_part water = water_ideal_part(temperature, log(temperature));
        k.enthalpy += moles * water.enthalpy;
        k.entropy += moles * (water.entropy - gas_constant * log(pressure / standard_atmosphere));
        k.heat_capacity += moles * water.heat_capacity;
    }
    return k;
}

/* Newton; enthalpy and entropy rise along an isobar and are nearly straight in T and ln T. A guess beyond the range is brought to
 * its end; leaving it twice means that the wish lies outside. */
static vtx_status find_gas(gas_function *gas, double pressure, double humidity_ratio, double wanted, int by_entropy, double guess,
                           struct knot *out)
{
    const double low = moist_temperature_min(VTX_AIR_REAL, pressure), high = MOIST_TEMPERATURE_MAX;
    double temperature = within(guess, low, high);
    for (int i = 0; i < ITERATIONS_MAX; i++) {
        const struct knot k = gas(pressure, temperature, humidity_ratio);
        const double step = by_entropy ? k.temperature * expm1((wanted - k.entropy) / k.heat_capacity)
                                       : (wanted - k.enthalpy) / k.heat_capacity;
        if (fabs(step) <= tangent_step(pressure, temperature)) {
            *out = moved(k, step);
            return VTX_OK;
        }
        if ((temperature <= low && step < 0) || (temperature >= high && step > 0))
            return VTX_OUT_OF_RANGE;
        temperature = within(temperature + step, low, high);
    }
    return VTX_NOT_CONVERGED;
}

vtx_status gas_of_enthalpy(double pressure, double humidity_ratio, double enthalpy, double guess, struct knot *out)
{
    return find_gas(real_gas_at, pressure, humidity_ratio, enthalpy, 0, guess, out);
}

vtx_status gas_of_entropy(double pressure, double humidity_ratio, double entropy, double guess, struct knot *out)
{
    return find_gas(real_gas_at, pressure, humidity_ratio, entropy, 1, guess, out);
}

vtx_status working_gas_of_entropy(double pressure, double humidity_ratio, double entropy, double guess, struct knot *out)
{
    return find_gas(working_gas_at, pressure, humidity_ratio, entropy, 1, guess, out);
}
