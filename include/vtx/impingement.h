/* Air jets blown at a face: mean heat transfer of one nozzle, of twin outlets, of a field of nozzles; heat removed from the face.
 *
 * Not the warming of a part with time (part.h) and not free jets (jet.h).
 * See also: jet.h for distance, impact force and pressure.
 *
 * Correlations hold for air at Reynolds numbers of 2000 to 4e5 (field: 1e5), 2 to 12 outlet diameters from the face, faces of 2.5 to
 * 7.9 diameters radius. Closer and smaller faces get the value at the limit, which is on the safe side; beyond the other limits the
 * formulas run on; OUTSIDE_CORRELATION says so. Coefficients fall with distance and face size without a jump. */
#ifndef VTX_IMPINGEMENT_H
#define VTX_IMPINGEMENT_H

#include <vtx/jet.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* How two like outlets serve one part. */
enum vtx_twin_arrangement {
    VTX_TWIN_TWO_SIDES = 244,     /* one on each of two opposite faces */
    VTX_TWIN_SIDE_BY_SIDE = 245   /* both at the same face */
};

/* What a jet does to a face. */
typedef struct vtx_impingement {
    double coefficient;      /* W/(m2 K) mean over the face */
    double jet_temperature;  /* K        that drives the heat: total, on the axis at the face, after mixing with the room's air */
    double heat;             /* W        out of the face, negative when the jet warms it */
    double nusselt;          /* -        on the diameter of the expanded jet */
    double reynolds;         /* -        likewise, at the mean of jet and face temperature */
    double distance_ratio;   /* -        distance over that diameter */
    double radius_ratio;     /* -        radius of the face one outlet serves over that diameter */
    int32_t advisories;      /* those of the outlet, OUTSIDE_CORRELATION */
    int32_t reserved;        /* 0 */
} vtx_impingement;

/* Mean Nusselt number of a single round nozzle over a disc.
 *
 * reynolds        in   -   10..1e7    V D/nu
 * prandtl         in   -   0.5..100
 * distance_ratio  in   -   0..1000    H/D, nozzle to face over nozzle diameter
 * radius_ratio    in   -   0..1000    r/D, radius of the disc over nozzle diameter
 * nusselt         out  -              on the nozzle diameter
 * advisories      out  -              OUTSIDE_CORRELATION or 0; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  OUTSIDE_CORRELATION
 * accuracy  15 to 20 % of measurements within the correlation
 * source    H. Martin, Advances in Heat Transfer 13 (1977) 1, as given by Incropera and DeWitt
 */
VTX_API vtx_status vtx_nozzle_nusselt(double reynolds, double prandtl, double distance_ratio, double radius_ratio, double *nusselt,
                                      int32_t *advisories);

/* Mean Nusselt number of a field of round nozzles.
 *
 * reynolds        in   -   10..1e7
 * prandtl         in   -   0.5..100
 * distance_ratio  in   -   0..1000    H/D
 * area_share      in   -   1e-6..0.8  nozzle area over face area: pi/4 (D/pitch)^2 on a square grid; 1 and above are BAD_ARGUMENT
 * nusselt         out  -
 * advisories      out  -              OUTSIDE_CORRELATION or 0; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  OUTSIDE_CORRELATION
 * accuracy  15 to 20 % of measurements within the correlation
 * source    H. Martin, Advances in Heat Transfer 13 (1977) 1 (formula of the field from memory)
 */
VTX_API vtx_status vtx_nozzle_field_nusselt(double reynolds, double prandtl, double distance_ratio, double area_share, double *nusselt,
                                            int32_t *advisories);

/* Heat that one jet takes out of a round face square to it, centred on the axis.
 *
 * jet               in   -
 * distance          in   m    0..100
 * face_area         in   m2   1e-8..100   other shapes by their area
 * face_temperature  in   K    150..1500
 * result            out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  CHOKED, UNDEREXPANDED_JET, OUTSIDE_CORRELATION
 * accuracy  20 % within the correlation; the driving temperature of a cold jet is that of the axis, warmer outside: cooling overrated
 *           on faces much wider than the distance
 * source    as vtx_nozzle_nusselt, driving temperature of vtx_jet_at; air properties Lemmon and Jacobsen 2004
 * caution   cold faces sweat and freeze (surface.h); chips fly
 */
VTX_API vtx_status vtx_impingement_at(const vtx_jet *jet, double distance, double face_area, double face_temperature,
                                      vtx_impingement *result);

/* Heat that two like outlets take out of a part, both together.
 *
 * outlet            in   -              one of the two, with its own share of the mass flow
 * arrangement       in   -              of vtx_twin_arrangement
 * spacing           in   m    0..10     between the axes, side by side; not looked at on two sides, but checked
 * distance          in   m    0..100
 * face_area         in   m2   1e-8..100 of all faces together: each outlet serves half of it
 * face_temperature  in   K    150..1500
 * result            out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  CHOKED, UNDEREXPANDED_JET, OUTSIDE_CORRELATION also side by side closer than 8 diameters
 * accuracy  two sides as vtx_impingement_at; side by side there is no standard correlation: closer than 8 diameters the coefficient goes
 *           over to that of one outlet of twice the area, in proportion to the spacing
 * source    as vtx_impingement_at; the joint of two jets is engineering judgement, no source
 * caution   as vtx_impingement_at
 */
VTX_API vtx_status vtx_twin_impingement_at(const vtx_jet *outlet, int32_t arrangement, double spacing, double distance, double face_area,
                                           double face_temperature, vtx_impingement *result);

/* Heat that one nozzle of a square field takes out of its cell.
 *
 * nozzle            in   -
 * pitch             in   m    2e-4..10   between neighbouring nozzles, more than the diameter of the expanded jet
 * distance          in   m    0..100
 * face_temperature  in   K    150..1500
 * result            out  -               heat of one cell, pitch squared
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  CHOKED, UNDEREXPANDED_JET, OUTSIDE_CORRELATION
 * accuracy  as vtx_nozzle_field_nusselt; spent air must find its way out
 * source    as vtx_nozzle_field_nusselt
 * caution   as vtx_impingement_at
 */
VTX_API vtx_status vtx_field_impingement_at(const vtx_jet *nozzle, double pitch, double distance, double face_temperature,
                                            vtx_impingement *result);

/* Largest distance at which one jet still takes a wanted heat out of a face.
 *
 * jet               in   -
 * face_area         in   m2   1e-8..100
 * face_temperature  in   K    150..1500
 * heat              in   W    1e-6..1e6
 * distance          out  m
 * attainable_heat   out  W    at the best distance, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (beyond 100 m), NO_SOLUTION (more than the jet takes at any distance), NOT_CONVERGED
 * accuracy  inverse of vtx_impingement_at, 1e-10 relative
 * source    as vtx_impingement_at
 */
VTX_API vtx_status vtx_impingement_distance_for_heat(const vtx_jet *jet, double face_area, double face_temperature, double heat,
                                                     double *distance, double *attainable_heat);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_nozzle_nusselt_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *distance_ratio,
        ptrdiff_t distance_ratio_stride, const double *radius_ratio, ptrdiff_t radius_ratio_stride, double *nusselt,
        ptrdiff_t nusselt_stride, int32_t *advisories, ptrdiff_t advisories_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nozzle_field_nusselt_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *distance_ratio,
        ptrdiff_t distance_ratio_stride, const double *area_share, ptrdiff_t area_share_stride, double *nusselt,
        ptrdiff_t nusselt_stride, int32_t *advisories, ptrdiff_t advisories_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_impingement_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride,
        const double *face_temperature, ptrdiff_t face_temperature_stride, vtx_impingement *result,
        ptrdiff_t result_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_twin_impingement_at_batch(size_t n, const vtx_jet *outlet, ptrdiff_t outlet_stride,
        int32_t arrangement, const double *spacing, ptrdiff_t spacing_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride,
        const double *face_temperature, ptrdiff_t face_temperature_stride, vtx_impingement *result,
        ptrdiff_t result_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_field_impingement_at_batch(size_t n, const vtx_jet *nozzle, ptrdiff_t nozzle_stride,
        const double *pitch, ptrdiff_t pitch_stride, const double *distance, ptrdiff_t distance_stride,
        const double *face_temperature, ptrdiff_t face_temperature_stride, vtx_impingement *result,
        ptrdiff_t result_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_impingement_distance_for_heat_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *face_area, ptrdiff_t face_area_stride, const double *face_temperature,
        ptrdiff_t face_temperature_stride, const double *heat, ptrdiff_t heat_stride, double *distance,
        ptrdiff_t distance_stride, double *attainable_heat, ptrdiff_t attainable_heat_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
