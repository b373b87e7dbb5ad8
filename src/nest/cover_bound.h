// The cheapest sheets that have the area of all parts.
#ifndef TILLWRIGHT_NEST_COVER_BOUND_H_
#define TILLWRIGHT_NEST_COVER_BOUND_H_

#include <cstdint>

#include "nest/problem.h"

namespace tillwright::nest {

// What whole sheets cost at least that together have the parts' area, no more of a kind than there
// are: no layout costs less. Exact unless there are very many ways; then part of a sheet counts as
// part of its cost. Of stock that is too little, what all of it costs.
[[nodiscard]] std::int64_t AreaCostBound(const Problem& problem);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_COVER_BOUND_H_
