/* A reading against the balances of energy and entropy. */
#include <vtx/balance.h>

#include "../base/propagation.h"
#include "perfect_air.h"
#include "reading_state.h"

/* More leak of the hot end than this (vtx_tube.hot_leak) explains nothing. */
static const double plausible_leak = 0.15;

/* The state and both outlets as one vector, and what the laws make of them. */
enum { COLD_TEMPERATURE = STATE_INPUTS, HOT_TEMPERATURE, LAW_INPUTS };
enum { ENERGY, ENTROPY, HOT_EXCESS, COLD_EXCESS, LAWS };

static vtx_status balances(const double *x, double *y, void *context)
{
    const struct reading_state *s = context;
    struct expansion e;
    vtx_balance balance;
    double cold, hot;
    vtx_status status = vtx_tube_balance(s->model, x[INLET_PRESSURE], x[INLET_TEMPERATURE], x[HUMIDITY], x[COLD_PRESSURE], x[COLD_TEMPERATURE],
                                         x[HOT_PRESSURE], x[HOT_TEMPERATURE], x[COLD_FRACTION], x[COLD_PRESSURE], x[INLET_TEMPERATURE], &balance);
    if (status == VTX_OK)
        status = feed_at(s->model, x[INLET_PRESSURE], x[INLET_TEMPERATURE], x[HUMIDITY], &e);
    if (status == VTX_OK)
        status = feed_enthalpy(&e, x[COLD_PRESSURE], x[COLD_TEMPERATURE], &cold);
    if (status == VTX_OK)
        status = feed_enthalpy(&e, x[HOT_PRESSURE], x[HOT_TEMPERATURE], &hot);
    if (status != VTX_OK)
        return status;
    y[ENERGY] = balance.energy_residual;
    y[ENTROPY] = balance.entropy_generation;
    y[HOT_EXCESS] = hot - e.inlet_enthalpy;
    y[COLD_EXCESS] = cold - e.inlet_enthalpy;
    return VTX_OK;
}

/* The quantity whose uncertainty weighs most in a contradiction: it needs the smallest shift, in its own measure, to mend it. */
static int32_t heaviest(const double *sensitivity, const double *u)
{
    size_t worst = 0;
    for (size_t i = 1; i < LAW_INPUTS; i++)
        worst = fabs(sensitivity[i]) * u[i] > fabs(sensitivity[worst]) * u[worst] ? i : worst;
    return VTX_SUSPECT_INLET_PRESSURE + (int32_t)worst;
}

static void judge(struct reading_state *s, int32_t verdict, const double *sensitivity, const double *u)
{
    if (s->check.verdict != VTX_READING_CREDIBLE)
        return;
    s->check.verdict = verdict;
    s->check.suspect = heaviest(sensitivity, u);
}

/* What a leaking hot end may have lost at most, from what is left of its excess over the surroundings. */
static double most_heat_lost(const struct reading_state *s)
{
    const double excess = perfect_air_heat_capacity * larger(s->y[HOT] - s->ambient_temperature, 0), share = 1 - s->x[COLD_FRACTION];
    return share > 0 ? excess * share * (1 / leak_remainder(smaller(plausible_leak, 5 * share), share) - 1) : 0;
}

vtx_status examine_laws(struct reading_state *s, int ambient_read)
{
    double x[LAW_INPUTS], u[LAW_INPUTS], y[LAWS], c[LAWS * LAW_INPUTS], deviation[LAWS];
    memcpy(x, s->x, sizeof s->x);
    memcpy(u, s->u, sizeof s->u);
    memcpy(&x[COLD_TEMPERATURE], s->y, sizeof s->y);
    memcpy(&u[COLD_TEMPERATURE], s->uy, sizeof s->uy);
    const vtx_status status = sensitivities(balances, s, LAW_INPUTS, x, u, LAWS, y, c);
    if (status != VTX_OK)
        return status;
    for (size_t i = 0; i < LAWS; i++)
        deviation[i] = contradiction * propagated_uncertainty(LAW_INPUTS, &c[i * LAW_INPUTS], u, NULL);
    const double cold_from_room = contradiction * s->uy[COLD], hot_from_room = contradiction * s->uy[HOT];
    if (s->y[COLD] - s->y[HOT] > contradiction * hypot(s->uy[COLD], s->uy[HOT]))
        judge(s, VTX_READING_SWAPPED, &c[HOT_EXCESS * LAW_INPUTS], u);
    if (y[HOT_EXCESS] < -deviation[HOT_EXCESS] && y[COLD_EXCESS] < 0 && (!ambient_read || s->y[HOT] < s->ambient_temperature - hot_from_room))
        judge(s, VTX_READING_BOTH_COLD, &c[HOT_EXCESS * LAW_INPUTS], u);
    if (y[COLD_EXCESS] > deviation[COLD_EXCESS] && y[HOT_EXCESS] > 0 && (!ambient_read || s->y[COLD] > s->ambient_temperature + cold_from_room))
        judge(s, VTX_READING_BOTH_WARM, &c[COLD_EXCESS * LAW_INPUTS], u);
    if (s->unknown_inputs > 0)
        return VTX_OK;
    s->check.energy_residual = y[ENERGY];
    s->check.energy_uncertainty = deviation[ENERGY] / contradiction;
    s->check.entropy_generation = y[ENTROPY];
    s->check.entropy_uncertainty = deviation[ENTROPY] / contradiction;
    s->check.advisories &= ~VTX_ADVISORY_FIELD_UNAVAILABLE;
    if (y[ENTROPY] < -deviation[ENTROPY])
        judge(s, VTX_READING_ENTROPY_FALLS, &c[ENTROPY * LAW_INPUTS], u);
    if (y[ENERGY] < -deviation[ENERGY])
        judge(s, VTX_READING_ENERGY_CREATED, &c[ENERGY * LAW_INPUTS], u);
    if (y[ENERGY] - most_heat_lost(s) > deviation[ENERGY])
        judge(s, VTX_READING_ENERGY_MISSING, &c[ENERGY * LAW_INPUTS], u);
    return VTX_OK;
}
