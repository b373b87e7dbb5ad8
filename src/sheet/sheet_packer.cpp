#include "sheet/sheet_packer.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace tillwright {

namespace {

bool Holds(const PaperBox& outer, const PaperBox& inner) {
  return outer.left <= inner.left && outer.top <= inner.top && outer.right >= inner.right &&
         outer.bottom >= inner.bottom;
}

// What is left of a rectangle on each side of another.
void AppendRest(std::vector<PaperBox>& rest, const PaperBox& box, const PaperBox& taken) {
  if (taken.left > box.left) rest.push_back({box.left, box.top, taken.left, box.bottom});
  if (taken.right < box.right) rest.push_back({taken.right, box.top, box.right, box.bottom});
  if (taken.top > box.top) rest.push_back({box.left, box.top, box.right, taken.top});
  if (taken.bottom < box.bottom) rest.push_back({box.left, taken.bottom, box.right, box.bottom});
}

// Without those that lie in another one.
std::vector<PaperBox> LargestOf(const std::vector<PaperBox>& boxes) {
  std::vector<PaperBox> kept;
  for (const PaperBox& box : boxes) {
    if (std::ranges::any_of(kept, [&](const PaperBox& k) { return Holds(k, box); })) continue;
    std::erase_if(kept, [&](const PaperBox& k) { return Holds(box, k); });
    kept.push_back(box);
  }
  return kept;
}

double Rank(const PaperBox& box, PackOrder order) {
  switch (order) {
    case PackOrder::kHeight:
      return box.Height();
    case PackOrder::kWidth:
      return box.Width();
    case PackOrder::kOutline:
      return box.Height() + box.Width();
  }
  return 0;
}

}  // namespace

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
  const PaperPoint corner{best->left, best->top};
  Take(Grow({corner.x, corner.y, corner.x + width, corner.y + height}, gap_));
  return corner;
}

std::optional<std::vector<PaperPoint>> SheetPacker::PlaceAll(const std::vector<PaperBox>& boxes,
                                                             PackOrder order) {
  std::vector<std::size_t> turns(boxes.size());
  std::iota(turns.begin(), turns.end(), std::size_t{0});
  std::ranges::stable_sort(turns, std::ranges::greater(),
                           [&](std::size_t i) { return Rank(boxes[i], order); });
  std::vector<PaperPoint> corners(boxes.size());
  for (const std::size_t i : turns) {
    const auto corner = Place(boxes[i].Width(), boxes[i].Height());
    if (!corner) return std::nullopt;
    corners[i] = *corner;
  }
  return corners;
}

void SheetPacker::Take(const PaperBox& taken) {
  std::vector<PaperBox> rest;
  for (const PaperBox& box : free_) {
    if (Overlaps(box, taken)) {
      AppendRest(rest, box, taken);
    } else {
      rest.push_back(box);
    }
  }
  free_ = LargestOf(rest);
}

}  // namespace tillwright
