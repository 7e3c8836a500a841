/* What the library finds in a service case, worked out once for report and JSON. */
#ifndef DIAGNOSE_FINDINGS_H
#define DIAGNOSE_FINDINGS_H

#include "service_case.h"

struct findings {
    vtx_operating_point healthy_point;
    vtx_service_readings healthy; /* what the healthy cooler would read, and how far its tube leaves that open (standard; 0: not at all) */
    vtx_service_readings used;    /* the readings behind the causes: one set aside when impossible */
    int32_t contradiction;        /* enum vtx_contradiction, of all readings */
    int32_t wrong_reading;        /* enum vtx_read: most likely wrong; -1 without a contradiction */
    vtx_diagnosis causes;         /* by the used ones */
    int32_t set_aside;            /* enum vtx_read, or -1 */
    int32_t rival;                /* enum vtx_cause: the next best to the leading one; NOTHING when nothing is wrong */
};

vtx_status findings_make(const struct service_case *service, struct findings *findings);

/* How far a reading is from the healthy cooler's, in standard uncertainties of both. */
double findings_deviation(const struct service_case *service, const struct findings *findings, int reading);

/* What the description of the healthy cooler is worth: ordinary instruments, the tube by its band. */
vtx_input_uncertainty findings_description(const struct service_case *service, const struct findings *findings);

/* Place in the arrays of a diagnosis. */
int cause_place(int32_t cause);
int reading_place(int32_t reading);

/* enum vtx_read: the easiest reading that tells the leading two causes apart, else the one that tells most; -1: none. */
int32_t findings_next_reading(const struct findings *findings);

int32_t findings_leader(const struct findings *findings);

/* No single cause explains the readings. */
int findings_misfit(const struct findings *findings);

/* The leading cause, or one that cannot be told from it. */
int findings_candidate(const struct findings *findings, int32_t cause);

/* Causes that the readings cannot tell from the leading one, best explanation first. Returns how many. */
int findings_partners(const vtx_diagnosis *diagnosis, int32_t partners[12]);

#endif
