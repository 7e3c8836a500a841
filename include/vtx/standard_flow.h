/* Volume flow at a stated reference state, and the mass flow it stands for.
 *
 * Not units: "scfm", "Nm3/h" or "l/min (ANR)" are a volume flow and a state, and the state is an argument of every call here. The
 * usual states differ by 9 % in mass for the same volume.
 * See also: units.h for l/min and ft3/min, compressor.h for what free air costs.
 *
 * The density of a state is that of its moist air in the chosen model: REAL is what a balance would weigh and what the rest of
 * the library uses by default; IDEAL is p M / (R T), to be chosen where a contract or a meter defines its volumes so. They differ
 * by 0.03 to 0.06 % at atmospheric pressure. */
#ifndef VTX_STANDARD_FLOW_H
#define VTX_STANDARD_FLOW_H

#include <vtx/moist_air.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Reference states of the trade. */
enum vtx_reference_name {
    VTX_REFERENCE_ISO_2533 = 200,      /* 101325 Pa, 15 degC, dry: also ISO 13443 */
    VTX_REFERENCE_ISO_8778 = 201,      /* 100 kPa, 20 degC, 65 %: ANR of pneumatics; from memory, older editions had 101.3 kPa */
    VTX_REFERENCE_DIN_1343 = 202,      /* 101325 Pa, 0 degC, dry: normal cubic metre, Nm3 */
    VTX_REFERENCE_ISO_1217 = 203,      /* 100 kPa, 20 degC, dry: compressors; also ISO 8573-1 */
    VTX_REFERENCE_US_36_PERCENT = 204, /* 14.7 psia, 68 degF, 36 %: 0.075 lb/ft3 */
    VTX_REFERENCE_US_GAS = 205,        /* 101325 Pa (14.696 psia), 60 degF, dry: gas industry */
    VTX_REFERENCE_US_COMPRESSOR = 206, /* 14.5 psia, 68 degF, dry: compressors; from memory */
    VTX_REFERENCE_US_FAN = 207         /* 101325 Pa (14.696 psia), 70 degF, dry: fans and discharge tables */
};

/* Pressure, temperature and relative humidity of a named reference state.
 *
 * reference          in   -   VTX_REFERENCE_*
 * pressure           out  Pa  absolute
 * temperature        out  K   may be null
 * relative_humidity  out  -   may be null; over liquid
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  exact: definitions; 65 % at 100 kPa and 14.5 psia from memory
 * source    ISO 2533:1975, ISO 8778:2003, DIN 1343, ISO 1217; US states: trade glossaries
 */
VTX_API vtx_status vtx_reference_state(int32_t reference, double *pressure, double *temperature, double *relative_humidity);

/* Density of the moist air of a reference state or of a site.
 *
 * model              in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure           in   Pa     10000..1e6   absolute
 * temperature        in   K      233.15..373.15
 * relative_humidity  in   -      0..1   over liquid; vapour pressure at or above the pressure is BAD_ARGUMENT
 * density            out  kg/m3  of the moist air
 * dry_air_density    out  kg/m3  may be null; mass of dry air in it per volume
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  REAL within 1e-5 of ASHRAE RP-1485 for the named states
 * source    virial equation of moist_air.h
 * note      ISO 6358 counts its own reference density of 1.185 kg/m3 (see restriction.h) where ISO 8778 has 1.182
 */
VTX_API vtx_status vtx_reference_density(int32_t model, double pressure, double temperature, double relative_humidity, double *density,
                                         double *dry_air_density);

/* Mass flow of a volume flow at a reference state.
 *
 * model                  in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * reference_pressure     in   Pa     10000..1e6   absolute
 * reference_temperature  in   K      233.15..373.15
 * reference_humidity     in   -      0..1   relative, over liquid
 * volume_flow            in   m3/s   -1e6..1e6   at that state
 * mass_flow              out  kg/s   of the moist air of that state
 * dry_air_flow           out  kg/s   may be null; of the dry air in it
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_reference_density
 * source    definition
 * note      with the site's own pressure, temperature and humidity it is the mass flow of free air
 */
VTX_API vtx_status vtx_mass_flow_from_standard(int32_t model, double reference_pressure, double reference_temperature,
                                               double reference_humidity, double volume_flow, double *mass_flow, double *dry_air_flow);

/* Volume flow at a reference state of a mass flow.
 *
 * model                  in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * reference_pressure     in   Pa     10000..1e6   absolute
 * reference_temperature  in   K      233.15..373.15
 * reference_humidity     in   -      0..1   relative, over liquid
 * mass_flow              in   kg/s   -1e6..1e6   counted as moist air of that state, as flow meters scaled to it do
 * volume_flow            out  m3/s   at that state
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_reference_density; exact inverse of vtx_mass_flow_from_standard
 * source    definition
 */
VTX_API vtx_status vtx_standard_flow(int32_t model, double reference_pressure, double reference_temperature, double reference_humidity,
                                     double mass_flow, double *volume_flow);

/* Volume flow at another reference state of the same dry air.
 *
 * model                  in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * reference_pressure     in   Pa     10000..1e6   absolute
 * reference_temperature  in   K      233.15..373.15
 * reference_humidity     in   -      0..1   relative, over liquid
 * volume_flow            in   m3/s   -1e6..1e6   at that state
 * new_pressure           in   Pa     10000..1e6   absolute
 * new_temperature        in   K      233.15..373.15
 * new_humidity           in   -      0..1   relative, over liquid
 * new_volume_flow        out  m3/s   at the new state
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_reference_density
 * source    conservation of dry air: water may be taken up or left on the way
 */
VTX_API vtx_status vtx_standard_flow_at(int32_t model, double reference_pressure, double reference_temperature, double reference_humidity,
                                        double volume_flow, double new_pressure, double new_temperature, double new_humidity,
                                        double *new_volume_flow);

/* Free air: the volume that a compressor must draw in at the site to deliver a flow of dry air.
 *
 * model              in   -     VTX_AIR_IDEAL or VTX_AIR_REAL
 * ambient_pressure   in   Pa    10000..1e6   absolute, at the compressor's inlet
 * temperature        in   K     233.15..373.15   there
 * relative_humidity  in   -     0..1   over liquid, there
 * dry_air_flow       in   kg/s  -1e6..1e6   delivered; of a moist mass flow m with humidity ratio W it is m / (1 + W)
 * volume_flow        out  m3/s  free air delivered (FAD)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_reference_density
 * source    ISO 1217: flow referred to the state at the inlet; conservation of dry air
 * note      a humid summer day takes 3 % more volume than a dry one for the same dry air
 */
VTX_API vtx_status vtx_free_air_delivered(int32_t model, double ambient_pressure, double temperature, double relative_humidity,
                                          double dry_air_flow, double *volume_flow);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_reference_density_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, double *density, ptrdiff_t density_stride, double *dry_air_density,
        ptrdiff_t dry_air_density_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_mass_flow_from_standard_batch(size_t n, int32_t model, const double *reference_pressure,
        ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *reference_humidity,
        ptrdiff_t reference_humidity_stride, const double *volume_flow, ptrdiff_t volume_flow_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, double *dry_air_flow, ptrdiff_t dry_air_flow_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_standard_flow_batch(size_t n, int32_t model, const double *reference_pressure,
        ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *reference_humidity,
        ptrdiff_t reference_humidity_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        double *volume_flow, ptrdiff_t volume_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_standard_flow_at_batch(size_t n, int32_t model, const double *reference_pressure,
        ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *reference_humidity,
        ptrdiff_t reference_humidity_stride, const double *volume_flow, ptrdiff_t volume_flow_stride,
        const double *new_pressure, ptrdiff_t new_pressure_stride, const double *new_temperature,
        ptrdiff_t new_temperature_stride, const double *new_humidity, ptrdiff_t new_humidity_stride,
        double *new_volume_flow, ptrdiff_t new_volume_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_free_air_delivered_batch(size_t n, int32_t model, const double *ambient_pressure,
        ptrdiff_t ambient_pressure_stride, const double *temperature, ptrdiff_t temperature_stride,
        const double *relative_humidity, ptrdiff_t relative_humidity_stride, const double *dry_air_flow,
        ptrdiff_t dry_air_flow_stride, double *volume_flow, ptrdiff_t volume_flow_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
