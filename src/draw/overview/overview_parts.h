// The parts of drawers and of the case as boxes in space.
#ifndef TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_PARTS_H_
#define TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_PARTS_H_

#include <string>
#include <vector>

#include "sheet/axonometric.h"
#include "tillwright/bank.h"

namespace tillwright {

struct SolidPart {
  PartRole role = PartRole::kFront;
  bool right = false;  // of a pair of sides
  Cuboid box;
};

// The front of a drawer or blank, shut.
[[nodiscard]] SolidPart FrontSolid(const Bank& bank, const Space& space);

// Front and box, shut, every part of its true size; parts that enter grooves overlap there.
[[nodiscard]] std::vector<SolidPart> DrawerSolids(const Bank& bank, const Space& space);

// The same as they show once the drawer is glued up: no part enters another.
[[nodiscard]] std::vector<SolidPart> GluedSolids(const Bank& bank, const Space& space);

// Sides, bottom, top and back of the case, if there is one, dividers and partitions.
[[nodiscard]] std::vector<SolidPart> CaseSolids(const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_PARTS_H_
