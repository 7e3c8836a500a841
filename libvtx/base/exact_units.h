/* Units that are exact by definition, in SI. Internal. NIST SP 811 (2008) appendix B. */
#ifndef VTX_EXACT_UNITS_H
#define VTX_EXACT_UNITS_H

#define INCH 0.0254
#define FOOT 0.3048
#define POUND 0.45359237
#define GRAVITY 9.80665 /* standard acceleration */
#define POUND_FORCE (POUND * GRAVITY)
#define PSI (POUND_FORCE / (INCH * INCH))
#define BTU 1055.05585262 /* International Table */
#define CUBIC_FOOT (FOOT * FOOT * FOOT)
#define CUBIC_INCH (INCH * INCH * INCH)
#define HORSEPOWER (550 * FOOT * POUND_FORCE)

#endif
