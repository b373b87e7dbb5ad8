// The text of lengths: what a maker may type, and how a length is shown.
//
// Reading (ParseLength). Accepted, with an optional leading minus sign:
//   15 3/8   15-3/8   15 3/8"   15 3/8 in   15.375   3/4   390.5 mm   39.05 cm   0.3905 m
//   1' 3 3/8"   1 ft 3 3/8 in   1'-3"   15⅜
// Units: mm cm m in inch inches " ft foot feet ' and the typographic primes and quotes; upper or
// lower case. A length without a unit takes the one it is given. No exponents, no thousands
// separators, no decimal comma, at most 18 digits in a number. A length that is not a whole count
// of picometers (1/3 in) is refused with the two nearest that are; one past 100 m is refused.
// Nothing rounds and no floating point is involved.
//
// Showing. Inches: mixed fractions; one that is no whole 64th but a whole 512th as that (1/128), any
// other to the nearest 1/64 and led by "≈ " where it is less than a quarter of that away, else, and
// below 1/64, as a decimal with four places, led by "≈ " too.
// Millimeters: the exact decimal without trailing zeros.
//   (1) ParseLength(FormatInches(x)) == x for every x on the 1/512 in grid.
//   (2) ParseLength(FormatMillimeters(x)) == x for every x.
#ifndef TILLWRIGHT_LENGTH_TEXT_H_
#define TILLWRIGHT_LENGTH_TEXT_H_

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "tillwright/length.h"

namespace tillwright {

enum class Unit : std::uint8_t { kInch, kMillimeter };

// Why a text is not a length: the code, the byte in the text it is about, and words for a maker.
struct LengthFault {
  DiagnosticCode code = DiagnosticCode::kLengthSyntax;
  std::size_t offset = 0;
  std::size_t length = 1;
  std::string message;
  std::string hint;
};

struct ParsedLength {
  std::optional<Length> value;  // empty: see fault
  LengthFault fault;
};

// Reads a length; a bare number is in `unit`.
[[nodiscard]] ParsedLength ParseLength(std::string_view text, Unit unit);

// A mixed number of inches: sign, whole part, and numerator/denominator in lowest terms (0/1 when
// there is no fraction). `exact` is false when the length is no whole 512th and was rounded to the
// nearest 1/64.
struct InchParts {
  bool negative = false;
  std::int64_t whole = 0;
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;
  bool exact = true;
};
[[nodiscard]] InchParts ToInchParts(Length value);

[[nodiscard]] std::string FormatInches(Length value);               // 15 3/8, 3/4, 0, 1/128, ≈ 3 15/16
[[nodiscard]] std::string FormatMillimeters(Length value);          // 390.525
[[nodiscard]] std::string FormatLength(Length value, Unit unit);    // one of the two, no unit mark
[[nodiscard]] std::string FormatWithUnit(Length value, Unit unit);  // 15 3/8 in, 390.525 mm

// Appends the exact decimal millimeters to `out`.
void AppendMillimeters(std::string& out, Length value);

}  // namespace tillwright

#endif  // TILLWRIGHT_LENGTH_TEXT_H_
