/* Which cooler of a list? Hard limits, a cost, and for each rejected entry the limit it failed and by how much.
 *
 * Not the search for one quantity of one cooler (sizing.h). The list is the caller's: the library knows no products.
 * See also: job.h for the forward pass, exposure.h for what a noise level allows. */
#ifndef VTX_SELECTION_H
#define VTX_SELECTION_H

#include <vtx/exposure.h>
#include <vtx/job.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Limits that an entry can fail. */
enum vtx_failed {
    VTX_FAILED_NONE = 570,             /* meets all */
    VTX_FAILED_COLD_TEMPERATURE = 571, /* cold outlet too warm at every setting; short_by in K */
    VTX_FAILED_CAPACITY = 572,         /* too little cooling of the target at the settings that are cold enough; short_by in W */
    VTX_FAILED_FACE_HEAT = 577,        /* the jet takes too little out of the face, whatever the air could carry; short_by in W */
    VTX_FAILED_AIR_FLOW = 573,         /* draws more than the compressor spares; short_by in m3/s of free air */
    VTX_FAILED_NOISE = 574,            /* louder than allowed; short_by in dB */
    VTX_FAILED_NOISE_TIME = 578,       /* may not be borne as long as it must be; short_by in s a day */
    VTX_FAILED_FREEZING = 575,         /* may freeze the feed's own water; short_by in K */
    VTX_FAILED_OPERATION = 576         /* does not work on this supply at all: no figures */
};

/* What an entry must meet. A limit of 0 is not looked at, but for the capacity and the freezing margin. Limits on noise pass an entry
 * whose level is not stated: its verdict says so. */
typedef struct vtx_requirements {
    double capacity;            /* W, at least, in the cold air up to the duty's target temperature, all that run together: not what a face gets */
    double cold_temperature;    /* K, at most, at the cold outlet; 0: any */
    double air_flow;            /* m3/s of free air at the entry's reference state, at most, all that run together; 0: any */
    double noise_level;         /* dB, at most, at noise_distance from all that run; 0: any */
    double noise_distance;      /* m, to the operator's ear */
    double face_heat;           /* W, at least, out of the duty's face at the target temperature by one cooler's jets; 0: any */
    double freezing_margin;     /* K, at least, of the coldest possible outlet above the feed's dew or frost point; -1000: any */
    double noise_time;          /* s, the operator must be allowed this long a day at noise_distance from all that run; 0: any */
    double reserved[4];         /* 0 */
    int32_t question;           /* enum vtx_question: which side of the tube's band must meet capacity and temperature */
    int32_t noise_rule;         /* enum vtx_noise_rule that decides what noise_time is allowed; 0 with a noise_time of 0 */
} vtx_requirements;

/* What became of an entry. Figures at the chosen cold fraction: the one of most capacity (of most heat out of the face, where that is
 * required) among those that are cold enough. */
typedef struct vtx_verdict {
    double cold_fraction;    /* - */
    double cold_temperature; /* K, with the efficiency of the question asked */
    double capacity;         /* W, all that run, likewise */
    double air_flow;         /* m3/s of free air, all that run */
    double noise_level;      /* dB at the operator, all that run; NaN with FIELD_UNAVAILABLE when not stated */
    double noise_time;       /* s a day that the level may be borne by the rule, 0..24 h; NaN without a rule, or a level */
    double freezing_margin;  /* K */
    double face_heat;        /* W, out of the face, efficiency of the question asked; NaN when not required */
    double cost;             /* the caller's, or air_flow when there is none */
    double short_by;         /* amount by which the failed limit is missed, above 0; 0 when nothing failed */
    int32_t failed;          /* enum vtx_failed, the first in the order of the list above */
    int32_t rank;            /* 1 for the cheapest that meets all, 2 the next ...; 0 for the rejected */
    int32_t advisories;      /* bits of enum vtx_advisory */
    int32_t spare;           /* 0 */
} vtx_verdict;

/* Requirements: capacity unset (NaN), which every call refuses until it is given; nothing else required.
 *
 * question      in   -  enum vtx_question: the side of the band is the caller's decision
 * requirements  out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_requirements_init(int32_t question, vtx_requirements *requirements);

/* Tries each cooler of a list on the job and ranks those that meet the requirements by cost.
 *
 * job           in   -   its cooler and, for adjustable entries, its setting are replaced by each entry's; valve-held jobs keep their opening
 * coolers       in   -   count entries
 * count         in   -   1..10000
 * costs         in   the caller's   count numbers; may be null: then the air flow is the cost
 * requirements  in   -
 * verdicts      out  -   count entries
 *
 * status    OK, BAD_ARGUMENT (also an empty list), PARTIAL (some entries are not valid descriptions: their figures are NaN)
 * accuracy  cold fraction of most capacity to 1e-6, of a temperature limit to 1e-12; capacity there to 1e-9
 * source    minimum and root of vtx_job_evaluate
 */
VTX_API vtx_status vtx_rank_coolers(const vtx_job *job, const vtx_cooler *coolers, size_t count, const double *costs,
                                    const vtx_requirements *requirements, vtx_verdict *verdicts);

/* The entry to take. */
typedef struct vtx_chosen_cooler {
    double cold_fraction;          /* -, to set it to */
    double cost;                   /* of the entry */
    double attainable_capacity;    /* W, the most that any entry that is cold enough gives, whatever else it fails; also with NO_SOLUTION */
    double attainable_temperature; /* K, the coldest outlet of any entry at the setting it was judged at; also with NO_SOLUTION */
    int32_t index;                 /* into the list */
    int32_t attainable_index;      /* of the entry with attainable_capacity; also with NO_SOLUTION */
} vtx_chosen_cooler;

/* Smallest cooler of a list, by rated free-air flow, that meets the requirements.
 *
 * job           in   -
 * coolers       in   -   count entries
 * count         in   -   1..10000
 * requirements  in   -
 * chosen        out  -
 *
 * status    OK, BAD_ARGUMENT (also an empty list), NO_SOLUTION (no entry meets them)
 * note      capacity is what the cold air takes up while it warms to the target temperature; a jet leaves most of that unused: a face may get a
 *           seventh of it. For work under a jet require face_heat, for which face_area and standoff must be stated
 * accuracy  as vtx_rank_coolers
 * source    as vtx_rank_coolers
 */
VTX_API vtx_status vtx_smallest_cooler(const vtx_job *job, const vtx_cooler *coolers, size_t count, const vtx_requirements *requirements,
                                       vtx_chosen_cooler *chosen);

#ifdef __cplusplus
}
#endif

#endif
