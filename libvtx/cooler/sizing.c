/* Inverse questions: a job with one quantity varied, searched for a wish. */
#include <vtx/sizing.h>

#include <vtx/setting.h>

#include "../media/constants.h"
#include "job_figure.h"
#include "job_pass.h"
#include "wish.h"

/* A job that the search may change. */
struct seeker {
    vtx_job job;
    const vtx_request *request;
    const vtx_request *second; /* or null */
    const vtx_request *inner;  /* or null */
    struct wish_answer met;        /* the inner wish at the last trial that met it */
    struct wish_answer near_inner; /* the inner wish where it was missed by least, and the outer quantity there */
    double near_x, near_miss;
    int32_t advisories;
};

static int needs_element(int32_t sought)
{
    return sought == VTX_SOUGHT_REGULATOR_PRESSURE || sought == VTX_SOUGHT_BORE || sought == VTX_SOUGHT_LENGTH;
}

static int on_log_scale(const vtx_request *r) { return r->low > 1e-9 * r->high && r->high > 20 * r->low; }

static void set_quantity(vtx_job *job, const vtx_request *r, double x)
{
    vtx_chain_element *element = &job->line[needs_element(r->sought) ? r->element : 0];
    switch (r->sought) {
    case VTX_SOUGHT_COLD_FRACTION:
        job->setting.held = VTX_HELD_COLD_FRACTION;
        job->setting.cold_fraction = x;
        break;
    case VTX_SOUGHT_VALVE_OPENING:
        job->setting.held = VTX_HELD_VALVE_OPENING;
        job->setting.valve_opening = x;
        break;
    case VTX_SOUGHT_SUPPLY_PRESSURE: job->supply.pressure = x; break;
    case VTX_SOUGHT_REGULATOR_PRESSURE: element->set_pressure = x; break;
    case VTX_SOUGHT_INLET_AREA: job->cooler.inlet_area_factor = x; break;
    case VTX_SOUGHT_BORE: element->diameter = x; break;
    case VTX_SOUGHT_LENGTH: element->length = x; break;
    case VTX_SOUGHT_HUMIDITY: job->supply.humidity = x; break;
    case VTX_SOUGHT_STANDOFF: job->duty.standoff = x; break;
    default: job->running = x; break;
    }
}

/* Amount by which the wish is met, in its own unit. */
static double met_by(const vtx_request *r, double figure) { return figure_at_most(r->wished) ? r->wanted - figure : figure - r->wanted; }

static double scale_of(const vtx_request *r) { return larger(fabs(r->wanted), 1e-6); }

static double evaluate(struct seeker *s, const vtx_request *r, double *second_margin)
{
    const int32_t figures[] = { r->wished, s->second ? s->second->wished : r->wished };
    double values[2];
    job_figures(&s->job, figures, s->second ? 2 : 1, values, &s->advisories);
    if (s->second)
        *second_margin = met_by(s->second, values[1]) / scale_of(s->second);
    return values[0];
}

/* The figure of the first wish, made worse by as much as the second one is further from being met. */
static double seek_figure(double x, void *context)
{
    struct seeker *s = context;
    const vtx_request *r = s->request;
    double second_margin = 0;
    set_quantity(&s->job, r, x);
    const double figure = evaluate(s, r, &second_margin);
    if (!s->second || !is_finite(figure))
        return figure;
    const double margin = smaller(met_by(r, figure), second_margin * scale_of(r));
    return figure_at_most(r->wished) ? r->wanted - margin : r->wanted + margin;
}

static struct wish wish_of(const vtx_request *r, wish_figure *figure, void *context)
{
    return (struct wish){ figure, context, r->wanted, r->low, r->high, 1e-13 * larger(r->high, 1e-3),
                          figure_at_most(r->wished) ? WISH_AT_MOST : WISH_AT_LEAST,
                          r->choice == VTX_CHOICE_LOWEST ? WISH_LOWEST : WISH_HIGHEST, on_log_scale(r), 0 };
}

static struct wish exact_wish_of(const vtx_request *r, wish_figure *figure, void *context)
{
    struct wish wish = wish_of(r, figure, context);
    wish.sense = WISH_EXACTLY;
    return wish;
}

/* Where the inner wish comes nearest to being met: what to tell when it is met nowhere. */
static void note_miss(struct seeker *s, double x, const struct wish_answer *inner)
{
    const double miss = fabs(inner->best - s->inner->wanted);
    if (!is_finite(miss) || (is_finite(s->near_miss) && miss >= s->near_miss))
        return;
    s->near_miss = miss;
    s->near_x = x;
    s->near_inner = *inner;
}

/* The figure of the outer wish where the inner one is met. */
static double pair_figure(double x, void *context)
{
    struct seeker *s = context;
    struct seeker inner = { .job = s->job, .request = s->inner };
    struct wish_answer answer;
    double unused;
    set_quantity(&inner.job, s->request, x);
    const struct wish wish = exact_wish_of(s->inner, seek_figure, &inner);
    const vtx_status status = search_wish(&wish, &answer);
    if (status == VTX_NO_SOLUTION)
        note_miss(s, x, &answer);
    if (status != VTX_OK)
        return quiet_nan();
    s->met = answer;
    set_quantity(&inner.job, s->inner, answer.x);
    const double figure = evaluate(&inner, s->request, &unused);
    s->advisories = inner.advisories;
    return figure;
}

/* The pass does not check its job again: neither end may make it one that would be refused. */
static vtx_status check_ends(const vtx_job *job, const vtx_request *r)
{
    vtx_job moved = *job;
    set_quantity(&moved, r, r->low);
    const vtx_status status = job_check(&moved);
    set_quantity(&moved, r, r->high);
    return worse(status, job_check(&moved));
}

static vtx_status check_question(const vtx_job *job, const vtx_request *r)
{
    vtx_status status = require(r->sought >= VTX_SOUGHT_COLD_FRACTION && r->sought <= VTX_SOUGHT_RUNNING);
    status = worse(status, check_figure(r->wished));
    status = worse(status, require(r->choice == VTX_CHOICE_LOWEST || r->choice == VTX_CHOICE_HIGHEST));
    if (needs_element(r->sought))
        status = worse(status, require(r->element >= 0 && r->element < job->elements && job_element_has(&job->line[r->element], r->sought)));
    status = worse(status, worse(check_finite(r->wanted), check_range(r->wanted, -1e9, 1e9)));
    status = worse(status, require(is_finite(r->low) && is_finite(r->high) && r->low <= r->high));
    return worse(status, require(are_zero(r->reserved, ARRAY_LENGTH(r->reserved))));
}

static vtx_status check_request(const vtx_job *job, const vtx_request *r)
{
    vtx_status status = require(r != NULL);
    if (status == VTX_OK)
        status = check_question(job, r);
    return status == VTX_OK ? check_ends(job, r) : status;
}

/* With the quantities that are sought, which the job itself need not state. */
static vtx_status check_wishes(const vtx_job *job, const vtx_request *first, const vtx_request *second, int both_sought)
{
    vtx_job moved = *job;
    set_quantity(&moved, first, first->high);
    if (both_sought)
        set_quantity(&moved, second, second->high);
    return worse(check_stated(&moved, first->wished), second ? check_stated(&moved, second->wished) : VTX_OK);
}

static int32_t limit_at(const vtx_request *r, double x)
{
    if (x <= r->low)
        return VTX_LIMIT_RANGE_LOW;
    return x >= r->high ? VTX_LIMIT_RANGE_HIGH : VTX_LIMIT_COOLER;
}

static void fill_answer(const vtx_request *r, const struct wish_answer *found, vtx_sizing *answer)
{
    answer->value = found->x;
    answer->figure = found->figure;
    answer->attainable_figure = found->best;
    answer->attainable_value = found->best_x;
    answer->limit = found->met_at_end ? limit_at(r, found->x) : VTX_LIMIT_WISH;
    answer->attainable_limit = limit_at(r, found->best_x);
    answer->spare = 0;
}

static vtx_status fail(vtx_sizing *answer, vtx_status status, const vtx_request *r, const struct wish_answer *found)
{
    POISON_STRUCT(answer, vtx_sizing, limit, status);
    if (status == VTX_NO_SOLUTION) {
        answer->attainable_figure = found->best;
        answer->attainable_value = found->best_x;
        answer->attainable_limit = limit_at(r, found->best_x);
    }
    return status;
}

static double value_with_efficiency(const vtx_job *job, const vtx_request *r, const vtx_request *second, double efficiency)
{
    struct seeker s = { .job = *job, .request = r, .second = second };
    struct wish_answer found;
    s.job.cooler.tube.peak_efficiency = efficiency;
    struct wish wish = wish_of(r, seek_figure, &s);
    wish.best_of_grid = 1;
    return search_wish(&wish, &found) == VTX_OK ? found.x : quiet_nan();
}

static vtx_status size_for(const vtx_job *job, const vtx_request *r, const vtx_request *second, vtx_sizing *answer)
{
    struct seeker s = { .job = *job, .request = r, .second = second };
    struct wish_answer found;
    const struct wish wish = wish_of(r, seek_figure, &s);
    const vtx_tube *tube = &job->cooler.tube;
    vtx_status status = search_wish(&wish, &found);
    if (status != VTX_OK)
        return fail(answer, status, r, &found);
    fill_answer(r, &found, answer);
    seek_figure(found.x, &s);
    answer->advisories = s.advisories;
    if (second) {
        double unused;
        s.second = NULL;
        answer->figure = evaluate(&s, r, &unused);
    }
    answer->value_low = value_with_efficiency(job, r, second, tube->efficiency_low);
    answer->value_high = value_with_efficiency(job, r, second, tube->efficiency_high);
    if (!is_finite(answer->value_low) || !is_finite(answer->value_high))
        answer->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

vtx_status vtx_size(const vtx_job *job, const vtx_request *request, vtx_sizing *answer)
{
    vtx_status status = worse(require(answer != NULL), job_check(job));
    if (status == VTX_OK)
        status = check_request(job, request);
    if (status == VTX_OK)
        status = check_wishes(job, request, NULL, 0);
    return status == VTX_OK ? size_for(job, request, NULL, answer) : POISON_STRUCT(answer, vtx_sizing, limit, status);
}

vtx_status vtx_size_for_both(const vtx_job *job, const vtx_request *first, const vtx_request *second, vtx_sizing *answer)
{
    vtx_status status = worse(require(answer != NULL), job_check(job));
    if (status == VTX_OK)
        status = worse(check_request(job, first), check_request(job, second));
    if (status == VTX_OK)
        status = worse(require(first->wished != second->wished), check_wishes(job, first, second, 0));
    return status == VTX_OK ? size_for(job, first, second, answer) : POISON_STRUCT(answer, vtx_sizing, limit, status);
}

/* With NO_SOLUTION: the nearest to the outer wish where the inner one is met, or, where that is nowhere, the nearest to the inner one. */
static vtx_status fail_pair(struct seeker *s, vtx_status status, struct wish_answer *found, vtx_sizing *outer, vtx_sizing *inner)
{
    struct wish_answer nearest = s->near_inner;
    double unused;
    if (status == VTX_OUT_OF_RANGE && is_finite(s->near_miss)) {
        struct seeker at = { .job = s->job };
        set_quantity(&at.job, s->request, s->near_x);
        set_quantity(&at.job, s->inner, nearest.best_x);
        found->best_x = s->near_x;
        found->best = evaluate(&at, s->request, &unused);
        status = VTX_NO_SOLUTION;
    } else if (status == VTX_NO_SOLUTION) {
        pair_figure(found->best_x, s);
        nearest.best_x = s->met.x;
        nearest.best = s->met.figure;
    }
    fail(inner, status, s->inner, &nearest);
    return fail(outer, status, s->request, found);
}

static vtx_status size_pair(const vtx_job *job, const vtx_request *outer, const vtx_request *inner, vtx_sizing *outer_sizing,
                            vtx_sizing *inner_sizing)
{
    struct wish_answer found;
    vtx_request other = *inner;
    struct seeker s = { .job = *job, .request = outer, .inner = inner, .near_miss = quiet_nan() };
    const struct wish wish = exact_wish_of(outer, pair_figure, &s);
    vtx_status status = search_wish(&wish, &found);
    if (status == VTX_NO_SOLUTION) { /* there may be one on the inner quantity's other branch */
        struct wish_answer again;
        other.choice = inner->choice == VTX_CHOICE_LOWEST ? VTX_CHOICE_HIGHEST : VTX_CHOICE_LOWEST;
        s.inner = &other;
        if (search_wish(&wish, &again) == VTX_OK) {
            found = again;
            status = VTX_OK;
        } else {
            s.inner = inner;
        }
    }
    if (status != VTX_OK)
        return fail_pair(&s, status, &found, outer_sizing, inner_sizing);
    pair_figure(found.x, &s);
    fill_answer(outer, &found, outer_sizing);
    fill_answer(inner, &s.met, inner_sizing);
    outer_sizing->value_low = outer_sizing->value_high = inner_sizing->value_low = inner_sizing->value_high = quiet_nan();
    outer_sizing->advisories = inner_sizing->advisories = s.advisories | VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

vtx_status vtx_size_pair(const vtx_job *job, const vtx_request *outer, const vtx_request *inner, vtx_sizing *outer_sizing,
                         vtx_sizing *inner_sizing)
{
    vtx_status status = worse(require(outer_sizing != NULL && inner_sizing != NULL), job_check(job));
    if (status == VTX_OK)
        status = worse(check_request(job, outer), check_request(job, inner));
    if (status == VTX_OK)
        status = require(outer->wished != inner->wished && (outer->sought != inner->sought || (needs_element(outer->sought) && outer->element != inner->element)));
    if (status == VTX_OK)
        status = check_wishes(job, outer, inner, 1);
    if (status != VTX_OK) {
        POISON_STRUCT(inner_sizing, vtx_sizing, limit, status);
        return POISON_STRUCT(outer_sizing, vtx_sizing, limit, status);
    }
    return size_pair(job, outer, inner, outer_sizing, inner_sizing);
}

static double request_low(const vtx_job *job, int32_t sought)
{
    switch (sought) {
    case VTX_SOUGHT_COLD_FRACTION: return job->cooler.cold_fraction_min;
    case VTX_SOUGHT_VALVE_OPENING: return 0.02;
    case VTX_SOUGHT_SUPPLY_PRESSURE:
    case VTX_SOUGHT_REGULATOR_PRESSURE:
        return 1.06 * (job->site.pressure + larger(job->setting.cold_back_pressure, job->setting.hot_back_pressure));
    case VTX_SOUGHT_INLET_AREA: return 0.1;
    case VTX_SOUGHT_BORE: return 0.002;
    case VTX_SOUGHT_LENGTH: return 0.1;
    case VTX_SOUGHT_HUMIDITY:
        return job->supply.humidity_kind == VTX_SUPPLY_HUMIDITY_RATIO ? 0 : job->supply.humidity_kind == VTX_SUPPLY_DEW_POINT ? BELOW_ZERO(40) : BELOW_ZERO(90);
    case VTX_SOUGHT_STANDOFF: return 1e-3;
    default: return 0.1;
    }
}

static double request_high(const vtx_job *job, int32_t sought)
{
    switch (sought) {
    case VTX_SOUGHT_COLD_FRACTION: return job->cooler.cold_fraction_max;
    case VTX_SOUGHT_VALVE_OPENING: return 5;
    case VTX_SOUGHT_SUPPLY_PRESSURE: return 1.1e6;
    case VTX_SOUGHT_REGULATOR_PRESSURE: return larger(job->supply.pressure, request_low(job, sought));
    case VTX_SOUGHT_INLET_AREA: return 10;
    case VTX_SOUGHT_BORE: return 0.05;
    case VTX_SOUGHT_LENGTH: return 100;
    case VTX_SOUGHT_HUMIDITY:
        return job->supply.humidity_kind == VTX_SUPPLY_HUMIDITY_RATIO ? 0.02
            : job->supply.humidity_kind == VTX_SUPPLY_DEW_POINT ? larger(job->supply.temperature, BELOW_ZERO(40)) : 273.15;
    case VTX_SOUGHT_STANDOFF: return 0.5;
    default: return 100;
    }
}

static int32_t usual_choice(int32_t sought, int32_t wished)
{
    const int more_is_better = sought == VTX_SOUGHT_COLD_FRACTION || sought == VTX_SOUGHT_LENGTH || sought == VTX_SOUGHT_HUMIDITY
        || sought == VTX_SOUGHT_STANDOFF || wished == VTX_WISHED_AIR_FLOW
        || (sought == VTX_SOUGHT_RUNNING && wished != VTX_WISHED_TOTAL_CAPACITY);
    return more_is_better ? VTX_CHOICE_HIGHEST : VTX_CHOICE_LOWEST;
}

vtx_status vtx_request_init(const vtx_job *job, int32_t sought, int32_t wished, double wanted, vtx_request *request)
{
    if (!job || !request || job->elements < 0 || job->elements > (int32_t)ARRAY_LENGTH(job->line))
        return POISON_STRUCT(request, vtx_request, sought, VTX_BAD_ARGUMENT);
    vtx_request r = { .wanted = wanted, .low = request_low(job, sought), .high = request_high(job, sought), .sought = sought,
                      .wished = wished, .choice = usual_choice(sought, wished) };
    /* The first element of the line that has such a quantity. */
    while (needs_element(sought) && r.element < job->elements - 1 && !job_element_has(&job->line[r.element], sought))
        r.element++;
    vtx_status status = check_question(job, &r);
    if (status != VTX_OK)
        return POISON_STRUCT(request, vtx_request, sought, status);
    *request = r;
    return VTX_OK;
}

static double within_valve(double cold_fraction, double low, double high)
{
    return is_finite(cold_fraction) && cold_fraction >= low && cold_fraction <= high ? cold_fraction : quiet_nan();
}

/* The tube's own closed form, where nothing else of the job depends on the cold fraction. */
static vtx_status tube_cold_fraction(const vtx_job *job, double cold_temperature, int32_t branch, vtx_sizing *answer)
{
    vtx_fraction_setting setting;
    double humidity_ratio;
    const double low = job->cooler.cold_fraction_min, high = job->cooler.cold_fraction_max;
    vtx_tube tube = job->cooler.tube;
    tube.ambient_temperature = job->site.temperature;
    vtx_status status = vtx_supply_humidity_ratio(&job->supply, job->setting.model, &humidity_ratio);
    if (status == VTX_OK)
        status = vtx_cold_fraction_for_temperature(&tube, job->setting.model, job->supply.pressure, job->supply.temperature, humidity_ratio,
                                                   job->site.pressure + job->setting.cold_back_pressure, cold_temperature, branch, &setting);
    if (status != VTX_OK || setting.cold_fraction < low || setting.cold_fraction > high)
        return status == VTX_OK ? VTX_NO_SOLUTION : status;
    const double at_low = within_valve(setting.cold_fraction_low, low, high), at_high = within_valve(setting.cold_fraction_high, low, high);
    const int more = branch == VTX_BRANCH_MORE_COLD_AIR;
    answer->value = setting.cold_fraction;
    answer->value_low = more ? at_low : at_high;
    answer->value_high = more ? at_high : at_low;
    answer->figure = cold_temperature;
    answer->attainable_figure = setting.attainable_low;
    answer->attainable_value = within(tube.coldest_fraction, low, high);
    answer->limit = VTX_LIMIT_WISH;
    answer->attainable_limit = tube.coldest_fraction <= low ? VTX_LIMIT_RANGE_LOW : tube.coldest_fraction >= high ? VTX_LIMIT_RANGE_HIGH : VTX_LIMIT_COOLER;
    answer->advisories = setting.advisories;
    if (!is_finite(answer->value_low) || !is_finite(answer->value_high))
        answer->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    answer->spare = 0;
    return VTX_OK;
}

/* With nothing more behind the hot outlet than behind the cold one. */
static int any_fraction_has_an_opening(const vtx_job *job)
{
    return job->cooler.hot_conductance <= 0 && job->setting.hot_back_pressure <= job->setting.cold_back_pressure;
}

vtx_status vtx_job_cold_fraction(const vtx_job *job, double cold_temperature, int32_t branch, vtx_sizing *answer)
{
    vtx_request request;
    vtx_status status = worse(require(answer != NULL && (branch == VTX_BRANCH_MORE_COLD_AIR || branch == VTX_BRANCH_LESS_COLD_AIR)),
                              check_positive(cold_temperature, 50, 500));
    status = worse(status, job_check(job));
    if (status != VTX_OK)
        return POISON_STRUCT(answer, vtx_sizing, limit, status);
    if (job->elements == 0 && job->cooler.outlet_conductance <= 0 && job->cooler.kind == VTX_COOLER_ADJUSTABLE && any_fraction_has_an_opening(job)
        && tube_cold_fraction(job, cold_temperature, branch, answer) == VTX_OK)
        return VTX_OK;
    status = vtx_request_init(job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_COLD_TEMPERATURE, cold_temperature, &request);
    request.choice = branch == VTX_BRANCH_MORE_COLD_AIR ? VTX_CHOICE_HIGHEST : VTX_CHOICE_LOWEST;
    return status == VTX_OK ? size_for(job, &request, NULL, answer) : POISON_STRUCT(answer, vtx_sizing, limit, status);
}

vtx_status vtx_job_supply_pressure(const vtx_job *job, double capacity, double largest_pressure, vtx_sizing *answer)
{
    vtx_request request;
    vtx_status status = worse(require(answer != NULL), worse(check_range(capacity, -1e6, 1e6), check_positive(largest_pressure, 2e4, 2e6)));
    status = worse(status, job_check(job));
    if (status == VTX_OK)
        status = vtx_request_init(job, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_CAPACITY, capacity, &request);
    if (status != VTX_OK)
        return POISON_STRUCT(answer, vtx_sizing, limit, status);
    request.high = largest_pressure;
    if (request.high < request.low)
        return POISON_STRUCT(answer, vtx_sizing, limit, VTX_OUT_OF_RANGE);
    return size_for(job, &request, NULL, answer);
}
