/* The table of units: exact factors by definition, conventional ones where marked. */
#include "exact_units.h"
#include "unit_table.h"

enum { SYMBOL_MAX = 24 };

struct unit {
    char symbol[SYMBOL_MAX];
    int32_t dimension;
    double factor, offset;
};

/* The first of each dimension is the SI unit. NIST SP 811 (2008) appendix B. */
static const struct unit units[] = {
    { "1", VTX_DIMENSION_NUMBER, 1, 0 },
    { "%", VTX_DIMENSION_NUMBER, 1e-2, 0 },
    { "ppm", VTX_DIMENSION_NUMBER, 1e-6, 0 },
    { "kg/kg", VTX_DIMENSION_MASS_RATIO, 1, 0 },
    { "g/kg", VTX_DIMENSION_MASS_RATIO, 1e-3, 0 },
    { "mg/kg", VTX_DIMENSION_MASS_RATIO, 1e-6, 0 },
    { "lb/lb", VTX_DIMENSION_MASS_RATIO, 1, 0 },
    { "gr/lb", VTX_DIMENSION_MASS_RATIO, 1.0 / 7000, 0 },
    { "m", VTX_DIMENSION_LENGTH, 1, 0 },
    { "km", VTX_DIMENSION_LENGTH, 1e3, 0 },
    { "dm", VTX_DIMENSION_LENGTH, 1e-1, 0 },
    { "cm", VTX_DIMENSION_LENGTH, 1e-2, 0 },
    { "mm", VTX_DIMENSION_LENGTH, 1e-3, 0 },
    { "um", VTX_DIMENSION_LENGTH, 1e-6, 0 },
    { "in", VTX_DIMENSION_LENGTH, INCH, 0 },
    { "ft", VTX_DIMENSION_LENGTH, FOOT, 0 },
    { "m2", VTX_DIMENSION_AREA, 1, 0 },
    { "cm2", VTX_DIMENSION_AREA, 1e-4, 0 },
    { "mm2", VTX_DIMENSION_AREA, 1e-6, 0 },
    { "in2", VTX_DIMENSION_AREA, INCH * INCH, 0 },
    { "ft2", VTX_DIMENSION_AREA, FOOT * FOOT, 0 },
    { "m3", VTX_DIMENSION_VOLUME, 1, 0 },
    { "dm3", VTX_DIMENSION_VOLUME, 1e-3, 0 },
    { "l", VTX_DIMENSION_VOLUME, 1e-3, 0 },
    { "L", VTX_DIMENSION_VOLUME, 1e-3, 0 },
    { "ml", VTX_DIMENSION_VOLUME, 1e-6, 0 },
    { "mL", VTX_DIMENSION_VOLUME, 1e-6, 0 },
    { "cm3", VTX_DIMENSION_VOLUME, 1e-6, 0 },
    { "mm3", VTX_DIMENSION_VOLUME, 1e-9, 0 },
    { "in3", VTX_DIMENSION_VOLUME, CUBIC_INCH, 0 },
    { "ft3", VTX_DIMENSION_VOLUME, CUBIC_FOOT, 0 },
    { "gal(US)", VTX_DIMENSION_VOLUME, 231 * CUBIC_INCH, 0 },
    { "s", VTX_DIMENSION_TIME, 1, 0 },
    { "ms", VTX_DIMENSION_TIME, 1e-3, 0 },
    { "min", VTX_DIMENSION_TIME, 60, 0 },
    { "h", VTX_DIMENSION_TIME, 3600, 0 },
    { "d", VTX_DIMENSION_TIME, 86400, 0 },
    { "kg", VTX_DIMENSION_MASS, 1, 0 },
    { "g", VTX_DIMENSION_MASS, 1e-3, 0 },
    { "mg", VTX_DIMENSION_MASS, 1e-6, 0 },
    { "t", VTX_DIMENSION_MASS, 1e3, 0 },
    { "lb", VTX_DIMENSION_MASS, POUND, 0 },
    { "oz", VTX_DIMENSION_MASS, POUND / 16, 0 },
    { "K", VTX_DIMENSION_TEMPERATURE, 1, 0 },
    { "degC", VTX_DIMENSION_TEMPERATURE, 1, 273.15 },
    { "C", VTX_DIMENSION_TEMPERATURE, 1, 273.15 },
    { "degF", VTX_DIMENSION_TEMPERATURE, 1 / 1.8, 459.67 },
    { "F", VTX_DIMENSION_TEMPERATURE, 1 / 1.8, 459.67 },
    { "degR", VTX_DIMENSION_TEMPERATURE, 1 / 1.8, 0 },
    { "K", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, 1, 0 },
    { "delta.degC", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, 1, 0 },
    { "delta.degF", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, 1 / 1.8, 0 },
    { "degR", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, 1 / 1.8, 0 },
    { "Pa", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1, 0 },
    { "hPa", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1e2, 0 },
    { "kPa", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1e3, 0 },
    { "MPa", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1e6, 0 },
    { "mbar", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1e2, 0 },
    { "bar", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1e5, 0 },
    { "psi", VTX_DIMENSION_PRESSURE_DIFFERENCE, PSI, 0 },
    { "atm", VTX_DIMENSION_PRESSURE_DIFFERENCE, 101325, 0 },
    { "kgf/cm2", VTX_DIMENSION_PRESSURE_DIFFERENCE, GRAVITY * 1e4, 0 },
    { "N/mm2", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1e6, 0 },
    { "Torr", VTX_DIMENSION_PRESSURE_DIFFERENCE, 101325.0 / 760, 0 },
    { "mmHg", VTX_DIMENSION_PRESSURE_DIFFERENCE, 13595.1 * GRAVITY * 1e-3, 0 },         /* conventional, 0 degC */
    { "inHg", VTX_DIMENSION_PRESSURE_DIFFERENCE, 13595.1 * GRAVITY * INCH, 0 },         /* conventional, 0 degC */
    { "inHg60F", VTX_DIMENSION_PRESSURE_DIFFERENCE, 3376.85, 0 },                       /* conventional, 60 degF */
    { "mmH2O", VTX_DIMENSION_PRESSURE_DIFFERENCE, GRAVITY, 0 },                         /* conventional, 1000 kg/m3 */
    { "inH2O", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1000 * GRAVITY * INCH, 0 },           /* conventional, 1000 kg/m3 */
    { "kg/s", VTX_DIMENSION_MASS_FLOW, 1, 0 },
    { "kg/min", VTX_DIMENSION_MASS_FLOW, 1.0 / 60, 0 },
    { "kg/h", VTX_DIMENSION_MASS_FLOW, 1.0 / 3600, 0 },
    { "g/s", VTX_DIMENSION_MASS_FLOW, 1e-3, 0 },
    { "g/min", VTX_DIMENSION_MASS_FLOW, 1e-3 / 60, 0 },
    { "g/h", VTX_DIMENSION_MASS_FLOW, 1e-3 / 3600, 0 },
    { "lb/s", VTX_DIMENSION_MASS_FLOW, POUND, 0 },
    { "lb/min", VTX_DIMENSION_MASS_FLOW, POUND / 60, 0 },
    { "lb/h", VTX_DIMENSION_MASS_FLOW, POUND / 3600, 0 },
    { "m3/s", VTX_DIMENSION_VOLUME_FLOW, 1, 0 },
    { "m3/min", VTX_DIMENSION_VOLUME_FLOW, 1.0 / 60, 0 },
    { "m3/h", VTX_DIMENSION_VOLUME_FLOW, 1.0 / 3600, 0 },
    { "dm3/s", VTX_DIMENSION_VOLUME_FLOW, 1e-3, 0 },
    { "l/s", VTX_DIMENSION_VOLUME_FLOW, 1e-3, 0 },
    { "L/s", VTX_DIMENSION_VOLUME_FLOW, 1e-3, 0 },
    { "l/min", VTX_DIMENSION_VOLUME_FLOW, 1e-3 / 60, 0 },
    { "L/min", VTX_DIMENSION_VOLUME_FLOW, 1e-3 / 60, 0 },
    { "l/h", VTX_DIMENSION_VOLUME_FLOW, 1e-3 / 3600, 0 },
    { "L/h", VTX_DIMENSION_VOLUME_FLOW, 1e-3 / 3600, 0 },
    { "ft3/s", VTX_DIMENSION_VOLUME_FLOW, CUBIC_FOOT, 0 },
    { "ft3/min", VTX_DIMENSION_VOLUME_FLOW, CUBIC_FOOT / 60, 0 },
    { "cfm", VTX_DIMENSION_VOLUME_FLOW, CUBIC_FOOT / 60, 0 },
    { "ft3/h", VTX_DIMENSION_VOLUME_FLOW, CUBIC_FOOT / 3600, 0 },
    { "mm3/s", VTX_DIMENSION_VOLUME_FLOW, 1e-9, 0 },
    { "mm3/min", VTX_DIMENSION_VOLUME_FLOW, 1e-9 / 60, 0 },
    { "cm3/min", VTX_DIMENSION_VOLUME_FLOW, 1e-6 / 60, 0 },
    { "in3/min", VTX_DIMENSION_VOLUME_FLOW, CUBIC_INCH / 60, 0 },
    { "gal(US)/min", VTX_DIMENSION_VOLUME_FLOW, 231 * CUBIC_INCH / 60, 0 },
    { "m/s", VTX_DIMENSION_VELOCITY, 1, 0 },
    { "m/min", VTX_DIMENSION_VELOCITY, 1.0 / 60, 0 },
    { "mm/s", VTX_DIMENSION_VELOCITY, 1e-3, 0 },
    { "mm/min", VTX_DIMENSION_VELOCITY, 1e-3 / 60, 0 },
    { "km/h", VTX_DIMENSION_VELOCITY, 1 / 3.6, 0 },
    { "ft/s", VTX_DIMENSION_VELOCITY, FOOT, 0 },
    { "ft/min", VTX_DIMENSION_VELOCITY, FOOT / 60, 0 },
    { "in/min", VTX_DIMENSION_VELOCITY, INCH / 60, 0 },
    { "1/s", VTX_DIMENSION_FREQUENCY, 1, 0 },
    { "Hz", VTX_DIMENSION_FREQUENCY, 1, 0 },
    { "kHz", VTX_DIMENSION_FREQUENCY, 1e3, 0 },
    { "1/min", VTX_DIMENSION_FREQUENCY, 1.0 / 60, 0 },
    { "rpm", VTX_DIMENSION_FREQUENCY, 1.0 / 60, 0 },
    { "1/h", VTX_DIMENSION_FREQUENCY, 1.0 / 3600, 0 },
    { "N", VTX_DIMENSION_FORCE, 1, 0 },
    { "mN", VTX_DIMENSION_FORCE, 1e-3, 0 },
    { "kN", VTX_DIMENSION_FORCE, 1e3, 0 },
    { "kgf", VTX_DIMENSION_FORCE, GRAVITY, 0 },
    { "lbf", VTX_DIMENSION_FORCE, POUND_FORCE, 0 },
    { "N.m", VTX_DIMENSION_TORQUE, 1, 0 },
    { "Nm", VTX_DIMENSION_TORQUE, 1, 0 },
    { "in.lbf", VTX_DIMENSION_TORQUE, INCH * POUND_FORCE, 0 },
    { "ft.lbf", VTX_DIMENSION_TORQUE, FOOT * POUND_FORCE, 0 },
    { "J", VTX_DIMENSION_ENERGY, 1, 0 },
    { "kJ", VTX_DIMENSION_ENERGY, 1e3, 0 },
    { "MJ", VTX_DIMENSION_ENERGY, 1e6, 0 },
    { "W.h", VTX_DIMENSION_ENERGY, 3600, 0 },
    { "Wh", VTX_DIMENSION_ENERGY, 3600, 0 },
    { "kWh", VTX_DIMENSION_ENERGY, 3.6e6, 0 },
    { "MWh", VTX_DIMENSION_ENERGY, 3.6e9, 0 },
    { "Btu", VTX_DIMENSION_ENERGY, BTU, 0 },
    { "in.lbf", VTX_DIMENSION_ENERGY, INCH * POUND_FORCE, 0 },
    { "ft.lbf", VTX_DIMENSION_ENERGY, FOOT * POUND_FORCE, 0 },
    { "W", VTX_DIMENSION_POWER, 1, 0 },
    { "mW", VTX_DIMENSION_POWER, 1e-3, 0 },
    { "kW", VTX_DIMENSION_POWER, 1e3, 0 },
    { "MW", VTX_DIMENSION_POWER, 1e6, 0 },
    { "Btu/h", VTX_DIMENSION_POWER, BTU / 3600, 0 },
    { "kcal/h", VTX_DIMENSION_POWER, 1.163, 0 },                                        /* International Table calorie */
    { "hp", VTX_DIMENSION_POWER, HORSEPOWER, 0 },
    { "PS", VTX_DIMENSION_POWER, 75 * GRAVITY, 0 },
    { "ton(refrigeration)", VTX_DIMENSION_POWER, 12000 * BTU / 3600, 0 },
    { "kg/m3", VTX_DIMENSION_DENSITY, 1, 0 },
    { "g/m3", VTX_DIMENSION_DENSITY, 1e-3, 0 },
    { "mg/m3", VTX_DIMENSION_DENSITY, 1e-6, 0 },
    { "kg/dm3", VTX_DIMENSION_DENSITY, 1e3, 0 },
    { "g/cm3", VTX_DIMENSION_DENSITY, 1e3, 0 },
    { "g/l", VTX_DIMENSION_DENSITY, 1, 0 },
    { "lb/ft3", VTX_DIMENSION_DENSITY, POUND / CUBIC_FOOT, 0 },
    { "gr/ft3", VTX_DIMENSION_DENSITY, POUND / 7000 / CUBIC_FOOT, 0 },
    { "J/kg", VTX_DIMENSION_SPECIFIC_ENERGY, 1, 0 },
    { "kJ/kg", VTX_DIMENSION_SPECIFIC_ENERGY, 1e3, 0 },
    { "Btu/lb", VTX_DIMENSION_SPECIFIC_ENERGY, 2326, 0 },
    { "J/(kg.K)", VTX_DIMENSION_HEAT_CAPACITY, 1, 0 },
    { "kJ/(kg.K)", VTX_DIMENSION_HEAT_CAPACITY, 1e3, 0 },
    { "Btu/(lb.degF)", VTX_DIMENSION_HEAT_CAPACITY, 4186.8, 0 },
    { "J/m3", VTX_DIMENSION_ENERGY_DENSITY, 1, 0 },
    { "kJ/m3", VTX_DIMENSION_ENERGY_DENSITY, 1e3, 0 },
    { "J/mm3", VTX_DIMENSION_ENERGY_DENSITY, 1e9, 0 },
    { "W.s/mm3", VTX_DIMENSION_ENERGY_DENSITY, 1e9, 0 },
    { "J/cm3", VTX_DIMENSION_ENERGY_DENSITY, 1e6, 0 },
    { "N/mm2", VTX_DIMENSION_ENERGY_DENSITY, 1e6, 0 },
    { "in.lbf/in3", VTX_DIMENSION_ENERGY_DENSITY, PSI, 0 },
    { "hp.min/in3", VTX_DIMENSION_ENERGY_DENSITY, HORSEPOWER * 60 / CUBIC_INCH, 0 },
    { "kW/(m3/min)", VTX_DIMENSION_ENERGY_DENSITY, 6e4, 0 },
    { "kW/(100.ft3/min)", VTX_DIMENSION_ENERGY_DENSITY, 1e3 * 60 / (100 * CUBIC_FOOT), 0 },
    { "hp/(100.ft3/min)", VTX_DIMENSION_ENERGY_DENSITY, HORSEPOWER * 60 / (100 * CUBIC_FOOT), 0 },
    { "W/m2", VTX_DIMENSION_HEAT_FLUX, 1, 0 },
    { "kW/m2", VTX_DIMENSION_HEAT_FLUX, 1e3, 0 },
    { "W/cm2", VTX_DIMENSION_HEAT_FLUX, 1e4, 0 },
    { "W/mm2", VTX_DIMENSION_HEAT_FLUX, 1e6, 0 },
    { "Btu/(h.ft2)", VTX_DIMENSION_HEAT_FLUX, BTU / 3600 / (FOOT * FOOT), 0 },
    { "W/(m2.K)", VTX_DIMENSION_HEAT_TRANSFER, 1, 0 },
    { "Btu/(h.ft2.degF)", VTX_DIMENSION_HEAT_TRANSFER, BTU / 3600 / (FOOT * FOOT) * 1.8, 0 },
    { "W/(m.K)", VTX_DIMENSION_CONDUCTIVITY, 1, 0 },
    { "mW/(m.K)", VTX_DIMENSION_CONDUCTIVITY, 1e-3, 0 },
    { "Btu/(h.ft.degF)", VTX_DIMENSION_CONDUCTIVITY, BTU / 3600 / FOOT * 1.8, 0 },
    { "Pa.s", VTX_DIMENSION_VISCOSITY, 1, 0 },
    { "mPa.s", VTX_DIMENSION_VISCOSITY, 1e-3, 0 },
    { "uPa.s", VTX_DIMENSION_VISCOSITY, 1e-6, 0 },
    { "cP", VTX_DIMENSION_VISCOSITY, 1e-3, 0 },
    { "m3/(s.Pa)", VTX_DIMENSION_CONDUCTANCE, 1, 0 },
    { "dm3/(s.bar)", VTX_DIMENSION_CONDUCTANCE, 1e-8, 0 },
    { "l/(s.bar)", VTX_DIMENSION_CONDUCTANCE, 1e-8, 0 },
    { "l/(min.bar)", VTX_DIMENSION_CONDUCTANCE, 1e-8 / 60, 0 },
    { "dB", VTX_DIMENSION_LEVEL, 1, 0 },
    { "dB(A)", VTX_DIMENSION_LEVEL, 1, 0 },
    { "dBA", VTX_DIMENSION_LEVEL, 1, 0 },
    { "dB(C)", VTX_DIMENSION_LEVEL, 1, 0 },
    { "rad", VTX_DIMENSION_ANGLE, 1, 0 },
    { "deg", VTX_DIMENSION_ANGLE, 0.017453292519943295, 0 },
};

/* Every unit of VTX_DIMENSION_PRESSURE_DIFFERENCE as a pressure, the SI unit first. For vtx_unit_symbol; marked_pressure knows more spellings. */
static const char pressures[][SYMBOL_MAX] = {
    "Pa(a)", "hPa(a)", "kPa(a)", "MPa(a)", "mbar(a)", "bar(a)", "bara", "psi(a)", "psia", "atm(a)", "kgf/cm2(a)", "N/mm2(a)", "Torr(a)",
    "mmHg(a)", "inHg(a)", "inHg60F(a)", "mmH2O(a)", "inH2O(a)",
    "Pa(g)", "hPa(g)", "kPa(g)", "MPa(g)", "mbar(g)", "bar(g)", "barg", "psi(g)", "psig", "atm(g)", "kgf/cm2(g)", "N/mm2(g)", "Torr(g)",
    "mmHg(g)", "inHg(g)", "inHg60F(g)", "mmH2O(g)", "inH2O(g)",
};

/* Recognised only to be refused for the right reason. */
static const char standard_flow[][SYMBOL_MAX] = {
    "scfm", "SCFM", "scfh", "SCFH", "slpm", "SLPM", "sl/min", "sL/min", "sm3/h", "Sm3/h", "Nm3/h", "Nm3/min", "Nl/min", "NL/min", "nl/min",
    "ncfm", "NCFM", "l/min(ANR)", "L/min(ANR)", "m3/h(ANR)", "m3/min(ANR)", "dm3/s(ANR)", "l/s(ANR)",
};

/* Gauge and absolute marks, longest first within each kind. */
static const struct mark {
    char text[8];
    int gauge, bare;
} marks[] = { { "(gauge)", 1, 0 }, { "(g)", 1, 0 }, { "g", 1, 1 }, { "(abs)", 0, 0 }, { "(a)", 0, 0 }, { "a", 0, 1 } };

int is_dimension(int32_t dimension) { return dimension >= VTX_DIMENSION_NUMBER && dimension <= VTX_DIMENSION_ANGLE; }

const char *vtx_unit_symbol(int32_t dimension, int32_t index)
{
    if (index < 0)
        return NULL;
    if (dimension == VTX_DIMENSION_PRESSURE)
        return index < (int32_t)ARRAY_LENGTH(pressures) ? pressures[index] : NULL;
    for (size_t i = 0; i < ARRAY_LENGTH(units); i++)
        if (units[i].dimension == dimension && index-- == 0)
            return units[i].symbol;
    return NULL;
}

static const struct unit *look_up(const char *symbol, int32_t dimension)
{
    for (size_t i = 0; i < ARRAY_LENGTH(units); i++)
        if (units[i].dimension == dimension && strcmp(units[i].symbol, symbol) == 0)
            return &units[i];
    return NULL;
}

static int in_any_dimension(const char *symbol)
{
    for (int32_t d = VTX_DIMENSION_NUMBER; d <= VTX_DIMENSION_ANGLE; d++)
        if (look_up(symbol, d))
            return 1;
    return 0;
}

static int is_standard_flow(const char *symbol)
{
    for (size_t i = 0; i < ARRAY_LENGTH(standard_flow); i++)
        if (strcmp(standard_flow[i], symbol) == 0)
            return 1;
    return 0;
}

/* The pressure unit before a gauge or absolute mark; null without a mark. A bare g or a is known behind bar and psi only. */
static const struct unit *marked_pressure(const char *symbol, int *gauge)
{
    char unmarked[SYMBOL_MAX];
    const size_t length = strlen(symbol);
    for (size_t i = 0; i < ARRAY_LENGTH(marks); i++) {
        const size_t mark = strlen(marks[i].text);
        if (length <= mark || strcmp(symbol + length - mark, marks[i].text) != 0)
            continue;
        memcpy(unmarked, symbol, length - mark);
        unmarked[length - mark] = 0;
        if (marks[i].bare && strcmp(unmarked, "bar") != 0 && strcmp(unmarked, "psi") != 0)
            continue;
        *gauge = marks[i].gauge;
        return look_up(unmarked, VTX_DIMENSION_PRESSURE_DIFFERENCE);
    }
    return NULL;
}

/* Bytes of other spellings (UTF-8) and what they stand for here. */
static const struct spelling {
    char text[4], plain[4];
} spellings[] = {
    { "\xc2\xb2", "2" }, { "\xc2\xb3", "3" }, { "\xc2\xb0", "deg" }, { "\xc2\xb5", "u" }, { "\xce\xbc", "u" }, { "\xc2\xb7", "." }, { "*", "." }, { "-", "." },
};

static const struct spelling *spelling_at(const char *text, size_t length)
{
    for (size_t i = 0; i < ARRAY_LENGTH(spellings); i++) {
        const size_t bytes = strlen(spellings[i].text);
        if (bytes <= length && memcmp(text, spellings[i].text, bytes) == 0)
            return &spellings[i];
    }
    return NULL;
}

static int is_blank(char c) { return c == ' ' || c == '\t'; }
static int is_operator(char c) { return c == '/' || c == '(' || c == ')' || c == '.' || c == 0; }

/* The table's spelling of text: a blank beside an operator is nothing, between words it is a product. 0 when too long. */
static int normalise(const char *text, size_t length, char symbol[SYMBOL_MAX])
{
    size_t used = 0;
    int blank = 0;
    symbol[0] = 0;
    for (size_t i = 0; i < length;) {
        const struct spelling *other = spelling_at(text + i, length - i);
        const char *plain = other ? other->plain : text + i;
        const size_t bytes = other ? strlen(plain) : 1;
        if (is_blank(text[i])) {
            blank = used > 0;
            i++;
            continue;
        }
        if (used + bytes + 2 > SYMBOL_MAX)
            return 0;
        if (blank && !is_operator(symbol[used - 1]) && !is_operator(plain[0]))
            symbol[used++] = '.';
        blank = 0;
        memcpy(symbol + used, plain, bytes);
        used += bytes;
        symbol[used] = 0;
        i += other ? strlen(other->text) : 1;
    }
    return 1;
}

static int32_t fault_of(const char *symbol, int32_t dimension)
{
    int gauge;
    const int point = look_up(symbol, VTX_DIMENSION_TEMPERATURE) != NULL;
    const int difference = look_up(symbol, VTX_DIMENSION_TEMPERATURE_DIFFERENCE) != NULL;
    if (is_standard_flow(symbol))
        return VTX_UNIT_FAULT_STANDARD_FLOW;
    if (dimension == VTX_DIMENSION_PRESSURE && look_up(symbol, VTX_DIMENSION_PRESSURE_DIFFERENCE))
        return VTX_UNIT_FAULT_GAUGE_OR_ABSOLUTE;
    if ((dimension == VTX_DIMENSION_TEMPERATURE && difference) || (dimension == VTX_DIMENSION_TEMPERATURE_DIFFERENCE && point))
        return VTX_UNIT_FAULT_POINT_OR_DIFFERENCE;
    return in_any_dimension(symbol) || marked_pressure(symbol, &gauge) ? VTX_UNIT_FAULT_WRONG_DIMENSION : VTX_UNIT_FAULT_UNKNOWN;
}

int32_t find_unit(const char *text, size_t length, int32_t dimension, struct unit_scale *scale)
{
    char symbol[SYMBOL_MAX];
    const struct unit *unit;
    scale->gauge = 0;
    if (!normalise(text, length, symbol))
        return VTX_UNIT_FAULT_UNKNOWN;
    if (!symbol[0] && dimension != VTX_DIMENSION_NUMBER)
        return VTX_UNIT_FAULT_NO_UNIT;
    if (dimension == VTX_DIMENSION_PRESSURE)
        unit = marked_pressure(symbol, &scale->gauge);
    else
        unit = look_up(symbol[0] ? symbol : "1", dimension);
    if (!unit)
        return fault_of(symbol, dimension);
    scale->factor = unit->factor;
    scale->offset = unit->offset;
    return VTX_UNIT_FAULT_NONE;
}
