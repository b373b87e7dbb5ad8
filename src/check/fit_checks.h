// Whether the case goes with what it stands under.
#ifndef TILLWRIGHT_CHECK_FIT_CHECKS_H_
#define TILLWRIGHT_CHECK_FIT_CHECKS_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// Adds the findings fit-height and fit-depth, where a worktop is given, and case-movement, where
// parts of solid wood meet others that move otherwise.
void AddFitChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_FIT_CHECKS_H_
