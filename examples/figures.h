/* The figures of a report: each is written once, in the sentence that tells it, and goes to people as text or to programs as JSON.
 *
 * A sentence says its figures through noted(...), which returns them unchanged; with JSON the sentence is silent and the names remain.
 * Values are in SI units, whatever the sentence makes of them. */
#ifndef FIGURES_H
#define FIGURES_H

#include <stdint.h>

#ifdef __GNUC__
#define FIGURES_PRINTF __attribute__((format(printf, 1, 2)))
#else
#define FIGURES_PRINTF
#endif

/* For all that follows: JSON instead of text. */
void figures_to_json(void);
int figures_are_json(void);

/* printf, silent with JSON. */
void say(const char *format, ...) FIGURES_PRINTF;

/* An object of that name, each name once; then one row of the list of that name. What was open is closed. */
void figures_section(const char *name);
void figures_row(const char *list);

/* A figure of the section or row; the name must outlive the section. Again under the same name it is not written again. */
double noted(const char *name, double value);
int32_t noted_code(const char *name, int32_t code);
const char *noted_text(const char *name, const char *text);

/* Ends the document. */
void figures_end(int32_t exit_code);

#endif
