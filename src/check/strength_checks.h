// Estimates of what carries load: a bottom's sag, a slide's rating.
#ifndef TILLWRIGHT_CHECK_STRENGTH_CHECKS_H_
#define TILLWRIGHT_CHECK_STRENGTH_CHECKS_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// Sag in the middle of a plate that rests on its four edges, under an even load: w = alpha q a^4 /
// D, D = E t^3 / 12 (1 - nu^2), alpha from Navier's double sine series for the ratio of its sides
// (S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, art. 30; the formula from
// memory, its coefficients worked out from the series). Meters, pascals; nu = 0.3.
struct Plate {
  double width = 0, depth = 0, thickness = 0;  // m, all > 0
  double modulus = 0;                          // Pa
};
[[nodiscard]] double PlateSag(const Plate& plate, double pressure);

// Adds the findings bottom-sag and slide-load.
void AddStrengthChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_STRENGTH_CHECKS_H_
