/* Earlier rounds of readings, and the limits at which something is to be changed. */
#ifndef SERVICE_VISITS_H
#define SERVICE_VISITS_H

#include "readings_file.h"
#include "spot_job.h"

enum { VISITS_MAX = 24 };

struct visit {
    double time;        /* s, see service_dates.h */
    double filter_drop; /* Pa; NaN: not read */
    int count;          /* of the readings */
    int32_t renewed;    /* bits: see below */
    vtx_service_readings readings;
};

enum { RENEWED_ELEMENT = 1, RENEWED_TUBE = 2 };

struct service_history {
    struct visit visits[VISITS_MAX]; /* in the order of their dates; the readings of today are the last */
    int count;                       /* 0: no history */
    double today;                    /* s */
    double drop_today;               /* Pa, filter's; NaN: not read */
    double drop_uncertainty;         /* Pa, standard, of the filter's gauge */
    double nozzle_limit;             /* -, inlet area over that when all was well; 0: none */
    double efficiency_limit;         /* -, lowest tube efficiency; 0: none */
    vtx_filter filter;               /* rated_flow 0: no filter in the line */
};

extern const char visits_keys[];

/* today: the readings of [readings]. */
void visits_read(struct job_file *file, const struct spot_job *spot, const vtx_cooler *cooler, const struct instruments *instruments,
                 const struct thermometers *thermometers, const vtx_service_readings *today, struct service_history *history);

#endif
