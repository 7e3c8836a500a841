/* Holds a cooler to its quotation: readings taken at one state, carried to the state that was quoted, pass or fail.
 *
 * Not a diagnosis (diagnosis.h): whatever is wrong with the cooler counts as its performance. Not the rules themselves (decision.h).
 * See also: uncertainty.h for what the test's description is worth, calibration.h to learn a tube's curve from many readings. */
#ifndef VTX_ACCEPTANCE_H
#define VTX_ACCEPTANCE_H

#include <vtx/decision.h>
#include <vtx/diagnosis.h>
#include <vtx/uncertainty.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What was quoted, for one cooler. */
enum vtx_quoted {
    VTX_QUOTED_COLD_TEMPERATURE = 660, /* K, cold outlet */
    VTX_QUOTED_TEMPERATURE_DROP = 661, /* K, inlet less cold outlet */
    VTX_QUOTED_HOT_TEMPERATURE = 662,  /* K, hot outlet */
    VTX_QUOTED_CAPACITY = 663,         /* W, cold stream warmed to the inlet temperature */
    VTX_QUOTED_TARGET_CAPACITY = 664,  /* W, cold stream warmed to the quoted job's target temperature */
    VTX_QUOTED_AIR_CONSUMPTION = 665   /* m3/s, free air at the cooler's reference state */
};

/* Terms of the budget that are neither a reading nor one of enum vtx_input. */
enum vtx_transfer_term {
    VTX_TERM_PRESSURE_EXPONENT = 668, /* -, of the tube's peak efficiency */
    VTX_TERM_BACK_PRESSURE = 669      /* Pa, behind the cold outlets during the test */
};

/* A quoted value and how it is to be judged. */
typedef struct vtx_quotation {
    double value;             /* unit of the quantity */
    double tolerance;         /* unit of the quantity, what the contract allows beyond the value; 0: nothing */
    double consumer_risk;     /* -, highest probability of a wrong decision at the limit; also of a wrong rejection */
    double doubt;             /* -, relative standard uncertainty of the uncertainties themselves, 0.01..0.5; 0: they are exact */
    double pressure_exponent; /* -, standard uncertainty of the tube's pressure exponent */
    double back_pressure;     /* Pa, standard uncertainty of the pressure behind the cold outlets during the test */
    double reserved[4];       /* 0 */
    int32_t quantity;         /* enum vtx_quoted */
    int32_t side;             /* enum vtx_tolerance: INTERVAL is value less to value plus tolerance */
} vtx_quotation;

/* The quantity at the quoted state, what it is worth, and the verdict. Contributions are changes of the estimate per standard
 * uncertainty, with their sign. All doubles are NaN when the readings are impossible. */
typedef struct vtx_acceptance {
    double estimate;                   /* unit of the quantity, at the quoted state */
    double standard_uncertainty;       /* likewise: root of the sum of all contributions squared */
    double degrees_of_freedom;         /* -, effective; 0: infinitely many */
    double guard_band;                 /* unit of the quantity */
    double margin;                     /* unit of the quantity, to the nearest limit; above 0 on the right side of it */
    double conformance_probability;    /* - */
    double deciding_uncertainty;       /* unit of the quantity: largest standard uncertainty that would decide this margin */
    double needed_uncertainty;         /* standard uncertainty of the reading `improve` with which it would decide, all else as it is; NaN: none would */
    double transfer_uncertainty;       /* unit of the quantity: coldest fraction and pressure exponent together; nothing at the quoted state itself */
    double reading_contribution[8];    /* unit of the quantity, in the order of enum vtx_read; 0: not read */
    double input_contribution[12];     /* unit of the quantity, in the order of enum vtx_input */
    double exponent_contribution;      /* unit of the quantity, of the pressure exponent */
    double back_pressure_contribution; /* unit of the quantity */
    double peak_efficiency;            /* -, of the tube that the readings show */
    double inlet_area_factor;          /* -, of the nozzle that the readings show; the tested job's own when no flow was read */
    double cold_fraction;              /* -, during the test */
    double chi_square;                 /* -, of the readings against the fit */
    double chi_square_probability;     /* -, chance of a larger one; NaN when the readings leave no freedom */
    int32_t verdict;                   /* enum vtx_decision */
    int32_t improve;                   /* enum vtx_read: the reading that contributes most; impossible readings: the wrong one */
    int32_t largest_term;              /* enum vtx_input or vtx_transfer_term: the largest contribution that is not a reading; impossible readings: -1 */
    int32_t contradiction;             /* enum vtx_contradiction */
    int32_t wrong_reading;             /* enum vtx_read: most likely wrong; -1 without a contradiction */
    int32_t readings;                  /* how many were given */
    int32_t advisories;                /* bits of enum vtx_advisory */
    int32_t spare;                     /* 0 */
} vtx_acceptance;

/* A quotation without tolerance at 5 % risk, uncertainties known to a quarter, pressure exponent 0.1, back-pressure 1000 Pa.
 *
 * quantity   in   -   enum vtx_quoted
 * side       in   -   enum vtx_tolerance: for a temperature at most, for a capacity at least
 * value      in   unit of the quantity
 * quotation  out  -
 *
 * status    OK, BAD_ARGUMENT
 * source    5 %: common practice, no source; a quarter: JCGM 100:2008, G.4.2, eight degrees of freedom; exponent: an assumption, narrower
 *           than the prior of calibration.h, which holds 80 % of tubes within 0.3; back-pressure: common practice, no source
 */
VTX_API vtx_status vtx_quotation_init(int32_t quantity, int32_t side, double value, vtx_quotation *quotation);

/* Judges readings against a quotation.
 *
 * The tube's peak efficiency, and the nozzle's area when a flow was read, are fitted to the readings by least squares on the
 * forward pass of the tested job, along with everything else that is uncertain there, each held by its own standard uncertainty.
 * The quoted job is then evaluated with that tube and nozzle. Coldest fraction and pressure exponent of the tube are uncertain too:
 * at the quoted state the fit takes their errors up, away from it they widen the result. What is read takes the place of what the
 * tested job states: a pressure read at the cooler leaves its line and a supply gauge ahead of it without effect.
 *
 * tested       in   -   the cooler as it was tested; what is read need not be stated exactly
 * readings     in   -   a cold or hot temperature, for an air consumption a flow; values corrected for the probe (thermometry.h)
 * uncertainty  in   -   of what the tested job states: supply pressure and temperature and rated flow only where no reading tells
 *                       them, tube efficiency only where no outlet temperature was read; humidity of the site and target temperature have no effect
 * quoted       in   -   the state that was quoted, taken as exact; the same rated cooler; its tube and inlet area are not looked at
 * quotation    in   -
 * acceptance   out  -
 *
 * status    OK, BAD_ARGUMENT (also: readings that do not bear on the quantity, a quoted cooler that is rated otherwise),
 *           OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED (no cooler gives these readings)
 * advisory  IMPOSSIBLE_READINGS: nothing is decided; MODEL_MISFIT: readings contradict each other by more than one case in a hundred, nothing
 *           is decided; PARAMETER_HELD: no flow read, a capacity rests on the rated flow; FIELD_UNAVAILABLE; those of the quoted operating point
 * accuracy  at 5 % risk, true value at the limit, states apart in pressure, temperature, humidity, altitude and cold fraction, all that is
 *           uncertain spread as stated: 2.3..3.1 % of 2000 trials wrongly passed and 3.7..4.4 % wrongly failed, all quantities together;
 *           0.2..4.9 % for each quantity by each of four sets of readings. Each of 184000 trials was answered, two of them at the end of a
 *           search that crept along a crease of the forward pass, within a hundredth of their uncertainty (tests/cooler/test_acceptance.c)
 * source    JCGM 100:2008, 5.1 and G.4, each datum moved by the guard factor to both sides through the whole fit and of the two changes the
 *           larger taken; JCGM 106:2012, 8.3; ISO 14253-1 (from memory)
 * note      a tube whose curve has another shape than that of separation.h is outside these terms: test near the quoted state
 * note      Student's law takes the place of the normal one, so that uncertainties stated a quarter too small do little harm; with doubt 0
 *           single cases were decided wrongly in up to 5.9 % of 1000 trials. The coldest fraction's 0.05 of vtx_input_uncertainty_init is
 *           narrower than calibration.h's prior (80 % of tubes within 0.1): state more for a tube of which nothing is known
 * caution   readings are taken on a pressurised cooler: cold and hot ends hurt skin, jets and noise eyes and ears
 */
VTX_API vtx_status vtx_accept(const vtx_job *tested, const vtx_service_readings *readings, const vtx_input_uncertainty *uncertainty,
                              const vtx_job *quoted, const vtx_quotation *quotation, vtx_acceptance *acceptance);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_accept_batch(size_t n, const vtx_job *tested, ptrdiff_t tested_stride,
        const vtx_service_readings *readings, ptrdiff_t readings_stride, const vtx_input_uncertainty *uncertainty,
        ptrdiff_t uncertainty_stride, const vtx_job *quoted, ptrdiff_t quoted_stride, const vtx_quotation *quotation,
        ptrdiff_t quotation_stride, vtx_acceptance *acceptance, ptrdiff_t acceptance_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
