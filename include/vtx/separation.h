/* What leaves a vortex tube: cold and hot stream at a cold fraction, with both laws kept and a band.
 *
 * Not how to reach a wish (setting.h); not the laws of a perfect gas alone (laws.h, included here).
 * See also: calibration.h, which turns readings of a tube into a vtx_tube; cold_fraction.h for measuring the cold fraction.
 *
 * The default curve is uncalibrated: its shape follows from the laws and from what studies have in common, its height from
 * sixteen remembered points (examples/plot_separation shows them). Tubes differ by a factor of two; a few readings of
 * your own remove most of it. All temperatures and pressures are stagnation values; per kg means per kg of inlet air. */
#ifndef VTX_SEPARATION_H
#define VTX_SEPARATION_H

#include <vtx/laws.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Where the numbers of a tube come from. */
enum vtx_tube_basis {
    VTX_TUBE_UNCALIBRATED = 300, /* the default curve, whatever its parameters */
    VTX_TUBE_CALIBRATED = 301    /* fitted to readings of this tube */
};

/* What is asked of a prediction decides which side of the band is the careful one. */
enum vtx_question {
    VTX_QUESTION_SIZING = 302,   /* is it cold enough: reads the low side */
    VTX_QUESTION_FREEZING = 303, /* is anything too cold or too hot (frost, ice, brittleness, touch): reads the high side */
    VTX_QUESTION_TYPICAL = 304   /* what to expect: reads the middle */
};

/* A tube: how much of the isentropic expansion becomes cold, and at which cold fraction most. */
typedef struct vtx_tube {
    double peak_efficiency;     /* -  0..1 (0 excluded)   isentropic efficiency of the cold stream at coldest_fraction; default 0.28 */
    double coldest_fraction;    /* -  0..0.5 (excluded)   cold fraction of the coldest outlet; default 0.30 */
    double efficiency_low;      /* -  0..peak             lower end of the band of peak_efficiency; default 0.18 */
    double efficiency_high;     /* -  peak..1             upper end of the band; default 0.39 */
    double pressure_exponent;   /* -  -1..1               peak efficiency goes with (ratio / reference_ratio)^exponent; default 0 */
    double reference_ratio;     /* -  1..100              inlet over cold pressure at which peak_efficiency holds; default 5 */
    double cold_leak;           /* -  0..10               heat conductance from the surroundings to the cold end over inlet mass
                                                          flow times heat capacity; default 0 */
    double hot_leak;            /* -  0..10               the same from the hot end to the surroundings; default 0 */
    double ambient_temperature; /* K  150..400            surroundings of the leaks; default 293.15; without effect when both are 0 */
    double reserved[4];         /* -  0 */
    int32_t basis;              /* enum vtx_tube_basis */
    int32_t spare;              /* 0 */
} vtx_tube;

/* The documented uncalibrated default: peak 0.28 at a cold fraction of 0.30, band 0.18..0.39, no pressure exponent, no leak.
 *
 * tube      out  -
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  80 % of tubes lie in the band, judged on sixteen points mostly from memory: 8 K root mean square in the cold drop
 * note      the points do not fix coldest_fraction: 0.2..0.4 fits as well; best cooling then is at 0.60..0.64
 * source    vtx_tube_separate explains the curve
 */
VTX_API vtx_status vtx_tube_init(vtx_tube *tube);

/* The tube to use for a question: its typical efficiency moved to the careful side.
 *
 * Uncalibrated: sizing reads at most 0.20, freezing at least 0.55 and the band is widened to hold it (well-made tubes
 * reach 0.4..0.5: common practice, no source). Calibrated: sizing reads efficiency_low, freezing efficiency_high.
 *
 * tube        in   -
 * question    in   -  enum vtx_question
 * careful     out  -  may be the same record as tube
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  a choice, not a measurement
 * source    common practice, no source
 */
VTX_API vtx_status vtx_tube_for_question(const vtx_tube *tube, int32_t question, vtx_tube *careful);

/* Cold and hot stream of a tube. Ends of the band are numerically lowest and highest values. */
typedef struct vtx_streams {
    double cold_temperature;         /* K    cold outlet */
    double cold_temperature_low;     /* K    with efficiency_high */
    double cold_temperature_high;    /* K    with efficiency_low */
    double hot_temperature;          /* K    hot outlet; the limit of its curve when no air leaves there */
    double hot_temperature_low;      /* K    with efficiency_low */
    double hot_temperature_high;     /* K    with efficiency_high */
    double cold_fraction;            /* -    as given */
    double entropy_generation;       /* J/(K kg)  per kg inlet air; with the surroundings' share when heat leaks */
    double isentropic_efficiency;    /* -    cold drop over isentropic drop of the same model; NaN without expansion */
    double isentropic_temperature;   /* K    after isentropic expansion to the cold pressure, the same model */
    double throttle_temperature;     /* K    after throttling to the cold pressure, the same model: the cold outlet at cold fraction 1 */
    double joule_thomson_drop;       /* K    inlet minus throttle temperature; 0 for IDEAL */
    double heat_gain;                /* J/kg per kg inlet air, into the cold stream from the surroundings */
    double heat_loss;                /* J/kg per kg inlet air, from the hot stream to the surroundings */
    double condensed;                /* kg/kg water or ice per kg dry air in the cold stream */
    double condensed_low;            /* kg/kg lowest over the band */
    double condensed_high;           /* kg/kg highest over the band */
    double frozen_share;             /* -    ice over condensed, 0 when nothing is */
    double hot_condensed;            /* kg/kg water or ice per kg dry air in the hot stream: above 0 for a feed that brings mist only */
    double hot_frozen_share;         /* -    ice over hot_condensed, 0 when nothing is */
    int32_t advisories;              /* bits of enum vtx_advisory, of the typical case and of the band */
    int32_t condensed_phase;         /* 0 none, 1 liquid, 2 ice, 3 both */
} vtx_streams;

/* Cold and hot stream at a cold fraction.
 *
 * With s = 1 - ((mu - m) / (1 - m))^2, m the coldest fraction, the cold stream gives up the share (efficiency times s) of the
 * isentropic drop of enthalpy to the cold pressure, and the hot stream receives it. s is 0 at mu = 1, where only the throttle
 * remains. For the perfect gas: Tc = T0 - efficiency s T0 (1 - (pc/p0)^k), Th = T0 + efficiency mu s/(1 - mu) T0 (1 - (pc/p0)^k).
 * An efficiency of at most 1 keeps the second law whatever the pressures; what a pressure exponent would lift above 1 is held
 * there. In real air the full Joule-Thomson drop comes on top of that share; it is counted once, so that efficiency 1 is the
 * isentropic expansion and no more. Real feed: work is given by the gas, all water vapour; then water condenses or freezes in
 * equilibrium and warms the cold stream by its latent heat. Condensate stays in its stream; a feed with mist is taken to split
 * evenly.
 *
 * tube               in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    1e4..1e7 IDEAL, 1e4..5e6 REAL; at the tube inlet, after hose losses
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2   kg water per kg dry air in the feed, mist included; without effect for IDEAL
 * cold_pressure      in   Pa    1e3..inlet pressure; above it BAD_ARGUMENT
 * hot_pressure       in   Pa    1e3..inlet pressure; above it BAD_ARGUMENT
 * cold_fraction      in   -     0..1
 * streams            out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (REAL also when an isentropic expansion would end near where air itself condenses:
 *           below 100 K up to 0.4 MPa, more above), NOT_CONVERGED (never seen)
 * accuracy  first law to 1e-10 of cp T0, entropy generation never below -1e-7 J/(kg K), on 1e7 random states over the whole
 *           range with each model; as a prediction of an unknown tube 8 K root mean square in the cold drop
 * advisory  UNCALIBRATED; EXTRAPOLATED (cold fraction below 0.1 or above 0.9; for an uncalibrated tube also a pressure ratio
 *           outside 2..8.5; for REAL also a state outside 173.15..373.15 K or 0.01..2 MPa; a hot outlet above 473.15 K keeps the
 *           heat capacity it has there); SECOND_LAW_LIMITED; CONDENSING, FREEZING (anywhere in the band);
 *           STATIC_FREEZING; FIELD_UNAVAILABLE (isentropic_efficiency)
 * note      a leak moves its outlet towards the surroundings as an exchanger does, by exp(-leak/mu) or exp(-leak/(1 - mu)); its
 *           conductance is relative to the flow, so twice the air halves it
 * note      IDEAL is the perfect gas of cp 1006 and R 287.05 J/(kg K), no Joule-Thomson drop, no condensation
 * caution   outlets can be cold or hot enough to hurt skin, and frost can block the cold end, which this does not model: ask
 *           vtx_tube_for_question with VTX_QUESTION_FREEZING before trusting a limit
 * source    shape and height: derived and fitted for this library; similarity of the dimensionless cold drop in the cold
 *           fraction alone after Stephan et al. 1984 (second hand); states of moist_air.h
 */
VTX_API vtx_status vtx_tube_separate(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                     double humidity_ratio, double cold_pressure, double hot_pressure, double cold_fraction,
                                     vtx_streams *streams);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_tube_for_question_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t question,
        vtx_tube *careful, ptrdiff_t careful_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_tube_separate_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *hot_pressure,
        ptrdiff_t hot_pressure_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        vtx_streams *streams, ptrdiff_t streams_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
