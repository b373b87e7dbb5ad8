// What stands on a drawer front in the elevation: its number, size, name, and the grain's
// direction.
#ifndef TILLWRIGHT_DRAW_FRONT_FRONT_LABELS_H_
#define TILLWRIGHT_DRAW_FRONT_FRONT_LABELS_H_

#include <span>

#include "draw/views.h"

namespace tillwright {

// Arrangements of number and size, from the richest (0: above one another in full size) to the
// number alone, turned upright. kNoArrangement: not even that has room.
inline constexpr int kNoArrangement = 9;

// Adds as much as there is room for inside `face`, clear of the taken boxes, with the first
// arrangement from `from` on that fits, the name and the grain's direction. Returns which it was.
int AddFrontLabels(SheetGroup& out, const Bank& bank, const Space& space, const PaperBox& face,
                   std::span<const PaperBox> taken, const ViewOptions& options, int from,
                   const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_FRONT_FRONT_LABELS_H_
