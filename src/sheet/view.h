// View: one drawn view before it is put on a sheet.
//
// A view is built at a given scale with an origin of its own; whoever composes a sheet builds it at
// the largest scale that fits, then shifts it into place. Everything the view covers, dimensions
// and title included, lies in `box`.
#ifndef TILLWRIGHT_SHEET_VIEW_H_
#define TILLWRIGHT_SHEET_VIEW_H_

#include <functional>
#include <string>
#include <vector>

#include "sheet/scale.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// A place that its view's scale hides and that is drawn larger elsewhere.
struct DetailMark {
  std::string letter;
  PaperPoint center;  // on the view
  double radius = 4;  // mm
};

struct View {
  std::string name;      // stem of its file: "front", "side", "plan", "detail-b"
  std::string title;     // "FRONT ELEVATION"
  std::string caption;   // in the title block of its sheet: "elevation"
  bool on_page = false;  // shown on the page that leads through a job, not on paper only
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

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_VIEW_H_
