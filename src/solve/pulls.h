// Pulls: where the holes for handles and knobs are bored in a front.
#ifndef TILLWRIGHT_SOLVE_PULLS_H_
#define TILLWRIGHT_SOLVE_PULLS_H_

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

// Fills the front's holes from `pull` of the fronts, over which the leaf's own is merged key by
// key; neither, or "none" in the nearer one: no holes. A pull stands in the middle of the front's
// width, two at a quarter and three quarters of it, mirrored exactly. Without `count` there is one,
// and two on fronts wider than 24 in (610 mm): common practice, no source. Halves and quarters that
// are no whole picometer are rounded down, from the edge they are measured from.
//
// Reports kNoRoom when a hole would miss the front or two pulls would run into one another.
void AddPulls(const Spec& spec, const LeafSpec& leaf, Space& space, Diagnostics& diagnostics);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_PULLS_H_
