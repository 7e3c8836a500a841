/* Filters in service. */
#include <vtx/filter.h>

#include "../flow/filter_kernel.h"
#include "../flow/isentropic_kernel.h"

#define MASS_FLOW_MIN 1e-9
#define FILTER_FLOW_MAX 1e4
#define DROP_MAX 1e8
#define LOADING_MIN 0.01
#define LOADING_MAX 1e4
#define TIME_MAX 1e12

static inline vtx_status check_density(double density) { return check_positive(density, 0.1, 1000); }

static inline vtx_status check_loading(double loading) { return check_positive(loading, LOADING_MIN, LOADING_MAX); }

static vtx_status check_filter(const vtx_filter *filter)
{
    if (!filter)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(filter->rated_flow, MASS_FLOW_MIN, FILTER_FLOW_MAX), check_density(filter->rated_density));
    status = worse(status, check_positive(filter->clean_drop, 1, 1e6));
    status = worse(status, worse(check_share(filter->medium_share), check_positive(filter->medium_share, 0.05, 1)));
    status = worse(status, check_positive(filter->change_drop, 1, 1e7));
    status = worse(status, require(are_zero(filter->reserved, ARRAY_LENGTH(filter->reserved))));
    return status == VTX_OK ? require(filter->change_drop > filter->clean_drop) : status;
}

/* Loading 1 is the clean element. */
static inline struct filter_law law_of(const vtx_filter *f, double loading)
{
    struct filter_law law = filter_law_of(f->clean_drop * f->rated_density, f->rated_flow, f->medium_share);
    law.laminar *= loading;
    return law;
}

/* Pa in the clean medium, and in the housing. */
static inline double medium_drop(const vtx_filter *f, double density, double mass_flow)
{
    const struct filter_law medium = { law_of(f, 1).laminar, 0 };
    return filter_drop(&medium, 1 / density, mass_flow);
}

static inline double housing_drop(const vtx_filter *f, double density, double mass_flow)
{
    const struct filter_law housing = { 0, law_of(f, 1).turbulent };
    return filter_drop(&housing, 1 / density, mass_flow);
}

vtx_status vtx_filter_init(vtx_filter *filter)
{
    if (!filter)
        return VTX_BAD_ARGUMENT;
    *filter = (vtx_filter){ .clean_drop = 1e4, .medium_share = 0.7, .change_drop = 5e4 };
    return VTX_OK;
}

vtx_status vtx_filter_drop(const vtx_filter *filter, double density, double mass_flow, double loading, double *drop)
{
    vtx_status status = worse(require(drop != NULL), worse(check_filter(filter), check_density(density)));
    status = worse(status, worse(check_amount(mass_flow, FILTER_FLOW_MAX), check_loading(loading)));
    if (status != VTX_OK)
        return poison(drop, status);
    const struct filter_law law = law_of(filter, loading);
    const double found = filter_drop(&law, 1 / density, mass_flow);
    if (found > DROP_MAX)
        return poison(drop, VTX_OUT_OF_RANGE);
    *drop = found;
    return VTX_OK;
}

vtx_status vtx_filter_loading(const vtx_filter *filter, double density, double mass_flow, double drop, double *loading)
{
    vtx_status status = worse(require(loading != NULL), worse(check_filter(filter), check_density(density)));
    status = worse(status, worse(check_positive(mass_flow, MASS_FLOW_MIN, FILTER_FLOW_MAX), check_positive(drop, 0.01, DROP_MAX)));
    if (status != VTX_OK)
        return poison(loading, status);
    const double in_medium = drop - housing_drop(filter, density, mass_flow);
    if (!(in_medium > 0))
        return poison(loading, VTX_NO_SOLUTION);
    *loading = in_medium / medium_drop(filter, density, mass_flow);
    return VTX_OK;
}

vtx_status vtx_filter_drop_at_reference(const vtx_filter *filter, double density, double mass_flow, double drop, double flow_uncertainty,
                                        double drop_uncertainty, double reference_density, double reference_flow, double *reference_drop,
                                        double *uncertainty)
{
    double loading, found;
    vtx_status status = worse(require(reference_drop != NULL), vtx_filter_loading(filter, density, mass_flow, drop, &loading));
    status = worse(status, worse(check_amount(flow_uncertainty, FILTER_FLOW_MAX), check_amount(drop_uncertainty, DROP_MAX)));
    status = worse(status, worse(check_density(reference_density), check_positive(reference_flow, MASS_FLOW_MIN, FILTER_FLOW_MAX)));
    if (status == VTX_OK)
        status = vtx_filter_drop(filter, reference_density, reference_flow, loading, &found);
    if (status != VTX_OK) {
        poison(uncertainty, status);
        return poison(reference_drop, status);
    }
    *reference_drop = found;
    if (uncertainty) {
        /* The loading goes as (drop - b q^2)/(a q): by the drop 1/(a q), by the flow -(drop + b q^2)/(a q^2). */
        const double carried = medium_drop(filter, reference_density, reference_flow) / medium_drop(filter, density, mass_flow);
        const double by_flow = carried * (drop + housing_drop(filter, density, mass_flow)) / mass_flow;
        *uncertainty = hypot(carried * drop_uncertainty, by_flow * flow_uncertainty);
    }
    return VTX_OK;
}

vtx_status vtx_filter_loading_when_due(const vtx_filter *filter, double *loading)
{
    vtx_status status = worse(require(loading != NULL), check_filter(filter));
    if (status != VTX_OK)
        return poison(loading, status);
    return vtx_filter_loading(filter, filter->rated_density, filter->rated_flow, filter->change_drop, loading);
}

vtx_status vtx_filter_element(const vtx_filter *filter, double loading, vtx_chain_element *chain_element)
{
    const double temperature = 293.15; /* any will do: the chain keeps density times pressure loss */
    vtx_gas air;
    vtx_status status = worse(require(chain_element != NULL), worse(check_filter(filter), check_loading(loading)));
    if (status != VTX_OK)
        return POISON_STRUCT(chain_element, vtx_chain_element, kind, status);
    vtx_gas_init(&air);
    const double pressure = filter->rated_density * specific_gas_constant(&air) * temperature;
    status = vtx_chain_filter(filter->clean_drop, filter->rated_flow, pressure, temperature, filter->medium_share, chain_element);
    if (status == VTX_OK)
        chain_element->laminar_loss *= loading;
    return status;
}

static vtx_status give_time(double found, double *time)
{
    if (found > TIME_MAX)
        return poison(time, VTX_OUT_OF_RANGE);
    *time = found;
    return VTX_OK;
}

vtx_status vtx_filter_time_left(int32_t growth, double service_time, double loading, double loading_due, double *time_left)
{
    vtx_status status = worse(require(time_left != NULL), require(growth == VTX_FILTER_CAKE || growth == VTX_FILTER_CLOGGING));
    status = worse(status, worse(check_positive(service_time, 1, 1e9), check_loading(loading)));
    status = worse(status, worse(require(loading_due > 1), check_loading(loading_due)));
    if (status == VTX_OK && !(loading > 1))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(time_left, status);
    const double way = growth == VTX_FILTER_CAKE ? (loading_due - 1) / (loading - 1) : log(loading_due) / log(loading);
    return give_time(service_time * (way - 1), time_left);
}

vtx_status vtx_filter_economic_interval(double element_cost, double drop_rate, double power_per_pressure, double energy_price,
                                        double *interval)
{
    vtx_status status = worse(require(interval != NULL), check_positive(element_cost, 1e-6, 1e9));
    status = worse(status, worse(check_positive(drop_rate, 1e-12, 1e3), check_positive(power_per_pressure, 1e-9, 1e6)));
    status = worse(status, check_positive(energy_price, 1e-15, 1));
    if (status != VTX_OK)
        return poison(interval, status);
    return give_time(sqrt(2 * element_cost / (energy_price * power_per_pressure * drop_rate)), interval);
}
