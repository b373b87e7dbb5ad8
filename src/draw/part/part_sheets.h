// Part sheets: every different part of a bank once, to scale, with every cut dimensioned.
//
// A part is drawn lying on its outside: its inside face, on which the cuts are laid out, with the
// front edge to the left (parts that stand) or below (parts that lie; above for the case top); to
// its right the part cut across the middle, seen from the right, and above it its upper edge, both
// with the depths of the cuts. Fronts are drawn from the show face, where the holes for pulls are
// laid out.
//
// Labels carry the paths "part.<id>.length", "part.<id>.cut.<n>.offset" and so on of the part that
// is drawn (dimensions.h); dados that take dividers and partitions
// "part.<id>.seat.<n>.offset", holes for pulls "D1.front.pull.1.left".
#ifndef TILLWRIGHT_DRAW_PART_PART_SHEETS_H_
#define TILLWRIGHT_DRAW_PART_PART_SHEETS_H_

#include "draw/views.h"
#include "tillwright/parts.h"

namespace tillwright {

// The view's name is "part-" and the drawn part's id with dashes for dots; its title the ids, as
// far as they are few, and the role.
[[nodiscard]] View PartView(const Bank& bank, const PartKind& kind, const Scale& scale,
                            const ViewOptions& options, const TextMetrics& metrics);

// Lays all of them on sheets.
void PlaceParts(Composer& composer);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PART_PART_SHEETS_H_
