#include "check/real_opening.h"

#include <algorithm>
#include <utility>

namespace tillwright {
namespace {

Length Floored(Int128 numerator, Int128 denominator) {
  return Length::Picometers(static_cast<std::int64_t>(FloorDiv(numerator, denominator)));
}

Int128 Wide(Length length) { return length.picometers(); }

}  // namespace

Length LeanOf(Length rising, Length falling, Length bottom_width, Length top_width) {
  const Int128 squares = (Wide(rising) - Wide(falling)) * (Wide(rising) + Wide(falling));
  return Floored(squares, 2 * (Wide(bottom_width) + Wide(top_width)));
}

Length Between(Length a, Length b, Length part, Length whole) {
  return a + Floored(Wide(b - a) * Wide(part), Wide(whole));
}

RealOpening::RealOpening(const Spec& spec, const Bank& bank)
    : planned_width_(bank.opening_width),
      left_(bank.opening_height),
      right_(bank.opening_height),
      depth_(bank.opening_depth) {
  const MeasuredSpec& measured = spec.measured;
  for (const MeasuredAt& at : measured.width) widths_.push_back({at.at.value, at.size.value});
  if (widths_.empty()) widths_.push_back({Length(), bank.opening_width});
  std::ranges::sort(widths_, {}, [](const Knot& knot) { return std::pair(knot.at, knot.size); });
  // Measured twice at one height, the smaller counts.
  const auto again = [](const Knot& a, const Knot& b) { return a.at == b.at; };
  widths_.erase(std::unique(widths_.begin(), widths_.end(), again), widths_.end());
  const Entry<Length>& left = measured.height_left;
  const Entry<Length>& right = measured.height_right;
  if (left.typed) left_ = left.value;
  if (right.typed) right_ = right.value;
  if (left.typed && !right.typed) right_ = left_;
  if (right.typed && !left.typed) left_ = right_;
  if (measured.depth.typed) depth_ = measured.depth.value;
  if (measured.rising.typed && measured.falling.typed) {
    lean_ =
        LeanOf(measured.rising.value, measured.falling.value, WidthAt(Length()), WidthAt(height()));
  }
}

Length RealOpening::WidthAt(Length y) const {
  const auto above = std::ranges::upper_bound(widths_, y, {}, &Knot::at);
  if (above == widths_.begin()) return widths_.front().size;
  const Knot& below = *(above - 1);
  if (above == widths_.end() || below.at == y) return below.size;
  return Between(below.size, above->size, y - below.at, above->at - below.at);
}

Length RealOpening::LeastWidth(Length from, Length to) const {
  Length least = Min(WidthAt(from), WidthAt(to));
  for (const Knot& knot : widths_) {
    if (knot.at > from && knot.at < to) least = Min(least, knot.size);
  }
  return least;
}

Length RealOpening::HeightAt(Length x) const {
  if (left_ == right_ || x <= Length()) return left_;
  return x >= planned_width_ ? right_ : Between(left_, right_, x, planned_width_);
}

Length RealOpening::LeastHeight(Length from, Length to) const {
  return Min(HeightAt(from), HeightAt(to));
}

Length RealOpening::Taper(Edge edge, const Rect& front) const {
  if (edge == Edge::kBottom) return {};
  if (edge == Edge::kTop) return HeightAt(front.Right()) - HeightAt(front.x);
  const Length wider = WidthAt(front.Top()) - WidthAt(front.y);
  const Length leans = Between(Length(), lean_.value_or(Length()), front.height, height());
  return edge == Edge::kLeft ? HalfBelow(wider) - leans : HalfAbove(wider) + leans;
}

}  // namespace tillwright
