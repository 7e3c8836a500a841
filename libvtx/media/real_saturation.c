/* Saturation of real moist air over liquid and ice: the mole fraction of a temperature, and the temperature of a mole fraction. */
#include "moist_real.h"
#include "saturation_start.h"

/* A density, mol/m3, with one within 3e-7 of it that is known sooner: neither its logarithm nor slopes need to wait. */
struct near_density {
    double near, density;
    double log_share; /* ln density/near */
};

static ALWAYS_INLINE struct near_density near_density(double q, double b, double c)
{
    const double near = virial_density_start(q, b, c);
    const double share = virial_density_step(near, q, b, c);
    struct near_density d = { near, near * (1 - share), -share * (1 + 0.5 * share) };
    if (fabs(share) > 3e-7) {
        d.near = d.density = virial_density(q, b, c);
        d.log_share = 0;
    }
    return d;
}

/* ln(a/b), sooner where that is small. */
static ALWAYS_INLINE double log_of_neighbours(double a, double b)
{
    const double sum = a + b, difference = a - b;
    if (fabs(difference) > 0.17 * sum)
        return log_ratio(a, b);
    const double s = difference / sum, z = s * s;
    return 2 * s + 2 * s * z * logarithm_tail(z);
}

/* What the balance of water between gas and condensate takes from the gas. */
struct gas_side {
    struct near_density of;
    double by_density;    /* d q/d density, q = pressure over RT */
    double second, third; /* of water with all in the gas */
    double log_fugacity;  /* over that of ideal vapour of the same partial density */
};

static ALWAYS_INLINE struct gas_side gas_side(const struct virials *v, double q, double x)
{
    const double y = 1 - x;
    const double b = mixed_second(v->aa.value, v->aw.value, v->ww.value, x);
    const double c = mixed_third(v->aaa.value, v->aaw.value, v->aww.value, v->www.value, x);
    const double second = y * v->aw.value + x * v->ww.value;
    const double third = y * y * v->aaw.value + 2 * x * y * v->aww.value + x * x * v->www.value;
    struct gas_side gas;
    gas.of = near_density(q, b, c);
    const double d = gas.of.density, near = gas.of.near;
    gas.by_density = 1 + near * (2 * b + 3 * near * c);
    gas.second = second;
    gas.third = third;
    gas.log_fugacity = d * (2 * second + 1.5 * d * third);
    return gas;
}

/* What it takes from the condensate at its vapour's saturation pressure. */
struct condensed_side {
    double pure; /* Pa */
    struct near_density of;
    double log_fugacity, near_log_fugacity;
    struct virial volume;
};

static ALWAYS_INLINE struct condensed_side condensed_side(const struct virials *v, double pure, struct virial volume, double pressure, double per_rt)
{
    struct condensed_side c;
    c.pure = pure;
    c.of = near_density(pure * per_rt, v->ww.value, v->www.value);
    c.volume = volume;
    c.log_fugacity = condensate_log_fugacity(pure, c.of.density, pressure, per_rt, c.volume.value, v);
    c.near_log_fugacity = condensate_log_fugacity(pure, c.of.near, pressure, per_rt, c.volume.value, v);
    return c;
}

/* ln of the fugacity that water has in the gas over that in the condensate. */
static ALWAYS_INLINE double log_excess(const struct gas_side *g, const struct condensed_side *c, double x)
{
    const double change = (g->of.log_share - c->of.log_share) + (g->log_fugacity - c->log_fugacity);
    return log_of_neighbours(x * g->of.near, c->of.near) + change;
}

/* Slope of ln x + ln density + log_fugacity by ln x at constant pressure and temperature, times d q/d density, less that. */
static ALWAYS_INLINE double slope_by_fraction(const struct virials *v, const struct gas_side *g, double x)
{
    const double y = 1 - x, d = g->of.near;
    const double aaa = v->aaa.value, aaw = v->aaw.value, aww = v->aww.value, www = v->www.value;
    const double b_x = 2 * (g->second - (y * v->aa.value + x * v->aw.value));
    const double c_x = 3 * (x * x * (www - aww) + 2 * x * y * (aww - aaw) + y * y * (aaw - aaa));
    const double at_constant_density = 2 * (v->ww.value - v->aw.value) + 3 * d * (x * (www - aww) + y * (aww - aaw));
    return x * d * (at_constant_density * g->by_density - (b_x + d * c_x) * (1 + d * (2 * g->second + 3 * d * g->third)));
}

/* ln density/q + log_fugacity to the second order in q. */
static ALWAYS_INLINE double series_of_gas(double q, double b, double c, double second, double third)
{
    return q * (2 * second * (1 - q * b) - b + q * (1.5 * (b * b + third) - c));
}

/* The fraction by that series: without what vapour does to it, then with its slope in dry air, then with all. */
static ALWAYS_INLINE double fraction_start(const struct virials *v, double q, double per_q, const struct condensed_side *c)
{
    const double aa = v->aa.value, aw = v->aw.value, ww = v->ww.value;
    const double aaa = v->aaa.value, aaw = v->aaw.value, aww = v->aww.value, www = v->www.value;
    const double dry = series_of_gas(q, aa, aaa, aw, aaw);
    const double by_x = q * (2 * (ww - 2 * aw + aa) + 3 * q * (aww - 2 * aaw + aaa));
    const double wanted = c->near_log_fugacity - dry;
    const double without = c->of.near * per_q * (fabs(wanted) < 0.34 ? small_exponential(wanted) : exponential(wanted));
    /* x e^(by_x x) = without, from the series of its inverse */
    const double z = within(by_x * without, -0.2, 0.3);
    const double x = without * (1 - z * (1 - z * (1.5 - z * (8 / 3.0)))), y = 1 - x;
    const double moist = series_of_gas(q, mixed_second(aa, aw, ww, x), mixed_third(aaa, aaw, aww, www, x), y * aw + x * ww,
                                       y * y * aaw + 2 * x * y * aww + x * x * www);
    return x * (1 - (moist - dry - by_x * x) * (1 - by_x * x));
}

/* Newton on ln x with the next term of its series. The function rises with x, so an iterate that leaves 0..1 is brought back half way. */
double real_saturation_fraction(const struct real_temperature *t, double pressure, int32_t phase)
{
    const struct virials *v = &t->virials;
    const double pure = pure_saturation_pressure(t->temperature, phase), q = pressure / t->rt;
    if (pure >= pressure)
        return 1;
    const struct condensed_side c = condensed_side(v, pure, condensed_volume(t->temperature, phase), pressure, 1 / t->rt);
    double x = fraction_start(v, q, t->rt / pressure, &c);
    if (!(x > 0 && x < 0.5))
        x = pure / pressure;
    for (int i = 0; i < 40; i++) {
        const struct gas_side gas = gas_side(v, q, x);
        const double over = slope_by_fraction(v, &gas, x), per_slope = 1 / (gas.by_density + over);
        const double first = -log_excess(&gas, &c, x) * (gas.by_density * per_slope);
        const double step = within(first * (1 - 0.5 * over * per_slope * first), -1, 1);
        const int small = fabs(step) < 1e-3;
        const double next = x * (small ? 1 + step * (1 + step * (0.5 + step * (1 / 6.0))) : exp(step));
        x = next < 1 ? next : 0.5 * (1 + x);
        /* What is left of ln x is below 4 (step x)^2 and step^3 x. */
        if (fabs(step) * x < 1e-7 && fabs(step) * square(step) * x < 1e-14)
            break;
    }
    return x;
}

double rough_log_enhancement(double temperature, double pressure, double partial)
{
    const double cold = exp((310 - temperature) / 60), part = 3.1e-7 * partial / pressure;
    return (pressure - partial) * (1.6e-8 + (1.06e-8 + part) * cold);
}

/* The temperature at which the saturation pressure is e^-fall of what it is at another, by the shape of Magnus's formulas (WMO No. 8):
 * its error is half a percent of the way. */
static double lowered(double temperature, double fall, int32_t phase)
{
    const double pole = phase == PHASE_ICE ? 0.53 : 30.03, magnus = phase == PHASE_ICE ? 22.46 * 272.62 : 17.62 * 243.12;
    const double away = temperature - pole;
    return pole + away / (1 + fall * away / magnus);
}

static double distant_start(double pressure, double partial, int32_t phase)
{
    const double ideal = pure_saturation_temperature(partial, phase);
    return lowered(ideal, rough_log_enhancement(ideal, pressure, partial), phase);
}

/* Within 2e-4 K up to 1 MPa, by saturation_start.h. */
static ALWAYS_INLINE double saturation_start(double pressure, double partial, double x, int32_t phase)
{
    const int ice = phase == PHASE_ICE;
    const struct saturation_start *s = &saturation_starts[ice];
    const double logarithm = log(partial), y = (logarithm - s->middle) * s->per_half, y2 = y * y;
    if (!(fabs(y) < 1) || pressure > 2e6)
        return distant_start(pressure, partial, phase);
    const double p = 1e-6 * pressure, last = ice ? p * p : 1e-6 * partial;
    double c[4];
    for (int k = 0; k < 4; k++)
        c[k] = (s->factor[0][k] + p * s->factor[1][k]) + (x * s->factor[2][k] + last * s->factor[3][k]);
    double factor = 1e-6 * ((c[0] + c[1] * y) + y2 * ((c[2] + c[3] * y) + y2 * s->fifth));
    if (!ice) {
        /* how far from the triple point, to 1e-2 of the reach */
        const double l = logarithm - 6.4162 - 3.6e-8 * pressure;
        const double share = l * (1 + 0.0504 * l) / logarithm_by_share;
        const double left = larger(1 - fabs(share) * (triple_temperature / drawn_reach), 0);
        factor += drawn_factor * left * left * left;
    }
    return 1 / polynomial(s->reciprocal, 8, y - (pressure - partial) * s->per_half * factor);
}

/* One step towards the temperature at which x saturates: Newton in the reciprocal temperature, in which ln of the saturation pressure
 * is nearly straight, with the next term of its series. *first is the step of Newton alone, a share of the temperature. */
static ALWAYS_INLINE double saturation_step(double temperature, double pressure, double x, int32_t phase, double *first)
{
    const int ice = phase == PHASE_ICE;
    const double logarithm = log(temperature), per_rt = 1 / (gas_constant * temperature), y = 1 - x;
    const double pure = pure_saturation_pressure(temperature, phase);
    const double steepness = ice ? ice_steepness(temperature) : liquid_steepness(temperature);
    const struct virials v = virials_at(temperature, logarithm);
    const struct condensed_side c = condensed_side(&v, pure, condensed_volume(temperature, phase), pressure, per_rt);
    const struct gas_side gas = gas_side(&v, pressure * per_rt, x);

    /* T d/dT at constant pressure and fraction of gas and vapour, of the vapour along its saturation, and of the condensate. */
    const double b = mixed_second(v.aa.value + v.aa.first, v.aw.value + v.aw.first, v.ww.value + v.ww.first, x);
    const double bc = mixed_third(v.aaa.value + v.aaa.first, v.aaw.value + v.aaw.first, v.aww.value + v.aww.first, v.www.value + v.www.first, x);
    const double second = y * v.aw.first + x * v.ww.first;
    const double third = y * y * v.aaw.first + 2 * x * y * v.aww.first + x * x * v.www.first;
    const double d = gas.of.near, pd = c.of.near;
    const double of_ideal_gas = 1 + d * (2 * second + 1.5 * d * third);
    const double by_expansion = (1 + d * (b + d * bc)) * (1 + d * (2 * gas.second + 3 * d * gas.third)); /* by_density times it */
    const double of_vapour = -pd * (v.ww.value - v.ww.first + pd * (v.www.value - 0.5 * v.www.first))
                             + steepness * (pd * (v.ww.value + pd * v.www.value) - c.volume.value * c.pure * per_rt);
    const double over = (pressure - c.pure) * per_rt;
    const double of_condensate = (c.volume.first - c.volume.value) * over;
    const double enhancing = of_vapour - of_ideal_gas;
    const double per_slope = gas.by_density / ((steepness + enhancing + of_condensate) * gas.by_density + by_expansion);

    /* T d/dT of T slope: that of pure water as a straight line, the volume's as it is, the rest fading by e in 60 K. */
    const double bend = (ice ? 3.45 - 0.0142 * temperature : -7.9 + 0.0104 * temperature) + c.volume.second * over
                        + (enhancing + by_expansion) * (2 - temperature * (1 / 60.0));
    *first = -log_excess(&gas, &c, x) * per_slope;
    return temperature / (1 + *first * (fabs(*first) < 0.1 ? 1 + 0.5 * bend * per_slope * *first : 1));
}

double real_saturation_temperature(double pressure, double x, int32_t phase)
{
    const double floor_of_model = moist_temperature_min(VTX_AIR_REAL, pressure);
    const double lowest = phase == PHASE_ICE ? floor_of_model : larger(floor_of_model, SUPERCOOLED_TEMPERATURE_MIN);
    const double highest = phase == PHASE_ICE ? triple_temperature + 10 : MOIST_TEMPERATURE_MAX;
    const double unknown_bend = 1 + 2e-6 * pressure + 13 * x;
    double temperature = saturation_start(pressure, x * pressure, x, phase);
    for (int i = 0; i < 30; i++) {
        const double from = within(temperature, lowest, highest);
        double step;
        temperature = saturation_step(from, pressure, x, phase, &step);
        /* The next step would be unknown_bend/40 of this one's square, unless the bend that the liquid's volume has at 273.16 K lies between. */
        if (square(step) * unknown_bend < 6e-13 && (from < triple_temperature) == (temperature < triple_temperature))
            break;
        /* Beyond the range every step starts from the same end. */
        if (within(temperature, lowest, highest) == from)
            break;
    }
    return temperature;
}
