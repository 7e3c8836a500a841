/* The standard atmosphere: pressure and temperature at an altitude, altitude of a pressure, barometers reduced to sea level.
 *
 * Not the weather: a site's true pressure differs from the standard one by up to 4 %. Not the reference states of standard
 * flow: those are in standard_flow.h.
 * See also: units.h, where gauge pressure needs the site's barometer. */
#ifndef VTX_ATMOSPHERE_H
#define VTX_ATMOSPHERE_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Pressure of the standard atmosphere.
 *
 * altitude  in   m   -2000..11000   geopotential; the altitude of a map is geometric, 0.2 m more at 1000 m
 * pressure  out  Pa  absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  0.5 Pa of the published table from -500 to 10000 m, where it is rounded to 1 Pa
 * source    ISO 2533:1975, layer of constant lapse rate
 */
VTX_API vtx_status vtx_atmosphere_pressure(double altitude, double *pressure);

/* Temperature of the standard atmosphere.
 *
 * altitude     in   m  -2000..11000   geopotential
 * temperature  out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: it is the definition
 * source    ISO 2533:1975
 */
VTX_API vtx_status vtx_atmosphere_temperature(double altitude, double *temperature);

/* Density of the dry standard atmosphere, an ideal gas there.
 *
 * altitude  in   m      -2000..11000   geopotential
 * density   out  kg/m3
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact within the definition; real dry air of the same state is 0.04 % denser
 * source    ISO 2533:1975
 */
VTX_API vtx_status vtx_atmosphere_density(double altitude, double *density);

/* Altitude at which the standard atmosphere has a pressure.
 *
 * pressure  in   Pa  22632.1..127773   absolute
 * altitude  out  m   geopotential
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  2e-11 m there and back
 * source    ISO 2533:1975, solved for the altitude
 */
VTX_API vtx_status vtx_atmosphere_altitude(double pressure, double *altitude);

/* Geopotential altitude of a geometric one.
 *
 * geometric     in   m  -2000..11020   height above mean sea level as on a map
 * geopotential  out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding only
 * source    ISO 2533:1975, nominal earth radius 6356766 m
 */
VTX_API vtx_status vtx_geopotential_altitude(double geometric, double *geopotential);

/* Geometric altitude of a geopotential one.
 *
 * geopotential  in   m  -2000..11000
 * geometric     out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding only
 * source    ISO 2533:1975, nominal earth radius 6356766 m
 */
VTX_API vtx_status vtx_geometric_altitude(double geopotential, double *geometric);

/* What a barometer at the site shows when the weather report gives a pressure reduced to sea level.
 *
 * sea_level_pressure  in   Pa  87000..108500   absolute, reduced by the standard atmosphere (QNH)
 * altitude            in   m   -500..5000   geopotential, of the site
 * pressure            out  Pa  absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  the definition of QNH; reports reduced by the day's temperature (QFF) differ by up to 0.5 % at 1000 m
 * source    ISO 2533:1975; altimeter setting as in common aviation practice, no source
 * note      gauge pressures count from this, not from the reduced pressure: 11 % too much at 1000 m
 */
VTX_API vtx_status vtx_station_pressure(double sea_level_pressure, double altitude, double *pressure);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_atmosphere_pressure_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride,
        double *pressure, ptrdiff_t pressure_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_atmosphere_temperature_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride,
        double *temperature, ptrdiff_t temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_atmosphere_density_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride, double *density,
        ptrdiff_t density_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_atmosphere_altitude_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        double *altitude, ptrdiff_t altitude_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_geopotential_altitude_batch(size_t n, const double *geometric, ptrdiff_t geometric_stride,
        double *geopotential, ptrdiff_t geopotential_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_geometric_altitude_batch(size_t n, const double *geopotential, ptrdiff_t geopotential_stride,
        double *geometric, ptrdiff_t geometric_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_station_pressure_batch(size_t n, const double *sea_level_pressure,
        ptrdiff_t sea_level_pressure_stride, const double *altitude, ptrdiff_t altitude_stride, double *pressure,
        ptrdiff_t pressure_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
