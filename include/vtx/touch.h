/* Touch: what bare skin suffers on a cold or hot surface.
 *
 * Screening values, not the standards' curves: those were not available. Not a substitute for an assessment of the work place.
 * See also: material.h for the classes, transient.h for effusivities, surface.h for the surface's temperature. */
#ifndef VTX_TOUCH_H
#define VTX_TOUCH_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Which criterion a touch crosses. */
enum vtx_touch_criterion {
    VTX_TOUCH_NONE = 441,
    VTX_TOUCH_PAIN = 442,      /* skin contact below 15 degC */
    VTX_TOUCH_NUMBNESS = 443,  /* below 7 degC */
    VTX_TOUCH_FROSTBITE = 444, /* below 0 degC */
    VTX_TOUCH_MAY_BURN = 445,  /* within the band of burn thresholds */
    VTX_TOUCH_BURN = 446       /* above it */
};

/* The skin that touches. */
typedef struct vtx_skin {
    double temperature; /* K, 273.15..318.15 before the touch */
    double effusivity;  /* W s^0.5/(m2 K), 500..3000 */
    double reserved[4]; /* 0 */
} vtx_skin;

/* What a touch does. Screening value, not the standard's curve. */
typedef struct vtx_touch {
    double contact_temperature; /* K, between skin and surface for perfect contact */
    double contact_time;        /* s, as used */
    double effusivity;          /* W s^0.5/(m2 K), of the surface, as used */
    double cold_margin;         /* K, contact temperature less the frostbite criterion of 0 degC */
    double hot_threshold_low;   /* K, surface temperature at which burns may begin after contact_time */
    double hot_threshold_high;  /* K, surface temperature above which burns must be expected */
    double hot_margin;          /* K, hot_threshold_low less surface temperature */
    double skin_limit;          /* K, the crossed criterion itself; NaN when none is crossed */
    int32_t criterion;          /* vtx_touch_criterion, the worst that is crossed */
    int32_t contact_class;      /* vtx_contact_class, as used */
    int32_t advisories;
    int32_t reserved_code;      /* 0 */
} vtx_touch;

/* Sets skin of 305.15 K and an effusivity of 1715 W s^0.5/(m2 K).
 *
 * skin  out
 *
 * status    OK, BAD_ARGUMENT
 * source    conductivity 0.63 and diffusivity 0.135e-6 of skin-like tissue, Lienhard, A Heat Transfer Textbook, example 5.5; other sources
 *           give 1100 to 1500, from memory: a lower value makes the skin colder still
 */
VTX_API vtx_status vtx_skin_init(vtx_skin *skin);

/* Burn threshold band of a surface for a contact time.
 *
 * contact_class   in   -  a vtx_contact_class
 * contact_time    in   s  0.5..1e6   below 1 s the threshold of 1 s
 * threshold_low   out  K  surface temperature at which burns may begin
 * threshold_high  out  K  may be null: above it burns must be expected
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  +-3 K below a minute; screening value, not the standard's curve
 * source    1 min, 10 min, 8 h: thresholds of ISO 13732-1:2006, from memory. 1 s and 10 s low: limits of ECMA-287 as quoted on a web page
 *           (metal 65 and 55 degC, other 85 and 65 degC), glass by a list ascribed to a burn institute: metal plus 10 K. High: bands from
 *           memory, plastics at 10 s by that list: metal plus 25 K. Between the times: our interpolation over the logarithm of time
 * caution   skin that is wet, injured or of children burns sooner
 */
VTX_API vtx_status vtx_burn_threshold(int32_t contact_class, double contact_time, double *threshold_low, double *threshold_high);

/* What bare skin suffers on a surface.
 *
 * skin                 in                       as described at vtx_skin
 * contact_class        in   -                   a vtx_contact_class
 * effusivity           in   W s^0.5/(m2 K)      1..1e5     of the surface, see vtx_material and vtx_thermal_effusivity
 * surface_temperature  in   K                   70..1500
 * contact_time         in   s                   0.5..1e6   judges hot surfaces; cold ones are judged at once
 * touch                out                      as described at vtx_touch
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  TOUCH_COLD when pain, numbness or frostbite is crossed, TOUCH_HOT when burns may begin, FIELD_UNAVAILABLE when skin_limit
 *           is NaN
 * accuracy  cold: the safe side, real skin is warmer at first (contact resistance, blood): on aluminium it cools over more than 20 s.
 *           Screening value, not the standard's curve
 * source    contact temperature of thick bodies; criteria 15, 7 and 0 degC: Geng et al., Ann. Occup. Hyg. 50 (2006) 851, abstract, which
 *           are those behind ISO 13732-3; hot: vtx_burn_threshold
 * caution   do not touch the cold outlet, its nozzle or parts under the jet with bare or wet skin: it can freeze fast to metal. Common
 *           advice from memory: no bare skin on surfaces below -7 degC, handles below -1 degC insulated
 */
VTX_API vtx_status vtx_touch_surface(const vtx_skin *skin, int32_t contact_class, double effusivity, double surface_temperature,
                                     double contact_time, vtx_touch *touch);

/* Coldest surface on which the contact temperature stays at a criterion.
 *
 * skin                        in                    as described at vtx_skin
 * effusivity                  in   W s^0.5/(m2 K)   1..1e5   of the surface
 * wanted_contact_temperature  in   K                250..300
 * surface_temperature         out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (no surface above 70 K is cold enough, or contact is not colder than the skin)
 * accuracy  inverse of the contact temperature of vtx_touch_surface to rounding
 * source    as vtx_touch_surface
 */
VTX_API vtx_status vtx_coldest_touchable(const vtx_skin *skin, double effusivity, double wanted_contact_temperature,
                                         double *surface_temperature);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_burn_threshold_batch(size_t n, int32_t contact_class, const double *contact_time,
        ptrdiff_t contact_time_stride, double *threshold_low, ptrdiff_t threshold_low_stride, double *threshold_high,
        ptrdiff_t threshold_high_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_touch_surface_batch(size_t n, const vtx_skin *skin, ptrdiff_t skin_stride, int32_t contact_class,
        const double *effusivity, ptrdiff_t effusivity_stride, const double *surface_temperature,
        ptrdiff_t surface_temperature_stride, const double *contact_time, ptrdiff_t contact_time_stride,
        vtx_touch *touch, ptrdiff_t touch_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_coldest_touchable_batch(size_t n, const vtx_skin *skin, ptrdiff_t skin_stride,
        const double *effusivity, ptrdiff_t effusivity_stride, const double *wanted_contact_temperature,
        ptrdiff_t wanted_contact_temperature_stride, double *surface_temperature,
        ptrdiff_t surface_temperature_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
