/* Formats quantities through the library's own units. */
#include "report.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { TEXTS = 12, TEXT = 80 };

static enum report_units chosen = REPORT_BOTH;

void report_choose(enum report_units units) { chosen = units; }

static char *next_text(void)
{
    static char texts[TEXTS][TEXT];
    static int next;
    next = (next + 1) % TEXTS;
    return texts[next];
}

static const char *both(double si, double us, int si_digits, int us_digits, const char *si_unit, const char *us_unit)
{
    char *text = next_text();
    if (isnan(si))
        return "-";
    if (chosen == REPORT_SI)
        snprintf(text, TEXT, "%.*f %s", si_digits, si, si_unit);
    else if (chosen == REPORT_US)
        snprintf(text, TEXT, "%.*f %s", us_digits, us, us_unit);
    else
        snprintf(text, TEXT, "%.*f %s (%.*f %s)", si_digits, si, si_unit, us_digits, us, us_unit);
    return text;
}

static double in(const char *unit, int32_t dimension, double si)
{
    double value;
    return vtx_unit_from_si(unit, dimension, si, &value) == VTX_OK ? value : (double)NAN;
}

static const char *plain(double si, int32_t dimension, int si_digits, int us_digits, const char *si_unit, const char *us_unit)
{
    return both(in(si_unit, dimension, si), in(us_unit, dimension, si), si_digits, us_digits, si_unit, us_unit);
}

const char *report_temperature(double kelvin) { return plain(kelvin, VTX_DIMENSION_TEMPERATURE, 1, 1, "degC", "degF"); }

const char *report_difference(double kelvin) { return both(kelvin, 1.8 * kelvin, 1, 1, "K", "delta degF"); }

const char *report_gauge(double pascal, double barometer)
{
    double si = (double)NAN, us = (double)NAN;
    vtx_pressure_from_si("bar(g)", barometer, pascal, &si);
    vtx_pressure_from_si("psig", barometer, pascal, &us);
    return both(si, us, 2, 1, "bar(g)", "psig");
}

const char *report_absolute(double pascal)
{
    double si = (double)NAN, us = (double)NAN;
    vtx_pressure_from_si("bar(a)", 101325, pascal, &si);
    vtx_pressure_from_si("psia", 101325, pascal, &us);
    return both(si, us, 3, 2, "bar(a)", "psia");
}

const char *report_power(double watt) { return plain(watt, VTX_DIMENSION_POWER, 0, 0, "W", "Btu/h"); }

const char *report_flow(double flow) { return plain(flow, VTX_DIMENSION_VOLUME_FLOW, 0, 1, "l/min", "ft3/min"); }

const char *report_pressure_drop(double pascal) { return plain(pascal, VTX_DIMENSION_PRESSURE_DIFFERENCE, 2, 1, "bar", "psi"); }

const char *report_loss(double pascal) { return plain(pascal, VTX_DIMENSION_PRESSURE_DIFFERENCE, 3, 2, "bar", "psi"); }

/* From the library's own units: the zero is what 0 of SI reads, the scale what a step of 1 adds. */
static struct report_column column(int32_t dimension, const char *si_unit, const char *us_unit)
{
    const char *unit = chosen == REPORT_US ? us_unit : si_unit;
    const double at_1 = in(unit, dimension, 1), at_1001 = in(unit, dimension, 1001);
    const double scale = (at_1001 - at_1) / 1000;
    return (struct report_column){ unit, scale, scale - at_1, chosen == REPORT_US };
}

struct report_column report_temperatures(void) { return column(VTX_DIMENSION_TEMPERATURE, "degC", "degF"); }
struct report_column report_powers(void) { return column(VTX_DIMENSION_POWER, "W", "Btu/h"); }
struct report_column report_flows(void) { return column(VTX_DIMENSION_VOLUME_FLOW, "l/min", "ft3/min"); }
struct report_column report_mass_flows(void) { return column(VTX_DIMENSION_MASS_FLOW, "g/s", "lb/min"); }

double report_cell(const struct report_column *c, double si) { return c->scale * si - c->zero; }

const char *report_length(double metre) { return plain(metre, VTX_DIMENSION_LENGTH, 1, 2, "mm", "in"); }
