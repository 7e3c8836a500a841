/* Optional sections of a sizing job: the cut, the part, the compressor. */
#ifndef SPOT_SECTIONS_H
#define SPOT_SECTIONS_H

#include "job_file.h"

/* [machining] */
struct spot_cut {
    double removal_rate;   /* m3/s; 0 when the section is not given */
    double speed;          /* m/s of the cut; 0 for grinding */
    double chip_thickness; /* m, undeformed; 0 for grinding */
    double hardness;       /* HB, 0 when not given */
    double share_of_time;  /* -, that it cuts */
    int32_t process, material;
    const char *process_name, *material_name;
};

/* [part]; a material of 0 when the section is not given */
struct spot_part {
    double length;  /* m, to hold in tolerance; 0 when not given */
    double hottest; /* K, hottest place */
    int32_t material;
    const char *material_name;
};

/* [tool]; a material of 0 when the section is not given */
struct spot_tool {
    double diameter; /* m, of the shank */
    double length;   /* m, out of the holder */
    int32_t material;
    const char *material_name;
};

/* [compressor]; a delivery of 0 when the section is not given */
struct spot_plant {
    vtx_compressor compressor;
    double other_demand;    /* m3/s of free air, of all others on the net */
    double lowest_pressure; /* Pa, that the net may fall to */
};

void spot_cut_read(struct job_file *file, struct spot_cut *cut);
void spot_part_read(struct job_file *file, double target_temperature, int32_t material, const char *material_name, struct spot_part *part);
void spot_tool_read(struct job_file *file, struct spot_tool *tool);
void spot_plant_read(struct job_file *file, const vtx_site *site, struct spot_plant *plant);
void spot_liquid_read(struct job_file *file, vtx_liquid *liquid);

/* The noise rule and the hours beside the cooler, from [duty]. */
void spot_noise_read(struct job_file *file, vtx_requirements *requirements);

const char *spot_noise_rule_name(int32_t rule);

/* Keys of these sections, for --help. */
extern const char spot_section_keys[];

#endif
