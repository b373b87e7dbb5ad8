#include "stock/hardware_rules.h"

#include <algorithm>
#include <span>

namespace tillwright::hardware {
namespace {

// The lengths wood screws are sold in (common practice, no source).
constexpr std::array kInchScrews{In(3, 8), In(1, 2), In(5, 8), In(3, 4), In(7, 8), In(1), In(5, 4),
                                 In(3, 2), In(7, 4), In(2),    In(9, 4), In(5, 2), In(3)};
constexpr std::array kMetricScrews{Mm(10), Mm(12), Mm(15), Mm(20), Mm(25), Mm(30), Mm(35),
                                   Mm(40), Mm(45), Mm(50), Mm(60), Mm(70), Mm(80)};

std::span<const Length> Screws(Unit unit) {
  if (unit == Unit::kInch) return kInchScrews;
  return kMetricScrews;
}

}  // namespace

int CountAlong(Length length, Length pitch, Length from_edge) {
  const Length between = length - 2 * from_edge;
  if (between <= Length()) return 2;
  const std::int64_t steps = CeilTo(between, pitch).picometers() / pitch.picometers();
  return static_cast<int>(std::max<std::int64_t>(steps, 1)) + 1;
}

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

Dowel DowelFor(Length stock, Unit unit) {
  const bool inch = unit == Unit::kInch;
  if (stock < (inch ? In(5, 8) : Mm(16))) {
    return inch ? Dowel{In(1, 4), In(5, 4)} : Dowel{Mm(6), Mm(30)};
  }
  return inch ? Dowel{In(3, 8), In(3, 2)} : Dowel{Mm(8), Mm(35)};
}

std::int64_t GlueMicrolitres(Length a, Length b) {
  // 200 ml on 1 m2 is 0.2 microlitres on 1 mm2.
  constexpr Int128 kPerSquareMm = Int128{Length::kPerMillimeter} * Length::kPerMillimeter;
  return static_cast<std::int64_t>(Int128{a.picometers()} * b.picometers() / (5 * kPerSquareMm));
}

}  // namespace tillwright::hardware
