#include "draw/dimension.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "draw/dimension_frame.h"
#include "draw/spread.h"

namespace tillwright {
namespace {

constexpr double kSameLevel = 0.002;  // mm: stations this close are one level
constexpr double kShelf = 1.4;        // mm of leader before a moved text

// Where the text of one segment goes.
enum class TextPlace : std::uint8_t { kNone, kInLine, kInColumn, kBeforeStart, kAfterEnd };

struct Placement {
  TextPlace place = TextPlace::kNone;
  LabelNeed need;
  double along = 0;  // centre of the text
};

struct Tier {
  const DimensionChain* chain = nullptr;
  std::vector<Placement> placements;  // one a segment
  double line = 0;                    // out
  double column = 0;                  // out, near side of the moved texts
  double far = 0;                     // out, the farthest reach of line and texts
};

struct Interval {
  double from = 0;
  double to = 0;
  [[nodiscard]] double Length() const { return to - from; }
  [[nodiscard]] double Middle() const { return (from + to) / 2; }
};

// Decides where everything goes, then draws it.
class StackDrawing {
 public:
  StackDrawing(const DimensionStack& stack, const DimensionStyle& style, const TextMetrics& metrics)
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

  [[nodiscard]] double Depth() const {
    double depth = tiers_.empty() ? 0 : tiers_.back().line + style_.overshoot;
    for (const Tier& tier : tiers_) depth = std::max(depth, tier.far);
    return depth;
  }

  void Draw(SheetGroup& out) const {
    DrawExtensions(out);
    for (const Tier& tier : tiers_) DrawLine(out, tier);
    for (const Tier& tier : tiers_) DrawTicks(out, tier);
    for (const Tier& tier : tiers_) DrawTexts(out, tier);
  }

 private:
  [[nodiscard]] static Interval Segment(const Tier& tier, std::size_t i) {
    return {tier.chain->stations[i], tier.chain->stations[i + 1]};
  }
  [[nodiscard]] static bool IsDimensioned(const Tier& tier, std::size_t i) {
    return i < tier.chain->texts.size() && !tier.chain->texts[i].text.empty();
  }

  // Is the station an end of a segment that carries a dimension?
  [[nodiscard]] static bool IsUsed(const Tier& tier, std::size_t station) {
    return (station > 0 && IsDimensioned(tier, station - 1)) || IsDimensioned(tier, station);
  }

  // Levels of the extension lines that pass tier i on their way out.
  [[nodiscard]] std::vector<double> LevelsBeyond(std::size_t i) const {
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

  [[nodiscard]] bool IsClear(Interval space, const std::vector<double>& levels) const {
    return std::none_of(levels.begin(), levels.end(), [&](double level) {
      return level > space.from - style_.clearance && level < space.to + style_.clearance;
    });
  }

  // The place in the line for a text: the middle, or else the widest stretch between the lines that
  // cross the segment.
  [[nodiscard]] std::optional<double> InLine(Interval segment, double need,
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

  void PlaceTexts(std::size_t i) {
    Tier& tier = tiers_[i];
    const std::vector<double> levels = LevelsBeyond(i);
    for (std::size_t s = 0; s < tier.chain->texts.size(); ++s) {
      tier.placements.push_back(PlaceText(tier, s, levels));
    }
  }

  [[nodiscard]] Placement PlaceText(const Tier& tier, std::size_t s,
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

  // Below and above a view, the text of an end segment stands beyond the end of the line.
  [[nodiscard]] bool TryBeyondEnd(const Tier& tier, std::size_t s,
                                  const std::vector<double>& levels, Placement& placed) const {
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

  // From the last station to a text beyond it.
  [[nodiscard]] double Tail() const { return 2.6 + style_.text_gap; }

  // Across the line, of the texts that stand in it.
  [[nodiscard]] static double WidestInLine(const Tier& tier) {
    double widest = 0;
    for (const Placement& placed : tier.placements) {
      if (placed.place == TextPlace::kNone || placed.place == TextPlace::kInColumn) continue;
      widest = std::max(widest, placed.need.across);
    }
    return widest;
  }

  // Does a text in this tier's line stand on the level of one of the inner tier?
  [[nodiscard]] bool IsAbreast(const Tier& inner, const Tier& tier) const {
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

  void PlaceLine(std::size_t i) {
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

  // Where a moved text wants to be: at the middle of its segment, but for a narrow one at an end of
  // the chain, just beyond that end, where there is most room and no other text.
  [[nodiscard]] double WishOf(const Tier& tier, std::size_t s) const {
    const Interval segment = Segment(tier, s);
    if (!IsNarrow(tier, s)) return segment.Middle();
    if (s == 0) return segment.from - kSameLevel;
    if (s + 1 == tier.placements.size()) return segment.to + kSameLevel;
    return segment.Middle();
  }

  // Places that keep clear of the levels. Where the levels leave too little room between them, the
  // levels are disregarded and their lines are broken at the texts instead.
  [[nodiscard]] std::vector<double> PlacesBetween(std::vector<SpreadItem> texts,
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

  void SpreadColumn(std::size_t i) {
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

  // Moves the texts in the line that a slanting leader would come too close to. True if there were
  // any.
  bool MoveTextsInTheWay(std::size_t i) {
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

  [[nodiscard]] bool IsInTheWay(const Tier& tier, const Placement& text) const {
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

  // Where leaders end and where beside a view they turn level.
  [[nodiscard]] double EndOf(const Tier& tier) const {
    return tier.column - style_.clearance * 0.8;
  }
  [[nodiscard]] double TurnOf(const Tier& tier) const {
    return frame_.IsVertical() ? EndOf(tier) - kShelf : EndOf(tier);
  }

  [[nodiscard]] bool IsNarrow(const Tier& tier, std::size_t s) const {
    return IsDimensioned(tier, s) && Segment(tier, s).Length() < style_.narrow;
  }
  // Next to a narrow segment?
  [[nodiscard]] bool IsCrowded(const Tier& tier, std::size_t station) const {
    return (station > 0 && IsNarrow(tier, station - 1)) || IsNarrow(tier, station);
  }

  struct Extension {
    double level = 0;
    double end = 0;
  };

  // One line a level, to the outermost tier that uses it.
  [[nodiscard]] std::vector<Extension> Extensions() const {
    std::vector<Extension> all;
    for (const Tier& tier : tiers_) {
      for (std::size_t s = 0; s < tier.chain->stations.size(); ++s) {
        if (!IsUsed(tier, s)) continue;
        const double level = tier.chain->stations[s];
        const double end = tier.line + (IsCrowded(tier, s) ? 0 : style_.overshoot);
        const auto found = std::find_if(all.begin(), all.end(), [level](const Extension& e) {
          return std::abs(e.level - level) < kSameLevel;
        });
        if (found == all.end()) {
          all.push_back({level, end});
        } else {
          found->end = std::max(found->end, end);
        }
      }
    }
    return all;
  }

  [[nodiscard]] double StartOf(double level) const {
    for (const ExtensionStart& start : stack_.starts) {
      if (std::abs(start.station - level) < kSameLevel) return frame_.OutOf(start.cross);
    }
    return 0;
  }

  void DrawExtensions(SheetGroup& out) const {
    for (const Extension& extension : Extensions()) {
      double from = StartOf(extension.level) + style_.object_gap;
      for (const Interval& text : TextsOn(extension.level)) {
        DrawExtension(out, extension.level, {from, std::min(text.from, extension.end)});
        from = std::max(from, text.to);
      }
      DrawExtension(out, extension.level, {from, extension.end});
    }
  }

  void DrawExtension(SheetGroup& out, double level, Interval reach) const {
    if (reach.Length() <= 0) return;
    out.primitives.emplace_back(
        LineOf(frame_.At(level, reach.from), frame_.At(level, reach.to), Pen::kDimension));
  }

  // The stretches of a level, outward in order, that moved texts stand on.
  [[nodiscard]] std::vector<Interval> TextsOn(double level) const {
    constexpr double kClear = 0.6;  // mm
    std::vector<Interval> found;
    for (const Tier& tier : tiers_) {
      Interval reach{tier.column - kClear, tier.column - kClear};
      for (const Placement& placed : tier.placements) {
        if (placed.place != TextPlace::kInColumn) continue;
        if (std::abs(placed.along - level) > placed.need.along / 2 + kClear) continue;
        reach.to = std::max(reach.to, tier.column + placed.need.across + kClear);
      }
      if (reach.Length() > 0) found.push_back(reach);
    }
    return found;
  }

  void DrawAlong(SheetGroup& out, const Tier& tier, Interval stretch) const {
    if (stretch.Length() <= 0) return;
    out.primitives.emplace_back(LineOf(frame_.At(stretch.from, tier.line),
                                       frame_.At(stretch.to, tier.line), Pen::kDimension));
  }

  // The dimension line, broken at its texts and at segments without a dimension.
  void DrawLine(SheetGroup& out, const Tier& tier) const {
    std::optional<Interval> open;
    const auto close = [&] {
      if (open) DrawAlong(out, tier, *open);
      open.reset();
    };
    for (std::size_t s = 0; s < tier.placements.size(); ++s) {
      const Interval segment = Segment(tier, s);
      const Placement& placed = tier.placements[s];
      if (placed.place == TextPlace::kNone) {
        close();
        continue;
      }
      if (!open) open = segment;
      const double half = placed.need.along / 2 + style_.text_gap;
      if (placed.place == TextPlace::kBeforeStart) open->from = placed.along + half;
      if (placed.place == TextPlace::kInLine) {
        open->to = placed.along - half;
        close();
        open = Interval{placed.along + half, segment.to};
      }
      open->to = placed.place == TextPlace::kAfterEnd ? placed.along - half : segment.to;
    }
    close();
  }

  void DrawTicks(SheetGroup& out, const Tier& tier) const {
    for (std::size_t s = 0; s < tier.chain->stations.size(); ++s) {
      if (!IsUsed(tier, s)) continue;
      const Pen pen = IsCrowded(tier, s) ? Pen::kDimension : Pen::kTick;
      out.primitives.emplace_back(
          Tick{frame_.At(tier.chain->stations[s], tier.line), style_.tick, pen});
    }
  }

  void DrawTexts(SheetGroup& out, const Tier& tier) const {
    for (std::size_t s = 0; s < tier.placements.size(); ++s) {
      const Placement& placed = tier.placements[s];
      const DimensionText& text = tier.chain->texts[s];
      if (placed.place == TextPlace::kNone) continue;
      if (placed.place != TextPlace::kInColumn) {
        out.primitives.emplace_back(
            frame_.Centred(metrics_, text, style_.cap_height, placed.along, tier.line));
        continue;
      }
      DrawBentLeader(out, tier, Segment(tier, s).Middle(), placed);
      out.primitives.emplace_back(
          frame_.Outside(metrics_, text, style_.cap_height, placed.along, tier.column));
    }
  }

  void DrawBentLeader(SheetGroup& out, const Tier& tier, double start,
                      const Placement& placed) const {
    Polyline leader{{frame_.At(start, tier.line)}, false, Pen::kLeader, Tone::kNone};
    if (frame_.IsVertical() && std::abs(placed.along - start) > 0.01) {
      leader.points.push_back(frame_.At(placed.along, TurnOf(tier)));
    }
    leader.points.push_back(frame_.At(placed.along, EndOf(tier)));
    out.primitives.emplace_back(std::move(leader));
  }

  const DimensionStack& stack_;
  const DimensionStyle& style_;
  const TextMetrics& metrics_;
  DimensionFrame frame_;
  std::vector<Tier> tiers_;
};

}  // namespace

PaperBox AddDimensionStack(SheetGroup& out, const DimensionStack& stack,
                           const DimensionStyle& style, const TextMetrics& metrics) {
  SheetGroup drawn;
  StackDrawing(stack, style, metrics).Draw(drawn);
  const PaperBox covered = Bounds(drawn);
  std::move(drawn.primitives.begin(), drawn.primitives.end(), std::back_inserter(out.primitives));
  return covered;
}

double StackDepth(const DimensionStack& stack, const DimensionStyle& style,
                  const TextMetrics& metrics) {
  return StackDrawing(stack, style, metrics).Depth();
}

}  // namespace tillwright
