/* What stands before the cooler: compressor, receiver, filters, cold pipes; and what comes out where an outlet is blocked. */
#include <math.h>

#include "figures.h"
#include "report.h"
#include "spot_more.h"

/* Free air at the compressor's intake of a mass flow. */
static double intake_flow(const vtx_site *site, double mass_flow)
{
    double density = (double)NAN;
    vtx_reference_density(VTX_AIR_REAL, site->pressure, site->temperature, site->relative_humidity, &density, NULL);
    return mass_flow / density;
}

static void print_ride_through(const struct spot_job *s, double draw)
{
    const vtx_compressor *c = &s->plant.compressor;
    const double gauge_zero = s->job.site.pressure;
    double stopped, short_of;
    if (s->plant.lowest_pressure >= c->cut_in_pressure)
        return;
    if (vtx_receiver_time(c->receiver_volume, c->cut_in_pressure, s->plant.lowest_pressure, c->intake_pressure, draw, 0, &stopped) == VTX_OK)
        say("  compressor stops       the receiver alone carries on for %.0f s, from %s to %s\n",
            noted("receiver_alone_time", stopped), report_gauge(c->cut_in_pressure, gauge_zero),
            report_gauge(s->plant.lowest_pressure, gauge_zero));
    if (draw > c->free_air_delivery
        && vtx_receiver_time(c->receiver_volume, c->cut_in_pressure, s->plant.lowest_pressure, c->intake_pressure, draw, c->free_air_delivery, &short_of)
            == VTX_OK)
        say("  while it runs          the net lasts %.0f s only, then the pressure is below %s\n", noted("receiver_time_while_running", short_of),
            report_gauge(s->plant.lowest_pressure, gauge_zero));
}

static void print_year(const struct spot_job *s, double demand)
{
    vtx_air_year year, without;
    if (s->hours <= 0
        || vtx_compressor_year(&s->plant.compressor, demand, s->hours, s->hours, s->price / 3.6e6, s->carbon / 3.6e6, &year) != VTX_OK
        || vtx_compressor_year(&s->plant.compressor, s->plant.other_demand, s->hours, s->hours, s->price / 3.6e6, s->carbon / 3.6e6, &without) != VTX_OK)
        return;
    say("  in those %.0f h        it takes %.0f kWh, %.0f for running unloaded; the cooler adds %.0f kWh", s->hours / 3600,
        noted("energy_a_year", year.energy) / 3.6e6, noted("unloaded_energy_a_year", year.unloaded_energy) / 3.6e6,
        noted("energy_a_year_for_the_cooler", year.energy - without.energy) / 3.6e6);
    if (year.leakage_energy > 0)
        say(", leaks %.0f kWh", noted("leakage_energy_a_year", year.leakage_energy) / 3.6e6);
    say("\n                         (a machine that idles unloaded saves less than the cooler's share of the air when it is off)\n");
}

/* As dry_air_check: aftercooler 12 K and receiver 5 K above the room; common practice, no source. */
static void print_treatment(const struct spot_job *s, double free_air)
{
    const vtx_job *j = &s->job;
    vtx_air_treatment t;
    vtx_treated_air air;
    vtx_air_treatment_init(&t);
    t.free_air = free_air;
    t.intake_pressure = j->site.pressure;
    t.intake_temperature = j->site.temperature;
    t.intake_relative_humidity = j->site.relative_humidity;
    t.aftercooler_pressure = t.dryer_pressure = j->supply.pressure;
    t.aftercooler_temperature = j->site.temperature + 12;
    t.receiver_temperature = j->site.temperature + 5;
    if (j->supply.humidity_kind != VTX_SUPPLY_HUMIDITY_RATIO)
        t.dryer_point = j->supply.humidity;
    if (t.dryer_point < 273.16) {
        t.dryer = VTX_DRYER_DESICCANT;
        vtx_desiccant_purge_share(t.dryer_pressure, t.intake_pressure, 1.2, &t.purge_share);
    }
    if (vtx_treat_air(&t, &air) != VTX_OK)
        return;
    say("  water in 8 h           %.1f kg drained at aftercooler and receiver, %.2f kg at the dryer, %.2f kg go on\n",
        28800 * noted("drained_ahead_of_dryer", air.aftercooler_condensate + air.receiver_condensate),
        28800 * noted("drained_at_dryer", air.dryer_water), 28800 * noted("water_delivered", air.delivered_water));
    if (air.purge_air > 0)
        say("  the dryer's purge      uses up %s of the delivery\n", report_flow(noted("purge_air_flow", air.purge_air)));
}

static void print_compressor(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    const vtx_compressor *c = &s->plant.compressor;
    const double cooler = intake_flow(&job->site, p->mass_flow * job->running), demand = cooler + s->plant.other_demand;
    vtx_compressor_duty d;
    if (c->free_air_delivery <= 0 || vtx_compressor_at_demand(c, demand, &d) != VTX_OK)
        return;
    figures_section("compressor");
    say("\nTHE COMPRESSOR\n");
    say("  delivers               %s of free air at its intake\n", report_flow(noted("free_air_delivery", c->free_air_delivery)));
    say("  drawn                  cooler %s, others %s, leaks %s\n", report_flow(noted("drawn_by_cooler", cooler)),
        report_flow(noted("drawn_by_others", s->plant.other_demand)), report_flow(noted("leakage", c->leakage)));
    if (d.demand_met)
        say("  reserve                %s; it delivers %.0f %% of the time at %.1f kW on average\n", report_flow(noted("reserve", d.reserve)),
            100 * noted("duty_cycle", d.duty_cycle), 1e-3 * noted("average_power", d.average_power));
    else
        say("  reserve                NONE: %s too little, the net pressure falls\n", report_flow(-noted("reserve", d.reserve)));
    if (isfinite(d.loaded_time) && isfinite(d.unloaded_time))
        say("  cycle                  %.0f s delivering, %.0f s on the receiver alone, %.0f cycles an hour%s\n", noted("loaded_time", d.loaded_time),
            noted("unloaded_time", d.unloaded_time), 3600 * noted("cycle_rate", d.cycle_rate), 3600 * d.cycle_rate > 30 ? ": short, a larger receiver spares it" : "");
    print_ride_through(s, demand + c->leakage);
    if (d.demand_met)
        print_year(s, demand);
    print_treatment(s, demand + c->leakage);
}

/* What to ask of the filters: the inlet nozzle as one round hole, ten times as wide as the largest particle (common practice, no source). */
static void print_purity(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    int32_t oil, dirt;
    double area;
    if (s->oil > 0 && vtx_oil_class_to_ask(p->free_air_flow, s->oil, &oil) == VTX_OK)
        say("  oil                    for no more than %.3g g/h at the work ask for ISO 8573-1 oil class %d\n", 3.6e6 * noted("oil_at_most", s->oil),
            (int)noted_code("oil_class", oil));
    if (s->dirt > 0 && vtx_cooler_inlet_area(&job->cooler, &area) == VTX_OK
        && vtx_particle_class_to_ask(sqrt(4 * area / 3.14159265358979323846), 10, p->free_air_flow, s->dirt, &dirt) == VTX_OK)
        say("  particles              for no more than %.3g g/h, and for the inlet nozzle, particle class %d\n",
            3.6e6 * noted("dirt_at_most", s->dirt),
            (int)noted_code("particle_class", dirt));
}

static void print_loaded_filters(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    for (int i = 0; i < job->elements; i++) {
        const vtx_filter *f = &s->filters[i];
        vtx_job loaded = *job;
        vtx_operating_point q;
        double loading;
        if (f->rated_flow <= 0 || vtx_filter_loading_when_due(f, &loading) != VTX_OK
            || vtx_filter_element(f, loading, &loaded.line[i]) != VTX_OK || vtx_job_evaluate(&loaded, &q, NULL) != VTX_OK)
            continue;
        figures_row("filters_due_for_change");
        say("  filter due for change  at %s over its rated flow; the cooler then gets %s:\n",
            report_pressure_drop(noted("change_at", f->change_drop)),
            report_gauge(noted("inlet_pressure", q.inlet_pressure), job->site.pressure));
        say("                         cold outlet %s, cooling %s instead of %s\n", report_temperature(noted("cold_temperature", q.cold_temperature)),
            report_power(noted("cooling_at_target", q.target_capacity)), report_power(p->target_capacity));
    }
}

static void print_coldest_pipe(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    vtx_cold_run run;
    double needed;
    if (s->coldest_pipe <= 0
        || vtx_pipe_condensation(VTX_AIR_REAL, job->supply.pressure, s->coldest_pipe, p->humidity_ratio, &run) != VTX_OK)
        return;
    say("  coldest pipe           at %s it stays %s",
        report_temperature(noted("coldest_pipe", s->coldest_pipe)), run.margin >= 0 ? "dry" : "NOT dry");
    if (isfinite(run.margin))
        say(", %s %s the pressure dew point", report_difference(fabs(noted("coldest_pipe_margin", run.margin))), run.margin >= 0 ? "above" : "below");
    say("\n");
    if (vtx_pressure_dew_point_needed(VTX_AIR_REAL, job->supply.pressure, job->supply.pressure, s->coldest_pipe, 10, &needed) == VTX_OK)
        say("                         for the usual margin of 10 K ask for a pressure dew point of %s\n",
            report_temperature(noted("dew_point_to_ask", needed)));
}

void spot_print_plant(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    print_compressor(s, job, p);
    if (s->coldest_pipe > 0 || s->oil > 0 || s->dirt > 0 || job->elements > 0)
        say("\nTHE LINE IN SERVICE\n");
    print_loaded_filters(s, job, p);
    figures_section("air_quality");
    print_coldest_pipe(s, job, p);
    print_purity(s, job, p);
}

/* With the cold outlet blocked the air leaves by the hot valve alone. */
void spot_print_dead_end(const vtx_job *job, const vtx_operating_point *p)
{
    vtx_gas air;
    vtx_dead_end verdict;
    double feed, relief, pressure;
    if (vtx_gas_init(&air) != VTX_OK || vtx_cooler_inlet_area(&job->cooler, &feed) != VTX_OK
        || vtx_orifice_area(&air, p->hot_mass_flow, 1, p->chamber_pressure, p->hot_temperature, p->hot_pressure, &relief) != VTX_OK
        || vtx_dead_end_pressure(air.heat_capacity_ratio, feed * job->cooler.inlet_area_factor, relief, p->inlet_pressure, job->site.pressure, &pressure)
            != VTX_OK
        || vtx_cleaning_air_verdict(pressure, job->site.pressure, &verdict) != VTX_OK)
        return;
    say("  A blocked cold outlet can reach %s: %s (29 CFR 1910.242(b)), and never on skin.\n",
        report_gauge(noted("dead_end_pressure", pressure), job->site.pressure),
        verdict.cleaning_permitted ? "below the 30 psi allowed for cleaning, with guards and eye protection" : "too much for cleaning with it, where 30 psi is the limit");
}
