// The views of a bank, each built at a scale.
#ifndef TILLWRIGHT_DRAW_VIEWS_H_
#define TILLWRIGHT_DRAW_VIEWS_H_

#include <cstddef>

#include "sheet/view.h"
#include "tillwright/bank.h"

namespace tillwright {

// How much is shown.
struct ViewOptions {
  bool hidden_boxes = false;   // dashed boxes behind the fronts of the elevation
  bool all_dimensions = true;  // false: key sizes only
  bool heights = true;         // every height from one datum beside the elevation
};

// Each view of a bank. Marks for details are chosen by the caller; see details.h.
[[nodiscard]] View FrontElevation(const Bank& bank, const Scale& scale, const ViewOptions& options,
                                  const TextMetrics& metrics);
[[nodiscard]] View SideSection(const Bank& bank, const Scale& scale, const ViewOptions& options,
                               const TextMetrics& metrics);
// Through the middle of the drawer at this index of Bank::spaces, seen from above.
[[nodiscard]] View PlanSection(const Bank& bank, std::size_t space, const Scale& scale,
                               const ViewOptions& options, const TextMetrics& metrics);

// Lay them on sheets; the section stands beside the elevation if there is one.
class Composer;
void PlaceElevation(Composer& composer);
void PlaceSection(Composer& composer);
void PlacePlan(Composer& composer);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_VIEWS_H_
