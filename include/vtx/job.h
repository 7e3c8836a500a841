/* A whole job in one record: supply, line, site, cooler, setting and what is to be cooled; and its forward pass.
 *
 * Not a search: sizing.h and selection.h vary a job until a wish is met.
 * See also: cooler.h for the parts, chain.h for the elements of the line, jet.h and part.h for what happens at the work. */
#ifndef VTX_JOB_H
#define VTX_JOB_H

#include <vtx/chain.h>
#include <vtx/cooler.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What is to be cooled. A zero means "not stated": the figures that need it are NaN with FIELD_UNAVAILABLE. */
typedef struct vtx_duty {
    double target_temperature;  /* K, 150..500, the temperature the work may have: up to it the cold air is of use; always needed */
    double heat_load;           /* W, 0..1e6, arriving at the face all the time */
    double face_area;           /* m2, 0..10, the face that all cold outlets together blow at */
    double standoff;            /* m, 0..10, from nozzle to face */
    double mass;                /* kg, 0 or 1e-9..1e4, of a part to be cooled from start_temperature to target_temperature */
    double specific_heat;       /* J/(kg K), 0 or 50..10000, of the part */
    double start_temperature;   /* K, 0 or 50..1500, of the part */
    double conductivity;        /* W/(m K), 0 or 0.01..3000, of the part; not stated: one temperature all through */
    double half_thickness;      /* m, 0 or 1e-6..5, of the part towards the jet; not stated: likewise */
    double reserved[4];         /* 0 */
} vtx_duty;

/* Supply at the start of the line; the line's elements in the order of the flow; then the coolers, all alike. */
typedef struct vtx_job {
    vtx_supply supply;
    vtx_site site;
    vtx_cooler cooler;
    vtx_cooler_setting setting;
    vtx_duty duty;
    vtx_chain_element line[8]; /* from the start in the order of the flow; those beyond `elements` are not read */
    double running;          /* -, number of coolers at the line's end that blow at the same time: number times simultaneity, 1e-3..1e4 */
    double reserved[4];      /* 0 */
    int32_t elements;        /* elements of the line in use, 0..8 */
    int32_t reserved_count;  /* 0 */
} vtx_job;

/* What arrives at the work, from one cooler. */
typedef struct vtx_work {
    double supply_flow;          /* kg/s drawn from the start of the line, all coolers that run */
    double line_drop;            /* Pa, from the start of the line to the cooler */
    double jet_velocity;         /* m/s, at the nozzle */
    double jet_temperature;      /* K, on the jet's axis at the work, mixed with room air */
    double jet_temperature_low;  /* K */
    double jet_temperature_high; /* K */
    double film_coefficient;     /* W/(m2 K), mean over the face */
    double heat_removed;         /* W, from the face at target_temperature; negative when the jet is warmer */
    double heat_removed_low;     /* W, tube at the low end of its band */
    double heat_removed_high;    /* W */
    double face_temperature;     /* K, steady, under heat_load */
    double face_temperature_low; /* K, numerically lowest over the band */
    double face_temperature_high; /* K */
    double exposure_time;        /* s, to cool the part from start_temperature to target_temperature; 0 when it is no warmer than that already */
    double exposure_time_low;    /* s, numerically lowest over the band */
    double exposure_time_high;   /* s */
    double impact_force;         /* N, of all jets of the cooler on the face */
    double impact_pressure;      /* Pa above ambient, on the jet's axis at the work: blows chips away */
    int32_t advisories;          /* bits of enum vtx_advisory */
    int32_t reserved_code;       /* 0 */
} vtx_work;

/* Duty: target temperature unset (NaN), which every call refuses until it is given; everything else not stated.
 *
 * duty      out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_duty_init(vtx_duty *duty);

/* Job: the defaults of its parts, no line, one cooler running.
 *
 * job       out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_job_init(vtx_job *job);

/* The forward pass: line, cooler and work solved together. One cooler's figures, though all that run load the line.
 *
 * job       in   -
 * point     out  -
 * work      out  -   may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also: the line leaves less than 1.05 times the site's pressure at the cooler), NO_SOLUTION
 *           (as vtx_operating_point_at: no valve opening gives this cold fraction, or no flow at this opening), NOT_CONVERGED
 * advisory  those of vtx_operating_point_at; STARVED when the line costs more than a tenth of the supply's absolute pressure, as in chain.h;
 *           work: FIELD_UNAVAILABLE for what was not stated, OUTSIDE_CORRELATION, UNDEREXPANDED_JET, NOT_LUMPED
 * accuracy  line and cooler agree on the pressure between them within 1e-11; jet and film coefficient 15 to 20 %
 * source    chain.h, cooler.h, jet.h, impingement.h, part.h
 * caution   as vtx_operating_point_at; a jet throws chips: guards and eye protection, and no dusts that burn (magnesium, titanium) blown about
 */
VTX_API vtx_status vtx_job_evaluate(const vtx_job *job, vtx_operating_point *point, vtx_work *work);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_job_evaluate_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, vtx_operating_point *point,
        ptrdiff_t point_stride, vtx_work *work, ptrdiff_t work_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
