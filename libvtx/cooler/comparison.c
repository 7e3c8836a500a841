/* Cooler, plain blast and liquid on the same face. */
#include <vtx/comparison.h>

#include <vtx/impingement.h>
#include <vtx/process.h>

#include "../base/root.h"
#include "job_pass.h"
#include "job_work.h"

static const double face_lowest = 150.5, face_highest = 1499;

vtx_status vtx_liquid_init(vtx_liquid *liquid)
{
    if (!liquid)
        return VTX_BAD_ARGUMENT;
    *liquid = (vtx_liquid){ .temperature = 293.15, .mass_flow = 0.05, .specific_heat = 4180 };
    return VTX_OK;
}

static vtx_status check_liquid(const vtx_liquid *l)
{
    if (!l)
        return VTX_BAD_ARGUMENT;
    const vtx_status status = require(are_zero(l->reserved, ARRAY_LENGTH(l->reserved)));
    return worse(worse(worse(status, check_amount(l->film_coefficient, 1e6)), check_positive(l->temperature, 200, 600)),
                 worse(check_positive(l->mass_flow, 1e-9, 1e3), check_positive(l->specific_heat, 100, 1e5)));
}

/* Both jets come out of the cooler's outlets onto the same face. */
struct rivals {
    const vtx_job *job;
    vtx_jet cold, plain;
    double wanted;
};

static vtx_status heat_from(const struct rivals *r, const vtx_jet *jet, double face_temperature, vtx_impingement *i)
{
    const double outlets = r->job->cooler.outlets;
    const vtx_status status = vtx_impingement_at(jet, r->job->duty.standoff, r->job->duty.face_area / outlets, face_temperature, i);
    i->heat *= outlets;
    return status;
}

static double plain_advantage(double face_temperature, void *context)
{
    const struct rivals *r = context;
    vtx_impingement cold, plain;
    if (heat_from(r, &r->cold, face_temperature, &cold) != VTX_OK || heat_from(r, &r->plain, face_temperature, &plain) != VTX_OK)
        return quiet_nan();
    return plain.heat - cold.heat;
}

static double heat_excess(double log_flow, void *context)
{
    const struct rivals *r = context;
    vtx_jet plain = r->plain;
    vtx_impingement i;
    plain.mass_flow = exp(log_flow);
    return heat_from(r, &plain, r->job->duty.target_temperature, &i) == VTX_OK ? i.heat - r->wanted : quiet_nan();
}

static vtx_status open_rivals(struct rivals *r, const vtx_job *job, const vtx_operating_point *p, double plain_temperature)
{
    vtx_status status = worse(vtx_jet_init(&r->cold), vtx_jet_init(&r->plain));
    r->job = job;
    r->cold.diameter = job->cooler.outlet_diameter;
    r->cold.ambient_pressure = job->site.pressure + job->setting.cold_back_pressure;
    r->cold.ambient_temperature = job->site.temperature;
    r->plain = r->cold;
    r->cold.temperature = p->cold_temperature;
    r->cold.mass_flow = p->cold_mass_flow / job->cooler.outlets;
    r->plain.temperature = plain_temperature;
    r->plain.mass_flow = p->mass_flow / job->cooler.outlets;
    return status;
}

static void find_equals(struct rivals *r, const vtx_operating_point *p, vtx_comparison *c)
{
    double log_flow;
    const double now = log(r->plain.mass_flow);
    c->plain_flow_for_equal = c->plain_share_for_equal = quiet_nan();
    r->wanted = c->cooler_heat;
    if (find_root(heat_excess, r, now - 4, smaller(now + 3, log(9.9)), 1e-12, &log_flow) == VTX_OK) {
        c->plain_flow_for_equal = exp(log_flow) * r->job->cooler.outlets;
        c->plain_share_for_equal = c->plain_flow_for_equal / p->mass_flow;
    }
    if (find_root(plain_advantage, r, face_lowest, face_highest, 1e-9, &c->crossover_temperature) != VTX_OK)
        c->crossover_temperature = quiet_nan();
    if (!is_finite(c->plain_flow_for_equal) || !is_finite(c->crossover_temperature))
        c->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

/* A stream along a face of one temperature: rise = difference (1 - exp(-h A/(m c))). */
static void fill_liquid(const vtx_job *job, const vtx_liquid *l, vtx_comparison *c)
{
    const double conductance = l->film_coefficient * job->duty.face_area, stream = l->mass_flow * l->specific_heat;
    const double difference = job->duty.target_temperature - l->temperature;
    c->liquid_temperature_rise = conductance > 0 ? difference * -expm1(-conductance / stream) : 0;
    c->liquid_heat = stream * c->liquid_temperature_rise;
}

static vtx_status compare(const vtx_job *job, const vtx_liquid *liquid, vtx_comparison *c)
{
    vtx_operating_point p;
    vtx_work w;
    struct rivals r;
    vtx_impingement plain;
    vtx_status status = job_pass(job, &p, &w);
    if (status == VTX_OK)
        status = vtx_expansion_throttle(job->setting.model, p.inlet_pressure, p.inlet_temperature, p.humidity_ratio, job->site.pressure,
                                        &c->plain_temperature);
    if (status == VTX_OK)
        status = open_rivals(&r, job, &p, c->plain_temperature);
    if (status == VTX_OK)
        status = heat_from(&r, &r.plain, job->duty.target_temperature, &plain);
    if (status != VTX_OK)
        return status;
    c->cooler_heat = w.heat_removed;
    c->cooler_heat_low = w.heat_removed_low;
    c->cooler_heat_high = w.heat_removed_high;
    c->cooler_coefficient = w.film_coefficient;
    c->plain_heat = plain.heat;
    c->plain_coefficient = plain.coefficient;
    c->advisories = p.advisories | w.advisories | plain.advisories;
    c->plain_air_better = c->plain_heat > c->cooler_heat;
    if (c->plain_air_better)
        c->advisories |= VTX_ADVISORY_PLAIN_AIR_BETTER;
    find_equals(&r, &p, c);
    fill_liquid(job, liquid, c);
    return VTX_OK;
}

vtx_status vtx_compare_plain_air(const vtx_job *job, const vtx_liquid *liquid, vtx_comparison *comparison)
{
    vtx_status status = worse(require(comparison != NULL), worse(job_check(job), check_liquid(liquid)));
    if (status == VTX_OK)
        status = require(states_face(&job->duty));
    if (status == VTX_OK)
        status = compare(job, liquid, comparison);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(comparison, vtx_comparison, plain_air_better, status);
}
