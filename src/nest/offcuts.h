// Offcuts as they come off the saw.
#ifndef TILLWRIGHT_NEST_OFFCUTS_H_
#define TILLWRIGHT_NEST_OFFCUTS_H_

#include "tillwright/nest.h"

namespace tillwright::nest {

// The search counts in whole units and leaves what is over out of its trees; here each offcut that
// lies last in its piece reaches the piece's edge, and each piece the edges of the one it is cut
// from, so that no cut is listed that frees nothing.
[[nodiscard]] NestPlan WithOffcutsWhole(NestPlan plan);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_OFFCUTS_H_
