/* Compressors, receivers and the cost of air. */
#include <vtx/air_cost.h>
#include <vtx/compressor.h>
#include <vtx/dead_end.h>
#include <vtx/moist_air.h>
#include <vtx/receiver.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 10000 };

static const double gas_constant = 8.314462618; /* CODATA 2018 */
static const double kilowatt_hour = 3.6e6;

vtx_compressor sample_compressor(void)
{
    vtx_compressor c;
    EXPECT_OK(vtx_compressor_init(&c));
    c.free_air_delivery = 3.2 / 60;
    c.full_load_power = 20000;
    c.motor_efficiency = 0.92;
    c.leakage = 0.35 / 60;
    c.receiver_volume = 0.5;
    return c;
}

/* shaft power, motor efficiency, time, price: full load all the time */
static double cost_of_year(const double *in)
{
    vtx_compressor c = sample_compressor();
    vtx_air_year year;
    c.full_load_power = in[0];
    c.motor_efficiency = in[1];
    EXPECT_OK(vtx_compressor_year(&c, c.free_air_delivery - c.leakage, in[2], in[2], in[3], 0, &year));
    return year.cost;
}

static double cost_of_use(const double *in)
{
    double energy, cost = (double)NAN;
    EXPECT_OK(vtx_air_use_cost(in[0], in[1], in[2], in[3], 0, &energy, &cost, NULL));
    return cost;
}

static double extra_power_share(const double *in)
{
    double power, more;
    EXPECT_OK(vtx_isentropic_compression_power(in[0], in[1], in[2], 1, &power));
    EXPECT_OK(vtx_isentropic_compression_power(in[0], in[1], in[2] + in[3], 1, &more));
    return more / power - 1;
}

static vtx_status specific_power_of(const double *in, double *specific)
{
    double power;
    EXPECT_OK(vtx_isentropic_compression_power(in[0], in[1], in[2], 0.02, &power));
    return vtx_specific_power(power, 0.02, specific);
}

static int compressor_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    if (strcmp(row->quantity, "isentropic_power") == 0)
        return vtx_isentropic_compression_power(in[0], in[1], in[2], in[3], actual), 1;
    if (strcmp(row->quantity, "isentropic_specific_power") == 0)
        return specific_power_of(in, actual), 1;
    if (strcmp(row->quantity, "isothermal_power") == 0)
        return vtx_isothermal_compression_power(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "molar_work") == 0)
        return vtx_package_power(in[0], in[1], in[2], gas_constant * in[3] / in[1], in[4], actual), 1;
    if (strcmp(row->quantity, "yearly_cost") == 0)
        return *actual = cost_of_year(in), 1;
    if (strcmp(row->quantity, "use_cost") == 0)
        return *actual = cost_of_use(in), 1;
    if (strcmp(row->quantity, "receiver_time") == 0)
        return vtx_receiver_time(in[0], in[1], in[2], in[3], in[4], 0, actual), 1;
    if (strcmp(row->quantity, "extra_power_share") == 0)
        return *actual = extra_power_share(in), 1;
    if (strcmp(row->quantity, "cleaning_air_limit") == 0)
        return *actual = VTX_CLEANING_AIR_LIMIT, 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("compressor.csv", compressor_row, 11); }

static void no_compression_needs_less_than_the_isothermal_one(void)
{
    struct random_state r;
    random_seed(&r, 11);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double gamma = random_uniform(&r, 1.05, 1.67), p1 = random_log_uniform(&r, 5e4, 2e5);
        const double p2 = p1 * (1 + random_log_uniform(&r, 1e-9, 30)), flow = random_log_uniform(&r, 1e-4, 10);
        double least, one, two, many;
        EXPECT_OK(vtx_isothermal_compression_power(p1, p2, flow, &least));
        EXPECT_OK(vtx_isentropic_compression_power(gamma, p1, p2, flow, &one));
        EXPECT_OK(vtx_staged_compression_power(gamma, 2, p1, p2, flow, &two));
        EXPECT_OK(vtx_staged_compression_power(gamma, 100, p1, p2, flow, &many));
        EXPECT(least <= many * (1 + 1e-14) && many <= two * (1 + 1e-14) && two <= one * (1 + 1e-14));
        EXPECT_NEAR(many, least, 1e-14 + (gamma - 1) / gamma * log(p2 / p1) / 190);
        /* small pressure rises: both laws become Q dp */
        if (p2 / p1 - 1 < 1e-6)
            EXPECT_NEAR(one, flow * (p2 - p1), 1e-6);
        EXPECT_OK(vtx_staged_compression_power(gamma, 1, p1, p2, flow, &many));
        EXPECT_NEAR(many, one, 1e-13);
        EXPECT_OK(vtx_isentropic_compression_power(gamma, p1, sqrt(p1 * p2), flow, &one));
        EXPECT_NEAR(two, 2 * one, 1e-13 + 1e-15 / (p2 / p1 - 1));
    }
}

/* Isentropic work of real dry air, by bisection on its entropy. */
static double real_work(double p1, double t1, double p2)
{
    vtx_moist_air start, end = { 0 };
    double low = t1, high = 473;
    EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, p1, t1, VTX_HUMIDITY_RATIO, 0, &start));
    for (int i = 0; i < 60; i++) {
        const double middle = 0.5 * (low + high);
        EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, p2, middle, VTX_HUMIDITY_RATIO, 0, &end));
        if (end.entropy < start.entropy)
            low = middle;
        else
            high = middle;
    }
    return (end.enthalpy - start.enthalpy) / start.volume;
}

static void a_perfect_gas_is_near_real_air(void)
{
    for (double p2 = 1.5e5; p2 < 4.1e5; p2 += 0.5e5) {
        double power;
        EXPECT_OK(vtx_isentropic_compression_power(1.4, 1e5, p2, 1, &power));
        EXPECT_NEAR(power, real_work(1e5, 273.15, p2), 6e-4);
        EXPECT_NEAR(power, real_work(1e5, 293.15, p2), 3e-4);
    }
}

static void package_power_and_efficiency_invert(void)
{
    struct random_state r;
    random_seed(&r, 12);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double p2 = random_log_uniform(&r, 2e5, 2e6), flow = random_log_uniform(&r, 1e-3, 10);
        const double wanted = random_uniform(&r, 0.3, 0.95);
        double power, efficiency;
        EXPECT_OK(vtx_package_power(1.4, 1e5, p2, flow, wanted, &power));
        EXPECT_OK(vtx_package_efficiency(1.4, 1e5, p2, flow, power, &efficiency));
        EXPECT_NEAR(efficiency, wanted, 1e-14);
    }
}

static void a_package_below_isothermal_power_is_refused(void)
{
    double least, efficiency = 1;
    EXPECT_OK(vtx_isothermal_compression_power(1e5, 8e5, 0.1, &least));
    EXPECT_OK(vtx_package_efficiency(1.4, 1e5, 8e5, 0.1, least, &efficiency));
    EXPECT(efficiency > 1 && efficiency < 1.4);
    EXPECT_STATUS(vtx_package_efficiency(1.4, 1e5, 8e5, 0.1, 0.999 * least, &efficiency), VTX_BAD_ARGUMENT);
    EXPECT(isnan(efficiency));
}

static void pressures_the_wrong_way_round_are_refused(void)
{
    double power = 1;
    EXPECT_STATUS(vtx_isentropic_compression_power(1.4, 8e5, 1e5, 1, &power), VTX_BAD_ARGUMENT);
    EXPECT(isnan(power));
    EXPECT_STATUS(vtx_isothermal_compression_power(8e5, 1e5, 1, &power), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_staged_compression_power(1.4, 0, 1e5, 8e5, 1, &power), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_staged_compression_power(1.4, 101, 1e5, 8e5, 1, &power), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_isentropic_compression_power(1.4, 1e5, 1e5, 1, &power));
    EXPECT(power == 0);
}

/* Runs the receiver in small steps through whole cycles. */
static void step_through_cycles(const vtx_compressor *c, double demand, double *duty_cycle, double *cycle_time)
{
    const double step = 1e-3, draw = demand + c->leakage;
    double pressure = c->cut_in_pressure, on = 0, total = 0;
    int loaded = 1, starts = 0;
    while (starts < 4) {
        const double flow = (loaded ? c->free_air_delivery : 0) - draw;
        pressure += step * flow * c->intake_pressure / c->receiver_volume;
        on += loaded ? step : 0;
        total += step;
        if (loaded && pressure >= c->cut_out_pressure)
            loaded = 0;
        else if (!loaded && pressure <= c->cut_in_pressure)
            loaded = 1, starts++;
    }
    *duty_cycle = on / total;
    *cycle_time = total / starts;
}

static void cycles_are_those_of_a_receiver_filled_step_by_step(void)
{
    static const double demand[] = { 0.5 / 60, 1.4 / 60, 2.6 / 60 };
    const vtx_compressor c = sample_compressor();
    for (size_t i = 0; i < sizeof demand / sizeof demand[0]; i++) {
        vtx_compressor_duty duty;
        double cycle, time;
        EXPECT_OK(vtx_compressor_at_demand(&c, demand[i], &duty));
        step_through_cycles(&c, demand[i], &cycle, &time);
        EXPECT_NEAR(duty.duty_cycle, cycle, 1e-3);
        EXPECT_NEAR(1 / duty.cycle_rate, time, 1e-3);
        EXPECT_NEAR(duty.loaded_time + duty.unloaded_time, 1 / duty.cycle_rate, 1e-13);
        EXPECT_NEAR(duty.loaded_time * duty.cycle_rate, duty.duty_cycle, 1e-12);
        EXPECT_NEAR(duty.average_power * time,
                    c.full_load_power / c.motor_efficiency * (cycle + (1 - cycle) * c.unloaded_power_share) * time, 1e-3);
        EXPECT(duty.demand_met == 1 && duty.advisories == 0);
    }
}

static void a_demand_beyond_the_delivery_is_not_met(void)
{
    const vtx_compressor c = sample_compressor();
    vtx_compressor_duty duty;
    EXPECT_OK(vtx_compressor_at_demand(&c, c.free_air_delivery, &duty));
    EXPECT(duty.demand_met == 0 && duty.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
    EXPECT_NEAR(duty.reserve, -c.leakage, 1e-12);
    EXPECT(duty.duty_cycle == 1 && duty.cycle_rate == 0 && isnan(duty.loaded_time));
    EXPECT_NEAR(duty.energy_per_volume, c.full_load_power / c.motor_efficiency / (c.free_air_delivery - c.leakage), 1e-14);
}

static void nothing_drawn_leaves_the_machine_unloaded(void)
{
    vtx_compressor c = sample_compressor();
    vtx_compressor_duty duty;
    c.leakage = 0;
    EXPECT_OK(vtx_compressor_at_demand(&c, 0, &duty));
    EXPECT(duty.duty_cycle == 0 && duty.cycle_rate == 0 && isnan(duty.unloaded_time) && isnan(duty.energy_per_volume));
    EXPECT(duty.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE && duty.demand_met == 1);
    EXPECT_NEAR(duty.average_power, 0.3 * 20000 / 0.92, 1e-14);
    c.receiver_volume = 0;
    EXPECT_OK(vtx_compressor_at_demand(&c, 0.01, &duty));
    EXPECT(isnan(duty.cycle_rate) && isnan(duty.loaded_time) && duty.energy_per_volume > 0);
}

static void defaults_are_the_documented_ones(void)
{
    vtx_compressor c;
    EXPECT_OK(vtx_compressor_init(&c));
    EXPECT(c.free_air_delivery == 0 && c.full_load_power == 0 && c.leakage == 0 && c.receiver_volume == 0);
    EXPECT(c.intake_pressure == 1e5 && c.motor_efficiency == 1 && c.unloaded_power_share == 0.3);
    EXPECT(c.cut_in_pressure == 7.5e5 && c.cut_out_pressure == 8e5);
}

static void a_year_that_asks_too_much_gets_what_there_is(void)
{
    const vtx_compressor c = sample_compressor();
    vtx_air_year year;
    EXPECT_OK(vtx_compressor_year(&c, c.free_air_delivery - 0.5 * c.leakage, 3.6e6, 3.6e6, 1e-8, 0, &year));
    EXPECT(year.demand_met == 0);
    vtx_compressor tight = c;
    tight.leakage = 0;
    vtx_air_year exact;
    EXPECT_OK(vtx_compressor_year(&tight, tight.free_air_delivery, 3.6e6, 3.6e6, 1e-8, 0, &exact));
    EXPECT(exact.demand_met == 1);
    EXPECT_NEAR(year.free_air, (c.free_air_delivery - c.leakage) * 3.6e6, 1e-14);
    EXPECT_NEAR(year.energy, c.full_load_power / c.motor_efficiency * 3.6e6, 1e-14);
    EXPECT(year.unloaded_energy == 0);
}

static void a_compressor_is_checked_field_by_field(void)
{
    vtx_compressor_duty duty;
    vtx_compressor c;
    EXPECT_STATUS(vtx_compressor_init(NULL), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_compressor_init(&c));
    EXPECT_STATUS(vtx_compressor_at_demand(&c, 0.01, &duty), VTX_BAD_ARGUMENT);
    EXPECT(isnan(duty.reserve) && isnan(duty.cycle_rate) && duty.demand_met == -1 && duty.advisories == -1);
    double *const field[] = { &c.free_air_delivery, &c.intake_pressure, &c.full_load_power, &c.motor_efficiency,
                              &c.unloaded_power_share, &c.leakage, &c.receiver_volume, &c.cut_in_pressure,
                              &c.cut_out_pressure, &c.reserved[0], &c.reserved[3] };
    for (size_t i = 0; i < sizeof field / sizeof field[0]; i++) {
        c = sample_compressor();
        EXPECT_OK(vtx_compressor_at_demand(&c, 0.01, &duty));
        *field[i] = -1;
        EXPECT_STATUS(vtx_compressor_at_demand(&c, 0.01, &duty), VTX_BAD_ARGUMENT);
        *field[i] = (double)NAN;
        EXPECT_STATUS(vtx_compressor_at_demand(&c, 0.01, &duty), VTX_BAD_ARGUMENT);
        *field[i] = 1e15;
        EXPECT(vtx_compressor_at_demand(&c, 0.01, &duty) != VTX_OK);
    }
    c = sample_compressor();
    c.cut_out_pressure = c.cut_in_pressure;
    EXPECT_STATUS(vtx_compressor_at_demand(&c, 0.01, &duty), VTX_BAD_ARGUMENT);
    c = sample_compressor();
    c.receiver_volume = 1e-6;
    EXPECT_STATUS(vtx_compressor_at_demand(&c, 0.01, &duty), VTX_OUT_OF_RANGE);
}

static void receiver_time_and_volume_invert(void)
{
    struct random_state r;
    random_seed(&r, 13);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double volume = random_log_uniform(&r, 0.01, 100), high = random_uniform(&r, 7e5, 1.2e6);
        const double low = random_uniform(&r, 2e5, 6.9e5), demand = random_log_uniform(&r, 1e-4, 1);
        const double supply = random_uniform(&r, 0, 0.9) * demand;
        double time, back;
        EXPECT_OK(vtx_receiver_time(volume, high, low, 1e5, demand, supply, &time));
        if (time > 1e7 || time < 1e-3)
            continue;
        EXPECT_OK(vtx_receiver_volume(time, high, low, 1e5, demand, supply, &back));
        EXPECT_NEAR(back, volume, 1e-13);
    }
}

static void a_supply_that_covers_the_demand_never_empties_the_receiver(void)
{
    double value = 1;
    EXPECT_STATUS(vtx_receiver_time(0.3, 8e5, 6e5, 1e5, 0.01, 0.01, &value), VTX_NO_SOLUTION);
    EXPECT(isnan(value));
    EXPECT_OK(vtx_receiver_volume(60, 8e5, 6e5, 1e5, 0.01, 0.02, &value));
    EXPECT(value == 0);
    EXPECT_OK(vtx_receiver_time(0.3, 8e5, 8e5, 1e5, 0.01, 0, &value));
    EXPECT(value == 0);
    EXPECT_STATUS(vtx_receiver_time(0.3, 6e5, 8e5, 1e5, 0.01, 0, &value), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_receiver_volume(60, 8e5, 8e5, 1e5, 0.01, 0, &value), VTX_BAD_ARGUMENT);
}

static void leakage_is_found_by_rhythm_and_by_decay(void)
{
    vtx_compressor c = sample_compressor();
    vtx_compressor_duty duty;
    double leakage, pressure = 8e5;
    EXPECT_OK(vtx_compressor_at_demand(&c, 0, &duty));
    EXPECT_OK(vtx_leakage_from_cycle(c.free_air_delivery, duty.loaded_time, duty.unloaded_time, &leakage));
    EXPECT_NEAR(leakage, c.leakage, 1e-13);
    /* a sonic leak of 2e-3 m3/s of free air at 7 bar, in steps */
    for (int i = 0; i < 60000; i++)
        pressure -= 1e-3 * 2e-3 * pressure / 7e5 * 1e5 / 0.4;
    EXPECT_OK(vtx_leakage_from_decay(0.4, 8e5, pressure, 60, 1e5, 7e5, &leakage));
    EXPECT_NEAR(leakage, 2e-3, 1e-6);
    EXPECT_STATUS(vtx_leakage_from_decay(0.4, 8e5, 1.5e5, 60, 1e5, 7e5, &leakage), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_leakage_from_decay(0.4, 8e5, 8e5, 60, 1e5, 7e5, &leakage), VTX_BAD_ARGUMENT);
}

static void a_year_is_the_sum_of_its_hours(void)
{
    const vtx_compressor c = sample_compressor();
    const double demand = 1.2 / 60, price = 0.21 / kilowatt_hour, carbon = 0.35 / kilowatt_hour;
    const double with = 1900 * 3600.0, pressurised = 4000 * 3600.0;
    vtx_compressor tight = c;
    vtx_compressor_duty busy, idle;
    vtx_air_year year, better;
    tight.leakage = 0;
    EXPECT_OK(vtx_compressor_at_demand(&c, demand, &busy));
    EXPECT_OK(vtx_compressor_at_demand(&c, 0, &idle));
    EXPECT_OK(vtx_compressor_year(&c, demand, with, pressurised, price, carbon, &year));
    EXPECT_OK(vtx_compressor_year(&tight, demand, with, pressurised, price, carbon, &better));
    EXPECT_NEAR(year.energy, busy.average_power * with + idle.average_power * (pressurised - with), 1e-13);
    EXPECT_NEAR(year.cost, year.energy * price, 1e-14);
    EXPECT_NEAR(year.carbon, year.energy * carbon, 1e-14);
    EXPECT_NEAR(year.free_air, demand * with, 1e-14);
    EXPECT_NEAR(year.leakage_energy, year.energy - better.energy, 1e-12);
    EXPECT_NEAR(year.leakage_cost, (year.energy - better.energy) * price, 1e-12);
    EXPECT_NEAR(year.cost_per_volume, year.cost / year.free_air, 1e-14);
    const double delivering = busy.duty_cycle * with + idle.duty_cycle * (pressurised - with);
    EXPECT_NEAR(year.energy - year.unloaded_energy, c.full_load_power / c.motor_efficiency * delivering, 1e-12);
    EXPECT(year.demand_met == 1 && year.advisories == 0);
    EXPECT_STATUS(vtx_compressor_year(&c, demand, pressurised, with, price, carbon, &year), VTX_BAD_ARGUMENT);
    EXPECT(isnan(year.energy) && year.demand_met == -1);
    EXPECT_OK(vtx_compressor_year(&c, 0, with, pressurised, price, carbon, &year));
    EXPECT(isnan(year.cost_per_volume) && year.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "no compression needs less than the isothermal one", no_compression_needs_less_than_the_isothermal_one },
    { "a perfect gas is near real air", a_perfect_gas_is_near_real_air },
    { "package power and efficiency invert", package_power_and_efficiency_invert },
    { "a package below isothermal power is refused", a_package_below_isothermal_power_is_refused },
    { "pressures the wrong way round are refused", pressures_the_wrong_way_round_are_refused },
    { "cycles are those of a receiver filled step by step", cycles_are_those_of_a_receiver_filled_step_by_step },
    { "a demand beyond the delivery is not met", a_demand_beyond_the_delivery_is_not_met },
    { "nothing drawn leaves the machine unloaded", nothing_drawn_leaves_the_machine_unloaded },
    { "defaults are the documented ones", defaults_are_the_documented_ones },
    { "a year that asks too much gets what there is", a_year_that_asks_too_much_gets_what_there_is },
    { "a compressor is checked field by field", a_compressor_is_checked_field_by_field },
    { "receiver time and volume invert", receiver_time_and_volume_invert },
    { "a supply that covers the demand never empties the receiver", a_supply_that_covers_the_demand_never_empties_the_receiver },
    { "leakage is found by rhythm and by decay", leakage_is_found_by_rhythm_and_by_decay },
    { "a year is the sum of its hours", a_year_is_the_sum_of_its_hours },
};
TEST_SUITE(compressor, tests);
