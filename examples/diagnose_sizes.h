/* The size of a cause in the unit a fitter would use, with its 95 % interval. */
#ifndef DIAGNOSE_SIZES_H
#define DIAGNOSE_SIZES_H

#include <stddef.h>

#include "diagnose_findings.h"

void sizes_text(const struct service_case *service, const struct findings *findings, int32_t cause, char *text, size_t length);

/* Unit of the library's number, for JSON. */
const char *sizes_unit(int32_t cause);

#endif
