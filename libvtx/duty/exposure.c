/* Noise at work: permissible times, doses, daily exposure. */
#include <vtx/exposure.h>
#include <vtx/noise.h>

#include "../base/numeric.h"
#include "level_kernel.h"

#define HOUR 3600.0
#define SHIFT (8 * HOUR)
#define DAY (24 * HOUR)
#define PROTECTION_MAX 60.0

/* A rule of the form T = 8 h/2^((L - criterion)/exchange). */
struct exchange_rule {
    double criterion;
    double exchange;
    double threshold; /* quieter levels do not count */
    double level_max; /* the rule's table or text ends here */
    double ceiling;   /* no steady exposure above */
    double dose_max;
};

static const struct exchange_rule osha = { VTX_OSHA_CRITERION_LEVEL, 5, 80, 130, VTX_OSHA_CEILING_LEVEL, 1e3 };
static const struct exchange_rule niosh = { VTX_NIOSH_CRITERION_LEVEL, 3, 80, 140, 140, 1e6 };

/* 29 CFR 1910.95 table G-16 as printed. */
static const struct {
    double level, hours;
} table_g16[] = {
    { 90, 8 }, { 92, 6 }, { 95, 4 }, { 97, 3 }, { 100, 2 }, { 102, 1.5 }, { 105, 1 }, { 110, 0.5 }, { 115, 0.25 },
};

static inline double reference_duration(const struct exchange_rule *rule, double level)
{
    return SHIFT * exp2((rule->criterion - level) / rule->exchange);
}

static inline double average_level(const struct exchange_rule *rule, double dose)
{
    return rule->criterion + rule->exchange * log2(dose);
}

/* More than a day in a day is impossible. */
static inline vtx_status check_part_of_day(double time) { return require(check_amount(time, DAY) == VTX_OK); }

static inline vtx_status check_day(double total) { return require(total <= DAY * (1 + 1e-12)); }

static vtx_status permissible_time(const struct exchange_rule *rule, double level, double *time)
{
    vtx_status status = worse(require(time != NULL), check_range(level, rule->threshold, rule->level_max));
    if (status != VTX_OK)
        return poison(time, status);
    *time = reference_duration(rule, level);
    return VTX_OK;
}

static vtx_status dose_of_day(const struct exchange_rule *rule, const double *level, const double *time, size_t count,
                              double threshold, double *dose)
{
    vtx_status status = worse(require(level != NULL && time != NULL && count > 0 && dose != NULL),
                              check_range(threshold, rule->threshold, rule->criterion));
    double sum = 0, total = 0;
    for (size_t i = 0; status == VTX_OK && i < count; i++) {
        status = worse(check_range(level[i], 0, rule->level_max), check_part_of_day(time[i]));
        if (status != VTX_OK)
            break;
        total += time[i];
        if (level[i] >= threshold)
            sum += time[i] / reference_duration(rule, level[i]);
    }
    status = worse(status, check_day(total));
    if (status != VTX_OK)
        return poison(dose, status);
    *dose = sum;
    return VTX_OK;
}

static vtx_status average_level_of(const struct exchange_rule *rule, double dose, double *level)
{
    vtx_status status = worse(require(level != NULL), check_amount(dose, rule->dose_max));
    status = worse(status, check_range(dose, 1e-6, rule->dose_max));
    if (status != VTX_OK)
        return poison(level, status);
    *level = average_level(rule, dose);
    return VTX_OK;
}

static vtx_status permissible_level(const struct exchange_rule *rule, double time, double dose, double *level)
{
    vtx_status status = worse(require(level != NULL), check_positive(time, 1, DAY));
    status = worse(status, worse(check_amount(dose, 1e3), check_range(dose, 1e-6, 1e3)));
    if (status != VTX_OK)
        return poison(level, status);
    *level = smaller(average_level(rule, dose * (SHIFT / time)), rule->ceiling);
    return VTX_OK;
}

vtx_status vtx_osha_permissible_time(double level, double *time) { return permissible_time(&osha, level, time); }

vtx_status vtx_osha_table_time(double level, double *time)
{
    const size_t rows = ARRAY_LENGTH(table_g16);
    size_t row = 0;
    vtx_status status = worse(require(time != NULL), check_range(level, table_g16[0].level, table_g16[rows - 1].level));
    if (status != VTX_OK)
        return poison(time, status);
    while (table_g16[row].level < level)
        row++;
    *time = table_g16[row].hours * HOUR;
    return VTX_OK;
}

vtx_status vtx_osha_dose(double level, double time, double threshold, double *dose)
{
    return vtx_osha_dose_of_day(&level, &time, 1, threshold, dose);
}

vtx_status vtx_osha_dose_of_day(const double *level, const double *time, size_t count, double threshold, double *dose)
{
    return dose_of_day(&osha, level, time, count, threshold, dose);
}

vtx_status vtx_osha_average_level(double dose, double *level) { return average_level_of(&osha, dose, level); }

vtx_status vtx_osha_permissible_level(double time, double dose, double *level)
{
    return permissible_level(&osha, time, dose, level);
}

vtx_status vtx_osha_protected_level(double level, double rating, double derating, double *protected_level)
{
    /* C-weighted ratings against A-weighted levels: 29 CFR 1910.95 appendix B. */
    const double spectrum_allowance = 7;
    vtx_status status = worse(require(protected_level != NULL), check_level(level));
    status = worse(status, worse(check_amount(rating, PROTECTION_MAX), check_share(derating)));
    if (status != VTX_OK)
        return poison(protected_level, status);
    *protected_level = level - derating * larger(rating - spectrum_allowance, 0);
    return VTX_OK;
}

vtx_status vtx_niosh_permissible_time(double level, double *time) { return permissible_time(&niosh, level, time); }

vtx_status vtx_niosh_dose(double level, double time, double *dose) { return vtx_niosh_dose_of_day(&level, &time, 1, dose); }

vtx_status vtx_niosh_dose_of_day(const double *level, const double *time, size_t count, double *dose)
{
    return dose_of_day(&niosh, level, time, count, niosh.threshold, dose);
}

vtx_status vtx_niosh_average_level(double dose, double *level) { return average_level_of(&niosh, dose, level); }

vtx_status vtx_niosh_permissible_level(double time, double dose, double *level)
{
    return permissible_level(&niosh, time, dose, level);
}

vtx_status vtx_daily_exposure_level(double level, double time, double *exposure_level)
{
    vtx_status status = worse(require(exposure_level != NULL), worse(check_level(level), check_positive(time, 1, DAY)));
    if (status != VTX_OK)
        return poison(exposure_level, status);
    *exposure_level = level + level_of(time / SHIFT);
    return VTX_OK;
}

vtx_status vtx_daily_exposure_level_of_day(const double *level, const double *time, size_t count, double *exposure_level)
{
    vtx_status status = require(level != NULL && time != NULL && count > 0 && exposure_level != NULL);
    double loudest = 0, total = 0, energy = 0;
    for (size_t i = 0; status == VTX_OK && i < count; i++) {
        status = worse(check_level(level[i]), check_part_of_day(time[i]));
        if (status != VTX_OK)
            break;
        total += time[i];
        loudest = larger(level[i], loudest);
    }
    status = worse(status, check_day(total));
    if (status == VTX_OK && total < 1)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(exposure_level, status);
    for (size_t i = 0; i < count; i++)
        energy += time[i] / SHIFT * energy_of(level[i] - loudest);
    *exposure_level = loudest + level_of(energy);
    return VTX_OK;
}

vtx_status vtx_weekly_exposure_level(const double *exposure_level, size_t count, double *weekly_level)
{
    const double days = 5;
    double sum;
    vtx_status status = require(weekly_level != NULL && count <= 7);
    if (status == VTX_OK)
        status = vtx_level_sum(exposure_level, count, &sum);
    if (status != VTX_OK)
        return poison(weekly_level, status);
    *weekly_level = sum - level_of(days);
    return VTX_OK;
}

vtx_status vtx_eu_permissible_time(double level, double exposure_level, double *time)
{
    vtx_status status = worse(require(time != NULL), worse(check_range(level, 60, 140), check_range(exposure_level, 70, 90)));
    if (status != VTX_OK)
        return poison(time, status);
    *time = SHIFT * energy_of(exposure_level - level);
    return VTX_OK;
}

vtx_status vtx_eu_permissible_level(double time, double exposure_level, double *level)
{
    vtx_status status = worse(require(level != NULL), worse(check_positive(time, 1, DAY), check_range(exposure_level, 70, 90)));
    if (status != VTX_OK)
        return poison(level, status);
    *level = exposure_level - level_of(time / SHIFT);
    return VTX_OK;
}

/* Time by one of the two rules with an exchange rate or by the printed table. */
static double ruled_time(int32_t rule, double level)
{
    const struct exchange_rule *r = rule == VTX_NOISE_RULE_NIOSH ? &niosh : &osha;
    const double from = rule == VTX_NOISE_RULE_OSHA_TABLE ? table_g16[0].level : r->threshold;
    double time = DAY;
    if (level > r->ceiling)
        return 0;
    if (level < from)
        return DAY;
    if (rule == VTX_NOISE_RULE_OSHA_TABLE)
        vtx_osha_table_time(level, &time);
    else
        time = reference_duration(r, level);
    return smaller(time, DAY);
}

vtx_status vtx_noise_rule_time(int32_t rule, double level, double *time)
{
    static const double eu_values[] = { VTX_EU_LOWER_ACTION_LEVEL, VTX_EU_UPPER_ACTION_LEVEL, VTX_EU_LIMIT_LEVEL };
    vtx_status status = worse(require(time != NULL && rule >= VTX_NOISE_RULE_OSHA_FORMULA && rule <= VTX_NOISE_RULE_EU_LIMIT),
                              check_level(level));
    if (status != VTX_OK)
        return poison(time, status);
    *time = rule < VTX_NOISE_RULE_EU_LOWER_ACTION
        ? ruled_time(rule, level)
        : smaller(SHIFT * energy_of(eu_values[rule - VTX_NOISE_RULE_EU_LOWER_ACTION] - level), DAY);
    return VTX_OK;
}

vtx_status vtx_eu_noise_verdict(double exposure_level, double peak_pressure, double protection, vtx_eu_noise *noise)
{
    vtx_status status = worse(require(noise != NULL), check_level(exposure_level));
    status = worse(status, worse(check_amount(peak_pressure, 1e5), check_amount(protection, PROTECTION_MAX)));
    if (status != VTX_OK)
        return POISON_STRUCT(noise, vtx_eu_noise, lower_action_exceeded, status);
    const double protected_peak = peak_pressure * sqrt(energy_of(-protection));
    noise->protected_level = exposure_level - protection;
    noise->lower_action_margin = VTX_EU_LOWER_ACTION_LEVEL - exposure_level;
    noise->upper_action_margin = VTX_EU_UPPER_ACTION_LEVEL - exposure_level;
    noise->limit_margin = VTX_EU_LIMIT_LEVEL - noise->protected_level;
    noise->lower_action_exceeded = noise->lower_action_margin < 0 || peak_pressure > VTX_EU_LOWER_ACTION_PEAK;
    noise->upper_action_reached = noise->upper_action_margin <= 0 || peak_pressure >= VTX_EU_UPPER_ACTION_PEAK;
    noise->limit_exceeded = noise->limit_margin < 0 || protected_peak > VTX_EU_LIMIT_PEAK;
    noise->advisories = noise->limit_exceeded ? VTX_ADVISORY_NOISE_LIMIT : 0;
    return VTX_OK;
}
