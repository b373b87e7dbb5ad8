// Overviews: what the piece looks like before it is made, in axonometric projection.
//
// Parts are drawn from the back to the front, faces filled with paper, so that the nearer hide the
// farther without clipping. Sizes are not dimensioned here: part sheets and views do that; balloons
// and notes name the parts.
#ifndef TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_H_
#define TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_H_

#include <cstddef>

#include "draw/views.h"

namespace tillwright {

// One drawer exploded: front, box front, sides, bottom, box back, each moved out along the
// way it goes in and named with a leader. REQUIRES: bank.spaces[space].HasBox().
[[nodiscard]] View DrawerExploded(const Bank& bank, std::size_t space, const Scale& scale,
                                  const ViewOptions& options, const TextMetrics& metrics);

// The whole bank in its case (or opening), the drawers part-way out, each further than the one
// above it, with a balloon for every drawer and blank.
[[nodiscard]] View BankOverview(const Bank& bank, const Scale& scale, const ViewOptions& options,
                                const TextMetrics& metrics);

// Lays both on sheets.
void PlaceOverviews(Composer& composer);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_OVERVIEW_OVERVIEW_H_
