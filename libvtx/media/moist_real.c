/* Real moist air: the gas, its saturation over liquid and ice, and the two together. */
#include "moist_real.h"

static inline double mixture_density(const struct virials *v, double q, double x)
{
    return virial_density(q, mixed_second(v->aa.value, v->aw.value, v->ww.value, x),
                          mixed_third(v->aaa.value, v->aaw.value, v->aww.value, v->www.value, x));
}

struct real_gas real_gas(const struct real_temperature *t, double pressure, double x)
{
    const double y = 1 - x, log_t = t->logarithm;
    const struct ideal_part air = dry_air_ideal_part(t->temperature, log_t);
    const struct ideal_part water = water_ideal_part(t->temperature, log_t);
    const struct mixture_virials m = mixture_virials(&t->virials, x);
    const double b = m.b.value, bt = m.b.first, btt = m.b.second, c = m.c.value, ct = m.c.first, ctt = m.c.second;
    const double d = virial_density(pressure / t->rt, b, c);
    const double r = gas_constant, atmospheres = d * t->rt / standard_atmosphere;
    /* x ln x tends to 0 with x: no jump and no NaN at dry air or steam. */
    const double mixing = (y > 0 ? y * log(y * atmospheres) : 0) + (x > 0 ? x * log(x * atmospheres) : 0);
    const double pressure_t = r * d * (1 + d * (b + bt + d * (c + ct)));
    const double pressure_d = t->rt * (1 + d * (2 * b + 3 * d * c));
    const double molar_mass = y * moist_air_molar_mass + x * water_molar_mass;
    struct real_gas gas;
    gas.volume = 1 / d;
    gas.compressibility = pressure / (d * t->rt);
    gas.enthalpy = y * air.enthalpy + x * water.enthalpy + t->rt * d * (b - bt + d * (c - 0.5 * ct));
    gas.entropy = y * air.entropy + x * water.entropy - r * (mixing + d * (b + bt + 0.5 * d * (c + ct)));
    gas.cv = y * air.heat_capacity + x * water.heat_capacity - r * (1 + d * (2 * bt + btt + d * (ct + 0.5 * ctt)));
    gas.heat_capacity = gas.cv + t->temperature * square(pressure_t / d) / pressure_d;
    gas.sound_speed = sqrt(gas.heat_capacity / gas.cv * pressure_d / molar_mass);
    gas.joule_thomson = (t->temperature * pressure_t / (square(d) * pressure_d) - gas.volume) / gas.heat_capacity;
    return gas;
}

double real_density(const struct real_temperature *t, double pressure, double x)
{
    return mixture_density(&t->virials, pressure / t->rt, x);
}

double real_enthalpy(const struct real_temperature *t, double pressure, double x)
{
    const struct mixture_virials m = mixture_virials(&t->virials, x);
    const double d = virial_density(pressure / t->rt, m.b.value, m.c.value);
    return (1 - x) * ideal_enthalpy(dry_air_heat, air_enthalpy_zero, t->temperature)
           + x * ideal_enthalpy(water_heat, water_enthalpy_zero, t->temperature)
           + t->rt * d * (m.b.value - m.b.first + d * (m.c.value - 0.5 * m.c.first));
}

static ALWAYS_INLINE struct virial condensed_volume(double temperature, int32_t phase)
{
    return phase == PHASE_ICE ? ice_molar_volume(temperature) : liquid_molar_volume(temperature);
}

/* Liquid from 233.15 K, ice to 273.16 K. */
struct condensate real_condensate(const struct real_temperature *t, double pressure, int32_t phase)
{
    return condensate_at(phase == PHASE_ICE ? ice_saturation(t->temperature) : liquid_saturation(t->temperature), pressure,
                         t->temperature, condensed_volume(t->temperature, phase), &t->virials,
                         water_ideal_part(t->temperature, t->logarithm));
}

double real_condensate_enthalpy(const struct real_temperature *t, double pressure, int32_t phase)
{
    const struct saturation s = phase == PHASE_ICE ? ice_saturation(t->temperature) : liquid_saturation(t->temperature);
    const struct virial volume = condensed_volume(t->temperature, phase);
    const double density = virial_density(s.pressure / t->rt, t->virials.ww.value, t->virials.www.value);
    return condensate_enthalpy(s, density, pressure, t->temperature, volume, &t->virials,
                               ideal_enthalpy(water_heat, water_enthalpy_zero, t->temperature));
}

/* Slope of ln x + ln density + water_log_fugacity by ln x at constant pressure and temperature. */
static double fugacity_slope(const struct virials *v, double density, double x)
{
    const double y = 1 - x;
    const double aa = v->aa.value, aw = v->aw.value, ww = v->ww.value;
    const double aaa = v->aaa.value, aaw = v->aaw.value, aww = v->aww.value, www = v->www.value;
    const double b = mixed_second(aa, aw, ww, x), c = mixed_third(aaa, aaw, aww, www, x);
    const double b_x = 2 * (x * ww + (y - x) * aw - y * aa);
    const double c_x = 3 * (x * x * (www - aww) + 2 * x * y * (aww - aaw) + y * y * (aaw - aaa));
    const double density_x = -density * density * (b_x + density * c_x) / (1 + density * (2 * b + 3 * density * c));
    const double second = y * aw + x * ww, third = y * y * aaw + 2 * x * y * aww + x * x * www;
    const double at_constant_density = density * (2 * (ww - aw) + 3 * density * (x * (www - aww) + y * (aww - aaw)));
    return 1 + x * (density_x * (1 / density + 2 * second + 3 * density * third) + at_constant_density);
}

/* The fraction if there were so little vapour that the gas is dry air, from the reversed series of its density. */
static double dilute_fraction(const struct virials *v, double q, double pure_density, double wanted)
{
    const double density = q * (1 - q * (v->aa.value + q * (v->aaa.value - 2 * square(v->aa.value))));
    return pure_density / density * exp(wanted - water_log_fugacity(v, density, 0));
}

/* Newton on ln x. The function rises with x, so an iterate that leaves 0..1 is brought back half way. */
double real_saturation_fraction(const struct real_temperature *t, double pressure, int32_t phase)
{
    const struct virials *v = &t->virials;
    const double pure = pure_saturation_pressure(t->temperature, phase), q = pressure / t->rt;
    if (pure >= pressure)
        return 1;
    const double pure_density = virial_density(pure / t->rt, v->ww.value, v->www.value);
    const double wanted = condensate_log_fugacity(pure, pure_density, pressure, t->rt, condensed_volume(t->temperature, phase).value, v);
    double x = dilute_fraction(v, q, pure_density, wanted);
    if (!(x < 0.5))
        x = pure / pressure;
    for (int i = 0; i < 40; i++) {
        const double density = mixture_density(v, q, x);
        const double excess = log(x * density / pure_density) + water_log_fugacity(v, density, x) - wanted;
        const double step = within(-excess / fugacity_slope(v, density, x), -1, 1);
        /* The next one would be less than its square; the exponential's series is complete then. */
        const int last = fabs(step) < 1e-6;
        const double next = x * (last ? 1 + step * (1 + 0.5 * step) : exp(step));
        x = next < 1 ? next : 0.5 * (1 + x);
        if (last)
            break;
    }
    return x;
}

/* The enhancement factor that the fraction x would have if it were the saturated one. */
static double enhancement(double temperature, double pressure, double x, int32_t phase)
{
    const struct real_temperature t = real_temperature(temperature);
    const struct virials *v = &t.virials;
    const double pure = pure_saturation_pressure(temperature, phase);
    const double pure_density = virial_density(pure / t.rt, v->ww.value, v->www.value);
    const double density = mixture_density(v, pressure / t.rt, x);
    const double condensed = condensate_log_fugacity(pure, pure_density, pressure, t.rt, condensed_volume(temperature, phase).value, v);
    return pure_density * pressure / (density * pure) * exp(condensed - water_log_fugacity(v, density, x));
}

/* ln of the enhancement factor near a temperature, within a few hundredths of it: for starts. */
static double rough_log_enhancement(double temperature, double pressure, double partial, double *slope)
{
    const double cold = exp((310 - temperature) / 60), part = 3.1e-7 * partial / pressure;
    *slope = -(pressure - partial) * (1.06e-8 + part) * cold / 60;
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

/* The temperature of a saturation pressure, which the enhancement factor lowers by a few kelvin at most and changes with slowly: a
 * fixed point that contracts a hundredfold a step or more, sped up by its own rate (Aitken). Start and first rate come from the rough factor. */
double real_saturation_temperature(double pressure, double x, int32_t phase)
{
    const double partial = x * pressure;
    const double lowest = moist_temperature_min(VTX_AIR_REAL, pressure);
    const double ideal = pure_saturation_temperature(partial, phase);
    double slope;
    const double log_factor = rough_log_enhancement(ideal, pressure, partial, &slope);
    double temperature = lowered(ideal, log_factor, phase);
    double rate = -slope * square(temperature) / 5500, change_before = 0, before = temperature;
    for (int i = 0; i < 30; i++) {
        const double from = within(temperature, lowest, MOIST_TEMPERATURE_MAX);
        const double next = pure_saturation_temperature(partial / enhancement(from, pressure, x, phase), phase);
        const double change = next - from;
        /* With the correction of the last step in it the second change shows how wrong the first rate was. */
        if (i == 1 && change_before != 0)
            rate = within(rate + (1 - rate) * change / change_before, -0.5, 0.5);
        temperature = next + change * rate / (1 - rate);
        /* Then what is left is of second order, from 200 K on less than 1e-10 of the pressure in Pa times the two changes, unless the
         * bend that the liquid's volume has at 273.16 K lies between. */
        const int bent = (before < triple_temperature) != (temperature < triple_temperature)
                         || (from < triple_temperature) != (before < triple_temperature);
        if (fabs(change) < 1e-8 || (i == 1 && !bent && from > 200 && fabs(change * change_before) * pressure < 0.02))
            break;
        change_before = change;
        before = from;
    }
    return temperature;
}

/* Per kg of dry air: gas with the fraction x and, beyond it, condensate of one phase. */
void real_mixture(const struct real_temperature *t, double pressure, double total_water, double x, int32_t phase,
                  struct moist_mixture *out)
{
    const struct real_gas gas = real_gas(t, pressure, x);
    const double air = (1 - x) * moist_air_molar_mass;
    const double gas_mass = air + x * water_molar_mass;
    memset(out, 0, sizeof *out);
    out->pressure = pressure;
    out->temperature = t->temperature;
    out->total_water = total_water;
    out->vapour_fraction = x;
    out->humidity_ratio = phase == PHASE_NONE ? total_water : x * water_molar_mass / air;
    out->enthalpy = gas.enthalpy / air;
    out->entropy = gas.entropy / air;
    out->gas_volume = gas.volume / air;
    out->volume = out->gas_volume;
    out->heat_capacity = gas.heat_capacity / air;
    out->gas_heat_capacity = gas.heat_capacity / gas_mass;
    out->sound_speed = gas.sound_speed;
    out->compressibility = gas.compressibility;
    out->phase = phase;
    out->advisories = moist_extrapolated(pressure, t->temperature);
    if (phase == PHASE_NONE)
        return;
    const struct condensate c = real_condensate(t, pressure, phase);
    const double condensed = total_water - out->humidity_ratio, moles = condensed / water_molar_mass;
    out->condensed = condensed;
    out->frozen_share = phase == PHASE_ICE;
    out->enthalpy += moles * c.enthalpy;
    out->entropy += moles * c.entropy;
    out->volume += moles * c.volume;
    out->heat_capacity += moles * c.heat_capacity;
    out->advisories |= phase == PHASE_ICE ? VTX_ADVISORY_FREEZING : VTX_ADVISORY_CONDENSING;
}
