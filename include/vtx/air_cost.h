/* Compressed air on the bill: energy, cost and carbon of a consumer, and of a compressor over a year.
 *
 * No prices of its own: rates come from the caller, in any currency. 0.15 a kWh is 0.15/3.6e6 a joule.
 * See also: compressor.h for power and specific power, receiver.h to find the leakage. */
#ifndef VTX_AIR_COST_H
#define VTX_AIR_COST_H

#include <vtx/compressor.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Energy, cost and carbon of one consumer of air, at the specific power of the plant.
 *
 * specific_power    in   J/m3         1e3..1e8, of free air; 60 kJ/m3 is 1 kW/(m3/min)
 * free_air          in   m3/s         0..1e3, while it runs
 * running_time      in   s            0..3.2e7
 * energy_price      in   currency/J   0..1
 * carbon_intensity  in   kg/J         0..1e-3
 * energy            out  J
 * cost              out  currency     may be null
 * carbon            out  kg           may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for a plant that follows the demand; one that runs unloaded saves less when a consumer is taken off
 * source    specific power times air times rate
 */
VTX_API vtx_status vtx_air_use_cost(double specific_power, double free_air, double running_time, double energy_price,
                                    double carbon_intensity, double *energy, double *cost, double *carbon);

/* A year of a compressor. */
typedef struct vtx_air_year {
    double energy;          /* J at the terminals */
    double cost;            /* currency */
    double carbon;          /* kg */
    double free_air;        /* m3 that reached the demand */
    double leakage_energy;  /* J that would be saved without leakage */
    double leakage_cost;    /* currency */
    double unloaded_energy; /* J drawn while delivering nothing */
    double cost_per_volume; /* currency/m3 of air that reached the demand; NaN when none did */
    int32_t demand_met;     /* 1 or 0 */
    int32_t advisories;     /* FIELD_UNAVAILABLE when cost_per_volume is NaN */
} vtx_air_year;

/* Yearly energy, cost and carbon of a compressor.
 *
 * compressor        in
 * demand            in   m3/s         0..1e3, free air, while there is any
 * demand_time       in   s            0..3.2e7 a year, with that demand
 * pressurised_time  in   s            demand_time..3.2e7 a year, with the net under pressure: leakage and unloaded running go on
 * energy_price      in   currency/J   0..1
 * carbon_intensity  in   kg/J         0..1e-3
 * year              out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for on-off or load-unload control; variable speed is near it with unloaded_power_share 0
 * source    CAGI power cost formula for full load (shaft power x time x rate/motor efficiency), unloaded running added
 * advisory  FIELD_UNAVAILABLE
 */
VTX_API vtx_status vtx_compressor_year(const vtx_compressor *compressor, double demand, double demand_time,
                                       double pressurised_time, double energy_price, double carbon_intensity, vtx_air_year *year);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_air_use_cost_batch(size_t n, const double *specific_power, ptrdiff_t specific_power_stride,
        const double *free_air, ptrdiff_t free_air_stride, const double *running_time, ptrdiff_t running_time_stride,
        const double *energy_price, ptrdiff_t energy_price_stride, const double *carbon_intensity,
        ptrdiff_t carbon_intensity_stride, double *energy, ptrdiff_t energy_stride, double *cost,
        ptrdiff_t cost_stride, double *carbon, ptrdiff_t carbon_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_compressor_year_batch(size_t n, const vtx_compressor *compressor, ptrdiff_t compressor_stride,
        const double *demand, ptrdiff_t demand_stride, const double *demand_time, ptrdiff_t demand_time_stride,
        const double *pressurised_time, ptrdiff_t pressurised_time_stride, const double *energy_price,
        ptrdiff_t energy_price_stride, const double *carbon_intensity, ptrdiff_t carbon_intensity_stride,
        vtx_air_year *year, ptrdiff_t year_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
