#include "spec/trade_sizes.h"

#include <algorithm>
#include <array>
#include <span>

#include "spec/defaults.h"
#include "spec/mass.h"

namespace tillwright {
namespace {

using defaults::In;
using defaults::Mm;

constexpr std::array kInchScrews{In(3, 8), In(1, 2), In(5, 8), In(3, 4), In(7, 8), In(1), In(5, 4),
                                 In(3, 2), In(7, 4), In(2),    In(9, 4), In(5, 2), In(3)};
constexpr std::array kMetricScrews{Mm(10), Mm(12), Mm(15), Mm(20), Mm(25), Mm(30), Mm(35),
                                   Mm(40), Mm(45), Mm(50), Mm(60), Mm(70), Mm(80)};
constexpr std::array kInchPanels{In(1, 8), In(1, 4), In(3, 8), In(1, 2), In(5, 8), In(3, 4)};
constexpr std::array kMetricPanels{Mm(3), Mm(4), Mm(6), Mm(9), Mm(12), Mm(15), Mm(18)};
constexpr std::array kPounds{50, 75, 100, 150, 200, 250, 500};
constexpr std::array kKilograms{25, 30, 35, 40, 45, 50, 60, 70, 100, 120, 160, 220};

std::span<const Length> Screws(Unit unit) {
  if (unit == Unit::kInch) return kInchScrews;
  return kMetricScrews;
}

std::span<const Length> Panels(Unit unit) {
  if (unit == Unit::kInch) return kInchPanels;
  return kMetricPanels;
}

}  // namespace

Length LongestScrew(Length most, Unit unit) {
  Length best;
  for (const Length length : Screws(unit)) {
    if (length <= most) best = length;
  }
  return best;
}

Length ShortestScrew(Length least, Unit unit) {
  const auto screws = Screws(unit);
  const auto found = std::ranges::find_if(screws, [&](Length length) { return length >= least; });
  return found == screws.end() ? screws.back() : *found;
}

std::optional<Length> PanelAtLeast(Length thickness, Unit unit) {
  for (const Length panel : Panels(unit)) {
    if (panel >= thickness) return panel;
  }
  return std::nullopt;
}

std::optional<double> SlideRatingFor(double kilograms, Unit unit) {
  const bool pounds = unit == Unit::kInch;
  const std::span<const int> ratings =
      pounds ? std::span<const int>(kPounds) : std::span<const int>(kKilograms);
  for (const int rating : ratings) {
    const double carried = pounds ? rating * kKilogramsPerPound : rating;
    if (carried >= kilograms) return carried;
  }
  return std::nullopt;
}

}  // namespace tillwright
