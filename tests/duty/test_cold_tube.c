/* Cold tubes in a humid room. */
#include <vtx/cold_tube.h>
#include <vtx/convection.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 600 };

static vtx_covered_tube random_tube(struct random_state *r)
{
    vtx_covered_tube t = sample_tube();
    t.inside_diameter = random_log_uniform(r, 0.003, 0.1);
    t.outside_diameter = t.inside_diameter * random_uniform(r, 1.05, 1.6);
    t.wall_conductivity = random_log_uniform(r, 0.15, 400);
    t.inside_coefficient = random_log_uniform(r, 50, 1e6);
    t.cover_thickness = random_uniform(r, 0, 1) < 0.3 ? 0 : random_log_uniform(r, 1e-3, 0.05);
    t.cover_conductivity = random_uniform(r, 0.03, 0.06);
    return t;
}

static vtx_room random_room(struct random_state *r)
{
    vtx_room room = sample_room();
    room.pressure = random_uniform(r, 7e4, 1.05e5);
    room.temperature = random_uniform(r, 275, 315);
    room.relative_humidity = random_uniform(r, 0, 1);
    room.air_speed = random_uniform(r, 0, 1) < 0.4 ? 0 : random_uniform(r, 0, 3);
    room.emissivity = random_uniform(r, 0.05, 0.95);
    return room;
}

/* Dry: the same as insulation.h with the coefficient found. */
static void a_dry_tube_agrees_with_resistances_in_series(void)
{
    struct random_state r;
    random_seed(&r, 91);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const vtx_covered_tube t = random_tube(&r);
        vtx_room room = random_room(&r);
        vtx_tube_surface s;
        vtx_tube_heat h;
        const double gas = random_uniform(&r, 220, 390);
        room.relative_humidity = 0;
        EXPECT_OK(vtx_tube_in_room(&room, &t, gas, &s));
        EXPECT(s.verdict == VTX_SURFACE_DRY && isnan(s.limit) && s.deposit <= 0 && s.latent_gain <= 0);
        EXPECT_WITHIN(s.surface_temperature, s.dry_temperature, 1e-12);
        EXPECT_OK(vtx_covered_tube_heat(&t, gas, s.coefficient, room.temperature, &h));
        EXPECT_WITHIN(h.surface_temperature, s.surface_temperature, 1e-7);
        EXPECT_WITHIN(h.heat_gain, s.heat_gain, 1e-5 * (1 + fabs(h.heat_gain)));
    }
}

/* Wet: what the gas takes up is convection, radiation and the latent heat of the deposit. */
static void a_wet_tube_closes_its_balance(void)
{
    struct random_state r;
    int wet = 0;
    random_seed(&r, 92);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const vtx_covered_tube t = random_tube(&r);
        const vtx_room room = random_room(&r);
        vtx_tube_surface s;
        vtx_deposition d;
        const double gas = random_uniform(&r, 220, 290);
        EXPECT_OK(vtx_tube_in_room(&room, &t, gas, &s));
        EXPECT(s.surface_temperature >= s.dry_temperature && s.surface_temperature <= fmax(room.temperature, gas) + 1e-9);
        EXPECT((s.verdict == VTX_SURFACE_DRY) == !(s.margin < 0));
        if (s.verdict == VTX_SURFACE_DRY)
            continue;
        wet++;
        EXPECT(s.surface_temperature <= s.limit && s.deposit >= 0);
        EXPECT(((s.advisories & VTX_ADVISORY_FROSTING) != 0) == (s.surface_temperature < 273.16));
        EXPECT_OK(vtx_deposition_rate(&room, s.surface_temperature, s.convective, &d));
        /* at 273.16 K itself only part of the deposit freezes */
        if (fabs(s.surface_temperature - 273.16) > 1e-3) {
            const double around = 3.14159265358979323846 * (t.outside_diameter + 2 * t.cover_thickness);
            EXPECT_WITHIN(s.deposit, d.mass_flux * around, 1e-6 * d.mass_flux * around + 1e-12);
            EXPECT_WITHIN(s.latent_gain, d.latent_flux * around, 1e-6 * fabs(s.heat_gain) + 1e-7);
        }
    }
    EXPECT(wet > RANDOM_CASES / 4);
}

static void a_cover_keeps_the_surface_at_limit_and_margin(void)
{
    struct random_state r;
    int covered = 0;
    random_seed(&r, 93);
    for (int i = 0; i < RANDOM_CASES; i++) {
        vtx_covered_tube t = random_tube(&r);
        vtx_room room = random_room(&r);
        vtx_dry_cover c;
        vtx_tube_surface s;
        room.relative_humidity = random_uniform(&r, 0.05, 0.9);
        const double gas = random_uniform(&r, 220, 285), margin = random_uniform(&r, 0, 2);
        const vtx_status status = vtx_cover_to_stay_dry(&room, &t, gas, margin, &c);
        if (status == VTX_NO_SOLUTION) {
            EXPECT(isnan(c.thickness) && c.bare_verdict == -1 && c.attainable_temperature < room.temperature);
            t.cover_thickness = 1;
            EXPECT_OK(vtx_tube_in_room(&room, &t, gas, &s));
            EXPECT(s.margin < margin);
            continue;
        }
        EXPECT_OK(status);
        t.cover_thickness = c.thickness;
        EXPECT_OK(vtx_tube_in_room(&room, &t, gas, &s));
        EXPECT_WITHIN(s.dry_temperature, c.surface_temperature, 1e-7);
        EXPECT_WITHIN(s.limit, c.limit, 1e-10);
        EXPECT(s.margin >= margin - 1e-7 && (c.thickness <= 0 || s.margin < margin + 1e-7));
        EXPECT_WITHIN(s.heat_gain, c.heat_gain, 1e-6 * (1 + fabs(c.heat_gain)));
        t.cover_thickness = 0;
        EXPECT_OK(vtx_tube_in_room(&room, &t, gas, &s));
        EXPECT(c.thickness <= 0 || s.dry_temperature < c.limit + margin);
        covered += c.thickness > 0;
    }
    EXPECT(covered > RANDOM_CASES / 4);
}

static void a_bright_jacket_needs_more(void)
{
    vtx_covered_tube t = sample_tube();
    vtx_room room = sample_room();
    vtx_dry_cover dull, bright;
    room.air_speed = 0;
    EXPECT_OK(vtx_cover_to_stay_dry(&room, &t, 253.15, 1, &dull));
    room.emissivity = 0.1;
    EXPECT_OK(vtx_cover_to_stay_dry(&room, &t, 253.15, 1, &bright));
    EXPECT(bright.thickness > 1.3 * dull.thickness && bright.thickness < 2.5 * dull.thickness);
    EXPECT(dull.bare_verdict == VTX_SURFACE_FROSTING && (dull.advisories & VTX_ADVISORY_FROSTING));
}

static void a_damp_room_cannot_be_met(void)
{
    const vtx_covered_tube t = sample_tube();
    vtx_room room = sample_room();
    vtx_dry_cover c;
    room.relative_humidity = 1;
    EXPECT_STATUS(vtx_cover_to_stay_dry(&room, &t, 253.15, 1, &c), VTX_NO_SOLUTION);
    EXPECT(c.attainable_temperature > 290 && c.attainable_temperature < room.temperature);
    room.relative_humidity = 0;
    EXPECT_STATUS(vtx_cover_to_stay_dry(&room, &t, 253.15, 1, &c), VTX_OUT_OF_RANGE);
    EXPECT(isnan(c.attainable_temperature));
}

/* Metal with the default inside coefficient is as cold as the gas. */
static void bare_metal_is_as_cold_as_the_gas(void)
{
    vtx_covered_tube t;
    const vtx_room room = sample_room();
    vtx_tube_surface s;
    vtx_covered_tube_init(&t);
    t.inside_diameter = 0.010;
    t.outside_diameter = 0.012;
    t.wall_conductivity = 400;
    EXPECT_OK(vtx_tube_in_room(&room, &t, 253.15, &s));
    EXPECT_WITHIN(s.surface_temperature, 253.15, 0.01);
    EXPECT(s.verdict == VTX_SURFACE_FROSTING && s.deposit > 0);
    /* a warm tube gives heat and stays dry */
    EXPECT_OK(vtx_tube_in_room(&room, &t, 350, &s));
    EXPECT(s.heat_gain < 0 && s.verdict == VTX_SURFACE_DRY && s.deposit <= 0);
}

static const struct test_case tests[] = {
    { "a dry tube agrees with resistances in series", a_dry_tube_agrees_with_resistances_in_series },
    { "a wet tube closes its balance", a_wet_tube_closes_its_balance },
    { "a cover keeps the surface at limit and margin", a_cover_keeps_the_surface_at_limit_and_margin },
    { "a bright jacket needs more", a_bright_jacket_needs_more },
    { "a damp room cannot be met", a_damp_room_cannot_be_met },
    { "bare metal is as cold as the gas", bare_metal_is_as_cold_as_the_gas },
};
TEST_SUITE(cold_tube, tests);
