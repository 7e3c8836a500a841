/* Dew point and wet bulb of the ideal mixture from relative humidity on the vector unit. */
#include "../base/vector.h"
#include "ideal_humidity_kernel.h"

enum column { PRESSURE, TEMPERATURE, HUMIDITY };

static inline void ideal_dew_block(struct vector_block *b)
{
    const size_t n = b->n;
    double vapour_pressure[VECTOR_ITEMS];
    for (size_t i = 0; i < n; i++) {
        const double root = liquid_root(b->in[TEMPERATURE][i]);
        b->out[0][i] = ideal_dew_point(b->in[HUMIDITY][i], root);
        vapour_pressure[i] = b->in[HUMIDITY][i] * square(square(root));
    }
    for (size_t i = 0; i < n; i++)
        b->ordinary[i] = is_ordinary_humidity(b->in[PRESSURE][i], b->in[TEMPERATURE][i], b->in[HUMIDITY][i])
                         & (vapour_pressure[i] >= SUPERCOOLED_PRESSURE_MIN) & is_ordinary_vapour(vapour_pressure[i], b->in[PRESSURE][i]);
}
VECTOR_VARIANTS(ideal_dew)

/* wick_steps in short loops: a long one is one chain of operations that waits for itself. */
struct wicks {
    double humidity_ratio[VECTOR_ITEMS];
    double start[VECTOR_ITEMS];
    double at[VECTOR_ITEMS], step[VECTOR_ITEMS];
    struct {
        double pressure[VECTOR_ITEMS], slope[VECTOR_ITEMS], curvature[VECTOR_ITEMS];
    } saturation;
    int64_t wet[VECTOR_ITEMS];
};

static inline void find_wick_saturations(struct wicks *w, size_t n, int32_t phase)
{
    for (size_t i = 0; i < n; i++) {
        const struct saturation s = wick_saturation(phase, w->at[i]);
        w->saturation.pressure[i] = s.pressure;
        w->saturation.slope[i] = s.slope;
        w->saturation.curvature[i] = s.curvature;
    }
}

static inline void step_wicks(struct wicks *w, const struct vector_block *b, int32_t phase)
{
    const size_t n = b->n;
    for (size_t i = 0; i < n; i++) {
        const struct wick wick = { phase, b->in[PRESSURE][i], b->in[TEMPERATURE][i], w->humidity_ratio[i], 0 };
        const struct wick_balance balance = ideal_balance(phase, &wick);
        const struct saturation s = { w->saturation.pressure[i], w->saturation.slope[i], w->saturation.curvature[i] };
        const double step = halley_step(ideal_excess_at(&balance, w->at[i], s));
        w->step[i] = step;
        w->at[i] = within(w->at[i] - step, wick_low(phase), wick_high(phase, wick.temperature));
    }
}

/* For the items whose wick is wet (or not); the others keep what they have. */
static inline void find_wet_bulbs(struct wicks *w, struct vector_block *b, int32_t phase)
{
    const size_t n = b->n;
    for (size_t i = 0; i < n; i++)
        w->at[i] = within(w->start[i], wick_low(phase), wick_high(phase, b->in[TEMPERATURE][i]));
    for (int k = 0; k < 2; k++) {
        find_wick_saturations(w, n, phase);
        step_wicks(w, b, phase);
    }
    for (size_t i = 0; i < n; i++) {
        const int64_t chosen = phase == PHASE_LIQUID ? w->wet[i] : !w->wet[i];
        b->out[0][i] = chosen ? w->at[i] : b->out[0][i];
        b->ordinary[i] &= !chosen | (fabs(w->step[i]) <= wick_step_max);
    }
}

static inline void ideal_wet_block(struct vector_block *b)
{
    const size_t n = b->n;
    struct wicks w;
    int64_t some = 0, all = 1;
    for (size_t i = 0; i < n; i++)
        w.saturation.pressure[i] = liquid_polynomial_pressure(b->in[TEMPERATURE][i]);
    for (size_t i = 0; i < n; i++) {
        const double vapour_pressure = b->in[HUMIDITY][i] * w.saturation.pressure[i];
        const struct wick wick = ideal_wick(PHASE_LIQUID, b->in[PRESSURE][i], b->in[TEMPERATURE][i], vapour_pressure);
        w.humidity_ratio[i] = wick.humidity_ratio;
        w.start[i] = wick_start(&wick, vapour_pressure, w.saturation.pressure[i]);
    }
    for (size_t i = 0; i < n; i++) {
        const double pressure = b->in[PRESSURE][i], temperature = b->in[TEMPERATURE][i], humidity = b->in[HUMIDITY][i];
        const struct wick wick = { PHASE_LIQUID, pressure, temperature, w.humidity_ratio[i], 0 };
        const struct wick_balance over_liquid = ideal_balance(PHASE_LIQUID, &wick);
        w.wet[i] = ideal_wick_is_wet(&wick, &over_liquid);
        some |= w.wet[i];
        all &= w.wet[i];
        b->out[0][i] = 0;
        b->ordinary[i] = is_ordinary_humidity(pressure, temperature, humidity)
                         & is_ordinary_vapour(humidity * w.saturation.pressure[i], pressure);
    }
    if (some)
        find_wet_bulbs(&w, b, PHASE_LIQUID);
    if (!all)
        find_wet_bulbs(&w, b, PHASE_ICE);
}
VECTOR_VARIANTS(ideal_wet)

static vtx_status humidity_item(const struct batch *b, size_t i)
{
    double result;
    const vtx_status answer = vtx_moist_air_humidity(b->selector[0], batch_get(b, PRESSURE, i), batch_get(b, TEMPERATURE, i), b->selector[1],
                                                     batch_get(b, HUMIDITY, i), b->selector[2], &result);
    batch_put(b, 0, i, &result, sizeof result);
    return answer;
}

vtx_status vtx_moist_air_humidity_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
                                        const double *temperature, ptrdiff_t temperature_stride, int32_t property, const double *value,
                                        ptrdiff_t value_stride, int32_t wanted, double *result, ptrdiff_t result_stride, int32_t *status,
                                        size_t *failed)
{
    const struct vector_call dew_point = { VECTOR_KERNELS(ideal_dew), humidity_item, NULL };
    const struct vector_call wet_bulb = { VECTOR_KERNELS(ideal_wet), humidity_item, NULL };
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride }, { value, value_stride } };
    const struct batch_output out[] = { { result, result_stride, 0 } };
    const int32_t selector[] = { model, property, wanted };
    if (model == VTX_AIR_IDEAL && property == VTX_RELATIVE_HUMIDITY && (wanted == VTX_DEW_POINT || wanted == VTX_WET_BULB))
        return vector_run(wanted == VTX_DEW_POINT ? &dew_point : &wet_bulb, 0, n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector,
                          status, failed);
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, humidity_item, status, failed);
}
