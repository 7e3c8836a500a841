/* Every numeric call of the base layer in one shape. Written by build-aux/generate. */
#include <vtx/units.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status absolute_pressure_call(const struct call_values *v)
{
    return vtx_absolute_pressure(v->number[0], v->number[1], v->out[0]);
}

static vtx_status absolute_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_absolute_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status gauge_pressure_call(const struct call_values *v)
{
    return vtx_gauge_pressure(v->number[0], v->number[1], v->out[0]);
}

static vtx_status gauge_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_gauge_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_base[] = {
    { "vtx_absolute_pressure", absolute_pressure_call, absolute_pressure_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 200000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_gauge_pressure", gauge_pressure_call, gauge_pressure_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 200000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
};

const size_t calls_base_count = sizeof calls_base / sizeof calls_base[0];
