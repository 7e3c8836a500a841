/* Air jets blown at a face. */
#include <vtx/impingement.h>

#include "../base/root.h"
#include "jet_kernel.h"

/* Martin 1977, ranges: distance over diameter, root of nozzle over face area (0.5 D/r), Reynolds numbers. */
#define DISTANCE_RATIO_MIN 2.0
#define DISTANCE_RATIO_MAX 12.0
#define ROOT_SHARE_MAX 0.2
static const double root_share_min = 0.06324555320336759; /* sqrt(0.004) */
#define REYNOLDS_MIN 2000.0
#define REYNOLDS_MAX 4e5
#define FIELD_REYNOLDS_MAX 1e5

/* Closer than this, in diameters, two jets work as one. */
#define TWIN_SPACING_MIN 8.0

static int32_t outside(int inside) { return inside ? 0 : VTX_ADVISORY_OUTSIDE_CORRELATION; }

static int is_within_geometry(double distance_ratio, double root_share)
{
    return is_within(distance_ratio, DISTANCE_RATIO_MIN, DISTANCE_RATIO_MAX)
        && is_within(root_share, root_share_min * (1 - LIMIT_ROUNDING), ROOT_SHARE_MAX * (1 + LIMIT_ROUNDING));
}

/* G. Smaller faces than the correlation's are held at its limit, or at the highest G where that lies at larger faces, farther away
 * than 12.8 diameters; closer distances are held at two diameters. */
static double geometry_factor(double distance_ratio, double root_share)
{
    const double a = 0.2 * (larger(distance_ratio, DISTANCE_RATIO_MIN) - 6);
    const double highest = a > 0 ? 1 / (2.2 + sqrt(2.2 * (2.2 + a))) : ROOT_SHARE_MAX;
    const double f = smaller(root_share, smaller(ROOT_SHARE_MAX, highest));
    return 2 * f * (1 - 2.2 * f) / (1 + a * f);
}

static double prandtl_factor(double prandtl) { return exp(0.42 * log(prandtl)); }

static double nozzle_nusselt(double reynolds, double prandtl, double distance_ratio, double radius_ratio)
{
    const double root_share = radius_ratio > 0.5 / ROOT_SHARE_MAX ? 0.5 / radius_ratio : ROOT_SHARE_MAX;
    return prandtl_factor(prandtl) * geometry_factor(distance_ratio, root_share)
        * 2 * sqrt(reynolds * (1 + 0.005 * exp(0.55 * log(reynolds))));
}

static int32_t nozzle_advisories(double reynolds, double distance_ratio, double radius_ratio)
{
    const double root_share = radius_ratio > 0.5 ? 0.5 / radius_ratio : 1;
    return outside(is_within_geometry(distance_ratio, root_share) && is_within(reynolds, REYNOLDS_MIN, REYNOLDS_MAX));
}

static double field_nusselt(double reynolds, double prandtl, double distance_ratio, double root_share)
{
    const double ratio = larger(distance_ratio, DISTANCE_RATIO_MIN) * root_share / 0.6;
    const double cube = ratio * square(ratio);
    return prandtl_factor(prandtl) * exp(-0.05 * log1p(square(cube))) * geometry_factor(distance_ratio, root_share)
        * 0.5 * exp(2 * log(reynolds) / 3);
}

static int32_t field_advisories(double reynolds, double distance_ratio, double root_share)
{
    return outside(is_within_geometry(distance_ratio, root_share) && is_within(reynolds, REYNOLDS_MIN, FIELD_REYNOLDS_MAX));
}

static vtx_status check_flow(double reynolds, double prandtl, double distance_ratio)
{
    return worse(check_positive(reynolds, 10, 1e7), worse(check_positive(prandtl, 0.5, 100), check_amount(distance_ratio, 1000)));
}

static vtx_status poison_nusselt(double *nusselt, int32_t *advisories, vtx_status status)
{
    poison_integer(advisories, status);
    return poison(nusselt, status);
}

vtx_status vtx_nozzle_nusselt(double reynolds, double prandtl, double distance_ratio, double radius_ratio, double *nusselt,
                              int32_t *advisories)
{
    const vtx_status status = worse(require(nusselt != NULL), worse(check_flow(reynolds, prandtl, distance_ratio), check_amount(radius_ratio, 1000)));
    if (status != VTX_OK)
        return poison_nusselt(nusselt, advisories, status);
    *nusselt = nozzle_nusselt(reynolds, prandtl, distance_ratio, radius_ratio);
    if (advisories)
        *advisories = nozzle_advisories(reynolds, distance_ratio, radius_ratio);
    return VTX_OK;
}

vtx_status vtx_nozzle_field_nusselt(double reynolds, double prandtl, double distance_ratio, double area_share, double *nusselt,
                                    int32_t *advisories)
{
    const vtx_status status = worse(worse(require(nusselt && !(area_share >= 1)), check_positive(area_share, 1e-6, 0.8)),
                                    check_flow(reynolds, prandtl, distance_ratio));
    if (status != VTX_OK)
        return poison_nusselt(nusselt, advisories, status);
    *nusselt = field_nusselt(reynolds, prandtl, distance_ratio, sqrt(area_share));
    if (advisories)
        *advisories = field_advisories(reynolds, distance_ratio, sqrt(area_share));
    return VTX_OK;
}

/* Air between jet and face. */
struct film {
    double kinematic_viscosity, conductivity, prandtl;
};

static struct film film_of(double pressure, double jet_temperature, double face_temperature)
{
    const double temperature = 0.5 * (jet_temperature + face_temperature);
    const double viscosity = dilute_air_viscosity(temperature);
    const double conductivity = air_conductivity(temperature, pressure / (gas_constant * temperature));
    const struct film film = { viscosity / jet_density(pressure, temperature), conductivity, viscosity * jet_heat_capacity() / conductivity };
    return film;
}

/* What does not depend on the size of the face: Reynolds number and ratios for an outlet of `diameter`. */
static struct film start(const vtx_jet *jet, const vtx_jet_outlet *outlet, double diameter, double distance, double face_temperature,
                         vtx_impingement *r)
{
    r->jet_temperature = jet_temperature_at(jet, outlet->equivalent_diameter * diameter / outlet->diameter, distance);
    const struct film film = film_of(jet->ambient_pressure, r->jet_temperature, face_temperature);
    r->reynolds = outlet->velocity * diameter / film.kinematic_viscosity;
    r->distance_ratio = distance / diameter;
    r->reserved = 0;
    return film;
}

static void finish(const struct film *film, double diameter, double face_area, double face_temperature, vtx_impingement *r)
{
    r->coefficient = r->nusselt * film->conductivity / diameter;
    r->heat = r->coefficient * face_area * (face_temperature - r->jet_temperature);
}

static void impinge(const vtx_jet *jet, const vtx_jet_outlet *outlet, double diameter, double distance, double face_area,
                    double face_temperature, vtx_impingement *r)
{
    const struct film film = start(jet, outlet, diameter, distance, face_temperature, r);
    r->radius_ratio = sqrt(face_area / pi) / diameter;
    r->nusselt = nozzle_nusselt(r->reynolds, film.prandtl, r->distance_ratio, r->radius_ratio);
    r->advisories = (outlet->advisories & (VTX_ADVISORY_CHOKED | VTX_ADVISORY_UNDEREXPANDED_JET))
        | nozzle_advisories(r->reynolds, r->distance_ratio, r->radius_ratio);
    finish(&film, diameter, face_area, face_temperature, r);
}

static vtx_status check_face(double distance, double face_area, double face_temperature)
{
    return worse(check_amount(distance, JET_DISTANCE_MAX),
                 worse(check_positive(face_area, 1e-8, 100), check_positive(face_temperature, 150, 1500)));
}

vtx_status vtx_impingement_at(const vtx_jet *jet, double distance, double face_area, double face_temperature,
                              vtx_impingement *result)
{
    vtx_jet_outlet outlet;
    const vtx_status status = worse(require(result != NULL), worse(check_jet(jet), check_face(distance, face_area, face_temperature)));
    if (status != VTX_OK)
        return POISON_STRUCT(result, vtx_impingement, advisories, status);
    jet_outlet_of(jet, &outlet);
    impinge(jet, &outlet, outlet.diameter, distance, face_area, face_temperature, result);
    return VTX_OK;
}

/* Side by side: from one outlet of twice the area at no spacing to two independent ones at eight diameters. */
static void join(const vtx_jet *jet, const vtx_jet_outlet *outlet, double apart, double distance, double face_area,
                 double face_temperature, vtx_impingement *r)
{
    vtx_impingement one;
    impinge(jet, outlet, outlet->diameter * sqrt(2), distance, face_area, face_temperature, &one);
    r->coefficient = apart * r->coefficient + (1 - apart) * one.coefficient;
    r->nusselt = apart * r->nusselt + (1 - apart) * one.nusselt / sqrt(2);
    r->heat = apart * r->heat + (1 - apart) * one.heat;
    r->jet_temperature = apart * r->jet_temperature + (1 - apart) * one.jet_temperature;
    r->advisories |= VTX_ADVISORY_OUTSIDE_CORRELATION;
}

vtx_status vtx_twin_impingement_at(const vtx_jet *outlet, int32_t arrangement, double spacing, double distance, double face_area,
                                   double face_temperature, vtx_impingement *result)
{
    vtx_jet_outlet start_of;
    vtx_status status = worse(require(result && (arrangement == VTX_TWIN_TWO_SIDES || arrangement == VTX_TWIN_SIDE_BY_SIDE)),
                              worse(check_jet(outlet), check_face(distance, face_area, face_temperature)));
    status = worse(status, check_amount(spacing, 10));
    if (status != VTX_OK)
        return POISON_STRUCT(result, vtx_impingement, advisories, status);
    jet_outlet_of(outlet, &start_of);
    impinge(outlet, &start_of, start_of.diameter, distance, 0.5 * face_area, face_temperature, result);
    result->heat *= 2;
    const double apart = spacing / (TWIN_SPACING_MIN * start_of.diameter);
    if (arrangement == VTX_TWIN_SIDE_BY_SIDE && apart < 1)
        join(outlet, &start_of, apart, distance, face_area, face_temperature, result);
    return VTX_OK;
}

vtx_status vtx_field_impingement_at(const vtx_jet *nozzle, double pitch, double distance, double face_temperature,
                                    vtx_impingement *result)
{
    vtx_jet_outlet outlet;
    vtx_status status = worse(require(result != NULL), worse(check_jet(nozzle), check_positive(pitch, 2e-4, 10)));
    status = worse(status, check_face(distance, 1, face_temperature));
    if (status == VTX_OK) {
        jet_outlet_of(nozzle, &outlet);
        status = require(pitch > outlet.diameter);
    }
    if (status != VTX_OK)
        return POISON_STRUCT(result, vtx_impingement, advisories, status);
    const struct film film = start(nozzle, &outlet, outlet.diameter, distance, face_temperature, result);
    const double root_share = sqrt(0.25 * pi) * outlet.diameter / pitch;
    result->radius_ratio = 0.5 / root_share;
    result->nusselt = field_nusselt(result->reynolds, film.prandtl, result->distance_ratio, root_share);
    result->advisories = (outlet.advisories & (VTX_ADVISORY_CHOKED | VTX_ADVISORY_UNDEREXPANDED_JET))
        | field_advisories(result->reynolds, result->distance_ratio, root_share);
    finish(&film, outlet.diameter, square(pitch), face_temperature, result);
    return VTX_OK;
}

struct heat_wish {
    const vtx_jet *jet;
    vtx_jet_outlet outlet;
    double face_area, face_temperature, heat;
};

static double heat_at(const struct heat_wish *wish, double distance)
{
    vtx_impingement r;
    impinge(wish->jet, &wish->outlet, wish->outlet.diameter, distance, wish->face_area, wish->face_temperature, &r);
    return r.heat;
}

static double excess_of_heat(double log_distance, void *context)
{
    const struct heat_wish *wish = context;
    return heat_at(wish, exp(log_distance)) - wish->heat;
}

static double heat_missing(double log_distance, void *context) { return -excess_of_heat(log_distance, context); }

/* Where most heat is taken. Nearer than two diameters nothing changes, and a jet not warmer than the room only loses with distance;
 * a warmer one first gains by mixing. */
static vtx_status best_distance(struct heat_wish *wish, double *log_distance)
{
    *log_distance = log(DISTANCE_RATIO_MIN * wish->outlet.diameter);
    if (wish->jet->temperature <= wish->jet->ambient_temperature)
        return VTX_OK;
    return find_minimum(heat_missing, wish, *log_distance, log(JET_DISTANCE_MAX), 1e-7, log_distance);
}

/* find_root wants a change of sign; the wish may be the most there is. */
static vtx_status farthest_distance(struct heat_wish *wish, double log_best, double *log_distance)
{
    const double log_end = log(JET_DISTANCE_MAX);
    *log_distance = log_best;
    if (excess_of_heat(log_best, wish) <= 0)
        return VTX_OK;
    if (excess_of_heat(log_end, wish) > 0)
        return VTX_OUT_OF_RANGE;
    return find_root(excess_of_heat, wish, log_best, log_end, 1e-13, log_distance) == VTX_OK ? VTX_OK : VTX_NOT_CONVERGED;
}

vtx_status vtx_impingement_distance_for_heat(const vtx_jet *jet, double face_area, double face_temperature, double heat,
                                             double *distance, double *attainable_heat)
{
    struct heat_wish wish = { .jet = jet, .face_area = face_area, .face_temperature = face_temperature, .heat = heat };
    double best = 0, x = 0;
    vtx_status status = worse(require(distance != NULL), worse(check_jet(jet), check_face(0, face_area, face_temperature)));
    status = worse(status, check_positive(heat, 1e-6, 1e6));
    poison(attainable_heat, status);
    if (status != VTX_OK)
        return poison(distance, status);
    jet_outlet_of(jet, &wish.outlet);
    if (best_distance(&wish, &best) != VTX_OK)
        return poison(distance, VTX_NOT_CONVERGED);
    const double most = heat_at(&wish, exp(best));
    status = heat > most * (1 + LIMIT_ROUNDING) || most <= 0 ? VTX_NO_SOLUTION : farthest_distance(&wish, best, &x);
    if (attainable_heat && (status == VTX_OK || status == VTX_NO_SOLUTION))
        *attainable_heat = most;
    *distance = exp(x);
    return status == VTX_OK ? VTX_OK : poison(distance, status);
}
