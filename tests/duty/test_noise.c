/* Sound levels. */
#include <vtx/noise.h>

#include "../harness/harness.h"

enum { RANDOM_CASES = 10000 };

static const double nan_value = (double)NAN;

static int noise_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    if (strcmp(row->quantity, "level_sum") == 0)
        return vtx_level_sum(in, (size_t)row->inputs, actual), 1;
    if (strcmp(row->quantity, "level_of_several") == 0)
        return vtx_level_of_several(in[0], (int32_t)in[1], actual), 1;
    if (strcmp(row->quantity, "level_at_distance") == 0)
        return vtx_level_at_distance(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "sound_power_level") == 0)
        return vtx_sound_power_level(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "level_without_background") == 0)
        return vtx_level_without_background(in[0], in[1], actual), 1;
    if (strcmp(row->quantity, "room_constant") == 0)
        return vtx_room_constant(in[0], in[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("noise.csv", noise_row, 11); }

static void a_sum_is_never_below_its_loudest_part_nor_depends_on_the_order(void)
{
    struct random_state r;
    random_seed(&r, 1);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double a = random_uniform(&r, 0, 200), b = random_uniform(&r, 0, 200), c = random_uniform(&r, 0, 200);
        const double one[] = { a, b, c }, other[] = { c, a, b };
        double sum, again, pair, total;
        EXPECT_OK(vtx_level_sum(one, 3, &sum));
        EXPECT_OK(vtx_level_sum(other, 3, &again));
        EXPECT_WITHIN(again, sum, 1e-12);
        EXPECT(sum >= fmax(a, fmax(b, c)) && sum <= fmax(a, fmax(b, c)) + 10 * log10(3) + 1e-12);
        EXPECT_OK(vtx_level_sum(one, 2, &pair));
        if (pair > 200)
            continue;
        const double two[] = { pair, c };
        EXPECT_OK(vtx_level_sum(two, 2, &total));
        EXPECT_WITHIN(total, sum, 1e-11);
    }
}

static void equal_sources_sum_alike_by_number_and_by_list(void)
{
    double level[40], sum, several;
    for (int32_t n = 1; n <= 40; n++) {
        level[n - 1] = 77.3;
        EXPECT_OK(vtx_level_sum(level, (size_t)n, &sum));
        EXPECT_OK(vtx_level_of_several(77.3, n, &several));
        EXPECT_WITHIN(several, sum, 1e-11);
    }
}

static void background_is_taken_out_as_it_was_put_in(void)
{
    struct random_state r;
    random_seed(&r, 2);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double source = random_uniform(&r, 40, 120), background = source + random_uniform(&r, -60, 10);
        const double both[] = { source, background < 0 ? 0 : background };
        double sum, back;
        EXPECT_OK(vtx_level_sum(both, 2, &sum));
        EXPECT_OK(vtx_level_without_background(sum, both[1], &back));
        EXPECT_WITHIN(back, source, 1e-10);
    }
}

static void a_background_as_loud_as_the_reading_leaves_no_source(void)
{
    double source = 1;
    EXPECT_STATUS(vtx_level_without_background(80, 80, &source), VTX_BAD_ARGUMENT);
    EXPECT(isnan(source));
    EXPECT_STATUS(vtx_level_without_background(80, 81, &source), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_level_without_background(80, 79.95, &source), VTX_OUT_OF_RANGE);
}

static void distance_laws_invert(void)
{
    struct random_state r;
    random_seed(&r, 3);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double level = random_uniform(&r, 70, 120), rated = random_log_uniform(&r, 0.3, 3);
        const double distance = random_log_uniform(&r, 0.1, 100), directivity = random_uniform(&r, 1, 8);
        const double room = random_log_uniform(&r, 10, 1e4);
        double there, back;
        EXPECT_OK(vtx_level_at_distance(level, rated, distance, &there));
        EXPECT_OK(vtx_distance_for_level(level, rated, there, &back));
        EXPECT_NEAR(back, distance, 1e-12);
        EXPECT_OK(vtx_level_in_room(level, rated, distance, directivity, room, &there));
        const vtx_status status = vtx_distance_in_room(level, rated, there, directivity, room, &back);
        /* Far out the reverberant field hides the distance: rounding grows as their ratio. */
        const double direct = directivity * room / (16 * 3.141592653589793 * distance * distance);
        EXPECT(status == VTX_OK || (status == VTX_NO_SOLUTION && direct < 1e-12));
        if (status == VTX_OK)
            EXPECT_NEAR(back, distance, 1e-13 + 1e-13 / direct);
    }
}

static void a_room_adds_to_the_free_field_and_holds_the_level_up(void)
{
    double free_field, near_by, at_border, far, farther, border, alone;
    EXPECT_OK(vtx_reverberation_distance(VTX_DIRECTIVITY_FLOOR, 80, &border));
    EXPECT_NEAR(border, sqrt(2 * 80 / (16 * 3.141592653589793)), 1e-14);
    EXPECT_OK(vtx_level_in_room(85, 1, border, VTX_DIRECTIVITY_FLOOR, 80, &at_border));
    EXPECT_OK(vtx_level_at_distance(85, 1, border, &free_field));
    EXPECT_WITHIN(at_border - free_field, 10 * log10(2), 1e-12);
    EXPECT_OK(vtx_level_in_room(85, 1, 100, VTX_DIRECTIVITY_FLOOR, 80, &far));
    EXPECT_OK(vtx_level_in_room(85, 1, 200, VTX_DIRECTIVITY_FLOOR, 80, &farther));
    EXPECT(far - farther < 0.01 && far > farther);
    EXPECT_OK(vtx_sound_power_level(85, 1, VTX_DIRECTIVITY_FLOOR, &alone));
    EXPECT_WITHIN(farther, alone + 10 * log10(4 / 80.0), 0.01);
    EXPECT_OK(vtx_level_in_room(85, 1, 1, VTX_DIRECTIVITY_FLOOR, 1e8, &near_by));
    EXPECT_WITHIN(near_by, 85, 1e-5);
}

static void a_level_below_the_reverberant_one_is_found_nowhere(void)
{
    double distance = 1;
    EXPECT_STATUS(vtx_distance_in_room(95, 1, 60, VTX_DIRECTIVITY_FLOOR, 80, &distance), VTX_NO_SOLUTION);
    EXPECT(isnan(distance));
}

static void the_attenuated_source_and_the_background_meet_the_permissible_level(void)
{
    struct random_state r;
    random_seed(&r, 4);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double level = random_uniform(&r, 60, 120), permissible = random_uniform(&r, 75, 95);
        const double background = permissible - random_log_uniform(&r, 0.01, 60);
        double attenuation, sum;
        EXPECT_OK(vtx_attenuation_needed(level, background, permissible, &attenuation));
        const double both[] = { level - attenuation, background };
        EXPECT_OK(vtx_level_sum(both, 2, &sum));
        EXPECT_WITHIN(sum, permissible, 1e-11);
        EXPECT(attenuation >= level - permissible);
    }
}

static void no_muffler_helps_when_the_background_is_too_loud(void)
{
    double attenuation = 1;
    EXPECT_STATUS(vtx_attenuation_needed(90, 85, 85, &attenuation), VTX_NO_SOLUTION);
    EXPECT(isnan(attenuation));
    EXPECT_STATUS(vtx_attenuation_needed(90, 0, 4.9e-324, &attenuation), VTX_NO_SOLUTION);
}

static void lists_are_checked(void)
{
    const double bad[] = { 80, nan_value }, loud[] = { 80, 201 }, good[] = { 80, 80 };
    double sum = 1;
    EXPECT_STATUS(vtx_level_sum(NULL, 2, &sum), VTX_BAD_ARGUMENT);
    EXPECT(isnan(sum));
    EXPECT_STATUS(vtx_level_sum(good, 0, &sum), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_level_sum(bad, 2, &sum), VTX_BAD_ARGUMENT);
    sum = 1;
    EXPECT_STATUS(vtx_level_sum(loud, 2, &sum), VTX_OUT_OF_RANGE);
    EXPECT(isnan(sum));
    EXPECT_STATUS(vtx_level_sum(good, 2, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_level_of_several(80, 0, &sum), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_level_of_several(80, 100001, &sum), VTX_OUT_OF_RANGE);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "a sum is never below its loudest part, nor depends on the order", a_sum_is_never_below_its_loudest_part_nor_depends_on_the_order },
    { "equal sources sum alike by number and by list", equal_sources_sum_alike_by_number_and_by_list },
    { "background is taken out as it was put in", background_is_taken_out_as_it_was_put_in },
    { "a background as loud as the reading leaves no source", a_background_as_loud_as_the_reading_leaves_no_source },
    { "distance laws invert", distance_laws_invert },
    { "a room adds to the free field and holds the level up", a_room_adds_to_the_free_field_and_holds_the_level_up },
    { "a level below the reverberant one is found nowhere", a_level_below_the_reverberant_one_is_found_nowhere },
    { "the attenuated source and the background meet the permissible level", the_attenuated_source_and_the_background_meet_the_permissible_level },
    { "no muffler helps when the background is too loud", no_muffler_helps_when_the_background_is_too_loud },
    { "lists are checked", lists_are_checked },
};
TEST_SUITE(noise, tests);
