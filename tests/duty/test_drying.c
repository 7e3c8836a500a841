/* Drying of compressed air and the purity to ask for. */
#include <vtx/air_quality.h>
#include <vtx/drying.h>
#include <vtx/moist_air.h>
#include <vtx/purity.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 3000 };

vtx_air_treatment sample_treatment(void)
{
    vtx_air_treatment t;
    EXPECT_OK(vtx_air_treatment_init(&t));
    t.free_air = 3 / 60.0;
    return t;
}

static vtx_treated_air treated(const vtx_air_treatment *t)
{
    vtx_treated_air air;
    EXPECT_OK(vtx_treat_air(t, &air));
    return air;
}

static double aftercooler_condensate(const double *in)
{
    vtx_air_treatment t = sample_treatment();
    t.model = (int32_t)in[0];
    t.intake_pressure = in[1];
    t.intake_temperature = in[2];
    t.intake_relative_humidity = in[3];
    t.aftercooler_pressure = t.dryer_pressure = in[4];
    t.aftercooler_temperature = in[5];
    const vtx_treated_air air = treated(&t);
    return air.aftercooler_condensate / air.dry_air;
}

static vtx_treated_air behind_dryer(int32_t model, double pressure, double dew_point)
{
    vtx_air_treatment t = sample_treatment();
    t.model = model;
    t.aftercooler_pressure = t.dryer_pressure = pressure;
    t.dryer = VTX_DRYER_DESICCANT;
    t.dryer_point = dew_point;
    return treated(&t);
}

static int integer(vtx_status status, const int32_t *found, double *actual)
{
    if (status == VTX_OK)
        *actual = *found;
    return 1;
}

static int drying_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    int32_t found = -1;
    if (strcmp(row->quantity, "aftercooler_condensate") == 0)
        return *actual = aftercooler_condensate(in), 1;
    if (strcmp(row->quantity, "dried_humidity") == 0)
        return *actual = behind_dryer((int32_t)in[0], in[1], in[2]).humidity_ratio, 1;
    if (strcmp(row->quantity, "expanded_dew_point") == 0)
        return *actual = behind_dryer((int32_t)in[0], in[1], in[2]).expanded_dew_point, 1;
    if (strcmp(row->quantity, "water_class_reached") == 0)
        return *actual = behind_dryer(VTX_AIR_REAL, 8e5, in[0]).water_class, 1;
    if (strcmp(row->quantity, "purge_share") == 0)
        return vtx_desiccant_purge_share(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "water_class_to_ask") == 0)
        return integer(vtx_water_class_to_ask(in[0], &found), &found, actual);
    if (strcmp(row->quantity, "oil_class_to_ask") == 0)
        return integer(vtx_oil_class_to_ask(in[0], in[1], &found), &found, actual);
    if (strcmp(row->quantity, "particle_class_to_ask") == 0)
        return integer(vtx_particle_class_to_ask(in[0], in[1], in[2], in[3], &found), &found, actual);
    if (strcmp(row->quantity, "particle_class_dirt") == 0)
        return vtx_particle_class_dirt((int32_t)in[0], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("drying.csv", drying_row, 34); }

static vtx_air_treatment random_treatment(struct random_state *r)
{
    vtx_air_treatment t = sample_treatment();
    t.model = random_uniform(r, 0, 1) < 0.5 ? VTX_AIR_IDEAL : VTX_AIR_REAL;
    t.free_air = random_log_uniform(r, 1e-4, 1);
    t.intake_pressure = random_uniform(r, 7e4, 1.05e5);
    t.intake_temperature = random_uniform(r, 250, 315);
    t.intake_relative_humidity = random_uniform(r, 0.02, 1);
    t.aftercooler_pressure = random_uniform(r, 3e5, 2e6);
    t.aftercooler_temperature = random_uniform(r, 280, 330);
    t.receiver_temperature = random_uniform(r, 275, 330);
    t.separated_share = random_uniform(r, 0, 1);
    t.dryer_pressure = t.aftercooler_pressure * random_uniform(r, 0.9, 1);
    t.dryer = VTX_DRYER_NONE + (int32_t)random_uniform(r, 0, 3.999);
    t.dryer_point = random_uniform(r, t.dryer == VTX_DRYER_REFRIGERATED ? 275 : 200, 290);
    t.purge_share = t.dryer >= VTX_DRYER_DESICCANT ? random_uniform(r, 0, 0.3) : 0;
    return t;
}

static void all_water_that_arrives_leaves_somewhere(void)
{
    struct random_state r;
    random_seed(&r, 31);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const vtx_air_treatment t = random_treatment(&r);
        const vtx_treated_air air = treated(&t);
        double water, dry_air;
        EXPECT_OK(vtx_intake_water(t.model, t.intake_pressure, t.intake_temperature, t.intake_relative_humidity, t.free_air,
                                   &water, &dry_air));
        EXPECT_NEAR(air.intake_water, water, 1e-14);
        EXPECT_NEAR(air.dry_air, dry_air, 1e-14);
        EXPECT_NEAR(air.aftercooler_condensate + air.receiver_condensate + air.dryer_water + air.delivered_water, water, 1e-13);
        EXPECT(air.aftercooler_condensate >= 0 && air.receiver_condensate >= 0 && air.dryer_water >= 0);
        EXPECT_NEAR(air.delivered_air + air.purge_air, t.free_air, 1e-14);
        if (t.dryer == VTX_DRYER_NONE)
            EXPECT(air.dryer_water == 0 && air.purge_air == 0);
        else
            EXPECT_NEAR(air.delivered_water, air.humidity_ratio * air.dry_air * (1 - t.purge_share), 1e-13);
    }
}

/* The delivered air, seen through the moist-air room. */
static void dew_points_agree_with_the_moist_air_room(void)
{
    struct random_state r;
    random_seed(&r, 32);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const vtx_air_treatment t = random_treatment(&r);
        const vtx_treated_air air = treated(&t);
        double frost, dew;
        const vtx_status has_frost = vtx_frost_point(t.model, t.dryer_pressure, air.humidity_ratio, &frost);
        if (has_frost == VTX_OK)
            EXPECT_WITHIN(air.pressure_dew_point, frost, 1e-9);
        else {
            EXPECT_OK(vtx_dew_point(t.model, t.dryer_pressure, air.humidity_ratio, &dew));
            EXPECT_WITHIN(air.pressure_dew_point, dew, 1e-9);
        }
        EXPECT(air.expanded_dew_point < air.pressure_dew_point);
        EXPECT((air.liquid_content > 0) == ((air.advisories & VTX_ADVISORY_CONDENSING) != 0));
        if (t.dryer != VTX_DRYER_NONE)
            EXPECT(air.pressure_dew_point <= t.dryer_point + 1e-9 && air.liquid_content == 0);
        else
            EXPECT(air.pressure_dew_point <= t.receiver_temperature + 1e-9);
    }
}

static void a_dryer_never_adds_water(void)
{
    vtx_air_treatment t = sample_treatment();
    t.intake_temperature = 263.15;
    t.intake_relative_humidity = 0.1;
    t.dryer_point = 290;
    const vtx_treated_air dried = treated(&t);
    t.dryer = VTX_DRYER_NONE;
    const vtx_treated_air plain = treated(&t);
    EXPECT_NEAR(dried.humidity_ratio, plain.humidity_ratio, 1e-15);
    EXPECT(dried.dryer_water == 0 && dried.pressure_dew_point < 290);
    EXPECT_NEAR(dried.delivered_water, dried.intake_water, 1e-14);
}

static void undrained_water_is_delivered_as_liquid(void)
{
    vtx_air_treatment t = sample_treatment();
    t.separated_share = 0;
    t.dryer = VTX_DRYER_NONE;
    const vtx_treated_air air = treated(&t);
    EXPECT(air.aftercooler_condensate == 0 && air.receiver_condensate == 0);
    EXPECT_NEAR(air.delivered_water, air.intake_water, 1e-14);
    EXPECT(air.advisories == VTX_ADVISORY_CONDENSING && air.water_class > 6);
    EXPECT_NEAR(air.pressure_dew_point, t.receiver_temperature, 1e-10);
    double none, density;
    EXPECT_OK(vtx_intake_water(t.model, 1e5, 293.15, 0, 1, &none, &density));
    EXPECT_NEAR(density, 1.18885, 1e-4);
    EXPECT_NEAR(air.liquid_content / density + air.humidity_ratio, air.intake_water / air.dry_air, 1e-13);
}

static void bone_dry_intake_air_has_no_dew_point(void)
{
    vtx_air_treatment t = sample_treatment();
    t.intake_relative_humidity = 0;
    const vtx_treated_air air = treated(&t);
    EXPECT(isnan(air.pressure_dew_point) && isnan(air.expanded_dew_point) && air.water_class == -1);
    EXPECT(air.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE && air.delivered_water == 0);
}

static void defaults_are_the_documented_ones(void)
{
    vtx_air_treatment t;
    EXPECT_OK(vtx_air_treatment_init(&t));
    EXPECT(t.free_air == 0 && t.intake_pressure == 101325 && t.intake_temperature == 293.15 && t.intake_relative_humidity == 0.6);
    EXPECT(t.aftercooler_pressure == 8e5 && t.aftercooler_temperature == 308.15 && t.receiver_temperature == 303.15);
    EXPECT(t.separated_share == 1 && t.dryer_pressure == 8e5 && t.dryer_point == 276.15 && t.purge_share == 0);
    EXPECT(t.model == VTX_AIR_REAL && t.dryer == VTX_DRYER_REFRIGERATED);
}

static void a_treatment_is_checked_field_by_field(void)
{
    vtx_treated_air air;
    vtx_air_treatment t;
    EXPECT_STATUS(vtx_air_treatment_init(NULL), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_air_treatment_init(&t));
    EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
    EXPECT(isnan(air.dry_air) && isnan(air.expanded_dew_point) && air.water_class == -1 && air.advisories == -1);
    double *const field[] = { &t.free_air, &t.intake_pressure, &t.intake_temperature, &t.intake_relative_humidity,
                              &t.aftercooler_pressure, &t.aftercooler_temperature, &t.receiver_temperature, &t.separated_share,
                              &t.dryer_pressure, &t.dryer_point, &t.purge_share, &t.reserved[0], &t.reserved[3] };
    for (size_t i = 0; i < sizeof field / sizeof field[0]; i++) {
        t = sample_treatment();
        t.dryer = VTX_DRYER_DESICCANT;
        EXPECT_OK(vtx_treat_air(&t, &air));
        *field[i] = -1;
        EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
        *field[i] = (double)NAN;
        EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
        *field[i] = 1e15;
        EXPECT(vtx_treat_air(&t, &air) != VTX_OK);
    }
    t = sample_treatment();
    t.purge_share = 0.1;
    EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
    t = sample_treatment();
    t.dryer_point = 270;
    EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_OUT_OF_RANGE);
    t = sample_treatment();
    t.dryer_pressure = 8.1e5;
    EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
    t = sample_treatment();
    t.dryer = 0;
    EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
    t = sample_treatment();
    t.model = VTX_DRYER_DESICCANT;
    EXPECT_STATUS(vtx_treat_air(&t, &air), VTX_BAD_ARGUMENT);
}

static void the_purge_can_regenerate_what_the_feed_brought(void)
{
    /* saturated feed at line pressure against saturated purge at ambient pressure, the same temperature, ideal vapour */
    double share, feed, purge;
    EXPECT_OK(vtx_desiccant_purge_share(8e5, 1e5, 1, &share));
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_IDEAL, 8e5, 303.15, &feed));
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_IDEAL, 1e5, 303.15, &purge));
    EXPECT(share * purge >= feed && share * purge < 1.05 * feed);
    EXPECT_STATUS(vtx_desiccant_purge_share(1.2e5, 1e5, 1.5, &share), VTX_NO_SOLUTION);
    EXPECT(isnan(share));
    EXPECT_STATUS(vtx_desiccant_purge_share(1e5, 1e5, 1.5, &share), VTX_BAD_ARGUMENT);
}

static void a_pipe_at_its_dew_point_is_just_dry(void)
{
    struct random_state r;
    random_seed(&r, 33);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const int32_t model = i % 2 ? VTX_AIR_IDEAL : VTX_AIR_REAL;
        const double p = random_uniform(&r, 2e5, 1.6e6), temperature = random_uniform(&r, 230, 320);
        const double margin = random_uniform(&r, 1e-6, 20);
        double point, humidity_ratio;
        vtx_cold_run run;
        EXPECT_OK(vtx_pressure_dew_point_needed(model, p, p, temperature, margin, &point));
        EXPECT_WITHIN(point, temperature - margin, 1e-9);
        EXPECT_OK(vtx_saturation_humidity_ratio(model, p, point, &humidity_ratio));
        EXPECT_OK(vtx_pipe_condensation(model, p, temperature, humidity_ratio, &run));
        EXPECT(run.dry == 1 && run.condensate == 0 && run.advisories == 0);
        EXPECT_WITHIN(run.margin, margin, 1e-9);
        EXPECT_WITHIN(run.dew_point, point, 1e-9);
        EXPECT_OK(vtx_pipe_condensation(model, p, point - 0.1, humidity_ratio, &run));
        EXPECT(run.dry == 0 && run.condensate > 0);
        EXPECT(run.advisories == (point - 0.1 < 273.16 ? VTX_ADVISORY_FREEZING : VTX_ADVISORY_CONDENSING));
    }
}

static void less_pressure_in_the_pipe_needs_less_drying(void)
{
    double same, lower;
    EXPECT_OK(vtx_pressure_dew_point_needed(VTX_AIR_REAL, 8e5, 8e5, 268.15, 5, &same));
    EXPECT_OK(vtx_pressure_dew_point_needed(VTX_AIR_REAL, 8e5, 4e5, 268.15, 5, &lower));
    EXPECT(lower > same + 5);
    /* as frost point of the air brought from 4 to 8 bar */
    double saturated, frost;
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 4e5, 263.15, &saturated));
    EXPECT_OK(vtx_frost_point(VTX_AIR_REAL, 8e5, saturated, &frost));
    EXPECT_WITHIN(lower, frost, 1e-8);
}

static void a_dew_point_below_the_range_is_not_answered(void)
{
    double point = 1;
    EXPECT_STATUS(vtx_pressure_dew_point_needed(VTX_AIR_REAL, 8e5, 8e5, 210, 40, &point), VTX_OUT_OF_RANGE);
    EXPECT(isnan(point));
    EXPECT_OK(vtx_pressure_dew_point_needed(VTX_AIR_REAL, 8e5, 8e5, 210, 30, &point));
}

static void the_worst_month_is_found(void)
{
    static const double temperature[] = { 268, 266, 274, 281, 287, 292, 295, 294, 288, 281, 275, 270 };
    double dried[12], margin, dew[12];
    int32_t worst = -5, wet = -5;
    for (int i = 0; i < 12; i++)
        EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 8e5, 276.15, &dried[i]));
    EXPECT_OK(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 12, &margin, &worst, &wet));
    EXPECT(worst == 1 && wet == 5);
    EXPECT_WITHIN(margin, 266 - 276.15, 1e-8);
    EXPECT_OK(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 12, &margin, NULL, NULL));
    /* without a dryer the water follows the month: warm months may be the worst */
    for (int i = 0; i < 12; i++) {
        dew[i] = temperature[i] - (i == 6 ? -12 : 1);
        EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 8e5, dew[i], &dried[i]));
    }
    EXPECT_OK(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 12, &margin, &worst, &wet));
    EXPECT(worst == 6 && wet == 1);
    EXPECT_WITHIN(margin, -12, 1e-8);
    /* all dry: the margin stays positive, also for a single month */
    EXPECT_OK(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 6, &margin, &worst, &wet));
    EXPECT(wet == 0);
    EXPECT_WITHIN(margin, 1, 1e-8);
    EXPECT_OK(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 1, &margin, &worst, &wet));
    EXPECT(worst == 0 && wet == 0);
    EXPECT_WITHIN(margin, 1, 1e-8);
    dried[3] = 0;
    EXPECT_STATUS(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 12, &margin, &worst, &wet), VTX_OUT_OF_RANGE);
    EXPECT(isnan(margin) && worst == -1 && wet == -1);
    EXPECT_STATUS(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, dried, 0, &margin, &worst, &wet), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_coldest_month(VTX_AIR_REAL, 8e5, NULL, dried, 12, &margin, &worst, &wet), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_coldest_month(VTX_AIR_REAL, 8e5, temperature, NULL, 12, &margin, &worst, &wet), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_coldest_month(0, 8e5, temperature, dried, 3, &margin, &worst, &wet), VTX_BAD_ARGUMENT);
}

static void the_class_asked_for_is_clean_enough_and_the_next_is_not(void)
{
    struct random_state r;
    random_seed(&r, 34);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double point = random_uniform(&r, 190, 300), air = random_log_uniform(&r, 1e-3, 1);
        const double oil = air * random_log_uniform(&r, 1e-9, 1e-4), dirt = air * random_log_uniform(&r, 1e-13, 1e-4);
        double limit;
        int32_t asked, next;
        if (vtx_water_class_to_ask(point, &asked) == VTX_OK) {
            EXPECT(vtx_water_class_dew_point(asked, &limit) == VTX_OK && limit <= point);
            EXPECT(asked == 6 || (vtx_water_class_dew_point(asked + 1, &limit) == VTX_OK && limit > point));
        } else
            EXPECT(point < 203.15 && asked == -1);
        if (vtx_oil_class_to_ask(air, oil, &asked) == VTX_OK) {
            EXPECT(vtx_oil_class_limit(asked, &limit) == VTX_OK && limit * air <= oil);
            EXPECT(asked == 4 || (vtx_oil_class_limit(asked + 1, &limit) == VTX_OK && limit * air > oil));
        } else
            EXPECT(oil / air < 1e-8 && asked == -1);
        if (vtx_particle_class_to_ask(3e-4, 10, air, dirt, &asked) == VTX_OK) {
            EXPECT(asked <= 6 && vtx_particle_class_dirt(asked, &limit) == VTX_OK && limit * air <= dirt);
            next = asked + 1;
            EXPECT(next == 7 || (vtx_particle_class_dirt(next, &limit) == VTX_OK && limit * air > dirt));
        } else
            EXPECT(vtx_particle_class_dirt(1, &limit) == VTX_OK && limit * air > dirt && asked == -1);
    }
}

static void classes_of_dirt_and_size_fall_with_the_number(void)
{
    double size, dirt, last_size = 0, last_dirt = 0;
    for (int32_t c = 1; c <= 7; c++) {
        EXPECT_OK(vtx_particle_class_size(c, &size));
        EXPECT_OK(vtx_particle_class_dirt(c, &dirt));
        EXPECT(size >= last_size && dirt > last_dirt);
        last_size = size;
        last_dirt = dirt;
    }
    EXPECT_STATUS(vtx_particle_class_size(0, &size), VTX_BAD_ARGUMENT);
    EXPECT(isnan(size));
    EXPECT_STATUS(vtx_particle_class_size(VTX_AIR_CLASS_X, &size), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_particle_class_dirt(8, &dirt), VTX_BAD_ARGUMENT);
    EXPECT(isnan(dirt));
    EXPECT_STATUS(vtx_particle_class_dirt(VTX_AIR_CLASS_X, &dirt), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_particle_class_size(1, NULL), VTX_BAD_ARGUMENT);
    int32_t none;
    EXPECT_STATUS(vtx_particle_class_to_ask(1e-5, 10, 0.01, 1, &none), VTX_NO_SOLUTION);
    EXPECT(none == -1);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "all water that arrives leaves somewhere", all_water_that_arrives_leaves_somewhere },
    { "dew points agree with the moist-air room", dew_points_agree_with_the_moist_air_room },
    { "a dryer never adds water", a_dryer_never_adds_water },
    { "undrained water is delivered as liquid", undrained_water_is_delivered_as_liquid },
    { "bone-dry intake air has no dew point", bone_dry_intake_air_has_no_dew_point },
    { "defaults are the documented ones", defaults_are_the_documented_ones },
    { "a treatment is checked field by field", a_treatment_is_checked_field_by_field },
    { "the purge can regenerate what the feed brought", the_purge_can_regenerate_what_the_feed_brought },
    { "a pipe at its dew point is just dry", a_pipe_at_its_dew_point_is_just_dry },
    { "less pressure in the pipe needs less drying", less_pressure_in_the_pipe_needs_less_drying },
    { "a dew point below the range is not answered", a_dew_point_below_the_range_is_not_answered },
    { "the worst month is found", the_worst_month_is_found },
    { "the class asked for is clean enough and the next is not", the_class_asked_for_is_clean_enough_and_the_next_is_not },
    { "classes of dirt and size fall with the number", classes_of_dirt_and_size_fall_with_the_number },
};
TEST_SUITE(drying, tests);
