/* Words for the library's codes: what was read, what can be wrong, how to prove it, what to do. */
#ifndef DIAGNOSE_WORDS_H
#define DIAGNOSE_WORDS_H

#include <stdint.h>

/* Of enum vtx_read. */
const char *words_reading(int32_t reading);
const char *words_how_to_read(int32_t reading);

/* Of enum vtx_cause: a clause that follows "most likely". */
const char *words_cause(int32_t cause);
const char *words_proof(int32_t cause);
const char *words_remedy(int32_t cause);

/* Of enum vtx_input and enum vtx_transfer_term: where an uncertainty comes from. */
const char *words_input(int32_t input);

/* Of enum vtx_contradiction. */
const char *words_contradiction(int32_t contradiction);

#endif
