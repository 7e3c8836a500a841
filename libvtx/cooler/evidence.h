/* Readings as they enter a sum of squares. Internal. */
#ifndef VTX_EVIDENCE_H
#define VTX_EVIDENCE_H

#include <vtx/diagnosis.h>

#include "../base/numeric.h"

enum { READINGS = 8 };

struct evidence {
    double value[READINGS];
    double uncertainty[READINGS];
    int given[READINGS];
    int count;
};

/* Checks what was read. OK, BAD_ARGUMENT, OUT_OF_RANGE */
vtx_status gather_evidence(const vtx_service_readings *readings, struct evidence *evidence);

/* What the gauges of a job at this point show, in the order of enum vtx_read. */
void gauges_show(const vtx_job *job, const vtx_operating_point *point, double readings[READINGS]);

#endif
