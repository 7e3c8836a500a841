/* Wet bulb: adiabatic saturation over a wet or an iced wick. */
#include "ideal_humidity_kernel.h"
#include "moist_place.h"

/* Excess of the saturated air's enthalpy, see ideal_excess_at. The slope may be rough. */
typedef double wick_excess(const struct wick *w, double wet_bulb, double *slope);

static double ideal_excess(const struct wick *w, double wet_bulb, double *slope)
{
    const struct saturation s = w->phase == PHASE_ICE ? ice_saturation(wet_bulb) : liquid_saturation(wet_bulb);
    const struct wick_balance b = ideal_balance(w->phase, w);
    const struct excess e = ideal_excess_at(&b, wet_bulb, s);
    *slope = e.slope;
    return e.value;
}

static double real_excess(const struct wick *w, double wet_bulb, double *slope)
{
    const struct real_temperature t = real_temperature(wet_bulb);
    /* first what need not wait for the fraction */
    const double condensate = real_condensate_enthalpy(&t, w->pressure, w->phase);
    const double x = real_saturation_fraction(&t, w->pressure, w->phase), y = 1 - x;
    const double saturated = real_enthalpy(&t, w->pressure, x);
    const double taken_up = x / moist_air_molar_mass - y * w->humidity_ratio / water_molar_mass;
    /* Clausius and Clapeyron for the ideal vapour, and its heat capacity: good to a few percent. */
    const double evaporation = ideal_enthalpy(&water_heat, water_enthalpy_zero, wet_bulb) - condensate;
    const double x_t = x * evaporation / (t.rt * wet_bulb);
    *slope = (29.1 * y + 34 * x + x_t * evaporation / larger(y, 0.01)) / moist_air_molar_mass;
    return saturated / moist_air_molar_mass - taken_up * condensate - y * w->enthalpy;
}

/* Newton in a bracket that shrinks; from the second step on a rough slope is replaced by the secant's. */
static double wick_temperature(wick_excess *excess, int rough, const struct wick *w, double low, double high, double start)
{
    double at = within(start, low, high), before = 0, value_before = 0, step_before = 1e3;
    for (int i = 0; i < 80; i++) {
        double slope;
        const double value = excess(w, at, &slope);
        if (rough && i > 0 && value != value_before)
            slope = (value - value_before) / (at - before);
        if (value > 0)
            high = at;
        else
            low = at;
        double next = at - value / slope;
        const int halved = !(next >= low && next <= high);
        if (halved)
            next = 0.5 * (low + high);
        const double step = fabs(next - at);
        /* The next step would be about 0.03/K times this one times this (Newton) or the one before (secant); of half a bracket nothing is known. */
        if ((!halved && step * (rough ? step_before : step) < 1e-10) || high - low < 1e-10)
            return next;
        before = at;
        value_before = value;
        step_before = halved ? 1e3 : step;
        at = next;
    }
    return quiet_nan();
}

/* Where to start: the straight line between dry bulb and dew or frost point, by the slope of the saturation pressure between. */
static double start_between(const struct wick *w)
{
    const double x = w->humidity_ratio / (ideal_mass_ratio + w->humidity_ratio);
    const double psychrometer = ideal_air_heat_capacity * w->pressure / (ideal_mass_ratio * ideal_evaporation(0, w->phase));
    const double dew = pure_saturation_temperature(larger(x * w->pressure, 1e-3), w->phase);
    const double middle = w->temperature - 0.6 * (w->temperature - dew);
    const double slope = w->phase == PHASE_ICE ? ice_saturation(middle).slope
                                               : liquid_saturation(larger(middle, SUPERCOOLED_TEMPERATURE_MIN)).slope;
    return (psychrometer * w->temperature + slope * dew) / (psychrometer + slope);
}

static double searched_wet_bulb(struct wick *w, double lowest)
{
    const struct wick_balance over_liquid = ideal_balance(PHASE_LIQUID, w);
    w->phase = ideal_wick_is_wet(w, &over_liquid) ? PHASE_LIQUID : PHASE_ICE;
    if (w->phase == PHASE_LIQUID)
        return wick_temperature(ideal_excess, 0, w, triple_temperature, w->temperature, start_between(w));
    return wick_temperature(ideal_excess, 0, w, lowest, triple_temperature, start_between(w));
}

static double ideal_wet_bulb(struct wick *w, double lowest)
{
    if (w->temperature >= SUPERCOOLED_TEMPERATURE_MIN && w->temperature <= LIQUID_POLYNOMIAL_TEMPERATURE_MAX) {
        const double x = w->humidity_ratio / (ideal_mass_ratio + w->humidity_ratio);
        const double wet_bulb = stepped_wet_bulb(w, x * w->pressure, liquid_polynomial_pressure(w->temperature));
        if (is_finite(wet_bulb))
            return wet_bulb;
    }
    return searched_wet_bulb(w, lowest);
}

/* By how much the enhancement factor lowers a wet bulb, roughly: its vapour's heat over the slope of the excess. Not by more than half of
 * the depression, so that the search for a saturated gas still starts at its own temperature, which is the answer. */
static double lowered_by_enhancement(const struct wick *w, double wet_bulb)
{
    const double evaporation = 45e3 /* J/mol */, t = larger(wet_bulb, SUPERCOOLED_TEMPERATURE_MIN);
    const double pure = liquid_saturation_pressure(t), heat = pure / w->pressure * evaporation;
    const double factor = larger(rough_log_enhancement(t, w->pressure, pure), 0);
    const double most = 0.5 * (w->temperature - wet_bulb);
    return within(factor * heat / (29.1 + heat * evaporation / (gas_constant * square(t))), 0, larger(most, 0));
}

/* The ideal wet bulb is within 3 K and costs a tenth of a step: it tells the wick unless near 273.16 K, and the start. */
static double real_wet_bulb(struct wick *w, double lowest)
{
    double slope;
    const double ideal = ideal_wet_bulb(w, lowest), start = ideal - lowered_by_enhancement(w, ideal);
    w->phase = start > triple_temperature ? PHASE_LIQUID : PHASE_ICE;
    if (fabs(start - triple_temperature) < 3) {
        w->phase = PHASE_LIQUID;
        if (w->temperature < triple_temperature || real_excess(w, triple_temperature, &slope) > 0)
            w->phase = PHASE_ICE;
    }
    if (w->phase == PHASE_LIQUID)
        return wick_temperature(real_excess, 1, w, triple_temperature, w->temperature, start);
    return wick_temperature(real_excess, 1, w, lowest, triple_temperature, start);
}

double wet_bulb_of_vapour(struct moist_place *place, double x, int32_t *advisories)
{
    const int real = place->model == VTX_AIR_REAL;
    const double enthalpy = real ? real_enthalpy(&place->at, place->pressure, x) / ((1 - x) * moist_air_molar_mass) : 0;
    struct wick w = { PHASE_LIQUID, place->pressure, place->at.temperature, moist_humidity_ratio(place->model, x), enthalpy };
    const double lowest = moist_temperature_min(place->model, place->pressure) - 1;
    const double wet_bulb = real ? real_wet_bulb(&w, lowest) : ideal_wet_bulb(&w, lowest);
    double slope;
    /* The iced wick has a root below 273.16 K too only while the wet one's is within a few kelvin above. */
    if (w.phase == PHASE_LIQUID && wet_bulb < triple_temperature + 5) {
        w.phase = PHASE_ICE;
        if ((real ? real_excess : ideal_excess)(&w, triple_temperature, &slope) >= 0)
            *advisories |= VTX_ADVISORY_TWO_WET_BULBS;
    }
    return wet_bulb;
}

static double ideal_humidity_ratio(struct moist_place *place, double wet_bulb, int32_t phase)
{
    const double celsius = place->at.temperature - ice_point, wet = wet_bulb - ice_point;
    const double saturated = pure_saturation_pressure(wet_bulb, phase);
    const double saturated_ratio = ideal_mass_ratio * saturated / (place->pressure - saturated);
    return (ideal_evaporation(wet, phase) * saturated_ratio - ideal_air_heat_capacity * (celsius - wet))
           / ideal_denominator(celsius, wet, phase);
}

/* The air's enthalpy is almost straight in its humidity ratio: a secant from the dry end, not beyond the ratio that the air can hold. */
static double real_humidity_ratio(struct moist_place *place, double wet_bulb, int32_t phase, double most)
{
    const struct real_temperature wick = real_temperature(wet_bulb);
    const double pressure = place->pressure, x = real_saturation_fraction(&wick, pressure, phase);
    const double condensate = real_condensate_enthalpy(&wick, pressure, phase) / water_molar_mass;
    const double saturated = real_enthalpy(&wick, pressure, x) / ((1 - x) * moist_air_molar_mass);
    const double target = saturated - moist_humidity_ratio(VTX_AIR_REAL, x) * condensate;
    double ratio = 0, slope = 2.5e6, before = 0, value_before = 0;
    for (int i = 0; i < 60; i++) {
        const double fraction = moist_vapour_fraction(VTX_AIR_REAL, ratio);
        const double enthalpy = real_enthalpy(&place->at, pressure, fraction) / ((1 - fraction) * moist_air_molar_mass);
        const double value = enthalpy - ratio * condensate - target;
        /* Already too warm when dry: no humidity ratio above zero has so low a wet bulb. */
        if (i == 0 && value > 0)
            return -value / slope;
        if (ratio >= most && value < 0)
            return 2 * most;
        /* Closer than this the difference is rounding. */
        if (i > 0 && fabs(ratio - before) > 1e-9)
            slope = (value - value_before) / (ratio - before);
        before = ratio;
        value_before = value;
        ratio = within(ratio - value / slope, 0, most);
        if (fabs(ratio - before) <= 1e-14 * ratio + 1e-18)
            break;
    }
    return ratio;
}

double humidity_ratio_of_wet_bulb(struct moist_place *place, double wet_bulb, double most)
{
    const int32_t phase = stable_phase(wet_bulb);
    if (place->model == VTX_AIR_IDEAL)
        return ideal_humidity_ratio(place, wet_bulb, phase);
    return real_humidity_ratio(place, wet_bulb, phase, most);
}

double moist_humidity_ratio_of_wet_bulb(int32_t model, double pressure, double temperature, double wet_bulb, double most)
{
    struct moist_place place;
    put_moist_place(&place, model, pressure, temperature);
    return humidity_ratio_of_wet_bulb(&place, wet_bulb, most);
}
