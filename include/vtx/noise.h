/* Sound levels: sums, distance, rooms, background, the attenuation a source needs.
 *
 * Not a model of the source: every level starts from the caller's rated or measured one. Levels are A-weighted, in dB.
 * See also: exposure.h for the time a level may be borne. */
#ifndef VTX_NOISE_H
#define VTX_NOISE_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Directivity of a source beside hard surfaces: each one halves the space the sound fills. */
#define VTX_DIRECTIVITY_FREE 1.0   /* far from any surface */
#define VTX_DIRECTIVITY_FLOOR 2.0  /* on a floor or wall: hemispherical spreading */
#define VTX_DIRECTIVITY_EDGE 4.0   /* where floor and wall meet */
#define VTX_DIRECTIVITY_CORNER 8.0 /* where floor and two walls meet */

/* Level of several sources together: their energies add.
 *
 * level     in   dB  0..200, one value a source
 * count     in   -   1 or more
 * sum       out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for sources that are not coherent; rounding below 1e-12 dB
 * source    addition of sound energy, ISO 1683 reference quantities
 */
VTX_API vtx_status vtx_level_sum(const double *level, size_t count, double *sum);

/* Level of a number of equal sources at equal distance: a doubling adds 3.01 dB.
 *
 * level     in   dB  0..200, of one source
 * count     in   -   1..100000
 * sum       out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for sources that are not coherent
 * source    addition of sound energy
 */
VTX_API vtx_status vtx_level_of_several(double level, int32_t count, double *sum);

/* Level of a source alone, from a reading with it and one of the background without it.
 *
 * level       in   dB  0..200, source and background together
 * background  in   dB  0..200, below level
 * source      out  dB
 *
 * status    OK, BAD_ARGUMENT (background not below level), OUT_OF_RANGE (less than 0.1 dB apart: nothing can be said)
 * accuracy  an error of 0.5 dB in level becomes 1 dB at a difference of 3 dB and 0.56 dB at 10 dB
 * source    subtraction of sound energy; below a difference of 3 dB standards do not accept the result (from memory)
 */
VTX_API vtx_status vtx_level_without_background(double level, double background, double *source);

/* Level at another distance, far from reflecting walls: 6.02 dB less for each doubling.
 *
 * level           in   dB  0..200, at the rated distance
 * rated_distance  in   m   0.05..1000
 * distance        in   m   0.05..1000
 * level_there     out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  a point source: within about 1 dB from three source sizes outwards (common practice, no source)
 * source    inverse square law; the same in free space and over a hard floor, because both distances see the same directivity
 * note      indoors the room holds the level up: vtx_level_in_room
 */
VTX_API vtx_status vtx_level_at_distance(double level, double rated_distance, double distance, double *level_there);

/* Distance at which the level has fallen to a wanted one, far from reflecting walls.
 *
 * level           in   dB  0..200, at the rated distance
 * rated_distance  in   m   0.05..1000
 * wanted_level    in   dB  0..200
 * distance        out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the distance is not within 1e-6..1e6 m)
 * accuracy  inverse of vtx_level_at_distance to 1e-14 relative
 * source    inverse square law
 */
VTX_API vtx_status vtx_distance_for_level(double level, double rated_distance, double wanted_level, double *distance);

/* Sound power level of a source from its rated sound pressure level (reference 1 pW and 20 micropascal).
 *
 * level           in   dB  0..200, sound pressure at the rated distance, direct sound alone
 * rated_distance  in   m   0.05..1000
 * directivity     in   -   0.1..100, 1 free, 2 over a floor
 * power_level     out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  takes rho c as 400 Pa s/m: 0.14 dB high at 293 K and 1 atm
 * source    Lp = Lw + 10 log10(Q/(4 pi r^2)); over a floor Lw - 20 log10 r - 8
 */
VTX_API vtx_status vtx_sound_power_level(double level, double rated_distance, double directivity, double *power_level);

/* Room constant from the area of walls, floor and ceiling and their mean absorption.
 *
 * area           in   m2  1..1e6
 * absorption     in   -   0.005..0.99 (0..1 possible): bare hall 0.05..0.1, treated 0.3
 * room_constant  out  m2
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as good as the absorption: a factor of 2 in it is 3 dB in the reverberant level
 * source    R = S a/(1 - a), diffuse field (from memory)
 */
VTX_API vtx_status vtx_room_constant(double area, double absorption, double *room_constant);

/* Level at a distance inside a room: direct sound and reverberant field together.
 *
 * level           in   dB  0..200, direct sound at the rated distance
 * rated_distance  in   m   0.05..1000
 * distance        in   m   0.05..1000
 * directivity     in   -   0.1..100, the same at both distances
 * room_constant   in   m2  0.1..1e8
 * level_there     out  dB
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  2 to 4 dB in real workshops, where the field is not diffuse (common practice, no source)
 * source    Lp = Lw + 10 log10(Q/(4 pi r^2) + 4/R), diffuse field (from memory)
 */
VTX_API vtx_status vtx_level_in_room(double level, double rated_distance, double distance, double directivity,
                                     double room_constant, double *level_there);

/* Distance inside a room at which the level has fallen to a wanted one.
 *
 * level           in   dB  0..200, direct sound at the rated distance
 * rated_distance  in   m   0.05..1000
 * wanted_level    in   dB  0..200
 * directivity     in   -   0.1..100
 * room_constant   in   m2  0.1..1e8
 * distance        out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the distance is not within 1e-6..1e6 m),
 *           NO_SOLUTION (the reverberant field alone is as loud as that: distance does not help, absorption does)
 * accuracy  inverse of vtx_level_in_room
 * source    as vtx_level_in_room, solved for the distance
 */
VTX_API vtx_status vtx_distance_in_room(double level, double rated_distance, double wanted_level, double directivity,
                                        double room_constant, double *distance);

/* Distance at which direct and reverberant sound are equally loud: from there on, moving away hardly helps.
 *
 * directivity    in   -   0.1..100
 * room_constant  in   m2  0.1..1e8
 * distance       out  m
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_level_in_room
 * source    Q/(4 pi r^2) = 4/R
 */
VTX_API vtx_status vtx_reverberation_distance(double directivity, double room_constant, double *distance);

/* Attenuation a source needs (muffler, enclosure, sleeve) so that it and the background stay within a permissible level.
 *
 * level        in   dB  0..200, of the source at the ear
 * background   in   dB  0..200, of everything else there; 0 when there is nothing else
 * permissible  in   dB  0..200, from exposure.h
 * attenuation  out  dB  negative: the source could be that much louder
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the background alone reaches the permissible level)
 * accuracy  exact
 * source    subtraction of sound energy
 * note      a background of 0 dB counts 4e-8 dB against a permissible 80 dB
 */
VTX_API vtx_status vtx_attenuation_needed(double level, double background, double permissible, double *attenuation);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_level_of_several_batch(size_t n, const double *level, ptrdiff_t level_stride, int32_t count,
        double *sum, ptrdiff_t sum_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_level_without_background_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *background, ptrdiff_t background_stride, double *source, ptrdiff_t source_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_level_at_distance_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *distance,
        ptrdiff_t distance_stride, double *level_there, ptrdiff_t level_there_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_distance_for_level_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *wanted_level,
        ptrdiff_t wanted_level_stride, double *distance, ptrdiff_t distance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_sound_power_level_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *directivity,
        ptrdiff_t directivity_stride, double *power_level, ptrdiff_t power_level_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_room_constant_batch(size_t n, const double *area, ptrdiff_t area_stride, const double *absorption,
        ptrdiff_t absorption_stride, double *room_constant, ptrdiff_t room_constant_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_level_in_room_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *distance,
        ptrdiff_t distance_stride, const double *directivity, ptrdiff_t directivity_stride,
        const double *room_constant, ptrdiff_t room_constant_stride, double *level_there,
        ptrdiff_t level_there_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_distance_in_room_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *wanted_level,
        ptrdiff_t wanted_level_stride, const double *directivity, ptrdiff_t directivity_stride,
        const double *room_constant, ptrdiff_t room_constant_stride, double *distance, ptrdiff_t distance_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_reverberation_distance_batch(size_t n, const double *directivity, ptrdiff_t directivity_stride,
        const double *room_constant, ptrdiff_t room_constant_stride, double *distance, ptrdiff_t distance_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_attenuation_needed_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *background, ptrdiff_t background_stride, const double *permissible,
        ptrdiff_t permissible_stride, double *attenuation, ptrdiff_t attenuation_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
