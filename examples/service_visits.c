/* Visits and limits from a case file. */
#include "service_visits.h"

#include <math.h>
#include <string.h>

#include "service_dates.h"

const char visits_keys[] =
    "  [visit 1], [visit 2] ... optional, earlier rounds, 23 at the most; then [service] date = 2026-11-03 dates the [readings]:\n"
    "             date = 2026-03-31\n"
    "             filter pressure drop = 0.15 bar       across the first filter of the line; also in [readings]\n"
    "             any key of [readings]: a flow makes filter drops of different days comparable\n"
    "             renewed = filter element              or tube: just before this round; what was read earlier no longer counts\n"
    "  [limits]   optional: filter pressure drop = 0.5 bar at the flow its [line N] states, nozzle wider by = 10 %, tube efficiency = 0.25\n"
    "             the filter's gauge: filter pressure drop = 0.02 bar in [instruments]\n";

static int32_t renewed_at(struct job_file *f, const char *section)
{
    static const char *const parts[] = { "filter element", "tube", NULL };
    const int part = job_word(f, section, "renewed", 0, parts);
    return part == 0 ? RENEWED_ELEMENT : part == 1 ? RENEWED_TUBE : 0;
}

static void read_drop(struct job_file *f, const char *section, double *drop)
{
    *drop = (double)NAN;
    job_quantity(f, section, "filter pressure drop", VTX_DIMENSION_PRESSURE_DIFFERENCE, 0, drop);
    if (*drop <= 0)
        job_complain(f, section, "filter pressure drop", "must be above 0");
}

/* The first filter of the line, as its [line N] describes it. */
static void read_filter(struct job_file *f, const struct spot_job *s, vtx_filter *filter)
{
    char section[JOB_TEXT_MAX];
    double flow = (double)NAN, pressure = (double)NAN, state[3];
    vtx_filter_init(filter);
    for (int i = 0; i < s->job.elements; i++) {
        if (s->job.line[i].kind != VTX_CHAIN_FILTER)
            continue;
        snprintf(section, sizeof section, "line %d", i + 1);
        job_quantity(f, section, "pressure loss", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1, &filter->clean_drop);
        job_quantity(f, section, "at free air flow", VTX_DIMENSION_VOLUME_FLOW, 1, &flow);
        job_pressure(f, section, "at pressure", 1, &pressure);
        vtx_reference_state(VTX_REFERENCE_ISO_8778, &state[0], &state[1], &state[2]);
        vtx_mass_flow_from_standard(VTX_AIR_REAL, state[0], state[1], state[2], flow, &filter->rated_flow, NULL);
        vtx_air_density(pressure, s->job.supply.temperature, &filter->rated_density);
        filter->medium_share = 0.5; /* as the line's */
        return;
    }
}

static void read_limits(struct job_file *f, struct service_history *h)
{
    double wider = 0;
    const int given = job_has(f, "limits", "filter pressure drop");
    job_quantity(f, "limits", "filter pressure drop", VTX_DIMENSION_PRESSURE_DIFFERENCE, 0, &h->filter.change_drop);
    if (given && (h->filter.rated_flow <= 0 || h->filter.change_drop <= h->filter.clean_drop))
        job_complain(f, "limits", "filter pressure drop", "needs a filter in the line, and must be above its pressure loss when clean");
    job_quantity(f, "limits", "nozzle wider by", VTX_DIMENSION_NUMBER, 0, &wider);
    if (wider < 0)
        job_complain(f, "limits", "nozzle wider by", "must be above 0");
    h->nozzle_limit = wider > 0 ? 1 + wider : 0;
    job_quantity(f, "limits", "tube efficiency", VTX_DIMENSION_NUMBER, 0, &h->efficiency_limit);
}

static void read_visit(struct job_file *f, const char *section, const vtx_cooler *cooler, const struct instruments *instruments,
                       const struct thermometers *thermometers, struct visit *v)
{
    v->time = (double)NAN;
    date_read(f, section, "date", 1, &v->time);
    v->renewed = renewed_at(f, section);
    read_drop(f, section, &v->filter_drop);
    v->count = readings_read(f, section, cooler, instruments, &v->readings);
    readings_correct(f, section, thermometers, &v->readings);
}

static void add_today(struct job_file *f, const vtx_service_readings *today, struct service_history *h)
{
    struct visit *v = &h->visits[h->count];
    v->time = h->today = (double)NAN;
    date_read(f, "service", "date", h->count > 0, &v->time);
    h->today = v->time;
    read_drop(f, "readings", &v->filter_drop);
    h->drop_today = v->filter_drop;
    v->readings = *today;
    for (int i = 0; i < READINGS; i++)
        v->count += !isnan(today->value[i]);
    if (h->count > 0 && h->today <= h->visits[h->count - 1].time)
        job_complain(f, "service", "date", "must be later than every visit");
    if (h->count > 0)
        h->count++;
}

void visits_read(struct job_file *f, const struct spot_job *s, const vtx_cooler *cooler, const struct instruments *instruments,
                 const struct thermometers *thermometers, const vtx_service_readings *today, struct service_history *h)
{
    const char *sections[VISITS_MAX + 1];
    char expected[JOB_TEXT_MAX];
    const int count = job_sections(f, "visit ", sections, VISITS_MAX + 1);
    memset(h, 0, sizeof *h);
    read_filter(f, s, &h->filter);
    read_limits(f, h);
    h->drop_uncertainty = instruments->drop;
    for (int i = 0; i < count; i++) {
        snprintf(expected, sizeof expected, "visit %d", i + 1);
        if (i >= VISITS_MAX - 1 || strcmp(sections[i], expected) != 0) {
            job_complain(f, sections[i], "date", "sections are [visit 1], [visit 2] ... in this order, [visit 23] the last");
            return;
        }
        read_visit(f, sections[i], cooler, instruments, thermometers, &h->visits[i]);
        if (i > 0 && h->visits[i].time <= h->visits[i - 1].time)
            job_complain(f, sections[i], "date", "must be later than that of the visit before");
    }
    h->count = count;
    add_today(f, today, h);
}
