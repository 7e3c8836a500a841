/* Readings of the cooler's good days: they say what its tube and nozzle can do, better than any data sheet. */
#ifndef SERVICE_BASELINE_H
#define SERVICE_BASELINE_H

#include "readings_file.h"

struct service_baseline {
    int is_stated;
    vtx_wear wear; /* tube and nozzle as they were */
};

extern const char baseline_keys[];

/* job: as described, valve held; takes over what the readings tell of tube and nozzle. */
void baseline_read(struct job_file *file, const struct instruments *instruments, const struct thermometers *thermometers, vtx_job *job,
                   struct service_baseline *baseline);

#endif
