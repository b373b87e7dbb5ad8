#include "render/sheet_check.h"

#include <algorithm>
#include <cmath>

#include "render/drawing_font.h"

namespace tillwright {
namespace {

constexpr double kFarthest = 1e6;  // mm: far beyond any paper, exact in thousandths

bool IsFine(double value) { return std::abs(value) <= kFarthest; }  // false for NaN
bool IsFine(PaperPoint p) { return IsFine(p.x) && IsFine(p.y); }

bool AreFine(const std::vector<PaperPoint>& points) {
  return std::all_of(points.begin(), points.end(), [](PaperPoint p) { return IsFine(p); });
}

bool IsDrawable(const Primitive& primitive) {
  return std::visit(Overloaded{[](const Polyline& line) { return AreFine(line.points); },
                               [](const Circle& c) {
                                 return IsFine(c.center) && IsFine(c.radius) && c.radius >= 0;
                               },
                               [](const Arc& a) {
                                 return IsFine(a.center) && IsFine(a.radius) && a.radius >= 0 &&
                                        IsFine(a.start) && std::abs(a.sweep) < 360;
                               },
                               [](const Arrowhead& a) {
                                 return IsFine(a.tip) && IsFine(a.direction) && IsFine(a.length);
                               },
                               [](const Tick& t) { return IsFine(t.at) && IsFine(t.length); },
                               [](const HatchLines& hatch) {
                                 return std::all_of(hatch.segments.begin(), hatch.segments.end(),
                                                    [](const PaperSegment& s) {
                                                      return IsFine(s.from) && IsFine(s.to);
                                                    });
                               },
                               [](const Label& label) {
                                 return IsFine(label.at) && IsFine(label.cap_height) &&
                                        label.cap_height > 0 && IsFine(label.width);
                               }},
                    primitive);
}

}  // namespace

std::string FaultOf(const Sheet& sheet) {
  constexpr double kLargest = 1e5;
  const auto sized = [](double mm) { return mm >= 1 && mm <= kLargest; };
  if (!sized(sheet.width) || !sized(sheet.height)) {
    return "the sheet \"" + sheet.name + "\" has no size that can be drawn";
  }
  for (const SheetGroup& group : sheet.groups) {
    if (!std::all_of(group.primitives.begin(), group.primitives.end(), IsDrawable)) {
      return "the group \"" + group.id + "\" of the sheet \"" + sheet.name +
             "\" has coordinates that cannot be drawn";
    }
  }
  return DrawingFont::Fault();
}

}  // namespace tillwright
