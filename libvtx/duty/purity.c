/* The purity of compressed air to ask for. */
#include <vtx/air_quality.h>
#include <vtx/purity.h>

#include "compressor_kernel.h"

#define WATER_CLASSES 6
#define OIL_CLASSES 4
#define PARTICLE_CLASSES 7
#define COUNTED_CLASSES 5
#define FINEST 5e-6   /* m, end of the counted sizes */
#define CLASS_7 40e-6 /* m, ISO 8573-1:2001, from memory */
#define QUARTZ 2650.0 /* kg/m3 */

static vtx_status give_class(int32_t found, int32_t *class_)
{
    if (found == 0)
        return poison_integer(class_, VTX_NO_SOLUTION);
    *class_ = found;
    return VTX_OK;
}

static vtx_status check_flows(double free_air, double content_flow)
{
    return worse(check_positive(free_air, NO_FLOW, FREE_AIR_MAX), check_positive(content_flow, 1e-20, 1));
}

vtx_status vtx_water_class_to_ask(double pressure_dew_point, int32_t *water_class)
{
    vtx_status status = worse(require(water_class != NULL), check_positive(pressure_dew_point, 150, 373.15));
    if (status != VTX_OK)
        return poison_integer(water_class, status);
    int32_t asked = WATER_CLASSES;
    for (double limit; asked > 0; asked--)
        if (vtx_water_class_dew_point(asked, &limit) == VTX_OK && limit <= pressure_dew_point)
            break;
    return give_class(asked, water_class);
}

vtx_status vtx_oil_class_to_ask(double free_air, double oil_flow, int32_t *oil_class)
{
    vtx_status status = worse(require(oil_class != NULL), check_flows(free_air, oil_flow));
    if (status != VTX_OK)
        return poison_integer(oil_class, status);
    int32_t asked = OIL_CLASSES;
    for (double limit; asked > 0; asked--)
        if (vtx_oil_class_limit(asked, &limit) == VTX_OK && limit * free_air <= oil_flow)
            break;
    return give_class(asked, oil_class);
}

static vtx_status check_particle_class(int32_t particle_class)
{
    if (particle_class == VTX_AIR_CLASS_X)
        return VTX_OUT_OF_RANGE;
    return require(particle_class >= 1 && particle_class <= PARTICLE_CLASSES);
}

vtx_status vtx_particle_class_size(int32_t particle_class, double *size)
{
    vtx_status status = worse(require(size != NULL), check_particle_class(particle_class));
    if (status != VTX_OK)
        return poison(size, status);
    *size = particle_class == PARTICLE_CLASSES ? CLASS_7 : FINEST;
    return VTX_OK;
}

vtx_status vtx_particle_class_dirt(int32_t particle_class, double *mass_content)
{
    double fine, coarse;
    vtx_status status = worse(require(mass_content != NULL), check_particle_class(particle_class));
    if (status != VTX_OK)
        return poison(mass_content, status);
    if (particle_class > COUNTED_CLASSES)
        return vtx_particle_class_mass(particle_class, mass_content);
    status = vtx_particle_class_counts(particle_class, &fine, NULL, &coarse);
    if (status != VTX_OK)
        return poison(mass_content, status);
    *mass_content = coarse * QUARTZ * pi / 6 * FINEST * square(FINEST);
    return VTX_OK;
}

vtx_status vtx_particle_class_to_ask(double passage, double size_ratio, double free_air, double dirt_flow, int32_t *particle_class)
{
    vtx_status status = worse(require(particle_class != NULL), check_positive(passage, 1e-5, 0.1));
    status = worse(status, worse(check_positive(size_ratio, 1, 1000), check_flows(free_air, dirt_flow)));
    if (status != VTX_OK)
        return poison_integer(particle_class, status);
    int32_t asked = PARTICLE_CLASSES;
    for (double size, content; asked > 0; asked--)
        if (vtx_particle_class_size(asked, &size) == VTX_OK && vtx_particle_class_dirt(asked, &content) == VTX_OK
            && size * size_ratio <= passage && content * free_air <= dirt_flow)
            break;
    return give_class(asked, particle_class);
}
