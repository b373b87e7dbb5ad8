// Putting a case or a drawer together from nothing but its part list, by the rules of joints: what
// the sizes and cuts of the parts add up to.
#ifndef TILLWRIGHT_TESTS_STOCK_ASSEMBLY_H_
#define TILLWRIGHT_TESTS_STOCK_ASSEMBLY_H_

#include <map>
#include <vector>

#include "tillwright/parts.h"

namespace tillwright::testing {

// The parts that go to one drawer, one member or the case, by role.
using PartsByRole = std::map<PartRole, std::vector<Part>>;

struct Size3 {
  Length width, height, depth;
  friend bool operator==(const Size3&, const Size3&) = default;
};

// The outside of a drawer box. REQUIRES: a side, both ends, a bottom.
[[nodiscard]] Size3 BoxOf(const PartsByRole& parts);
// Its inside, as far as the parts tell: between the sides, above the bottom.
[[nodiscard]] Length BoxInsideWidth(const PartsByRole& parts);
[[nodiscard]] Length BoxInsideHeight(const PartsByRole& parts);

// A case, with or without a face frame. `raise` is what no part of a butt-jointed case tells.
struct AssembledCase {
  Size3 outside, opening;
};
[[nodiscard]] AssembledCase CaseOf(const PartsByRole& parts, const CaseBuild& told);

// The cut of that kind from that edge, or null.
[[nodiscard]] const Cut* CutIn(const Part& part, CutKind kind, CutFrom from);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_STOCK_ASSEMBLY_H_
