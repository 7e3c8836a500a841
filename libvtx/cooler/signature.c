/* A cause's size by least squares, with few forward passes: parabolas through the gauges at three sizes around the best one. */
#include "signature.h"

#include "../base/root.h"

enum { MIRRORED_STEPS = 2 * SIGNATURE_STEPS, REFINEMENTS = 40, HALVINGS = 20 };

static const double no_state = 1e12; /* chi-square of a size at which the cooler has no state: never the best */

static int only_grows(int32_t cause) { return fault_sizes(cause).low == 0; }

vtx_status signature_make(const vtx_job *healthy, int32_t cause, struct signature *s)
{
    const struct fault_range range = fault_sizes(cause);
    s->healthy = healthy;
    s->cause = cause;
    for (int i = 0; i <= SIGNATURE_STEPS; i++) {
        struct shown *t = &s->table[i];
        t->size = i == SIGNATURE_STEPS ? range.high : range.low + (range.high - range.low) * i / SIGNATURE_STEPS;
        t->known = (range.high > range.low || i == 0) && fault_readings(healthy, cause, t->size, t->readings) == VTX_OK;
    }
    return only_grows(cause) && !s->table[0].known ? VTX_OUT_OF_RANGE : VTX_OK;
}

vtx_status causes_make(const vtx_job *healthy, struct causes *c)
{
    vtx_status status = VTX_OK;
    for (int i = 0; i < CAUSES && status == VTX_OK; i++) {
        c->possible[i] = fault_possible(healthy, VTX_CAUSE_NOTHING + i);
        if (c->possible[i])
            status = signature_make(healthy, VTX_CAUSE_NOTHING + i, &c->signature[i]);
    }
    return status;
}

static void mirror(const struct signature *s, double readings[READINGS])
{
    for (int i = 0; i < READINGS; i++)
        readings[i] = 2 * s->table[0].readings[i] - readings[i];
}

vtx_status signature_at(const struct signature *s, double size, double readings[READINGS])
{
    const int mirrored = size < 0 && only_grows(s->cause);
    const vtx_status status = fault_readings(s->healthy, s->cause, mirrored ? -size : size, readings);
    if (status == VTX_OK && mirrored)
        mirror(s, readings);
    return status;
}

double misfit(const double readings[READINGS], const struct evidence *e)
{
    double difference[READINGS];
    for (int i = 0; i < READINGS; i++)
        difference[i] = e->given[i] ? readings[i] - e->value[i] : 0;
    return evidence_length(e, difference);
}

/* A size tried, with its sum of squares. */
struct trial {
    struct shown at;
    double chi_square;
};

static void judge(struct trial *t, const struct evidence *e) { t->chi_square = t->at.known ? misfit(t->at.readings, e) : no_state; }

static void try_size(const struct signature *s, const struct evidence *e, double size, struct trial *t)
{
    t->at.size = size;
    t->at.known = signature_at(s, size, t->at.readings) == VTX_OK;
    judge(t, e);
}

/* The table, with its mirror image ahead of it for causes that only grow. */
static int list_trials(const struct signature *s, const struct evidence *e, struct trial trials[MIRRORED_STEPS + 1])
{
    const int mirrored = only_grows(s->cause) ? SIGNATURE_STEPS : 0;
    for (int i = 0; i <= mirrored + SIGNATURE_STEPS; i++) {
        struct trial *t = &trials[i];
        t->at = s->table[i < mirrored ? mirrored - i : i - mirrored];
        if (i < mirrored) {
            t->at.size = -t->at.size;
            if (t->at.known)
                mirror(s, t->at.readings);
        }
        judge(t, e);
    }
    return mirrored + SIGNATURE_STEPS + 1;
}

/* Moves a neighbour of the best size towards it until the cooler has a state there. */
static void reach_state(const struct signature *s, const struct evidence *e, const struct trial *best, struct trial *neighbour)
{
    for (int i = 0; i < HALVINGS && !neighbour->at.known; i++)
        try_size(s, e, 0.5 * (best->at.size + neighbour->at.size), neighbour);
}

/* Sum of squares if every gauge followed a parabola through three trials. */
struct parabolas {
    const struct trial *three;
    const struct evidence *evidence;
};

static double parabola_misfit(double size, void *context)
{
    const struct parabolas *p = context;
    const struct trial *t = p->three;
    const double a = size - t[0].at.size, b = size - t[1].at.size, c = size - t[2].at.size;
    const double ab = t[0].at.size - t[1].at.size, ac = t[0].at.size - t[2].at.size, bc = t[1].at.size - t[2].at.size;
    double readings[READINGS];
    for (int i = 0; i < READINGS; i++)
        readings[i] = t[0].at.readings[i] * (b / ab) * (c / ac) - t[1].at.readings[i] * (a / ab) * (c / bc)
                      + t[2].at.readings[i] * (a / ac) * (b / bc);
    return misfit(readings, p->evidence);
}

/* Puts a trial among three in order of size and drops the one farthest from the best. */
static void keep_best_three(struct trial three[3], const struct trial *added)
{
    struct trial four[4];
    int place = 0, best = 0;
    while (place < 3 && three[place].at.size < added->at.size)
        place++;
    for (int i = 0; i < 4; i++)
        four[i] = i < place ? three[i] : i == place ? *added : three[i - 1];
    for (int i = 1; i < 4; i++)
        best = four[i].chi_square < four[best].chi_square ? i : best;
    memcpy(three, best < 2 ? four : four + 1, 3 * sizeof *three);
}

static int stands_at(const struct trial three[3], double size, double tolerance)
{
    for (int i = 0; i < 3; i++)
        if (fabs(size - three[i].at.size) < tolerance)
            return 1;
    return 0;
}

static vtx_status refine(const struct signature *s, const struct evidence *e, struct trial three[3])
{
    const struct fault_range range = fault_sizes(s->cause);
    const double tolerance = 1e-9 * (range.high - range.low);
    struct parabolas p = { three, e };
    for (int i = 0; i < REFINEMENTS; i++) {
        struct trial next;
        double size;
        const vtx_status status = find_minimum(parabola_misfit, &p, three[0].at.size, three[2].at.size, 0.1 * tolerance, &size);
        if (status != VTX_OK)
            return status;
        if (stands_at(three, size, tolerance))
            return VTX_OK;
        try_size(s, e, size, &next);
        if (!next.at.known)
            return VTX_OK; /* a hole between two states: the best one stays */
        keep_best_three(three, &next);
    }
    return VTX_OK; /* rounding makes the size wander within what the readings can tell */
}

vtx_status signature_fit(const struct signature *s, const struct evidence *e, struct fitted_size *fit)
{
    struct trial trials[MIRRORED_STEPS + 1];
    fit->uncertainty = quiet_nan();
    if (s->cause == VTX_CAUSE_NOTHING) {
        fit->size = 0;
        fit->chi_square = misfit(s->table[0].readings, e);
        return VTX_OK;
    }
    const int count = list_trials(s, e, trials);
    int best = 0;
    for (int i = 1; i < count; i++)
        best = trials[i].chi_square < trials[best].chi_square ? i : best;
    struct trial *three = &trials[(best == 0 ? 1 : best == count - 1 ? count - 2 : best) - 1];
    const struct trial leading = trials[best];
    vtx_status status = VTX_OK;
    for (int i = 0; i < 3; i++)
        reach_state(s, e, &leading, &three[i]);
    if (three[0].at.known && three[1].at.known && three[2].at.known)
        status = refine(s, e, three);
    best = 0;
    for (int i = 1; i < 3; i++)
        best = three[i].chi_square < three[best].chi_square ? i : best;
    fit->size = three[best].at.size;
    fit->chi_square = fit->size < 0 && only_grows(s->cause) ? misfit(s->table[0].readings, e) : three[best].chi_square;
    return status;
}

double signature_uncertainty(const struct signature *s, const struct evidence *e, double size)
{
    const struct fault_range range = fault_sizes(s->cause);
    const double step = 1e-4 * (range.high - range.low);
    const double low = larger(size - step, only_grows(s->cause) ? -range.high : range.low), high = smaller(size + step, range.high);
    double below[READINGS], above[READINGS], slope[READINGS];
    if (!(high > low) || signature_at(s, low, below) != VTX_OK || signature_at(s, high, above) != VTX_OK)
        return quiet_nan();
    for (int i = 0; i < READINGS; i++)
        slope[i] = (above[i] - below[i]) / (high - low);
    const double information = evidence_length(e, slope);
    /* Three standard uncertainties either way must fit into the range, or its ends rather than the readings decide the size. */
    const double unseen = (range.high - range.low) / 6;
    return information * square(unseen) > 1 ? 1 / sqrt(information) : quiet_nan();
}
