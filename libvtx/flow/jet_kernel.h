/* Free round jets without checks. Internal. */
#ifndef VTX_JET_KERNEL_H
#define VTX_JET_KERNEL_H

#include <vtx/jet.h>

#include "../media/air_kernel.h"
#include "restriction_kernel.h"
#include "shock_kernel.h"

/* Below it cores shorten and entrainment rises: Ricou and Spalding 1961. */
#define JET_REYNOLDS_MIN 25000.0
#define JET_DIAMETERS_MAX 100.0
#define JET_DISTANCE_MAX 100.0

/* Radius of half the velocity, in diameters of the top-hat jet with the same centreline velocity and momentum: sqrt(2 ln 2)/2. */
static const double half_width_share = 0.5887050112577373;

static inline double jet_gas_constant(void) { return gas_constant / dry_air_molar_mass; }

static inline double jet_heat_capacity(void) { return dry_air_gamma / (dry_air_gamma - 1) * jet_gas_constant(); }

static inline double jet_density(double pressure, double temperature) { return pressure / (jet_gas_constant() * temperature); }

/* The outlet passes mass_flow at the room's pressure, or sonic at the pressure that this takes. */
static inline void jet_outlet_of(const vtx_jet *jet, vtx_jet_outlet *o)
{
    const double area = 0.25 * pi * square(jet->diameter);
    const double pull = jet->mass_flow / area * sqrt(jet_gas_constant() * jet->temperature) / jet->ambient_pressure;
    const double over = pull * critical_pressure_ratio(dry_air_gamma) / critical_flow_function(dry_air_gamma);
    const int choked = over >= 1;
    const double drop = choked ? sonic_drop(dry_air_gamma) : drop_of_pull(dry_air_gamma, pull);
    o->outlet_pressure = choked ? jet->ambient_pressure * over : jet->ambient_pressure;
    o->outlet_velocity = sqrt(2 * jet_heat_capacity() * jet->temperature * drop);
    o->outlet_mach = choked ? 1 : mach_of_drop(dry_air_gamma, drop);
    o->thrust = jet->mass_flow * o->outlet_velocity + (o->outlet_pressure - jet->ambient_pressure) * area;
    o->velocity = o->thrust / jet->mass_flow;
    o->temperature = jet->temperature - square(o->velocity) / (2 * jet_heat_capacity());
    o->density = jet_density(jet->ambient_pressure, o->temperature);
    o->diameter = sqrt(jet->mass_flow / (0.25 * pi * o->density * o->velocity));
    o->equivalent_diameter = o->diameter * sqrt(o->density / jet_density(jet->ambient_pressure, jet->ambient_temperature));
    o->core_length = jet->velocity_decay * o->equivalent_diameter;
    o->reynolds = jet->mass_flow / (0.25 * pi * o->diameter * dilute_air_viscosity(o->temperature));
    o->advisories = (choked ? VTX_ADVISORY_CHOKED : 0)
        | (o->outlet_pressure > jet->ambient_pressure * (1 + LIMIT_ROUNDING) ? VTX_ADVISORY_UNDEREXPANDED_JET : 0)
        | (o->reynolds < JET_REYNOLDS_MIN ? VTX_ADVISORY_OUTSIDE_CORRELATION : 0);
    o->reserved = 0;
}

/* Share of the outlet's value left on the centreline: 1 in the core, then the inverse of the distance. */
static inline double centreline_share(double decay, double equivalent_diameter, double distance)
{
    const double core = decay * equivalent_diameter;
    return distance > core ? core / distance : 1;
}

static inline double jet_temperature_at(const vtx_jet *jet, double equivalent_diameter, double distance)
{
    return jet->ambient_temperature
        + (jet->temperature - jet->ambient_temperature) * centreline_share(jet->temperature_decay, equivalent_diameter, distance);
}

/* Stagnation less ambient pressure; behind a bow shock when supersonic. */
static inline double impact_pressure_of(double ambient_pressure, double velocity, double static_temperature)
{
    const double mach_squared = square(velocity) / (dry_air_gamma * jet_gas_constant() * static_temperature);
    if (mach_squared > 1)
        return ambient_pressure * expm1(pitot_logarithm(dry_air_gamma, mach_squared - 1));
    return ambient_pressure * expm1(dry_air_gamma / (dry_air_gamma - 1) * log1p(0.5 * (dry_air_gamma - 1) * mach_squared));
}

static inline void jet_state_of(const vtx_jet *jet, const vtx_jet_outlet *o, double distance, vtx_jet_state *s)
{
    const double de = o->equivalent_diameter;
    s->velocity = o->velocity * centreline_share(jet->velocity_decay, de, distance);
    s->temperature = jet_temperature_at(jet, de, distance);
    s->static_temperature = s->temperature - square(s->velocity) / (2 * jet_heat_capacity());
    s->impact_pressure = impact_pressure_of(jet->ambient_pressure, s->velocity, s->static_temperature);
    s->mass_flow = jet->mass_flow * larger(jet->entrainment * distance / de, 1);
    s->half_width = half_width_share * larger(distance / jet->velocity_decay, de);
    s->advisories = o->advisories | (distance > JET_DIAMETERS_MAX * de ? VTX_ADVISORY_OUTSIDE_CORRELATION : 0);
    s->reserved = 0;
}

vtx_status check_jet(const vtx_jet *jet);

#endif
