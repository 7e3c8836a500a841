/* A number with its unit, read from text. */
#include <vtx/quantity.h>

#include "unit_table.h"

static int is_digit(char c) { return c >= '0' && c <= '9'; }
static int is_blank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

/* Digits and where the point stands; 19 digits fit into the mantissa, further ones only count. */
struct decimal {
    uint64_t mantissa;
    int digits, exponent;
};

static const char *read_digits(const char *at, int after_point, struct decimal *d)
{
    for (; is_digit(*at); at++) {
        if (d->digits < 19) {
            d->mantissa = 10 * d->mantissa + (uint64_t)(*at - '0');
            d->digits += d->mantissa > 0;
            d->exponent -= after_point;
        } else {
            d->exponent += !after_point;
        }
    }
    return at;
}

/* An exponent is read only when digits follow: the e may begin a unit. */
static const char *read_exponent(const char *at, struct decimal *d)
{
    const char *digits = at + 1 + (at[0] && (at[1] == '+' || at[1] == '-'));
    int exponent = 0;
    if ((*at != 'e' && *at != 'E') || !is_digit(*digits))
        return at;
    for (; is_digit(*digits); digits++)
        exponent = exponent < 10000 ? 10 * exponent + (*digits - '0') : exponent;
    d->exponent += at[1] == '-' ? -exponent : exponent;
    return digits;
}

/* mantissa * 10^exponent. Powers of ten to 22 are exact, and so is the mantissa below 2^53: then there is one rounding. */
static int32_t decimal_value(const struct decimal *d, double *value)
{
    static const double power[] = { 1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18,
                                    1e19, 1e20, 1e21, 1e22 };
    const int largest = (int)ARRAY_LENGTH(power) - 1;
    int exponent = d->exponent;
    *value = (double)d->mantissa;
    if (d->mantissa == 0)
        return VTX_UNIT_FAULT_NONE;
    if (exponent + d->digits > 300 || exponent + d->digits < -290)
        return VTX_UNIT_FAULT_MAGNITUDE;
    for (; exponent > largest; exponent -= largest)
        *value *= power[largest];
    for (; exponent < -largest; exponent += largest)
        *value /= power[largest];
    *value = exponent < 0 ? *value / power[-exponent] : *value * power[exponent];
    return VTX_UNIT_FAULT_NONE;
}

static const char *skip_blanks(const char *at)
{
    while (is_blank(*at))
        at++;
    return at;
}

/* Leaves *text behind the number. */
static int32_t read_number(const char **text, double *value)
{
    struct decimal d = { 0, 0, 0 };
    const char *at = skip_blanks(*text);
    const int negative = *at == '-';
    at += *at == '-' || *at == '+';
    if (!is_digit(*at) && !(*at == '.' && is_digit(at[1])))
        return VTX_UNIT_FAULT_NO_NUMBER;
    at = read_digits(at, 0, &d);
    if (*at == '.')
        at = read_digits(at + 1, 1, &d);
    if (*at == ',')
        return VTX_UNIT_FAULT_DECIMAL_COMMA;
    at = read_exponent(at, &d);
    *text = at;
    const int32_t fault = decimal_value(&d, value);
    *value = negative ? -*value : *value;
    return fault;
}

/* ambient_pressure null: no barometer. */
static int32_t read_quantity(const char *text, int32_t dimension, const double *ambient_pressure, double *value)
{
    struct unit_scale scale;
    double number;
    int32_t fault = read_number(&text, &number);
    if (fault != VTX_UNIT_FAULT_NONE)
        return fault;
    text = skip_blanks(text);
    size_t length = strlen(text);
    while (length > 0 && is_blank(text[length - 1]))
        length--;
    fault = find_unit(text, length, dimension, &scale);
    if (fault != VTX_UNIT_FAULT_NONE)
        return fault;
    if (scale.gauge && !ambient_pressure)
        return VTX_UNIT_FAULT_NO_BAROMETER;
    return scale_to_si(&scale, dimension, ambient_pressure ? *ambient_pressure : 0, number, value);
}

vtx_status vtx_quantity_read(const char *text, int32_t dimension, double *value)
{
    const vtx_status status = require(text && value && is_dimension(dimension));
    if (status != VTX_OK || read_quantity(text, dimension, NULL, value) != VTX_UNIT_FAULT_NONE)
        return poison(value, VTX_BAD_ARGUMENT);
    return VTX_OK;
}

vtx_status vtx_pressure_read(const char *text, double ambient_pressure, double *pressure)
{
    const vtx_status status = worse(require(text && pressure), check_ambient_pressure(ambient_pressure));
    if (status != VTX_OK)
        return poison(pressure, status);
    if (read_quantity(text, VTX_DIMENSION_PRESSURE, &ambient_pressure, pressure) != VTX_UNIT_FAULT_NONE)
        return poison(pressure, VTX_BAD_ARGUMENT);
    return VTX_OK;
}

vtx_status vtx_quantity_fault(const char *text, int32_t dimension, int32_t *fault)
{
    double value;
    const vtx_status status = require(text && fault && is_dimension(dimension));
    if (status != VTX_OK)
        return poison_integer(fault, status);
    *fault = read_quantity(text, dimension, NULL, &value);
    return VTX_OK;
}

vtx_status vtx_pressure_fault(const char *text, double ambient_pressure, int32_t *fault)
{
    double value;
    const vtx_status status = worse(require(text && fault), check_ambient_pressure(ambient_pressure));
    if (status != VTX_OK)
        return poison_integer(fault, status);
    *fault = read_quantity(text, VTX_DIMENSION_PRESSURE, &ambient_pressure, &value);
    return VTX_OK;
}
