// Stack-ups: every gap and overlap of a bank as a list of what it depends on.
#ifndef TILLWRIGHT_CHECK_STACK_H_
#define TILLWRIGHT_CHECK_STACK_H_

#include <string>
#include <vector>

#include "check/real_opening.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// Most contributors that the stacks of one bank may have together.
inline constexpr std::size_t kMostContributors = 4'000'000;

// Fills in check.stacks, with the tolerances, setting and season that `check` holds. False when there
// would be more contributors than kMostContributors.
[[nodiscard]] bool BuildStacks(const Spec& spec, const Bank& bank, const RealOpening& real,
                               GapCheck& check);

// Everything of a stack that is a sum over its contributors.
void SumUp(StackUp& stack);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_STACK_H_
