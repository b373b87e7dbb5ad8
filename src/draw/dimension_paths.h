// The paths that labels on drawings carry, and the solved dimension each stands for.
//
// Every number on a drawing is a solved dimension. A label's path names it; a label that shows
// several (a width by a height) carries their paths with a space between. A test looks up every
// path of every drawing here and compares the text.
#ifndef TILLWRIGHT_DRAW_DIMENSION_PATHS_H_
#define TILLWRIGHT_DRAW_DIMENSION_PATHS_H_

#include <optional>
#include <string>
#include <string_view>

#include "tillwright/bank.h"

namespace tillwright {

// "D2.front.height", "D2.cell.width", "D2.box.inside_depth", "D2.slide.length", "D2.side.thickness",
// "D2.groove.up", "H1.thickness", "case.side", "opening.depth", "gap.D2.D1", "overlap.D1.top",
// "part.<id>.length" … Empty when there is no such dimension.
[[nodiscard]] std::optional<Length> DimensionValue(const Bank& bank, std::string_view path);

// The path of a gap: "gap." and the texts of both ends.
[[nodiscard]] std::string GapPath(const Bank& bank, const Gap& gap);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_DIMENSION_PATHS_H_
