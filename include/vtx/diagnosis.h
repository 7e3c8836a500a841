/* Why does it no longer get cold? From a few readings of a cooler in service to ranked causes with sizes.
 *
 * Not a fit of the tube (calibration.h): description and tube's model are those of the healthy cooler, as well as they are known.
 * See also: sizing.h for the opening that gives a wanted temperature, thermometry.h for what a thermometer in a jet shows. */
#ifndef VTX_DIAGNOSIS_H
#define VTX_DIAGNOSIS_H

#include <vtx/uncertainty.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What can be read, in the order of the arrays below. */
enum vtx_read {
    VTX_READ_SUPPLY_PRESSURE = 600,   /* Pa absolute, at the start of the line */
    VTX_READ_INLET_PRESSURE = 601,    /* Pa absolute, at the cooler */
    VTX_READ_INLET_TEMPERATURE = 602, /* K */
    VTX_READ_COLD_TEMPERATURE = 603,  /* K, stagnation: thermometry.h corrects what a thermometer in a jet shows */
    VTX_READ_HOT_TEMPERATURE = 604,   /* K */
    VTX_READ_INLET_FLOW = 605,        /* kg/s, one cooler */
    VTX_READ_COLD_FLOW = 606,         /* kg/s */
    VTX_READ_COLD_PRESSURE = 607      /* Pa absolute, directly at the cold outlet */
};

/* Single causes, and the unit of their size. */
enum vtx_cause {
    VTX_CAUSE_NOTHING = 620,            /* the readings are those of the healthy cooler */
    VTX_CAUSE_LOW_SUPPLY = 621,         /* -, share of the described gauge pressure that is missing at the start of the line */
    VTX_CAUSE_WORN_NOZZLE = 622,        /* -, inlet nozzle too wide by this share; efficiency lower by the same share (assumption, no source) */
    VTX_CAUSE_BLOCKED_NOZZLE = 623,     /* -, inlet nozzle too narrow by this share */
    VTX_CAUSE_ICED_COLD_OUTLET = 624,   /* -, cold opening narrowed by this share: ice from wet feed, or dirt */
    VTX_CAUSE_COLD_BACK_PRESSURE = 625, /* -, pressure behind the cold outlet as a share of the described gauge pressure */
    VTX_CAUSE_BLOCKED_HOT_OUTLET = 626, /* -, hot valve narrowed by this share */
    VTX_CAUSE_WRONG_VALVE = 627,        /* -, hot valve wider (above 0) or narrower by this share than described */
    VTX_CAUSE_WARM_SUPPLY = 628,        /* K, above the described temperature */
    VTX_CAUSE_LEAKING_SEAL = 629,       /* -, share of the feed that reaches the cold outlet unseparated */
    VTX_CAUSE_HEAT_LEAK = 630,          /* -, conductance into the cold end over inlet flow times heat capacity */
    VTX_CAUSE_LOADED_FILTER = 631,      /* -, losses of the line's filters above the described ones, as a multiple */
    VTX_CAUSE_WRONG_GAUGE = 632         /* -, inlet pressure gauge reads high (above 0) or low by this share of the absolute pressure */
};

/* Why readings cannot be. */
enum vtx_contradiction {
    VTX_CONTRADICTION_NONE = 640,
    VTX_CONTRADICTION_BOTH_COLDER = 641,  /* both streams colder than the inlet by more than the Joule-Thomson drop */
    VTX_CONTRADICTION_ENTROPY = 642,      /* cold outlet colder than a reversible expansion */
    VTX_CONTRADICTION_FLOWS = 643,        /* more cold flow than inlet flow */
    VTX_CONTRADICTION_COLD_FRACTION = 644 /* flows and temperatures disagree on the cold fraction, and no single cause explains it */
};

/* Readings with their standard uncertainties, in the order of enum vtx_read. NaN in value: not read; its uncertainty only says whether it could
 * be, and to vtx_plan_readings how well: NaN there too means that it cannot be read here (no tapping, no meter), and no call proposes it. */
typedef struct vtx_service_readings {
    double value[8];
    double uncertainty[8]; /* unit of the value, above 0; of a flow in kg/s, not per cent */
    double reserved[4];    /* 0 */
} vtx_service_readings;

/* Ranked causes. Arrays of 13 are in the order of enum vtx_cause. */
typedef struct vtx_diagnosis {
    double size[13];             /* best estimate if this were the only cause; below 0 where the readings point away from a cause that only
                                    grows; NaN where the cause cannot be (no filter in the line) */
    double size_uncertainty[13]; /* standard; NaN where the readings do not see the cause: more than a sixth of its range */
    double chi_square[13];       /* of all readings, explained by this cause; by size 0 when the estimate is below 0 */
    double probability[13];      /* -, chance of a larger chi_square; NaN without freedom */
    double separation[13];       /* standard deviations by which these readings would tell it from the leading cause; 0 for the leading one */
    double reading_separation[8];/* standard deviations by which each reading would tell the leading two apart, with an instrument good to 1 %
                                    or 0.5 K: weigh them against the trouble of taking it; NaN: read, not to be read here, or nothing is wrong */
    double next_separation;      /* standard deviations by which next_reading would tell the leading two apart; NaN when next_reading is -1 */
    int32_t order[13];           /* enum vtx_cause, most likely first */
    int32_t partner;             /* enum vtx_cause: these readings cannot tell it from the leading cause; NOTHING: there is none */
    int32_t partners;            /* how many causes these readings cannot tell from the leading one */
    int32_t next_reading;        /* enum vtx_read: tells the leading two apart best; -1 when all are read that can be or nothing is wrong */
    int32_t contradiction;       /* enum vtx_contradiction */
    int32_t wrong_reading;       /* enum vtx_read: most likely wrong; -1 without a contradiction */
    int32_t readings;            /* how many were given */
    int32_t advisories;          /* INDISTINGUISHABLE, IMPOSSIBLE_READINGS, MODEL_MISFIT (no single cause explains them), FIELD_UNAVAILABLE (a size,
                                    size_uncertainty, probability or next_separation is NaN) */
} vtx_diagnosis;

/* Nothing read (NaN); uncertainties of ordinary instruments: pressures 1 % of 7 bar, temperatures 0.5 K, flows 1 % of 0.01 kg/s.
 *
 * readings  out  -
 *
 * status    OK, BAD_ARGUMENT
 * source    common practice, no source
 * note      SET THE FLOWS' UNCERTAINTIES YOURSELF. They are absolute, and this call does not know the cooler: 1e-4 kg/s is 1 % of a cooler
 *           that draws 0.01 kg/s (500 l/min), but 20 % of one that draws 5e-4 kg/s, whose flow then tells nothing, and 0.1 % of one that
 *           draws 0.1 kg/s, whose ordinary meter then looks like a fault. Start instead from vtx_predict_readings with VTX_CAUSE_NOTHING,
 *           whose uncertainties are 1 % of what this very cooler shows, and put what was read, or NaN, into value
 */
VTX_API vtx_status vtx_service_readings_init(vtx_service_readings *readings);

/* What a healthy cooler, or one with a single cause of a given size, would read.
 *
 * job        in   -   the healthy cooler; its valve opening is held, found from the cold fraction when that is what the job holds
 * cause      in   -   enum vtx_cause
 * size       in   -   unit of the cause; -0.98..60
 * readings   out  -   values of all eight; uncertainties 1 % of them, temperatures 0.5 K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a size that the cause cannot have), NO_SOLUTION (no valve opening gives the described cold fraction), NOT_CONVERGED
 * accuracy  that of vtx_job_evaluate
 * source    vtx_job_evaluate
 */
VTX_API vtx_status vtx_predict_readings(const vtx_job *job, int32_t cause, double size, vtx_service_readings *readings);

/* Ranks the single causes that explain the readings.
 *
 * Each cause's size is fitted by least squares on the forward pass. "Nothing" leads unless some cause explains the readings so much
 * better that at most 5 of 100 healthy coolers would look like that. Two causes count as indistinguishable when the best fit of the one
 * to what the other predicts differs by less than 3.29 standard deviations: then noise makes one of twenty look like the other.
 *
 * What is not known of the healthy cooler and its air must not pass for a fault: the uncertainties of the description widen those of the
 * readings, together where they move several gauges at once. With an uncalibrated tube's whole band hardly any fault of the tube shows.
 *
 * So "nothing" does not say that nothing is wrong, but that no cause stands out: one of up to about four of its size_uncertainty may hide,
 * and no reading more would be proposed. Where that is too much, ask again with one uncertainty of the description made small at a time:
 * the one that shrinks the cause's size_uncertainty most is what to know better. Of a hot outlet blocked by a quarter, exact readings and a
 * tube known to 0.02 tell 0.25 +- 0.09 and "nothing" with a setting known to 0.03, and 0.25 +- 0.04 and the cause with 0.01.
 *
 * job          in   -   as vtx_predict_readings; supply and site as they were during the visit, or uncertain by how much they vary
 * uncertainty  in   -   of the description; the target temperature's has no effect
 * readings     in   -   two or more
 * diagnosis    out  -
 *
 * status    OK, BAD_ARGUMENT (also fewer than two readings), OUT_OF_RANGE, NO_SOLUTION (no valve opening gives the described cold fraction),
 *           NOT_CONVERGED
 * advisory  INDISTINGUISHABLE, IMPOSSIBLE_READINGS, MODEL_MISFIT, FIELD_UNAVAILABLE
 * accuracy  sizes to 1e-6 without noise, for each cause alone (tests/cooler/test_diagnosis.c); with noise bench/diagnosis.md
 * source    least squares with the covariance of JCGM 100:2008, 5.2; chi-square test of fit, Bonferroni's bound for several tests
 * note      blocked hot outlet and narrow valve are the same to any gauge: both only scale the valve's area. Narrowed cold outlet and wide
 *           valve differ in the chamber's pressure alone, which no gauge shows while the inlet nozzle is choked. Low supply and loaded filter
 *           differ only ahead of the filter
 * caution   shut off, vent and lock out before opening anything; cold and hot ends hurt skin, jets and noise eyes and ears
 */
VTX_API vtx_status vtx_diagnose(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                                vtx_diagnosis *diagnosis);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_predict_readings_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, int32_t cause,
        const double *size, ptrdiff_t size_stride, vtx_service_readings *readings, ptrdiff_t readings_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_diagnose_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_diagnosis *diagnosis, ptrdiff_t diagnosis_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
