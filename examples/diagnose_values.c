/* Gauge pressures, temperatures, litres of free air. */
#include "diagnose_values.h"

#include <math.h>

#include "report.h"

static int is_pressure(int32_t reading)
{
    return reading == VTX_READ_SUPPLY_PRESSURE || reading == VTX_READ_INLET_PRESSURE || reading == VTX_READ_COLD_PRESSURE;
}

static int is_flow(int32_t reading) { return reading == VTX_READ_INLET_FLOW || reading == VTX_READ_COLD_FLOW; }

static double free_air(const struct service_case *c, double mass_flow)
{
    const vtx_cooler *k = &c->job.cooler;
    double flow = (double)NAN;
    vtx_standard_flow(VTX_AIR_REAL, k->reference_pressure, k->reference_temperature, k->reference_humidity, mass_flow, &flow);
    return flow;
}

const char *value_text(const struct service_case *c, int32_t reading, double value)
{
    return is_pressure(reading) ? report_gauge(value, c->job.site.pressure)
        : is_flow(reading)      ? report_flow(free_air(c, value))
                                : report_temperature(value);
}

const char *difference_text(const struct service_case *c, int32_t reading, double difference)
{
    return is_pressure(reading) ? report_pressure_drop(difference)
        : is_flow(reading)      ? report_flow(free_air(c, difference))
                                : report_difference(difference);
}
