/* Clean or replace by trend: a line through successive readings of anything that wears, and the date at which it crosses a limit.
 *
 * Not the readings themselves: filter.h carries a filter's drop to one flow.
 * See also: filter.h for the time left from a single reading. */
#ifndef VTX_TREND_H
#define VTX_TREND_H

#include <vtx/decision.h>

#ifdef __cplusplus
extern "C" {
#endif

/* How the quantity goes with time. */
enum vtx_trend_growth {
    VTX_TREND_EVEN = 670,       /* by equal amounts in equal times: a straight line */
    VTX_TREND_EXPONENTIAL = 671 /* by equal shares in equal times: a straight line in the logarithm; values above 0 */
};

/* What can be said of the date. */
enum vtx_trend_verdict {
    VTX_TREND_DATED = 672,   /* will be crossed, between an earliest and a latest date */
    VTX_TREND_OPEN = 673,    /* may be crossed from the earliest date on, and may never be: no latest date */
    VTX_TREND_NEVER = 674,   /* leads away from the limit, or stands still, for certain at this confidence */
    VTX_TREND_PASSED = 675   /* already beyond the limit today */
};

/* A line through readings. With VTX_TREND_EXPONENTIAL value and rate are those of the natural logarithm. */
typedef struct vtx_trend {
    double first_time;        /* s    of the earliest reading */
    double last_time;         /* s    of the latest reading */
    double reference_time;    /* s    weighted mean of the times: there value and rate are independent of each other */
    double value;             /* unit of the readings; of the line at reference_time */
    double value_uncertainty; /* unit of the readings; standard */
    double rate;              /* unit of the readings per s; the line's slope */
    double rate_uncertainty;  /* unit of the readings per s; standard */
    double freedom;           /* -    degrees of freedom of the two uncertainties; 0: they rest on stated ones, normal distribution */
    double scatter;           /* -    standard deviation of a reading about the line over the stated one; where none was stated in the readings' unit; NaN for
                                   two readings */
    double chi_square;        /* -    of the readings by their stated uncertainties; NaN where none was stated */
    double probability;       /* -    chance of a larger chi_square if the line is true; NaN for two readings or where none was stated */
    double rate_probability;  /* -    chance of so large a rate, up or down, without any trend */
    int32_t growth;           /* enum vtx_trend_growth */
    int32_t readings;         /* how many */
    int32_t significant;      /* 1 when rate_probability is below 0.05, else 0 */
    int32_t advisories;       /* MODEL_MISFIT: probability below 0.01, uncertainties widened by scatter; FIELD_UNAVAILABLE;
                                 POORLY_DETERMINED: a reading's uncertainty is above a fifth of its value, too much for its logarithm */
} vtx_trend;

/* The line by weighted least squares. Leave out what was read before the last cleaning or exchange.
 *
 * times          in   s   count times, any order, any zero; -1e12..1e12; not all the same
 * values         in   -   count values, any unit; -1e15..1e15; above 0 for VTX_TREND_EXPONENTIAL
 * uncertainties  in   -   count standard uncertainties in the values' unit, all above 0; or all 0: not known, found from the scatter
 * count          in   -   2..100000; 3 or more where no uncertainty is known
 * growth         in   -   enum vtx_trend_growth
 * trend          out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (weights of the logarithm)
 * advisory  MODEL_MISFIT, FIELD_UNAVAILABLE, POORLY_DETERMINED
 * accuracy  to rounding; the 11 readings of GUM H.3 to their printed digits
 * note      an error that all readings share (one gauge 3 % high throughout) moves the line, not its uncertainty: leave it out here and
 *           allow for it in the limit
 * source    weighted least squares; JCGM 100:2008 (GUM) H.3; widening by the root of chi-square over freedom: Birge 1932 (from memory)
 */
VTX_API vtx_status vtx_trend_fit(const double *times, const double *values, const double *uncertainties, size_t count, int32_t growth,
                                 vtx_trend *trend);

/* The quantity at a time, by the line.
 *
 * trend        in   -   of vtx_trend_fit
 * time         in   s   -1e12..1e12
 * value        out  -   unit of the readings
 * uncertainty  out  -   unit of the readings, standard, of the line; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  first order for VTX_TREND_EXPONENTIAL
 * source    JCGM 100:2008 (GUM) H.3
 */
VTX_API vtx_status vtx_trend_at(const vtx_trend *trend, double time, double *value, double *uncertainty);

/* When a limit is crossed. */
typedef struct vtx_trend_crossing {
    double time;               /* s    by the line; NaN where the line leads away */
    double earliest;           /* s    lower end of the interval; NaN: none, it may have been at any time before */
    double latest;             /* s    upper end of the interval; NaN: none, it may never be */
    double time_left;          /* s    from today to time; below 0 overdue; NaN as time */
    double value_today;        /* unit of the readings; by the line */
    double value_uncertainty;  /* unit of the readings; standard */
    double passed_probability; /* -    that the line is beyond the limit today */
    int32_t verdict;           /* enum vtx_trend_verdict */
    int32_t advisories;        /* those of the trend; FIELD_UNAVAILABLE: an open end, or no time; POORLY_DETERMINED also: the rate does not differ
                                  from 0 at this confidence; EXTRAPOLATED: the date lies further from the
                                  readings than three times the time they span */
} vtx_trend_crossing;

/* The date at which the line crosses a limit, with an interval that holds it at the wished confidence.
 *
 * trend        in   -   of vtx_trend_fit
 * limit        in   -   unit of the readings; -1e15..1e15; above 0 for VTX_TREND_EXPONENTIAL
 * side         in   -   VTX_TOLERANCE_UPPER: crossed by rising, as a drop; VTX_TOLERANCE_LOWER: by falling, as an efficiency
 * today        in   s   -1e12..1e12
 * confidence   in   -   0.5..0.999
 * crossing     out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a date beyond 1e13 s)
 * advisory  FIELD_UNAVAILABLE, POORLY_DETERMINED, EXTRAPOLATED
 * accuracy  1e5 draws of 4 to 12 readings, uncertainties stated or found from the scatter, growth even or exponential with 5 % readings: 95 %
 *           intervals hold the date in 94.9 to 95.1 % of them (tests/base/test_trend.c). That the growth goes on as it did is an
 *           assumption: read again well before the date
 * source    interval of a ratio: Fieller 1954 (from memory); the same as the profile likelihood for a straight line
 */
VTX_API vtx_status vtx_trend_crosses(const vtx_trend *trend, double limit, int32_t side, double today, double confidence,
                                     vtx_trend_crossing *crossing);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_trend_at_batch(size_t n, const vtx_trend *trend, ptrdiff_t trend_stride, const double *time,
        ptrdiff_t time_stride, double *value, ptrdiff_t value_stride, double *uncertainty,
        ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_trend_crosses_batch(size_t n, const vtx_trend *trend, ptrdiff_t trend_stride, const double *limit,
        ptrdiff_t limit_stride, int32_t side, const double *today, ptrdiff_t today_stride, const double *confidence,
        ptrdiff_t confidence_stride, vtx_trend_crossing *crossing, ptrdiff_t crossing_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
