/* The job file reader: inih splits the lines, libvtx reads the quantities. */
#include "job_file.h"

#include <ini.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

struct source {
    struct job_file *job;
    FILE *file;
    const char *text;
};

static void complain_at(struct job_file *job, int line, const char *section, const char *key, const char *what)
{
    job->faults++;
    fprintf(job->complaints, "%s:%d: [%s] %s: %s\n", job->name, line, section, key, what);
}

/* Feeds inih line by line, so that the line number is known to the handler. */
static char *next_line(char *line, int size, void *stream)
{
    struct source *s = stream;
    int used = 0;
    s->job->line++;
    if (s->file)
        return fgets(line, size, s->file);
    if (!*s->text)
        return NULL;
    while (*s->text && used < size - 1) {
        line[used++] = *s->text;
        if (*s->text++ == '\n')
            break;
    }
    line[used] = 0;
    return line;
}

static int keep_entry(void *user, const char *section, const char *key, const char *value)
{
    struct job_file *job = ((struct source *)user)->job;
    struct job_entry *e = &job->entries[job->count];
    if (job->count == JOB_ENTRIES_MAX || strlen(section) >= JOB_TEXT_MAX || strlen(key) >= JOB_TEXT_MAX || strlen(value) >= JOB_TEXT_MAX) {
        complain_at(job, job->line, section, key, "too long, or too many keys in the file");
        return 1;
    }
    for (int i = 0; i < job->count; i++)
        if (strcmp(job->entries[i].section, section) == 0 && strcmp(job->entries[i].key, key) == 0) {
            complain_at(job, job->line, section, key, "given twice");
            return 1;
        }
    snprintf(e->section, sizeof e->section, "%s", section);
    snprintf(e->key, sizeof e->key, "%s", key);
    snprintf(e->value, sizeof e->value, "%s", value);
    e->line = job->line;
    e->used = 0;
    job->count++;
    return 1;
}

int job_open(struct job_file *job, const char *name, const char *text)
{
    struct source s = { job, NULL, text };
    memset(job, 0, sizeof *job);
    job->name = name;
    job->barometer = (double)NAN;
    job->complaints = stderr;
    if (!text && !(s.file = fopen(name, "r"))) {
        fprintf(job->complaints, "%s: cannot be opened\n", name);
        job->faults++;
        return 1;
    }
    const int bad_line = ini_parse_stream(next_line, &s, keep_entry, &s);
    if (s.file)
        fclose(s.file);
    if (bad_line) {
        fprintf(job->complaints, "%s:%d: expected \"[section]\", \"key = value\" or a comment\n", name, bad_line);
        job->faults++;
    }
    return job->faults != 0;
}

static struct job_entry *find_entry(struct job_file *job, const char *section, const char *key, int required)
{
    for (int i = 0; i < job->count; i++)
        if (strcmp(job->entries[i].section, section) == 0 && strcmp(job->entries[i].key, key) == 0) {
            job->entries[i].used = 1;
            return &job->entries[i];
        }
    if (required)
        job_complain(job, section, key, "missing");
    return NULL;
}

int job_has(const struct job_file *job, const char *section, const char *key)
{
    for (int i = 0; i < job->count; i++)
        if (strcmp(job->entries[i].section, section) == 0 && strcmp(job->entries[i].key, key) == 0)
            return 1;
    return 0;
}

void job_complain(struct job_file *job, const char *section, const char *key, const char *what)
{
    int line = 0;
    for (int i = 0; i < job->count; i++)
        if (strcmp(job->entries[i].section, section) == 0 && (strcmp(job->entries[i].key, key) == 0 || line == 0))
            line = job->entries[i].line;
    complain_at(job, line, section, key, what);
}

static void complain_of_value(struct job_file *job, const struct job_entry *e, int32_t dimension, int32_t fault)
{
    char text[400], units[160] = "";
    if (dimension == VTX_DIMENSION_PRESSURE)
        snprintf(units, sizeof units, "bar(g), bar(a), kPa(a), psig, psia");
    for (int32_t i = 0; dimension != VTX_DIMENSION_PRESSURE && vtx_unit_symbol(dimension, i) && i < 6; i++) {
        const size_t length = strlen(units);
        snprintf(units + length, sizeof units - length, "%s%s", i ? ", " : "", vtx_unit_symbol(dimension, i));
    }
    snprintf(text, sizeof text, "\"%s\" is not accepted: %s; expected a %s, for example in %s", e->value, vtx_unit_fault_text(fault),
             vtx_dimension_text(dimension), units);
    complain_at(job, e->line, e->section, e->key, text);
}

void job_quantity(struct job_file *job, const char *section, const char *key, int32_t dimension, int required, double *value)
{
    const struct job_entry *e = find_entry(job, section, key, required);
    int32_t fault;
    if (!e || vtx_quantity_read(e->value, dimension, value) == VTX_OK)
        return;
    vtx_quantity_fault(e->value, dimension, &fault);
    complain_of_value(job, e, dimension, fault);
}

void job_pressure(struct job_file *job, const char *section, const char *key, int required, double *pressure)
{
    const struct job_entry *e = find_entry(job, section, key, required);
    const double barometer = isfinite(job->barometer) ? job->barometer : 101325;
    int32_t fault;
    if (!e || vtx_pressure_read(e->value, barometer, pressure) == VTX_OK)
        return;
    if (vtx_pressure_fault(e->value, barometer, &fault) != VTX_OK)
        fault = VTX_UNIT_FAULT_MAGNITUDE;
    complain_of_value(job, e, VTX_DIMENSION_PRESSURE, fault);
}

void job_integer(struct job_file *job, const char *section, const char *key, int required, int low, int high, int32_t *value)
{
    const struct job_entry *e = find_entry(job, section, key, required);
    char text[160], *end;
    if (!e)
        return;
    const long number = strtol(e->value, &end, 10);
    if (end != e->value && !*end && number >= low && number <= high) {
        *value = (int32_t)number;
        return;
    }
    snprintf(text, sizeof text, "\"%.60s\" is not accepted; expected a whole number from %d to %d", e->value, low, high);
    complain_at(job, e->line, section, key, text);
}

int job_word(struct job_file *job, const char *section, const char *key, int required, const char *const words[])
{
    const struct job_entry *e = find_entry(job, section, key, required);
    char text[500];
    if (!e)
        return -1;
    for (int i = 0; words[i]; i++)
        if (strcmp(words[i], e->value) == 0)
            return i;
    snprintf(text, sizeof text, "\"%.60s\" is not accepted; expected one of:", e->value);
    for (int i = 0; words[i]; i++)
        snprintf(text + strlen(text), sizeof text - strlen(text), "%s %s", i ? "," : "", words[i]);
    complain_at(job, e->line, section, key, text);
    return -1;
}

const char *job_text(struct job_file *job, const char *section, const char *key)
{
    const struct job_entry *e = find_entry(job, section, key, 0);
    return e ? e->value : NULL;
}

int job_sections(const struct job_file *job, const char *prefix, const char *names[], int most)
{
    int count = 0;
    for (int i = 0; i < job->count; i++) {
        const char *section = job->entries[i].section;
        int known = strncmp(section, prefix, strlen(prefix)) != 0;
        for (int k = 0; k < count; k++)
            known = known || strcmp(names[k], section) == 0;
        if (!known && count < most)
            names[count++] = section;
    }
    return count;
}

void job_pass_over(struct job_file *job, const char *prefix)
{
    for (int i = 0; i < job->count; i++)
        if (strncmp(job->entries[i].section, prefix, strlen(prefix)) == 0)
            job->entries[i].used = 1;
}

int job_close(struct job_file *job)
{
    for (int i = 0; i < job->count; i++)
        if (!job->entries[i].used)
            complain_at(job, job->entries[i].line, job->entries[i].section, job->entries[i].key, "unknown here; see --help for the keys");
    return job->faults;
}
