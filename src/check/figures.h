// How figures of the gap check are shown: estimates to what a maker can see.
#ifndef TILLWRIGHT_CHECK_FIGURES_H_
#define TILLWRIGHT_CHECK_FIGURES_H_

#include <string>

#include "tillwright/spec.h"

namespace tillwright {

// The nearest 1/64 in (below it, what there is) or hundredth of a millimeter, led by "≈" when the
// figure is not that: 1/8, 1/128, ≈ 7/64, 3.18.
[[nodiscard]] std::string AboutText(double mm, Unit unit);
[[nodiscard]] Length NearestShown(double mm, Unit unit);

// An estimate rounded up to what can be laid out: 1/64 in or a tenth of a millimeter.
[[nodiscard]] Length RoundedUp(Length estimate, Unit unit);

// "8.0 %"
[[nodiscard]] std::string PercentText(double percent);

// What a spacer is called: its name, or its thickness.
[[nodiscard]] std::string SpacerName(const SpacerSpec& spacer, Unit unit);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_FIGURES_H_
