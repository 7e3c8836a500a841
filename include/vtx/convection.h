/* Heat transfer between a surface and room air or a stream: natural and forced convection, radiation, all together.
 *
 * Not the jet that hits a face (jet.h) and not what condenses (surface.h). Nusselt numbers are on the length named with each; air
 * properties belong to the film temperature, halfway between surface and air, unless said otherwise.
 * See also: insulation.h and surface.h, which use these coefficients. */
#ifndef VTX_CONVECTION_H
#define VTX_CONVECTION_H

#include <vtx/part.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Heat transfer coefficient of a surface in a room and what it is made of. */
typedef struct vtx_surface_coefficient {
    double total;              /* W/(m2 K), convective and radiative: for surroundings as warm as the air */
    double convective;         /* W/(m2 K), natural and forced together, on the difference to the air */
    double radiative;          /* W/(m2 K), on the difference to the surroundings */
    double heat_flux;          /* W/m2, by both into the surface; negative when it gives heat */
    double natural_nusselt;    /* - */
    double forced_nusselt;     /* -, its limit of conduction in still air */
    double rayleigh;           /* - */
    double reynolds;           /* - */
    double prandtl;            /* -, of the film */
    double film_conductivity;  /* W/(m K) */
    double film_diffusivity;   /* m2/s */
    double film_density;       /* kg/m3 */
    double film_heat_capacity; /* J/(kg K) */
    int32_t advisories;
    int32_t reserved_code;     /* 0 */
} vtx_surface_coefficient;

/* Rayleigh number: buoyancy over friction and conduction.
 *
 * gravity                 in   m/s2   0.1..30       9.80665 on Earth by convention
 * expansion               in   1/K    1e-5..0.05    of the fluid; 1/temperature for a gas
 * temperature_difference  in   K      -3000..3000   its amount counts
 * length                  in   m      1e-6..100
 * kinematic_viscosity     in   m2/s   1e-9..1e-1
 * diffusivity             in   m2/s   1e-9..1e-1
 * rayleigh                out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    definition
 */
VTX_API vtx_status vtx_rayleigh_number(double gravity, double expansion, double temperature_difference, double length,
                                       double kinematic_viscosity, double diffusivity, double *rayleigh);

/* Nusselt number of a horizontal cylinder in still air, on its diameter.
 *
 * rayleigh  in   -  0..1e12
 * prandtl   in   -  0.01..1000
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  10 to 20 % of measurements; draughts of a shop matter more
 * source    Churchill and Chu 1975, horizontal cylinder
 */
VTX_API vtx_status vtx_nusselt_horizontal_cylinder(double rayleigh, double prandtl, double *nusselt);

/* Nusselt number of a vertical plate in still air, on its height.
 *
 * rayleigh  in   -  0..1e12
 * prandtl   in   -  0.01..1000
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  10 to 20 % of measurements
 * source    Churchill and Chu 1975, vertical plate
 * note      a vertical cylinder counts as a plate from a diameter of 35 heights over the fourth root of the Grashof number (from
 *           memory); a thinner one gives and takes more
 */
VTX_API vtx_status vtx_nusselt_vertical_plate(double rayleigh, double prandtl, double *nusselt);

/* The same for laminar flow only, where it is slightly better.
 *
 * rayleigh  in   -  0..1e9
 * prandtl   in   -  0.01..1000
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  10 % of measurements
 * source    Churchill and Chu 1975, vertical plate, laminar
 */
VTX_API vtx_status vtx_nusselt_vertical_plate_laminar(double rayleigh, double prandtl, double *nusselt);

/* Nusselt number of a sphere in still air, on its diameter.
 *
 * rayleigh  in   -  0..1e11
 * prandtl   in   -  0.7..1000
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  10 to 20 % of measurements
 * source    Churchill 1983: 2 + 0.589 Ra^(1/4)/b^(4/9) (1 + 7.44e-8 Ra/b^(16/9))^(1/12), b = 1 + (0.469/Pr)^(9/16)
 */
VTX_API vtx_status vtx_nusselt_sphere_natural(double rayleigh, double prandtl, double *nusselt);

/* Nusselt number of a horizontal face from which the air moves away: warm facing up or cold facing down. On area over perimeter.
 *
 * rayleigh  in   -  0..1e11    data from 1e4 on
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  20 % of measurements; the laminar law holds to its crossing with the turbulent one at 4.74e6, 6 % above the laminar law's
 *           own end at 1e7, so that the result is continuous
 * source    0.54 Ra^(1/4), 0.15 Ra^(1/3), Incropera, Fundamentals of Heat and Mass Transfer, equations 9.30 and 9.31
 */
VTX_API vtx_status vtx_nusselt_plate_outward(double rayleigh, double *nusselt);

/* The laminar law of the same alone.
 *
 * rayleigh  in   -  0..2e7    data from 1e4 to 1e7; books use it a little beyond
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  20 % of measurements
 * source    0.54 Ra^(1/4), Incropera, Fundamentals of Heat and Mass Transfer, equation 9.30
 */
VTX_API vtx_status vtx_nusselt_plate_outward_laminar(double rayleigh, double *nusselt);

/* Nusselt number of a horizontal face that holds the air: warm facing down or cold facing up. On area over perimeter.
 *
 * rayleigh  in   -  0..1e10    data from 1e5 on
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  20 % of measurements
 * source    0.27 Ra^(1/4), Incropera, Fundamentals of Heat and Mass Transfer, equation 9.32
 */
VTX_API vtx_status vtx_nusselt_plate_inward(double rayleigh, double *nusselt);

/* Nusselt number of a cylinder across a stream, on its diameter.
 *
 * reynolds  in   -  0.001..1e7    reynolds times prandtl at least 0.2
 * prandtl   in   -  0.01..1000
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  20 % of measurements; may be 20 % low from Reynolds number 1e4 to 4e5 (from memory)
 * source    Churchill and Bernstein 1977
 */
VTX_API vtx_status vtx_nusselt_cross_flow(double reynolds, double prandtl, double *nusselt);

/* The same by a power law, with the properties of the stream and a factor for those at the surface.
 *
 * reynolds         in   -  1e3..2e5    properties of the stream
 * prandtl          in   -  0.1..10
 * surface_prandtl  in   -  0.1..10     at the surface's temperature
 * nusselt          out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  20 % of measurements
 * source    Zukauskas, 0.26 Re^0.6 Pr^0.37 (Pr/Pr_s)^(1/4), Incropera equation 7.53
 */
VTX_API vtx_status vtx_nusselt_cross_flow_power(double reynolds, double prandtl, double surface_prandtl, double *nusselt);

/* Nusselt number of a sphere in a stream, on its diameter, with the properties of the stream.
 *
 * reynolds         in   -  0..1e6       data from 3.5 to 7.6e4
 * prandtl          in   -  0.01..1000   data from 0.71 to 380
 * viscosity_ratio  in   -  0.1..10      of the stream over at the surface
 * nusselt          out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  30 % of measurements
 * source    Whitaker 1972, Incropera equation 7.56; ranges from memory
 */
VTX_API vtx_status vtx_nusselt_sphere_in_stream(double reynolds, double prandtl, double viscosity_ratio, double *nusselt);

/* Nusselt number of a flat plate along a stream, mean over its length.
 *
 * reynolds  in   -  0..1e8
 * prandtl   in   -  0.6..60
 * nusselt   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  15 % of measurements
 * source    0.664 Re^(1/2) Pr^(1/3) to 5e5, (0.037 Re^(4/5) - 871) Pr^(1/3) above; Incropera equations 7.30 and 7.38, from memory. The
 *           871 is 871.32 here, so that both meet
 */
VTX_API vtx_status vtx_nusselt_plate_in_stream(double reynolds, double prandtl, double *nusselt);

/* Nusselt numbers of a forced and a natural flow together, when they help each other and when they oppose.
 *
 * forced     in   -  0..1e6
 * natural    in   -  0..1e6
 * assisting  out  -
 * opposing   out  -  may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  matters for a Grashof number of 0.1 to 10 Reynolds numbers squared
 * source    cubes added or subtracted, Incropera, Fundamentals of Heat and Mass Transfer, 9.9, from memory
 */
VTX_API vtx_status vtx_nusselt_mixed(double forced, double natural, double *assisting, double *opposing);

/* Radiation of a small grey surface in large surroundings, as a coefficient on their difference.
 *
 * emissivity                in   -         0..1
 * surface_temperature       in   K         1..3000
 * surroundings_temperature  in   K         1..3000
 * coefficient               out  W/(m2 K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for a small grey surface
 * source    Incropera, Fundamentals of Heat and Mass Transfer, equation 1.9
 * note      emissivity 0.9 to 0.95 of paint, plastic, rubber, oxide, water, frost; 0.05 to 0.15 bright aluminium; 0.1 to 0.3 bright
 *           steel; 0.2 to 0.3 galvanised (from memory)
 */
VTX_API vtx_status vtx_radiation_coefficient(double emissivity, double surface_temperature, double surroundings_temperature,
                                             double *coefficient);

/* Coefficient of a large horizontal pipe indoors in still air, radiation included, by a straight line.
 *
 * finish_constant         in   W/(m2 K)  0..20    2.5 bright aluminium, 3.1 oxidised, 3.2 stainless, 4.0 galvanised, 5.3 dusty
 *                                                 galvanised, 8.5 not metal
 * temperature_difference  in   K         0..60
 * coefficient             out  W/(m2 K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  for diameters of 0.25 to 1 m; tubes of a few millimetres take twice as much: vtx_room_coefficient
 * source    simplified form ascribed to ISO 12241, from memory
 */
VTX_API vtx_status vtx_horizontal_pipe_coefficient(double finish_constant, double temperature_difference, double *coefficient);

/* The same for a vertical pipe or wall.
 *
 * finish_constant         in   W/(m2 K)  0..20   2.7, 3.3, 3.4, 4.2, 5.5, 8.7 for the same finishes
 * temperature_difference  in   K         0..60
 * coefficient             out  W/(m2 K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_horizontal_pipe_coefficient
 * source    as vtx_horizontal_pipe_coefficient
 */
VTX_API vtx_status vtx_vertical_pipe_coefficient(double finish_constant, double temperature_difference, double *coefficient);

/* Coefficient of a surface in a room: natural convection, draught and radiation.
 *
 * body                      in   -         a vtx_body
 * pressure                  in   Pa        1e4..1e6
 * surface_temperature       in   K         110..600
 * air_temperature           in   K         200..400
 * air_speed                 in   m/s       0..100      across a cylinder, along a plate; a shop has 0.2 to 0.5
 * length                    in   m         1e-4..20    diameter, height of a wall, area over perimeter of a horizontal plate
 * emissivity                in   -         0..1
 * surroundings_temperature  in   K         110..600    of the walls it sees
 * coefficient               out            as described at vtx_surface_coefficient
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  OUTSIDE_CORRELATION outside the Rayleigh or Reynolds numbers of the correlations' data
 * accuracy  20 %. For sweating take still air and the least emissivity, for heat gain a draught and the highest
 * source    the correlations above; draught and buoyancy by the cubes of what exceeds conduction (Churchill 1977, from
 *           memory); dry air of air.h at the film temperature, 9.80665 m/s2.
 *           The stream along a horizontal plate is taken over four lengths, as of a square plate
 * note      totals indoors in still air (from memory): 8 to 10 flat and not metal, 5 to 6 bright metal, 20 to 35 with a fan. Small tubes
 *           take more: 12 mm at -15 in 24 degC has 8.7 by convection alone
 */
VTX_API vtx_status vtx_room_coefficient(int32_t body, double pressure, double surface_temperature, double air_temperature,
                                        double air_speed, double length, double emissivity, double surroundings_temperature,
                                        vtx_surface_coefficient *coefficient);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_rayleigh_number_batch(size_t n, const double *gravity, ptrdiff_t gravity_stride,
        const double *expansion, ptrdiff_t expansion_stride, const double *temperature_difference,
        ptrdiff_t temperature_difference_stride, const double *length, ptrdiff_t length_stride,
        const double *kinematic_viscosity, ptrdiff_t kinematic_viscosity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, double *rayleigh, ptrdiff_t rayleigh_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nusselt_horizontal_cylinder_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_nusselt_vertical_plate_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_nusselt_vertical_plate_laminar_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_nusselt_sphere_natural_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_nusselt_plate_outward_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nusselt_plate_outward_laminar_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nusselt_plate_inward_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nusselt_cross_flow_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_nusselt_cross_flow_power_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *surface_prandtl,
        ptrdiff_t surface_prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nusselt_sphere_in_stream_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *viscosity_ratio,
        ptrdiff_t viscosity_ratio_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_nusselt_plate_in_stream_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_nusselt_mixed_batch(size_t n, const double *forced, ptrdiff_t forced_stride, const double *natural,
        ptrdiff_t natural_stride, double *assisting, ptrdiff_t assisting_stride, double *opposing,
        ptrdiff_t opposing_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_radiation_coefficient_batch(size_t n, const double *emissivity, ptrdiff_t emissivity_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *surroundings_temperature, ptrdiff_t surroundings_temperature_stride, double *coefficient,
        ptrdiff_t coefficient_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_horizontal_pipe_coefficient_batch(size_t n, const double *finish_constant,
        ptrdiff_t finish_constant_stride, const double *temperature_difference,
        ptrdiff_t temperature_difference_stride, double *coefficient, ptrdiff_t coefficient_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_vertical_pipe_coefficient_batch(size_t n, const double *finish_constant,
        ptrdiff_t finish_constant_stride, const double *temperature_difference,
        ptrdiff_t temperature_difference_stride, double *coefficient, ptrdiff_t coefficient_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_room_coefficient_batch(size_t n, int32_t body, const double *pressure, ptrdiff_t pressure_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *air_speed, ptrdiff_t air_speed_stride, const double *length,
        ptrdiff_t length_stride, const double *emissivity, ptrdiff_t emissivity_stride,
        const double *surroundings_temperature, ptrdiff_t surroundings_temperature_stride,
        vtx_surface_coefficient *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
