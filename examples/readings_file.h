/* Readings of a cooler in service and the instruments they were taken with, from a job file. */
#ifndef READINGS_FILE_H
#define READINGS_FILE_H

#include "job_file.h"

enum { READINGS = 8 }; /* in the order of enum vtx_read */

/* Standard uncertainties. */
struct instruments {
    double uncertainty[READINGS]; /* Pa or K; of flows a share of the reading */
    double drop;                  /* Pa, of the gauge across a filter */
    int32_t thermometer;          /* enum vtx_thermometer_class; 0: not stated */
    int is_own[READINGS];         /* stated for this very instrument */
    int is_missing[READINGS];     /* said not to be readable here */
};

/* Where a thermometer sits, when it does not read the stagnation temperature. */
struct thermometers {
    int is_stated[READINGS];
    vtx_probe probe[READINGS];
};

extern const char readings_keys[];
extern const char *const readings_names[READINGS];

void instruments_read(struct job_file *file, struct instruments *instruments);
void thermometers_read(struct job_file *file, double room_temperature, struct thermometers *thermometers);

/* Standard uncertainty of a reading of this value, by what the instruments are good to. */
double instruments_uncertainty(const struct instruments *instruments, int reading, double value);

/* The readings of one section, with their uncertainties, thermometers not yet corrected. Returns how many there are.
 * Flows are read as free air at the cooler's reference state or at the one that "flows read at" names. */
int readings_read(struct job_file *file, const char *section, const vtx_cooler *cooler, const struct instruments *instruments,
                  vtx_service_readings *readings);

/* Replaces what the thermometers read by the streams' stagnation temperatures. */
void readings_correct(struct job_file *file, const char *section, const struct thermometers *thermometers, vtx_service_readings *readings);

#endif
