/* Materials that are cut, cooled, touched or wrapped around a cold tube: properties with their spread between sources.
 *
 * Not a specification: grades, fillers, tempers and moisture move every figure.
 * See also: part.h for what the temperatures do to them, touch.h for contact, insulation.h for covers. */
#ifndef VTX_MATERIAL_H
#define VTX_MATERIAL_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Plastics unfilled; metals at 20 to 25 degC. Chips of magnesium and titanium burn. */
enum vtx_material {
    VTX_MATERIAL_PMMA = 400,           /* acrylic */
    VTX_MATERIAL_PC = 401,             /* polycarbonate */
    VTX_MATERIAL_PA6 = 402,            /* nylon 6, dry */
    VTX_MATERIAL_PA66 = 403,           /* nylon 66, dry */
    VTX_MATERIAL_POM = 404,            /* acetal */
    VTX_MATERIAL_ABS = 405,
    VTX_MATERIAL_PEEK = 406,
    VTX_MATERIAL_PTFE = 407,
    VTX_MATERIAL_PP = 408,             /* polypropylene */
    VTX_MATERIAL_PE_HD = 409,          /* polyethylene, high density */
    VTX_MATERIAL_PE_LD = 410,          /* polyethylene, low density */
    VTX_MATERIAL_PVC = 411,            /* rigid */
    VTX_MATERIAL_ALUMINIUM = 412,      /* wrought alloy 6061 */
    VTX_MATERIAL_CARBON_STEEL = 413,   /* 1040, 1045 */
    VTX_MATERIAL_ALLOY_STEEL = 414,    /* 4140 */
    VTX_MATERIAL_STAINLESS_304 = 415,
    VTX_MATERIAL_STAINLESS_316 = 416,
    VTX_MATERIAL_TITANIUM = 417,       /* Ti-6Al-4V */
    VTX_MATERIAL_NICKEL = 418,         /* high-temperature alloy 718 */
    VTX_MATERIAL_BRASS = 419,          /* free cutting */
    VTX_MATERIAL_CAST_IRON = 420,      /* grey */
    VTX_MATERIAL_MAGNESIUM = 421,      /* AZ31B */
    VTX_MATERIAL_COPPER = 422,         /* pure */
    VTX_MATERIAL_CARBIDE = 423,        /* tungsten carbide with 6 to 10 % cobalt */
    VTX_MATERIAL_HIGH_SPEED_STEEL = 424, /* M2 */
    VTX_MATERIAL_RUBBER_FOAM = 425,    /* flexible elastomeric foam, expanded rubber */
    VTX_MATERIAL_PE_FOAM = 426,        /* polyethylene foam */
    VTX_MATERIAL_CELLULAR_GLASS = 427,
    VTX_MATERIAL_PU_FOAM = 428         /* sprayed polyurethane */
};

/* How a surface feels to skin: the classes of burn thresholds. */
enum vtx_contact_class {
    VTX_CONTACT_METAL = 447,   /* bare or thinly coated metal */
    VTX_CONTACT_CERAMIC = 448, /* ceramics, glass, stone */
    VTX_CONTACT_PLASTIC = 449  /* plastics, foam, wood */
};

/* One property: the spread between sources and grades, and the value preferred here. */
typedef struct vtx_value_range {
    double low;     /* lowest value met */
    double typical; /* the value of a source that was read where there is one, else the middle of the range */
    double high;    /* highest value met */
} vtx_value_range;

/* Any property may be NaN: not known, or without meaning for the material. */
typedef struct vtx_material_properties {
    vtx_value_range density;                      /* kg/m3 */
    vtx_value_range heat_capacity;                /* J/(kg K) */
    vtx_value_range conductivity;                 /* W/(m K) */
    vtx_value_range expansion;                    /* 1/K, linear */
    vtx_value_range deflection_temperature;       /* K, heat deflection temperature at 1.8 MPa, plastics */
    vtx_value_range light_deflection_temperature; /* K, the same at 0.45 MPa */
    vtx_value_range glass_transition;             /* K, plastics; none for PTFE, whose transitions the sources mix up */
    vtx_value_range melting_temperature;          /* K, of crystalline plastics; of metals from solidus to liquidus */
    vtx_value_range service_limit;                /* K, tool materials: softening of high-speed steel, oxidation of carbide */
    vtx_value_range effusivity;                   /* W s^0.5/(m2 K), sqrt(conductivity density heat_capacity) of low, typical, high */
    int32_t from_memory;   /* bit i is set when the typical value of the i-th property above is from memory, not read in a source */
    int32_t contact_class; /* vtx_contact_class of the bare surface */
    int32_t crystalline;   /* 1 for semi-crystalline plastics and metals, 0 for amorphous plastics, glass and foams */
    int32_t advisories;
} vtx_material_properties;

/* Properties of a material with their spread.
 *
 * material    in   -  a vtx_material
 * properties  out     as described at vtx_material_properties; unknown properties are NaN
 *
 * status    OK, BAD_ARGUMENT
 * advisory  FIELD_UNAVAILABLE when a property is NaN
 * accuracy  the spread given; heat deflection temperatures +-10 K with the grade; a typical value is no better than its range
 * source    plastics: Crawford, Plastics Engineering, table 1.8; a compiled table of thermal properties of plastics; an open list
 *           of plastics and an encyclopaedia table. Metals: expansion from Callister, Fundamentals of Materials Science and
 *           Engineering 3e, table B.6; density from a web table; copper from the Mechanical Engineers' Handbook vol. 4. Low ends of
 *           304, 316 and brass: values used in the examples of Incropera and Cengel. Insulation: table of ASHRAE and VDI values in
 *           an open heat-transfer library. What from_memory marks is from memory. Not used although printed: heat capacity
 *           840 J/(kg K) of polycarbonate, 320 J/(kg K) and glass transition 185 degC of PEEK, 126 degC of PTFE
 * note      insulation ages 10 to 20 % upward, 4 % per volume per cent of water taken up, and 0.0001 W/(m K) per kelvin (from
 *           memory). Further boards, W/(m K): extruded polystyrene fresh 0.026, moulded 0.0355, polyisocyanurate aged 0.0235, mineral
 *           fibre 0.035 to 0.040 (open to vapour: not for cold parts)
 * caution   chips and dust of magnesium and titanium burn; a cold jet does not prevent it
 */
VTX_API vtx_status vtx_material(int32_t material, vtx_material_properties *properties);

#ifdef __cplusplus
}
#endif

#endif
