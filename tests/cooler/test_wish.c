/* The search behind the inverses. */
#include "../../libvtx/cooler/wish.h"

#include "../harness/harness.h"

/* A hill: 1 at x = 0.3. */
static double hill(double x, void *context)
{
    (*(int *)context)++;
    return 1 - (x - 0.3) * (x - 0.3);
}

/* Answers between 0.2 and 0.6 only. */
static double patch(double x, void *context)
{
    (void)context;
    return x >= 0.2 && x <= 0.6 ? x : (double)NAN;
}

static void both_branches_are_found(void)
{
    int count = 0;
    struct wish_answer a;
    struct wish w = { hill, &count, 0.91, 0, 1, 1e-12, WISH_AT_LEAST, WISH_LOWEST, 0, 0 };
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0, 1e-11);
    w.choice = WISH_HIGHEST;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.6, 1e-11);
    EXPECT(count < 250);
}

static void a_wish_met_throughout_is_bound_by_the_range(void)
{
    int count = 0;
    struct wish_answer a;
    struct wish w = { hill, &count, 0.4, 0.1, 1, 1e-12, WISH_AT_LEAST, WISH_HIGHEST, 0, 0 };
    EXPECT_OK(search_wish(&w, &a));
    EXPECT(a.met_at_end && a.x == 1);
}

static void an_impossible_wish_says_how_near_it_comes(void)
{
    int count = 0;
    struct wish_answer a;
    struct wish w = { hill, &count, 1.5, 0, 1, 1e-10, WISH_AT_LEAST, WISH_LOWEST, 0, 0 };
    EXPECT_STATUS(search_wish(&w, &a), VTX_NO_SOLUTION);
    EXPECT_NEAR(a.best, 1, 1e-12);
    EXPECT_WITHIN(a.best_x, 0.3, 1e-6);
}

static void a_peak_between_two_grid_points_is_seen(void)
{
    int count = 0;
    struct wish_answer a;
    struct wish w = { hill, &count, 1 - 1e-5, 0, 1, 1e-10, WISH_AT_LEAST, WISH_LOWEST, 0, 0 };
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.3 - sqrt(1e-5), 1e-8);
}

static void points_without_an_answer_are_passed_over(void)
{
    struct wish_answer a;
    struct wish w = { patch, NULL, 0.5, 0, 1, 1e-10, WISH_AT_LEAST, WISH_LOWEST, 0, 0 };
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.5, 1e-9);
    w.choice = WISH_HIGHEST;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.6, 1e-9);
    w.low = 0.7;
    EXPECT_STATUS(search_wish(&w, &a), VTX_OUT_OF_RANGE);
}

/* Jumps over every wish between -1 and 1. */
static double cliff(double x, void *context)
{
    (void)context;
    return x < 0.51 ? -1 : 1;
}

static void exact_wishes_are_met_by_equality(void)
{
    int count = 0;
    struct wish_answer a;
    struct wish w = { hill, &count, 0.95, 0, 1, 1e-13, WISH_EXACTLY, WISH_LOWEST, 0, 0 };
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.3 - sqrt(0.05), 1e-11);
    EXPECT(!a.met_at_end && a.best_x == a.x);
    w.choice = WISH_HIGHEST;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.3 + sqrt(0.05), 1e-11);
    w.wanted = 0.4; /* at least that much everywhere: at the end is not exactly */
    w.low = 0.1;
    EXPECT_STATUS(search_wish(&w, &a), VTX_NO_SOLUTION);
    EXPECT(isnan(a.x) && a.best_x == 1);
    EXPECT_WITHIN(a.best, 0.51, 1e-15);
    w.wanted = 1 - 1e-6; /* both roots between two points of the grid */
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.301, 1e-9);
    w.choice = WISH_LOWEST;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.299, 1e-9);
    w.wanted = 1.1;
    EXPECT_STATUS(search_wish(&w, &a), VTX_NO_SOLUTION);
    EXPECT_WITHIN(a.best_x, 0.3, 1e-6);
    EXPECT_WITHIN(a.best, 1, 1e-11);
}

static void an_exact_wish_is_seen_beside_what_has_no_answer(void)
{
    struct wish_answer a;
    struct wish w = { patch, NULL, 0.205, 0, 1, 1e-13, WISH_EXACTLY, WISH_LOWEST, 0, 0 };
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.205, 1e-11);
    w.wanted = 0.595;
    w.choice = WISH_HIGHEST;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.595, 1e-11);
    w.wanted = 0.15;
    EXPECT_STATUS(search_wish(&w, &a), VTX_NO_SOLUTION);
    EXPECT_WITHIN(a.best_x, 0.2, 1e-11);
    struct wish jump = { cliff, NULL, 0.2, 0, 1, 1e-13, WISH_EXACTLY, WISH_LOWEST, 0, 0 };
    EXPECT_STATUS(search_wish(&jump, &a), VTX_NO_SOLUTION);
    EXPECT(isnan(a.x) && a.best == 1);
}

static void the_best_may_be_where_answers_end(void)
{
    struct wish_answer a;
    struct wish w = { patch, NULL, 0.9, 0, 1, 1e-12, WISH_AT_LEAST, WISH_LOWEST, 0, 0 };
    EXPECT_STATUS(search_wish(&w, &a), VTX_NO_SOLUTION);
    EXPECT_WITHIN(a.best_x, 0.6, 1e-11);
    /* Met beyond the last point of the grid that has an answer. */
    w.wanted = 0.6 - 1e-4;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.6 - 1e-4, 1e-11);
    EXPECT(!a.met_at_end);
    w.choice = WISH_HIGHEST;
    EXPECT_OK(search_wish(&w, &a));
    EXPECT_WITHIN(a.x, 0.6, 1e-11);
    EXPECT(a.met_at_end);
}

static const struct test_case tests[] = {
    { "both branches are found", both_branches_are_found },
    { "a wish met throughout is bound by the range", a_wish_met_throughout_is_bound_by_the_range },
    { "an impossible wish says how near it comes", an_impossible_wish_says_how_near_it_comes },
    { "a peak between two grid points is seen", a_peak_between_two_grid_points_is_seen },
    { "points without an answer are passed over", points_without_an_answer_are_passed_over },
    { "exact wishes are met by equality", exact_wishes_are_met_by_equality },
    { "an exact wish is seen beside what has no answer", an_exact_wish_is_seen_beside_what_has_no_answer },
    { "the best may be where answers end", the_best_may_be_where_answers_end },
};
TEST_SUITE(wish, tests);
