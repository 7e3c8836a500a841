/* One list of figures, two ways to tell them. */
#include "figures.h"

#include <stdarg.h>
#include <string.h>

#include "json_writer.h"

enum { NAMES_MAX = 80, DOCUMENT = 1, SECTION = 2, ROW = 3 };

static struct json json;
static const char *list, *names[NAMES_MAX];
static int is_json, name_count;

void figures_to_json(void)
{
    is_json = 1;
    json.file = stdout;
    json_open(&json, NULL, '{');
}

int figures_are_json(void) { return is_json; }

void say(const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    if (!is_json)
        vprintf(format, arguments);
    va_end(arguments);
}

static void close_to(int depth)
{
    while (json.depth > depth)
        json_close(&json, json.depth == SECTION && list ? ']' : '}');
    if (depth < SECTION)
        list = NULL;
    name_count = 0;
}

void figures_section(const char *name)
{
    if (!is_json)
        return;
    close_to(DOCUMENT);
    json_open(&json, name, '{');
}

void figures_row(const char *name)
{
    if (!is_json)
        return;
    close_to(list && strcmp(list, name) == 0 ? SECTION : DOCUMENT);
    if (!list)
        json_open(&json, name, '[');
    list = name;
    json_open(&json, NULL, '{');
}

/* Whether this name is to be written here. */
static int is_new(const char *name)
{
    for (int i = 0; i < name_count; i++)
        if (strcmp(names[i], name) == 0)
            return 0;
    if (!is_json || name_count == NAMES_MAX)
        return 0;
    names[name_count++] = name;
    return 1;
}

double noted(const char *name, double value)
{
    if (is_new(name))
        json_number(&json, name, value);
    return value;
}

int32_t noted_code(const char *name, int32_t code)
{
    if (is_new(name))
        json_integer(&json, name, code);
    return code;
}

const char *noted_text(const char *name, const char *text)
{
    if (is_new(name))
        json_text(&json, name, text);
    return text;
}

void figures_end(int32_t exit_code)
{
    if (!is_json)
        return;
    close_to(DOCUMENT);
    json_integer(&json, "exit_code", exit_code);
    close_to(0);
}
