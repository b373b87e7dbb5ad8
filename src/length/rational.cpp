#include "tillwright/rational.h"

#include <numeric>

#include "diag/characters.h"

namespace tillwright {
namespace {

constexpr std::int64_t kLimit = 1'000'000'000'000;

// Digits from `at` on; empty when there are none or they pass the limit.
std::optional<std::int64_t> TakeDigits(std::string_view text, std::size_t& at) {
  const std::size_t start = at;
  std::int64_t value = 0;
  for (; at < text.size() && IsDigit(text[at]); ++at) {
    value = value * 10 + (text[at] - '0');
    if (value > kLimit) return std::nullopt;
  }
  if (at == start) return std::nullopt;
  return value;
}

std::optional<Rational> Reduced(std::int64_t numerator, std::int64_t denominator) {
  if (denominator == 0 || numerator > kLimit) return std::nullopt;
  const std::int64_t divisor = std::gcd(numerator, denominator);
  return Rational{numerator / divisor, denominator / divisor};
}

std::optional<Rational> Decimal(std::string_view text, std::size_t at, std::int64_t whole) {
  std::int64_t denominator = 1;
  const std::size_t start = at;
  for (; at < text.size() && IsDigit(text[at]); ++at) {
    whole = whole * 10 + (text[at] - '0');
    denominator *= 10;
    if (whole > kLimit || denominator > kLimit) return std::nullopt;
  }
  if (at == start || at != text.size()) return std::nullopt;
  return Reduced(whole, denominator);
}

}  // namespace

std::optional<Rational> ParseRational(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  std::size_t at = 0;
  const std::optional<std::int64_t> first = TakeDigits(text, at);
  if (!first) return std::nullopt;
  if (at == text.size()) return Rational{*first, 1};
  if (text[at] == '.') return Decimal(text, at + 1, *first);
  std::int64_t whole = 0;
  std::optional<std::int64_t> numerator = first;
  if (text[at] == ' ') {  // a mixed number
    whole = *first;
    while (at < text.size() && text[at] == ' ') ++at;
    numerator = TakeDigits(text, at);
  }
  if (!numerator || at == text.size() || text[at] != '/') return std::nullopt;
  ++at;
  const std::optional<std::int64_t> denominator = TakeDigits(text, at);
  if (!denominator || at != text.size()) return std::nullopt;
  const std::optional<Rational> fraction = Reduced(*numerator, *denominator);
  if (!fraction || whole > kLimit / fraction->denominator) return std::nullopt;
  return Reduced(whole * fraction->denominator + fraction->numerator, fraction->denominator);
}

std::string FormatRational(Rational value) {
  std::string out = std::to_string(value.numerator);
  if (value.denominator != 1) out += "/" + std::to_string(value.denominator);
  return out;
}

}  // namespace tillwright
