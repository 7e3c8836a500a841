/* Calibration on synthetic readings whose truth is known. */
#include <fenv.h>

#include "../../libvtx/tube/known_leak.h"
#include "synthetic.h"

enum { MANY = 101 };

/* Draws decide how sharp a bound on a share can be: four standard deviations beyond it. */
static void expect_share(const struct coverage *c, double low, double high, const char *what)
{
    char text[200];
    const double n = c->tried, share = c->held / n;
    const double below = low - 4 * sqrt(low * (1 - low) / n), above = high + 4 * sqrt(high * (1 - high) / n);
    snprintf(text, sizeof text, "%s: %.1f %% of %d, wanted %.0f to %.0f %%", what, 100 * share, c->tried, 100 * low, 100 * high);
    expect_true(share >= below && share <= above, text, __FILE__, __LINE__);
}

static void point_at(double pressure, double cold_fraction, vtx_reading *p)
{
    EXPECT_OK(vtx_reading_init(p));
    p->inlet_pressure = pressure;
    p->inlet_temperature = 293.15;
    p->cold_pressure = p->hot_pressure = 101325;
    p->cold_fraction = cold_fraction;
    p->ambient_temperature = 293.15;
}

static vtx_calibration calibrated(const vtx_reading *readings, size_t count, int32_t model, vtx_reading_check *checks)
{
    vtx_calibration c;
    EXPECT_OK(vtx_tube_calibrate(readings, count, model, NULL, 0.95, &c, checks));
    return c;
}

static double curve_at(const vtx_calibration *c, double pressure, double cold_fraction)
{
    vtx_streams s;
    EXPECT_OK(vtx_tube_separate(&c->tube, c->model, pressure, 293.15, 0, 101325, 101325, cold_fraction, &s));
    return s.cold_temperature;
}

/* Mean square error of the cold curve over a few points. */
static double square_error(const vtx_calibration *c, const struct truth *t)
{
    double sum = 0, cold, hot;
    for (int i = 0; i < 6; i++) {
        const double pressure = i % 2 ? 7e5 : 4e5, mu = 0.3 + 0.1 * i;
        true_outlets(t, pressure, 293.15, 101325, 101325, mu, &cold, &hot);
        sum += (curve_at(c, pressure, mu) - cold) * (curve_at(c, pressure, mu) - cold) / 6;
    }
    return sum;
}

/* Readings as good as none: instruments a thousand times finer. */
static struct plan fine_plan(void)
{
    struct plan p = usual_plan();
    p.temperature_u = 5e-4;
    p.pressure_share_u = 5e-6;
    p.fraction_u = 1e-5;
    return p;
}

static void fine_readings_find_the_tube(int32_t model, double exponent, double leak)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[12];
    const struct plan p = fine_plan();
    random_seed(&r, 41);
    draw_truth(&r, TRUTH_FAMILY, &t);
    t.model = model;
    t.tube.pressure_exponent = exponent;
    t.tube.hot_leak = leak;
    draw_readings(&r, &t, &p, readings);
    const vtx_calibration c = calibrated(readings, 12, model, NULL);
    EXPECT_NEAR(c.tube.peak_efficiency, t.tube.peak_efficiency * pow(c.tube.reference_ratio / 5, exponent), 1e-3);
    EXPECT_WITHIN(c.tube.coldest_fraction, t.tube.coldest_fraction, 1e-3);
    EXPECT_WITHIN(c.tube.pressure_exponent, exponent, 1e-3);
    EXPECT_WITHIN(c.tube.hot_leak, leak, 1e-3);
    EXPECT(c.readings_used == 12 && c.model == model && c.tube.basis == VTX_TUBE_CALIBRATED && !c.fraction_held && !c.exponent_held);
    for (int i = 0; i < 3; i++)
        EXPECT(c.data_share[i] > 0.99);
}

static void fine_readings_find_the_tube_in_both_airs(void)
{
    fine_readings_find_the_tube(VTX_AIR_IDEAL, -0.2, 0.03);
    fine_readings_find_the_tube(VTX_AIR_REAL, 0.15, 0.02);
    fine_readings_find_the_tube(VTX_AIR_REAL, 0, 0);
}

static void one_reading_scales_the_curve(void)
{
    vtx_reading r;
    vtx_reading_check check;
    vtx_tube unknown;
    EXPECT_OK(vtx_tube_init(&unknown));
    point_at(7e5, 0.6, &r);
    r.cold_temperature = 258;
    const vtx_calibration c = calibrated(&r, 1, VTX_AIR_REAL, &check);
    EXPECT(c.tube.coldest_fraction == unknown.coldest_fraction && c.tube.pressure_exponent == 0 && c.tube.hot_leak == 0);
    EXPECT(c.fraction_held && c.exponent_held && c.leak_held && (c.advisories & VTX_ADVISORY_PARAMETER_HELD));
    EXPECT_WITHIN(curve_at(&c, 7e5, 0.6), 258, 0.15);
    EXPECT_WITHIN(check.cold_residual, 258 - curve_at(&c, 7e5, 0.6), 1e-9);
    EXPECT_NEAR(c.tube.reference_ratio, 7e5 / 101325, 1e-12);
    /* The default's band shrinks, most where the reading was taken; without it the reading is foreseen by the default alone. */
    vtx_streams s;
    vtx_calibrated_point near, far;
    vtx_reading elsewhere;
    EXPECT_OK(vtx_tube_separate(&unknown, VTX_AIR_REAL, 7e5, 293.15, 0, 101325, 101325, 0.6, &s));
    EXPECT_NEAR(check.cold_left_out, 258 - s.cold_temperature, 0.1); /* to first order */
    EXPECT_OK(vtx_calibration_predict(&c, &r, 0.8, &near));
    point_at(7e5, 0.3, &elsewhere);
    EXPECT_OK(vtx_calibration_predict(&c, &elsewhere, 0.8, &far));
    EXPECT(near.cold_high - near.cold_low < 0.2 * (s.cold_temperature_high - s.cold_temperature_low));
    EXPECT(far.cold_high - far.cold_low > 1.3 * (near.cold_high - near.cold_low));
}

static void what_the_readings_cannot_see_is_held(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[8];
    struct plan p = usual_plan();
    random_seed(&r, 42);
    draw_truth(&r, TRUTH_FAMILY, &t);
    p.count = 8;
    p.pressure_b = p.pressure_a;
    p.cold_pressure_high = p.cold_pressure_low;
    draw_readings(&r, &t, &p, readings);
    vtx_calibration c = calibrated(readings, 8, VTX_AIR_IDEAL, NULL);
    EXPECT(c.exponent_held && c.tube.pressure_exponent == 0 && c.data_share[2] < 0.25 && !c.fraction_held);
    EXPECT_NEAR(c.pressure_exponent_deviation, 0.3 / 1.2815515655446004, 1e-9);
    for (int i = 0; i < 8; i++)
        readings[i].hot_temperature = (double)NAN;
    c = calibrated(readings, 8, VTX_AIR_IDEAL, NULL);
    EXPECT(c.leak_held && c.tube.hot_leak == 0 && isnan(c.hot_left_out) && isnan(c.energy_residual));
    EXPECT(c.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE);
    /* Readings at one cold fraction scale the curve, and leave its shape alone. */
    p = usual_plan();
    p.count = 8;
    p.fraction_low = p.fraction_high = 0.62;
    p.fraction_u = 0.001;
    draw_readings(&r, &t, &p, readings);
    for (int i = 0; i < 8; i++)
        readings[i].hot_temperature = (double)NAN;
    c = calibrated(readings, 8, VTX_AIR_IDEAL, NULL);
    EXPECT(c.fraction_held && c.tube.coldest_fraction == 0.3 && !c.exponent_held);
}

static void prediction_is_the_tube_with_intervals(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[12], point;
    vtx_streams s;
    vtx_calibrated_point p;
    const struct plan plan = usual_plan();
    random_seed(&r, 43);
    draw_truth(&r, TRUTH_FAMILY, &t);
    t.model = VTX_AIR_REAL;
    draw_readings(&r, &t, &plan, readings);
    const vtx_calibration c = calibrated(readings, 12, VTX_AIR_REAL, NULL);
    for (double mu = 0.05; mu <= 1; mu += 0.05) {
        point_at(6e5, mu, &point);
        point.humidity_ratio = 0.002;
        point.ambient_temperature = c.tube.ambient_temperature;
        EXPECT_OK(vtx_calibration_predict(&c, &point, 0.95, &p));
        EXPECT_OK(vtx_tube_separate(&c.tube, VTX_AIR_REAL, 6e5, 293.15, 0.002, 101325, 101325, mu, &s));
        EXPECT_WITHIN(p.cold_temperature, s.cold_temperature, 1e-7);
        EXPECT(p.cold_low <= p.cold_temperature && p.cold_temperature <= p.cold_high);
        EXPECT(p.cold_reading_high - p.cold_reading_low > p.cold_high - p.cold_low);
        if (mu < 0.98) {
            EXPECT_WITHIN(p.hot_temperature, s.hot_temperature, 1e-7);
            EXPECT_NEAR(p.hot_high - p.hot_low, 2 * 1.959963984540054 * p.hot_deviation, 1e-9);
        } else {
            EXPECT(isnan(p.hot_temperature) && (p.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
        }
        EXPECT(((p.advisories & VTX_ADVISORY_EXTRAPOLATED) != 0) == (mu < 0.1 || mu > 0.9));
    }
    /* The tube's band is the interval of peak efficiency. */
    const double low = log(c.tube.efficiency_low / (1 - c.tube.efficiency_low)), high = log(c.tube.efficiency_high / (1 - c.tube.efficiency_high));
    EXPECT_NEAR(high - low, 2 * 1.959963984540054 * sqrt(c.covariance[0]), 1e-9);
    EXPECT_NEAR(c.peak_efficiency_deviation, sqrt(c.covariance[0]) * c.tube.peak_efficiency * (1 - c.tube.peak_efficiency), 1e-9);
}

struct coverages {
    struct coverage cold, hot, cold_reading, hot_reading, peak, fraction, exponent;
};

static void tally_point(const vtx_calibration *c, struct random_state *r, const struct truth *t, const struct plan *p, struct coverages *k)
{
    static const double pressures[] = { 4e5, 5.5e5, 7e5 };
    const double pressure = pressures[(int)random_uniform(r, 0, 3)], mu = random_uniform(r, 0.25, 0.75);
    vtx_reading point, next;
    vtx_calibrated_point v;
    double cold, hot;
    point_at(pressure, mu, &point);
    true_outlets(t, pressure, 293.15, 101325, 101325, mu, &cold, &hot);
    EXPECT_OK(vtx_calibration_predict(c, &point, 0.95, &v));
    tally(&k->cold, cold >= v.cold_low && cold <= v.cold_high);
    tally(&k->hot, hot >= v.hot_low && hot <= v.hot_high);
    draw_reading(r, t, p, pressure, mu, &next);
    EXPECT_OK(vtx_calibration_predict(c, &next, 0.90, &v));
    tally(&k->cold_reading, next.cold_temperature >= v.cold_reading_low && next.cold_temperature <= v.cold_reading_high);
    tally(&k->hot_reading, next.hot_temperature >= v.hot_reading_low && next.hot_temperature <= v.hot_reading_high);
}

static void study(int kind, uint64_t seed, int draws, size_t count, struct coverages *k)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[MANY];
    struct plan p = usual_plan();
    p.count = count;
    memset(k, 0, sizeof *k);
    random_seed(&r, seed);
    for (int i = 0; i < draws; i++) {
        draw_truth(&r, kind, &t);
        draw_readings(&r, &t, &p, readings);
        const vtx_calibration c = calibrated(readings, count, VTX_AIR_IDEAL, NULL);
        const double peak = t.tube.peak_efficiency * pow(c.tube.reference_ratio / 5, t.tube.pressure_exponent);
        tally(&k->peak, peak >= c.tube.efficiency_low && peak <= c.tube.efficiency_high);
        tally(&k->fraction, fabs(t.tube.coldest_fraction - c.tube.coldest_fraction) < 1.96 * c.coldest_fraction_deviation);
        tally(&k->exponent, fabs(t.tube.pressure_exponent - c.tube.pressure_exponent) < 1.96 * c.pressure_exponent_deviation);
        tally_point(&c, &r, &t, &p, k);
    }
}

/* How often intervals hold what they say. */
static void intervals_hold_what_they_say(void)
{
    struct coverages k;
    static const size_t counts[] = { 3, 6, 12 };
    for (int i = 0; i < 3; i++) {
        study(TRUTH_FAMILY, 51 + (uint64_t)i, 500, counts[i], &k);
        expect_share(&k.cold, 0.93, 0.97, "95 % interval of the cold curve");
        expect_share(&k.hot, 0.93, 0.97, "95 % interval of the hot curve");
        expect_share(&k.cold_reading, 0.88, 0.92, "90 % interval of the next cold reading");
        expect_share(&k.hot_reading, 0.88, 0.92, "90 % interval of the next hot reading");
        expect_share(&k.peak, 0.93, 0.97, "band of peak efficiency");
        expect_share(&k.fraction, 0.93, 0.97, "interval of the coldest fraction");
        expect_share(&k.exponent, 0.93, 0.97, "interval of the pressure exponent");
    }
}

/* Intervals are not only wide enough but no wider than needed: error and stated deviation agree. */
static void stated_deviations_are_the_errors(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[12], point;
    vtx_calibrated_point v;
    const struct plan p = usual_plan();
    double squares = 0, below_half = 0, chi = 0, freedom = 0, cold, hot;
    const int draws = 600;
    random_seed(&r, 61);
    for (int i = 0; i < draws; i++) {
        draw_truth(&r, TRUTH_FAMILY, &t);
        draw_readings(&r, &t, &p, readings);
        const vtx_calibration c = calibrated(readings, 12, VTX_AIR_IDEAL, NULL);
        point_at(5.5e5, random_uniform(&r, 0.3, 0.7), &point);
        true_outlets(&t, 5.5e5, 293.15, 101325, 101325, point.cold_fraction, &cold, &hot);
        EXPECT_OK(vtx_calibration_predict(&c, &point, 0.95, &v));
        squares += (cold - v.cold_temperature) * (cold - v.cold_temperature) / (v.cold_deviation * v.cold_deviation) / draws;
        below_half += c.chi_square_probability < 0.5;
        chi += c.chi_square;
        freedom += c.degrees_of_freedom;
    }
    EXPECT(squares > 0.65 && squares < 1.15);
    EXPECT_WITHIN(below_half / draws, 0.5, 0.1);
    EXPECT_NEAR(chi / freedom, 1, 0.05);
}

static void spoil(struct random_state *r, int what, vtx_reading *x)
{
    const double sign = random_uniform(r, 0, 1) < 0.5 ? -1 : 1;
    if (what == 0)
        x->cold_temperature += sign * 10;
    else if (what == 1)
        x->hot_temperature += sign * 20;
    else if (what == 2)
        x->cold_fraction += x->cold_fraction > 0.5 ? -0.2 : 0.2;
    else if (what == 3)
        x->inlet_temperature += sign * 10;
    else
        x->inlet_pressure += sign * 1.5e5;
}

/* Error with one gross reading against the error of the same readings without it, each over the same draws; how often it is named. */
static void spoil_one_of(size_t count, int what, double *growth, double *named)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[8];
    vtx_reading_check checks[8];
    struct plan p = usual_plan();
    struct coverage found = { 0 };
    double clean = 0, spoilt = 0;
    p.count = count;
    random_seed(&r, 71);
    for (int i = 0; i < 200; i++) {
        draw_truth(&r, TRUTH_FAMILY, &t);
        draw_readings(&r, &t, &p, readings);
        vtx_calibration c = calibrated(readings, count, VTX_AIR_IDEAL, NULL);
        clean += square_error(&c, &t);
        const int bad = (int)random_uniform(&r, 0, (double)count);
        spoil(&r, what, &readings[bad]);
        c = calibrated(readings, count, VTX_AIR_IDEAL, checks);
        spoilt += square_error(&c, &t);
        tally(&found, checks[bad].verdict != VTX_READING_CREDIBLE && checks[bad].suspect != VTX_SUSPECT_NONE);
    }
    *growth = sqrt(spoilt / clean);
    *named = percent(&found);
}

static void one_bad_reading_does_not_double_the_error(void)
{
    for (size_t count = 6; count <= 8; count += 2)
        for (int what = 0; what < 5; what++) {
            double growth, named;
            spoil_one_of(count, what, &growth, &named);
            EXPECT(growth < 2);
            EXPECT(named > (what == 4 ? 50 : 90));
        }
}

/* Deleted residuals against calibrations that really leave the reading out. */
static void left_out_errors_are_those_of_refitting(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[12], others[11];
    vtx_reading_check checks[12];
    vtx_calibrated_point v;
    const struct plan p = usual_plan();
    double sum = 0;
    random_seed(&r, 81);
    draw_truth(&r, TRUTH_FAMILY, &t);
    t.tube.hot_leak = 0.05; /* away from the bound at 0, where leaving out one reading may change what is fitted */
    draw_readings(&r, &t, &p, readings);
    const vtx_calibration c = calibrated(readings, 12, VTX_AIR_IDEAL, checks);
    for (int i = 0; i < 12; i++) {
        for (int k = 0, n = 0; k < 12; k++)
            if (k != i)
                others[n++] = readings[k];
        const vtx_calibration without = calibrated(others, 11, VTX_AIR_IDEAL, NULL);
        EXPECT_OK(vtx_calibration_predict(&without, &readings[i], 0.95, &v));
        EXPECT_WITHIN(checks[i].cold_left_out, readings[i].cold_temperature - v.cold_temperature, 0.05 + 0.05 * fabs(checks[i].cold_left_out));
        EXPECT_WITHIN(checks[i].hot_left_out, readings[i].hot_temperature - v.hot_temperature, 0.05 + 0.05 * fabs(checks[i].hot_left_out));
        EXPECT(checks[i].leverage > 0 && checks[i].leverage < 1);
        sum += checks[i].cold_left_out * checks[i].cold_left_out / 12;
    }
    EXPECT_NEAR(c.cold_left_out, sqrt(sum), 1e-9);
}

static void a_leak_of_the_hot_end_is_found(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[20];
    struct plan p = usual_plan();
    random_seed(&r, 91);
    draw_truth(&r, TRUTH_FAMILY, &t);
    t.tube.hot_leak = 0.08;
    p.count = 20;
    p.fraction_u = 0.005;
    draw_readings(&r, &t, &p, readings);
    const vtx_calibration c = calibrated(readings, 20, VTX_AIR_IDEAL, NULL);
    EXPECT(!c.leak_held && c.tube.hot_leak > 4 * c.hot_leak_deviation);
    EXPECT_WITHIN(c.tube.hot_leak, 0.08, 4 * c.hot_leak_deviation);
    EXPECT(c.energy_residual > 4 * c.energy_uncertainty);
}

/* Bayes' rule by the sum over a fine grid of leaks, the case of none apart. */
static void a_leak_is_known_by_bayes_rule(void)
{
    static const double values[] = { -0.08, -0.02, 0, 0.01, 0.03, 0.2 }, deviations[] = { 0.002, 0.01, 0.025, 0.0299 }, shares[] = { 0, 0.3, 0.5, 0.9 };
    const double prior = 0.03, step = 1e-5;
    for (int i = 0; i < 6 * 4 * 4; i++) {
        const struct leak_estimate e = { prior, shares[i % 4], values[i / 16], deviations[i / 4 % 4] };
        if (fabs(e.value) > 7 * e.deviation && e.value < 0)
            continue;
        double sum = 0, first = 0, second = 0, peak = e.value > 0 ? e.value : 0;
        const double top = -0.5 * pow((peak - e.value) / e.deviation, 2);
        for (double x = 0.5 * step; x < 0.6; x += step) {
            const double density = exp(-0.5 * pow((x - e.value) / e.deviation, 2) - top) * step;
            sum += density;
            first += density * x;
            second += density * x * x;
        }
        /* The likelihood is posterior over prior, of which the case of none takes its value at 0; the prior of others is a half one. */
        const double none = e.none * exp(-0.5 * pow(e.value / e.deviation, 2) - top), scale = (1 - e.none) * 2 / (prior * sqrt(2 * acos(-1.0)));
        const double all = none + scale * sum, mean = scale * first / all;
        const struct leak_knowledge k = know_leak(&e);
        EXPECT_WITHIN(k.none, none / all, 1e-6);
        EXPECT_NEAR(k.mean, mean, 1e-5);
        EXPECT_NEAR(k.variance, scale * second / all - mean * mean, 1e-4);
        EXPECT_NEAR(leak_variance_about(&k, 0), k.variance + k.mean * k.mean, 1e-12);
    }
}

/* Three times the usual strength outside the family: most calibrations notice, and the next reading still falls into its interval.
 * What coverage is left for the curve is not claimed here. */
static void a_tube_of_another_shape_widens_the_intervals(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[24], next;
    struct plan p = usual_plan();
    p.count = 24;
    for (int kind = TRUTH_CUBIC; kind <= TRUTH_SAG; kind++) {
        double widened = 0, plain = 0;
        struct coverage cold = { 0 };
        random_seed(&r, 95);
        for (int i = 0; i < 150; i++) {
            vtx_calibrated_point v;
            draw_truth(&r, kind, &t);
            t.strength *= 3;
            draw_readings(&r, &t, &p, readings);
            vtx_calibration c = calibrated(readings, 24, VTX_AIR_IDEAL, NULL);
            draw_reading(&r, &t, &p, 7e5, random_uniform(&r, 0.25, 0.75), &next);
            EXPECT_OK(vtx_calibration_predict(&c, &next, 0.9, &v));
            tally(&cold, next.cold_temperature >= v.cold_reading_low && next.cold_temperature <= v.cold_reading_high);
            widened += v.cold_high - v.cold_low;
            t.kind = TRUTH_FAMILY;
            draw_readings(&r, &t, &p, readings);
            c = calibrated(readings, 24, VTX_AIR_IDEAL, NULL);
            EXPECT_OK(vtx_calibration_predict(&c, &next, 0.9, &v));
            plain += v.cold_high - v.cold_low;
        }
        EXPECT(widened > 1.3 * plain);
        expect_share(&cold, 0.85, 0.97, "90 % interval of the next cold reading outside the family");
    }
}

/* With fine instruments a departure is seen for what it is; a member of the family shows none to speak of. */
static void departures_are_seen_for_what_they_are(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[24];
    struct plan p = fine_plan();
    p.count = 24;
    random_seed(&r, 121);
    draw_truth(&r, TRUTH_SAG, &t);
    t.strength = 2;
    draw_readings(&r, &t, &p, readings);
    vtx_calibration c = calibrated(readings, 24, VTX_AIR_IDEAL, NULL);
    EXPECT_NEAR(c.departure[1], 0.15 * 2, 0.1);
    EXPECT(c.departure[0] < 0.02 && c.departure[2] < 0.002);
    draw_truth(&r, TRUTH_LEAK, &t);
    t.strength = 1;
    draw_readings(&r, &t, &p, readings);
    c = calibrated(readings, 24, VTX_AIR_IDEAL, NULL);
    EXPECT_NEAR(c.departure[2], 0.01, 0.3);
    EXPECT(c.departure[3] > 0.01);
    draw_truth(&r, TRUTH_FAMILY, &t);
    draw_readings(&r, &t, &p, readings);
    c = calibrated(readings, 24, VTX_AIR_IDEAL, NULL);
    EXPECT(c.departure[0] < 1e-3 && c.departure[1] < 1e-2 && c.departure[2] < 1e-3 && c.departure[3] < 1e-3);
}

/* Four times the usual strength: seen by 24 readings, so that the curve's intervals hold the truth, and no reading is blamed for it. */
static void a_departing_tube_is_not_blamed_on_readings(void)
{
    struct random_state r;
    struct plan p = usual_plan();
    p.count = 24;
    random_seed(&r, 122);
    for (int kind = TRUTH_CUBIC; kind <= TRUTH_SAG; kind++) {
        struct coverage cold = { 0 }, hot = { 0 }, blamed = { 0 };
        for (int i = 0; i < 150; i++) {
            struct truth t;
            vtx_reading readings[24], point;
            vtx_calibrated_point v;
            double true_cold, true_hot;
            draw_truth(&r, kind, &t);
            t.strength *= 4;
            draw_readings(&r, &t, &p, readings);
            const vtx_calibration c = calibrated(readings, 24, VTX_AIR_IDEAL, NULL);
            point_at(random_uniform(&r, 4e5, 7e5), random_uniform(&r, 0.2, 0.8), &point);
            true_outlets(&t, point.inlet_pressure, 293.15, 101325, 101325, point.cold_fraction, &true_cold, &true_hot);
            EXPECT_OK(vtx_calibration_predict(&c, &point, 0.95, &v));
            tally(&cold, true_cold >= v.cold_low && true_cold <= v.cold_high);
            tally(&hot, true_hot >= v.hot_low && true_hot <= v.hot_high);
            tally(&blamed, c.readings_set_aside > 0);
        }
        expect_share(&cold, 0.93, 1, "95 % interval of the cold curve outside the family");
        expect_share(&hot, 0.93, 1, "95 % interval of the hot curve outside the family");
        EXPECT(percent(&blamed) < 15);
    }
}

static void impossible_and_incomplete_readings_are_left_out(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[6];
    vtx_reading_check checks[6];
    const struct plan p = { .count = 4, .fraction_low = 0.3, .fraction_high = 0.7, .pressure_a = 5e5, .pressure_b = 7e5,
                            .cold_pressure_low = 1.01e5, .cold_pressure_high = 1.2e5, .temperature_u = 0.5, .pressure_share_u = 0.005, .fraction_u = 0.01 };
    random_seed(&r, 97);
    draw_truth(&r, TRUTH_FAMILY, &t);
    draw_readings(&r, &t, &p, readings);
    const vtx_calibration clean = calibrated(readings, 4, VTX_AIR_IDEAL, NULL);
    readings[4] = readings[1];
    readings[4].hot_temperature = 280;
    EXPECT_OK(vtx_reading_init(&readings[5]));
    readings[5].inlet_pressure = 7e5;
    const vtx_calibration c = calibrated(readings, 6, VTX_AIR_IDEAL, checks);
    EXPECT(c.readings_used == 4 && c.readings_impossible == 1 && c.readings_incomplete == 1 && c.readings_set_aside == 0);
    EXPECT(checks[4].verdict == VTX_READING_BOTH_COLD && !checks[4].used && checks[5].verdict == VTX_READING_INCOMPLETE && !checks[5].used);
    EXPECT(checks[0].used && (c.advisories & VTX_ADVISORY_IMPOSSIBLE_READINGS) && !(clean.advisories & VTX_ADVISORY_IMPOSSIBLE_READINGS));
    EXPECT_NEAR(c.tube.peak_efficiency, clean.tube.peak_efficiency, 1e-6);
    vtx_calibration none;
    EXPECT_STATUS(vtx_tube_calibrate(&readings[4], 2, VTX_AIR_IDEAL, NULL, 0.95, &none, checks), VTX_NO_SOLUTION);
    EXPECT(isnan(none.tube.peak_efficiency) && isnan(none.covariance[63]) && none.tube.basis == -1 && none.spare == -1);
    EXPECT(isnan(checks[1].cold_residual) && checks[1].verdict == -1);
}

static void order_does_not_matter_and_repetition_does(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[48];
    const struct plan p = usual_plan();
    random_seed(&r, 98);
    draw_truth(&r, TRUTH_FAMILY, &t);
    draw_readings(&r, &t, &p, readings);
    const vtx_calibration a = calibrated(readings, 12, VTX_AIR_IDEAL, NULL);
    for (int i = 0; i < 6; i++) {
        const vtx_reading swap = readings[i];
        readings[i] = readings[11 - i];
        readings[11 - i] = swap;
    }
    const vtx_calibration b = calibrated(readings, 12, VTX_AIR_IDEAL, NULL);
    EXPECT_NEAR(b.tube.peak_efficiency, a.tube.peak_efficiency, 1e-6);
    EXPECT_NEAR(b.coldest_fraction_deviation, a.coldest_fraction_deviation, 1e-4);
    for (int i = 12; i < 48; i++)
        readings[i] = readings[i % 12];
    const vtx_calibration c = calibrated(readings, 48, VTX_AIR_IDEAL, NULL);
    EXPECT_NEAR(c.peak_efficiency_deviation, 0.5 * a.peak_efficiency_deviation, 0.15);
}

/* What one calibration found is the prior of the next. */
static void a_calibrated_tube_can_be_the_prior(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading readings[12];
    vtx_calibration c;
    const struct plan p = usual_plan();
    random_seed(&r, 99);
    draw_truth(&r, TRUTH_FAMILY, &t);
    draw_readings(&r, &t, &p, readings);
    const vtx_calibration first = calibrated(readings, 6, VTX_AIR_IDEAL, NULL);
    EXPECT_OK(vtx_tube_calibrate(&readings[6], 1, VTX_AIR_IDEAL, &first.tube, 0.95, &c, NULL));
    EXPECT(c.tube.coldest_fraction == first.tube.coldest_fraction && c.tube.pressure_exponent == first.tube.pressure_exponent);
    EXPECT_NEAR(c.tube.peak_efficiency * pow(5 / c.tube.reference_ratio, c.tube.pressure_exponent),
                first.tube.peak_efficiency * pow(5 / first.tube.reference_ratio, first.tube.pressure_exponent), 0.1);
}

static double maybe(struct random_state *r, double share, double value)
{
    return random_uniform(r, 0, 1) < share ? value : (double)NAN;
}

/* Anything a gauge can show, sensible or not, read or not. */
static void draw_nonsense(struct random_state *r, vtx_reading *x)
{
    EXPECT_OK(vtx_reading_init(x));
    x->inlet_pressure = maybe(r, 0.95, random_log_uniform(r, 1.1e5, 1.5e6));
    x->inlet_temperature = maybe(r, 0.9, random_uniform(r, 270, 330));
    x->humidity_ratio = maybe(r, 0.3, random_log_uniform(r, 1e-6, 5e-3));
    x->cold_pressure = maybe(r, 0.5, random_uniform(r, 9e4, 2e5));
    x->cold_temperature = maybe(r, 0.9, random_uniform(r, 220, 310));
    x->hot_pressure = maybe(r, 0.5, random_uniform(r, 9e4, 2e5));
    x->hot_temperature = maybe(r, 0.7, random_uniform(r, 270, 420));
    x->cold_fraction = maybe(r, 0.7, random_uniform(r, 0, 1));
    x->cold_fraction_uncertainty = maybe(r, 0.3, random_log_uniform(r, 1e-4, 0.3));
    x->cold_temperature_uncertainty = maybe(r, 0.3, random_log_uniform(r, 1e-3, 10));
    x->inlet_mass_flow = maybe(r, 0.3, random_uniform(r, 0.008, 0.012));
    x->cold_mass_flow = maybe(r, 0.3, random_uniform(r, 0.001, 0.011));
    x->hot_mass_flow = maybe(r, 0.3, random_uniform(r, 0.001, 0.011));
    x->ambient_temperature = maybe(r, 0.5, random_uniform(r, 270, 310));
}

static void check_answer(const vtx_calibration *c, const vtx_reading_check *checks, size_t count)
{
    vtx_tube careful;
    size_t used = 0;
    EXPECT_OK(vtx_tube_for_question(&c->tube, VTX_QUESTION_SIZING, &careful));
    EXPECT(c->tube.efficiency_low > 0 && c->tube.efficiency_high < 1 && isfinite(c->hot_leak_deviation));
    for (size_t i = 0; i < 64; i++)
        EXPECT(isfinite(c->covariance[i]));
    for (size_t i = 0; i < count; i++) {
        used += checks[i].used != 0;
        EXPECT(!isinf(checks[i].cold_left_out) && !isinf(checks[i].hot_residual) && !isinf(checks[i].energy_residual));
    }
    EXPECT(used == (size_t)c->readings_used);
    EXPECT(c->readings_used + c->readings_set_aside + c->readings_impossible + c->readings_incomplete == (int32_t)count);
}

/* Contradictory, absurd and missing readings: an answer with its advisories, or an honest refusal; never a flag or an infinity. */
static void nonsense_gets_an_honest_answer(void)
{
    struct random_state r;
    vtx_reading readings[12];
    vtx_reading_check checks[12];
    int answered = 0, unsolvable = 0;
    random_seed(&r, 111);
    for (int i = 0; i < 600; i++) {
        vtx_calibration c;
        const size_t count = 1 + (size_t)random_uniform(&r, 0, 12);
        const int32_t model = i % 20 ? VTX_AIR_IDEAL : VTX_AIR_REAL;
        for (size_t k = 0; k < count; k++)
            draw_nonsense(&r, &readings[k]);
        feclearexcept(FE_ALL_EXCEPT);
        const vtx_status status = vtx_tube_calibrate(readings, count, model, NULL, 0.9, &c, checks);
        const int flags = fetestexcept(FE_ALL_EXCEPT) & ~(FE_INEXACT | FE_UNDERFLOW);
        if (status == VTX_OK) {
            EXPECT(flags == 0);
            check_answer(&c, checks, count);
            answered++;
        } else {
            EXPECT(status == VTX_NO_SOLUTION || status == VTX_NOT_CONVERGED || status == VTX_OUT_OF_RANGE);
            EXPECT(isnan(c.tube.peak_efficiency) && c.readings_used == -1);
            unsolvable += status != VTX_NO_SOLUTION;
        }
    }
    EXPECT(answered > 400);
    EXPECT(unsolvable < 60);
}

/* Among good readings a single absurd one must not cost the answer. */
static void one_absurd_reading_does_not_cost_the_answer(void)
{
    struct random_state r;
    vtx_reading readings[12];
    struct plan p = usual_plan();
    int failed = 0;
    random_seed(&r, 112);
    for (int i = 0; i < 400; i++) {
        struct truth t;
        vtx_calibration c;
        p.count = 5 + (size_t)i % 8;
        draw_truth(&r, TRUTH_FAMILY, &t);
        draw_readings(&r, &t, &p, readings);
        draw_nonsense(&r, &readings[(size_t)i % p.count]);
        const vtx_status status = vtx_tube_calibrate(readings, p.count, VTX_AIR_IDEAL, NULL, 0.95, &c, NULL);
        failed += status != VTX_OK;
        EXPECT(status == VTX_OK || status == VTX_NOT_CONVERGED);
    }
    EXPECT(failed < 4);
}

static void misuse_is_answered(void)
{
    struct random_state r;
    struct truth t;
    static vtx_reading readings[MANY];
    static vtx_reading_check checks[MANY];
    vtx_calibration c;
    vtx_tube tube;
    struct plan p = usual_plan();
    random_seed(&r, 100);
    draw_truth(&r, TRUTH_FAMILY, &t);
    p.count = 100;
    draw_readings(&r, &t, &p, readings);
    feclearexcept(FE_ALL_EXCEPT);
    EXPECT_OK(vtx_tube_calibrate(readings, 100, VTX_AIR_IDEAL, NULL, 0.95, &c, checks));
    EXPECT((fetestexcept(FE_ALL_EXCEPT) & ~(FE_INEXACT | FE_UNDERFLOW)) == 0);
    EXPECT(c.readings_used + c.readings_set_aside + c.readings_impossible == 100);
    EXPECT_STATUS(vtx_tube_calibrate(readings, MANY, VTX_AIR_IDEAL, NULL, 0.95, &c, checks), VTX_OUT_OF_RANGE);
    EXPECT(isnan(c.confidence) && c.advisories == -1);
    EXPECT_STATUS(vtx_tube_calibrate(readings, 0, VTX_AIR_IDEAL, NULL, 0.95, &c, checks), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_tube_calibrate(NULL, 3, VTX_AIR_IDEAL, NULL, 0.95, &c, checks), VTX_BAD_ARGUMENT);
    EXPECT(isnan(checks[2].leverage) && checks[2].used == -1);
    EXPECT_STATUS(vtx_tube_calibrate(readings, 3, VTX_AIR_IDEAL, NULL, 0.95, NULL, checks), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_tube_calibrate(readings, 3, 9, NULL, 0.95, &c, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_tube_calibrate(readings, 3, VTX_AIR_IDEAL, NULL, 1.5, &c, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_tube_calibrate(readings, 3, VTX_AIR_IDEAL, NULL, 0.9999, &c, NULL), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_tube_init(&tube));
    tube.efficiency_low = 0.5;
    EXPECT_STATUS(vtx_tube_calibrate(readings, 3, VTX_AIR_IDEAL, &tube, 0.95, &c, NULL), VTX_BAD_ARGUMENT);
    readings[1].inlet_temperature = 0;
    EXPECT_STATUS(vtx_tube_calibrate(readings, 3, VTX_AIR_IDEAL, NULL, 0.95, &c, NULL), VTX_BAD_ARGUMENT);
}

static void a_point_must_be_placed(void)
{
    vtx_reading reading, point;
    vtx_calibrated_point v;
    point_at(7e5, 0.6, &reading);
    reading.cold_temperature = 260;
    vtx_calibration c = calibrated(&reading, 1, VTX_AIR_IDEAL, NULL);
    point = reading;
    point.cold_fraction = (double)NAN;
    EXPECT_STATUS(vtx_calibration_predict(&c, &point, 0.95, &v), VTX_BAD_ARGUMENT);
    point.inlet_mass_flow = 0.01;
    point.cold_mass_flow = 0.006;
    EXPECT_OK(vtx_calibration_predict(&c, &point, 0.95, &v));
    point.inlet_temperature = (double)NAN;
    EXPECT_STATUS(vtx_calibration_predict(&c, &point, 0.95, &v), VTX_BAD_ARGUMENT);
    EXPECT(isnan(v.cold_temperature) && v.advisories == -1);
    c.tube.basis = VTX_TUBE_UNCALIBRATED;
    EXPECT_STATUS(vtx_calibration_predict(&c, &reading, 0.95, &v), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "fine readings find the tube, in both airs", fine_readings_find_the_tube_in_both_airs },
    { "one reading scales the curve", one_reading_scales_the_curve },
    { "what the readings cannot see is held", what_the_readings_cannot_see_is_held },
    { "prediction is the tube with intervals", prediction_is_the_tube_with_intervals },
    { "intervals hold what they say", intervals_hold_what_they_say },
    { "stated deviations are the errors", stated_deviations_are_the_errors },
    { "one bad reading does not double the error", one_bad_reading_does_not_double_the_error },
    { "left-out errors are those of refitting", left_out_errors_are_those_of_refitting },
    { "a leak of the hot end is found", a_leak_of_the_hot_end_is_found },
    { "a leak is known by Bayes' rule", a_leak_is_known_by_bayes_rule },
    { "a tube of another shape widens the intervals", a_tube_of_another_shape_widens_the_intervals },
    { "departures are seen for what they are", departures_are_seen_for_what_they_are },
    { "a departing tube is not blamed on readings", a_departing_tube_is_not_blamed_on_readings },
    { "impossible and incomplete readings are left out", impossible_and_incomplete_readings_are_left_out },
    { "order does not matter, repetition does", order_does_not_matter_and_repetition_does },
    { "a calibrated tube can be the prior", a_calibrated_tube_can_be_the_prior },
    { "nonsense gets an honest answer", nonsense_gets_an_honest_answer },
    { "one absurd reading does not cost the answer", one_absurd_reading_does_not_cost_the_answer },
    { "misuse is answered", misuse_is_answered },
    { "a point must be placed", a_point_must_be_placed },
};
TEST_SUITE(calibration, tests);
