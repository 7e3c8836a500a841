/* Virial coefficients of dry air, water and their mixture, and the ideal-gas parts that go with them. Internal. */
#ifndef VTX_VIRIALS_H
#define VTX_VIRIALS_H

#include "../base/elementary.h"
#include "constants.h"

/* A coefficient with its derivatives made plain numbers of the same unit: value, T d/dT, T^2 d2/dT2. */
struct virial {
    double value;
    double first;
    double second;
};

/* m3/mol and m6/mol2; a is dry air, w is water. */
struct virials {
    struct virial aa, aw, ww;
    struct virial aaa, aaw, aww, www;
};

/* Adds n x^k, x = reference temperature / T, given as its value. */
static ALWAYS_INLINE void add_power(struct virial *sum, double term, double exponent)
{
    sum->value += term;
    sum->first -= exponent * term;
    sum->second += exponent * (exponent + 1) * term;
}

static ALWAYS_INLINE struct virial scaled(struct virial v, double factor)
{
    const struct virial product = { v.value * factor, v.first * factor, v.second * factor };
    return product;
}

/* Broken powers of 217.5 K / temperature, in the middle of the range: exponentials that are small from 92 to 515 K. */
struct broken_powers {
    double by_0_01, by_0_048, by_0_183, by_0_237, by_0_33, by_minus_0_4;
};

static ALWAYS_INLINE struct broken_powers broken_powers(double log_temperature)
{
    const double logarithm = 5.382198850528739 - log_temperature; /* ln 217.5 */
    struct broken_powers p;
    two_small_exponentials(0.33 * logarithm, -0.4 * logarithm, &p.by_0_33, &p.by_minus_0_4);
    two_small_exponentials(0.01 * logarithm, 0.048 * logarithm, &p.by_0_01, &p.by_0_048);
    two_small_exponentials(0.183 * logarithm, 0.237 * logarithm, &p.by_0_183, &p.by_0_237);
    return p;
}

/* Lemmon, Jacobsen, Penoncello, Friend 2000: the terms of the residual Helmholtz energy that are left at low density. What stands
 * before the powers makes them powers of tau: (132.6312/217.5)^0.33 and so on. */
static ALWAYS_INLINE void dry_air_virials(double temperature, const struct broken_powers *p, struct virials *v)
{
    const double density = 10447.7;
    const double tau = 132.6312 / temperature, tau2 = square(tau);
    const double tau_1_6 = 1.2187802975323613 * tau2 * p->by_minus_0_4;
    struct virial b = { 0.118160747229, 0, 0 };
    struct virial c = { 0.0714140178971, 0, 0 };
    add_power(&b, 0.0148287891978 * tau2 * tau * sqrt(tau), 3.5);
    add_power(&b, 0.713116392079 * 0.8493985679228914 * p->by_0_33, 0.33);
    add_power(&b, -1.61824192067 * 0.9950659475617481 * tau * p->by_0_01, 1.01);
    add_power(&b, -0.101365037912 * tau_1_6, 1.6);
    add_power(&b, -0.146629609713 * tau2 * tau_1_6, 3.6);
    add_power(&c, 0.101365037912 * tau_1_6, 1.6);
    v->aa = scaled(b, 1 / density);
    v->aaa = scaled(c, 2 / square(density));
}

/* IAPWS R6-95(2018), table 2: what is left of the residual Helmholtz energy at low density. The terms 55 and 56 carry exp(-28)
 * and exp(-32) there and are left out. So is the fourth coefficient, as in ASHRAE RP-1485: bench/accuracy.md says what it would do. */
static ALWAYS_INLINE void water_virials(double temperature, struct virials *v)
{
    const double density = 322 / water_molar_mass;
    const double t = 647.096 / temperature;
    const double t_1_2 = sqrt(t), t_1_4 = sqrt(t_1_2), t_1_8 = sqrt(t_1_4);
    const double t2 = square(t), t4 = square(t2), t6 = t4 * t2, t12 = square(t6);
    const double n8 = -0.66856572307965 * t4, n9 = 0.20433810950965 * t6, n10 = -0.66212605039687e-4 * t12;
    struct virial b = { 0, 0, 0 };
    struct virial c = { 0, 0, 0 };
    add_power(&b, 0.12533547935523e-1 / t_1_2, -0.5);
    add_power(&b, 0.78957634722828e1 * t / t_1_8, 0.875);
    add_power(&b, -0.87803203303561e1 * t, 1);
    add_power(&b, n8, 4);
    add_power(&b, n9, 6);
    add_power(&b, n10, 12);
    add_power(&b, -0.10793600908932 * t6 * t, 7);
    add_power(&c, 0.31802509345418 * t_1_2, 0.5);
    add_power(&c, -0.26145533859358 * t_1_2 * t_1_4, 0.75);
    add_power(&c, (-0.19232721156002 + 0.17611491008752e-1) * t, 1);
    add_power(&c, -0.25709043003438 * t4 * t, 5);
    add_power(&c, 0.22132295167546 * t4 * t4 * t, 9);
    add_power(&c, -0.40247669763528 * t4 * t6, 10);
    add_power(&c, -n8, 4);
    add_power(&c, -n9, 6);
    add_power(&c, -n10, 12);
    v->ww = scaled(b, 1 / density);
    v->www = scaled(c, 2 / square(density));
}

/* Second cross virial: Harvey and Huang 2007, with (100/217.5)^0.237 and so on before the powers. Third ones: Hyland and Wexler 1983. */
static ALWAYS_INLINE void cross_virials(double temperature, const struct broken_powers *p, struct virials *v)
{
    const double u = 100 / temperature;
    const double u2 = square(u), u3 = u2 * u;
    const double exponent = -10.728876 + 34.7802 * u - 38.3383 * u2 + 33.406 * u3;
    struct virial b = { 0, 0, 0 };
    struct virial c = { 0.482737e-9, 0, 0 };
    add_power(&b, 66.5687e-6 * 0.8318062037349228 * p->by_0_237, 0.237);
    add_power(&b, -238.834e-6 * 0.9633896038988552 * u * p->by_0_048, 1.048);
    add_power(&b, -176.755e-6 * 0.8674510063282413 * u3 * p->by_0_183, 3.183);
    add_power(&c, 0.105678e-8 * u, 1);
    add_power(&c, -0.656394e-8 * u2, 2);
    add_power(&c, 0.294442e-7 * u3, 3);
    add_power(&c, -0.319317e-7 * square(u2), 4);
    v->aw = b;
    v->aaw = c;
    const double slope = -34.7802 * u + 2 * 38.3383 * u2 - 3 * 33.406 * u3;
    const double bend = 2 * 34.7802 * u - 6 * 38.3383 * u2 + 12 * 33.406 * u3;
    v->aww.value = -1e-6 * exponential(exponent);
    v->aww.first = v->aww.value * slope;
    v->aww.second = v->aww.value * (square(slope) + bend);
}

static ALWAYS_INLINE struct virials virials_at(double temperature, double log_temperature)
{
    struct virials v;
    water_virials(temperature, &v);
    const struct broken_powers p = broken_powers(log_temperature);
    dry_air_virials(temperature, &p, &v);
    cross_virials(temperature, &p, &v);
    return v;
}

/* The virials of a mixture that holds the mole fraction x of water. */
struct mixture_virials {
    struct virial b, c;
};

static ALWAYS_INLINE double mixed_second(double aa, double aw, double ww, double x)
{
    const double y = 1 - x;
    return y * y * aa + 2 * x * y * aw + x * x * ww;
}

static ALWAYS_INLINE double mixed_third(double aaa, double aaw, double aww, double www, double x)
{
    const double y = 1 - x;
    return y * y * (y * aaa + 3 * x * aaw) + x * x * (3 * y * aww + x * www);
}

static ALWAYS_INLINE struct mixture_virials mixture_virials(const struct virials *v, double x)
{
    struct mixture_virials m;
    m.b.value = mixed_second(v->aa.value, v->aw.value, v->ww.value, x);
    m.b.first = mixed_second(v->aa.first, v->aw.first, v->ww.first, x);
    m.b.second = mixed_second(v->aa.second, v->aw.second, v->ww.second, x);
    m.c.value = mixed_third(v->aaa.value, v->aaw.value, v->aww.value, v->www.value, x);
    m.c.first = mixed_third(v->aaa.first, v->aaw.first, v->aww.first, v->www.first, x);
    m.c.second = mixed_third(v->aaa.second, v->aaw.second, v->aww.second, v->www.second, x);
    return m;
}

/* q = rho + B rho^2 + C rho^3 reversed: from its series, to the fifth order. */
static ALWAYS_INLINE double virial_density_start(double q, double b, double c)
{
    const double u = b * q, w = c * q * q, uu = u * u;
    return u > -0.2 ? q * (1 - u + (2 * uu - w) + u * (5 * w - 5 * uu) + (uu * (14 * uu - 21 * w) + 3 * w * w)) : q / (1 + u);
}

/* The share by which a density is too high, by Newton. */
static ALWAYS_INLINE double virial_density_step(double density, double q, double b, double c)
{
    return (((c * density + b) * density + 1) * density - q) / (((3 * c * density + 2 * b) * density + 1) * density);
}

/* Molar density, mol/m3, of the gas whose pressure over RT is q. Within the ranges that the public functions accept, the cubic rises
 * all the way from 0 to the root. */
static inline double virial_density(double q, double b, double c)
{
    double density = virial_density_start(q, b, c);
    for (int i = 0; i < 12; i++) {
        const double step = virial_density_step(density, q, b, c);
        density -= density * step;
        /* the next one would be its square times b q, which is below 0.2 */
        if (fabs(step) < 3e-7)
            break;
    }
    return density;
}

/* ln of water's fugacity over that of ideal vapour of the same partial density: 2 sum_j y_j B_wj density and
 * 3/2 sum_jk y_j y_k C_wjk density^2. */
static inline double water_log_fugacity(const struct virials *v, double density, double x)
{
    const double y = 1 - x;
    const double second = y * v->aw.value + x * v->ww.value;
    const double third = y * y * v->aaw.value + 2 * x * y * v->aww.value + x * x * v->www.value;
    return density * (2 * second + 1.5 * density * third);
}

/* Ideal-gas parts of one component: J/mol, J/(mol K) at the standard atmosphere's pressure, J/(mol K). */
struct ideal_part {
    double enthalpy;
    double entropy;
    double heat_capacity;
};

/* cp/R = sum c_k x^k in x = T/100 K with its integrals: (1/x) integral of it dx, and integral of (it - c_0)/x dx, over x. */
enum { HEAT_TERMS = 9 };
struct heat_series {
    _Alignas(16) double heat[12];
    _Alignas(16) double enthalpy[12];
    _Alignas(16) double entropy[8];
};

#define HEAT_SERIES(c0, c1, c2, c3, c4, c5, c6, c7, c8) \
    { \
        { c0, c1, c2, c3, c4, c5, c6, c7, c8, 0, 0, 0 }, \
        { c0, (c1) / 2, (c2) / 3, (c3) / 4, (c4) / 5, (c5) / 6, (c6) / 7, (c7) / 8, (c8) / 9, 0, 0, 0 }, \
        { c1, (c2) / 2, (c3) / 3, (c4) / 4, (c5) / 5, (c6) / 6, (c7) / 7, (c8) / 8 } \
    }

/* Fitted by build-aux/fit_media to the ideal part of Lemmon and others 2000 from 110 to 480 K: 1.2e-6 R, 1e-5 R at 100 K. */
static const struct heat_series dry_air_heat =
    HEAT_SERIES(3.494609956, -0.008125277654, 0.005624976101, 0.001866672835, -0.004289794223, 0.002174876615, -0.0004768822962,
                5.002365711e-05, -2.083976778e-06);

/* The same for the ideal part of IAPWS R6-95, from 110 to 480 K: 1.4e-5 R. */
static const struct heat_series water_heat =
    HEAT_SERIES(4.037138025, -0.08632183426, 0.08282268754, -0.02238127059, -0.0128755378, 0.01089753706, -0.002988120647,
                0.0003707736567, -1.773264243e-05);

/* Integration constants over R: K and -. The real gas at 273.15 K and 101325 Pa is zero; so is liquid water in equilibrium with its
 * vapour at the triple point. A test holds them to that. */
static const double air_enthalpy_zero = -952.9951088676056;
static const double air_entropy_zero = -19.5940955540168;
static const double water_enthalpy_zero = 4323.862808225197;
static const double water_entropy_zero = -7.8365348971560955;

/* J/mol, the enthalpy alone. */
static inline double ideal_enthalpy(const struct heat_series *c, double enthalpy_zero, double temperature)
{
    return gas_constant * (polynomial(c->enthalpy, HEAT_TERMS, 0.01 * temperature) * temperature + enthalpy_zero);
}

static inline struct ideal_part ideal_part(const struct heat_series *c, double enthalpy_zero, double entropy_zero, double temperature,
                                           double log_temperature)
{
    const double x = 0.01 * temperature;
    struct ideal_part part;
    part.heat_capacity = gas_constant * polynomial(c->heat, HEAT_TERMS, x);
    part.enthalpy = ideal_enthalpy(c, enthalpy_zero, temperature);
    part.entropy = gas_constant * (polynomial(c->entropy, HEAT_TERMS - 1, x) * x + c->heat[0] * log_temperature + entropy_zero);
    return part;
}

static inline struct ideal_part dry_air_ideal_part(double temperature, double log_temperature)
{
    return ideal_part(&dry_air_heat, air_enthalpy_zero, air_entropy_zero, temperature, log_temperature);
}

static inline struct ideal_part water_ideal_part(double temperature, double log_temperature)
{
    return ideal_part(&water_heat, water_enthalpy_zero, water_entropy_zero, temperature, log_temperature);
}

#endif
