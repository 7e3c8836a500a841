/* The water that the compressed air brings along: how far the cold air may go before it freezes, and how dry the feed must be.
 *
 * Not frost that room air leaves outside (surface.h) and not how the feed gets dry (drying.h).
 * See also: air_quality.h and purity.h for classes, separation.h for streams that warm as their water condenses. */
#ifndef VTX_FREEZING_H
#define VTX_FREEZING_H

#include <vtx/moist_air.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What the feed's water does in a cold stream. A "point" is a dew point, below 273.16 K a frost point. */
typedef struct vtx_feed_water {
    double humidity_ratio;       /* kg/kg, vapour and condensate of the feed per dry air */
    double feed_point;           /* K, of the feed at the supply pressure; NaN dry */
    double coldest_temperature;  /* K, how far the cold air may go: the feed's point at the cold pressure; NaN dry */
    double margin;               /* K, cold temperature less coldest_temperature: negative collects; NaN dry */
    double condensate_rate;      /* kg/s, water that falls out of the cold stream, liquid and ice */
    double ice_rate;             /* kg/s, of it ice: times 3600 an hour */
    double required_point;       /* K, at the supply pressure, that keeps the cold stream free; NaN when saturated feed does already */
    double throat_temperature;   /* K, static, in the inlet nozzle: sonic, or expanded to the cold pressure */
    double throat_pressure;      /* Pa, static */
    double throat_margin;        /* K, throat temperature less the feed's point at the throat pressure; NaN dry */
    double throat_required_point; /* K, at the supply pressure, that keeps the throat free too; NaN as above */
    int32_t required_class;      /* ISO 8573-1 water class to ask for, 1..6; 0 drier than class 1, by agreement; VTX_AIR_CLASS_X none needed */
    int32_t throat_required_class; /* the same for the throat */
    int32_t condensed_phase;     /* of the cold stream: 0 none, 1 liquid, 2 ice, 3 both */
    int32_t advisories;
} vtx_feed_water;

/* Will the cold air freeze its own water, and how dry must the feed be?
 *
 * model               in   -     VTX_AIR_IDEAL or VTX_AIR_REAL
 * supply_pressure     in   Pa    5e4..5e6   at the cooler's inlet, absolute
 * supply_temperature  in   K     233.15..373.15
 * property            in   -     vtx_moist_property, a humidity measure (10 to 17) of the feed at that state
 * value               in   *     its value; a humidity ratio may exceed saturation: wet feed
 * cold_pressure       in   Pa    3e4..supply_pressure   where the cold stream leaves
 * cold_temperature    in   K     120..supply_temperature   stagnation temperature of the cold stream: take the coldest it can have
 * cold_mass_flow      in   kg/s  0..100     of the cold stream
 * margin              in   K     0..30      that required_point keeps below cold_temperature; 3 to 10 in practice
 * water               out        as described at vtx_feed_water
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also outside the model's temperatures)
 * advisory  FREEZING ice in the cold stream, CONDENSING liquid there or in the feed, STATIC_FREEZING the feed can freeze in the throat
 *           though there the flow is too fast for full equilibrium, FIELD_UNAVAILABLE when a field is NaN
 * accuracy  points as moist_air.h: REAL 0.02 K; the throat a perfect gas of ratio 1.4, dry: 0.5 K
 * source    saturation at equal mole fraction, moist_air.h; throat 1/1.2 of the stagnation temperature, NACA 1135
 * note      the water is taken to be even in both streams. Plugging starts with a fraction of ice_rate: any ice is too much in the long
 *           run. A pressure dew point below 0 degC of a dryer is a frost point by trade usage
 * caution   a plugged outlet sends all air to the hot end; shut off, vent and let thaw before clearing it
 */
VTX_API vtx_status vtx_feed_freezing(int32_t model, double supply_pressure, double supply_temperature, int32_t property, double value,
                                     double cold_pressure, double cold_temperature, double cold_mass_flow, double margin,
                                     vtx_feed_water *water);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_feed_freezing_batch(size_t n, int32_t model, const double *supply_pressure,
        ptrdiff_t supply_pressure_stride, const double *supply_temperature, ptrdiff_t supply_temperature_stride,
        int32_t property, const double *value, ptrdiff_t value_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_mass_flow, ptrdiff_t cold_mass_flow_stride, const double *margin, ptrdiff_t margin_stride,
        vtx_feed_water *water, ptrdiff_t water_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
