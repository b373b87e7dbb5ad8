// The dimensions round the front elevation, and the ends of section A-A.
#ifndef TILLWRIGHT_DRAW_FRONT_FRONT_SIZES_H_
#define TILLWRIGHT_DRAW_FRONT_FRONT_SIZES_H_

#include "draw/views.h"

namespace tillwright {

// Chains on all sides, heights from one datum, holes for pulls. Where some fronts have no number on
// them (`has_unnumbered`), numbers stand beside the elevation instead of heights.
// REQUIRES: the view's map and outline are set.
void AddFrontSizes(View& view, const Bank& bank, const ViewOptions& options, bool has_unnumbered,
                   const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_FRONT_FRONT_SIZES_H_
