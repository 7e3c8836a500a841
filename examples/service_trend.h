/* Clean or replace by trend: what successive visits say of the date at which a limit is crossed. */
#ifndef SERVICE_TREND_H
#define SERVICE_TREND_H

#include "diagnose_findings.h"
#include "json_writer.h"

void trend_report(const struct service_case *service);
void trend_json(struct json *json, const struct service_case *service);

#endif
