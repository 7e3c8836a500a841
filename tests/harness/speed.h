/* Times of calls, printed instead of tests when the environment names a file for them in VTX_SPEED; with VTX_COUNT, instructions. */
#ifndef VTX_TESTS_SPEED_H
#define VTX_TESTS_SPEED_H

#include "harness.h"

/* Of the items that would be timed: an error is no time of the call. */
size_t timed_items_that_fail(const struct call_description *call, const struct call_values *sample);

void print_speed_unit(void);

/* One line of text on standard output and one JSON object on a line of the file, if any; or what bench/count_instructions reads. */
void print_speed(const struct call_description *call, const struct call_values *sample, FILE *json);

#endif
