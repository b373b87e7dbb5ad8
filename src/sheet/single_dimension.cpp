// Single dimensions with arrowheads, and ordinate columns.
#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "sheet/dimension.h"
#include "sheet/dimension_frame.h"
#include "sheet/spread.h"

namespace tillwright {
namespace {

constexpr double kTail = 2.5;  // mm of line behind an arrowhead that stands outside

PaperBox MoveInto(SheetGroup& out, SheetGroup& drawn) {
  const PaperBox covered = Bounds(drawn);
  std::move(drawn.primitives.begin(), drawn.primitives.end(), std::back_inserter(out.primitives));
  return covered;
}

class SingleDrawing {
 public:
  SingleDrawing(const SingleDimension& dimension, const DimensionStyle& style,
                const TextMetrics& metrics)
      : d_(dimension),
        style_(style),
        metrics_(metrics),
        frame_(dimension.side, dimension.line),
        need_(frame_.NeedOf(metrics, dimension.text.text, style.cap_height)) {}

  void Draw(SheetGroup& out) const {
    DrawExtension(out, d_.from, d_.from_edge);
    DrawExtension(out, d_.to, d_.to_edge);
    const double length = d_.to - d_.from;
    const double ends = d_.ticks ? 2 * style_.room_beside : 2 * (style_.arrow + 1);
    if (length >= need_.along + 2 * style_.text_gap + ends) {
      DrawTextInside(out);
    } else {
      DrawTextOutside(out, d_.ticks || length >= 2 * style_.arrow + 1);
    }
  }

 private:
  void DrawExtension(SheetGroup& out, double station, double edge) const {
    const double from = frame_.OutOf(edge);
    if (std::abs(from) <= style_.object_gap) return;
    const double sign = from < 0 ? 1 : -1;
    out.primitives.emplace_back(LineOf(frame_.At(station, from + sign * style_.object_gap),
                                       frame_.At(station, sign * style_.overshoot),
                                       Pen::kDimension));
  }

  void DrawAlong(SheetGroup& out, double from, double to) const {
    out.primitives.emplace_back(LineOf(frame_.At(from, 0), frame_.At(to, 0), Pen::kDimension));
  }

  // Ends that point outward from between the stations, or inward from beyond them.
  void DrawEnds(SheetGroup& out, bool inside) const {
    for (const bool at_end : {false, true}) {
      const PaperPoint at = frame_.At(at_end ? d_.to : d_.from, 0);
      if (d_.ticks) {
        out.primitives.emplace_back(Tick{at, style_.tick, Pen::kTick});
        continue;
      }
      const double forward = frame_.ForwardAngle();
      const double angle = at_end == inside ? forward : forward + 180;
      out.primitives.emplace_back(Arrowhead{at, angle, style_.arrow});
    }
  }

  void DrawText(SheetGroup& out, double along) const {
    out.primitives.emplace_back(frame_.Centerd(metrics_, d_.text, style_.cap_height, along, 0));
  }

  void DrawTextInside(SheetGroup& out) const {
    const double middle = (d_.from + d_.to) / 2;
    const double half = need_.along / 2 + style_.text_gap;
    DrawAlong(out, d_.from, middle - half);
    DrawAlong(out, middle + half, d_.to);
    DrawEnds(out, true);
    DrawText(out, middle);
  }

  void DrawTextOutside(SheetGroup& out, bool ends_inside) const {
    const double tail = ends_inside ? kTail : style_.arrow + kTail;
    if (ends_inside) {
      DrawAlong(out, d_.text_before ? d_.from - tail : d_.from,
                d_.text_before ? d_.to : d_.to + tail);
    } else {
      DrawAlong(out, d_.from - tail, d_.from);
      DrawAlong(out, d_.to, d_.to + tail);
    }
    DrawEnds(out, ends_inside);
    const double away = tail + style_.text_gap + need_.along / 2;
    DrawText(out, d_.text_before ? d_.from - away : d_.to + away);
  }

  const SingleDimension& d_;
  const DimensionStyle& style_;
  const TextMetrics& metrics_;
  DimensionFrame frame_;
  LabelNeed need_;
};

std::vector<double> PlacesOf(const OrdinateColumn& column, const DimensionFrame& frame,
                             const DimensionStyle& style, const TextMetrics& metrics) {
  std::vector<SpreadItem> items;
  for (const Ordinate& ordinate : column.ordinates) {
    const LabelNeed need = frame.NeedOf(metrics, ordinate.text, style.cap_height);
    items.push_back({ordinate.station, need.along, 1});
  }
  return Spread(items, frame.SpreadClearance(style));
}

void AddOrdinate(SheetGroup& out, const OrdinateColumn& column, const Ordinate& ordinate,
                 double place, const DimensionStyle& style, const TextMetrics& metrics) {
  constexpr double kStraight = 1.8;  // mm beside the object and before the text
  const DimensionFrame frame(column.side, column.edge);
  const double end = column.offset - style.clearance * 0.8;
  Polyline line{{frame.At(ordinate.station, style.object_gap)}, false, Pen::kLeader, Tone::kNone};
  if (std::abs(place - ordinate.station) > 0.01) {
    const double knee = style.object_gap + kStraight;
    line.points.push_back(frame.At(ordinate.station, knee));
    line.points.push_back(frame.At(place, std::max(end - kStraight, knee)));
  }
  line.points.push_back(frame.At(place, end));
  out.primitives.emplace_back(std::move(line));
  out.primitives.emplace_back(frame.Outside(metrics, {ordinate.text, ordinate.path},
                                            style.cap_height, place, column.offset));
}

// Above the first text; flush with the column on the side of the object.
void AddHeading(SheetGroup& out, const OrdinateColumn& column, const PaperBox& below,
                const TextMetrics& metrics) {
  LabelStyle style;
  style.cap_height = 1.5;
  style.anchor = column.side == PaperSide::kLeft ? TextAnchor::kRight : TextAnchor::kLeft;
  style.level = TextLevel::kBaseline;
  const DimensionFrame frame(column.side, column.edge);
  const double x = frame.At(0, column.offset).x;
  out.primitives.emplace_back(MakeLabel(metrics, column.heading, style, {x, below.top - 1.9}, ""));
}

}  // namespace

PaperBox AddSingleDimension(SheetGroup& out, const SingleDimension& dimension,
                            const DimensionStyle& style, const TextMetrics& metrics) {
  SheetGroup drawn;
  SingleDrawing(dimension, style, metrics).Draw(drawn);
  return MoveInto(out, drawn);
}

PaperBox AddOrdinateColumn(SheetGroup& out, const OrdinateColumn& column,
                           const DimensionStyle& style, const TextMetrics& metrics) {
  SheetGroup drawn;
  const DimensionFrame frame(column.side, column.edge);
  const std::vector<double> places = PlacesOf(column, frame, style, metrics);
  for (std::size_t i = 0; i < places.size(); ++i) {
    AddOrdinate(drawn, column, column.ordinates[i], places[i], style, metrics);
  }
  if (!column.heading.empty() && frame.IsVertical() && !places.empty()) {
    AddHeading(drawn, column, Bounds(drawn), metrics);
  }
  return MoveInto(out, drawn);
}

}  // namespace tillwright
