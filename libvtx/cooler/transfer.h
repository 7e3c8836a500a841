/* Readings at one state carried to another through the forward pass, with a budget of what is uncertain. Internal.
 *
 * Why this is no service_fit stands there. */
#ifndef VTX_TRANSFER_H
#define VTX_TRANSFER_H

#include <vtx/acceptance.h>

#include "evidence.h"
#include "input_step.h"

enum { TERMS = 12, PARTS = READINGS + TERMS };

/* Numbers of the terms (enum vtx_input, enum vtx_transfer_term), in the order of the fit's parameters. */
extern const int32_t transfer_term[TERMS];

struct transfer {
    /* Set by transfer_open. */
    vtx_job tested; /* with what was read in place of what was stated */
    vtx_job quoted; /* with the tested tube and nozzle */
    int32_t quantity;
    struct evidence read;
    int flow_read, temperature_read;
    double scale[TERMS]; /* standard uncertainty, or a size worth a step where free */
    int32_t free[TERMS]; /* the readings alone decide it */
    int32_t held[TERMS];

    double moved[PARTS]; /* what is added to each datum, in standard uncertainties: the readings, then the terms */

    /* Written by transfer_fit. */
    double z[TERMS]; /* departures in units of scale */
    double chi_square;
    int freedom;
    double estimate;
    double part[PARTS]; /* change of the estimate per standard uncertainty of each reading, then of each term */
    int32_t advisories; /* of the quoted point */
};

/* Sorts out what is read, what is stated and what is free. Jobs and quotation are checked already. */
vtx_status transfer_open(const vtx_job *tested, const vtx_service_readings *readings, const vtx_input_uncertainty *uncertainty,
                         const vtx_job *quoted, const vtx_quotation *quotation, struct transfer *t);

/* distance: standard uncertainties over which the changes of the estimate are taken. OK, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED */
vtx_status transfer_fit(struct transfer *t, double distance);

/* The tested job as fitted. */
vtx_job transfer_tested(const struct transfer *t);

#endif
