/* Tubes and walls with a cover: heat through them, the temperature of the outside, the thickness that keeps it where it should be.
 *
 * Here the outside coefficient is given. Not whether the surface sweats: surface.h finds the coefficient from the room and judges.
 * See also: material.h for conductivities of covers, convection.h for coefficients. */
#ifndef VTX_INSULATION_H
#define VTX_INSULATION_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A round tube, bare or covered. */
typedef struct vtx_covered_tube {
    double inside_diameter;     /* m, 1e-4..2 */
    double outside_diameter;    /* m, above inside_diameter, to 3, of the bare tube */
    double wall_conductivity;   /* W/(m K), 0.01..3000 */
    double inside_coefficient;  /* W/(m2 K), 1..1e6, between gas and wall; default 1e6: the wall is as cold as the gas, the safe side */
    double cover_thickness;     /* m, 0..1; 0 bare */
    double cover_conductivity;  /* W/(m K), 0.001..100; default 0.04, an aged elastomeric foam */
    double reserved[4];         /* 0 */
} vtx_covered_tube;

/* What goes through a tube's wall and cover. Heat is counted inwards: what the gas in the tube takes up. */
typedef struct vtx_tube_heat {
    double heat_gain;           /* W/m, from the room to the gas; negative when the gas is warmer */
    double surface_temperature; /* K, outside */
    double tube_temperature;    /* K, outside of the bare tube, under the cover */
    double cover_difference;    /* K, outside of the cover less its inside */
    double bare_heat_gain;      /* W/m, without the cover, same outside coefficient */
    double resistance;          /* K m/W, in all */
    double outside_resistance;  /* K m/W, of the air film alone */
    double critical_radius;     /* m, conductivity of the cover over the coefficient: a thinner tube takes up more heat with a thin cover */
    int32_t cover_adds_heat;    /* 1 when this cover brings more heat in than none */
    int32_t advisories;
} vtx_tube_heat;

/* Sets no cover, an aged foam should one be added, and gas and wall as one. Diameters and wall_conductivity are left 0: they must be set.
 *
 * tube  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_covered_tube_init(vtx_covered_tube *tube);

/* Heat through a tube and its cover and the temperatures on the way.
 *
 * tube                 in             as described at vtx_covered_tube
 * inside_temperature   in   K         20..2000   of the gas
 * outside_coefficient  in   W/(m2 K)  0.01..1e5  on the outside of the cover, radiation included
 * outside_temperature  in   K         20..2000   of the room
 * heat                 out            as described at vtx_tube_heat
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for steady heat and even conductivities
 * source    resistances in series, Incropera, Fundamentals of Heat and Mass Transfer, 3.3
 * note      the surface of a cold tube gets warmer with any cover, even with one that brings more heat in
 */
VTX_API vtx_status vtx_covered_tube_heat(const vtx_covered_tube *tube, double inside_temperature, double outside_coefficient,
                                         double outside_temperature, vtx_tube_heat *heat);

/* Temperature under a cover around a wire or rod that gives off heat.
 *
 * heat_per_length      in   W/m       -1e6..1e6
 * inner_radius         in   m         1e-6..10
 * outer_radius         in   m         inner_radius..20
 * conductivity         in   W/(m K)   0.001..1000   of the cover
 * outside_coefficient  in   W/(m2 K)  0.01..1e5
 * outside_temperature  in   K         20..2000
 * temperature          out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when it leaves 1..1e5 K)
 * source    Incropera, Fundamentals of Heat and Mass Transfer, 3.3
 */
VTX_API vtx_status vtx_cover_inside_temperature(double heat_per_length, double inner_radius, double outer_radius, double conductivity,
                                                double outside_coefficient, double outside_temperature, double *temperature);

/* Radius of a cylinder at which a cover lets most heat through.
 *
 * conductivity         in   W/(m K)   0.001..1000
 * outside_coefficient  in   W/(m2 K)  0.01..1e5
 * radius               out  m         a plane wall has none, a sphere twice this
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Incropera, Fundamentals of Heat and Mass Transfer, example 3.5
 */
VTX_API vtx_status vtx_critical_radius(double conductivity, double outside_coefficient, double *radius);

/* Thickness of a cover on a cylinder that brings its surface to a wanted temperature.
 *
 * radius               in   m         1e-5..10      of the tube outside
 * conductivity         in   W/(m K)   0.001..100
 * tube_temperature     in   K         20..2000
 * outside_coefficient  in   W/(m2 K)  0.01..1e5     take the low end: still air, the emissivity of the jacket
 * outside_temperature  in   K         20..2000
 * wanted_temperature   in   K         20..2000      of the surface
 * thickness            out  m         0 when the bare tube is there already
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (thicker than 1e6 radii), NO_SOLUTION (at or beyond the room's temperature)
 * accuracy  1e-14 relative
 * source    r2 ln(r2/r1) = (k/h)(Ts - Ti)/(Ta - Ts) of ISO 12241, from memory; r2 = r1 exp(W) with Lambert's function
 * note      cover, ends and supports must be vapour tight, or the cover fills with water and ice
 */
VTX_API vtx_status vtx_insulation_thickness(double radius, double conductivity, double tube_temperature, double outside_coefficient,
                                            double outside_temperature, double wanted_temperature, double *thickness);

/* The same on a plane wall.
 *
 * conductivity         in   W/(m K)   0.001..100
 * wall_temperature     in   K         20..2000
 * outside_coefficient  in   W/(m2 K)  0.01..1e5
 * outside_temperature  in   K         20..2000
 * wanted_temperature   in   K         20..2000
 * thickness            out  m         0 when the bare wall is there already
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (thicker than 1e6 m), NO_SOLUTION (at or beyond the room's temperature)
 * source    as vtx_insulation_thickness, plane
 */
VTX_API vtx_status vtx_wall_insulation_thickness(double conductivity, double wall_temperature, double outside_coefficient,
                                                 double outside_temperature, double wanted_temperature, double *thickness);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_covered_tube_heat_batch(size_t n, const vtx_covered_tube *tube, ptrdiff_t tube_stride,
        const double *inside_temperature, ptrdiff_t inside_temperature_stride, const double *outside_coefficient,
        ptrdiff_t outside_coefficient_stride, const double *outside_temperature,
        ptrdiff_t outside_temperature_stride, vtx_tube_heat *heat, ptrdiff_t heat_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_cover_inside_temperature_batch(size_t n, const double *heat_per_length,
        ptrdiff_t heat_per_length_stride, const double *inner_radius, ptrdiff_t inner_radius_stride,
        const double *outer_radius, ptrdiff_t outer_radius_stride, const double *conductivity,
        ptrdiff_t conductivity_stride, const double *outside_coefficient, ptrdiff_t outside_coefficient_stride,
        const double *outside_temperature, ptrdiff_t outside_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_critical_radius_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *outside_coefficient, ptrdiff_t outside_coefficient_stride, double *radius,
        ptrdiff_t radius_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_insulation_thickness_batch(size_t n, const double *radius, ptrdiff_t radius_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *tube_temperature,
        ptrdiff_t tube_temperature_stride, const double *outside_coefficient, ptrdiff_t outside_coefficient_stride,
        const double *outside_temperature, ptrdiff_t outside_temperature_stride, const double *wanted_temperature,
        ptrdiff_t wanted_temperature_stride, double *thickness, ptrdiff_t thickness_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_wall_insulation_thickness_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *wall_temperature, ptrdiff_t wall_temperature_stride, const double *outside_coefficient,
        ptrdiff_t outside_coefficient_stride, const double *outside_temperature,
        ptrdiff_t outside_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        double *thickness, ptrdiff_t thickness_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
