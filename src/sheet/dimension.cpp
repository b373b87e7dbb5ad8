#include "sheet/dimension.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "sheet/dimension_stack.h"

namespace tillwright {
namespace {

class StackDrawing : public StackLayout {
 public:
  using StackLayout::StackLayout;

  void Draw(SheetGroup& out) const {
    DrawExtensions(out);
    for (const Tier& tier : tiers_) DrawLine(out, tier);
    for (const Tier& tier : tiers_) DrawTicks(out, tier);
    for (const Tier& tier : tiers_) DrawTexts(out, tier);
  }

 private:
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
            frame_.Centerd(metrics_, text, style_.cap_height, placed.along, tier.line));
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

}  // namespace tillwright
