/* Why does it no longer get cold? From a file of readings to the cause, and what to do about it. */
#include <stdlib.h>
#include <string.h>

#include "diagnose_report.h"
#include "report.h"
#include "service_acceptance.h"
#include "service_advice.h"
#include "service_trend.h"

enum { EXIT_HEALTHY = 0, EXIT_FAULT = 1, EXIT_INPUT = 2, EXIT_LIBRARY = 3 };

static void print_help(void)
{
    printf("diagnose_cooler [--json] [--units both|si|us] [CASE.ini]\n\n"
           "Tells from readings of a spot cooler in service what is wrong with it, how much, and what to do; for a built-in case of\n"
           "invented readings when no file is given. --json writes the same for programs, in SI units, with the library's codes.\n"
           "--show-case prints the built-in case as a file to start from; --version the version.\n\n"
           "A case is a job file of size_spot_cooler with further sections, each value with its unit. size_spot_cooler passes over them.\n%s%s%s%s%s%s"
           "  Sections shared with size_spot_cooler:\n%s\n"
           "Exit codes: %d nothing is wrong with the cooler, %d something is, or the readings contradict each other, %d the call or the file is\n"
           "not accepted (each complaint says file, line, section, key and what was expected), %d the library refused what it was asked.\n",
           service_case_keys, readings_keys, baseline_keys, goal_keys, quotation_keys, visits_keys, spot_job_keys, EXIT_HEALTHY, EXIT_FAULT, EXIT_INPUT, EXIT_LIBRARY);
}

static void print_report(const struct service_case *c, const struct findings *f)
{
    printf("libvtx %s: diagnosis of a spot cooler\n\n", vtx_version());
    report_case(c, f);
    report_verdict(c, f);
    report_readings(c, f);
    report_causes(c, f);
    report_next_reading(c, f);
    report_cautions(f);
    report_what_to_do(c, f);
    advice_report(c, f);
    acceptance_report(c, f);
    trend_report(c);
}

static void print_json(const struct service_case *c, const struct findings *f)
{
    struct json j = { stdout, 0, 1 };
    json_open(&j, NULL, '{');
    json_text(&j, "program", "diagnose_cooler");
    json_text(&j, "libvtx", vtx_version());
    json_text(&j, "file", c->file);
    json_findings(&j, c, f);
    advice_json(&j, c, f);
    acceptance_json(&j, c, f);
    trend_json(&j, c);
    json_close(&j, '}');
}

static int diagnose(const struct service_case *c, int as_json)
{
    struct findings f;
    const vtx_status status = findings_make(c, &f);
    if (status != VTX_OK) {
        fprintf(stderr, "the library refuses this case: %s\n", vtx_status_text(status));
        return EXIT_LIBRARY;
    }
    (as_json ? print_json : print_report)(c, &f);
    return findings_leader(&f) == VTX_CAUSE_NOTHING && !findings_misfit(&f) && f.contradiction == VTX_CONTRADICTION_NONE ? EXIT_HEALTHY : EXIT_FAULT;
}

static int choose_units(const char *word)
{
    static const char *const words[] = { "both", "si", "us" };
    for (int i = 0; i < 3; i++)
        if (strcmp(word, words[i]) == 0) {
            report_choose((enum report_units)i);
            return 1;
        }
    return 0;
}

int main(int count, char **words)
{
    static struct service_case service;
    const char *file = NULL;
    int as_json = 0;
    for (int i = 1; i < count; i++) {
        if (strcmp(words[i], "--help") == 0 || strcmp(words[i], "-h") == 0) {
            print_help();
            return EXIT_SUCCESS;
        } else if (strcmp(words[i], "--version") == 0) {
            printf("diagnose_cooler, libvtx %s\n", vtx_version());
            return EXIT_SUCCESS;
        } else if (strcmp(words[i], "--show-case") == 0) {
            fputs(service_case_default, stdout);
            return EXIT_SUCCESS;
        } else if (strcmp(words[i], "--json") == 0) {
            as_json = 1;
        } else if (strcmp(words[i], "--units") == 0 && i + 1 < count && choose_units(words[i + 1])) {
            i++;
        } else if (words[i][0] == '-' || file) {
            fprintf(stderr, "diagnose_cooler: \"%s\" is not understood; see --help\n", words[i]);
            return EXIT_INPUT;
        } else {
            file = words[i];
        }
    }
    return service_case_read(&service, file) ? EXIT_INPUT : diagnose(&service, as_json);
}
