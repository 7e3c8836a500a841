/* Ranges of what enters and where it leaves, shared by separation and its inverses. Internal. */
#ifndef VTX_TUBE_FEED_H
#define VTX_TUBE_FEED_H

#include <vtx/moist_air.h>

#include "curve.h"

static const double inlet_temperature_min = 150, inlet_temperature_max = 450;
static const double humidity_ratio_max = 0.2;

static const double inlet_pressure_min = 1e4, outlet_pressure_min = 1e3;

static inline double inlet_pressure_max(int32_t model) { return model == VTX_AIR_REAL ? 5e6 : 1e7; }

static inline vtx_status check_feed(int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio)
{
    return worse(worse(require(model == VTX_AIR_IDEAL || model == VTX_AIR_REAL),
                       check_positive(inlet_pressure, inlet_pressure_min, inlet_pressure_max(model))),
                 worse(check_positive(inlet_temperature, inlet_temperature_min, inlet_temperature_max),
                       check_amount(humidity_ratio, humidity_ratio_max)));
}

static inline vtx_status check_outlet(int32_t model, double inlet_pressure, double outlet_pressure)
{
    return worse(check_positive(outlet_pressure, outlet_pressure_min, inlet_pressure_max(model)),
                 require(outlet_pressure <= inlet_pressure));
}

/* Every ordinary call of the perfect gas passes this; what is wrong with another is found out after. NaN is never within. */
static inline int are_ordinary_ends(double inlet_pressure, double inlet_temperature, double humidity_ratio, double cold_pressure,
                                    double hot_pressure, double cold_fraction)
{
    const int feed = (inlet_pressure >= inlet_pressure_min) & (inlet_pressure <= inlet_pressure_max(VTX_AIR_IDEAL)) &
                     (inlet_temperature >= inlet_temperature_min) & (inlet_temperature <= inlet_temperature_max) &
                     (humidity_ratio >= 0) & (humidity_ratio <= humidity_ratio_max);
    const int outlets = (cold_pressure >= outlet_pressure_min) & (cold_pressure <= inlet_pressure) &
                        (hot_pressure >= outlet_pressure_min) & (hot_pressure <= inlet_pressure);
    return feed & outlets & (cold_fraction >= 0) & (cold_fraction <= 1);
}

/* Where the curve rests on nothing: the ends of the cold fraction, and ratios beyond the points it was fitted to. As wide as a double:
 * a loop over items then keeps to vectors of one width. */
static inline int64_t wide_curve_advisories(const vtx_tube *tube, double log_ratio, double cold_fraction)
{
    static const double log_ratio_min = 0.6931471805599453, log_ratio_max = 2.1400661634962708; /* ln 2, ln 8.5 */
    const int uncalibrated = tube->basis == VTX_TUBE_UNCALIBRATED;
    const int extrapolated = cold_fraction < 0.1 || cold_fraction > 0.9 ||
                             (uncalibrated && (log_ratio < log_ratio_min || log_ratio > log_ratio_max));
    return (uncalibrated ? (int64_t)VTX_ADVISORY_UNCALIBRATED : 0) | (extrapolated ? (int64_t)VTX_ADVISORY_EXTRAPOLATED : 0);
}

static inline int32_t curve_advisories(const vtx_tube *tube, double log_ratio, double cold_fraction)
{
    return (int32_t)wide_curve_advisories(tube, log_ratio, cold_fraction);
}

#endif
