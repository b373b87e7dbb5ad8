// Bounds: how many sheets no layout can do without. Valid for any layout, cut from edge to edge or
// not.
#ifndef TILLWRIGHT_NEST_BOUNDS_H_
#define TILLWRIGHT_NEST_BOUNDS_H_

#include <cstdint>

#include "nest/problem.h"

namespace tillwright::nest {

struct Bounds {
  std::int64_t sheets = 0;
  std::int64_t cost = 0;
};

// By dual-feasible functions over all thresholds (Fekete & Schepers 2004; Carlier, Clautiaux &
// Moukrim 2007), the area among them. With several sizes of sheet the number holds for a sheet as
// long and as wide as any of them, and the cost is what sheets of the parts' area cost (cover_bound.h).
[[nodiscard]] Bounds BoundsOf(const Problem& problem);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_BOUNDS_H_
