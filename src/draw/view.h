// View: one drawn view before it is put on a sheet.
//
// A view is built at a given scale with an origin of its own; whoever composes a sheet builds it at
// the largest scale that fits, then shifts it into place. Everything the view covers, dimensions and
// title included, lies in `box`.
#ifndef TILLWRIGHT_DRAW_VIEW_H_
#define TILLWRIGHT_DRAW_VIEW_H_

#include <functional>
#include <string>
#include <vector>

#include "draw/scale.h"
#include "tillwright/bank.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// How much is shown.
struct ViewOptions {
  bool hidden_boxes = false;    // dashed boxes behind the fronts of the elevation
  bool all_dimensions = true;   // false: key sizes only
  bool heights = true;          // every height from one datum beside the elevation
};

// A place that its view's scale hides and that is drawn larger elsewhere.
struct DetailMark {
  std::string letter;
  PaperPoint centre;  // on the view
  double radius = 4;  // mm
};

struct View {
  std::string name;    // stem of its file: "front", "side", "plan", "detail-b"
  std::string title;   // "FRONT ELEVATION"
  Scale scale;
  std::vector<SheetGroup> groups;  // ids begin with the view's name
  PaperBox box;                    // covered, titles and dimensions included
  PaperBox outline;                // of the piece itself
  double datum_y = 0;              // where the opening's bottom (y = 0) lies; for lining up heights
  PaperMap map;  // places on it: front x, y; side z, y; plan x, z (to the right, up); shifts along
};

// Builds a view at a scale.
using ViewMaker = std::function<View(const Scale&)>;

// Moves a view.
void Shift(View& view, double dx, double dy);

// Each view of a bank. Marks for details are chosen by the caller; see details.h.
[[nodiscard]] View FrontElevation(const Bank& bank, const Scale& scale, const ViewOptions& options,
                                  const TextMetrics& metrics);
[[nodiscard]] View SideSection(const Bank& bank, const Scale& scale, const ViewOptions& options,
                               const TextMetrics& metrics);
// Through the middle of the drawer at this index of Bank::spaces, seen from above.
[[nodiscard]] View PlanSection(const Bank& bank, std::size_t space, const Scale& scale,
                               const ViewOptions& options, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_VIEW_H_
