/* From what a probe reads to the stagnation temperature, with its uncertainty. */
#include <vtx/thermometry.h>

#include "../base/propagation.h"
#include "../flow/crossflow_kernel.h"
#include "curve.h"
#include "perfect_air.h"

static const double uncertainty_max = 100, share_max = 0.9;

static double rise(double air_speed, double heat_capacity) { return air_speed * air_speed / (2 * heat_capacity); }

static vtx_status check_heat_capacity(double cp) { return check_positive(cp, 100, 20000); }

vtx_status vtx_dynamic_temperature(double air_speed, double heat_capacity, double *rise_out)
{
    const vtx_status status = worse(require(rise_out != NULL), worse(check_amount(air_speed, 1000), check_heat_capacity(heat_capacity)));
    if (status != VTX_OK)
        return poison(rise_out, status);
    *rise_out = rise(air_speed, heat_capacity);
    return VTX_OK;
}

/* Middle and half-width of the rectangular limits chosen for probes that were not calibrated. */
static const double bare_factor = 0.77, bare_limit = 0.10, shielded_factor = 0.97, shielded_limit = 0.02, surface_uncertainty = 0.01;

vtx_status vtx_recovery_factor(int32_t probe, double prandtl, double *factor, double *uncertainty)
{
    vtx_status status = require(factor && probe >= VTX_PROBE_LAMINAR && probe <= VTX_PROBE_SHIELDED);
    status = worse(status, check_positive(prandtl, 0.5, 1));
    if (status != VTX_OK)
        return poison(uncertainty, poison(factor, status));
    *factor = probe == VTX_PROBE_LAMINAR ? sqrt(prandtl) : probe == VTX_PROBE_TURBULENT ? cbrt(prandtl)
            : probe == VTX_PROBE_BARE ? bare_factor : shielded_factor;
    if (uncertainty)
        *uncertainty = probe == VTX_PROBE_BARE ? bare_limit / sqrt(3)
                     : probe == VTX_PROBE_SHIELDED ? shielded_limit / sqrt(3) : surface_uncertainty;
    return VTX_OK;
}

vtx_status vtx_thermometer_uncertainty(int32_t thermometer, double temperature, double *uncertainty, double *limit)
{
    vtx_status status = require(uncertainty && thermometer >= VTX_THERMOMETER_K1 && thermometer <= VTX_THERMOMETER_PT_B);
    status = worse(status, check_positive(temperature, 173.15, 523.15));
    if (status != VTX_OK)
        return poison(limit, poison(uncertainty, status));
    const double from_ice = fabs(temperature - 273.15);
    const double error = thermometer == VTX_THERMOMETER_K1 ? 1.5 : thermometer == VTX_THERMOMETER_T1 ? 0.5
                       : thermometer == VTX_THERMOMETER_PT_A ? 0.15 + 0.002 * from_ice : 0.30 + 0.005 * from_ice;
    *uncertainty = error / sqrt(3);
    if (limit)
        *limit = error;
    return VTX_OK;
}

vtx_status vtx_probe_coefficient(double air_speed, double diameter, double kinematic_viscosity, double conductivity,
                                 double prandtl, double *coefficient)
{
    vtx_status status = worse(require(coefficient != NULL), check_positive(air_speed, 0.01, 500));
    status = worse(status, worse(check_positive(diameter, 1e-5, 0.1), check_positive(kinematic_viscosity, 1e-7, 1e-3)));
    status = worse(status, worse(check_positive(conductivity, 0.005, 0.1), check_positive(prandtl, 0.5, 1)));
    if (status != VTX_OK)
        return poison(coefficient, status);
    const double reynolds = air_speed * diameter / kinematic_viscosity;
    if (reynolds * prandtl < 0.2)
        return poison(coefficient, VTX_OUT_OF_RANGE);
    *coefficient = crossflow_nusselt(reynolds, prandtl) * conductivity / diameter;
    return VTX_OK;
}

vtx_status vtx_probe_time_constant(int32_t shape, double volumetric_heat_capacity, double diameter, double coefficient,
                                   double *time_constant)
{
    vtx_status status = require(time_constant && (shape == VTX_PROBE_CYLINDER || shape == VTX_PROBE_SPHERE));
    status = worse(status, check_positive(volumetric_heat_capacity, 1e5, 1e7));
    status = worse(status, worse(check_positive(diameter, 1e-5, 0.1), check_positive(coefficient, 0.1, 1e5)));
    if (status != VTX_OK)
        return poison(time_constant, status);
    *time_constant = volumetric_heat_capacity * diameter / ((shape == VTX_PROBE_CYLINDER ? 4 : 6) * coefficient);
    return VTX_OK;
}

vtx_status vtx_settling_time(double time_constant, double step, double allowed_error, double *settling_time)
{
    vtx_status status = worse(require(settling_time != NULL), check_positive(time_constant, DBL_MIN, 1e5));
    status = worse(status, worse(check_amount(step, 1000), check_positive(allowed_error, 1e-6, 1000)));
    if (status != VTX_OK)
        return poison(settling_time, status);
    *settling_time = step > allowed_error ? time_constant * log(step / allowed_error) : 0;
    return VTX_OK;
}

vtx_status vtx_unsettled_share(double time_constant, double elapsed_time, double *share)
{
    const vtx_status status = worse(require(share != NULL), worse(check_positive(time_constant, DBL_MIN, 1e5), check_amount(elapsed_time, 1e9)));
    if (status != VTX_OK)
        return poison(share, status);
    *share = elapsed_time > 700 * time_constant ? 0 : exp(-elapsed_time / time_constant);
    return VTX_OK;
}

vtx_status vtx_stem_share(double coefficient, double diameter, double conductivity, double immersion, double *share)
{
    vtx_status status = worse(require(share != NULL), check_positive(coefficient, 0.1, 1e5));
    status = worse(status, worse(check_positive(diameter, 1e-5, 0.1), check_positive(conductivity, 0.01, 500)));
    status = worse(status, check_amount(immersion, 1));
    if (status != VTX_OK)
        return poison(share, status);
    const double length = immersion * sqrt(4 * coefficient / (conductivity * diameter));
    *share = length > 700 ? 0 : 1 / cosh(length);
    return VTX_OK;
}

vtx_status vtx_probe_init(vtx_probe *probe)
{
    if (!probe)
        return VTX_BAD_ARGUMENT;
    *probe = (vtx_probe){ .recovery_factor = bare_factor,
                          .recovery_uncertainty = bare_limit / sqrt(3),
                          .heat_capacity = perfect_air_heat_capacity,
                          .room_temperature = 293.15,
                          .room_uncertainty = 1,
                          .stem_temperature = 293.15,
                          .stem_temperature_uncertainty = 1,
                          .start_temperature = 293.15 };
    return VTX_OK;
}

static vtx_status check_share_of_probe(double share, double uncertainty)
{
    return worse(check_amount(share, share_max), check_amount(uncertainty, 0.5));
}

static vtx_status check_probe(const vtx_probe *p)
{
    if (!p)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_amount(p->air_speed, 1000), check_amount(p->air_speed_uncertainty, 1000));
    status = worse(status, worse(check_share(p->recovery_factor), check_share(p->recovery_uncertainty)));
    status = worse(status, check_heat_capacity(p->heat_capacity));
    status = worse(status, check_share_of_probe(p->entrained_share, p->entrained_uncertainty));
    status = worse(status, check_share_of_probe(p->stem_share, p->stem_uncertainty));
    status = worse(status, check_share_of_probe(p->unsettled_share, p->unsettled_uncertainty));
    status = worse(status, worse(check_positive(p->room_temperature, 150, 400), check_amount(p->room_uncertainty, uncertainty_max)));
    status = worse(status, worse(check_positive(p->stem_temperature, 150, 1000), check_amount(p->stem_temperature_uncertainty, uncertainty_max)));
    status = worse(status, check_positive(p->start_temperature, 150, 1000));
    status = worse(status, require(are_zero(p->reserved, ARRAY_LENGTH(p->reserved))));
    return status;
}

/* What is uncertain, in the order of a vector. */
enum { READING, UNSETTLED, STEM, STEM_TEMPERATURE, SPEED, RECOVERY, ENTRAINED, ROOM, PROBE_INPUTS };

/* x seen as a mixture of what is wanted and a share of something else. */
static double unmixed(double mixture, double share, double other) { return (mixture - share * other) / (1 - share); }
static double mixed(double wanted, double share, double other) { return (1 - share) * wanted + share * other; }

/* The stages from the reading to the stagnation temperature. A share near 1 leaves nothing of what is wanted. */
static vtx_status correct(const double *x, double *stage, void *context)
{
    const vtx_probe *p = context;
    if (x[UNSETTLED] > 0.95 || x[STEM] > 0.95 || x[ENTRAINED] > 0.95)
        return VTX_OUT_OF_RANGE;
    stage[0] = unmixed(x[READING], x[UNSETTLED], p->start_temperature);
    stage[1] = unmixed(stage[0], x[STEM], x[STEM_TEMPERATURE]);
    stage[2] = stage[1] + (1 - x[RECOVERY]) * rise(x[SPEED], p->heat_capacity);
    stage[3] = unmixed(stage[2], x[ENTRAINED], x[ROOM]);
    return VTX_OK;
}

vtx_status vtx_probe_correct(const vtx_probe *probe, double reading, double uncertainty, vtx_corrected_temperature *corrected)
{
    double stage[4], sensitivity[4 * PROBE_INPUTS], part[PROBE_INPUTS];
    vtx_status status = worse(require(corrected != NULL), check_probe(probe));
    status = worse(status, worse(check_positive(reading, 100, 1000), check_amount(uncertainty, uncertainty_max)));
    if (status != VTX_OK)
        return poison_record(corrected, sizeof *corrected / sizeof(double), 0, status);
    vtx_probe copy = *probe;
    const double x[PROBE_INPUTS] = { reading, probe->unsettled_share, probe->stem_share, probe->stem_temperature, probe->air_speed,
                                     probe->recovery_factor, probe->entrained_share, probe->room_temperature };
    const double u[PROBE_INPUTS] = { uncertainty, probe->unsettled_uncertainty, probe->stem_uncertainty,
                                     probe->stem_temperature_uncertainty, probe->air_speed_uncertainty,
                                     probe->recovery_uncertainty, probe->entrained_uncertainty, probe->room_uncertainty };
    sensitivities(correct, &copy, PROBE_INPUTS, x, u, 4, stage, sensitivity);
    if (check_range(stage[3], 50, 1500) != VTX_OK)
        return poison_record(corrected, sizeof *corrected / sizeof(double), 0, VTX_OUT_OF_RANGE);
    for (size_t i = 0; i < PROBE_INPUTS; i++)
        part[i] = fabs(sensitivity[3 * PROBE_INPUTS + i]) * u[i];
    *corrected = (vtx_corrected_temperature){
        .temperature = stage[3],
        .uncertainty = propagated_uncertainty(PROBE_INPUTS, &sensitivity[3 * PROBE_INPUTS], u, NULL),
        .settling_correction = stage[0] - reading,
        .stem_correction = stage[1] - stage[0],
        .recovery_correction = stage[2] - stage[1],
        .entrainment_correction = stage[3] - stage[2],
        .from_reading = part[READING],
        .from_settling = part[UNSETTLED],
        .from_stem = hypot(part[STEM], part[STEM_TEMPERATURE]),
        .from_recovery = hypot(part[SPEED], part[RECOVERY]),
        .from_entrainment = hypot(part[ENTRAINED], part[ROOM]),
    };
    return VTX_OK;
}

vtx_status vtx_probe_reading(const vtx_probe *probe, double temperature, double *reading)
{
    const vtx_status status = worse(require(reading != NULL), worse(check_probe(probe), check_positive(temperature, 100, 1000)));
    if (status != VTX_OK)
        return poison(reading, status);
    const double stream = mixed(temperature, probe->entrained_share, probe->room_temperature);
    const double recovered = stream - (1 - probe->recovery_factor) * rise(probe->air_speed, probe->heat_capacity);
    const double tip = mixed(recovered, probe->stem_share, probe->stem_temperature);
    *reading = mixed(tip, probe->unsettled_share, probe->start_temperature);
    return VTX_OK;
}

enum { HOT, CONDUCTANCE, HOT_END_INPUTS };

struct hot_end {
    double ambient_temperature, capacity_flow;
};

static vtx_status without_loss(const double *x, double *y, void *context)
{
    const struct hot_end *h = context;
    if (x[CONDUCTANCE] < 0)
        return VTX_OUT_OF_RANGE;
    y[0] = h->ambient_temperature + (x[HOT] - h->ambient_temperature) / leak_remainder(x[CONDUCTANCE] / h->capacity_flow, 1);
    return VTX_OK;
}

vtx_status vtx_hot_end_correct(double hot_temperature, double uncertainty, double ambient_temperature, double conductance,
                               double conductance_uncertainty, double hot_mass_flow, double heat_capacity,
                               double *corrected, double *corrected_uncertainty)
{
    double y, sensitivity[HOT_END_INPUTS];
    vtx_status status = worse(require(corrected != NULL), check_positive(hot_temperature, 200, 1000));
    status = worse(status, worse(check_amount(uncertainty, uncertainty_max), check_positive(ambient_temperature, 150, 400)));
    status = worse(status, worse(check_amount(conductance, 100), check_amount(conductance_uncertainty, 100)));
    status = worse(status, worse(check_positive(hot_mass_flow, 1e-9, 100), check_heat_capacity(heat_capacity)));
    struct hot_end h = { ambient_temperature, hot_mass_flow * heat_capacity };
    const double x[HOT_END_INPUTS] = { hot_temperature, conductance }, u[HOT_END_INPUTS] = { uncertainty, conductance_uncertainty };
    if (status == VTX_OK && leak_remainder((conductance + conductance_uncertainty) / h.capacity_flow, 1) < 1 - share_max)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(corrected_uncertainty, poison(corrected, status));
    sensitivities(without_loss, &h, HOT_END_INPUTS, x, u, 1, &y, sensitivity);
    if (check_positive(y, 50, 1500) != VTX_OK)
        return poison(corrected_uncertainty, poison(corrected, VTX_OUT_OF_RANGE));
    *corrected = y;
    if (corrected_uncertainty)
        *corrected_uncertainty = propagated_uncertainty(HOT_END_INPUTS, sensitivity, u, NULL);
    return VTX_OK;
}
