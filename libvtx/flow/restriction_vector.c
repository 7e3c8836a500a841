/* The batch form of the orifice on the vector unit, for one gas. */
#include "../base/vector.h"
#include "restriction_kernel.h"

enum column { AREA, COEFFICIENT, INLET_PRESSURE, INLET_TEMPERATURE, OUTLET_PRESSURE };
enum result { MASS_FLOW, CHOKED };

/* Most blocks are all choked or all subsonic: the law that nothing needs is left out. */
static inline void orifice_block(struct vector_block *b)
{
    vtx_gas gas;
    memcpy(&gas, b->record, sizeof gas);
    const double gamma = gas.heat_capacity_ratio;
    const int64_t good_gas = is_gas(&gas);
    const size_t n = b->n;
    int64_t sonic[VECTOR_ITEMS], some = 0, all = 1;
    for (size_t i = 0; i < n; i++) {
        sonic[i] = is_orifice_choked(gamma, b->in[INLET_PRESSURE][i], b->in[OUTLET_PRESSURE][i]);
        some |= sonic[i];
        all &= sonic[i];
        b->out[CHOKED][i] = sonic[i] ? 1.0 : 0.0;
        b->ordinary[i] = good_gas & is_within(b->in[AREA][i], FLOW_AREA_MIN, FLOW_AREA_MAX)
            & is_within(b->in[COEFFICIENT][i], DISCHARGE_COEFFICIENT_MIN, DISCHARGE_COEFFICIENT_MAX)
            & are_ends(b->in[INLET_PRESSURE][i], b->in[INLET_TEMPERATURE][i], b->in[OUTLET_PRESSURE][i]);
    }
    if (!all)
        for (size_t i = 0; i < n; i++)
            b->out[MASS_FLOW][i] = b->in[AREA][i] * b->in[COEFFICIENT][i]
                * orifice_subsonic_flux(&gas, b->in[INLET_PRESSURE][i], b->in[INLET_TEMPERATURE][i], b->in[OUTLET_PRESSURE][i]);
    if (some)
        for (size_t i = 0; i < n; i++) {
            const double flow = b->in[AREA][i] * b->in[COEFFICIENT][i]
                * orifice_choked_flux(&gas, b->in[INLET_PRESSURE][i], b->in[INLET_TEMPERATURE][i]);
            b->out[MASS_FLOW][i] = sonic[i] ? flow : b->out[MASS_FLOW][i];
        }
}
VECTOR_VARIANTS(orifice)

static vtx_status orifice_item(const struct batch *b, size_t i)
{
    vtx_gas gas;
    double mass_flow;
    int32_t choked;
    batch_get_bytes(b, 0, i, &gas, sizeof gas);
    const vtx_status answer = vtx_orifice_mass_flow(&gas, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i),
                                                    batch_get(b, 5, i), &mass_flow, &choked);
    batch_put(b, 0, i, &mass_flow, sizeof mass_flow);
    batch_put(b, 1, i, &choked, sizeof choked);
    return answer;
}

static void put_orifice(const struct batch *b, const struct vector_block *block, size_t at, size_t i, size_t items)
{
    char *flow = (char *)b->out[0].base + (ptrdiff_t)i * b->out[0].stride;
    for (size_t k = at; k < at + items; k++, flow += b->out[0].stride)
        memcpy(flow, &block->out[MASS_FLOW][k], sizeof(double));
    if (!b->out[1].base)
        return;
    char *choked = (char *)b->out[1].base + (ptrdiff_t)i * b->out[1].stride;
    for (size_t k = at; k < at + items; k++, choked += b->out[1].stride) {
        const int32_t is_choked_there = (int32_t)block->out[CHOKED][k];
        memcpy(choked, &is_choked_there, sizeof is_choked_there);
    }
}

vtx_status vtx_orifice_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *area, ptrdiff_t area_stride,
                                       const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride,
                                       const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
                                       ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
                                       ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked,
                                       ptrdiff_t choked_stride, int32_t *status, size_t *failed)
{
    const struct vector_call call = { VECTOR_KERNELS(orifice), orifice_item, put_orifice };
    const struct batch_input in[] = { { gas, gas_stride }, { area, area_stride }, { discharge_coefficient, discharge_coefficient_stride },
                                      { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
                                      { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0 }, { choked, choked_stride, 1 } };
    return vector_run(&call, 1, n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, status, failed);
}
