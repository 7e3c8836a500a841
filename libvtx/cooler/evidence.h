/* Readings as they enter a sum of squares. Internal. */
#ifndef VTX_EVIDENCE_H
#define VTX_EVIDENCE_H

#include <vtx/diagnosis.h>
#include <vtx/uncertainty.h>

#include "../base/numeric.h"

enum { READINGS = 8 };

struct evidence {
    double value[READINGS];
    double uncertainty[READINGS];
    int given[READINGS];
    int barred[READINGS]; /* not read, and not to be read here */
    int count;
    double covariance[READINGS][READINGS]; /* of readings less forward pass: the instruments', and what the description shares among them */
    double root[READINGS][READINGS];       /* lower triangle, root root' = covariance of the given readings; other rows are not looked at */
};

/* Checks what was read. OK, BAD_ARGUMENT, OUT_OF_RANGE */
vtx_status gather_evidence(const vtx_service_readings *readings, struct evidence *evidence);

/* Computes the root again, after covariance or given have changed. */
void evidence_weigh(struct evidence *evidence);

/* Squared length of differences of readings in their own uncertainty: chi-square. */
double evidence_length(const struct evidence *evidence, const double difference[READINGS]);

/* Adds to the covariance what the job's inputs are uncertain by; the job as described, before fault_open. */
vtx_status evidence_doubt_inputs(const vtx_job *job, const vtx_input_uncertainty *uncertainty, struct evidence *evidence);

/* The forward pass of a job that may have left its ranges, and what its gauges show, in the order of enum vtx_read. */
vtx_status gauges_read(const vtx_job *job, vtx_operating_point *point, double readings[READINGS]);

#endif
