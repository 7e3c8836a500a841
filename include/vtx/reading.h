/* Readings of a running vortex tube: what was read, how well, and whether it can be true.
 *
 * Not what the readings say about the tube (calibration.h), nor how a thermometer in a jet is corrected (thermometry.h:
 * correct first, then enter temperature and uncertainty here).
 *
 * Any field may be left unread: NaN. This is the one kind of input of the library where NaN is an answer. An uncertainty left
 * at NaN takes the stated default. Every uncertainty is a standard one (a limit of error over the root of 3), 0 means exact. */
#ifndef VTX_READING_H
#define VTX_READING_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What was read at one steady state of a tube. Stagnation temperatures, absolute pressures. NaN: not read. */
typedef struct vtx_reading {
    double inlet_pressure;                 /* Pa    1e4..5e6      at the tube's inlet */
    double inlet_pressure_uncertainty;     /* Pa    0 up          default 1 % of the reading */
    double inlet_temperature;              /* K     150..450 */
    double inlet_temperature_uncertainty;  /* K     0..50         default 0.5 */
    double humidity_ratio;                 /* kg/kg 0..0.2        water per dry air; unread: dry */
    double humidity_ratio_uncertainty;     /* kg/kg 0..0.1        default 0 */
    double cold_pressure;                  /* Pa    1e3..5e6      unread: 101325 with a standard uncertainty of 5000 */
    double cold_pressure_uncertainty;      /* Pa    0 up          default 1 % of the reading */
    double cold_temperature;               /* K     100..1000 */
    double cold_temperature_uncertainty;   /* K     0..50         default 0.5 */
    double hot_pressure;                   /* Pa    1e3..5e6      unread: 101325 with a standard uncertainty of 5000 */
    double hot_pressure_uncertainty;       /* Pa    0 up          default 1 % of the reading */
    double hot_temperature;                /* K     100..1000 */
    double hot_temperature_uncertainty;    /* K     0..50         default 0.5 */
    double cold_fraction;                  /* -     0..1          cold over inlet mass flow */
    double cold_fraction_uncertainty;      /* -     0..1          default 0.02 */
    double inlet_mass_flow;                /* kg/s  above 0 to 100 */
    double inlet_mass_flow_uncertainty;    /* kg/s  0 up          default 3 % of the reading */
    double cold_mass_flow;                 /* kg/s  above 0 to 100 */
    double cold_mass_flow_uncertainty;     /* kg/s  0 up          default 3 % of the reading */
    double hot_mass_flow;                  /* kg/s  above 0 to 100 */
    double hot_mass_flow_uncertainty;      /* kg/s  0 up          default 3 % of the reading */
    double ambient_temperature;            /* K     150..400      around the hot end; unread: what the description of the tube says */
    double reserved[4];                    /* -     0 */
} vtx_reading;

/* Nothing read yet: NaN everywhere.
 *
 * reading   out  -
 *
 * status    OK, BAD_ARGUMENT
 * source    default uncertainties: common practice, no source
 */
VTX_API vtx_status vtx_reading_init(vtx_reading *reading);

/* Whether a reading can be true. Contradictions count beyond 3.29 standard uncertainties: one in a thousand by chance. */
enum vtx_reading_verdict {
    VTX_READING_CREDIBLE = 340,         /* no law is hurt, as far as what was read can tell */
    VTX_READING_INCOMPLETE = 341,       /* too little was read to place it on a curve */
    VTX_READING_BACKWARD = 342,         /* impossible: an outlet pressure above the inlet's */
    VTX_READING_FLOWS_CONTRADICT = 343, /* impossible: more cold or hot flow than inlet flow, or flows against the cold fraction */
    VTX_READING_BOTH_COLD = 344,        /* impossible: both streams colder than inlet, throttling and surroundings allow */
    VTX_READING_BOTH_WARM = 345,        /* impossible: both streams warmer than inlet and surroundings allow */
    VTX_READING_ENTROPY_FALLS = 346,    /* impossible: entropy would vanish */
    VTX_READING_ENERGY_CREATED = 347,   /* impossible: the outlets carry more energy than the inlet, so cold fraction and temperatures disagree */
    VTX_READING_SWAPPED = 348,          /* impossible for a vortex tube: the hot outlet is colder than the cold one */
    VTX_READING_ENERGY_MISSING = 349,   /* doubtful: the outlets carry less energy than a leaking hot end explains */
    VTX_READING_OUTLIER = 350           /* calibration only: the other readings contradict it, or (used still 1) the instrument `suspect` of it */
};

/* Which instrument to look at first. */
enum vtx_reading_suspect {
    VTX_SUSPECT_NONE = 360,
    VTX_SUSPECT_INLET_PRESSURE = 361,
    VTX_SUSPECT_INLET_TEMPERATURE = 362,
    VTX_SUSPECT_HUMIDITY = 363,
    VTX_SUSPECT_COLD_PRESSURE = 364,
    VTX_SUSPECT_HOT_PRESSURE = 365,
    VTX_SUSPECT_COLD_FRACTION = 366,
    VTX_SUSPECT_COLD_TEMPERATURE = 367,
    VTX_SUSPECT_HOT_TEMPERATURE = 368,
    VTX_SUSPECT_FLOWS = 369
};

/* One reading against the laws, and after a calibration against the curve. What was not read or not asked is NaN. */
typedef struct vtx_reading_check {
    double cold_fraction;             /* -     from all that was read: fraction, flows, else temperatures */
    double cold_fraction_uncertainty; /* -     standard */
    double energy_residual;           /* J/kg  inlet less outlets, per kg inlet air: above 0 heat was lost; Joule-Thomson is considered */
    double energy_uncertainty;        /* J/kg  standard */
    double entropy_generation;        /* J/(K kg)  per kg inlet air */
    double entropy_uncertainty;       /* J/(K kg)  standard */
    double cold_residual;             /* K     read less curve */
    double cold_residual_deviation;   /* K     standard deviation that all uncertainties of the reading give it */
    double cold_left_out;             /* K     read less the curve fitted without this reading */
    double hot_residual;              /* K     read less curve */
    double hot_residual_deviation;    /* K     standard deviation that all uncertainties of the reading give it */
    double hot_left_out;              /* K     read less the curve fitted without this reading */
    double leverage;                  /* -     0..1  share of its own fitted value that the reading decides, the larger of cold and hot */
    double outlier_probability;       /* -     chance of so large a distance from the curve of the others */
    int32_t verdict;                  /* enum vtx_reading_verdict */
    int32_t suspect;                  /* enum vtx_reading_suspect; NONE for a credible reading */
    int32_t used;                     /* 1 when the calibration rests on it, else 0 */
    int32_t advisories;               /* IMPOSSIBLE_READINGS, OUTLIER, FIELD_UNAVAILABLE */
} vtx_reading_check;

/* A reading against first and second law, alone.
 *
 * reading   in   -
 * model     in   -  enum vtx_air_model
 * check     out  -  residuals, left-out errors, leverage and outlier probability are NaN, used is 0
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  first order in the uncertainties, which are taken as independent
 * advisory  IMPOSSIBLE_READINGS, FIELD_UNAVAILABLE
 * note      a suspect is the quantity that needs the smallest shift, counted in its own uncertainty, to mend the
 *           contradiction: look there first, do not correct there
 * source    balances of energy and entropy; propagation by JCGM 100:2008
 */
VTX_API vtx_status vtx_reading_examine(const vtx_reading *reading, int32_t model, vtx_reading_check *check);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_reading_examine_batch(size_t n, const vtx_reading *reading, ptrdiff_t reading_stride, int32_t model,
        vtx_reading_check *check, ptrdiff_t check_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
