/* Purity classes of compressed air, and the water it carries per volume. */
#include <vtx/air_quality.h>

#include "moist_kernel.h"

/* ISO 8573-1:2010, tables 1 to 3; class 1 first. */
static const double dew_point_limit[] = { 203.15, 233.15, 253.15, 276.15, 280.15, 283.15 }; /* K, classes 1 to 6 */
static const double liquid_limit[] = { 0.5e-3, 5e-3, 10e-3 };                                /* kg/m3, classes 7 to 9 */
static const double particle_mass_limit[] = { 5e-6, 10e-6 };                                 /* kg/m3, classes 6 and 7 */
static const double oil_limit[] = { 0.01e-6, 0.1e-6, 1e-6, 5e-6 };                           /* kg/m3, classes 1 to 4 */

/* 1/m3, classes 1 to 5; below zero: no limit. */
static const struct particle_counts {
    double fine, medium, coarse;
} count_limit[] = { { 20000, 400, 10 }, { 400000, 6000, 100 }, { -1, 90000, 1000 }, { -1, -1, 10000 }, { -1, -1, 100000 } };

/* The first class whose limit holds, counted from `first`. */
static int32_t class_of(double value, const double *limit, size_t classes, int32_t first)
{
    for (size_t i = 0; i < classes; i++)
        if (value <= limit[i])
            return first + (int32_t)i;
    return VTX_AIR_CLASS_X;
}

/* A class of the table that lies outside this list has no such limit; anything else is no class. */
static vtx_status limit_of(int32_t number, int32_t last_of_table, const double *limit, size_t classes, int32_t first, double *value)
{
    const vtx_status status = require(value && ((number >= 1 && number <= last_of_table) || number == VTX_AIR_CLASS_X));
    if (status != VTX_OK)
        return poison(value, status);
    if (number < first || number >= first + (int32_t)classes)
        return poison(value, VTX_OUT_OF_RANGE);
    *value = limit[number - first];
    return VTX_OK;
}

vtx_status vtx_water_class(double pressure_dew_point, double liquid_content, int32_t *water_class)
{
    vtx_status status = worse(require(water_class != NULL), check_positive(pressure_dew_point, 150, 373.15));
    status = worse(status, check_amount(liquid_content, 1));
    if (status != VTX_OK)
        return poison_integer(water_class, status);
    *water_class = class_of(pressure_dew_point, dew_point_limit, ARRAY_LENGTH(dew_point_limit), 1);
    if (liquid_content > 0 || *water_class == VTX_AIR_CLASS_X)
        *water_class = class_of(liquid_content, liquid_limit, ARRAY_LENGTH(liquid_limit), 7);
    return VTX_OK;
}

vtx_status vtx_water_class_dew_point(int32_t water_class, double *pressure_dew_point)
{
    return limit_of(water_class, 9, dew_point_limit, ARRAY_LENGTH(dew_point_limit), 1, pressure_dew_point);
}

vtx_status vtx_water_class_liquid(int32_t water_class, double *liquid_content)
{
    return limit_of(water_class, 9, liquid_limit, ARRAY_LENGTH(liquid_limit), 7, liquid_content);
}

static int within_limit(double count, double limit) { return limit < 0 || count <= limit; }

vtx_status vtx_particle_class(double fine, double medium, double coarse, double mass_content, int32_t *particle_class)
{
    vtx_status status = worse(require(particle_class != NULL), check_amount(fine, 1e15));
    status = worse(status, worse(check_amount(medium, 1e15), check_amount(coarse, 1e15)));
    status = worse(status, check_amount(mass_content, 1));
    if (status != VTX_OK)
        return poison_integer(particle_class, status);
    *particle_class = VTX_AIR_CLASS_X;
    if (mass_content > 0) {
        *particle_class = class_of(mass_content, particle_mass_limit, ARRAY_LENGTH(particle_mass_limit), 6);
        return VTX_OK;
    }
    for (size_t i = ARRAY_LENGTH(count_limit); i-- > 0;) {
        const struct particle_counts *limit = &count_limit[i];
        if (within_limit(fine, limit->fine) && within_limit(medium, limit->medium) && within_limit(coarse, limit->coarse))
            *particle_class = (int32_t)i + 1;
    }
    return VTX_OK;
}

vtx_status vtx_particle_class_counts(int32_t particle_class, double *fine, double *medium, double *coarse)
{
    vtx_status status = require(fine && ((particle_class >= 1 && particle_class <= 7) || particle_class == VTX_AIR_CLASS_X));
    if (status == VTX_OK && particle_class > (int32_t)ARRAY_LENGTH(count_limit))
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK) {
        poison(medium, status);
        poison(coarse, status);
        return poison(fine, status);
    }
    const struct particle_counts *limit = &count_limit[particle_class - 1];
    *fine = limit->fine < 0 ? quiet_nan() : limit->fine;
    if (medium)
        *medium = limit->medium < 0 ? quiet_nan() : limit->medium;
    if (coarse)
        *coarse = limit->coarse;
    return VTX_OK;
}

vtx_status vtx_particle_class_mass(int32_t particle_class, double *mass_content)
{
    return limit_of(particle_class, 7, particle_mass_limit, ARRAY_LENGTH(particle_mass_limit), 6, mass_content);
}

vtx_status vtx_oil_class(double oil_content, int32_t *oil_class)
{
    const vtx_status status = worse(require(oil_class != NULL), check_amount(oil_content, 1));
    if (status != VTX_OK)
        return poison_integer(oil_class, status);
    *oil_class = class_of(oil_content, oil_limit, ARRAY_LENGTH(oil_limit), 1);
    return VTX_OK;
}

vtx_status vtx_oil_class_limit(int32_t oil_class, double *oil_content)
{
    return limit_of(oil_class, 4, oil_limit, ARRAY_LENGTH(oil_limit), 1, oil_content);
}

/* The reference state with the vapour of the line's air. */
static vtx_status reference_of_dew_point(int32_t model, double line_pressure, double pressure_dew_point, double reference_pressure,
                                         double reference_temperature, struct moist_mixture *reference)
{
    const vtx_status status = worse(moist_check(model, line_pressure, pressure_dew_point),
                                    moist_check(model, reference_pressure, reference_temperature));
    if (status != VTX_OK)
        return status;
    const double x = moist_saturation_fraction(model, line_pressure, pressure_dew_point, stable_phase(pressure_dew_point));
    if (moist_from_humidity(model, reference_pressure, reference_temperature, VTX_VAPOUR_FRACTION, x, reference) != VTX_OK)
        return VTX_OUT_OF_RANGE;
    return VTX_OK;
}

vtx_status vtx_water_content(int32_t model, double line_pressure, double pressure_dew_point, double reference_pressure,
                             double reference_temperature, double *content)
{
    struct moist_mixture reference;
    const vtx_status status = worse(require(content != NULL), reference_of_dew_point(model, line_pressure, pressure_dew_point, reference_pressure,
                                                                                     reference_temperature, &reference));
    if (status != VTX_OK)
        return poison(content, status);
    *content = moist_property(model, &reference, VTX_ABSOLUTE_HUMIDITY);
    return VTX_OK;
}

vtx_status vtx_pressure_dew_point(int32_t model, double line_pressure, double content, double reference_pressure, double reference_temperature,
                                  double *pressure_dew_point)
{
    struct moist_mixture reference;
    vtx_status status = worse(require(pressure_dew_point != NULL), moist_check(model, line_pressure, MOIST_TEMPERATURE_MAX));
    status = worse(status, worse(moist_check(model, reference_pressure, reference_temperature), check_positive(content, 0, 1000)));
    if (status == VTX_OK)
        status = moist_from_humidity(model, reference_pressure, reference_temperature, VTX_ABSOLUTE_HUMIDITY, content, &reference);
    if (status != VTX_OK)
        return poison(pressure_dew_point, status);
    *pressure_dew_point = moist_dew_or_frost_point(model, line_pressure, reference.vapour_fraction, PHASE_ICE);
    if (!is_finite(*pressure_dew_point))
        *pressure_dew_point = moist_dew_or_frost_point(model, line_pressure, reference.vapour_fraction, PHASE_LIQUID);
    return is_finite(*pressure_dew_point) ? VTX_OK : poison(pressure_dew_point, VTX_OUT_OF_RANGE);
}
