#include "draw/sheets_pack.h"

#include <algorithm>

namespace tillwright {

std::optional<PaperPoint> SheetPacker::Place(double width, double height) {
  constexpr double kSlack = 1e-9;
  const auto holds = [&](const PaperBox& box) {
    return box.Width() + kSlack >= width && box.Height() + kSlack >= height;
  };
  // The tightest fit: the least length left over along the side that fits better.
  const auto waste = [&](const PaperBox& box) {
    return std::min(box.Width() - width, box.Height() - height);
  };
  auto best = free_.end();
  for (auto at = free_.begin(); at != free_.end(); ++at) {
    if (holds(*at) && (best == free_.end() || waste(*at) < waste(*best))) best = at;
  }
  if (best == free_.end()) return std::nullopt;
  const PaperBox box = *best;
  free_.erase(best);
  const PaperPoint corner{box.left, box.top};
  PaperBox right{box.left + width + gap_, box.top, box.right, box.bottom};
  PaperBox below{box.left, box.top + height + gap_, box.right, box.bottom};
  // The larger of the two leftovers is kept whole.
  if (right.Width() >= below.Height()) {
    below.right = box.left + width;
  } else {
    right.bottom = box.top + height;
  }
  for (const PaperBox& rest : {right, below}) {
    if (rest.Width() > 0 && rest.Height() > 0) free_.push_back(rest);
  }
  return corner;
}

}  // namespace tillwright
