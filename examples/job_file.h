/* Reads a job file: sections of keys with values and units, every complaint with file, line and key. */
#ifndef JOB_FILE_H
#define JOB_FILE_H

#include <stdio.h>
#include <vtx.h>

enum { JOB_ENTRIES_MAX = 400, JOB_COOLERS_MAX = 32, JOB_ELEMENTS_MAX = 16, JOB_TEXT_MAX = 120 };

struct job_entry {
    char section[JOB_TEXT_MAX], key[JOB_TEXT_MAX], value[JOB_TEXT_MAX];
    int line;
    int used;
};

struct job_file {
    const char *name;
    struct job_entry entries[JOB_ENTRIES_MAX];
    int count;
    int line;             /* of the line being read */
    int faults;
    double barometer;     /* Pa, gauge zero; NaN until the site is known */
    FILE *complaints;
};

/* Reads and splits the file; text instead of a file when text is not null. Returns 0 on success. */
int job_open(struct job_file *job, const char *name, const char *text);

/* Value of a key in SI; *value is left alone when the key is missing and not required. */
void job_quantity(struct job_file *job, const char *section, const char *key, int32_t dimension, int required, double *value);

/* Absolute pressure; the text must say (a) or (g). */
void job_pressure(struct job_file *job, const char *section, const char *key, int required, double *pressure);

/* Whole number within a range. */
void job_integer(struct job_file *job, const char *section, const char *key, int required, int low, int high, int32_t *value);

/* Index of a word in a list that ends with a null pointer; -1 when missing and not required. */
int job_word(struct job_file *job, const char *section, const char *key, int required, const char *const words[]);

/* Text of a key, or null. */
const char *job_text(struct job_file *job, const char *section, const char *key);

/* Whether the key is there at all. */
int job_has(const struct job_file *job, const char *section, const char *key);

/* A complaint about a key that was read; line 0 when the key is missing. */
void job_complain(struct job_file *job, const char *section, const char *key, const char *what);

/* Names of the sections that begin with prefix, in the order of the file. Returns how many. */
int job_sections(const struct job_file *job, const char *prefix, const char *names[], int most);

/* Lets the sections that begin with prefix stand: another program reads them. */
void job_pass_over(struct job_file *job, const char *prefix);

/* Complains of every key that nothing asked for. Returns the number of all complaints. */
int job_close(struct job_file *job);

#endif
