// The chains of sizes round the front elevation.
#ifndef TILLWRIGHT_DRAW_FRONT_FRONT_CHAINS_H_
#define TILLWRIGHT_DRAW_FRONT_FRONT_CHAINS_H_

#include <vector>

#include "sheet/size_chain.h"
#include "tillwright/bank.h"

namespace tillwright {

// The fronts along one edge of the opening, with every gap between them and to the opening (inset)
// or to the case's outer edge (overlay); members in the gaps where fronts stand between them.
[[nodiscard]] SizeChain FrontsAlong(const Bank& bank, Edge edge);

// The opening along that edge, with what the outermost fronts cover beyond it.
[[nodiscard]] SizeChain OpeningAlong(const Bank& bank, Edge edge);

// The holes for pulls of the fronts along that edge, from left to right: from a front's left edge,
// from each other, and to its right edge. Empty where there are none. REQUIRES: top or bottom.
[[nodiscard]] SizeChain PullsAlong(const Bank& bank, Edge edge);

// The case over all; empty without a case.
[[nodiscard]] SizeChain CaseAlong(const Bank& bank, Edge edge);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_FRONT_FRONT_CHAINS_H_
