/* One wrong instrument among readings too few to outvote it.
 *
 * Each instrument of each reading is supposed wrong in turn, the tube fitted anew, and the suppositions weighed by the probability that
 * they give to all that was read: a wrong thermometer still leaves the reading's other outlet, its pressures and its cold fraction. */
#include "misfit.h"

/* Routine data hold 1 to 10 % of gross errors (Hampel 1986, from memory). */
static const double wrong_share = 0.05;

/* How wrong: standard deviations of gross errors, and of an outlet when nothing of a reading is right (no source). */
static const double gross_temperature = 10, gross_fraction = 0.2, gross_pressure_share = 0.5, spread_of_outlets = 30;

/* Quantities that may be wrong alone, then the reading as a whole. Pressures behind the tube hardly matter to it. */
static const int quantities[] = { INLET_PRESSURE, INLET_TEMPERATURE, COLD_FRACTION, STATE_INPUTS + COLD, STATE_INPUTS + HOT };
enum { QUANTITIES = ARRAY_LENGTH(quantities), SUPPOSITIONS = QUANTITIES + 1 };

static double gross_error(const struct reading_state *s, int quantity)
{
    return quantity == INLET_PRESSURE ? gross_pressure_share * s->x[INLET_PRESSURE] : quantity == COLD_FRACTION ? gross_fraction : gross_temperature;
}

static double *uncertainty_of(struct reading_state *s, int quantity)
{
    return quantity < STATE_INPUTS ? &s->u[quantity] : &s->uy[quantity - STATE_INPUTS];
}

static void doubt(struct curve_reading *r, int quantity)
{
    double *u = uncertainty_of(&r->state, quantity);
    r->doubted = quantity;
    r->is_doubted = 1;
    r->stated = *u;
    *u = larger(*u, gross_error(&r->state, quantity));
}

void trust_again(struct curve_reading *r)
{
    if (r->is_doubted)
        *uncertainty_of(&r->state, r->doubted) = r->stated;
}

/* Logarithm of the determinant of the coordinates' covariance, by Cholesky's root. */
static double log_determinant(const struct least_squares *fit)
{
    double root[FITTED][FITTED], sum = 0;
    for (size_t i = 0; i < FITTED; i++)
        for (size_t j = 0; j <= i; j++) {
            double x = fit->covariance[i][j];
            for (size_t k = 0; k < j; k++)
                x -= root[i][k] * root[j][k];
            root[i][j] = i == j ? sqrt(larger(x, 1e-300)) : x / root[j][j];
            sum += i == j ? log(larger(x, 1e-300)) : 0;
        }
    return sum;
}

/* Logarithm of the probability density of all readings, coordinates integrated out by Laplace's method; a constant is left out. */
static double log_evidence(const struct curve_fit *c)
{
    double sum = -0.5 * c->fit.sum_of_squares + 0.5 * log_determinant(&c->fit);
    for (size_t i = 0; i < c->count; i++) {
        const struct curve_reading *r = &c->reading[i];
        if (!r->state.usable)
            continue;
        const double (*v)[OUTLETS] = (const double (*)[OUTLETS])r->covariance;
        const int cold = outlet_counts(&r->state, COLD), hot = outlet_counts(&r->state, HOT);
        if (r->used)
            sum -= 0.5 * log(cold && hot ? v[0][0] * v[1][1] - square(v[0][1]) : cold ? v[0][0] : v[1][1]);
        else
            sum -= (cold + hot) * (0.5 + log(spread_of_outlets));
    }
    return sum;
}

struct supposition {
    size_t reading;
    int which;       /* of quantities, or QUANTITIES: all of the reading */
    double evidence; /* logarithm, with that of the supposition itself */
    int stands;      /* some fit did */
};

static void suppose(struct curve_fit *c, size_t i, int which)
{
    if (which < QUANTITIES)
        doubt(&c->reading[i], quantities[which]);
    else
        c->reading[i].used = 0;
}

static int can_be_supposed(const struct curve_reading *r, int which)
{
    const int outlet = which < QUANTITIES ? quantities[which] - STATE_INPUTS : -1;
    return r->used && (which == QUANTITIES || (!r->is_doubted && (outlet < 0 || outlet_counts(&r->state, outlet))));
}

static void weigh_supposition(struct curve_fit *c, size_t i, int which, struct supposition *best)
{
    const struct curve_reading before = c->reading[i];
    suppose(c, i, which);
    if (fit_from_prior(c) == VTX_OK) {
        const struct supposition s = { i, which, log_evidence(c) + log(wrong_share / SUPPOSITIONS), 1 };
        if (!best->stands || s.evidence > best->evidence)
            *best = s;
    }
    c->reading[i] = before;
}

/* Takes over the best supposition, which may be that nothing is wrong. */
static vtx_status doubt_one(struct curve_fit *c)
{
    struct supposition best = { .reading = c->count };
    if (fit_from_prior(c) == VTX_OK) {
        best.stands = 1;
        best.evidence = log_evidence(c);
    }
    for (size_t i = 0; i < c->count; i++)
        for (int which = 0; which < SUPPOSITIONS; which++)
            if (can_be_supposed(&c->reading[i], which))
                weigh_supposition(c, i, which, &best);
    if (best.reading < c->count)
        suppose(c, best.reading, best.which);
    return best.stands ? fit_from_prior(c) : VTX_NOT_CONVERGED;
}

vtx_status doubt_instruments(struct curve_fit *c)
{
    return used_readings(c) > 1 ? doubt_one(c) : fit_curve(c);
}
