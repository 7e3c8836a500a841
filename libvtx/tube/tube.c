/* The description of a tube: default, checks, careful side. */
#include "curve.h"

/* Fitted to ten points of vortex-tube studies, nine of them from memory: peak efficiency 0.276 +/- 0.027, rounded; 10 and 90 %
 * of sixteen points at 0.18 and 0.39. The points do not fix the coldest fraction; 0.2..0.4 is common in the literature. */
static const vtx_tube uncalibrated = {
    .peak_efficiency = 0.28,
    .coldest_fraction = 0.30,
    .efficiency_low = 0.18,
    .efficiency_high = 0.39,
    .pressure_exponent = 0,
    .reference_ratio = 5,
    .cold_leak = 0,
    .hot_leak = 0,
    .ambient_temperature = 293.15,
    .basis = VTX_TUBE_UNCALIBRATED,
};

/* What the careful sides of an unknown tube read: common practice, no source. */
static const double uncalibrated_sizing = 0.20;
static const double uncalibrated_freezing = 0.55;

vtx_status vtx_tube_init(vtx_tube *tube)
{
    if (!tube)
        return VTX_BAD_ARGUMENT;
    *tube = uncalibrated;
    return VTX_OK;
}

vtx_status check_tube(const vtx_tube *t)
{
    if (!t)
        return VTX_BAD_ARGUMENT;
    /* NaN fails every comparison and so falls into BAD_ARGUMENT. */
    const int efficiencies = t->efficiency_low > 0 && t->efficiency_low <= t->peak_efficiency &&
                             t->peak_efficiency <= t->efficiency_high && t->efficiency_high <= 1;
    const int fraction = t->coldest_fraction > 0 && t->coldest_fraction < 0.5;
    const int zeros = (t->spare == 0) & are_zero(t->reserved, ARRAY_LENGTH(t->reserved));
    vtx_status status = require(efficiencies && fraction && zeros && (t->basis == VTX_TUBE_UNCALIBRATED || t->basis == VTX_TUBE_CALIBRATED));
    status = worse(status, worse(check_range(t->pressure_exponent, -1, 1), check_positive(t->reference_ratio, 1, 100)));
    status = worse(status, worse(check_amount(t->cold_leak, 10), check_amount(t->hot_leak, 10)));
    return worse(status, check_positive(t->ambient_temperature, 150, 400));
}

vtx_status vtx_tube_for_question(const vtx_tube *tube, int32_t question, vtx_tube *careful)
{
    vtx_status status = worse(require(careful != NULL), check_tube(tube));
    status = worse(status, require(question >= VTX_QUESTION_SIZING && question <= VTX_QUESTION_TYPICAL));
    if (status != VTX_OK)
        return POISON_STRUCT(careful, vtx_tube, basis, status);
    *careful = *tube;
    const int calibrated = tube->basis == VTX_TUBE_CALIBRATED;
    if (question == VTX_QUESTION_SIZING) {
        careful->peak_efficiency = calibrated ? tube->efficiency_low : smaller(uncalibrated_sizing, tube->peak_efficiency);
        careful->efficiency_low = smaller(tube->efficiency_low, careful->peak_efficiency);
    } else if (question == VTX_QUESTION_FREEZING) {
        careful->peak_efficiency = calibrated ? tube->efficiency_high : larger(uncalibrated_freezing, tube->efficiency_high);
        careful->efficiency_high = careful->peak_efficiency;
    }
    return VTX_OK;
}
