#include "spec/mass.h"

#include <array>
#include <charconv>
#include <cmath>

#include "diag/characters.h"

namespace tillwright {
namespace {

struct MassUnit {
  std::string_view name;
  double kilograms;
};
constexpr std::array kUnits{
    MassUnit{"lb", kKilogramsPerPound},
    MassUnit{"lbs", kKilogramsPerPound},
    MassUnit{"pound", kKilogramsPerPound},
    MassUnit{"pounds", kKilogramsPerPound},
    MassUnit{"oz", kKilogramsPerPound / 16},
    MassUnit{"kg", 1},
    MassUnit{"g", 0.001},
};

std::string_view Trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

double UnitFor(std::string_view word, Unit unit) {
  if (word.empty()) return unit == Unit::kInch ? kKilogramsPerPound : 1;
  std::string lower;
  for (const char c : word) lower += Lower(c);
  for (const MassUnit& known : kUnits) {
    if (known.name == lower) return known.kilograms;
  }
  return 0;
}

}  // namespace

std::optional<double> ParseMass(std::string_view text, Unit unit) {
  constexpr double kMost = 1e5;
  text = Trimmed(text);
  double number = 0;
  const auto [end, error] =
      std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
  if (error != std::errc()) return std::nullopt;
  const auto used = static_cast<std::size_t>(end - text.data());
  const double kilograms = number * UnitFor(Trimmed(text.substr(used)), unit);
  if (!(kilograms > 0) || kilograms > kMost) return std::nullopt;
  return kilograms;
}

std::string FormatMass(double kilograms, Unit unit) {
  const bool pounds = unit == Unit::kInch;
  const double value = pounds ? kilograms / kKilogramsPerPound : kilograms;
  const long long tenths = value < 10 ? std::llround(value * 10) : std::llround(value) * 10;
  std::string text = std::to_string(tenths / 10);
  if (tenths % 10 != 0) text += "." + std::to_string(tenths % 10);
  return text + (pounds ? " lb" : " kg");
}

}  // namespace tillwright
