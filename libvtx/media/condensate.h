/* Liquid water and ice as the condensed phase of real moist air. Internal.
 *
 * Their Gibbs energy starts from the vapour's at the saturation pressure and rises with pressure by their volume, so that
 * enthalpy, entropy and equilibrium follow from one function and the second law holds through every change of phase. */
#ifndef VTX_CONDENSATE_H
#define VTX_CONDENSATE_H

#include "virials.h"
#include "water_kernel.h"

/* m3/mol by which pressure lifts the chemical potential, with T d/dT and T^2 d2/dT2. Compressibility is left out: 7e-6 of the
 * vapour content at 2 MPa. */

/* Fit by build-aux/fit_media to the volume of ice of IAPWS R10-06 at 1 MPa, 100 to 273.16 K: 1.4e-5 of it. */
static ALWAYS_INLINE struct virial ice_molar_volume(double temperature)
{
    const double x = 0.01 * temperature;
    struct virial v = { 19.36572474e-6, 0, 0 };
    add_power(&v, -0.1804494627e-6 * x, -1);
    add_power(&v, 0.1311894319e-6 * square(x), -2);
    add_power(&v, -0.009902365018e-6 * square(x) * x, -3);
    return v;
}

/* Fit by build-aux/fit_media, 253 to 473 K, to the volume of IAPWS SR1-86 less RT / Henry's constant of air (IAPWS G7-04), which is what the dissolved
 * air of air-saturated water takes off: 3.5e-4 of it. Held below 233.15 K, where only metastable vapour refers to it. */
static ALWAYS_INLINE struct virial aerated_water_molar_volume(double temperature)
{
    static const double c[6] = { -50.66788702e-6, 90.7330118e-6, -48.33915281e-6, 12.8038663e-6, -1.673940695e-6, 0.08701549607e-6 };
    const double x = 0.01 * larger(temperature, SUPERCOOLED_TEMPERATURE_MIN);
    const double moving = temperature >= SUPERCOOLED_TEMPERATURE_MIN;
    struct virial v = { 0, 0, 0 };
    double power = 1;
    for (int k = 0; k < 6; k++, power *= x) {
        v.value += c[k] * power;
        v.first += moving * k * c[k] * power;
        v.second += moving * k * (k - 1) * c[k] * power;
    }
    return v;
}

/* Ice and liquid are to coexist at 273.16 K under every pressure, where nature lets pressure and dissolved air lower the melting point
 * by 0.01 K per atmosphere. What stands against it is the difference of their volumes times the pressure, 120 J/kg at 1 MPa. */
static ALWAYS_INLINE double melting_volume(void)
{
    return ice_molar_volume(triple_temperature).value - aerated_water_molar_volume(triple_temperature).value;
}

/* A volume that is larger by draw at 273.16 K and less so away from it, within the reach. */
static ALWAYS_INLINE struct virial drawn_near_melting(struct virial v, double temperature, double draw, double reach)
{
    const double away = (temperature - triple_temperature) / reach, ratio = temperature / reach;
    const double left = larger(1 - fabs(away), 0);
    v.value += draw * left * left * left;
    v.first += draw * (away < 0 ? 3 : -3) * square(left) * ratio;
    v.second += draw * 6 * left * square(ratio);
    return v;
}

/* In saturation the liquid is drawn to the ice, within a reach that leaves ice the stable one below 273.16 K up to 5 MPa: at 0 degC its
 * vapour content differs from the undisturbed one by 7.5e-4 at 0.8 MPa, at 1 degC by 3e-5. */
static const double drawn_reach = 1.5;

static ALWAYS_INLINE struct virial liquid_molar_volume(double temperature)
{
    return drawn_near_melting(aerated_water_molar_volume(temperature), temperature, melting_volume(), drawn_reach);
}

/* In energy and entropy both meet half way, the ice at every temperature, the liquid fading out within 60 K, which gives it 0.7 kJ/kg
 * at 0.8 MPa; as short a reach as above would give it 26 kJ/kg. If they did not meet, freezing would lose 0.44 J/(kg K) at 1 MPa.
 * Vapour and condensate in equilibrium so differ in Gibbs energy by half of those 120 J/kg. */
static inline struct virial caloric_ice_volume(double temperature)
{
    struct virial v = ice_molar_volume(temperature);
    v.value -= 0.5 * melting_volume();
    return v;
}

static inline struct virial caloric_liquid_volume(double temperature)
{
    return drawn_near_melting(aerated_water_molar_volume(temperature), temperature, 0.5 * melting_volume(), 60);
}

/* ln of the fugacity of the condensate, over that of ideal vapour of the density at saturation, mol/m3. */
static inline double condensate_log_fugacity(double saturation_pressure, double density, double pressure, double per_rt, double volume,
                                             const struct virials *v)
{
    return density * (2 * v->ww.value + 1.5 * density * v->www.value) + volume * (pressure - saturation_pressure) * per_rt;
}

/* J/mol, J/(mol K), m3/mol, J/(mol K). */
struct condensate {
    double enthalpy;
    double entropy;
    double volume;
    double heat_capacity;
};

/* From g(T, p) = g of the vapour at saturation + volume (p - saturation pressure), by differentiation. */
static inline double condensate_enthalpy(struct saturation s, double density, double pressure, double temperature,
                                         struct virial volume, const struct virials *v, double ideal_vapour_enthalpy)
{
    const double rt = gas_constant * temperature, d = density;
    const double vapour = ideal_vapour_enthalpy + rt * d * (v->ww.value - v->ww.first + d * (v->www.value - 0.5 * v->www.first));
    return vapour - temperature * (1 / d - volume.value) * s.slope + (volume.value - volume.first) * (pressure - s.pressure);
}

static inline struct condensate condensate_at(struct saturation s, double pressure, double temperature, struct virial volume,
                                              const struct virials *v, struct ideal_part ideal)
{
    const double rt = gas_constant * temperature, q = s.pressure / rt, over = pressure - s.pressure;
    const double b = v->ww.value, bt = v->ww.first, btt = v->ww.second;
    const double c = v->www.value, ct = v->www.first, ctt = v->www.second;
    const double d = virial_density(q, b, c), heated = 1 + d * (b + bt + d * (c + ct));
    const double yielding = 1 / (1 + d * (2 * b + 3 * d * c));
    const double vapour_entropy = ideal.entropy - gas_constant * (log(d * rt / standard_atmosphere) + d * (b + bt + 0.5 * d * (c + ct)));
    const double vapour_cv = ideal.heat_capacity - gas_constant * (1 + d * (2 * bt + btt + d * (ct + 0.5 * ctt)));
    const double vapour_cp = vapour_cv + gas_constant * square(heated) * yielding;
    const double vapour_first = heated * yielding / d;   /* T dv/dT */
    const double vapour_fall = q * yielding / square(d); /* -p dv/dp */
    const double gap = 1 / d - volume.value;
    struct condensate condensate;
    condensate.volume = volume.value;
    condensate.entropy = vapour_entropy - gap * s.slope - volume.first / temperature * over;
    condensate.enthalpy = condensate_enthalpy(s, d, pressure, temperature, volume, v, ideal.enthalpy);
    condensate.heat_capacity = vapour_cp + 2 * (volume.first - vapour_first) * s.slope
                               + temperature * (vapour_fall * square(s.slope) / s.pressure - gap * s.curvature)
                               - volume.second * over / temperature;
    return condensate;
}

#endif
