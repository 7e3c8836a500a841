/* Friction of flow in round pipes and hoses, and the losses of fittings.
 *
 * Not the pressure drop of a gas that expands on its way: line.h does that, with this friction inside.
 * See also: bore.h for the bores and walls of standard pipe and hose. */
#ifndef VTX_FRICTION_H
#define VTX_FRICTION_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Laws of the friction factor. The lines of line.h and chain.h use Churchill's, which knows all regimes. */
enum vtx_friction_law {
    VTX_FRICTION_CHURCHILL = 260, /* one smooth formula, laminar to fully rough */
    VTX_FRICTION_COLEBROOK = 261, /* turbulent, the implicit formula, solved */
    VTX_FRICTION_HAALAND = 262    /* turbulent, explicit */
};

/* Fittings whose loss coefficient is known well enough to plan with. */
enum vtx_fitting {
    VTX_FITTING_ENTRANCE = 263,    /* sharp-edged, out of a vessel or header: 0.5 */
    VTX_FITTING_ELBOW = 264,       /* standard threaded 90 degrees: 30 fT */
    VTX_FITTING_TEE_THROUGH = 265, /* straight through a tee: 20 fT */
    VTX_FITTING_TEE_BRANCH = 266,  /* into or out of the branch: 60 fT */
    VTX_FITTING_BALL_VALVE = 267,  /* full bore, open: 3 fT */
    VTX_FITTING_GLOBE_VALVE = 268, /* open: 340 fT */
    VTX_FITTING_EXIT = 269         /* into a vessel, without expansion of the gas: 1. The open end of a line already loses it. */
};

/* Reynolds number of a flow in a round bore.
 *
 * mass_flow  in   kg/s  0..1e4
 * diameter   in   m     1e-4..2      bore
 * viscosity  in   Pa s  1e-7..1e-2   dynamic
 * reynolds   out  -     4 mass_flow/(pi diameter viscosity)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    definition
 */
VTX_API vtx_status vtx_reynolds_number(double mass_flow, double diameter, double viscosity, double *reynolds);

/* Darcy friction factor: pressure gradient = factor/diameter times density velocity^2/2.
 *
 * law                 in   -  of vtx_friction_law
 * reynolds            in   -  above 0 to 1e9 (Churchill); 2300..1e9 (Colebrook, Haaland)
 * relative_roughness  in   -  0..0.1        height of the roughness over the bore
 * factor              out  -  64/reynolds in laminar flow; four times Fanning's
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also at rest, where the factor has no finite value; the lines use factor times
 *           Reynolds number, which has)
 * accuracy  rounding; Churchill is above Colebrook by 0.4 % (1e4, smooth), 0.8 % (1e5, 1e-3), 3 % (4000, 0.01); pipes follow
 *           either within 5 %
 * source    Churchill 1977, Chem. Eng. 84(24), 91; Colebrook 1939, J. ICE 11, 133, with 2.51 and 3.7; Haaland 1983, J. Fluids Eng.
 *           105, 89; from memory
 */
VTX_API vtx_status vtx_darcy_friction_factor(int32_t law, double reynolds, double relative_roughness, double *factor);

/* Fanning friction factor: wall shear stress over density velocity^2/2, a quarter of Darcy's.
 *
 * law                 in   -  of vtx_friction_law
 * reynolds            in   -  above 0 to 1e9 (Churchill); 2300..1e9 (Colebrook, Haaland)
 * relative_roughness  in   -  0..0.1
 * factor              out  -  16/reynolds in laminar flow
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_darcy_friction_factor
 * source    as vtx_darcy_friction_factor
 * note      every friction factor elsewhere in this library is Darcy's
 */
VTX_API vtx_status vtx_fanning_friction_factor(int32_t law, double reynolds, double relative_roughness, double *factor);

/* Loss coefficient of a fitting: pressure loss over density velocity^2/2 in the bore.
 *
 * fitting    in   -  of vtx_fitting
 * diameter   in   m  1e-4..2            bore
 * roughness  in   m  1e-8..0.1 diameter  of the pipe, for the fully turbulent factor fT; 4.6e-5 in the source's tables
 * loss       out  -  to be added up in minor_loss of a line
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  +-20 %, common practice, no source; small threaded fittings differ by more
 * source    Crane TP-410, coefficients from memory; fT = 0.25/log10(roughness/(3.7 diameter))^2, the rough limit of Colebrook 1939
 */
VTX_API vtx_status vtx_fitting_loss(int32_t fitting, double diameter, double roughness, double *loss);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_reynolds_number_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *diameter, ptrdiff_t diameter_stride, const double *viscosity, ptrdiff_t viscosity_stride,
        double *reynolds, ptrdiff_t reynolds_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_darcy_friction_factor_batch(size_t n, int32_t law, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *relative_roughness, ptrdiff_t relative_roughness_stride, double *factor,
        ptrdiff_t factor_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fanning_friction_factor_batch(size_t n, int32_t law, const double *reynolds,
        ptrdiff_t reynolds_stride, const double *relative_roughness, ptrdiff_t relative_roughness_stride,
        double *factor, ptrdiff_t factor_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fitting_loss_batch(size_t n, int32_t fitting, const double *diameter, ptrdiff_t diameter_stride,
        const double *roughness, ptrdiff_t roughness_stride, double *loss, ptrdiff_t loss_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
