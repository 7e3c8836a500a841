/* Purity classes of compressed air (ISO 8573-1) and the water it carries per volume.
 *
 * Not the humidity of a state (moist_air.h), not what a dryer does to it (process.h).
 * See also: standard_flow.h for volumes at reference states.
 *
 * A class is its number, 1 the cleanest. Class 0 is agreed between user and supplier and cannot be judged here. */
#ifndef VTX_AIR_QUALITY_H
#define VTX_AIR_QUALITY_H

#include <vtx/moist_air.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Beyond the last numbered class. */
enum vtx_air_quality_class { VTX_AIR_CLASS_X = 90 };

/* Water class of compressed air.
 *
 * pressure_dew_point  in   K      150..373.15   at the line's pressure; below freezing the frost point, as dryers are rated
 * liquid_content      in   kg/m3  0..1   liquid water per volume of air at 20 degC, 1 bar absolute; 0 when none is seen
 * water_class         out  -      1..9 or VTX_AIR_CLASS_X
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 2, read in a published reproduction
 * note      with liquid present its content decides; above +10 degC without liquid the class is 7
 */
VTX_API vtx_status vtx_water_class(double pressure_dew_point, double liquid_content, int32_t *water_class);

/* Highest pressure dew point that a water class allows.
 *
 * water_class         in   -  1..6; classes 7 to 9 and VTX_AIR_CLASS_X are judged by liquid: OUT_OF_RANGE
 * pressure_dew_point  out  K  below freezing a frost point
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 2, read in a published reproduction
 */
VTX_API vtx_status vtx_water_class_dew_point(int32_t water_class, double *pressure_dew_point);

/* Highest liquid water content that a water class allows.
 *
 * water_class     in   -      7..9; classes 1 to 6 are judged by dew point, VTX_AIR_CLASS_X has no limit: OUT_OF_RANGE
 * liquid_content  out  kg/m3  per volume of air at 20 degC, 1 bar absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 2, read in a published reproduction
 */
VTX_API vtx_status vtx_water_class_liquid(int32_t water_class, double *liquid_content);

/* Particle class of compressed air, by count up to 5 micrometres or by mass when there is more than dust.
 *
 * fine             in   1/m3   0..1e15   particles of 0.1 to 0.5 micrometre
 * medium           in   1/m3   0..1e15   particles of 0.5 to 1 micrometre
 * coarse           in   1/m3   0..1e15   particles of 1 to 5 micrometres
 * mass_content     in   kg/m3  0..1   mass of larger particles; 0 when there are none
 * particle_class   out  -      1..7 or VTX_AIR_CLASS_X; counts beyond class 5 with no mass measured are class X
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 1, read in a published reproduction
 */
VTX_API vtx_status vtx_particle_class(double fine, double medium, double coarse, double mass_content, int32_t *particle_class);

/* Highest particle counts that a class allows.
 *
 * particle_class  in   -     1..5; classes 6 and 7 are judged by mass, VTX_AIR_CLASS_X has no limit: OUT_OF_RANGE
 * fine            out  1/m3  0.1 to 0.5 micrometre; NaN where the class sets no limit (3 to 5)
 * medium          out  1/m3  0.5 to 1 micrometre, may be null; NaN where the class sets no limit (4 and 5)
 * coarse          out  1/m3  1 to 5 micrometres, may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 1, read in a published reproduction
 */
VTX_API vtx_status vtx_particle_class_counts(int32_t particle_class, double *fine, double *medium, double *coarse);

/* Highest mass of particles that a class allows.
 *
 * particle_class  in   -      6..7; classes 1 to 5 are judged by counts, VTX_AIR_CLASS_X has no limit: OUT_OF_RANGE
 * mass_content    out  kg/m3
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 1, read in a published reproduction
 */
VTX_API vtx_status vtx_particle_class_mass(int32_t particle_class, double *mass_content);

/* Oil class of compressed air: liquid, aerosol and vapour together.
 *
 * oil_content  in   kg/m3  0..1   per volume of air at 20 degC, 1 bar absolute
 * oil_class    out  -      1..4 or VTX_AIR_CLASS_X
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 3, read in a published reproduction
 */
VTX_API vtx_status vtx_oil_class(double oil_content, int32_t *oil_class);

/* Highest oil content that a class allows.
 *
 * oil_class    in   -      1..4; VTX_AIR_CLASS_X has no limit: OUT_OF_RANGE
 * oil_content  out  kg/m3  per volume of air at 20 degC, 1 bar absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 3, read in a published reproduction
 */
VTX_API vtx_status vtx_oil_class_limit(int32_t oil_class, double *oil_content);

/* Water that compressed air of a pressure dew point carries, per volume at a reference state.
 *
 * model                  in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * line_pressure          in   Pa     1000..5e6   absolute
 * pressure_dew_point     in   K      100..473.15   at the line's pressure; below 273.16 K the frost point, as dryers are rated
 * reference_pressure     in   Pa     1000..5e6   absolute; 1 bar and 20 degC for ISO 8573, or the state in the line
 * reference_temperature  in   K      100..473.15
 * content                out  kg/m3  water vapour per volume of the moist air at the reference state
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where the reference state could not hold that vapour)
 * accuracy  REAL within 1e-3 of ASHRAE RP-1485 from -70 to +10 degC at 8 bar
 * source    saturation and volume of moist_air.h
 * note      tables of 6.0 g/m3 at +3 degC and the like are pure vapour at its dew point: 2.4 % less than air at 8 bar holds there
 */
VTX_API vtx_status vtx_water_content(int32_t model, double line_pressure, double pressure_dew_point, double reference_pressure,
                                     double reference_temperature, double *content);

/* Pressure dew point of compressed air that carries a water content.
 *
 * model                  in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * line_pressure          in   Pa     1000..5e6   absolute
 * content                in   kg/m3  above 0, to 1000   water vapour per volume of the moist air at the reference state
 * reference_pressure     in   Pa     1000..5e6   absolute
 * reference_temperature  in   K      100..473.15
 * pressure_dew_point     out  K      at the line's pressure; below 273.16 K the frost point
 *
 * status    OK, BAD_ARGUMENT (also where the reference state could not hold that vapour), OUT_OF_RANGE
 * accuracy  inverse of vtx_water_content within 1e-9 K
 * source    as vtx_water_content
 */
VTX_API vtx_status vtx_pressure_dew_point(int32_t model, double line_pressure, double content, double reference_pressure,
                                          double reference_temperature, double *pressure_dew_point);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_water_class_batch(size_t n, const double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride,
        const double *liquid_content, ptrdiff_t liquid_content_stride, int32_t *water_class,
        ptrdiff_t water_class_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_particle_class_batch(size_t n, const double *fine, ptrdiff_t fine_stride, const double *medium,
        ptrdiff_t medium_stride, const double *coarse, ptrdiff_t coarse_stride, const double *mass_content,
        ptrdiff_t mass_content_stride, int32_t *particle_class, ptrdiff_t particle_class_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_oil_class_batch(size_t n, const double *oil_content, ptrdiff_t oil_content_stride, int32_t *oil_class,
        ptrdiff_t oil_class_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_water_content_batch(size_t n, int32_t model, const double *line_pressure,
        ptrdiff_t line_pressure_stride, const double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride,
        const double *reference_pressure, ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, double *content, ptrdiff_t content_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_pressure_dew_point_batch(size_t n, int32_t model, const double *line_pressure,
        ptrdiff_t line_pressure_stride, const double *content, ptrdiff_t content_stride,
        const double *reference_pressure, ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride,
        int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
