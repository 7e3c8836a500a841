/* Units against their definitions. */
#include <vtx/units.h>

#include "../harness/harness.h"

static int unit_row(const struct data_row *row, double *actual)
{
    char symbol[64];
    int dimension;
    if (sscanf(row->quantity, "%63s %d", symbol, &dimension) != 2)
        return 0;
    return vtx_unit_to_si(symbol, dimension, row->input[0], actual), 1;
}

static void definitions_are_reproduced(void) { check_rows("units.csv", unit_row, 63); }

/* Every symbol of every dimension: SI and back over many magnitudes. */
static void every_unit_converts_back(void)
{
    struct random_state r;
    int symbols = 0;
    random_seed(&r, 1);
    for (int32_t d = VTX_DIMENSION_NUMBER; d <= VTX_DIMENSION_ANGLE; d++)
        for (int32_t i = 0; vtx_unit_symbol(d, i) && d != VTX_DIMENSION_PRESSURE; i++, symbols++)
            for (int k = 0; k < 20; k++) {
                const double value = random_log_uniform(&r, 1e-3, 1e6);
                double si, back;
                EXPECT_OK(vtx_unit_to_si(vtx_unit_symbol(d, i), d, value, &si));
                EXPECT_OK(vtx_unit_from_si(vtx_unit_symbol(d, i), d, si, &back));
                EXPECT_WITHIN(back, value, 5e-16 * (value + (d == VTX_DIMENSION_TEMPERATURE ? 500 : 0)));
            }
    EXPECT(symbols > 180);
}

static int is_gauge(const char *symbol) { return strstr(symbol, "(g)") || symbol[strlen(symbol) - 1] == 'g'; }

/* A pressure is listed with its mark: all are accepted where the barometer is known, the absolute ones everywhere. */
static void every_listed_pressure_is_accepted(void)
{
    const double ambient = 98000;
    struct random_state r;
    int32_t i;
    random_seed(&r, 2);
    for (i = 0; vtx_unit_symbol(VTX_DIMENSION_PRESSURE, i); i++) {
        const char *symbol = vtx_unit_symbol(VTX_DIMENSION_PRESSURE, i);
        const int gauge = is_gauge(symbol);
        const double value = random_log_uniform(&r, 1e-3, 1e6);
        double si = 0, back, again, zero;
        EXPECT_OK(vtx_pressure_to_si(symbol, ambient, value, &si));
        EXPECT_OK(vtx_pressure_from_si(symbol, ambient, si, &back));
        EXPECT_OK(vtx_pressure_to_si(symbol, ambient, back, &again));
        EXPECT_NEAR(again, si, 1e-15);
        EXPECT_OK(vtx_pressure_from_si(symbol, ambient, ambient, &zero));
        EXPECT((zero == 0) == gauge);
        EXPECT_STATUS(vtx_unit_to_si(symbol, VTX_DIMENSION_PRESSURE, value, &again), gauge ? VTX_BAD_ARGUMENT : VTX_OK);
        EXPECT(gauge ? isnan(again) : again == si);
    }
    EXPECT(i == 36);
}

static int pressure_is_listed(const char *unit, const char *mark)
{
    char wanted[40];
    snprintf(wanted, sizeof wanted, "%s%s", unit, mark);
    for (int32_t i = 0; vtx_unit_symbol(VTX_DIMENSION_PRESSURE, i); i++)
        if (strcmp(vtx_unit_symbol(VTX_DIMENSION_PRESSURE, i), wanted) == 0)
            return 1;
    return 0;
}

static void every_unit_of_a_pressure_difference_is_listed_as_a_pressure(void)
{
    for (int32_t i = 0; vtx_unit_symbol(VTX_DIMENSION_PRESSURE_DIFFERENCE, i); i++) {
        EXPECT(pressure_is_listed(vtx_unit_symbol(VTX_DIMENSION_PRESSURE_DIFFERENCE, i), "(a)"));
        EXPECT(pressure_is_listed(vtx_unit_symbol(VTX_DIMENSION_PRESSURE_DIFFERENCE, i), "(g)"));
    }
    EXPECT(vtx_unit_symbol(VTX_DIMENSION_PRESSURE, -1) == NULL);
}

static void the_first_unit_of_each_dimension_is_SI(void)
{
    for (int32_t d = VTX_DIMENSION_NUMBER; d <= VTX_DIMENSION_ANGLE; d++) {
        double si;
        EXPECT(vtx_unit_symbol(d, 0) != NULL);
        EXPECT_OK(vtx_unit_to_si(vtx_unit_symbol(d, 0), d, 0.7, &si));
        EXPECT(si == 0.7);
        EXPECT(strcmp(vtx_dimension_text(d), "unknown dimension") != 0);
    }
    EXPECT(vtx_unit_symbol(0, 0) == NULL);
    EXPECT(vtx_unit_symbol(VTX_DIMENSION_LENGTH, -1) == NULL);
    EXPECT(vtx_unit_symbol(VTX_DIMENSION_LENGTH, INT32_MAX) == NULL);
    EXPECT(strcmp(vtx_dimension_text(0), "unknown dimension") == 0);
}

/* A symbol may serve two dimensions (K, in.lbf, N/mm2), but only where the table says so; a gauge pressure serves none without a barometer. */
static void a_unit_of_another_dimension_is_refused(void)
{
    static const char *const shared[] = { "K", "degR", "in.lbf", "ft.lbf", "N/mm2" };
    for (int32_t d = VTX_DIMENSION_NUMBER; d <= VTX_DIMENSION_ANGLE; d++)
        for (int32_t i = 0; vtx_unit_symbol(d, i); i++) {
            const int gauge = d == VTX_DIMENSION_PRESSURE && is_gauge(vtx_unit_symbol(d, i));
            int owners = 0, may_share = 0;
            double si;
            for (int32_t other = VTX_DIMENSION_NUMBER; other <= VTX_DIMENSION_ANGLE; other++)
                owners += vtx_unit_to_si(vtx_unit_symbol(d, i), other, 300, &si) == VTX_OK;
            for (size_t k = 0; k < sizeof shared / sizeof shared[0]; k++)
                may_share |= strcmp(shared[k], vtx_unit_symbol(d, i)) == 0;
            EXPECT(owners == 1 + may_share - gauge);
        }
}

static void gauge_zero_is_the_barometer(void)
{
    double p, value;
    EXPECT_OK(vtx_pressure_to_si("bar(g)", 98000, 6.3, &p));
    EXPECT_NEAR(p, 728000, 1e-15);
    EXPECT_OK(vtx_pressure_to_si("barg", 98000, 6.3, &p));
    EXPECT_NEAR(p, 728000, 1e-15);
    EXPECT_OK(vtx_pressure_to_si("bar(a)", 98000, 6.3, &p));
    EXPECT_NEAR(p, 630000, 1e-15);
    EXPECT_OK(vtx_pressure_to_si("psig", 101325, 100, &p));
    EXPECT_NEAR(p, 101325 + 100 * 6894.757293168361, 1e-15);
    EXPECT_OK(vtx_pressure_to_si("psia", 101325, 14.5, &p));
    EXPECT_NEAR(p, 14.5 * 6894.757293168361, 1e-15);
    EXPECT_OK(vtx_pressure_to_si("kPa (gauge)", 90000, -20, &p));
    EXPECT_NEAR(p, 70000, 1e-15);
    EXPECT_OK(vtx_pressure_from_si("MPa(g)", 90000, 790000, &value));
    EXPECT_NEAR(value, 0.7, 1e-15);
    EXPECT_OK(vtx_pressure_from_si("mbar(abs)", 90000, 790000, &value));
    EXPECT_NEAR(value, 7900, 1e-15);
    EXPECT_OK(vtx_absolute_pressure(97000, 600000, &p));
    EXPECT(p == 697000);
    EXPECT_OK(vtx_gauge_pressure(97000, 697000, &value));
    EXPECT(value == 600000);
}

static void a_pressure_without_gauge_or_absolute_is_refused(void)
{
    double p;
    EXPECT_STATUS(vtx_pressure_to_si("bar", 98000, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT(isnan(p));
    EXPECT_STATUS(vtx_unit_to_si("bar", VTX_DIMENSION_PRESSURE, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("bar(g)", VTX_DIMENSION_PRESSURE, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_from_si("bar(g)", VTX_DIMENSION_PRESSURE, 6.3e5, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("bar(g)", VTX_DIMENSION_PRESSURE_DIFFERENCE, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_unit_to_si("bar(a)", VTX_DIMENSION_PRESSURE, 6.3, &p));
    EXPECT_STATUS(vtx_pressure_to_si("mg", 98000, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_to_si("(g)", 98000, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_to_si("g", 98000, 6.3, &p), VTX_BAD_ARGUMENT);
}

static void nothing_lies_below_absolute_zero(void)
{
    double x;
    EXPECT_STATUS(vtx_unit_to_si("degC", VTX_DIMENSION_TEMPERATURE, -273.15, &x), VTX_BAD_ARGUMENT);
    EXPECT(isnan(x));
    EXPECT_STATUS(vtx_unit_to_si("degF", VTX_DIMENSION_TEMPERATURE, -460, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_from_si("degF", VTX_DIMENSION_TEMPERATURE, -1, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_to_si("bar(g)", 98000, -0.98, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_to_si("bar(a)", 98000, 0, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_from_si("bar(g)", 98000, 0, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_absolute_pressure(98000, -98000, &x), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_unit_to_si("delta degC", VTX_DIMENSION_TEMPERATURE_DIFFERENCE, -300, &x));
    EXPECT_NEAR(x, -300, 1e-15);
}

static void an_ambient_pressure_in_bar_is_noticed(void)
{
    double p;
    EXPECT_STATUS(vtx_pressure_to_si("bar(g)", 0.98, 6.3, &p), VTX_OUT_OF_RANGE);
    EXPECT(isnan(p));
    EXPECT_STATUS(vtx_pressure_to_si("bar(a)", 98e4, 6.3, &p), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_pressure_to_si("bar(a)", -98000, 6.3, &p), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_to_si("bar(a)", (double)NAN, 6.3, &p), VTX_BAD_ARGUMENT);
}

static void other_spellings_mean_the_same(void)
{
    static const struct { const char *spelled; int32_t dimension; const char *symbol; } same[] = {
        { "m\xc2\xb3/h", VTX_DIMENSION_VOLUME_FLOW, "m3/h" },
        { "\xc2\xb0""C", VTX_DIMENSION_TEMPERATURE, "degC" },
        { "\xc2\xb5m", VTX_DIMENSION_LENGTH, "um" },
        { "\xce\xbcm", VTX_DIMENSION_LENGTH, "um" },
        { "mm\xc2\xb2", VTX_DIMENSION_AREA, "mm2" },
        { "W/(m2 K)", VTX_DIMENSION_HEAT_TRANSFER, "W/(m2.K)" },
        { "W / ( m\xc2\xb2 \xc2\xb7 K )", VTX_DIMENSION_HEAT_TRANSFER, "W/(m2.K)" },
        { "in-lbf", VTX_DIMENSION_TORQUE, "in.lbf" },
        { "ft*lbf", VTX_DIMENSION_ENERGY, "ft.lbf" },
        { " l / min ", VTX_DIMENSION_VOLUME_FLOW, "l/min" },
        { "L/min", VTX_DIMENSION_VOLUME_FLOW, "l/min" },
    };
    double a, b;
    for (size_t i = 0; i < sizeof same / sizeof same[0]; i++) {
        EXPECT_OK(vtx_unit_to_si(same[i].spelled, same[i].dimension, 3.7, &a));
        EXPECT_OK(vtx_unit_to_si(same[i].symbol, same[i].dimension, 3.7, &b));
        EXPECT(a == b);
    }
    EXPECT_STATUS(vtx_unit_to_si("mpa", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1, &a), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("m m", VTX_DIMENSION_LENGTH, 1, &a), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("a very long word that is no unit at all and should not fit", VTX_DIMENSION_LENGTH, 1, &a), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("\xc2", VTX_DIMENSION_LENGTH, 1, &a), VTX_BAD_ARGUMENT);
}

static void misuse_is_refused_and_poisons(void)
{
    double x = 1;
    EXPECT_STATUS(vtx_unit_to_si(NULL, VTX_DIMENSION_LENGTH, 1, &x), VTX_BAD_ARGUMENT);
    EXPECT(isnan(x));
    EXPECT_STATUS(vtx_unit_to_si("m", VTX_DIMENSION_LENGTH, 1, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_from_si("m", VTX_DIMENSION_LENGTH, 1, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_to_si("bar(a)", 98000, 1, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_from_si(NULL, 98000, 1, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("m", 0, 1, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("m", 199, 1, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("m", VTX_DIMENSION_LENGTH, (double)NAN, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("km", VTX_DIMENSION_LENGTH, (double)INFINITY, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_to_si("km", VTX_DIMENSION_LENGTH, 1e308, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_unit_from_si("mm3", VTX_DIMENSION_VOLUME, 1e300, &x), VTX_BAD_ARGUMENT);
    EXPECT(isnan(x));
    EXPECT_OK(vtx_unit_to_si("mm", VTX_DIMENSION_LENGTH, 1e299, &x));
}

static const struct test_case tests[] = {
    { "definitions are reproduced", definitions_are_reproduced },
    { "every unit converts back", every_unit_converts_back },
    { "every listed pressure is accepted", every_listed_pressure_is_accepted },
    { "every unit of a pressure difference is listed as a pressure", every_unit_of_a_pressure_difference_is_listed_as_a_pressure },
    { "the first unit of each dimension is SI", the_first_unit_of_each_dimension_is_SI },
    { "a unit of another dimension is refused", a_unit_of_another_dimension_is_refused },
    { "gauge zero is the barometer", gauge_zero_is_the_barometer },
    { "a pressure without gauge or absolute is refused", a_pressure_without_gauge_or_absolute_is_refused },
    { "nothing lies below absolute zero", nothing_lies_below_absolute_zero },
    { "an ambient pressure in bar is noticed", an_ambient_pressure_in_bar_is_noticed },
    { "other spellings mean the same", other_spellings_mean_the_same },
    { "misuse is refused and poisons", misuse_is_refused_and_poisons },
};
TEST_SUITE(units, tests);
