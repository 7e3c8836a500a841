/* Cold tubes in a humid room: the temperature outside, bare or covered, what collects there, and the cover that keeps it dry.
 *
 * The outside coefficient follows from the room; insulation.h takes it as given.
 * See also: surface.h for any surface of known temperature, material.h for the conductivity of covers. */
#ifndef VTX_COLD_TUBE_H
#define VTX_COLD_TUBE_H

#include <vtx/insulation.h>
#include <vtx/surface.h>

#ifdef __cplusplus
extern "C" {
#endif

/* The outside of a cold tube in a room. */
typedef struct vtx_tube_surface {
    double surface_temperature; /* K, of tube or cover, warmed by what collects on it */
    double dry_temperature;     /* K, as if nothing collected */
    double dew_point;           /* K, of the room, over liquid, or NaN */
    double frost_point;         /* K, of the room, over ice, or NaN */
    double limit;               /* K, surface temperature below which water or frost collects, or NaN */
    double margin;              /* K, dry temperature less limit; NaN dry air */
    double coefficient;         /* W/(m2 K), convective and radiative, at the surface temperature */
    double convective;          /* W/(m2 K) */
    double heat_gain;           /* W/m, taken up by the gas, latent heat included */
    double latent_gain;         /* W/m, of it by water or frost */
    double deposit;             /* kg/(m s), water or frost that collects */
    int32_t verdict;            /* vtx_surface_verdict */
    int32_t advisories;
} vtx_tube_surface;

/* A cover that keeps a cold tube dry. */
typedef struct vtx_dry_cover {
    double thickness;              /* m, 0 when the bare tube stays dry */
    double surface_temperature;    /* K, of the cover: the limit plus the margin */
    double coefficient;            /* W/(m2 K), on the cover */
    double heat_gain;              /* W/m, with this cover */
    double limit;                  /* K, dew or frost point of the room */
    double attainable_temperature; /* K, warmest surface that 1 m of cover gives */
    int32_t bare_verdict;          /* vtx_surface_verdict of the tube without a cover */
    int32_t advisories;
} vtx_dry_cover;

/* Temperature, verdict and heat gain of a bare or covered tube with cold gas in a room.
 *
 * room             in       as described at vtx_room
 * tube             in       as described at vtx_covered_tube
 * gas_temperature  in   K   110..400    total temperature of the gas
 * surface          out      as described at vtx_tube_surface
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED (never seen)
 * advisory  SWEATING, FROSTING, FIELD_UNAVAILABLE when a field is NaN, OUTSIDE_CORRELATION
 * accuracy  20 % in the coefficient: 1 to 2 K in the surface of a cover, less on bare metal; the balance closes to 1e-9
 * source    convection.h for a lying tube, deposition as above, resistances in series
 * note      the default inside coefficient makes bare metal as cold as the gas: the safe side for sweating, real tubes are 1 to 3 K
 *           warmer (from memory)
 */
VTX_API vtx_status vtx_tube_in_room(const vtx_room *room, const vtx_covered_tube *tube, double gas_temperature, vtx_tube_surface *surface);

/* Thickness of cover that keeps a tube dry in a room.
 *
 * room             in       as described at vtx_room; take the most humid day, still air and the emissivity of the jacket
 * tube             in       as described at vtx_covered_tube; its cover_thickness is not used
 * gas_temperature  in   K   110..400
 * margin           in   K   0..30   above the limit; 0.5 to 1 in practice
 * cover            out      as described at vtx_dry_cover
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (dry air without a limit), NO_SOLUTION (not even 1 m: attainable_temperature), NOT_CONVERGED
 * advisory  SWEATING or FROSTING of the bare tube, OUTSIDE_CORRELATION
 * accuracy  20 % in the coefficient is 15 to 20 % in the thickness
 * source    as vtx_insulation_thickness, with the coefficient of the cover's own diameter
 * note      a bright jacket (emissivity 0.1) needs nearly twice the thickness
 */
VTX_API vtx_status vtx_cover_to_stay_dry(const vtx_room *room, const vtx_covered_tube *tube, double gas_temperature, double margin,
                                         vtx_dry_cover *cover);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_tube_in_room_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const vtx_covered_tube *tube, ptrdiff_t tube_stride, const double *gas_temperature,
        ptrdiff_t gas_temperature_stride, vtx_tube_surface *surface, ptrdiff_t surface_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_cover_to_stay_dry_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const vtx_covered_tube *tube, ptrdiff_t tube_stride, const double *gas_temperature,
        ptrdiff_t gas_temperature_stride, const double *margin, ptrdiff_t margin_stride, vtx_dry_cover *cover,
        ptrdiff_t cover_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
