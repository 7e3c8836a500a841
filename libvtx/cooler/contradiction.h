/* Whether readings break a law, and which of them is most likely wrong. Internal. */
#ifndef VTX_CONTRADICTION_H
#define VTX_CONTRADICTION_H

#include "signature.h"

/* Sets contradiction, wrong_reading and the advisory. */
vtx_status check_laws(const struct causes *c, const struct evidence *e, vtx_diagnosis *d);

#endif
