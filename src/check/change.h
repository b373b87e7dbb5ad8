// Making changes to a spec, and the ones that hold what was measured.
#ifndef TILLWRIGHT_CHECK_CHANGE_H_
#define TILLWRIGHT_CHECK_CHANGE_H_

#include <vector>

#include "check/real_opening.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// The change with its text filled in.
[[nodiscard]] SpecChange Named(const Spec& spec, const Bank& bank, SpecChange change);

// The opening as measured, and every measured front held at its size along its split.
[[nodiscard]] std::vector<SpecChange> ChangesToRefit(const Spec& spec, const Bank& bank,
                                                     const RealOpening& real);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_CHANGE_H_
