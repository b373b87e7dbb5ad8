#include "draw/stock/stock_labels.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "draw/rich_text.h"

namespace tillwright {
namespace {

constexpr double kMargin = 0.7;  // mm, between a label and the edges of its box or an obstacle
constexpr std::array kCapHeights{2.5, 2.2, 1.8, 1.4};
constexpr int kAsides = 32;  // places tried to each side of a line, half a radius apart
constexpr int kSteps = 16;   // places tried to each side of the middle

// The places of a label of a size in a box, from the middle outwards.
std::vector<PaperPoint> Places(double width, double height, const PaperBox& box) {
  const double x = box.Width() / 2 - width / 2 - kMargin;
  const double y = box.Height() / 2 - height / 2 - kMargin;
  std::vector<PaperPoint> places;
  if (x < 0 || y < 0) return places;
  for (int i = -kSteps; i <= kSteps; ++i) {
    for (int j = -kSteps; j <= kSteps; ++j) {
      places.push_back({box.Centre().x + x * i / kSteps, box.Centre().y + y * j / kSteps});
    }
  }
  std::ranges::stable_sort(places, {}, [&](PaperPoint p) {
    return std::abs(p.x - box.Centre().x) + std::abs(p.y - box.Centre().y);
  });
  return places;
}

std::optional<Label> Fitted(const std::string& text, const LabelStyle& style, const PaperBox& box,
                            std::span<const PaperBox> obstacles, const TextMetrics& metrics) {
  const TextSize size = MeasureLabel(metrics, text, style);
  const bool level = style.turn == TextTurn::kLevel;
  const double width = level ? size.width : size.height;
  const double height = level ? size.height : size.width;
  for (const PaperPoint at : Places(width, height, box)) {
    const PaperBox taken =
        Grow({at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2}, kMargin);
    if (std::ranges::none_of(obstacles, [&](const PaperBox& b) { return Overlaps(b, taken); })) {
      return MakeLabel(metrics, text, style, at, {});
    }
  }
  return std::nullopt;
}

}  // namespace

PaperBox AddCutNumber(SheetGroup& out, PaperPoint centre, std::size_t number,
                      const TextMetrics& metrics) {
  out.primitives.emplace_back(Circle{centre, kDisc, Pen::kCallout, Tone::kPaper});
  const LabelStyle style{.cap_height = number < 100 ? 1.8 : 1.4,
                         .weight = TextWeight::kBold,
                         .anchor = TextAnchor::kCentre};
  out.primitives.emplace_back(MakeLabel(metrics, std::to_string(number), style, centre, {}));
  return {centre.x - kDisc, centre.y - kDisc, centre.x + kDisc, centre.y + kDisc};
}

std::optional<Label> LabelInBox(std::span<const std::string> texts, const PaperBox& box,
                                std::span<const PaperBox> obstacles, const TextMetrics& metrics) {
  for (const std::string& text : texts) {
    for (const double cap : kCapHeights) {
      for (const TextTurn turn : {TextTurn::kLevel, TextTurn::kUpward}) {
        const LabelStyle style{.cap_height = cap, .anchor = TextAnchor::kCentre, .turn = turn};
        if (auto label = Fitted(text, style, box, obstacles, metrics)) return label;
      }
    }
  }
  return std::nullopt;
}

DiscPlace ClearPlace(PaperPoint from, PaperPoint to, double radius, bool beyond,
                     std::span<const PaperBox> boxes) {
  const double length = std::max(std::hypot(to.x - from.x, to.y - from.y), 0.001);
  const PaperPoint way{(to.x - from.x) / length, (to.y - from.y) / length};
  const auto at = [&](double along, double aside) {
    return PaperPoint{from.x + way.x * along - way.y * aside,
                      from.y + way.y * along + way.x * aside};
  };
  const auto is_clear = [&](PaperPoint p) {
    const PaperBox disc{p.x - radius, p.y - radius, p.x + radius, p.y + radius};
    return std::ranges::none_of(
        boxes, [&](const PaperBox& box) { return Overlaps(Grow(box, 0.3), disc); });
  };
  for (int step = 0; step <= 2 * kAsides; ++step) {  // on the line, then to either side in turn
    const double aside = (step % 2 == 0 ? -0.5 : 0.5) * ((step + 1) / 2) * radius;
    const double last = beyond && step == 0 ? length + radius + 1 : length - radius;
    for (double along = std::min(radius + 0.5, length / 2); along <= std::max(last, length / 2);
         along += 0.5) {
      if (is_clear(at(along, aside))) return {at(along, aside), at(along, 0)};
    }
  }
  return {at(length / 2, 0), at(length / 2, 0)};
}

}  // namespace tillwright
