// Whether drawers of solid wood keep their room in height when they swell.
#ifndef TILLWRIGHT_CHECK_BOX_MOVEMENT_H_
#define TILLWRIGHT_CHECK_BOX_MOVEMENT_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// Adds the findings box-moves: the sides in their cell, and the front that they lift.
void AddBoxMovement(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_BOX_MOVEMENT_H_
