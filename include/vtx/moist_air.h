/* Moist air: states from any humidity measure, dew and frost points, in an ideal and a real-gas model.
 *
 * Not processes: what happens to moist air on its way is in process.h.
 * See also: water.h for pure water, air.h for dry air.
 *
 * Both models answer from 100 to 473.15 K and 1 kPa to 5 MPa. REAL is meant for 173.15 to 373.15 K and 0.01 to 2 MPa; a struct
 * result outside says so by VTX_ADVISORY_EXTRAPOLATED. REAL also needs pressure <= 0.4 MPa (temperature / 100 K)^4, below which
 * air itself is far from condensing. */
#ifndef VTX_MOIST_AIR_H
#define VTX_MOIST_AIR_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* How moist air is computed: a selector of every call that concerns it. */
enum vtx_air_model {
    VTX_AIR_IDEAL = 1, /* handbook mixture of ideal gases, what is taught in class */
    VTX_AIR_REAL = 2   /* virial equation of state, condensate in true equilibrium */
};

/* Measures of a state of moist air; the humidity measures are the first seven. */
enum vtx_moist_property {
    VTX_HUMIDITY_RATIO = 10,        /* kg water per kg dry air; as an input the total water, what exceeds saturation condenses */
    VTX_RELATIVE_HUMIDITY = 11,     /* mole fraction over that of saturation over liquid, at every temperature, 0..1 */
    VTX_RELATIVE_HUMIDITY_ICE = 12, /* the same over ice below 273.16 K, equal to the other above it */
    VTX_DEW_POINT = 13,             /* K, over liquid, supercooled below 273.16 K */
    VTX_FROST_POINT = 14,           /* K, over ice */
    VTX_WET_BULB = 15,              /* K, of adiabatic saturation; below 273.16 K the wick is iced */
    VTX_VAPOUR_FRACTION = 16,       /* mole fraction of water in the gas */
    VTX_ABSOLUTE_HUMIDITY = 17,     /* kg vapour per m3 of gas */
    VTX_TEMPERATURE = 18,           /* K */
    VTX_ENTHALPY = 19,              /* J per kg dry air */
    VTX_ENTROPY = 20,               /* J/K per kg dry air */
    VTX_VOLUME = 21                 /* m3 per kg dry air */
};

/* A state of moist air. Enthalpy, entropy and volume are per kg of dry air and include the condensate; dry air has enthalpy and
 * entropy 0 at 273.15 K and 101325 Pa, liquid water at the triple point (REAL) or enthalpy 0 at 0 degC (IDEAL, handbook). A field
 * that has no meaning in a state is NaN, and VTX_ADVISORY_FIELD_UNAVAILABLE is set: the dew point of air that is dry or has it
 * below 233.15 K, the frost point of air that is dry or has its dew point above 273.16 K. */
typedef struct vtx_moist_air {
    double pressure;              /* Pa */
    double temperature;           /* K */
    double humidity_ratio;        /* kg vapour per kg dry air, without the condensed */
    double vapour_fraction;       /* mole fraction of water in the gas */
    double relative_humidity;     /* over liquid at every temperature; below 233.15 K by the shape of Murphy and Koop's formula */
    double relative_humidity_ice; /* over ice below 273.16 K, the same as relative_humidity above */
    double dew_point;             /* K, over liquid, or NaN */
    double frost_point;           /* K, over ice, or NaN */
    double wet_bulb;              /* K, of adiabatic saturation, iced below 273.16 K; the air's temperature when it carries condensate */
    double enthalpy;              /* J per kg dry air */
    double entropy;               /* J/K per kg dry air */
    double volume;                /* m3 per kg dry air */
    double density;               /* kg/m3, of air, vapour and condensate together */
    double absolute_humidity;     /* kg vapour per m3 of gas */
    double condensed;             /* kg liquid or ice per kg dry air */
    double frozen_share;          /* of the condensed, 0..1 */
    double heat_capacity;         /* J/(kg K) at constant pressure, per kg of the gas, nothing changing phase */
    double sound_speed;           /* m/s, of the gas */
    double compressibility;       /* p v / (R T) of the gas, 1 when IDEAL */
    double enhancement_factor;    /* saturation mole fraction times pressure over pure water's saturation pressure; over ice below 273.16 K */
    int32_t advisories;           /* vtx_advisory: EXTRAPOLATED, CONDENSING, FREEZING, SUPERSATURATED_OVER_ICE, FIELD_UNAVAILABLE, TWO_WET_BULBS, ENHANCEMENT_LIMITED */
    int32_t condensed_phase;      /* 0 none, 1 liquid, 2 ice, 3 both */
} vtx_moist_air;

/* State of moist air from pressure, temperature and any one humidity measure.
 *
 * A humidity ratio is total water: what exceeds saturation is condensed, as liquid from 273.16 K, as ice below. The other measures
 * describe the vapour: they are accepted up to saturation over liquid (above it BAD_ARGUMENT) and nothing condenses; below 273.16 K
 * vapour beyond saturation over ice is metastable and VTX_ADVISORY_SUPERSATURATED_OVER_ICE is set.
 *
 * model        in   -    vtx_air_model
 * pressure     in   Pa   1e3..5e6
 * temperature  in   K    100..473.15
 * property     in   -    vtx_moist_property, one of the humidity measures (10 to 17)
 * value        in   SI   its value: humidity ratio 0..10, relative humidity 0..1 (over ice as far as saturation over liquid), dew
 *                        point 233.15 K up to the temperature, frost point to 273.16 K, wet bulb up to the temperature
 * state        out  -    result
 *
 * status    OK, BAD_ARGUMENT (also vapour beyond saturation over liquid, a wet bulb below that of dry air), OUT_OF_RANGE
 * advisory  those of the field advisories
 * accuracy  REAL, of ASHRAE RP-1485 to 10 bar: volume 2e-6, enthalpy 3 J/kg. Of IAPWS G8-10 from 0.1 to 1.5 MPa, -60 to 80 degC:
 *           volume 1e-4, enthalpy 22 J/kg, heat capacity 1e-3, sound speed 1.8e-4 to 60 % of saturation; saturated at 80 degC and
 *           0.1 MPa 56 J/kg, 2.3e-3, 2.5e-4. Entropy agrees with enthalpy and volume to rounding while nothing changes phase; the wet
 *           bulb returns to its humidity ratio within 1e-9 K
 * note      the wet bulb is the wet wick's where that has a root at or above 273.16 K, else the iced wick's; near freezing both can
 *           have one: VTX_ADVISORY_TWO_WET_BULBS
 * note      REAL lets liquid and ice meet at 273.16 K, where nature would lower the melting point under pressure: vapour and ice in
 *           equilibrium so differ in Gibbs energy by 60 J/kg a megapascal, vapour and liquid by as much there, fading out within 60 K
 * source    REAL: virial coefficients of Lemmon and others 2000, IAPWS-95, Harvey and Huang 2007, Hyland and Wexler 1983, IF97 and
 *           R14-08 saturation; IDEAL: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 20 to 36
 */
VTX_API vtx_status vtx_moist_air_at(int32_t model, double pressure, double temperature, int32_t property, double value,
                                    vtx_moist_air *state);

/* One humidity measure from another, at the same pressure and temperature.
 *
 * model        in   -    vtx_air_model
 * pressure     in   Pa   1e3..5e6
 * temperature  in   K    100..473.15
 * property     in   -    vtx_moist_property, the measure given (10 to 17)
 * value        in   SI   its value, as in vtx_moist_air_at; from a humidity ratio beyond saturation the vapour that stays is meant
 * wanted       in   -    vtx_moist_property, the measure wanted (10 to 17)
 * result       out  SI   its value
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where the wanted measure has no meaning, as a frost point above 273.16 K)
 * accuracy  as vtx_moist_air_at
 * source    as vtx_moist_air_at
 */
VTX_API vtx_status vtx_moist_air_humidity(int32_t model, double pressure, double temperature, int32_t property, double value,
                                          int32_t wanted, double *result);

/* Dew point of air that holds a humidity ratio: the temperature at which it is saturated over liquid water.
 *
 * model           in   -      vtx_air_model
 * pressure        in   Pa     1e3..5e6
 * humidity_ratio  in   kg/kg  0..10, vapour per dry air; 0 has no dew point: OUT_OF_RANGE
 * temperature     out  K      233.15..473.15, supercooled liquid below 273.16
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where the dew point lies outside its range)
 * accuracy  REAL, of ASHRAE RP-1485: 1.3e-4 K to 10 bar and 80 degC, 1e-3 K at 20 bar; within 1.5 K of 273.16 K up to 0.01 K lower at
 *           8 bar (see vtx_saturation_humidity_ratio); back to the humidity ratio within 3e-11 K
 * source    IAPWS R7-97(2012) saturation; REAL: virial equation of state of RP-1485 (Herrmann, Kretzschmar, Gatley 2009)
 */
VTX_API vtx_status vtx_dew_point(int32_t model, double pressure, double humidity_ratio, double *temperature);

/* Frost point of air that holds a humidity ratio: the temperature at which it is saturated over ice.
 *
 * model           in   -      vtx_air_model
 * pressure        in   Pa     1e3..5e6
 * humidity_ratio  in   kg/kg  0..10, vapour per dry air; 0 has no frost point: OUT_OF_RANGE
 * temperature     out  K      100..273.16
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where there is a dew point above 273.16 K instead)
 * accuracy  REAL, of ASHRAE RP-1485: 1e-4 K to 10 bar, 1e-3 K at 20 bar; back to the humidity ratio within 1e-11 K
 * source    IAPWS R14-08(2011) sublimation; REAL: virial equation of state of RP-1485 (Herrmann, Kretzschmar, Gatley 2009)
 */
VTX_API vtx_status vtx_frost_point(int32_t model, double pressure, double humidity_ratio, double *temperature);

/* Humidity ratio of saturated air, over liquid from 273.16 K and over ice below.
 *
 * model           in   -      vtx_air_model
 * pressure        in   Pa     1e3..5e6
 * temperature     in   K      100..473.15
 * humidity_ratio  out  kg/kg  vapour per dry air
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also at and above the boiling point, where air holds any amount of vapour)
 * accuracy  REAL, of ASHRAE RP-1485: 1.1e-5 to 10 bar and 80 degC, 8e-5 at 20 bar; from 273.16 to 274.66 K up to 7.5e-4 high at 8 bar
 *           so that liquid and ice meet at 273.16 K under every pressure; IDEAL 0.4 to 0.7 % low at 1 atm, 2 to 5 % at 8 bar
 * source    as vtx_dew_point and vtx_frost_point; IDEAL: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20
 */
VTX_API vtx_status vtx_saturation_humidity_ratio(int32_t model, double pressure, double temperature, double *humidity_ratio);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_moist_air_at_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, int32_t property, const double *value,
        ptrdiff_t value_stride, vtx_moist_air *state, ptrdiff_t state_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_moist_air_humidity_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, int32_t property, const double *value,
        ptrdiff_t value_stride, int32_t wanted, double *result, ptrdiff_t result_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_dew_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_frost_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_saturation_humidity_ratio_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *temperature, ptrdiff_t temperature_stride, double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_dew_point_at_pressure_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *dew_point, ptrdiff_t dew_point_stride, const double *new_pressure,
        ptrdiff_t new_pressure_stride, double *new_dew_point, ptrdiff_t new_dew_point_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_frost_point_at_pressure_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *frost_point, ptrdiff_t frost_point_stride,
        const double *new_pressure, ptrdiff_t new_pressure_stride, double *new_frost_point,
        ptrdiff_t new_frost_point_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

/* Dew point after a change of pressure that keeps all water in the vapour: both over liquid.
 *
 * model          in   -   vtx_air_model
 * pressure       in   Pa  1e3..5e6
 * dew_point      in   K   233.15..473.15, below boiling at pressure
 * new_pressure   in   Pa  1e3..5e6
 * new_dew_point  out  K   233.15..473.15
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where the new dew point lies below 233.15 K)
 * accuracy  there and back within 1e-11 K IDEAL; REAL as vtx_dew_point
 * note      a dryer's "pressure dew point" below 0 degC is a frost point by trade usage
 * source    as vtx_dew_point
 */
VTX_API vtx_status vtx_dew_point_at_pressure(int32_t model, double pressure, double dew_point, double new_pressure, double *new_dew_point);

/* Frost point after a change of pressure that keeps all water in the vapour: both over ice.
 *
 * model            in   -   vtx_air_model
 * pressure         in   Pa  1e3..5e6
 * frost_point      in   K   100..273.16, below sublimation at pressure
 * new_pressure     in   Pa  1e3..5e6
 * new_frost_point  out  K   100..273.16
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where the new frost point would lie above 273.16 K)
 * accuracy  there and back within 1e-11 K IDEAL; REAL as vtx_frost_point
 * source    as vtx_frost_point
 */
VTX_API vtx_status vtx_frost_point_at_pressure(int32_t model, double pressure, double frost_point, double new_pressure,
                                               double *new_frost_point);

#ifdef __cplusplus
}
#endif

#endif
