#include "draw/sheets/sheets_marks.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "sheet/annotation.h"
#include "sheet/hatch.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kBalloon = 3;  // mm, radius, as callouts draw it
constexpr double kClear = 0.9;  // mm between a mark and a text

double Nearest(const PaperBox& box, PaperPoint p) {
  return std::hypot(std::max({box.left - p.x, p.x - box.right, 0.0}),
                    std::max({box.top - p.y, p.y - box.bottom, 0.0}));
}

double Farthest(const PaperBox& box, PaperPoint p) {
  return std::hypot(std::max(std::abs(box.left - p.x), std::abs(box.right - p.x)),
                    std::max(std::abs(box.top - p.y), std::abs(box.bottom - p.y)));
}

PaperBox BoxAround(PaperPoint center, double radius) {
  return {center.x - radius, center.y - radius, center.x + radius, center.y + radius};
}

bool MayMeet(const PaperBox& box, const PaperSegment& s) {
  return box.right >= std::min(s.from.x, s.to.x) && box.left <= std::max(s.from.x, s.to.x) &&
         box.bottom >= std::min(s.from.y, s.to.y) && box.top <= std::max(s.from.y, s.to.y);
}

class MarkPlacer {
 public:
  MarkPlacer(const View& view, const DetailMark& mark)
      : mark_(mark), texts_(LabelBoxes(view.groups)) {
    for (const SheetGroup& group : view.groups) {
      for (const Primitive& primitive : group.primitives) Collect(primitive);
    }
  }

  // A radius near the wanted one whose circle runs through no text.
  std::optional<double> Radius() const {
    for (const double factor : {1.0, 0.9, 1.12, 0.8, 1.25, 1.4}) {
      const double radius = mark_.radius * factor;
      const bool clear = std::ranges::none_of(texts_, [&](const PaperBox& text) {
        return Nearest(text, mark_.center) < radius + kClear &&
               Farthest(text, mark_.center) > radius - kClear;
      });
      if (clear) return radius;
    }
    return std::nullopt;
  }

  // The place of the balloon that meets the fewest lines, near ones first.
  std::optional<PaperPoint> Balloon(double radius) const {
    std::optional<PaperPoint> best;
    int least = 1 << 20;
    for (const double away : {3.0, 6.0, 10.0, 15.0}) {
      for (int angle = 0; angle < 360; angle += 15) {
        const PaperPoint at = OnCircle(mark_.center, radius + kBalloon + away, angle + 45.0);
        if (!IsFree(at, radius)) continue;
        const int lines = LinesUnder(BoxAround(at, kBalloon));
        if (lines >= least) continue;
        least = lines;
        best = at;
      }
      if (least == 0) break;
    }
    return best;
  }

 private:
  void Collect(const Primitive& primitive) {
    if (const Circle* circle = std::get_if<Circle>(&primitive)) {
      rounds_.push_back(BoxAround(circle->center, circle->radius));
    } else if (const Polyline* line = std::get_if<Polyline>(&primitive)) {
      if (line->pen != Pen::kNone) lines_.push_back(line);
    } else if (std::holds_alternative<Tick>(primitive) ||
               std::holds_alternative<Arrowhead>(primitive)) {
      rounds_.push_back(Bounds(primitive));
    } else if (std::holds_alternative<HatchLines>(primitive)) {
      hatched_.push_back(Bounds(primitive));
    }
  }

  bool IsFree(PaperPoint at, double radius) const {
    const PaperBox balloon = Grow(BoxAround(at, kBalloon), kClear);
    const auto hits = [&](const PaperBox& box) { return Overlaps(box, balloon); };
    if (std::ranges::any_of(texts_, hits) || std::ranges::any_of(rounds_, hits)) return false;
    const PaperSegment leader{OnCircle(mark_.center, radius, AngleTo(at)), at};
    return std::ranges::none_of(texts_, [&](const PaperBox& text) {
      const PaperBox wide = Grow(text, kClear);
      return MayMeet(wide, leader) && !ClipToArea(AreaOf(wide), leader).empty();
    });
  }

  double AngleTo(PaperPoint at) const {
    return std::atan2(mark_.center.y - at.y, at.x - mark_.center.x) * 180 / std::numbers::pi;
  }

  int LinesUnder(const PaperBox& box) const {
    int count = 0;
    const HatchArea area = AreaOf(box);
    for (const Polyline* line : lines_) {
      const std::size_t n = line->points.size();
      for (std::size_t i = 0; i + (line->closed ? 0 : 1) < n; ++i) {
        const PaperSegment side{line->points[i], line->points[(i + 1) % n]};
        if (MayMeet(box, side) && !ClipToArea(area, side).empty()) ++count;
      }
    }
    for (const PaperBox& hatch : hatched_) count += Overlaps(hatch, box) ? 4 : 0;
    return count;
  }

  const DetailMark& mark_;
  std::vector<PaperBox> texts_;
  std::vector<PaperBox> rounds_;  // circles, ticks and arrowheads
  std::vector<PaperBox> hatched_;
  std::vector<const Polyline*> lines_;
};

}  // namespace

bool AddMark(View& view, const DetailMark& mark, const TextMetrics& metrics) {
  const PaperBox piece = Grow(view.outline, mark.radius);
  if (!Overlaps(piece, BoxAround(mark.center, 0.1))) return false;  // cut off by a break
  const MarkPlacer placer(view, mark);
  const std::optional<double> radius = placer.Radius();
  if (!radius) return false;
  const std::optional<PaperPoint> balloon = placer.Balloon(*radius);
  if (!balloon) return false;
  SheetGroup& group = AddViewGroup(view, "mark-" + mark.letter, "Detail " + mark.letter, 0);
  const PaperBox covered = AddDetailCallout(
      group, {.center = mark.center, .radius = *radius, .balloon = *balloon, .letter = mark.letter},
      metrics);
  view.box = Join(view.box, covered);
  return true;
}

}  // namespace tillwright
