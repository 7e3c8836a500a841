/* Readings that no cooler can give. */
#include "contradiction.h"

#include <vtx/process.h>

#include "job_pass.h"

static int at(int32_t reading) { return (int)(reading - VTX_READ_SUPPLY_PRESSURE); }

/* Without the wrong reading the others make sense: the one whose absence lets some cause explain the rest best, each by its own
 * uncertainty. */
static vtx_status most_suspect(const struct causes *c, const struct evidence *e, const int32_t *among, int count, int32_t *suspect)
{
    double least = DBL_MAX;
    for (int i = 0; i < count; i++) {
        struct evidence rest = *e;
        if (!e->given[at(among[i])])
            continue;
        rest.given[at(among[i])] = 0;
        rest.count--;
        evidence_weigh(&rest);
        for (int k = 0; k < CAUSES; k++) {
            struct fitted_size fit;
            if (!c->possible[k])
                continue;
            const vtx_status status = signature_fit(&c->signature[k], &rest, &fit);
            if (status != VTX_OK)
                return status;
            if (fit.chi_square < least) {
                least = fit.chi_square;
                *suspect = among[i];
            }
        }
    }
    return VTX_OK;
}

/* Three standard deviations beyond what a law allows. */
static int exceeds(double excess, double variance) { return excess > 3 * sqrt(variance); }

static int32_t contradiction_of(const struct evidence *e, const vtx_operating_point *p, double throttled, double reversible)
{
    const double *v = e->value, *u = e->uncertainty;
    const int t0 = at(VTX_READ_INLET_TEMPERATURE), tc = at(VTX_READ_COLD_TEMPERATURE), th = at(VTX_READ_HOT_TEMPERATURE);
    const int m = at(VTX_READ_INLET_FLOW), mc = at(VTX_READ_COLD_FLOW);
    const int temperatures = e->given[t0] && e->given[tc] && e->given[th];
    if (e->given[m] && e->given[mc] && exceeds(v[mc] - v[m], square(u[m]) + square(u[mc])))
        return VTX_CONTRADICTION_FLOWS;
    if (e->given[t0] && e->given[tc]
        && exceeds(v[t0] - (p->inlet_temperature - reversible) - v[tc], square(u[t0]) + square(u[tc])))
        return VTX_CONTRADICTION_ENTROPY;
    if (temperatures && exceeds(v[t0] - (p->inlet_temperature - throttled) - larger(v[tc], v[th]), square(u[t0]) + square(u[th])))
        return VTX_CONTRADICTION_BOTH_COLDER;
    if (temperatures && e->given[m] && e->given[mc] && v[th] - v[tc] > 3 * (u[th] + u[tc])) {
        /* Balance of a perfect gas with the throttle's drop: mu = (Th - T0 + dJT)/(Th - Tc), with its uncertainty. */
        const double drop = p->inlet_temperature - throttled, span = v[th] - v[tc];
        const double by_heat = (v[th] - v[t0] + drop) / span, by_flow = v[mc] / v[m];
        const double variance = square(by_flow) * (square(u[m] / v[m]) + square(u[mc] / v[mc]))
            + (square(u[t0]) + square((1 - by_heat) * u[th]) + square(by_heat * u[tc])) / square(span) + square(0.01);
        if (exceeds(fabs(by_heat - by_flow), variance))
            return VTX_CONTRADICTION_COLD_FRACTION;
    }
    return VTX_CONTRADICTION_NONE;
}

vtx_status find_contradiction(const vtx_job *job, const struct evidence *e, int32_t *contradiction)
{
    vtx_operating_point p;
    double throttled, reversible;
    vtx_status status = job_pass(job, &p, NULL);
    if (status == VTX_OK)
        status = vtx_expansion_throttle(job->setting.model, p.inlet_pressure, p.inlet_temperature, p.humidity_ratio, p.cold_pressure, &throttled);
    if (status == VTX_OK)
        status = vtx_expansion_isentropic(job->setting.model, p.inlet_pressure, p.inlet_temperature, p.humidity_ratio, p.cold_pressure, &reversible);
    if (status == VTX_OK)
        *contradiction = contradiction_of(e, &p, throttled, reversible);
    return status;
}

vtx_status check_laws(const struct causes *c, const struct evidence *e, vtx_diagnosis *d)
{
    static const int32_t flows[] = { VTX_READ_INLET_FLOW, VTX_READ_COLD_FLOW };
    static const int32_t temperatures[] = { VTX_READ_INLET_TEMPERATURE, VTX_READ_COLD_TEMPERATURE, VTX_READ_HOT_TEMPERATURE };
    static const int32_t all[] = { VTX_READ_INLET_TEMPERATURE, VTX_READ_COLD_TEMPERATURE, VTX_READ_HOT_TEMPERATURE, VTX_READ_INLET_FLOW,
                                   VTX_READ_COLD_FLOW };
    const vtx_status status = find_contradiction(c->signature[0].healthy, e, &d->contradiction);
    if (status != VTX_OK)
        return status;
    d->wrong_reading = -1;
    /* Heat from outside and feed past the tube upset that balance and break no law: if one cause explains everything, nothing is wrong with
     * the readings. */
    if (d->contradiction == VTX_CONTRADICTION_COLD_FRACTION && !(d->advisories & VTX_ADVISORY_MODEL_MISFIT))
        d->contradiction = VTX_CONTRADICTION_NONE;
    if (d->contradiction == VTX_CONTRADICTION_NONE)
        return VTX_OK;
    d->advisories |= VTX_ADVISORY_IMPOSSIBLE_READINGS;
    if (d->contradiction == VTX_CONTRADICTION_FLOWS)
        return most_suspect(c, e, flows, 2, &d->wrong_reading);
    if (d->contradiction == VTX_CONTRADICTION_COLD_FRACTION)
        return most_suspect(c, e, all, 5, &d->wrong_reading);
    return most_suspect(c, e, temperatures, 3, &d->wrong_reading);
}
