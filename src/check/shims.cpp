#include "check/shims.h"

#include <algorithm>

namespace tillwright {
namespace {

constexpr std::size_t kMostSums = 1U << 15U;

}  // namespace

ShimChoice::ShimChoice(const std::vector<SpacerSpec>& spacers, Length greatest) {
  sums_.push_back({});
  const Length most = 2 * Max(greatest, Length());
  for (std::size_t i = 0; i < spacers.size(); ++i) {
    const Length thickness = spacers[i].thickness.value;
    if (thickness > most) continue;
    // 1, 2, 4 … and the rest of them: every count up to all of them, in few steps.
    const std::int64_t room = most.picometers() / thickness.picometers();
    int left = static_cast<int>(std::min<std::int64_t>(spacers[i].count.value, room));
    for (int part = 1; left > 0; part *= 2) {
      const int now = std::min(part, left);
      AddPieces(static_cast<int>(i), thickness, now, most);
      left -= now;
    }
  }
}

void ShimChoice::AddPieces(int spacer, Length thickness, int count, Length most) {
  const Length added = count * thickness;
  const std::vector<Sum> before = std::move(sums_);
  sums_ = {};
  sums_.reserve(2 * before.size());
  const auto keep = [&](Length length, int pieces, auto last) {
    const bool same = !sums_.empty() && sums_.back().length == length;
    if (same && sums_.back().pieces <= pieces) return;
    if (same) sums_.pop_back();
    sums_.push_back({length, pieces, last()});
  };
  std::size_t i = 0;
  for (const Sum& sum : before) {
    const Length length = sum.length + added;
    for (; i < before.size() && before[i].length <= length; ++i) {
      keep(before[i].length, before[i].pieces, [&] { return before[i].last; });
    }
    if (length > most) break;
    keep(length, sum.pieces + count, [&] {
      steps_.push_back({spacer, count, sum.last});
      return static_cast<int>(steps_.size()) - 1;
    });
  }
  for (; i < before.size(); ++i) {
    keep(before[i].length, before[i].pieces, [&] { return before[i].last; });
  }
  if (sums_.size() > kMostSums) Thin(most);
}

void ShimChoice::Thin(Length most) {
  const Length apart = PartBelow(most, 2 * 16384);
  std::vector<Sum> kept;
  for (const Sum& sum : sums_) {
    if (kept.empty() || sum.length - kept.back().length > apart) kept.push_back(sum);
  }
  sums_ = std::move(kept);
}

ShimSet ShimChoice::Nearest(Length wanted) const {
  const auto above = std::ranges::lower_bound(sums_, wanted, {}, &Sum::length);
  const Sum* best = above == sums_.end() ? &sums_.back() : &*above;
  if (above != sums_.begin() && above != sums_.end()) {
    const Sum& under = *(above - 1);
    const Length short_of = wanted - under.length;
    const Length over = above->length - wanted;
    if (short_of < over || (short_of == over && under.pieces <= above->pieces)) best = &under;
  }
  ShimSet set;
  set.error = best->length - wanted;
  for (int at = best->last; at >= 0; at = steps_[static_cast<std::size_t>(at)].before) {
    const Step& step = steps_[static_cast<std::size_t>(at)];
    const auto same = std::ranges::find(set.pieces, step.spacer, &Shim::spacer);
    if (same == set.pieces.end()) {
      set.pieces.push_back({step.spacer, step.count});
    } else {
      same->count += step.count;
    }
  }
  std::ranges::sort(set.pieces, {}, &Shim::spacer);
  return set;
}

}  // namespace tillwright
