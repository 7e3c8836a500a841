/* One wrong instrument among readings too few to outvote it.
 *
 * Each instrument of each reading is supposed wrong in turn, the tube fitted anew, and the suppositions weighed by the probability that
 * they give to all that was read, by a tube that may depart from the family: a wrong thermometer still leaves the reading's other outlet,
 * its pressures and its cold fraction. What is found is the mean over them, each with its own spread; the most probable one is named. */
#include "misfit.h"

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

/* The same when the tube may depart from the family; what departures the readings show is left in c. */
vtx_status weigh_fit(struct curve_fit *c, double *evidence)
{
    const vtx_status status = weigh_departures(c, &c->departing);
    *evidence = log_evidence(c) + c->departing.evidence;
    return status;
}

struct supposition {
    size_t reading;
    int which;       /* of quantities, or QUANTITIES: all of the reading */
    double evidence; /* logarithm, with that of the supposition itself */
    double x[FITTED], covariance[FITTED][FITTED], moment[DEPARTURES][DEPARTURES];
};

/* All that stand; the first may be that nothing is wrong. */
struct suppositions {
    size_t count, best;
    struct supposition s[1 + FEW_READINGS * SUPPOSITIONS];
};

static void suppose(struct curve_fit *c, size_t i, int which)
{
    if (i == c->count)
        return;
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

/* Coordinates with the leak's mean in the place of its estimate; the others follow it, as they do in the final fit. */
static void take_coordinates(const struct curve_fit *c, struct supposition *s)
{
    const struct leak_knowledge leak = leak_of_fit(c);
    const double (*v)[COORDINATES] = (const double (*)[COORDINATES])c->curve.covariance;
    for (size_t k = 0; k < FITTED; k++) {
        const double answer = v[k][LEAK] / v[LEAK][LEAK];
        s->x[k] = c->curve.x[k] + answer * (leak.mean - c->curve.x[LEAK]);
        for (size_t l = 0; l < FITTED; l++)
            s->covariance[k][l] = v[k][l] + answer * (leak.variance - v[LEAK][LEAK]) * v[l][LEAK] / v[LEAK][LEAK];
    }
    memcpy(s->moment, c->departing.moment, sizeof s->moment);
}

static void weigh_supposition(struct curve_fit *c, size_t i, int which, struct suppositions *all)
{
    const struct curve_reading before = c->reading[i < c->count ? i : 0];
    struct supposition *s = &all->s[all->count];
    double evidence;
    suppose(c, i, which);
    if (fit_from_prior(c) == VTX_OK && weigh_fit(c, &evidence) == VTX_OK) {
        s->reading = i;
        s->which = which;
        s->evidence = evidence + (i < c->count ? log(wrong_share / SUPPOSITIONS) : 0);
        take_coordinates(c, s);
        if (s->evidence > all->s[all->best].evidence)
            all->best = all->count;
        all->count++;
    }
    c->reading[i < c->count ? i : 0] = before;
}

/* Occam's window: what is so much less probable than the best is no longer believed (Madigan and Raftery 1994, from memory). */
static const double log_window = 3;

/* Mean and second moments over all suppositions that are believed, as seen from the best. */
static void average(const struct suppositions *all, struct curve_fit *c)
{
    const struct supposition *best = &all->s[all->best];
    double sum = 0, weight[ARRAY_LENGTH(all->s)];
    memset(c->shift, 0, sizeof c->shift);
    memset(c->spread, 0, sizeof c->spread);
    memset(c->departing.moment, 0, sizeof c->departing.moment);
    for (size_t i = 0; i < all->count; i++)
        sum += weight[i] = all->s[i].evidence > best->evidence - log_window ? exp(all->s[i].evidence - best->evidence) : 0;
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < FITTED; k++)
            c->shift[k] += weight[i] / sum * (all->s[i].x[k] - best->x[k]);
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < FITTED; k++)
            for (size_t l = 0; l < FITTED; l++) {
                const struct supposition *s = &all->s[i];
                const double ek = s->x[k] - best->x[k] - c->shift[k], el = s->x[l] - best->x[l] - c->shift[l];
                c->spread[k][l] += weight[i] / sum * (ek * el + (s == best ? 0 : s->covariance[k][l]));
            }
    c->believed = weight[all->best] / sum;
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < DEPARTURES; k++)
            for (size_t l = 0; l < DEPARTURES; l++)
                c->departing.moment[k][l] += weight[i] / sum * all->s[i].moment[k][l];
}

vtx_status doubt_instruments(struct curve_fit *c)
{
    struct suppositions all = { .count = 0 };
    weigh_supposition(c, c->count, QUANTITIES, &all);
    for (size_t i = 0; i < c->count && used_readings(c) > 1; i++)
        for (int which = 0; which < SUPPOSITIONS; which++)
            if (can_be_supposed(&c->reading[i], which))
                weigh_supposition(c, i, which, &all);
    if (all.count == 0)
        return VTX_NOT_CONVERGED;
    suppose(c, all.s[all.best].reading, all.s[all.best].which);
    average(&all, c);
    return fit_from_prior(c);
}
