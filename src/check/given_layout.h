// Layouts whose front sizes are all given, and do not fill their length.
#ifndef TILLWRIGHT_CHECK_GIVEN_LAYOUT_H_
#define TILLWRIGHT_CHECK_GIVEN_LAYOUT_H_

#include <vector>

#include "tillwright/gap_check.h"

namespace tillwright {

// One for every split whose children all have exact sizes, closing or not.
[[nodiscard]] std::vector<GivenLayout> GivenLayouts(const Spec& spec, const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_GIVEN_LAYOUT_H_
