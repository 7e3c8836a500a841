/* Gas through valves by Kv, IEC 60534-2-1, without checks. Internal.
 *
 * The expansion factor is that of the edition of 2011, 1 - x/(3 x_choked) with reducers in x_choked: earlier ones left them out
 * of it, which makes the flow jump at choking.
 *
 * With z = sqrt(x/x_choked), x = (p1-p2)/p1, the expansion factor is 1 - z^2/3 and the flow z (1 - z^2/3) times a constant:
 * a cubic, with its maximum 2/3 at z = 1. */
#ifndef VTX_VALVE_KERNEL_H
#define VTX_VALVE_KERNEL_H

#include <vtx/valve.h>

#include "isentropic_kernel.h"

/* m2 per Kv: 1 m3/h of water, 1000 kg/m3, passes this area at 1 bar with the velocity sqrt(2 dp/rho): sqrt(5e-3)/3600. */
static const double area_per_kv = 1.9641855032959654e-05;

/* Loss coefficient times Kv^2/d^4, m^-4, from the same definition; the rounded N2 of the standard is 1.6e9 in these units. */
static inline double loss_times_kv_squared(void) { return square(0.25 * pi / area_per_kv); }

/* The standard's N5 is 1.8e9, nine eighths of N2. */
static const double choking_over_loss = 1.125;

/* C/(N18 d^2) < 0.047 with N18 = 0.865 for Kv and millimetres. */
static const double kv_per_size_squared_max = 0.047 * 0.865 * 1e6;

#define KV_MIN 1e-6
#define KV_MAX 1e5

static inline vtx_status check_factor(double pressure_ratio_factor) { return check_positive(pressure_ratio_factor, 0.1, 1); }

struct valve_law {
    double area;     /* of the valve with its reducers: hydraulic, m2 */
    double x_choked; /* (p1-p2)/p1 at choking with this gas */
};

static inline struct valve_law valve_law_of(double gamma, const vtx_valve *valve, double kv)
{
    struct valve_law law = { area_per_kv * kv, gamma / 1.4 * valve->pressure_ratio_factor };
    if (!(valve->size > 0))
        return law;
    const double in = square(valve->size / valve->inlet_pipe), out = square(valve->size / valve->outlet_pipe);
    const double head = square(kv) / (loss_times_kv_squared() * square(square(valve->size)));
    const double inlet_losses = 0.5 * square(1 - in) + (1 - square(in));
    const double losses = inlet_losses + square(1 - out) - (1 - square(out));
    const double piping_squared = 1 / (1 + losses * head);
    law.area *= sqrt(piping_squared);
    law.x_choked /= piping_squared * (1 + valve->pressure_ratio_factor * inlet_losses * head / choking_over_loss);
    return law;
}

/* Flow of z = 1 over its 2/3: what z (1 - z^2/3) is to be multiplied by; kg/s. */
static inline double valve_scale(const struct valve_law *law, const vtx_gas *gas, double inlet_pressure, double inlet_temperature)
{
    return law->area * inlet_pressure * sqrt(2 * law->x_choked / (specific_gas_constant(gas) * inlet_temperature));
}

static inline double cubic(double z) { return z * (1 - square(z) / 3); }

/* Its inverse for values 0..2/3: z = 2 sin(phi) turns it into a sine of three times the angle. */
static inline double cubic_root(double value) { return 2 * sin(asin(smaller(1.5 * value, 1)) / 3); }

static inline double valve_mass_flow(const vtx_gas *gas, const struct valve_law *law, double inlet_pressure, double inlet_temperature,
                                     double outlet_pressure, int32_t *choked)
{
    const double x = (inlet_pressure - outlet_pressure) / inlet_pressure;
    *choked = x >= law->x_choked * (1 - 4 * DBL_EPSILON);
    return valve_scale(law, gas, inlet_pressure, inlet_temperature) * cubic(*choked ? 1 : sqrt(x / law->x_choked));
}

#endif
