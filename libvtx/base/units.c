/* Units to SI and back. */
#include <vtx/units.h>

#include "unit_table.h"

static int has_absolute_zero(int32_t dimension)
{
    return dimension == VTX_DIMENSION_TEMPERATURE || dimension == VTX_DIMENSION_PRESSURE;
}

/* Tested before the product is formed: a result beyond this must not overflow on the way. */
static int product_is_finite(double a, double b) { return fabs(a) <= 1e300 / larger(fabs(b), 1); }

int32_t scale_to_si(const struct unit_scale *scale, int32_t dimension, double ambient_pressure, double value, double *si)
{
    if (!product_is_finite(value, scale->factor))
        return VTX_UNIT_FAULT_MAGNITUDE;
    *si = (value + scale->offset) * scale->factor + (scale->gauge ? ambient_pressure : 0);
    return has_absolute_zero(dimension) && !(*si > 0) ? VTX_UNIT_FAULT_BELOW_ZERO : VTX_UNIT_FAULT_NONE;
}

int32_t scale_from_si(const struct unit_scale *scale, int32_t dimension, double ambient_pressure, double si, double *value)
{
    if (has_absolute_zero(dimension) && !(si > 0))
        return VTX_UNIT_FAULT_BELOW_ZERO;
    if (!product_is_finite(si, 1 / scale->factor))
        return VTX_UNIT_FAULT_MAGNITUDE;
    *value = (si - (scale->gauge ? ambient_pressure : 0)) / scale->factor - scale->offset;
    return VTX_UNIT_FAULT_NONE;
}

/* What both directions check; gauge units pass only where the caller knows the barometer. */
static vtx_status find(const char *unit, int32_t dimension, int gauge_allowed, double number, const double *output, struct unit_scale *scale)
{
    const vtx_status status = require(unit && output && is_dimension(dimension) && is_finite(number));
    if (status != VTX_OK)
        return status;
    if (find_unit(unit, strlen(unit), dimension, scale) != VTX_UNIT_FAULT_NONE)
        return VTX_BAD_ARGUMENT;
    return require(!scale->gauge || gauge_allowed);
}

vtx_status vtx_unit_to_si(const char *unit, int32_t dimension, double value, double *si)
{
    struct unit_scale scale;
    const vtx_status status = find(unit, dimension, 0, value, si, &scale);
    if (status != VTX_OK || scale_to_si(&scale, dimension, 0, value, si) != VTX_UNIT_FAULT_NONE)
        return poison(si, VTX_BAD_ARGUMENT);
    return VTX_OK;
}

vtx_status vtx_unit_from_si(const char *unit, int32_t dimension, double si, double *value)
{
    struct unit_scale scale;
    const vtx_status status = find(unit, dimension, 0, si, value, &scale);
    if (status != VTX_OK || scale_from_si(&scale, dimension, 0, si, value) != VTX_UNIT_FAULT_NONE)
        return poison(value, VTX_BAD_ARGUMENT);
    return VTX_OK;
}

vtx_status vtx_pressure_to_si(const char *unit, double ambient_pressure, double value, double *pressure)
{
    struct unit_scale scale;
    const vtx_status status = worse(find(unit, VTX_DIMENSION_PRESSURE, 1, value, pressure, &scale), check_ambient_pressure(ambient_pressure));
    if (status != VTX_OK)
        return poison(pressure, status);
    if (scale_to_si(&scale, VTX_DIMENSION_PRESSURE, ambient_pressure, value, pressure) != VTX_UNIT_FAULT_NONE)
        return poison(pressure, VTX_BAD_ARGUMENT);
    return VTX_OK;
}

vtx_status vtx_pressure_from_si(const char *unit, double ambient_pressure, double pressure, double *value)
{
    struct unit_scale scale;
    const vtx_status status = worse(find(unit, VTX_DIMENSION_PRESSURE, 1, pressure, value, &scale), check_ambient_pressure(ambient_pressure));
    if (status != VTX_OK)
        return poison(value, status);
    if (scale_from_si(&scale, VTX_DIMENSION_PRESSURE, ambient_pressure, pressure, value) != VTX_UNIT_FAULT_NONE)
        return poison(value, VTX_BAD_ARGUMENT);
    return VTX_OK;
}

vtx_status vtx_absolute_pressure(double ambient_pressure, double gauge_pressure, double *pressure)
{
    vtx_status status = worse(require(pressure != NULL), check_ambient_pressure(ambient_pressure));
    status = worse(status, check_range(gauge_pressure, -DBL_MAX, 1e9));
    if (status == VTX_OK)
        status = require(ambient_pressure + gauge_pressure > 0);
    if (status != VTX_OK)
        return poison(pressure, status);
    *pressure = ambient_pressure + gauge_pressure;
    return VTX_OK;
}

vtx_status vtx_gauge_pressure(double ambient_pressure, double pressure, double *gauge_pressure)
{
    vtx_status status = worse(require(gauge_pressure != NULL), check_ambient_pressure(ambient_pressure));
    status = worse(status, check_positive(pressure, 0, 1e9));
    if (status != VTX_OK)
        return poison(gauge_pressure, status);
    *gauge_pressure = pressure - ambient_pressure;
    return VTX_OK;
}

const char *vtx_dimension_text(int32_t dimension)
{
    switch (dimension) {
    case VTX_DIMENSION_NUMBER: return "number or percentage";
    case VTX_DIMENSION_MASS_RATIO: return "mass per mass";
    case VTX_DIMENSION_LENGTH: return "length";
    case VTX_DIMENSION_AREA: return "area";
    case VTX_DIMENSION_VOLUME: return "volume";
    case VTX_DIMENSION_TIME: return "time";
    case VTX_DIMENSION_MASS: return "mass";
    case VTX_DIMENSION_TEMPERATURE: return "temperature";
    case VTX_DIMENSION_TEMPERATURE_DIFFERENCE: return "temperature difference";
    case VTX_DIMENSION_PRESSURE: return "pressure, gauge or absolute";
    case VTX_DIMENSION_PRESSURE_DIFFERENCE: return "pressure difference";
    case VTX_DIMENSION_MASS_FLOW: return "mass flow";
    case VTX_DIMENSION_VOLUME_FLOW: return "volume flow";
    case VTX_DIMENSION_VELOCITY: return "velocity";
    case VTX_DIMENSION_FREQUENCY: return "frequency or speed of rotation";
    case VTX_DIMENSION_FORCE: return "force";
    case VTX_DIMENSION_TORQUE: return "torque";
    case VTX_DIMENSION_ENERGY: return "energy";
    case VTX_DIMENSION_POWER: return "power";
    case VTX_DIMENSION_DENSITY: return "density or mass per volume";
    case VTX_DIMENSION_SPECIFIC_ENERGY: return "energy per mass";
    case VTX_DIMENSION_HEAT_CAPACITY: return "heat capacity or entropy per mass";
    case VTX_DIMENSION_ENERGY_DENSITY: return "energy per volume";
    case VTX_DIMENSION_HEAT_FLUX: return "heat flux";
    case VTX_DIMENSION_HEAT_TRANSFER: return "heat transfer coefficient";
    case VTX_DIMENSION_CONDUCTIVITY: return "thermal conductivity";
    case VTX_DIMENSION_VISCOSITY: return "viscosity";
    case VTX_DIMENSION_CONDUCTANCE: return "sonic conductance";
    case VTX_DIMENSION_LEVEL: return "level";
    case VTX_DIMENSION_ANGLE: return "angle";
    default: return "unknown dimension";
    }
}

const char *vtx_unit_fault_text(int32_t fault)
{
    switch (fault) {
    case VTX_UNIT_FAULT_NONE: return "accepted";
    case VTX_UNIT_FAULT_NO_NUMBER: return "no decimal number at the beginning";
    case VTX_UNIT_FAULT_DECIMAL_COMMA: return "comma in the number: write a decimal point, no thousands separators";
    case VTX_UNIT_FAULT_MAGNITUDE: return "number too large or too small to be represented";
    case VTX_UNIT_FAULT_NO_UNIT: return "unit missing";
    case VTX_UNIT_FAULT_UNKNOWN: return "unknown unit (capital and small letters differ)";
    case VTX_UNIT_FAULT_WRONG_DIMENSION: return "unit of a different quantity";
    case VTX_UNIT_FAULT_GAUGE_OR_ABSOLUTE: return "gauge or absolute? write (g) or (a) behind the pressure unit";
    case VTX_UNIT_FAULT_NO_BAROMETER: return "gauge pressure, but no ambient pressure to count from: write it absolute, (a)";
    case VTX_UNIT_FAULT_POINT_OR_DIFFERENCE:
        return "temperature or temperature difference? a difference is written in K, delta degC or delta degF, a temperature in degC, degF or K";
    case VTX_UNIT_FAULT_STANDARD_FLOW: return "a standard flow means nothing without its reference state: give a volume flow and name the state";
    case VTX_UNIT_FAULT_BELOW_ZERO: return "at or below absolute zero";
    default: return "unknown fault";
    }
}
