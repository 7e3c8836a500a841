/* A cooler in service: the job it was bought for, how it was set, what was read. */
#ifndef SERVICE_CASE_H
#define SERVICE_CASE_H

#include "readings_file.h"
#include "service_baseline.h"
#include "service_goal.h"
#include "service_quotation.h"
#include "service_visits.h"
#include "spot_job.h"

struct service_case {
    const char *file;
    char complaint[JOB_TEXT_MAX];
    struct spot_job spot;
    size_t chosen;                   /* of the coolers described */
    vtx_job job;                     /* the healthy cooler in its place, hot valve held where it was, on the air of the day */
    vtx_job described;               /* the same on the air that is described */
    vtx_job stated;                  /* the same, set as stated: cold fraction held where that is what the file says */
    double warmer_supply;            /* K by which the day's supply is warmer than described, where that is taken over; else 0 */
    double higher_supply;            /* Pa by which its pressure is higher, likewise */
    struct instruments instruments;
    struct thermometers thermometers;
    vtx_service_readings as_read;    /* before the thermometers are corrected */
    vtx_service_readings readings;
    struct service_history history;
    struct service_baseline baseline;
    struct service_goal goal;
    struct service_quotation quotation;
};

extern const char service_case_default[];
extern const char service_case_keys[];

/* Reads the file, or the built-in case when name is null. Returns the number of complaints, already printed. */
int service_case_read(struct service_case *service, const char *name);

#endif
