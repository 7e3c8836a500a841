/* The media layer's batch forms on the vector unit. */
#include <vtx/water.h>

#include "../harness/vectors.h"

#include <vtx/moist_air.h>

extern const struct call_description calls_media[];
extern const size_t calls_media_count;

VECTOR_DECLARE(liquid_pressure);
VECTOR_DECLARE(liquid_temperature);
VECTOR_DECLARE(ice_pressure);
VECTOR_DECLARE(ice_temperature);
VECTOR_DECLARE(ideal_dew);
VECTOR_DECLARE(ideal_wet);

static void every_variant_gives_the_scalar_bits(void)
{
    static const struct vector_test tests[] = {
        { "vtx_water_saturation_pressure", { 0 }, NULL, { { 233.15, 647.096 } }, VECTOR_KERNELS(liquid_pressure), 100 },
        { "vtx_water_saturation_temperature", { 0 }, NULL, { { 18.95676, 22.06e6 } }, VECTOR_KERNELS(liquid_temperature), 100 },
        { "vtx_ice_sublimation_pressure", { 0 }, NULL, { { 150, 273.16 } }, VECTOR_KERNELS(ice_pressure), 100 },
        { "vtx_ice_sublimation_pressure", { 0 }, NULL, { { 50, 160 } }, VECTOR_KERNELS(ice_pressure), 0 },
        { "vtx_ice_sublimation_temperature", { 0 }, NULL, { { 6.1e-6, 611.657 } }, VECTOR_KERNELS(ice_temperature), 100 },
        { "vtx_ice_sublimation_temperature", { 0 }, NULL, { { 1e-9, 1e-5 } }, VECTOR_KERNELS(ice_temperature), 0 },
        { "vtx_moist_air_humidity", { VTX_AIR_IDEAL, VTX_RELATIVE_HUMIDITY, VTX_DEW_POINT }, NULL,
          { { 9e4, 1.1e5 }, { 260, 320 }, { 0.2, 1 } }, VECTOR_KERNELS(ideal_dew), 100 },
        { "vtx_moist_air_humidity", { VTX_AIR_IDEAL, VTX_RELATIVE_HUMIDITY, VTX_DEW_POINT }, NULL,
          { { 1e3, 5e6 }, { 200, 450 }, { 0, 1 } }, VECTOR_KERNELS(ideal_dew), 20 },
        { "vtx_moist_air_humidity", { VTX_AIR_IDEAL, VTX_RELATIVE_HUMIDITY, VTX_WET_BULB }, NULL,
          { { 5e4, 1.1e5 }, { 274, 320 }, { 0, 1 } }, VECTOR_KERNELS(ideal_wet), 99 },
        { "vtx_moist_air_humidity", { VTX_AIR_IDEAL, VTX_RELATIVE_HUMIDITY, VTX_WET_BULB }, NULL,
          { { 5e4, 1.1e5 }, { 233.15, 274 }, { 0, 1 } }, VECTOR_KERNELS(ideal_wet), 99 },
        { "vtx_moist_air_humidity", { VTX_AIR_IDEAL, VTX_RELATIVE_HUMIDITY, VTX_WET_BULB }, NULL,
          { { 1e3, 5e6 }, { 200, 450 }, { 0, 1 } }, VECTOR_KERNELS(ideal_wet), 20 },
    };
    check_vectors(calls_media, calls_media_count, tests, sizeof tests / sizeof tests[0]);
}

/* Long columns are fetched ahead. */
static void a_long_batch_gives_the_bits_of_its_pieces(void)
{
    enum { ITEMS = (1 << 18) + 1001, PIECE = 1000 };
    double *const t = malloc(ITEMS * sizeof *t), *const whole = malloc(ITEMS * sizeof *whole), *const pieces = malloc(ITEMS * sizeof *pieces);
    struct random_state r;
    random_seed(&r, 81);
    for (size_t i = 0; i < ITEMS; i++)
        t[i] = random_uniform(&r, 233.15, 473.15);
    EXPECT_OK(vtx_water_saturation_pressure_batch(ITEMS, t, sizeof *t, whole, sizeof *whole, NULL, NULL));
    for (size_t i = 0; i < ITEMS; i += PIECE)
        EXPECT_OK(vtx_water_saturation_pressure_batch(ITEMS - i < PIECE ? ITEMS - i : PIECE, t + i, sizeof *t, pieces + i, sizeof *pieces, NULL, NULL));
    EXPECT(memcmp(whole, pieces, ITEMS * sizeof *whole) == 0);
    free(t);
    free(whole);
    free(pieces);
}

static const struct test_case tests[] = {
    { "every variant gives the scalar bits", every_variant_gives_the_scalar_bits },
    { "a long batch gives the bits of its pieces", a_long_batch_gives_the_bits_of_its_pieces },
};
TEST_SUITE(media_vector, tests);
