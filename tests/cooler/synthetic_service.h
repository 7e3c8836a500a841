/* Coolers in service with one thing wrong, as tests and bench draw them. Scenario invented. */
#ifndef VTX_TESTS_SYNTHETIC_SERVICE_H
#define VTX_TESTS_SYNTHETIC_SERVICE_H

#include <vtx/diagnosis.h>

#include "sample_job.h"

enum { SERVICE_READINGS = 8, SERVICE_CAUSES = 13, SERVICE_SETS = 3 };

/* Which readings are taken: 0 a gauge and two thermometers at the cooler, 1 inlet temperature and inlet flow as well, 2 all. */
extern const int service_set[SERVICE_SETS][SERVICE_READINGS];
extern const char *const service_set_name[SERVICE_SETS];

/* 600 L/min behind a filter and 5 m of hose, half of the air cold. */
vtx_job service_job(int32_t model);

/* Size of a cause for a severity of 0.05 to 0.40: that share, or of 40 K, or of 20 times the filter's loss. */
double service_size(int32_t cause, double severity);

/* A size of 5 to 40 % severity, either sign where the cause has two. */
double draw_service_size(struct random_state *r, int32_t cause);

/* Readings of a set taken from clean ones: 0.5 K and 1 % are stated, and drawn when r is not null. */
void take_readings(struct random_state *r, const vtx_service_readings *clean, const int set[SERVICE_READINGS], vtx_service_readings *taken);

#endif
