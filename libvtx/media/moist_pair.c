/* The state of moist air from two properties: one search along the states that have the first. */
#include <vtx/moist_pair.h>

#include "../base/root.h"
#include "process_kernel.h"

enum { GRID = 96, CANDIDATES = 8, WATER_GRID = 60 };

/* Along the search one property is kept and the other compared: `along` is the temperature or, where that is given or found from
 * the enthalpy or entropy, the total water. */
struct pair {
    int32_t model, kept, compared;
    double pressure, kept_value, compared_value;
    double side; /* 1 or -1 while a dip is searched */
    int (*state_at)(const struct pair *pair, double along, struct moist_mixture *state);
};

struct candidates {
    struct moist_mixture state[CANDIDATES];
    int count;
};

static int is_caloric(int32_t property) { return property == VTX_ENTHALPY || property == VTX_ENTROPY || property == VTX_VOLUME; }

/* What rounding may leave between a state and a wish at an end of the search. */
static double allowance(const struct pair *pair)
{
    const double size = fabs(pair->compared_value);
    switch (pair->compared) {
    case VTX_ENTHALPY: return 1e-10 * size + 1e-5;
    case VTX_ENTROPY: return 1e-10 * size + 3e-8;
    case VTX_RELATIVE_HUMIDITY:
    case VTX_RELATIVE_HUMIDITY_ICE: return 1e-10;
    default: return 1e-10 * size + 1e-15;
    }
}

static double compared_of(const struct pair *pair, const struct moist_mixture *state)
{
    if (pair->compared == VTX_HUMIDITY_RATIO)
        return state->total_water;
    return moist_property(pair->model, state, pair->compared);
}

/* NaN where the kept property has no state. */
static double excess_at(double along, void *context)
{
    const struct pair *pair = context;
    struct moist_mixture state;
    return pair->state_at(pair, along, &state) ? compared_of(pair, &state) - pair->compared_value : quiet_nan();
}

/* A valley whichever side of the wish it lies on. */
static double depth_at(double along, void *context)
{
    const struct pair *pair = context;
    return pair->side * excess_at(along, context);
}

/* Measures of vapour hold no condensate, also beside a total water. */
static int state_at_temperature(const struct pair *pair, double temperature, struct moist_mixture *state)
{
    if (moist_from_humidity(pair->model, pair->pressure, temperature, pair->kept, pair->kept_value, state) != VTX_OK)
        return 0;
    return is_caloric(pair->compared) || !(state->condensed > 0);
}

static int vapour_at_water(const struct pair *pair, double water, struct moist_mixture *state)
{
    moist_vapour(pair->model, pair->pressure, pair->kept_value, water, state);
    return 1;
}

/* Equilibrium of the kept enthalpy or entropy. What the inner search leaves of it, 1e-9 K, is taken out to first order: it would
 * hide small amounts of water. */
static int equilibrium_at_water(const struct pair *pair, double water, struct moist_mixture *state)
{
    const int enthalpy = pair->kept == VTX_ENTHALPY;
    const vtx_status status = (enthalpy ? moist_of_enthalpy : moist_of_entropy)(pair->model, pair->pressure, water, pair->kept_value, 300, state);
    if (status != VTX_OK)
        return 0;
    const double missing = (pair->kept_value - (enthalpy ? state->enthalpy : state->entropy)) * (enthalpy ? 1 : state->temperature);
    state->enthalpy += missing;
    state->entropy += missing / state->temperature;
    if (state->phase == PHASE_NONE)
        state->volume *= 1 + missing / (state->heat_capacity * state->temperature);
    return 1;
}

static void add_candidate(const struct pair *pair, double along, struct candidates *found)
{
    struct moist_mixture state;
    if (found->count == CANDIDATES || !pair->state_at(pair, along, &state))
        return;
    const double excess = compared_of(pair, &state) - pair->compared_value;
    if (!is_finite(excess) || fabs(excess) > 10 * allowance(pair))
        return;
    /* The air's humidity follows from the wet bulb by a small difference: where it is given it is better than what was found. */
    if (pair->kept == VTX_WET_BULB && !is_caloric(pair->compared)
        && moist_from_humidity(pair->model, pair->pressure, state.temperature, pair->compared, pair->compared_value, &state) != VTX_OK)
        return;
    for (int i = 0; i < found->count; i++)
        if (fabs(found->state[i].temperature - state.temperature) < 1e-6 && fabs(found->state[i].total_water - state.total_water) < 1e-12)
            return;
    found->state[found->count++] = state;
}

static void search_between(struct pair *pair, double low, double high, struct candidates *found)
{
    double root;
    if (find_root(excess_at, pair, low, high, DBL_MIN, &root) == VTX_OK)
        add_candidate(pair, root, found);
}

/* Two roots between neighbours of the grid, or one that only touches: look where the wish is approached most. */
static void search_dip(struct pair *pair, double low, double high, double excess, struct candidates *found)
{
    double nearest;
    pair->side = excess < 0 ? -1 : 1;
    if (find_minimum(depth_at, pair, low, high, 1e-9 * high, &nearest) != VTX_OK)
        return;
    if (depth_at(nearest, pair) > 0) {
        add_candidate(pair, nearest, found);
        return;
    }
    search_between(pair, low, nearest, found);
    search_between(pair, nearest, high, found);
}

/* The last state before the kept property has none any more, from a sound place towards an unsound one. */
static double edge_between(struct pair *pair, double sound, double unsound)
{
    for (int i = 0; i < 100; i++) {
        const double middle = sound + 0.5 * (unsound - sound);
        if (middle == sound || middle == unsound)
            break;
        if (is_finite(excess_at(middle, pair)))
            sound = middle;
        else
            unsound = middle;
    }
    return sound;
}

struct sample {
    double along, excess;
};

/* The grid with the edges of what exists put in; samples without a state are left as gaps (NaN). */
static int take_samples(struct pair *pair, const double *grid, int count, struct sample *samples)
{
    int n = 0;
    for (int i = 0; i < count; i++) {
        const struct sample next = { grid[i], excess_at(grid[i], pair) };
        if (i > 0 && is_finite(next.excess) != is_finite(samples[n - 1].excess)) {
            const int rising = is_finite(next.excess);
            const double edge = edge_between(pair, rising ? next.along : samples[n - 1].along, rising ? samples[n - 1].along : next.along);
            samples[n].along = edge;
            samples[n++].excess = excess_at(edge, pair);
        }
        samples[n++] = next;
    }
    return n;
}

static int same_sign(double a, double b) { return (a < 0) == (b < 0); }

/* Dry air is dry at every temperature, and above freezing both relative humidities are one: the second says nothing new. */
static int is_undetermined(const struct pair *pair, const struct sample *samples, int n)
{
    int agreeing = 0;
    for (int i = 0; i < n; i++)
        agreeing += is_finite(samples[i].excess) && fabs(samples[i].excess) <= allowance(pair);
    return agreeing > 3;
}

static vtx_status search(struct pair *pair, const double *grid, int count, struct candidates *found)
{
    struct sample s[2 * GRID + 4];
    const int n = take_samples(pair, grid, count, s);
    if (is_undetermined(pair, s, n))
        return VTX_BAD_ARGUMENT;
    for (int i = 0; i < n; i++) {
        if (!is_finite(s[i].excess))
            continue;
        if (fabs(s[i].excess) <= allowance(pair))
            add_candidate(pair, s[i].along, found);
        if (i + 1 < n && is_finite(s[i + 1].excess) && !same_sign(s[i].excess, s[i + 1].excess))
            search_between(pair, s[i].along, s[i + 1].along, found);
        if (i > 0 && i + 1 < n && is_finite(s[i - 1].excess) && is_finite(s[i + 1].excess) && same_sign(s[i - 1].excess, s[i].excess)
            && same_sign(s[i].excess, s[i + 1].excess) && fabs(s[i].excess) < fabs(s[i - 1].excess)
            && fabs(s[i].excess) < fabs(s[i + 1].excess))
            search_dip(pair, s[i - 1].along, s[i + 1].along, s[i].excess, found);
    }
    return VTX_OK;
}

struct range {
    double low, high;
};

static double water_of_wet_bulb(double temperature, void *context)
{
    const struct pair *pair = context;
    return moist_humidity_ratio_of_wet_bulb(pair->model, pair->pressure, temperature, pair->kept_value, MOIST_WATER_MAX);
}

/* Air of a wet bulb is as cold as its wick when saturated and warmest when dry, fractions of a kelvin apart in deep cold. Vapour
 * supersaturated over ice reaches some way below the iced wick. */
static vtx_status range_of_wet_bulb(struct pair *pair, struct range *range)
{
    const double wick = pair->kept_value;
    double dry = MOIST_TEMPERATURE_MAX;
    if (moist_saturation_fraction(pair->model, pair->pressure, wick, stable_phase(wick)) >= 1)
        return VTX_BAD_ARGUMENT;
    if (water_of_wet_bulb(MOIST_TEMPERATURE_MAX, pair) < 0) {
        const vtx_status status = find_root(water_of_wet_bulb, pair, larger(wick, range->low), MOIST_TEMPERATURE_MAX, 1e-9, &dry);
        if (status != VTX_OK)
            return status;
    }
    range->low = larger(range->low, wick < triple_temperature ? wick - 0.6 * (dry - wick) : wick);
    range->high = smaller(range->high, dry + 1e-6);
    return VTX_OK;
}

static vtx_status search_temperature(struct pair *pair, struct candidates *found)
{
    double grid[GRID + 1];
    struct range range = { moist_temperature_min(pair->model, pair->pressure), MOIST_TEMPERATURE_MAX };
    const vtx_status status = pair->kept == VTX_WET_BULB ? range_of_wet_bulb(pair, &range) : VTX_OK;
    if (status != VTX_OK)
        return status;
    pair->state_at = state_at_temperature;
    for (int i = 0; i <= GRID; i++)
        grid[i] = i == GRID ? range.high : range.low + (range.high - range.low) * i / GRID;
    return search(pair, grid, GRID + 1, found);
}

/* From dry to all the water the model takes, even in its logarithm from 1e-9. */
static vtx_status search_water(struct pair *pair, double most, struct candidates *found)
{
    double grid[WATER_GRID + 1];
    const double least = smaller(1e-9, 0.01 * most);
    for (int i = 0; i <= WATER_GRID; i++)
        grid[i] = i == 0 ? 0 : i == WATER_GRID ? most : least * exp(log(most / least) * (i - 1) / (WATER_GRID - 1));
    return search(pair, grid, WATER_GRID + 1, found);
}

/* Volume has a gap at 273.16 K as enthalpy has, between liquid and ice. */
static void add_mixture_of_volume(const struct pair *pair, struct candidates *found)
{
    struct moist_mixture liquid, ice, mixture;
    moist_equilibrium_over(pair->model, pair->pressure, triple_temperature, pair->kept_value, PHASE_LIQUID, &liquid);
    moist_equilibrium_over(pair->model, pair->pressure, triple_temperature, pair->kept_value, PHASE_ICE, &ice);
    if (!(liquid.condensed > 0) || ice.volume == liquid.volume)
        return;
    const double share = (pair->compared_value - liquid.volume) / (ice.volume - liquid.volume);
    if (!(share > 0 && share < 1))
        return;
    moist_between(&liquid, &ice, share, &mixture);
    found->state[found->count++] = mixture;
}

/* Temperature and a caloric property: as vapour, then with fog or frost, where the property is straight in the water. */
static vtx_status search_at_temperature(struct pair *pair, struct candidates *found)
{
    struct moist_mixture fog, state;
    const double temperature = pair->kept_value;
    const double limit = moist_saturation_fraction(pair->model, pair->pressure, temperature, PHASE_LIQUID);
    pair->state_at = vapour_at_water;
    const double saturated = limit < 1 ? smaller(moist_humidity_ratio(pair->model, limit), MOIST_WATER_MAX) : MOIST_WATER_MAX;
    const vtx_status status = search_water(pair, saturated, found);
    moist_equilibrium(pair->model, pair->pressure, temperature, MOIST_WATER_MAX, &fog);
    if (status != VTX_OK || fog.phase == PHASE_NONE)
        return status;
    moist_vapour(pair->model, pair->pressure, temperature, fog.humidity_ratio, &state);
    const double from = compared_of(pair, &state), to = compared_of(pair, &fog);
    const double share = from == to ? 0 : (pair->compared_value - from) / (to - from);
    if (!(share > 1e-12 && share <= 1))
        return VTX_OK;
    moist_equilibrium(pair->model, pair->pressure, temperature, fog.humidity_ratio + share * fog.condensed, &state);
    found->state[found->count++] = state;
    return VTX_OK;
}

/* Total water and a caloric property, or two of these. */
static vtx_status search_equilibrium(struct pair *pair, struct candidates *found)
{
    if (pair->kept == VTX_HUMIDITY_RATIO) {
        if (pair->compared == VTX_VOLUME) {
            const vtx_status status = search_temperature(pair, found);
            if (found->count == 0)
                add_mixture_of_volume(pair, found);
            return status;
        }
        const vtx_status status = (pair->compared == VTX_ENTHALPY ? moist_of_enthalpy : moist_of_entropy)(
            pair->model, pair->pressure, pair->kept_value, pair->compared_value, 300, &found->state[0]);
        found->count = status == VTX_OK;
        return status == VTX_OUT_OF_RANGE ? VTX_OK : status;
    }
    pair->state_at = equilibrium_at_water;
    return search_water(pair, MOIST_WATER_MAX, found);
}

/* Which of the two is kept: the one that makes the search simple. The wet bulb gives the air's water directly, but not the reverse. */
static int rank(int32_t property)
{
    static const int32_t order[] = { VTX_TEMPERATURE, VTX_WET_BULB, VTX_HUMIDITY_RATIO, VTX_VAPOUR_FRACTION, VTX_RELATIVE_HUMIDITY,
                                     VTX_RELATIVE_HUMIDITY_ICE, VTX_ABSOLUTE_HUMIDITY, VTX_ENTHALPY, VTX_ENTROPY, VTX_VOLUME };
    int i = 0;
    while (order[i] != property)
        i++;
    return i;
}

static vtx_status find_candidates(struct pair *pair, struct candidates *found)
{
    if (pair->kept == VTX_TEMPERATURE && is_caloric(pair->compared))
        return search_at_temperature(pair, found);
    if (pair->kept == VTX_TEMPERATURE) {
        const vtx_status status = moist_from_humidity(pair->model, pair->pressure, pair->kept_value, pair->compared, pair->compared_value,
                                                      &found->state[0]);
        found->count = status == VTX_OK;
        return status == VTX_BAD_ARGUMENT ? VTX_OK : status;
    }
    if (is_caloric(pair->compared) && (pair->kept == VTX_HUMIDITY_RATIO || is_caloric(pair->kept)))
        return search_equilibrium(pair, found);
    return search_temperature(pair, found);
}

/* Without condensate first, then the warmest. */
static const struct moist_mixture *best_of(const struct candidates *found)
{
    const struct moist_mixture *best = &found->state[0];
    for (int i = 1; i < found->count; i++) {
        const struct moist_mixture *other = &found->state[i];
        if ((best->condensed > 0 && !(other->condensed > 0))
            || ((best->condensed > 0) == (other->condensed > 0) && other->temperature > best->temperature))
            best = other;
    }
    return best;
}

/* Dew and frost point become the vapour fraction they stand for. */
static vtx_status read_property(int32_t model, double pressure, int32_t *property, double *value)
{
    const double v = *value;
    switch (*property) {
    case VTX_HUMIDITY_RATIO: return moist_check_water(v);
    case VTX_RELATIVE_HUMIDITY: return check_share(v);
    case VTX_RELATIVE_HUMIDITY_ICE: return require(is_finite(v) && v >= 0 && v <= 10);
    case VTX_VAPOUR_FRACTION: return require(is_finite(v) && v >= 0 && v < 1);
    case VTX_ABSOLUTE_HUMIDITY: return check_amount(v, 1000);
    case VTX_WET_BULB: return check_positive(v, moist_temperature_min(model, pressure) - 1, MOIST_TEMPERATURE_MAX);
    case VTX_TEMPERATURE: return moist_check(model, pressure, v);
    case VTX_ENTHALPY: return check_range(v, -1e8, 1e8);
    case VTX_ENTROPY: return check_range(v, -1e6, 1e6);
    case VTX_VOLUME: return check_positive(v, 0, 1e4);
    case VTX_DEW_POINT:
    case VTX_FROST_POINT: {
        const int32_t phase = *property == VTX_DEW_POINT ? PHASE_LIQUID : PHASE_ICE;
        *property = VTX_VAPOUR_FRACTION;
        return moist_fraction_of_saturation(model, pressure, v, phase, value);
    }
    default: return VTX_BAD_ARGUMENT;
    }
}

static int is_water(int32_t property) { return property == VTX_HUMIDITY_RATIO || property == VTX_VAPOUR_FRACTION; }

static vtx_status read_pair(int32_t model, double pressure, int32_t property_a, double a, int32_t property_b, double b, struct pair *pair)
{
    vtx_status status = worse(moist_check(model, pressure, MOIST_TEMPERATURE_MAX), require(property_a != property_b));
    if (status != VTX_OK)
        return status;
    status = worse(read_property(model, pressure, &property_a, &a), read_property(model, pressure, &property_b, &b));
    if (status != VTX_OK || (is_water(property_a) && is_water(property_b)))
        return worse(status, require(!(is_water(property_a) && is_water(property_b))));
    const int swapped = rank(property_b) < rank(property_a);
    const struct pair read = { model, swapped ? property_b : property_a, swapped ? property_a : property_b, pressure, swapped ? b : a,
                               swapped ? a : b, 1, NULL };
    *pair = read;
    return VTX_OK;
}

vtx_status vtx_moist_air_from_pair(int32_t model, double pressure, int32_t property_a, double a, int32_t property_b, double b,
                                   vtx_moist_air *state)
{
    struct pair pair;
    struct candidates found;
    found.count = 0;
    vtx_status status = worse(require(state != NULL), read_pair(model, pressure, property_a, a, property_b, b, &pair));
    if (status == VTX_OK)
        status = find_candidates(&pair, &found);
    if (status == VTX_OK && found.count == 0)
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return POISON_STRUCT(state, vtx_moist_air, advisories, status);
    moist_state(model, best_of(&found), state);
    if (found.count > 1)
        state->advisories |= VTX_ADVISORY_INDISTINGUISHABLE;
    return VTX_OK;
}
