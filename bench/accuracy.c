/* Prints water, ice and moist air on a grid, for compare_accuracy to set beside an independent source. */
#include <stdio.h>

#include <vtx.h>

static const double pressures[] = { 1e5, 1.01325e5, 2e5, 3e5, 4e5, 5e5, 6e5, 7e5, 8e5, 1e6, 1.2e6, 1.5e6 };

static int failures;

static int good(vtx_status status, const char *what, double pressure, double temperature)
{
    if (status == VTX_OK)
        return 1;
    fprintf(stderr, "%s at %g Pa, %g K: %s\n", what, pressure, temperature, vtx_status_text(status));
    failures++;
    return 0;
}

static void water(double temperature)
{
    double p, density, enthalpy;
    if (good(vtx_water_saturation_pressure(temperature, &p), "saturation pressure", 0, temperature))
        printf("liquid_pressure %.17g %.17g\n", temperature, p);
    if (temperature < 273.16)
        return;
    if (good(vtx_water_density(temperature, &density), "water density", 0, temperature))
        printf("liquid_density %.17g %.17g\n", temperature, density);
    if (good(vtx_water_enthalpy(temperature, &enthalpy), "water enthalpy", 0, temperature))
        printf("liquid_enthalpy %.17g %.17g\n", temperature, enthalpy);
}

static void ice(double temperature)
{
    double p, density, enthalpy;
    if (good(vtx_ice_sublimation_pressure(temperature, &p), "sublimation pressure", 0, temperature))
        printf("ice_pressure %.17g %.17g\n", temperature, p);
    if (good(vtx_ice_density(101325, temperature, &density), "ice density", 101325, temperature))
        printf("ice_density %.17g %.17g\n", temperature, density);
    if (good(vtx_ice_enthalpy(101325, temperature, &enthalpy), "ice enthalpy", 101325, temperature))
        printf("ice_enthalpy %.17g %.17g\n", temperature, enthalpy);
}

static void throttle(double pressure, double temperature)
{
    double outlet;
    if (good(vtx_expansion_throttle(VTX_AIR_REAL, pressure, temperature, 0, 1e5, &outlet), "throttle", pressure, temperature))
        printf("throttle %.17g %.17g %.17g\n", pressure, temperature, outlet);
}

static double saturation(int32_t model, double pressure, double temperature)
{
    double saturated = 0;
    if (good(vtx_saturation_humidity_ratio(model, pressure, temperature, &saturated), "saturation", pressure, temperature))
        printf("%s_saturation %.17g %.17g %.17g\n", model == VTX_AIR_REAL ? "real" : "ideal", pressure, temperature, saturated);
    return saturated;
}

static void moist(int32_t model, double pressure, double temperature)
{
    static const double shares[] = { 0, 0.25, 0.5, 0.75, 0.999 };
    const char *name = model == VTX_AIR_REAL ? "real" : "ideal";
    const double saturated = saturation(model, pressure, temperature);
    for (size_t i = 0; i < sizeof shares / sizeof shares[0]; i++) {
        vtx_moist_air a;
        const double w = shares[i] * saturated;
        if (good(vtx_moist_air_at(model, pressure, temperature, VTX_HUMIDITY_RATIO, w, &a), "moist air", pressure, temperature))
            printf("%s_state %.17g %.17g %.17g %.17g %.17g %.17g %.17g %.17g\n", name, pressure, temperature, w, a.volume, a.enthalpy,
                   a.entropy, a.heat_capacity, a.sound_speed);
    }
}

int main(void)
{
    printf("version %s\n", vtx_version());
    for (int t = -40; t <= 100; t += 2)
        water(273.16 + t);
    for (int t = -100; t <= 0; t += 2)
        ice(273.16 + t);
    for (size_t i = 0; i < sizeof pressures / sizeof pressures[0]; i++) {
        for (int t = 0; t < 24; t++)
            saturation(VTX_AIR_REAL, pressures[i], 273.17 + 0.5 * t);
        for (int t = -60; t <= 80; t += 4) {
            moist(VTX_AIR_REAL, pressures[i], 273.15 + t);
            moist(VTX_AIR_IDEAL, pressures[i], 273.15 + t);
            throttle(pressures[i], 273.15 + t);
        }
    }
    printf("failures %d\n", failures);
    return failures != 0;
}
