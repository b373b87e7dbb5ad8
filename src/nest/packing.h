// A packing under construction: sheets in work with their cut trees, and the parts still to place.
#ifndef TILLWRIGHT_NEST_PACKING_H_
#define TILLWRIGHT_NEST_PACKING_H_

#include <cmath>
#include <cstdint>
#include <vector>

#include "nest/problem.h"
#include "nest/tree.h"

namespace tillwright::nest {

// What a leftover is worth: more when it is large in one piece. Only steers the search; square
// roots are exact to the last bit on every machine, so the same path is taken everywhere.
inline double Worth(std::int32_t width, std::int32_t height) {
  const double area = static_cast<double>(width) * static_cast<double>(height);
  return area * std::sqrt(std::sqrt(area));
}

struct SheetInWork {
  std::int32_t stock = kNone;  // kNone: not in use
  Tree tree;
};

// A whole or partial packing. missing[i] tells how many of part i are not placed.
struct Packing {
  std::vector<SheetInWork> sheets;
  std::vector<std::int32_t> missing;

  [[nodiscard]] std::int64_t Cost(const Problem& problem) const;
  [[nodiscard]] std::int32_t Sheets() const;
  [[nodiscard]] std::int64_t MissingArea(const Problem& problem) const;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_PACKING_H_
