/* The standard atmosphere against its tables. */
#include <vtx/atmosphere.h>

#include "../harness/harness.h"

static int atmosphere_row(const struct data_row *row, double *actual)
{
    const struct { const char *name; int32_t (*call)(double x, double *y); } calls[] = {
        { "pressure", vtx_atmosphere_pressure },       { "temperature", vtx_atmosphere_temperature },
        { "density", vtx_atmosphere_density },         { "altitude", vtx_atmosphere_altitude },
        { "geopotential", vtx_geopotential_altitude }, { "geometric", vtx_geometric_altitude },
    };
    for (size_t i = 0; i < sizeof calls / sizeof calls[0]; i++)
        if (strcmp(row->quantity, calls[i].name) == 0)
            return calls[i].call(row->input[0], actual), 1;
    if (strcmp(row->quantity, "station") == 0)
        return vtx_station_pressure(row->input[0], row->input[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("atmosphere.csv", atmosphere_row, 16); }

static void altitude_and_pressure_are_inverse(void)
{
    double p, back, last = 1e9;
    for (double h = -2000; h <= 11000; h += 6.5) {
        EXPECT_OK(vtx_atmosphere_pressure(h, &p));
        EXPECT(p < last);
        last = p;
        EXPECT_OK(vtx_atmosphere_altitude(p, &back));
        EXPECT_WITHIN(back, h, 2e-11);
    }
}

static void geometric_and_geopotential_are_inverse(void)
{
    double z, back;
    for (double h = -2000; h <= 11000; h += 50) {
        EXPECT_OK(vtx_geometric_altitude(h, &z));
        EXPECT(h == 0 || z > h);
        EXPECT_OK(vtx_geopotential_altitude(z, &back));
        EXPECT_WITHIN(back, h, 2e-11);
    }
}

/* dp/dH = -rho g: hydrostatics ties pressure, temperature and density together. */
static void the_air_column_carries_itself(void)
{
    for (double h = -1990; h < 10990; h += 123) {
        double above, below, density;
        EXPECT_OK(vtx_atmosphere_pressure(h + 1, &above));
        EXPECT_OK(vtx_atmosphere_pressure(h - 1, &below));
        EXPECT_OK(vtx_atmosphere_density(h, &density));
        EXPECT_NEAR((below - above) / 2, density * 9.80665, 1e-7);
    }
}

static void the_reduced_pressure_at_sea_level_is_the_barometer(void)
{
    double p;
    for (double q = 87000; q <= 108500; q += 500) {
        EXPECT_OK(vtx_station_pressure(q, 0, &p));
        EXPECT_NEAR(p, q, 1e-14);
    }
}

static void what_is_not_covered_says_so(void)
{
    double x;
    EXPECT_STATUS(vtx_atmosphere_pressure(-2001, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_atmosphere_pressure(11001, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_atmosphere_altitude(22632, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_atmosphere_altitude(0, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_station_pressure(240, 101325, &x), VTX_OUT_OF_RANGE);
    EXPECT(isnan(x));
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "altitude and pressure are inverse", altitude_and_pressure_are_inverse },
    { "geometric and geopotential are inverse", geometric_and_geopotential_are_inverse },
    { "the air column carries itself", the_air_column_carries_itself },
    { "the reduced pressure at sea level is the barometer", the_reduced_pressure_at_sea_level_is_the_barometer },
    { "what is not covered says so", what_is_not_covered_says_so },
};
TEST_SUITE(atmosphere, tests);
