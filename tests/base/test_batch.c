/* The loop behind the batch forms: what check_calls cannot see. */
#include <fenv.h>

#include "../../libvtx/base/batch.h"
#include "../harness/harness.h"

static vtx_status divide_item(const struct batch *b, size_t i)
{
    const double quotient = batch_get(b, 0, i) / batch_get(b, 1, i);
    const vtx_status status = is_finite(quotient) ? VTX_OK : VTX_OUT_OF_RANGE;
    batch_put(b, 0, i, &quotient, sizeof quotient);
    return status;
}

static vtx_status divide(size_t n, const double *a, ptrdiff_t a_stride, const double *b, ptrdiff_t b_stride, double *q, ptrdiff_t q_stride,
                         int optional, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { a, a_stride }, { b, b_stride } };
    const struct batch_output out[] = { { q, q_stride, optional } };
    return batch_run(n, in, 2, out, 1, NULL, divide_item, status, failed);
}

static void flags_are_left_as_found(void)
{
    const double a[2] = { 1, 1 }, b[2] = { 0, 3 };
    double q[2];
    feclearexcept(FE_ALL_EXCEPT);
    EXPECT_STATUS(divide(2, a, 8, b, 8, q, 8, 0, NULL, NULL), VTX_PARTIAL);
    EXPECT(fetestexcept(FE_ALL_EXCEPT) == 0);
    feraiseexcept(FE_OVERFLOW | FE_INVALID);
    EXPECT_STATUS(divide(2, a, 8, b, 8, q, 8, 0, NULL, NULL), VTX_PARTIAL);
    EXPECT(fetestexcept(FE_ALL_EXCEPT) == (FE_OVERFLOW | FE_INVALID) || fetestexcept(FE_ALL_EXCEPT) == (FE_OVERFLOW | FE_INVALID | FE_INEXACT));
    feclearexcept(FE_ALL_EXCEPT);
}

static void the_rounding_direction_survives(void)
{
    const double a = 1, b = 3;
    double up, nearest;
    EXPECT_OK(divide(1, &a, 0, &b, 0, &nearest, 0, 0, NULL, NULL));
    fesetround(FE_UPWARD);
    EXPECT_OK(divide(1, &a, 0, &b, 0, &up, 0, 0, NULL, NULL));
    EXPECT(fegetround() == FE_UPWARD);
    fesetround(FE_TONEAREST);
    EXPECT(up > nearest);
}

static void failures_are_counted_and_good_items_stay(void)
{
    const double a[4] = { 1, 2, 3, 4 }, b[4] = { 2, 0, 2, 0 };
    double q[4];
    int32_t status[4];
    size_t failed;
    EXPECT_STATUS(divide(4, a, 8, b, 8, q, 8, 0, status, &failed), VTX_PARTIAL);
    EXPECT(failed == 2 && status[0] == VTX_OK && status[1] == VTX_OUT_OF_RANGE && status[2] == VTX_OK && status[3] == VTX_OUT_OF_RANGE);
    EXPECT(q[0] == 0.5 && q[2] == 1.5);
}

static void an_optional_output_may_be_absent(void)
{
    const double a = 1, b = 2;
    size_t failed = 9;
    EXPECT_OK(divide(1, &a, 0, &b, 0, NULL, 0, 1, NULL, &failed));
    EXPECT(failed == 0);
    EXPECT_STATUS(divide(1, &a, 0, &b, 0, NULL, 0, 0, NULL, &failed), VTX_BAD_ARGUMENT);
    EXPECT(failed == 1);
}

static void one_item_needs_no_stride_and_none_needs_no_columns(void)
{
    const double a = 1, b = 2;
    double q = 0;
    EXPECT_OK(divide(1, &a, 0, &b, 0, &q, 0, 0, NULL, NULL));
    EXPECT(q == 0.5);
    EXPECT_OK(divide(0, NULL, 0, NULL, 0, NULL, 0, 0, NULL, NULL));
}

static void a_repeated_input_and_a_reversed_output_meet(void)
{
    const double a = 6, b[3] = { 1, 2, 3 };
    double q[3];
    EXPECT_OK(divide(3, &a, 0, b, 8, q + 2, -8, 0, NULL, NULL));
    EXPECT(q[2] == 6 && q[1] == 3 && q[0] == 2);
}

static const struct test_case tests[] = {
    { "flags are left as found", flags_are_left_as_found },
    { "the rounding direction survives", the_rounding_direction_survives },
    { "failures are counted and good items stay", failures_are_counted_and_good_items_stay },
    { "an optional output may be absent", an_optional_output_may_be_absent },
    { "one item needs no stride and none needs no columns", one_item_needs_no_stride_and_none_needs_no_columns },
    { "a repeated input and a reversed output meet", a_repeated_input_and_a_reversed_output_meet },
};
TEST_SUITE(batch, tests);
