// The opening as it was measured: widths at heights, heights at both sides, diagonals, depth. What
// was not measured is as planned.
#ifndef TILLWRIGHT_CHECK_REAL_OPENING_H_
#define TILLWRIGHT_CHECK_REAL_OPENING_H_

#include <optional>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

// How far an opening leans to the right over its full height: (rising^2 - falling^2) / (4 W), W the
// mean of its widths at bottom and top. That is exact for any opening whose bottom and top are
// level: the mean of how far its two sides lean. Rounded down to a picometer.
[[nodiscard]] Length LeanOf(Length rising, Length falling, Length bottom_width, Length top_width);

// a + (b - a) * part / whole, rounded down to a picometer. REQUIRES: whole > 0.
[[nodiscard]] Length Between(Length a, Length b, Length part, Length whole);

class RealOpening {
 public:
  RealOpening(const Spec& spec, const Bank& bank);

  // Between measured heights in a straight line, beyond them as at the nearest.
  [[nodiscard]] Length WidthAt(Length y) const;
  [[nodiscard]] Length LeastWidth(Length from, Length to) const;
  [[nodiscard]] Length HeightAt(Length x) const;
  [[nodiscard]] Length LeastHeight(Length from, Length to) const;
  [[nodiscard]] Length height() const { return HalfBelow(left_ + right_); }
  [[nodiscard]] Length depth() const { return depth_; }
  [[nodiscard]] std::optional<Length> lean() const { return lean_; }

  // How much wider the gap at an edge of the opening is at its upper (or right) end than at the
  // lower (or left) end of a square front. Without diagonals the sides are taken to lean alike to
  // both hands. The bottom is the datum: fronts are set level with it.
  [[nodiscard]] Length Taper(Edge edge, const Rect& front) const;

 private:
  struct Knot {
    Length at, size;
  };
  std::vector<Knot> widths_;  // by height, never empty
  Length planned_width_;
  Length left_, right_, depth_;
  std::optional<Length> lean_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_REAL_OPENING_H_
