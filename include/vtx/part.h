/* A part as one mass: how fast it cools, what it settles at, what it costs in heat flow, and what the temperature does to it.
 *
 * Not the temperature inside a thick or badly conducting part, nor a tool that is heated at its tip.
 * See also: transient.h for temperatures inside, tool.h for shanks and faces under load, material.h for properties. */
#ifndef VTX_PART_H
#define VTX_PART_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Plain bodies. WALL, CYLINDER and SPHERE for heat inside a body; all five for the air outside (convection.h). */
enum vtx_body {
    VTX_BODY_WALL = 433,           /* a plate; outside: a vertical face */
    VTX_BODY_CYLINDER = 434,       /* a long bar; outside: lying or across the stream */
    VTX_BODY_SPHERE = 435,
    VTX_BODY_PLATE_OUTWARD = 436,  /* horizontal face from which the air moves away: warm facing up, cold facing down */
    VTX_BODY_PLATE_INWARD = 437    /* horizontal face that holds the air: warm facing down, cold facing up */
};

/* A part to be cooled. */
typedef struct vtx_part {
    double mass;           /* kg, above 0..1e6 */
    double heat_capacity;  /* J/(kg K), 50..10000 */
    double area;           /* m2, above 0..1e5, surface that meets the air */
    double conductivity;   /* W/(m K), 0.01..3000 */
    double half_thickness; /* m, 1e-6..5: half the wall, or the radius; the whole wall when one side is insulated */
    double heat_load;      /* W, 0..1e7, heat that keeps entering the part */
    double reserved[4];    /* 0 */
    int32_t body;          /* VTX_BODY_WALL, VTX_BODY_CYLINDER or VTX_BODY_SPHERE */
    int32_t reserved_code; /* 0 */
} vtx_part;

/* A part at a moment. */
typedef struct vtx_part_state {
    double temperature;         /* K, mean of the part */
    double surface_temperature; /* K, where it meets the air */
    double steady_temperature;  /* K, mean when nothing changes any more */
    double time_constant;       /* s */
    double biot;                /* -, film coefficient times volume over area and conductivity */
    double heat_flow;           /* W, from part to air at this moment; negative when the air warms it */
    double mean_heat_flow;      /* W, from part to air, averaged from the start */
    int32_t lumped;             /* 1 when one temperature describes the part: Biot number below 0.1 */
    int32_t advisories;
} vtx_part_state;

/* How long a part takes. */
typedef struct vtx_cooling_time {
    double time;                   /* s */
    double time_constant;          /* s */
    double biot;                   /* - */
    double attainable_temperature; /* K, the steady temperature: reached only after endless time */
    int32_t lumped;                /* 1 when the Biot number is below 0.1 */
    int32_t advisories;
} vtx_cooling_time;

/* What must be blown at a part. */
typedef struct vtx_needed_film {
    double film_coefficient;       /* W/(m2 K), needed on the whole area; 0 when the part gets there without */
    double mean_heat_flow;         /* W, to be carried away on the average */
    double biot;                   /* -, at that coefficient */
    double attainable_temperature; /* K, reached in this time with an endless coefficient: heat must still leave the inside */
    int32_t lumped;                /* 1 when the Biot number is below 0.1 */
    int32_t advisories;
} vtx_needed_film;

/* Distance of a temperature from what a material bears. */
typedef struct vtx_softening {
    double loaded_limit;  /* K, under load: deflection temperature at 1.8 MPa, low end; tools: service limit */
    double loaded_margin; /* K, limit less temperature: negative is too hot */
    double light_limit;   /* K, lightly clamped: glass transition less 20 K (amorphous), deflection temperature at 0.45 MPa (crystalline) */
    double light_margin;  /* K */
    int32_t exceeded;     /* 0 none, 1 one, 2 both of the limits that are known */
    int32_t advisories;
} vtx_softening;

/* Sets a part to a wall without heat load. Mass, heat_capacity, area, conductivity and half_thickness are left 0: they must be set.
 *
 * part  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_part_init(vtx_part *part);

/* Heat flow that takes a mass from one temperature to another in a time.
 *
 * mass               in   kg        0..1e6
 * heat_capacity      in   J/(kg K)  50..10000
 * start_temperature  in   K         20..3000
 * end_temperature    in   K         20..3000
 * time               in   s         1e-3..1e9    cycle time
 * heat_flow          out  W         mean; negative when the mass is warmed
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    first law
 * note      the cooler must give more: its air leaves the part before it is as warm as the part
 */
VTX_API vtx_status vtx_cooling_duty(double mass, double heat_capacity, double start_temperature, double end_temperature, double time,
                                    double *heat_flow);

/* Biot number: resistance inside over resistance outside. Below 0.1 one temperature describes the part.
 *
 * film_coefficient  in   W/(m2 K)  0..1e6
 * length            in   m         1e-7..100    volume over area, or what the method asks for
 * conductivity      in   W/(m K)   0.01..3000   of the part
 * biot              out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    definition; the limit 0.1 in Incropera, Fundamentals of Heat and Mass Transfer, chapter 5
 */
VTX_API vtx_status vtx_biot_number(double film_coefficient, double length, double conductivity, double *biot);

/* Time constant of a body of one temperature.
 *
 * mass              in   kg         1e-12..1e6
 * heat_capacity     in   J/(kg K)   50..10000
 * film_coefficient  in   W/(m2 K)   0.1..1e6
 * area              in   m2         1e-12..1e5
 * time_constant     out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Incropera, Fundamentals of Heat and Mass Transfer, equation 5.7
 */
VTX_API vtx_status vtx_time_constant(double mass, double heat_capacity, double film_coefficient, double area, double *time_constant);

/* Temperature of a part after a time in an air stream, heat load included.
 *
 * part               in              as described at vtx_part
 * film_coefficient   in   W/(m2 K)   0.1..1e5
 * air_temperature    in   K          50..2000   for a jet its adiabatic wall temperature at the part
 * start_temperature  in   K          50..3000
 * time               in   s          0..1e9
 * state              out             as described at vtx_part_state
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  NOT_LUMPED at a Biot number of 0.1 and above: temperatures differ within the part, see transient.h
 * accuracy  exact for one mass. The resistance from mean to surface (half_thickness/3 in a wall, /4 in a cylinder, /5 in a sphere, over
 *           conductivity) is in series with the film: with it the decay rate is within 1.5 % of the exact first eigenvalue at a Biot
 *           number (on half_thickness) of 1 and 9 to 14 % too fast at 5
 * source    Incropera, Fundamentals of Heat and Mass Transfer, 5.1 to 5.3; inside resistance from memory, checked against the eigenvalues
 */
VTX_API vtx_status vtx_part_temperature(const vtx_part *part, double film_coefficient, double air_temperature, double start_temperature,
                                        double time, vtx_part_state *state);

/* Time a part takes to a wanted temperature.
 *
 * part                in             as described at vtx_part
 * film_coefficient    in   W/(m2 K)  0.1..1e5
 * air_temperature     in   K         50..2000
 * start_temperature   in   K         50..3000
 * wanted_temperature  in   K         50..3000
 * cooling             out            as described at vtx_cooling_time
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the part settles before it gets there: attainable_temperature)
 * advisory  NOT_LUMPED as in vtx_part_temperature
 * accuracy  inverse of vtx_part_temperature to rounding
 * source    as vtx_part_temperature
 */
VTX_API vtx_status vtx_part_cooling_time(const vtx_part *part, double film_coefficient, double air_temperature, double start_temperature,
                                         double wanted_temperature, vtx_cooling_time *cooling);

/* Film coefficient that brings a part to a wanted temperature within a time.
 *
 * part                in             as described at vtx_part
 * air_temperature     in   K         50..2000
 * start_temperature   in   K         50..3000   above air_temperature when there is a heat load
 * wanted_temperature  in   K         50..3000
 * time                in   s         1e-3..1e9
 * needed              out            as described at vtx_needed_film
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (more than 1e9 W/(m2 K); a warming part with a heat load), NO_SOLUTION (colder than the
 *           air, or heat cannot leave the inside in this time: attainable_temperature), NOT_CONVERGED
 * advisory  NOT_LUMPED as in vtx_part_temperature, OUTSIDE_CORRELATION above 2000 W/(m2 K), more than an air jet brings
 * accuracy  inverse of vtx_part_temperature within 1e-9 K
 * source    as vtx_part_temperature
 */
VTX_API vtx_status vtx_part_film_coefficient(const vtx_part *part, double air_temperature, double start_temperature,
                                             double wanted_temperature, double time, vtx_needed_film *needed);

/* Temperature of a surface that gets a steady heat flow and gives it to air and surroundings.
 *
 * heat_flux                 in   W/m2      0..1e8
 * film_coefficient          in   W/(m2 K)  0.1..1e6
 * air_temperature           in   K         50..2000
 * emissivity                in   -         0..1
 * surroundings_temperature  in   K         50..2000   of the walls it sees
 * temperature               out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (above 5000 K)
 * accuracy  root of the balance within 1e-12 relative
 * source    Incropera, Fundamentals of Heat and Mass Transfer, example 5.2: convection and grey radiation to large surroundings
 */
VTX_API vtx_status vtx_face_temperature(double heat_flux, double film_coefficient, double air_temperature, double emissivity,
                                        double surroundings_temperature, double *temperature);

/* Film coefficient that holds a surface at a wanted temperature under a steady heat flow, radiation not counted.
 *
 * heat_flux           in   W/m2      0..1e8
 * air_temperature     in   K         50..2000
 * wanted_temperature  in   K         50..3000
 * film_coefficient    out  W/(m2 K)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (more than 1e9), NO_SOLUTION (not warmer than the air)
 * source    Newton's law of cooling
 */
VTX_API vtx_status vtx_face_film_coefficient(double heat_flux, double air_temperature, double wanted_temperature,
                                             double *film_coefficient);

/* Time a thin part takes from one temperature to another by convection and radiation together.
 *
 * areal_heat_capacity       in   J/(m2 K)  1..1e9    mass times heat capacity over area
 * film_coefficient          in   W/(m2 K)  0.1..1e5
 * air_temperature           in   K         50..2000
 * emissivity                in   -         0..1
 * surroundings_temperature  in   K         50..2000
 * start_temperature         in   K         50..2000
 * wanted_temperature        in   K         50..2000
 * time                      out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the part settles before it gets there: vtx_face_temperature at zero flux)
 * accuracy  1e-9 relative of the integral
 * source    Incropera, Fundamentals of Heat and Mass Transfer, 5.3
 */
VTX_API vtx_status vtx_radiating_part_time(double areal_heat_capacity, double film_coefficient, double air_temperature, double emissivity,
                                           double surroundings_temperature, double start_temperature, double wanted_temperature,
                                           double *time);

/* Change of length with temperature.
 *
 * expansion           in   1/K  0..1e-3     linear coefficient
 * length              in   m    0..1000
 * temperature_change  in   K    -2000..2000
 * growth              out  m    negative when it shrinks
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  5 % over 100 K: the coefficient itself grows with temperature
 * source    definition
 */
VTX_API vtx_status vtx_thermal_growth(double expansion, double length, double temperature_change, double *growth);

/* How far a plastic or a tool is from softening.
 *
 * material     in   -  a vtx_material: a plastic, carbide or high-speed steel
 * temperature  in   K  50..2000   hottest place
 * softening    out     as described at vtx_softening; a limit that is not known is NaN
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (materials without such a limit)
 * advisory  FIELD_UNAVAILABLE when a limit is NaN
 * accuracy  +-10 K with the grade
 * source    material.h; glass transition less 20 K is common practice from memory
 * note      burrs and smearing in cutting start well below these limits; the melting point is no limit of use
 */
VTX_API vtx_status vtx_softening_margin(int32_t material, double temperature, vtx_softening *softening);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_cooling_duty_batch(size_t n, const double *mass, ptrdiff_t mass_stride, const double *heat_capacity,
        ptrdiff_t heat_capacity_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *end_temperature, ptrdiff_t end_temperature_stride, const double *time, ptrdiff_t time_stride,
        double *heat_flow, ptrdiff_t heat_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_biot_number_batch(size_t n, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *length, ptrdiff_t length_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        double *biot, ptrdiff_t biot_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_time_constant_batch(size_t n, const double *mass, ptrdiff_t mass_stride, const double *heat_capacity,
        ptrdiff_t heat_capacity_stride, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *area, ptrdiff_t area_stride, double *time_constant, ptrdiff_t time_constant_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_part_temperature_batch(size_t n, const vtx_part *part, ptrdiff_t part_stride,
        const double *film_coefficient, ptrdiff_t film_coefficient_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *time, ptrdiff_t time_stride, vtx_part_state *state, ptrdiff_t state_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_part_cooling_time_batch(size_t n, const vtx_part *part, ptrdiff_t part_stride,
        const double *film_coefficient, ptrdiff_t film_coefficient_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *wanted_temperature, ptrdiff_t wanted_temperature_stride, vtx_cooling_time *cooling,
        ptrdiff_t cooling_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_part_film_coefficient_batch(size_t n, const vtx_part *part, ptrdiff_t part_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        const double *time, ptrdiff_t time_stride, vtx_needed_film *needed, ptrdiff_t needed_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_face_temperature_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *film_coefficient, ptrdiff_t film_coefficient_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *emissivity, ptrdiff_t emissivity_stride,
        const double *surroundings_temperature, ptrdiff_t surroundings_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_face_film_coefficient_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *wanted_temperature,
        ptrdiff_t wanted_temperature_stride, double *film_coefficient, ptrdiff_t film_coefficient_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_radiating_part_time_batch(size_t n, const double *areal_heat_capacity,
        ptrdiff_t areal_heat_capacity_stride, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *emissivity,
        ptrdiff_t emissivity_stride, const double *surroundings_temperature,
        ptrdiff_t surroundings_temperature_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        double *time, ptrdiff_t time_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_thermal_growth_batch(size_t n, const double *expansion, ptrdiff_t expansion_stride,
        const double *length, ptrdiff_t length_stride, const double *temperature_change,
        ptrdiff_t temperature_change_stride, double *growth, ptrdiff_t growth_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_softening_margin_batch(size_t n, int32_t material, const double *temperature,
        ptrdiff_t temperature_stride, vtx_softening *softening, ptrdiff_t softening_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
