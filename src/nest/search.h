// Ruin and recreate on cut trees: takes pieces out of a packing and puts the parts back elsewhere,
// again and again, towards a goal that no packing found so far meets.
#ifndef TILLWRIGHT_NEST_SEARCH_H_
#define TILLWRIGHT_NEST_SEARCH_H_

#include <cstdint>

#include "nest/packing.h"

namespace tillwright::nest {

struct SearchLimits {
  std::int64_t bound = 0;  // stop at this cost: nothing can be cheaper
  std::int64_t work = 0;   // looks at a leftover, over all threads: fixes the result
};

// The best packing found from `start`, never a dearer one. The same for the same input, whatever
// the machine and its load.
[[nodiscard]] Packing Search(const Problem& problem, Packing start, const SearchLimits& limits);

// A packing of the same cost, or less, that leaves more in large pieces.
[[nodiscard]] Packing Tidied(const Problem& problem, Packing packing, std::int64_t work);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_SEARCH_H_
