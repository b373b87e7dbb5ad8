#include "sheet/dimension_stack.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tillwright {

StackLayout::StackLayout(const DimensionStack& stack, const DimensionStyle& style,
                         const TextMetrics& metrics)
    : stack_(stack), style_(style), metrics_(metrics), frame_(stack.side, stack.edge) {
  for (const DimensionChain& chain : stack.tiers) tiers_.push_back(Tier{&chain, {}, 0, 0, 0});
  for (std::size_t i = 0; i < tiers_.size(); ++i) {
    PlaceTexts(i);
    PlaceLine(i);
    SpreadColumn(i);
    while (MoveTextsInTheWay(i)) {
      PlaceLine(i);
      SpreadColumn(i);
    }
  }
}

std::vector<double> StackLayout::LevelsBeyond(std::size_t i) const {
  std::vector<double> levels;
  for (std::size_t t = i + 1; t < tiers_.size(); ++t) {
    for (std::size_t s = 0; s < tiers_[t].chain->stations.size(); ++s) {
      if (IsUsed(tiers_[t], s)) levels.push_back(tiers_[t].chain->stations[s]);
    }
  }
  std::sort(levels.begin(), levels.end());
  const auto same = [](double a, double b) { return b - a < kSameLevel; };
  levels.erase(std::unique(levels.begin(), levels.end(), same), levels.end());
  return levels;
}

bool StackLayout::IsClear(Interval space, const std::vector<double>& levels) const {
  return std::none_of(levels.begin(), levels.end(), [&](double level) {
    return level > space.from - style_.clearance && level < space.to + style_.clearance;
  });
}

std::optional<double> StackLayout::InLine(Interval segment, double need,
                                          const std::vector<double>& levels) const {
  if (segment.Length() < need + 2 * style_.room_beside) return std::nullopt;
  const double middle = segment.Middle();
  if (IsClear({middle - need / 2, middle + need / 2}, levels)) return middle;
  Interval best{segment.from, segment.from};
  double from = segment.from;
  const auto offer = [&](double to) {
    if (to - from > best.Length()) best = {from, to};
    from = to;
  };
  for (const double level : levels) {
    if (level > segment.from && level < segment.to) offer(level);
  }
  offer(segment.to);
  if (best.Length() < need + 2 * style_.room_beside) return std::nullopt;
  return best.Middle();
}

void StackLayout::PlaceTexts(std::size_t i) {
  Tier& tier = tiers_[i];
  const std::vector<double> levels = LevelsBeyond(i);
  for (std::size_t s = 0; s < tier.chain->texts.size(); ++s) {
    tier.placements.push_back(PlaceText(tier, s, levels));
  }
}

Placement StackLayout::PlaceText(const Tier& tier, std::size_t s,
                                 const std::vector<double>& levels) const {
  Placement placed;
  if (!IsDimensioned(tier, s)) return placed;
  placed.need = frame_.NeedOf(metrics_, tier.chain->texts[s].text, style_.cap_height);
  const Interval segment = Segment(tier, s);
  if (const auto along = InLine(segment, placed.need.along, levels)) {
    placed.place = TextPlace::kInLine;
    placed.along = *along;
  } else if (!TryBeyondEnd(tier, s, levels, placed)) {
    placed.place = TextPlace::kInColumn;
    placed.along = segment.Middle();
  }
  return placed;
}

bool StackLayout::TryBeyondEnd(const Tier& tier, std::size_t s, const std::vector<double>& levels,
                               Placement& placed) const {
  if (frame_.IsVertical()) return false;
  const Interval segment = Segment(tier, s);
  const double away = Tail() + placed.need.along / 2;
  const bool first = s == 0;
  if (!first && s + 1 != tier.chain->texts.size()) return false;
  const double along = first ? segment.from - away : segment.to + away;
  const double half = placed.need.along / 2;
  if (!IsClear({along - half, along + half}, levels)) return false;
  placed.place = first ? TextPlace::kBeforeStart : TextPlace::kAfterEnd;
  placed.along = along;
  return true;
}

double StackLayout::WidestInLine(const Tier& tier) {
  double widest = 0;
  for (const Placement& placed : tier.placements) {
    if (placed.place == TextPlace::kNone || placed.place == TextPlace::kInColumn) continue;
    widest = std::max(widest, placed.need.across);
  }
  return widest;
}

bool StackLayout::IsAbreast(const Tier& inner, const Tier& tier) const {
  if (!frame_.IsVertical()) return false;
  for (const Placement& a : tier.placements) {
    if (a.place != TextPlace::kInLine) continue;
    for (const Placement& b : inner.placements) {
      if (b.place == TextPlace::kNone) continue;
      if (std::abs(a.along - b.along) < (a.need.along + b.need.along) / 2) return true;
    }
  }
  return false;
}

void StackLayout::PlaceLine(std::size_t i) {
  Tier& tier = tiers_[i];
  const double half = WidestInLine(tier) / 2;
  if (i == 0) {
    tier.line = std::max(style_.first_offset, half + style_.object_gap + 2 * style_.clearance);
  } else {
    const Tier& inner = tiers_[i - 1];
    // Texts side by side on one level stand well apart, or "90" and "1/8" read as one number.
    const double apart = IsAbreast(inner, tier) ? 5 * style_.clearance : 2 * style_.clearance;
    tier.line = std::max(inner.line + style_.tier_step, inner.far + half + apart);
  }
  tier.column = tier.line + std::max(style_.column_offset, half + style_.clearance);
  tier.far = tier.line + half;
  for (const Placement& placed : tier.placements) {
    if (placed.place != TextPlace::kInColumn) continue;
    tier.far = std::max(tier.far, tier.column + placed.need.across);
  }
}

double StackLayout::WishOf(const Tier& tier, std::size_t s) const {
  const Interval segment = Segment(tier, s);
  if (!IsNarrow(tier, s)) return segment.Middle();
  if (s == 0) return segment.from - kSameLevel;
  if (s + 1 == tier.placements.size()) return segment.to + kSameLevel;
  return segment.Middle();
}

std::vector<double> StackLayout::PlacesBetween(std::vector<SpreadItem> texts,
                                               const std::vector<double>& levels) const {
  const double clearance = frame_.SpreadClearance(style_);
  std::vector<SpreadItem> items = texts;
  for (const double level : levels) items.push_back({level, 0, kImmovable});
  std::vector<double> places = Spread(items, clearance);
  for (std::size_t l = 0; l < levels.size(); ++l) {
    if (std::abs(places[texts.size() + l] - levels[l]) > 0.05) return Spread(texts, clearance);
  }
  places.resize(texts.size());
  return places;
}

void StackLayout::SpreadColumn(std::size_t i) {
  Tier& tier = tiers_[i];
  std::vector<SpreadItem> items;
  std::vector<Placement*> moved;
  for (std::size_t s = 0; s < tier.placements.size(); ++s) {
    Placement& placed = tier.placements[s];
    if (placed.place != TextPlace::kInColumn) continue;
    items.push_back({WishOf(tier, s), placed.need.along, 1});
    moved.push_back(&placed);
  }
  const std::vector<double> places = PlacesBetween(std::move(items), LevelsBeyond(i));
  for (std::size_t m = 0; m < moved.size(); ++m) moved[m]->along = places[m];
}

bool StackLayout::MoveTextsInTheWay(std::size_t i) {
  Tier& tier = tiers_[i];
  bool any = false;
  for (Placement& text : tier.placements) {
    if (text.place == TextPlace::kNone || text.place == TextPlace::kInColumn) continue;
    if (!IsInTheWay(tier, text)) continue;
    text.place = TextPlace::kInColumn;
    any = true;
  }
  return any;
}

bool StackLayout::IsInTheWay(const Tier& tier, const Placement& text) const {
  const double run = TurnOf(tier) - tier.line;
  const double share = std::min(1.0, (text.need.across / 2 + 0.5) / run);
  const double half = text.need.along / 2 + 0.5;
  for (std::size_t s = 0; s < tier.placements.size(); ++s) {
    if (tier.placements[s].place != TextPlace::kInColumn) continue;
    const double start = Segment(tier, s).Middle();
    const double end = start + (tier.placements[s].along - start) * share;
    if (std::min(start, end) < text.along + half && std::max(start, end) > text.along - half) {
      return true;
    }
  }
  return false;
}

}  // namespace tillwright
