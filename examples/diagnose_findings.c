/* The library's calls behind the report. */
#include "diagnose_findings.h"

#include <math.h>

int cause_place(int32_t cause) { return (int)(cause - VTX_CAUSE_NOTHING); }
int reading_place(int32_t reading) { return (int)(reading - VTX_READ_SUPPLY_PRESSURE); }

/* How many other causes imitate the leading one at least as well as this one does. */
static int rank_by_separation(const vtx_diagnosis *d, int place)
{
    int nearer = 0;
    for (int i = 1; i < 13; i++)
        nearer += VTX_CAUSE_NOTHING + i != d->order[0] && d->separation[i] < d->separation[place];
    return nearer;
}

int findings_partners(const vtx_diagnosis *d, int32_t partners[12])
{
    int count = 0;
    /* Those nearest to the leading cause are its partners; the library says how many they are. */
    for (int i = 1; i < 13; i++) {
        const int place = cause_place(d->order[i]);
        if (place != 0 && isfinite(d->separation[place]) && rank_by_separation(d, place) < d->partners && count < d->partners)
            partners[count++] = d->order[i];
    }
    return count;
}

/* The tube's band as a standard uncertainty: the default band is read as holding 80 % of tubes (calibration.h), a measured one 95 %. */
static double of_band(const vtx_operating_point *p, double low, double high)
{
    return 0.5 * fabs(high - low) / (p->advisories & VTX_ADVISORY_UNCALIBRATED ? 1.2816 : 1.96);
}

int32_t findings_leader(const struct findings *f) { return f->causes.order[0]; }

int findings_misfit(const struct findings *f) { return (f->causes.advisories & VTX_ADVISORY_MODEL_MISFIT) != 0; }

int findings_candidate(const struct findings *f, int32_t cause)
{
    int32_t partners[12];
    const int count = findings_partners(&f->causes, partners);
    for (int i = 0; i < count; i++)
        if (partners[i] == cause)
            return 1;
    return findings_leader(f) == cause;
}

vtx_input_uncertainty findings_description(const struct service_case *c, const struct findings *f)
{
    const vtx_tube *tube = &c->job.cooler.tube;
    vtx_input_uncertainty u;
    vtx_input_uncertainty_init(&u);
    u.tube_efficiency = of_band(&f->healthy_point, tube->efficiency_low, tube->efficiency_high);
    return u;
}

static vtx_status predict_healthy(const struct service_case *c, struct findings *f)
{
    const vtx_operating_point *p = &f->healthy_point;
    vtx_status status = vtx_job_evaluate(&c->job, &f->healthy_point, NULL);
    if (status == VTX_OK)
        status = vtx_predict_readings(&c->job, VTX_CAUSE_NOTHING, 0, &f->healthy);
    for (int i = 0; i < READINGS; i++)
        f->healthy.uncertainty[i] = 0;
    f->healthy.uncertainty[reading_place(VTX_READ_COLD_TEMPERATURE)] = of_band(p, p->cold_temperature_low, p->cold_temperature_high);
    f->healthy.uncertainty[reading_place(VTX_READ_HOT_TEMPERATURE)] = of_band(p, p->hot_temperature_low, p->hot_temperature_high);
    return status;
}

/* Thermometers, gauges on tees, meters in the line, a tapping behind the cold outlet (common practice, no source). */
static const int32_t easiest_first[READINGS] = { VTX_READ_INLET_TEMPERATURE, VTX_READ_COLD_TEMPERATURE, VTX_READ_HOT_TEMPERATURE,
                                                 VTX_READ_INLET_PRESSURE,    VTX_READ_SUPPLY_PRESSURE,  VTX_READ_INLET_FLOW,
                                                 VTX_READ_COLD_FLOW,         VTX_READ_COLD_PRESSURE };

/* Standard deviations at which noise makes one of twenty look like the other: diagnosis.h. */
static const double told_apart = 3.29;

int32_t findings_next_reading(const struct findings *f)
{
    for (int i = 0; i < READINGS; i++)
        if (f->causes.reading_separation[reading_place(easiest_first[i])] >= told_apart)
            return easiest_first[i];
    return f->causes.next_reading;
}

/* What is not known of the healthy tube must not pass for a fault, nor may a valve that is still being set; all else is taken as
 * described for the day. */
static vtx_status find_causes(const struct service_case *c, struct findings *f)
{
    const vtx_input_uncertainty all = findings_description(c, f);
    /* A valve's gap is known to a tenth of it, a cold fraction to 0.03 (common practice, no source). */
    const double known = c->job.setting.held == VTX_HELD_VALVE_OPENING ? 0.1 : 0.03;
    const vtx_input_uncertainty unknown = {
        .tube_efficiency = all.tube_efficiency,
        .coldest_fraction = f->healthy_point.advisories & VTX_ADVISORY_UNCALIBRATED ? all.coldest_fraction : 0,
        .setting = c->goal.is_stated ? 2.5 * known : known,
    };
    return vtx_diagnose(&c->job, &unknown, &f->used, &f->causes);
}

static vtx_status set_one_aside(const struct service_case *c, struct findings *f)
{
    f->set_aside = -1;
    f->contradiction = f->causes.contradiction;
    f->wrong_reading = f->causes.wrong_reading;
    if (f->contradiction == VTX_CONTRADICTION_NONE || f->causes.readings < 3)
        return VTX_OK;
    f->set_aside = f->wrong_reading;
    f->used.value[reading_place(f->set_aside)] = (double)NAN;
    return find_causes(c, f);
}

vtx_status findings_make(const struct service_case *c, struct findings *f)
{
    f->used = c->readings;
    vtx_status status = predict_healthy(c, f);
    if (status == VTX_OK)
        status = find_causes(c, f);
    if (status == VTX_OK)
        status = set_one_aside(c, f);
    const int32_t *order = f->causes.order;
    f->rival = status != VTX_OK || order[0] == VTX_CAUSE_NOTHING ? VTX_CAUSE_NOTHING : order[1] == VTX_CAUSE_NOTHING ? order[2] : order[1];
    return status;
}

double findings_deviation(const struct service_case *c, const struct findings *f, int reading)
{
    return (c->readings.value[reading] - f->healthy.value[reading]) / hypot(c->readings.uncertainty[reading], f->healthy.uncertainty[reading]);
}
