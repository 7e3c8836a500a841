/* The curve over its coordinates, and how well a reading is known against it. */
#include "fitted_curve.h"

#include "../base/propagation.h"
#include "outlet_kernel.h"

/* The tube that coordinates describe. Leaks below 0, exponents beyond 1 and efficiencies above it are allowed while fitting: noise
 * around none must not be cut, and a bad reading may lead through them. */
static vtx_status describe(const struct curve *c, const double *x, double log_ratio, double mu, vtx_tube *tube)
{
    if (fabs(x[LOGIT_PEAK]) > 12 || fabs(x[LOGIT_FRACTION]) > 12 || fabs(x[EXPONENT]) > 5 || x[LEAK] < -1 || x[LEAK] > 11)
        return VTX_OUT_OF_RANGE;
    *tube = c->tube;
    tube->peak_efficiency = logistic(x[LOGIT_PEAK]);
    tube->coldest_fraction = 0.5 * logistic(x[LOGIT_FRACTION]);
    tube->pressure_exponent = x[EXPONENT];
    tube->hot_leak = x[LEAK] + x[LEAK_TREND] * (log_ratio - log(c->tube.reference_ratio));
    tube->cold_leak += cold_counts(mu) ? x[COLD_LEAK] : 0;
    return VTX_OK;
}

/* Efficiency of a departing tube over that of the family. */
static double departure(const double *x, double mu, double log_over_reference)
{
    return 1 + x[SHAPE] * square(2 * mu - 1) - x[SAG] * square(log_over_reference);
}

static vtx_status ambient_enthalpy(const vtx_tube *tube, const struct expansion *e, const double *state, double ambient, double *cold, double *hot)
{
    vtx_status status = VTX_OK;
    *cold = *hot = 0;
    if (tube->cold_leak != 0)
        status = feed_enthalpy(e, state[COLD_PRESSURE], ambient, cold);
    if (tube->hot_leak != 0 && status == VTX_OK)
        status = feed_enthalpy(e, state[HOT_PRESSURE], ambient, hot);
    return status;
}

static vtx_status outlets_at(const struct curve *c, const double *x, const double *state, double ambient, const struct expansion *e, double *y)
{
    vtx_tube tube;
    double cold_room, hot_room;
    const double mu = state[COLD_FRACTION];
    vtx_status status = describe(c, x, e->log_ratio, mu, &tube);
    if (status == VTX_OK)
        status = ambient_enthalpy(&tube, e, state, ambient, &cold_room, &hot_room);
    if (status != VTX_OK)
        return status;
    /* Not peak_work: its limit of 1 would be a kink, which only a bad reading leads to. */
    const double peak = efficiency_gain(&tube, e->log_ratio) * tube.peak_efficiency * e->work * departure(x, mu, e->log_ratio - log(tube.reference_ratio));
    status = feed_temperature(e, state[COLD_PRESSURE], cold_outlet_enthalpy(e, &tube, peak, mu, cold_room), &y[COLD]);
    if (!hot_counts(mu))
        y[HOT] = state[INLET_TEMPERATURE];
    else if (status == VTX_OK)
        status = feed_temperature(e, state[HOT_PRESSURE], hot_outlet_enthalpy(e, &tube, peak, mu, hot_room), &y[HOT]);
    return status;
}

vtx_status curve_outlets(const struct curve *c, const double *x, const struct reading_state *s, const struct expansion *e, double *y)
{
    return outlets_at(c, x, s->x, s->ambient_temperature, e, y);
}

struct state_question {
    const struct curve *c;
    const double *x;
    const struct reading_state *s;
};

static vtx_status outlets_of_state(const double *state, double *y, void *context)
{
    const struct state_question *q = context;
    const int32_t model = q->s->model;
    struct expansion e;
    vtx_status status = check_feed(model, state[INLET_PRESSURE], state[INLET_TEMPERATURE], state[HUMIDITY]);
    status = worse(status, check_outlet(model, state[INLET_PRESSURE], state[COLD_PRESSURE]));
    status = worse(status, check_outlet(model, state[INLET_PRESSURE], state[HOT_PRESSURE]));
    status = worse(status, check_share(state[COLD_FRACTION]));
    status = worse(status, require(hot_counts(state[COLD_FRACTION]) == hot_counts(q->s->x[COLD_FRACTION])
                                   && cold_counts(state[COLD_FRACTION]) == cold_counts(q->s->x[COLD_FRACTION])));
    if (status == VTX_OK)
        status = expand(model, state[INLET_PRESSURE], state[INLET_TEMPERATURE], state[HUMIDITY], state[COLD_PRESSURE], &e);
    return status == VTX_OK ? outlets_at(q->c, q->x, state, q->s->ambient_temperature, &e, y) : status;
}

/* Central differences over one coordinate. */
static vtx_status coordinate_slope(const struct curve *c, const double *x, const struct curve_reading *r, size_t k, double *slope)
{
    double moved[COORDINATES], above[OUTLETS], below[OUTLETS];
    const double step = 1e-5 * larger(fabs(x[k]), typical_coordinate[k]);
    memcpy(moved, x, sizeof moved);
    moved[k] = x[k] + step;
    vtx_status status = curve_outlets(c, moved, &r->state, &r->expansion, above);
    moved[k] = x[k] - step;
    if (status == VTX_OK)
        status = curve_outlets(c, moved, &r->state, &r->expansion, below);
    for (int o = 0; o < OUTLETS && status == VTX_OK; o++)
        slope[o] = (above[o] - below[o]) / (2 * step);
    return status;
}

vtx_status curve_gradient(const struct curve *c, const struct curve_reading *r, double (*gradient)[COORDINATES])
{
    for (size_t k = 0; k < COORDINATES; k++) {
        double slope[OUTLETS];
        const vtx_status status = coordinate_slope(c, c->x, r, k, slope);
        if (status != VTX_OK)
            return status;
        for (int o = 0; o < OUTLETS; o++)
            gradient[o][k] = slope[o];
    }
    return VTX_OK;
}

/* Lower triangular root of the covariance over the outlets that count, as its inverse; 0 rows and columns elsewhere. */
static void inverse_root(const struct curve_reading *r, int cold, int hot, double (*w)[OUTLETS])
{
    memset(w, 0, OUTLETS * sizeof *w);
    if (cold)
        w[COLD][COLD] = 1 / sqrt(r->covariance[COLD][COLD]);
    const double shared = cold ? r->covariance[HOT][COLD] * w[COLD][COLD] : 0;
    if (hot)
        w[HOT][HOT] = 1 / sqrt(larger(r->covariance[HOT][HOT] - square(shared), 1e-12));
    if (cold && hot)
        w[HOT][COLD] = -w[HOT][HOT] * shared * w[COLD][COLD];
}

/* Rows along and across a change of efficiency, which has the given effect on the outlets. The covariance follows the widening. */
static void turn_and_widen(const struct curve *c, const double *effect, struct curve_reading *r)
{
    const int cold = outlet_counts(&r->state, COLD), hot = outlet_counts(&r->state, HOT);
    double w[OUTLETS][OUTLETS];
    inverse_root(r, cold, hot, w);
    const double along[OUTLETS] = { w[0][0] * effect[0], w[1][0] * effect[0] + w[1][1] * effect[1] };
    const double length = hypot(along[0], along[1]);
    const double cosine = length > 0 ? along[0] / length : 1, sine = length > 0 ? along[1] / length : 0;
    /* Variance along: 1 + (scatter times length)^2, which is the efficiency's scatter in the outlets; across: the scale's square. */
    const double width[OUTLETS] = { hypot(1, c->scatter * length), c->energy_scale };
    for (int k = 0; k < OUTLETS; k++) {
        r->whitener[0][k] = (cosine * w[0][k] + sine * w[1][k]) / width[0];
        r->whitener[1][k] = (cosine * w[1][k] - sine * w[0][k]) / width[1];
    }
    r->rows = cold && hot ? 2 : 1;
    if (!(cold && hot))
        memset(r->whitener[1], 0, sizeof r->whitener[1]);
    /* S + (width^2 - 1) of each direction, back in kelvins: S w^T w S. */
    double back[OUTLETS][OUTLETS];
    for (int k = 0; k < OUTLETS; k++) {
        back[0][k] = width[0] * (r->whitener[0][0] * r->covariance[0][k] + r->whitener[0][1] * r->covariance[1][k]);
        back[1][k] = width[1] * (r->whitener[1][0] * r->covariance[0][k] + r->whitener[1][1] * r->covariance[1][k]);
    }
    for (int a = 0; a < OUTLETS; a++)
        for (int b = 0; b < OUTLETS; b++)
            r->covariance[a][b] += (square(width[0]) - 1) * back[0][a] * back[0][b] + (square(width[1]) - 1) * back[1][a] * back[1][b];
}

/* The slopes over the state and what they make of its uncertainties, before any widening. */
static vtx_status spread_of_state(const struct curve *c, const double *x, struct curve_reading *r)
{
    struct state_question q = { c, x, &r->state };
    double y[OUTLETS], slope[OUTLETS * STATE_INPUTS];
    const vtx_status status = sensitivities(outlets_of_state, &q, STATE_INPUTS, r->state.x, r->state.step, OUTLETS, y, slope);
    if (status != VTX_OK)
        return status;
    memcpy(r->slope, slope, sizeof r->slope);
    for (int a = 0; a < OUTLETS; a++)
        for (int b = 0; b < OUTLETS; b++)
            r->covariance[a][b] = propagated_covariance(STATE_INPUTS, r->slope[a], r->slope[b], r->state.u, NULL)
                                + (a == b ? larger(square(r->state.uy[a]), 1e-12) : 0);
    return VTX_OK;
}

vtx_status weigh_reading(const struct curve *c, const double *x, struct curve_reading *r)
{
    double effect[OUTLETS];
    vtx_status status = spread_of_state(c, x, r);
    if (status == VTX_OK)
        status = coordinate_slope(c, x, r, LOGIT_PEAK, effect);
    if (status == VTX_OK)
        turn_and_widen(c, effect, r);
    return status;
}

void whiten(const struct curve_reading *r, const double *error, double *row)
{
    const double cold = outlet_counts(&r->state, COLD) ? error[COLD] : 0, hot = outlet_counts(&r->state, HOT) ? error[HOT] : 0;
    for (int k = 0; k < OUTLETS; k++)
        row[k] = r->whitener[k][COLD] * cold + r->whitener[k][HOT] * hot;
}

void unwhiten(const struct curve_reading *r, const double *row, double *error)
{
    const double (*w)[OUTLETS] = (const double (*)[OUTLETS])r->whitener;
    const double determinant = w[0][0] * w[1][1] - w[0][1] * w[1][0];
    if (r->rows == 2) {
        error[COLD] = -(w[1][1] * row[0] - w[0][1] * row[1]) / determinant;
        error[HOT] = -(w[0][0] * row[1] - w[1][0] * row[0]) / determinant;
    } else {
        error[COLD] = w[0][0] != 0 ? -row[0] / w[0][0] : 0;
        error[HOT] = w[0][1] != 0 ? -row[0] / w[0][1] : 0;
    }
}

double squared_length(const struct curve_reading *r, const double *error)
{
    double w[OUTLETS][OUTLETS];
    const int cold = outlet_counts(&r->state, COLD), hot = outlet_counts(&r->state, HOT);
    inverse_root(r, cold, hot, w);
    const double ec = cold ? error[COLD] : 0, eh = hot ? error[HOT] : 0;
    return square(w[0][0] * ec) + square(w[1][0] * ec + w[1][1] * eh);
}
