#include "draw/section/side_plane.h"

#include <algorithm>

namespace tillwright {
namespace {

Length Distance(Length a, Length b) { return a < b ? b - a : a - b; }

bool Cuts(const Rect& r, Length x) { return r.x < x && x < r.Right(); }

// How badly a plane lies: 1 for a partition or a gap it runs into, else 0.
bool IsClear(const Bank& bank, Length x) {
  const bool in_partition = std::ranges::any_of(bank.dividers, [x](const Divider& member) {
    return member.partition && member.rect.x <= x && x <= member.rect.Right();
  });
  const bool in_gap = std::ranges::any_of(bank.gaps, [x](const Gap& gap) {
    return gap.axis == Axis::kX && gap.at <= x && x <= gap.at + gap.size;
  });
  return !in_partition && !in_gap;
}

Length Middle(const Space& space) {
  return space.HasBox() ? space.box.x + HalfBelow(space.box.width)
                        : space.region.x + HalfBelow(space.region.width);
}

}  // namespace

SectionPlane ChooseSectionPlane(const Bank& bank) {
  const Length middle = HalfBelow(bank.opening_width);
  std::vector<Length> candidates;
  for (const Space& space : bank.spaces) candidates.push_back(Middle(space));
  std::ranges::sort(candidates, [middle](Length a, Length b) {
    const Length to_a = Distance(a, middle);
    const Length to_b = Distance(b, middle);
    return to_a < to_b || (to_a == to_b && a < b);
  });
  candidates.erase(std::unique(candidates.begin(), candidates.end()), candidates.end());
  constexpr std::size_t kMost = 200;  // tried; the nearest is as good as any after that
  if (candidates.size() > kMost) candidates.resize(kMost);
  SectionPlane plane{candidates.empty() ? middle : candidates.front(), {}};
  for (const Length x : candidates) {
    if (!IsClear(bank, x)) continue;
    plane.x = x;
    break;
  }
  for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
    if (Cuts(bank.spaces[i].region, plane.x)) plane.spaces.push_back(i);
  }
  std::ranges::stable_sort(plane.spaces, [&](std::size_t a, std::size_t b) {
    return bank.spaces[a].region.y > bank.spaces[b].region.y;
  });
  return plane;
}

}  // namespace tillwright
