/* Units of the trade to SI and back, with the dimension checked.
 *
 * Not a reader of text such as "6.3 bar(g)": see quantity.h. Not standard flow: a flow "at standard state" is a mass flow
 * and needs its reference state, see standard_flow.h.
 * See also: quantity.h. */
#ifndef VTX_UNITS_H
#define VTX_UNITS_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What a number measures. The SI unit in the remark is what the conversions work to and from. */
enum vtx_dimension {
    VTX_DIMENSION_NUMBER = 100,                /* 1: shares, efficiencies, relative humidity, mole fractions */
    VTX_DIMENSION_MASS_RATIO = 101,            /* kg/kg: humidity ratios */
    VTX_DIMENSION_LENGTH = 102,                /* m */
    VTX_DIMENSION_AREA = 103,                  /* m2 */
    VTX_DIMENSION_VOLUME = 104,                /* m3 */
    VTX_DIMENSION_TIME = 105,                  /* s */
    VTX_DIMENSION_MASS = 106,                  /* kg */
    VTX_DIMENSION_TEMPERATURE = 107,           /* K: a point on the scale, 20 degC is 293.15 K */
    VTX_DIMENSION_TEMPERATURE_DIFFERENCE = 108, /* K: an interval, 9 delta degF is 5 K */
    VTX_DIMENSION_PRESSURE = 109,              /* Pa absolute: the unit must say (a) or (g) */
    VTX_DIMENSION_PRESSURE_DIFFERENCE = 110,   /* Pa: a drop, a rise, a partial pressure */
    VTX_DIMENSION_MASS_FLOW = 111,             /* kg/s */
    VTX_DIMENSION_VOLUME_FLOW = 112,           /* m3/s at the state the flow really has, or at one named beside it */
    VTX_DIMENSION_VELOCITY = 113,              /* m/s */
    VTX_DIMENSION_FREQUENCY = 114,             /* 1/s: turns a second, Hz */
    VTX_DIMENSION_FORCE = 115,                 /* N */
    VTX_DIMENSION_TORQUE = 116,                /* N m */
    VTX_DIMENSION_ENERGY = 117,                /* J */
    VTX_DIMENSION_POWER = 118,                 /* W */
    VTX_DIMENSION_DENSITY = 119,               /* kg/m3: also water or oil content of air */
    VTX_DIMENSION_SPECIFIC_ENERGY = 120,       /* J/kg */
    VTX_DIMENSION_HEAT_CAPACITY = 121,         /* J/(kg K): also entropy */
    VTX_DIMENSION_ENERGY_DENSITY = 122,        /* J/m3: specific cutting energy, compressor energy per volume of free air */
    VTX_DIMENSION_HEAT_FLUX = 123,             /* W/m2 */
    VTX_DIMENSION_HEAT_TRANSFER = 124,         /* W/(m2 K) */
    VTX_DIMENSION_CONDUCTIVITY = 125,          /* W/(m K) */
    VTX_DIMENSION_VISCOSITY = 126,             /* Pa s */
    VTX_DIMENSION_CONDUCTANCE = 127,           /* m3/(s Pa): sonic conductance of ISO 6358 */
    VTX_DIMENSION_LEVEL = 128,                 /* dB */
    VTX_DIMENSION_ANGLE = 129                  /* rad */
};

/* Why a unit or a text with a unit is not accepted. */
enum vtx_unit_fault {
    VTX_UNIT_FAULT_NONE = 150,                  /* accepted */
    VTX_UNIT_FAULT_NO_NUMBER = 151,             /* the text does not begin with a decimal number; NaN and inf are none */
    VTX_UNIT_FAULT_DECIMAL_COMMA = 152,         /* a comma in the number: the decimal sign is the point, thousands are not grouped */
    VTX_UNIT_FAULT_MAGNITUDE = 153,             /* the number or its conversion is beyond about 1e300, or below 1e-290 and not 0 */
    VTX_UNIT_FAULT_NO_UNIT = 154,               /* a bare number where a unit is needed */
    VTX_UNIT_FAULT_UNKNOWN = 155,               /* no such unit here; capital and small letters differ */
    VTX_UNIT_FAULT_WRONG_DIMENSION = 156,       /* a unit of something else */
    VTX_UNIT_FAULT_GAUGE_OR_ABSOLUTE = 157,     /* a pressure that does not say whether it is (g) or (a) */
    VTX_UNIT_FAULT_NO_BAROMETER = 158,          /* a gauge pressure where the ambient pressure is not known */
    VTX_UNIT_FAULT_POINT_OR_DIFFERENCE = 159,   /* a temperature point for a difference, or the reverse */
    VTX_UNIT_FAULT_STANDARD_FLOW = 160,         /* scfm, Nm3/h and the like: worth nothing without their reference state */
    VTX_UNIT_FAULT_BELOW_ZERO = 161             /* at or below absolute zero of temperature or pressure */
};

/* Value in SI of a value in the named unit.
 *
 * unit       in   -  symbol as listed by vtx_unit_symbol; capital and small letters differ
 * dimension  in   -  VTX_DIMENSION_*; the unit must belong to it
 * value      in   the unit  any finite number whose result is finite; temperatures and absolute pressures above absolute zero
 * si         out  SI
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  2e-16 relative for plain factors
 * source    BIPM SI brochure 2019; NIST SP 811 (2008) appendix B for exact and conventional factors
 * note      gauge pressures are refused here: use vtx_pressure_to_si, which asks for the barometer
 */
VTX_API vtx_status vtx_unit_to_si(const char *unit, int32_t dimension, double value, double *si);

/* Value in the named unit of a value in SI.
 *
 * unit       in   -  symbol as listed by vtx_unit_symbol
 * dimension  in   -  VTX_DIMENSION_*; the unit must belong to it
 * si         in   SI  any finite number whose result is finite; temperatures and absolute pressures above absolute zero
 * value      out  the unit
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  3e-16 relative for plain factors, there and back 5e-16
 * source    as vtx_unit_to_si
 */
VTX_API vtx_status vtx_unit_from_si(const char *unit, int32_t dimension, double si, double *value);

/* Absolute pressure of a pressure in a gauge or absolute unit. Gauge zero is the site's barometer, not 101325 Pa.
 *
 * unit              in   -   symbol with (g) or (a): bar(g), kPa(a), psig, psia, ...
 * ambient_pressure  in   Pa  10000..200000   absolute; used by gauge units only, checked always
 * value             in   the unit
 * pressure          out  Pa  absolute, above 0
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  3e-16 relative to the larger of the two pressures
 * source    as vtx_unit_to_si
 */
VTX_API vtx_status vtx_pressure_to_si(const char *unit, double ambient_pressure, double value, double *pressure);

/* Pressure in a gauge or absolute unit of an absolute pressure.
 *
 * unit              in   -   symbol with (g) or (a): bar(g), kPa(a), psig, psia, ...
 * ambient_pressure  in   Pa  10000..200000   absolute; used by gauge units only, checked always
 * pressure          in   Pa  absolute, above 0
 * value             out  the unit
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  3e-16 relative to the larger of the two pressures
 * source    as vtx_unit_to_si
 */
VTX_API vtx_status vtx_pressure_from_si(const char *unit, double ambient_pressure, double pressure, double *value);

/* Absolute pressure of a gauge pressure.
 *
 * ambient_pressure  in   Pa  10000..200000   absolute: what the site's barometer shows, not reduced to sea level
 * gauge_pressure    in   Pa  above -ambient_pressure, to 1e9
 * pressure          out  Pa  absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding only
 * source    definition
 */
VTX_API vtx_status vtx_absolute_pressure(double ambient_pressure, double gauge_pressure, double *pressure);

/* Gauge pressure of an absolute pressure.
 *
 * ambient_pressure  in   Pa  10000..200000   absolute: what the site's barometer shows, not reduced to sea level
 * pressure          in   Pa  above 0, to 1e9   absolute
 * gauge_pressure    out  Pa  negative below ambient
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding only
 * source    definition
 */
VTX_API vtx_status vtx_gauge_pressure(double ambient_pressure, double pressure, double *gauge_pressure);

/* The accepted unit symbols of a dimension, one after the other: index 0 is the SI unit, null ends the list.
 *
 * dimension  in   -  VTX_DIMENSION_*; null for another number
 * index      in   -  0 and up
 *
 * status    none: returns static text or null, cannot fail
 * note      also accepted: superscript 2 and 3, a blank, *, - or a centred dot for the product, the degree sign for deg, the Greek letter for u in um and uPa.s (UTF-8)
 * note      pressures: absolute ones, (a), then gauge ones, (g); the latter for calls that know the barometer: vtx_pressure_to_si,
 *           vtx_pressure_from_si and those of quantity.h. (abs) and (gauge) are also accepted
 */
VTX_API const char *vtx_unit_symbol(int32_t dimension, int32_t index);

/* What a dimension is called, for messages; "unknown dimension" for other numbers.
 *
 * dimension  in   -  VTX_DIMENSION_*
 *
 * status    none: returns static text, cannot fail
 */
VTX_API const char *vtx_dimension_text(int32_t dimension);

/* What a fault means, for messages; "unknown fault" for other numbers.
 *
 * fault      in   -  VTX_UNIT_FAULT_*
 *
 * status    none: returns static text, cannot fail
 */
VTX_API const char *vtx_unit_fault_text(int32_t fault);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_absolute_pressure_batch(size_t n, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        const double *gauge_pressure, ptrdiff_t gauge_pressure_stride, double *pressure, ptrdiff_t pressure_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_gauge_pressure_batch(size_t n, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        const double *pressure, ptrdiff_t pressure_stride, double *gauge_pressure, ptrdiff_t gauge_pressure_stride,
        int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
