// The pieces of drawers and of the case as boxes in space.
#ifndef TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_PARTS_H_
#define TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_PARTS_H_

#include <cstddef>
#include <vector>

#include "sheet/axonometric.h"
#include "tillwright/assembly.h"

namespace tillwright {

// REQUIRES: the assembly outlives it.
struct SolidPart {
  const PlacedPart* piece = nullptr;
  Cuboid box;
};

// The front of a drawer or blank, shut.
[[nodiscard]] SolidPart FrontSolid(const Assembly& assembly, std::size_t space);

// Front and box, shut, every part of its true size; parts that enter grooves overlap there.
[[nodiscard]] std::vector<SolidPart> DrawerSolids(const Assembly& assembly, std::size_t space);

// The same as they show once the drawer is glued up: no part enters another.
[[nodiscard]] std::vector<SolidPart> GluedSolids(const Assembly& assembly, std::size_t space);

// Sides, bottom, top and back of the case, if there is one, dividers and partitions.
[[nodiscard]] std::vector<SolidPart> CaseSolids(const Assembly& assembly);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_PARTS_H_
