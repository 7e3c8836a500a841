/* Batch forms of the saturation curves on the vector unit. */
#include <vtx/water.h>

#include "../base/vector.h"
#include "water_kernel.h"

/* What is ordinary is found in loops of its own: comparisons of 64-bit masks, which the smallest vector unit lacks, would keep the
 * formulas off it too. */

/* Hot blocks are few: the published formula, which is the dearer one, is worked out for them only. */
static inline void liquid_pressure_block(struct vector_block *b)
{
    const size_t n = b->n;
    int64_t hot = 0;
    for (size_t i = 0; i < n; i++)
        b->out[0][i] = liquid_polynomial_pressure(b->in[0][i]);
    for (size_t i = 0; i < n; i++) {
        const double temperature = b->in[0][i];
        b->ordinary[i] = (temperature >= SUPERCOOLED_TEMPERATURE_MIN) & (temperature <= WATER_TEMPERATURE_MAX);
        hot |= temperature > LIQUID_POLYNOMIAL_TEMPERATURE_MAX;
    }
    if (hot)
        for (size_t i = 0; i < n; i++) {
            const double temperature = b->in[0][i], published = published_liquid_pressure(temperature);
            b->out[0][i] = temperature > LIQUID_POLYNOMIAL_TEMPERATURE_MAX ? published : b->out[0][i];
        }
}
VECTOR_VARIANTS(liquid_pressure)

static inline void liquid_temperature_block(struct vector_block *b)
{
    const size_t n = b->n;
    for (size_t i = 0; i < n; i++)
        b->out[0][i] = liquid_saturation_temperature(b->in[0][i]);
    for (size_t i = 0; i < n; i++) {
        const double pressure = b->in[0][i];
        b->ordinary[i] = (pressure >= SUPERCOOLED_PRESSURE_MIN) & (pressure <= WATER_PRESSURE_MAX);
    }
}
VECTOR_VARIANTS(liquid_temperature)

static inline void ice_pressure_block(struct vector_block *b)
{
    const size_t n = b->n;
    for (size_t i = 0; i < n; i++)
        b->out[0][i] = ice_polynomial_pressure(b->in[0][i]);
    for (size_t i = 0; i < n; i++) {
        const double temperature = b->in[0][i];
        b->ordinary[i] = (temperature >= ICE_POLYNOMIAL_TEMPERATURE_MIN) & (temperature <= triple_temperature);
    }
}
VECTOR_VARIANTS(ice_pressure)

static inline void ice_temperature_block(struct vector_block *b)
{
    const size_t n = b->n;
    for (size_t i = 0; i < n; i++)
        b->out[0][i] = ice_polynomial_temperature(b->in[0][i]);
    for (size_t i = 0; i < n; i++) {
        const double pressure = b->in[0][i];
        b->ordinary[i] = (pressure >= ICE_POLYNOMIAL_PRESSURE_MIN) & (pressure <= triple_pressure);
    }
}
VECTOR_VARIANTS(ice_temperature)

typedef vtx_status scalar_call(double x, double *y);

static inline vtx_status call_item(scalar_call *call, const struct batch *b, size_t i)
{
    double y;
    const vtx_status answer = call(batch_get(b, 0, i), &y);
    batch_put(b, 0, i, &y, sizeof y);
    return answer;
}

static vtx_status liquid_pressure_item(const struct batch *b, size_t i) { return call_item(vtx_water_saturation_pressure, b, i); }
static vtx_status liquid_temperature_item(const struct batch *b, size_t i) { return call_item(vtx_water_saturation_temperature, b, i); }
static vtx_status ice_pressure_item(const struct batch *b, size_t i) { return call_item(vtx_ice_sublimation_pressure, b, i); }
static vtx_status ice_temperature_item(const struct batch *b, size_t i) { return call_item(vtx_ice_sublimation_temperature, b, i); }

static vtx_status run(const struct vector_call *call, size_t n, const double *x, ptrdiff_t x_stride, double *y, ptrdiff_t y_stride,
                      int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { x, x_stride } };
    const struct batch_output out[] = { { y, y_stride, 0 } };
    return vector_run(call, 0, n, in, 1, out, 1, NULL, status, failed);
}

vtx_status vtx_water_saturation_pressure_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride, double *pressure,
                                               ptrdiff_t pressure_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(liquid_pressure), liquid_pressure_item, NULL };
    return run(&call, n, temperature, temperature_stride, pressure, pressure_stride, status, failed);
}

vtx_status vtx_water_saturation_temperature_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride, double *temperature,
                                                  ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(liquid_temperature), liquid_temperature_item, NULL };
    return run(&call, n, pressure, pressure_stride, temperature, temperature_stride, status, failed);
}

vtx_status vtx_ice_sublimation_pressure_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride, double *pressure,
                                              ptrdiff_t pressure_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(ice_pressure), ice_pressure_item, NULL };
    return run(&call, n, temperature, temperature_stride, pressure, pressure_stride, status, failed);
}

vtx_status vtx_ice_sublimation_temperature_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride, double *temperature,
                                                 ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(ice_temperature), ice_temperature_item, NULL };
    return run(&call, n, pressure, pressure_stride, temperature, temperature_stride, status, failed);
}
