/* Reads a number with its unit from text: "6.3 bar(g)", "20 degC", "300 l/min", "0.6".
 *
 * Not a reader of files or numbers with errors. The locale plays no part: the decimal sign is the point.
 * See also: units.h for the units and the faults. */
#ifndef VTX_QUANTITY_H
#define VTX_QUANTITY_H

#include <vtx/units.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Value in SI of a text such as "5 mm" or "-12.5 degC". Blanks around the number and the unit are allowed.
 *
 * text       in   -  a decimal number and a unit; no unit for plain shares of VTX_DIMENSION_NUMBER
 * dimension  in   -  VTX_DIMENSION_*; the unit must belong to it
 * value      out  SI
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  the number as a C compiler reads it up to 15 digits and powers of ten within 22; else 4e-16 relative for every 22 powers of ten
 * source    as vtx_unit_to_si
 * note      a temperature difference is "5 K" or "9 delta degF"; "5 degC" is a point and refused as a difference
 * note      gauge pressures are refused here: use vtx_pressure_read, which asks for the barometer
 */
VTX_API vtx_status vtx_quantity_read(const char *text, int32_t dimension, double *value);

/* Absolute pressure of a text such as "6.3 bar(g)" or "101.3 kPa(a)".
 *
 * text              in   -   a decimal number and a pressure unit that says (g) or (a)
 * ambient_pressure  in   Pa  10000..200000   absolute: gauge zero, the site's barometer
 * pressure          out  Pa  absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_quantity_read
 * source    as vtx_unit_to_si
 */
VTX_API vtx_status vtx_pressure_read(const char *text, double ambient_pressure, double *pressure);

/* Why vtx_quantity_read refuses a text; VTX_UNIT_FAULT_NONE when it does not.
 *
 * text       in   -  as vtx_quantity_read
 * dimension  in   -  VTX_DIMENSION_*
 * fault      out  -  VTX_UNIT_FAULT_*
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  not applicable
 * source    not applicable
 */
VTX_API vtx_status vtx_quantity_fault(const char *text, int32_t dimension, int32_t *fault);

/* Why vtx_pressure_read refuses a text; VTX_UNIT_FAULT_NONE when it does not.
 *
 * text              in   -   as vtx_pressure_read
 * ambient_pressure  in   Pa  10000..200000   absolute
 * fault             out  -   VTX_UNIT_FAULT_*
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  not applicable
 * source    not applicable
 */
VTX_API vtx_status vtx_pressure_fault(const char *text, double ambient_pressure, int32_t *fault);

#ifdef __cplusplus
}
#endif

#endif
