/* What every test program shares: the runner, data rows, comparison, random numbers. */
#ifndef VTX_TESTS_HARNESS_H
#define VTX_TESTS_HARNESS_H

#include <math.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <CUnit/CUnit.h>

#include "calls.h"

/* A suite is a list of named tests. */
struct test_case {
    const char *what_must_be_true;
    void (*run)(void);
};

struct test_suite {
    const char *name;
    const struct test_case *tests;
    size_t count;
};

/* Defines a suite named suite_<name> from a static array of test_case. */
#define TEST_SUITE(name, tests) const struct test_suite suite_##name = { #name, tests, sizeof(tests) / sizeof((tests)[0]) }

/* Runs all, prints a summary line, returns the program's exit code. GSL's error handler is replaced by a counter that
 * must stay at zero. A program that runs no test or no assertion fails. */
int run_suites(const struct test_suite *const suites[], size_t count);

/* Path of a file under tests/data (environment VTX_TEST_DATA). The buffer is reused. */
const char *data_path(const char *file);

enum { ROW_VALUES_MAX = 24 };

/* A row of a data file: quantity;input input ...;expected;tolerance;source
 * tolerance is relative, or absolute when written "abs 1e-3". Inputs are plain SI numbers. */
struct data_row {
    const char *quantity;
    double input[ROW_VALUES_MAX];
    int inputs;
    double expected;
    double tolerance;
    int absolute;
    const char *source;
    int line;
};

/* Computes the row's quantity; returns 0 when it does not know the quantity. A failed call leaves *actual NaN. */
typedef int row_function(const struct data_row *row, double *actual);

/* Compares every row of the file. A row that nothing computes is a failure; fewer rows than at_least is a failure. */
void check_rows(const char *file, row_function *compute, int at_least);

/* Assertions that say which numbers they saw. Tolerances must be finite and positive. */
void expect_near(double actual, double expected, double relative, const char *what, const char *file, int line);
void expect_within(double actual, double expected, double absolute, const char *what, const char *file, int line);
void expect_true(int condition, const char *what, const char *file, int line);
void expect_status(int32_t actual, int32_t expected, const char *what, const char *file, int line);

#define EXPECT_NEAR(actual, expected, relative) expect_near((actual), (expected), (relative), #actual, __FILE__, __LINE__)
#define EXPECT_WITHIN(actual, expected, absolute) expect_within((actual), (expected), (absolute), #actual, __FILE__, __LINE__)
#define EXPECT(condition) expect_true((condition) != 0, #condition, __FILE__, __LINE__)
#define EXPECT_STATUS(call, expected) expect_status((call), (expected), #call, __FILE__, __LINE__)
#define EXPECT_OK(call) expect_status((call), 0, #call, __FILE__, __LINE__)

/* How many random states a test tries: count, times the whole number in the environment's VTX_SOAK where that is set. */
int soak_count(int count);

/* Repeatable random numbers (xorshift64*), the same on every machine. */
struct random_state { uint64_t word; };
void random_seed(struct random_state *r, uint64_t seed);
double random_uniform(struct random_state *r, double low, double high);
double random_log_uniform(struct random_state *r, double low, double high);
double random_normal(struct random_state *r);

#endif
