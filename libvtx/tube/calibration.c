/* Calibration of a tube by readings, and prediction with it. */
#include <vtx/calibration.h>

#include "interval.h"
#include "misfit.h"

/* Readings that bring less than a quarter of what is known of a coordinate do not move it: it is held. */
static const double share_to_fit = 0.25;

/* Peak efficiency is hardly known before its deviation is half the prior's. */
static const double share_to_trust = 0.75;

/* No hot end leaks more (vtx_tube.hot_leak). */
static const double leak_max = 10;

/* Half-widths of what 80 % of tubes lie within (common practice, no source, but for peak efficiency: its own band). */
static const double fraction_half_width = 0.1, exponent_half_width = 0.3, leak_half_width = 0.04, prior_confidence = 0.8;

static double slope_of_logit(double share) { return share * (1 - share); }

static void set_prior(struct curve_fit *c, const vtx_tube *prior)
{
    const double q = quantile_of(prior_confidence), twice = 2 * prior->coldest_fraction;
    const double peak = within(prior->peak_efficiency, 0.001, 0.999);
    const double low = within(prior->efficiency_low, 0.0005, peak), high = within(prior->efficiency_high, peak, 0.9995);
    c->curve.tube = *prior;
    c->curve.energy_scale = 1;
    c->prior[LOGIT_PEAK] = logit(peak);
    c->prior_deviation[LOGIT_PEAK] = larger((logit(high) - logit(low)) / (2 * q), 0.01);
    c->prior[LOGIT_FRACTION] = logit(within(twice, 0.001, 0.999));
    c->prior_deviation[LOGIT_FRACTION] = 2 * fraction_half_width / q / larger(slope_of_logit(twice), 0.05);
    c->prior[EXPONENT] = prior->pressure_exponent;
    c->prior_deviation[EXPONENT] = exponent_half_width / q;
    c->prior[LEAK] = prior->hot_leak;
    c->prior_deviation[LEAK] = larger(leak_half_width, prior->hot_leak) / q;
    /* The family: departures are held at none. */
    for (size_t k = FITTED; k < COORDINATES; k++) {
        c->held[k] = 1;
        c->prior_deviation[k] = departure_deviation[k - FITTED];
    }
    memcpy(c->curve.x, c->prior, sizeof c->prior);
}

/* Examines every reading and takes the usable ones. */
static vtx_status take_readings(struct curve_fit *c, const vtx_reading *readings, size_t count, int32_t model, vtx_calibration *out)
{
    for (size_t i = 0; i < count; i++) {
        struct curve_reading *r = &c->reading[i];
        struct reading_state *s = &r->state;
        vtx_status status = examine_reading(&readings[i], model, c->curve.tube.ambient_temperature, s);
        s->usable = s->usable && outlet_counts(s, COLD) + outlet_counts(s, HOT) > s->unknown_inputs;
        if (status == VTX_OK && s->usable)
            status = expand(model, s->x[INLET_PRESSURE], s->x[INLET_TEMPERATURE], s->x[HUMIDITY], s->x[COLD_PRESSURE], &r->expansion);
        if (status != VTX_OK)
            return status;
        r->used = s->usable;
        out->readings_used += r->used;
        out->readings_impossible += is_impossible(s->check.verdict);
        out->readings_incomplete += !r->used && !is_impossible(s->check.verdict);
    }
    c->count = count;
    return out->readings_used > 0 ? VTX_OK : VTX_NO_SOLUTION;
}

/* The pressure exponent turns about the middle of the readings: there it disturbs the peak least. */
static void centre_reference(struct curve_fit *c)
{
    double sum = 0, middle_ambient = 0;
    const double n = (double)used_readings(c);
    for (size_t i = 0; i < c->count; i++)
        if (c->reading[i].used) {
            sum += c->reading[i].expansion.log_ratio / n;
            middle_ambient += c->reading[i].state.ambient_temperature / n;
        }
    /* What the prior says of the peak holds at its own ratio. */
    c->prior[LOGIT_PEAK] = logit(within(logistic(c->prior[LOGIT_PEAK]) * exp(c->prior[EXPONENT] * (sum - log(c->curve.tube.reference_ratio))), 0.001, 0.999));
    c->curve.x[LOGIT_PEAK] = c->prior[LOGIT_PEAK];
    c->curve.tube.reference_ratio = within(exp(sum), 1, 100);
    c->curve.tube.ambient_temperature = within(middle_ambient, 150, 400);
}

/* What the calibration knows of a reading, while every coordinate is free. */
static vtx_status diagnose(const struct curve_fit *c, size_t i, vtx_reading_check *check)
{
    const struct curve_reading *r = &c->reading[i];
    double squared, error[OUTLETS];
    int dimension;
    *check = r->state.check;
    check->used = r->used;
    if (!r->state.usable)
        return VTX_OK;
    const vtx_status status = distance_from_others(c, i, &squared, &dimension, error);
    if (status == VTX_NO_SOLUTION)
        return VTX_OK;
    if (status != VTX_OK)
        return status;
    check->cold_left_out = outlet_counts(&r->state, COLD) ? error[COLD] : quiet_nan();
    check->hot_left_out = outlet_counts(&r->state, HOT) ? error[HOT] : quiet_nan();
    check->leverage = r->used ? larger(hat_element(&c->fit, OUTLETS * i, OUTLETS * i), hat_element(&c->fit, OUTLETS * i + 1, OUTLETS * i + 1)) : 0;
    check->outlier_probability = distance_probability(c, squared, dimension, r->used && !r->is_doubted);
    if (!r->used || r->is_doubted) {
        check->verdict = VTX_READING_OUTLIER;
        check->suspect = r->used ? VTX_SUSPECT_INLET_PRESSURE + r->doubted : suspect_of(r, error);
        check->advisories |= VTX_ADVISORY_OUTLIER;
    }
    return VTX_OK;
}

/* Against the final curve. */
static vtx_status final_residuals(struct curve_fit *c, size_t i, vtx_reading_check *check)
{
    struct curve_reading *r = &c->reading[i];
    double y[OUTLETS];
    if (!r->state.usable)
        return VTX_OK;
    trust_again(r);
    vtx_status status = r->is_doubted ? weigh_reading(&c->curve, c->curve.x, r) : VTX_OK;
    if (status == VTX_OK)
        status = curve_outlets(&c->curve, c->curve.x, &r->state, &r->expansion, y);
    if (status != VTX_OK)
        return status;
    if (outlet_counts(&r->state, COLD)) {
        check->cold_residual = r->state.y[COLD] - y[COLD];
        check->cold_residual_deviation = sqrt(r->covariance[COLD][COLD]);
    }
    if (outlet_counts(&r->state, HOT)) {
        check->hot_residual = r->state.y[HOT] - y[HOT];
        check->hot_residual_deviation = sqrt(r->covariance[HOT][HOT]);
    }
    if (outlet_counts(&r->state, COLD) && outlet_counts(&r->state, HOT) && r->state.unknown_inputs == 0)
        check->advisories &= ~VTX_ADVISORY_FIELD_UNAVAILABLE;
    else
        check->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

struct mean {
    double sum, weight;
};

static void add(struct mean *m, double value, double weight)
{
    m->sum += weight * value;
    m->weight += weight;
}

static double mean_of(const struct mean *m) { return m->weight > 0 ? m->sum / m->weight : quiet_nan(); }

/* What all readings together show; the check of each goes to the caller if he wants it. */
static vtx_status diagnose_all(const struct curve_fit *c, vtx_calibration *out, vtx_reading_check *checks)
{
    struct mean cold = { 0 }, hot = { 0 }, energy = { 0 };
    vtx_reading_check spare;
    for (size_t i = 0; i < c->count; i++) {
        vtx_reading_check *check = checks ? &checks[i] : &spare;
        const struct reading_state *s = &c->reading[i].state;
        const vtx_status status = diagnose(c, i, check);
        if (status != VTX_OK)
            return status;
        if (!check->used || c->reading[i].is_doubted)
            continue;
        if (outlet_counts(s, COLD) && is_finite(check->cold_left_out))
            add(&cold, square(check->cold_left_out), 1);
        if (outlet_counts(s, HOT) && is_finite(check->hot_left_out))
            add(&hot, square(check->hot_left_out), 1);
        if (is_finite(check->energy_residual))
            add(&energy, check->energy_residual, 1 / larger(square(check->energy_uncertainty), 1e-12));
    }
    out->cold_left_out = cold.weight > 0 ? sqrt(mean_of(&cold)) : quiet_nan();
    out->hot_left_out = hot.weight > 0 ? sqrt(mean_of(&hot)) : quiet_nan();
    out->energy_residual = mean_of(&energy);
    out->energy_uncertainty = energy.weight > 0 ? 1 / sqrt(energy.weight) : quiet_nan();
    return VTX_OK;
}

/* A coordinate that the fit took where no tube is: held at the end of what can be. */
static int hold_at_end(struct curve_fit *c, size_t k, double low, double high, double variance_there, double (*variance)[COORDINATES])
{
    if (c->held[k] || (c->curve.x[k] >= low && c->curve.x[k] <= high))
        return 0;
    c->held[k] = 1;
    c->curve.x[k] = within(c->curve.x[k], low, high);
    variance[k][k] = variance_there;
    return 1;
}

/* Holds what the readings do not see, each with the variance it then has. */
static void hold_unseen(struct curve_fit *c, double (*variance)[COORDINATES])
{
    const size_t n = used_readings(c);
    for (size_t k = 0; k < FITTED; k++) {
        c->held[k] = k != LOGIT_PEAK && (n < 2 || c->share[k] < share_to_fit);
        c->curve.x[k] = c->held[k] ? c->prior[k] : c->curve.x[k];
        variance[k][k] = square(c->prior_deviation[k]);
    }
    for (size_t k = FITTED; k < COORDINATES; k++)
        for (size_t l = FITTED; l < COORDINATES; l++)
            variance[k][l] = c->departing.moment[k - FITTED][l - FITTED];
}

/* The leak is not a normal number: its mean and variance take the place of the fit's, and the rest follows it. */
static vtx_status settle_leak(struct curve_fit *c, struct leak_knowledge leak, double (*variance)[COORDINATES])
{
    vtx_status status = VTX_OK;
    if (!c->held[LEAK]) {
        leak = leak_of_fit(c);
        c->held[LEAK] = 1;
        c->curve.x[LEAK] = smaller(leak.mean, leak_max);
        status = fit_curve(c);
    }
    variance[LEAK][LEAK] = leak_variance_about(&leak, c->curve.x[LEAK]);
    return status;
}

/* What other suppositions bring to the covariance of what is fitted. */
static void spread_over_suppositions(struct curve_fit *c, const int32_t *held, double (*variance)[COORDINATES])
{
    for (size_t k = 0; k < FITTED; k++)
        for (size_t l = 0; l < FITTED; l++)
            if (!held[k] && !held[l])
                c->curve.covariance[k][l] = c->believed * c->curve.covariance[k][l] + c->spread[k][l];
    variance[LEAK][LEAK] *= held[LEAK] ? 1 : c->believed;
}

/* From the most probable supposition to the mean over all. What is held stays. */
static void shift_to_mean(struct curve_fit *c)
{
    for (size_t k = 0; k < FITTED; k++)
        c->curve.x[k] += c->held[k] ? 0 : c->shift[k];
    c->curve.x[EXPONENT] = within(c->curve.x[EXPONENT], -1, 1);
    c->curve.x[LEAK] = within(c->curve.x[LEAK], 0, leak_max);
}

/* The final fit, of what the readings see, and the uncertainty of all. */
static vtx_status settle_coordinates(struct curve_fit *c)
{
    double variance[COORDINATES][COORDINATES] = { { 0 } }, share[FITTED];
    int32_t held[COORDINATES];
    const double chi_square = c->chi_square, freedom = c->freedom, exponent_variance = c->curve.covariance[EXPONENT][EXPONENT];
    const struct leak_knowledge leak = leak_of_fit(c);
    memcpy(share, c->share, sizeof share);
    hold_unseen(c, variance);
    const int32_t leak_held = c->held[LEAK];
    vtx_status status = fit_curve(c);
    if (status == VTX_OK)
        status = settle_leak(c, leak, variance);
    if (status == VTX_OK && hold_at_end(c, EXPONENT, -1, 1, exponent_variance, variance))
        status = fit_curve(c);
    memcpy(held, c->held, sizeof held);
    held[LEAK] = leak_held;
    spread_over_suppositions(c, held, variance);
    if (status == VTX_OK)
        status = admit_held(c, (const double (*)[COORDINATES])variance);
    c->held[LEAK] = leak_held;
    shift_to_mean(c);
    memcpy(c->share, share, sizeof share);
    c->chi_square = chi_square;
    c->freedom = freedom;
    return status;
}

static void describe_tube(const struct curve_fit *c, double confidence, vtx_calibration *out)
{
    vtx_tube *t = &out->tube;
    const double peak = c->curve.x[LOGIT_PEAK];
    const double half = interval_factor(confidence, c->curve.scatter, c->curve.energy_scale, c->freedom) * sqrt(c->curve.covariance[LOGIT_PEAK][LOGIT_PEAK] + square(c->curve.scatter));
    *t = c->curve.tube;
    t->peak_efficiency = logistic(peak);
    t->efficiency_low = logistic(peak - half);
    t->efficiency_high = logistic(peak + half);
    t->coldest_fraction = c->held[LOGIT_FRACTION] ? t->coldest_fraction : 0.5 * logistic(c->curve.x[LOGIT_FRACTION]);
    t->pressure_exponent = c->curve.x[EXPONENT];
    t->hot_leak = larger(c->curve.x[LEAK], 0);
    t->basis = VTX_TUBE_CALIBRATED;
    out->peak_efficiency_deviation = slope_of_logit(t->peak_efficiency) * sqrt(c->curve.covariance[LOGIT_PEAK][LOGIT_PEAK]);
    out->coldest_fraction_deviation = 0.5 * slope_of_logit(2 * t->coldest_fraction) * sqrt(c->curve.covariance[LOGIT_FRACTION][LOGIT_FRACTION]);
    out->pressure_exponent_deviation = sqrt(c->curve.covariance[EXPONENT][EXPONENT]);
    out->hot_leak_deviation = sqrt(c->curve.covariance[LEAK][LEAK]);
}

static int hard_to_tell_apart(const struct curve_fit *c)
{
    if (c->share[LOGIT_PEAK] < share_to_trust)
        return 1;
    for (size_t k = 0; k < FITTED; k++)
        for (size_t l = 0; l < k; l++)
            if (!c->held[k] && !c->held[l] && square(c->curve.covariance[k][l]) > square(0.99) * c->curve.covariance[k][k] * c->curve.covariance[l][l])
                return 1;
    return 0;
}

static int doubts_any(const struct curve_fit *c)
{
    for (size_t i = 0; i < c->count; i++)
        if (c->reading[i].used && c->reading[i].is_doubted)
            return 1;
    return 0;
}

static void report(const struct curve_fit *c, int32_t model, double confidence, vtx_calibration *out)
{
    out->confidence = confidence;
    out->model = model;
    describe_tube(c, confidence, out);
    memcpy(out->data_share, c->share, sizeof out->data_share);
    memcpy(out->covariance, c->curve.covariance, sizeof out->covariance);
    out->efficiency_scatter = c->curve.scatter;
    out->energy_scale = c->curve.energy_scale;
    for (size_t k = FITTED; k < COORDINATES; k++)
        out->departure[k - FITTED] = sqrt(c->departing.moment[k - FITTED][k - FITTED]);
    out->chi_square = c->chi_square;
    out->degrees_of_freedom = c->freedom;
    out->chi_square_probability = c->freedom > 0.5 ? chi_square_exceedance(c->chi_square, c->freedom) : quiet_nan();
    out->readings_set_aside = out->readings_used - (int32_t)used_readings(c);
    out->readings_used -= out->readings_set_aside;
    out->fraction_held = c->held[LOGIT_FRACTION];
    out->exponent_held = c->held[EXPONENT];
    out->leak_held = c->held[LEAK];
    const int missing = !is_finite(out->cold_left_out) || !is_finite(out->hot_left_out) || !is_finite(out->energy_residual) || c->freedom <= 0.5;
    out->advisories = (out->readings_set_aside || doubts_any(c) ? VTX_ADVISORY_OUTLIER : 0)
                    | (out->readings_impossible ? VTX_ADVISORY_IMPOSSIBLE_READINGS : 0)
                    | (out->fraction_held || out->exponent_held || out->leak_held ? VTX_ADVISORY_PARAMETER_HELD : 0)
                    | (hard_to_tell_apart(c) ? VTX_ADVISORY_POORLY_DETERMINED : 0)
                    | (is_widened(c->curve.scatter, c->curve.energy_scale) ? VTX_ADVISORY_MODEL_MISFIT : 0)
                    | (missing ? VTX_ADVISORY_FIELD_UNAVAILABLE : 0);
}

static vtx_status calibrate(struct curve_fit *c, const vtx_reading *readings, size_t count, int32_t model, double confidence,
                            vtx_calibration *out, vtx_reading_check *checks)
{
    vtx_status status = take_readings(c, readings, count, model, out);
    if (status != VTX_OK)
        return status;
    centre_reference(c);
    status = find_outliers(c);
    status = status == VTX_OK ? widen_for_misfit(c) : status;
    status = status == VTX_OK ? diagnose_all(c, out, checks) : status;
    status = status == VTX_OK ? settle_coordinates(c) : status;
    for (size_t i = 0; i < count && checks && status == VTX_OK; i++)
        status = final_residuals(c, i, &checks[i]);
    if (status == VTX_OK)
        report(c, model, confidence, out);
    return status;
}

static vtx_status fail(vtx_calibration *calibration, vtx_reading_check *checks, size_t count, vtx_status status)
{
    for (size_t i = 0; checks && i < count; i++)
        POISON_STRUCT(&checks[i], vtx_reading_check, verdict, status);
    return POISON_STRUCT(calibration, vtx_calibration, tube.basis, status);
}

vtx_status vtx_tube_calibrate(const vtx_reading *readings, size_t count, int32_t model, const vtx_tube *prior, double confidence,
                              vtx_calibration *calibration, vtx_reading_check *checks)
{
    struct curve_fit c;
    vtx_tube unknown;
    vtx_tube_init(&unknown);
    vtx_status status = worse(require(readings && calibration && count > 0), check_confidence(confidence));
    status = worse(status, prior ? check_tube(prior) : VTX_OK);
    if (status == VTX_OK && count > READINGS_MAX)
        status = VTX_OUT_OF_RANGE;
    for (size_t i = 0; i < count && status == VTX_OK; i++)
        status = check_reading(&readings[i], model);
    if (status != VTX_OK)
        return fail(calibration, checks, count > READINGS_MAX ? 0 : count, status);
    memset(&c, 0, sizeof c);
    c.believed = 1;
    memset(calibration, 0, sizeof *calibration);
    set_prior(&c, prior ? prior : &unknown);
    status = calibrate(&c, readings, count, model, confidence, calibration, checks);
    return status == VTX_OK ? VTX_OK : fail(calibration, checks, count, status);
}
