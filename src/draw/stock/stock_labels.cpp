#include "draw/stock/stock_labels.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tillwright {
namespace {

constexpr double kMargin = 0.7;      // mm, between a label and the edges of its box or an obstacle
constexpr double kApart = 0.3;       // mm, between a tag and another line; twice that from labels
constexpr double kStep = 0.5;        // mm, from one place tried along or beside a cut to the next
constexpr double kFarthest = 12;     // mm, of a tag beside its cut
constexpr double kCapsuleEnd = 1.4;  // mm, from a tag's text to its end
constexpr int kSteps = 16;           // places tried to each side of the middle

// Steps from the middle of a box, the nearest first.
const std::vector<PaperPoint>& StepsOutward() {
  static const std::vector<PaperPoint> steps = [] {
    std::vector<PaperPoint> all;
    for (int i = -kSteps; i <= kSteps; ++i) {
      for (int j = -kSteps; j <= kSteps; ++j) {
        all.push_back({static_cast<double>(i) / kSteps, static_cast<double>(j) / kSteps});
      }
    }
    std::ranges::stable_sort(all, {}, [](PaperPoint p) { return std::abs(p.x) + std::abs(p.y); });
    return all;
  }();
  return steps;
}

std::optional<Label> Fitted(const std::string& text, const LabelStyle& style, const PaperBox& box,
                            std::span<const PaperBox> obstacles, const TextMetrics& metrics) {
  const TextSize size = MeasureLabel(metrics, text, style);
  const bool level = style.turn == TextTurn::kLevel;
  const double width = level ? size.width : size.height;
  const double height = level ? size.height : size.width;
  const double x = box.Width() / 2 - width / 2 - kMargin;  // how far it may move
  const double y = box.Height() / 2 - height / 2 - kMargin;
  if (x < 0 || y < 0) return std::nullopt;
  for (const PaperPoint& step : StepsOutward()) {
    const PaperPoint at{box.Center().x + x * step.x, box.Center().y + y * step.y};
    const PaperBox taken =
        Grow({at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2}, kMargin);
    if (std::ranges::none_of(obstacles, [&](const PaperBox& b) { return Overlaps(b, taken); })) {
      return MakeLabel(metrics, text, style, at, {});
    }
  }
  return std::nullopt;
}

PaperBox BoxOf(PaperPoint a, PaperPoint b) {
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

bool IsClear(const std::vector<PaperBox>& taken, const PaperBox& box) {
  const PaperBox wide = Grow(box, kApart);
  return std::ranges::none_of(taken, [&](const PaperBox& b) { return Overlaps(b, wide); });
}

bool Holds(const PaperBox& outer, const PaperBox& inner) {
  return outer.left <= inner.left && outer.top <= inner.top && outer.right >= inner.right &&
         outer.bottom >= inner.bottom;
}

// What the tag of a line might touch.
std::vector<PaperBox> NearTo(const TagField& field, std::size_t own, const CutTag& tag) {
  const PaperSegment& line = field.lines[own];
  const PaperBox reach = Grow(BoxOf(line.from, line.to), kFarthest + tag.Width());
  std::vector<PaperBox> near;
  for (const PaperBox& box : field.taken) {
    if (Overlaps(box, reach)) near.push_back(Grow(box, kApart));
  }
  for (std::size_t i = 0; i < field.lines.size(); ++i) {
    const PaperBox box = BoxOf(field.lines[i].from, field.lines[i].to);
    if (i != own && Overlaps(box, reach)) near.push_back(box);
  }
  return near;
}

}  // namespace

CutTag::CutTag(std::size_t number, const TextMetrics& metrics)
    : text_(std::to_string(number)), metrics_(metrics) {
  const LabelStyle style{.cap_height = kStockCapHeight, .weight = TextWeight::kBold};
  width_ = std::max(kHeight, MeasureLabel(metrics_, text_, style).width + 2 * kCapsuleEnd);
}

PaperBox CutTag::At(PaperPoint center) const {
  return {center.x - width_ / 2, center.y - kHeight / 2, center.x + width_ / 2,
          center.y + kHeight / 2};
}

void CutTag::Draw(SheetGroup& out, PaperPoint center) const {
  constexpr int kChords = 16;  // of half a circle
  constexpr double kRadius = kHeight / 2;
  Polyline capsule{.closed = true, .pen = Pen::kCallout, .fill = Tone::kPaper};
  const double reach = width_ / 2 - kRadius;
  for (int i = 0; i <= kChords; ++i) {
    capsule.points.push_back(
        OnCircle({center.x + reach, center.y}, kRadius, -90 + 180.0 * i / kChords));
  }
  for (int i = 0; i <= kChords; ++i) {
    capsule.points.push_back(
        OnCircle({center.x - reach, center.y}, kRadius, 90 + 180.0 * i / kChords));
  }
  out.primitives.emplace_back(std::move(capsule));
  const LabelStyle style{
      .cap_height = kStockCapHeight, .weight = TextWeight::kBold, .anchor = TextAnchor::kCenter};
  out.primitives.emplace_back(MakeLabel(metrics_, text_, style, center, {}));
}

std::optional<Label> LabelInBox(std::span<const std::string> texts, const PaperBox& box,
                                std::span<const PaperBox> obstacles, const TextMetrics& metrics) {
  std::vector<PaperBox> near;
  std::ranges::copy_if(obstacles, std::back_inserter(near),
                       [&](const PaperBox& b) { return Overlaps(b, box); });
  for (const std::string& text : texts) {
    for (const TextTurn turn : {TextTurn::kLevel, TextTurn::kUpward}) {
      const LabelStyle style{
          .cap_height = kStockCapHeight, .anchor = TextAnchor::kCenter, .turn = turn};
      if (auto label = Fitted(text, style, box, near, metrics)) return label;
    }
  }
  return std::nullopt;
}

PaperBox TagPlace::Leader() const { return Grow(BoxOf(at, foot), 0.3); }

std::optional<TagPlace> PlaceTag(const TagField& field, std::size_t own, const CutTag& tag) {
  const PaperSegment& line = field.lines[own];
  const double length =
      std::max(std::hypot(line.to.x - line.from.x, line.to.y - line.from.y), kStep);
  const PaperPoint way{(line.to.x - line.from.x) / length, (line.to.y - line.from.y) / length};
  const auto at = [&](double along, double aside) {
    return PaperPoint{line.from.x + way.x * along - way.y * aside,
                      line.from.y + way.y * along + way.x * aside};
  };
  const std::vector<PaperBox> near = NearTo(field, own, tag);
  const auto is_free = [&](const TagPlace& place) {
    const PaperBox box = tag.At(place.at);
    return Holds(field.within, box) && IsClear(near, box) && IsClear(near, place.Leader());
  };
  for (double aside = 0; aside <= kFarthest; aside += kStep) {
    for (const double side : {-aside, aside}) {
      for (double along = 0; along <= length; along += kStep) {
        const TagPlace place{at(along, side), at(along, 0)};
        if (is_free(place)) return place;
      }
    }
  }
  return std::nullopt;
}

}  // namespace tillwright
