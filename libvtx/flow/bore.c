/* Bores of standard pipe, hose and tube. */
#include <vtx/bore.h>

#include "friction_kernel.h"

/* From memory: Moody's commercial steel, and drawn tubing. */
static const double steel_roughness = 4.6e-5;
static const double smooth_roughness = 1.5e-6;

struct size {
    double bore, outside; /* mm; outside 0 unknown */
    char name[28];
};

/* ASME B36.10M, metric, as held by python3-fluids 1.0.22. */
static const struct size schedule_40[] = {
    { 6.84, 10.3, "1/8 in schedule 40" },    { 9.22, 13.7, "1/4 in schedule 40" },    { 12.48, 17.1, "3/8 in schedule 40" },
    { 15.76, 21.3, "1/2 in schedule 40" },   { 20.96, 26.7, "3/4 in schedule 40" },   { 26.64, 33.4, "1 in schedule 40" },
    { 35.08, 42.2, "1 1/4 in schedule 40" }, { 40.94, 48.3, "1 1/2 in schedule 40" }, { 52.48, 60.3, "2 in schedule 40" },
    { 62.68, 73.0, "2 1/2 in schedule 40" }, { 77.92, 88.9, "3 in schedule 40" },     { 102.26, 114.3, "4 in schedule 40" },
};

/* EN 10255 / ISO 65 medium: walls 2.0 2.3 2.3 2.6 2.6 3.2 3.2 3.2 3.6 mm; outside diameters, DN 6 and DN 32 to 50 from memory. */
static const struct size en10255_medium[] = {
    { 6.2, 10.2, "DN 6 EN 10255 medium" },   { 8.9, 13.5, "DN 8 EN 10255 medium" },   { 12.6, 17.2, "DN 10 EN 10255 medium" },
    { 16.1, 21.3, "DN 15 EN 10255 medium" }, { 21.7, 26.9, "DN 20 EN 10255 medium" }, { 27.3, 33.7, "DN 25 EN 10255 medium" },
    { 36.0, 42.4, "DN 32 EN 10255 medium" }, { 41.9, 48.3, "DN 40 EN 10255 medium" }, { 53.1, 60.3, "DN 50 EN 10255 medium" },
};

/* From memory. */
static const struct size hose_inch[] = {
    { 4.7625, 0, "3/16 in hose" }, { 6.35, 0, "1/4 in hose" },   { 7.9375, 0, "5/16 in hose" }, { 9.525, 0, "3/8 in hose" },
    { 12.7, 0, "1/2 in hose" },    { 15.875, 0, "5/8 in hose" }, { 19.05, 0, "3/4 in hose" },   { 25.4, 0, "1 in hose" },
};

/* ISO 1307, from memory. */
static const struct size hose_metric[] = {
    { 5, 0, "5 mm hose" },       { 6.3, 0, "6.3 mm hose" }, { 8, 0, "8 mm hose" },   { 10, 0, "10 mm hose" },
    { 12.5, 0, "12.5 mm hose" }, { 16, 0, "16 mm hose" },   { 20, 0, "20 mm hose" }, { 25, 0, "25 mm hose" },
};

/* From memory: 8 mm tube is sold with 5 to 5.5 mm, 10 mm with 6.5 to 7, 12 mm with 8 to 9. */
static const struct size push_in[] = {
    { 4, 6, "6 mm push-in tube" }, { 5, 8, "8 mm push-in tube" }, { 6.5, 10, "10 mm push-in tube" }, { 8, 12, "12 mm push-in tube" },
};

static const struct size *sizes_of(int32_t series, int32_t *count)
{
    switch (series) {
    case VTX_BORE_SCHEDULE_40: *count = ARRAY_LENGTH(schedule_40); return schedule_40;
    case VTX_BORE_EN10255_MEDIUM: *count = ARRAY_LENGTH(en10255_medium); return en10255_medium;
    case VTX_BORE_HOSE_INCH: *count = ARRAY_LENGTH(hose_inch); return hose_inch;
    case VTX_BORE_HOSE_METRIC: *count = ARRAY_LENGTH(hose_metric); return hose_metric;
    case VTX_BORE_PUSH_IN: *count = ARRAY_LENGTH(push_in); return push_in;
    default: *count = 0; return NULL;
    }
}

static vtx_status fail(vtx_bore *bore, vtx_status status) { return POISON_STRUCT(bore, vtx_bore, series, status); }

vtx_status vtx_bore_count(int32_t series, int32_t *count)
{
    int32_t found;
    if (!count || !sizes_of(series, &found))
        return poison_integer(count, VTX_BAD_ARGUMENT);
    *count = found;
    return VTX_OK;
}

vtx_status vtx_bore_at(int32_t series, int32_t index, vtx_bore *bore)
{
    int32_t count;
    const struct size *sizes = sizes_of(series, &count);
    if (!bore || index < 0 || index >= count)
        return fail(bore, VTX_BAD_ARGUMENT);
    const int is_pipe = series == VTX_BORE_SCHEDULE_40 || series == VTX_BORE_EN10255_MEDIUM;
    bore->diameter = sizes[index].bore * 1e-3;
    const int has_outside = sizes[index].outside > 0;
    bore->outside_diameter = has_outside ? sizes[index].outside * 1e-3 : quiet_nan();
    bore->roughness = is_pipe ? steel_roughness : smooth_roughness;
    bore->series = series;
    bore->index = index;
    bore->advisories = has_outside ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
    bore->spare = 0;
    return VTX_OK;
}

vtx_status vtx_bore_at_least(int32_t series, double diameter, vtx_bore *bore)
{
    int32_t count;
    const struct size *sizes = sizes_of(series, &count);
    const vtx_status status = worse(require(bore && sizes), check_positive(diameter, BORE_MIN, BORE_MAX));
    if (status != VTX_OK)
        return fail(bore, status);
    for (int32_t i = 0; i < count; i++)
        if (sizes[i].bore * 1e-3 >= diameter)
            return vtx_bore_at(series, i, bore);
    return fail(bore, VTX_NO_SOLUTION);
}

const char *vtx_bore_name(int32_t series, int32_t index)
{
    int32_t count;
    const struct size *sizes = sizes_of(series, &count);
    return index >= 0 && index < count ? sizes[index].name : "unknown bore";
}
