/* The valve found from whatever was read: starts along its whole range, then least squares from the best ones. */
#include "setting_fit.h"

#include "../base/distribution.h"
#include "job_pass.h"

enum { SCAN = 24, STARTS = 3 };

/* Openings that stand for shut and for wide open where the range of cold fractions reaches 1 or 0. */
static const double opening_least = 1e-3, opening_most = 20;
/* Settings nearer than this are the same minimum. */
static const double same_setting = 1e-3;
static const double misfit_probability = 0.01;
/* Shares of the spread that the valve's range alone leaves: first order is trusted below the one, the range counts as a reading above the other. */
static const double straight_share = 0.2, poor_share = 0.5;

/* Chi-square by which two settings must differ to be told apart in nineteen of twenty cases. */
static double told_apart(void) { return square(normal_two_sided_95); }

double opening_at_cold_fraction(const vtx_job *job, double cold_fraction)
{
    vtx_job held = *job;
    vtx_operating_point p;
    held.cooler.kind = VTX_COOLER_ADJUSTABLE;
    held.cooler.cold_fraction_min = smaller(held.cooler.cold_fraction_min, cold_fraction);
    held.cooler.cold_fraction_max = larger(held.cooler.cold_fraction_max, cold_fraction);
    held.setting.held = VTX_HELD_COLD_FRACTION;
    held.setting.cold_fraction = cold_fraction;
    return job_pass(&held, &p, NULL) == VTX_OK ? p.valve_opening : quiet_nan();
}

vtx_status valve_range_of(const vtx_job *job, struct valve_range *range)
{
    const double low = opening_at_cold_fraction(job, job->cooler.cold_fraction_max);
    const double high = opening_at_cold_fraction(job, job->cooler.cold_fraction_min);
    range->low = is_finite(low) ? within(low, opening_least, opening_most) : opening_least;
    range->high = is_finite(high) ? within(high, opening_least, opening_most) : opening_most;
    return range->high > range->low ? VTX_OK : VTX_OUT_OF_RANGE;
}

void setting_parameters(struct service_fit *f)
{
    service_fit_add(f, FIT_OPENING, 1, 0);
    service_fit_add_description(f);
    service_fit_add(f, VTX_INPUT_TUBE_EFFICIENCY, f->deviation[VTX_INPUT_TUBE_EFFICIENCY - VTX_INPUT_SUPPLY_PRESSURE], 1);
    const int read = service_fit_read(f, VTX_READ_INLET_FLOW);
    service_fit_add(f, VTX_INPUT_RATED_FLOW, read ? 0.05 : f->deviation[VTX_INPUT_RATED_FLOW - VTX_INPUT_SUPPLY_PRESSURE], !read);
}

/* Minima of the scan, deepest first. */
static int scan_minima(const double misfit[], int minima[STARTS])
{
    int count = 0;
    for (int i = 0; i <= SCAN; i++) {
        if (misfit[i] >= 1e300 || (i > 0 && misfit[i - 1] < misfit[i]) || (i < SCAN && misfit[i + 1] <= misfit[i]))
            continue;
        int k = count < STARTS ? count++ : STARTS;
        for (; k > 0 && misfit[minima[k - 1]] > misfit[i]; k--)
            if (k < STARTS)
                minima[k] = minima[k - 1];
        if (k < STARTS)
            minima[k] = i;
    }
    return count;
}

double setting_deviation(const struct setting_fit *s, int state)
{
    return derived_deviation(&s->service.fit, &s->gradient[state * PARAMETERS_MAX]);
}

/* A setting that a fit ended at. */
struct candidate {
    double x[PARAMETERS_MAX];
    double chi_square;                    /* NaN: the fit failed */
    double cold_fraction, deviation;
};

/* Openings from twice shut to twice open of the range: a valve may have been left beyond it. */
static vtx_status find_starts(struct service_fit *f, const struct valve_range *range, const double *from, struct candidate *candidates, int *count)
{
    double x[PARAMETERS_MAX], misfit[SCAN + 1];
    int minima[STARTS];
    const double low = log(0.5 * range->low / f->job.setting.valve_opening) / f->unit[0];
    const double high = log(2 * range->high / f->job.setting.valve_opening) / f->unit[0];
    memcpy(x, from, sizeof x);
    for (int i = 0; i <= SCAN; i++) {
        x[0] = low + (high - low) * i / SCAN;
        misfit[i] = service_fit_misfit(f, x);
    }
    *count = scan_minima(misfit, minima);
    for (int k = 0; k < *count; k++) {
        memcpy(candidates[k].x, x, sizeof x);
        candidates[k].x[0] = low + (high - low) * minima[k] / SCAN;
    }
    return *count > 0 ? VTX_OK : VTX_NOT_CONVERGED;
}

/* Fits and describes; leaves the setting's state and gradient there. */
static vtx_status fit_candidate(struct setting_fit *s, struct candidate *c)
{
    struct service_fit *f = &s->service;
    c->chi_square = quiet_nan();
    vtx_status status = service_fit_run(f, NULL, c->x);
    if (status == VTX_OK)
        status = service_fit_gradient(f, c->x, s->state, s->gradient);
    if (status != VTX_OK)
        return status;
    c->chi_square = f->fit.sum_of_squares;
    c->cold_fraction = s->state[STATE_COLD_FRACTION];
    c->deviation = f->fit.frozen[0] ? DBL_MAX : setting_deviation(s, STATE_COLD_FRACTION);
    return VTX_OK;
}

/* The fit is left at the best of all starts. */
static vtx_status fit_from_starts(struct setting_fit *s, struct candidate *candidates, int count)
{
    int best = -1;
    vtx_status status = VTX_NOT_CONVERGED;
    s->other_cold_fraction = s->other_deviation = quiet_nan();
    for (int k = 0; k < count; k++) {
        status = fit_candidate(s, &candidates[k]);
        if (status == VTX_OK && (best < 0 || candidates[k].chi_square < candidates[best].chi_square))
            best = k;
    }
    if (best < 0)
        return status;
    const struct candidate *b = &candidates[best];
    double second = b->chi_square + told_apart();
    for (int k = 0; k < count; k++) {
        const struct candidate *c = &candidates[k];
        if (!is_finite(c->chi_square) || c->chi_square >= second || fabs(c->cold_fraction - b->cold_fraction) <= same_setting)
            continue;
        second = c->chi_square;
        s->other_cold_fraction = c->cold_fraction;
        s->other_deviation = c->deviation;
    }
    if (best != count - 1)
        status = fit_candidate(s, &candidates[best]);
    memcpy(s->x, b->x, sizeof s->x);
    s->chi_square = b->chi_square;
    s->deviation = b->deviation;
    return status;
}

/* Least chi-square and cold fraction at openings along the range, everything else fitted. */
struct profile {
    double chi_square[SCAN + 1], cold_fraction[SCAN + 1];
    double least;
};

static void make_profile(struct service_fit *f, const struct valve_range *range, const double *from, struct profile *p)
{
    static const int32_t fixed[PARAMETERS_MAX] = { 1 };
    const int32_t held = f->held[0];
    double x[PARAMETERS_MAX], state[STATES];
    memcpy(x, from, sizeof x);
    f->held[0] = 0;
    p->least = DBL_MAX;
    for (int i = 0; i <= SCAN; i++) {
        x[0] = (log(range->low / f->job.setting.valve_opening) + log(range->high / range->low) * i / SCAN) / f->unit[0];
        const int known = service_fit_run(f, fixed, x) == VTX_OK && service_fit_state(f, x, state) == VTX_OK;
        p->chi_square[i] = known ? f->fit.sum_of_squares : quiet_nan();
        p->cold_fraction[i] = known ? state[STATE_COLD_FRACTION] : quiet_nan();
        p->least = known ? smaller(p->least, p->chi_square[i]) : p->least;
        if (!known)
            memcpy(x, from, sizeof x);
    }
    f->held[0] = held;
}

/* The cold fraction between two neighbours where the profile passes the limit. */
static double passing(const struct profile *p, int in, int out, double limit)
{
    const double share = (limit - p->chi_square[in]) / (p->chi_square[out] - p->chi_square[in]);
    return p->cold_fraction[in] + share * (p->cold_fraction[out] - p->cold_fraction[in]);
}

/* Widens an interval to all cold fractions that the readings do not rule out: no first order, however many minima. 0: all of the range. */
static int widen_by_profile(const struct profile *p, double least, double *low, double *high)
{
    const double limit = smaller(p->least, least) + told_apart();
    int all = 1;
    for (int i = 0; i <= SCAN; i++) {
        if (!is_finite(p->chi_square[i]) || p->chi_square[i] > limit) {
            all = 0;
            continue;
        }
        double ends[3] = { p->cold_fraction[i], p->cold_fraction[i], p->cold_fraction[i] };
        for (int side = 0; side < 2; side++) {
            const int next = side ? i + 1 : i - 1;
            if (next >= 0 && next <= SCAN && is_finite(p->chi_square[next]) && p->chi_square[next] > limit)
                ends[side] = passing(p, i, next, limit);
        }
        for (int k = 0; k < 3; k++) {
            *low = smaller(*low, ends[k]);
            *high = larger(*high, ends[k]);
        }
    }
    return !all;
}

/* The valve stands somewhere in its range: evenly in the logarithm, as good as one more reading. */
static void hold_by_range(struct service_fit *f, const struct valve_range *range)
{
    f->job.setting.valve_opening = sqrt(range->low * range->high);
    f->unit[0] = log(range->high / range->low) / sqrt(12);
    f->held[0] = 1;
}

/* Standard deviation of a cold fraction that may lie anywhere in the cooler's range. */
static double spread_of(const struct service_fit *f)
{
    return (f->job.cooler.cold_fraction_max - f->job.cooler.cold_fraction_min) / sqrt(12);
}

/* A minimum's own interval where first order will do, else the minimum alone: the profile knows the rest. */
static void widen_by_minimum(double cold_fraction, double deviation, double straight, double *low, double *high)
{
    const double half = deviation < straight ? normal_two_sided_95 * deviation : 0;
    *low = smaller(*low, within(cold_fraction - half, 0, 1));
    *high = larger(*high, within(cold_fraction + half, 0, 1));
}

/* NO_SOLUTION: the readings rule out nothing of the range. */
static vtx_status set_interval(struct setting_fit *s, const struct valve_range *range)
{
    const double straight = straight_share * spread_of(&s->service);
    const int held = s->service.held[0], two = is_finite(s->other_cold_fraction);
    s->low = 1;
    s->high = 0;
    widen_by_minimum(s->state[STATE_COLD_FRACTION], s->deviation, straight, &s->low, &s->high);
    if (two)
        widen_by_minimum(s->other_cold_fraction, s->other_deviation, straight, &s->low, &s->high);
    if (!held && !two && s->deviation < straight)
        return VTX_OK;
    struct service_fit copy = s->service; /* the fit's covariance is still needed */
    struct profile p;
    make_profile(&copy, range, s->x, &p);
    return widen_by_profile(&p, held ? DBL_MAX : s->chi_square, &s->low, &s->high) ? VTX_OK : VTX_NO_SOLUTION;
}

/* Without the range first: where the readings tell the setting, it must not pull. */
static vtx_status find_setting(struct setting_fit *s)
{
    struct service_fit *f = &s->service;
    struct candidate candidates[STARTS];
    struct valve_range range;
    double x[PARAMETERS_MAX];
    int count;
    vtx_status status = service_fit_start(f, x);
    const vtx_job job = service_fit_job(f, x);
    if (status == VTX_OK)
        status = valve_range_of(&job, &range);
    if (status == VTX_OK)
        status = find_starts(f, &range, x, candidates, &count);
    if (status != VTX_OK)
        return status;
    status = fit_from_starts(s, candidates, count);
    if (status != VTX_OK || !(s->deviation < poor_share * spread_of(f))) {
        hold_by_range(f, &range);
        status = find_starts(f, &range, x, candidates, &count);
        if (status == VTX_OK)
            status = fit_from_starts(s, candidates, count);
    }
    return status == VTX_OK ? set_interval(s, &range) : status;
}

static void judge_fit(struct setting_fit *s)
{
    s->freedom = service_fit_freedom(&s->service);
    s->probability = s->freedom > 0 ? chi_square_exceedance(s->chi_square, s->freedom) : quiet_nan();
    s->advisories = is_finite(s->other_cold_fraction) ? VTX_ADVISORY_INDISTINGUISHABLE : 0;
    if (is_finite(s->probability) && s->probability < misfit_probability)
        s->advisories |= VTX_ADVISORY_MODEL_MISFIT;
    if (s->service.held[0])
        s->advisories |= VTX_ADVISORY_POORLY_DETERMINED;
}

vtx_status setting_fit_run(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                           struct setting_fit *s)
{
    struct service_fit *f = &s->service;
    vtx_status status = readings ? service_fit_open(f, job, uncertainty, readings) : VTX_BAD_ARGUMENT;
    if (status == VTX_OK)
        status = require(f->evidence.count > 0);
    if (status != VTX_OK)
        return status;
    if (!(f->job.setting.valve_opening > 0))
        f->job.setting.valve_opening = 1; /* a shut valve has no logarithm */
    setting_parameters(f);
    status = find_setting(s);
    if (status == VTX_OK)
        judge_fit(s);
    return status;
}
