/* Each entry of a list on the same job: best setting, limits, rank. */
#include <vtx/selection.h>

#include <vtx/noise.h>
#include <vtx/sizing.h>

#include "job_pass.h"
#include "job_work.h"
#include "wish.h"

/* Below this the freezing margin is not looked at. */
#define ANY_MARGIN (-999.0)

struct trial {
    vtx_job job;
    const vtx_requirements *requirements;
    vtx_operating_point point;
    vtx_work work;
};

vtx_status vtx_requirements_init(int32_t question, vtx_requirements *requirements)
{
    if (!requirements || question < VTX_QUESTION_SIZING || question > VTX_QUESTION_TYPICAL)
        return VTX_BAD_ARGUMENT;
    *requirements = (vtx_requirements){ .capacity = quiet_nan(), .noise_distance = 1, .freezing_margin = -1000, .question = question };
    return VTX_OK;
}

static int is_noise_rule(int32_t rule) { return rule >= VTX_NOISE_RULE_OSHA_FORMULA && rule <= VTX_NOISE_RULE_EU_LIMIT; }

static vtx_status check_requirements(const vtx_requirements *r)
{
    if (!r)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_range(r->capacity, -1e6, 1e6), check_amount(r->cold_temperature, 500));
    status = worse(status, worse(check_amount(r->air_flow, 100), check_amount(r->noise_level, 200)));
    status = worse(status, worse(check_amount(r->face_heat, 1e6), check_amount(r->noise_time, 86400)));
    status = worse(status, require(is_noise_rule(r->noise_rule) || (r->noise_rule == 0 && r->noise_time <= 0)));
    status = worse(status, worse(check_positive(r->noise_distance, 0.05, 100), check_range(r->freezing_margin, -1000, 200)));
    status = worse(status, require(are_zero(r->reserved, ARRAY_LENGTH(r->reserved))));
    return worse(status, require(r->question >= VTX_QUESTION_SIZING && r->question <= VTX_QUESTION_TYPICAL));
}

/* What the setting is chosen for. */
static double benefit_at(double cold_fraction, void *context)
{
    struct trial *t = context;
    const int for_face = t->requirements->face_heat > 0;
    t->job.setting.cold_fraction = cold_fraction;
    if (job_pass(&t->job, &t->point, for_face ? &t->work : NULL) != VTX_OK)
        return quiet_nan();
    return for_face ? t->work.heat_removed : t->point.target_capacity;
}

static double temperature_at(double cold_fraction, void *context)
{
    struct trial *t = context;
    return is_finite(benefit_at(cold_fraction, context)) ? t->point.cold_temperature : quiet_nan();
}

static double lost_benefit(double cold_fraction, void *context)
{
    const double benefit = benefit_at(cold_fraction, context);
    return is_finite(benefit) ? -benefit : 1e9;
}

/* Cold fraction of most benefit that keeps the outlet cold enough; the coldest one when none does. */
static vtx_status best_setting(struct trial *t, double *cold_fraction)
{
    const vtx_cooler *c = &t->job.cooler;
    struct wish_answer answer;
    *cold_fraction = c->rated_cold_fraction;
    if (t->job.setting.held == VTX_HELD_VALVE_OPENING || c->kind == VTX_COOLER_FIXED)
        return VTX_OK;
    if (c->cold_fraction_min < c->cold_fraction_max) {
        vtx_status status = find_minimum(lost_benefit, t, c->cold_fraction_min, c->cold_fraction_max, 1e-7, cold_fraction);
        if (status != VTX_OK)
            return status;
    }
    const double wanted = t->requirements->cold_temperature;
    const double temperature = temperature_at(*cold_fraction, t);
    if (wanted <= 0 || !is_finite(temperature) || temperature <= wanted)
        return VTX_OK;
    const struct wish wish = { temperature_at, t, wanted, c->cold_fraction_min, *cold_fraction, 1e-13, WISH_AT_MOST, WISH_HIGHEST, 0, 0 };
    const vtx_status status = search_wish(&wish, &answer);
    if (status == VTX_NO_SOLUTION)
        *cold_fraction = answer.best_x;
    else if (status == VTX_OK)
        *cold_fraction = answer.x;
    return status == VTX_NO_SOLUTION ? VTX_OK : status;
}

static double noise_at_operator(const vtx_job *job, const vtx_requirements *r)
{
    double level;
    if (job->cooler.noise_level <= 0
        || vtx_level_at_distance(job->cooler.noise_level, job->cooler.noise_distance, r->noise_distance, &level) != VTX_OK)
        return quiet_nan();
    return level + 10 * log10(job->running);
}

static double noise_time_of(const vtx_requirements *r, double level)
{
    double time;
    if (r->noise_rule == 0 || !is_finite(level) || vtx_noise_rule_time(r->noise_rule, smaller(larger(level, 0), 200), &time) != VTX_OK)
        return quiet_nan();
    return time;
}

/* The first limit that is missed, in the order of the enum. */
static void judge(const vtx_requirements *r, vtx_verdict *v)
{
    const struct {
        int32_t failed;
        double short_by;
    } limits[] = {
        { VTX_FAILED_COLD_TEMPERATURE, r->cold_temperature > 0 ? v->cold_temperature - r->cold_temperature - 1e-9 : 0 },
        { VTX_FAILED_CAPACITY, r->capacity - v->capacity },
        { VTX_FAILED_FACE_HEAT, r->face_heat > 0 ? r->face_heat - v->face_heat : 0 },
        { VTX_FAILED_AIR_FLOW, r->air_flow > 0 ? v->air_flow - r->air_flow : 0 },
        { VTX_FAILED_NOISE, r->noise_level > 0 && is_finite(v->noise_level) ? v->noise_level - r->noise_level : 0 },
        { VTX_FAILED_NOISE_TIME, is_finite(v->noise_time) ? r->noise_time - v->noise_time : 0 },
        { VTX_FAILED_FREEZING, r->freezing_margin > ANY_MARGIN ? r->freezing_margin - v->freezing_margin : 0 },
    };
    v->failed = VTX_FAILED_NONE;
    v->short_by = 0;
    for (size_t i = 0; i < ARRAY_LENGTH(limits) && v->failed == VTX_FAILED_NONE; i++)
        if (limits[i].short_by > 0) {
            v->failed = limits[i].failed;
            v->short_by = limits[i].short_by;
        }
}

/* OK also for an entry that does not work on this supply; BAD_ARGUMENT and OUT_OF_RANGE for a description that is not valid. */
static vtx_status try_cooler(const vtx_job *job, const vtx_cooler *cooler, const double *cost, const vtx_requirements *r, vtx_verdict *v)
{
    struct trial t = { .job = *job, .requirements = r };
    t.job.cooler = *cooler;
    if (t.job.setting.held == VTX_HELD_COLD_FRACTION)
        t.job.setting.cold_fraction = cooler->rated_cold_fraction;
    vtx_status status = job_check(&t.job);
    if (status != VTX_OK)
        return POISON_STRUCT(v, vtx_verdict, failed, status);
    POISON_STRUCT(v, vtx_verdict, failed, VTX_OK);
    v->failed = VTX_FAILED_OPERATION;
    v->rank = v->advisories = v->spare = 0;
    status = vtx_tube_for_question(&cooler->tube, r->question, &t.job.cooler.tube);
    if (status == VTX_OK)
        status = best_setting(&t, &v->cold_fraction);
    if (status != VTX_OK || !is_finite(benefit_at(v->cold_fraction, &t))) {
        v->cold_fraction = quiet_nan();
        v->advisories = VTX_ADVISORY_FIELD_UNAVAILABLE;
        return VTX_OK;
    }
    v->cold_fraction = t.point.cold_fraction;
    v->cold_temperature = t.point.cold_temperature;
    v->capacity = t.point.target_capacity * job->running;
    v->air_flow = t.point.free_air_flow * job->running;
    v->noise_level = noise_at_operator(&t.job, r);
    v->noise_time = noise_time_of(r, v->noise_level);
    v->freezing_margin = is_finite(t.point.cold_saturation_point) ? t.point.coldest_temperature - t.point.cold_saturation_point : 200;
    v->face_heat = r->face_heat > 0 ? t.work.heat_removed : quiet_nan();
    v->cost = cost ? *cost : v->air_flow;
    v->advisories = t.point.advisories | (is_finite(v->noise_time) && is_finite(v->face_heat) ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE);
    judge(r, v);
    return VTX_OK;
}

static vtx_status check_list(const vtx_job *job, const vtx_cooler *coolers, size_t count, const vtx_requirements *r)
{
    vtx_status status = worse(worse(require(job != NULL && coolers != NULL), check_requirements(r)), require(count >= 1 && count <= 10000));
    if (status == VTX_OK && r->face_heat > 0)
        status = require(states_face(&job->duty));
    return status;
}

static void give_ranks(size_t count, vtx_verdict *verdicts)
{
    for (size_t i = 0; i < count; i++) {
        int32_t rank = 1;
        if (verdicts[i].failed != VTX_FAILED_NONE)
            continue;
        for (size_t k = 0; k < count; k++)
            rank += verdicts[k].failed == VTX_FAILED_NONE
                && (verdicts[k].cost < verdicts[i].cost || (verdicts[k].cost == verdicts[i].cost && k < i));
        verdicts[i].rank = rank;
    }
}

vtx_status vtx_rank_coolers(const vtx_job *job, const vtx_cooler *coolers, size_t count, const double *costs,
                            const vtx_requirements *requirements, vtx_verdict *verdicts)
{
    int bad = 0;
    vtx_status status = worse(check_list(job, coolers, count, requirements), require(verdicts != NULL));
    for (size_t i = 0; status == VTX_OK && costs && i < count; i++)
        status = check_finite(costs[i]);
    if (status != VTX_OK) {
        for (size_t i = 0; verdicts && count <= 10000 && i < count; i++)
            POISON_STRUCT(&verdicts[i], vtx_verdict, failed, status);
        return status;
    }
    for (size_t i = 0; i < count; i++)
        bad += try_cooler(job, &coolers[i], costs ? &costs[i] : NULL, requirements, &verdicts[i]) != VTX_OK;
    give_ranks(count, verdicts);
    return bad ? VTX_PARTIAL : VTX_OK;
}

vtx_status vtx_smallest_cooler(const vtx_job *job, const vtx_cooler *coolers, size_t count, const vtx_requirements *requirements,
                               vtx_chosen_cooler *chosen)
{
    vtx_verdict v;
    double smallest = 0, most = -DBL_MAX, coldest = DBL_MAX;
    int32_t most_at = -1;
    vtx_chosen_cooler found = { .index = -1 };
    vtx_status status = worse(check_list(job, coolers, count, requirements), require(chosen != NULL));
    for (size_t i = 0; i < count && status == VTX_OK; i++) {
        status = try_cooler(job, &coolers[i], NULL, requirements, &v);
        if (status != VTX_OK || !is_finite(v.capacity))
            continue;
        coldest = smaller(coldest, v.cold_temperature);
        if (v.failed != VTX_FAILED_COLD_TEMPERATURE && v.capacity > most) {
            most = v.capacity;
            most_at = (int32_t)i;
        }
        if (v.failed == VTX_FAILED_NONE && (found.index < 0 || coolers[i].rated_free_air_flow < smallest)) {
            smallest = coolers[i].rated_free_air_flow;
            found.index = (int32_t)i;
            found.cold_fraction = v.cold_fraction;
            found.cost = v.cost;
        }
    }
    if (status == VTX_OK && found.index < 0)
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        POISON_STRUCT(chosen, vtx_chosen_cooler, index, status);
    if (status != VTX_OK && status != VTX_NO_SOLUTION)
        return status;
    if (status == VTX_OK)
        *chosen = found;
    chosen->attainable_capacity = most_at >= 0 ? most : quiet_nan();
    chosen->attainable_temperature = coldest < DBL_MAX ? coldest : quiet_nan();
    chosen->attainable_index = most_at;
    return status;
}
