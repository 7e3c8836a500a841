/* Sound levels. */
#include <vtx/noise.h>

#include "../base/numeric.h"
#include "level_kernel.h"

#define COUNT_MAX 100000
#define DISTANCE_MIN 0.05
#define DISTANCE_MAX 1000.0
#define RESULT_DISTANCE_MIN 1e-6
#define RESULT_DISTANCE_MAX 1e6

static inline vtx_status check_distance(double distance) { return check_positive(distance, DISTANCE_MIN, DISTANCE_MAX); }

static inline vtx_status check_directivity(double directivity) { return check_positive(directivity, 0.1, 100); }

static inline vtx_status check_room_constant(double room_constant) { return check_positive(room_constant, 0.1, 1e8); }

/* Share of the source's power that crosses a square metre there: direct sound, and the reverberant field. */
static inline double direct_share(double directivity, double distance) { return directivity / (4 * pi * square(distance)); }

static inline double reverberant_share(double room_constant) { return 4 / room_constant; }

vtx_status vtx_level_sum(const double *level, size_t count, double *sum)
{
    vtx_status status = worse(require(level != NULL && count > 0), require(sum != NULL));
    double loudest = 0, energy = 0;
    for (size_t i = 0; level && i < count; i++) {
        status = worse(status, check_level(level[i]));
        loudest = level[i] > loudest ? level[i] : loudest;
    }
    if (status != VTX_OK)
        return poison(sum, status);
    for (size_t i = 0; i < count; i++)
        energy += energy_of(level[i] - loudest);
    *sum = loudest + level_of(energy);
    return VTX_OK;
}

vtx_status vtx_level_of_several(double level, int32_t count, double *sum)
{
    vtx_status status = worse(require(sum != NULL && count > 0), check_level(level));
    if (status == VTX_OK && count > COUNT_MAX)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(sum, status);
    *sum = level + level_of((double)count);
    return VTX_OK;
}

vtx_status vtx_level_without_background(double level, double background, double *source)
{
    vtx_status status = worse(require(source != NULL), worse(check_level(level), check_level(background)));
    if (status == VTX_OK && !(background < level))
        status = VTX_BAD_ARGUMENT;
    if (status == VTX_OK && level - background < 0.1)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(source, status);
    *source = level_less(level, background);
    return VTX_OK;
}

vtx_status vtx_level_at_distance(double level, double rated_distance, double distance, double *level_there)
{
    vtx_status status = worse(require(level_there != NULL), check_level(level));
    status = worse(status, worse(check_distance(rated_distance), check_distance(distance)));
    if (status != VTX_OK)
        return poison(level_there, status);
    *level_there = level + 20 * log10(rated_distance / distance);
    return VTX_OK;
}

static vtx_status give_distance(double found, double *distance)
{
    const vtx_status status = check_positive(found, RESULT_DISTANCE_MIN, RESULT_DISTANCE_MAX);
    if (status != VTX_OK)
        return poison(distance, status);
    *distance = found;
    return VTX_OK;
}

vtx_status vtx_distance_for_level(double level, double rated_distance, double wanted_level, double *distance)
{
    vtx_status status = worse(require(distance != NULL), worse(check_level(level), check_level(wanted_level)));
    status = worse(status, check_distance(rated_distance));
    if (status != VTX_OK)
        return poison(distance, status);
    return give_distance(rated_distance * sqrt(energy_of(level - wanted_level)), distance);
}

vtx_status vtx_sound_power_level(double level, double rated_distance, double directivity, double *power_level)
{
    vtx_status status = worse(require(power_level != NULL), check_level(level));
    status = worse(status, worse(check_distance(rated_distance), check_directivity(directivity)));
    if (status != VTX_OK)
        return poison(power_level, status);
    *power_level = level - level_of(direct_share(directivity, rated_distance));
    return VTX_OK;
}

vtx_status vtx_room_constant(double area, double absorption, double *room_constant)
{
    vtx_status status = worse(require(room_constant != NULL), check_positive(area, 1, 1e6));
    status = worse(status, worse(check_share(absorption), check_range(absorption, 0.005, 0.99)));
    if (status != VTX_OK)
        return poison(room_constant, status);
    *room_constant = area * absorption / (1 - absorption);
    return VTX_OK;
}

vtx_status vtx_level_in_room(double level, double rated_distance, double distance, double directivity,
                             double room_constant, double *level_there)
{
    vtx_status status = worse(require(level_there != NULL), check_level(level));
    status = worse(status, worse(check_distance(rated_distance), check_distance(distance)));
    status = worse(status, worse(check_directivity(directivity), check_room_constant(room_constant)));
    if (status != VTX_OK)
        return poison(level_there, status);
    const double there = direct_share(directivity, distance) + reverberant_share(room_constant);
    *level_there = level + level_of(there / direct_share(directivity, rated_distance));
    return VTX_OK;
}

vtx_status vtx_distance_in_room(double level, double rated_distance, double wanted_level, double directivity,
                                double room_constant, double *distance)
{
    vtx_status status = worse(require(distance != NULL), worse(check_level(level), check_level(wanted_level)));
    status = worse(status, check_distance(rated_distance));
    status = worse(status, worse(check_directivity(directivity), check_room_constant(room_constant)));
    if (status != VTX_OK)
        return poison(distance, status);
    const double there = energy_of(wanted_level - level) * direct_share(directivity, rated_distance);
    const double direct = there - reverberant_share(room_constant);
    if (!(direct > 0))
        return poison(distance, VTX_NO_SOLUTION);
    return give_distance(sqrt(directivity / (4 * pi * direct)), distance);
}

vtx_status vtx_reverberation_distance(double directivity, double room_constant, double *distance)
{
    vtx_status status = worse(require(distance != NULL), check_directivity(directivity));
    status = worse(status, check_room_constant(room_constant));
    if (status != VTX_OK)
        return poison(distance, status);
    *distance = sqrt(directivity / (4 * pi * reverberant_share(room_constant)));
    return VTX_OK;
}

vtx_status vtx_attenuation_needed(double level, double background, double permissible, double *attenuation)
{
    vtx_status status = worse(require(attenuation != NULL), check_level(level));
    status = worse(status, worse(check_level(background), check_level(permissible)));
    const double least_margin = 1e-300; /* of less the logarithm is infinite */
    if (status == VTX_OK && !(permissible - background > least_margin))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(attenuation, status);
    *attenuation = level - level_less(permissible, background);
    return VTX_OK;
}
