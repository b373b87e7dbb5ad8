// Spread: finds places for labels along a line so that they do not crowd each other.
//
// Labels keep the order of their wishes and move as little as possible: the sum of weight x
// movement squared is least among all placements that keep neighbors the wanted distance apart.
// This is weighted isotonic regression, solved exactly by pooling adjacent violators in O(n) after
// sorting (Barlow et al., Statistical Inference under Order Restrictions, 1972 [M]). An immovable
// slot is an item of weight kImmovable.
//
//   (1) places[j] - places[i] >= (size[i] + size[j]) / 2 + clearance for neighbors i before j.
//   (2) Items that do not crowd each other stay where they wish to be.
//   (3) The mirror image of the wishes gives the mirror image of the places.
#ifndef TILLWRIGHT_SHEET_SPREAD_H_
#define TILLWRIGHT_SHEET_SPREAD_H_

#include <span>
#include <vector>

namespace tillwright {

inline constexpr double kImmovable = 1e6;

struct SpreadItem {
  double wish = 0;    // mm, center of the item along the line
  double size = 0;    // mm along the line
  double weight = 1;  // > 0
};

// Centers of the items, in the order of `items`. Items with equal wishes keep their order.
[[nodiscard]] std::vector<double> Spread(std::span<const SpreadItem> items, double clearance);

// The same with every item between `low` and `high`: the least movement there too, for bounds only
// clip it. REQUIRES: the items and their clearances together fit; otherwise they run past `high`.
[[nodiscard]] std::vector<double> SpreadWithin(std::span<const SpreadItem> items, double clearance,
                                               double low, double high);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_SPREAD_H_
