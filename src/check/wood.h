// How fronts move with moisture.
#ifndef TILLWRIGHT_CHECK_WOOD_H_
#define TILLWRIGHT_CHECK_WOOD_H_

#include "spec/moisture.h"
#include "tillwright/bank.h"

namespace tillwright {

// Whether a front moves along an axis: along y with its grain horizontal, along x with it vertical.
[[nodiscard]] constexpr bool MovesAlong(Grain grain, Axis axis) {
  return grain == (axis == Axis::kY ? Grain::kHorizontal : Grain::kVertical);
}

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_WOOD_H_
