// The paths that labels on drawings carry, and the solved dimension each stands for.
//
// Every number on a drawing is a solved dimension. A label's path names it; a label that shows
// several (a width by a height) carries their paths with a space between. A test looks up every
// path of every drawing here and compares the text.
//
//   opening.width|height|depth            overlay.top|bottom|left|right, round
//   case.width|height|depth|side|bottom|top|raise, case.floor (the opening's bottom above the
//     sides' lower edge), case.joint.depth, case.back (thickness), case.back.lap|inset|depth|play|
//     allowance|panel_width|panel_height, case.member_length
//   D1.front.x|y|width|height|right|top|thickness      (B1 too)
//   D1.front.pull.1.x|y|left|right|below|above|next    from the front's edges, and to the next hole
//   D1.cell.…, D1.region.… (as a front's rectangle)    O1 has these two
//   D1.box.x|y|z|width|height|depth|right|top|rear|inside_width|inside_depth|inside_height|
//     side_length|end_length|wood_height|back_height|panel_width|panel_depth|clear_below|clear_above
//   D1.slide.length|line_y|line|clearance|deduct|side_max|behind
//   D1.clear.left|right|below|above|behind             what is really left round the box
//   D1.clear.front_below|front_above                   how far the front reaches past the box
//   D1.side.thickness, D1.box_front.…, D1.box_back.…, D1.bottom.thickness|play
//   D1.groove.depth|width|up, D1.corner.depth|lap|pin|left|back_setback
//   H1.thickness|length|depth|x|y|width|height|right|top            (V1 too)
//   gap.D2.D1, gap.opening.bottom.D3, overlap.D1.top, reveal.D1.top (case edge left uncovered)
//   floor.D1.front.top (any height, from the sides' lower edge instead of the opening's bottom)
//   part.<id>.length|width|thickness, part.<id>.cut.1.offset|width|depth|left (wood under the cut)
//     <id> as PartId() gives it; "part." may be left out: D1.side.length
#ifndef TILLWRIGHT_DRAW_BANK_DIMENSION_PATHS_H_
#define TILLWRIGHT_DRAW_BANK_DIMENSION_PATHS_H_

#include <optional>
#include <string>
#include <string_view>

#include "tillwright/bank.h"

namespace tillwright {

// Empty when there is no such dimension.
[[nodiscard]] std::optional<Length> DimensionValue(const Bank& bank, std::string_view path);

// The path of a gap: "gap." and the texts of both ends.
[[nodiscard]] std::string GapPath(const Bank& bank, const Gap& gap);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_BANK_DIMENSION_PATHS_H_
