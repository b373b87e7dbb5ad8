// The checks of the case's joints, its back and its screws.
#ifndef TILLWRIGHT_CHECK_CASE_CHECKS_H_
#define TILLWRIGHT_CHECK_CASE_CHECKS_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// Nothing for a bank in an opening.
void AddCaseChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_CASE_CHECKS_H_
