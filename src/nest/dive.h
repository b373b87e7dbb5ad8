// Packings of boards rounded from the linear program.
#ifndef TILLWRIGHT_NEST_DIVE_H_
#define TILLWRIGHT_NEST_DIVE_H_

#include <cstdint>
#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

struct Rounded {
  std::int64_t bound = 0;
  std::vector<Pattern> boards;  // what each is cut into
};

// For boards: patterns to cut them by so that every demand is met at no more cost than
// the bound (the linear program's, or the one given if that is more), rounded one pattern at a
// time. No boards when the work runs out first, or when these are not boards. The stock's counts
// are not looked at.
[[nodiscard]] Rounded RoundedPatterns(const Problem& problem, std::int64_t bound,
                                      std::int64_t work);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_DIVE_H_
