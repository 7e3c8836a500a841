/* Bores of standard pipe, hose and tube, with the roughness to calculate with.
 *
 * Not a statement about any one product: hoses are sold within tolerances of half a millimetre and more.
 * See also: line.h, whose smallest bore is rounded up here. */
#ifndef VTX_BORE_H
#define VTX_BORE_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Series of bores, each in rising order. */
enum vtx_bore_series {
    VTX_BORE_SCHEDULE_40 = 274,    /* steel pipe, ASME B36.10M, metric table as held by python3-fluids 1.0.22: 1/8 to 4 in */
    VTX_BORE_EN10255_MEDIUM = 275, /* threaded steel pipe, EN 10255 / ISO 65, medium walls; diameters and DN 6, 32 to 50 from memory */
    VTX_BORE_HOSE_INCH = 276,      /* hose sold by inches, from memory: the inch in millimetres */
    VTX_BORE_HOSE_METRIC = 277,    /* hose, nominal bores of ISO 1307, from memory */
    VTX_BORE_PUSH_IN = 278         /* plastic tube for push-in fittings, outside 6 to 12 mm, from memory: the narrower of the bores sold */
};

/* One standard bore. */
typedef struct vtx_bore {
    double diameter;         /* m  bore */
    double outside_diameter; /* m  NaN with FIELD_UNAVAILABLE for hose, whose wall differs from kind to kind */
    double roughness;        /* m  1.5e-6 drawn tube and hose, 4.6e-5 steel; galvanised or rusted steel is rougher: 1.5e-4 */
    int32_t series;          /* -  of vtx_bore_series */
    int32_t index;           /* -  0.. in its series */
    int32_t advisories;      /* -  FIELD_UNAVAILABLE: hose */
    int32_t spare;           /* 0 */
} vtx_bore;

/* Number of bores in a series.
 *
 * series  in   -  of vtx_bore_series
 * count   out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_bore_count(int32_t series, int32_t *count);

/* A bore by its place in the series.
 *
 * series  in   -  of vtx_bore_series
 * index   in   -  0..count-1
 * bore    out  -
 *
 * status    OK, BAD_ARGUMENT
 * advisory  FIELD_UNAVAILABLE
 * accuracy  as printed, 0.01 mm; pipe mills are allowed 12.5 % of the wall
 * source    see vtx_bore_series; roughness from memory
 */
VTX_API vtx_status vtx_bore_at(int32_t series, int32_t index, vtx_bore *bore);

/* Smallest standard bore that is not below a wanted one.
 *
 * series    in   -  of vtx_bore_series
 * diameter  in   m  1e-4..2
 * bore      out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (wider than the widest)
 * advisory  FIELD_UNAVAILABLE
 * accuracy  as vtx_bore_at
 * source    as vtx_bore_at
 */
VTX_API vtx_status vtx_bore_at_least(int32_t series, double diameter, vtx_bore *bore);

/* What the trade calls a bore, "1/2 in schedule 40"; "unknown bore" for other numbers.
 *
 * series  in   -  of vtx_bore_series
 * index   in   -  0..count-1
 *
 * status    none: returns static text, cannot fail
 */
VTX_API const char *vtx_bore_name(int32_t series, int32_t index);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_bore_at_least_batch(size_t n, int32_t series, const double *diameter, ptrdiff_t diameter_stride,
        vtx_bore *bore, ptrdiff_t bore_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
