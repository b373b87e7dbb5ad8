// Rational: an exact ratio such as a weight or a graduation ratio.
//
// Read from a JSON number or a text such as "4/3", "1.3" or "1 1/2"; never from a double. Positive
// or zero, in lowest terms, numerator and denominator at most 1e12.
#ifndef TILLWRIGHT_RATIONAL_H_
#define TILLWRIGHT_RATIONAL_H_

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace tillwright {

struct Rational {
  std::int64_t numerator = 1;
  std::int64_t denominator = 1;  // > 0

  friend constexpr bool operator==(const Rational&, const Rational&) = default;
};

// Empty when the text is not a number of the forms above, or does not fit.
[[nodiscard]] std::optional<Rational> ParseRational(std::string_view text);

// "4/3", or "13/10" for 1.3; whole numbers without a denominator.
[[nodiscard]] std::string FormatRational(Rational value);

// For statistics and drawings only.
[[nodiscard]] inline double ToDouble(Rational value) {
  return static_cast<double>(value.numerator) / static_cast<double>(value.denominator);
}

}  // namespace tillwright

#endif  // TILLWRIGHT_RATIONAL_H_
