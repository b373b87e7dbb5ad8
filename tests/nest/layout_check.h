// An independent look at a nesting plan. Shares nothing with the engine but the public header, and
// of the layouts it uses the parts' rectangles only: whether they can be cut from edge to edge is
// found out anew.
#ifndef TILLWRIGHT_TESTS_NEST_LAYOUT_CHECK_H_
#define TILLWRIGHT_TESTS_NEST_LAYOUT_CHECK_H_

#include <string>
#include <vector>

#include "tillwright/nest.h"

namespace tillwright::testing {

// What is wrong with a plan; empty when nothing is.
[[nodiscard]] std::vector<std::string> FaultsOf(const NestJob& job, const NestPlan& plan);

// How many times the sheet must be gone over to cut the parts free of one another, the cuts of one
// time all in one direction; -1 when cuts from edge to edge cannot do it. A part that is free but
// for waste at its edges needs the cuts that take the waste away.
[[nodiscard]] int StagesOf(const NestLayout& layout, Length kerf);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_NEST_LAYOUT_CHECK_H_
