/* Dates as year-month-day, counted in seconds from 1970-01-01. */
#ifndef SERVICE_DATES_H
#define SERVICE_DATES_H

#include "job_file.h"

/* *seconds is left alone when the key is missing and not required. */
void date_read(struct job_file *file, const char *section, const char *key, int required, double *seconds);

/* Text of a date; the buffers are reused after a few calls. "-" for a NaN or beyond the years 1 to 9999. */
const char *date_text(double seconds);

#endif
