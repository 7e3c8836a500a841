/* Drying of compressed air: the water that arrives, where it is drained, what the dryer leaves, and whether the coldest pipe stays dry.
 *
 * Not the equilibrium of one state (moist_air.h) nor the freezing of a cold outlet (surface.h).
 * See also: air_quality.h for ISO 8573-1 classes, purity.h for the class to ask for. */
#ifndef VTX_DRYING_H
#define VTX_DRYING_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

enum vtx_dryer {
    VTX_DRYER_NONE = 450,         /* receiver straight to the net */
    VTX_DRYER_REFRIGERATED = 451, /* water leaves as liquid; not below freezing */
    VTX_DRYER_DESICCANT = 452,    /* water leaves with the regeneration air */
    VTX_DRYER_MEMBRANE = 453      /* water leaves with the sweep air */
};

/* Water that a flow of free air brings along.
 *
 * model              in   -     VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure           in   Pa    3e4..2e5, of the ambient air
 * temperature        in   K     223.15..333.15
 * relative_humidity  in   -     0..1, over liquid water
 * free_air           in   m3/s  0..1e3, at that state
 * water              out  kg/s
 * dry_air            out  kg/s  may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as the moist-air model: REAL within 1e-4 of RP-1485 (moist_air.h), IDEAL 0.4 to 0.7 % low in water at 1 atm
 * source    moist_air.h
 */
VTX_API vtx_status vtx_intake_water(int32_t model, double pressure, double temperature, double relative_humidity, double free_air,
                                    double *water, double *dry_air);

/* Compressed air from the intake to the net: aftercooler, receiver, dryer. */
typedef struct vtx_air_treatment {
    double free_air;                 /* m3/s, 1e-9..1e3, at the intake state; no default */
    double intake_pressure;          /* Pa, 3e4..2e5; default 101325 */
    double intake_temperature;       /* K, 223.15..333.15; default 293.15 */
    double intake_relative_humidity; /* 0..1, over liquid; default 0.6 */
    double aftercooler_pressure;     /* Pa, absolute, 1e5..5e6, above the intake's; default 8e5 */
    double aftercooler_temperature;  /* K, 273.16..363.15, of the air that leaves it; default 308.15 */
    double receiver_temperature;     /* K, 273.16..363.15, at the aftercooler's pressure; default 303.15 */
    double separated_share;          /* 0..1, of the liquid at aftercooler and receiver that is drained, the rest travels on; default 1 */
    double dryer_pressure;           /* Pa, absolute, up to the aftercooler's; default 8e5 */
    double dryer_point;              /* K, 173.15..323.15, pressure dew point as dryers are rated: a frost point below 273.16 K; default 276.15 */
    double purge_share;              /* 0..0.9, of the air entering the dryer that it uses up; default 0 */
    double reserved[4];              /* 0 */
    int32_t model;                   /* VTX_AIR_REAL (default) or VTX_AIR_IDEAL */
    int32_t dryer;                   /* enum vtx_dryer; default VTX_DRYER_REFRIGERATED */
} vtx_air_treatment;

/* Sets the defaults; free_air is 0 and must be given.
 *
 * treatment  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_air_treatment_init(vtx_air_treatment *treatment);

/* What a treatment makes of the air. */
typedef struct vtx_treated_air {
    double dry_air;                 /* kg/s, through the compressor */
    double intake_water;            /* kg/s, arriving with it */
    double aftercooler_condensate;  /* kg/s, drained there */
    double receiver_condensate;     /* kg/s, drained there */
    double dryer_water;             /* kg/s, drained from the dryer or carried off by its purge */
    double delivered_water;         /* kg/s, in the delivered air, vapour and liquid */
    double delivered_air;           /* m3/s, free air at the intake state, without the purge */
    double purge_air;               /* m3/s, free air used up by the dryer */
    double humidity_ratio;          /* kg/kg, vapour in the delivered air */
    double liquid_content;          /* kg/m3, liquid water per volume of delivered air at 20 degC and 1 bar */
    double pressure_dew_point;      /* K, at the dryer's pressure: a frost point below 273.16 K; NaN below 1e-9 kg/kg of water */
    double expanded_dew_point;      /* K, of the vapour at the intake's pressure: a frost point below 273.16 K; NaN below 1e-9 kg/kg of water */
    int32_t water_class;            /* ISO 8573-1, as vtx_water_class; -1 below 1e-9 kg/kg of water */
    int32_t advisories;             /* CONDENSING: liquid is delivered; FIELD_UNAVAILABLE: hardly any water */
} vtx_treated_air;

/* Water balance of a treatment: condensate at each place, what is delivered, the class reached.
 *
 * treatment  in
 * air        out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a refrigerated dryer below 273.16 K)
 * accuracy  REAL: water within 3e-4 of RP-1485 at 3 degC and 8 bar, 5e-5 below freezing; equilibrium at each place;
 *           a dryer keeps its rated point, though a loaded one misses it by 3 to 10 K (common practice, no source)
 * source    balance of water; saturation of moist_air.h
 * advisory  CONDENSING, FIELD_UNAVAILABLE
 * note      a dryer never adds water: air that arrives drier than its point keeps its humidity
 */
VTX_API vtx_status vtx_treat_air(const vtx_air_treatment *treatment, vtx_treated_air *air);

/* Purge air of a heatless desiccant dryer, as a share of the air entering it.
 *
 * line_pressure   in   Pa  1e5..5e6, absolute, of drying
 * purge_pressure  in   Pa  3e4..2e5, below line_pressure, of regeneration
 * excess          in   -   1..3, volume of the purge over that of the feed: 1.15 to 1.25 in common practice
 * share           out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the purge would exceed the feed)
 * accuracy  the least purge; 1.2 at 8 bar gives the usual 15 % (common practice, no source)
 * source    equal volumes of feed and purge, Skarstrom 1960 (from memory): share = excess purge_pressure/line_pressure
 * note      heated dryers need 5 to 8 %, blower-purge and vacuum dryers about 2 % or none (common practice, no source)
 */
VTX_API vtx_status vtx_desiccant_purge_share(double line_pressure, double purge_pressure, double excess, double *share);

/* A pipe run at its coldest. */
typedef struct vtx_cold_run {
    double dew_point;   /* K, of the air at the pipe's pressure: a frost point below 273.16 K; NaN below 1e-9 kg/kg of water */
    double margin;      /* K, pipe temperature less dew point; NaN below 1e-9 kg/kg of water */
    double condensate;  /* kg per kg dry air that falls out there */
    int32_t dry;        /* 1 when nothing falls out, else 0 */
    int32_t advisories; /* CONDENSING or FREEZING when something does; FIELD_UNAVAILABLE below 1e-9 kg/kg of water */
} vtx_cold_run;

/* Whether water falls out in the coldest part of a pipe, which takes the air to its own temperature.
 *
 * model           in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure        in   Pa     1e5..5e6, absolute, in the pipe
 * temperature     in   K      200..363.15, coldest of the pipe
 * humidity_ratio  in   kg/kg  0..1, all water in the air
 * run             out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  equilibrium; a short or insulated pipe may stay warmer than its surroundings
 * source    saturation of moist_air.h
 * advisory  CONDENSING, FREEZING, FIELD_UNAVAILABLE
 */
VTX_API vtx_status vtx_pipe_condensation(int32_t model, double pressure, double temperature, double humidity_ratio, vtx_cold_run *run);

/* The month in which a pipe run comes nearest to its dew point.
 *
 * model           in   -      VTX_AIR_IDEAL or VTX_AIR_REAL
 * pressure        in   Pa     1e5..5e6, absolute, in the pipe
 * temperature     in   K      200..363.15, count values, coldest of the run in each month
 * humidity_ratio  in   kg/kg  1e-9..1, count values: one and the same behind a dryer
 * count           in   -      1 or more, usually 12
 * margin          out  K      the smallest of vtx_pipe_condensation
 * worst           out  -      its place in the list, from 0, may be null
 * wet             out  -      number of months in which water falls out, may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_pipe_condensation
 * source    saturation of moist_air.h
 */
VTX_API vtx_status vtx_coldest_month(int32_t model, double pressure, const double *temperature, const double *humidity_ratio,
                                     size_t count, double *margin, int32_t *worst, int32_t *wet);

/* Pressure dew point a dryer must reach so that a pipe run stays dry with a margin.
 *
 * model               in   -   VTX_AIR_IDEAL or VTX_AIR_REAL
 * dryer_pressure      in   Pa  1e5..5e6, absolute
 * pipe_pressure       in   Pa  1e5..5e6, absolute
 * temperature         in   K   200..363.15, coldest of the run
 * margin              in   K   0..50; 10 in common practice
 * pressure_dew_point  out  K   at the dryer, a frost point below 273.16 K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when temperature less margin is below 173.15 K)
 * accuracy  as the moist-air model
 * source    saturation of moist_air.h
 */
VTX_API vtx_status vtx_pressure_dew_point_needed(int32_t model, double dryer_pressure, double pipe_pressure, double temperature,
                                                 double margin, double *pressure_dew_point);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_intake_water_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, const double *free_air, ptrdiff_t free_air_stride, double *water,
        ptrdiff_t water_stride, double *dry_air, ptrdiff_t dry_air_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_treat_air_batch(size_t n, const vtx_air_treatment *treatment, ptrdiff_t treatment_stride,
        vtx_treated_air *air, ptrdiff_t air_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_desiccant_purge_share_batch(size_t n, const double *line_pressure, ptrdiff_t line_pressure_stride,
        const double *purge_pressure, ptrdiff_t purge_pressure_stride, const double *excess, ptrdiff_t excess_stride,
        double *share, ptrdiff_t share_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_pipe_condensation_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, vtx_cold_run *run, ptrdiff_t run_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_pressure_dew_point_needed_batch(size_t n, int32_t model, const double *dryer_pressure,
        ptrdiff_t dryer_pressure_stride, const double *pipe_pressure, ptrdiff_t pipe_pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *margin, ptrdiff_t margin_stride,
        double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
