#include "tillwright/length_text.h"

#include <array>
#include <charconv>
#include <numeric>

#include "length/length_scan.h"

namespace tillwright {
namespace {

constexpr std::int64_t kFinest = 64;  // the finest inch fraction that stands for what is near it
constexpr std::int64_t kExact = 512;  // the finest that is shown where it is exact

void AppendInteger(std::string& out, std::int64_t value) {
  std::array<char, 24> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
  out.append(buffer.data(), end);
}

// The nearest lengths that are exact, in the unit that was typed.
LengthFault Inexact(std::string_view text, const ScannedLength& scanned) {
  const Unit unit = scanned.unit;
  const Length below = Length::Picometers(
      static_cast<std::int64_t>(FloorDiv(scanned.numerator, scanned.denominator)));
  const Length step = unit == Unit::kInch ? Length::Inches(1, kFinest) : Length::Picometers(1);
  const Length low = FloorTo(below, step);
  return {DiagnosticCode::kLengthInexact, 0, text.size(),
          "\"" + std::string(text) +
              "\" cannot be represented exactly (it is not a whole number of " + "picometers)",
          "the nearest that can be are " + FormatWithUnit(low, unit) + " and " +
              FormatWithUnit(low + step, unit)};
}

LengthFault PastLimit(std::string_view text) {
  return {DiagnosticCode::kLengthRange, 0, text.size(),
          "\"" + std::string(text) + "\" is over the limit of 100 m", "check the unit"};
}

}  // namespace

ParsedLength ParseLength(std::string_view text, Unit unit) {
  ScannedLength scanned = ScanLength(text, unit);
  if (!scanned.ok) return {std::nullopt, std::move(scanned.fault)};
  const Int128 limit = static_cast<Int128>(kMaxTyped.picometers()) * scanned.denominator;
  if (scanned.numerator > limit || scanned.numerator < -limit) {
    return {std::nullopt, PastLimit(text)};
  }
  if (scanned.numerator % scanned.denominator != 0) {
    return {std::nullopt, Inexact(text, scanned)};
  }
  const Int128 pm = scanned.numerator / scanned.denominator;
  return {Length::Picometers(static_cast<std::int64_t>(pm)), {}};
}

InchParts ToInchParts(Length value) {
  const bool negative = value < Length();
  const Int128 magnitude = (negative ? -value : value).picometers();
  const Int128 per_inch = Length::kPerInch;
  const bool exact = magnitude * kExact % per_inch == 0;
  const std::int64_t finest = exact ? kExact : kFinest;
  const auto count = static_cast<std::int64_t>((magnitude * finest + per_inch / 2) / per_inch);
  const std::int64_t fraction = count % finest;
  const std::int64_t divisor = std::gcd(fraction, finest);  // `finest` when there is no fraction
  return {negative && count != 0, count / finest, fraction / divisor, finest / divisor, exact};
}

namespace {

// Whether the nearest 1/64 tells what the length is: it is less than a quarter of that away, and
// the length no smaller.
bool ReadsTrue(const InchParts& parts, Length magnitude) {
  const Length shown =
      parts.whole * Length::Inches(1) + Length::Inches(parts.numerator, parts.denominator);
  const Length error = shown > magnitude ? shown - magnitude : magnitude - shown;
  return 4 * error < Length::Inches(1, kFinest) && magnitude >= Length::Inches(1, kFinest);
}

// Four decimals of an inch, or "0" when there is nothing in them.
void AppendDecimal(std::string& out, Length value, Length magnitude) {
  const Int128 scaled = static_cast<Int128>(magnitude.picometers()) * 10'000;
  const auto count = static_cast<std::int64_t>((scaled + Length::kPerInch / 2) / Length::kPerInch);
  if (count == 0) {
    out += '0';
    return;
  }
  if (value < Length()) out += '-';
  AppendInteger(out, count / 10'000);
  const std::string decimals = std::to_string(count % 10'000);
  out += '.';
  out.append(4 - decimals.size(), '0');
  out += decimals;
}

}  // namespace

std::string FormatInches(Length value) {
  const InchParts parts = ToInchParts(value);
  const Length magnitude = value < Length() ? -value : value;
  std::string out;
  if (!parts.exact) out += "\u2248 ";
  if (!parts.exact && !ReadsTrue(parts, magnitude)) {
    AppendDecimal(out, value, magnitude);
    return out;
  }
  if (parts.negative) out += '-';
  if (parts.whole != 0 || parts.numerator == 0) AppendInteger(out, parts.whole);
  if (parts.numerator != 0) {
    if (parts.whole != 0) out += ' ';
    AppendInteger(out, parts.numerator);
    out += '/';
    AppendInteger(out, parts.denominator);
  }
  return out;
}

void AppendMillimeters(std::string& out, Length value) {
  std::array<char, 32> buffer{};
  char* p = buffer.data() + buffer.size();
  const bool negative = value < Length();
  // The magnitude as unsigned, so that the most negative count has one too.
  std::uint64_t rest = static_cast<std::uint64_t>(value.picometers());
  if (negative) rest = 0 - rest;
  std::uint64_t fraction = rest % Length::kPerMillimeter;
  std::uint64_t whole = rest / Length::kPerMillimeter;
  if (fraction != 0) {
    int digits = 9;
    for (; fraction % 10 == 0; fraction /= 10) --digits;
    for (; digits > 0; --digits, fraction /= 10) *--p = static_cast<char>('0' + fraction % 10);
    *--p = '.';
  }
  do {
    *--p = static_cast<char>('0' + whole % 10);
    whole /= 10;
  } while (whole != 0);
  if (negative) *--p = '-';
  out.append(p, buffer.data() + buffer.size());
}

std::string FormatMillimeters(Length value) {
  std::string out;
  AppendMillimeters(out, value);
  return out;
}

std::string FormatLength(Length value, Unit unit) {
  return unit == Unit::kInch ? FormatInches(value) : FormatMillimeters(value);
}

std::string FormatWithUnit(Length value, Unit unit) {
  return FormatLength(value, unit) + (unit == Unit::kInch ? " in" : " mm");
}

}  // namespace tillwright
