/* The sizing example's job: what the file says, as records of the library. */
#ifndef SPOT_JOB_H
#define SPOT_JOB_H

#include "spot_sections.h"

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
    struct spot_cut cut;
    struct spot_part part;
    struct spot_tool tool;
    struct spot_plant plant;
    vtx_liquid liquid;                   /* a film coefficient of 0: none */
    double costs[JOB_COOLERS_MAX];       /* the caller's, of the coolers; any negative: not given */
    double cold_tube;                    /* m, outside diameter of the cold tube; 0 when not given */
    double exposure;                     /* s, that the part may take; 0 when not given */
    double oil, dirt;                    /* kg/s that may come with the air; 0 when not given */
    double coldest_pipe;                 /* K; 0 when not given */
    vtx_filter filters[8];               /* of the line's filters; a rated flow of 0 elsewhere */
    double specific_power;               /* J/m3 of free air; 0 when not given */
    double hours;                        /* s of running a year */
    double price;                        /* currency per kWh */
    double carbon;                       /* kg per kWh; 0 when not given */
    const char *reference;               /* name of the coolers' reference state */
};

extern const char spot_job_default[];

/* Reads the file, or the built-in job when name is null. Returns the number of complaints, already printed. */
int spot_job_read(struct spot_job *spot, const char *name);

/* The same from a file already open and left open: for programs that read further sections of it. */
void spot_job_take(struct spot_job *spot, struct job_file *file);

/* Judges the list, verdicts[cooler_count], and takes the cheapest that meets the wish where every cooler has a cost, else the smallest.
 * The status is that of vtx_smallest_cooler, or of a list that cannot be judged. */
vtx_status spot_choose(const struct spot_job *spot, vtx_verdict verdicts[], vtx_chosen_cooler *chosen);

/* The keys a job file may hold, for --help. */
extern const char spot_job_keys[];

#endif
