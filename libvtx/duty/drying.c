/* Drying of compressed air. */
#include <vtx/air_quality.h>
#include <vtx/drying.h>

#include "../media/moist_kernel.h"
#include "compressor_kernel.h"

#define AMBIENT_PRESSURE_MIN 3e4
#define AMBIENT_PRESSURE_MAX 2e5
#define LINE_PRESSURE_MIN 1e5
#define LINE_PRESSURE_MAX 5e6
#define WATER_MIN 1e-9
#define WATER_MAX 1.0

static inline vtx_status check_line(int32_t model, double pressure, double temperature, double temperature_min)
{
    vtx_status status = check_positive(pressure, LINE_PRESSURE_MIN, LINE_PRESSURE_MAX);
    status = worse(status, check_positive(temperature, temperature_min, 363.15));
    return worse(status, moist_check(model, pressure, temperature));
}

/* kg/kg over the phase that is stable. */
static inline double saturation_humidity(int32_t model, double pressure, double temperature)
{
    return moist_humidity_ratio(model, moist_saturation_fraction(model, pressure, temperature, stable_phase(temperature)));
}

/* Dew point as dryers are rated: over ice below the triple point. */
static double rated_dew_point(int32_t model, double pressure, double humidity_ratio)
{
    const double x = moist_vapour_fraction(model, humidity_ratio);
    const int32_t phase = humidity_ratio < saturation_humidity(model, pressure, triple_temperature) ? PHASE_ICE : PHASE_LIQUID;
    return moist_saturation_temperature(model, pressure, x, phase);
}

static vtx_status check_intake(int32_t model, double pressure, double temperature, double relative_humidity)
{
    vtx_status status = check_positive(pressure, AMBIENT_PRESSURE_MIN, AMBIENT_PRESSURE_MAX);
    status = worse(status, worse(check_positive(temperature, BELOW_ZERO(50), 333.15), check_share(relative_humidity)));
    status = worse(status, moist_check(model, pressure, temperature));
    if (status == VTX_OK
        && moist_saturation_fraction(model, pressure, temperature, PHASE_LIQUID) * relative_humidity > 0.5)
        return VTX_OUT_OF_RANGE;
    return status;
}

/* kg/kg in the intake air; *volume in m3 per kg dry air. */
static double intake_humidity(int32_t model, double pressure, double temperature, double relative_humidity, double *volume)
{
    struct moist_mixture air;
    const double x = relative_humidity * moist_saturation_fraction(model, pressure, temperature, PHASE_LIQUID);
    moist_vapour(model, pressure, temperature, moist_humidity_ratio(model, x), &air);
    *volume = air.volume;
    return air.total_water;
}

vtx_status vtx_intake_water(int32_t model, double pressure, double temperature, double relative_humidity, double free_air,
                            double *water, double *dry_air)
{
    vtx_status status = worse(require(water != NULL), check_intake(model, pressure, temperature, relative_humidity));
    status = worse(status, check_amount(free_air, FREE_AIR_MAX));
    if (status != VTX_OK)
        return poison(water, poison(dry_air, status));
    double volume;
    const double humidity_ratio = intake_humidity(model, pressure, temperature, relative_humidity, &volume);
    *water = humidity_ratio * free_air / volume;
    if (dry_air)
        *dry_air = free_air / volume;
    return VTX_OK;
}

vtx_status vtx_air_treatment_init(vtx_air_treatment *treatment)
{
    if (!treatment)
        return VTX_BAD_ARGUMENT;
    *treatment = (vtx_air_treatment){
        .intake_pressure = 101325, .intake_temperature = 293.15, .intake_relative_humidity = 0.6,
        .aftercooler_pressure = 8e5, .aftercooler_temperature = 308.15, .receiver_temperature = 303.15, .separated_share = 1,
        .dryer_pressure = 8e5, .dryer_point = 276.15, .model = VTX_AIR_REAL, .dryer = VTX_DRYER_REFRIGERATED,
    };
    return VTX_OK;
}

static vtx_status check_dryer(const vtx_air_treatment *t)
{
    vtx_status status = require(t->dryer >= VTX_DRYER_NONE && t->dryer <= VTX_DRYER_MEMBRANE);
    const int purges = t->dryer == VTX_DRYER_DESICCANT || t->dryer == VTX_DRYER_MEMBRANE;
    status = worse(status, check_line(t->model, t->dryer_pressure, t->dryer_point, 173.15));
    status = worse(status, check_range(t->dryer_point, 173.15, 323.15));
    status = worse(status, worse(check_share(t->purge_share), check_range(t->purge_share, 0, 0.9)));
    if (status == VTX_OK)
        status = require(purges || t->purge_share == 0);
    if (status == VTX_OK && t->dryer == VTX_DRYER_REFRIGERATED && t->dryer_point < triple_temperature)
        status = VTX_OUT_OF_RANGE;
    return status;
}

static vtx_status check_treatment(const vtx_air_treatment *t)
{
    if (!t)
        return VTX_BAD_ARGUMENT;
    vtx_status status = check_intake(t->model, t->intake_pressure, t->intake_temperature, t->intake_relative_humidity);
    status = worse(status, check_positive(t->free_air, NO_FLOW, FREE_AIR_MAX));
    status = worse(status, check_line(t->model, t->aftercooler_pressure, t->aftercooler_temperature, triple_temperature));
    status = worse(status, check_line(t->model, t->aftercooler_pressure, t->receiver_temperature, triple_temperature));
    status = worse(status, worse(check_share(t->separated_share), check_dryer(t)));
    status = worse(status, require(are_zero(t->reserved, ARRAY_LENGTH(t->reserved))));
    if (status == VTX_OK)
        status = require(t->intake_pressure < t->aftercooler_pressure && t->dryer_pressure <= t->aftercooler_pressure);
    return status;
}

/* Water drained where the air is cooled to a temperature, per kg dry air; *water falls by as much. */
static double drain(const vtx_air_treatment *t, double temperature, double *water)
{
    const double saturated = saturation_humidity(t->model, t->aftercooler_pressure, temperature);
    const double drained = t->separated_share * larger(*water - saturated, 0);
    *water -= drained;
    return drained;
}

/* Vapour and liquid of the delivered air. Where it is saturated its dew point is a given temperature, not one with rounding in it,
 * so that a dryer rated at the limit of a class reaches the class. */
static void describe_delivered(const vtx_air_treatment *t, double water, double saturated, double point, vtx_treated_air *air)
{
    struct moist_mixture reference;
    moist_vapour(t->model, 1e5, 293.15, 0, &reference);
    air->humidity_ratio = smaller(water, saturated);
    air->liquid_content = (water - air->humidity_ratio) / reference.volume;
    air->advisories = water > saturated ? VTX_ADVISORY_CONDENSING : 0;
    if (air->humidity_ratio >= WATER_MIN) {
        air->pressure_dew_point = water < saturated ? rated_dew_point(t->model, t->dryer_pressure, water) : point;
        air->expanded_dew_point = rated_dew_point(t->model, t->intake_pressure, air->humidity_ratio);
        vtx_water_class(air->pressure_dew_point, air->liquid_content, &air->water_class);
    } else {
        air->pressure_dew_point = air->expanded_dew_point = quiet_nan();
        air->water_class = -1;
        air->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    }
}

/* The balance; air's flows are those of the whole train. */
static void follow_water(const vtx_air_treatment *t, double flow, double water, vtx_treated_air *air)
{
    const int dries = t->dryer != VTX_DRYER_NONE;
    const double point = dries ? t->dryer_point : t->receiver_temperature;
    const double saturated = saturation_humidity(t->model, t->dryer_pressure, point);
    air->intake_water = flow * water;
    air->aftercooler_condensate = flow * drain(t, t->aftercooler_temperature, &water);
    air->receiver_condensate = flow * drain(t, t->receiver_temperature, &water);
    const double entering = water;
    water = dries ? smaller(water, saturated) : water;
    air->delivered_water = flow * (1 - t->purge_share) * water;
    air->dryer_water = flow * ((entering - water) + t->purge_share * water);
    describe_delivered(t, water, saturated, point, air);
}

vtx_status vtx_treat_air(const vtx_air_treatment *treatment, vtx_treated_air *air)
{
    const vtx_air_treatment *t = treatment;
    vtx_status status = worse(require(air != NULL), check_treatment(t));
    if (status != VTX_OK)
        return POISON_STRUCT(air, vtx_treated_air, water_class, status);
    double volume;
    const double water = intake_humidity(t->model, t->intake_pressure, t->intake_temperature, t->intake_relative_humidity, &volume);
    air->dry_air = t->free_air / volume;
    air->purge_air = t->purge_share * t->free_air;
    air->delivered_air = t->free_air - air->purge_air;
    follow_water(t, air->dry_air, water, air);
    return VTX_OK;
}

vtx_status vtx_desiccant_purge_share(double line_pressure, double purge_pressure, double excess, double *share)
{
    vtx_status status = worse(require(share != NULL), check_positive(line_pressure, LINE_PRESSURE_MIN, LINE_PRESSURE_MAX));
    status = worse(status, check_positive(purge_pressure, AMBIENT_PRESSURE_MIN, AMBIENT_PRESSURE_MAX));
    status = worse(status, check_positive(excess, 1, 3));
    if (status == VTX_OK)
        status = require(purge_pressure < line_pressure);
    if (status == VTX_OK && excess * purge_pressure > line_pressure)
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(share, status);
    *share = excess * purge_pressure / line_pressure;
    return VTX_OK;
}

static void cold_run(int32_t model, double pressure, double temperature, double humidity_ratio, vtx_cold_run *run)
{
    const double fallen = humidity_ratio - saturation_humidity(model, pressure, temperature);
    run->dry = fallen <= 0;
    run->condensate = larger(fallen, 0);
    run->advisories = run->dry ? 0 : stable_phase(temperature) == PHASE_ICE ? VTX_ADVISORY_FREEZING : VTX_ADVISORY_CONDENSING;
    if (humidity_ratio >= WATER_MIN) {
        run->dew_point = rated_dew_point(model, pressure, humidity_ratio);
        run->margin = temperature - run->dew_point;
    } else {
        run->dew_point = run->margin = quiet_nan();
        run->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    }
}

vtx_status vtx_pipe_condensation(int32_t model, double pressure, double temperature, double humidity_ratio, vtx_cold_run *run)
{
    vtx_status status = worse(require(run != NULL), check_line(model, pressure, temperature, 200));
    status = worse(status, check_amount(humidity_ratio, WATER_MAX));
    if (status != VTX_OK)
        return POISON_STRUCT(run, vtx_cold_run, dry, status);
    cold_run(model, pressure, temperature, humidity_ratio, run);
    return VTX_OK;
}

vtx_status vtx_coldest_month(int32_t model, double pressure, const double *temperature, const double *humidity_ratio, size_t count,
                             double *margin, int32_t *worst, int32_t *wet)
{
    vtx_status status = require(temperature != NULL && humidity_ratio != NULL && count > 0 && count < INT32_MAX && margin != NULL);
    vtx_cold_run run;
    double smallest = 0;
    int32_t place = 0, wet_months = 0;
    for (size_t i = 0; status == VTX_OK && i < count; i++) {
        status = check_amount(humidity_ratio[i], WATER_MAX);
        status = worse(status, check_range(humidity_ratio[i], WATER_MIN, WATER_MAX));
        status = worse(status, vtx_pipe_condensation(model, pressure, temperature[i], humidity_ratio[i], &run));
        wet_months += status == VTX_OK && !run.dry;
        if (status == VTX_OK && (i == 0 || run.margin < smallest)) {
            smallest = run.margin;
            place = (int32_t)i;
        }
    }
    if (status != VTX_OK)
        return poison(margin, poison_integer(worst, poison_integer(wet, status)));
    *margin = smallest;
    if (worst)
        *worst = place;
    if (wet)
        *wet = wet_months;
    return VTX_OK;
}

vtx_status vtx_pressure_dew_point_needed(int32_t model, double dryer_pressure, double pipe_pressure, double temperature, double margin,
                                         double *pressure_dew_point)
{
    vtx_status status = worse(require(pressure_dew_point != NULL), check_line(model, dryer_pressure, temperature, 200));
    status = worse(status, worse(check_line(model, pipe_pressure, temperature, 200), check_amount(margin, 50)));
    if (status == VTX_OK)
        status = worse(check_range(temperature - margin, 173.15, 363.15), moist_check(model, pipe_pressure, temperature - margin));
    if (status != VTX_OK)
        return poison(pressure_dew_point, status);
    const double needed = saturation_humidity(model, pipe_pressure, temperature - margin);
    *pressure_dew_point = rated_dew_point(model, dryer_pressure, needed);
    return VTX_OK;
}
