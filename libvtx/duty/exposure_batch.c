/* Batch forms of exposure.h. Written by build-aux/generate. */
#include <vtx/exposure.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status osha_permissible_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_osha_permissible_time(batch_get(b, 0, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_osha_permissible_time_batch(size_t n, const double *level, ptrdiff_t level_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, osha_permissible_time_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status osha_table_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_osha_table_time(batch_get(b, 0, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_osha_table_time_batch(size_t n, const double *level, ptrdiff_t level_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, osha_table_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status osha_dose_item(const struct batch *b, size_t i)
{
    double dose_room;
    double *const dose = batch_place(b, 0, i, &dose_room, sizeof dose_room, _Alignof(double));
    const vtx_status answer = vtx_osha_dose(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i), dose);
    batch_move(b, 0, i, dose, &dose_room, sizeof dose_room);
    return answer;
}

vtx_status vtx_osha_dose_batch(size_t n, const double *level, ptrdiff_t level_stride, const double *time,
        ptrdiff_t time_stride, const double *threshold, ptrdiff_t threshold_stride, double *dose,
        ptrdiff_t dose_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { time, time_stride }, { threshold, threshold_stride } };
    const struct batch_output out[] = { { dose, dose_stride, 0, sizeof *dose } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, osha_dose_item, status, failed);
}

static ALWAYS_INLINE vtx_status osha_average_level_item(const struct batch *b, size_t i)
{
    double level_room;
    double *const level = batch_place(b, 0, i, &level_room, sizeof level_room, _Alignof(double));
    const vtx_status answer = vtx_osha_average_level(batch_get(b, 0, i), level);
    batch_move(b, 0, i, level, &level_room, sizeof level_room);
    return answer;
}

vtx_status vtx_osha_average_level_batch(size_t n, const double *dose, ptrdiff_t dose_stride, double *level,
        ptrdiff_t level_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { dose, dose_stride } };
    const struct batch_output out[] = { { level, level_stride, 0, sizeof *level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, osha_average_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status osha_permissible_level_item(const struct batch *b, size_t i)
{
    double level_room;
    double *const level = batch_place(b, 0, i, &level_room, sizeof level_room, _Alignof(double));
    const vtx_status answer = vtx_osha_permissible_level(batch_get(b, 0, i), batch_get(b, 1, i), level);
    batch_move(b, 0, i, level, &level_room, sizeof level_room);
    return answer;
}

vtx_status vtx_osha_permissible_level_batch(size_t n, const double *time, ptrdiff_t time_stride, const double *dose,
        ptrdiff_t dose_stride, double *level, ptrdiff_t level_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { time, time_stride }, { dose, dose_stride } };
    const struct batch_output out[] = { { level, level_stride, 0, sizeof *level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, osha_permissible_level_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status osha_protected_level_item(const struct batch *b, size_t i)
{
    double protected_level_room;
    double *const protected_level = batch_place(b, 0, i, &protected_level_room, sizeof protected_level_room,
        _Alignof(double));
    const vtx_status answer = vtx_osha_protected_level(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        protected_level);
    batch_move(b, 0, i, protected_level, &protected_level_room, sizeof protected_level_room);
    return answer;
}

vtx_status vtx_osha_protected_level_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rating, ptrdiff_t rating_stride, const double *derating, ptrdiff_t derating_stride,
        double *protected_level, ptrdiff_t protected_level_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { rating, rating_stride },
        { derating, derating_stride } };
    const struct batch_output out[] = { { protected_level, protected_level_stride, 0, sizeof *protected_level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, osha_protected_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status niosh_permissible_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_niosh_permissible_time(batch_get(b, 0, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_niosh_permissible_time_batch(size_t n, const double *level, ptrdiff_t level_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, niosh_permissible_time_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status niosh_dose_item(const struct batch *b, size_t i)
{
    double dose_room;
    double *const dose = batch_place(b, 0, i, &dose_room, sizeof dose_room, _Alignof(double));
    const vtx_status answer = vtx_niosh_dose(batch_get(b, 0, i), batch_get(b, 1, i), dose);
    batch_move(b, 0, i, dose, &dose_room, sizeof dose_room);
    return answer;
}

vtx_status vtx_niosh_dose_batch(size_t n, const double *level, ptrdiff_t level_stride, const double *time,
        ptrdiff_t time_stride, double *dose, ptrdiff_t dose_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { time, time_stride } };
    const struct batch_output out[] = { { dose, dose_stride, 0, sizeof *dose } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, niosh_dose_item, status, failed);
}

static ALWAYS_INLINE vtx_status niosh_average_level_item(const struct batch *b, size_t i)
{
    double level_room;
    double *const level = batch_place(b, 0, i, &level_room, sizeof level_room, _Alignof(double));
    const vtx_status answer = vtx_niosh_average_level(batch_get(b, 0, i), level);
    batch_move(b, 0, i, level, &level_room, sizeof level_room);
    return answer;
}

vtx_status vtx_niosh_average_level_batch(size_t n, const double *dose, ptrdiff_t dose_stride, double *level,
        ptrdiff_t level_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { dose, dose_stride } };
    const struct batch_output out[] = { { level, level_stride, 0, sizeof *level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, niosh_average_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status niosh_permissible_level_item(const struct batch *b, size_t i)
{
    double level_room;
    double *const level = batch_place(b, 0, i, &level_room, sizeof level_room, _Alignof(double));
    const vtx_status answer = vtx_niosh_permissible_level(batch_get(b, 0, i), batch_get(b, 1, i), level);
    batch_move(b, 0, i, level, &level_room, sizeof level_room);
    return answer;
}

vtx_status vtx_niosh_permissible_level_batch(size_t n, const double *time, ptrdiff_t time_stride, const double *dose,
        ptrdiff_t dose_stride, double *level, ptrdiff_t level_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { time, time_stride }, { dose, dose_stride } };
    const struct batch_output out[] = { { level, level_stride, 0, sizeof *level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, niosh_permissible_level_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status daily_exposure_level_item(const struct batch *b, size_t i)
{
    double exposure_level_room;
    double *const exposure_level = batch_place(b, 0, i, &exposure_level_room, sizeof exposure_level_room,
        _Alignof(double));
    const vtx_status answer = vtx_daily_exposure_level(batch_get(b, 0, i), batch_get(b, 1, i), exposure_level);
    batch_move(b, 0, i, exposure_level, &exposure_level_room, sizeof exposure_level_room);
    return answer;
}

vtx_status vtx_daily_exposure_level_batch(size_t n, const double *level, ptrdiff_t level_stride, const double *time,
        ptrdiff_t time_stride, double *exposure_level, ptrdiff_t exposure_level_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { time, time_stride } };
    const struct batch_output out[] = { { exposure_level, exposure_level_stride, 0, sizeof *exposure_level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, daily_exposure_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status eu_permissible_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_eu_permissible_time(batch_get(b, 0, i), batch_get(b, 1, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_eu_permissible_time_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *exposure_level, ptrdiff_t exposure_level_stride, double *time, ptrdiff_t time_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { exposure_level, exposure_level_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, eu_permissible_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status eu_permissible_level_item(const struct batch *b, size_t i)
{
    double level_room;
    double *const level = batch_place(b, 0, i, &level_room, sizeof level_room, _Alignof(double));
    const vtx_status answer = vtx_eu_permissible_level(batch_get(b, 0, i), batch_get(b, 1, i), level);
    batch_move(b, 0, i, level, &level_room, sizeof level_room);
    return answer;
}

vtx_status vtx_eu_permissible_level_batch(size_t n, const double *time, ptrdiff_t time_stride,
        const double *exposure_level, ptrdiff_t exposure_level_stride, double *level, ptrdiff_t level_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { time, time_stride }, { exposure_level, exposure_level_stride } };
    const struct batch_output out[] = { { level, level_stride, 0, sizeof *level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, eu_permissible_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status noise_rule_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_noise_rule_time(b->selector[0], batch_get(b, 0, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_noise_rule_time_batch(size_t n, int32_t rule, const double *level, ptrdiff_t level_stride,
        double *time, ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    const int32_t selector[] = { rule };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, noise_rule_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status eu_noise_verdict_item(const struct batch *b, size_t i)
{
    vtx_eu_noise noise_room;
    vtx_eu_noise *const noise = batch_place(b, 0, i, &noise_room, sizeof noise_room, _Alignof(vtx_eu_noise));
    const vtx_status answer = vtx_eu_noise_verdict(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i), noise);
    batch_move(b, 0, i, noise, &noise_room, sizeof noise_room);
    return answer;
}

vtx_status vtx_eu_noise_verdict_batch(size_t n, const double *exposure_level, ptrdiff_t exposure_level_stride,
        const double *peak_pressure, ptrdiff_t peak_pressure_stride, const double *protection,
        ptrdiff_t protection_stride, vtx_eu_noise *noise, ptrdiff_t noise_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { exposure_level, exposure_level_stride },
        { peak_pressure, peak_pressure_stride }, { protection, protection_stride } };
    const struct batch_output out[] = { { noise, noise_stride, 0, sizeof *noise } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, eu_noise_verdict_item, status, failed);
}
