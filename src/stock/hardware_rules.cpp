#include "stock/hardware_rules.h"

#include <algorithm>

namespace tillwright::hardware {
int CountAlong(Length length, Length pitch, Length from_edge) {
  const Length between = length - 2 * from_edge;
  if (between <= Length()) return 2;
  const std::int64_t steps = CeilTo(between, pitch).picometers() / pitch.picometers();
  return static_cast<int>(std::max<std::int64_t>(steps, 1)) + 1;
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
