/* Temperatures inside a body that is cooled or warmed: plates, bars, balls, thick pieces, and two bodies that touch.
 *
 * One body, even start, constant surroundings. Not parts of one temperature with a heat load.
 * See also: part.h for those, tool.h for heat that enters at a tip, touch.h for skin. */
#ifndef VTX_TRANSIENT_H
#define VTX_TRANSIENT_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Temperatures as shares of the first difference: 1 at the start, 0 when all is as cold as the air. A box or short bar: the product of the
 * shares of the walls and bars that cut it out. */
typedef struct vtx_transient {
    double share;         /* -, at the position asked for */
    double centre_share;  /* -, in the middle, or at the insulated face of a wall */
    double surface_share; /* - */
    double mean_share;    /* -, of the heat still to leave */
    double eigenvalue;    /* -, first root */
    double coefficient;   /* -, first coefficient */
} vtx_transient;

/* A body after a time. */
typedef struct vtx_body_state {
    double temperature;         /* K, at the position asked for */
    double centre_temperature;  /* K */
    double surface_temperature; /* K */
    double mean_temperature;    /* K */
    double biot;                /* -, film coefficient times half_thickness over conductivity */
    double fourier;             /* -, diffusivity times time over half_thickness squared */
} vtx_body_state;

/* First eigenvalue and coefficient of a body in a stream.
 *
 * body         in   -  VTX_BODY_WALL, VTX_BODY_CYLINDER or VTX_BODY_SPHERE
 * biot         in   -  1e-6..1e6   film coefficient times half thickness or radius over conductivity
 * eigenvalue   out  -
 * coefficient  out  -  may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-12 relative
 * source    Incropera, Fundamentals of Heat and Mass Transfer, 5.5 and 5.6: z tan z, z J1/J0, 1 - z cot z = Biot number
 */
VTX_API vtx_status vtx_transient_eigenvalue(int32_t body, double biot, double *eigenvalue, double *coefficient);

/* Temperature shares in a body, one term of the series.
 *
 * body       in   -  VTX_BODY_WALL, VTX_BODY_CYLINDER or VTX_BODY_SPHERE
 * biot       in   -  1e-6..1e6
 * fourier    in   -  0.2..1e9   shorter times: as a thick piece, below
 * position   in   -  0..1       from the middle to the surface
 * transient  out     as described at vtx_transient
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  of the one term against the whole series: 2 % at fourier 0.2, 1e-3 at 0.4
 * source    Incropera, Fundamentals of Heat and Mass Transfer, 5.5 and 5.6
 */
VTX_API vtx_status vtx_transient_shares(int32_t body, double biot, double fourier, double position, vtx_transient *transient);

/* Fourier number at which a place in a body has come down to a share.
 *
 * body      in   -  VTX_BODY_WALL, VTX_BODY_CYLINDER or VTX_BODY_SPHERE
 * biot      in   -  1e-6..1e6
 * position  in   -  0..1
 * share     in   -  1e-12..1
 * fourier   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (reached before 0.2, or after 1e9)
 * accuracy  inverse of vtx_transient_shares to rounding
 * source    as vtx_transient_shares
 * note      do not interpolate printed tables of the eigenvalue linearly: a textbook does and is 4 % off in time
 */
VTX_API vtx_status vtx_transient_fourier(int32_t body, double biot, double position, double share, double *fourier);

/* Temperatures in a body after a time in a stream.
 *
 * body               in   -         VTX_BODY_WALL, VTX_BODY_CYLINDER or VTX_BODY_SPHERE
 * half_thickness     in   m         1e-6..10     half the wall, or the radius; the whole wall when one side is insulated
 * conductivity       in   W/(m K)   0.01..3000
 * diffusivity        in   m2/s      1e-9..2e-3
 * film_coefficient   in   W/(m2 K)  0.1..1e6
 * air_temperature    in   K         50..3000
 * start_temperature  in   K         50..3000
 * position           in   -         0..1         from the middle to the surface
 * time               in   s         1e-6..1e10   at least 0.2 in the Fourier number
 * state              out            as described at vtx_body_state
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_transient_shares
 * source    as vtx_transient_shares
 */
VTX_API vtx_status vtx_body_temperatures(int32_t body, double half_thickness, double conductivity, double diffusivity,
                                         double film_coefficient, double air_temperature, double start_temperature, double position,
                                         double time, vtx_body_state *state);

/* Time at which a place in a body has a wanted temperature.
 *
 * body                in   -         VTX_BODY_WALL, VTX_BODY_CYLINDER or VTX_BODY_SPHERE
 * half_thickness      in   m         1e-6..10
 * conductivity        in   W/(m K)   0.01..3000
 * diffusivity         in   m2/s      1e-9..2e-3
 * film_coefficient    in   W/(m2 K)  0.1..1e6
 * air_temperature     in   K         50..3000
 * start_temperature   in   K         50..3000
 * wanted_temperature  in   K         50..3000
 * position            in   -         0..1
 * time                out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (reached before Fourier number 0.2), NO_SOLUTION (not between start and air)
 * accuracy  inverse of vtx_body_temperatures to rounding
 * source    as vtx_transient_shares
 */
VTX_API vtx_status vtx_body_time(int32_t body, double half_thickness, double conductivity, double diffusivity, double film_coefficient,
                                 double air_temperature, double start_temperature, double wanted_temperature, double position,
                                 double *time);

/* Temperature under the surface of a thick piece whose surface jumps to a temperature.
 *
 * diffusivity          in   m2/s  1e-9..2e-3
 * depth                in   m     0..100        below half the thickness
 * time                 in   s     1e-9..1e10    Fourier number on the thickness below 0.05
 * start_temperature    in   K     50..3000
 * surface_temperature  in   K     50..3000
 * temperature          out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for a half space, 1e-14 relative
 * source    Incropera, Fundamentals of Heat and Mass Transfer, equation 5.60
 */
VTX_API vtx_status vtx_depth_temperature_fixed_surface(double diffusivity, double depth, double time, double start_temperature,
                                                       double surface_temperature, double *temperature);

/* Depth to which a temperature has come under a surface that jumped to a temperature.
 *
 * diffusivity          in   m2/s  1e-9..2e-3
 * time                 in   s     1e-9..1e10
 * start_temperature    in   K     50..3000
 * surface_temperature  in   K     50..3000
 * wanted_temperature   in   K     50..3000   strictly between the two, or that of the surface
 * depth                out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (not between start and surface)
 * accuracy  inverse of vtx_depth_temperature_fixed_surface within 1e-12 relative
 * source    as vtx_depth_temperature_fixed_surface
 */
VTX_API vtx_status vtx_penetration_depth(double diffusivity, double time, double start_temperature, double surface_temperature,
                                         double wanted_temperature, double *depth);

/* Temperature under the surface of a thick piece under a steady heat flow.
 *
 * conductivity       in   W/(m K)  0.01..3000
 * diffusivity        in   m2/s     1e-9..2e-3
 * heat_flux          in   W/m2     -1e9..1e9   into the piece
 * depth              in   m        0..100
 * time               in   s        1e-9..1e10
 * start_temperature  in   K        50..3000
 * temperature        out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when it leaves 0..1e5 K)
 * accuracy  exact for a half space
 * source    Incropera, Fundamentals of Heat and Mass Transfer, equation 5.62
 */
VTX_API vtx_status vtx_depth_temperature_fixed_flux(double conductivity, double diffusivity, double heat_flux, double depth,
                                                    double time, double start_temperature, double *temperature);

/* Temperature under the surface of a thick piece in a stream.
 *
 * conductivity       in   W/(m K)   0.01..3000
 * diffusivity        in   m2/s      1e-9..2e-3
 * film_coefficient   in   W/(m2 K)  0..1e7
 * depth              in   m         0..100
 * time               in   s         1e-9..1e10
 * start_temperature  in   K         50..3000
 * air_temperature    in   K         50..3000
 * temperature        out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for a half space, 1e-12 relative; no overflow for large coefficients or times
 * source    Incropera, Fundamentals of Heat and Mass Transfer, equation 5.63, with the scaled complementary error function
 */
VTX_API vtx_status vtx_depth_temperature_in_stream(double conductivity, double diffusivity, double film_coefficient, double depth,
                                                   double time, double start_temperature, double air_temperature, double *temperature);

/* Time after which a depth of a thick piece in a stream has a wanted temperature.
 *
 * conductivity        in   W/(m K)   0.01..3000
 * diffusivity         in   m2/s      1e-9..2e-3
 * film_coefficient    in   W/(m2 K)  1e-3..1e7
 * depth               in   m         0..100
 * start_temperature   in   K         50..3000
 * air_temperature     in   K         50..3000
 * wanted_temperature  in   K         50..3000
 * time                out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (before 1e-9 or after 1e10 s), NO_SOLUTION (not between start and air), NOT_CONVERGED
 * accuracy  inverse of vtx_depth_temperature_in_stream within 1e-10 relative
 * source    as vtx_depth_temperature_in_stream
 * note      charts of the textbooks are read 10 to 20 % wrong
 */
VTX_API vtx_status vtx_depth_time_in_stream(double conductivity, double diffusivity, double film_coefficient, double depth,
                                            double start_temperature, double air_temperature, double wanted_temperature, double *time);

/* Temperature under the surface of a thick piece after a pulse of heat.
 *
 * volumetric_heat_capacity  in   J/(m3 K)  1e4..1e8     density times heat capacity
 * diffusivity               in   m2/s      1e-9..2e-3
 * energy                    in   J/m2      0..1e10      on the surface, at once
 * depth                     in   m         0..100
 * time                      in   s         1e-9..1e10
 * start_temperature         in   K         50..3000
 * temperature               out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also above 1e5 K)
 * accuracy  exact for a half space
 * source    Incropera, Fundamentals of Heat and Mass Transfer, 5.8
 */
VTX_API vtx_status vtx_depth_temperature_pulse(double volumetric_heat_capacity, double diffusivity, double energy, double depth,
                                               double time, double start_temperature, double *temperature);

/* Thermal diffusivity.
 *
 * conductivity   in   W/(m K)    0.01..3000
 * density        in   kg/m3      1..30000
 * heat_capacity  in   J/(kg K)   50..10000
 * diffusivity    out  m2/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    definition
 */
VTX_API vtx_status vtx_thermal_diffusivity(double conductivity, double density, double heat_capacity, double *diffusivity);

/* Thermal effusivity: how firmly a body holds its temperature when touched.
 *
 * conductivity  in   W/(m K)             0.01..3000
 * diffusivity   in   m2/s                1e-9..2e-3
 * effusivity    out  W s^0.5/(m2 K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    definition: conductivity over the square root of diffusivity
 */
VTX_API vtx_status vtx_thermal_effusivity(double conductivity, double diffusivity, double *effusivity);

/* Temperature where two bodies touch.
 *
 * first_effusivity    in   W s^0.5/(m2 K)  1..1e5
 * first_temperature   in   K               20..3000
 * second_effusivity   in   W s^0.5/(m2 K)  1..1e5
 * second_temperature  in   K               20..3000
 * temperature         out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for perfect contact of thick bodies; a real contact has a resistance, so each side stays nearer to its own temperature
 * source    Incropera, Fundamentals of Heat and Mass Transfer, equation 5.66
 */
VTX_API vtx_status vtx_contact_temperature(double first_effusivity, double first_temperature, double second_effusivity,
                                           double second_temperature, double *temperature);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_transient_eigenvalue_batch(size_t n, int32_t body, const double *biot, ptrdiff_t biot_stride,
        double *eigenvalue, ptrdiff_t eigenvalue_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_transient_shares_batch(size_t n, int32_t body, const double *biot, ptrdiff_t biot_stride,
        const double *fourier, ptrdiff_t fourier_stride, const double *position, ptrdiff_t position_stride,
        vtx_transient *transient, ptrdiff_t transient_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_transient_fourier_batch(size_t n, int32_t body, const double *biot, ptrdiff_t biot_stride,
        const double *position, ptrdiff_t position_stride, const double *share, ptrdiff_t share_stride,
        double *fourier, ptrdiff_t fourier_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_body_temperatures_batch(size_t n, int32_t body, const double *half_thickness,
        ptrdiff_t half_thickness_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, const double *film_coefficient,
        ptrdiff_t film_coefficient_stride, const double *air_temperature, ptrdiff_t air_temperature_stride,
        const double *start_temperature, ptrdiff_t start_temperature_stride, const double *position,
        ptrdiff_t position_stride, const double *time, ptrdiff_t time_stride, vtx_body_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_body_time_batch(size_t n, int32_t body, const double *half_thickness, ptrdiff_t half_thickness_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        const double *position, ptrdiff_t position_stride, double *time, ptrdiff_t time_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_depth_temperature_fixed_surface_batch(size_t n, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *depth, ptrdiff_t depth_stride, const double *time,
        ptrdiff_t time_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_penetration_depth_batch(size_t n, const double *diffusivity, ptrdiff_t diffusivity_stride,
        const double *time, ptrdiff_t time_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *wanted_temperature, ptrdiff_t wanted_temperature_stride, double *depth, ptrdiff_t depth_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_depth_temperature_fixed_flux_batch(size_t n, const double *conductivity,
        ptrdiff_t conductivity_stride, const double *diffusivity, ptrdiff_t diffusivity_stride,
        const double *heat_flux, ptrdiff_t heat_flux_stride, const double *depth, ptrdiff_t depth_stride,
        const double *time, ptrdiff_t time_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, double *temperature, ptrdiff_t temperature_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_depth_temperature_in_stream_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, const double *film_coefficient,
        ptrdiff_t film_coefficient_stride, const double *depth, ptrdiff_t depth_stride, const double *time,
        ptrdiff_t time_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_depth_time_in_stream_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, const double *film_coefficient,
        ptrdiff_t film_coefficient_stride, const double *depth, ptrdiff_t depth_stride,
        const double *start_temperature, ptrdiff_t start_temperature_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        double *time, ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_depth_temperature_pulse_batch(size_t n, const double *volumetric_heat_capacity,
        ptrdiff_t volumetric_heat_capacity_stride, const double *diffusivity, ptrdiff_t diffusivity_stride,
        const double *energy, ptrdiff_t energy_stride, const double *depth, ptrdiff_t depth_stride,
        const double *time, ptrdiff_t time_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, double *temperature, ptrdiff_t temperature_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_thermal_diffusivity_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *density, ptrdiff_t density_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        double *diffusivity, ptrdiff_t diffusivity_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_thermal_effusivity_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, double *effusivity, ptrdiff_t effusivity_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_contact_temperature_batch(size_t n, const double *first_effusivity, ptrdiff_t first_effusivity_stride,
        const double *first_temperature, ptrdiff_t first_temperature_stride, const double *second_effusivity,
        ptrdiff_t second_effusivity_stride, const double *second_temperature, ptrdiff_t second_temperature_stride,
        double *temperature, ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
