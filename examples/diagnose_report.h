/* The diagnosis as a report for whoever must act on it, and as JSON for programs. */
#ifndef DIAGNOSE_REPORT_H
#define DIAGNOSE_REPORT_H

#include "diagnose_findings.h"
#include "json_writer.h"

void report_case(const struct service_case *service, const struct findings *findings);
void report_verdict(const struct service_case *service, const struct findings *findings);
/* Whether the filter's own gauge speaks for a loaded filter among what may be: 1, against it: -1, or has nothing to say: 0. */
int report_filter_gauge_says(const struct service_case *service, const struct findings *findings, double *clean_drop);

void report_readings(const struct service_case *service, const struct findings *findings);
void report_causes(const struct service_case *service, const struct findings *findings);
void report_next_reading(const struct service_case *service, const struct findings *findings);
void report_cautions(const struct findings *findings);
void report_what_to_do(const struct service_case *service, const struct findings *findings);

void json_findings(struct json *json, const struct service_case *service, const struct findings *findings);

#endif
