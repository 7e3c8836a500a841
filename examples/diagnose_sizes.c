/* From the library's shares to bar, kelvin and per cent. */
#include "diagnose_sizes.h"

#include <math.h>

#include "report.h"

struct span {
    double best, low, high;
};

/* 95 %; a size that cannot be negative is cut there. */
static struct span span_of(const vtx_diagnosis *d, int32_t cause)
{
    const double size = d->size[cause_place(cause)], half = 1.96 * d->size_uncertainty[cause_place(cause)];
    const int either_way = cause == VTX_CAUSE_WRONG_VALVE || cause == VTX_CAUSE_WRONG_GAUGE;
    return (struct span){ size, either_way ? size - half : fmax(size - half, 0), size + half };
}

static void in_percent(struct span s, const char *what, char *text, size_t length)
{
    if (isfinite(s.high))
        snprintf(text, length, "%.0f %% %s (%.0f to %.0f %%)", 100 * s.best, what, 100 * s.low, 100 * s.high);
    else
        snprintf(text, length, "%.0f %% %s (not seen by these readings)", 100 * s.best, what);
}

static void in_words(const char *best, const char *what, struct span s, double scale, int digits, const char *unit, char *text, size_t length)
{
    if (isfinite(s.high))
        snprintf(text, length, "%s %s (%.*f to %.*f %s)", best, what, digits, scale * s.low, digits, scale * s.high, unit);
    else
        snprintf(text, length, "%s %s (not seen by these readings)", best, what);
}

static void in_bar(struct span s, double pascal, const char *what, char *text, size_t length)
{
    in_words(report_pressure_drop(pascal * s.best), what, s, 1e-5 * pascal, 2, "bar", text, length);
}

/* A size that goes both ways is named by its sign. */
static void either_way(struct span s, const char *above, const char *below, char *text, size_t length)
{
    if (s.best < 0)
        in_percent((struct span){ -s.best, -s.high, -s.low }, below, text, length);
    else
        in_percent(s, above, text, length);
}

/* The library counts conductance in heat capacity flows of the feed. */
static void in_watt_per_kelvin(struct span s, const vtx_operating_point *p, char *text, size_t length)
{
    char best[40];
    double heat_capacity = (double)NAN;
    vtx_air_heat_capacity(p->inlet_pressure, p->inlet_temperature, &heat_capacity);
    const double unit = p->mass_flow * heat_capacity;
    snprintf(best, sizeof best, "%.1f W/K", unit * s.best);
    in_words(best, "into it", s, unit, 1, "W/K", text, length);
}

static void in_times(struct span s, char *text, size_t length)
{
    char best[40];
    snprintf(best, sizeof best, "%.1f times", 1 + s.best);
    in_words(best, "the described loss", (struct span){ 1 + s.best, 1 + s.low, 1 + s.high }, 1, 1, "times", text, length);
}

void sizes_text(const struct service_case *c, const struct findings *f, int32_t cause, char *text, size_t length)
{
    const struct span s = span_of(&f->causes, cause);
    const double gauge = c->job.supply.pressure - c->job.site.pressure;
    if (s.best < 0 && cause != VTX_CAUSE_WRONG_VALVE && cause != VTX_CAUSE_WRONG_GAUGE) {
        snprintf(text, length, "none: the readings point the other way");
        return;
    }
    switch (cause) {
    case VTX_CAUSE_NOTHING: snprintf(text, length, "-"); break;
    case VTX_CAUSE_LOW_SUPPLY: in_bar(s, gauge, "too low", text, length); break;
    case VTX_CAUSE_WORN_NOZZLE: in_percent(s, "too wide", text, length); break;
    case VTX_CAUSE_BLOCKED_NOZZLE: in_percent(s, "of its area blocked", text, length); break;
    case VTX_CAUSE_ICED_COLD_OUTLET: in_percent(s, "of its area blocked", text, length); break;
    case VTX_CAUSE_COLD_BACK_PRESSURE: in_bar(s, gauge, "behind it", text, length); break;
    case VTX_CAUSE_BLOCKED_HOT_OUTLET: in_percent(s, "of its area blocked", text, length); break;
    case VTX_CAUSE_WRONG_VALVE: either_way(s, "too wide", "too narrow", text, length); break;
    case VTX_CAUSE_WARM_SUPPLY: in_words(report_difference(s.best), "too warm", s, 1, 1, "K", text, length); break;
    case VTX_CAUSE_LEAKING_SEAL: in_percent(s, "of the feed", text, length); break;
    case VTX_CAUSE_HEAT_LEAK: in_watt_per_kelvin(s, &f->healthy_point, text, length); break;
    case VTX_CAUSE_LOADED_FILTER: in_times(s, text, length); break;
    default: either_way(s, "of the absolute pressure high", "of the absolute pressure low", text, length); break;
    }
}

const char *sizes_unit(int32_t cause) { return cause == VTX_CAUSE_WARM_SUPPLY ? "K" : "1"; }
