#include "draw/stock/stock_labels.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "draw/rich_text.h"

namespace tillwright {
namespace {

constexpr double kMargin = 0.8;              // mm, between a label and the edges of its box
constexpr double kPast = kDisc + 0.8;        // where a disc on the edge reaches into the box
constexpr double kBeside = 2 * kDisc + 1.2;  // where one at the end of an edge does
constexpr std::array kCapHeights{2.5, 2.2, 1.8};

// Whether the margins beside a label leave room for discs at the ends of all four edges.
bool LeavesRoom(double x, double y) {
  return x >= kBeside || y >= kBeside || (x >= kPast && y >= kPast);
}

std::optional<Label> Fitted(const std::string& text, bool room, const PaperBox& box,
                            const TextMetrics& metrics) {
  for (const double cap : kCapHeights) {
    LabelStyle style{.cap_height = cap, .anchor = TextAnchor::kCentre};
    const TextSize size = MeasureLabel(metrics, text, style);
    const auto fits = [&](double along, double across) {
      const double x = (along - size.width) / 2;
      const double y = (across - size.height) / 2;
      return x >= kMargin && y >= kMargin && (!room || LeavesRoom(x, y));
    };
    if (!fits(box.Width(), box.Height())) {
      if (!fits(box.Height(), box.Width())) continue;
      style.turn = TextTurn::kUpward;
    }
    return MakeLabel(metrics, text, style, box.Centre(), {});
  }
  return std::nullopt;
}

}  // namespace

std::optional<Label> LabelInBox(std::span<const std::string> texts, const PaperBox& box,
                                const TextMetrics& metrics) {
  for (const bool room : {true, false}) {
    for (const std::string& text : texts.first(room ? texts.size() - 1 : texts.size())) {
      if (auto label = Fitted(text, room, box, metrics)) return label;
    }
  }
  return std::nullopt;
}

PaperPoint ClearPlace(PaperPoint from, PaperPoint to, double radius, bool beyond,
                      std::span<const PaperBox> boxes) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  const auto at = [&](double along) {
    const double share = length > 0 ? along / length : 0;
    return PaperPoint{from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
  };
  const double last = beyond ? length + radius + 1 : length - radius;
  for (double along = radius + 0.5; along <= last; along += 0.5) {
    const PaperPoint p = at(along);
    const PaperBox disc{p.x - radius, p.y - radius, p.x + radius, p.y + radius};
    const auto meets = [&](const PaperBox& box) { return Overlaps(Grow(box, 0.7), disc); };
    if (std::ranges::none_of(boxes, meets)) return p;
  }
  return at(length / 2);
}

}  // namespace tillwright
