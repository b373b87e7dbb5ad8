// One-pass packings: each part in turn goes where it fits best.
#ifndef TILLWRIGHT_NEST_GREEDY_H_
#define TILLWRIGHT_NEST_GREEDY_H_

#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

// The cheapest of all passes: 6 orders of the parts, 3 rules for the place, 4 for the cut, the
// first or the best sheet. Stops early when a pass costs no more than `bound`. When sheets are few,
// parts may be missing; a packing with less area missing is better than any cheaper one.
Packing GreedyPacking(const Problem& problem, std::int64_t bound);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_GREEDY_H_
