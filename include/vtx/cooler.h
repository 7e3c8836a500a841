/* A spot cooler at work: its description, the air it gets, the place it stands in, and the operating point that follows.
 *
 * Not the vortex tube alone (separation.h), not the search for a size or a setting (sizing.h, selection.h).
 * See also: chain.h for the line in front, surface.h for sweat and touch, jet.h for what reaches the work. */
#ifndef VTX_COOLER_H
#define VTX_COOLER_H

#include <vtx/moist_air.h>
#include <vtx/separation.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What is held while supply pressure, muffler or hose change. */
enum vtx_held {
    VTX_HELD_COLD_FRACTION = 500, /* the valve is turned until the cold fraction is as stated: what textbooks assume */
    VTX_HELD_VALVE_OPENING = 501  /* nobody touches the valve: what a shop has */
};

/* How the supply's humidity is stated. A dryer's pressure dew point below 0 degC is by trade usage a frost point. */
enum vtx_supply_humidity {
    VTX_SUPPLY_DEW_POINT = 505,     /* K, over liquid water, at humidity_pressure; 233.15 K and up */
    VTX_SUPPLY_FROST_POINT = 506,   /* K, over ice, at humidity_pressure; 173.15 to 273.16 K: what a dryer's "-40" is */
    VTX_SUPPLY_HUMIDITY_RATIO = 507 /* kg water per kg dry air, liquid included */
};

enum vtx_cooler_kind {
    VTX_COOLER_ADJUSTABLE = 510, /* has a hot-end valve: any cold fraction between its limits */
    VTX_COOLER_FIXED = 511       /* set in the works to its rated cold fraction */
};

/* Compressed air as it stands at the start of the line, or at the cooler when there is no line.
 *
 * caution   a dryer's "-40 degC" is VTX_SUPPLY_FROST_POINT, 233.15 K. As VTX_SUPPLY_DEW_POINT, the kind that vtx_supply_init sets, the same
 *           number is as valid and means 47 % more water, at -20 degC 21 %. No advisory tells the two apart
 */
typedef struct vtx_supply {
    double pressure;          /* Pa absolute, stagnation; 2e4..2e6 */
    double temperature;       /* K, stagnation; 230..373.15 */
    double humidity;          /* as humidity_kind says, mind the caution above: dew point 233.15..373.15 K, frost point 173.15..273.16 K, or ratio
                               * 0..0.2 kg/kg */
    double humidity_pressure; /* Pa absolute, pressure at which the dew or frost point was read, up to 2e6; 0: the supply's own pressure */
    double reserved[4];       /* 0 */
    int32_t humidity_kind;    /* enum vtx_supply_humidity */
    int32_t reserved_kind;    /* 0 */
} vtx_supply;

/* The air around the cooler. */
typedef struct vtx_site {
    double pressure;          /* Pa absolute, barometer; 2e4..1.2e5 */
    double temperature;       /* K, 233.15..350 */
    double relative_humidity; /* -, 0..1, over liquid water */
    double reserved[4];       /* 0 */
} vtx_site;

/* A cooler as its data sheet describes it. The rated point gives the effective areas of its nozzle and outlets. */
typedef struct vtx_cooler {
    double rated_free_air_flow;    /* m3/s at the reference state, 1e-6..1 */
    double reference_pressure;     /* Pa absolute, of the reference state, 5e4..2e5 */
    double reference_temperature;  /* K, of the reference state, 250..320 */
    double reference_humidity;     /* -, relative humidity of the reference state, 0..1 */
    double rated_pressure;         /* Pa absolute, inlet, 1.1e5..2e6 */
    double rated_temperature;      /* K, inlet, 250..350 */
    double rated_cold_pressure;    /* Pa absolute, at the cold outlet, 1e4..1e6 */
    double rated_hot_pressure;     /* Pa absolute, at the hot outlet, 1e4..1e6 */
    double rated_cold_fraction;    /* -, above 0 and below 1, within the two below */
    double cold_fraction_min;      /* -, 0..1, lower end of the range covered: below it a held cold fraction is refused, a held opening EXTRAPOLATED */
    double cold_fraction_max;      /* -, 0..1, upper end, likewise */
    double chamber_pressure_ratio; /* -, above 0 and below 1: swirl chamber over inlet pressure at the rated point; used with the opening held */
    double inlet_area_factor;      /* -, inlet nozzle's area over that of the rated one: 0.01..100, 1 unless it was exchanged or is worn */
    double cold_area_factor;       /* -, area of the tube's cold opening over that of the rated one: 0.01..100, below 1 when ice or dirt narrows it */
    double outlet_conductance;     /* m3/(s Pa), sonic conductance of what is screwed on each cold outlet, up to 1e-4; 0: nothing */
    double outlet_critical_ratio;  /* -, critical pressure ratio of the same, 0 to below 1 */
    double hot_conductance;        /* m3/(s Pa), sonic conductance of a muffler on the hot outlet, up to 1e-4; 0: nothing */
    double hot_critical_ratio;     /* -, critical pressure ratio of the same, 0 to below 1 */
    double outlet_diameter;        /* m, bore of each cold nozzle towards the work, 1e-4..0.2 */
    double noise_level;            /* dB(A), sound pressure level of the running cooler at noise_distance, up to 200; 0: not stated */
    double noise_distance;         /* m, at which noise_level was measured, 0.05..100 */
    vtx_tube tube;                 /* separation model */
    double reserved[4];            /* 0 */
    int32_t kind;                  /* enum vtx_cooler_kind */
    int32_t outlets;               /* number of cold outlets that share the cold stream: 1..8 */
} vtx_cooler;

/* How the cooler is set. */
typedef struct vtx_cooler_setting {
    double cold_fraction;      /* -, cooler's cold_fraction_min..cold_fraction_max, a fixed cooler's rated one; not read when the opening is held */
    double valve_opening;      /* -, 0..100, a fixed cooler's 1; hot valve's effective area over that at the rated point, 0 shut; not read when the
                                * cold fraction is held */
    double cold_back_pressure; /* Pa above the site's pressure, 0..1e6, behind the cold outlets' accessories */
    double hot_back_pressure;  /* Pa above the site's pressure, 0..1e6, behind the hot outlet's accessories */
    double reserved[4];   /* 0 */
    int32_t held;         /* enum vtx_held */
    int32_t model;        /* enum vtx_air_model */
} vtx_cooler_setting;

/* What the cooler does. Suffix low: tube efficiency at the low end of its band; high: at the high end; none: typical. */
typedef struct vtx_operating_point {
    double inlet_pressure;            /* Pa, at the cooler */
    double inlet_temperature;         /* K */
    double humidity_ratio;            /* kg water per kg dry air in the feed, liquid included */
    double mass_flow;                 /* kg/s of feed */
    double cold_mass_flow;            /* kg/s, all cold outlets together */
    double hot_mass_flow;             /* kg/s */
    double free_air_flow;             /* m3/s of feed at the cooler's reference state */
    double cold_fraction;             /* - */
    double valve_opening;             /* -, 1 at the rated point; NaN with FIELD_UNAVAILABLE where only a boundless one gives it (cold fraction 0) */
    double chamber_pressure;          /* Pa, swirl chamber */
    double cold_pressure;             /* Pa, directly at the cold outlets */
    double hot_pressure;              /* Pa, directly at the hot outlet */
    double cold_temperature;          /* K, stagnation */
    double cold_temperature_low;      /* K, numerically lowest over the band */
    double cold_temperature_high;     /* K, numerically highest over the band */
    double hot_temperature;           /* K, stagnation */
    double hot_temperature_low;       /* K */
    double hot_temperature_high;      /* K */
    double capacity;                  /* W, cold stream warmed to the inlet temperature */
    double capacity_low;              /* W */
    double capacity_high;             /* W */
    double target_capacity;           /* W, cold stream warmed to the target temperature; negative when that is colder */
    double target_capacity_low;       /* W */
    double target_capacity_high;      /* W */
    double isentropic_efficiency;     /* - */
    double joule_thomson_drop;        /* K */
    double entropy_generation;        /* J/(K kg inlet air) */
    double feed_dew_point;            /* K, over liquid, of the feed at inlet pressure; NaN with FIELD_UNAVAILABLE below 233.15 K or dry */
    double feed_frost_point;          /* K, over ice, of the feed at inlet pressure; NaN with FIELD_UNAVAILABLE above 273.16 K or dry */
    double cold_saturation_point;     /* K, dew or frost point of the feed's water at the cold outlet's pressure: colder air carries fog or ice */
    double coldest_temperature;       /* K, cold outlet of the best tube that the band for freezing questions allows */
    double throat_temperature;        /* K, static, in the inlet nozzle: inlet temperature over 1.2 where sonic, else expanded to the chamber;
                                         what STATIC_FREEZING asks about, colder or warmer than the cold outlet */
    double condensed;                 /* kg liquid or ice per kg dry air in the cold stream */
    double ice_flow;                  /* kg/s of ice in the cold stream */
    double ambient_dew_point;         /* K, over liquid, of the room's air; NaN with FIELD_UNAVAILABLE where it has none */
    double ambient_frost_point;       /* K, over ice, likewise */
    int32_t advisories;               /* bits of enum vtx_advisory */
    int32_t condensed_phase;          /* 0 none, 1 liquid, 2 ice, 3 both: in the cold stream at typical efficiency */
} vtx_operating_point;

/* Supply: 293.15 K, pressure and humidity unset (NaN), which every call refuses until they are given; dew point kind.
 *
 * supply    out  -
 *
 * status    OK, BAD_ARGUMENT
 * caution   for a dryer that dries below 0 degC set humidity_kind to VTX_SUPPLY_FROST_POINT: see vtx_supply
 */
VTX_API vtx_status vtx_supply_init(vtx_supply *supply);

/* Site: 101325 Pa, 293.15 K, 50 % relative humidity.
 *
 * site      out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_site_init(vtx_site *site);

/* Site at an altitude, barometer from the standard atmosphere.
 *
 * altitude           in   m  -2000..11000   geopotential
 * temperature        in   K  200..350
 * relative_humidity  in   -  0..1           over liquid water
 * site               out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  weather moves the barometer by 3 % either way
 * source    ISO 2533:1975
 */
VTX_API vtx_status vtx_site_at_altitude(double altitude, double temperature, double relative_humidity, vtx_site *site);

/* Cooler: adjustable over cold fractions 0.2 to 0.8, one outlet, 6 mm bore, rated at 800 kPa absolute and 293.15 K against 101325 Pa at
 * cold fraction 0.6; reference state 100 kPa, 293.15 K, 65 %; default tube; flow unset (NaN), which every call refuses until it is given.
 * The chamber pressure ratio 0.5 is an assumption: a nozzle just choked. No published source.
 *
 * cooler    out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_cooler_init(vtx_cooler *cooler);

/* Setting: cold fraction 0.6 held, opening 1, no back-pressure, real air.
 *
 * setting   out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_cooler_setting_init(vtx_cooler_setting *setting);

/* Water in the supply, liquid included.
 *
 * supply          in   -
 * model           in   -  VTX_AIR_IDEAL, VTX_AIR_REAL
 * humidity_ratio  out  kg/kg dry air
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the moist-air model
 * source    moist_air.h
 */
VTX_API vtx_status vtx_supply_humidity_ratio(const vtx_supply *supply, int32_t model, double *humidity_ratio);

/* Mass flow at the rated point.
 *
 * cooler     in   -
 * mass_flow  out  kg/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the data sheet; a wrong reference state costs up to 9 %
 * source    standard_flow.h
 */
VTX_API vtx_status vtx_cooler_rated_mass_flow(const vtx_cooler *cooler, double *mass_flow);

/* Effective area of the inlet nozzle, discharge coefficient included, that passes the rated flow.
 *
 * cooler    in   -
 * area      out  m2
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  that of the data sheet; independent of the assumed chamber pressure while the nozzle is choked
 * source    restriction.h
 */
VTX_API vtx_status vtx_cooler_inlet_area(const vtx_cooler *cooler, double *area);

/* What a cooler does with the supply at its inlet.
 *
 * cooler              in   -
 * supply              in   -  as it reaches the cooler: 1.05 to 20 times the site's pressure
 * site                in   -
 * setting             in   -
 * target_temperature  in   K  150..500   the temperature up to which the cold air is of use
 * point               out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (no flow at this opening; no opening, however wide, gives this cold fraction, since
 *           what is behind the hot outlet would need more pressure than the chamber has: vtx_job_cold_fraction of sizing.h says what
 *           can be had), NOT_CONVERGED
 * advisory  CHOKED (inlet nozzle), CONDENSING, FREEZING, STATIC_FREEZING, SWEATING, FROSTING (bare cold outlet), TOUCH_COLD, TOUCH_HOT,
 *           UNCALIBRATED, EFFICIENCY_ASSUMED (inlet nozzle exchanged), FIELD_UNAVAILABLE, SECOND_LAW_LIMITED, EXTRAPOLATED (that of
 *           separation.h; or the opening held gives a cold fraction outside cold_fraction_min..cold_fraction_max)
 * accuracy  flow that of the data sheet; temperatures that of the tube's band, which the low and high fields carry
 * source    separation.h, restriction.h, moist_air.h
 * caution   cold outlets burn skin by frost, hot outlets by heat; the air is under pressure: shut off, vent and lock out before opening
 */
VTX_API vtx_status vtx_operating_point_at(const vtx_cooler *cooler, const vtx_supply *supply, const vtx_site *site,
                                          const vtx_cooler_setting *setting, double target_temperature, vtx_operating_point *point);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_site_at_altitude_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, vtx_site *site, ptrdiff_t site_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_supply_humidity_ratio_batch(size_t n, const vtx_supply *supply, ptrdiff_t supply_stride,
        int32_t model, double *humidity_ratio, ptrdiff_t humidity_ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cooler_rated_mass_flow_batch(size_t n, const vtx_cooler *cooler, ptrdiff_t cooler_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cooler_inlet_area_batch(size_t n, const vtx_cooler *cooler, ptrdiff_t cooler_stride, double *area,
        ptrdiff_t area_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_operating_point_at_batch(size_t n, const vtx_cooler *cooler, ptrdiff_t cooler_stride,
        const vtx_supply *supply, ptrdiff_t supply_stride, const vtx_site *site, ptrdiff_t site_stride,
        const vtx_cooler_setting *setting, ptrdiff_t setting_stride, const double *target_temperature,
        ptrdiff_t target_temperature_stride, vtx_operating_point *point, ptrdiff_t point_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
