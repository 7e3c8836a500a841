/* Conversions between the measures of a restriction's size. */
#include <vtx/flow_coefficient.h>

#include "../base/exact_units.h"
#include "restriction_kernel.h"
#include "valve_kernel.h"

#define COEFFICIENT_MAX 1e6

/* A US gallon is 231 cubic inches. */
static double kv_per_cv(void) { return 231 * CUBIC_INCH * 60 * sqrt(1e5 / PSI); }

/* m2 per m3/(s Pa): choked nozzle against choked conductance at the reference temperature. */
static double area_per_conductance(const vtx_gas *gas)
{
    return conductance_density / orifice_choked_flux(gas, 1, conductance_temperature);
}

/* m3/(s Pa) per Kv; both laws are proportional to the pressure at choking. */
static double conductance_per_kv(const vtx_gas *gas, double pressure_ratio_factor)
{
    const struct valve_law law = { area_per_kv, gas->heat_capacity_ratio / 1.4 * pressure_ratio_factor };
    return valve_scale(&law, gas, 1, conductance_temperature) * cubic(1) / conductance_density;
}

static vtx_status scaled(double value, double factor, vtx_status status, double *result)
{
    if (!result || status != VTX_OK)
        return poison(result, worse(require(result != NULL), status));
    *result = value * factor;
    return VTX_OK;
}

vtx_status vtx_kv_from_cv(double cv, double *kv) { return scaled(cv, kv_per_cv(), check_amount(cv, COEFFICIENT_MAX), kv); }

vtx_status vtx_cv_from_kv(double kv, double *cv) { return scaled(kv, 1 / kv_per_cv(), check_amount(kv, COEFFICIENT_MAX), cv); }

vtx_status vtx_area_from_kv(double kv, double *area) { return scaled(kv, area_per_kv, check_amount(kv, COEFFICIENT_MAX), area); }

vtx_status vtx_kv_from_area(double area, double *kv) { return scaled(area, 1 / area_per_kv, check_amount(area, FLOW_AREA_MAX), kv); }

vtx_status vtx_conductance_from_area(const vtx_gas *gas, double area, double *conductance)
{
    const vtx_status status = worse(check_gas(gas), check_amount(area, FLOW_AREA_MAX));
    return scaled(area, status == VTX_OK ? 1 / area_per_conductance(gas) : 0, status, conductance);
}

vtx_status vtx_area_from_conductance(const vtx_gas *gas, double conductance, double *area)
{
    const vtx_status status = worse(check_gas(gas), check_amount(conductance, 1));
    return scaled(conductance, status == VTX_OK ? area_per_conductance(gas) : 0, status, area);
}

vtx_status vtx_conductance_from_kv(const vtx_gas *gas, double kv, double pressure_ratio_factor, double *conductance)
{
    const vtx_status status = worse(check_gas(gas), worse(check_amount(kv, COEFFICIENT_MAX), check_factor(pressure_ratio_factor)));
    return scaled(kv, status == VTX_OK ? conductance_per_kv(gas, pressure_ratio_factor) : 0, status, conductance);
}

vtx_status vtx_kv_from_conductance(const vtx_gas *gas, double conductance, double pressure_ratio_factor, double *kv)
{
    const vtx_status status = worse(check_gas(gas), worse(check_amount(conductance, 1), check_factor(pressure_ratio_factor)));
    return scaled(conductance, status == VTX_OK ? 1 / conductance_per_kv(gas, pressure_ratio_factor) : 0, status, kv);
}

static vtx_status check_bore(double diameter) { return check_positive(diameter, 0.001, 2); }

vtx_status vtx_loss_from_kv(double kv, double diameter, double *loss)
{
    const vtx_status status = worse(check_positive(kv, 1e-6, COEFFICIENT_MAX), check_bore(diameter));
    return scaled(loss_times_kv_squared(), status == VTX_OK ? square(square(diameter) / kv) : 0, status, loss);
}

vtx_status vtx_kv_from_loss(double loss, double diameter, double *kv)
{
    const vtx_status status = worse(check_positive(loss, 1e-12, 1e23), check_bore(diameter));
    return scaled(square(diameter), status == VTX_OK ? sqrt(loss_times_kv_squared() / loss) : 0, status, kv);
}
