/* Setting a cooler going: what to read, what the readings say of the setting, how far to turn the hot valve, when it has settled.
 *
 * Not why it no longer gets cold (diagnosis.h): description and tube count as right within their uncertainties.
 * See also: sizing.h for everything else that may be varied, thermometry.h for what a thermometer in a jet shows, calibration.h for the
 * tube's own curve from several settings.
 *
 * All calls here rest on one least-squares fit of the job's forward pass, valve opening held, to what was read. The valve is free; everything
 * else that the description leaves uncertain is fitted along with it, each held by its own standard uncertainty. Where a pressure, the inlet
 * temperature or the inlet flow was read, what the description says of supply pressure, supply temperature or rated flow no longer counts.
 * A call costs 100 to 300 forward passes; three times that where the readings leave several settings open. */
#ifndef VTX_COMMISSIONING_H
#define VTX_COMMISSIONING_H

#include <vtx/diagnosis.h>
#include <vtx/setting.h>
#include <vtx/uncertainty.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What the valve is to be set for. */
enum vtx_goal {
    VTX_GOAL_COLD_TEMPERATURE = 650, /* K, of the cold outlet (at most) */
    VTX_GOAL_COLD_FRACTION = 651,    /* - */
    VTX_GOAL_CAPACITY = 652,         /* W, cold stream warmed to the duty's target temperature (at least) */
    VTX_GOAL_MOST_CAPACITY = 653     /* W, as much of it as the valve can give; nothing is wanted */
};

/* What to do with the hot valve. */
enum vtx_turn {
    VTX_TURN_OPEN = 654,   /* less cold air, colder as long as the cold fraction stays above the tube's coldest one */
    VTX_TURN_CLOSE = 655,  /* more cold air */
    VTX_TURN_REACHED = 656, /* leave it: the goal is met within the uncertainty of what was read; a cold temperature also by any colder one,
                             * a capacity by any larger one, on either branch */
    VTX_TURN_UNSEEN = 657   /* leave it: these instruments would not show the difference */
};

/* Whether a reading has come to rest. */
enum vtx_settled {
    VTX_SETTLED_YES = 658, /* within the band of its final value, 95 times of a hundred */
    VTX_SETTLED_NO = 659   /* wait */
};

/* What the valve is to be set for. */
typedef struct vtx_valve_goal {
    double wanted;      /* unit of the goal; not looked at with MOST_CAPACITY */
    double reserved[4]; /* 0 */
    int32_t goal;       /* enum vtx_goal */
    int32_t branch;     /* enum vtx_branch: which of two settings that meet the goal exactly is turned to; default MORE_COLD_AIR */
} vtx_valve_goal;

/* Goal on the branch with more cold air.
 *
 * goal        in   -   enum vtx_goal
 * wanted      in   unit of the goal
 * valve_goal  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 */
VTX_API vtx_status vtx_valve_goal_init(int32_t goal, double wanted, vtx_valve_goal *valve_goal);

/* What to read next, best first. */
typedef struct vtx_reading_plan {
    double before;           /* -, standard uncertainty of the turn (natural logarithm of new over old opening) by what is known so far */
    double after[8];         /* -, the same once this and all earlier ones of the order are read; NaN beyond the last */
    int32_t order[8];        /* enum vtx_read, those not yet taken that can be, best first; -1 beyond the last */
    int32_t count;           /* how many these are */
    int32_t worthwhile;      /* how many of them, from the first: the rest together would shrink the uncertainty by less than a twentieth */
    int32_t advisories;      /* of the job's point; FIELD_UNAVAILABLE */
    int32_t spare;           /* 0 */
} vtx_reading_plan;

/* The order in which to read, by what each reading tells of the turn that the goal needs.
 *
 * From all readings the one that is missed least is dropped, again and again; what is dropped last is read first. So readings that tell
 * something only together (the three temperatures of a heat balance) are found.
 *
 * job          in   -   as described; its valve may stand anywhere in its range
 * uncertainty  in   -   of the description
 * readings     in   -   value NaN: not yet taken; uncertainties: of the instruments at hand, for taken and untaken readings; both NaN: cannot
 *                       be read here, the plan does without
 * goal         in   -
 * plan         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * advisory  FIELD_UNAVAILABLE
 * accuracy  first order about the description: a plan, not a result. A goal out of reach is planned for as its figure at the present setting
 * source    Bayesian linear design: variance by rank-one updates (textbook); elimination of the least useful
 * note      pressures need no flow meter and flow meters no correction for the probe: where two orders are nearly as good, take the easier; ask
 *           again without what is too much trouble to see what it would be worth
 */
VTX_API vtx_status vtx_plan_readings(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                                     const vtx_valve_goal *goal, vtx_reading_plan *plan);

/* The setting that readings show. Uncertainties are standard ones. */
typedef struct vtx_setting_found {
    double cold_fraction;                /* - */
    double cold_fraction_uncertainty;    /* - */
    double cold_fraction_low;            /* -, 95 % interval */
    double cold_fraction_high;           /* - */
    double valve_opening;                /* -, over that at the rated point */
    double valve_opening_uncertainty;    /* - */
    double cold_temperature;             /* K, of the fit: read or not */
    double cold_temperature_uncertainty; /* K */
    double capacity;                     /* W, against the duty's target temperature */
    double capacity_uncertainty;         /* W */
    double peak_efficiency;              /* -, of the tube */
    double peak_efficiency_uncertainty;  /* - */
    double supply_pressure;              /* Pa */
    double supply_temperature;           /* K */
    double rated_flow_factor;            /* -, flow that the description's nozzle would need over its rated flow */
    double by_temperatures;              /* -, cold fraction by heat balance alone; NaN unless three temperatures and a pressure were read */
    double by_temperatures_uncertainty;  /* - */
    double by_flows;                     /* -, cold fraction by the two flows alone; NaN unless both were read */
    double by_flows_uncertainty;         /* - */
    double chi_square;                   /* of readings and description together */
    double probability;                  /* -, chance of a larger one; NaN without freedom */
    double other_cold_fraction;          /* -, of another setting that explains the readings nearly as well; NaN: there is none */
    int32_t freedom;                     /* readings less what is fitted without a hold */
    int32_t readings;                    /* how many were given */
    int32_t advisories;                  /* bits of enum vtx_advisory */
    int32_t spare;                       /* 0 */
} vtx_setting_found;

/* Cold fraction and valve opening from whatever was read.
 *
 * job          in   -   as described; the valve may stand elsewhere
 * uncertainty  in   -   of the description; target temperature and site humidity have no effect, nor has setting
 * readings     in   -   any of them, steady
 * found        out  -
 *
 * status    OK, BAD_ARGUMENT (also: nothing read), OUT_OF_RANGE, NO_SOLUTION (these readings rule out no setting of the
 *           valve: vtx_plan_readings), NOT_CONVERGED
 * advisory  MODEL_MISFIT (probability below 0.01: something is wrong, see diagnosis.h), INDISTINGUISHABLE (another setting fits nearly as well),
 *           POORLY_DETERMINED (the valve's range had to count as a reading), FIELD_UNAVAILABLE; those of the operating point found
 * accuracy  without noise 1e-8. With ordinary instruments and an uncalibrated tube the 95 % interval holds the cold fraction in 94.7 to 95.4 %
 *           of 2000 draws each for all gauges (standard uncertainty 0.007), three thermometers and inlet gauge (0.011), two flow meters,
 *           two thermometers and inlet gauge (0.010); of 1000 random jobs of all kinds in 95 % (tests/cooler/test_commissioning.c). With less, or with
 *           two settings that fit, it is the profile's interval, all cold fractions that the readings do not rule out: with an inlet gauge,
 *           an inlet and a cold thermometer alone 95 %, or NO_SOLUTION
 * source    least squares with what is known beforehand as further readings; JCGM 100:2008, equation 13; profile likelihood (textbook)
 * caution   readings are taken on a pressurised cooler: cold and hot ends hurt skin, jets and noise eyes and ears
 */
VTX_API vtx_status vtx_find_setting(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                                    vtx_setting_found *found);

/* How far to turn. The figure is that of the goal. */
typedef struct vtx_valve_advice {
    double opening_ratio;           /* -, new over present effective area of the hot valve: below 1 close */
    double ratio_low;               /* -, 95 % interval of the ratio that meets the goal exactly */
    double ratio_high;              /* - */
    double present_opening;         /* -, over that at the rated point */
    double new_opening;             /* - */
    double present_figure;          /* unit of the goal, by the readings */
    double present_uncertainty;     /* unit of the goal, standard */
    double new_figure;              /* unit of the goal, expected after the turn */
    double new_uncertainty;         /* unit of the goal, standard, of that expectation */
    double new_cold_fraction;       /* -, expected after the turn */
    double visibility;              /* standard deviations by which the readings given would differ after the turn from now */
    double predicted[8];            /* what the gauges will show after the turn, in the order of enum vtx_read */
    double predicted_uncertainty[8];/* standard, of the expectation; the instrument's own comes on top */
    double attainable_figure;       /* best figure of the valve's range; also with NO_SOLUTION */
    double attainable_opening;      /* where it is; also with NO_SOLUTION */
    double attainable_ratio;        /* -, over the present opening; also with NO_SOLUTION */
    int32_t turn;                   /* enum vtx_turn */
    int32_t limit;                  /* enum vtx_limit: what holds new_opening where it is; RANGE_LOW: highest cold fraction of the cooler */
    int32_t attainable_limit;       /* enum vtx_limit: what holds attainable_opening where it is; also with NO_SOLUTION */
    int32_t advisories;             /* of the setting found and of the point after the turn */
} vtx_valve_advice;

/* Which way and how far to turn the hot valve for a goal.
 *
 * job          in   -   as vtx_find_setting; adjustable; its cold fraction limits give the valve's range
 * uncertainty  in   -   as vtx_find_setting
 * readings     in   -   as vtx_find_setting
 * goal         in   -
 * advice       out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a cooler without a valve), NO_SOLUTION (goal out of reach: attainable fields say what is within; or
 *           these readings do not see the valve: attainable fields are NaN), NOT_CONVERGED
 * advisory  as vtx_find_setting; FREEZING, CONDENSING and the others of the point after the turn
 * accuracy  without noise, turned as told, the goal is met within 1e-8; with ordinary instruments the cold temperature after the turn lies within
 *           1.96 of its uncertainties in 94.4 to 95.0 % of 1600 draws, and the interval of the ratio holds the true one, for a cold fraction and
 *           for the most cooling, in 94.4 to 95.8 % of 2000 (tests/cooler/test_commissioning.c). First order: with
 *           POORLY_DETERMINED or INDISTINGUISHABLE read more before turning far
 * source    vtx_find_setting, then a bracketed root or minimum of the same forward pass over the opening; implicit derivatives
 * note      REACHED with a cold outlet colder than wanted, or more capacity: nothing need be turned, and all fields of the new setting still tell
 *           of the one that meets the goal exactly. On the branch with more cold air that is the most cold air of at most this temperature
 * note      the opening is an effective area: how many turns of the stem make it double is the valve's own affair; turn a part, wait
 *           (vtx_turn_settling_time), read, ask again
 * caution   turn with gloves and eye protection: the hot end burns, and the valve's screw must not be turned out of its thread under pressure
 */
VTX_API vtx_status vtx_advise_valve(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                                    const vtx_valve_goal *goal, vtx_valve_advice *advice);

/* Time constant of a cooler's cold or hot end: its metal over the stream that cools or heats it.
 *
 * metal_mass      in   kg        1e-4..100
 * specific_heat   in   J/(kg K)  50..5000    896 aluminium, 500 stainless steel, 380 brass
 * mass_flow       in   kg/s      1e-7..10    of that end's stream
 * heat_capacity   in   J/(kg K)  500..5000   of the air: 1006
 * exchange_share  in   -         0.01..1     how near the stream comes to the metal's temperature on its way: about 0.3 to 0.7 in a short tube
 * time_constant   out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  a factor of 2: metal at one temperature, and the share is hardly known (common practice, no source)
 * source    lumped capacity: m c / (share m' cp)
 */
VTX_API vtx_status vtx_body_time_constant(double metal_mass, double specific_heat, double mass_flow, double heat_capacity, double exchange_share,
                                          double *time_constant);

/* How long to wait after a turn until the reading stands within a band of its final value: thermometer behind the cooler's own metal.
 *
 * probe_time_constant  in   s   0..1e5   vtx_probe_time_constant
 * body_time_constant   in   s   0..1e5   vtx_body_time_constant
 * step                 in   K   0..1000  change that the turn will bring: vtx_valve_advice
 * band                 in   K   1e-6..1000
 * settling_time        out  s            0 when the step is within the band, or both constants are 0
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for two lags in series, all of the change through the metal: the careful side. 1e-9
 * source    two first-order lags in series; with one of them as vtx_settling_time
 */
VTX_API vtx_status vtx_turn_settling_time(double probe_time_constant, double body_time_constant, double step, double band, double *settling_time);

/* What successive readings say of the final value. */
typedef struct vtx_settling {
    double final_value;             /* K, extrapolated */
    double final_uncertainty;       /* K, standard */
    double remaining;               /* K, final value less the last reading's place on the curve */
    double remaining_uncertainty;   /* K, standard */
    double time_constant;           /* s, as given, or found */
    double time_constant_uncertainty; /* s, standard; 0 when given */
    double time_left;               /* s, from the last reading until within the band; 0 when there */
    double chi_square;              /* of the readings about the curve */
    double probability;             /* -, chance of a larger one; NaN without freedom */
    int32_t settled;                /* enum vtx_settled */
    int32_t advisories;             /* POORLY_DETERMINED: the change was too small or too straight to find a time constant, the span of the readings
                                       was taken; MODEL_MISFIT: no exponential; FIELD_UNAVAILABLE */
} vtx_settling;

/* Whether a reading has settled, and where it is going, by an exponential through successive readings after a turn.
 *
 * times          in   s   count times, rising; -1e9..1e9
 * readings       in   K   count readings; 1..2000
 * count          in   -   2..50; 3 or more when the time constant is not given
 * uncertainty    in   K   1e-6..100   standard, of one reading against the next: resolution and flutter, not the thermometer's class
 * time_constant  in   s   0..1e5      0: not known
 * band           in   K   1e-6..1000
 * settling       out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * advisory  POORLY_DETERMINED, MODEL_MISFIT, FIELD_UNAVAILABLE
 * accuracy  exact for three readings on an exponential; with noise of 0.05 K on 2 to 6 readings the 95 % interval
 *           of the final value holds it in 94.9 to 95.1 % of 20000 draws (tests/cooler/test_commissioning.c)
 * note      wait until the first reading is past the first minute's mixed response; a creep slower than the readings' span cannot be seen
 * source    exponential approach; least squares
 */
VTX_API vtx_status vtx_judge_settling(const double *times, const double *readings, size_t count, double uncertainty, double time_constant,
                                      double band, vtx_settling *settling);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_plan_readings_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, const vtx_valve_goal *goal, ptrdiff_t goal_stride, vtx_reading_plan *plan,
        ptrdiff_t plan_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_find_setting_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_setting_found *found, ptrdiff_t found_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_advise_valve_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, const vtx_valve_goal *goal, ptrdiff_t goal_stride, vtx_valve_advice *advice,
        ptrdiff_t advice_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_body_time_constant_batch(size_t n, const double *metal_mass, ptrdiff_t metal_mass_stride,
        const double *specific_heat, ptrdiff_t specific_heat_stride, const double *mass_flow,
        ptrdiff_t mass_flow_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *exchange_share, ptrdiff_t exchange_share_stride, double *time_constant,
        ptrdiff_t time_constant_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_turn_settling_time_batch(size_t n, const double *probe_time_constant,
        ptrdiff_t probe_time_constant_stride, const double *body_time_constant, ptrdiff_t body_time_constant_stride,
        const double *step, ptrdiff_t step_stride, const double *band, ptrdiff_t band_stride, double *settling_time,
        ptrdiff_t settling_time_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
