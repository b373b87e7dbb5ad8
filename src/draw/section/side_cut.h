// How a part looks where the section plane cuts it.
#ifndef TILLWRIGHT_DRAW_SECTION_SIDE_CUT_H_
#define TILLWRIGHT_DRAW_SECTION_SIDE_CUT_H_

#include <string_view>

#include "tillwright/sheet.h"

namespace tillwright {

// How the grain of solid wood runs to the plane: through it, or along it, up and down.
enum class CutGrain { kAcross, kUpright };

struct CutStock {
  std::string_view material{};
  CutGrain grain = CutGrain::kAcross;
  double tilt = 45;              // degrees, of plain hatching; parts that touch differ
  PaperBox hole = {0, 0, 0, 0};  // left free for a part let in
  bool inset = false;            // edge drawn inside the true one, so that gaps keep their width
};

// Draws the cut face of an upright part: end grain or long grain for solid wood and plies for
// panels where they are thick enough on paper to show it, else plain hatching; gray where even that
// would clog.
void AddCut(SheetGroup& out, const PaperBox& box, const CutStock& stock);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SECTION_SIDE_CUT_H_
