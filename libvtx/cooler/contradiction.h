/* Whether readings break a law, and which of them is most likely wrong. Internal. */
#ifndef VTX_CONTRADICTION_H
#define VTX_CONTRADICTION_H

#include "signature.h"

/* Whether a job with the stated supply could show these readings; enum vtx_contradiction. */
vtx_status find_contradiction(const vtx_job *job, const struct evidence *e, int32_t *contradiction);

/* Sets contradiction, wrong_reading and the advisory. */
vtx_status check_laws(const struct causes *c, const struct evidence *e, vtx_diagnosis *d);

#endif
