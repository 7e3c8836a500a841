/* Writes one JSON document: objects and lists may be nested, names are escaped, a NaN becomes null. */
#ifndef JSON_WRITER_H
#define JSON_WRITER_H

#include <stdint.h>
#include <stdio.h>

struct json {
    FILE *file;
    int depth;
    int first; /* nothing written yet on this level */
};

/* name is null inside a list and for the document itself. bracket: '{' or '['; its partner closes it. */
void json_open(struct json *json, const char *name, char bracket);
void json_close(struct json *json, char bracket);

void json_number(struct json *json, const char *name, double value);
void json_integer(struct json *json, const char *name, int32_t value);
void json_truth(struct json *json, const char *name, int value);

/* null when text is null. */
void json_text(struct json *json, const char *name, const char *text);

#endif
