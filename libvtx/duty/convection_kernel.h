/* Heat transfer of a surface in a room. Internal: shared by surfaces and insulation. */
#ifndef VTX_CONVECTION_KERNEL_H
#define VTX_CONVECTION_KERNEL_H

#include <vtx/convection.h>

/* vtx_room_coefficient without the checks. OK, OUT_OF_RANGE (film temperature outside air.h) */
vtx_status room_coefficient(int32_t body, double pressure, double surface_temperature, double air_temperature, double air_speed,
                            double length, double emissivity, double surroundings_temperature, vtx_surface_coefficient *out);

#endif
