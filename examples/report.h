/* Numbers for people: SI with US trade units beside them, or one of the two. */
#ifndef REPORT_H
#define REPORT_H

#include <vtx.h>

enum report_units { REPORT_BOTH, REPORT_SI, REPORT_US };

/* Chooses for all that follows. */
void report_choose(enum report_units units);

/* Text of a quantity; the buffers are reused after a dozen calls. A NaN reads "-". */
const char *report_temperature(double kelvin);
const char *report_difference(double kelvin);
const char *report_gauge(double pascal, double barometer);
const char *report_absolute(double pascal);
const char *report_power(double watt);
const char *report_flow(double cubic_metre_per_second);
const char *report_pressure_drop(double pascal);
const char *report_loss(double pascal); /* of one part, finer */
const char *report_length(double metre);

/* A column of a table has one unit: SI unless US alone was chosen. */
struct report_column {
    const char *unit;
    double scale, zero; /* printed value: scale times SI value, less zero */
    int digits;         /* behind the point, of flows */
};

struct report_column report_temperatures(void);
struct report_column report_powers(void);
struct report_column report_flows(void);
struct report_column report_mass_flows(void);
double report_cell(const struct report_column *column, double si);

#endif
