/* Cold fractions that fulfil a wish. */
#include "outlet.h"

static double cooling_of(const struct outlet *o, double mu)
{
    return per_inlet_air(&o->e, mu * (o->target_enthalpy - cold_enthalpy(o, mu)));
}

static double cooling_excess(double mu, void *context)
{
    const struct outlet *o = context;
    return cooling_of(o, mu) - o->wanted;
}

static double negative_cooling(double mu, void *context) { return -cooling_of(context, mu); }

/* The cold fraction of most cooling; NO_SOLUTION when nothing is colder than the target. */
static vtx_status best_fraction_of(struct outlet *o, double *mu)
{
    double coldest;
    vtx_status status = coldest_fraction_of(o, &coldest);
    if (status != VTX_OK)
        return status;
    const double margin = o->target_enthalpy - cold_enthalpy(o, coldest);
    if (margin <= 0)
        return VTX_NO_SOLUTION;
    if (o->tube->cold_leak != 0)
        return find_minimum(negative_cooling, o, 0, 1, valley, mu);
    const double lift = o->target_enthalpy - o->e.inlet_enthalpy;
    /* delta beyond 2/(1-m) means all air; this also keeps a vanishing peak from overflowing. */
    *mu = lift * (1 - coldest) >= 2 * o->peak ? 1 : best_fraction(coldest, lift / o->peak);
    return VTX_OK;
}

static vtx_status cooling_fraction_of(struct outlet *o, int32_t branch, double *mu)
{
    double best;
    vtx_status status = best_fraction_of(o, &best);
    if (status != VTX_OK)
        return status;
    const int less = branch == VTX_BRANCH_LESS_COLD_AIR;
    return root_between(cooling_excess, o, less ? 0 : best, less ? best : 1, o->e.work, mu);
}

typedef vtx_status fraction_solver(struct outlet *o, int32_t branch, double *mu);

/* Sorts what the ends of the band gave around the typical value; an end without a solution is NaN. */
static void order_ends(const double end[2], const int solved[2], double middle, double *low, double *high, int32_t *advisories)
{
    const int falling = solved[0] ? end[0] > middle : solved[1] && end[1] < middle;
    *low = solved[falling] ? end[falling] : quiet_nan();
    *high = solved[!falling] ? end[!falling] : quiet_nan();
    if (!solved[0] || !solved[1])
        *advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

/* Typical value first, then both ends of the band, which may fail. */
static vtx_status solve_band(struct outlet *o, int32_t branch, fraction_solver *solve, vtx_fraction_setting *setting)
{
    const double efficiency[2] = { o->tube->efficiency_low, o->tube->efficiency_high };
    double end[2];
    set_efficiency(o, o->tube->peak_efficiency);
    vtx_status status = solve(o, branch, &setting->cold_fraction);
    if (status != VTX_OK)
        return status;
    setting->advisories = curve_advisories(o->tube, o->e.log_ratio, setting->cold_fraction);
    setting->spare = 0;
    int solved[2];
    for (int i = 0; i < 2; i++) {
        set_efficiency(o, efficiency[i]);
        solved[i] = solve(o, branch, &end[i]) == VTX_OK;
    }
    order_ends(end, solved, setting->cold_fraction, &setting->cold_fraction_low, &setting->cold_fraction_high, &setting->advisories);
    return VTX_OK;
}

/* On NO_SOLUTION the attainable fields stay. */
static vtx_status fail_fraction(vtx_fraction_setting *setting, vtx_status status)
{
    if (status == VTX_NO_SOLUTION && setting) {
        const double low = setting->attainable_low, high = setting->attainable_high;
        POISON_STRUCT(setting, vtx_fraction_setting, advisories, status);
        setting->attainable_low = low;
        setting->attainable_high = high;
        return status;
    }
    return POISON_STRUCT(setting, vtx_fraction_setting, advisories, status);
}

static vtx_status check_branch(int32_t branch)
{
    return require(branch == VTX_BRANCH_LESS_COLD_AIR || branch == VTX_BRANCH_MORE_COLD_AIR);
}

static vtx_status check_wish(double temperature) { return check_positive(temperature, 50, 1000); }

vtx_status vtx_cold_fraction_for_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                             double inlet_temperature, double humidity_ratio, double cold_pressure,
                                             double cold_temperature, int32_t branch, vtx_fraction_setting *setting)
{
    struct outlet o;
    double low, high;
    vtx_status status = worse(worse(require(setting != NULL), check_wish(cold_temperature)),
                              worse(check_branch(branch), check_supply(tube, model, inlet_pressure, inlet_temperature,
                                                                       humidity_ratio, cold_pressure)));
    if (status == VTX_OK)
        status = open_outlet(&o, tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure);
    if (status == VTX_OK)
        status = feed_enthalpy(&o.e, cold_pressure, cold_temperature, &o.wanted);
    if (status == VTX_OK) {
        set_efficiency(&o, tube->peak_efficiency);
        status = branch_ends(&o, branch, &low, &high);
    }
    const int less = branch == VTX_BRANCH_LESS_COLD_AIR;
    if (status == VTX_OK)
        status = feed_temperature(&o.e, cold_pressure, cold_enthalpy(&o, less ? high : low), &setting->attainable_low);
    if (status == VTX_OK)
        status = feed_temperature(&o.e, cold_pressure, cold_enthalpy(&o, less ? low : high), &setting->attainable_high);
    if (status == VTX_OK)
        status = solve_band(&o, branch, cold_fraction_of, setting);
    return status == VTX_OK ? VTX_OK : fail_fraction(setting, status);
}

vtx_status vtx_cold_fraction_for_hot_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                 double inlet_temperature, double humidity_ratio, double cold_pressure,
                                                 double hot_pressure, double hot_temperature, vtx_fraction_setting *setting)
{
    struct outlet o;
    double hottest = 1;
    vtx_status status = worse(worse(require(setting != NULL), check_wish(hot_temperature)),
                              worse(check_outlet(model, inlet_pressure, hot_pressure),
                                    check_supply(tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure)));
    if (status == VTX_OK)
        status = open_outlet(&o, tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure);
    if (status == VTX_OK)
        status = feed_enthalpy(&o.e, hot_pressure, hot_temperature, &o.wanted);
    if (status == VTX_OK && tube->hot_leak != 0)
        status = feed_enthalpy(&o.e, hot_pressure, tube->ambient_temperature, &o.ambient_enthalpy);
    if (status == VTX_OK) {
        set_efficiency(&o, tube->peak_efficiency);
        status = hottest_fraction_of(&o, &hottest);
    }
    if (status == VTX_OK)
        status = feed_temperature(&o.e, hot_pressure, hot_enthalpy(&o, 0), &setting->attainable_low);
    if (status == VTX_OK)
        status = feed_temperature(&o.e, hot_pressure, hot_enthalpy(&o, hottest), &setting->attainable_high);
    if (status == VTX_OK)
        status = solve_band(&o, 0, hot_fraction_of, setting);
    return status == VTX_OK ? VTX_OK : fail_fraction(setting, status);
}

vtx_status vtx_coldest_outlet(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                              double humidity_ratio, double cold_pressure, double *cold_fraction, double *cold_temperature)
{
    struct outlet o;
    double mu = 0, t = 0;
    vtx_status status = worse(require(cold_fraction != NULL),
                              check_supply(tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure));
    if (status == VTX_OK)
        status = open_outlet(&o, tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure);
    if (status == VTX_OK) {
        set_efficiency(&o, tube->peak_efficiency);
        status = coldest_fraction_of(&o, &mu);
    }
    if (status == VTX_OK)
        status = feed_temperature(&o.e, cold_pressure, cold_enthalpy(&o, mu), &t);
    if (status != VTX_OK)
        return poison(cold_temperature, poison(cold_fraction, status));
    *cold_fraction = mu;
    if (cold_temperature)
        *cold_temperature = t;
    return VTX_OK;
}

/* Expansion, target and typical efficiency, shared by the two calls about cooling. */
static vtx_status open_cooling(struct outlet *o, const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                               double humidity_ratio, double cold_pressure, double target_temperature)
{
    vtx_status status = worse(check_wish(target_temperature),
                              check_supply(tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure));
    if (status == VTX_OK)
        status = open_outlet(o, tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure);
    if (status == VTX_OK)
        status = feed_enthalpy(&o->e, cold_pressure, target_temperature, &o->target_enthalpy);
    if (status == VTX_OK)
        set_efficiency(o, tube->peak_efficiency);
    return status;
}

static vtx_status best_band(struct outlet *o, vtx_best_setting *best)
{
    const double efficiency[2] = { o->tube->efficiency_low, o->tube->efficiency_high };
    double end[2], cooling[2];
    int solved[2];
    for (int i = 0; i < 2; i++) {
        set_efficiency(o, efficiency[i]);
        cooling[i] = cooling_of(o, best->cold_fraction);
        solved[i] = best_fraction_of(o, &end[i]) == VTX_OK;
    }
    order_ends(end, solved, best->cold_fraction, &best->cold_fraction_low, &best->cold_fraction_high, &best->advisories);
    best->cooling_low = cooling[0];
    best->cooling_high = cooling[1];
    return VTX_OK;
}

vtx_status vtx_best_cold_fraction(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                  double humidity_ratio, double cold_pressure, double target_temperature, vtx_best_setting *best)
{
    struct outlet o;
    double coldest = 0, attainable = 0;
    vtx_status status = best ? open_cooling(&o, tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure,
                                            target_temperature)
                             : VTX_BAD_ARGUMENT;
    if (status == VTX_OK)
        status = coldest_fraction_of(&o, &coldest);
    if (status == VTX_OK)
        status = feed_temperature(&o.e, cold_pressure, cold_enthalpy(&o, coldest), &attainable);
    if (status == VTX_OK)
        status = best_fraction_of(&o, &best->cold_fraction);
    if (status == VTX_OK)
        status = feed_temperature(&o.e, cold_pressure, cold_enthalpy(&o, best->cold_fraction), &best->cold_temperature);
    if (status != VTX_OK) {
        POISON_STRUCT(best, vtx_best_setting, advisories, status);
        if (status == VTX_NO_SOLUTION)
            best->attainable_temperature = attainable;
        return status;
    }
    best->cooling = cooling_of(&o, best->cold_fraction);
    best->attainable_temperature = attainable;
    best->advisories = curve_advisories(tube, o.e.log_ratio, best->cold_fraction);
    best->spare = 0;
    return best_band(&o, best);
}

vtx_status vtx_cold_fraction_for_cooling(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                         double inlet_temperature, double humidity_ratio, double cold_pressure,
                                         double target_temperature, double cooling, int32_t branch, vtx_fraction_setting *setting)
{
    struct outlet o;
    double best = 0;
    vtx_status status = worse(worse(require(setting != NULL), check_range(cooling, -1e7, 1e7)), check_branch(branch));
    if (status == VTX_OK)
        status = open_cooling(&o, tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, target_temperature);
    if (status == VTX_OK) {
        o.wanted = cooling;
        setting->attainable_low = setting->attainable_high = quiet_nan();
        status = best_fraction_of(&o, &best);
    }
    if (status == VTX_OK) {
        setting->attainable_low = cooling_of(&o, branch == VTX_BRANCH_LESS_COLD_AIR ? 0 : 1);
        setting->attainable_high = cooling_of(&o, best);
        status = solve_band(&o, branch, cooling_fraction_of, setting);
    }
    return status == VTX_OK ? VTX_OK : fail_fraction(setting, status);
}
