/* Thermometers in air jets: what a probe reads is not the air's stagnation temperature, and by how much.
 *
 * Not the readings of a tube as a whole (reading.h), nor how a jet decays (the entrained share is given).
 * See also: calibration.h, which takes corrected temperatures with their uncertainties.
 *
 * The cheapest correction is a better place: after a settling chamber, air slower than 20 m/s, recovery costs nothing. Reading
 * off the axis or past four diameters, waiting too little, or a probe touching the metal cost more than the probe's class. */
#ifndef VTX_THERMOMETRY_H
#define VTX_THERMOMETRY_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Temperature rise of air brought to rest: V^2 / (2 cp). 18 K at 190 m/s, 3.6 K at 85 m/s.
 *
 * air_speed      in   m/s  0..1000
 * heat_capacity  in   J/(kg K)  100..20000
 * rise           out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for constant heat capacity
 * source    first law, steady flow
 */
VTX_API vtx_status vtx_dynamic_temperature(double air_speed, double heat_capacity, double *rise);

/* Who measures. */
enum vtx_probe_kind {
    VTX_PROBE_LAMINAR = 330,   /* a smooth surface along the flow, laminar: square root of the Prandtl number */
    VTX_PROBE_TURBULENT = 331, /* the same, turbulent: cube root */
    VTX_PROBE_BARE = 332,      /* bare wire or thin sheathed probe, not calibrated: 0.77 +-0.10 */
    VTX_PROBE_SHIELDED = 333   /* shielded stagnation probe: 0.97 +-0.02 */
};

/* Recovery factor: the share of the dynamic temperature that a probe reads.
 *
 * probe        in   -  enum vtx_probe_kind
 * prandtl      in   -  0.5..1     of air: 0.71; without effect for bare and shielded probes
 * factor       out  -
 * uncertainty  out  -  standard, of the factor; 0.01 for the two surfaces; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as its uncertainty says: rectangular limits over the root of 3 for the probes
 * note      sources contradict each other on bare wires: 0.68 across and 0.86 along the stream, or 0.84 at any angle. A thick
 *           holder changes the factor: calibrate. Recovery ratio (reading over stagnation temperature) is another number.
 * source    surfaces: boundary layer theory; turbulent 0.89 confirmed at Mach 2.9 (NAVORD report 2742, abstract). Bare: Moffat
 *           1962 (from memory). Shielded: abstracts of 2025 and NACA TN 1885; limits chosen for this library
 */
VTX_API vtx_status vtx_recovery_factor(int32_t probe, double prandtl, double *factor, double *uncertainty);

/* Limits of error that a thermometer is sold with. */
enum vtx_thermometer_class {
    VTX_THERMOMETER_K1 = 334,    /* thermocouple type K, class 1 */
    VTX_THERMOMETER_T1 = 335,    /* thermocouple type T, class 1 */
    VTX_THERMOMETER_PT_A = 336,  /* Pt100, class A */
    VTX_THERMOMETER_PT_B = 337   /* Pt100, class B */
};

/* Standard uncertainty of a thermometer by its class: the limit of error over the root of 3.
 *
 * thermometer  in   -  enum vtx_thermometer_class
 * temperature  in   K  173.15..523.15
 * uncertainty  out  K
 * limit        out  K  may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  a limit, not a measurement; indicator and wiring come on top
 * source    IEC 60584-1 and IEC 60751 (from memory): 1.5 K, 0.5 K, 0.15 K + 0.002 |t|, 0.30 K + 0.005 |t|
 */
VTX_API vtx_status vtx_thermometer_uncertainty(int32_t thermometer, double temperature, double *uncertainty, double *limit);

/* Heat transfer coefficient of a round probe across a stream.
 *
 * air_speed            in   m/s       0.01..500
 * diameter             in   m         1e-5..0.1
 * kinematic_viscosity  in   m2/s      1e-7..1e-3   1.5e-5 at room temperature and 1 atm
 * conductivity         in   W/(m K)   0.005..0.1   0.025 at room temperature
 * prandtl              in   -         0.5..1
 * coefficient          out  W/(m2 K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also Reynolds times Prandtl number below 0.2)
 * accuracy  20 % (scatter of the measurements behind it)
 * source    Churchill and Bernstein 1977
 */
VTX_API vtx_status vtx_probe_coefficient(double air_speed, double diameter, double kinematic_viscosity, double conductivity,
                                         double prandtl, double *coefficient);

/* Shape of a probe's tip. */
enum vtx_probe_shape {
    VTX_PROBE_CYLINDER = 338,
    VTX_PROBE_SPHERE = 339
};

/* Time constant of a probe: heat stored over heat transferred. About 10 s for a 3 mm sheath in 20 m/s, 2..3 s for a 1 mm bead.
 *
 * shape                     in   -          enum vtx_probe_shape
 * volumetric_heat_capacity  in   J/(m3 K)   1e5..1e7   3.7e6 steel and oxide filling
 * diameter                  in   m          1e-5..0.1
 * coefficient               in   W/(m2 K)   0.1..1e5
 * time_constant             out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the coefficient; one temperature in the probe
 * note      the tube's own body can settle over minutes: watch the reading, not the probe's constant alone
 * source    lumped capacity: rho c D / (4 h) cylinder, rho c D / (6 h) sphere
 */
VTX_API vtx_status vtx_probe_time_constant(int32_t shape, double volumetric_heat_capacity, double diameter, double coefficient,
                                           double *time_constant);

/* How long to wait after a step until the reading stands within an allowed error.
 *
 * time_constant  in   s  0..1e5 (0 excluded)
 * step           in   K  0..1000        size of the change
 * allowed_error  in   K  1e-6..1000
 * settling_time  out  s                 0 when the step is within the allowed error
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for one time constant
 * source    exponential approach: tau ln(step / error)
 */
VTX_API vtx_status vtx_settling_time(double time_constant, double step, double allowed_error, double *settling_time);

/* Share of the change that a probe has not yet followed: exp(-time / constant). The unsettled_share of a vtx_probe.
 *
 * time_constant  in   s  0..1e5 (0 excluded)
 * elapsed_time   in   s  0..1e9
 * share          out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for one time constant
 * source    exponential approach
 */
VTX_API vtx_status vtx_unsettled_share(double time_constant, double elapsed_time, double *share);

/* Share of the stem's foot temperature in a reading: 1 / cosh(m L), m^2 = 4 h / (k D). The stem_share of a vtx_probe.
 *
 * coefficient   in   W/(m2 K)  0.1..1e5
 * diameter      in   m         1e-5..0.1
 * conductivity  in   W/(m K)   0.01..500   of the stem: 16 stainless steel
 * immersion     in   m         0..1        length of the stem in the stream
 * share         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the coefficient; a solid rod without heat from its tip
 * note      1.3 % at m L = 5; immersing 10..15 diameters is common practice
 * source    fin of constant cross-section
 */
VTX_API vtx_status vtx_stem_share(double coefficient, double diameter, double conductivity, double immersion, double *share);

/* How a probe sits in the stream. Every share is 0 and every speed is 0 by default: then the reading is the stagnation temperature. */
typedef struct vtx_probe {
    double air_speed;                   /* m/s  0..1000    at the probe; default 0 */
    double air_speed_uncertainty;       /* m/s  0..1000    standard; default 0 */
    double recovery_factor;             /* -    0..1       default 0.77 */
    double recovery_uncertainty;        /* -    0..1       standard; default 0.058 */
    double heat_capacity;               /* J/(kg K)  100..20000   default 1006 */
    double entrained_share;             /* -    0..0.9     room air in what reaches the probe; 0 inside a jet's core */
    double entrained_uncertainty;       /* -    0..0.5     standard; default 0 */
    double room_temperature;            /* K    150..400   default 293.15 */
    double room_uncertainty;            /* K    0..100     standard; default 1 */
    double stem_share;                  /* -    0..0.9     vtx_stem_share; default 0 */
    double stem_uncertainty;            /* -    0..0.5     standard, of the share; default 0 */
    double stem_temperature;            /* K    150..1000  of the stem's foot: wall or holder; default 293.15 */
    double stem_temperature_uncertainty;/* K    0..100     standard; default 1 */
    double unsettled_share;             /* -    0..0.9     vtx_unsettled_share; default 0 */
    double unsettled_uncertainty;       /* -    0..0.5     standard, of the share; default 0 */
    double start_temperature;           /* K    150..1000  that the probe came from; default 293.15 */
    double reserved[4];                 /* -    0 */
} vtx_probe;

/* A probe that reads true: no speed, no shares; recovery factor of a bare probe.
 *
 * probe     out  -
 *
 * status    OK, BAD_ARGUMENT
 * source    recovery factor: vtx_recovery_factor
 */
VTX_API vtx_status vtx_probe_init(vtx_probe *probe);

/* A corrected temperature and what its uncertainty consists of. */
typedef struct vtx_corrected_temperature {
    double temperature;              /* K  stagnation temperature of the stream */
    double uncertainty;              /* K  standard */
    double settling_correction;      /* K  added to the reading for what it had not yet followed */
    double stem_correction;          /* K  added for heat along the stem */
    double recovery_correction;      /* K  added for the speed that the probe does not recover */
    double entrainment_correction;   /* K  added for room air in the stream */
    double from_reading;             /* K  standard uncertainty of the result by the reading */
    double from_settling;            /* K  the same by the unsettled share */
    double from_stem;                /* K  the same by stem share and foot temperature */
    double from_recovery;            /* K  the same by speed and recovery factor */
    double from_entrainment;         /* K  the same by entrained share and room temperature */
} vtx_corrected_temperature;

/* Stagnation temperature of a stream from a probe's reading.
 *
 * probe        in   -
 * reading      in   K  100..1000
 * uncertainty  in   K  0..100      standard, of the reading
 * corrected    out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a corrected temperature outside 50..1500 K)
 * accuracy  first order in the uncertainties; corrections undo each other's order exactly: settling, stem, recovery, entrainment
 * note      frost on a probe pins its reading near 0 degC until it is gone: no correction undoes that
 * caution   a cold jet and its outlet hurt skin and eyes; shut off and vent before a probe is placed
 * source    T0 = T + (1 - r) V^2 / (2 cp) and mixing shares; uncertainty by JCGM 100:2008
 */
VTX_API vtx_status vtx_probe_correct(const vtx_probe *probe, double reading, double uncertainty,
                                     vtx_corrected_temperature *corrected);

/* What a probe reads in a stream: the inverse of vtx_probe_correct.
 *
 * probe        in   -
 * temperature  in   K  100..1000   stagnation temperature of the stream
 * reading      out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  vtx_probe_correct gives the temperature back within 1e-11 K (shares to 0.5)
 * source    as vtx_probe_correct
 */
VTX_API vtx_status vtx_probe_reading(const vtx_probe *probe, double temperature, double *reading);

/* A hot outlet's temperature without the heat its end loses to the room on the way to the thermometer.
 *
 * hot_temperature          in   K     200..1000   read at the outlet
 * uncertainty              in   K     0..100      standard
 * ambient_temperature      in   K     150..400
 * conductance              in   W/K   0..100      of the hot end; about 0.1..0.3 for a bare tube of 0.2 m in still air
 * conductance_uncertainty  in   W/K   0..100      standard
 * hot_mass_flow            in   kg/s  0..100 (0 excluded)
 * heat_capacity            in   J/(kg K)  100..20000
 * corrected                out  K
 * corrected_uncertainty    out  K     standard; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a loss of more than 90 % of the difference to the room, or a result outside 50..1500 K)
 * accuracy  that of the conductance; first order in the uncertainties
 * caution   the hot end can burn skin
 * source    exchanger with one stream: the difference to the room falls with exp(-conductance / (m cp))
 */
VTX_API vtx_status vtx_hot_end_correct(double hot_temperature, double uncertainty, double ambient_temperature, double conductance,
                                       double conductance_uncertainty, double hot_mass_flow, double heat_capacity,
                                       double *corrected, double *corrected_uncertainty);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_dynamic_temperature_batch(size_t n, const double *air_speed, ptrdiff_t air_speed_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, double *rise, ptrdiff_t rise_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_recovery_factor_batch(size_t n, int32_t probe, const double *prandtl, ptrdiff_t prandtl_stride,
        double *factor, ptrdiff_t factor_stride, double *uncertainty, ptrdiff_t uncertainty_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_thermometer_uncertainty_batch(size_t n, int32_t thermometer, const double *temperature,
        ptrdiff_t temperature_stride, double *uncertainty, ptrdiff_t uncertainty_stride, double *limit,
        ptrdiff_t limit_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_probe_coefficient_batch(size_t n, const double *air_speed, ptrdiff_t air_speed_stride,
        const double *diameter, ptrdiff_t diameter_stride, const double *kinematic_viscosity,
        ptrdiff_t kinematic_viscosity_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_probe_time_constant_batch(size_t n, int32_t shape, const double *volumetric_heat_capacity,
        ptrdiff_t volumetric_heat_capacity_stride, const double *diameter, ptrdiff_t diameter_stride,
        const double *coefficient, ptrdiff_t coefficient_stride, double *time_constant,
        ptrdiff_t time_constant_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_settling_time_batch(size_t n, const double *time_constant, ptrdiff_t time_constant_stride,
        const double *step, ptrdiff_t step_stride, const double *allowed_error, ptrdiff_t allowed_error_stride,
        double *settling_time, ptrdiff_t settling_time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_unsettled_share_batch(size_t n, const double *time_constant, ptrdiff_t time_constant_stride,
        const double *elapsed_time, ptrdiff_t elapsed_time_stride, double *share, ptrdiff_t share_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_stem_share_batch(size_t n, const double *coefficient, ptrdiff_t coefficient_stride,
        const double *diameter, ptrdiff_t diameter_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *immersion, ptrdiff_t immersion_stride, double *share, ptrdiff_t share_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_probe_correct_batch(size_t n, const vtx_probe *probe, ptrdiff_t probe_stride, const double *reading,
        ptrdiff_t reading_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        vtx_corrected_temperature *corrected, ptrdiff_t corrected_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_probe_reading_batch(size_t n, const vtx_probe *probe, ptrdiff_t probe_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *reading, ptrdiff_t reading_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_hot_end_correct_batch(size_t n, const double *hot_temperature, ptrdiff_t hot_temperature_stride,
        const double *uncertainty, ptrdiff_t uncertainty_stride, const double *ambient_temperature,
        ptrdiff_t ambient_temperature_stride, const double *conductance, ptrdiff_t conductance_stride,
        const double *conductance_uncertainty, ptrdiff_t conductance_uncertainty_stride, const double *hot_mass_flow,
        ptrdiff_t hot_mass_flow_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        double *corrected, ptrdiff_t corrected_stride, double *corrected_uncertainty,
        ptrdiff_t corrected_uncertainty_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
