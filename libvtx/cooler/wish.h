/* The search behind every inverse of the cooler layer: a wish about one figure, met by one quantity. Internal. */
#ifndef VTX_WISH_H
#define VTX_WISH_H

#include "../base/root.h"

enum wish_sense { WISH_AT_LEAST = 1, WISH_AT_MOST = 2, WISH_EXACTLY = 3 };
enum wish_choice { WISH_LOWEST = 1, WISH_HIGHEST = 2 };

/* The figure at x, or NaN where the forward pass has no answer. */
typedef double wish_figure(double x, void *context);

struct wish {
    wish_figure *figure;
    void *context;
    double wanted;
    double low, high; /* range of x */
    double tolerance; /* of x, absolute */
    int sense;
    int choice;       /* of several answers: the lowest or the highest x */
    int logarithmic;  /* grid in ln x, for ranges over decades */
    int best_of_grid; /* best is that of the grid when the wish is met: saves the search for the summit */
};

struct wish_answer {
    double x, figure;         /* where the wish is just met, or the end of the range where it is met throughout */
    double best_x, best;      /* the best figure of the range and where it is; with WISH_EXACTLY the nearest when it is missed */
    int met_at_end;           /* the wish is met at the chosen end of the range: the range binds, not the wish */
};

/* OK; NO_SOLUTION (the wish is met nowhere: best says how near); OUT_OF_RANGE (the forward pass has no answer anywhere). */
vtx_status search_wish(const struct wish *wish, struct wish_answer *answer);

#endif
