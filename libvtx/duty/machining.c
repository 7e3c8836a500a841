/* Machining: removal, power and heat of cutting. */
#include <vtx/machining.h>
#include <vtx/material.h>

#include "../base/numeric.h"

/* Groover's table is at this chip thickness. */
#define REFERENCE_THICKNESS 0.25e-3
/* Exponents of the thickness factor, from memory. */
#define THICKNESS_EXPONENT_LOW 0.2
#define THICKNESS_EXPONENT 0.25
#define THICKNESS_EXPONENT_HIGH 0.3
/* Worn tool in finishing, Groover. */
#define WEAR_FACTOR 1.25

#define SPEED_MIN 1e-4
#define SPEED_MAX 1000.0
#define THERMAL_NUMBER_MIN 0.5
#define THERMAL_NUMBER_MAX 2000.0
#define ENERGY_MIN 1e7
#define ENERGY_MAX 5e11
#define POWER_MAX 1e8

/* One row: a hardness band (0, 0 for all) and its energies in J/m3. */
struct energy_row {
    int32_t material;
    double hardness_low, hardness_high;
    double sharp;                /* Groover; 0 where the table has none */
    double motor_low, motor_high; /* Kalpakjian and Schmid, at the motor, from memory */
};

/* Groover, Fundamentals of Modern Manufacturing 4e, table of unit power, converted from 240, 320, 400; 320, 400, 520, 640; 160, 240; 400;
 * 100, 120; 320; 60 thousand in-lbf/in3. The band 100 to 150 HB of the aluminium alloys is from memory. */
static const struct energy_row rows[] = {
    { VTX_MATERIAL_CARBON_STEEL, 150, 200, 1.65474175036041e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_CARBON_STEEL, 201, 250, 2.20632233381388e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_CARBON_STEEL, 251, 300, 2.75790291726734e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_ALLOY_STEEL, 200, 250, 2.20632233381388e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_ALLOY_STEEL, 251, 300, 2.75790291726734e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_ALLOY_STEEL, 301, 350, 3.58527379244755e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_ALLOY_STEEL, 351, 400, 4.41264466762775e9, 2.7e9, 9.3e9 },
    { VTX_MATERIAL_CAST_IRON, 125, 175, 1.10316116690694e9, 1.6e9, 5.5e9 },
    { VTX_MATERIAL_CAST_IRON, 175, 250, 1.65474175036041e9, 1.6e9, 5.5e9 },
    { VTX_MATERIAL_STAINLESS_304, 0, 0, 2.75790291726734e9, 3.0e9, 5.2e9 },
    { VTX_MATERIAL_STAINLESS_316, 0, 0, 2.75790291726734e9, 3.0e9, 5.2e9 },
    { VTX_MATERIAL_ALUMINIUM, 50, 100, 0.689475729316836e9, 0.4e9, 1.1e9 },
    { VTX_MATERIAL_ALUMINIUM, 100, 150, 0.82737087518020e9, 0.4e9, 1.1e9 },
    { VTX_MATERIAL_BRASS, 0, 0, 2.20632233381388e9, 1.4e9, 3.3e9 },
    { VTX_MATERIAL_COPPER, 0, 0, 0, 1.4e9, 3.3e9 },
    { VTX_MATERIAL_MAGNESIUM, 0, 0, 0.41368543759010e9, 0.4e9, 0.6e9 },
    { VTX_MATERIAL_TITANIUM, 0, 0, 0, 3.0e9, 4.1e9 },
    { VTX_MATERIAL_NICKEL, 0, 0, 0, 3.3e9, 8.5e9 },
    { VTX_MATERIAL_HIGH_SPEED_STEEL, 0, 0, 0, 2.7e9, 9.3e9 },
};

/* Unfilled thermoplastics, from memory, unsure. */
#define PLASTIC_LOW 0.1e9
#define PLASTIC_HIGH 0.4e9

/* Kalpakjian and Schmid, energies of surface grinding, J/m3; alloy steel spans low-carbon and tool steel. */
static const struct energy_row grinding_rows[] = {
    { VTX_MATERIAL_ALUMINIUM, 0, 0, 0, 7e9, 27e9 },
    { VTX_MATERIAL_CAST_IRON, 0, 0, 0, 12e9, 60e9 },
    { VTX_MATERIAL_CARBON_STEEL, 0, 0, 0, 14e9, 68e9 },
    { VTX_MATERIAL_ALLOY_STEEL, 0, 0, 0, 14e9, 82e9 },
    { VTX_MATERIAL_TITANIUM, 0, 0, 0, 16e9, 55e9 },
    { VTX_MATERIAL_HIGH_SPEED_STEEL, 0, 0, 0, 18e9, 82e9 },
};

static int is_process(int32_t process) { return process >= VTX_PROCESS_TURNING && process <= VTX_PROCESS_GRINDING; }
static int is_plastic(int32_t material) { return material >= VTX_MATERIAL_PMMA && material <= VTX_MATERIAL_PVC; }
static int is_material(int32_t material) { return material >= VTX_MATERIAL_PMMA && material <= VTX_MATERIAL_PU_FOAM; }

vtx_status vtx_turning_removal(double cutting_speed, double feed, double depth, double *removal_rate)
{
    vtx_status status = worse(require(removal_rate != NULL), check_positive(cutting_speed, 0, 200));
    status = worse(status, worse(check_positive(feed, 0, 0.05), check_positive(depth, 0, 0.5)));
    if (status != VTX_OK)
        return poison(removal_rate, status);
    *removal_rate = cutting_speed * feed * depth;
    return VTX_OK;
}

vtx_status vtx_bar_turning_removal(double outer_diameter, double inner_diameter, double axial_speed, double *removal_rate)
{
    vtx_status status = worse(require(removal_rate != NULL), check_positive(outer_diameter, 0, 50));
    status = worse(status, worse(check_amount(inner_diameter, 50), check_positive(axial_speed, 0, 10)));
    if (status == VTX_OK)
        status = require(inner_diameter < outer_diameter);
    if (status != VTX_OK)
        return poison(removal_rate, status);
    *removal_rate = 0.25 * pi * (outer_diameter - inner_diameter) * (outer_diameter + inner_diameter) * axial_speed;
    return VTX_OK;
}

vtx_status vtx_milling_removal(double width, double depth, double feed_per_tooth, double teeth, double spindle_speed,
                               double *removal_rate)
{
    vtx_status status = worse(require(removal_rate != NULL), worse(check_positive(width, 0, 5), check_positive(depth, 0, 0.5)));
    status = worse(status, worse(check_positive(feed_per_tooth, 0, 0.05), check_positive(teeth, 1, 1000)));
    status = worse(status, check_positive(spindle_speed, 0, 5000));
    if (status != VTX_OK)
        return poison(removal_rate, status);
    *removal_rate = width * depth * feed_per_tooth * teeth * spindle_speed;
    return VTX_OK;
}

vtx_status vtx_drilling_removal(double diameter, double feed, double spindle_speed, double *removal_rate)
{
    vtx_status status = worse(require(removal_rate != NULL), check_positive(diameter, 0, 1));
    status = worse(status, worse(check_positive(feed, 0, 0.05), check_positive(spindle_speed, 0, 5000)));
    if (status != VTX_OK)
        return poison(removal_rate, status);
    *removal_rate = 0.25 * pi * square(diameter) * feed * spindle_speed;
    return VTX_OK;
}

vtx_status vtx_grinding_removal(double depth, double width, double table_speed, double *removal_rate)
{
    vtx_status status = worse(require(removal_rate != NULL), check_positive(depth, 0, 0.05));
    status = worse(status, worse(check_positive(width, 0, 5), check_positive(table_speed, 0, 10)));
    if (status != VTX_OK)
        return poison(removal_rate, status);
    *removal_rate = depth * width * table_speed;
    return VTX_OK;
}

/* The row whose band holds the hardness, else the material's nearest row. */
static const struct energy_row *row_for(const struct energy_row *table, size_t count, int32_t material, double hardness)
{
    const struct energy_row *best = NULL;
    double best_distance = 0;
    for (size_t i = 0; i < count; i++) {
        if (table[i].material != material)
            continue;
        const double distance = larger(larger(table[i].hardness_low - hardness, hardness - table[i].hardness_high), 0);
        if (!best || distance < best_distance) {
            best = &table[i];
            best_distance = distance;
        }
    }
    return best;
}

/* Below the first and above the last band of a material that has bands. One HB lies between neighbouring bands. */
static int outside_bands(const struct energy_row *row, double hardness)
{
    return row->hardness_high > 0 && (hardness < row->hardness_low - 1 || hardness > row->hardness_high + 1);
}

static void range_at_the_motor(vtx_cutting_energy *energy, double low, double high)
{
    energy->low = low;
    energy->typical = sqrt(low * high);
    energy->high = high;
}

/* Unknown hardness: from the softest band's sharp tool to the hardest band's worn one. */
static void range_of_all_bands(vtx_cutting_energy *energy, int32_t material)
{
    double low = 0, high = 0;
    for (size_t i = 0; i < ARRAY_LENGTH(rows); i++) {
        if (rows[i].material != material)
            continue;
        low = low > 0 ? smaller(low, rows[i].sharp) : rows[i].sharp;
        high = larger(high, rows[i].sharp);
    }
    energy->low = low;
    energy->typical = sqrt(low * high);
    energy->high = high * WEAR_FACTOR;
}

static void correct_for_thickness(vtx_cutting_energy *energy, double chip_thickness)
{
    const double x = log(REFERENCE_THICKNESS / chip_thickness);
    const int thin = x > 0;
    energy->thickness_factor = exp(THICKNESS_EXPONENT * x);
    energy->low *= exp((thin ? THICKNESS_EXPONENT_LOW : THICKNESS_EXPONENT_HIGH) * x);
    energy->typical *= energy->thickness_factor;
    energy->high *= exp((thin ? THICKNESS_EXPONENT_HIGH : THICKNESS_EXPONENT_LOW) * x);
    if (chip_thickness < 0.1e-3 || chip_thickness > 1e-3)
        energy->advisories |= VTX_ADVISORY_EXTRAPOLATED;
}

static vtx_status grinding_energy(int32_t material, vtx_cutting_energy *energy)
{
    const struct energy_row *row = row_for(grinding_rows, ARRAY_LENGTH(grinding_rows), material, 0);
    if (!row)
        return VTX_OUT_OF_RANGE;
    range_at_the_motor(energy, row->motor_low, row->motor_high);
    energy->motor_low = energy->motor_high = quiet_nan();
    energy->thickness_factor = 1;
    energy->from_memory = 0;
    energy->advisories = VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

static vtx_status chip_energy(int32_t material, double hardness, double chip_thickness, vtx_cutting_energy *energy)
{
    const struct energy_row *row = row_for(rows, ARRAY_LENGTH(rows), material, hardness);
    if (!row && !is_plastic(material))
        return VTX_OUT_OF_RANGE;
    energy->motor_low = row ? row->motor_low : PLASTIC_LOW;
    energy->motor_high = row ? row->motor_high : PLASTIC_HIGH;
    energy->from_memory = !row || row->sharp <= 0;
    energy->advisories = 0;
    if (energy->from_memory) {
        range_at_the_motor(energy, energy->motor_low, energy->motor_high);
    } else if (row->hardness_high > 0 && hardness <= 0) {
        range_of_all_bands(energy, material);
    } else {
        energy->low = energy->typical = row->sharp;
        energy->high = row->sharp * WEAR_FACTOR;
        energy->advisories = outside_bands(row, hardness) ? VTX_ADVISORY_EXTRAPOLATED : 0;
    }
    correct_for_thickness(energy, chip_thickness);
    return VTX_OK;
}

vtx_status vtx_specific_cutting_energy(int32_t process, int32_t material, double hardness, double chip_thickness,
                                       vtx_cutting_energy *energy)
{
    vtx_cutting_energy e;
    vtx_status status = require(energy && is_process(process) && is_material(material));
    status = worse(status, worse(check_amount(hardness, 700), check_positive(chip_thickness, 2e-6, 5e-3)));
    if (status == VTX_OK)
        status = process == VTX_PROCESS_GRINDING ? grinding_energy(material, &e) : chip_energy(material, hardness, chip_thickness, &e);
    if (status != VTX_OK)
        return POISON_STRUCT(energy, vtx_cutting_energy, from_memory, status);
    *energy = e;
    return VTX_OK;
}

vtx_status vtx_cutting_power(double specific_energy, double removal_rate, double *power)
{
    vtx_status status = worse(require(power != NULL), check_positive(specific_energy, ENERGY_MIN, ENERGY_MAX));
    status = worse(status, check_amount(removal_rate, 1));
    if (status != VTX_OK)
        return poison(power, status);
    *power = specific_energy * removal_rate;
    return VTX_OK;
}

vtx_status vtx_cutting_force(double power, double cutting_speed, double *force)
{
    vtx_status status = worse(require(force != NULL), check_amount(power, POWER_MAX));
    status = worse(status, check_positive(cutting_speed, SPEED_MIN, SPEED_MAX));
    if (status != VTX_OK)
        return poison(force, status);
    *force = power / cutting_speed;
    return VTX_OK;
}

vtx_status vtx_thermal_number(double density, double heat_capacity, double conductivity, double cutting_speed,
                              double chip_thickness, double *thermal_number)
{
    vtx_status status = worse(require(thermal_number != NULL), check_positive(density, 100, 30000));
    status = worse(status, worse(check_positive(heat_capacity, 50, 10000), check_positive(conductivity, 0.01, 3000)));
    status = worse(status, worse(check_positive(cutting_speed, SPEED_MIN, SPEED_MAX), check_positive(chip_thickness, 1e-7, 0.05)));
    if (status != VTX_OK)
        return poison(thermal_number, status);
    *thermal_number = density * heat_capacity * cutting_speed * chip_thickness / conductivity;
    return VTX_OK;
}

/* As used by Ghosh and Mallik, x = thermal number times tan(shear angle); meaningless from 27.5 upward. */
static double share_by_fit(double x) { return x < 27.5 ? 0.15 * log(27.5 / x) : quiet_nan(); }

/* Boothroyd, from memory; meaningless from 100 upward. */
static double share_by_lines(double x)
{
    if (x <= 10)
        return 0.5 - 0.35 * log10(x);
    return x < 100 ? 0.3 - 0.15 * log10(x) : quiet_nan();
}

/* Loewen and Shaw 1954, from memory: what does not stay with the chip. */
static double share_by_moving_source(double thermal_number, double shear_strain)
{
    return 1 - 1 / (1 + 1.328 * sqrt(shear_strain / thermal_number));
}

/* The tool takes 15 to 35 % of the heat of the rake face (2021, Proc. IMechE B, abstract). */
#define TOOL_SHARE_LOW 0.15
#define TOOL_SHARE_HIGH 0.35

/* An estimate that is NaN or negative says: nothing. */
static double share_or_none(double share) { return is_finite(share) ? within(share, 0, 1) : 0; }

static void fill_orthogonal(vtx_heat_partition *p, double x, double shear_energy)
{
    const double fit = share_or_none(p->shear_share_fit), line = share_or_none(p->shear_share_line);
    const double low = smaller(smaller(fit, line), p->shear_share_source);
    const double high = larger(larger(fit, line), p->shear_share_source);
    const double rake_energy = 1 - shear_energy;
    p->work_low = low * shear_energy;
    p->work_high = high * shear_energy;
    p->tool_low = TOOL_SHARE_LOW * rake_energy;
    p->tool_high = TOOL_SHARE_HIGH * rake_energy;
    p->chip_low = 1 - p->work_high - p->tool_high;
    p->chip_high = 1 - p->work_low - p->tool_low;
    p->from_memory = 1;
    p->advisories = x < 4 || x > 20 ? VTX_ADVISORY_EXTRAPOLATED : 0;
    if (!is_finite(p->shear_share_fit) || !is_finite(p->shear_share_line))
        p->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

vtx_status vtx_orthogonal_heat_partition(double thermal_number, double shear_angle, double rake_angle, double shear_energy,
                                         vtx_heat_partition *partition)
{
    vtx_heat_partition p;
    double shear_strain = 0;
    vtx_status status = worse(require(partition != NULL), check_positive(thermal_number, THERMAL_NUMBER_MIN, THERMAL_NUMBER_MAX));
    status = worse(status, worse(check_positive(shear_angle, 0.05, 1.2), check_range(rake_angle, -0.7, 0.9)));
    status = worse(status, check_share(shear_energy));
    if (status == VTX_OK) {
        shear_strain = 1 / tan(shear_angle) + tan(shear_angle - rake_angle);
        status = shear_strain > 0 ? VTX_OK : VTX_BAD_ARGUMENT;
    }
    if (status != VTX_OK)
        return POISON_STRUCT(partition, vtx_heat_partition, from_memory, status);
    const double x = thermal_number * tan(shear_angle);
    p.thermal_number = thermal_number;
    p.shear_share_fit = share_by_fit(x);
    p.shear_share_line = share_by_lines(x);
    p.shear_share_source = share_by_moving_source(thermal_number, shear_strain);
    fill_orthogonal(&p, x, shear_energy);
    *partition = p;
    return VTX_OK;
}

/* Chip, tool, work: low and high. Turning and milling read (lecture notes after Krar), drilling and grinding from memory. */
static const double handbook[4][6] = {
    { 0.75, 0.80, 0.10, 0.10, 0.10, 0.10 },
    { 0.75, 0.80, 0.10, 0.10, 0.10, 0.10 },
    { 0.30, 0.75, 0.05, 0.10, 0.20, 0.60 },
    { 0.05, 0.30, 0.10, 0.20, 0.60, 0.85 },
};

vtx_status vtx_handbook_heat_partition(int32_t process, vtx_heat_partition *partition)
{
    if (!partition || !is_process(process))
        return POISON_STRUCT(partition, vtx_heat_partition, from_memory, VTX_BAD_ARGUMENT);
    const double *share = handbook[process - VTX_PROCESS_TURNING];
    partition->chip_low = share[0];
    partition->chip_high = share[1];
    partition->tool_low = share[2];
    partition->tool_high = share[3];
    partition->work_low = share[4];
    partition->work_high = share[5];
    partition->thermal_number = quiet_nan();
    partition->shear_share_fit = partition->shear_share_line = partition->shear_share_source = quiet_nan();
    partition->from_memory = process == VTX_PROCESS_DRILLING || process == VTX_PROCESS_GRINDING;
    partition->advisories = VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

static vtx_status check_band(double low, double high)
{
    const vtx_status status = worse(check_share(low), check_share(high));
    return status != VTX_OK ? status : require(low <= high);
}

/* Fields that a partition only carries along may be NaN, not infinite. */
static vtx_status check_carried(double x) { return require(is_finite(x) || isnan(x)); }

/* Shares in 0..1, lows that leave something over, highs that cover the whole; 1e-9 for rounding. */
static vtx_status check_partition(const vtx_heat_partition *p)
{
    if (!p)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_band(p->chip_low, p->chip_high), check_band(p->tool_low, p->tool_high));
    status = worse(status, check_band(p->work_low, p->work_high));
    status = worse(status, worse(check_carried(p->thermal_number), check_carried(p->shear_share_fit)));
    status = worse(status, worse(check_carried(p->shear_share_line), check_carried(p->shear_share_source)));
    if (status != VTX_OK)
        return status;
    return require(p->chip_low + p->tool_low + p->work_low <= 1 + 1e-9 && p->chip_high + p->tool_high + p->work_high >= 1 - 1e-9);
}

vtx_status vtx_combined_heat_partition(const vtx_heat_partition *first, const vtx_heat_partition *second,
                                       vtx_heat_partition *combined)
{
    const vtx_status status = worse(require(combined != NULL), worse(check_partition(first), check_partition(second)));
    if (status != VTX_OK)
        return POISON_STRUCT(combined, vtx_heat_partition, from_memory, status);
    vtx_heat_partition p = *first;
    p.chip_low = smaller(first->chip_low, second->chip_low);
    p.chip_high = larger(first->chip_high, second->chip_high);
    p.tool_low = smaller(first->tool_low, second->tool_low);
    p.tool_high = larger(first->tool_high, second->tool_high);
    p.work_low = smaller(first->work_low, second->work_low);
    p.work_high = larger(first->work_high, second->work_high);
    p.from_memory = first->from_memory | second->from_memory;
    p.advisories = first->advisories | second->advisories;
    *combined = p;
    return VTX_OK;
}

vtx_status vtx_cutting_heat_flows(const vtx_heat_partition *partition, double power, vtx_cutting_heat *heat)
{
    const vtx_status status = worse(require(heat != NULL), worse(check_partition(partition), check_amount(power, POWER_MAX)));
    if (status != VTX_OK)
        return poison_record(heat, sizeof *heat / sizeof(double), 0, status);
    heat->chip_low = partition->chip_low * power;
    heat->chip_high = partition->chip_high * power;
    heat->tool_low = partition->tool_low * power;
    heat->tool_high = partition->tool_high * power;
    heat->work_low = partition->work_low * power;
    heat->work_high = partition->work_high * power;
    /* What chip and the rest leave over cannot exceed the whole. */
    heat->reachable_low = larger(heat->tool_low + heat->work_low, (1 - partition->chip_high) * power);
    heat->reachable_high = smaller(heat->tool_high + heat->work_high, (1 - partition->chip_low) * power);
    return VTX_OK;
}

vtx_status vtx_cutting_temperature_rise(double specific_energy, double density, double heat_capacity, double thermal_number,
                                        double *rise)
{
    vtx_status status = worse(require(rise != NULL), check_positive(specific_energy, ENERGY_MIN, ENERGY_MAX));
    status = worse(status, worse(check_positive(density, 100, 30000), check_positive(heat_capacity, 50, 10000)));
    status = worse(status, check_positive(thermal_number, THERMAL_NUMBER_MIN, THERMAL_NUMBER_MAX));
    if (status != VTX_OK)
        return poison(rise, status);
    *rise = 0.4 * specific_energy / (density * heat_capacity) * cbrt(thermal_number);
    return VTX_OK;
}
