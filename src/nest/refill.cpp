#include "nest/refill.h"

#include <algorithm>
#include <array>
#include <limits>

namespace tillwright::nest {
namespace {

constexpr std::uint32_t kSkip = 13;  // of 256: how often a place is passed over

}  // namespace

// All leftovers of all sheets, without those that no missing part fits.
void Refill::Gather() {
  std::int32_t least_width = std::numeric_limits<std::int32_t>::max();
  std::int32_t least_height = least_width;
  for (const Waiting& waiting : waiting_) {
    const Part& part = bench_.PartAt(waiting.part);
    least_width = std::min({least_width, part.width, part.turn ? part.height : part.width});
    least_height = std::min({least_height, part.height, part.turn ? part.width : part.height});
  }
  lefts_.Clear();
  for (std::size_t i = 0; i < bench_.sheets().size(); ++i) {
    for (Left left : bench_.sheets()[i].lefts) {
      if (left.width < least_width || left.height < least_height) continue;
      left.sheet = static_cast<std::int32_t>(i);
      lefts_.Add(left);
    }
  }
}

void Refill::Consider(Waiting& waiting, std::size_t at, std::int32_t width, std::int32_t height,
                      bool turned) {
  const Left& left = lefts_[at];
  const std::int32_t beside = left.width - width;
  const std::int32_t above = left.height - height;
  // The four pieces that may remain: two by cutting a column off first, two by a row.
  const std::array<std::int32_t, 4> widths{beside, width, left.width, beside};
  const std::array<std::int32_t, 4> heights{left.height, above, above, height};
  std::array<float, 4> worths{};
  for (std::size_t i = 0; i < 4; ++i) worths[i] = bench_.LeftWorth(widths[i], heights[i]);
  const float columns = worths[0] + worths[1];
  const float rows = worths[2] + worths[3];
  const std::int32_t only =
      bench_.problem().stages > 0 ? OnlyCut(waiting, left, width, height) : kColumns;
  if (only == kNone) return;
  ++waiting.places;
  const std::uint32_t chance = random_.Next();
  if ((chance & 255) < kSkip) return;
  // Either cut may be passed over too.
  bool by_columns = (columns >= rows) != (((chance >> 8) & 255) < kSkip);
  if (bench_.problem().stages > 0) by_columns = only == kColumns;
  float loss = left.worth - (by_columns ? columns : rows);
  if (in_use_ != nullptr) loss += NewSizes(left, width, height);
  if (waiting.left != kNone && loss >= waiting.loss) return;
  waiting.left = static_cast<std::int32_t>(at);
  waiting.loss = loss;
  waiting.turned = turned;
  waiting.first_cut = by_columns ? kColumns : kRows;
}

// What the settings count that a place needs and that are not in use: as much as half the part is
// worth, each.
float Refill::NewSizes(const Left& left, std::int32_t width, std::int32_t height) const {
  int n = 0;
  if (width != left.width && !in_use_->Has(width)) ++n;
  if (height != left.height && !in_use_->Has(height)) ++n;
  return 0.5F * static_cast<float>(n) * bench_.LeftWorth(width, height);
}

// Within a limit on stages: the cut that may be made first, kNone when neither may.
std::int32_t Refill::OnlyCut(const Waiting& waiting, const Left& left, std::int32_t width,
                             std::int32_t height) const {
  const Tree& tree = bench_.TreeOf(left.sheet);
  return AllowedCut(tree, left.node, {waiting.part, width, height, false}, bench_.problem().stages,
                    left.width - width > left.height - height ? kColumns : kRows);
}

void Refill::LookAll(Waiting& waiting) {
  waiting.places = 0;
  waiting.left = kNone;
  const Part& part = bench_.PartAt(waiting.part);
  lefts_.ForFitting(part.width, part.height, 0,
                    [&](std::size_t at) { Consider(waiting, at, part.width, part.height, false); });
  if (part.turn && part.width != part.height) {
    lefts_.ForFitting(part.height, part.width, 0, [&](std::size_t at) {
      Consider(waiting, at, part.height, part.width, true);
    });
  }
  bench_.work += static_cast<std::int64_t>(lefts_.size() / 4) + 2 * waiting.places;
}

// Opens a sheet for a part that has no place, if the goal allows.
bool Refill::Open(const Part& part) {
  const Problem& problem = bench_.problem();
  std::int32_t chosen = kNone;
  std::uint32_t seen = 0;
  for (std::size_t i = 0; i < problem.stock.size(); ++i) {
    const Stock& stock = problem.stock[i];
    if (!bench_.OnHand(i) || !Fits(part, stock) || bench_.cost() + stock.cost >= goal_) continue;
    if (random_.Below(++seen) == 0) chosen = static_cast<std::int32_t>(i);
  }
  if (chosen == kNone) return false;
  const std::size_t at = bench_.Open(chosen);
  for (Left left : bench_.sheets()[at].lefts) {
    left.sheet = static_cast<std::int32_t>(at);
    lefts_.Add(left);
  }
  return true;
}

void Refill::Place(const Waiting& waiting) {
  const Left left = lefts_[static_cast<std::size_t>(waiting.left)];
  const Part& part = bench_.PartAt(waiting.part);
  const Laid laid{waiting.part, waiting.turned ? part.height : part.width,
                  waiting.turned ? part.width : part.height, waiting.turned};
  const auto rests = bench_.Place(left, laid, waiting.first_cut);
  lefts_.Drop(static_cast<std::size_t>(waiting.left));
  for (const std::int32_t rest : rests) {
    if (rest == kNone) continue;
    const Node& node = bench_.TreeOf(left.sheet).At(rest);
    const float worth = bench_.LeftWorth(node.width, node.height);
    if (worth > 0) lefts_.Add({node.width, node.height, left.sheet, rest, worth});
  }
}

void Refill::Run(std::int64_t goal, const PieceSizes* in_use) {
  goal_ = goal;
  in_use_ = in_use;
  waiting_.clear();
  for (std::size_t i = 0; i < bench_.missing().size(); ++i) {
    if (bench_.missing()[i] > 0) waiting_.push_back({.part = static_cast<std::int32_t>(i)});
  }
  Gather();
  for (Waiting& waiting : waiting_) LookAll(waiting);
  while (!waiting_.empty()) {
    // The part with the fewest places first, the larger among equals.
    const auto least = std::ranges::min_element(waiting_, [&](const Waiting& a, const Waiting& b) {
      return a.places != b.places ? a.places < b.places
                                  : bench_.PartAt(a.part).Area() > bench_.PartAt(b.part).Area();
    });
    Settle(static_cast<std::size_t>(least - waiting_.begin()));
  }
  bench_.MeasureTouched();
}

// Places one of the waiting parts, opens a sheet for it, or gives it up for this time.
void Refill::Settle(std::size_t which) {
  const Waiting waiting = waiting_[which];
  const std::size_t known = lefts_.size();
  bool done = false;
  if (waiting.left != kNone) {
    Place(waiting);
    done = bench_.missing()[static_cast<std::size_t>(waiting.part)] == 0;
  } else {
    done = waiting.places > 0 || !Open(bench_.PartAt(waiting.part));
  }
  if (done) {
    waiting_[which] = waiting_.back();
    waiting_.pop_back();
  }
  if (waiting.left != kNone || !done) LookAgain(waiting.left, known);
}

// Brings what is known of the waiting parts up to date: one leftover is gone, others are new.
void Refill::LookAgain(std::int32_t gone, std::size_t from) {
  const Left old = gone == kNone ? Left{} : lefts_[static_cast<std::size_t>(gone)];
  for (Waiting& waiting : waiting_) {
    // A cut changes what the stages allow elsewhere on its sheet.
    if ((gone != kNone && waiting.left == gone) || bench_.problem().stages > 0) {
      LookAll(waiting);
      continue;
    }
    const Part& part = bench_.PartAt(waiting.part);
    const auto fits = [&](std::int32_t w, std::int32_t h) {
      return w <= old.width && h <= old.height ? 1 : 0;
    };
    waiting.places -= fits(part.width, part.height);
    const bool turns = part.turn && part.width != part.height;
    if (turns) waiting.places -= fits(part.height, part.width);
    for (std::size_t i = from; i < lefts_.size(); ++i) {
      const Left& left = lefts_[i];
      if (part.width <= left.width && part.height <= left.height) {
        Consider(waiting, i, part.width, part.height, false);
      }
      if (turns && part.height <= left.width && part.width <= left.height) {
        Consider(waiting, i, part.height, part.width, true);
      }
    }
  }
  bench_.work += static_cast<std::int64_t>(2 * waiting_.size());
}

}  // namespace tillwright::nest
