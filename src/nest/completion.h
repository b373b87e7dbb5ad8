// Filling boards one after another: the longest part left, and what goes with it so that the waste
// stays within what the number of boards leaves (bin completion, after Korf 2002).
#ifndef TILLWRIGHT_NEST_COMPLETION_H_
#define TILLWRIGHT_NEST_COMPLETION_H_

#include <cstdint>
#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

// Patterns that cut so many of each part from `boards` boards of a stock or fewer; none when there
// are none, or none are found within so many steps.
[[nodiscard]] std::vector<Pattern> CompletedBoards(const Problem& problem, std::int32_t stock,
                                                   const std::vector<std::int32_t>& demands,
                                                   std::int64_t boards, std::int64_t steps);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_COMPLETION_H_
