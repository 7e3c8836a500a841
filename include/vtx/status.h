/* Status codes and advisories: what every call answers.
 *
 * A status says whether the outputs may be used; an advisory qualifies a result that may be used.
 * See also: batch.h for the rules of the _batch forms. */
#ifndef VTX_STATUS_H
#define VTX_STATUS_H

#include <stddef.h>
#include <stdint.h>

#if defined(__GNUC__) && !defined(VTX_API)
#define VTX_API __attribute__((visibility("default")))
#elif !defined(VTX_API)
#define VTX_API
#endif

#ifdef __cplusplus
extern "C" {
#endif

typedef int32_t vtx_status;

/* Codes are never renumbered. On any code but VTX_OK every double output is a quiet NaN and every int32_t
 * output is -1, except fields and outputs named attainable_* with VTX_NO_SOLUTION and the good items of VTX_PARTIAL. */
enum vtx_status_code {
    VTX_OK = 0,            /* outputs are valid */
    VTX_BAD_ARGUMENT = 1,  /* null, NaN, infinity, unknown selector, or a value no physics allows */
    VTX_OUT_OF_RANGE = 2,  /* physically possible, but the method does not cover it */
    VTX_NO_SOLUTION = 3,   /* the wish cannot be met; attainable_* fields say what can */
    VTX_NOT_CONVERGED = 4, /* the bounded iteration ended before its tolerance */
    VTX_NO_MEMORY = 5,     /* the caller's workspace is too small */
    VTX_PARTIAL = 6        /* calls over n items: some or all items failed, their status says which */
};

/* Advisories: bits of one number, below 2^30, never renumbered. A struct result combines those of its parts. */
enum vtx_advisory {
    VTX_ADVISORY_EXTRAPOLATED = 1 << 0,            /* outside the range in which the method was fitted or tested */
    VTX_ADVISORY_CHOKED = 1 << 1,                  /* sonic somewhere: more downstream vacuum brings no more flow */
    VTX_ADVISORY_CONDENSING = 1 << 2,              /* liquid water is present or forms */
    VTX_ADVISORY_FREEZING = 1 << 3,                /* ice is present or forms */
    VTX_ADVISORY_SUPERSATURATED_OVER_ICE = 1 << 4, /* vapour metastable over ice, nothing condensed */
    VTX_ADVISORY_FIELD_UNAVAILABLE = 1 << 5,       /* a field has no meaning in this state and is NaN */
    VTX_ADVISORY_TWO_WET_BULBS = 1 << 6,           /* wet and iced wick both have a root; the wet one is given */
    VTX_ADVISORY_ENHANCEMENT_LIMITED = 1 << 7,     /* enhancement factor held at its limit near boiling */
    VTX_ADVISORY_SECOND_LAW_LIMITED = 1 << 8,      /* the model's cold temperature was raised to the isentropic limit */
    VTX_ADVISORY_UNCALIBRATED = 1 << 9,            /* rests on the default curve, not on readings of this tube */
    VTX_ADVISORY_STATIC_FREEZING = 1 << 10,        /* feed water can freeze in the sonic throat before the outlet does */
    VTX_ADVISORY_POORLY_DETERMINED = 1 << 11,      /* the data hardly fix a parameter */
    VTX_ADVISORY_OUTLIER = 1 << 12,                /* a reading was weighted down or looks wrong */
    VTX_ADVISORY_PARAMETER_HELD = 1 << 13,         /* a parameter was kept at its default */
    VTX_ADVISORY_MODEL_MISFIT = 1 << 14,           /* residuals exceed the stated uncertainties */
    VTX_ADVISORY_OUTSIDE_CORRELATION = 1 << 15,    /* a heat-transfer or jet correlation is used beyond its data */
    VTX_ADVISORY_UNDEREXPANDED_JET = 1 << 16,      /* the jet leaves above ambient pressure */
    VTX_ADVISORY_REVERSED_FLOW = 1 << 17,          /* flow runs against the stated direction */
    VTX_ADVISORY_NOT_LUMPED = 1 << 18,             /* Biot number too large for one temperature in the part */
    VTX_ADVISORY_SWEATING = 1 << 19,               /* an outside surface is below the ambient dew point */
    VTX_ADVISORY_FROSTING = 1 << 20,               /* an outside surface collects frost */
    VTX_ADVISORY_TOUCH_COLD = 1 << 21,             /* bare skin contact can hurt: too cold */
    VTX_ADVISORY_TOUCH_HOT = 1 << 22,              /* bare skin contact can burn */
    VTX_ADVISORY_NOISE_LIMIT = 1 << 23,            /* noise exposure above a limit */
    VTX_ADVISORY_PLAIN_AIR_BETTER = 1 << 24,       /* a plain air blast would remove more heat */
    VTX_ADVISORY_STARVED = 1 << 25,                /* the supply line costs much of the pressure */
    VTX_ADVISORY_EFFICIENCY_ASSUMED = 1 << 26,     /* separation efficiency assumed unchanged after a change of parts */
    VTX_ADVISORY_INDISTINGUISHABLE = 1 << 27,      /* these readings cannot tell two causes apart */
    VTX_ADVISORY_IMPOSSIBLE_READINGS = 1 << 28,    /* readings contradict the first or second law */
    VTX_ADVISORY_DEAD_END_PRESSURE = 1 << 29       /* a blocked opening could exceed the cleaning-air limit */
};

/* What a status means, in a few English words; "unknown status" for other numbers.
 *
 * status    in   -  any
 *
 * status    none: returns static text, cannot fail
 */
VTX_API const char *vtx_status_text(int32_t status);

/* What one advisory bit means, in a few English words; "unknown advisory" for anything but a single bit of vtx_advisory.
 *
 * advisory  in   -  one bit
 *
 * status    none: returns static text, cannot fail
 */
VTX_API const char *vtx_advisory_text(int32_t advisory);

#ifdef __cplusplus
}
#endif

#endif
