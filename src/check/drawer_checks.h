// The checks of each drawer: its box in its cell, its slides, joints, bottom and screws.
#ifndef TILLWRIGHT_CHECK_DRAWER_CHECKS_H_
#define TILLWRIGHT_CHECK_DRAWER_CHECKS_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

void AddDrawerChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_DRAWER_CHECKS_H_
