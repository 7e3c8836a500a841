/* When a reading has come to rest after a turn of the valve. */
#include <vtx/commissioning.h>

#include <vtx/thermometry.h>

#include "../base/decision_kernel.h"
#include "../base/distribution.h"
#include "../base/least_squares.h"
#include "../base/root.h"

enum { COUNT_MAX = 50, CURVE = 3, GRID = 12 };

#define TIME_CONSTANT_MAX 1e5
#define CLOCK_MAX 1e9

static const double settled_share = 0.95, misfit_probability = 0.01;
/* A time constant known worse than by a factor e, or longer than so many spans of the readings, is not known. */
static const double log_deviation_most = 1, spans_most = 5;

vtx_status vtx_body_time_constant(double metal_mass, double specific_heat, double mass_flow, double heat_capacity, double exchange_share,
                                  double *time_constant)
{
    vtx_status status = worse(require(time_constant != NULL), worse(check_positive(metal_mass, 1e-4, 100), check_positive(specific_heat, 50, 5000)));
    status = worse(status, worse(check_positive(mass_flow, 1e-7, 10), check_positive(heat_capacity, 500, 5000)));
    status = worse(status, worse(check_share(exchange_share), check_positive(exchange_share, 0.01, 1)));
    if (status != VTX_OK)
        return poison(time_constant, status);
    *time_constant = metal_mass * specific_heat / (exchange_share * mass_flow * heat_capacity);
    return VTX_OK;
}

/* Two lags in series after a step. */
struct lags {
    double slow, fast, share; /* share: of the step, that may be left */
};

/* (slow e^(-t/slow) - fast e^(-t/fast)) / (slow - fast), without the cancellation of equal constants. */
static double left_of_step(double time, void *context)
{
    const struct lags *l = context;
    const double decay = exp(-time / l->slow);
    if (l->fast <= 0)
        return decay - l->share;
    const double apart = time / l->fast * (1 - l->fast / l->slow);
    const double mean = apart > 0 ? -expm1(-apart) / apart : 1;
    return decay * (1 + time / l->slow * mean) - l->share;
}

vtx_status vtx_turn_settling_time(double probe_time_constant, double body_time_constant, double step, double band, double *settling_time)
{
    vtx_status status = worse(require(settling_time != NULL), worse(check_amount(probe_time_constant, TIME_CONSTANT_MAX),
                                                                    check_amount(body_time_constant, TIME_CONSTANT_MAX)));
    status = worse(status, worse(check_amount(step, 1000), check_positive(band, 1e-6, 1000)));
    if (status != VTX_OK)
        return poison(settling_time, status);
    struct lags l = { larger(probe_time_constant, body_time_constant), smaller(probe_time_constant, body_time_constant), 0 };
    *settling_time = 0;
    if (step <= band || l.slow < 1e-9)
        return VTX_OK;
    l.share = band / step;
    l.fast = l.fast < 1e-12 * l.slow ? 0 : l.fast;
    /* Equal lags are the slowest: (1 + t/slow) e^(-t/slow), below the share at twice its logarithm and three. */
    const double latest = l.slow * (3 - 2 * log(l.share));
    status = find_root(left_of_step, &l, 0, latest, 1e-13 * latest, settling_time);
    return status == VTX_OK ? VTX_OK : poison(settling_time, status);
}

/* final + amplitude e^(-(t - last)/constant): parameters final - reference, amplitude, ln constant. */
struct curve {
    const double *times, *readings;
    double uncertainty, reference;
    size_t count;
};

static vtx_status curve_residuals(const double *x, double *r, void *context)
{
    const struct curve *c = context;
    const double constant = exp(within(x[2], -30, 30));
    for (size_t i = 0; i < c->count; i++) {
        const double back = (c->times[c->count - 1] - c->times[i]) / constant;
        if (back > 300)
            return VTX_OUT_OF_RANGE;
        r[i] = (c->reference + x[0] + x[1] * exp(back) - c->readings[i]) / c->uncertainty;
    }
    return VTX_OK;
}

struct curve_fit {
    struct least_squares fit;
    double workspace[COUNT_MAX * (2 * CURVE + 3)];
};

/* With the time constant held or free. */
static vtx_status fit_curve(const struct curve *c, const double start[CURVE], int free, struct curve_fit *f)
{
    static const double typical[CURVE] = { 1, 1, 1 };
    const int32_t held[CURVE] = { 0, 0, !free };
    struct curve copy = *c;
    f->fit = (struct least_squares){ .residuals = curve_residuals, .context = &copy, .rows = c->count, .parameters = CURVE, .typical = typical,
                                     .held = held, .workspace = f->workspace, .workspace_length = ARRAY_LENGTH(f->workspace) };
    memcpy(f->fit.parameter, start, CURVE * sizeof *start);
    const vtx_status status = fit_least_squares(&f->fit);
    f->fit.context = NULL;
    f->fit.held = NULL;
    return status;
}

/* Time constant unknown: the best of a grid, then set free. OK only when the readings tell it. */
static vtx_status find_constant(const struct curve *c, struct curve_fit *f)
{
    const double span = c->times[c->count - 1] - c->times[0];
    double best[CURVE] = { 0 }, least = DBL_MAX;
    for (int i = 0; i < GRID; i++) {
        const double start[CURVE] = { 0, 0, log(span) + 0.4 * (i - 8) };
        if (fit_curve(c, start, 0, f) == VTX_OK && f->fit.sum_of_squares < least) {
            least = f->fit.sum_of_squares;
            memcpy(best, f->fit.parameter, sizeof best);
        }
    }
    const vtx_status status = least < DBL_MAX ? fit_curve(c, best, 1, f) : VTX_NOT_CONVERGED;
    if (status != VTX_OK)
        return status;
    const int known = !f->fit.frozen[2] && sqrt(f->fit.covariance[2][2]) < log_deviation_most && f->fit.parameter[2] < log(spans_most * span);
    return known ? VTX_OK : VTX_NO_SOLUTION;
}

static void describe_settling(const struct curve *c, const struct curve_fit *f, int free, double band, vtx_settling *s)
{
    const int freedom = (int)c->count - 2 - free;
    const double amplitude = f->fit.parameter[1], deviation = sqrt(f->fit.covariance[1][1]);
    s->final_value = c->reference + f->fit.parameter[0];
    s->final_uncertainty = sqrt(f->fit.covariance[0][0]);
    s->remaining = -amplitude;
    s->remaining_uncertainty = deviation;
    s->time_constant = exp(f->fit.parameter[2]);
    s->time_constant_uncertainty = free ? s->time_constant * sqrt(f->fit.covariance[2][2]) : 0;
    s->chi_square = f->fit.sum_of_squares;
    s->probability = freedom > 0 ? chi_square_exceedance(s->chi_square, freedom) : quiet_nan();
    s->settled = conformance_between(-band - s->remaining, band - s->remaining, larger(deviation, 1e-9 * band), 0) >= settled_share ? VTX_SETTLED_YES
                                                                                                                                   : VTX_SETTLED_NO;
    s->time_left = s->settled == VTX_SETTLED_YES ? 0 : s->time_constant * larger(log((fabs(amplitude) + normal_one_sided_95 * deviation) / band), 0);
    if (is_finite(s->probability) && s->probability < misfit_probability)
        s->advisories |= VTX_ADVISORY_MODEL_MISFIT;
    if (!is_finite(s->probability))
        s->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

static vtx_status settle(const struct curve *c, double time_constant, double band, vtx_settling *s)
{
    struct curve_fit f;
    const double span = c->times[c->count - 1] - c->times[0];
    memset(s, 0, sizeof *s);
    vtx_status status = time_constant > 0 ? VTX_NO_SOLUTION : find_constant(c, &f);
    if (status == VTX_OK) {
        describe_settling(c, &f, 1, band, s);
        return VTX_OK;
    }
    const double start[CURVE] = { 0, 0, log(time_constant > 0 ? time_constant : span) };
    status = fit_curve(c, start, 0, &f);
    if (status != VTX_OK)
        return status;
    describe_settling(c, &f, 0, band, s);
    if (!(time_constant > 0)) {
        s->time_constant_uncertainty = quiet_nan();
        s->advisories |= VTX_ADVISORY_POORLY_DETERMINED | VTX_ADVISORY_FIELD_UNAVAILABLE;
    }
    return VTX_OK;
}

static vtx_status check_series(const double *times, const double *readings, size_t count, double time_constant)
{
    if (!times || !readings || count < 2)
        return VTX_BAD_ARGUMENT;
    if (count > COUNT_MAX)
        return VTX_OUT_OF_RANGE;
    vtx_status status = check_amount(time_constant, TIME_CONSTANT_MAX);
    for (size_t i = 0; i < count && status == VTX_OK; i++) {
        status = worse(check_range(times[i], -CLOCK_MAX, CLOCK_MAX), check_positive(readings[i], 1, 2000));
        if (status == VTX_OK && i > 0)
            status = require(times[i] > times[i - 1]);
    }
    if (status != VTX_OK)
        return status;
    if (time_constant == 0)
        return require(count >= 3);
    /* Shorter: all is over before the first reading; the curve cannot be told from rest. */
    return time_constant < 1e-6 || times[count - 1] - times[0] > 200 * time_constant ? VTX_OUT_OF_RANGE : VTX_OK;
}

vtx_status vtx_judge_settling(const double *times, const double *readings, size_t count, double uncertainty, double time_constant,
                              double band, vtx_settling *settling)
{
    vtx_status status = worse(require(settling != NULL), check_series(times, readings, count, time_constant));
    status = worse(status, worse(check_positive(uncertainty, 1e-6, 100), check_positive(band, 1e-6, 1000)));
    if (status == VTX_OK) {
        const struct curve c = { times, readings, uncertainty, readings[count - 1], count };
        status = settle(&c, time_constant, band, settling);
    }
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(settling, vtx_settling, settled, status);
}
