/* Texts of status codes and advisories. */
#include <vtx/status.h>

const char *vtx_status_text(int32_t status)
{
    switch (status) {
    case VTX_OK: return "ok";
    case VTX_BAD_ARGUMENT: return "bad argument: null, not finite, unknown selector or physically impossible";
    case VTX_OUT_OF_RANGE: return "out of the range of the method";
    case VTX_NO_SOLUTION: return "no solution: the wish cannot be met";
    case VTX_NOT_CONVERGED: return "iteration ended without reaching its tolerance";
    case VTX_NO_MEMORY: return "workspace too small";
    case VTX_PARTIAL: return "some items failed";
    default: return "unknown status";
    }
}

const char *vtx_advisory_text(int32_t advisory)
{
    switch (advisory) {
    case VTX_ADVISORY_EXTRAPOLATED: return "outside the range in which the method was fitted or tested";
    case VTX_ADVISORY_CHOKED: return "flow is choked";
    case VTX_ADVISORY_CONDENSING: return "liquid water present";
    case VTX_ADVISORY_FREEZING: return "ice present";
    case VTX_ADVISORY_SUPERSATURATED_OVER_ICE: return "vapour supersaturated over ice";
    case VTX_ADVISORY_FIELD_UNAVAILABLE: return "a field has no meaning in this state";
    case VTX_ADVISORY_TWO_WET_BULBS: return "two wet-bulb temperatures exist, the one over liquid is given";
    case VTX_ADVISORY_ENHANCEMENT_LIMITED: return "enhancement factor held at its limit near boiling";
    case VTX_ADVISORY_SECOND_LAW_LIMITED: return "cold temperature held at the isentropic limit";
    case VTX_ADVISORY_UNCALIBRATED: return "default separation curve, not calibrated on this tube";
    case VTX_ADVISORY_STATIC_FREEZING: return "feed water can freeze in the sonic throat";
    case VTX_ADVISORY_POORLY_DETERMINED: return "the data hardly determine a parameter";
    case VTX_ADVISORY_OUTLIER: return "a reading was weighted down";
    case VTX_ADVISORY_PARAMETER_HELD: return "a parameter was kept at its default";
    case VTX_ADVISORY_MODEL_MISFIT: return "residuals exceed the stated uncertainties";
    case VTX_ADVISORY_OUTSIDE_CORRELATION: return "correlation used beyond its data";
    case VTX_ADVISORY_UNDEREXPANDED_JET: return "jet leaves above ambient pressure";
    case VTX_ADVISORY_REVERSED_FLOW: return "flow is reversed";
    case VTX_ADVISORY_NOT_LUMPED: return "part is too thick for a single temperature";
    case VTX_ADVISORY_SWEATING: return "surface sweats";
    case VTX_ADVISORY_FROSTING: return "surface collects frost";
    case VTX_ADVISORY_TOUCH_COLD: return "surface too cold to touch";
    case VTX_ADVISORY_TOUCH_HOT: return "surface too hot to touch";
    case VTX_ADVISORY_NOISE_LIMIT: return "noise exposure above a limit";
    case VTX_ADVISORY_PLAIN_AIR_BETTER: return "plain air blast removes more heat";
    case VTX_ADVISORY_STARVED: return "supply line starves the cooler";
    case VTX_ADVISORY_EFFICIENCY_ASSUMED: return "efficiency assumed unchanged after a change of parts";
    case VTX_ADVISORY_INDISTINGUISHABLE: return "the readings cannot tell two causes apart";
    case VTX_ADVISORY_IMPOSSIBLE_READINGS: return "readings contradict the laws of thermodynamics";
    case VTX_ADVISORY_DEAD_END_PRESSURE: return "blocked opening can exceed the cleaning-air pressure limit";
    default: return "unknown advisory";
    }
}
