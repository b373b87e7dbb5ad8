// Boards filled to the brim: an exact search over the patterns that leave next to nothing.
#ifndef TILLWRIGHT_NEST_FITTING_H_
#define TILLWRIGHT_NEST_FITTING_H_

#include <cstdint>
#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

// Patterns that cut all parts from `boards` boards of the only stock; none when there are none, or
// none are found within so many steps. Of use where the boards have hardly room to spare: it lists
// all patterns that waste no more than all boards together may, and always settles first the part
// that the fewest of them take (exact cover, after Knuth 2000).
// REQUIRES: IsOneDimensional(problem), one stock.
[[nodiscard]] std::vector<Pattern> FittedBoards(const Problem& problem, std::int64_t boards,
                                                std::int64_t steps);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_FITTING_H_
