#include "sheet/annotation.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <utility>

#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kTextGap = 0.9;  // mm between a line and a text

PaperBox MoveInto(SheetGroup& out, SheetGroup& drawn) {
  const PaperBox covered = Bounds(drawn);
  std::move(drawn.primitives.begin(), drawn.primitives.end(), std::back_inserter(out.primitives));
  return covered;
}

LabelStyle TextStyle(double cap_height, TextWeight weight, TextAnchor anchor, TextLevel level) {
  LabelStyle style;
  style.cap_height = cap_height;
  style.weight = weight;
  style.anchor = anchor;
  style.level = level;
  return style;
}

double AngleOf(PaperPoint from, PaperPoint to) {
  return std::atan2(from.y - to.y, to.x - from.x) * 180 / std::numbers::pi;
}

// The point `distance` mm from `from` toward `to`.
PaperPoint Toward(PaperPoint from, PaperPoint to, double distance) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  if (length <= 0) return from;
  return {from.x + (to.x - from.x) * distance / length,
          from.y + (to.y - from.y) * distance / length};
}

void AddLeaderEnd(SheetGroup& out, const LeaderNote& note) {
  switch (note.end) {
    case LeaderEnd::kNone:
      return;
    case LeaderEnd::kArrow:
      out.primitives.emplace_back(Arrowhead{note.tip, AngleOf(note.elbow, note.tip), 2.2});
      return;
    case LeaderEnd::kDot:
      out.primitives.emplace_back(Circle{note.tip, 0.45, Pen::kNone, Tone::kInk});
      return;
  }
}

}  // namespace

PaperBox AddLeaderNote(SheetGroup& out, const LeaderNote& note, const TextMetrics& metrics) {
  constexpr double kShelf = 2;
  SheetGroup drawn;
  const double sign = note.text_left ? -1 : 1;
  const PaperPoint shelf{note.elbow.x + sign * kShelf, note.elbow.y};
  drawn.primitives.emplace_back(Polyline{{note.tip, note.elbow, shelf}, false, Pen::kLeader, {}});
  AddLeaderEnd(drawn, note);
  const TextAnchor anchor = note.text_left ? TextAnchor::kRight : TextAnchor::kLeft;
  const LabelStyle style =
      TextStyle(note.cap_height, TextWeight::kRegular, anchor, TextLevel::kMiddle);
  PaperPoint at{shelf.x + sign * kTextGap, shelf.y};
  for (const std::string& line : note.lines) {
    drawn.primitives.emplace_back(MakeLabel(metrics, line, style, at, note.path));
    at.y += 2.1 * note.cap_height;
  }
  return MoveInto(out, drawn);
}

PaperBox AddTextBlock(SheetGroup& out, const TextBlock& block, const TextMetrics& metrics) {
  SheetGroup drawn;
  const LabelStyle style =
      TextStyle(block.cap_height, block.weight, TextAnchor::kLeft, TextLevel::kBaseline);
  PaperPoint at = block.at;
  for (const std::string& line : block.lines) {
    drawn.primitives.emplace_back(MakeLabel(metrics, line, style, at, ""));
    at.y += block.pitch * block.cap_height;
  }
  return MoveInto(out, drawn);
}

void AddCenterLine(SheetGroup& out, PaperPoint from, PaperPoint to, double overshoot) {
  out.primitives.emplace_back(
      LineOf(Toward(from, to, -overshoot), Toward(to, from, -overshoot), Pen::kCenter));
}

void AddCenterMark(SheetGroup& out, PaperPoint center, double radius) {
  const double reach = radius + 2;
  const Pen pen = radius < 3 ? Pen::kThin : Pen::kCenter;
  out.primitives.emplace_back(
      LineOf({center.x - reach, center.y}, {center.x + reach, center.y}, pen));
  out.primitives.emplace_back(
      LineOf({center.x, center.y - reach}, {center.x, center.y + reach}, pen));
}

namespace {

// The end of a section plane at `end`, its stroke running on from `other`.
void AddSectionEnd(SheetGroup& out, const SectionMark& mark, PaperPoint end, PaperPoint other,
                   const TextMetrics& metrics) {
  constexpr double kArrowShaft = 4.2;
  const PaperPoint outer = Toward(end, other, -mark.stroke);
  out.primitives.emplace_back(LineOf(end, outer, Pen::kSection));
  const PaperPoint corner = Toward(outer, end, StyleOf(Pen::kThin).width / 2);
  const PaperPoint tip = OnCircle(corner, kArrowShaft + 2.2, mark.sight);
  out.primitives.emplace_back(
      LineOf(corner, OnCircle(corner, kArrowShaft, mark.sight), Pen::kThin));
  out.primitives.emplace_back(Arrowhead{tip, mark.sight, 2.5});
  const LabelStyle style =
      TextStyle(3.5, TextWeight::kBold, TextAnchor::kCenter, TextLevel::kMiddle);
  const PaperPoint middle{(end.x + outer.x) / 2, (end.y + outer.y) / 2};
  out.primitives.emplace_back(
      MakeLabel(metrics, mark.letter, style, OnCircle(middle, 2.9, mark.sight + 180), ""));
}

}  // namespace

PaperBox AddSectionMark(SheetGroup& out, const SectionMark& mark, const TextMetrics& metrics) {
  SheetGroup drawn;
  AddSectionEnd(drawn, mark, mark.first, mark.last, metrics);
  AddSectionEnd(drawn, mark, mark.last, mark.first, metrics);
  return MoveInto(out, drawn);
}

PaperDisc AddBalloon(SheetGroup& out, PaperPoint center, double radius, std::string_view text,
                     const TextMetrics& metrics, Tone fill) {
  out.primitives.emplace_back(Circle{center, radius, Pen::kCallout, fill});
  LabelStyle style = TextStyle(radius, TextWeight::kBold, TextAnchor::kCenter, TextLevel::kMiddle);
  const double room = 1.4 * radius;
  const double width = MeasureLabel(metrics, text, style).width;
  if (width > room) style.cap_height = std::max(radius * room / width, radius * 0.6);
  style.max_width = 1.7 * radius;
  out.primitives.emplace_back(MakeLabel(metrics, text, style, center, ""));
  return {center, radius};
}

PaperBox AddDetailCallout(SheetGroup& out, const DetailCallout& callout,
                          const TextMetrics& metrics) {
  constexpr double kBalloon = 3;
  SheetGroup drawn;
  drawn.primitives.emplace_back(Circle{callout.center, callout.radius, Pen::kCallout, Tone::kNone});
  const double apart =
      std::hypot(callout.balloon.x - callout.center.x, callout.balloon.y - callout.center.y);
  if (apart > callout.radius + kBalloon) {
    drawn.primitives.emplace_back(LineOf(Toward(callout.center, callout.balloon, callout.radius),
                                         Toward(callout.balloon, callout.center, kBalloon),
                                         Pen::kLeader));
  }
  AddBalloon(drawn, callout.balloon, kBalloon, callout.letter, metrics);
  return MoveInto(out, drawn);
}

PaperBox AddViewTitle(SheetGroup& out, const ViewTitle& title, const TextMetrics& metrics) {
  constexpr double kBalloon = 3.3;
  SheetGroup drawn;
  double x = title.at.x;
  if (!title.letter.empty()) {
    AddBalloon(drawn, {x + kBalloon, title.at.y}, kBalloon, title.letter, metrics);
    x += 2 * kBalloon + 1.6;
  }
  LabelStyle style = TextStyle(3, TextWeight::kBold, TextAnchor::kLeft, TextLevel::kBaseline);
  if (title.max_width > 0) style.max_width = title.max_width - (x - title.at.x);
  const Label name = MakeLabel(metrics, title.title, style, {x, title.at.y}, "");
  const double line = title.at.y + std::max(1.1, name.box.bottom - title.at.y + 0.5);
  drawn.primitives.emplace_back(LineOf({x, line}, {x + name.width, line}, Pen::kSymbol));
  drawn.primitives.emplace_back(name);
  if (!title.caption.empty()) {
    LabelStyle small = TextStyle(2, TextWeight::kRegular, TextAnchor::kLeft, TextLevel::kBaseline);
    small.max_width = style.max_width;
    const Label caption = MakeLabel(metrics, title.caption, small, {x, 0}, "");
    const double drop = line + 1.3 - caption.box.top;
    drawn.primitives.emplace_back(MakeLabel(metrics, title.caption, small, {x, drop}, ""));
  }
  return MoveInto(out, drawn);
}

void AddGrainArrow(SheetGroup& out, PaperPoint center, double length, PaperAxis along) {
  constexpr double kHead = 2;
  const double angle = along == PaperAxis::kHorizontal ? 0 : 90;
  const PaperPoint tip = OnCircle(center, length / 2, angle);
  const PaperPoint tail = OnCircle(center, length / 2, angle + 180);
  out.primitives.emplace_back(
      LineOf(Toward(tip, tail, kHead / 2), Toward(tail, tip, kHead / 2), Pen::kThin));
  out.primitives.emplace_back(Arrowhead{tip, angle, kHead});
  out.primitives.emplace_back(Arrowhead{tail, angle + 180, kHead});
}

PaperBox AddScaleBar(SheetGroup& out, const ScaleBar& bar, const TextMetrics& metrics) {
  constexpr double kHeight = 1.1;
  constexpr double kCap = 1.6;
  SheetGroup drawn;
  const double end = bar.at.x + bar.field * bar.fields;
  for (int i = 0; i < bar.fields; i += 2) {
    const double x = bar.at.x + bar.field * i;
    drawn.primitives.emplace_back(
        BoxFill({x, bar.at.y, x + bar.field, bar.at.y + kHeight}, Tone::kInk));
  }
  drawn.primitives.emplace_back(
      BoxOutline({bar.at.x, bar.at.y, end, bar.at.y + kHeight}, Pen::kRuler));
  LabelStyle style =
      TextStyle(kCap, TextWeight::kRegular, TextAnchor::kCenter, TextLevel::kBaseline);
  double rise = kCap;  // fractions stand higher than figures
  for (const std::string& text : bar.labels) {
    if (!text.empty()) rise = std::max(rise, -MakeLabel(metrics, text, style, {0, 0}, "").box.top);
  }
  const double base = bar.at.y + kHeight + 0.8 + rise;
  double reach = end;
  for (std::size_t i = 0; i < bar.labels.size(); ++i) {
    if (bar.labels[i].empty()) continue;
    const PaperPoint at{bar.at.x + bar.field * static_cast<double>(i), base};
    const Label label = MakeLabel(metrics, bar.labels[i], style, at, "");
    reach = label.box.right;
    drawn.primitives.emplace_back(label);
  }
  style.anchor = TextAnchor::kLeft;
  if (!bar.unit.empty()) {
    drawn.primitives.emplace_back(MakeLabel(metrics, bar.unit, style, {reach + 1.1, base}, ""));
  }
  return MoveInto(out, drawn);
}

namespace {

struct Graduation {
  double at = 0;      // mm from the start
  double height = 0;  // mm
};

std::vector<Graduation> GraduationsOf(const CheckBar& bar) {
  std::vector<Graduation> marks;
  if (bar.unit == CheckUnit::kMillimeter) {
    for (int i = 0; i <= bar.length; i += bar.coarse ? 5 : 1) {
      marks.push_back({static_cast<double>(i), i % 10 == 0 ? 2.4 : i % 5 == 0 ? 1.7 : 1.0});
    }
    return marks;
  }
  for (int i = 0; i <= 16 * bar.length; i += bar.coarse ? 8 : 1) {
    const double height = i % 16 == 0 ? 2.4 : i % 8 == 0 ? 1.9 : i % 4 == 0 ? 1.5 : 1.0;
    if (i % 2 == 0) marks.push_back({25.4 * i / 16, i % 4 == 2 ? 1.0 : height});
  }
  return marks;
}

}  // namespace

PaperBox AddCheckBar(SheetGroup& out, const CheckBar& bar, const TextMetrics& metrics) {
  SheetGroup drawn;
  const bool level = bar.along == PaperAxis::kHorizontal;
  const auto at = [&](double along, double height) {
    const double up = bar.flip ? -height : height;
    return level ? PaperPoint{bar.at.x + along, bar.at.y - up}
                 : PaperPoint{bar.at.x - up, bar.at.y + along};
  };
  const double length = bar.unit == CheckUnit::kInch ? 25.4 * bar.length : bar.length;
  drawn.primitives.emplace_back(LineOf(at(0, 0), at(length, 0), Pen::kRuler));
  HatchLines marks{{}, Pen::kRuler};
  for (const Graduation& mark : GraduationsOf(bar)) {
    marks.segments.push_back({at(mark.at, 0), at(mark.at, mark.height)});
  }
  drawn.primitives.emplace_back(std::move(marks));
  if (!bar.label.empty()) {
    const TextAnchor anchor = level ? TextAnchor::kLeft : TextAnchor::kRight;
    LabelStyle style = TextStyle(bar.cap_height, TextWeight::kRegular, anchor, TextLevel::kMiddle);
    style.turn = level ? TextTurn::kLevel : TextTurn::kUpward;
    drawn.primitives.emplace_back(
        MakeLabel(metrics, bar.label, style, at(length + 1.2, bar.cap_height / 2), ""));
  }
  return MoveInto(out, drawn);
}

void AddRegistrationMark(SheetGroup& out, PaperPoint center, double radius) {
  const double reach = radius * 1.7;
  out.primitives.emplace_back(Circle{center, radius, Pen::kSymbol, Tone::kNone});
  out.primitives.emplace_back(
      LineOf({center.x - reach, center.y}, {center.x + reach, center.y}, Pen::kThin));
  out.primitives.emplace_back(
      LineOf({center.x, center.y - reach}, {center.x, center.y + reach}, Pen::kThin));
}

}  // namespace tillwright
