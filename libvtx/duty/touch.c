/* Touch limits, cold and hot. */
#include <vtx/material.h>
#include <vtx/touch.h>

#include "../base/numeric.h"
#include "contact_kernel.h"

#define SKIN_TEMPERATURE 305.15
/* 0.63/sqrt(0.135e-6): skin-like tissue, Lienhard, A Heat Transfer Textbook, example 5.5. */
#define SKIN_EFFUSIVITY 1714.6428199482247

#define SURFACE_MIN 70.0
#define SURFACE_MAX 1500.0
#define TIME_MIN 0.5
#define TIME_MAX 1e6

/* Geng et al. 2006: onset of pain, numbness and frostbite, K. */
#define PAIN 288.15
#define NUMBNESS 280.15
#define FROSTBITE 273.15

enum { ANCHORS = 5 };

/* s */
static const double anchor_time[ANCHORS] = { 1, 10, 60, 600, 28800 };
/* K. Sources in touch.h. Low 1 s, 10 s ECMA-287 and 60 s to 8 h ISO 13732-1 from memory; glass 1 s and 10 s metal plus 10 K. */
static const double threshold_low[3][ANCHORS] = {
    { 338.15, 328.15, 324.15, 321.15, 316.15 },
    { 348.15, 338.15, 329.15, 321.15, 316.15 },
    { 358.15, 338.15, 333.15, 321.15, 316.15 },
};
static const double threshold_high[3][ANCHORS] = {
    { 343.15, 333.15, 324.15, 321.15, 316.15 },
    { 353.15, 343.15, 329.15, 321.15, 316.15 },
    { 366.15, 355.15, 333.15, 321.15, 316.15 },
};

vtx_status vtx_skin_init(vtx_skin *skin)
{
    if (!skin)
        return VTX_BAD_ARGUMENT;
    memset(skin, 0, sizeof *skin);
    skin->temperature = SKIN_TEMPERATURE;
    skin->effusivity = SKIN_EFFUSIVITY;
    return VTX_OK;
}

static vtx_status check_skin(const vtx_skin *s)
{
    if (!s)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_positive(s->temperature, 273.15, 318.15), check_positive(s->effusivity, 500, 3000));
    status = worse(status, require(are_zero(s->reserved, ARRAY_LENGTH(s->reserved))));
    return status;
}

static vtx_status check_class(int32_t contact_class)
{
    return require(contact_class >= VTX_CONTACT_METAL && contact_class <= VTX_CONTACT_PLASTIC);
}

/* Straight over the logarithm of time, level beyond the ends. */
static double threshold(const double anchor[ANCHORS], double time)
{
    int i = 0;
    if (time <= anchor_time[0])
        return anchor[0];
    if (time >= anchor_time[ANCHORS - 1])
        return anchor[ANCHORS - 1];
    while (time > anchor_time[i + 1])
        i++;
    const double share = log(time / anchor_time[i]) / log(anchor_time[i + 1] / anchor_time[i]);
    return anchor[i] + share * (anchor[i + 1] - anchor[i]);
}

vtx_status vtx_burn_threshold(int32_t contact_class, double contact_time, double *low, double *high)
{
    vtx_status status = worse(require(low != NULL), check_class(contact_class));
    status = worse(status, check_positive(contact_time, TIME_MIN, TIME_MAX));
    if (status != VTX_OK) {
        poison(high, status);
        return poison(low, status);
    }
    *low = threshold(threshold_low[contact_class - VTX_CONTACT_METAL], contact_time);
    if (high)
        *high = threshold(threshold_high[contact_class - VTX_CONTACT_METAL], contact_time);
    return VTX_OK;
}

/* The worst criterion and its limit. */
static void judge(vtx_touch *t, double surface_temperature)
{
    t->skin_limit = quiet_nan();
    t->criterion = VTX_TOUCH_NONE;
    t->advisories = 0;
    if (surface_temperature >= t->hot_threshold_low) {
        const int above = surface_temperature > t->hot_threshold_high;
        t->criterion = above ? VTX_TOUCH_BURN : VTX_TOUCH_MAY_BURN;
        t->skin_limit = above ? t->hot_threshold_high : t->hot_threshold_low;
        t->advisories = VTX_ADVISORY_TOUCH_HOT;
    } else if (t->contact_temperature < PAIN) {
        const int frozen = t->contact_temperature < FROSTBITE, numb = t->contact_temperature < NUMBNESS;
        t->criterion = frozen ? VTX_TOUCH_FROSTBITE : numb ? VTX_TOUCH_NUMBNESS : VTX_TOUCH_PAIN;
        t->skin_limit = frozen ? FROSTBITE : numb ? NUMBNESS : PAIN;
        t->advisories = VTX_ADVISORY_TOUCH_COLD;
    } else {
        t->advisories = VTX_ADVISORY_FIELD_UNAVAILABLE;
    }
}

vtx_status vtx_touch_surface(const vtx_skin *skin, int32_t contact_class, double effusivity, double surface_temperature,
                             double contact_time, vtx_touch *touch)
{
    vtx_status status = worse(require(touch != NULL), worse(check_skin(skin), check_class(contact_class)));
    status = worse(status, worse(check_positive(effusivity, 1, 1e5), check_positive(surface_temperature, SURFACE_MIN, SURFACE_MAX)));
    status = worse(status, check_positive(contact_time, TIME_MIN, TIME_MAX));
    if (status != VTX_OK)
        return POISON_STRUCT(touch, vtx_touch, criterion, status);
    vtx_touch t = { .contact_time = contact_time, .effusivity = effusivity, .contact_class = contact_class };
    t.contact_temperature = contact_temperature(skin->effusivity, skin->temperature, effusivity, surface_temperature);
    t.cold_margin = t.contact_temperature - FROSTBITE;
    t.hot_threshold_low = threshold(threshold_low[contact_class - VTX_CONTACT_METAL], contact_time);
    t.hot_threshold_high = threshold(threshold_high[contact_class - VTX_CONTACT_METAL], contact_time);
    t.hot_margin = t.hot_threshold_low - surface_temperature;
    judge(&t, surface_temperature);
    *touch = t;
    return VTX_OK;
}

vtx_status vtx_coldest_touchable(const vtx_skin *skin, double effusivity, double wanted_contact_temperature, double *surface_temperature)
{
    vtx_status status = worse(require(surface_temperature != NULL), worse(check_skin(skin), check_positive(effusivity, 1, 1e5)));
    status = worse(status, check_positive(wanted_contact_temperature, 250, 300));
    if (status != VTX_OK)
        return poison(surface_temperature, status);
    const double wanted = wanted_contact_temperature;
    const double t = wanted - skin->effusivity / effusivity * (skin->temperature - wanted);
    if (wanted >= skin->temperature || t < SURFACE_MIN)
        return poison(surface_temperature, VTX_NO_SOLUTION);
    *surface_temperature = t;
    return VTX_OK;
}
