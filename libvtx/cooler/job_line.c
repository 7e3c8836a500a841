/* Line and coolers in balance: what the line leaves at the flow that its end pressure draws. */
#include "job_line.h"

#include "../base/root.h"
#include "../flow/chain_kernel.h"

struct balance {
    const vtx_job *job;
    const struct operation *operation;
    struct chain chain;
    struct chain_end end;
    struct network_flow flow;
    double wanted; /* kg/s at the start of the line */
    vtx_status status;
};

double job_supply_flow(const vtx_job *job, double cooler_flow)
{
    double ways = job->running;
    for (int32_t i = 0; i < job->elements; i++)
        if (job->line[i].kind == VTX_CHAIN_MANIFOLD)
            ways *= job->line[i].ways;
    return ways * cooler_flow;
}

/* Falls with the pressure at the cooler. */
static double pressure_excess(double pressure, void *context)
{
    struct balance *b = context;
    b->status = operation_flow(b->operation, pressure, &b->flow);
    if (b->status != VTX_OK)
        return quiet_nan();
    const struct stream start = { b->job->supply.pressure, b->job->supply.temperature, job_supply_flow(b->job, b->flow.mass_flow), 1 };
    b->end = chain_march(&b->chain, 0, &start);
    return start.pressure - b->end.lost - pressure;
}

/* Rises with the pressure at the cooler. */
static double flow_excess(double pressure, void *context)
{
    struct balance *b = context;
    b->status = operation_flow(b->operation, pressure, &b->flow);
    return b->status == VTX_OK ? job_supply_flow(b->job, b->flow.mass_flow) - b->wanted : quiet_nan();
}

static vtx_status search(root_function *excess, struct balance *b, double lowest, double *pressure)
{
    const double highest = b->job->supply.pressure;
    vtx_status status = find_root(excess, b, lowest, highest, 1e-13 * highest, pressure);
    if (status == VTX_NO_SOLUTION)
        return VTX_OUT_OF_RANGE;
    return status != VTX_OK && b->status != VTX_OK ? b->status : status;
}

vtx_status job_pressure_at_cooler(const vtx_job *job, const struct operation *o, double *pressure, struct network_flow *flow)
{
    const double lowest = 1.0501 * (job->site.pressure + larger(job->setting.cold_back_pressure, job->setting.hot_back_pressure));
    struct balance b = { .job = job, .operation = o };
    size_t choked;
    *pressure = job->supply.pressure;
    if (job->elements == 0)
        return operation_flow(o, *pressure, flow);
    if (!(lowest < job->supply.pressure))
        return VTX_OUT_OF_RANGE;
    b.chain = make_chain(job->line, (size_t)job->elements, job->supply.temperature);
    vtx_status status = search(pressure_excess, &b, lowest, pressure);
    if (status != VTX_OK)
        return status;
    /* Beyond what an element passes the march's pressure is no state of any air: the line's capacity decides then. */
    pressure_excess(*pressure, &b);
    if (b.end.headroom < 0) {
        status = chain_capacity(&b.chain, job->supply.pressure, job->supply.temperature, job_supply_flow(job, b.flow.mass_flow), &b.wanted,
                                &choked);
        if (status == VTX_OK)
            status = search(flow_excess, &b, lowest, pressure);
    }
    return status == VTX_OK ? operation_flow(o, *pressure, flow) : status;
}
