/* Water and ice at saturation. */
#include <vtx/water.h>

#include "../base/numeric.h"

/* IAPWS R7-97(2012), table 34; n[0] is not used. */
static const double n[11] = {
    0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
    0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3
};

#define LIQUID_TEMPERATURE_MIN 233.15
#define LIQUID_TEMPERATURE_MAX 647.096

/* Equation 30, in MPa there. */
static inline double liquid_saturation_pressure(double temperature)
{
    const double theta = temperature + n[9] / (temperature - n[10]);
    const double a = square(theta) + n[1] * theta + n[2];
    const double b = n[3] * square(theta) + n[4] * theta + n[5];
    const double c = n[6] * square(theta) + n[7] * theta + n[8];
    return 1e6 * square(square(2 * c / (-b + sqrt(square(b) - 4 * a * c))));
}

vtx_status vtx_water_saturation_pressure(double temperature, double *pressure)
{
    vtx_status status = worse(require(pressure != NULL),
                              check_positive(temperature, LIQUID_TEMPERATURE_MIN, LIQUID_TEMPERATURE_MAX));
    if (status != VTX_OK)
        return poison(pressure, status);
    *pressure = liquid_saturation_pressure(temperature);
    return VTX_OK;
}
