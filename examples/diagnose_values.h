/* A reading's value as a shop's gauge would show it. */
#ifndef DIAGNOSE_VALUES_H
#define DIAGNOSE_VALUES_H

#include "service_case.h"

/* Flows as free air at the coolers' reference state. The buffers are those of report.h. */
const char *value_text(const struct service_case *service, int32_t reading, double value);
const char *difference_text(const struct service_case *service, int32_t reading, double difference);

#endif
