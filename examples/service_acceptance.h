/* Acceptance: the readings carried to the state that was quoted, and the verdict. */
#ifndef SERVICE_ACCEPTANCE_H
#define SERVICE_ACCEPTANCE_H

#include "diagnose_findings.h"
#include "json_writer.h"

void acceptance_report(const struct service_case *service, const struct findings *findings);
void acceptance_json(struct json *json, const struct service_case *service, const struct findings *findings);

#endif
