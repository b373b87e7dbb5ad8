// Boards filled by exchange: parts that have no board yet change places with parts on boards, until
// they go on the boards there are.
#ifndef TILLWRIGHT_NEST_EXCHANGE_H_
#define TILLWRIGHT_NEST_EXCHANGE_H_

#include <cstdint>
#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

// Patterns that cut all parts from `boards` boards of the only stock; none when none are found
// within so many steps, which does not mean that there are none. (A tabu search after Buljubašić &
// Vasquez 2016, "Consistent neighborhood search for one-dimensional bin packing".)
// REQUIRES: IsOneDimensional(problem), one stock.
[[nodiscard]] std::vector<Pattern> ExchangedBoards(const Problem& problem, std::int64_t boards,
                                                   std::int64_t steps);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_EXCHANGE_H_
