/* What a figure of a job is worth: its uncertainty, and which input to measure better.
 *
 * Not a calibration of the tube (calibration.h), which narrows the band that counts here as an input's uncertainty.
 * See also: job.h for the forward pass, sizing.h for the list of figures. */
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
    double nonlinearity;         /* -, largest disagreement of the two one-sided differences, weighted by share */
    int32_t measure_next;        /* enum vtx_input with the largest share */
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
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when a step of one standard uncertainty leaves the range), NOT_CONVERGED
 * advisory  POORLY_DETERMINED: nonlinear over the steps taken
 * accuracy  standard uncertainty within 3 % of a Monte Carlo of 2e4 draws with an efficiency known to 0.03 (tests/cooler/test_uncertainty.c);
 *           not measured with the whole band of an uncalibrated tube, where nonlinearity says how far first order may be trusted
 * source    JCGM 100:2008, equation 10, central differences over one standard uncertainty; independent inputs
 */
VTX_API vtx_status vtx_job_uncertainty(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure,
                                       vtx_figure_uncertainty *result);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_job_uncertainty_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, int32_t figure,
        vtx_figure_uncertainty *result, ptrdiff_t result_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
