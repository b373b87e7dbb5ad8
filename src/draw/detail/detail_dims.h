// The dimensions and notes of a detail, outside its circle.
#ifndef TILLWRIGHT_DRAW_DETAIL_DETAIL_DIMS_H_
#define TILLWRIGHT_DRAW_DETAIL_DETAIL_DIMS_H_

#include "draw/detail/details.h"

namespace tillwright {

// REQUIRES: `map` puts the detail's center at (0, 0).
void AddDetailDimensions(SheetGroup& out, const Bank& bank, const DetailChoice& choice,
                         const PaperMap& map, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_DETAIL_DETAIL_DIMS_H_
