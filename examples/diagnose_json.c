/* All figures in SI units; codes are those of the library's headers. */
#include "diagnose_report.h"

#include <math.h>

#include "diagnose_sizes.h"
#include "diagnose_words.h"

static const char *unit_of(int32_t reading)
{
    switch (reading) {
    case VTX_READ_INLET_TEMPERATURE:
    case VTX_READ_COLD_TEMPERATURE:
    case VTX_READ_HOT_TEMPERATURE: return "K";
    case VTX_READ_INLET_FLOW:
    case VTX_READ_COLD_FLOW: return "kg/s";
    default: return "Pa";
    }
}

static void json_code(struct json *j, const char *name, int32_t code, const char *text)
{
    json_open(j, name, '{');
    json_integer(j, "code", code);
    json_text(j, "text", text);
    json_close(j, '}');
}

static void json_reading_code(struct json *j, const char *name, int32_t reading)
{
    json_code(j, name, reading, reading < 0 ? NULL : words_reading(reading));
}

static void json_readings(struct json *j, const struct service_case *c, const struct findings *f)
{
    json_open(j, "readings", '[');
    for (int i = 0; i < READINGS; i++) {
        const int32_t reading = VTX_READ_SUPPLY_PRESSURE + i;
        const double value = c->readings.value[i], uncertainty = c->readings.uncertainty[i];
        json_open(j, NULL, '{');
        json_integer(j, "code", reading);
        json_text(j, "text", words_reading(reading));
        json_text(j, "unit", unit_of(reading));
        json_number(j, "read", c->as_read.value[i]);
        json_number(j, "corrected", value);
        json_number(j, "standard_uncertainty", isnan(value) ? value : uncertainty);
        json_number(j, "healthy", f->healthy.value[i]);
        json_number(j, "healthy_standard_uncertainty", f->healthy.uncertainty[i]);
        json_number(j, "deviation", findings_deviation(c, f, i));
        json_truth(j, "set_aside", reading == f->set_aside);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void json_cause(struct json *j, const vtx_diagnosis *d, int32_t cause)
{
    const int i = cause_place(cause);
    json_open(j, NULL, '{');
    json_integer(j, "code", cause);
    json_text(j, "text", words_cause(cause));
    json_text(j, "unit", sizes_unit(cause));
    json_number(j, "size", d->size[i]);
    json_number(j, "size_standard_uncertainty", d->size_uncertainty[i]);
    json_number(j, "chi_square", d->chi_square[i]);
    json_number(j, "probability", d->probability[i]);
    json_number(j, "separation", d->separation[i]);
    json_close(j, '}');
}

static void json_diagnosis(struct json *j, const struct findings *f)
{
    const vtx_diagnosis *d = &f->causes;
    int32_t partners[12];
    const int count = findings_partners(d, partners);
    json_open(j, "diagnosis", '{');
    json_integer(j, "advisories", d->advisories);
    json_integer(j, "readings_used", d->readings);
    json_open(j, "causes", '[');
    for (int i = 0; i < 13; i++)
        json_cause(j, d, d->order[i]);
    json_close(j, ']');
    json_open(j, "partners", '[');
    for (int i = 0; i < count; i++)
        json_integer(j, NULL, partners[i]);
    json_close(j, ']');
    json_reading_code(j, "next_reading", d->next_reading);
    json_number(j, "next_separation", d->next_separation);
    json_open(j, "reading_separation", '[');
    for (int i = 0; i < READINGS; i++)
        json_number(j, NULL, d->reading_separation[i]);
    json_close(j, ']');
    json_reading_code(j, "easiest_next_reading", findings_next_reading(f));
    json_close(j, '}');
}

void json_findings(struct json *j, const struct service_case *c, const struct findings *f)
{
    json_text(j, "work", c->spot.work);
    json_text(j, "complaint", c->complaint);
    json_text(j, "cooler", c->spot.names[c->chosen]);
    json_truth(j, "calibrated", (f->healthy_point.advisories & VTX_ADVISORY_UNCALIBRATED) == 0);
    json_readings(j, c, f);
    json_code(j, "contradiction", f->contradiction, words_contradiction(f->contradiction));
    json_reading_code(j, "wrong_reading", f->wrong_reading);
    json_diagnosis(j, f);
}
