/* Tubes whose truth is known, and what instruments read of them. */
#include "synthetic.h"

/* Also used outside a test run, where assertions cannot be counted. */
static void must_work(vtx_status status)
{
    if (status != VTX_OK) {
        fprintf(stderr, "synthetic readings: %s\n", vtx_status_text(status));
        abort();
    }
}

struct plan usual_plan(void)
{
    const struct plan p = { .count = 12, .fraction_low = 0.2, .fraction_high = 0.8, .pressure_a = 4e5, .pressure_b = 7e5,
                            .cold_pressure_low = 1.01e5, .cold_pressure_high = 1.2e5,
                            .temperature_u = 0.5, .pressure_share_u = 0.005, .fraction_u = 0.01 };
    return p;
}

void draw_truth(struct random_state *r, int kind, struct truth *t)
{
    double odds;
    do
        odds = -0.9445 + 0.4172 * random_normal(r);
    while (odds > 0.2); /* above 0.55 no tube was ever seen */
    t->kind = kind;
    t->model = VTX_AIR_IDEAL;
    must_work(vtx_tube_init(&t->tube));
    t->tube.peak_efficiency = 1 / (1 + exp(-odds));
    t->tube.efficiency_low = t->tube.efficiency_high = t->tube.peak_efficiency;
    do
        t->tube.coldest_fraction = 0.3 + 0.078 * random_normal(r);
    while (t->tube.coldest_fraction < 0.12 || t->tube.coldest_fraction > 0.45);
    do
        t->tube.pressure_exponent = 0.234 * random_normal(r);
    while (fabs(t->tube.pressure_exponent) > 0.9);
    t->tube.hot_leak = random_uniform(r, 0, 1) < 0.5 ? 0 : 0.031 * fabs(random_normal(r));
    t->strength = random_uniform(r, 0.5, 1.5);
}

static double family_shape(double m, double mu) { return 1 - (mu - m) * (mu - m) / ((1 - m) * (1 - m)); }

/* (1 - mu)(a + b mu + c mu^2), 1 and flat at m; c 0 is the family, 0.375 gives 0.85 at mu = 0 for m = 0.3. */
static double cubic_shape(double m, double mu, double c)
{
    const double b = 1 / ((1 - m) * (1 - m)) - 2 * c * m, a = 1 / (1 - m) - b * m - c * m * m;
    return (1 - mu) * (a + b * mu + c * mu * mu);
}

void true_outlets(const struct truth *t, double inlet_pressure, double inlet_temperature, double cold_pressure, double hot_pressure,
                  double cold_fraction, double *cold, double *hot)
{
    vtx_tube tube = t->tube;
    vtx_streams streams;
    const double m = tube.coldest_fraction, ratio = inlet_pressure / cold_pressure;
    double factor = 1;
    if (t->kind == TRUTH_CUBIC)
        factor = cubic_shape(m, cold_fraction, 0.375 * t->strength) / family_shape(m, cold_fraction);
    else if (t->kind == TRUTH_SAG)
        factor = 1 - 0.15 * t->strength * log(ratio / 5) * log(ratio / 5);
    else if (t->kind == TRUTH_LEAK) {
        tube.cold_leak = 0.01 * t->strength;
        tube.hot_leak = 0.03 * t->strength * 5e5 / inlet_pressure;
    }
    tube.peak_efficiency = fmin(factor * tube.peak_efficiency, 0.9);
    tube.efficiency_low = tube.efficiency_high = tube.peak_efficiency;
    must_work(vtx_tube_separate(&tube, t->model, inlet_pressure, inlet_temperature, 0, cold_pressure, hot_pressure, cold_fraction, &streams));
    *cold = streams.cold_temperature;
    *hot = streams.hot_temperature;
}

void draw_reading(struct random_state *r, const struct truth *t, const struct plan *p, double inlet_pressure, double cold_fraction,
                  vtx_reading *x)
{
    const double p0 = inlet_pressure, t0 = random_uniform(r, 290, 300), pc = random_uniform(r, p->cold_pressure_low, p->cold_pressure_high), ph = 101325;
    double cold, hot;
    true_outlets(t, p0, t0, pc, ph, cold_fraction, &cold, &hot);
    must_work(vtx_reading_init(x));
    x->inlet_pressure_uncertainty = p->pressure_share_u * p0;
    x->inlet_pressure = p0 + x->inlet_pressure_uncertainty * random_normal(r);
    x->inlet_temperature_uncertainty = x->cold_temperature_uncertainty = x->hot_temperature_uncertainty = p->temperature_u;
    x->inlet_temperature = t0 + p->temperature_u * random_normal(r);
    x->cold_pressure_uncertainty = p->pressure_share_u * pc;
    x->cold_pressure = pc + x->cold_pressure_uncertainty * random_normal(r);
    x->hot_pressure_uncertainty = p->pressure_share_u * ph;
    x->hot_pressure = ph + x->hot_pressure_uncertainty * random_normal(r);
    x->cold_temperature = cold + p->temperature_u * random_normal(r);
    x->hot_temperature = hot + p->temperature_u * random_normal(r);
    x->cold_fraction_uncertainty = p->fraction_u;
    x->cold_fraction = cold_fraction + p->fraction_u * random_normal(r);
    x->ambient_temperature = t->tube.ambient_temperature;
}

void draw_readings(struct random_state *r, const struct truth *t, const struct plan *p, vtx_reading *readings)
{
    for (size_t i = 0; i < p->count; i++) {
        const double place = p->count > 1 ? (double)i / (double)(p->count - 1) : 0.5;
        draw_reading(r, t, p, i % 2 ? p->pressure_b : p->pressure_a, p->fraction_low + place * (p->fraction_high - p->fraction_low), &readings[i]);
    }
}
