/* Noise at work: how long a level may be borne, dose, daily exposure, under the rules of OSHA, NIOSH and the EU.
 *
 * Not legal advice, and not a measurement: local rules and a calibrated dosimeter decide.
 * See also: noise.h for levels, distance and the attenuation needed. Levels are A-weighted, in dB. */
#ifndef VTX_EXPOSURE_H
#define VTX_EXPOSURE_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Criterion levels and action values, dB(A). */
#define VTX_OSHA_CRITERION_LEVEL 90.0    /* 29 CFR 1910.95, 8 h a day */
#define VTX_OSHA_ACTION_LEVEL 85.0       /* 29 CFR 1910.95(c), half the dose */
#define VTX_OSHA_CEILING_LEVEL 115.0     /* 29 CFR 1910.95, last row of table G-16: steady noise above is not allowed */
#define VTX_NIOSH_CRITERION_LEVEL 85.0   /* NIOSH 98-126, 8 h a day */
#define VTX_EU_LOWER_ACTION_LEVEL 80.0   /* 2003/10/EC article 3, daily exposure level */
#define VTX_EU_UPPER_ACTION_LEVEL 85.0   /* 2003/10/EC article 3 */
#define VTX_EU_LIMIT_LEVEL 87.0          /* 2003/10/EC article 3, under the protectors */
#define VTX_EU_LOWER_ACTION_PEAK 112.0   /* Pa, C-weighted peak */
#define VTX_EU_UPPER_ACTION_PEAK 140.0   /* Pa */
#define VTX_EU_LIMIT_PEAK 200.0          /* Pa, under the protectors */

/* Rules for the time that a steady level may be borne in a day. */
enum vtx_noise_rule {
    VTX_NOISE_RULE_OSHA_FORMULA = 470,    /* vtx_osha_permissible_time */
    VTX_NOISE_RULE_OSHA_TABLE = 471,      /* vtx_osha_table_time: what table G-16 prints */
    VTX_NOISE_RULE_NIOSH = 472,           /* vtx_niosh_permissible_time */
    VTX_NOISE_RULE_EU_LOWER_ACTION = 473, /* vtx_eu_permissible_time to 80 dB(A): nothing need be done */
    VTX_NOISE_RULE_EU_UPPER_ACTION = 474, /* to 85 dB(A): protectors need not be worn */
    VTX_NOISE_RULE_EU_LIMIT = 475         /* to 87 dB(A): level under the protectors */
};

/* Reference duration of OSHA's formula: 8 h at 90 dB(A), half as long for each 5 dB more.
 *
 * level     in   dB  80..130
 * time      out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    29 CFR 1910.95 appendix A, table G-16A: T = 8 h/2^((L - 90)/5)
 * note      differs from printed table G-16 at 92, 97 and 102 dB(A): vtx_osha_table_time
 * caution   above 115 dB(A) it serves to add doses; it does not permit the exposure
 */
VTX_API vtx_status vtx_osha_permissible_time(double level, double *time);

/* Permissible duration as printed in OSHA's table G-16; between two rows that of the louder one.
 *
 * level     in   dB  90..115
 * time      out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (below 90 dB(A) the table sets no limit, above 115 it allows no time)
 * accuracy  as printed, rounded: 6, 3 and 1.5 h at 92, 97 and 102 dB(A), where the formula gives 6.06, 3.03 and 1.52 h
 * source    29 CFR 1910.95 table G-16
 */
VTX_API vtx_status vtx_osha_table_time(double level, double *time);

/* OSHA dose of one steady level borne for a time; 1 is the permitted dose, 0.5 the action level.
 *
 * level      in   dB  0..130
 * time       in   s   0..86400
 * threshold  in   dB  80..90, quieter levels do not count: 80 for the hearing conservation dose, 90 for the limit of table G-16
 * dose       out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    29 CFR 1910.95 appendix A; thresholds: 1910.95(d)(2)(i) and OSHA's dosimeter settings (from memory)
 */
VTX_API vtx_status vtx_osha_dose(double level, double time, double threshold, double *dose);

/* OSHA dose of a day made of several steady levels.
 *
 * level      in   dB  0..130, count values
 * time       in   s   0..86400, count values, together at most 24 h
 * count      in   -   1 or more
 * threshold  in   dB  80..90, as for vtx_osha_dose
 * dose       out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    29 CFR 1910.95 appendix A: D = sum(C/T)
 */
VTX_API vtx_status vtx_osha_dose_of_day(const double *level, const double *time, size_t count, double threshold, double *dose);

/* Steady level of 8 h that gives this OSHA dose: the time-weighted average.
 *
 * dose      in   -   1e-6..1e3
 * level     out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact inverse of the dose of 8 h; the printed 16.61 log10(D) + 90, a rounding, is within 1e-3 dB for doses from 0.01 to 100
 * source    29 CFR 1910.95 appendix A
 */
VTX_API vtx_status vtx_osha_average_level(double dose, double *level);

/* Steady level that fills a part of the OSHA dose in a time: the permissible level of noise.h.
 *
 * time      in   s   1..86400
 * dose      in   -   1e-6..1e3, 1 to meet the limit, 0.5 to stay at the action level
 * level     out  dB  never above 115
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    29 CFR 1910.95 appendix A, solved for the level
 */
VTX_API vtx_status vtx_osha_permissible_level(double time, double dose, double *level);

/* Level under an ear protector of given noise reduction rating, for a level that was measured A-weighted.
 *
 * level      in   dB  0..200
 * rating     in   dB  0..60, the protector's NRR
 * derating   in   -   0..1, share of the labelled protection that is reached: 1 as the rule is written, 0.5 in common practice
 * protected_level  out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  fit decides: people reach from none to all of the labelled protection
 * source    29 CFR 1910.95 appendix B: L - (NRR - 7), a rating below 7 dB protecting nothing (from memory)
 */
VTX_API vtx_status vtx_osha_protected_level(double level, double rating, double derating, double *protected_level);

/* Recommended duration of NIOSH: 8 h at 85 dB(A), half as long for each 3 dB more.
 *
 * level     in   dB  80..140
 * time      out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    NIOSH 98-126 (1998): T = 8 h/2^((L - 85)/3)
 */
VTX_API vtx_status vtx_niosh_permissible_time(double level, double *time);

/* NIOSH dose of one steady level borne for a time; 1 is the recommended limit.
 *
 * level     in   dB  0..140, below 80 nothing counts
 * time      in   s   0..86400
 * dose      out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    NIOSH 98-126 (1998); the threshold from memory
 */
VTX_API vtx_status vtx_niosh_dose(double level, double time, double *dose);

/* NIOSH dose of a day made of several steady levels.
 *
 * level     in   dB  0..140, count values, below 80 nothing counts
 * time      in   s   0..86400, count values, together at most 24 h
 * count     in   -   1 or more
 * dose      out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    NIOSH 98-126 (1998): D = sum(C/T)
 */
VTX_API vtx_status vtx_niosh_dose_of_day(const double *level, const double *time, size_t count, double *dose);

/* Steady level of 8 h that gives this NIOSH dose.
 *
 * dose      in   -   1e-6..1e6
 * level     out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact inverse of the dose of 8 h; the printed 10 log10(D) + 85 (from memory) is 0.034 dB higher at a dose of 10
 * source    NIOSH 98-126 (1998)
 */
VTX_API vtx_status vtx_niosh_average_level(double dose, double *level);

/* Steady level that fills a part of the NIOSH dose in a time.
 *
 * time      in   s   1..86400
 * dose      in   -   1e-6..1e3
 * level     out  dB  never above 140
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    NIOSH 98-126 (1998), solved for the level; the ceiling from memory
 */
VTX_API vtx_status vtx_niosh_permissible_level(double time, double dose, double *level);

/* Daily noise exposure level LEX,8h of one steady level borne for a time, the rest of the day being quiet.
 *
 * level           in   dB  0..200, equivalent level over the time
 * time            in   s   1..86400
 * exposure_level  out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    2003/10/EC article 2, ISO 9612: LEX,8h = LAeq,Te + 10 log10(Te/8 h)
 */
VTX_API vtx_status vtx_daily_exposure_level(double level, double time, double *exposure_level);

/* Daily noise exposure level LEX,8h of a day made of several steady levels.
 *
 * level           in   dB  0..200, count values
 * time            in   s   0..86400, count values, together at least 1 s and at most 24 h
 * count           in   -   1 or more
 * exposure_level  out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    2003/10/EC article 2, ISO 9612
 */
VTX_API vtx_status vtx_daily_exposure_level_of_day(const double *level, const double *time, size_t count, double *exposure_level);

/* Weekly average of daily exposure levels, over five days of 8 h.
 *
 * exposure_level  in   dB  0..200, one value a working day
 * count           in   -   1..7
 * weekly_level    out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    2003/10/EC article 2(c)
 */
VTX_API vtx_status vtx_weekly_exposure_level(const double *exposure_level, size_t count, double *weekly_level);

/* Time in which a steady level brings the daily exposure level to a given value.
 *
 * level           in   dB  60..140
 * exposure_level  in   dB  70..90, 80, 85 or 87 of the directive, or a national value
 * time            out  s   may exceed a day
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    2003/10/EC article 2, solved for the time
 */
VTX_API vtx_status vtx_eu_permissible_time(double level, double exposure_level, double *time);

/* Steady level that brings the daily exposure level to a given value in a time.
 *
 * time            in   s   1..86400
 * exposure_level  in   dB  70..90
 * level           out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    2003/10/EC article 2, solved for the level
 */
VTX_API vtx_status vtx_eu_permissible_level(double time, double exposure_level, double *level);

/* Time a day that a steady level may be borne by a rule, whatever the level.
 *
 * rule      in   -   enum vtx_noise_rule: the law of the place decides, not the library
 * level     in   dB  0..200
 * time      out  s   24 h where the rule sets no limit for the level, 0 where it allows no time
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as the rule's own call, to which it keeps within that call's range
 * source    29 CFR 1910.95, NIOSH 98-126, 2003/10/EC; OSHA's formula counts from 80 dB(A), its table from 90, both end at 115; NIOSH
 *           counts from 80 and ends at 140 dB(A) (threshold and ceiling from memory)
 * note      steps at the ends: OSHA's table from 24 h to 8 h above just under 90 dB(A)
 */
VTX_API vtx_status vtx_noise_rule_time(int32_t rule, double level, double *time);

/* Exposure held against the action and limit values of 2003/10/EC. */
typedef struct vtx_eu_noise {
    double protected_level;        /* dB, daily exposure level under the protectors */
    double lower_action_margin;    /* dB, lower action value less daily exposure level */
    double upper_action_margin;    /* dB, upper action value less daily exposure level */
    double limit_margin;           /* dB, limit value less daily exposure level under the protectors */
    int32_t lower_action_exceeded; /* 1: inform, train, offer protectors; else 0 */
    int32_t upper_action_reached;  /* 1: protectors must be worn; a programme to reduce the noise; else 0 */
    int32_t limit_exceeded;        /* 1: not allowed, whatever is worn has been counted; else 0 */
    int32_t advisories;            /* NOISE_LIMIT when the limit is exceeded */
} vtx_eu_noise;

/* Daily exposure and peak against the action and limit values; only the limit counts the protectors.
 *
 * exposure_level  in   dB  0..200, LEX,8h without protectors
 * peak_pressure   in   Pa  0..1e5, highest C-weighted peak of the day; 0 when there are none, as with a steady jet
 * protection      in   dB  0..60, attenuation of the protectors as worn; 0 without
 * noise           out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: the limit and the lower value are passed when exceeded, the upper action value when reached (from memory)
 * source    2003/10/EC articles 3, 6 and 7
 * advisory  NOISE_LIMIT
 */
VTX_API vtx_status vtx_eu_noise_verdict(double exposure_level, double peak_pressure, double protection, vtx_eu_noise *noise);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_osha_permissible_time_batch(size_t n, const double *level, ptrdiff_t level_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_osha_table_time_batch(size_t n, const double *level, ptrdiff_t level_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_osha_dose_batch(size_t n, const double *level, ptrdiff_t level_stride, const double *time,
        ptrdiff_t time_stride, const double *threshold, ptrdiff_t threshold_stride, double *dose,
        ptrdiff_t dose_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_osha_average_level_batch(size_t n, const double *dose, ptrdiff_t dose_stride, double *level,
        ptrdiff_t level_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_osha_permissible_level_batch(size_t n, const double *time, ptrdiff_t time_stride, const double *dose,
        ptrdiff_t dose_stride, double *level, ptrdiff_t level_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_osha_protected_level_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rating, ptrdiff_t rating_stride, const double *derating, ptrdiff_t derating_stride,
        double *protected_level, ptrdiff_t protected_level_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_niosh_permissible_time_batch(size_t n, const double *level, ptrdiff_t level_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_niosh_dose_batch(size_t n, const double *level, ptrdiff_t level_stride, const double *time,
        ptrdiff_t time_stride, double *dose, ptrdiff_t dose_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_niosh_average_level_batch(size_t n, const double *dose, ptrdiff_t dose_stride, double *level,
        ptrdiff_t level_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_niosh_permissible_level_batch(size_t n, const double *time, ptrdiff_t time_stride, const double *dose,
        ptrdiff_t dose_stride, double *level, ptrdiff_t level_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_daily_exposure_level_batch(size_t n, const double *level, ptrdiff_t level_stride, const double *time,
        ptrdiff_t time_stride, double *exposure_level, ptrdiff_t exposure_level_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_eu_permissible_time_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *exposure_level, ptrdiff_t exposure_level_stride, double *time, ptrdiff_t time_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_eu_permissible_level_batch(size_t n, const double *time, ptrdiff_t time_stride,
        const double *exposure_level, ptrdiff_t exposure_level_stride, double *level, ptrdiff_t level_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_noise_rule_time_batch(size_t n, int32_t rule, const double *level, ptrdiff_t level_stride,
        double *time, ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_eu_noise_verdict_batch(size_t n, const double *exposure_level, ptrdiff_t exposure_level_stride,
        const double *peak_pressure, ptrdiff_t peak_pressure_stride, const double *protection,
        ptrdiff_t protection_stride, vtx_eu_noise *noise, ptrdiff_t noise_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
