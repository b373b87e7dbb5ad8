#include "sheet/scale.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace tillwright {
namespace {

constexpr std::array kInchScales{
    Scale{1.0, "1:1"},           Scale{1.0 / 2, "1:2"},      Scale{1.0 / 4, "1:4"},
    Scale{1.0 / 8, "1:8"},       Scale{1.0 / 12, "1:12"},    Scale{1.0 / 16, "1:16"},
    Scale{1.0 / 24, "1:24"},     Scale{1.0 / 32, "1:32"},    Scale{1.0 / 48, "1:48"},
    Scale{1.0 / 96, "1:96"},     Scale{1.0 / 192, "1:192"},  Scale{1.0 / 384, "1:384"},
    Scale{1.0 / 1000, "1:1000"}, Scale{1.0 / 2000, "1:2000"}};
constexpr std::array kMetricScales{
    Scale{1.0, "1:1"},           Scale{1.0 / 2, "1:2"},      Scale{1.0 / 5, "1:5"},
    Scale{1.0 / 10, "1:10"},     Scale{1.0 / 20, "1:20"},    Scale{1.0 / 50, "1:50"},
    Scale{1.0 / 100, "1:100"},   Scale{1.0 / 200, "1:200"},  Scale{1.0 / 500, "1:500"},
    Scale{1.0 / 1000, "1:1000"}, Scale{1.0 / 2000, "1:2000"}};

// A whole number from 1 to 10000, or 0.
int ScaleNumber(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool whole = error == std::errc() && end == text.data() + text.size();
  return whole && number >= 1 && number <= 10000 ? number : 0;
}

}  // namespace

std::span<const Scale> ScaleSeries(Unit unit) {
  if (unit == Unit::kInch) return kInchScales;
  return kMetricScales;
}

const Scale& ModestScale(Unit unit) {
  const std::span<const Scale> series = ScaleSeries(unit);
  return *std::ranges::find(series, unit == Unit::kInch ? "1:8" : "1:10", &Scale::name);
}

std::optional<Scale> ParseScale(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos) return std::nullopt;
  const int paper = ScaleNumber(text.substr(0, colon));
  const int piece = ScaleNumber(text.substr(colon + 1));
  if (paper == 0 || piece == 0) return std::nullopt;
  return Scale{static_cast<double>(paper) / piece, text};
}

}  // namespace tillwright
