/* Gregorian calendar without clock or time zone: the same answer everywhere. */
#include "service_dates.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { DAY = 86400 };

static int is_leap(long year) { return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0; }

static int days_in_month(long year, long month)
{
    static const int days[] = { 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31 };
    return days[month - 1] + (month == 2 && is_leap(year));
}

/* Days before a year, from 0001-01-01. */
static long days_before_year(long year)
{
    const long past = year - 1;
    return 365 * past + past / 4 - past / 100 + past / 400;
}

static const long epoch = 719162; /* of 1970-01-01, by days_before_year */

static int parse(const char *text, long *year, long *month, long *day)
{
    static const char pattern[] = "dddd-dd-dd";
    if (strlen(text) != strlen(pattern))
        return 0;
    for (size_t i = 0; pattern[i]; i++)
        if (pattern[i] == 'd' ? text[i] < '0' || text[i] > '9' : text[i] != pattern[i])
            return 0;
    *year = strtol(text, NULL, 10);
    *month = strtol(text + 5, NULL, 10);
    *day = strtol(text + 8, NULL, 10);
    return *year >= 1 && *month >= 1 && *month <= 12 && *day >= 1 && *day <= days_in_month(*year, *month);
}

void date_read(struct job_file *f, const char *section, const char *key, int required, double *seconds)
{
    const char *text = job_text(f, section, key);
    char complaint[JOB_TEXT_MAX + 80];
    long year, month, day;
    if (!text) {
        if (required)
            job_complain(f, section, key, "missing");
        return;
    }
    if (!parse(text, &year, &month, &day)) {
        snprintf(complaint, sizeof complaint, "\"%s\" is not accepted; expected a date as 2026-03-31", text);
        job_complain(f, section, key, complaint);
        return;
    }
    long days = days_before_year(year) - epoch + day - 1;
    for (long m = 1; m < month; m++)
        days += days_in_month(year, m);
    *seconds = (double)days * DAY;
}

const char *date_text(double seconds)
{
    static char texts[6][16];
    static int next;
    const double whole = floor(seconds / DAY) + (double)epoch;
    if (!(whole >= 0 && whole < (double)days_before_year(10000)))
        return "-";
    const long days = (long)whole;
    long year = days / 366 + 1, month = 1, day;
    while (days_before_year(year + 1) <= days)
        year++;
    day = days - days_before_year(year) + 1;
    while (day > days_in_month(year, month))
        day -= days_in_month(year, month++);
    next = (next + 1) % 6;
    snprintf(texts[next], sizeof texts[next], "%04d-%02d-%02d", (int)year, (int)month, (int)day);
    return texts[next];
}
