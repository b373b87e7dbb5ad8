// StripMap: from a strip (u from its working edge, v from its datum's end, mm) to paper.
#ifndef TILLWRIGHT_DRAW_STICK_STRIP_MAP_H_
#define TILLWRIGHT_DRAW_STICK_STRIP_MAP_H_

#include <algorithm>

#include "sheet/hatch.h"
#include "tillwright/length.h"
#include "tillwright/sheet.h"

namespace tillwright {

struct StripMap {
  PaperPoint zero;    // of the piece: its `from` on the working edge
  Length from;        // distance from the datum there
  double along = -1;  // which way v runs on the paper
  double inward = 1;  // which way u runs
  double stretch = 1;

  [[nodiscard]] double V(Length at) const { return ToMillimeters(at - from) * stretch; }
  [[nodiscard]] PaperPoint At(double u, double v) const {
    return {zero.x + inward * u, zero.y + along * v};
  }
  [[nodiscard]] PaperPoint At(double u, Length at) const { return At(u, V(at)); }
  [[nodiscard]] PaperBox Box(double u1, double v1, double u2, double v2) const {
    const PaperPoint a = At(u1, v1);
    const PaperPoint b = At(u2, v2);
    return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
  }
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_STRIP_MAP_H_
