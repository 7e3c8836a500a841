/* Commissioning: which way to turn the hot valve for a goal, how far, when to stop, how long to wait. */
#ifndef SERVICE_ADVICE_H
#define SERVICE_ADVICE_H

#include "diagnose_findings.h"
#include "json_writer.h"

void advice_report(const struct service_case *service, const struct findings *findings);
void advice_json(struct json *json, const struct service_case *service, const struct findings *findings);

#endif
