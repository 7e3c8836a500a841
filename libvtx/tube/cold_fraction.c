/* The cold fraction from thermometers and flow meters. */
#include <vtx/cold_fraction.h>

#include "expansion.h"

/* Two-sided 99 % of the normal distribution. */
static const double contradiction = 2.5758;

/* Enthalpy at a state, and what 1 K more adds. */
static vtx_status enthalpy_and_slope(const struct expansion *e, double pressure, double temperature, double *enthalpy, double *slope)
{
    const double step = 0.01; /* K: the slope serves an uncertainty only */
    double above, below;
    vtx_status status = feed_enthalpy(e, pressure, temperature, enthalpy);
    if (status == VTX_OK)
        status = feed_enthalpy(e, pressure, temperature + step, &above);
    if (status == VTX_OK)
        status = feed_enthalpy(e, pressure, temperature - step, &below);
    *slope = status == VTX_OK ? (above - below) / (2 * step) : 0;
    return status;
}

vtx_status vtx_cold_fraction_from_thermometers(int32_t model, double inlet_pressure, double inlet_temperature,
                                               double humidity_ratio, double cold_pressure, double cold_temperature,
                                               double hot_pressure, double hot_temperature, double inlet_uncertainty,
                                               double cold_uncertainty, double hot_uncertainty, double *cold_fraction,
                                               double *uncertainty)
{
    struct expansion e;
    double h0, hc, hh, slope0, slope_c, slope_h;
    vtx_status status = worse(require(cold_fraction != NULL), check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio));
    status = worse(status, worse(check_outlet(model, inlet_pressure, cold_pressure), check_outlet(model, inlet_pressure, hot_pressure)));
    status = worse(status, worse(check_positive(cold_temperature, 50, 1000), check_positive(hot_temperature, 50, 1000)));
    status = worse(status, worse(check_amount(inlet_uncertainty, 100),
                                 worse(check_amount(cold_uncertainty, 100), check_amount(hot_uncertainty, 100))));
    if (status == VTX_OK)
        status = feed_at(model, inlet_pressure, inlet_temperature, humidity_ratio, &e);
    if (status == VTX_OK)
        status = enthalpy_and_slope(&e, inlet_pressure, inlet_temperature, &h0, &slope0);
    if (status == VTX_OK)
        status = enthalpy_and_slope(&e, cold_pressure, cold_temperature, &hc, &slope_c);
    if (status == VTX_OK)
        status = enthalpy_and_slope(&e, hot_pressure, hot_temperature, &hh, &slope_h);
    if (status == VTX_OK)
        status = require(hc <= h0 && h0 <= hh && hc < hh);
    if (status != VTX_OK)
        return poison(uncertainty, poison(cold_fraction, status));
    const double mu = (hh - h0) / (hh - hc);
    *cold_fraction = mu;
    if (uncertainty)
        *uncertainty = sqrt(square(slope0 * inlet_uncertainty) + square(mu * slope_c * cold_uncertainty) +
                            square((1 - mu) * slope_h * hot_uncertainty)) / (hh - hc);
    return VTX_OK;
}

vtx_status vtx_cold_fraction_from_flows(int32_t pair, double first_flow, double second_flow, double first_uncertainty,
                                        double second_uncertainty, double *cold_fraction, double *uncertainty)
{
    const int outlets = pair == VTX_FLOWS_COLD_AND_HOT;
    vtx_status status = worse(worse(require(cold_fraction != NULL), require(pair >= VTX_FLOWS_INLET_AND_COLD && pair <= VTX_FLOWS_COLD_AND_HOT)),
                              worse(worse(check_positive(first_flow, 1e-9, 100), check_amount(second_flow, 100)),
                                    worse(check_amount(first_uncertainty, 100), check_amount(second_uncertainty, 100))));
    status = worse(status, require(outlets || second_flow <= first_flow));
    if (status != VTX_OK)
        return poison(uncertainty, poison(cold_fraction, status));
    const double whole = outlets ? first_flow + second_flow : first_flow;
    const double share = (outlets ? first_flow : second_flow) / whole;
    *cold_fraction = pair == VTX_FLOWS_INLET_AND_HOT ? 1 - share : share;
    if (uncertainty)
        *uncertainty = outlets ? hypot((1 - share) * first_uncertainty, share * second_uncertainty) / whole
                               : hypot(share * first_uncertainty, second_uncertainty) / whole;
    return VTX_OK;
}

/* With V = u0^2 + uc^2 + uh^2 and imbalance d: m0 -= u0^2 d/V, mc += uc^2 d/V, mh += uh^2 d/V. */
vtx_status vtx_cold_fraction_from_three_flows(double inlet_flow, double cold_flow, double hot_flow, double inlet_uncertainty,
                                              double cold_uncertainty, double hot_uncertainty, vtx_flow_balance *balance)
{
    vtx_status status = worse(worse(require(balance != NULL), check_positive(inlet_flow, 1e-9, 100)),
                              worse(check_amount(cold_flow, 100), check_amount(hot_flow, 100)));
    status = worse(status, worse(check_positive(inlet_uncertainty, 1e-15, 100),
                                 worse(check_positive(cold_uncertainty, 1e-15, 100), check_positive(hot_uncertainty, 1e-15, 100))));
    if (status != VTX_OK)
        return POISON_STRUCT(balance, vtx_flow_balance, advisories, status);
    const double v0 = square(inlet_uncertainty), vc = square(cold_uncertainty), vh = square(hot_uncertainty), sum = v0 + vc + vh;
    const double imbalance = inlet_flow - cold_flow - hot_flow;
    const double inlet = inlet_flow - v0 / sum * imbalance, cold = cold_flow + vc / sum * imbalance, hot = hot_flow + vh / sum * imbalance;
    if (!(inlet > 0 && cold >= 0 && hot >= 0))
        return POISON_STRUCT(balance, vtx_flow_balance, advisories, VTX_BAD_ARGUMENT);
    const double mu = within(cold / inlet, 0, 1);
    balance->cold_fraction = mu;
    /* Variances of the adjusted flows and their covariance: vc (1 - vc/V), v0 (1 - v0/V), v0 vc/V. */
    balance->uncertainty = sqrt(vc * (v0 + vh) / sum - 2 * mu * v0 / sum * vc + square(mu) * v0 * (vc + vh) / sum) / inlet;
    balance->inlet_flow = inlet;
    balance->cold_flow = cold;
    balance->hot_flow = hot;
    balance->imbalance = imbalance;
    balance->discrepancy = imbalance / sqrt(sum);
    balance->advisories = fabs(balance->discrepancy) > contradiction ? VTX_ADVISORY_MODEL_MISFIT : 0;
    balance->spare = 0;
    return VTX_OK;
}

vtx_status vtx_cold_fraction_combined(double first_fraction, double first_uncertainty, double second_fraction,
                                      double second_uncertainty, double *cold_fraction, double *uncertainty, double *discrepancy)
{
    vtx_status status = worse(worse(require(cold_fraction != NULL), worse(check_share(first_fraction), check_share(second_fraction))),
                              worse(check_positive(first_uncertainty, 1e-12, 1), check_positive(second_uncertainty, 1e-12, 1)));
    if (status != VTX_OK)
        return poison(discrepancy, poison(uncertainty, poison(cold_fraction, status)));
    const double v1 = square(first_uncertainty), v2 = square(second_uncertainty);
    const double mean = first_fraction + v1 / (v1 + v2) * (second_fraction - first_fraction);
    if (uncertainty)
        *uncertainty = sqrt(v1 / (v1 + v2) * v2);
    if (discrepancy)
        *discrepancy = (first_fraction - second_fraction) / sqrt(v1 + v2);
    *cold_fraction = mean;
    return VTX_OK;
}
