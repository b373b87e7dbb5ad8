// Every dimension of a solved bank by its path: its value, and how it is made.
//
// What is printed on a drawing, a stick or in the result is one of these. A path is the way to the
// figure in the result (`_mm` may follow), with the ids of drawers, members and parts in it:
//
//   round, opening.width|height|depth, overlay.top|bottom|left|right (as asked)
//   case.width …, case.face_frame.stile …, case.base (the opening's lower edge above the sides'
//     lower ends), case.member_length, case.side_in|low_in|high_in, case.inside_width …
//   D1.front.x|y|width|height|right|top|thickness      (B1 too)
//   D1.front.pull.1.x|y|left|right|below|above|next    from the front's edges, and to the next hole
//   D1.cell.x|y|width|height|right|top                 (O1 too)
//   D1.box.…, D1.slide.…, D1.side.thickness, D1.groove.depth, D1.corner.lap, D1.bottom.play …
//   D1.clear.left|right|below|above|behind             what is really left round the box
//   D1.clear.front_below|front_above                   how far the front reaches past the box
//   H1.x|y|width|height|right|top|length|depth|begin|thickness               (V1 too)
//   gap.D2.D1, gap.opening.bottom.D3, overlap.D1.top, reveal.D1.top (case edge left uncovered)
//   floor.D1.front.top (any height, from the sides' lower ends instead of the opening's bottom)
//   part.<id>.length|width|thickness|notch.width|notch.height, "part." may be left out
//   part.<id>.cut.1.offset|width|depth|left (wood under the cut), part.<id>.seat.1.offset …
//   piece.3.x|y|z|width|height|depth   parts of the case in their places, counted from 1
//
// and any sum of them, as the marks of sticks carry: "case.base + D1.front.y".
#ifndef TILLWRIGHT_DIMENSIONS_H_
#define TILLWRIGHT_DIMENSIONS_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/trace.h"

namespace tillwright {

// Empty when there is no such dimension.
[[nodiscard]] std::optional<Length> DimensionValue(const Bank& bank, std::string_view path);

// The node that tells how a dimension came about, or -1 when there is none such. `trace` is that of
// the bank; what the rules did not name is added to it.
[[nodiscard]] int ExplainDimension(const Bank& bank, Trace& trace, std::string_view path);

// Every path, but for sums.
[[nodiscard]] std::vector<std::string> DimensionPaths(const Bank& bank);

// The path of a gap: "gap." and the texts of both ends.
[[nodiscard]] std::string GapPath(const Bank& bank, const Gap& gap);

}  // namespace tillwright

#endif  // TILLWRIGHT_DIMENSIONS_H_
