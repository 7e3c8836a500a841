/* The sizing example's job: what the file says, as records of the library. */
#ifndef SPOT_JOB_H
#define SPOT_JOB_H

#include "job_file.h"

struct spot_job {
    char work[JOB_TEXT_MAX];
    double altitude;                     /* m; NaN when the barometer was given */
    vtx_job job;
    vtx_requirements requirements;
    vtx_cooler coolers[JOB_COOLERS_MAX];
    char names[JOB_COOLERS_MAX][JOB_TEXT_MAX];
    size_t cooler_count;
    char element_names[8][JOB_TEXT_MAX];
    double operator_distance;            /* m; 0 when not given */
    double specific_power;               /* J/m3 of free air; 0 when not given */
    double hours;                        /* s of running a year */
    double price;                        /* currency per kWh */
    const char *reference;               /* name of the coolers' reference state */
};

extern const char spot_job_default[];

/* Reads the file, or the built-in job when name is null. Returns the number of complaints, already printed. */
int spot_job_read(struct spot_job *spot, const char *name);

/* The same from a file already open and left open: for programs that read further sections of it. */
void spot_job_take(struct spot_job *spot, struct job_file *file);

/* The keys a job file may hold, for --help. */
extern const char spot_job_keys[];

#endif
