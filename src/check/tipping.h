// Whether a case stands with its drawers open: an estimate of turning moments.
#ifndef TILLWRIGHT_CHECK_TIPPING_H_
#define TILLWRIGHT_CHECK_TIPPING_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// The line it tips about, in meters behind the opening's front: the front of the toe kick or of the
// feet, else of the case or its face frame. REQUIRES: a bank with a case.
[[nodiscard]] double SupportLine(const Bank& bank);

// Turning moments about that line, in newton meters: `holds` of what stands behind it, `tips` of
// what is in front, with every drawer open by two thirds of its slide and filled; `climber` with
// 27.2 kg (60 lb) hung on the furthest front as well. A worktop counts as far as it lies over the
// case; what runs past it is borne by legs of its own.
struct TippingMoments {
  double holds = 0, tips = 0, climber = 0;
};
// REQUIRES: a bank with a case.
[[nodiscard]] TippingMoments MomentsOf(const Spec& spec, const Bank& bank);

// Adds the finding tipping, for a case.
void AddTippingCheck(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_TIPPING_H_
