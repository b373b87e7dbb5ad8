// What stands on a drawer front in the elevation: its number, size, name, and the grain's direction.
#ifndef TILLWRIGHT_DRAW_FRONT_LABELS_H_
#define TILLWRIGHT_DRAW_FRONT_LABELS_H_

#include <span>

#include "draw/view.h"

namespace tillwright {

// Adds as much as there is room for inside `face`, clear of the taken boxes: number, size and name
// above one another, or beside one another, or the number alone, turned upright if that helps.
// Returns false when not even the number fits.
bool AddFrontLabels(SheetGroup& out, const Bank& bank, const Space& space, const PaperBox& face,
                    std::span<const PaperBox> taken, const ViewOptions& options,
                    const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_FRONT_LABELS_H_
