/* Calls whose cost has an aim. */
#include <vtx.h>

#include "cases.h"

enum { ITEMS = CASE_ITEMS };

static double share[ITEMS]; /* 0..1, spread evenly in a scattered order */
static double temperature[ITEMS], water_pressure[ITEMS], ice_pressure[ITEMS], humidity[ITEMS], relative_humidity[ITEMS];
static double cold[ITEMS], hot[ITEMS], back_pressure[ITEMS], vacuum[ITEMS], friction_length[ITEMS], cold_fraction[ITEMS], result[ITEMS];
static const double ambient[1] = { 101325 }, line[1] = { 8e5 }, half[1] = { 0.5 }, dry[1] = { 0 };
static int32_t choked[ITEMS];
static vtx_gas air;
static vtx_tube tube;
static vtx_moist_air state;
static vtx_streams streams, many_streams[ITEMS];
static vtx_job job;
static vtx_operating_point point;
static vtx_sizing sizing;
static size_t failures;

static void set_inputs(void)
{
    for (size_t i = 0; i < ITEMS; i++) {
        share[i] = (double)(i * 389 % ITEMS) / ITEMS;
        temperature[i] = 275 + 40 * share[i];
        cold[i] = 230 + 40 * share[i];
        hot[i] = 300 + 40 * share[i];
        humidity[i] = 1e-4 + 2e-3 * share[i];
        relative_humidity[i] = 0.1 + 0.8 * share[i];
        back_pressure[i] = 5e5 + 2.5e5 * share[i];
        vacuum[i] = 1e5 + 2e5 * share[i];
        friction_length[i] = 0.1 + 20 * share[i];
        cold_fraction[i] = 0.2 + 0.6 * share[i];
        failures += vtx_water_saturation_pressure(temperature[i], &water_pressure[i]) != VTX_OK;
        failures += vtx_ice_sublimation_pressure(cold[i], &ice_pressure[i]) != VTX_OK;
    }
    failures += vtx_gas_init(&air) != VTX_OK || vtx_tube_init(&tube) != VTX_OK || vtx_job_init(&job) != VTX_OK;
    job.cooler.rated_free_air_flow = 0.01;
    job.supply.pressure = 7e5;
    job.supply.humidity_kind = VTX_SUPPLY_HUMIDITY_RATIO;
    job.supply.humidity = 0;
    job.duty.target_temperature = 293.15;
}

static vtx_status operate_at(double supply_temperature, double fraction)
{
    job.supply.temperature = supply_temperature;
    job.setting.cold_fraction = fraction;
    return vtx_operating_point_at(&job.cooler, &job.supply, &job.site, &job.setting, 293.15, &point);
}

static vtx_status size_for(double supply_temperature)
{
    job.supply.temperature = supply_temperature;
    return vtx_job_cold_fraction(&job, supply_temperature - 25, VTX_BRANCH_MORE_COLD_AIR, &sizing);
}

/* A loop over one call, k running through the inputs. */
#define SCALAR(name, call) \
    static void name(size_t n) \
    { \
        size_t bad = 0; \
        for (size_t i = 0; i < n; i++) { \
            const size_t k = i % ITEMS; \
            bad += (call) != VTX_OK; \
        } \
        failures += bad; \
    }

/* Whole batches of ITEMS; the last one may be shorter. */
#define BATCH(name, call) \
    static void name(size_t n) \
    { \
        size_t bad = 0; \
        for (size_t i = 0; i < n; i += ITEMS) { \
            const size_t items = n - i < ITEMS ? n - i : ITEMS; \
            bad += (call) != VTX_OK; \
        } \
        failures += bad; \
    }

#define EACH sizeof(double)
#define COLUMN(x) x, EACH
#define RESULT result, EACH, NULL, NULL

SCALAR(water_pressure_of, vtx_water_saturation_pressure(temperature[k], &result[k]))
SCALAR(water_temperature_of, vtx_water_saturation_temperature(water_pressure[k], &result[k]))
SCALAR(ice_pressure_of, vtx_ice_sublimation_pressure(cold[k], &result[k]))
SCALAR(ice_temperature_of, vtx_ice_sublimation_temperature(ice_pressure[k], &result[k]))
SCALAR(frost_point_ideal, vtx_frost_point(VTX_AIR_IDEAL, 101325, humidity[k], &result[k]))
SCALAR(dew_point_ideal, vtx_moist_air_humidity(VTX_AIR_IDEAL, 101325, hot[k], VTX_RELATIVE_HUMIDITY, relative_humidity[k],
                                               VTX_DEW_POINT, &result[k]))
SCALAR(wet_bulb_ideal, vtx_moist_air_humidity(VTX_AIR_IDEAL, 101325, hot[k], VTX_RELATIVE_HUMIDITY, relative_humidity[k],
                                              VTX_WET_BULB, &result[k]))
SCALAR(dew_point_real, vtx_moist_air_humidity(VTX_AIR_REAL, 8e5, hot[k], VTX_RELATIVE_HUMIDITY, relative_humidity[k],
                                              VTX_DEW_POINT, &result[k]))
SCALAR(state_real, vtx_moist_air_at(VTX_AIR_REAL, 8e5, hot[k], VTX_RELATIVE_HUMIDITY, relative_humidity[k], &state))
SCALAR(orifice_choked, vtx_orifice_mass_flow(&air, 2e-6, 0.9, 8e5, temperature[k], vacuum[k], &result[k], &choked[k]))
SCALAR(orifice_subsonic, vtx_orifice_mass_flow(&air, 2e-6, 0.9, 8e5, temperature[k], back_pressure[k], &result[k], &choked[k]))
SCALAR(fanno_inverse, vtx_fanno_mach(1.4, friction_length[k], VTX_BRANCH_SUBSONIC, &result[k]))
SCALAR(separate_ideal, vtx_tube_separate(&tube, VTX_AIR_IDEAL, 7e5, temperature[k], 0, 101325, 101325, cold_fraction[k], &streams))

SCALAR(separate_real_dry, vtx_tube_separate(&tube, VTX_AIR_REAL, 7e5, temperature[k], 0, 101325, 101325, cold_fraction[k], &streams))
SCALAR(separate_real_wet, vtx_tube_separate(&tube, VTX_AIR_REAL, 7e5, temperature[k], 2e-3, 101325, 101325, cold_fraction[k], &streams))
SCALAR(operate, operate_at(temperature[k], cold_fraction[k]))
SCALAR(size_by_temperature, size_for(temperature[k]))

BATCH(water_pressure_batch, vtx_water_saturation_pressure_batch(items, COLUMN(temperature), RESULT))
BATCH(water_temperature_batch, vtx_water_saturation_temperature_batch(items, COLUMN(water_pressure), RESULT))
BATCH(ice_pressure_batch, vtx_ice_sublimation_pressure_batch(items, COLUMN(cold), RESULT))
BATCH(ice_temperature_batch, vtx_ice_sublimation_temperature_batch(items, COLUMN(ice_pressure), RESULT))
BATCH(dew_point_ideal_batch, vtx_moist_air_humidity_batch(items, VTX_AIR_IDEAL, ambient, 0, COLUMN(hot), VTX_RELATIVE_HUMIDITY,
                                                          COLUMN(relative_humidity), VTX_DEW_POINT, RESULT))
BATCH(wet_bulb_ideal_batch, vtx_moist_air_humidity_batch(items, VTX_AIR_IDEAL, ambient, 0, COLUMN(hot), VTX_RELATIVE_HUMIDITY,
                                                         COLUMN(relative_humidity), VTX_WET_BULB, RESULT))
BATCH(orifice_batch, vtx_orifice_mass_flow_batch(items, &air, 0, half, 0, half, 0, line, 0, COLUMN(temperature),
                                                 COLUMN(back_pressure), result, EACH, choked, sizeof(int32_t), NULL, NULL))

BATCH(separate_ideal_batch, vtx_tube_separate_batch(items, &tube, 0, VTX_AIR_IDEAL, line, 0, COLUMN(temperature), dry, 0, ambient, 0,
                                                    ambient, 0, COLUMN(cold_fraction), many_streams, sizeof many_streams[0], NULL, NULL))

/* Aim and least in E: cheap enough that nobody who needs the number a million times tabulates it. */
static const struct bench_case cases[] = {
    { "saturation pressure over liquid", water_pressure_of, 1.2, 2 },
    { "saturation pressure over liquid, batch", water_pressure_batch, 0.35, 0.7 },
    { "saturation temperature over liquid", water_temperature_of, 3, 4 },
    { "saturation temperature over liquid, batch", water_temperature_batch, 0, 0 },
    { "sublimation pressure", ice_pressure_of, 1.5, 3 },
    { "sublimation pressure, batch", ice_pressure_batch, 0, 0 },
    { "sublimation temperature", ice_temperature_of, 0, 0 },
    { "sublimation temperature, batch", ice_temperature_batch, 0, 0 },
    { "frost point at 1 atm, IDEAL", frost_point_ideal, 6, 12 },
    { "dew point from relative humidity, IDEAL", dew_point_ideal, 4.5, 6 },
    { "dew point from relative humidity, IDEAL, batch", dew_point_ideal_batch, 1.5, 2.5 },
    { "wet bulb, IDEAL", wet_bulb_ideal, 16, 30 },
    { "wet bulb, IDEAL, batch", wet_bulb_ideal_batch, 4, 6 },
    { "dew point at 8 bar, REAL", dew_point_real, 60, 150 },
    { "moist-air state at 8 bar, REAL", state_real, 500, 1500 },
    { "orifice, choked", orifice_choked, 1.8, 2.5 },
    { "orifice, subsonic", orifice_subsonic, 5.5, 7 },
    { "orifice, subsonic, batch", orifice_batch, 2, 3 },
    { "Fanno inverse", fanno_inverse, 40, 80 },
    { "separation of dry air, IDEAL", separate_ideal, 10, 17 },
    { "separation of dry air, IDEAL, batch", separate_ideal_batch, 2.5, 4 },
    { "separation of dry air, REAL", separate_real_dry, 400, 1500 },
    { "separation of a condensing feed, REAL", separate_real_wet, 1500, 4000 },
    { "operating point, REAL, dry, no line", operate, 600, 2000 },
    { "cold fraction for a cold temperature, REAL, dry", size_by_temperature, 3000, 8000 },
};

const struct bench_case *bench_cases(size_t *count)
{
    set_inputs();
    *count = sizeof cases / sizeof cases[0];
    return cases;
}

size_t failed_calls(void) { return failures; }
