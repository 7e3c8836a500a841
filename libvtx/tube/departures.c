/* What the residuals of a fitted curve say of departures from the family.
 *
 * Each of the four departures may be there or not: fifteen ways to depart. A way's estimate, its covariance and what it explains follow
 * from the columns of the departures, freed of all that the family could explain itself. */
#include "misfit.h"

#include "../base/distribution.h"

enum { WAYS = 1 << DEPARTURES, AMPLITUDES = 3 };

/* So many tubes of the family may be taken to depart by chance: that holds at most a quarter of the 5 % that 95 % intervals miss. */
static const double false_alarms = 0.25;

/* Readings that bring less of what is known of a departure do not show it. */
static const double share_to_show = 0.25;

/* Before any reading: tubes that depart; then each way is as likely as another, and each of these shares of the usual size (no source).
 * An estimate is not drawn to none before twice that size. */
static const double departing_share = 0.1, amplitude[AMPLITUDES] = { 0.25, 0.5, 1 }, widest = 2;

/* Normal equations of the departures, their usual sizes, and how many outlets in use make them. */
struct sight {
    double matrix[DEPARTURES][DEPARTURES], side[DEPARTURES], deviation[DEPARTURES];
    int rows;
};

static double inner_product(const double *a, const double *b, size_t rows)
{
    double sum = 0;
    for (size_t row = 0; row < rows; row++)
        sum += a[row] * b[row];
    return sum;
}

/* Columns of the departures, freed of what the fitted coordinates could explain. */
static vtx_status free_columns(const struct curve_fit *c, double (*column)[ROWS_MAX])
{
    for (size_t k = 0; k < DEPARTURES; k++) {
        const vtx_status status = jacobian_column(c, FITTED + k, column[k]);
        if (status != VTX_OK)
            return status;
        for (size_t row = OUTLETS * c->count; row < c->fit.rows; row++)
            column[k][row] = 0;
        project_out(&c->fit, column[k]);
    }
    return VTX_OK;
}

static vtx_status see_departures(const struct curve_fit *c, struct sight *s)
{
    double column[DEPARTURES][ROWS_MAX];
    const vtx_status status = free_columns(c, column);
    if (status != VTX_OK)
        return status;
    s->rows = 0;
    for (size_t i = 0; i < c->count; i++)
        s->rows += c->reading[i].used ? c->reading[i].rows : 0;
    for (size_t k = 0; k < DEPARTURES; k++) {
        /* Heat lost at one rate is a leak that goes with the inverse flow: its trend is as large as the leak. */
        s->deviation[k] = larger(departure_deviation[k], FITTED + k == LEAK_TREND ? fabs(c->curve.x[LEAK]) : 0);
        s->side[k] = -inner_product(column[k], c->fit.residual, c->fit.rows);
        for (size_t l = 0; l < DEPARTURES; l++)
            s->matrix[k][l] = inner_product(column[k], column[l], c->fit.rows);
    }
    return VTX_OK;
}

/* A way to depart, with normal priors about none. */
struct way {
    double mean[DEPARTURES], covariance[DEPARTURES][DEPARTURES];
    double explained; /* of chi-square */
    double seen;      /* how many of its departures the readings decide and not the prior */
    double evidence;  /* logarithm of the probability of the readings over that without it */
};

/* Cholesky's root of I + D B D over the departures of a way, D their prior deviations, and its inverse. */
static void root_of_way(const struct sight *s, size_t n, const size_t *which, double scale, double (*root)[DEPARTURES], double (*inverse)[DEPARTURES])
{
    for (size_t i = 0; i < n; i++)
        for (size_t j = 0; j <= i; j++) {
            const size_t a = which[i], b = which[j];
            double x = (i == j) + square(scale) * s->deviation[a] * s->deviation[b] * s->matrix[a][b], y = i == j;
            for (size_t k = 0; k < j; k++)
                x -= root[i][k] * root[j][k];
            root[i][j] = i == j ? sqrt(larger(x, 1e-12)) : x / root[j][j];
            inverse[i][j] = y;
        }
    for (size_t i = 0; i < n; i++)
        for (size_t j = 0; j <= i; j++) {
            for (size_t k = j; k < i; k++)
                inverse[i][j] -= root[i][k] * inverse[k][j];
            inverse[i][j] /= root[i][i];
        }
}

static void weigh_way(const struct sight *s, unsigned members, double scale, struct way *w)
{
    size_t n = 0, which[DEPARTURES];
    double root[DEPARTURES][DEPARTURES], inverse[DEPARTURES][DEPARTURES], y[DEPARTURES];
    memset(w, 0, sizeof *w);
    for (size_t k = 0; k < DEPARTURES; k++)
        if (members >> k & 1)
            which[n++] = k;
    root_of_way(s, n, which, scale, root, inverse);
    for (size_t i = 0; i < n; i++) {
        y[i] = 0;
        for (size_t k = 0; k <= i; k++) {
            y[i] += inverse[i][k] * scale * s->deviation[which[k]] * s->side[which[k]];
            w->seen -= square(inverse[i][k]);
        }
        w->seen += 1;
        w->explained += square(y[i]);
        w->evidence -= log(root[i][i]);
    }
    w->evidence += 0.5 * w->explained;
    for (size_t i = 0; i < n; i++) {
        const double unit = scale * s->deviation[which[i]];
        for (size_t k = i; k < n; k++) {
            w->mean[which[i]] += unit * inverse[k][i] * y[k];
            for (size_t j = 0; j <= k; j++)
                w->covariance[which[i]][which[j]] += unit * inverse[k][i] * inverse[k][j] * scale * s->deviation[which[j]];
        }
    }
}

/* The departures that the readings show at all, as bits: none before there are more outlets than coordinates. */
static unsigned shown(const struct sight *s, size_t *count)
{
    unsigned members = 0;
    *count = 0;
    for (size_t k = 0; k < DEPARTURES; k++) {
        const double known = s->matrix[k][k] * square(widest * s->deviation[k]);
        if (s->rows > FITTED && known > share_to_show * (1 + known)) {
            members |= 1u << k;
            ++*count;
        }
    }
    return members;
}

/* Whether some of these departures, and no others, make a way. */
static int is_way(unsigned members, unsigned among) { return members != 0 && (members & ~among) == 0; }

/* Logarithm of how much more probable the readings are, now that the tube may depart. */
static double evidence_of_departing(const struct sight *s)
{
    size_t count;
    const unsigned among = shown(s, &count);
    double sum = 0, tried = 0;
    struct way w;
    for (unsigned members = 1; members < WAYS; members++)
        for (size_t a = 0; a < AMPLITUDES && is_way(members, among); a++) {
            weigh_way(s, members, amplitude[a], &w);
            sum += exp(smaller(w.evidence, 600));
            tried++;
        }
    return tried > 0 ? log(1 - departing_share + departing_share * sum / tried) : 0;
}

static void add_way(const struct way *w, double weight, struct departure_knowledge *k)
{
    for (size_t i = 0; i < DEPARTURES; i++)
        for (size_t j = 0; j < DEPARTURES; j++)
            k->moment[i][j] += weight * (w->covariance[i][j] + w->mean[i] * w->mean[j]);
}

/* The mean over all ways by Akaike's weights, once one explains more of chi-square than chance does in all but the false alarms. */
static void mean_over_ways(const struct sight *s, struct departure_knowledge *k)
{
    size_t count;
    const unsigned among = shown(s, &count);
    const double chance = 1 - pow(1 - false_alarms, 1 / larger((double)count, 1)); /* of each departure, after Sidak */
    const double worth = square(normal_quantile(1 - 0.5 * chance));
    double score[WAYS], most = 0, sum = 0;
    struct way w;
    int departs = 0;
    for (unsigned members = 1; members < WAYS; members++)
        if (is_way(members, among)) {
            weigh_way(s, members, widest, &w);
            score[members] = 0.5 * w.explained - w.seen;
            departs |= w.explained > worth * w.seen;
            most = larger(most, score[members]);
        }
    for (unsigned members = 1; members < WAYS && departs; members++)
        sum += is_way(members, among) ? exp(score[members] - most) : 0;
    for (unsigned members = 1; members < WAYS && departs; members++)
        if (is_way(members, among)) {
            weigh_way(s, members, widest, &w);
            add_way(&w, exp(score[members] - most) / sum, k);
        }
}

vtx_status weigh_departures(const struct curve_fit *c, struct departure_knowledge *known)
{
    struct sight s;
    memset(known, 0, sizeof *known);
    const vtx_status status = see_departures(c, &s);
    if (status != VTX_OK)
        return status;
    known->evidence = evidence_of_departing(&s);
    mean_over_ways(&s, known);
    return VTX_OK;
}
