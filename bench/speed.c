/* make bench: what the calls cost, scalar and batch, in nanoseconds and in E (one libm exp call of the same run).
 * With a file name as argument the same numbers go there as JSON. */
#include <stdio.h>
#include <string.h>

#include <vtx.h>

#include "timing.h"

/* Items in cache; inputs vary so that nothing can be computed once for all. */
enum { ITEMS = 1024 };

static double share[ITEMS]; /* 0..1, spread evenly in a scattered order */
static double temperature[ITEMS], water_pressure[ITEMS], ice_pressure[ITEMS], humidity[ITEMS], relative_humidity[ITEMS];
static double hot[ITEMS], back_pressure[ITEMS], vacuum[ITEMS], friction_length[ITEMS], cold_fraction[ITEMS], result[ITEMS];
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
        hot[i] = 300 + 40 * share[i];
        humidity[i] = 1e-4 + 2e-3 * share[i];
        relative_humidity[i] = 0.1 + 0.8 * share[i];
        back_pressure[i] = 5e5 + 2.5e5 * share[i];
        vacuum[i] = 1e5 + 2e5 * share[i];
        friction_length[i] = 0.1 + 20 * share[i];
        cold_fraction[i] = 0.2 + 0.6 * share[i];
        failures += vtx_water_saturation_pressure(temperature[i], &water_pressure[i]) != VTX_OK;
        failures += vtx_ice_sublimation_pressure(temperature[i] - 45, &ice_pressure[i]) != VTX_OK;
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
SCALAR(ice_pressure_of, vtx_ice_sublimation_pressure(temperature[k] - 45, &result[k]))
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
BATCH(ice_temperature_batch, vtx_ice_sublimation_temperature_batch(items, COLUMN(ice_pressure), RESULT))
BATCH(dew_point_ideal_batch, vtx_moist_air_humidity_batch(items, VTX_AIR_IDEAL, ambient, 0, COLUMN(hot), VTX_RELATIVE_HUMIDITY,
                                                          COLUMN(relative_humidity), VTX_DEW_POINT, RESULT))
BATCH(wet_bulb_ideal_batch, vtx_moist_air_humidity_batch(items, VTX_AIR_IDEAL, ambient, 0, COLUMN(hot), VTX_RELATIVE_HUMIDITY,
                                                         COLUMN(relative_humidity), VTX_WET_BULB, RESULT))
BATCH(orifice_batch, vtx_orifice_mass_flow_batch(items, &air, 0, half, 0, half, 0, line, 0, COLUMN(temperature),
                                                 COLUMN(back_pressure), result, EACH, choked, sizeof(int32_t), NULL, NULL))

BATCH(separate_ideal_batch, vtx_tube_separate_batch(items, &tube, 0, VTX_AIR_IDEAL, line, 0, COLUMN(temperature), dry, 0, ambient, 0,
                                                    ambient, 0, COLUMN(cold_fraction), many_streams, sizeof many_streams[0], NULL, NULL))

static const struct {
    const char *what;
    timed_loop *loop;
} cases[] = {
    { "saturation pressure over liquid", water_pressure_of },
    { "saturation pressure over liquid, batch", water_pressure_batch },
    { "saturation temperature over liquid", water_temperature_of },
    { "sublimation pressure", ice_pressure_of },
    { "sublimation temperature", ice_temperature_of },
    { "sublimation temperature, batch", ice_temperature_batch },
    { "frost point at 1 atm, IDEAL", frost_point_ideal },
    { "dew point from relative humidity, IDEAL", dew_point_ideal },
    { "dew point from relative humidity, IDEAL, batch", dew_point_ideal_batch },
    { "wet bulb, IDEAL", wet_bulb_ideal },
    { "wet bulb, IDEAL, batch", wet_bulb_ideal_batch },
    { "dew point at 8 bar, REAL", dew_point_real },
    { "moist-air state at 8 bar, REAL", state_real },
    { "orifice, choked", orifice_choked },
    { "orifice, subsonic", orifice_subsonic },
    { "orifice, subsonic, batch", orifice_batch },
    { "Fanno inverse", fanno_inverse },
    { "separation of dry air, IDEAL", separate_ideal },
    { "separation of dry air, IDEAL, batch", separate_ideal_batch },
    { "separation of dry air, REAL", separate_real_dry },
    { "separation of a condensing feed, REAL", separate_real_wet },
    { "operating point, REAL, dry, no line", operate },
    { "cold fraction for a cold temperature, REAL, dry", size_by_temperature },
};

/* The processor's name where the system tells it. */
static void print_machine(void)
{
    char text[256];
    FILE *info = fopen("/proc/cpuinfo", "r");
    while (info && fgets(text, sizeof text, info))
        if (strncmp(text, "model name", 10) == 0) {
            printf("machine   %s", strchr(text, ':') + 2);
            break;
        }
    if (info)
        fclose(info);
#ifdef __VERSION__
    printf("compiler  %s\n", __VERSION__);
#endif
    printf("libvtx    %s\n", vtx_version());
}

int main(int argc, char **argv)
{
    const size_t count = sizeof cases / sizeof cases[0];
    FILE *json = argc > 1 ? fopen(argv[1], "w") : NULL;
    if (argc > 1 && !json) {
        perror(argv[1]);
        return 1;
    }
    set_inputs();
    const double unit = time_loop(exp_loop).median;
    print_machine();
    printf("E         %.2f ns\n\n%-50s %10s %9s %10s %10s %12s\n", unit, "call", "ns median", "E", "minimum", "p90", "calls/s");
    if (json)
        fprintf(json, "{ \"version\": \"%s\", \"exp_ns\": %.4g, \"calls\": [\n", vtx_version(), unit);
    for (size_t i = 0; i < count; i++) {
        const struct timing t = time_loop(cases[i].loop);
        printf("%-50s %10.1f %9.2f %10.1f %10.1f %12.3g\n", cases[i].what, t.median, t.median / unit, t.minimum, t.p90, 1e9 / t.median);
        if (json)
            fprintf(json, "  { \"call\": \"%s\", \"ns\": %.5g, \"e\": %.5g, \"minimum\": %.5g, \"p90\": %.5g }%s\n", cases[i].what,
                    t.median, t.median / unit, t.minimum, t.p90, i + 1 < count ? "," : "");
    }
    if (json)
        fprintf(json, "] }\n");
    if (json && fclose(json) != 0) {
        perror(argv[1]);
        return 1;
    }
    if (failures) {
        fprintf(stderr, "%zu calls failed: the numbers above are worth nothing\n", failures);
        return 1;
    }
    return 0;
}
