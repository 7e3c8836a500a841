/* Every numeric call of the media layer in one shape. Written by build-aux/generate. */
#include <vtx/water.h>

#include "../harness/calls.h"

static vtx_status water_saturation_pressure_call(const struct call_values *v)
{
    return vtx_water_saturation_pressure(v->number[0], v->out[0]);
}

static vtx_status water_saturation_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_saturation_pressure_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_media[] = {
    { "vtx_water_saturation_pressure", water_saturation_pressure_call, water_saturation_pressure_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
};

const size_t calls_media_count = sizeof calls_media / sizeof calls_media[0];
