/* Compressors: power, efficiency, load. */
#include <vtx/compressor.h>

#include "compressor_kernel.h"

#define POWER_MIN 1e-3
#define STAGES_MAX 100

static vtx_status check_compression(double intake_pressure, double discharge_pressure, double free_air)
{
    vtx_status status = worse(check_flow_pressure(intake_pressure), check_flow_pressure(discharge_pressure));
    if (status == VTX_OK)
        status = require(intake_pressure <= discharge_pressure);
    return worse(status, check_amount(free_air, FREE_AIR_MAX));
}

static inline double isothermal_compression_power(double intake_pressure, double discharge_pressure, double free_air)
{
    return intake_pressure * free_air * log1p((discharge_pressure - intake_pressure) / intake_pressure);
}

vtx_status vtx_isothermal_compression_power(double intake_pressure, double discharge_pressure, double free_air, double *power)
{
    vtx_status status = worse(require(power != NULL), check_compression(intake_pressure, discharge_pressure, free_air));
    if (status != VTX_OK)
        return poison(power, status);
    *power = isothermal_compression_power(intake_pressure, discharge_pressure, free_air);
    return VTX_OK;
}

vtx_status vtx_isentropic_compression_power(double gamma, double intake_pressure, double discharge_pressure, double free_air,
                                            double *power)
{
    vtx_status status = worse(require(power != NULL), check_compression(intake_pressure, discharge_pressure, free_air));
    status = worse(status, check_gamma(gamma));
    if (status != VTX_OK)
        return poison(power, status);
    *power = isentropic_compression_power(gamma, intake_pressure, discharge_pressure, free_air);
    return VTX_OK;
}

vtx_status vtx_staged_compression_power(double gamma, int32_t stages, double intake_pressure, double discharge_pressure,
                                        double free_air, double *power)
{
    vtx_status status = worse(require(power != NULL && stages > 0), check_compression(intake_pressure, discharge_pressure, free_air));
    status = worse(status, check_gamma(gamma));
    if (status == VTX_OK && stages > STAGES_MAX)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(power, status);
    /* n cooled stages need what one stage needs with (gamma-1)/gamma divided by n. */
    const double staged_gamma = 1 / (1 - (gamma - 1) / (gamma * stages));
    *power = isentropic_compression_power(staged_gamma, intake_pressure, discharge_pressure, free_air);
    return VTX_OK;
}

vtx_status vtx_specific_power(double power, double free_air, double *specific_power)
{
    vtx_status status = worse(require(specific_power != NULL), check_positive(power, POWER_MIN, POWER_MAX));
    status = worse(status, check_positive(free_air, NO_FLOW, FREE_AIR_MAX));
    if (status != VTX_OK)
        return poison(specific_power, status);
    *specific_power = power / free_air;
    return VTX_OK;
}

vtx_status vtx_package_efficiency(double gamma, double intake_pressure, double discharge_pressure, double free_air, double power,
                                  double *efficiency)
{
    vtx_status status = worse(require(efficiency != NULL), check_compression(intake_pressure, discharge_pressure, free_air));
    status = worse(status, worse(check_gamma(gamma), check_positive(free_air, NO_FLOW, FREE_AIR_MAX)));
    status = worse(status, check_positive(power, POWER_MIN, POWER_MAX));
    if (status == VTX_OK)
        status = require(power >= isothermal_compression_power(intake_pressure, discharge_pressure, free_air));
    if (status != VTX_OK)
        return poison(efficiency, status);
    *efficiency = isentropic_compression_power(gamma, intake_pressure, discharge_pressure, free_air) / power;
    return VTX_OK;
}

static vtx_status check_package(double gamma, double intake_pressure, double discharge_pressure, double free_air, double efficiency)
{
    vtx_status status = worse(check_compression(intake_pressure, discharge_pressure, free_air), check_gamma(gamma));
    return worse(status, worse(check_share(efficiency), check_positive(efficiency, 0.01, 1)));
}

vtx_status vtx_package_power(double gamma, double intake_pressure, double discharge_pressure, double free_air, double efficiency,
                             double *power)
{
    vtx_status status = worse(require(power != NULL), check_package(gamma, intake_pressure, discharge_pressure, free_air, efficiency));
    if (status != VTX_OK)
        return poison(power, status);
    *power = isentropic_compression_power(gamma, intake_pressure, discharge_pressure, free_air) / efficiency;
    return VTX_OK;
}

vtx_status vtx_power_per_pressure(double gamma, double intake_pressure, double discharge_pressure, double free_air, double efficiency,
                                  double *slope)
{
    vtx_status status = worse(require(slope != NULL), check_package(gamma, intake_pressure, discharge_pressure, free_air, efficiency));
    if (status != VTX_OK)
        return poison(slope, status);
    *slope = free_air / efficiency * pow(intake_pressure / discharge_pressure, 1 / gamma);
    return VTX_OK;
}

vtx_status vtx_compressor_init(vtx_compressor *compressor)
{
    if (!compressor)
        return VTX_BAD_ARGUMENT;
    *compressor = (vtx_compressor){ .intake_pressure = 1e5, .motor_efficiency = 1, .unloaded_power_share = 0.3,
                                    .cut_in_pressure = 7.5e5, .cut_out_pressure = 8e5 };
    return VTX_OK;
}

vtx_status check_compressor(const vtx_compressor *compressor)
{
    if (!compressor)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(compressor->free_air_delivery, 1e-6, FREE_AIR_MAX),
                              check_positive(compressor->intake_pressure, 1e4, 2e5));
    status = worse(status, check_positive(compressor->full_load_power, 1, POWER_MAX));
    status = worse(status, worse(check_share(compressor->motor_efficiency), check_positive(compressor->motor_efficiency, 0.01, 1)));
    status = worse(status, worse(check_share(compressor->unloaded_power_share), check_amount(compressor->leakage, FREE_AIR_MAX)));
    if (compressor->receiver_volume != 0)
        status = worse(status, check_positive(compressor->receiver_volume, RECEIVER_VOLUME_MIN, RECEIVER_VOLUME_MAX));
    status = worse(status, check_flow_pressure(compressor->cut_in_pressure));
    status = worse(status, check_flow_pressure(compressor->cut_out_pressure));
    status = worse(status, require(are_zero(compressor->reserved, ARRAY_LENGTH(compressor->reserved))));
    if (status == VTX_OK)
        status = require(compressor->intake_pressure < compressor->cut_in_pressure
                         && compressor->cut_in_pressure < compressor->cut_out_pressure);
    return status;
}

/* Cycle times, where the receiver gives them a meaning. */
static void set_cycle(const vtx_compressor *c, double draw, vtx_compressor_duty *duty)
{
    const double nan = quiet_nan();
    const double change = c->cut_out_pressure - c->cut_in_pressure;
    const int fills = c->receiver_volume > 0 && duty->reserve > NO_FLOW;
    const int empties = c->receiver_volume > 0 && draw > NO_FLOW;
    duty->loaded_time = fills ? receiver_time(c->receiver_volume, change, c->intake_pressure, duty->reserve) : nan;
    duty->unloaded_time = empties ? receiver_time(c->receiver_volume, change, c->intake_pressure, draw) : nan;
    if (c->receiver_volume > 0)
        duty->cycle_rate = fills && empties ? 1 / (duty->loaded_time + duty->unloaded_time) : 0;
    else
        duty->cycle_rate = nan;
    if (!fills || !empties)
        duty->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

vtx_status vtx_compressor_at_demand(const vtx_compressor *compressor, double demand, vtx_compressor_duty *duty)
{
    vtx_status status = worse(require(duty != NULL), worse(check_compressor(compressor), check_amount(demand, FREE_AIR_MAX)));
    if (status != VTX_OK)
        return POISON_STRUCT(duty, vtx_compressor_duty, demand_met, status);
    const double draw = demand + compressor->leakage;
    duty->reserve = compressor->free_air_delivery - draw;
    duty->duty_cycle = duty_cycle(compressor, draw);
    duty->average_power = average_power(compressor, duty->duty_cycle);
    duty->specific_power = terminal_power(compressor) / compressor->free_air_delivery;
    const double met = demand_met(compressor, demand);
    duty->energy_per_volume = met > NO_FLOW ? duty->average_power / met : quiet_nan();
    duty->demand_met = duty->reserve >= 0;
    duty->advisories = met > NO_FLOW ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
    set_cycle(compressor, draw, duty);
    return VTX_OK;
}
