#include "check/figures.h"

#include <cmath>

namespace tillwright {

Length NearestShown(double mm, Unit unit) {
  const Length step = unit == Unit::kInch ? Length::Inches(1, 64) : Length::Picometers(10'000'000);
  return std::llround(mm / ToMillimeters(step)) * step;
}

std::string AboutText(double mm, Unit unit) {
  constexpr double kNothing = 1e-9;  // a picometer or so
  const Length near = NearestShown(mm, unit);
  const bool exact = std::abs(ToMillimeters(near) - mm) < 2 * kNothing;
  return (exact ? "" : "\u2248 ") + FormatLength(near, unit);
}

Length RoundedUp(Length estimate, Unit unit) {
  return CeilTo(estimate, unit == Unit::kInch ? Length::Inches(1, 64)
                                              : Length::Picometers(Length::kPerMillimeter / 10));
}

std::string PercentText(double percent) {
  const auto tenths = std::llround(percent * 10);
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " %";
}

std::string SpacerName(const SpacerSpec& spacer, Unit unit) {
  return spacer.name.value.empty() ? FormatWithUnit(spacer.thickness.value, unit)
                                   : spacer.name.value;
}

}  // namespace tillwright
