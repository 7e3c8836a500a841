/* Friction factors and losses of fittings. */
#include "friction_kernel.h"

static double haaland_root(double reynolds, double relative_roughness)
{
    return -1.8 * log10(pow(relative_roughness / 3.7, 1.11) + 6.9 / reynolds);
}

/* Newton on x = 1/sqrt(f); x + 2 log10(...) is increasing and nearly straight, and Haaland starts within 2 %. */
static double colebrook_root(double reynolds, double relative_roughness)
{
    double x = haaland_root(reynolds, relative_roughness);
    for (int i = 0; i < 3; i++) {
        const double slip = 2.51 / reynolds;
        const double inside = relative_roughness / 3.7 + slip * x;
        x -= (x + 2 * log10(inside)) / (1 + 2 / log(10) * slip / inside);
    }
    return x;
}

static vtx_status check_law(int32_t law, double reynolds, double relative_roughness)
{
    const vtx_status known = require(law == VTX_FRICTION_CHURCHILL || law == VTX_FRICTION_COLEBROOK || law == VTX_FRICTION_HAALAND);
    vtx_status status = worse(check_amount(reynolds, 1e9), check_amount(relative_roughness, RELATIVE_ROUGHNESS_MAX));
    if (reynolds < (law == VTX_FRICTION_CHURCHILL ? 1e-12 : 2300))
        status = worse(status, VTX_OUT_OF_RANGE);
    return worse(known, status);
}

static double darcy(int32_t law, double reynolds, double relative_roughness)
{
    if (law == VTX_FRICTION_CHURCHILL)
        return friction_times_reynolds(reynolds, relative_roughness) / reynolds;
    return 1 / square(law == VTX_FRICTION_HAALAND ? haaland_root(reynolds, relative_roughness)
                                                  : colebrook_root(reynolds, relative_roughness));
}

vtx_status vtx_reynolds_number(double mass_flow, double diameter, double viscosity, double *reynolds)
{
    vtx_status status = worse(require(reynolds != NULL), check_amount(mass_flow, 1e4));
    status = worse(status, worse(check_positive(diameter, BORE_MIN, BORE_MAX), check_positive(viscosity, VISCOSITY_MIN, VISCOSITY_MAX)));
    if (status != VTX_OK)
        return poison(reynolds, status);
    *reynolds = reynolds_number(mass_flow, diameter, viscosity);
    return VTX_OK;
}

vtx_status vtx_darcy_friction_factor(int32_t law, double reynolds, double relative_roughness, double *factor)
{
    const vtx_status status = worse(require(factor != NULL), check_law(law, reynolds, relative_roughness));
    if (status != VTX_OK)
        return poison(factor, status);
    *factor = darcy(law, reynolds, relative_roughness);
    return VTX_OK;
}

vtx_status vtx_fanning_friction_factor(int32_t law, double reynolds, double relative_roughness, double *factor)
{
    const vtx_status status = worse(require(factor != NULL), check_law(law, reynolds, relative_roughness));
    if (status != VTX_OK)
        return poison(factor, status);
    *factor = darcy(law, reynolds, relative_roughness) / 4;
    return VTX_OK;
}

/* Crane TP-410, from memory: multiples of fT, or plain numbers; 0 for no fitting of ours. */
static double rough_multiple(int32_t fitting)
{
    switch (fitting) {
    case VTX_FITTING_ELBOW: return 30;
    case VTX_FITTING_TEE_THROUGH: return 20;
    case VTX_FITTING_TEE_BRANCH: return 60;
    case VTX_FITTING_BALL_VALVE: return 3;
    case VTX_FITTING_GLOBE_VALVE: return 340;
    default: return 0;
    }
}

static double plain_loss(int32_t fitting)
{
    return fitting == VTX_FITTING_ENTRANCE ? 0.5 : fitting == VTX_FITTING_EXIT ? 1 : 0;
}

vtx_status vtx_fitting_loss(int32_t fitting, double diameter, double roughness, double *loss)
{
    const double multiple = rough_multiple(fitting), plain = plain_loss(fitting);
    vtx_status status = worse(require(loss != NULL), require(multiple + plain > 0));
    status = worse(status, worse(check_positive(diameter, BORE_MIN, BORE_MAX), check_positive(roughness, 1e-8, BORE_MAX)));
    if (status == VTX_OK && roughness > RELATIVE_ROUGHNESS_MAX * diameter)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(loss, status);
    *loss = plain + multiple * fully_rough_friction(roughness / diameter);
    return VTX_OK;
}
