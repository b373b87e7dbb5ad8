// The sizes in which the trade sells what an advice may name. All common practice, no source.
#ifndef TILLWRIGHT_SPEC_TRADE_SIZES_H_
#define TILLWRIGHT_SPEC_TRADE_SIZES_H_

#include <optional>

#include "tillwright/length.h"
#include "tillwright/length_text.h"

namespace tillwright {

// The longest wood screw that is not above `most`; zero when there is none.
[[nodiscard]] Length LongestScrew(Length most, Unit unit);
// The shortest that is not below `least`; the longest there is when none is.
[[nodiscard]] Length ShortestScrew(Length least, Unit unit);

// The thinnest panel that is at least so thick; nothing when none is.
[[nodiscard]] std::optional<Length> PanelAtLeast(Length thickness, Unit unit);

// The lowest rating of a pair of slides, in kg, that carries a mass; nothing when none does.
[[nodiscard]] std::optional<double> SlideRatingFor(double kilograms, Unit unit);

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_TRADE_SIZES_H_
