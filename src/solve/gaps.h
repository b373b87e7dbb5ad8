// Gaps and overlaps: what lies between neighboring fronts, and at the opening's edges.
#ifndef TILLWRIGHT_SOLVE_GAPS_H_
#define TILLWRIGHT_SOLVE_GAPS_H_

#include <vector>

#include "solve/context.h"

namespace tillwright {

// Fills Bank::gaps and Bank::overlaps, and notes fronts whose outer edges are out of line.
// REQUIRES: `laid` is the layout of bank.spaces, its root first.
void AddGaps(const std::vector<LaidNode>& laid, Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_GAPS_H_
