/* Numbers with units, read from text. */
#include <locale.h>

#include <vtx/quantity.h>

#include "../harness/harness.h"

static void texts_of_the_trade_are_read(void)
{
    static const struct { const char *text; int32_t dimension; double si; } good[] = {
        { "20 degC", VTX_DIMENSION_TEMPERATURE, 293.15 },
        { "5 K", VTX_DIMENSION_TEMPERATURE, 5 },
        { "5 K", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, 5 },
        { "-9 delta degF", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, -5 },
        { "\t300 l/min \r\n", VTX_DIMENSION_VOLUME_FLOW, 0.005 },
        { "300L/min", VTX_DIMENSION_VOLUME_FLOW, 0.005 },
        { "12 ft3/min", VTX_DIMENSION_VOLUME_FLOW, 12 * 0.0004719474432 },
        { "+.5 in", VTX_DIMENSION_LENGTH, 0.0127 },
        { "8. mm", VTX_DIMENSION_LENGTH, 0.008 },
        { "1e-3 m", VTX_DIMENSION_LENGTH, 0.001 },
        { "1.5E+2 W", VTX_DIMENSION_POWER, 150 },
        { "0.6", VTX_DIMENSION_NUMBER, 0.6 },
        { "60 %", VTX_DIMENSION_NUMBER, 0.6 },
        { "60%", VTX_DIMENSION_NUMBER, 0.6 },
        { "0 m", VTX_DIMENSION_LENGTH, 0 },
        { "0e999 m", VTX_DIMENSION_LENGTH, 0 },
        { "85 dB(A)", VTX_DIMENSION_LEVEL, 85 },
        { "7.3 bar(a)", VTX_DIMENSION_PRESSURE, 730000 },
    };
    double si;
    for (size_t i = 0; i < sizeof good / sizeof good[0]; i++) {
        EXPECT_OK(vtx_quantity_read(good[i].text, good[i].dimension, &si));
        EXPECT_WITHIN(si, good[i].si, 4e-16 * fabs(good[i].si) + 1e-300);
    }
    EXPECT_OK(vtx_pressure_read("6.3 bar(g)", 98000, &si));
    EXPECT_NEAR(si, 728000, 3e-16);
    EXPECT_OK(vtx_pressure_read(" 90 psig", 98000, &si));
    EXPECT_NEAR(si, 98000 + 90 * 6894.757293168361, 3e-16);
    EXPECT_OK(vtx_pressure_read("0.73 MPa(a)", 98000, &si));
    EXPECT_NEAR(si, 730000, 3e-16);
}

static void texts_are_refused_for_the_right_reason(void)
{
    static const struct { const char *text; int32_t dimension, fault; } bad[] = {
        { "", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_NUMBER },
        { "mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_NUMBER },
        { "nan mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_NUMBER },
        { "inf mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_NUMBER },
        { "-Infinity K", VTX_DIMENSION_TEMPERATURE, VTX_UNIT_FAULT_NO_NUMBER },
        { "--5 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_NUMBER },
        { ". mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_NUMBER },
        { "6,3 bar(a)", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_DECIMAL_COMMA },
        { "1,200 l/min", VTX_DIMENSION_VOLUME_FLOW, VTX_UNIT_FAULT_DECIMAL_COMMA },
        { "1e999 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_MAGNITUDE },
        { "1e-999 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_MAGNITUDE },
        { "1e299 km", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_MAGNITUDE },
        { "1e99999999999999999999 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_MAGNITUDE },
        { "5", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_NO_UNIT },
        { "5 ", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_NO_UNIT },
        { "5 MM", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_UNKNOWN },
        { "0x10 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_UNKNOWN },
        { "1.2.3 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_UNKNOWN },
        { "5 mm 6", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_UNKNOWN },
        { "5 + 3 mm", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_UNKNOWN },
        { "5 kg", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_WRONG_DIMENSION },
        { "5 bar(g)", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_WRONG_DIMENSION },
        { "0.5 bar(g)", VTX_DIMENSION_PRESSURE_DIFFERENCE, VTX_UNIT_FAULT_WRONG_DIMENSION },
        { "60 %", VTX_DIMENSION_LENGTH, VTX_UNIT_FAULT_WRONG_DIMENSION },
        { "300 l/min", VTX_DIMENSION_MASS_FLOW, VTX_UNIT_FAULT_WRONG_DIMENSION },
        { "6.3 bar", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_GAUGE_OR_ABSOLUTE },
        { "90 psi", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_GAUGE_OR_ABSOLUTE },
        { "6.3 bar(g)", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_NO_BAROMETER },
        { "5 degC", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, VTX_UNIT_FAULT_POINT_OR_DIFFERENCE },
        { "5 delta degC", VTX_DIMENSION_TEMPERATURE, VTX_UNIT_FAULT_POINT_OR_DIFFERENCE },
        { "30 scfm", VTX_DIMENSION_VOLUME_FLOW, VTX_UNIT_FAULT_STANDARD_FLOW },
        { "30 Nm3/h", VTX_DIMENSION_MASS_FLOW, VTX_UNIT_FAULT_STANDARD_FLOW },
        { "300 l/min (ANR)", VTX_DIMENSION_VOLUME_FLOW, VTX_UNIT_FAULT_STANDARD_FLOW },
        { "-300 degC", VTX_DIMENSION_TEMPERATURE, VTX_UNIT_FAULT_BELOW_ZERO },
        { "0 K", VTX_DIMENSION_TEMPERATURE, VTX_UNIT_FAULT_BELOW_ZERO },
        { "0 bar(a)", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_BELOW_ZERO },
        { "6.3 bar(a)", VTX_DIMENSION_PRESSURE, VTX_UNIT_FAULT_NONE },
    };
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        double si = 1;
        int32_t fault = 0;
        EXPECT_OK(vtx_quantity_fault(bad[i].text, bad[i].dimension, &fault));
        EXPECT_STATUS(fault, bad[i].fault);
        if (bad[i].fault != VTX_UNIT_FAULT_NONE) {
            EXPECT_STATUS(vtx_quantity_read(bad[i].text, bad[i].dimension, &si), VTX_BAD_ARGUMENT);
            EXPECT(isnan(si));
        }
        EXPECT(strcmp(vtx_unit_fault_text(fault), "unknown fault") != 0);
    }
    EXPECT(strcmp(vtx_unit_fault_text(0), "unknown fault") == 0);
}

static void a_gauge_pressure_needs_a_barometer_and_stays_above_zero(void)
{
    double p = 1;
    int32_t fault;
    EXPECT_STATUS(vtx_pressure_read("-1.2 bar(g)", 98000, &p), VTX_BAD_ARGUMENT);
    EXPECT(isnan(p));
    EXPECT_OK(vtx_pressure_fault("-1.2 bar(g)", 98000, &fault));
    EXPECT_STATUS(fault, VTX_UNIT_FAULT_BELOW_ZERO);
    EXPECT_OK(vtx_pressure_fault("-0.9 bar(g)", 98000, &fault));
    EXPECT_STATUS(fault, VTX_UNIT_FAULT_NONE);
    EXPECT_OK(vtx_pressure_fault("6 bar", 98000, &fault));
    EXPECT_STATUS(fault, VTX_UNIT_FAULT_GAUGE_OR_ABSOLUTE);
    EXPECT_STATUS(vtx_pressure_read("6 bar(g)", 0.98, &p), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_pressure_read("6 bar(g)", (double)NAN, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_fault("6 bar(g)", 0.98, &fault), VTX_OUT_OF_RANGE);
    EXPECT(fault == -1);
}

/* The C library reads the same text in the C locale: up to 15 digits the same bits. */
static void numbers_are_read_as_the_compiler_reads_them(void)
{
    struct random_state r;
    double ours;
    char text[64];
    random_seed(&r, 2);
    for (int i = 0; i < 20000; i++) {
        const int digits = (int)random_uniform(&r, 0, 15);
        snprintf(text, sizeof text, "%.*e", digits, random_log_uniform(&r, 1e-6, 1e21));
        EXPECT_OK(vtx_quantity_read(text, VTX_DIMENSION_NUMBER, &ours));
        EXPECT(digits > 14 || ours == strtod(text, NULL));
        snprintf(text, sizeof text, "%.*g", 17, random_log_uniform(&r, 1e-280, 1e280));
        EXPECT_OK(vtx_quantity_read(text, VTX_DIMENSION_NUMBER, &ours));
        EXPECT_NEAR(ours, strtod(text, NULL), 5e-15);
    }
    EXPECT_OK(vtx_quantity_read("0.00000000000000000000000000000000000000000123456789", VTX_DIMENSION_NUMBER, &ours));
    EXPECT_NEAR(ours, 1.23456789e-42, 1e-15);
    EXPECT_OK(vtx_quantity_read("123456789012345678901234567890", VTX_DIMENSION_NUMBER, &ours));
    EXPECT_NEAR(ours, 123456789012345678901234567890.0, 1e-15);
    EXPECT_OK(vtx_quantity_read("0.10000000000000000000000000000000000000000000000000000000001", VTX_DIMENSION_NUMBER, &ours));
    EXPECT_NEAR(ours, 0.1, 3e-16);
}

static void the_locale_plays_no_part(void)
{
    static const char *const names[] = { "de_DE.UTF-8", "de_DE", "fr_FR.UTF-8", "C.UTF-8", "C" };
    double si;
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        if (!setlocale(LC_ALL, names[i]))
            continue;
        EXPECT_OK(vtx_quantity_read("6.25 mm", VTX_DIMENSION_LENGTH, &si));
        EXPECT(si == 6.25 * 1e-3);
        EXPECT_STATUS(vtx_quantity_read("6,25 mm", VTX_DIMENSION_LENGTH, &si), VTX_BAD_ARGUMENT);
    }
    setlocale(LC_ALL, "C");
}

/* Whatever the bytes, the call returns and answers one of two codes. */
static void any_bytes_are_survived(void)
{
    static const char alphabet[] = "0123456789.,+-eE ()/*gabrpsiCKFdBm%\xc2\xb0\xce\xbc\xff\x01";
    struct random_state r;
    random_seed(&r, 3);
    for (int i = 0; i < 50000; i++) {
        char text[64];
        double value = 0;
        const size_t length = (size_t)random_uniform(&r, 0, 63);
        for (size_t k = 0; k < length; k++)
            text[k] = alphabet[(size_t)random_uniform(&r, 0, sizeof alphabet - 1)];
        text[length] = 0;
        const int32_t dimension = (int32_t)random_uniform(&r, 100, 130);
        const int32_t status = vtx_quantity_read(text, dimension, &value);
        EXPECT((status == VTX_OK && isfinite(value)) || (status == VTX_BAD_ARGUMENT && isnan(value)));
    }
}

static void misuse_is_refused(void)
{
    double value = 1;
    int32_t fault = 1;
    EXPECT_STATUS(vtx_quantity_read(NULL, VTX_DIMENSION_LENGTH, &value), VTX_BAD_ARGUMENT);
    EXPECT(isnan(value));
    EXPECT_STATUS(vtx_quantity_read("1 m", VTX_DIMENSION_LENGTH, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_quantity_read("1 m", 0, &value), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_quantity_fault("1 m", 0, &fault), VTX_BAD_ARGUMENT);
    EXPECT(fault == -1);
    EXPECT_STATUS(vtx_quantity_fault("1 m", VTX_DIMENSION_LENGTH, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_read(NULL, 1e5, &value), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_read("1 bar(a)", 1e5, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_fault(NULL, 1e5, &fault), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "texts of the trade are read", texts_of_the_trade_are_read },
    { "texts are refused for the right reason", texts_are_refused_for_the_right_reason },
    { "a gauge pressure needs a barometer and stays above zero", a_gauge_pressure_needs_a_barometer_and_stays_above_zero },
    { "numbers are read as the compiler reads them", numbers_are_read_as_the_compiler_reads_them },
    { "the locale plays no part", the_locale_plays_no_part },
    { "any bytes are survived", any_bytes_are_survived },
    { "misuse is refused", misuse_is_refused },
};
TEST_SUITE(quantity, tests);
