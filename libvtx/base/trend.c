/* A weighted line through readings and the interval of its crossing with a limit. */
#include <vtx/trend.h>

#include "decision_kernel.h"

enum { COUNT_MAX = 100000, SWEEPS_MAX = 100 };

#define TIME_MAX 1e12
#define DATE_MAX 1e13
#define VALUE_MAX 1e15
#define LOGARITHM_MAX 100

/* Misfit beyond chance in one of a hundred; a trend worth the name in nineteen of twenty. */
static const double misfit_probability = 0.01, significant_probability = 0.05;
/* Relative uncertainty above which the logarithm's own curvature shows. */
static const double logarithm_limit = 0.2;

/* Readings as the line sees them. */
struct readings {
    const double *times, *values, *uncertainties;
    size_t count;
    int exponential, stated;
};

struct line {
    double time, value, rate;      /* value at time, the weighted mean */
    double weights, spread;        /* sums of weights, and of weights times squared distance in time */
    double sum_of_squares;         /* weighted */
};

static double value_of(const struct readings *r, size_t i) { return r->exponential ? log(r->values[i]) : r->values[i]; }

/* The logarithm's uncertainty is relative to the value of the line: relative to the reading, low ones would weigh too much. */
static double weight_of(const struct readings *r, const struct line *before, size_t i)
{
    if (!r->stated)
        return 1;
    if (!r->exponential)
        return 1 / square(r->uncertainties[i]);
    if (!before)
        return square(r->values[i] / r->uncertainties[i]);
    const double logarithm = before->value + before->rate * (r->times[i] - before->time);
    return square(exp(within(logarithm, -LOGARITHM_MAX, LOGARITHM_MAX)) / r->uncertainties[i]);
}

/* Means first, then distances from them: nothing cancels, whatever the zero of time. */
static void fit_line(const struct readings *r, const struct line *before, struct line *line)
{
    double weights = 0, time = 0, value = 0, spread = 0, product = 0, sum = 0;
    for (size_t i = 0; i < r->count; i++) {
        const double w = weight_of(r, before, i);
        weights += w;
        time += w * (r->times[i] - r->times[0]);
        value += w * value_of(r, i);
    }
    time = r->times[0] + time / weights;
    value /= weights;
    for (size_t i = 0; i < r->count; i++) {
        const double w = weight_of(r, before, i), t = r->times[i] - time;
        spread += w * square(t);
        product += w * t * (value_of(r, i) - value);
    }
    *line = (struct line){ .time = time, .value = value, .rate = product / spread, .weights = weights, .spread = spread };
    for (size_t i = 0; i < r->count; i++)
        sum += weight_of(r, before, i) * square(value_of(r, i) - value - line->rate * (r->times[i] - time));
    line->sum_of_squares = sum;
}

/* The logarithm's weights follow the line until both stand. */
static vtx_status settle_line(const struct readings *r, struct line *line)
{
    fit_line(r, NULL, line);
    if (!r->exponential || !r->stated)
        return VTX_OK;
    for (int i = 0; i < SWEEPS_MAX; i++) {
        const struct line before = *line;
        fit_line(r, &before, line);
        const double value = 1 / sqrt(line->weights), rate = 1 / sqrt(line->spread);
        if (!is_finite(line->sum_of_squares))
            return VTX_NOT_CONVERGED;
        if (fabs(line->value + line->rate * (before.time - line->time) - before.value) <= 1e-9 * value
            && fabs(line->rate - before.rate) <= 1e-9 * rate)
            return VTX_OK;
    }
    return VTX_NOT_CONVERGED;
}

/* Distance over uncertainty, where the latter may be 0. */
static double in_deviations(double distance, double uncertainty)
{
    if (uncertainty > 1e-30 * fabs(distance))
        return within(distance / uncertainty, -1e30, 1e30);
    return distance > 0 ? 1e30 : distance < 0 ? -1e30 : 0;
}

static void span(const struct readings *r, vtx_trend *trend)
{
    trend->first_time = trend->last_time = r->times[0];
    for (size_t i = 1; i < r->count; i++) {
        trend->first_time = smaller(trend->first_time, r->times[i]);
        trend->last_time = larger(trend->last_time, r->times[i]);
    }
}

static void describe(const struct readings *r, const struct line *line, vtx_trend *trend)
{
    const double freedom = (double)r->count - 2;
    *trend = (vtx_trend){ .reference_time = line->time, .value = line->value, .rate = line->rate, .readings = (int32_t)r->count,
                          .growth = r->exponential ? VTX_TREND_EXPONENTIAL : VTX_TREND_EVEN };
    span(r, trend);
    trend->scatter = freedom > 0 ? sqrt(line->sum_of_squares / freedom) : quiet_nan();
    trend->chi_square = r->stated ? line->sum_of_squares : quiet_nan();
    trend->probability = r->stated && freedom > 0 ? chi_square_exceedance(line->sum_of_squares, freedom) : quiet_nan();
    const int misfit = is_finite(trend->probability) && trend->probability < misfit_probability;
    const double widened = !r->stated || misfit ? trend->scatter : 1;
    trend->freedom = !r->stated || misfit ? freedom : 0;
    trend->value_uncertainty = widened / sqrt(line->weights);
    trend->rate_uncertainty = widened / sqrt(line->spread);
    trend->rate_probability = 2 * error_probability(-fabs(in_deviations(trend->rate, trend->rate_uncertainty)), trend->freedom);
    trend->significant = trend->rate_probability < significant_probability;
    trend->advisories = misfit ? VTX_ADVISORY_MODEL_MISFIT : 0;
    if (!is_finite(trend->probability))
        trend->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    for (size_t i = 0; i < r->count && r->exponential; i++)
        if (r->uncertainties[i] > logarithm_limit * r->values[i])
            trend->advisories |= VTX_ADVISORY_POORLY_DETERMINED;
}

static vtx_status check_growth(int32_t growth) { return require(growth == VTX_TREND_EVEN || growth == VTX_TREND_EXPONENTIAL); }

static vtx_status check_value(double value, int32_t growth)
{
    return growth == VTX_TREND_EXPONENTIAL ? check_positive(value, 1e-15, VALUE_MAX) : check_range(value, -VALUE_MAX, VALUE_MAX);
}

static vtx_status check_uncertainty(double uncertainty, double value, int stated)
{
    if (!stated)
        return require(uncertainty == 0);
    vtx_status status = check_positive(uncertainty, 1e-15, VALUE_MAX);
    return status == VTX_OK && uncertainty < 1e-12 * fabs(value) ? VTX_OUT_OF_RANGE : status;
}

static vtx_status check_readings(const double *times, const double *values, const double *uncertainties, size_t count, int32_t growth)
{
    vtx_status status = require(times && values && uncertainties && count >= 2);
    if (status != VTX_OK || count > COUNT_MAX)
        return worse(status, VTX_OUT_OF_RANGE);
    const int stated = uncertainties[0] != 0;
    double first = DBL_MAX, last = -DBL_MAX;
    for (size_t i = 0; i < count && status == VTX_OK; i++) {
        status = worse(check_range(times[i], -TIME_MAX, TIME_MAX), check_value(values[i], growth));
        if (status == VTX_OK)
            status = worse(check_finite(uncertainties[i]), check_uncertainty(uncertainties[i], values[i], stated));
        first = status == VTX_OK ? smaller(first, times[i]) : first;
        last = status == VTX_OK ? larger(last, times[i]) : last;
    }
    if (status != VTX_OK)
        return status;
    if (!(last > first) || (!stated && count < 3))
        return VTX_BAD_ARGUMENT;
    return last - first < 1e-9 * larger(fabs(first), fabs(last)) || last - first < 1e-6 ? VTX_OUT_OF_RANGE : VTX_OK;
}

vtx_status vtx_trend_fit(const double *times, const double *values, const double *uncertainties, size_t count, int32_t growth, vtx_trend *trend)
{
    struct line line;
    vtx_status status = worse(require(trend != NULL), check_growth(growth));
    status = worse(status, check_readings(times, values, uncertainties, count, growth));
    if (status == VTX_OK) {
        const struct readings r = { times, values, uncertainties, count, growth == VTX_TREND_EXPONENTIAL, uncertainties[0] != 0 };
        status = settle_line(&r, &line);
        if (status == VTX_OK)
            describe(&r, &line, trend);
    }
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(trend, vtx_trend, growth, status);
}

/* As far as the two calls below lean on it. */
static vtx_status check_trend(const vtx_trend *t)
{
    if (!t)
        return VTX_BAD_ARGUMENT;
    const double most = t->growth == VTX_TREND_EXPONENTIAL ? LOGARITHM_MAX : VALUE_MAX;
    vtx_status status = worse(check_growth(t->growth), check_range(t->reference_time, -TIME_MAX, TIME_MAX));
    status = worse(status, worse(check_range(t->first_time, -TIME_MAX, TIME_MAX), check_range(t->last_time, t->first_time, TIME_MAX)));
    status = worse(status, worse(check_range(t->value, -most, most), check_amount(t->value_uncertainty, VALUE_MAX)));
    status = worse(status, worse(check_range(t->rate, -VALUE_MAX, VALUE_MAX), check_amount(t->rate_uncertainty, VALUE_MAX)));
    return worse(status, worse(check_amount(t->freedom, COUNT_MAX), require(t->freedom == 0 || t->freedom >= 1)));
}

static double line_at(const vtx_trend *t, double time) { return t->value + t->rate * (time - t->reference_time); }

static double line_uncertainty(const vtx_trend *t, double time) { return hypot(t->value_uncertainty, t->rate_uncertainty * (time - t->reference_time)); }

/* From the line's scale to the readings'. */
static vtx_status as_read(const vtx_trend *t, double on_line, double deviation, double *value, double *uncertainty)
{
    if (t->growth == VTX_TREND_EXPONENTIAL && fabs(on_line) > LOGARITHM_MAX)
        return VTX_OUT_OF_RANGE;
    *value = t->growth == VTX_TREND_EXPONENTIAL ? exp(on_line) : on_line;
    *uncertainty = t->growth == VTX_TREND_EXPONENTIAL ? *value * deviation : deviation;
    return VTX_OK;
}

vtx_status vtx_trend_at(const vtx_trend *trend, double time, double *value, double *uncertainty)
{
    double deviation;
    vtx_status status = worse(require(value != NULL), worse(check_trend(trend), check_range(time, -TIME_MAX, TIME_MAX)));
    if (status == VTX_OK)
        status = as_read(trend, line_at(trend, time), line_uncertainty(trend, time), value, &deviation);
    if (status != VTX_OK) {
        poison(uncertainty, status);
        return poison(value, status);
    }
    if (uncertainty)
        *uncertainty = deviation;
    return VTX_OK;
}

/* Fieller's set of the times t, from the reference, with |below - rate t| within q standard deviations. `below` is limit less value.
 * One interval when the rate differs from 0 by more than q deviations; else two rays or everything, of which the ray that the side
 * asks for is kept: NaN is an open end. */
static void fieller(const vtx_trend *t, double below, double q, int rising_side, double *earliest, double *latest)
{
    const double a = square(t->rate) - square(q * t->rate_uncertainty), b = -t->rate * below;
    const double inner = square(t->rate * t->value_uncertainty) + square(t->rate_uncertainty * below)
        - square(q * t->value_uncertainty * t->rate_uncertainty);
    *earliest = *latest = quiet_nan();
    if (a > 0) {
        const double half = q * sqrt(larger(inner, 0));
        *earliest = (-b - half) / a;
        *latest = (-b + half) / a;
    } else if (a < 0 && inner > 0) {
        const double c = square(below) - square(q * t->value_uncertainty), half = q * sqrt(inner);
        const double far = b > 0 ? -b - half : -b + half; /* the sum without cancellation */
        if (far == 0)
            return;
        const double one = far / a, other = c / far;
        const int still_to_come = rising_side ? below > 0 : below < 0;
        if (still_to_come)
            *earliest = larger(one, other);
        else
            *latest = smaller(one, other);
    }
}

static int32_t verdict_of(const vtx_trend_crossing *c, int beyond, int towards, int certain)
{
    if (beyond)
        return VTX_TREND_PASSED;
    if (certain)
        return towards ? VTX_TREND_DATED : VTX_TREND_NEVER;
    /* A rate that is exactly 0 and exactly known crosses nothing. */
    return towards || is_finite(c->earliest) || c->value_uncertainty > 0 ? VTX_TREND_OPEN : VTX_TREND_NEVER;
}

static vtx_status cross(const vtx_trend *t, double limit, int32_t side, double today, double confidence, vtx_trend_crossing *c)
{
    const int rising_side = side == VTX_TOLERANCE_UPPER;
    const double level = t->growth == VTX_TREND_EXPONENTIAL ? log(limit) : limit, below = level - t->value;
    const double q = guard_factor(0.5 - 0.5 * confidence, t->freedom);
    const double excess = (rising_side ? 1 : -1) * (line_at(t, today) - level);
    const int towards = rising_side ? t->rate > 0 : t->rate < 0;
    const int certain = fabs(t->rate) > q * t->rate_uncertainty;
    c->passed_probability = error_probability(in_deviations(excess, line_uncertainty(t, today)), t->freedom);
    c->time = towards ? t->reference_time + below / t->rate : quiet_nan();
    c->advisories = t->advisories & (VTX_ADVISORY_MODEL_MISFIT | VTX_ADVISORY_POORLY_DETERMINED);
    vtx_status status = as_read(t, line_at(t, today), line_uncertainty(t, today), &c->value_today, &c->value_uncertainty);
    fieller(t, below, q, rising_side, &c->earliest, &c->latest);
    c->verdict = verdict_of(c, excess > 0, towards, certain);
    if (certain && !towards)
        c->earliest = c->latest = quiet_nan();
    c->earliest += t->reference_time;
    c->latest += t->reference_time;
    c->time_left = c->time - today;
    if (is_finite(c->time) && larger(c->time - t->last_time, t->first_time - c->time) > 3 * (t->last_time - t->first_time))
        c->advisories |= VTX_ADVISORY_EXTRAPOLATED;
    if (!certain)
        c->advisories |= VTX_ADVISORY_POORLY_DETERMINED;
    if (!is_finite(c->time) || !is_finite(c->earliest) || !is_finite(c->latest))
        c->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    return status;
}

/* NaN stands for an open end. */
static int too_far(double date) { return is_finite(date) ? fabs(date) > DATE_MAX : date == date; }

vtx_status vtx_trend_crosses(const vtx_trend *trend, double limit, int32_t side, double today, double confidence, vtx_trend_crossing *crossing)
{
    vtx_status status = worse(require(crossing != NULL), worse(check_trend(trend), check_range(today, -TIME_MAX, TIME_MAX)));
    status = worse(status, worse(require(side == VTX_TOLERANCE_UPPER || side == VTX_TOLERANCE_LOWER), check_positive(confidence, 0.5, 0.999)));
    if (status == VTX_OK)
        status = check_value(limit, trend->growth);
    if (status == VTX_OK)
        status = cross(trend, limit, side, today, confidence, crossing);
    if (status == VTX_OK && (too_far(crossing->time) || too_far(crossing->earliest) || too_far(crossing->latest)))
        status = VTX_OUT_OF_RANGE;
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(crossing, vtx_trend_crossing, verdict, status);
}
