/* Inverse questions about a job: what must a quantity be so that a wish comes true?
 *
 * Not a choice among coolers (selection.h); not the tube alone (setting.h). Every answer is a root of the job's forward pass.
 * See also: job.h for the forward pass, uncertainty.h for what an answer is worth. */
#ifndef VTX_SIZING_H
#define VTX_SIZING_H

#include <vtx/job.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What may be varied. Everything else of the job stays as it is. */
enum vtx_sought {
    VTX_SOUGHT_COLD_FRACTION = 520,      /* -, cold fraction held */
    VTX_SOUGHT_VALVE_OPENING = 521,      /* -, valve opening held */
    VTX_SOUGHT_SUPPLY_PRESSURE = 522,    /* Pa absolute, at the start of the line */
    VTX_SOUGHT_REGULATOR_PRESSURE = 523, /* Pa absolute, set pressure of the line's element number `element`, a regulator */
    VTX_SOUGHT_INLET_AREA = 524,         /* -, area of the inlet nozzle over that of the rated one: the nozzle's size */
    VTX_SOUGHT_BORE = 525,               /* m, bore of the line's element number `element`, a hose or pipe */
    VTX_SOUGHT_LENGTH = 526,             /* m, length of the line's element number `element`, a hose or pipe */
    VTX_SOUGHT_HUMIDITY = 527,           /* K or kg/kg: the supply's humidity in the kind that the job states */
    VTX_SOUGHT_STANDOFF = 528,           /* m, from nozzle to work */
    VTX_SOUGHT_RUNNING = 529             /* -, coolers that blow at the same time at the end of the line */
};

/* What is wished for. In brackets what counts as met. The figures of face, jet and heat removed need the duty's face_area and standoff, the
 * exposure time its mass, specific_heat and start_temperature too: calls about one that the duty does not state answer BAD_ARGUMENT. */
enum vtx_wished {
    VTX_WISHED_COLD_TEMPERATURE = 540, /* K, cold outlet (at most) */
    VTX_WISHED_CAPACITY = 541,         /* W, against the duty's target temperature, one cooler (at least) */
    VTX_WISHED_INLET_CAPACITY = 542,   /* W, against the inlet temperature, one cooler (at least) */
    VTX_WISHED_TOTAL_CAPACITY = 543,   /* W, against the target temperature, all that run (at least) */
    VTX_WISHED_FACE_TEMPERATURE = 544, /* K, of the work under its heat load (at most) */
    VTX_WISHED_AIR_FLOW = 545,         /* m3/s, free air of all that run at the cooler's reference state (at most) */
    VTX_WISHED_EXPOSURE_TIME = 546,    /* s, to cool the part (at most) */
    VTX_WISHED_FREEZING_MARGIN = 547,  /* K, cold outlet at its coldest above the dew or frost point of the feed's water there (at least) */
    VTX_WISHED_JET_TEMPERATURE = 548,  /* K, on the jet's axis at the work (at most) */
    VTX_WISHED_HEAT_REMOVED = 549      /* W, from the face at the target temperature (at least) */
};

/* Of several answers. */
enum vtx_choice {
    VTX_CHOICE_LOWEST = 550, /* the lowest value of the quantity that meets the wish */
    VTX_CHOICE_HIGHEST = 551 /* the highest */
};

/* Why the answer is where it is. */
enum vtx_limit {
    VTX_LIMIT_WISH = 560,       /* the wish is just met: it binds */
    VTX_LIMIT_RANGE_LOW = 561,  /* the lower end of the range that was searched */
    VTX_LIMIT_RANGE_HIGH = 562, /* the upper end of the range that was searched */
    VTX_LIMIT_COOLER = 563      /* the cooler itself: the figure is best inside the range, or no answer lies beyond, as where no valve opening gives it */
};

/* A question: one quantity, one wish. vtx_request_init fills the range that makes sense for the quantity. */
typedef struct vtx_request {
    double wanted;      /* unit of the wish */
    double low;         /* lower end of the range to search, unit of the quantity; a value that the job may have */
    double high;        /* upper end, likewise, at least low */
    double reserved[4]; /* 0 */
    int32_t sought;     /* enum vtx_sought */
    int32_t wished;     /* enum vtx_wished */
    int32_t choice;     /* enum vtx_choice */
    int32_t element;    /* index into the job's line, from 0, of an element that has the quantity; not read for quantities of no element */
} vtx_request;

/* An answer. */
typedef struct vtx_sizing {
    double value;               /* the quantity, typical tube */
    double value_low;           /* the same with the tube at the low end of its efficiency band; NaN if that one cannot */
    double value_high;          /* the same with the tube at the high end of its efficiency band; NaN if that one cannot */
    double figure;              /* the wished-for figure at value */
    double attainable_figure;   /* best figure in the range, typical tube; also with NO_SOLUTION */
    double attainable_value;    /* where it is; also with NO_SOLUTION */
    int32_t limit;              /* enum vtx_limit: what holds value where it is */
    int32_t attainable_limit;   /* enum vtx_limit: what holds attainable_value where it is; also with NO_SOLUTION */
    int32_t advisories;         /* bits of enum vtx_advisory, FIELD_UNAVAILABLE when value_low or value_high is NaN */
    int32_t spare;              /* 0 */
} vtx_sizing;

/* A request with the range and the choice that make sense for the quantity: the most useful cold fraction (highest), the lowest
 * pressure, the smallest nozzle and bore, the longest hose, the moistest air, the largest distance.
 *
 * job        in   -   its cooler's limits give the range of cold fractions, its site the lowest pressure
 * sought     in   -   enum vtx_sought
 * wished     in   -   enum vtx_wished
 * wanted     in   unit of the wish
 * request    out  -   the line's first element that has the quantity
 *
 * status    OK, BAD_ARGUMENT (also: no element of the line has the quantity), OUT_OF_RANGE
 */
VTX_API vtx_status vtx_request_init(const vtx_job *job, int32_t sought, int32_t wished, double wanted, vtx_request *request);

/* The quantity that meets the wish.
 *
 * job        in   -
 * request    in   -
 * sizing     out  -
 *
 * status    OK, BAD_ARGUMENT (also: the duty does not state what the wish needs), OUT_OF_RANGE (no value of the range gives a working job),
 *           NO_SOLUTION (met nowhere in the range), NOT_CONVERGED
 * advisory  those of the operating point at the answer; FIELD_UNAVAILABLE
 * accuracy  forward of the value meets the wish within 1e-8 of the figure's size, unless an end of the range binds
 * source    bracketed root of vtx_job_evaluate after a scan of 25 points, so that several branches are seen
 */
VTX_API vtx_status vtx_size(const vtx_job *job, const vtx_request *request, vtx_sizing *sizing);

/* The quantity that meets two wishes at once. Quantity, range and choice are those of the first request.
 *
 * job        in   -
 * first      in   -
 * second     in   -   its sought, low, high and choice are not used
 * sizing     out  -   figure fields: of the first wish; limit WISH: one of the two binds
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * advisory  as vtx_size
 * accuracy  as vtx_size
 * source    as vtx_size, of the wish that is further from being met
 */
VTX_API vtx_status vtx_size_for_both(const vtx_job *job, const vtx_request *first, const vtx_request *second, vtx_sizing *sizing);

/* Two quantities that meet two wishes exactly: for example the cold fraction and the pressure that give a temperature and a capacity. Here a
 * wish is met by equality alone, neither more nor less will do.
 *
 * job            in   -
 * outer          in   -   quantity and wish of the outer search
 * inner          in   -   another quantity and another wish, solved for each trial of the outer one
 * outer_sizing   out  -   limit WISH. With NO_SOLUTION the attainable fields of both are one trial: the nearest to the outer wish among those
 *                         that meet the inner one; where none does, the nearest to the inner one
 * inner_sizing   out  -   likewise
 *
 * status    OK, BAD_ARGUMENT (also: the duty does not state what a wish needs), OUT_OF_RANGE (no trial gives a working job), NO_SOLUTION (no
 *           pair of the two ranges meets both), NOT_CONVERGED
 * advisory  as vtx_size; value_low and value_high are NaN here
 * accuracy  both wishes within 1e-7 of the figures' size
 * source    as vtx_size
 * note      Of several pairs (capacity over cold fraction has a summit) the outer choice takes the lowest or highest outer value; where several
 *           inner values meet the inner wish the inner choice decides, and its other branch is tried only when the first has no pair. Pairs
 *           closer together than the scan's step may be taken for one another
 */
VTX_API vtx_status vtx_size_pair(const vtx_job *job, const vtx_request *outer, const vtx_request *inner, vtx_sizing *outer_sizing,
                                 vtx_sizing *inner_sizing);

/* Cold fraction for a wanted cold temperature, branch named.
 *
 * job               in   -
 * cold_temperature  in   K    50..500
 * branch            in   -    enum vtx_branch
 * sizing            out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * advisory  as vtx_size
 * accuracy  as vtx_size
 * source    as vtx_size; without a line and outlet accessories vtx_cold_fraction_for_temperature of setting.h
 */
VTX_API vtx_status vtx_job_cold_fraction(const vtx_job *job, double cold_temperature, int32_t branch, vtx_sizing *sizing);

/* Lowest supply pressure that gives a wanted capacity against the duty's target temperature.
 *
 * job               in   -
 * capacity          in   W    -1e6..1e6
 * largest_pressure  in   Pa   what the compressor can give
 * sizing            out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * advisory  as vtx_size
 * accuracy  as vtx_size
 * source    as vtx_size
 */
VTX_API vtx_status vtx_job_supply_pressure(const vtx_job *job, double capacity, double largest_pressure, vtx_sizing *sizing);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_size_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *request,
        ptrdiff_t request_stride, vtx_sizing *sizing, ptrdiff_t sizing_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_size_for_both_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *first,
        ptrdiff_t first_stride, const vtx_request *second, ptrdiff_t second_stride, vtx_sizing *sizing,
        ptrdiff_t sizing_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_size_pair_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *outer,
        ptrdiff_t outer_stride, const vtx_request *inner, ptrdiff_t inner_stride, vtx_sizing *outer_sizing,
        ptrdiff_t outer_sizing_stride, vtx_sizing *inner_sizing, ptrdiff_t inner_sizing_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_job_cold_fraction_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t branch, vtx_sizing *sizing,
        ptrdiff_t sizing_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_job_supply_pressure_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const double *capacity,
        ptrdiff_t capacity_stride, const double *largest_pressure, ptrdiff_t largest_pressure_stride,
        vtx_sizing *sizing, ptrdiff_t sizing_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
