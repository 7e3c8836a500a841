/* A first program: what does a cooler of 600 L/min do at 6 bar gauge? */
#include <stdio.h>
#include <vtx.h>

int main(void)
{
    vtx_job job;
    vtx_operating_point point;
    vtx_sizing setting;
    vtx_job_init(&job);
    job.cooler.rated_free_air_flow = 0.6 / 60; /* m3/s at 7 bar gauge, the rated pressure unless you say otherwise */
    vtx_absolute_pressure(job.site.pressure, 6e5, &job.supply.pressure);
    job.supply.humidity = 276.15;         /* K: the dryer's pressure dew point, 3 degC */
    job.duty.target_temperature = 313.15; /* K: what the work may have, 40 degC */

    vtx_status status = vtx_job_evaluate(&job, &point, NULL);
    if (status != VTX_OK) {
        fprintf(stderr, "%s\n", vtx_status_text(status));
        return 1;
    }
    printf("cold outlet %.1f degC (%.1f to %.1f), cooling %.0f W, air %.0f L/min\n", point.cold_temperature - 273.15,
           point.cold_temperature_low - 273.15, point.cold_temperature_high - 273.15, point.target_capacity, 60e3 * point.free_air_flow);

    status = vtx_job_cold_fraction(&job, 265.15, VTX_BRANCH_MORE_COLD_AIR, &setting);
    if (status == VTX_OK)
        printf("for -8 degC set a cold fraction of %.2f\n", setting.value);
    else if (status == VTX_NO_SOLUTION)
        printf("-8 degC is out of reach; the coldest is %.1f degC\n", setting.attainable_figure - 273.15);
    return 0;
}
