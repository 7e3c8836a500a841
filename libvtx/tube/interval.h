/* Intervals of a calibration. Internal. */
#ifndef VTX_TUBE_INTERVAL_H
#define VTX_TUBE_INTERVAL_H

#include "../base/distribution.h"
#include "../base/numeric.h"

static inline vtx_status check_confidence(double confidence)
{
    return worse(check_share(confidence), check_range(confidence, 0.5, 0.999));
}

static inline double quantile_of(double confidence) { return normal_quantile(0.5 + 0.5 * confidence); }

static inline int is_widened(double scatter, double energy_scale) { return scatter > 0 || energy_scale > 1; }

/* Half-width of an interval in standard deviations: Student's law once scatter or scale were found from the readings. */
static inline double interval_factor(double confidence, double scatter, double energy_scale, double freedom)
{
    return is_widened(scatter, energy_scale) ? student_quantile(0.5 + 0.5 * confidence, within(freedom, 1, 1e4)) : quantile_of(confidence);
}

#endif
