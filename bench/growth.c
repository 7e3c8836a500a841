/* make bench-growth: what an element of a batch costs from 1 to 1e7 elements, beside copying as many bytes as the call reads and writes.
 * With a file name as argument the same numbers go there as JSON. */
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <vtx.h>

#include "machine.h"
#include "timing.h"

enum { COLUMNS = 2, POWERS = 8 };

static const size_t largest = 10000000;

static double *in[COLUMNS];
static char *out;
static size_t length; /* elements of a call */
static size_t copied; /* bytes an element */
static size_t failures;
static const double ambient[1] = { 101325 }, line[1] = { 8e5 }, half[1] = { 0.5 }, dry[1] = { 0 };
static vtx_gas air;
static vtx_tube tube;

#define EACH sizeof(double)
#define TO_DOUBLES (double *)(void *)out, EACH, NULL, NULL

static vtx_status liquid_pressure(void) { return vtx_water_saturation_pressure_batch(length, in[0], EACH, TO_DOUBLES); }
static vtx_status liquid_temperature(void) { return vtx_water_saturation_temperature_batch(length, in[0], EACH, TO_DOUBLES); }
static vtx_status ice_pressure(void) { return vtx_ice_sublimation_pressure_batch(length, in[0], EACH, TO_DOUBLES); }
static vtx_status ice_temperature(void) { return vtx_ice_sublimation_temperature_batch(length, in[0], EACH, TO_DOUBLES); }

static vtx_status humidity(int32_t wanted)
{
    return vtx_moist_air_humidity_batch(length, VTX_AIR_IDEAL, ambient, 0, in[0], EACH, VTX_RELATIVE_HUMIDITY, in[1], EACH, wanted, TO_DOUBLES);
}

static vtx_status dew_point(void) { return humidity(VTX_DEW_POINT); }
static vtx_status wet_bulb(void) { return humidity(VTX_WET_BULB); }

static vtx_status orifice(void)
{
    int32_t *const choked = (int32_t *)(void *)(out + length * EACH);
    return vtx_orifice_mass_flow_batch(length, &air, 0, half, 0, half, 0, line, 0, in[0], EACH, in[1], EACH, (double *)(void *)out, EACH, choked,
                                       sizeof *choked, NULL, NULL);
}

static vtx_status separation(void)
{
    vtx_streams *const streams = (vtx_streams *)(void *)out;
    return vtx_tube_separate_batch(length, &tube, 0, VTX_AIR_IDEAL, line, 0, in[0], EACH, dry, 0, ambient, 0, ambient, 0, in[1], EACH, streams,
                                   sizeof *streams, NULL, NULL);
}

static const struct growing {
    const char *what;
    vtx_status (*call)(void);
    size_t columns, out_bytes; /* read and written, an element */
    double low[COLUMNS], high[COLUMNS];
} calls[] = {
    { "saturation pressure over liquid", liquid_pressure, 1, EACH, { 275 }, { 315 } },
    { "saturation temperature over liquid", liquid_temperature, 1, EACH, { 700 }, { 8000 } },
    { "sublimation pressure", ice_pressure, 1, EACH, { 230 }, { 270 } },
    { "sublimation temperature", ice_temperature, 1, EACH, { 9 }, { 470 } },
    { "dew point from relative humidity, IDEAL", dew_point, 2, EACH, { 300, 0.1 }, { 340, 0.9 } },
    { "wet bulb, IDEAL", wet_bulb, 2, EACH, { 300, 0.1 }, { 340, 0.9 } },
    { "orifice, subsonic", orifice, 2, EACH + sizeof(int32_t), { 275, 5e5 }, { 315, 7.5e5 } },
    { "separation of dry air, IDEAL", separation, 2, sizeof(vtx_streams), { 275, 0.2 }, { 315, 0.8 } },
};

static const struct growing *current;

static void call_loop(size_t n)
{
    size_t bad = 0;
    for (size_t i = 0; i < n; i++)
        bad += current->call() != VTX_OK;
    failures += bad;
}

static void copy_loop(size_t n)
{
    static volatile char sink;
    for (size_t i = 0; i < n; i++) {
        memcpy(out, in[0], length * copied);
        sink = out[length * copied - 1];
    }
    (void)sink;
}

/* Half of what the system has free at the most. */
static int room_for(size_t bytes)
{
#ifdef _SC_AVPHYS_PAGES
    return (double)bytes < 0.5 * (double)sysconf(_SC_AVPHYS_PAGES) * (double)sysconf(_SC_PAGESIZE);
#else
    return bytes < (size_t)1 << 31;
#endif
}

/* The copy reads what stands behind the first column's start, whichever columns that is. */
static int make_columns(const struct growing *g, size_t n)
{
    const size_t in_bytes = g->columns * EACH, read = in_bytes > copied ? in_bytes : copied, write = g->out_bytes > copied ? g->out_bytes : copied;
    if (!room_for(n * (read + write)) || !(in[0] = malloc(n * read)) || !(out = malloc(n * write)))
        return 0;
    in[1] = in[0] + n;
    memset(in[0], 0, n * read);
    memset(out, 0, n * write);
    for (size_t c = 0; c < g->columns; c++)
        for (size_t i = 0; i < n; i++) {
            const double share = (double)((i * 389 + c * 501) % 1024) / 1024;
            in[c][i] = g->low[c] + share * (g->high[c] - g->low[c]);
        }
    return 1;
}

static void drop_columns(void)
{
    free(in[0]);
    free(out);
    in[0] = in[1] = NULL;
    out = NULL;
}

/* Nanoseconds an element of call and copy at each length; those that did not find room stay 0. Returns how many did. */
static int grow(const struct growing *g, double time[POWERS], double copy[POWERS])
{
    int powers = 0;
    current = g;
    copied = (g->columns * EACH + g->out_bytes) / 2;
    for (length = 1; length <= largest && make_columns(g, length); length *= 10) {
        time[powers] = time_loop(call_loop).median / (double)length;
        copy[powers] = time_loop(copy_loop).median / (double)length;
        powers++;
        drop_columns();
    }
    drop_columns();
    return powers;
}

static void print_row(const char *what, const double *time, int powers)
{
    printf("%-44s", what);
    for (int i = 0; i < powers; i++)
        printf(" %8.2f", time[i]);
    printf("\n");
}

static void write_row(FILE *json, const char *name, const double *time, int powers)
{
    fprintf(json, ", \"%s\": [", name);
    for (int i = 0; i < powers; i++)
        fprintf(json, "%s%.4g", i ? ", " : "", time[i]);
    fprintf(json, "]");
}

/* At 1e7 elements an element costs at most 1.5 times what it does at 1e5, or what copying its bytes does. */
static void report(const struct growing *g, FILE *json)
{
    double time[POWERS], copy[POWERS];
    const int powers = grow(g, time, copy);
    print_row(g->what, time, powers);
    print_row("  copying as many bytes", copy, powers);
    if (powers == POWERS) {
        const double growth = time[7] / time[5], by_copy = time[7] / copy[7];
        const int holds = growth <= 1.5 || by_copy <= 1.5;
        printf("  1e7 to 1e5 elements: %.2f; to copying: %.2f: %s\n", growth, by_copy, holds ? "holds" : "does not hold");
        if (json)
            fprintf(json, ", \"growth\": %.4g, \"to_copy\": %.4g, \"holds\": %s", growth, by_copy, holds ? "true" : "false");
    } else {
        printf("  too little memory free for more\n");
    }
    if (json) {
        write_row(json, "ns", time, powers);
        write_row(json, "copy_ns", copy, powers);
    }
}

int main(int argc, char **argv)
{
    FILE *json = argc > 1 ? fopen(argv[1], "w") : NULL;
    failures += vtx_gas_init(&air) != VTX_OK || vtx_tube_init(&tube) != VTX_OK;
    print_machine();
    printf("\nns an element, median; elements:            ");
    for (size_t n = 1; n <= largest; n *= 10)
        printf(" %8.0e", (double)n);
    printf("\n");
    if (json) {
        fprintf(json, "{ ");
        print_machine_json(json);
        fprintf(json, "\"calls\": [");
    }
    for (size_t i = 0; i < sizeof calls / sizeof calls[0]; i++) {
        if (json)
            fprintf(json, "%s\n  { \"call\": \"%s\"", i ? "," : "", calls[i].what);
        report(&calls[i], json);
        if (json)
            fprintf(json, " }");
    }
    if (json)
        fprintf(json, "\n] }\n");
    if (failures)
        fprintf(stderr, "%zu calls failed: the numbers above are worth nothing\n", failures);
    return failures || (json && fclose(json) != 0);
}
