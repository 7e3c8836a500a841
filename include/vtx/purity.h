/* The purity of compressed air to ask for: ISO 8573-1 classes from what a job can bear.
 *
 * Not the class of given air: air_quality.h. A class that only just fails is no use, so these answers always err to the cleaner one.
 * See also: drying.h for the pressure dew point that a pipe run needs, filter.h for the filters that keep a class. */
#ifndef VTX_PURITY_H
#define VTX_PURITY_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Water class to ask for, from the pressure dew point that must not be exceeded.
 *
 * pressure_dew_point  in   K  150..373.15, below 273.16 K a frost point
 * water_class         out  -  1..6, the least clean class that is dry enough
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (below -70 degC: agree on a dew point, class 0)
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 2, through vtx_water_class_dew_point
 */
VTX_API vtx_status vtx_water_class_to_ask(double pressure_dew_point, int32_t *water_class);

/* Oil class to ask for, from the oil that may pass through per second.
 *
 * free_air   in   m3/s  1e-9..1e3, at 20 degC and 1 bar
 * oil_flow   in   kg/s  1e-20..1, liquid, aerosol and vapour
 * oil_class  out  -     1..4, the least clean class that is clean enough
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (cleaner than class 1: class 0, by agreement)
 * accuracy  exact: a table
 * source    ISO 8573-1:2010 table 3, through vtx_oil_class_limit
 * caution   oil mist near hot chips can burn, and is not for breathing
 */
VTX_API vtx_status vtx_oil_class_to_ask(double free_air, double oil_flow, int32_t *oil_class);

/* Largest particle that a class lets through.
 *
 * particle_class  in   -  1..7
 * size            out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (class X)
 * accuracy  exact: a table
 * source    classes 1 to 5: none above 5 micrometres; 6 and 7: 5 and 40 micrometres, which the 2001 edition printed (from memory)
 */
VTX_API vtx_status vtx_particle_class_size(int32_t particle_class, double *size);

/* Greatest mass of particles that a class lets through, per volume of air.
 *
 * particle_class  in   -      1..7
 * mass_content    out  kg/m3  at 20 degC and 1 bar
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (class X)
 * accuracy  6 and 7 exact; 1 to 5 an upper bound: every counted coarse particle taken as a sphere of 5 micrometres and 2650 kg/m3 (quartz)
 * source    ISO 8573-1:2010 table 1, through vtx_particle_class_mass and vtx_particle_class_counts
 */
VTX_API vtx_status vtx_particle_class_dirt(int32_t particle_class, double *mass_content);

/* Particle class to ask for, from the narrowest passage and the dirt that may pass through per second.
 *
 * passage         in   m     1e-5..0.1, narrowest opening: the inlet nozzle of a vortex tube, its slots
 * size_ratio      in   -     1..1000, passage over largest particle: 10 in common practice, bridging starts near 3 (no source)
 * free_air        in   m3/s  1e-9..1e3, at 20 degC and 1 bar
 * dirt_flow       in   kg/s  1e-20..1
 * particle_class  out  -     1..7, the least clean class that is clean enough
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (no class will do: filter at the point of use)
 * accuracy  as vtx_particle_class_size and vtx_particle_class_dirt
 * source    as vtx_particle_class_size and vtx_particle_class_dirt
 * note      a class holds at the filter: rust and scale of the pipe behind it need a strainer at the cooler
 */
VTX_API vtx_status vtx_particle_class_to_ask(double passage, double size_ratio, double free_air, double dirt_flow, int32_t *particle_class);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_water_class_to_ask_batch(size_t n, const double *pressure_dew_point,
        ptrdiff_t pressure_dew_point_stride, int32_t *water_class, ptrdiff_t water_class_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_oil_class_to_ask_batch(size_t n, const double *free_air, ptrdiff_t free_air_stride,
        const double *oil_flow, ptrdiff_t oil_flow_stride, int32_t *oil_class, ptrdiff_t oil_class_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_particle_class_to_ask_batch(size_t n, const double *passage, ptrdiff_t passage_stride,
        const double *size_ratio, ptrdiff_t size_ratio_stride, const double *free_air, ptrdiff_t free_air_stride,
        const double *dirt_flow, ptrdiff_t dirt_flow_stride, int32_t *particle_class,
        ptrdiff_t particle_class_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
