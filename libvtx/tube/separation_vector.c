/* The batch form of the separation on the vector unit: perfect gas, one tube without pressure exponent and heat leaks. */
#include "../base/vector.h"
#include "ideal_streams.h"

enum column { INLET_PRESSURE, INLET_TEMPERATURE, HUMIDITY_RATIO, COLD_PRESSURE, HOT_PRESSURE, COLD_FRACTION };
enum result { COLD, COLD_LOW, COLD_HIGH, HOT, HOT_LOW, HOT_HIGH, ENTROPY, EFFICIENCY, ISENTROPIC, ADVISORIES };

static inline void separation_block(struct vector_block *b)
{
    vtx_tube tube;
    memcpy(&tube, b->record, sizeof tube);
    const int64_t good_tube = is_ordinary_tube(&tube) && tube.pressure_exponent == 0 && tube.cold_leak == 0 && tube.hot_leak == 0;
    const size_t n = b->n;
    /* Said here, the compiler leaves out what they would need. */
    tube.pressure_exponent = tube.cold_leak = tube.hot_leak = 0;
    double log_cold[VECTOR_ITEMS], log_hot[VECTOR_ITEMS];
    for (size_t i = 0; i < n; i++) {
        log_cold[i] = log_pressure_ratio(b->in[INLET_PRESSURE][i], b->in[COLD_PRESSURE][i]);
        log_hot[i] = log_pressure_ratio(b->in[INLET_PRESSURE][i], b->in[HOT_PRESSURE][i]);
    }
    for (size_t i = 0; i < n; i++) {
        vtx_streams s;
        separate_by_logarithms(&tube, b->in[INLET_TEMPERATURE][i], log_cold[i], log_hot[i], b->in[COLD_FRACTION][i], &s);
        b->out[COLD][i] = s.cold_temperature;
        b->out[COLD_LOW][i] = s.cold_temperature_low;
        b->out[COLD_HIGH][i] = s.cold_temperature_high;
        b->out[HOT][i] = s.hot_temperature;
        b->out[HOT_LOW][i] = s.hot_temperature_low;
        b->out[HOT_HIGH][i] = s.hot_temperature_high;
        b->out[ENTROPY][i] = s.entropy_generation;
        b->out[EFFICIENCY][i] = s.isentropic_efficiency;
        b->out[ISENTROPIC][i] = s.isentropic_temperature;
        b->out[ADVISORIES][i] = s.advisories;
    }
    for (size_t i = 0; i < n; i++)
        b->ordinary[i] = good_tube & are_ordinary_ends(b->in[INLET_PRESSURE][i], b->in[INLET_TEMPERATURE][i], b->in[HUMIDITY_RATIO][i],
                                                       b->in[COLD_PRESSURE][i], b->in[HOT_PRESSURE][i], b->in[COLD_FRACTION][i]);
}
VECTOR_VARIANTS(separation)

static vtx_status separation_item(const struct batch *b, size_t i)
{
    vtx_tube tube;
    vtx_streams streams;
    batch_get_bytes(b, 0, i, &tube, sizeof tube);
    const vtx_status answer = vtx_tube_separate(&tube, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
                                                batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), &streams);
    batch_put(b, 0, i, &streams, sizeof streams);
    return answer;
}

/* What a column does not hold is as separate_by_logarithms gives it without leaks. */
static void put_streams(const struct batch *b, const struct vector_block *block, size_t at, size_t i)
{
    const vtx_streams s = {
        .cold_temperature = block->out[COLD][at],
        .cold_temperature_low = block->out[COLD_LOW][at],
        .cold_temperature_high = block->out[COLD_HIGH][at],
        .hot_temperature = block->out[HOT][at],
        .hot_temperature_low = block->out[HOT_LOW][at],
        .hot_temperature_high = block->out[HOT_HIGH][at],
        .cold_fraction = block->in[COLD_FRACTION][at],
        .entropy_generation = block->out[ENTROPY][at],
        .isentropic_efficiency = block->out[EFFICIENCY][at],
        .isentropic_temperature = block->out[ISENTROPIC][at],
        .throttle_temperature = block->in[INLET_TEMPERATURE][at],
        .advisories = (int32_t)block->out[ADVISORIES][at],
    };
    batch_put(b, 0, i, &s, sizeof s);
}

vtx_status vtx_tube_separate_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model, const double *inlet_pressure,
                                   ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
                                   const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
                                   ptrdiff_t cold_pressure_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
                                   const double *cold_fraction, ptrdiff_t cold_fraction_stride, vtx_streams *streams,
                                   ptrdiff_t streams_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(separation), separation_item, put_streams };
    const struct batch_input in[] = { { tube, tube_stride }, { inlet_pressure, inlet_pressure_stride },
                                      { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
                                      { cold_pressure, cold_pressure_stride }, { hot_pressure, hot_pressure_stride },
                                      { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { streams, streams_stride, 0 } };
    const int32_t selector[] = { model };
    if (model != VTX_AIR_IDEAL)
        return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, separation_item, status, failed);
    return vector_run(&call, 1, n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, status, failed);
}
