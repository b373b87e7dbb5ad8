// Boxes that are to be alike: one size along the split for all drawers of a node that are made by
// the same rules.
#ifndef TILLWRIGHT_SOLVE_ALIKE_H_
#define TILLWRIGHT_SOLVE_ALIKE_H_

#include <cstddef>
#include <vector>

#include "solve/box_rule.h"
#include "tillwright/spec.h"

namespace tillwright {

struct AlikeDrawer {
  const LayoutNode* node;
  Cell<Length> cell;
  std::size_t child;  // which child of its node
};
struct AlikeSize {
  std::size_t child;
  Length size;  // rows: the box's height; columns: the length of its ends
};

// The size of every box whose like is no larger than the smallest by more than can be packed out.
// Boxes agree when all their keys of box and slides do, typed or by default.
[[nodiscard]] std::vector<AlikeSize> AlikeSizes(const Spec& spec, Length round,
                                                Length opening_depth, bool rows,
                                                const std::vector<AlikeDrawer>& drawers);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_ALIKE_H_
