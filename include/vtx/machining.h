/* Machining: removal rates, cutting power, where its heat goes and what a jet can reach of it.
 *
 * Not tool life and not chip form. The heat of cutting is the power of cutting: nearly all of it ends as heat.
 * See also: tool.h for the temperature of the tool, part.h for the work, material.h for properties. */
#ifndef VTX_MACHINING_H
#define VTX_MACHINING_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

enum vtx_cutting_process {
    VTX_PROCESS_TURNING = 429,
    VTX_PROCESS_MILLING = 430,
    VTX_PROCESS_DRILLING = 431,
    VTX_PROCESS_GRINDING = 432 /* surface grinding, dry, conventional wheel */
};

/* Energy to remove a volume of material. */
typedef struct vtx_cutting_energy {
    double low;        /* J/m3, sharp tool */
    double typical;    /* J/m3 */
    double high;       /* J/m3, worn tool or the top of a published range */
    double motor_low;  /* J/m3, at the machine's motor, losses of the drive included; NaN where no such range is known */
    double motor_high; /* J/m3 */
    double thickness_factor; /* -, correction for the chip thickness contained in low, typical and high; 1 for grinding */
    int32_t from_memory;     /* 1 when low, typical and high rest on figures from memory */
    int32_t advisories;
} vtx_cutting_energy;

/* Shares of the cutting power that leave with the chip (and a flooding coolant), enter the tool and enter the work. */
typedef struct vtx_heat_partition {
    double chip_low;            /* - */
    double chip_high;           /* - */
    double tool_low;            /* - */
    double tool_high;           /* - */
    double work_low;            /* - */
    double work_high;           /* - */
    double thermal_number;      /* -, speed times chip thickness over diffusivity; NaN for a handbook partition */
    double shear_share_fit;     /* -, share of the shear zone's heat that enters the work, logarithmic fit */
    double shear_share_line;    /* -, the same by the two straight lines over the logarithm */
    double shear_share_source;  /* -, the same by the moving heat source */
    int32_t from_memory;        /* 1 when a range above rests on figures from memory */
    int32_t advisories;
} vtx_heat_partition;

/* Heat flows of a cut. */
typedef struct vtx_cutting_heat {
    double chip_low;       /* W, leaves with the chips */
    double chip_high;      /* W */
    double tool_low;       /* W, enters the tool */
    double tool_high;      /* W */
    double work_low;       /* W, enters the work */
    double work_high;      /* W */
    double reachable_low;  /* W, tool and work: what a jet on tool and work can carry away */
    double reachable_high; /* W */
} vtx_cutting_heat;

/* Material removed by turning, from cutting speed, feed and depth.
 *
 * cutting_speed  in   m/s    above 0..200    at the mean diameter
 * feed           in   m      above 0..0.05   a revolution
 * depth          in   m      above 0..0.5
 * removal_rate   out  m3/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Groover, Fundamentals of Modern Manufacturing 4e: speed times feed times depth
 */
VTX_API vtx_status vtx_turning_removal(double cutting_speed, double feed, double depth, double *removal_rate);

/* Material removed by turning a bar from one diameter to another.
 *
 * outer_diameter  in   m     above 0..50
 * inner_diameter  in   m     0 (facing down to the centre) .. below outer_diameter
 * axial_speed     in   m/s   above 0..10    travel of the tool
 * removal_rate    out  m3/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Kalpakjian and Schmid: area of the ring times travel
 */
VTX_API vtx_status vtx_bar_turning_removal(double outer_diameter, double inner_diameter, double axial_speed, double *removal_rate);

/* Material removed by milling.
 *
 * width            in   m      above 0..5        of the cut, across the feed
 * depth            in   m      above 0..0.5
 * feed_per_tooth   in   m      above 0..0.05
 * teeth            in   -      1..1000
 * spindle_speed    in   1/s    above 0..5000     revolutions a second
 * removal_rate     out  m3/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Kalpakjian and Schmid: width times depth times feed speed
 */
VTX_API vtx_status vtx_milling_removal(double width, double depth, double feed_per_tooth, double teeth, double spindle_speed,
                                       double *removal_rate);

/* Material removed by drilling into the solid.
 *
 * diameter       in   m      above 0..1
 * feed           in   m      above 0..0.05   a revolution
 * spindle_speed  in   1/s    above 0..5000   revolutions a second
 * removal_rate   out  m3/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    area times feed times speed
 */
VTX_API vtx_status vtx_drilling_removal(double diameter, double feed, double spindle_speed, double *removal_rate);

/* Material removed by surface grinding.
 *
 * depth         in   m     above 0..0.05
 * width         in   m     above 0..5
 * table_speed   in   m/s   above 0..10
 * removal_rate  out  m3/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Kalpakjian and Schmid: depth times width times table speed
 */
VTX_API vtx_status vtx_grinding_removal(double depth, double width, double table_speed, double *removal_rate);

/* Energy to remove a volume, by process, material and hardness.
 *
 * process         in   -   a vtx_cutting_process
 * material        in   -   a vtx_material: solid plastics, metals and tool steels
 * hardness        in   HB  0..700   of steels, cast iron, aluminium; 0 when unknown, and for other materials, which do not use it
 * chip_thickness  in   m   2e-6..5e-3   undeformed: the feed in turning, half the feed in drilling; not used for grinding
 * energy          out      as described at vtx_cutting_energy
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (carbide; foams; grinding of a material without published figures)
 * advisory  EXTRAPOLATED for a hardness outside the material's table, or a chip outside 0.1 to 1 mm
 * accuracy  a factor of 1.25 for tool wear is contained in high; ranges of the motor are class-room ranges over all grades
 * source    low and typical: Groover, table of unit power at 0.25 mm with a sharp tool: carbon steel 150-300 HB, alloy steel 200-400
 *           HB, cast iron 125-250 HB, aluminium 50-150 HB, stainless, brass, magnesium. Motor, and titanium, nickel and plastics
 *           throughout: Kalpakjian and Schmid, from memory (titanium read in a problem text; editions differ). Grinding: Kalpakjian
 *           and Schmid, table of grinding energies. Thickness factor (0.25 mm over thickness)^0.2 to ^0.3 from memory
 * note      titanium, nickel and plastics: the range is at the motor, typical is its geometric mean
 */
VTX_API vtx_status vtx_specific_cutting_energy(int32_t process, int32_t material, double hardness, double chip_thickness,
                                               vtx_cutting_energy *energy);

/* Power of cutting, all of which becomes heat.
 *
 * specific_energy  in   J/m3   1e7..5e11
 * removal_rate     in   m3/s   0..1
 * power            out  W
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    definition of specific energy
 */
VTX_API vtx_status vtx_cutting_power(double specific_energy, double removal_rate, double *power);

/* Force along the cut from its power.
 *
 * power          in   W     0..1e8
 * cutting_speed  in   m/s   1e-4..1000   where the cut is: pi times mean diameter times revolutions a second
 * force          out  N
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    power is force times speed
 */
VTX_API vtx_status vtx_cutting_force(double power, double cutting_speed, double *force);

/* Thermal number of a cut: heat carried by the moving material over heat conducted.
 *
 * density         in   kg/m3      100..30000
 * heat_capacity   in   J/(kg K)   50..10000
 * conductivity    in   W/(m K)    0.01..3000   of the work
 * cutting_speed   in   m/s        1e-4..1000
 * chip_thickness  in   m          1e-7..0.05   undeformed
 * thermal_number  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    Ghosh and Mallik, Manufacturing Science, example 4.6
 */
VTX_API vtx_status vtx_thermal_number(double density, double heat_capacity, double conductivity, double cutting_speed,
                                      double chip_thickness, double *thermal_number);

/* Where the heat of orthogonal cutting goes, by three estimates of what the shear zone hands to the work.
 *
 * thermal_number  in   -    0.5..2000
 * shear_angle     in   rad  0.05..1.2
 * rake_angle      in   rad  -0.7..0.9   the shear strain must be positive
 * shear_energy    in   -    0..1        share of the power spent in the shear zone; 0.75 is usual (from memory)
 * partition       out       as described at vtx_heat_partition
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  EXTRAPOLATED when thermal number times tan(shear_angle) is outside 4 to 20, FIELD_UNAVAILABLE when an estimate falls to
 *           nothing there and is NaN: the lowest share is then 0
 * accuracy  the estimates differ by a factor of two to three (10 % and 27 % in the example of Ghosh and Mallik): the range is the answer
 * source    fit 0.15 ln(27.5/x) as used by Ghosh and Mallik; lines 0.5 - 0.35 lg x to x = 10, 0.3 - 0.15 lg x above, Boothroyd, from
 *           memory; moving source of Loewen and Shaw 1954, from memory; the tool takes 15 to 35 % of the remaining heat of the rake
 *           face, falling with speed, abstract of a 2021 paper in Proc. IMechE B on 4140
 */
VTX_API vtx_status vtx_orthogonal_heat_partition(double thermal_number, double shear_angle, double rake_angle, double shear_energy,
                                                 vtx_heat_partition *partition);

/* Where the heat of cutting goes, by the handbook's figures for a process.
 *
 * process    in   -  a vtx_cutting_process
 * partition  out     as described at vtx_heat_partition; thermal_number and the three shear zone shares are NaN
 *
 * status    OK, BAD_ARGUMENT
 * advisory  FIELD_UNAVAILABLE always
 * source    turning and milling: lecture notes after Krar: chip and coolant 75 to 80 %, work 10 %, tool 10 %. Drilling 20 to 60 % to
 *           the work, grinding 60 to 85 % (dry, conventional wheel), from memory; the tool's share in both is our estimate
 * note      grinding with a cubic boron nitride wheel leaves about 20 % in the work, creep feed under flood 3 to 10 % (from memory)
 */
VTX_API vtx_status vtx_handbook_heat_partition(int32_t process, vtx_heat_partition *partition);

/* The wider of two partitions: each share from the lower low to the higher high.
 *
 * first     in       a partition
 * second    in       another, by a different method
 * combined  out      their union; shear zone shares and thermal number are those of first
 *
 * status    OK, BAD_ARGUMENT
 * advisory  those of both
 */
VTX_API vtx_status vtx_combined_heat_partition(const vtx_heat_partition *first, const vtx_heat_partition *second,
                                               vtx_heat_partition *combined);

/* Heat flows of a cut, and what a jet can reach of them.
 *
 * partition  in       shares from one of the calls above
 * power      in   W   0..1e8
 * heat       out      as described at vtx_cutting_heat
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * note      a partition whose lows sum above 1 or whose highs sum below 1 is a BAD_ARGUMENT
 * note      chips carry their heat away unless they lie on the work; a jet cools the outer faces of tool and work, hardly the contact
 *           between chip and tool
 * caution   blow chips away from people: guard, glasses; never blow burning magnesium or titanium chips
 */
VTX_API vtx_status vtx_cutting_heat_flows(const vtx_heat_partition *partition, double power, vtx_cutting_heat *heat);

/* Mean temperature rise at the chip and tool contact of a dry cut.
 *
 * specific_energy  in   J/m3      1e7..5e11
 * density          in   kg/m3     100..30000
 * heat_capacity    in   J/(kg K)  50..10000
 * thermal_number   in   -         0.5..2000
 * rise             out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  for ranking cuts; not compared with measurements here
 * source    Cook 1973: 0.4 u/(density c) (thermal number)^(1/3), from memory
 * note      a jet lowers the tool's base, not this rise
 */
VTX_API vtx_status vtx_cutting_temperature_rise(double specific_energy, double density, double heat_capacity, double thermal_number,
                                                double *rise);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_turning_removal_batch(size_t n, const double *cutting_speed, ptrdiff_t cutting_speed_stride,
        const double *feed, ptrdiff_t feed_stride, const double *depth, ptrdiff_t depth_stride, double *removal_rate,
        ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_bar_turning_removal_batch(size_t n, const double *outer_diameter, ptrdiff_t outer_diameter_stride,
        const double *inner_diameter, ptrdiff_t inner_diameter_stride, const double *axial_speed,
        ptrdiff_t axial_speed_stride, double *removal_rate, ptrdiff_t removal_rate_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_milling_removal_batch(size_t n, const double *width, ptrdiff_t width_stride, const double *depth,
        ptrdiff_t depth_stride, const double *feed_per_tooth, ptrdiff_t feed_per_tooth_stride, const double *teeth,
        ptrdiff_t teeth_stride, const double *spindle_speed, ptrdiff_t spindle_speed_stride, double *removal_rate,
        ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_drilling_removal_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride,
        const double *feed, ptrdiff_t feed_stride, const double *spindle_speed, ptrdiff_t spindle_speed_stride,
        double *removal_rate, ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_grinding_removal_batch(size_t n, const double *depth, ptrdiff_t depth_stride, const double *width,
        ptrdiff_t width_stride, const double *table_speed, ptrdiff_t table_speed_stride, double *removal_rate,
        ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_specific_cutting_energy_batch(size_t n, int32_t process, int32_t material, const double *hardness,
        ptrdiff_t hardness_stride, const double *chip_thickness, ptrdiff_t chip_thickness_stride,
        vtx_cutting_energy *energy, ptrdiff_t energy_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cutting_power_batch(size_t n, const double *specific_energy, ptrdiff_t specific_energy_stride,
        const double *removal_rate, ptrdiff_t removal_rate_stride, double *power, ptrdiff_t power_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cutting_force_batch(size_t n, const double *power, ptrdiff_t power_stride,
        const double *cutting_speed, ptrdiff_t cutting_speed_stride, double *force, ptrdiff_t force_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_thermal_number_batch(size_t n, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *conductivity,
        ptrdiff_t conductivity_stride, const double *cutting_speed, ptrdiff_t cutting_speed_stride,
        const double *chip_thickness, ptrdiff_t chip_thickness_stride, double *thermal_number,
        ptrdiff_t thermal_number_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_orthogonal_heat_partition_batch(size_t n, const double *thermal_number,
        ptrdiff_t thermal_number_stride, const double *shear_angle, ptrdiff_t shear_angle_stride,
        const double *rake_angle, ptrdiff_t rake_angle_stride, const double *shear_energy,
        ptrdiff_t shear_energy_stride, vtx_heat_partition *partition, ptrdiff_t partition_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_combined_heat_partition_batch(size_t n, const vtx_heat_partition *first, ptrdiff_t first_stride,
        const vtx_heat_partition *second, ptrdiff_t second_stride, vtx_heat_partition *combined,
        ptrdiff_t combined_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cutting_heat_flows_batch(size_t n, const vtx_heat_partition *partition, ptrdiff_t partition_stride,
        const double *power, ptrdiff_t power_stride, vtx_cutting_heat *heat, ptrdiff_t heat_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_cutting_temperature_rise_batch(size_t n, const double *specific_energy,
        ptrdiff_t specific_energy_stride, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *thermal_number,
        ptrdiff_t thermal_number_stride, double *rise, ptrdiff_t rise_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
