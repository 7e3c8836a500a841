/* Surfaces in a humid room: will a nozzle, tube or workpiece sweat or frost, and how fast.
 *
 * Not the water inside the cold air: freezing.h. Frost here is what room air leaves on an outside surface.
 * See also: cold_tube.h for tubes and their covers, touch.h for hands, moist_air.h for humidities. */
#ifndef VTX_SURFACE_H
#define VTX_SURFACE_H

#include <vtx/moist_air.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What a surface does in humid air. */
enum vtx_surface_verdict {
    VTX_SURFACE_DRY = 438,      /* nothing collects */
    VTX_SURFACE_SWEATING = 439, /* below the dew point, not below 0 degC: water */
    VTX_SURFACE_FROSTING = 440  /* below 0 degC and below the frost point: frost */
};

/* A room. */
typedef struct vtx_room {
    double pressure;                 /* Pa, 3e4..2e5; default 101325 */
    double temperature;              /* K, 233.15..343.15; default 293.15 */
    double relative_humidity;        /* 0..1, over liquid; default 0.5 */
    double air_speed;                /* m/s, 0..100, draught; default 0 */
    double emissivity;               /* 0..1, of the surface; default 0.9, not metal */
    double surroundings_temperature; /* K, 200..400, of the walls; default 0: as the air */
    double reserved[4];              /* 0 */
    int32_t model;                   /* VTX_AIR_REAL (default) or VTX_AIR_IDEAL */
    int32_t reserved_code;           /* 0 */
} vtx_room;

/* Where a surface stands against the room's dew and frost point. */
typedef struct vtx_surface_state {
    double dew_point;   /* K, over liquid; NaN when the air is dry or has it below 233.15 K */
    double frost_point; /* K, over ice; NaN when the air is dry or has its dew point above 273.16 K */
    double limit;       /* K, surface temperature below which water or frost collects: dew point, below 273.16 K the frost point; NaN dry air */
    double margin;      /* K, surface temperature less limit: negative collects; NaN dry air */
    int32_t verdict;    /* vtx_surface_verdict */
    int32_t advisories;
} vtx_surface_state;

/* Water or frost that collects on a surface, per area. */
typedef struct vtx_deposition {
    double mass_flux;             /* kg/(m2 s), 0 when dry; nothing evaporates here */
    double latent_flux;           /* W/m2, heat it brings */
    double convective_flux;       /* W/m2, from air to surface; negative from a warm surface */
    double mass_transfer_coefficient; /* m/s */
    double lewis;                 /* -, thermal diffusivity over that of vapour */
    double growth_low;            /* m/s, thickness of water, or of dense frost of 400 kg/m3 */
    double growth_high;           /* m/s, thickness of water, or of light frost of 100 kg/m3 */
    double limit;                 /* K, as in vtx_surface_state */
    int32_t verdict;              /* vtx_surface_verdict */
    int32_t advisories;
} vtx_deposition;

/* Sets a still room of 20 degC and 50 % at the standard atmosphere.
 *
 * room  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_room_init(vtx_room *room);

/* Will a surface of a temperature sweat or frost in a room?
 *
 * room                 in       as described at vtx_room
 * surface_temperature  in   K   110..600
 * state                out      as described at vtx_surface_state
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  SWEATING, FROSTING, FIELD_UNAVAILABLE when a field is NaN
 * accuracy  that of dew and frost point of moist_air.h; between dew and frost point below 0 degC the frost point decides
 * source    moist_air.h
 * note      keep 0.5 to 1 K of margin: a room is not everywhere as its sensor says
 * caution   a sweating tube drips on electrics; a frosting one loses its frost when the air is shut off
 */
VTX_API vtx_status vtx_judge_surface(const vtx_room *room, double surface_temperature, vtx_surface_state *state);

/* How fast water or frost collects on a surface in a room.
 *
 * room                    in             as described at vtx_room
 * surface_temperature     in   K         110..600
 * convective_coefficient  in   W/(m2 K)  0..1e4    without radiation: vtx_room_coefficient
 * deposition              out            as described at vtx_deposition
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (film outside air.h)
 * advisory  SWEATING, FROSTING, FIELD_UNAVAILABLE when limit is NaN
 * accuracy  20 %, that of the coefficient; near saturated air mist forms in front of the surface and frost is 10 to 20 % less. The first
 *           hour only: frost grows slower as its own surface warms
 * source    Chilton and Colburn: h_m = h/(density cp Le^(2/3)) with the film's air; diffusivity of vapour as in Cengel, example 14.10;
 *           vapour densities both at the film temperature, so that water begins to collect at the dew point itself; latent heat by
 *           Clausius and Clapeyron on the curves of water.h (0.2 % to 30 degC); densities of frost 100 to 400 kg/m3 from memory
 */
VTX_API vtx_status vtx_deposition_rate(const vtx_room *room, double surface_temperature, double convective_coefficient,
                                       vtx_deposition *deposition);

/* Diffusivity of water vapour in air.
 *
 * pressure     in   Pa    1e3..5e6
 * temperature  in   K     150..500
 * diffusivity  out  m2/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  a few per cent near room temperature (from memory)
 * source    1.87e-10 T^2.072 over the pressure in standard atmospheres, Cengel, Heat and Mass Transfer, example 14.10
 */
VTX_API vtx_status vtx_vapour_diffusivity(double pressure, double temperature, double *diffusivity);

/* Mass transfer coefficient from a heat transfer coefficient.
 *
 * convective_coefficient  in   W/(m2 K)   0..1e5     without radiation
 * density                 in   kg/m3      1e-3..100  of the air
 * heat_capacity           in   J/(kg K)   500..5000
 * lewis                   in   -          0.1..10    0.86 to 0.90 for vapour in room air
 * coefficient             out  m/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Chilton and Colburn 1934: h/(density cp Le^(2/3))
 */
VTX_API vtx_status vtx_mass_transfer_coefficient(double convective_coefficient, double density, double heat_capacity, double lewis,
                                                 double *coefficient);

/* Vapour that reaches a surface.
 *
 * coefficient                in   m/s   0..100   of mass transfer
 * air_vapour_pressure        in   Pa    0..1e5    partial pressure of vapour in the air
 * air_temperature            in   K     150..500
 * surface_vapour_pressure    in   Pa    0..1e5    saturation at the surface
 * surface_temperature        in   K     110..500
 * mass_flux                  out  kg/(m2 s)       negative when it dries
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    difference of vapour densities, ideal vapour
 */
VTX_API vtx_status vtx_vapour_flux(double coefficient, double air_vapour_pressure, double air_temperature,
                                   double surface_vapour_pressure, double surface_temperature, double *mass_flux);

/* Heat that a flow of vapour brings to a surface together with convection and radiation.
 *
 * convective_coefficient  in   W/(m2 K)    0..1e5
 * radiative_coefficient   in   W/(m2 K)    0..1e3
 * air_temperature         in   K           150..500
 * surface_temperature     in   K           110..600
 * mass_flux               in   kg/(m2 s)   -10..10
 * latent                  in   J/kg        0..3e6         latent heat
 * heat_flux               out  W/m2        into the surface
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    sum of the three
 */
VTX_API vtx_status vtx_wet_surface_flux(double convective_coefficient, double radiative_coefficient, double air_temperature,
                                        double surface_temperature, double mass_flux, double latent, double *heat_flux);

/* How much colder than the air a wetted surface gets that takes its heat from the air alone.
 *
 * pressure                 in   Pa         1e3..5e6
 * surface_vapour_pressure  in   Pa         0..pressure   saturation at the surface
 * air_vapour_pressure      in   Pa         0..pressure
 * latent                   in   J/kg       0..3e6         latent heat
 * heat_capacity            in   J/(kg K)   500..5000     of the air
 * lewis                    in   -          0.1..10
 * drop                     out  K          negative when it is warmed by condensation
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  within 0.4 K of the wet bulb of moist_air.h, 10 to 40 degC, 20 to 80 %
 * source    Cengel, Heat and Mass Transfer, example 14.12
 */
VTX_API vtx_status vtx_evaporation_drop(double pressure, double surface_vapour_pressure, double air_vapour_pressure, double latent,
                                        double heat_capacity, double lewis, double *drop);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_judge_surface_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, vtx_surface_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_deposition_rate_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *convective_coefficient, ptrdiff_t convective_coefficient_stride, vtx_deposition *deposition,
        ptrdiff_t deposition_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_vapour_diffusivity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *diffusivity, ptrdiff_t diffusivity_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_mass_transfer_coefficient_batch(size_t n, const double *convective_coefficient,
        ptrdiff_t convective_coefficient_stride, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *lewis, ptrdiff_t lewis_stride,
        double *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_vapour_flux_batch(size_t n, const double *coefficient, ptrdiff_t coefficient_stride,
        const double *air_vapour_pressure, ptrdiff_t air_vapour_pressure_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *surface_vapour_pressure,
        ptrdiff_t surface_vapour_pressure_stride, const double *surface_temperature,
        ptrdiff_t surface_temperature_stride, double *mass_flux, ptrdiff_t mass_flux_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_wet_surface_flux_batch(size_t n, const double *convective_coefficient,
        ptrdiff_t convective_coefficient_stride, const double *radiative_coefficient,
        ptrdiff_t radiative_coefficient_stride, const double *air_temperature, ptrdiff_t air_temperature_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, const double *mass_flux,
        ptrdiff_t mass_flux_stride, const double *latent, ptrdiff_t latent_stride, double *heat_flux,
        ptrdiff_t heat_flux_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_evaporation_drop_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *surface_vapour_pressure, ptrdiff_t surface_vapour_pressure_stride,
        const double *air_vapour_pressure, ptrdiff_t air_vapour_pressure_stride, const double *latent,
        ptrdiff_t latent_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *lewis,
        ptrdiff_t lewis_stride, double *drop, ptrdiff_t drop_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
