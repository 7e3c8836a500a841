/* The library finds the setting and the turn; here they become steps for a hand. */
#include "service_advice.h"

#include <math.h>

#include "diagnose_values.h"
#include "diagnose_words.h"
#include "report.h"

struct advice {
    vtx_status found_status, status, plan_status;
    vtx_setting_found found;
    vtx_valve_advice valve;
    vtx_reading_plan plan;
    double settling_time; /* s, of a whole turn; NaN: nothing is stated to reckon it by */
};

static const double at_rest = 0.3; /* K, within which the cold outlet counts as settled */

static void find_settling_time(const struct service_case *c, const struct findings *f, struct advice *a)
{
    const struct service_goal *g = &c->goal;
    const double step = fabs(a->valve.predicted[reading_place(VTX_READ_COLD_TEMPERATURE)] - a->found.cold_temperature);
    const vtx_operating_point *p = &f->healthy_point;
    double heat_capacity, body = 0;
    a->settling_time = (double)NAN;
    if (a->status != VTX_OK || (g->metal_mass <= 0 && g->probe_time_constant <= 0))
        return;
    if (g->metal_mass > 0
        && (vtx_air_heat_capacity(p->cold_pressure, p->cold_temperature, &heat_capacity) != VTX_OK
            || vtx_body_time_constant(g->metal_mass, g->metal_heat, p->cold_mass_flow, heat_capacity, 0.5, &body) != VTX_OK))
        return;
    if (vtx_turn_settling_time(g->probe_time_constant, body, step, at_rest, &a->settling_time) != VTX_OK)
        a->settling_time = (double)NAN;
}

/* What is not read yet would be read with these instruments, and show about what the healthy cooler does. */
static vtx_service_readings with_instruments_at_hand(const struct service_case *c, const struct findings *f)
{
    vtx_service_readings r = c->readings;
    for (int i = 0; i < READINGS; i++)
        if (isnan(r.value[i]) && !c->instruments.is_missing[i])
            r.uncertainty[i] = instruments_uncertainty(&c->instruments, i, f->healthy.value[i]);
    return r;
}

static void find_advice(const struct service_case *c, const struct findings *f, struct advice *a)
{
    const vtx_input_uncertainty u = findings_description(c, f);
    const vtx_service_readings planned = with_instruments_at_hand(c, f);
    a->found_status = vtx_find_setting(&c->job, &u, &c->readings, &a->found);
    a->status = vtx_advise_valve(&c->job, &u, &c->readings, &c->goal.goal, &a->valve);
    a->plan_status = vtx_plan_readings(&c->job, &u, &planned, &c->goal.goal, &a->plan);
    find_settling_time(c, f, a);
}

/* The figure of the goal in its unit. */
static const char *figure_text(int32_t goal, double figure)
{
    static char texts[4][24];
    static int next;
    if (goal == VTX_GOAL_COLD_TEMPERATURE)
        return report_temperature(figure);
    if (goal != VTX_GOAL_COLD_FRACTION)
        return report_power(figure);
    next = (next + 1) % 4;
    snprintf(texts[next], sizeof texts[next], "%.2f", figure);
    return texts[next];
}

static const char *figure_name(int32_t goal)
{
    return goal == VTX_GOAL_COLD_TEMPERATURE ? "a cold outlet" : goal == VTX_GOAL_COLD_FRACTION ? "a cold fraction" : "a cooling at target";
}

static void print_goal(const struct service_goal *g)
{
    printf("\nSETTING THE HOT VALVE (wanted: ");
    if (g->goal.goal == VTX_GOAL_MOST_CAPACITY)
        printf("the most cooling that the valve can give)\n");
    else
        printf("%s of %s%s)\n", figure_name(g->goal.goal),
               g->goal.goal == VTX_GOAL_COLD_TEMPERATURE ? "at most " : g->goal.goal == VTX_GOAL_CAPACITY ? "at least " : "",
               figure_text(g->goal.goal, g->goal.wanted));
}

static void print_now(const struct service_case *c, const struct advice *a)
{
    const vtx_setting_found *s = &a->found;
    printf("  now               cold fraction %.2f (%.2f to %.2f at 95 %%), cold outlet %s, cooling at target %s\n", s->cold_fraction,
           s->cold_fraction_low, s->cold_fraction_high, report_temperature(s->cold_temperature), report_power(s->capacity));
    if (c->goal.turns > 0)
        printf("                    the valve stands %.2f turns from shut\n", c->goal.turns);
    if (s->advisories & VTX_ADVISORY_INDISTINGUISHABLE)
        printf("                    these readings would also fit a cold fraction of %.2f: read a flow to be sure\n", s->other_cold_fraction);
    if (s->advisories & VTX_ADVISORY_MODEL_MISFIT)
        printf("                    beware: the readings do not fit the description at any setting\n");
}

static void print_turn(const struct service_case *c, const struct advice *a)
{
    const vtx_valve_advice *v = &a->valve;
    const int open = v->turn == VTX_TURN_OPEN;
    printf("  turn              %s the hot valve: its gap %s to %.2f times what it is (%.2f to %.2f by these readings)\n",
           open ? "open" : "close", open ? "up" : "down", v->opening_ratio, v->ratio_low, v->ratio_high);
    if (c->goal.turns > 0)
        printf("                    if the gap goes evenly with the turns: to %.2f turns from shut\n", c->goal.turns * v->opening_ratio);
    printf("                    go half of the way, wait, read all gauges, and ask again before the rest\n");
    if (isfinite(a->settling_time))
        printf("  wait              about %.0f s after a turn, until the cold outlet stands within %s\n", a->settling_time, report_difference(at_rest));
    else
        printf("  wait              until the cold outlet has not moved by more than %s for two minutes\n", report_difference(at_rest));
    printf("  stop              at %s of %s (now %s), when the gauges show\n", figure_name(c->goal.goal.goal),
           figure_text(c->goal.goal.goal, v->new_figure), figure_text(c->goal.goal.goal, v->present_figure));
    for (int i = 0; i < READINGS; i++)
        if (!isnan(c->readings.value[i]))
            printf("                    %-24s %s\n", words_reading(VTX_READ_SUPPLY_PRESSURE + i),
                   value_text(c, VTX_READ_SUPPLY_PRESSURE + i, v->predicted[i]));
    printf("                    if they will not, turn back and look for a fault\n");
    if (v->advisories & VTX_ADVISORY_FREEZING)
        printf("  beware            at that setting the feed's water freezes in the cold outlet: dry the air further\n");
    printf("  caution           gloves and eye protection: the hot end burns; never turn the valve's screw out of its thread under pressure\n");
}

static void print_out_of_reach(const struct service_case *c, const struct advice *a)
{
    const vtx_valve_advice *v = &a->valve;
    if (!isfinite(v->attainable_figure)) {
        printf("  turn              these readings do not see the valve: nothing can be advised\n");
        return;
    }
    printf("  turn              what is wanted is out of the valve's reach: at best %s of %s, with the gap at %.2f times what it is\n",
           figure_name(c->goal.goal.goal), figure_text(c->goal.goal.goal, v->attainable_figure), v->attainable_ratio);
}

static void print_plan(const struct advice *a)
{
    if (a->plan_status != VTX_OK || a->plan.worthwhile <= 0)
        return;
    printf("  read besides      ");
    for (int i = 0; i < a->plan.worthwhile; i++)
        printf("%s%s", i == 0 ? "" : ", then ", words_reading(a->plan.order[i]));
    printf(": that sharpens the turn most\n");
}

/* Met by more than was asked for: what a turn to just that would bring. */
static void print_reached(const struct service_case *c, const struct advice *a)
{
    const vtx_valve_advice *v = &a->valve;
    printf("  turn              leave it: the goal is met within what these readings can tell\n");
    if (c->goal.goal.goal == VTX_GOAL_COLD_TEMPERATURE && v->opening_ratio < 1
        && v->new_figure - v->present_figure > 1.96 * v->present_uncertainty)
        printf("                    it is colder than wanted: the gap down to %.2f times what it is would give more cold air, at %s\n",
               v->opening_ratio, figure_text(VTX_GOAL_COLD_TEMPERATURE, v->new_figure));
}

static void print_advice(const struct service_case *c, const struct advice *a)
{
    if (a->found_status == VTX_OK)
        print_now(c, a);
    if (a->status == VTX_NO_SOLUTION)
        print_out_of_reach(c, a);
    else if (a->status != VTX_OK)
        printf("  turn              the library cannot advise here: %s\n", vtx_status_text(a->status));
    else if (a->valve.turn == VTX_TURN_REACHED)
        print_reached(c, a);
    else if (a->valve.turn == VTX_TURN_UNSEEN)
        printf("  turn              leave it: these instruments would not show the difference\n");
    else
        print_turn(c, a);
    print_plan(a);
}

/* What the valve cannot mend. */
static int is_fault(const struct findings *f)
{
    const int32_t leader = findings_leader(f);
    return (leader != VTX_CAUSE_NOTHING && leader != VTX_CAUSE_WRONG_VALVE && leader != VTX_CAUSE_BLOCKED_HOT_OUTLET)
        || findings_misfit(f) || f->contradiction != VTX_CONTRADICTION_NONE;
}

void advice_report(const struct service_case *c, const struct findings *f)
{
    struct advice a;
    if (!c->goal.is_stated)
        return;
    print_goal(&c->goal);
    if (is_fault(f)) {
        printf("  Not now: the valve cannot mend what is wrong. See to that first, then read again.\n");
        return;
    }
    find_advice(c, f, &a);
    print_advice(c, &a);
}

static void json_found(struct json *j, const vtx_setting_found *s)
{
    json_open(j, "setting", '{');
    json_number(j, "cold_fraction", s->cold_fraction);
    json_number(j, "cold_fraction_standard_uncertainty", s->cold_fraction_uncertainty);
    json_number(j, "valve_opening", s->valve_opening);
    json_number(j, "cold_temperature", s->cold_temperature);
    json_number(j, "capacity", s->capacity);
    json_number(j, "probability", s->probability);
    json_integer(j, "advisories", s->advisories);
    json_close(j, '}');
}

static void json_valve(struct json *j, const struct advice *a)
{
    const vtx_valve_advice *v = &a->valve;
    json_open(j, "valve", '{');
    json_integer(j, "turn", v->turn);
    json_number(j, "opening_ratio", v->opening_ratio);
    json_number(j, "ratio_low", v->ratio_low);
    json_number(j, "ratio_high", v->ratio_high);
    json_number(j, "present_figure", v->present_figure);
    json_number(j, "new_figure", v->new_figure);
    json_number(j, "new_standard_uncertainty", v->new_uncertainty);
    json_number(j, "attainable_figure", v->attainable_figure);
    json_number(j, "settling_time", a->settling_time);
    json_integer(j, "advisories", v->advisories);
    json_close(j, '}');
}

void advice_json(struct json *j, const struct service_case *c, const struct findings *f)
{
    struct advice a;
    if (!c->goal.is_stated)
        return;
    json_open(j, "commissioning", '{');
    json_integer(j, "goal", c->goal.goal.goal);
    json_number(j, "wanted", c->goal.goal.wanted);
    json_truth(j, "fault_first", is_fault(f));
    find_advice(c, f, &a);
    json_integer(j, "status", a.status);
    if (a.found_status == VTX_OK)
        json_found(j, &a.found);
    if (a.status == VTX_OK || a.status == VTX_NO_SOLUTION)
        json_valve(j, &a);
    json_close(j, '}');
}
