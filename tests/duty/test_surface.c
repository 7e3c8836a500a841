/* Surfaces in a humid room. */
#include <vtx/convection.h>
#include <vtx/surface.h>
#include <vtx/water.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 2000 };

/* Gas constant of vapour in the example over that of the library. */
static const double printed_vapour_constant = 461.526 / (8.314462618 / 0.018015268);
/* Molar masses 18 and 29 of the example over those of the library. */
static const double printed_molar_masses = 18.0 / 29.0 / (0.018015268 / 0.028966);

vtx_room sample_room(void)
{
    vtx_room room;
    vtx_room_init(&room);
    room.pressure = 98500;
    room.temperature = 297.15;
    room.relative_humidity = 0.55;
    room.air_speed = 0.2;
    return room;
}

static int surface_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    if (strcmp(row->quantity, "mass_transfer_coefficient") == 0)
        return vtx_mass_transfer_coefficient(in[0], in[1], in[2], in[3], actual), 1;
    if (strncmp(row->quantity, "frost_", 6) == 0 && row->inputs == 6) {
        if (vtx_vapour_flux(in[0], in[1] * in[2] / printed_vapour_constant, in[3], in[4] / printed_vapour_constant, in[5], actual) == VTX_OK)
            *actual *= strcmp(row->quantity, "frost_per_hour") == 0 ? 3600 : 1;
        return 1;
    }
    if (strcmp(row->quantity, "frost_latent_flux") == 0)
        return vtx_wet_surface_flux(9, 5, 300, 300, in[0], in[1], actual), 1;
    if (strcmp(row->quantity, "wetted_surface_celsius") == 0) {
        double drop;
        if (vtx_evaporation_drop(in[1], in[2], in[3], in[4] * printed_molar_masses, in[5], in[6], &drop) == VTX_OK)
            *actual = in[0] - drop - 273.15;
        return 1;
    }
    if (strcmp(row->quantity, "diffusivity") == 0)
        return vtx_vapour_diffusivity(in[0], in[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("surface.csv", surface_row, 6); }

static void verdicts_follow_dew_and_frost_point(void)
{
    vtx_room room = sample_room();
    vtx_surface_state s;
    double dew;
    EXPECT_OK(vtx_moist_air_humidity(VTX_AIR_REAL, room.pressure, room.temperature, VTX_RELATIVE_HUMIDITY, 0.55, VTX_DEW_POINT, &dew));
    EXPECT_OK(vtx_judge_surface(&room, dew + 0.01, &s));
    EXPECT(s.verdict == VTX_SURFACE_DRY && !(s.advisories & (VTX_ADVISORY_SWEATING | VTX_ADVISORY_FROSTING)));
    EXPECT_WITHIN(s.margin, 0.01, 1e-7);
    EXPECT_WITHIN(s.dew_point, dew, 1e-9);
    EXPECT(isnan(s.frost_point) && (s.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    EXPECT_OK(vtx_judge_surface(&room, dew - 0.01, &s));
    EXPECT(s.verdict == VTX_SURFACE_SWEATING && (s.advisories & VTX_ADVISORY_SWEATING));
    EXPECT_OK(vtx_judge_surface(&room, 273.2, &s));
    EXPECT(s.verdict == VTX_SURFACE_SWEATING);
    EXPECT_OK(vtx_judge_surface(&room, 273.1, &s));
    EXPECT(s.verdict == VTX_SURFACE_FROSTING && (s.advisories & VTX_ADVISORY_FROSTING));
}

/* Dry winter air: between dew and frost point below 0 degC frost collects. */
static void below_freezing_the_frost_point_decides(void)
{
    vtx_room room = sample_room();
    vtx_surface_state s;
    room.relative_humidity = 0.12;
    EXPECT_OK(vtx_judge_surface(&room, 250, &s));
    EXPECT(s.frost_point > s.dew_point + 0.5 && s.frost_point < 273.15);
    EXPECT_WITHIN(s.limit, s.frost_point, 1e-12);
    EXPECT_OK(vtx_judge_surface(&room, 0.5 * (s.frost_point + s.dew_point), &s));
    EXPECT(s.verdict == VTX_SURFACE_FROSTING);
    EXPECT_OK(vtx_judge_surface(&room, s.frost_point + 0.01, &s));
    EXPECT(s.verdict == VTX_SURFACE_DRY);
    room.relative_humidity = 0;
    EXPECT_OK(vtx_judge_surface(&room, 200, &s));
    EXPECT(s.verdict == VTX_SURFACE_DRY && isnan(s.limit) && isnan(s.margin));
}

static void deposit_starts_at_the_limit_and_grows_with_cold(void)
{
    struct random_state r;
    random_seed(&r, 81);
    for (int i = 0; i < RANDOM_CASES; i++) {
        vtx_room room = sample_room();
        vtx_surface_state s;
        vtx_deposition at, below, colder;
        room.temperature = random_uniform(&r, 280, 320);
        room.relative_humidity = random_uniform(&r, 0.05, 1);
        room.model = i % 2 ? VTX_AIR_IDEAL : VTX_AIR_REAL;
        EXPECT_OK(vtx_judge_surface(&room, 280, &s));
        EXPECT_OK(vtx_deposition_rate(&room, s.limit + 1e-6, 9, &at));
        EXPECT(at.mass_flux >= 0 && at.mass_flux <= 0 && at.verdict == VTX_SURFACE_DRY);
        EXPECT_OK(vtx_deposition_rate(&room, s.limit - 1e-3, 9, &below));
        EXPECT(below.mass_flux > 0 && below.mass_flux < 1e-6 && below.verdict != VTX_SURFACE_DRY);
        EXPECT_OK(vtx_deposition_rate(&room, s.limit - 20, 9, &colder));
        EXPECT(colder.mass_flux > below.mass_flux && colder.lewis > 0.8 && colder.lewis < 1);
        EXPECT(colder.growth_low <= colder.growth_high);
        EXPECT_WITHIN(colder.convective_flux, 9 * (room.temperature - s.limit + 20), 1e-9);
    }
}

/* By hand 0.347 kg/(m2 h) and 273 W/m2 with vapour densities at their own temperatures, air of 1.2 kg/m3 and a Lewis number of 0.86: the
 * film's own air and temperature make 1.5 % of difference. */
static void the_rate_is_near_the_worked_example(void)
{
    vtx_room room;
    vtx_deposition d;
    vtx_room_init(&room);
    room.temperature = 298.15;
    room.relative_humidity = 0.6;
    EXPECT_OK(vtx_deposition_rate(&room, 263.15, 9, &d));
    EXPECT_NEAR(d.mass_flux * 3600, 0.3466, 0.02);
    EXPECT_NEAR(d.latent_flux / d.mass_flux, 2.834e6, 3e-3);
    EXPECT_NEAR(d.convective_flux, 315, 1e-12);
    EXPECT(d.verdict == VTX_SURFACE_FROSTING);
    EXPECT_OK(vtx_deposition_rate(&room, 300, 9, &d));
    EXPECT(d.lewis > 0.87 && d.lewis < 0.885);
    EXPECT_OK(vtx_deposition_rate(&room, 263.15, 9, &d));
    EXPECT_NEAR(d.growth_high, d.mass_flux / 100, 1e-14);
    EXPECT_NEAR(d.growth_low, d.mass_flux / 400, 1e-14);
    /* 1 to 4 mm in the first hour */
    EXPECT(d.growth_low * 3600 > 0.8e-3 && d.growth_high * 3600 < 4.2e-3);
}

/* With the wet bulb's own saturation pressure the drop must lead back to the wet bulb. */
static void a_wetted_surface_is_near_the_wet_bulb(void)
{
    for (double temperature = 283.15; temperature < 314; temperature += 10)
        for (double humidity = 0.2; humidity < 0.9; humidity += 0.3) {
            double wet_bulb, saturated, at_air, drop;
            EXPECT_OK(vtx_moist_air_humidity(VTX_AIR_REAL, 101325, temperature, VTX_RELATIVE_HUMIDITY, humidity, VTX_WET_BULB, &wet_bulb));
            EXPECT_OK(vtx_water_saturation_pressure(temperature, &at_air));
            double low = 250, high = temperature;
            for (int i = 0; i < 50; i++) {
                const double middle = 0.5 * (low + high);
                EXPECT_OK(vtx_water_saturation_pressure(middle, &saturated));
                EXPECT_OK(vtx_evaporation_drop(101325, saturated, humidity * at_air, 2.501e6 - 2361 * (middle - 273.15), 1007, 0.87, &drop));
                if (temperature - drop > middle)
                    low = middle;
                else
                    high = middle;
            }
            EXPECT_WITHIN(low, wet_bulb, 0.4);
        }
}

static void odd_rooms_are_refused(void)
{
    vtx_room room = sample_room();
    vtx_surface_state s;
    room.model = 0;
    EXPECT_STATUS(vtx_judge_surface(&room, 280, &s), VTX_BAD_ARGUMENT);
    room = sample_room();
    room.relative_humidity = 1.01;
    EXPECT_STATUS(vtx_judge_surface(&room, 280, &s), VTX_BAD_ARGUMENT);
    room = sample_room();
    room.surroundings_temperature = (double)NAN;
    EXPECT_STATUS(vtx_judge_surface(&room, 280, &s), VTX_BAD_ARGUMENT);
    room = sample_room();
    room.reserved[0] = 1;
    EXPECT_STATUS(vtx_judge_surface(&room, 280, &s), VTX_BAD_ARGUMENT);
    room = sample_room();
    room.pressure = 297;
    room.temperature = 98500;
    EXPECT_STATUS(vtx_judge_surface(&room, 280, &s), VTX_OUT_OF_RANGE);
    EXPECT(isnan(s.limit) && s.verdict == -1);
    EXPECT_STATUS(vtx_room_init(NULL), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "verdicts follow dew and frost point", verdicts_follow_dew_and_frost_point },
    { "below freezing the frost point decides", below_freezing_the_frost_point_decides },
    { "deposit starts at the limit and grows with cold", deposit_starts_at_the_limit_and_grows_with_cold },
    { "the rate is near the worked example", the_rate_is_near_the_worked_example },
    { "a wetted surface is near the wet bulb", a_wetted_surface_is_near_the_wet_bulb },
    { "odd rooms are refused", odd_rooms_are_refused },
};
TEST_SUITE(surface, tests);
