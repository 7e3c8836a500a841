/* The runner and the shared assertions. */
#include "harness.h"

#include <CUnit/Basic.h>
#include <gsl/gsl_errno.h>

static unsigned gsl_errors;

static void count_gsl_error(const char *reason, const char *file, int line, int code)
{
    gsl_errors++;
    fprintf(stderr, "GSL error handler reached: %s (%s:%d, code %d)\n", reason, file, line, code);
}

static int executable_suites(const struct test_suite *const suites[], size_t count)
{
    for (size_t s = 0; s < count; s++) {
        CU_pSuite suite = CU_add_suite(suites[s]->name, NULL, NULL);
        if (!suite)
            return 0;
        for (size_t t = 0; t < suites[s]->count; t++)
            if (!CU_add_test(suite, suites[s]->tests[t].what_must_be_true, suites[s]->tests[t].run))
                return 0;
    }
    return 1;
}

int run_suites(const struct test_suite *const suites[], size_t count)
{
    int good;
    gsl_set_error_handler(count_gsl_error);
    /* The first suite of a layer is that of its calls, which are then timed. */
    if (getenv("VTX_SPEED"))
        count = 1;
    if (CU_initialize_registry() != CUE_SUCCESS || !executable_suites(suites, count)) {
        fprintf(stderr, "cannot set up the tests: %s\n", CU_get_error_msg());
        return EXIT_FAILURE;
    }
    CU_basic_set_mode(CU_BRM_NORMAL);
    /* CU_basic_run_tests returns 0 with failing tests: look at the counts. */
    good = CU_basic_run_tests() == CUE_SUCCESS && CU_get_number_of_failures() == 0 && CU_get_number_of_suites_failed() == 0
        && CU_get_number_of_tests_run() > 0 && CU_get_number_of_successes() > 0;
    if (gsl_errors) {
        fprintf(stderr, "GSL error handler was reached %u times\n", gsl_errors);
        good = 0;
    }
    printf("%u tests, %u assertions, %u failed\n", CU_get_number_of_tests_run(), CU_get_number_of_asserts(),
           CU_get_number_of_failures());
    CU_cleanup_registry();
    return good ? EXIT_SUCCESS : EXIT_FAILURE;
}

const char *data_path(const char *file)
{
    static char path[1024];
    const char *folder = getenv("VTX_TEST_DATA");
    snprintf(path, sizeof path, "%s/%s", folder ? folder : "tests/data", file);
    return path;
}

static void report(int good, const char *text, const char *file, int line)
{
    CU_assertImplementation(good ? CU_TRUE : CU_FALSE, (unsigned)line, text, file, "", CU_FALSE);
}

static void compare(double actual, double expected, double error, double limit, const char *what, const char *file, int line)
{
    char text[400];
    const int good = isfinite(actual) && isfinite(expected) && isfinite(limit) && limit > 0 && error <= limit;
    snprintf(text, sizeof text, "%s: got %.15g, expected %.15g, error %.3g, limit %.3g", what, actual, expected, error, limit);
    report(good, text, file, line);
}

void expect_near(double actual, double expected, double relative, const char *what, const char *file, int line)
{
    compare(actual, expected, fabs(actual - expected), relative * fabs(expected), what, file, line);
}

void expect_within(double actual, double expected, double absolute, const char *what, const char *file, int line)
{
    compare(actual, expected, fabs(actual - expected), absolute, what, file, line);
}

void expect_true(int condition, const char *what, const char *file, int line) { report(condition, what, file, line); }

void expect_status(int32_t actual, int32_t expected, const char *what, const char *file, int line)
{
    char text[400];
    snprintf(text, sizeof text, "%s: status %d, expected %d", what, (int)actual, (int)expected);
    report(actual == expected, text, file, line);
}

/* Splits off the part before the next semicolon. */
static char *next_part(char **rest)
{
    char *part = *rest;
    char *semicolon = part ? strchr(part, ';') : NULL;
    if (semicolon)
        *semicolon = 0;
    *rest = semicolon ? semicolon + 1 : NULL;
    return part;
}

static int read_row(char *text, struct data_row *row)
{
    char *rest = text, *end;
    char *quantity = next_part(&rest), *inputs = next_part(&rest), *expected = next_part(&rest);
    char *tolerance = next_part(&rest), *source = next_part(&rest);
    if (!source || !*source || rest)
        return 0;
    row->quantity = quantity;
    row->source = source;
    row->inputs = 0;
    for (double value = strtod(inputs, &end); end != inputs; value = strtod(inputs, &end)) {
        if (row->inputs == ROW_VALUES_MAX)
            return 0;
        row->input[row->inputs++] = value;
        inputs = end;
    }
    while (*inputs == ' ')
        inputs++;
    row->absolute = strncmp(tolerance, "abs ", 4) == 0;
    row->tolerance = strtod(row->absolute ? tolerance + 4 : tolerance, &end);
    if (*inputs || *end || !(row->tolerance > 0))
        return 0;
    row->expected = strtod(expected, &end);
    return end != expected && !*end;
}

void check_rows(const char *file, row_function *compute, int at_least)
{
    char text[1024], what[1400];
    int rows = 0;
    FILE *stream = fopen(data_path(file), "r");
    expect_true(stream != NULL, data_path(file), __FILE__, __LINE__);
    if (!stream)
        return;
    for (int line = 1; fgets(text, sizeof text, stream); line++) {
        struct data_row row = { .line = line };
        double actual = (double)NAN;
        text[strcspn(text, "\r\n")] = 0;
        if (!*text || *text == '#')
            continue;
        if (!read_row(text, &row)) {
            snprintf(what, sizeof what, "%s:%d: row not understood: %s", file, line, text);
            expect_true(0, what, __FILE__, __LINE__);
            continue;
        }
        rows++;
        snprintf(what, sizeof what, "%s:%d %s (%s)", file, line, row.quantity, row.source);
        if (!compute(&row, &actual))
            expect_true(0, strcat(what, ": nothing computes this quantity"), __FILE__, __LINE__);
        else if (row.absolute)
            expect_within(actual, row.expected, row.tolerance, what, __FILE__, __LINE__);
        else
            expect_near(actual, row.expected, row.tolerance, what, __FILE__, __LINE__);
    }
    fclose(stream);
    snprintf(what, sizeof what, "%s: %d rows, at least %d wanted", file, rows, at_least);
    expect_true(rows >= at_least, what, __FILE__, __LINE__);
}

int soak_count(int count)
{
    const char *factor = getenv("VTX_SOAK");
    const long times = factor ? strtol(factor, NULL, 10) : 1;
    return times > 1 && times <= 10000 ? count * (int)times : count;
}

void random_seed(struct random_state *r, uint64_t seed) { r->word = seed * UINT64_C(0x9e3779b97f4a7c15) + 1; }

/* Marsaglia 2003, Vigna 2016: xorshift64*. */
static uint64_t random_word(struct random_state *r)
{
    r->word ^= r->word >> 12;
    r->word ^= r->word << 25;
    r->word ^= r->word >> 27;
    return r->word * UINT64_C(0x2545f4914f6cdd1d);
}

double random_uniform(struct random_state *r, double low, double high)
{
    return low + (high - low) * ((double)(random_word(r) >> 11) * 0x1p-53);
}

double random_log_uniform(struct random_state *r, double low, double high)
{
    return exp(random_uniform(r, log(low), log(high)));
}

/* Box and Muller 1958. */
double random_normal(struct random_state *r)
{
    const double u = 1 - random_uniform(r, 0, 1);
    return sqrt(-2 * log(u)) * cos(6.283185307179586 * random_uniform(r, 0, 1));
}
