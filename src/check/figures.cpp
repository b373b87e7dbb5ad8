#include "check/figures.h"

#include <cmath>

namespace tillwright {
namespace {

Length Nearest(double mm, Length step) { return std::llround(mm / ToMillimeters(step)) * step; }

bool IsAt(Length length, double mm) {
  constexpr double kNothing = 2e-9;  // two picometers
  return std::abs(ToMillimeters(length) - mm) < kNothing;
}

}  // namespace

Length NearestShown(double mm, Unit unit) {
  if (unit == Unit::kMillimeter) return Nearest(mm, Length::Picometers(10'000'000));
  const Length fine = Nearest(mm, Length::Inches(1, 512));
  if (IsAt(fine, mm)) return fine;
  const Length least = Length::Inches(1, 64);
  return Nearest(mm, std::abs(mm) < ToMillimeters(least) ? Length::Picometers(1) : least);
}

std::string AboutText(double mm, Unit unit) {
  const Length near = NearestShown(mm, unit);
  return (IsAt(near, mm) ? "" : "\u2248 ") + FormatLength(near, unit);
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
