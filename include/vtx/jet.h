/* Free round air jets: what leaves an outlet, and what is left of it at a distance.
 *
 * Not heat transfer at a surface (impingement.h), not noise (noise.h).
 * See also: restriction.h for the mass flow of an outlet, dead_end.h for what a blocked one does.
 *
 * The air is a perfect gas, cp/cv 1.4. Temperatures are total ones: what a face or a thermometer in the stream feels. A jet that
 * leaves a choked outlet above ambient pressure is replaced by the one it expands to: same mass flow, momentum and energy. */
#ifndef VTX_JET_H
#define VTX_JET_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* One outlet, the air that leaves it and the room it blows into. */
typedef struct vtx_jet {
    double mass_flow;           /* kg/s  1e-8..10 */
    double diameter;            /* m     1e-4..0.2, of the outlet */
    double temperature;         /* K     100..600, total */
    double ambient_pressure;    /* Pa    2e4..2e6 */
    double ambient_temperature; /* K     200..500 */
    double velocity_decay;      /* -     4..8, B of Uc/U0 = B de/x; 5.8 to 6.1 measured */
    double temperature_decay;   /* -     3..8, the same of the temperature difference; 4.8 to 5.1 */
    double entrainment;         /* -     0.1..0.6, coefficient of the mass flow drawn in; 0.32 */
    double reserved[4];         /* zero */
} vtx_jet;

/* The jet at its outlet, and expanded to ambient pressure. */
typedef struct vtx_jet_outlet {
    double outlet_pressure;     /* Pa    static, in the outlet; above ambient when under-expanded */
    double outlet_velocity;     /* m/s   in the outlet */
    double outlet_mach;         /* -     at most 1 */
    double thrust;              /* N     on whatever holds the outlet; also the momentum of the jet */
    double velocity;            /* m/s   expanded to ambient pressure; equal to the outlet's unless under-expanded */
    double temperature;         /* K     static, expanded */
    double density;             /* kg/m3 expanded */
    double diameter;            /* m     expanded */
    double equivalent_diameter; /* m     de, of a jet of ambient density with the same momentum and velocity */
    double core_length;         /* m     up to which the centreline keeps the outlet's velocity */
    double reynolds;            /* -     of the expanded jet */
    int32_t advisories;         /* CHOKED, UNDEREXPANDED_JET, OUTSIDE_CORRELATION (Reynolds number below 25000) */
    int32_t reserved;           /* 0 */
} vtx_jet_outlet;

/* The jet at a distance, on its centreline. */
typedef struct vtx_jet_state {
    double velocity;            /* m/s   on the centreline */
    double temperature;         /* K     total, on the centreline */
    double static_temperature;  /* K     on the centreline */
    double impact_pressure;     /* Pa    above ambient, on a face square to the jet; blows chips away */
    double mass_flow;           /* kg/s  with the air drawn in */
    double half_width;          /* m     radius of half the centreline velocity, of the Gaussian profile that keeps the momentum */
    int32_t advisories;         /* those of the outlet; OUTSIDE_CORRELATION also beyond 100 equivalent diameters */
    int32_t reserved;           /* 0 */
} vtx_jet_state;

/* 1 g/s at 263.15 K from 5 mm into 101325 Pa and 293.15 K; decay 6.0 and 5.0, entrainment 0.32.
 *
 * jet       out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_jet_init(vtx_jet *jet);

/* What leaves the outlet.
 *
 * jet       in   -
 * outlet    out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  CHOKED, UNDEREXPANDED_JET, OUTSIDE_CORRELATION
 * accuracy  mass, momentum and energy closed to rounding; a real outlet's contraction and profile are not in it
 * source    perfect-gas nozzle flow; expansion to ambient pressure after Birch, Hughes and Swaffield 1987 and Yueceil and Oetuegen 2002
 *           (from memory); density scaling Thring and Newby 1953 (from memory)
 * caution   compressed air throws chips and harms eyes and ears: guards, eye protection; never towards skin
 */
VTX_API vtx_status vtx_jet_outlet_at(const vtx_jet *jet, vtx_jet_outlet *outlet);

/* What is left of the jet at a distance.
 *
 * jet       in   -
 * distance  in   m   0..100   from the outlet, along the axis
 * state     out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  CHOKED, UNDEREXPANDED_JET, OUTSIDE_CORRELATION
 * accuracy  velocity and temperature about 10 % beyond the core with the measured constants; no walls, no draught, no swirl
 * source    decay constants of Hussein et al. 1994, Panchapakesan and Lumley 1993; entrainment Ricou and Spalding 1961 (constants from
 *           memory); stagnation by NACA Report 1135
 * caution   as vtx_jet_outlet_at
 */
VTX_API vtx_status vtx_jet_at(const vtx_jet *jet, double distance, vtx_jet_state *state);

/* Distance at which the centreline has come to a temperature on its way to that of the room.
 *
 * jet                     in   -
 * temperature             in   K   50..1000   total
 * distance                out  m   the end of the core if it is the jet's own temperature
 * attainable_temperature  out  K   the nearest one the jet has somewhere, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (beyond 100 m), NO_SOLUTION (not between the jet's temperature and the room's, or equal to the room's)
 * accuracy  exact inverse of vtx_jet_at, closed form
 * source    as vtx_jet_at
 */
VTX_API vtx_status vtx_jet_distance_for_temperature(const vtx_jet *jet, double temperature, double *distance, double *attainable_temperature);

/* Distance at which the centreline has slowed down to a velocity.
 *
 * jet                  in   -
 * velocity             in   m/s  1e-3..1500
 * distance             out  m    the end of the core if it is the outlet's velocity
 * attainable_velocity  out  m/s  the highest one, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (beyond 100 m), NO_SOLUTION (faster than the jet)
 * accuracy  exact inverse of vtx_jet_at, closed form
 * source    as vtx_jet_at
 */
VTX_API vtx_status vtx_jet_distance_for_velocity(const vtx_jet *jet, double velocity, double *distance, double *attainable_velocity);

/* Largest distance at which the jet still presses on a face with an impact pressure.
 *
 * jet                         in   -
 * impact_pressure             in   Pa  1e-3..1e7   above ambient, on the axis
 * distance                    out  m
 * attainable_impact_pressure  out  Pa  the highest one, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (beyond 100 m), NO_SOLUTION (more than the jet has), NOT_CONVERGED
 * accuracy  inverse of vtx_jet_at, 1e-12 relative in the distance
 * source    as vtx_jet_at
 */
VTX_API vtx_status vtx_jet_distance_for_impact_pressure(const vtx_jet *jet, double impact_pressure, double *distance,
                                                        double *attainable_impact_pressure);

/* Largest sensible distance: as far as a share of the temperature difference to the room is kept and an impact pressure is reached.
 *
 * jet                in   -
 * temperature_share  in   -   0..1         wanted share of the difference, 0.5 for a working jet; 0 and above 1 are BAD_ARGUMENT
 * impact_pressure    in   Pa  1e-3..1e7    wanted at the work, above ambient; some hundred pascals to keep dry chips moving
 * distance           out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the jet has not that impact pressure), NOT_CONVERGED
 * accuracy  as vtx_jet_distance_for_temperature and vtx_jet_distance_for_impact_pressure
 * source    as vtx_jet_at; the pressure that moves chips is common practice, no source
 */
VTX_API vtx_status vtx_jet_working_distance(const vtx_jet *jet, double temperature_share, double impact_pressure, double *distance);

/* Force on a flat face square to the jet.
 *
 * jet        in   -
 * distance   in   m   0..100
 * face_area  in   m2  1e-8..100   centred on the axis
 * force      out  N   at most the thrust
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as the Gaussian profile and constant momentum allow, about 10 %
 * source    momentum within a radius of the Gaussian profile of vtx_jet_at
 * caution   small parts fly: hold them
 */
VTX_API vtx_status vtx_jet_impact_force(const vtx_jet *jet, double distance, double face_area, double *force);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_jet_outlet_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, vtx_jet_outlet *outlet,
        ptrdiff_t outlet_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_jet_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, vtx_jet_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_jet_distance_for_temperature_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_temperature, ptrdiff_t attainable_temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_jet_distance_for_velocity_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *velocity, ptrdiff_t velocity_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_velocity, ptrdiff_t attainable_velocity_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_jet_distance_for_impact_pressure_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *impact_pressure, ptrdiff_t impact_pressure_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_impact_pressure, ptrdiff_t attainable_impact_pressure_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_jet_working_distance_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *temperature_share, ptrdiff_t temperature_share_stride, const double *impact_pressure,
        ptrdiff_t impact_pressure_stride, double *distance, ptrdiff_t distance_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_jet_impact_force_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride, double *force,
        ptrdiff_t force_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
