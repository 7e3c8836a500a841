/* What a figure of a job is worth: its uncertainty, and which input to measure better.
 *
 * Not a calibration of the tube (calibration.h), which narrows the band that counts here as an input's uncertainty.
 * See also: job.h for the forward pass, sizing.h for the list of figures, budget.h for a budget by hand. */
#ifndef VTX_UNCERTAINTY_H
#define VTX_UNCERTAINTY_H

#include <vtx/job.h>
#include <vtx/sizing.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Standard uncertainties of a job's inputs, independent of each other; 0 for what is known exactly. For limits +-a that are all one
 * knows it is a/sqrt(3), for an instrument's 95 % interval half of it. */
typedef struct vtx_input_uncertainty {
    double supply_pressure;    /* Pa */
    double supply_temperature; /* K */
    double supply_humidity;    /* K or kg/kg, in the kind the job states */
    double site_pressure;      /* Pa */
    double site_temperature;   /* K */
    double site_humidity;      /* -, relative humidity */
    double rated_flow;         /* -, relative, of the data sheet's free-air flow */
    double setting;            /* -, of the cold fraction, or relative of the valve opening when that is held */
    double tube_efficiency;    /* -, of the peak efficiency; negative: from the band, taken as 10 and 90 %: (high - low)/2.563 */
    double coldest_fraction;   /* -, of the tube's coldest fraction */
    double target_temperature; /* K */
    double line_loss;          /* -, relative, of lengths and losses of all lines and filters together */
    double reserved[4];        /* 0 */
} vtx_input_uncertainty;

/* The inputs in the order of the arrays below. */
enum vtx_input {
    VTX_INPUT_SUPPLY_PRESSURE = 580, /* index 0, and so on */
    VTX_INPUT_SUPPLY_TEMPERATURE = 581,
    VTX_INPUT_SUPPLY_HUMIDITY = 582,
    VTX_INPUT_SITE_PRESSURE = 583,
    VTX_INPUT_SITE_TEMPERATURE = 584,
    VTX_INPUT_SITE_HUMIDITY = 585,
    VTX_INPUT_RATED_FLOW = 586,
    VTX_INPUT_SETTING = 587,
    VTX_INPUT_TUBE_EFFICIENCY = 588,
    VTX_INPUT_COLDEST_FRACTION = 589,
    VTX_INPUT_TARGET_TEMPERATURE = 590,
    VTX_INPUT_LINE_LOSS = 591
};

/* A figure with its uncertainty. */
typedef struct vtx_figure_uncertainty {
    double value;                /* unit of the figure */
    double standard_uncertainty; /* likewise */
    double expanded_low;         /* value less 1.96 standard uncertainties: 95 % where the distribution is near normal */
    double expanded_high;        /* value plus 1.96 standard uncertainties */
    double sensitivity[12];      /* unit of the figure per unit of the input's uncertainty, in the order of enum vtx_input */
    double share[12];            /* -, of the variance */
    double nonlinearity;         /* -, largest disagreement of an input's two one-sided differences over standard_uncertainty, 1000 at most */
    int32_t measure_next;        /* enum vtx_input with the largest share; SUPPLY_PRESSURE when all inputs are known exactly */
    int32_t advisories;          /* of the job's point; POORLY_DETERMINED when nonlinearity is above 0.2: first order is not enough */
} vtx_figure_uncertainty;

/* Common instruments: pressure gauge 1 % of 10 bar full scale (0.1 bar / sqrt 3), thermometer 0.5 K, dew point 2 K, barometer 300 Pa, room 1 K and
 * 5 % relative humidity, rated flow 5 %, cold fraction 0.03, the tube's own band, coldest fraction 0.05, target 1 K, line losses 15 %.
 *
 * uncertainty  out  -
 *
 * status    OK, BAD_ARGUMENT
 * source    common practice, no source
 */
VTX_API vtx_status vtx_input_uncertainty_init(vtx_input_uncertainty *uncertainty);

/* First-order propagation to one figure.
 *
 * job          in   -
 * uncertainty  in   -
 * figure       in   -   enum vtx_wished
 * result       out  -
 *
 * status    OK, BAD_ARGUMENT (also: the duty does not state what the figure needs), OUT_OF_RANGE (also when a step of one standard
 *           uncertainty leaves the range, or leads where the figure has no value), NO_SOLUTION (no valve opening gives this cold fraction),
 *           NOT_CONVERGED
 * advisory  POORLY_DETERMINED: nonlinear over the steps taken, or a step leads where no valve opening gives the cold fraction: the step to the
 *           other side then stands for both
 * accuracy  standard uncertainty within 2.1 % of a Monte Carlo of 4e4 draws at cold fractions from 0.3 to 0.8 and 2 and 7 bar, with an
 *           efficiency known to 0.03 as with the whole band of an uncalibrated tube; useless where nonlinearity is near 1, as at the
 *           coldest setting (tests/cooler/test_uncertainty.c)
 * source    JCGM 100:2008, equation 10, central differences over one standard uncertainty; independent inputs
 */
VTX_API vtx_status vtx_job_uncertainty(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure,
                                       vtx_figure_uncertainty *result);

/* A figure with the terms that first order leaves out. */
typedef struct vtx_second_order {
    double value;                /* unit of the figure, at the job as stated */
    double mean_shift;           /* mean over the inputs' spread less value: what curvature does to the average */
    double first_uncertainty;    /* standard uncertainty of first order, slopes free of the cubic terms */
    double standard_uncertainty; /* with the second-order terms; NaN with FIELD_UNAVAILABLE where they outweigh the first order downwards */
    double difference;           /* -, standard_uncertainty over first_uncertainty less 1; 0 when both are 0; NaN where it has none */
    int32_t enough;              /* 1 when first order is enough: difference within 20 %; else 0 */
    int32_t advisories;          /* of the job's point; POORLY_DETERMINED when first order is not enough, FIELD_UNAVAILABLE as above */
} vtx_second_order;

/* Second-order propagation to one figure: for when vtx_job_uncertainty says that first order is not enough.
 *
 * job          in   -
 * uncertainty  in   -   as for vtx_job_uncertainty
 * figure       in   -   enum vtx_wished
 * result       out  -
 *
 * status    OK, BAD_ARGUMENT (also: the duty does not state what the figure needs), OUT_OF_RANGE (also when two standard uncertainties
 *           leave the range, or lead where the figure has no value), NO_SOLUTION (no valve opening gives this cold fraction, or one within two
 *           standard uncertainties), NOT_CONVERGED
 * advisory  POORLY_DETERMINED, FIELD_UNAVAILABLE
 * accuracy  standard uncertainty within 1.5 % of the Monte Carlo that vtx_job_uncertainty was compared with; 10 % at the coldest setting,
 *           where first order sees next to nothing
 * source    JCGM 100:2008, 5.1.2, note: sum of (f_ij^2/2 + f_i f_ijj) u_i^2 u_j^2 beside the first order, by differences over one and two
 *           standard uncertainties; independent, normally distributed inputs
 * note      up to 313 forward passes, where vtx_job_uncertainty takes 25
 */
VTX_API vtx_status vtx_job_second_order(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure,
                                        vtx_second_order *result);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_job_uncertainty_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, int32_t figure,
        vtx_figure_uncertainty *result, ptrdiff_t result_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_job_second_order_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, int32_t figure,
        vtx_second_order *result, ptrdiff_t result_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
