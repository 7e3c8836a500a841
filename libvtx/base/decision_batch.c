/* Batch forms of decision.h. Written by build-aux/generate. */
#include <vtx/decision.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status conformance_probability_item(const struct batch *b, size_t i)
{
    double probability_room;
    double *const probability = batch_place(b, 0, i, &probability_room, sizeof probability_room, _Alignof(double));
    const vtx_status answer = vtx_conformance_probability(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), probability);
    batch_move(b, 0, i, probability, &probability_room, sizeof probability_room);
    return answer;
}

vtx_status vtx_conformance_probability_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride,
        const double *value, ptrdiff_t value_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        const double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, double *probability,
        ptrdiff_t probability_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { limit, limit_stride }, { value, value_stride },
        { uncertainty, uncertainty_stride }, { degrees_of_freedom, degrees_of_freedom_stride } };
    const struct batch_output out[] = { { probability, probability_stride, 0, sizeof *probability } };
    const int32_t selector[] = { side };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, conformance_probability_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conformance_probability_between_item(const struct batch *b, size_t i)
{
    double probability_room;
    double *const probability = batch_place(b, 0, i, &probability_room, sizeof probability_room, _Alignof(double));
    const vtx_status answer = vtx_conformance_probability_between(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), probability);
    batch_move(b, 0, i, probability, &probability_room, sizeof probability_room);
    return answer;
}

vtx_status vtx_conformance_probability_between_batch(size_t n, const double *lower_limit,
        ptrdiff_t lower_limit_stride, const double *upper_limit, ptrdiff_t upper_limit_stride, const double *value,
        ptrdiff_t value_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        const double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, double *probability,
        ptrdiff_t probability_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { lower_limit, lower_limit_stride }, { upper_limit, upper_limit_stride },
        { value, value_stride }, { uncertainty, uncertainty_stride },
        { degrees_of_freedom, degrees_of_freedom_stride } };
    const struct batch_output out[] = { { probability, probability_stride, 0, sizeof *probability } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conformance_probability_between_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status guard_band_item(const struct batch *b, size_t i)
{
    double guard_band_room;
    double *const guard_band = batch_place(b, 0, i, &guard_band_room, sizeof guard_band_room, _Alignof(double));
    const vtx_status answer = vtx_guard_band(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i), guard_band);
    batch_move(b, 0, i, guard_band, &guard_band_room, sizeof guard_band_room);
    return answer;
}

vtx_status vtx_guard_band_batch(size_t n, const double *consumer_risk, ptrdiff_t consumer_risk_stride,
        const double *uncertainty, ptrdiff_t uncertainty_stride, const double *degrees_of_freedom,
        ptrdiff_t degrees_of_freedom_stride, double *guard_band, ptrdiff_t guard_band_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { consumer_risk, consumer_risk_stride }, { uncertainty, uncertainty_stride },
        { degrees_of_freedom, degrees_of_freedom_stride } };
    const struct batch_output out[] = { { guard_band, guard_band_stride, 0, sizeof *guard_band } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, guard_band_item, status, failed);
}

static ALWAYS_INLINE vtx_status acceptance_limit_item(const struct batch *b, size_t i)
{
    double acceptance_limit_room;
    double *const acceptance_limit = batch_place(b, 0, i, &acceptance_limit_room, sizeof acceptance_limit_room,
        _Alignof(double));
    const vtx_status answer = vtx_acceptance_limit(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        acceptance_limit);
    batch_move(b, 0, i, acceptance_limit, &acceptance_limit_room, sizeof acceptance_limit_room);
    return answer;
}

vtx_status vtx_acceptance_limit_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride,
        const double *guard_band, ptrdiff_t guard_band_stride, double *acceptance_limit,
        ptrdiff_t acceptance_limit_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { limit, limit_stride }, { guard_band, guard_band_stride } };
    const struct batch_output out[] = { { acceptance_limit, acceptance_limit_stride, 0, sizeof *acceptance_limit } };
    const int32_t selector[] = { side };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, acceptance_limit_item, status, failed);
}

static ALWAYS_INLINE vtx_status decide_item(const struct batch *b, size_t i)
{
    int32_t verdict_room;
    int32_t *const verdict = batch_place(b, 0, i, &verdict_room, sizeof verdict_room, _Alignof(int32_t));
    const vtx_status answer = vtx_decide(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        verdict);
    batch_move(b, 0, i, verdict, &verdict_room, sizeof verdict_room);
    return answer;
}

vtx_status vtx_decide_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride, const double *value,
        ptrdiff_t value_stride, const double *guard_band, ptrdiff_t guard_band_stride, int32_t *verdict,
        ptrdiff_t verdict_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { limit, limit_stride }, { value, value_stride },
        { guard_band, guard_band_stride } };
    const struct batch_output out[] = { { verdict, verdict_stride, 0, sizeof *verdict } };
    const int32_t selector[] = { side };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, decide_item, status, failed);
}

static ALWAYS_INLINE vtx_status decide_between_item(const struct batch *b, size_t i)
{
    int32_t verdict_room;
    int32_t *const verdict = batch_place(b, 0, i, &verdict_room, sizeof verdict_room, _Alignof(int32_t));
    const vtx_status answer = vtx_decide_between(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), verdict);
    batch_move(b, 0, i, verdict, &verdict_room, sizeof verdict_room);
    return answer;
}

vtx_status vtx_decide_between_batch(size_t n, const double *lower_limit, ptrdiff_t lower_limit_stride,
        const double *upper_limit, ptrdiff_t upper_limit_stride, const double *value, ptrdiff_t value_stride,
        const double *guard_band, ptrdiff_t guard_band_stride, int32_t *verdict, ptrdiff_t verdict_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { lower_limit, lower_limit_stride }, { upper_limit, upper_limit_stride },
        { value, value_stride }, { guard_band, guard_band_stride } };
    const struct batch_output out[] = { { verdict, verdict_stride, 0, sizeof *verdict } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, decide_between_item, status, failed);
}

static ALWAYS_INLINE vtx_status deciding_uncertainty_item(const struct batch *b, size_t i)
{
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 0, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_deciding_uncertainty(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        uncertainty);
    batch_move(b, 0, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    return answer;
}

vtx_status vtx_deciding_uncertainty_batch(size_t n, const double *consumer_risk, ptrdiff_t consumer_risk_stride,
        const double *margin, ptrdiff_t margin_stride, const double *degrees_of_freedom,
        ptrdiff_t degrees_of_freedom_stride, double *uncertainty, ptrdiff_t uncertainty_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { consumer_risk, consumer_risk_stride }, { margin, margin_stride },
        { degrees_of_freedom, degrees_of_freedom_stride } };
    const struct batch_output out[] = { { uncertainty, uncertainty_stride, 0, sizeof *uncertainty } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, deciding_uncertainty_item, status, failed);
}

static ALWAYS_INLINE vtx_status global_risk_item(const struct batch *b, size_t i)
{
    double consumer_risk_room;
    double *const consumer_risk = batch_place(b, 0, i, &consumer_risk_room, sizeof consumer_risk_room,
        _Alignof(double));
    double producer_risk_room;
    double *const producer_risk = batch_place(b, 1, i, &producer_risk_room, sizeof producer_risk_room,
        _Alignof(double));
    const vtx_status answer = vtx_global_risk(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), consumer_risk, producer_risk);
    batch_move(b, 0, i, consumer_risk, &consumer_risk_room, sizeof consumer_risk_room);
    batch_move(b, 1, i, producer_risk, &producer_risk_room, sizeof producer_risk_room);
    return answer;
}

vtx_status vtx_global_risk_batch(size_t n, int32_t side, const double *limit, ptrdiff_t limit_stride,
        const double *acceptance_limit, ptrdiff_t acceptance_limit_stride, const double *process_mean,
        ptrdiff_t process_mean_stride, const double *process_deviation, ptrdiff_t process_deviation_stride,
        const double *uncertainty, ptrdiff_t uncertainty_stride, double *consumer_risk,
        ptrdiff_t consumer_risk_stride, double *producer_risk, ptrdiff_t producer_risk_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { limit, limit_stride }, { acceptance_limit, acceptance_limit_stride },
        { process_mean, process_mean_stride }, { process_deviation, process_deviation_stride },
        { uncertainty, uncertainty_stride } };
    const struct batch_output out[] = { { consumer_risk, consumer_risk_stride, 0, sizeof *consumer_risk },
        { producer_risk, producer_risk_stride, 1, sizeof *producer_risk } };
    const int32_t selector[] = { side };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, global_risk_item, status, failed);
}

static ALWAYS_INLINE vtx_status global_risk_between_item(const struct batch *b, size_t i)
{
    double consumer_risk_room;
    double *const consumer_risk = batch_place(b, 0, i, &consumer_risk_room, sizeof consumer_risk_room,
        _Alignof(double));
    double producer_risk_room;
    double *const producer_risk = batch_place(b, 1, i, &producer_risk_room, sizeof producer_risk_room,
        _Alignof(double));
    const vtx_status answer = vtx_global_risk_between(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), consumer_risk, producer_risk);
    batch_move(b, 0, i, consumer_risk, &consumer_risk_room, sizeof consumer_risk_room);
    batch_move(b, 1, i, producer_risk, &producer_risk_room, sizeof producer_risk_room);
    return answer;
}

vtx_status vtx_global_risk_between_batch(size_t n, const double *lower_limit, ptrdiff_t lower_limit_stride,
        const double *upper_limit, ptrdiff_t upper_limit_stride, const double *lower_acceptance,
        ptrdiff_t lower_acceptance_stride, const double *upper_acceptance, ptrdiff_t upper_acceptance_stride,
        const double *process_mean, ptrdiff_t process_mean_stride, const double *process_deviation,
        ptrdiff_t process_deviation_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        double *consumer_risk, ptrdiff_t consumer_risk_stride, double *producer_risk, ptrdiff_t producer_risk_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { lower_limit, lower_limit_stride }, { upper_limit, upper_limit_stride },
        { lower_acceptance, lower_acceptance_stride }, { upper_acceptance, upper_acceptance_stride },
        { process_mean, process_mean_stride }, { process_deviation, process_deviation_stride },
        { uncertainty, uncertainty_stride } };
    const struct batch_output out[] = { { consumer_risk, consumer_risk_stride, 0, sizeof *consumer_risk },
        { producer_risk, producer_risk_stride, 1, sizeof *producer_risk } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, global_risk_between_item, status, failed);
}
