/* Every numeric call of the media layer in one shape. Written by build-aux/generate. */
#include <vtx/air.h>
#include <vtx/air_quality.h>
#include <vtx/atmosphere.h>
#include <vtx/moist_air.h>
#include <vtx/moist_pair.h>
#include <vtx/process.h>
#include <vtx/water.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status dry_air_at_call(const struct call_values *v)
{
    return vtx_dry_air_at(v->number[0], v->number[1], v->out[0]);
}

static vtx_status dry_air_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_dry_air_at_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_compressibility_call(const struct call_values *v)
{
    return vtx_air_compressibility(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_compressibility_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_compressibility_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_density_call(const struct call_values *v)
{
    return vtx_air_density(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_density_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_density_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_enthalpy_call(const struct call_values *v)
{
    return vtx_air_enthalpy(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_enthalpy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_enthalpy_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_entropy_call(const struct call_values *v)
{
    return vtx_air_entropy(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_entropy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_entropy_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_heat_capacity_call(const struct call_values *v)
{
    return vtx_air_heat_capacity(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_heat_capacity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_heat_capacity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_heat_capacity_ratio_call(const struct call_values *v)
{
    return vtx_air_heat_capacity_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_heat_capacity_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_heat_capacity_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_sound_speed_call(const struct call_values *v)
{
    return vtx_air_sound_speed(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_sound_speed_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_sound_speed_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_joule_thomson_call(const struct call_values *v)
{
    return vtx_air_joule_thomson(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_joule_thomson_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_joule_thomson_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_viscosity_call(const struct call_values *v)
{
    return vtx_air_viscosity(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_viscosity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_viscosity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_conductivity_call(const struct call_values *v)
{
    return vtx_air_conductivity(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_conductivity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_conductivity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status air_critical_flow_factor_call(const struct call_values *v)
{
    return vtx_air_critical_flow_factor(v->number[0], v->number[1], v->out[0]);
}

static vtx_status air_critical_flow_factor_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_critical_flow_factor_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status water_class_call(const struct call_values *v)
{
    return vtx_water_class(v->number[0], v->number[1], v->out[0]);
}

static vtx_status water_class_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_class_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status particle_class_call(const struct call_values *v)
{
    return vtx_particle_class(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status particle_class_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_particle_class_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status oil_class_call(const struct call_values *v)
{
    return vtx_oil_class(v->number[0], v->out[0]);
}

static vtx_status oil_class_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_oil_class_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status water_content_call(const struct call_values *v)
{
    return vtx_water_content(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status water_content_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_water_content_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status pressure_dew_point_call(const struct call_values *v)
{
    return vtx_pressure_dew_point(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status pressure_dew_point_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_pressure_dew_point_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status atmosphere_pressure_call(const struct call_values *v)
{
    return vtx_atmosphere_pressure(v->number[0], v->out[0]);
}

static vtx_status atmosphere_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_atmosphere_pressure_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status atmosphere_temperature_call(const struct call_values *v)
{
    return vtx_atmosphere_temperature(v->number[0], v->out[0]);
}

static vtx_status atmosphere_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_atmosphere_temperature_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status atmosphere_density_call(const struct call_values *v)
{
    return vtx_atmosphere_density(v->number[0], v->out[0]);
}

static vtx_status atmosphere_density_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_atmosphere_density_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status atmosphere_altitude_call(const struct call_values *v)
{
    return vtx_atmosphere_altitude(v->number[0], v->out[0]);
}

static vtx_status atmosphere_altitude_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_atmosphere_altitude_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status geopotential_altitude_call(const struct call_values *v)
{
    return vtx_geopotential_altitude(v->number[0], v->out[0]);
}

static vtx_status geopotential_altitude_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_geopotential_altitude_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status geometric_altitude_call(const struct call_values *v)
{
    return vtx_geometric_altitude(v->number[0], v->out[0]);
}

static vtx_status geometric_altitude_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_geometric_altitude_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status station_pressure_call(const struct call_values *v)
{
    return vtx_station_pressure(v->number[0], v->number[1], v->out[0]);
}

static vtx_status station_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_station_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status moist_air_at_call(const struct call_values *v)
{
    return vtx_moist_air_at(v->selector[0], v->number[0], v->number[1], v->selector[1], v->number[2], v->out[0]);
}

static vtx_status moist_air_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_moist_air_at_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], v->selector[1], column->in[2], column->in_stride[2], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status moist_air_humidity_call(const struct call_values *v)
{
    return vtx_moist_air_humidity(v->selector[0], v->number[0], v->number[1], v->selector[1], v->number[2],
        v->selector[2], v->out[0]);
}

static vtx_status moist_air_humidity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_moist_air_humidity_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], v->selector[1], column->in[2], column->in_stride[2], v->selector[2], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status dew_point_call(const struct call_values *v)
{
    return vtx_dew_point(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status dew_point_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_dew_point_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status frost_point_call(const struct call_values *v)
{
    return vtx_frost_point(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status frost_point_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_frost_point_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status saturation_humidity_ratio_call(const struct call_values *v)
{
    return vtx_saturation_humidity_ratio(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status saturation_humidity_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_saturation_humidity_ratio_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status dew_point_at_pressure_call(const struct call_values *v)
{
    return vtx_dew_point_at_pressure(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status dew_point_at_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_dew_point_at_pressure_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status frost_point_at_pressure_call(const struct call_values *v)
{
    return vtx_frost_point_at_pressure(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status frost_point_at_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_frost_point_at_pressure_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status moist_air_from_pair_call(const struct call_values *v)
{
    return vtx_moist_air_from_pair(v->selector[0], v->number[0], v->selector[1], v->number[1], v->selector[2],
        v->number[2], v->out[0]);
}

static vtx_status moist_air_from_pair_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_moist_air_from_pair_batch(n, v->selector[0], column->in[0], column->in_stride[0], v->selector[1],
        column->in[1], column->in_stride[1], v->selector[2], column->in[2], column->in_stride[2], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status expansion_isentropic_call(const struct call_values *v)
{
    return vtx_expansion_isentropic(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status expansion_isentropic_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_expansion_isentropic_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status expansion_throttle_call(const struct call_values *v)
{
    return vtx_expansion_throttle(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status expansion_throttle_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_expansion_throttle_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status expanded_isentropic_call(const struct call_values *v)
{
    return vtx_expanded_isentropic(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0],
        v->out[1]);
}

static vtx_status expanded_isentropic_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_expanded_isentropic_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status expanded_throttle_call(const struct call_values *v)
{
    return vtx_expanded_throttle(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0],
        v->out[1]);
}

static vtx_status expanded_throttle_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_expanded_throttle_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status expanded_with_efficiency_call(const struct call_values *v)
{
    return vtx_expanded_with_efficiency(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->out[0], v->out[1]);
}

static vtx_status expanded_with_efficiency_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_expanded_with_efficiency_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status heat_to_temperature_call(const struct call_values *v)
{
    return vtx_heat_to_temperature(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0],
        v->out[1]);
}

static vtx_status heat_to_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_heat_to_temperature_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status heated_call(const struct call_values *v)
{
    return vtx_heated(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status heated_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_heated_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status condensate_drained_call(const struct call_values *v)
{
    return vtx_condensate_drained(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0],
        v->out[1]);
}

static vtx_status condensate_drained_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_condensate_drained_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status mixed_call(const struct call_values *v)
{
    return vtx_mixed(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0], v->out[1]);
}

static vtx_status mixed_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_mixed_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status water_saturation_pressure_call(const struct call_values *v)
{
    return vtx_water_saturation_pressure(v->number[0], v->out[0]);
}

static vtx_status water_saturation_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_saturation_pressure_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status water_saturation_temperature_call(const struct call_values *v)
{
    return vtx_water_saturation_temperature(v->number[0], v->out[0]);
}

static vtx_status water_saturation_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_saturation_temperature_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status water_saturation_slope_call(const struct call_values *v)
{
    return vtx_water_saturation_slope(v->number[0], v->out[0]);
}

static vtx_status water_saturation_slope_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_saturation_slope_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status water_density_call(const struct call_values *v)
{
    return vtx_water_density(v->number[0], v->out[0]);
}

static vtx_status water_density_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_density_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status water_enthalpy_call(const struct call_values *v)
{
    return vtx_water_enthalpy(v->number[0], v->out[0]);
}

static vtx_status water_enthalpy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_enthalpy_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status ice_sublimation_pressure_call(const struct call_values *v)
{
    return vtx_ice_sublimation_pressure(v->number[0], v->out[0]);
}

static vtx_status ice_sublimation_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_sublimation_pressure_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status ice_sublimation_temperature_call(const struct call_values *v)
{
    return vtx_ice_sublimation_temperature(v->number[0], v->out[0]);
}

static vtx_status ice_sublimation_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_sublimation_temperature_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status ice_sublimation_slope_call(const struct call_values *v)
{
    return vtx_ice_sublimation_slope(v->number[0], v->out[0]);
}

static vtx_status ice_sublimation_slope_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_sublimation_slope_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status ice_density_call(const struct call_values *v)
{
    return vtx_ice_density(v->number[0], v->number[1], v->out[0]);
}

static vtx_status ice_density_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_density_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status ice_enthalpy_call(const struct call_values *v)
{
    return vtx_ice_enthalpy(v->number[0], v->number[1], v->out[0]);
}

static vtx_status ice_enthalpy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_enthalpy_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status water_vaporisation_enthalpy_call(const struct call_values *v)
{
    return vtx_water_vaporisation_enthalpy(v->number[0], v->out[0]);
}

static vtx_status water_vaporisation_enthalpy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_vaporisation_enthalpy_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status ice_sublimation_enthalpy_call(const struct call_values *v)
{
    return vtx_ice_sublimation_enthalpy(v->number[0], v->out[0]);
}

static vtx_status ice_sublimation_enthalpy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_sublimation_enthalpy_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status ice_fusion_enthalpy_call(const struct call_values *v)
{
    return vtx_ice_fusion_enthalpy(v->number[0], v->out[0]);
}

static vtx_status ice_fusion_enthalpy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ice_fusion_enthalpy_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_media[] = {
    { "vtx_dry_air_at", dry_air_at_call, dry_air_at_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(vtx_dry_air), "vtx_dry_air", "ddddddddddddddii", 0 } } },
    { "vtx_air_compressibility", air_compressibility_call, air_compressibility_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_density", air_density_call, air_density_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_enthalpy", air_enthalpy_call, air_enthalpy_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_entropy", air_entropy_call, air_entropy_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_heat_capacity", air_heat_capacity_call, air_heat_capacity_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_heat_capacity_ratio", air_heat_capacity_ratio_call, air_heat_capacity_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_sound_speed", air_sound_speed_call, air_sound_speed_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_joule_thomson", air_joule_thomson_call, air_joule_thomson_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_viscosity", air_viscosity_call, air_viscosity_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_conductivity", air_conductivity_call, air_conductivity_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_air_critical_flow_factor", air_critical_flow_factor_call, air_critical_flow_factor_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 200, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_water_class", water_class_call, water_class_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_particle_class", particle_class_call, particle_class_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_oil_class", oil_class_call, oil_class_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_water_content", water_content_call, water_content_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_pressure_dew_point", pressure_dew_point_call, pressure_dew_point_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_atmosphere_pressure", atmosphere_pressure_call, atmosphere_pressure_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 11000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_atmosphere_temperature", atmosphere_temperature_call, atmosphere_temperature_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 11000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_atmosphere_density", atmosphere_density_call, atmosphere_density_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 11000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_atmosphere_altitude", atmosphere_altitude_call, atmosphere_altitude_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 22632.1, 127773 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_geopotential_altitude", geopotential_altitude_call, geopotential_altitude_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 11020 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_geometric_altitude", geometric_altitude_call, geometric_altitude_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 11000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_station_pressure", station_pressure_call, station_pressure_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 87000, 108500 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -500, 5000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_moist_air_at", moist_air_at_call, moist_air_at_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 } } },
    { "vtx_moist_air_humidity", moist_air_humidity_call, moist_air_humidity_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_dew_point", dew_point_call, dew_point_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_frost_point", frost_point_call, frost_point_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_saturation_humidity_ratio", saturation_humidity_ratio_call, saturation_humidity_ratio_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_dew_point_at_pressure", dew_point_at_pressure_call, dew_point_at_pressure_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_frost_point_at_pressure", frost_point_at_pressure_call, frost_point_at_pressure_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 273.16 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_moist_air_from_pair", moist_air_from_pair_call, moist_air_from_pair_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 } } },
    { "vtx_expansion_isentropic", expansion_isentropic_call, expansion_isentropic_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_expansion_throttle", expansion_throttle_call, expansion_throttle_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_expanded_isentropic", expanded_isentropic_call, expanded_isentropic_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_expanded_throttle", expanded_throttle_call, expanded_throttle_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, (double)NAN },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_expanded_with_efficiency", expanded_with_efficiency_call, expanded_with_efficiency_columns, 8,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_heat_to_temperature", heat_to_temperature_call, heat_to_temperature_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_heated", heated_call, heated_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e8, 1e8 },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 } } },
    { "vtx_condensate_drained", condensate_drained_call, condensate_drained_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 1 } } },
    { "vtx_mixed", mixed_call, mixed_columns, 10,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1000, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 473.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e9 },
        { CALL_OUT, sizeof(vtx_moist_air), "vtx_moist_air", "ddddddddddddddddddddii", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_water_saturation_pressure", water_saturation_pressure_call, water_saturation_pressure_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 647.096 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_water_saturation_temperature", water_saturation_temperature_call, water_saturation_temperature_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 18.95676, 22.064e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_water_saturation_slope", water_saturation_slope_call, water_saturation_slope_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 647.096 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_water_density", water_density_call, water_density_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 253.15, 647.096 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_water_enthalpy", water_enthalpy_call, water_enthalpy_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 253.15, 647.096 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_sublimation_pressure", ice_sublimation_pressure_call, ice_sublimation_pressure_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 273.16 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_sublimation_temperature", ice_sublimation_temperature_call, ice_sublimation_temperature_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.93495e-40, 611.657 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_sublimation_slope", ice_sublimation_slope_call, ice_sublimation_slope_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 273.16 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_density", ice_density_call, ice_density_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 200e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 273.16 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_enthalpy", ice_enthalpy_call, ice_enthalpy_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 200e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 273.16 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_water_vaporisation_enthalpy", water_vaporisation_enthalpy_call, water_vaporisation_enthalpy_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 253.15, 473.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_sublimation_enthalpy", ice_sublimation_enthalpy_call, ice_sublimation_enthalpy_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 273.16 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ice_fusion_enthalpy", ice_fusion_enthalpy_call, ice_fusion_enthalpy_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 253.15, 273.16 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
};

const size_t calls_media_count = sizeof calls_media / sizeof calls_media[0];
