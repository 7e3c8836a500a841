/* Readings: checks, and defaults for what was not read. */
#include <vtx/cold_fraction.h>

#include "reading_state.h"

/* Common practice, no source. */
static const double default_temperature_uncertainty = 0.5, default_fraction_uncertainty = 0.02;
static const double default_pressure_share = 0.01, default_flow_share = 0.03;
static const double unread_outlet_pressure = 101325, unread_outlet_pressure_uncertainty = 5000;

/* So badly known that only the outlets decide; and the step over which the curve still is straight. */
static const double unread_temperature_uncertainty = 100, unread_temperature_step = 0.5;
static const double unread_fraction_uncertainty = 1, unread_fraction_step = 0.01;

static double or_else(double x, double otherwise) { return is_unread(x) ? otherwise : x; }

vtx_status vtx_reading_init(vtx_reading *reading)
{
    if (!reading)
        return VTX_BAD_ARGUMENT;
    poison_record(reading, sizeof *reading / sizeof(double), 0, VTX_OK);
    memset(reading->reserved, 0, sizeof reading->reserved);
    return VTX_OK;
}

static vtx_status check_read(double x, double low, double high, double uncertainty, double uncertainty_max)
{
    const vtx_status status = is_unread(x) ? VTX_OK : check_positive(x, low, high);
    return worse(status, is_unread(uncertainty) ? VTX_OK : check_amount(uncertainty, uncertainty_max));
}

static vtx_status check_pressures(const vtx_reading *r, int32_t model)
{
    const double high = inlet_pressure_max(model), low = outlet_pressure_min;
    vtx_status status = check_read(r->inlet_pressure, inlet_pressure_min, high, r->inlet_pressure_uncertainty, high);
    status = worse(status, check_read(r->cold_pressure, low, high, r->cold_pressure_uncertainty, high));
    return worse(status, check_read(r->hot_pressure, low, high, r->hot_pressure_uncertainty, high));
}

static vtx_status check_temperatures(const vtx_reading *r)
{
    vtx_status status = check_read(r->inlet_temperature, inlet_temperature_min, inlet_temperature_max, r->inlet_temperature_uncertainty, 50);
    status = worse(status, check_read(r->cold_temperature, 100, 1000, r->cold_temperature_uncertainty, 50));
    status = worse(status, check_read(r->hot_temperature, 100, 1000, r->hot_temperature_uncertainty, 50));
    return worse(status, check_read(r->ambient_temperature, 150, 400, 0, 0));
}

static vtx_status check_flows(const vtx_reading *r)
{
    vtx_status status = check_read(r->inlet_mass_flow, 1e-9, 100, r->inlet_mass_flow_uncertainty, 100);
    status = worse(status, check_read(r->cold_mass_flow, 1e-9, 100, r->cold_mass_flow_uncertainty, 100));
    return worse(status, check_read(r->hot_mass_flow, 1e-9, 100, r->hot_mass_flow_uncertainty, 100));
}

vtx_status check_reading(const vtx_reading *r, int32_t model)
{
    if (!r)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_feed(model, 2e5, 300, 0), worse(check_pressures(r, model), worse(check_temperatures(r), check_flows(r))));
    status = worse(status, is_unread(r->cold_fraction) ? VTX_OK : check_share(r->cold_fraction));
    status = worse(status, is_unread(r->cold_fraction_uncertainty) ? VTX_OK : check_share(r->cold_fraction_uncertainty));
    status = worse(status, is_unread(r->humidity_ratio) ? VTX_OK : check_amount(r->humidity_ratio, humidity_ratio_max));
    status = worse(status, is_unread(r->humidity_ratio_uncertainty) ? VTX_OK : check_amount(r->humidity_ratio_uncertainty, 0.1));
    for (size_t i = 0; i < ARRAY_LENGTH(r->reserved); i++)
        status = worse(status, require(!is_unread(r->reserved[i]) && r->reserved[i] == 0));
    return status;
}

/* What flows say about the cold fraction. */
struct flow_evidence {
    int found, contradicts;
    double fraction, uncertainty;
};

static double flow_uncertainty(double flow, double stated)
{
    return larger(or_else(stated, default_flow_share * flow), 1e-9 * flow);
}

/* The cold fraction from inlet and one outlet; an outlet above the inlet within doubt counts as all of it. */
static void evidence_of_inlet_and(int32_t pair, double inlet, double u_inlet, double outlet, double u_outlet, struct flow_evidence *e)
{
    e->contradicts = outlet - inlet > contradiction * hypot(u_inlet, u_outlet);
    e->found = !e->contradicts && vtx_cold_fraction_from_flows(pair, inlet, smaller(outlet, inlet), u_inlet, u_outlet, &e->fraction,
                                                               &e->uncertainty) == VTX_OK;
}

static void evidence_of_three(const double *flow, const double *u, struct flow_evidence *e)
{
    vtx_flow_balance balance;
    e->found = vtx_cold_fraction_from_three_flows(flow[0], flow[1], flow[2], u[0], u[1], u[2], &balance) == VTX_OK;
    e->contradicts = !e->found || fabs(balance.discrepancy) > contradiction;
    e->fraction = balance.cold_fraction;
    e->uncertainty = balance.uncertainty;
}

static struct flow_evidence evidence_of_flows(const vtx_reading *r)
{
    struct flow_evidence e = { 0 };
    const double flow[3] = { r->inlet_mass_flow, r->cold_mass_flow, r->hot_mass_flow };
    const double stated[3] = { r->inlet_mass_flow_uncertainty, r->cold_mass_flow_uncertainty, r->hot_mass_flow_uncertainty };
    const int inlet = !is_unread(flow[0]), cold = !is_unread(flow[1]), hot = !is_unread(flow[2]);
    double u[3];
    for (int i = 0; i < 3; i++)
        u[i] = is_unread(flow[i]) ? 0 : flow_uncertainty(flow[i], stated[i]);
    if (inlet && cold && hot)
        evidence_of_three(flow, u, &e);
    else if (inlet && cold)
        evidence_of_inlet_and(VTX_FLOWS_INLET_AND_COLD, flow[0], u[0], flow[1], u[1], &e);
    else if (inlet && hot)
        evidence_of_inlet_and(VTX_FLOWS_INLET_AND_HOT, flow[0], u[0], flow[2], u[2], &e);
    else if (cold && hot)
        e.found = vtx_cold_fraction_from_flows(VTX_FLOWS_COLD_AND_HOT, flow[1], flow[2], u[1], u[2], &e.fraction, &e.uncertainty) == VTX_OK;
    return e;
}

/* Cold fraction as read, from flows, or joined. */
static void find_fraction(const vtx_reading *r, struct reading_state *s)
{
    struct flow_evidence e = evidence_of_flows(r);
    double discrepancy = 0, *mu = &s->x[COLD_FRACTION], *u = &s->u[COLD_FRACTION];
    *mu = or_else(r->cold_fraction, e.fraction);
    *u = is_unread(r->cold_fraction) ? e.uncertainty : or_else(r->cold_fraction_uncertainty, default_fraction_uncertainty);
    if (!is_unread(r->cold_fraction) && e.found && !e.contradicts) {
        const double fraction = *mu, own = larger(*u, 1e-12);
        vtx_cold_fraction_combined(fraction, own, e.fraction, smaller(larger(e.uncertainty, 1e-12), 1), mu, u, &discrepancy);
    }
    if (e.contradicts || fabs(discrepancy) > contradiction) {
        s->check.verdict = VTX_READING_FLOWS_CONTRADICT;
        s->check.suspect = VTX_SUSPECT_FLOWS;
    }
    s->step[COLD_FRACTION] = smaller(*u, unread_fraction_step);
    if (is_unread(r->cold_fraction) && !e.found) {
        *mu = quiet_nan();
        s->unknown_inputs++;
    }
}

static void take(double value, double uncertainty, double default_uncertainty, double *x, double *u)
{
    *x = value;
    *u = or_else(uncertainty, default_uncertainty);
}

static void take_outlet_pressure(double value, double uncertainty, double *x, double *u)
{
    if (is_unread(value))
        take(unread_outlet_pressure, uncertainty, unread_outlet_pressure_uncertainty, x, u);
    else
        take(value, uncertainty, default_pressure_share * value, x, u);
}

static void take_all(const vtx_reading *r, struct reading_state *s)
{
    if (!is_unread(r->inlet_pressure))
        take(r->inlet_pressure, r->inlet_pressure_uncertainty, default_pressure_share * r->inlet_pressure, &s->x[INLET_PRESSURE], &s->u[INLET_PRESSURE]);
    take_outlet_pressure(r->cold_pressure, r->cold_pressure_uncertainty, &s->x[COLD_PRESSURE], &s->u[COLD_PRESSURE]);
    take_outlet_pressure(r->hot_pressure, r->hot_pressure_uncertainty, &s->x[HOT_PRESSURE], &s->u[HOT_PRESSURE]);
    take(or_else(r->humidity_ratio, 0), r->humidity_ratio_uncertainty, 0, &s->x[HUMIDITY], &s->u[HUMIDITY]);
    take(r->inlet_temperature, r->inlet_temperature_uncertainty, default_temperature_uncertainty, &s->x[INLET_TEMPERATURE], &s->u[INLET_TEMPERATURE]);
    take(r->cold_temperature, r->cold_temperature_uncertainty, default_temperature_uncertainty, &s->y[COLD], &s->uy[COLD]);
    take(r->hot_temperature, r->hot_temperature_uncertainty, default_temperature_uncertainty, &s->y[HOT], &s->uy[HOT]);
    s->has[COLD] = !is_unread(r->cold_temperature);
    s->has[HOT] = !is_unread(r->hot_temperature);
    memcpy(s->step, s->u, sizeof s->step);
    find_fraction(r, s);
    if (is_unread(r->inlet_temperature))
        s->unknown_inputs++;
}

/* Enthalpies of inlet and outlets; the inlet may be unknown yet. */
static vtx_status read_enthalpies(const struct reading_state *s, double inlet_temperature, struct expansion *e, double *cold, double *hot)
{
    vtx_status status = feed_at(s->model, s->x[INLET_PRESSURE], inlet_temperature, s->x[HUMIDITY], e);
    if (status == VTX_OK)
        status = feed_enthalpy(e, s->x[COLD_PRESSURE], s->y[COLD], cold);
    return status == VTX_OK ? feed_enthalpy(e, s->x[HOT_PRESSURE], s->y[HOT], hot) : status;
}

/* One unknown of the inlet, found from the energy balance and then left to the curve. */
static vtx_status close_gap(const vtx_reading *r, struct reading_state *s)
{
    const int no_temperature = is_unread(r->inlet_temperature);
    struct expansion e;
    double cold, hot;
    vtx_status status = read_enthalpies(s, no_temperature ? 0.5 * (s->y[COLD] + s->y[HOT]) : r->inlet_temperature, &e, &cold, &hot);
    if (status != VTX_OK)
        return status;
    if (no_temperature) {
        const double mu = s->x[COLD_FRACTION];
        status = feed_temperature(&e, s->x[INLET_PRESSURE], mu * cold + (1 - mu) * hot, &s->x[INLET_TEMPERATURE]);
        s->x[INLET_TEMPERATURE] = within(s->x[INLET_TEMPERATURE], inlet_temperature_min, inlet_temperature_max);
        s->u[INLET_TEMPERATURE] = unread_temperature_uncertainty;
        s->step[INLET_TEMPERATURE] = unread_temperature_step;
    } else {
        s->x[COLD_FRACTION] = hot > cold ? within((hot - e.inlet_enthalpy) / (hot - cold), 0.02, 0.98) : 0.5;
        s->u[COLD_FRACTION] = unread_fraction_uncertainty;
        s->step[COLD_FRACTION] = unread_fraction_step;
    }
    return status;
}

static int32_t backward_outlet(const struct reading_state *s)
{
    return s->x[COLD_PRESSURE] > s->x[INLET_PRESSURE] ? VTX_SUSPECT_COLD_PRESSURE
         : s->x[HOT_PRESSURE] > s->x[INLET_PRESSURE] ? VTX_SUSPECT_HOT_PRESSURE : VTX_SUSPECT_NONE;
}

static void begin(const vtx_reading *r, int32_t model, double ambient_temperature, struct reading_state *s)
{
    memset(s, 0, sizeof *s);
    POISON_STRUCT(&s->check, vtx_reading_check, verdict, VTX_OK);
    s->model = model;
    s->check.verdict = VTX_READING_CREDIBLE;
    s->check.suspect = VTX_SUSPECT_NONE;
    s->check.used = 0;
    s->check.advisories = VTX_ADVISORY_FIELD_UNAVAILABLE;
    s->ambient_temperature = or_else(r->ambient_temperature, ambient_temperature);
    take_all(r, s);
}

vtx_status place_point(const vtx_reading *r, int32_t model, double ambient_temperature, struct reading_state *s)
{
    begin(r, model, ambient_temperature, s);
    s->has[COLD] = s->has[HOT] = s->usable = 1;
    return require(!is_unread(r->inlet_pressure) && s->unknown_inputs == 0 && s->check.verdict == VTX_READING_CREDIBLE
                   && backward_outlet(s) == VTX_SUSPECT_NONE);
}

vtx_status examine_reading(const vtx_reading *r, int32_t model, double ambient_temperature, struct reading_state *s)
{
    vtx_status status = VTX_OK;
    begin(r, model, ambient_temperature, s);
    const int both = s->has[COLD] && s->has[HOT];
    const int placed = !is_unread(r->inlet_pressure) && s->has[COLD] + s->has[HOT] > s->unknown_inputs;
    if (!placed && s->check.verdict == VTX_READING_CREDIBLE)
        s->check.verdict = VTX_READING_INCOMPLETE;
    if (placed && backward_outlet(s) != VTX_SUSPECT_NONE) {
        s->check.verdict = VTX_READING_BACKWARD;
        s->check.suspect = backward_outlet(s);
    } else if (placed) {
        status = s->unknown_inputs > 0 ? close_gap(r, s) : VTX_OK;
        if (status == VTX_OK && both)
            status = examine_laws(s, !is_unread(r->ambient_temperature));
    }
    s->check.cold_fraction = s->x[COLD_FRACTION];
    s->check.cold_fraction_uncertainty = is_unread(s->x[COLD_FRACTION]) || s->u[COLD_FRACTION] >= 1 ? quiet_nan() : s->u[COLD_FRACTION];
    s->check.advisories |= is_impossible(s->check.verdict) ? VTX_ADVISORY_IMPOSSIBLE_READINGS : 0;
    s->usable = status == VTX_OK && placed && !is_impossible(s->check.verdict);
    return status;
}

vtx_status vtx_reading_examine(const vtx_reading *reading, int32_t model, vtx_reading_check *check)
{
    struct reading_state state;
    vtx_status status = worse(require(check != NULL), check_reading(reading, model));
    if (status == VTX_OK)
        status = examine_reading(reading, model, is_unread(reading->inlet_temperature) ? 293.15 : reading->inlet_temperature, &state);
    if (status != VTX_OK)
        return POISON_STRUCT(check, vtx_reading_check, verdict, status);
    *check = state.check;
    return VTX_OK;
}
