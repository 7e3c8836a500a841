/* The section [when new]. */
#include "service_baseline.h"

#include <math.h>
#include <string.h>

static const char section[] = "when new";

const char baseline_keys[] =
    "  [when new]  optional, readings taken when all was well, keys as in [readings]: they put the cooler's own tube and nozzle in the\n"
    "             place of the typical ones. Without them and without a tube efficiency, temperatures tell little.\n";

static void take_over(const vtx_wear *w, vtx_job *job)
{
    vtx_tube *tube = &job->cooler.tube;
    if (isfinite(w->inlet_area_factor))
        job->cooler.inlet_area_factor = w->inlet_area_factor;
    if (!isfinite(w->peak_efficiency))
        return;
    tube->peak_efficiency = w->peak_efficiency;
    tube->efficiency_low = fmax(w->peak_efficiency - 1.96 * w->peak_efficiency_uncertainty, 0.02);
    tube->efficiency_high = fmin(w->peak_efficiency + 1.96 * w->peak_efficiency_uncertainty, 0.98);
    tube->basis = VTX_TUBE_CALIBRATED;
}

void baseline_read(struct job_file *f, const struct instruments *instruments, const struct thermometers *thermometers, vtx_job *job,
                   struct service_baseline *b)
{
    const char *name;
    vtx_service_readings readings;
    vtx_input_uncertainty u;
    memset(b, 0, sizeof *b);
    if (job_sections(f, section, &name, 1) == 0)
        return;
    b->is_stated = 1;
    if (readings_read(f, section, &job->cooler, instruments, &readings) < 2) {
        job_complain(f, section, "cold temperature", "two or more readings are needed");
        return;
    }
    readings_correct(f, section, thermometers, &readings);
    vtx_input_uncertainty_init(&u);
    const vtx_status status = vtx_find_wear(job, &u, &readings, &b->wear);
    if (status != VTX_OK || (b->wear.advisories & VTX_ADVISORY_MODEL_MISFIT))
        job_complain(f, section, "cold temperature", "these readings do not fit the cooler described, or see neither its tube nor its nozzle");
    else
        take_over(&b->wear, job);
}
