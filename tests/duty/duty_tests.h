/* Records that several suites of the duty layer use. */
#ifndef VTX_TESTS_DUTY_TESTS_H
#define VTX_TESTS_DUTY_TESTS_H

#include <vtx/compressor.h>
#include <vtx/drying.h>
#include <vtx/filter.h>
#include <vtx/insulation.h>
#include <vtx/machining.h>
#include <vtx/material.h>
#include <vtx/part.h>
#include <vtx/surface.h>
#include <vtx/tool.h>
#include <vtx/touch.h>

#include "../harness/harness.h"

vtx_air_treatment sample_treatment(void);
vtx_compressor sample_compressor(void);
vtx_filter sample_filter(void);
vtx_part sample_part(void);
vtx_room sample_room(void);
vtx_tool sample_tool(void);
vtx_covered_tube sample_tube(void);

#endif
