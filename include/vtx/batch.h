/* Rules of the _batch forms: one text for all of them, no function of its own.
 *
 * Not a vector language: a batch call does what a loop of scalar calls would, item by item, to the same bits.
 * See also: each room's header, whose batch prototypes stand at its end.
 *
 * Calls that answer a status and take a number or a parameter struct have a batch form. Those that take arrays or text
 * (vtx_chain_mass_flow, vtx_unit_to_si) have none, nor have those that take selectors alone (vtx_reference_state,
 * vtx_water_class_dew_point), whose one answer would stand in the whole column, nor vtx_*_init.
 *
 * vtx_f_batch takes the number of items n and then the arguments of vtx_f in the same order:
 *
 *   double, parameter struct   pointer and byte stride (ptrdiff_t; 0 repeats one value; negative allowed)
 *   int32_t selector           by value, one for all items
 *   output                     pointer and byte stride
 *   status                     n codes, may be null
 *   failed                     number of items that did not answer VTX_OK, may be null
 *
 * Outputs after the first may be null. Any byte alignment is accepted. An output may be exactly one input (same
 * pointer, same stride); no other overlap is allowed. Inputs are never written. Floating-point flags are left as found.
 *
 * status    OK              every item answered VTX_OK, or n is 0
 *           PARTIAL         some or all items failed; each has its code in status and poisoned outputs
 *           BAD_ARGUMENT    null input or first output, or an output stride of 0 with n > 1: only failed is written, with n
 */
#ifndef VTX_BATCH_H
#define VTX_BATCH_H

#include <vtx/status.h>

#endif
