// A packing under construction: sheets in work with their cut trees, and the parts still to place.
#ifndef TILLWRIGHT_NEST_PACKING_H_
#define TILLWRIGHT_NEST_PACKING_H_

#include <cstdint>
#include <vector>

#include "nest/problem.h"
#include "nest/tree.h"

namespace tillwright::nest {

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

// Boards cut by patterns, each part in turn along the board. `patterns` names a stock and the
// counts of the parts; what goes beyond the parts' counts is left out, and what the stock does not
// have.
struct Pattern {
  std::int32_t stock = 0;
  std::vector<std::int32_t> counts;  // of each part
};
[[nodiscard]] Packing BoardsCutBy(const Problem& problem, const std::vector<Pattern>& patterns);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_PACKING_H_
