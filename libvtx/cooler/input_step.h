/* One input of a job moved by a part of its uncertainty. Internal. */
#ifndef VTX_INPUT_STEP_H
#define VTX_INPUT_STEP_H

#include <vtx/uncertainty.h>

#include "../base/numeric.h"

enum { INPUTS = 12 };

/* Standard uncertainties in the order of enum vtx_input; a tube efficiency below 0 becomes that of the tube's own band.
 * OK, BAD_ARGUMENT, OUT_OF_RANGE */
vtx_status gather_input_uncertainties(const vtx_job *job, const vtx_input_uncertainty *u, double steps[INPUTS]);

/* input: enum vtx_input; by: in the unit of its uncertainty. Steps that run into an end of the input's own range stop there. */
void step_input(vtx_job *job, int32_t input, double by);

#endif
