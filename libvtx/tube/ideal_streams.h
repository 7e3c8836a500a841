/* Separation of the perfect gas, unchecked. Internal. */
#ifndef VTX_TUBE_IDEAL_STREAMS_H
#define VTX_TUBE_IDEAL_STREAMS_H

#include "feed.h"
#include "laws_kernel.h"
#include "perfect_air.h"

/* Separation of a tube efficiency: a leak moves each outlet towards the surroundings. */
struct ideal_case {
    double inlet_temperature;
    double cold_drop, hot_rise; /* K  of efficiency 1 */
    double cold_remainder, hot_remainder, ambient_temperature;
};

static inline double ideal_cold(const struct ideal_case *c, double efficiency)
{
    const double t = c->inlet_temperature - efficiency * c->cold_drop;
    return c->cold_remainder == 1 ? t : c->ambient_temperature + (t - c->ambient_temperature) * c->cold_remainder;
}

static inline double ideal_hot(const struct ideal_case *c, double efficiency)
{
    const double t = c->inlet_temperature + efficiency * c->hot_rise;
    return c->hot_remainder == 1 ? t : c->ambient_temperature + (t - c->ambient_temperature) * c->hot_remainder;
}

/* What heat leaks move: temperatures are there already, the surroundings' entropy is not. */
static inline void add_ideal_leaks(const struct ideal_case *c, double efficiency, vtx_streams *out)
{
    const double cp = perfect_air_heat_capacity, mu = out->cold_fraction;
    out->heat_gain = mu * cp * (out->cold_temperature - (c->inlet_temperature - efficiency * c->cold_drop));
    out->heat_loss = (1 - mu) * cp * (c->inlet_temperature + efficiency * c->hot_rise - out->hot_temperature);
    out->entropy_generation += (out->heat_loss - out->heat_gain) / c->ambient_temperature;
}

/* K, isentropic, of ln of the inlet pressure over the cold one. */
static inline double ideal_drop(double inlet_temperature, double log_cold)
{
    return inlet_temperature * decay(perfect_air_gas_constant / perfect_air_heat_capacity * log_cold);
}

static inline int64_t wide_ideal_advisories(const vtx_tube *tube, double log_cold, double drop, double cold_fraction)
{
    return wide_curve_advisories(tube, log_cold, cold_fraction) | (drop > 0 ? 0 : (int64_t)VTX_ADVISORY_FIELD_UNAVAILABLE) |
           (efficiency_gain(tube, log_cold) * tube->efficiency_high > 1 ? (int64_t)VTX_ADVISORY_SECOND_LAW_LIMITED : 0);
}

/* All but the entropy. */
static inline void separate_by_drop(const vtx_tube *tube, double inlet_temperature, double log_cold, double drop, double cold_fraction,
                                    vtx_streams *out)
{
    const double mu = cold_fraction, gain = efficiency_gain(tube, log_cold);
    const double efficiency = smaller(gain * tube->peak_efficiency, 1);
    const double weak = smaller(gain * tube->efficiency_low, 1), strong = smaller(gain * tube->efficiency_high, 1);
    const struct ideal_case c = { inlet_temperature, cold_shape(tube->coldest_fraction, mu) * drop,
                                  hot_shape(tube->coldest_fraction, mu) * drop, leak_remainder(tube->cold_leak, mu),
                                  leak_remainder(tube->hot_leak, 1 - mu), tube->ambient_temperature };
    out->cold_temperature = ideal_cold(&c, efficiency);
    out->hot_temperature = ideal_hot(&c, efficiency);
    out->cold_temperature_low = ideal_cold(&c, strong);
    out->hot_temperature_high = ideal_hot(&c, strong);
    out->cold_temperature_high = ideal_cold(&c, weak);
    out->hot_temperature_low = ideal_hot(&c, weak);
    out->cold_fraction = mu;
    out->heat_gain = out->heat_loss = out->entropy_generation = 0;
    if (c.cold_remainder != 1 || c.hot_remainder != 1)
        add_ideal_leaks(&c, efficiency, out);
    out->isentropic_efficiency = drop > 0 ? (inlet_temperature - out->cold_temperature) / drop : quiet_nan();
    out->isentropic_temperature = inlet_temperature - drop;
    out->throttle_temperature = inlet_temperature;
    out->joule_thomson_drop = 0;
    out->condensed = out->condensed_low = out->condensed_high = out->frozen_share = out->hot_condensed = out->hot_frozen_share = 0;
    out->advisories = (int32_t)wide_ideal_advisories(tube, log_cold, drop, mu);
    out->condensed_phase = 0;
}

/* J/(K kg) of the two streams; log_cold, log_hot: ln of the inlet pressure over the outlet's. */
static inline double ideal_entropy(double inlet_temperature, double log_cold, double log_hot, double cold_fraction, double cold_temperature,
                                   double hot_temperature)
{
    const double cp = perfect_air_heat_capacity, air_constant = perfect_air_gas_constant, mu = cold_fraction;
    double cold_rise, hot_rise;
    log_of_two_ratios(cold_temperature, inlet_temperature, hot_temperature, inlet_temperature, &cold_rise, &hot_rise);
    return mu * (cp * cold_rise + air_constant * log_cold) + (1 - mu) * (cp * hot_rise + air_constant * log_hot);
}

static inline void separate_ideal(const vtx_tube *tube, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                  double hot_pressure, double cold_fraction, vtx_streams *out)
{
    const double log_cold = log_pressure_ratio(inlet_pressure, cold_pressure);
    const double log_hot = hot_pressure == cold_pressure ? log_cold : log_pressure_ratio(inlet_pressure, hot_pressure);
    separate_by_drop(tube, inlet_temperature, log_cold, ideal_drop(inlet_temperature, log_cold), cold_fraction, out);
    out->entropy_generation += ideal_entropy(inlet_temperature, log_cold, log_hot, cold_fraction, out->cold_temperature, out->hot_temperature);
}

#endif
