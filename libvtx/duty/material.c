/* Materials: the table of properties. */
#include <vtx/material.h>

#include "../base/numeric.h"
#include "../media/constants.h"

/* Not known, or without meaning. Below every number of the table, in degC too. */
#define NONE -1e9
#define NO_RANGE { NONE, NONE, NONE }

enum { PROPERTIES = 9, FIRST = VTX_MATERIAL_PMMA, LAST = VTX_MATERIAL_PU_FOAM };

/* Which typical values are from memory. */
enum { M_RHO = 1, M_C = 2, M_K = 4, M_EXPANSION = 8, M_HDT = 16, M_LIGHT = 32, M_TG = 64, M_MELT = 128, M_SERVICE = 256, M_EFFUSIVITY = 512 };

struct material_row {
    double value[PROPERTIES][3]; /* density, heat capacity, conductivity, expansion in 1e-6/K, four temperatures and a limit in degC */
    int32_t from_memory;
    int32_t contact_class;
    int32_t crystalline;
};

/* Sources: Cr Crawford, Plastics Engineering, table 1.8; Su a compiled table Thermal Properties of Plastic Materials; Br an
 * encyclopaedia table of plastics; Gp an open list of plastics; Ca Callister 3e, tables B.6 and B.8; Tx values used in the
 * examples of Incropera and Cengel; Web a web table of densities; Ht the table of the open heat-transfer library ht;
 * Me Mechanical Engineers' Handbook vol. 4; M from memory. A letter after a number of a triple is that number's source. */
static const struct material_row rows[LAST - FIRST + 1] = {
    /* PMMA: density Cr M, c Cr, k M Cr, expansion Cr M, HDT M, light M, glass Cr Br */
    { { { 1180, 1180, 1190 }, { 1500, 1500, 1500 }, { 0.17, 0.2, 0.2 }, { 70, 70, 77 }, { 85, 92.5, 100 }, { 95, 100, 105 },
        { 105, 105, 115 }, NO_RANGE, NO_RANGE }, M_HDT | M_LIGHT, VTX_CONTACT_PLASTIC, 0 },
    /* PC: density Cr Br, c Cr Su, k Su, expansion Cr Su, HDT Su, light Su, glass Br Cr */
    { { { 1150, 1200, 1200 }, { 1200, 1200, 1200 }, { 0.19, 0.205, 0.22 }, { 65, 68, 70 }, { 128, 133, 138 }, { 140, 140, 140 },
        { 145, 149, 149 }, NO_RANGE, NO_RANGE }, 0, VTX_CONTACT_PLASTIC, 0 },
    /* PA6: density M, c Su, k Su, expansion M Su, HDT Su +-10, light Su, glass M, melting M */
    { { { 1130, 1135, 1140 }, { 1700, 1700, 1700 }, { 0.24, 0.26, 0.28 }, { 80, 95, 95 }, { 70, 80, 90 }, { 200, 200, 200 },
        { 47, 53.5, 60 }, { 220, 220, 220 }, NO_RANGE }, M_RHO | M_TG | M_MELT, VTX_CONTACT_PLASTIC, 1 },
    /* PA66: density Cr, c Su Ca Cr, k Cr Su, expansion M Cr, HDT M Su, light Su, glass M Cr, melting M */
    { { { 1140, 1140, 1140 }, { 1670, 1700, 1700 }, { 0.24, 0.24, 0.25 }, { 80, 90, 90 }, { 75, 100, 100 }, { 200, 200, 200 },
        { 50, 56, 56 }, { 255, 260, 265 }, NO_RANGE }, M_MELT, VTX_CONTACT_PLASTIC, 1 },
    /* POM: density Cr (copolymer low, homopolymer high), c Cr, k Cr M, expansion M Cr, HDT M, light M, glass Cr Br, melting M Br */
    { { { 1410, 1420, 1420 }, { 1500, 1500, 1500 }, { 0.2, 0.2, 0.31 }, { 80, 95, 95 }, { 100, 118, 136 }, { 155, 162.5, 170 },
        { -85, -85, -50 }, { 165, 175, 180 }, NO_RANGE }, M_HDT | M_LIGHT | M_MELT, VTX_CONTACT_PLASTIC, 1 },
    /* ABS: density Cr, c Cr, k Su Cr, expansion Su Cr, HDT Su +-10, light Su, glass Br Cr */
    { { { 1040, 1040, 1040 }, { 1300, 1300, 1300 }, { 0.17, 0.25, 0.25 }, { 80, 90, 90 }, { 79, 89, 99 }, { 98, 98, 98 },
        { 90, 115, 120 }, NO_RANGE, NO_RANGE }, 0, VTX_CONTACT_PLASTIC, 0 },
    /* PEEK: density Cr, c M, k M, expansion Su Cr, HDT M, glass Cr, melting M */
    { { { 1300, 1300, 1300 }, { 1340, 1340, 1340 }, { 0.25, 0.25, 0.25 }, { 47, 48, 48 }, { 150, 155, 160 }, NO_RANGE,
        { 143, 143, 143 }, { 340, 341.5, 343 }, NO_RANGE }, M_C | M_K | M_HDT | M_MELT | M_EFFUSIVITY, VTX_CONTACT_PLASTIC, 1 },
    /* PTFE: density Cr M, c Cr, k Cr, expansion M Cr, HDT M, light M, melting Br; a volume step of 1 % at 19 to 23 degC */
    { { { 2100, 2100, 2200 }, { 1000, 1000, 1000 }, { 0.25, 0.25, 0.25 }, { 100, 140, 160 }, { 50, 55, 60 }, { 120, 120, 120 },
        NO_RANGE, { 327, 327, 327 }, NO_RANGE }, M_HDT | M_LIGHT, VTX_CONTACT_PLASTIC, 1 },
    /* PP: density Cr, c M Cr, k M Cr, expansion Gp, HDT M, light Gp, glass Br Cr, melting M Gp */
    { { { 905, 905, 905 }, { 1700, 2000, 2000 }, { 0.1, 0.2, 0.22 }, { 81, 90.5, 100 }, { 50, 55, 60 }, { 107, 114, 121 },
        { -20, -10, -10 }, { 160, 171.5, 175 }, NO_RANGE }, M_HDT, VTX_CONTACT_PLASTIC, 1 },
    /* PE-HD: density Cr, c Cr, k Cr M, expansion Gp Cr, HDT M, light Gp, glass Cr, melting Gp */
    { { { 950, 950, 950 }, { 2200, 2200, 2200 }, { 0.25, 0.25, 0.5 }, { 59, 120, 120 }, { 40, 45, 50 }, { 79, 85, 91 },
        { -120, -120, -120 }, { 130, 133.5, 137 }, NO_RANGE }, M_HDT, VTX_CONTACT_PLASTIC, 1 },
    /* PE-LD: as PE-HD */
    { { { 920, 920, 920 }, { 2200, 2200, 2200 }, { 0.24, 0.24, 0.24 }, { 100, 200, 220 }, { 30, 35, 40 }, { 40, 42, 44 },
        { -120, -120, -120 }, { 98, 106.5, 115 }, NO_RANGE }, M_HDT, VTX_CONTACT_PLASTIC, 1 },
    /* PVC rigid: density Cr, c Cr M, k Cr, expansion Gp Cr, HDT Gp, glass Gp Cr; decomposes */
    { { { 1400, 1400, 1400 }, { 900, 900, 1000 }, { 0.16, 0.16, 0.16 }, { 50, 70, 100 }, { 57, 69.5, 82 }, NO_RANGE,
        { 75, 80, 105 }, NO_RANGE, NO_RANGE }, 0, VTX_CONTACT_PLASTIC, 0 },
    /* 6061: density Web, c M, k M (T6, annealed), expansion Ca, melting M */
    { { { 2700, 2700, 2700 }, { 896, 896, 896 }, { 167, 167, 180 }, { 23.6, 23.6, 23.6 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 582, 617, 652 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* 1040, 1045: density Web, c M, k M, expansion Ca, melting M */
    { { { 7845, 7845, 7845 }, { 486, 486, 486 }, { 50, 51, 52 }, { 11.3, 11.3, 11.3 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1490, 1490, 1490 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* 4140: as 1040 */
    { { { 7850, 7850, 7850 }, { 475, 475, 475 }, { 42, 42.5, 43 }, { 12.3, 12.3, 12.3 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1420, 1420, 1420 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* 304: density Tx Web, c Tx M, k Tx M, expansion Ca, melting M */
    { { { 7900, 8000, 8000 }, { 477, 500, 500 }, { 14.9, 16.2, 16.2 }, { 17.2, 17.2, 17.2 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1400, 1425, 1450 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* 316: density Web, c M, k Tx M, expansion Ca, melting M */
    { { { 8000, 8000, 8000 }, { 500, 500, 500 }, { 13.4, 16, 16 }, { 16, 16, 16 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1375, 1387.5, 1400 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* Ti-6Al-4V: expansion Ca, else M */
    { { { 4430, 4430, 4430 }, { 526, 568, 610 }, { 6.7, 6.95, 7.2 }, { 8.6, 8.6, 8.6 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1604, 1632, 1660 }, NO_RANGE }, M_RHO | M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* 718: M */
    { { { 8190, 8190, 8190 }, { 435, 435, 435 }, { 11.2, 11.3, 11.4 }, { 13, 13, 13 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1260, 1298, 1336 }, NO_RANGE }, M_RHO | M_C | M_K | M_EXPANSION | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* brass: density Web Tx, c Tx, k Tx M, expansion Ca, melting M */
    { { { 8500, 8500, 8530 }, { 380, 380, 380 }, { 110, 110, 115 }, { 20.5, 20.5, 20.5 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 885, 892.5, 900 }, NO_RANGE }, M_MELT, VTX_CONTACT_METAL, 1 },
    /* grey cast iron: density Web, c M, k M, expansion Ca, melting M */
    { { { 7150, 7150, 7150 }, { 460, 500, 540 }, { 46, 50.5, 55 }, { 11.4, 11.4, 11.4 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1150, 1175, 1200 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* AZ31B: density Web, c M, k M, expansion Ca, melting M */
    { { { 1770, 1770, 1770 }, { 1024, 1024, 1024 }, { 76, 86, 96 }, { 26, 26, 26 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 605, 618.5, 632 }, NO_RANGE }, M_C | M_K | M_MELT | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* copper: density, c, k Me; expansion M, melting M */
    { { { 8933, 8933, 8933 }, { 385, 385, 385 }, { 401, 401, 401 }, { 16.5, 16.8, 17 }, NO_RANGE, NO_RANGE, NO_RANGE,
        { 1085, 1085, 1085 }, NO_RANGE }, M_EXPANSION | M_MELT, VTX_CONTACT_METAL, 1 },
    /* WC-10Co and WC-6Co: M; oxidises from about 600 degC */
    { { { 14500, 14700, 14900 }, { 200, 205, 210 }, { 70, 85, 100 }, { 4.9, 5.2, 5.5 }, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE,
        { 600, 600, 600 } }, M_RHO | M_C | M_K | M_EXPANSION | M_SERVICE | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* M2: M; softens above 550 to 600 degC */
    { { { 8140, 8150, 8160 }, { 420, 440, 460 }, { 19, 23, 27 }, { 10, 10.75, 11.5 }, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE,
        { 550, 575, 600 } }, M_RHO | M_C | M_K | M_EXPANSION | M_SERVICE | M_EFFUSIVITY, VTX_CONTACT_METAL, 1 },
    /* elastomeric foam: low end Ht (expanded rubber board), else M at 0 degC */
    { { NO_RANGE, NO_RANGE, { 0.032, 0.0365, 0.04 }, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE }, M_K,
      VTX_CONTACT_PLASTIC, 0 },
    /* polyethylene foam: M at 0 degC */
    { { NO_RANGE, NO_RANGE, { 0.034, 0.037, 0.04 }, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE }, M_K,
      VTX_CONTACT_PLASTIC, 0 },
    /* cellular glass: Ht; high end Incropera at 285 K */
    { { NO_RANGE, NO_RANGE, { 0.048, 0.048, 0.055 }, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE }, 0,
      VTX_CONTACT_CERAMIC, 0 },
    /* sprayed polyurethane: Ht; high end aged, M */
    { { NO_RANGE, NO_RANGE, { 0.026, 0.026, 0.031 }, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE, NO_RANGE }, 0,
      VTX_CONTACT_PLASTIC, 0 },
};

/* The table's unit to SI. */
static double in_si(int property, double value)
{
    if (value <= NONE)
        return quiet_nan();
    return property == 3 ? 1e-6 * value : property > 3 ? value + ice_point : value;
}

static double effusivity_of(const struct material_row *row, int end)
{
    if (row->value[0][end] <= NONE || row->value[1][end] <= NONE)
        return quiet_nan();
    return sqrt(row->value[0][end] * row->value[1][end] * row->value[2][end]);
}

vtx_status vtx_material(int32_t material, vtx_material_properties *properties)
{
    if (!properties)
        return VTX_BAD_ARGUMENT;
    if (material < FIRST || material > LAST)
        return POISON_STRUCT(properties, vtx_material_properties, from_memory, VTX_BAD_ARGUMENT);
    const struct material_row *row = &rows[material - FIRST];
    double si[PROPERTIES + 1][3];
    _Static_assert(sizeof si == offsetof(vtx_material_properties, from_memory), "the ten ranges come first");
    int missing = 0;
    for (int end = 0; end < 3; end++) {
        for (int p = 0; p < PROPERTIES; p++)
            si[p][end] = in_si(p, row->value[p][end]);
        si[PROPERTIES][end] = effusivity_of(row, end);
        for (int p = 0; p <= PROPERTIES; p++)
            missing |= !is_finite(si[p][end]);
    }
    memcpy(properties, si, sizeof si);
    properties->from_memory = row->from_memory;
    properties->contact_class = row->contact_class;
    properties->crystalline = row->crystalline;
    properties->advisories = missing ? VTX_ADVISORY_FIELD_UNAVAILABLE : 0;
    return VTX_OK;
}
