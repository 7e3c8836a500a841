/* JSON by RFC 8259. */
#include "json_writer.h"

#include <math.h>

static void put_text(FILE *file, const char *text)
{
    putc('"', file);
    for (; *text; text++) {
        const unsigned char c = (unsigned char)*text;
        if (c == '"' || c == '\\')
            fprintf(file, "\\%c", c);
        else if (c < 32)
            fprintf(file, "\\u%04x", c);
        else
            putc(c, file);
    }
    putc('"', file);
}

static void start(struct json *json, const char *name)
{
    if (json->depth > 0)
        fprintf(json->file, "%s\n%*s", json->first ? "" : ",", 2 * json->depth, "");
    json->first = 0;
    if (name) {
        put_text(json->file, name);
        fputs(": ", json->file);
    }
}

void json_open(struct json *json, const char *name, char bracket)
{
    start(json, name);
    putc(bracket, json->file);
    json->depth++;
    json->first = 1;
}

void json_close(struct json *json, char bracket)
{
    json->depth--;
    if (!json->first)
        fprintf(json->file, "\n%*s", 2 * json->depth, "");
    putc(bracket, json->file);
    json->first = 0;
    if (json->depth == 0)
        putc('\n', json->file);
}

void json_number(struct json *json, const char *name, double value)
{
    start(json, name);
    if (isfinite(value))
        fprintf(json->file, "%.10g", value);
    else
        fputs("null", json->file);
}

void json_integer(struct json *json, const char *name, int32_t value)
{
    start(json, name);
    fprintf(json->file, "%ld", (long)value);
}

void json_truth(struct json *json, const char *name, int value)
{
    start(json, name);
    fputs(value ? "true" : "false", json->file);
}

void json_text(struct json *json, const char *name, const char *text)
{
    start(json, name);
    if (text)
        put_text(json->file, text);
    else
        fputs("null", json->file);
}
