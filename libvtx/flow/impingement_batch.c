/* Batch forms of impingement.h. Written by build-aux/generate. */
#include <vtx/impingement.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status nozzle_nusselt_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    int32_t advisories_room;
    int32_t *const advisories = batch_place(b, 1, i, &advisories_room, sizeof advisories_room, _Alignof(int32_t));
    const vtx_status answer = vtx_nozzle_nusselt(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), nusselt, advisories);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    batch_move(b, 1, i, advisories, &advisories_room, sizeof advisories_room);
    return answer;
}

vtx_status vtx_nozzle_nusselt_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *distance_ratio,
        ptrdiff_t distance_ratio_stride, const double *radius_ratio, ptrdiff_t radius_ratio_stride, double *nusselt,
        ptrdiff_t nusselt_stride, int32_t *advisories, ptrdiff_t advisories_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride }, { prandtl, prandtl_stride },
        { distance_ratio, distance_ratio_stride }, { radius_ratio, radius_ratio_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt },
        { advisories, advisories_stride, 1, sizeof *advisories } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nozzle_nusselt_item, status, failed);
}

static ALWAYS_INLINE vtx_status nozzle_field_nusselt_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    int32_t advisories_room;
    int32_t *const advisories = batch_place(b, 1, i, &advisories_room, sizeof advisories_room, _Alignof(int32_t));
    const vtx_status answer = vtx_nozzle_field_nusselt(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), nusselt, advisories);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    batch_move(b, 1, i, advisories, &advisories_room, sizeof advisories_room);
    return answer;
}

vtx_status vtx_nozzle_field_nusselt_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *distance_ratio,
        ptrdiff_t distance_ratio_stride, const double *area_share, ptrdiff_t area_share_stride, double *nusselt,
        ptrdiff_t nusselt_stride, int32_t *advisories, ptrdiff_t advisories_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride }, { prandtl, prandtl_stride },
        { distance_ratio, distance_ratio_stride }, { area_share, area_share_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt },
        { advisories, advisories_stride, 1, sizeof *advisories } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nozzle_field_nusselt_item, status, failed);
}

static ALWAYS_INLINE vtx_status impingement_at_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    vtx_impingement result_room;
    vtx_impingement *const result = batch_place(b, 0, i, &result_room, sizeof result_room, _Alignof(vtx_impingement));
    const vtx_status answer = vtx_impingement_at(jet, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        result);
    batch_move(b, 0, i, result, &result_room, sizeof result_room);
    return answer;
}

vtx_status vtx_impingement_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride,
        const double *face_temperature, ptrdiff_t face_temperature_stride, vtx_impingement *result,
        ptrdiff_t result_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { distance, distance_stride },
        { face_area, face_area_stride }, { face_temperature, face_temperature_stride } };
    const struct batch_output out[] = { { result, result_stride, 0, sizeof *result } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, impingement_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status twin_impingement_at_item(const struct batch *b, size_t i)
{
    vtx_jet outlet_room;
    const vtx_jet *const outlet = batch_record(b, 0, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_jet));
    vtx_impingement result_room;
    vtx_impingement *const result = batch_place(b, 0, i, &result_room, sizeof result_room, _Alignof(vtx_impingement));
    const vtx_status answer = vtx_twin_impingement_at(outlet, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), result);
    batch_move(b, 0, i, result, &result_room, sizeof result_room);
    return answer;
}

vtx_status vtx_twin_impingement_at_batch(size_t n, const vtx_jet *outlet, ptrdiff_t outlet_stride,
        int32_t arrangement, const double *spacing, ptrdiff_t spacing_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride,
        const double *face_temperature, ptrdiff_t face_temperature_stride, vtx_impingement *result,
        ptrdiff_t result_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { outlet, outlet_stride, 1 }, { spacing, spacing_stride },
        { distance, distance_stride }, { face_area, face_area_stride }, { face_temperature, face_temperature_stride } };
    const struct batch_output out[] = { { result, result_stride, 0, sizeof *result } };
    const int32_t selector[] = { arrangement };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, twin_impingement_at_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status field_impingement_at_item(const struct batch *b, size_t i)
{
    vtx_jet nozzle_room;
    const vtx_jet *const nozzle = batch_record(b, 0, i, &nozzle_room, sizeof nozzle_room, _Alignof(vtx_jet));
    vtx_impingement result_room;
    vtx_impingement *const result = batch_place(b, 0, i, &result_room, sizeof result_room, _Alignof(vtx_impingement));
    const vtx_status answer = vtx_field_impingement_at(nozzle, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), result);
    batch_move(b, 0, i, result, &result_room, sizeof result_room);
    return answer;
}

vtx_status vtx_field_impingement_at_batch(size_t n, const vtx_jet *nozzle, ptrdiff_t nozzle_stride,
        const double *pitch, ptrdiff_t pitch_stride, const double *distance, ptrdiff_t distance_stride,
        const double *face_temperature, ptrdiff_t face_temperature_stride, vtx_impingement *result,
        ptrdiff_t result_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { nozzle, nozzle_stride, 1 }, { pitch, pitch_stride },
        { distance, distance_stride }, { face_temperature, face_temperature_stride } };
    const struct batch_output out[] = { { result, result_stride, 0, sizeof *result } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, field_impingement_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status impingement_distance_for_heat_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    double attainable_heat_room;
    double *const attainable_heat = batch_place(b, 1, i, &attainable_heat_room, sizeof attainable_heat_room,
        _Alignof(double));
    const vtx_status answer = vtx_impingement_distance_for_heat(jet, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), distance, attainable_heat);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    batch_move(b, 1, i, attainable_heat, &attainable_heat_room, sizeof attainable_heat_room);
    return answer;
}

vtx_status vtx_impingement_distance_for_heat_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *face_area, ptrdiff_t face_area_stride, const double *face_temperature,
        ptrdiff_t face_temperature_stride, const double *heat, ptrdiff_t heat_stride, double *distance,
        ptrdiff_t distance_stride, double *attainable_heat, ptrdiff_t attainable_heat_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { face_area, face_area_stride },
        { face_temperature, face_temperature_stride }, { heat, heat_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance },
        { attainable_heat, attainable_heat_stride, 1, sizeof *attainable_heat } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, impingement_distance_for_heat_item,
        status, failed);
}
