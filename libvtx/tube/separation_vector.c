/* The batch form of the separation on the vector unit: perfect gas, one tube without pressure exponent and heat leaks. */
#include "../base/vector.h"
#include "ideal_streams.h"

enum column { INLET_PRESSURE, INLET_TEMPERATURE, HUMIDITY_RATIO, COLD_PRESSURE, HOT_PRESSURE, COLD_FRACTION };
/* The advisories are an integer of the same width. */
enum result { COLD, COLD_LOW, COLD_HIGH, HOT, HOT_LOW, HOT_HIGH, ENTROPY, EFFICIENCY, ISENTROPIC, ADVISORIES };

static inline void separation_block(struct vector_block *b)
{
    vtx_tube tube;
    memcpy(&tube, b->record, sizeof tube);
    const int64_t good_tube = is_ordinary_tube(&tube) && tube.pressure_exponent == 0 && tube.cold_leak == 0 && tube.hot_leak == 0;
    const size_t n = b->n;
    /* Said here, the compiler leaves out what they would need. */
    tube.pressure_exponent = tube.cold_leak = tube.hot_leak = 0;
    /* Short loops: a long one is one chain of operations that waits for itself. */
    double log_cold[VECTOR_ITEMS], log_hot[VECTOR_ITEMS], drop[VECTOR_ITEMS];
    int64_t differ = 0;
    for (size_t i = 0; i < n; i++)
        differ |= b->in[COLD_PRESSURE][i] != b->in[HOT_PRESSURE][i];
    for (size_t i = 0; i < n; i++)
        log_hot[i] = log_cold[i] = log_pressure_ratio(b->in[INLET_PRESSURE][i], b->in[COLD_PRESSURE][i]);
    if (differ)
        for (size_t i = 0; i < n; i++)
            log_hot[i] = log_pressure_ratio(b->in[INLET_PRESSURE][i], b->in[HOT_PRESSURE][i]);
    for (size_t i = 0; i < n; i++)
        drop[i] = ideal_drop(b->in[INLET_TEMPERATURE][i], log_cold[i]);
    for (size_t i = 0; i < n; i++) {
        vtx_streams s;
        separate_by_drop(&tube, b->in[INLET_TEMPERATURE][i], log_cold[i], drop[i], b->in[COLD_FRACTION][i], &s);
        b->out[COLD][i] = s.cold_temperature;
        b->out[COLD_LOW][i] = s.cold_temperature_low;
        b->out[COLD_HIGH][i] = s.cold_temperature_high;
        b->out[HOT][i] = s.hot_temperature;
        b->out[HOT_LOW][i] = s.hot_temperature_low;
        b->out[HOT_HIGH][i] = s.hot_temperature_high;
        b->out[EFFICIENCY][i] = s.isentropic_efficiency;
        b->out[ISENTROPIC][i] = s.isentropic_temperature;
    }
    for (size_t i = 0; i < n; i++) {
        const int64_t bits = wide_ideal_advisories(&tube, log_cold[i], drop[i], b->in[COLD_FRACTION][i]);
        memcpy(&b->out[ADVISORIES][i], &bits, sizeof bits);
    }
    for (size_t i = 0; i < n; i++)
        b->out[ENTROPY][i] = ideal_entropy(b->in[INLET_TEMPERATURE][i], log_cold[i], log_hot[i], b->in[COLD_FRACTION][i], b->out[COLD][i],
                                           b->out[HOT][i]);
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

/* Two neighbouring fields with one store. */
#define PUT_PAIR(field, first, second) put_pair(to + offsetof(vtx_streams, field), (first), (second))

static inline void put_pair(char *to, double first, double second)
{
    const double pair[2] = { first, second };
    memcpy(to, pair, sizeof pair);
}

vector_store VECTOR_RECORDS(separation);

/* What a column does not hold is as separate_by_drop gives it without leaks: zero from joule_thomson_drop on. */
void VECTOR_RECORDS(separation)(const struct batch *b, const struct vector_block *block, size_t at, size_t i, size_t items)
{
    char *to = (char *)b->out[0].base + (ptrdiff_t)i * b->out[0].stride;
    for (size_t k = at; k < at + items; k++, to += b->out[0].stride) {
        const int32_t ending[2] = { (int32_t)bits_of(block->out[ADVISORIES][k]), 0 };
        PUT_PAIR(cold_temperature, block->out[COLD][k], block->out[COLD_LOW][k]);
        PUT_PAIR(cold_temperature_high, block->out[COLD_HIGH][k], block->out[HOT][k]);
        PUT_PAIR(hot_temperature_low, block->out[HOT_LOW][k], block->out[HOT_HIGH][k]);
        PUT_PAIR(cold_fraction, block->in[COLD_FRACTION][k], block->out[ENTROPY][k]);
        PUT_PAIR(isentropic_efficiency, block->out[EFFICIENCY][k], block->out[ISENTROPIC][k]);
        PUT_PAIR(throttle_temperature, block->in[INLET_TEMPERATURE][k], 0);
        memset(to + offsetof(vtx_streams, heat_gain), 0, offsetof(vtx_streams, advisories) - offsetof(vtx_streams, heat_gain));
        put_field(to, offsetof(vtx_streams, advisories), ending, sizeof ending);
    }
}

vtx_status vtx_tube_separate_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model, const double *inlet_pressure,
                                   ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
                                   const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
                                   ptrdiff_t cold_pressure_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
                                   const double *cold_fraction, ptrdiff_t cold_fraction_stride, vtx_streams *streams,
                                   ptrdiff_t streams_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(separation), separation_item, VECTOR_RECORDS(separation), sizeof *streams };
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
