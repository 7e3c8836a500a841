/* Series are drawn from the visits, a line is laid through each, and its crossing of the limit is dated. */
#include "service_trend.h"

#include <math.h>
#include <string.h>

#include "report.h"
#include "service_dates.h"

static const double month = 30.4375 * 86400;

/* One quantity over the visits. */
struct series {
    const char *name, *unit, *remedy;
    int32_t growth, side;
    double limit;
    double times[VISITS_MAX], values[VISITS_MAX], uncertainties[VISITS_MAX];
    size_t count;
    int compared; /* 0: the values are as read, at whatever flow there was */
    vtx_trend trend;
    vtx_trend_crossing crossing;
};

/* First visit that still counts after parts were renewed. */
static int first_since(const struct service_history *h, int32_t part)
{
    int first = 0;
    for (int i = 0; i < h->count; i++)
        if (h->visits[i].renewed & part)
            first = i;
    return first;
}

static void add(struct series *s, double time, double value, double uncertainty)
{
    s->times[s->count] = time;
    s->values[s->count] = value;
    s->uncertainties[s->count] = uncertainty;
    s->count++;
}

/* A drop at the flow that the limit is stated for. */
static void add_drop(const struct service_case *c, const struct visit *v, struct series *s)
{
    const struct service_history *h = &c->history;
    const int flow = reading_place(VTX_READ_INLET_FLOW), supply = reading_place(VTX_READ_SUPPLY_PRESSURE);
    const double pressure = isnan(v->readings.value[supply]) ? c->spot.job.supply.pressure : v->readings.value[supply];
    double density, drop, uncertainty;
    if (vtx_air_density(pressure, c->spot.job.supply.temperature, &density) == VTX_OK
        && vtx_filter_drop_at_reference(&h->filter, density, c->job.running * v->readings.value[flow], v->filter_drop,
                                        c->job.running * v->readings.uncertainty[flow], h->drop_uncertainty, h->filter.rated_density,
                                        h->filter.rated_flow, &drop, &uncertainty) == VTX_OK)
        add(s, v->time, drop, uncertainty);
}

static void filter_series(const struct service_case *c, struct series *s)
{
    const struct service_history *h = &c->history;
    const int first = first_since(h, RENEWED_ELEMENT);
    *s = (struct series){ .name = "filter drop", .unit = "Pa", .remedy = "change the element", .growth = VTX_TREND_EXPONENTIAL,
                          .side = VTX_TOLERANCE_UPPER, .limit = h->filter.change_drop, .compared = 1 };
    for (int i = first; i < h->count; i++)
        if (!isnan(h->visits[i].filter_drop) && isnan(h->visits[i].readings.value[reading_place(VTX_READ_INLET_FLOW)]))
            s->compared = 0;
    for (int i = first; h->filter.rated_flow > 0 && i < h->count; i++)
        if (!isnan(h->visits[i].filter_drop) && s->compared)
            add_drop(c, &h->visits[i], s);
        else if (!isnan(h->visits[i].filter_drop))
            add(s, h->visits[i].time, h->visits[i].filter_drop, h->drop_uncertainty);
}

/* What every visit has alike moves all of them alike, and no trend feels it. */
static vtx_status find_wear(const struct service_case *c, const struct visit *v, vtx_wear *wear)
{
    vtx_input_uncertainty u;
    vtx_input_uncertainty_init(&u);
    u.rated_flow = u.coldest_fraction = u.setting = u.line_loss = 0;
    return v->count < 2 ? VTX_BAD_ARGUMENT : vtx_find_wear(&c->described, &u, &v->readings, wear);
}

static void nozzle_series(const struct service_case *c, struct series *s)
{
    const struct service_history *h = &c->history;
    vtx_wear w;
    *s = (struct series){ .name = "nozzle area", .unit = "1", .remedy = "renew the nozzle", .growth = VTX_TREND_EVEN,
                          .side = VTX_TOLERANCE_UPPER, .limit = h->nozzle_limit * c->described.cooler.inlet_area_factor };
    for (int i = first_since(h, RENEWED_TUBE); i < h->count; i++)
        if (find_wear(c, &h->visits[i], &w) == VTX_OK && isfinite(w.inlet_area_factor))
            add(s, h->visits[i].time, w.inlet_area_factor, w.inlet_area_factor_uncertainty);
}

static void efficiency_series(const struct service_case *c, struct series *s)
{
    const struct service_history *h = &c->history;
    vtx_wear w;
    *s = (struct series){ .name = "tube efficiency", .unit = "1", .remedy = "renew nozzle and tube", .growth = VTX_TREND_EVEN,
                          .side = VTX_TOLERANCE_LOWER, .limit = h->efficiency_limit };
    for (int i = first_since(h, RENEWED_TUBE); i < h->count; i++)
        if (find_wear(c, &h->visits[i], &w) == VTX_OK && isfinite(w.peak_efficiency))
            add(s, h->visits[i].time, w.peak_efficiency, w.peak_efficiency_uncertainty);
}

static int fit(const struct service_case *c, struct series *s)
{
    return s->count >= 2 && s->limit > 0 && vtx_trend_fit(s->times, s->values, s->uncertainties, s->count, s->growth, &s->trend) == VTX_OK
        && vtx_trend_crosses(&s->trend, s->limit, s->side, c->history.today, 0.95, &s->crossing) == VTX_OK;
}

static int is_drop(const struct series *s) { return s->growth == VTX_TREND_EXPONENTIAL; }

static const char *amount(const struct series *s, double value)
{
    static char texts[4][40];
    static int next;
    if (is_drop(s))
        return report_pressure_drop(value);
    next = (next + 1) % 4;
    snprintf(texts[next], sizeof texts[next], s->side == VTX_TOLERANCE_UPPER ? "%.3f times" : "%.3f", value);
    return texts[next];
}

static void print_rate(const struct series *s)
{
    const vtx_trend *t = &s->trend;
    if (!t->significant)
        printf("no trend beyond the scatter so far");
    else if (is_drop(s))
        printf("%s %.0f %% a month", t->rate > 0 ? "growing" : "falling", 100 * fabs(expm1(t->rate * month)));
    else
        printf("%s %.3f a year", t->rate > 0 ? "growing by" : "falling by", fabs(t->rate) * 12 * month);
}

static void print_date(const struct series *s)
{
    const vtx_trend_crossing *x = &s->crossing;
    const char *limit = amount(s, s->limit);
    switch (x->verdict) {
    case VTX_TREND_PASSED:
        printf("the limit of %s is passed, since about %s", limit, date_text(x->time));
        if (isfinite(x->earliest) && isfinite(x->latest))
            printf(" (%s to %s)", date_text(x->earliest), date_text(x->latest));
        printf(": %s now.", s->remedy);
        break;
    case VTX_TREND_DATED:
        printf("the limit of %s will be crossed about %s (%s to %s):\n                    %s before %s.", limit, date_text(x->time),
               date_text(x->earliest), date_text(x->latest), s->remedy, date_text(x->earliest));
        break;
    case VTX_TREND_OPEN:
        printf("the limit of %s will not be crossed before %s, if ever: read again by then.", limit, date_text(x->earliest));
        break;
    default: printf("it does not approach its limit of %s.", limit); break;
    }
    putchar('\n');
}

static void print_series(const struct series *s)
{
    const vtx_trend_crossing *x = &s->crossing;
    printf("  %-17s ", s->name);
    for (size_t i = 0; i < s->count; i++)
        printf("%s%s %s", i == 0 ? "" : i % 4 == 0 ? ",\n                    " : ", ", date_text(s->times[i]), amount(s, s->values[i]));
    printf("\n                    by the line %s today (+- %s at 95 %%), ", amount(s, x->value_today), amount(s, 1.96 * x->value_uncertainty));
    print_rate(s);
    printf("\n                    ");
    print_date(s);
    if (s->trend.advisories & VTX_ADVISORY_MODEL_MISFIT)
        printf("                    The readings scatter more than their gauges explain: the dates are the wider for it.\n");
    if (x->advisories & VTX_ADVISORY_EXTRAPOLATED)
        printf("                    The date lies far beyond the readings: read again long before it.\n");
}

static void print_filter(const struct service_case *c, const struct series *s)
{
    double state[3], flow = (double)NAN;
    print_series(s);
    if (!s->compared) {
        printf("                    No flow was read with some of the drops: they are compared as read, which holds only at equal flow.\n");
        return;
    }
    vtx_reference_state(VTX_REFERENCE_ISO_8778, &state[0], &state[1], &state[2]);
    vtx_standard_flow(VTX_AIR_REAL, state[0], state[1], state[2], c->history.filter.rated_flow, &flow);
    printf("                    All drops are carried to %s, the flow of the filter's description.\n", report_flow(flow));
}

void trend_report(const struct service_case *c)
{
    struct series s;
    if (c->history.count < 2)
        return;
    printf("\nSERVICE BY TREND (%d rounds from %s to %s; dates with their 95 %% interval)\n", c->history.count,
           date_text(c->history.visits[0].time), date_text(c->history.today));
    filter_series(c, &s);
    if (fit(c, &s))
        print_filter(c, &s);
    nozzle_series(c, &s);
    if (fit(c, &s))
        print_series(&s);
    efficiency_series(c, &s);
    if (fit(c, &s))
        print_series(&s);
}

static void series_json(struct json *j, const struct series *s)
{
    const vtx_trend_crossing *x = &s->crossing;
    json_open(j, NULL, '{');
    json_text(j, "quantity", s->name);
    json_text(j, "unit", s->unit);
    json_integer(j, "readings", s->trend.readings);
    json_number(j, "value_today", x->value_today);
    json_number(j, "value_standard_uncertainty", x->value_uncertainty);
    json_number(j, "rate_probability", s->trend.rate_probability);
    json_number(j, "limit", s->limit);
    json_integer(j, "verdict", x->verdict);
    json_text(j, "date", isfinite(x->time) ? date_text(x->time) : NULL);
    json_text(j, "earliest", isfinite(x->earliest) ? date_text(x->earliest) : NULL);
    json_text(j, "latest", isfinite(x->latest) ? date_text(x->latest) : NULL);
    json_integer(j, "advisories", x->advisories);
    json_close(j, '}');
}

void trend_json(struct json *j, const struct service_case *c)
{
    static void (*const makers[])(const struct service_case *, struct series *) = { filter_series, nozzle_series, efficiency_series };
    struct series s;
    json_open(j, "trends", '[');
    for (size_t i = 0; i < sizeof makers / sizeof makers[0]; i++) {
        makers[i](c, &s);
        if (fit(c, &s))
            series_json(j, &s);
    }
    json_close(j, ']');
}
