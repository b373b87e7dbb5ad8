// Whether solid wood that is fixed to something else is free to move with the seasons.
#ifndef TILLWRIGHT_CHECK_MOVEMENT_CHECKS_H_
#define TILLWRIGHT_CHECK_MOVEMENT_CHECKS_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// Adds the findings bottom-moves and front-moves, for solid bottoms and solid fronts.
void AddMovementChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_MOVEMENT_CHECKS_H_
