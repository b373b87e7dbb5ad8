// Combs: the teeth of a ruler, which a page description draws as one dashed line as broad as they
// are long.
#ifndef TILLWRIGHT_RENDER_COMB_H_
#define TILLWRIGHT_RENDER_COMB_H_

#include <array>
#include <optional>

#include "tillwright/sheet.h"

namespace tillwright {

struct Comb {
  PaperPoint from, to;           // the line, through the middle of all teeth
  double width = 0;              // mm: a tooth's length
  std::array<double, 2> dashes;  // a tooth, and the space to the next
};

// Strokes of one length, one pitch apart and square to the way they follow each other. Nothing when
// they are not, or so few that lines do as well.
[[nodiscard]] std::optional<Comb> CombOf(const HatchLines& lines);

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_COMB_H_
