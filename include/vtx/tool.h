/* Tools and faces with heat entering at one place: shanks and fins, tool temperature under a steady load, moving and standing heat sources.
 *
 * Not the heat of cutting itself, and not tool life. A jet lowers the base and the outer faces of a tool; it hardly reaches the
 * contact between chip and tool.
 * See also: machining.h for the heat flow into the tool, part.h for the work. */
#ifndef VTX_TOOL_H
#define VTX_TOOL_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A bar that sheds heat along its length. */
typedef struct vtx_fin {
    double parameter;        /* 1/m, square root of film coefficient times perimeter over conductivity times section */
    double conductance;      /* W/K, of the bar from its base */
    double efficiency;       /* -, against a bar that is as warm as its base throughout */
    double long_conductance; /* W/K, of an endless bar */
    double tip_share;        /* -, rise of the tip over the air as a share of the rise of the base */
    double length_number;    /* -, parameter times length: beyond 2.65 more length brings less than 1 % */
} vtx_fin;

/* A tool: a shank that sheds heat to the air, a front face under a jet, a holder. */
typedef struct vtx_tool {
    double length;             /* m, 1e-4..2, of the shank in the air */
    double perimeter;          /* m, 1e-5..5 */
    double section;            /* m2, 1e-10..1 */
    double conductivity;       /* W/(m K), 0.01..3000 */
    double film_coefficient;   /* W/(m2 K), 0.1..1e5, along the shank */
    double face_area;          /* m2, 0..1, of the front faces under the jet */
    double face_coefficient;   /* W/(m2 K), 0..1e5, on them */
    double holder_conductance; /* W/K, 0..1e4, from base to holder; 0 when insulated */
    double holder_temperature; /* K, 50..2000 */
    double tip_length;         /* m, 0..1, from the base to the heated tip */
    double tip_section;        /* m2, 1e-10..1, of that piece */
    double contact_radius;     /* m, 0 or 1e-6..0.1, radius of the heated spot; 0 leaves its constriction out */
    double reserved[4];        /* 0 */
} vtx_tool;

/* What a tool settles at. */
typedef struct vtx_tool_temperatures {
    double base_temperature;     /* K, where the jet acts */
    double tip_temperature_low;  /* K, at the heated spot of even temperature; equals high without a contact radius */
    double tip_temperature_high; /* K, mean of a spot of even heat flux */
    double shank_heat;           /* W, shed along the shank */
    double face_heat;            /* W, taken by the jet on the front faces */
    double holder_heat;          /* W, into the holder; negative when it warms the tool */
    double conductance;          /* W/K, of all three together */
} vtx_tool_temperatures;

/* Film coefficient that a tool's front faces need. */
typedef struct vtx_tool_film {
    double face_coefficient;       /* W/(m2 K); 0 when the tool stays below without */
    double face_heat;              /* W, to be taken there */
    double attainable_temperature; /* K, base temperature with 1e5 W/(m2 K) */
    int32_t advisories;
    int32_t reserved_code;         /* 0 */
} vtx_tool_film;

/* A heat source that moves over a thick body. */
typedef struct vtx_moving_source {
    double mean_rise;       /* K, mean under the source, both limits joined */
    double largest_rise;    /* K */
    double moving_mean;     /* K, limit of a fast source; NaN for a Peclet number below 1e-6 */
    double moving_largest;  /* K, at its trailing edge; NaN as moving_mean */
    double standing_mean;   /* K, limit of a source at rest: a disc of the same area */
    double standing_centre; /* K */
    double peclet;          /* -, speed times length over diffusivity */
    int32_t advisories;
    int32_t reserved_code;  /* 0 */
} vtx_moving_source;

/* A bar of even section with an insulated tip.
 *
 * film_coefficient  in   W/(m2 K)  0.1..1e5
 * perimeter         in   m         1e-5..5
 * section           in   m2        1e-10..1
 * conductivity      in   W/(m K)   0.01..3000
 * length            in   m         1e-6..100     for a tip that sheds heat too: length plus section over perimeter
 * fin               out            as described at vtx_fin
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for one temperature over the section: film_coefficient times half the thickness over conductivity below 0.1
 * source    Incropera, Fundamentals of Heat and Mass Transfer, table 3.4
 */
VTX_API vtx_status vtx_fin_of_bar(double film_coefficient, double perimeter, double section, double conductivity, double length,
                                  vtx_fin *fin);

/* Sets a tool without front faces, holder and contact spot. Length, perimeter, section, conductivity, film_coefficient and tip_section
 * are left 0: they must be set. Holder at 293.15 K.
 *
 * tool  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_tool_init(vtx_tool *tool);

/* Steady temperature of a tool under a constant heat flow.
 *
 * tool             in        as described at vtx_tool
 * heat_flow        in   W    0..1e5       entering at the tip
 * air_temperature  in   K    50..2000     for a jet its adiabatic wall temperature
 * temperatures     out       as described at vtx_tool_temperatures
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the tip exceeds 5000 K)
 * accuracy  20 %, that of the film coefficients; the tip another factor of 1.1 between its two readings
 * source    fin with insulated tip, Incropera table 3.4; constriction of a disc on a half space 1/(4 k a) at even temperature and
 *           8/(3 pi^2 k a) at even flux, from memory
 * caution   a tool that a jet keeps cool outside may still be hot enough at the tip to soften plastic or to burn
 */
VTX_API vtx_status vtx_tool_temperature(const vtx_tool *tool, double heat_flow, double air_temperature,
                                        vtx_tool_temperatures *temperatures);

/* Film coefficient on the front faces that holds the base of a tool at a wanted temperature.
 *
 * tool                in        as described at vtx_tool, with a face_area above 0; its face_coefficient is not used
 * heat_flow           in   W    0..1e5
 * air_temperature     in   K    50..2000
 * wanted_temperature  in   K    50..3000   of the base
 * film                out       as described at vtx_tool_film
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (not even with 1e5 W/(m2 K): attainable_temperature)
 * advisory  OUTSIDE_CORRELATION above 2000 W/(m2 K), more than an air jet brings
 * accuracy  inverse of vtx_tool_temperature to rounding
 * source    as vtx_tool_temperature
 */
VTX_API vtx_status vtx_tool_film_coefficient(const vtx_tool *tool, double heat_flow, double air_temperature, double wanted_temperature,
                                             vtx_tool_film *film);

/* Rise under a fast moving band of even heat flux, as long as the contact and wide against its length.
 *
 * heat_flux     in   W/m2      0..1e11
 * conductivity  in   W/(m K)   0.01..3000
 * diffusivity   in   m2/s      1e-9..2e-3
 * speed         in   m/s       1e-6..1000
 * length        in   m         1e-7..1       in the direction of the speed
 * mean_rise     out  K
 * largest_rise  out  K         may be null, at the trailing edge
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (speed times length over diffusivity below 20)
 * accuracy  of the two-dimensional band: mean 3 % low and largest 4 % high at 20, 2 and 3 % at 40
 * source    one-dimensional argument; Jaeger 1942 prints nearly the same constant 0.752 for the mean, from memory
 */
VTX_API vtx_status vtx_moving_band_rise(double heat_flux, double conductivity, double diffusivity, double speed, double length,
                                        double *mean_rise, double *largest_rise);

/* Rise under a standing disc of even heat flux on a thick body.
 *
 * heat_flux     in   W/m2     0..1e11
 * conductivity  in   W/(m K)  0.01..3000
 * radius        in   m        1e-7..1
 * mean_rise     out  K
 * centre_rise   out  K        may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * source    mean 8 q a/(3 pi k), centre q a/k, from memory
 */
VTX_API vtx_status vtx_standing_disc_rise(double heat_flux, double conductivity, double radius, double *mean_rise, double *centre_rise);

/* Rise under a heated patch at any speed from rest upward.
 *
 * heat_flux     in   W/m2      0..1e11
 * conductivity  in   W/(m K)   0.01..3000
 * diffusivity   in   m2/s      1e-9..2e-3
 * speed         in   m/s       0..1000
 * length        in   m         1e-7..1    in the direction of the speed
 * width         in   m         1e-7..1
 * source        out            as described at vtx_moving_source
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * advisory  EXTRAPOLATED when speed times length over diffusivity lies between 0.4 and 20: neither limit alone holds;
 *           FIELD_UNAVAILABLE below 1e-6
 * accuracy  up to 15 % between the limits, from memory; both limits are kept
 * source    inverse squares of the two rises added, from memory
 */
VTX_API vtx_status vtx_moving_source_rise(double heat_flux, double conductivity, double diffusivity, double speed, double length,
                                          double width, vtx_moving_source *source);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_fin_of_bar_batch(size_t n, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *perimeter, ptrdiff_t perimeter_stride, const double *section, ptrdiff_t section_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *length, ptrdiff_t length_stride,
        vtx_fin *fin, ptrdiff_t fin_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_tool_temperature_batch(size_t n, const vtx_tool *tool, ptrdiff_t tool_stride, const double *heat_flow,
        ptrdiff_t heat_flow_stride, const double *air_temperature, ptrdiff_t air_temperature_stride,
        vtx_tool_temperatures *temperatures, ptrdiff_t temperatures_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_tool_film_coefficient_batch(size_t n, const vtx_tool *tool, ptrdiff_t tool_stride,
        const double *heat_flow, ptrdiff_t heat_flow_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        vtx_tool_film *film, ptrdiff_t film_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_moving_band_rise_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *speed, ptrdiff_t speed_stride, const double *length,
        ptrdiff_t length_stride, double *mean_rise, ptrdiff_t mean_rise_stride, double *largest_rise,
        ptrdiff_t largest_rise_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_standing_disc_rise_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *radius, ptrdiff_t radius_stride,
        double *mean_rise, ptrdiff_t mean_rise_stride, double *centre_rise, ptrdiff_t centre_rise_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_moving_source_rise_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *speed, ptrdiff_t speed_stride, const double *length,
        ptrdiff_t length_stride, const double *width, ptrdiff_t width_stride, vtx_moving_source *source,
        ptrdiff_t source_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
