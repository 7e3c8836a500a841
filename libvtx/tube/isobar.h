/* Temperatures of a gas of fixed composition along one pressure, from enthalpies: what the streams of a dry feed are found by.
 * Internal.
 *
 * The caller knows states on the isobar already; between them temperature is a cubic in enthalpy to some 1e-3 K, so that one
 * evaluation and its Newton correction are enough. */
#ifndef VTX_TUBE_ISOBAR_H
#define VTX_TUBE_ISOBAR_H

#include "../media/process_kernel.h"
#include "../media/moist_real.h"

/* A state on the isobar, per kg dry air. */
struct knot {
    double temperature, enthalpy, entropy, heat_capacity;
};

static inline struct knot gas_at(double pressure, double temperature, double humidity_ratio)
{
    if (humidity_ratio == 0) {
        const struct real_temperature t = dry_temperature(temperature);
        const struct real_gas gas = real_gas_inline(&t, pressure, 0, 1);
        return (struct knot){ temperature, gas.enthalpy / moist_air_molar_mass, gas.entropy / moist_air_molar_mass,
                              gas.heat_capacity / moist_air_molar_mass };
    }
    struct moist_mixture m;
    moist_vapour(VTX_AIR_REAL, pressure, temperature, humidity_ratio, &m);
    return (struct knot){ temperature, m.enthalpy, m.entropy, m.heat_capacity };
}

/* Along the tangent of a state; steps are small, and heat capacities change by parts in a thousand over 100 K. */
static inline struct knot moved(struct knot k, double step)
{
    const double share = step / k.temperature;
    return (struct knot){ k.temperature + step, k.enthalpy + k.heat_capacity * step,
                          k.entropy + k.heat_capacity * share * (1 - 0.5 * share), k.heat_capacity };
}

/* The largest step, K, that the tangent may make at the end: it leaves 1e-9 K. Near the cold end of the range heat capacities bend
 * more. */
static inline double tangent_step(double pressure, double temperature)
{
    return temperature > 1.8 * moist_temperature_min(VTX_AIR_REAL, pressure) ? 5e-3 : 5e-4;
}

/* Temperature of an enthalpy by the cubic through two states, straight on beyond them, where heat leaks may lead. */
static inline double between_knots(const struct knot *a, const struct knot *b, double enthalpy)
{
    const double width = b->enthalpy - a->enthalpy;
    if (fabs(width) < 1 /* J/kg */ || enthalpy < a->enthalpy)
        return a->temperature + (enthalpy - a->enthalpy) / a->heat_capacity;
    if (enthalpy > b->enthalpy)
        return b->temperature + (enthalpy - b->enthalpy) / b->heat_capacity;
    const double t = (enthalpy - a->enthalpy) / width, u = 1 - t;
    return a->temperature * u * u * (1 + 2 * t) + b->temperature * t * t * (1 + 2 * u) +
           width * t * u * (u / a->heat_capacity - t / b->heat_capacity);
}

/* Temperature of an enthalpy beyond a state, heat capacity rising by a relative 5e-5/K as that of air does near 300 K. */
static inline double beyond_knot(const struct knot *a, double enthalpy)
{
    const double step = (enthalpy - a->enthalpy) / a->heat_capacity;
    return a->temperature + step * (1 - 2.5e-5 * step);
}

/* The gas that gives the work: real dry air with its vapour as an ideal gas. A virial series of vapour far below its saturation,
 * where an expansion without condensation ends, would mean nothing; above saturation the two agree to 1e-4 of the work. */
struct knot working_gas_at(double pressure, double temperature, double humidity_ratio);
vtx_status working_gas_of_entropy(double pressure, double humidity_ratio, double entropy, double guess, struct knot *out);

/* The state of an enthalpy or entropy from a guess of its temperature; vapour must be near or above its saturation.
 * OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status gas_of_enthalpy(double pressure, double humidity_ratio, double enthalpy, double guess, struct knot *out);
vtx_status gas_of_entropy(double pressure, double humidity_ratio, double entropy, double guess, struct knot *out);

#endif
