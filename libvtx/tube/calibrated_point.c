/* Prediction with a calibrated tube. */
#include <vtx/calibration.h>

#include "fitted_curve.h"
#include "interval.h"

/* Deviations of fit coordinates that vtx_tube_calibrate can find stay far below this. */
static const double variance_max = 1e3;

static int is_covariance(const double *covariance)
{
    int good = 1;
    for (size_t k = 0; k < COORDINATES; k++)
        good &= is_finite(covariance[k * (COORDINATES + 1)]) && covariance[k * (COORDINATES + 1)] >= 0
             && covariance[k * (COORDINATES + 1)] <= variance_max;
    for (size_t k = 0; good && k < COORDINATES; k++)
        for (size_t l = 0; l < COORDINATES; l++) {
            const double shared = covariance[k * COORDINATES + l];
            good &= is_finite(shared) && fabs(shared) <= variance_max;
        }
    return good;
}

/* Only a record that vtx_tube_calibrate wrote passes. */
static vtx_status check_calibration(const vtx_calibration *c)
{
    if (!c)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_tube(&c->tube), require(c->tube.basis == VTX_TUBE_CALIBRATED));
    status = worse(status, worse(check_amount(c->efficiency_scatter, 10), check_range(c->energy_scale, 1, 1e6)));
    return worse(status, worse(check_finite(c->degrees_of_freedom), require(is_covariance(c->covariance))));
}

static void take_curve(const vtx_calibration *c, struct curve *curve)
{
    curve->tube = c->tube;
    curve->x[LOGIT_PEAK] = logit(within(c->tube.peak_efficiency, 1e-5, 1 - 1e-5));
    curve->x[LOGIT_FRACTION] = logit(within(2 * c->tube.coldest_fraction, 1e-5, 1 - 1e-5));
    curve->x[EXPONENT] = c->tube.pressure_exponent;
    curve->x[LEAK] = c->tube.hot_leak;
    for (size_t k = FITTED; k < COORDINATES; k++)
        curve->x[k] = 0;
    memcpy(curve->covariance, c->covariance, sizeof curve->covariance);
    curve->scatter = c->efficiency_scatter;
    curve->energy_scale = c->energy_scale;
}

/* An interval of the curve and one of the next reading, for one outlet. */
static void fill_intervals(double temperature, double deviation, double reading_deviation, double factor, double *field)
{
    field[0] = temperature;
    field[1] = deviation;
    field[2] = temperature - factor * deviation;
    field[3] = temperature + factor * deviation;
    field[4] = temperature - factor * reading_deviation;
    field[5] = temperature + factor * reading_deviation;
}

static vtx_status predict(const struct curve *curve, struct curve_reading *r, double factor, vtx_calibrated_point *out)
{
    double y[OUTLETS], gradient[OUTLETS][COORDINATES], field[OUTLETS][6];
    const struct reading_state *s = &r->state;
    vtx_status status = expand(s->model, s->x[INLET_PRESSURE], s->x[INLET_TEMPERATURE], s->x[HUMIDITY], s->x[COLD_PRESSURE], &r->expansion);
    status = status == VTX_OK ? curve_outlets(curve, curve->x, s, &r->expansion, y) : status;
    status = status == VTX_OK ? curve_gradient(curve, r, gradient) : status;
    status = status == VTX_OK ? weigh_reading(curve, curve->x, r) : status;
    if (status != VTX_OK)
        return status;
    for (int o = 0; o < OUTLETS; o++) {
        double of_curve = 0;
        for (int k = 0; k < COORDINATES; k++)
            for (int l = 0; l < COORDINATES; l++)
                of_curve += gradient[o][k] * curve->covariance[k][l] * gradient[o][l];
        of_curve = larger(of_curve, 0);
        fill_intervals(y[o], sqrt(of_curve + square(curve->scatter * gradient[o][LOGIT_PEAK])), sqrt(of_curve + r->covariance[o][o]), factor, field[o]);
    }
    memcpy(&out->cold_temperature, field[COLD], sizeof field[COLD]);
    if (hot_counts(s->x[COLD_FRACTION]))
        memcpy(&out->hot_temperature, field[HOT], sizeof field[HOT]);
    else
        poison_record(&out->hot_temperature, ARRAY_LENGTH(field[HOT]), 0, VTX_OK);
    return VTX_OK;
}

vtx_status vtx_calibration_predict(const vtx_calibration *calibration, const vtx_reading *point, double confidence,
                                   vtx_calibrated_point *prediction)
{
    static const int32_t of_worth = VTX_ADVISORY_PARAMETER_HELD | VTX_ADVISORY_POORLY_DETERMINED | VTX_ADVISORY_MODEL_MISFIT;
    struct curve curve;
    struct curve_reading r;
    vtx_status status = worse(require(prediction != NULL), worse(check_calibration(calibration), check_confidence(confidence)));
    status = worse(status, point ? check_reading(point, calibration ? calibration->model : 0) : VTX_BAD_ARGUMENT);
    if (status == VTX_OK)
        status = place_point(point, calibration->model, calibration->tube.ambient_temperature, &r.state);
    if (status == VTX_OK) {
        take_curve(calibration, &curve);
        const double factor = interval_factor(confidence, curve.scatter, curve.energy_scale, calibration->degrees_of_freedom);
        status = predict(&curve, &r, factor, prediction);
    }
    if (status != VTX_OK)
        return POISON_STRUCT(prediction, vtx_calibrated_point, advisories, status);
    prediction->advisories = (calibration->advisories & of_worth)
                           | curve_advisories(&calibration->tube, r.expansion.log_ratio, r.state.x[COLD_FRACTION])
                           | (hot_counts(r.state.x[COLD_FRACTION]) ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE);
    prediction->spare = 0;
    return VTX_OK;
}
