/* Balances, limits, exergy and efficiencies of a perfect gas in a vortex tube. */
#include <vtx/laws.h>

#include "../flow/isentropic_kernel.h"
#include "laws_kernel.h"

static vtx_status check_heat_capacity(double cp) { return check_positive(cp, 100, 20000); }

static vtx_status check_constants(double heat_capacity, double specific_constant)
{
    return worse(worse(check_heat_capacity(heat_capacity), check_positive(specific_constant, 10, 5000)),
                 require(specific_constant < heat_capacity));
}

/* An outlet may not lie above the inlet pressure. */
static vtx_status check_outlet(double inlet_pressure, double outlet_pressure)
{
    return worse(worse(check_flow_pressure(inlet_pressure), check_flow_pressure(outlet_pressure)),
                 require(outlet_pressure <= inlet_pressure));
}

static vtx_status check_temperatures(double inlet, double cold, double hot, double cold_fraction)
{
    return worse(worse(check_flow_temperature(inlet), check_flow_temperature(cold)), worse(check_flow_temperature(hot), check_share(cold_fraction)));
}

vtx_status vtx_first_law_residual(double heat_capacity, double inlet_temperature, double cold_temperature,
                                  double hot_temperature, double cold_fraction, double *residual)
{
    vtx_status status = worse(worse(require(residual != NULL), check_heat_capacity(heat_capacity)),
                              check_temperatures(inlet_temperature, cold_temperature, hot_temperature, cold_fraction));
    if (status != VTX_OK)
        return poison(residual, status);
    *residual = heat_capacity * (cold_fraction * (inlet_temperature - cold_temperature) +
                                 (1 - cold_fraction) * (inlet_temperature - hot_temperature));
    return VTX_OK;
}

vtx_status vtx_hot_temperature_from_balance(double inlet_temperature, double cold_temperature, double cold_fraction,
                                            double *hot_temperature)
{
    vtx_status status = worse(require(hot_temperature != NULL),
                              check_temperatures(inlet_temperature, cold_temperature, inlet_temperature, cold_fraction));
    if (status == VTX_OK && cold_fraction == 1)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(hot_temperature, status);
    *hot_temperature = inlet_temperature + cold_fraction * (inlet_temperature - cold_temperature) / (1 - cold_fraction);
    return VTX_OK;
}

vtx_status vtx_cold_fraction_from_temperatures(double inlet_temperature, double cold_temperature, double hot_temperature,
                                               double *cold_fraction)
{
    vtx_status status = worse(require(cold_fraction != NULL),
                              check_temperatures(inlet_temperature, cold_temperature, hot_temperature, 0));
    status = worse(status, require(cold_temperature <= inlet_temperature && inlet_temperature <= hot_temperature &&
                                   cold_temperature < hot_temperature));
    if (status != VTX_OK)
        return poison(cold_fraction, status);
    *cold_fraction = (hot_temperature - inlet_temperature) / (hot_temperature - cold_temperature);
    return VTX_OK;
}

vtx_status vtx_refrigeration_capacity(double cold_mass_flow, double heat_capacity, double reference_temperature,
                                      double cold_temperature, double *capacity)
{
    vtx_status status = worse(worse(require(capacity != NULL), check_amount(cold_mass_flow, 100)),
                              worse(check_heat_capacity(heat_capacity),
                                    worse(check_flow_temperature(reference_temperature), check_flow_temperature(cold_temperature))));
    if (status != VTX_OK)
        return poison(capacity, status);
    *capacity = cold_mass_flow * heat_capacity * (reference_temperature - cold_temperature) + 0.0; /* no flow has no sign */
    return VTX_OK;
}

/* Gas, three states and the split, as the entropy and exergy balances take them. */
struct states {
    double heat_capacity, specific_constant;
    double inlet_pressure, inlet_temperature, cold_pressure, cold_temperature, hot_pressure, hot_temperature;
    double cold_fraction;
};

static vtx_status check_states(const struct states *s)
{
    return worse(worse(check_constants(s->heat_capacity, s->specific_constant),
                       check_temperatures(s->inlet_temperature, s->cold_temperature, s->hot_temperature, s->cold_fraction)),
                 worse(check_flow_pressure(s->inlet_pressure), worse(check_flow_pressure(s->cold_pressure), check_flow_pressure(s->hot_pressure))));
}

static double generated(const struct states *s)
{
    return s->cold_fraction * entropy_change(s->heat_capacity, s->specific_constant, s->inlet_pressure, s->inlet_temperature,
                                             s->cold_pressure, s->cold_temperature) +
           (1 - s->cold_fraction) * entropy_change(s->heat_capacity, s->specific_constant, s->inlet_pressure, s->inlet_temperature,
                                                   s->hot_pressure, s->hot_temperature);
}

vtx_status vtx_entropy_generation(double heat_capacity, double specific_constant, double inlet_pressure,
                                  double inlet_temperature, double cold_pressure, double cold_temperature,
                                  double hot_pressure, double hot_temperature, double cold_fraction, double *entropy_generation)
{
    const struct states s = { heat_capacity, specific_constant, inlet_pressure, inlet_temperature, cold_pressure,
                              cold_temperature, hot_pressure, hot_temperature, cold_fraction };
    vtx_status status = worse(require(entropy_generation != NULL), check_states(&s));
    if (status != VTX_OK)
        return poison(entropy_generation, status);
    *entropy_generation = generated(&s);
    return VTX_OK;
}

/* Entropy balance over R T-free numbers, u = ln(Tc/T0): concave, its maximum `expansion` at u = 0. */
static double reversible_residual(double mu, double expansion, double u)
{
    return mu * u + (1 - mu) * log1p(-mu * expm1(u) / (1 - mu)) + expansion;
}

/* The lower root u < 0. Left of it the function is concave and rising, so that Newton climbs to the root without passing
 * it; log(1 - mu e^u) <= 0 puts the start on that side. */
static vtx_status reversible_root(double mu, double expansion, double *u)
{
    const double start = (1 - mu) * log1p(-mu) - expansion;
    *u = start > -800 * mu ? start / mu : -800;
    if (*u == -800) /* e^u is no longer a number of this machine: 0 K */
        return VTX_OK;
    for (int i = 0; i < 100; i++) {
        const double e = expm1(*u);
        const double slope = -mu * e / (1 - mu - mu * e);
        const double step = -reversible_residual(mu, expansion, *u) / slope;
        if (step <= 1e-15 * -*u)
            return VTX_OK;
        *u += step;
    }
    return VTX_NOT_CONVERGED;
}

vtx_status vtx_second_law_limit(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                double hot_pressure, double cold_fraction, double *cold_temperature)
{
    double u = 0;
    vtx_status status = worse(worse(require(cold_temperature != NULL), check_gamma(gamma)),
                              worse(worse(check_flow_temperature(inlet_temperature), check_share(cold_fraction)),
                                    worse(check_outlet(inlet_pressure, cold_pressure), check_outlet(inlet_pressure, hot_pressure))));
    if (status == VTX_OK && (cold_fraction == 0 || cold_fraction == 1))
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(cold_temperature, status);
    const double expansion = (gamma - 1) / gamma * (cold_fraction * log_pressure_ratio(inlet_pressure, cold_pressure) +
                                                    (1 - cold_fraction) * log_pressure_ratio(inlet_pressure, hot_pressure));
    if (expansion > 0)
        status = reversible_root(cold_fraction, expansion, &u);
    if (status != VTX_OK)
        return poison(cold_temperature, status);
    *cold_temperature = inlet_temperature * exp(u);
    return VTX_OK;
}

vtx_status vtx_isentropic_drop(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure, double *drop)
{
    vtx_status status = worse(worse(require(drop != NULL), check_gamma(gamma)),
                              worse(check_flow_temperature(inlet_temperature), check_outlet(inlet_pressure, cold_pressure)));
    if (status != VTX_OK)
        return poison(drop, status);
    *drop = inlet_temperature * temperature_drop(gamma, inlet_pressure, cold_pressure);
    return VTX_OK;
}

/* b = (gamma-1)/2 M^2 = (r^k - 1)/(r^k + 1) expands the axis to the cold pressure; at M = 1 b is (gamma-1)/2. */
vtx_status vtx_ideal_vortex(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                            double hot_pressure, vtx_vortex *vortex)
{
    vtx_status status = worse(worse(require(vortex != NULL), check_gamma(gamma)),
                              worse(check_flow_temperature(inlet_temperature), worse(check_outlet(inlet_pressure, cold_pressure),
                                                                                check_outlet(inlet_pressure, hot_pressure))));
    if (status != VTX_OK)
        return poison_record(vortex, sizeof *vortex / sizeof(double), 0, status);
    const double k = (gamma - 1) / gamma;
    const double share = temperature_drop(gamma, inlet_pressure, cold_pressure);
    const double b = share / (2 - share);
    const double sonic = (gamma - 1) / 2;
    const double sonic_kinetic = sonic / (1 + sonic);
    vortex->swirl_mach = sqrt(b / sonic);
    vortex->rim_temperature = inlet_temperature / (1 + b);
    vortex->axis_temperature = vortex->rim_temperature * (1 - b);
    vortex->work_drop = inlet_temperature * share;
    vortex->kinetic_drop = inlet_temperature * share / 2;
    vortex->sonic_kinetic_drop = inlet_temperature * smaller(share / 2, sonic_kinetic);
    vortex->sonic_work_drop = 2 * vortex->sonic_kinetic_drop;
    vortex->sonic_pressure_ratio = pow((1 + sonic) / (1 - sonic), 1 / k);
    vortex->outlet_temperature_ratio = (1 + b) * pow(hot_pressure / cold_pressure, k);
    return VTX_OK;
}

vtx_status vtx_flow_exergy(double heat_capacity, double specific_constant, double pressure, double temperature,
                           double ambient_pressure, double ambient_temperature, double *exergy)
{
    vtx_status status = worse(worse(require(exergy != NULL), check_constants(heat_capacity, specific_constant)),
                              worse(worse(check_flow_pressure(pressure), check_flow_temperature(temperature)),
                                    worse(check_flow_pressure(ambient_pressure), check_flow_temperature(ambient_temperature))));
    if (status != VTX_OK)
        return poison(exergy, status);
    *exergy = flow_exergy(heat_capacity, specific_constant, pressure, temperature, ambient_pressure, ambient_temperature);
    return VTX_OK;
}

vtx_status vtx_exergy_balance(double heat_capacity, double specific_constant, double inlet_pressure, double inlet_temperature,
                              double cold_pressure, double cold_temperature, double hot_pressure, double hot_temperature,
                              double cold_fraction, double ambient_pressure, double ambient_temperature, vtx_exergy_account *account)
{
    const struct states s = { heat_capacity, specific_constant, inlet_pressure, inlet_temperature, cold_pressure,
                              cold_temperature, hot_pressure, hot_temperature, cold_fraction };
    vtx_status status = worse(worse(require(account != NULL), check_states(&s)),
                              worse(check_flow_pressure(ambient_pressure), check_flow_temperature(ambient_temperature)));
    if (status != VTX_OK)
        return POISON_STRUCT(account, vtx_exergy_account, advisories, status);
    account->inlet = flow_exergy(heat_capacity, specific_constant, inlet_pressure, inlet_temperature, ambient_pressure, ambient_temperature);
    account->cold = cold_fraction * flow_exergy(heat_capacity, specific_constant, cold_pressure, cold_temperature, ambient_pressure,
                                                ambient_temperature);
    account->hot = (1 - cold_fraction) * flow_exergy(heat_capacity, specific_constant, hot_pressure, hot_temperature, ambient_pressure,
                                                     ambient_temperature);
    account->destruction = ambient_temperature * generated(&s);
    account->heat_exergy = account->inlet - account->cold - account->hot - account->destruction;
    const int available = account->inlet > 0;
    account->cold_share = available ? account->cold / account->inlet : quiet_nan();
    account->total_share = available ? (account->cold + account->hot) / account->inlet : quiet_nan();
    account->advisories = available ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
    account->spare = 0;
    return VTX_OK;
}

vtx_status vtx_isentropic_temperature_efficiency(double gamma, double inlet_pressure, double inlet_temperature,
                                                 double cold_pressure, double cold_temperature, double *efficiency)
{
    return vtx_adiabatic_efficiency(gamma, inlet_pressure, inlet_temperature, cold_pressure, cold_temperature, 1, efficiency);
}

vtx_status vtx_adiabatic_efficiency(double gamma, double inlet_pressure, double inlet_temperature, double cold_pressure,
                                    double cold_temperature, double cold_fraction, double *efficiency)
{
    vtx_status status = worse(worse(require(efficiency != NULL), check_gamma(gamma)),
                              worse(check_outlet(inlet_pressure, cold_pressure), require(cold_pressure < inlet_pressure)));
    status = worse(status, check_temperatures(inlet_temperature, cold_temperature, inlet_temperature, cold_fraction));
    if (status != VTX_OK)
        return poison(efficiency, status);
    *efficiency = cold_fraction * (inlet_temperature - cold_temperature) /
                  (inlet_temperature * temperature_drop(gamma, inlet_pressure, cold_pressure));
    return VTX_OK;
}

static vtx_status check_compression(double intake_pressure, double intake_temperature, double inlet_pressure)
{
    return worse(worse(check_outlet(inlet_pressure, intake_pressure), require(intake_pressure < inlet_pressure)),
                 check_flow_temperature(intake_temperature));
}

vtx_status vtx_cop_isothermal(double heat_capacity, double specific_constant, double intake_pressure, double intake_temperature,
                              double inlet_pressure, double inlet_temperature, double cold_temperature,
                              double cold_fraction, double *performance)
{
    vtx_status status = worse(worse(require(performance != NULL), check_constants(heat_capacity, specific_constant)),
                              worse(check_compression(intake_pressure, intake_temperature, inlet_pressure),
                                    check_temperatures(inlet_temperature, cold_temperature, inlet_temperature, cold_fraction)));
    if (status != VTX_OK)
        return poison(performance, status);
    *performance = cold_fraction * heat_capacity * (inlet_temperature - cold_temperature) /
                   (specific_constant * intake_temperature * log_pressure_ratio(inlet_pressure, intake_pressure));
    return VTX_OK;
}

vtx_status vtx_cop_adiabatic(double heat_capacity, double specific_constant, double intake_pressure, double intake_temperature,
                             double inlet_pressure, double inlet_temperature, double cold_temperature,
                             double cold_fraction, double *performance)
{
    vtx_status status = worse(worse(require(performance != NULL), check_constants(heat_capacity, specific_constant)),
                              worse(check_compression(intake_pressure, intake_temperature, inlet_pressure),
                                    check_temperatures(inlet_temperature, cold_temperature, inlet_temperature, cold_fraction)));
    if (status != VTX_OK)
        return poison(performance, status);
    *performance = cold_fraction * (inlet_temperature - cold_temperature) /
                   (intake_temperature * expm1(specific_constant / heat_capacity * log_pressure_ratio(inlet_pressure, intake_pressure)));
    return VTX_OK;
}

vtx_status vtx_cop_electrical(double heat_capacity, double inlet_temperature, double cold_temperature, double cold_fraction,
                              double electrical_work, double *performance)
{
    vtx_status status = worse(worse(require(performance != NULL), check_heat_capacity(heat_capacity)),
                              worse(check_temperatures(inlet_temperature, cold_temperature, inlet_temperature, cold_fraction),
                                    check_positive(electrical_work, 1e3, 1e8)));
    if (status != VTX_OK)
        return poison(performance, status);
    *performance = cold_fraction * heat_capacity * (inlet_temperature - cold_temperature) / electrical_work;
    return VTX_OK;
}
