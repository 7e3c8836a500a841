/* Noise at work. */
#include <vtx/exposure.h>

#include "../harness/harness.h"

enum { RANDOM_CASES = 10000, PERIODS = 3 };

static const double hour = 3600;

static vtx_status day_of_row(const struct data_row *row, double *dose)
{
    double level[PERIODS], time[PERIODS];
    for (int i = 0; i < PERIODS; i++) {
        level[i] = row->input[2 * i];
        time[i] = row->input[2 * i + 1];
    }
    return vtx_osha_dose_of_day(level, time, PERIODS, 80, dose);
}

static const struct {
    const char *name;
    double value;
} eu_values[] = {
    { "eu_lower_action_level", VTX_EU_LOWER_ACTION_LEVEL }, { "eu_upper_action_level", VTX_EU_UPPER_ACTION_LEVEL },
    { "eu_limit_level", VTX_EU_LIMIT_LEVEL },               { "eu_lower_action_peak", VTX_EU_LOWER_ACTION_PEAK },
    { "eu_upper_action_peak", VTX_EU_UPPER_ACTION_PEAK },   { "eu_limit_peak", VTX_EU_LIMIT_PEAK },
};

static int exposure_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    if (strcmp(row->quantity, "osha_permissible_time") == 0)
        return vtx_osha_permissible_time(in[0], actual), 1;
    if (strcmp(row->quantity, "osha_table_time") == 0)
        return vtx_osha_table_time(in[0], actual), 1;
    if (strcmp(row->quantity, "osha_dose") == 0)
        return vtx_osha_dose(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "osha_dose_of_day") == 0)
        return day_of_row(row, actual), 1;
    if (strcmp(row->quantity, "osha_average_level") == 0)
        return vtx_osha_average_level(in[0], actual), 1;
    if (strcmp(row->quantity, "osha_protected_level") == 0)
        return vtx_osha_protected_level(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "niosh_permissible_time") == 0)
        return vtx_niosh_permissible_time(in[0], actual), 1;
    if (strcmp(row->quantity, "daily_exposure_level") == 0)
        return vtx_daily_exposure_level(in[0], in[1], actual), 1;
    for (size_t i = 0; i < sizeof eu_values / sizeof eu_values[0]; i++)
        if (strcmp(row->quantity, eu_values[i].name) == 0)
            return *actual = eu_values[i].value, 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("exposure.csv", exposure_row, 32); }

static void the_printed_table_is_the_formula_rounded(void)
{
    static const double level[] = { 90, 92, 95, 97, 100, 102, 105, 110, 115 };
    for (size_t i = 0; i < sizeof level / sizeof level[0]; i++) {
        double formula, table;
        EXPECT_OK(vtx_osha_permissible_time(level[i], &formula));
        EXPECT_OK(vtx_osha_table_time(level[i], &table));
        EXPECT_WITHIN(table, formula, 0.07 * hour);
        EXPECT(table <= formula);
    }
}

static void between_two_rows_the_louder_one_speaks(void)
{
    static const double level[] = { 90, 92, 95, 97, 100, 102, 105, 110, 115 };
    double time, next;
    for (size_t i = 0; i + 1 < sizeof level / sizeof level[0]; i++) {
        EXPECT_OK(vtx_osha_table_time(level[i] + 1e-9, &time));
        EXPECT_OK(vtx_osha_table_time(level[i + 1], &next));
        EXPECT(time == next);
    }
    EXPECT_STATUS(vtx_osha_table_time(89.9, &time), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_osha_table_time(115.1, &time), VTX_OUT_OF_RANGE);
}

static void the_permissible_level_fills_the_dose(void)
{
    struct random_state r;
    random_seed(&r, 5);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double time = random_log_uniform(&r, 60, 12 * hour), wanted = random_uniform(&r, 0.3, 1);
        double level, dose, average;
        EXPECT_OK(vtx_niosh_permissible_level(time, wanted, &level));
        if (level >= 80) {
            EXPECT_OK(vtx_niosh_dose(level, time, &dose));
            EXPECT_NEAR(dose, wanted, 1e-12);
            EXPECT_OK(vtx_niosh_average_level(dose, &average));
            EXPECT_OK(vtx_niosh_dose(average < 80 ? 80 : average, 8 * hour, &dose));
            EXPECT(average < 80 || fabs(dose - wanted) < 1e-12);
        }
        EXPECT_OK(vtx_osha_permissible_level(time, wanted, &level));
        if (level < 80 || level == VTX_OSHA_CEILING_LEVEL)
            continue;
        EXPECT_OK(vtx_osha_dose(level, time, 80, &dose));
        EXPECT_NEAR(dose, wanted, 1e-12);
        EXPECT_OK(vtx_osha_average_level(dose, &average));
        EXPECT_OK(vtx_osha_permissible_level(8 * hour, dose, &level));
        EXPECT_WITHIN(average, level, 1e-12);
    }
}

static void no_short_time_permits_more_than_the_ceiling(void)
{
    double level;
    EXPECT_OK(vtx_osha_permissible_level(1, 1, &level));
    EXPECT_NEAR(level, VTX_OSHA_CEILING_LEVEL, 1e-15);
    EXPECT_OK(vtx_osha_permissible_level(900, 1, &level));
    EXPECT_WITHIN(level, VTX_OSHA_CEILING_LEVEL, 1e-12);
    EXPECT_OK(vtx_niosh_permissible_level(1, 1e3, &level));
    EXPECT(level <= 140);
}

static void half_an_osha_dose_is_the_action_level(void)
{
    double level, dose;
    EXPECT_OK(vtx_osha_average_level(0.5, &level));
    EXPECT_WITHIN(level, VTX_OSHA_ACTION_LEVEL, 1e-12);
    EXPECT_OK(vtx_osha_dose(VTX_OSHA_ACTION_LEVEL, 8 * hour, 80, &dose));
    EXPECT_NEAR(dose, 0.5, 1e-14);
}

static void levels_below_the_threshold_do_not_count(void)
{
    double dose;
    EXPECT_OK(vtx_osha_dose(88, 8 * hour, 90, &dose));
    EXPECT(dose == 0);
    EXPECT_OK(vtx_osha_dose(90, 8 * hour, 90, &dose));
    EXPECT_NEAR(dose, 1, 1e-14);
    EXPECT_OK(vtx_osha_dose(79.9, 8 * hour, 80, &dose));
    EXPECT(dose == 0);
    EXPECT_OK(vtx_niosh_dose(79.9, 8 * hour, &dose));
    EXPECT(dose == 0);
}

static void doses_of_a_day_add(void)
{
    const double level[] = { 84, 97, 101 }, time[] = { 2 * hour, 1 * hour, 0.5 * hour };
    double osha = 0, niosh = 0, part, day;
    for (int i = 0; i < PERIODS; i++) {
        EXPECT_OK(vtx_osha_dose(level[i], time[i], 80, &part));
        osha += part;
        EXPECT_OK(vtx_niosh_dose(level[i], time[i], &part));
        niosh += part;
    }
    EXPECT_OK(vtx_osha_dose_of_day(level, time, PERIODS, 80, &day));
    EXPECT_NEAR(day, osha, 1e-14);
    EXPECT_OK(vtx_niosh_dose_of_day(level, time, PERIODS, &day));
    EXPECT_NEAR(day, niosh, 1e-14);
}

static void daily_exposure_of_a_split_day_is_that_of_the_whole(void)
{
    const double level[] = { 91, 91, 60 }, time[] = { 1 * hour, 2 * hour, 0 };
    double split, whole, permissible;
    EXPECT_OK(vtx_daily_exposure_level_of_day(level, time, PERIODS, &split));
    EXPECT_OK(vtx_daily_exposure_level(91, 3 * hour, &whole));
    EXPECT_WITHIN(split, whole, 1e-12);
    EXPECT_OK(vtx_eu_permissible_time(91, whole, &permissible));
    EXPECT_NEAR(permissible, 3 * hour, 1e-12);
    EXPECT_OK(vtx_eu_permissible_level(3 * hour, whole, &permissible));
    EXPECT_WITHIN(permissible, 91, 1e-12);
}

static void daily_exposure_averages_energy_over_eight_hours(void)
{
    const double level[] = { 84, 97, 101 }, time[] = { 5 * hour, 1 * hour, 0.25 * hour };
    double energy = 0, daily;
    for (int i = 0; i < PERIODS; i++)
        energy += time[i] * pow(10, level[i] / 10);
    EXPECT_OK(vtx_daily_exposure_level_of_day(level, time, PERIODS, &daily));
    EXPECT_WITHIN(daily, 10 * log10(energy / (8 * hour)), 1e-12);
}

static void a_day_may_be_full(void)
{
    const double level[] = { 84, 97, 101 }, time[] = { 8 * hour, 8 * hour, 8 * hour };
    double value;
    EXPECT_OK(vtx_osha_dose_of_day(level, time, PERIODS, 80, &value));
    EXPECT_OK(vtx_niosh_dose_of_day(level, time, PERIODS, &value));
    EXPECT_OK(vtx_daily_exposure_level_of_day(level, time, PERIODS, &value));
}

static void five_equal_days_average_to_one_of_them(void)
{
    const double daily[] = { 84, 84, 84, 84, 84, 0, 0 };
    double weekly;
    EXPECT_OK(vtx_weekly_exposure_level(daily, 5, &weekly));
    EXPECT_WITHIN(weekly, 84, 1e-12);
    EXPECT_OK(vtx_weekly_exposure_level(daily, 1, &weekly));
    EXPECT_WITHIN(weekly, 84 - 10 * log10(5), 1e-12);
    EXPECT_OK(vtx_weekly_exposure_level(daily, 7, &weekly));
    EXPECT_STATUS(vtx_weekly_exposure_level(daily, 8, &weekly), VTX_BAD_ARGUMENT);
    EXPECT(isnan(weekly));
    EXPECT_STATUS(vtx_weekly_exposure_level(daily, 0, &weekly), VTX_BAD_ARGUMENT);
}

/* flags as lower, upper, limit */
static void expect_eu(double exposure, double peak, double protection, int32_t lower, int32_t upper, int32_t limit)
{
    vtx_eu_noise noise;
    EXPECT_OK(vtx_eu_noise_verdict(exposure, peak, protection, &noise));
    EXPECT(noise.lower_action_exceeded == lower);
    EXPECT(noise.upper_action_reached == upper);
    EXPECT(noise.limit_exceeded == limit);
    EXPECT(noise.advisories == (limit ? VTX_ADVISORY_NOISE_LIMIT : 0));
    EXPECT_WITHIN(noise.limit_margin, VTX_EU_LIMIT_LEVEL - exposure + protection, 1e-12);
}

static void eu_values_bind_as_the_directive_says(void)
{
    expect_eu(80, 0, 0, 0, 0, 0);
    expect_eu(80.1, 0, 0, 1, 0, 0);
    expect_eu(84.9, 0, 0, 1, 0, 0);
    expect_eu(85, 0, 0, 1, 1, 0);
    expect_eu(87, 0, 0, 1, 1, 0);
    expect_eu(87.1, 0, 0, 1, 1, 1);
    expect_eu(95, 0, 10, 1, 1, 0);
    expect_eu(70, 112, 0, 0, 0, 0);
    expect_eu(70, 113, 0, 1, 0, 0);
    expect_eu(70, 140, 0, 1, 1, 0);
    expect_eu(70, 201, 0, 1, 1, 1);
    expect_eu(70, 201, 1, 1, 1, 0);
}

static void a_weak_protector_protects_nothing(void)
{
    double level;
    EXPECT_OK(vtx_osha_protected_level(95, 5, 1, &level));
    EXPECT_NEAR(level, 95, 1e-15);
    EXPECT_OK(vtx_osha_protected_level(95, 29, 0.5, &level));
    EXPECT_NEAR(level, 84, 1e-15);
}

static void days_are_checked(void)
{
    const double level[] = { 90, 95, 200 }, long_day[] = { 20 * hour, 5 * hour, 0 }, negative[] = { hour, -1, 0 };
    const double good[] = { hour, hour, 0 }, none[] = { 0, 0, 0 };
    double dose = 1;
    EXPECT_STATUS(vtx_osha_dose_of_day(level, long_day, 2, 80, &dose), VTX_BAD_ARGUMENT);
    EXPECT(isnan(dose));
    EXPECT_STATUS(vtx_osha_dose_of_day(level, negative, 2, 80, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_osha_dose_of_day(level, good, 0, 80, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_osha_dose_of_day(NULL, good, 2, 80, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_osha_dose_of_day(level, NULL, 2, 80, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_osha_dose_of_day(level, good, 2, 80, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_osha_dose_of_day(level, good, 2, 70, &dose), VTX_OUT_OF_RANGE);
    dose = 1;
    EXPECT_STATUS(vtx_osha_dose_of_day(level, good, 3, 80, &dose), VTX_OUT_OF_RANGE);
    EXPECT(isnan(dose));
    EXPECT_STATUS(vtx_niosh_dose_of_day(level, negative, 2, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_daily_exposure_level_of_day(level, none, 3, &dose), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_daily_exposure_level_of_day(level, long_day, 2, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_daily_exposure_level_of_day(level, good, 0, &dose), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_daily_exposure_level_of_day(level, good, 2, NULL), VTX_BAD_ARGUMENT);
}

static void a_rule_s_time_is_that_of_its_own_call(void)
{
    for (double level = 80; level <= 115; level += 0.25) {
        double own, time;
        vtx_osha_permissible_time(level, &own);
        EXPECT_OK(vtx_noise_rule_time(VTX_NOISE_RULE_OSHA_FORMULA, level, &time));
        EXPECT(time == fmin(own, 24 * hour));
        vtx_niosh_permissible_time(level, &own);
        EXPECT_OK(vtx_noise_rule_time(VTX_NOISE_RULE_NIOSH, level, &time));
        EXPECT(time == fmin(own, 24 * hour));
        vtx_eu_permissible_time(level, VTX_EU_LIMIT_LEVEL, &own);
        EXPECT_OK(vtx_noise_rule_time(VTX_NOISE_RULE_EU_LIMIT, level, &time));
        EXPECT(time == fmin(own, 24 * hour));
        EXPECT_OK(vtx_noise_rule_time(VTX_NOISE_RULE_OSHA_TABLE, level, &time));
        EXPECT(level < 90 ? time == 24 * hour : vtx_osha_table_time(level, &own) == VTX_OK && time == own);
    }
}

static void a_louder_level_is_never_allowed_longer(void)
{
    double quiet, loud, time;
    for (int32_t rule = VTX_NOISE_RULE_OSHA_FORMULA; rule <= VTX_NOISE_RULE_EU_LIMIT; rule++) {
        double before = 24 * hour;
        for (double level = 0; level <= 200; level += 0.125) {
            EXPECT_OK(vtx_noise_rule_time(rule, level, &time));
            EXPECT(time >= 0 && time <= before);
            before = time;
        }
    }
    EXPECT_OK(vtx_noise_rule_time(VTX_NOISE_RULE_OSHA_TABLE, 115, &quiet));
    EXPECT_OK(vtx_noise_rule_time(VTX_NOISE_RULE_OSHA_TABLE, 115.1, &loud));
    EXPECT(quiet == 0.25 * hour && loud == 0);
    EXPECT_STATUS(vtx_noise_rule_time(0, 90, &time), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_noise_rule_time(VTX_NOISE_RULE_EU_LIMIT + 1, 90, &time), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "the printed table is the formula rounded", the_printed_table_is_the_formula_rounded },
    { "between two rows the louder one speaks", between_two_rows_the_louder_one_speaks },
    { "the permissible level fills the dose", the_permissible_level_fills_the_dose },
    { "no short time permits more than the ceiling", no_short_time_permits_more_than_the_ceiling },
    { "half an OSHA dose is the action level", half_an_osha_dose_is_the_action_level },
    { "levels below the threshold do not count", levels_below_the_threshold_do_not_count },
    { "doses of a day add", doses_of_a_day_add },
    { "daily exposure of a split day is that of the whole", daily_exposure_of_a_split_day_is_that_of_the_whole },
    { "daily exposure averages energy over eight hours", daily_exposure_averages_energy_over_eight_hours },
    { "a day may be full", a_day_may_be_full },
    { "five equal days average to one of them", five_equal_days_average_to_one_of_them },
    { "EU values bind as the directive says", eu_values_bind_as_the_directive_says },
    { "a weak protector protects nothing", a_weak_protector_protects_nothing },
    { "days are checked", days_are_checked },
    { "a rule's time is that of its own call", a_rule_s_time_is_that_of_its_own_call },
    { "a louder level is never allowed longer", a_louder_level_is_never_allowed_longer },
};
TEST_SUITE(exposure, tests);
