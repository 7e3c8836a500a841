/* Readings that the others contradict. */
#include "misfit.h"

/* One calibration in a hundred sets a good reading aside. */
static const double outlier_probability = 0.01;

/* The reading whose removal improves the fit most, if that is beyond chance. */
static vtx_status worst_reading(const struct curve_fit *c, size_t *worst, int *found)
{
    double most = 0, error[OUTLETS], probability = 1;
    *found = 0;
    for (size_t i = 0; i < c->count; i++) {
        double squared;
        int dimension;
        if (!c->reading[i].used)
            continue;
        const vtx_status status = distance_from_others(c, i, &squared, &dimension, error);
        if (status == VTX_NO_SOLUTION)
            continue;
        if (status != VTX_OK)
            return status;
        if (squared > most) {
            most = squared;
            *worst = i;
            probability = distance_probability(c, squared, dimension, 1);
        }
    }
    const size_t n = used_readings(c);
    *found = n > 1 && probability < outlier_probability / (double)n;
    return VTX_OK;
}

/* Takes back suspects that the rest does not contradict. */
static vtx_status readmit(struct curve_fit *c, const int32_t *suspicious)
{
    const double limit = outlier_probability / (double)c->count;
    vtx_status status = VTX_OK;
    for (size_t i = 0; i < c->count && status == VTX_OK; i++) {
        double squared, error[OUTLETS];
        int dimension;
        if (!suspicious[i])
            continue;
        status = distance_from_others(c, i, &squared, &dimension, error);
        if (status == VTX_OK && distance_probability(c, squared, dimension, 0) > limit) {
            c->reading[i].used = 1;
            status = fit_curve(c);
        }
    }
    return status;
}

/* Leaves suspects out unless they are most of the readings. */
static vtx_status set_suspects_aside(struct curve_fit *c)
{
    int32_t suspicious[READINGS_MAX];
    size_t suspects = 0;
    vtx_status status = fit_curve_robustly(c, suspicious);
    for (size_t i = 0; i < c->count && status == VTX_OK; i++)
        suspects += suspicious[i] != 0;
    if (status != VTX_OK || suspects == 0 || 3 * suspects > used_readings(c))
        return status;
    for (size_t i = 0; i < c->count; i++)
        c->reading[i].used &= !suspicious[i];
    status = fit_curve(c);
    return status == VTX_OK ? readmit(c, suspicious) : status;
}

/* Where readings contradict each other so badly that no fit stands: leaves out the one without which the rest agree best. */
static vtx_status leave_worst_out(struct curve_fit *c)
{
    size_t worst = c->count;
    double least = 0;
    for (size_t i = 0; i < c->count; i++) {
        if (!c->reading[i].used)
            continue;
        c->reading[i].used = 0;
        if (fit_from_prior(c) == VTX_OK && (worst == c->count || c->chi_square < least)) {
            worst = i;
            least = c->chi_square;
        }
        c->reading[i].used = 1;
    }
    if (worst == c->count)
        return VTX_NOT_CONVERGED;
    c->reading[worst].used = 0;
    return fit_from_prior(c);
}

/* Departures from the family may explain what no reading is to be blamed for. */
static void let_depart(struct curve_fit *c, int free)
{
    for (size_t k = FITTED; k < COORDINATES; k++) {
        c->held[k] = !free;
        c->curve.x[k] = 0;
    }
}

static vtx_status vote(struct curve_fit *c)
{
    const size_t all = used_readings(c);
    vtx_status status = fit_curve(c);
    if (status == VTX_NOT_CONVERGED)
        status = leave_worst_out(c);
    if (status == VTX_OK)
        status = set_suspects_aside(c);
    if (status == VTX_OK)
        status = fit_curve(c);
    while (status == VTX_OK && 3 * (all - used_readings(c)) < all) {
        size_t worst = 0;
        int found;
        status = worst_reading(c, &worst, &found);
        if (status != VTX_OK || !found)
            return status;
        c->reading[worst].used = 0;
        status = fit_curve(c);
    }
    return status;
}

/* Who stays in use, and how probable everything read is then. */
struct election {
    int used[READINGS_MAX];
    size_t set_aside;
    double evidence;
    vtx_status status;
};

static void use(struct curve_fit *c, const int *used)
{
    for (size_t i = 0; i < c->count; i++)
        c->reading[i].used = used[i];
}

static void elect(struct curve_fit *c, const int *candidates, int may_depart, struct election *e)
{
    use(c, candidates);
    const size_t all = used_readings(c);
    memcpy(c->curve.x, c->prior, sizeof c->prior);
    let_depart(c, may_depart);
    e->status = vote(c);
    let_depart(c, 0);
    if (e->status == VTX_OK && may_depart)
        e->status = fit_from_prior(c);
    if (e->status == VTX_OK)
        e->status = weigh_fit(c, &e->evidence);
    e->set_aside = all - used_readings(c);
    e->evidence += (double)e->set_aside * log(wrong_share);
    for (size_t i = 0; i < c->count; i++)
        e->used[i] = c->reading[i].used;
}

/* Readings are blamed only as far as that is more probable than a tube that departs from the family. */
static vtx_status vote_twice(struct curve_fit *c)
{
    int candidates[READINGS_MAX];
    struct election family, departing;
    for (size_t i = 0; i < c->count; i++)
        candidates[i] = c->reading[i].used;
    elect(c, candidates, 0, &family);
    if (family.status == VTX_OK && family.set_aside == 0)
        return VTX_OK;
    elect(c, candidates, 1, &departing);
    if (family.status != VTX_OK || (departing.status == VTX_OK && departing.evidence >= family.evidence))
        return departing.status;
    use(c, family.used);
    const vtx_status status = fit_from_prior(c);
    return status == VTX_OK ? weigh_departures(c, &c->departing) : status;
}

vtx_status find_outliers(struct curve_fit *c)
{
    return used_readings(c) <= FEW_READINGS ? doubt_instruments(c) : vote_twice(c);
}

/* The quantity whose error alone explains most; of equals, the least sure one. */
int32_t suspect_of(const struct curve_reading *r, const double *error)
{
    const double (*v)[OUTLETS] = (const double (*)[OUTLETS])r->covariance;
    const int cold = outlet_counts(&r->state, COLD), hot = outlet_counts(&r->state, HOT);
    const double vc = cold ? v[0][0] : 1, vh = hot ? v[1][1] : 1, vch = cold && hot ? v[0][1] : 0;
    const double ec = cold ? error[COLD] : 0, eh = hot ? error[HOT] : 0, determinant = vc * vh - vch * vch;
    const double wc = (vh * ec - vch * eh) / determinant, wh = (vc * eh - vch * ec) / determinant;
    double best = -1;
    int32_t suspect = VTX_SUSPECT_NONE;
    for (size_t q = 0; q < STATE_INPUTS + OUTLETS; q++) {
        const double u = q < STATE_INPUTS ? r->state.u[q] : r->state.uy[q - STATE_INPUTS];
        const double ac = !cold ? 0 : q < STATE_INPUTS ? r->slope[COLD][q] : q - STATE_INPUTS == COLD;
        const double ah = !hot ? 0 : q < STATE_INPUTS ? r->slope[HOT][q] : q - STATE_INPUTS == HOT;
        const double spread = (vh * ac * ac - 2 * vch * ac * ah + vc * ah * ah) / determinant;
        if (!(u > 0) || !(spread > 0))
            continue;
        /* Explained chi-square; up to 1 more for a quantity that need not move far in its own measure. */
        const double explained = square(ac * wc + ah * wh) / spread + smaller(u * u * spread, 1);
        if (explained > best) {
            best = explained;
            suspect = VTX_SUSPECT_INLET_PRESSURE + (int32_t)q;
        }
    }
    return suspect;
}
