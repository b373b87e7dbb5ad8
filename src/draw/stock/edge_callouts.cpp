#include "draw/stock/edge_callouts.h"

#include <algorithm>

#include "draw/stock/stock_labels.h"
#include "sheet/rich_text.h"
#include "sheet/spread.h"

namespace tillwright {
namespace {

constexpr double kApart = 0.8;      // mm, between callouts
constexpr double kStraight = 0.8;   // mm of leader square to the edge
constexpr double kLeader = 3.6;     // mm from the edge to the row
constexpr double kLetterGap = 0.8;  // mm from the end of a leader to its letter
constexpr double kDot = 0.4;        // mm, radius
constexpr double kShortRow = 60;    // mm: a row beside a short edge may be as long as this

bool IsBeside(PaperSide side) { return side == PaperSide::kLeft || side == PaperSide::kRight; }

LabelStyle TextStyleOf(const EdgeCallout& callout) {
  LabelStyle style{.cap_height = kStockCapHeight, .anchor = TextAnchor::kCenter};
  if (callout.number > 0) style.weight = TextWeight::kBold;
  return style;
}

}  // namespace

std::vector<EdgeCallout> EdgeCallouts::TakeOverfull() {
  std::vector<EdgeCallout> taken;
  for (const PaperSide side : kPaperSides) {
    while (LengthOf(side) > std::max(EdgeLength(side), kShortRow)) {
      const auto deepest = std::ranges::max_element(callouts_, {}, [&](const EdgeCallout& callout) {
        return callout.side == side ? callout.depth : -1;
      });
      taken.push_back(std::move(*deepest));
      callouts_.erase(deepest);
    }
  }
  return taken;
}

EdgeCallouts::Row EdgeCallouts::RowOf(PaperSide side) const {
  Row row;
  for (const EdgeCallout& callout : callouts_) {
    if (callout.side == side) row.push_back(&callout);
  }
  return row;
}

double EdgeCallouts::WidthOf(const EdgeCallout& callout) const {
  return callout.number > 0 ? CutTag(callout.number, metrics_).Width()
                            : MeasureLabel(metrics_, callout.text, TextStyleOf(callout)).width;
}

double EdgeCallouts::Along(const EdgeCallout& callout) const {
  return IsBeside(callout.side) ? CutTag::kHeight : WidthOf(callout);
}

double EdgeCallouts::LengthOf(PaperSide side) const {
  double length = 0;
  for (const EdgeCallout* callout : RowOf(side)) length += Along(*callout) + kApart;
  return length;
}

double EdgeCallouts::EdgeLength(PaperSide side) const {
  return IsBeside(side) ? outline_.Height() : outline_.Width();
}

bool EdgeCallouts::IsWithin(PaperSide side) const {
  return LengthOf(side) + kApart <= EdgeLength(side);
}

double EdgeCallouts::Reach(PaperSide side) const {
  double widest = 0;
  for (const EdgeCallout* callout : RowOf(side)) {
    widest = std::max(widest, IsBeside(side) ? WidthOf(*callout) + kLetterGap : CutTag::kHeight);
  }
  return widest > 0 ? kLeader + widest : 0;
}

std::vector<double> EdgeCallouts::PlacesOf(PaperSide side, const Row& row) const {
  std::vector<SpreadItem> items;
  for (const EdgeCallout* callout : row) {
    items.push_back({IsBeside(side) ? callout->tip.y : callout->tip.x, Along(*callout)});
  }
  const bool sized = side == PaperSide::kLeft || side == PaperSide::kBelow;  // clear of sizes
  if (!sized || !IsWithin(side)) return Spread(items, kApart);
  const double low = IsBeside(side) ? outline_.top : outline_.left;
  const double high = IsBeside(side) ? outline_.bottom : outline_.right;
  return SpreadWithin(items, kApart, low + kApart, high - kApart);
}

void EdgeCallouts::Draw(SheetGroup& numbers, SheetGroup& letters) const {
  for (const PaperSide side : kPaperSides) {
    const Row row = RowOf(side);
    const std::vector<double> places = PlacesOf(side, row);
    for (std::size_t i = 0; i < row.size(); ++i) {
      DrawOne(row[i]->number > 0 ? numbers : letters, *row[i], places[i]);
    }
  }
}

void EdgeCallouts::DrawOne(SheetGroup& out, const EdgeCallout& callout, double place) const {
  const bool beside = IsBeside(callout.side);
  const bool back = callout.side == PaperSide::kLeft || callout.side == PaperSide::kAbove;
  const double sign = back ? -1 : 1;
  const double edge =
      beside ? (back ? outline_.left : outline_.right) : (back ? outline_.top : outline_.bottom);
  const auto at = [&](double along, double outward) {
    return beside ? PaperPoint{edge + sign * outward, along}
                  : PaperPoint{along, edge + sign * outward};
  };
  const double own = beside ? callout.tip.y : callout.tip.x;
  Polyline leader{.pen = Pen::kLeader};
  leader.points = {callout.tip, at(own, kStraight), at(place, kLeader)};
  out.primitives.emplace_back(std::move(leader));
  const double letter_gap = beside && callout.number == 0 ? kLetterGap : 0;
  const PaperPoint center =
      at(place, kLeader + letter_gap + (beside ? WidthOf(callout) : CutTag::kHeight) / 2);
  if (callout.number > 0) {
    CutTag(callout.number, metrics_).Draw(out, center);
    return;
  }
  out.primitives.emplace_back(Circle{callout.tip, kDot, Pen::kNone, Tone::kInk});
  out.primitives.emplace_back(MakeLabel(metrics_, callout.text, TextStyleOf(callout), center, {}));
}

}  // namespace tillwright
