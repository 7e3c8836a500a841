/* Decision rules for a limit (JCGM 106:2012). */
#include "decision_kernel.h"

#include "quadrature.h"

static const double value_max = 1e12;
/* Beyond so many standard deviations nothing is left that a double of 1 could hold. */
static const double tail = 12;

static vtx_status check_value(double x) { return check_range(x, -value_max, value_max); }

static vtx_status check_uncertainty(double u) { return check_positive(u, 1e-12, value_max); }

static vtx_status check_freedom(double freedom)
{
    return freedom == 0 ? VTX_OK : check_positive(freedom, 1, 1e5);
}

static vtx_status check_side(int32_t side) { return require(side == VTX_TOLERANCE_UPPER || side == VTX_TOLERANCE_LOWER); }

static vtx_status check_interval(double lower, double upper)
{
    const vtx_status status = worse(check_value(lower), check_value(upper));
    return status == VTX_OK ? require(lower < upper) : status;
}

/* How far a value lies on the right side of the limit. */
static double inside(int32_t side, double limit, double value)
{
    return side == VTX_TOLERANCE_UPPER ? limit - value : value - limit;
}

vtx_status vtx_conformance_probability(int32_t side, double limit, double value, double uncertainty, double degrees_of_freedom,
                                       double *probability)
{
    vtx_status status = worse(require(probability != NULL), worse(check_side(side), check_value(limit)));
    status = worse(status, worse(check_value(value), worse(check_uncertainty(uncertainty), check_freedom(degrees_of_freedom))));
    if (status != VTX_OK)
        return poison(probability, status);
    *probability = error_probability(inside(side, limit, value) / uncertainty, degrees_of_freedom);
    return VTX_OK;
}

vtx_status vtx_conformance_probability_between(double lower_limit, double upper_limit, double value, double uncertainty,
                                               double degrees_of_freedom, double *probability)
{
    vtx_status status = worse(require(probability != NULL), check_interval(lower_limit, upper_limit));
    status = worse(status, worse(check_value(value), worse(check_uncertainty(uncertainty), check_freedom(degrees_of_freedom))));
    if (status != VTX_OK)
        return poison(probability, status);
    *probability = conformance_between(lower_limit - value, upper_limit - value, uncertainty, degrees_of_freedom);
    return VTX_OK;
}

vtx_status vtx_guard_band(double consumer_risk, double uncertainty, double degrees_of_freedom, double *guard_band)
{
    const vtx_status status = worse(worse(require(guard_band != NULL), check_consumer_risk(consumer_risk)),
                                    worse(check_uncertainty(uncertainty), check_freedom(degrees_of_freedom)));
    if (status != VTX_OK)
        return poison(guard_band, status);
    *guard_band = guard_factor(consumer_risk, degrees_of_freedom) * uncertainty;
    return VTX_OK;
}

vtx_status vtx_acceptance_limit(int32_t side, double limit, double guard_band, double *acceptance_limit)
{
    const vtx_status status = worse(worse(require(acceptance_limit != NULL), check_side(side)), worse(check_value(limit), check_value(guard_band)));
    if (status != VTX_OK)
        return poison(acceptance_limit, status);
    *acceptance_limit = side == VTX_TOLERANCE_UPPER ? limit - guard_band : limit + guard_band;
    return VTX_OK;
}

vtx_status vtx_decide(int32_t side, double limit, double value, double guard_band, int32_t *verdict)
{
    const vtx_status status = worse(worse(require(verdict != NULL), check_side(side)),
                                    worse(check_value(limit), worse(check_value(value), check_amount(guard_band, value_max))));
    if (status != VTX_OK)
        return poison_integer(verdict, status);
    *verdict = verdict_of_margin(inside(side, limit, value), guard_band);
    return VTX_OK;
}

vtx_status vtx_decide_between(double lower_limit, double upper_limit, double value, double guard_band, int32_t *verdict)
{
    const vtx_status status = worse(worse(require(verdict != NULL), check_interval(lower_limit, upper_limit)),
                                    worse(check_value(value), check_amount(guard_band, value_max)));
    if (status != VTX_OK)
        return poison_integer(verdict, status);
    *verdict = verdict_of_margin(smaller(value - lower_limit, upper_limit - value), guard_band);
    return VTX_OK;
}

vtx_status vtx_deciding_uncertainty(double consumer_risk, double margin, double degrees_of_freedom, double *uncertainty)
{
    const vtx_status status = worse(worse(require(uncertainty != NULL), check_consumer_risk(consumer_risk)),
                                    worse(check_amount(margin, value_max), check_freedom(degrees_of_freedom)));
    if (status != VTX_OK)
        return poison(uncertainty, status);
    *uncertainty = margin / guard_factor(consumer_risk, degrees_of_freedom);
    return VTX_OK;
}

/* A process of mean 0 and deviation 1, its limits and its measurement in that unit. */
struct risk {
    double lower_acceptance, upper_acceptance;
    double uncertainty;
    int accepted; /* whose share is wanted: of what is accepted, else of what is rejected */
};

/* Small tails are added or subtracted, never taken from 1. */
static double share_at(const struct risk *r, double x)
{
    const double above_lower = (x - r->lower_acceptance) / r->uncertainty, below_upper = (r->upper_acceptance - x) / r->uncertainty;
    if (!r->accepted)
        return normal_probability(-above_lower) + normal_probability(-below_upper);
    return above_lower > below_upper ? normal_probability(below_upper) - normal_probability(-above_lower)
                                     : normal_probability(above_lower) - normal_probability(-below_upper);
}

static double density_times_share(const struct risk *r, double x) { return exp(-0.5 * x * x) / sqrt(2 * pi) * share_at(r, x); }

/* Panels no wider than the process or, near an acceptance limit, the measurement spreads. */
static double integrate_smooth(const struct risk *r, double from, double to)
{
    const double middle = 0.5 * (from + to);
    const double distance = smaller(fabs(middle - r->lower_acceptance), fabs(middle - r->upper_acceptance));
    const double widest = distance < tail * r->uncertainty ? smaller(1, r->uncertainty) : 1;
    const int panels = (int)ceil((to - from) / widest);
    const double half = 0.5 * (to - from) / panels;
    double sum = 0;
    for (int p = 0; p < panels; p++) {
        const double centre = from + (2 * p + 1) * half;
        for (int i = 0; i < GAUSS_HALF; i++)
            sum += gauss_weight[i] * (density_times_share(r, centre - half * gauss_node[i]) + density_times_share(r, centre + half * gauss_node[i]));
    }
    return sum * half;
}

/* Integral over from..to, cut where the measurement's spread begins and ends to matter. */
static double integrate(const struct risk *r, double from, double to)
{
    const double reach = tail * r->uncertainty;
    double cut[5] = { r->lower_acceptance - reach, smaller(r->lower_acceptance + reach, r->upper_acceptance - reach),
                      larger(r->lower_acceptance + reach, r->upper_acceptance - reach), r->upper_acceptance + reach, tail };
    double at = larger(from, -tail), sum = 0;
    const double end = smaller(to, tail);
    for (size_t i = 0; i < ARRAY_LENGTH(cut) && at < end; i++) {
        const double next = smaller(cut[i], end);
        if (next > at) {
            sum += integrate_smooth(r, at, next);
            at = next;
        }
    }
    return sum;
}

/* All in the process's own unit. */
static void global_risks(const double limit[2], const double acceptance[2], double uncertainty, double *consumer_risk, double *producer_risk)
{
    struct risk r = { acceptance[0], acceptance[1], uncertainty, 1 };
    *consumer_risk = integrate(&r, -tail, limit[0]) + integrate(&r, limit[1], tail);
    r.accepted = 0;
    if (producer_risk)
        *producer_risk = integrate(&r, limit[0], limit[1]);
}

static vtx_status check_process(double mean, double deviation, double uncertainty)
{
    vtx_status status = worse(check_value(mean), worse(check_positive(deviation, 1e-6, value_max), check_uncertainty(uncertainty)));
    return status == VTX_OK ? check_range(uncertainty / deviation, 1e-6, 1e6) : status;
}

vtx_status vtx_global_risk(int32_t side, double limit, double acceptance_limit, double process_mean, double process_deviation,
                           double uncertainty, double *consumer_risk, double *producer_risk)
{
    vtx_status status = worse(require(consumer_risk != NULL), worse(check_side(side), worse(check_value(limit), check_value(acceptance_limit))));
    status = worse(status, check_process(process_mean, process_deviation, uncertainty));
    if (status != VTX_OK) {
        poison(producer_risk, status);
        return poison(consumer_risk, status);
    }
    const double u = uncertainty / process_deviation, mirror = side == VTX_TOLERANCE_UPPER ? 1 : -1;
    const double upper = mirror * (limit - process_mean) / process_deviation;
    const double upper_acceptance = mirror * (acceptance_limit - process_mean) / process_deviation;
    /* The other side is open: a limit where neither process nor measurement comes. */
    const double open = smaller(smaller(upper, upper_acceptance), 0) - 3 * tail * (1 + u);
    global_risks((const double[2]){ open, upper }, (const double[2]){ open, upper_acceptance }, u, consumer_risk, producer_risk);
    return VTX_OK;
}

vtx_status vtx_global_risk_between(double lower_limit, double upper_limit, double lower_acceptance, double upper_acceptance,
                                   double process_mean, double process_deviation, double uncertainty, double *consumer_risk,
                                   double *producer_risk)
{
    vtx_status status = worse(require(consumer_risk != NULL), check_interval(lower_limit, upper_limit));
    status = worse(status, worse(check_interval(lower_acceptance, upper_acceptance),
                                 check_process(process_mean, process_deviation, uncertainty)));
    if (status != VTX_OK) {
        poison(producer_risk, status);
        return poison(consumer_risk, status);
    }
    const double limit[2] = { (lower_limit - process_mean) / process_deviation, (upper_limit - process_mean) / process_deviation };
    const double acceptance[2] = { (lower_acceptance - process_mean) / process_deviation, (upper_acceptance - process_mean) / process_deviation };
    global_risks(limit, acceptance, uncertainty / process_deviation, consumer_risk, producer_risk);
    return VTX_OK;
}
