/* Energy, cost and carbon of compressed air. */
#include <vtx/air_cost.h>

#include "compressor_kernel.h"

#define YEAR_MAX 3.2e7

static vtx_status check_rates(double energy_price, double carbon_intensity)
{
    return worse(check_amount(energy_price, 1), check_amount(carbon_intensity, 1e-3));
}

vtx_status vtx_air_use_cost(double specific_power, double free_air, double running_time, double energy_price,
                            double carbon_intensity, double *energy, double *cost, double *carbon)
{
    vtx_status status = worse(require(energy != NULL), check_positive(specific_power, 1e3, 1e8));
    status = worse(status, worse(check_amount(free_air, FREE_AIR_MAX), check_amount(running_time, YEAR_MAX)));
    status = worse(status, check_rates(energy_price, carbon_intensity));
    if (status != VTX_OK)
        return poison(energy, poison(cost, poison(carbon, status)));
    const double used = specific_power * free_air * running_time;
    *energy = used;
    if (cost)
        *cost = energy_price * used;
    if (carbon)
        *carbon = carbon_intensity * used;
    return VTX_OK;
}

/* Energy at the terminals: with demand, then idle under pressure. */
static double energy_of_year(const vtx_compressor *c, double demand, double leakage, double demand_time, double pressurised_time)
{
    return average_power(c, duty_cycle(c, demand + leakage)) * demand_time
        + average_power(c, duty_cycle(c, leakage)) * (pressurised_time - demand_time);
}

vtx_status vtx_compressor_year(const vtx_compressor *compressor, double demand, double demand_time, double pressurised_time,
                               double energy_price, double carbon_intensity, vtx_air_year *year)
{
    vtx_status status = worse(require(year != NULL), check_compressor(compressor));
    status = worse(status, worse(check_amount(demand, FREE_AIR_MAX), check_rates(energy_price, carbon_intensity)));
    status = worse(status, worse(check_amount(demand_time, YEAR_MAX), check_amount(pressurised_time, YEAR_MAX)));
    if (status == VTX_OK)
        status = require(demand_time <= pressurised_time);
    if (status != VTX_OK)
        return POISON_STRUCT(year, vtx_air_year, demand_met, status);
    const double leakage = compressor->leakage;
    const double delivering = duty_cycle(compressor, demand + leakage) * demand_time
        + duty_cycle(compressor, leakage) * (pressurised_time - demand_time);
    year->energy = energy_of_year(compressor, demand, leakage, demand_time, pressurised_time);
    year->cost = energy_price * year->energy;
    year->carbon = carbon_intensity * year->energy;
    year->free_air = demand_met(compressor, demand) * demand_time;
    year->leakage_energy = year->energy - energy_of_year(compressor, demand, 0, demand_time, pressurised_time);
    year->leakage_cost = energy_price * year->leakage_energy;
    year->unloaded_energy = terminal_power(compressor) * compressor->unloaded_power_share * (pressurised_time - delivering);
    year->cost_per_volume = year->free_air > NO_FLOW ? year->cost / year->free_air : quiet_nan();
    year->demand_met = demand + leakage <= compressor->free_air_delivery;
    year->advisories = year->free_air > NO_FLOW ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}
