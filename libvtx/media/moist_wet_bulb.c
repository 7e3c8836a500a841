/* Wet bulb: adiabatic saturation over a wet or an iced wick. */
#include "moist_ideal.h"
#include "moist_real.h"

/* The air whose wet bulb is sought. */
struct wick {
    int32_t model;
    int32_t phase;
    double pressure;
    double temperature;
    double humidity_ratio;
    double enthalpy;
};

/* ASHRAE equations 33 to 36: heat of evaporation less that of warming the wick's water, and the water's heat capacity. */
static inline double ideal_evaporation(double celsius, int32_t phase)
{
    return phase == PHASE_ICE ? 2830e3 - 240 * celsius : 2501e3 - 2326 * celsius;
}

static inline double ideal_denominator(double celsius, double wet_celsius, int32_t phase)
{
    return phase == PHASE_ICE ? 2830e3 + 1860 * celsius - 2100 * wet_celsius : 2501e3 + 1860 * celsius - 4186 * wet_celsius;
}

/* Excess of the saturated air's enthalpy over that of the air at hand with the water it takes up, J/kg times the saturated air's
 * share of dry air (which keeps it finite at boiling). Rises with the wick's temperature. */
static double ideal_excess(const struct wick *w, double wet_bulb, double *slope)
{
    const double celsius = w->temperature - ice_point, wet = wet_bulb - ice_point;
    const struct saturation s = w->phase == PHASE_ICE ? ice_saturation(wet_bulb) : liquid_saturation(wet_bulb);
    const double x = smaller(1, s.pressure / w->pressure), y = 1 - x;
    const double evaporation = ideal_evaporation(wet, w->phase), denominator = ideal_denominator(celsius, wet, w->phase);
    const double dry = -ideal_air_heat_capacity * (celsius - wet) - w->humidity_ratio * denominator;
    const double evaporation_slope = w->phase == PHASE_ICE ? -240 : -2326;
    const double wick_heat_capacity = w->phase == PHASE_ICE ? 2100 : 4186;
    const double dry_slope = ideal_air_heat_capacity + w->humidity_ratio * wick_heat_capacity;
    *slope = ideal_mass_ratio * (x * evaporation_slope + s.slope / w->pressure * evaporation) + y * dry_slope - s.slope / w->pressure * dry;
    return ideal_mass_ratio * x * evaporation + y * dry;
}

static double real_excess(const struct wick *w, double wet_bulb, double *slope)
{
    const struct real_temperature t = real_temperature(wet_bulb);
    const double x = real_saturation_fraction(&t, w->pressure, w->phase), y = 1 - x;
    const struct real_gas gas = real_gas(&t, w->pressure, x);
    const struct condensate c = real_condensate(&t, w->pressure, w->phase);
    const double condensate = c.enthalpy / water_molar_mass;
    const double taken_up = x * water_molar_mass / moist_air_molar_mass - y * w->humidity_ratio;
    /* Clausius and Clapeyron for the ideal vapour: good to a few percent, enough for the first step. */
    const double evaporation = 2.5e6;
    const double x_t = x * water_molar_mass * evaporation / (t.rt * wet_bulb);
    *slope = gas.heat_capacity / moist_air_molar_mass + x_t * evaporation * water_molar_mass / moist_air_molar_mass;
    return gas.enthalpy / moist_air_molar_mass - taken_up * condensate - y * w->enthalpy;
}

static double excess(const struct wick *w, double wet_bulb, double *slope)
{
    return (w->model == VTX_AIR_IDEAL ? ideal_excess : real_excess)(w, wet_bulb, slope);
}

/* Newton from a start with the first slope given (REAL: rough, replaced by that of the secant), kept in a bracket that shrinks. */
static double wick_temperature(const struct wick *w, double low, double high, double start)
{
    double at = within(start, low, high), before = 0, value_before = 0;
    for (int i = 0; i < 80; i++) {
        double slope;
        const double value = excess(w, at, &slope);
        if (w->model == VTX_AIR_REAL && i > 0 && value != value_before)
            slope = (value - value_before) / (at - before);
        if (value > 0)
            high = at;
        else
            low = at;
        double next = at - value / slope;
        if (!(next >= low && next <= high))
            next = 0.5 * (low + high);
        if (fabs(next - at) < 1e-9 || high - low < 1e-10)
            return next;
        before = at;
        value_before = value;
        at = next;
    }
    return quiet_nan();
}

/* Where to start: the straight line between dry bulb and dew or frost point, by the slope of the saturation pressure between. */
static double start_between(const struct wick *w, double vapour_fraction)
{
    const double psychrometer = 1006 * w->pressure / (ideal_mass_ratio * (w->phase == PHASE_ICE ? 2830e3 : 2501e3));
    const double vapour_pressure = vapour_fraction * w->pressure;
    const double dew = pure_saturation_temperature(larger(vapour_pressure, 1e-3), w->phase);
    const double middle = w->temperature - 0.6 * (w->temperature - dew);
    const struct saturation s = w->phase == PHASE_ICE ? ice_saturation(middle) : liquid_saturation(larger(middle, SUPERCOOLED_TEMPERATURE_MIN));
    return (psychrometer * w->temperature + s.slope * dew) / (psychrometer + s.slope);
}

/* The real one starts from the ideal one, which is within a few tenths of a kelvin and costs a tenth of a step. */
static double find_wick_temperature(const struct wick *w, double low, double high, double vapour_fraction)
{
    struct wick ideal = *w;
    ideal.model = VTX_AIR_IDEAL;
    const double start = wick_temperature(&ideal, low, high, start_between(w, vapour_fraction));
    return w->model == VTX_AIR_IDEAL ? start : wick_temperature(w, low, high, start);
}

double moist_wet_bulb(int32_t model, const struct moist_mixture *air, int32_t *advisories)
{
    struct wick w = { model, PHASE_LIQUID, air->pressure, air->temperature, air->humidity_ratio, air->enthalpy };
    double slope;
    if (air->condensed > 0)
        return air->temperature;
    if (air->temperature >= triple_temperature && excess(&w, triple_temperature, &slope) <= 0) {
        const double wet = find_wick_temperature(&w, triple_temperature, air->temperature, air->vapour_fraction);
        w.phase = PHASE_ICE;
        /* The iced wick's root lies below 273.16 K only while the wet one's is within a few kelvin above. */
        if (wet < triple_temperature + 5 && excess(&w, triple_temperature, &slope) >= 0)
            *advisories |= VTX_ADVISORY_TWO_WET_BULBS;
        return wet;
    }
    w.phase = PHASE_ICE;
    return find_wick_temperature(&w, moist_temperature_min(model, air->pressure) - 1, triple_temperature, air->vapour_fraction);
}

static double ideal_wet_bulb_humidity(double pressure, double temperature, double wet_bulb, int32_t phase)
{
    const double celsius = temperature - ice_point, wet = wet_bulb - ice_point;
    const double saturated = pure_saturation_pressure(wet_bulb, phase);
    const double saturated_ratio = ideal_mass_ratio * saturated / (pressure - saturated);
    return (ideal_evaporation(wet, phase) * saturated_ratio - ideal_air_heat_capacity * (celsius - wet))
           / ideal_denominator(celsius, wet, phase);
}

/* The air's enthalpy is almost straight in its humidity ratio: a secant from the dry end, not beyond the ratio that the air can hold. */
static double real_wet_bulb_humidity(double pressure, double temperature, double wet_bulb, int32_t phase, double most)
{
    const struct real_temperature wick = real_temperature(wet_bulb), air = real_temperature(temperature);
    const double x = real_saturation_fraction(&wick, pressure, phase);
    const double condensate = real_condensate(&wick, pressure, phase).enthalpy / water_molar_mass;
    struct moist_mixture m;
    real_mixture(&wick, pressure, 0, x, PHASE_NONE, &m);
    const double saturated = moist_humidity_ratio(VTX_AIR_REAL, x), target = m.enthalpy - saturated * condensate;
    double ratio = 0, slope = 2.5e6, before = 0, value_before = 0;
    for (int i = 0; i < 60; i++) {
        real_mixture(&air, pressure, ratio, moist_vapour_fraction(VTX_AIR_REAL, ratio), PHASE_NONE, &m);
        const double value = m.enthalpy - ratio * condensate - target;
        /* Already too warm when dry: no humidity ratio above zero has so low a wet bulb. */
        if (i == 0 && value > 0)
            return -value / slope;
        /* Closer than this the difference is rounding. */
        if (i > 0 && fabs(ratio - before) > 1e-9)
            slope = (value - value_before) / (ratio - before);
        before = ratio;
        value_before = value;
        if (ratio >= most && value < 0)
            return 2 * most;
        ratio = within(ratio - value / slope, 0, most);
        if (fabs(ratio - before) <= 1e-14 * ratio + 1e-18)
            break;
    }
    return ratio;
}

double moist_humidity_ratio_of_wet_bulb(int32_t model, double pressure, double temperature, double wet_bulb, double most)
{
    const int32_t phase = stable_phase(wet_bulb);
    if (model == VTX_AIR_IDEAL)
        return ideal_wet_bulb_humidity(pressure, temperature, wet_bulb, phase);
    return real_wet_bulb_humidity(pressure, temperature, wet_bulb, phase, most);
}
