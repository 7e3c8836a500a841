/* Dew point and wet bulb of the ideal mixture from relative humidity: closed, or in counted steps without branches, so that a loop over
 * items vectorises. Unchecked. Internal. */
#ifndef VTX_IDEAL_HUMIDITY_KERNEL_H
#define VTX_IDEAL_HUMIDITY_KERNEL_H

#include "moist_ideal.h"

/* The air whose wet bulb is sought; enthalpy in J per kg dry air (REAL). */
struct wick {
    int32_t phase;
    double pressure;
    double temperature;
    double humidity_ratio;
    double enthalpy;
};

/* ASHRAE equations 33 to 36: heat of evaporation less that of warming the wick's water, and its denominator. */
static inline double ideal_evaporation(double celsius, int32_t phase)
{
    return phase == PHASE_ICE ? 2830e3 - 240 * celsius : 2501e3 - 2326 * celsius;
}

static inline double ideal_denominator(double celsius, double wet_celsius, int32_t phase)
{
    return phase == PHASE_ICE ? 2830e3 + 1860 * celsius - 2100 * wet_celsius : 2501e3 + 1860 * celsius - 4186 * wet_celsius;
}

/* What a balance has over both wicks that does not hang on the wick's temperature: all in it is straight in that temperature but the
 * mole fraction x at saturation. */
struct wick_balance {
    double dry, dry_t; /* excess where x is 0, at 0 degC, and its slope */
    double gap, gap_t; /* excess where x is 1 less that where it is 0, likewise */
    double atmospheres;
};

static inline struct wick_balance ideal_balance(int32_t phase, const struct wick *w)
{
    const double celsius = w->temperature - ice_point;
    const double dry = -ideal_air_heat_capacity * celsius - w->humidity_ratio * ideal_denominator(celsius, 0, phase);
    const double dry_t = ideal_air_heat_capacity + w->humidity_ratio * (phase == PHASE_ICE ? 2100 : 4186);
    const struct wick_balance b = { dry, dry_t, ideal_mass_ratio * ideal_evaporation(0, phase) - dry,
                                    ideal_mass_ratio * (phase == PHASE_ICE ? -240 : -2326) - dry_t, 1 / w->pressure };
    return b;
}

/* A function of the wick's temperature with its first two derivatives. */
struct excess {
    double value;
    double slope;
    double curvature;
};

/* Excess of the saturated air's enthalpy over that of the air at hand with the water it takes up, J/kg times the saturated air's
 * share of dry air (which keeps it finite at boiling). Rises with the wick's temperature. */
static inline struct excess ideal_excess_at(const struct wick_balance *b, double wet_bulb, struct saturation s)
{
    const double wet = wet_bulb - ice_point, gap = b->gap + b->gap_t * wet;
    const double x = smaller(1, s.pressure * b->atmospheres), x_t = s.slope * b->atmospheres, x_tt = s.curvature * b->atmospheres;
    const struct excess e = { b->dry + b->dry_t * wet + x * gap, b->dry_t + x * b->gap_t + x_t * gap, x_tt * gap + 2 * x_t * b->gap_t };
    return e;
}

/* The wet wick's root lies at or above 273.16 K where its excess there, of the balance over liquid, is not above zero. */
static inline int ideal_wick_is_wet(const struct wick *w, const struct wick_balance *over_liquid)
{
    const struct saturation s = { triple_pressure, 0, 0 };
    return (w->temperature >= triple_temperature) & (ideal_excess_at(over_liquid, triple_temperature, s).value <= 0);
}

/* d ln p/dT for the steps below, with its slope: a steepness that is off by a millionth loses a step nothing. Fits by
 * build-aux/fit_media, liquid from 273.16 to 373.15 K within 2e-7, ice from 213.15 K within 5e-9. */
#define WICK_TEMPERATURE_MIN 213.15
_Alignas(16) static const double liquid_steepness_coefficients[8] = {
    0.04962235992348072, -0.017542175529568254, 0.0043560215494157211, -0.0009035691109731248, 0.00019023006662384322,
    -4.4773433648443997e-05, 7.2671376973554304e-06, 5.4617530190981253e-07
};
_Alignas(16) static const double liquid_steepness_slope_coefficients[8] = {
    -0.017542175529568254, 0.0087120430988314422, -0.0027107073329193745, 0.00076092026649537286,
    -0.00022386716824221998, 4.3602826184132582e-05, 3.8232271133686877e-06, 0
};
_Alignas(16) static const double ice_steepness_coefficients[8] = {
    0.10404291657732505, -0.025682517271097841, 0.0046462368795335005, -0.00075499566096995374, 0.00011550590975117015,
    -1.7013295464614053e-05, 2.539494781990115e-06, -3.5845774606357853e-07
};
_Alignas(16) static const double ice_steepness_slope_coefficients[8] = {
    -0.025682517271097841, 0.009292473759067001, -0.0022649869829098612, 0.00046202363900468059,
    -8.5066477323070272e-05, 1.523696869194069e-05, -2.5092042224450497e-06, 0
};

static inline struct saturation wick_saturation(int32_t phase, double temperature)
{
    const int ice = phase == PHASE_ICE;
    const double per_kelvin = ice ? 1 / 30.005 : 1 / 49.995;
    const double x = (temperature - (ice ? 243.155 : 323.155)) * per_kelvin;
    const double pressure = ice ? ice_polynomial_pressure(temperature) : liquid_polynomial_pressure(temperature);
    const double steepness = polynomial(ice ? ice_steepness_coefficients : liquid_steepness_coefficients, 8, x);
    const double slope = polynomial(ice ? ice_steepness_slope_coefficients : liquid_steepness_slope_coefficients, 7, x) * per_kelvin;
    const struct saturation s = { pressure, pressure * steepness, pressure * (square(steepness) + slope) };
    return s;
}

/* Where the steps start, within 3 K of common wet bulbs: the psychrometer's equation p(T*) = e + A (T - T*) with Magnus's vapour
 * pressure over liquid (WMO No. 8), p(T*) = p(T) exp(-z), and (1 - 0.38 z)/(1 + 0.62 z) for the exponential leave a quadratic in z. */
static inline double wick_start(const struct wick *w, double vapour_pressure, double saturation_pressure)
{
    const double magnus = 17.62 * 243.12, near = 0.38, far = 1 - near;
    const double e = vapour_pressure, from_pole = w->temperature - 30.03, by_z = square(from_pole) * (1 / magnus);
    const double dry = ideal_air_heat_capacity / (2450e3 * ideal_mass_ratio) * by_z; /* A over the pressure of dry air, times kelvins a z */
    const double nu = from_pole * (1 / magnus), s = dry + nu, u = dry * (w->pressure - e) + e * nu;
    const double a = near * saturation_pressure * s + far * u, b = u + far * e - saturation_pressure * (s - near);
    const double c = larger(saturation_pressure - e, 0);
    return w->temperature - 2 * c * by_z / (b + sqrt(square(b) + 4 * a * c) + 2 * nu * c);
}

/* Two steps of Halley's. The error that they leave is below 4e-4/K times the last step squared, so one below wick_step_max leaves
 * less than 1e-9 K; a longer one, and NaN, mean that the bracketed search is to answer. */
static const double wick_step_max = 1.5e-3;

/* K by which a root lies below. */
static inline double halley_step(struct excess e) { return 2 * e.value * e.slope / (2 * square(e.slope) - e.value * e.curvature); }

static inline double wick_low(int32_t phase) { return phase == PHASE_ICE ? WICK_TEMPERATURE_MIN : triple_temperature; }

static inline double wick_high(int32_t phase, double temperature) { return phase == PHASE_ICE ? triple_temperature : temperature; }

static inline double wick_steps(int32_t phase, const struct wick *w, const struct wick_balance *b, double start, double *last_step)
{
    const double low = wick_low(phase), high = wick_high(phase, w->temperature);
    const double first = within(start, low, high);
    const double second = within(first - halley_step(ideal_excess_at(b, first, wick_saturation(phase, first))), low, high);
    *last_step = halley_step(ideal_excess_at(b, second, wick_saturation(phase, second)));
    return within(second - *last_step, low, high);
}

/* From the air's vapour pressure and its saturation over liquid, 233.15..373.15 K; NaN where the counted steps do not reach it. */
static inline double stepped_wet_bulb(struct wick *w, double vapour_pressure, double saturation_pressure)
{
    const double start = wick_start(w, vapour_pressure, saturation_pressure);
    const struct wick_balance over_liquid = ideal_balance(PHASE_LIQUID, w);
    double wet_bulb, step;
    if (ideal_wick_is_wet(w, &over_liquid)) {
        w->phase = PHASE_LIQUID;
        wet_bulb = wick_steps(PHASE_LIQUID, w, &over_liquid, start, &step);
    } else {
        const struct wick_balance over_ice = ideal_balance(PHASE_ICE, w);
        w->phase = PHASE_ICE;
        wet_bulb = wick_steps(PHASE_ICE, w, &over_ice, start, &step);
    }
    return fabs(step) <= wick_step_max ? wet_bulb : quiet_nan();
}

/* Both calls below answer within these; what they do not answer, the general way does. Relative humidity refers to liquid. */
static inline int is_ordinary_humidity(double pressure, double temperature, double relative_humidity)
{
    return (pressure >= MOIST_PRESSURE_MIN) & (pressure <= MOIST_PRESSURE_MAX) & (temperature >= SUPERCOOLED_TEMPERATURE_MIN) &
           (temperature <= LIQUID_POLYNOMIAL_TEMPERATURE_MAX) & (relative_humidity >= 0) & (relative_humidity <= 1);
}

/* Less vapour than 0.9 of the gas, which holds no more water than MOIST_WATER_MAX. */
static inline int is_ordinary_vapour(double vapour_pressure, double pressure) { return vapour_pressure <= 0.9 * pressure; }

static inline struct wick ideal_wick(int32_t phase, double pressure, double temperature, double vapour_pressure)
{
    const struct wick w = { phase, pressure, temperature, ideal_mass_ratio * vapour_pressure / (pressure - vapour_pressure), 0 };
    return w;
}

/* Dew point from the fourth root of the saturation pressure: the root of the humidity does not wait for it. */
static inline double ideal_dew_point(double relative_humidity, double saturation_root)
{
    return larger(region4_temperature(pascal_root * sqrt(sqrt(relative_humidity)) * saturation_root, 1), SUPERCOOLED_TEMPERATURE_MIN);
}

/* NaN where the general way is to answer. */
static inline double ideal_dew_point_of_humidity(double relative_humidity, double saturation_root, double pressure)
{
    const double vapour_pressure = relative_humidity * square(square(saturation_root));
    if (vapour_pressure < SUPERCOOLED_PRESSURE_MIN || !is_ordinary_vapour(vapour_pressure, pressure))
        return quiet_nan();
    return ideal_dew_point(relative_humidity, saturation_root);
}

static inline double ideal_wet_bulb_of_humidity(double relative_humidity, double saturation_pressure, double pressure, double temperature)
{
    const double vapour_pressure = relative_humidity * saturation_pressure;
    struct wick w = ideal_wick(PHASE_LIQUID, pressure, temperature, vapour_pressure);
    if (!is_ordinary_vapour(vapour_pressure, pressure))
        return quiet_nan();
    return stepped_wet_bulb(&w, vapour_pressure, saturation_pressure);
}

#endif
