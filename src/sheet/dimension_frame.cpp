#include "sheet/dimension_frame.h"

#include <algorithm>

namespace tillwright {
namespace {

LabelStyle StyleWith(double cap_height, TextAnchor anchor) {
  LabelStyle style;
  style.cap_height = cap_height;
  style.anchor = anchor;
  return style;
}

// The height that a text takes about the middle of its capitals.
double HeightAboutMiddle(const TextLayout& layout, double cap_height) {
  return 2 * std::max(layout.ascent - cap_height / 2, layout.descent + cap_height / 2);
}

}  // namespace

PaperPoint DimensionFrame::At(double along, double out) const {
  const double cross = edge_ + Sign() * out;
  return IsVertical() ? PaperPoint{cross, along} : PaperPoint{along, cross};
}

double DimensionFrame::OutwardAngle() const {
  switch (side_) {
    case PaperSide::kLeft:
      return 180;
    case PaperSide::kRight:
      return 0;
    case PaperSide::kAbove:
      return 90;
    case PaperSide::kBelow:
      return 270;
  }
  return 0;
}

LabelNeed DimensionFrame::NeedOf(const TextMetrics& metrics, const std::string& text,
                                 double cap_height) const {
  const TextLayout layout =
      LayoutText(metrics, ParseRichText(text), TextWeight::kRegular, cap_height);
  const double height = HeightAboutMiddle(layout, cap_height);
  return IsVertical() ? LabelNeed{height, layout.width} : LabelNeed{layout.width, height};
}

Label DimensionFrame::Centerd(const TextMetrics& metrics, const DimensionText& text,
                              double cap_height, double along, double out) const {
  return MakeLabel(metrics, text.text, StyleWith(cap_height, TextAnchor::kCenter), At(along, out),
                   text.path);
}

Label DimensionFrame::Outside(const TextMetrics& metrics, const DimensionText& text,
                              double cap_height, double along, double out) const {
  if (!IsVertical()) {
    const double half = NeedOf(metrics, text.text, cap_height).across / 2;
    return Centerd(metrics, text, cap_height, along, out + half);
  }
  const TextAnchor anchor = side_ == PaperSide::kLeft ? TextAnchor::kRight : TextAnchor::kLeft;
  return MakeLabel(metrics, text.text, StyleWith(cap_height, anchor), At(along, out), text.path);
}

}  // namespace tillwright
