#include "length/length_scan.h"

#include <array>
#include <optional>
#include <string>
#include <utility>

#include "diag/characters.h"

namespace tillwright {
namespace {

using namespace std::string_view_literals;

constexpr std::int64_t kMaxWhole = 1'000'000;  // past 100 m in every unit there is
constexpr std::size_t kMaxDigits = 18;
constexpr std::size_t kMaxDecimals = 9;  // 1e-9 mm is the picometer

struct UnitName {
  std::string_view text;  // lower case
  std::int64_t pm;
};
constexpr std::int64_t kFoot = 12 * Length::kPerInch;
// Longer names before their own prefixes.
constexpr std::array kUnits{
    UnitName{"millimeters", Length::kPerMillimeter},
    UnitName{"millimetres", Length::kPerMillimeter},
    UnitName{"mm", Length::kPerMillimeter},
    UnitName{"cm", 10 * Length::kPerMillimeter},
    UnitName{"m", 1000 * Length::kPerMillimeter},
    UnitName{"inches", Length::kPerInch},
    UnitName{"inch", Length::kPerInch},
    UnitName{"in", Length::kPerInch},
    UnitName{"''", Length::kPerInch},
    UnitName{"\"", Length::kPerInch},
    UnitName{"\u2033", Length::kPerInch},  // double prime
    UnitName{"\u201d", Length::kPerInch},  // right double quotation mark
    UnitName{"\u201c", Length::kPerInch},
    UnitName{"feet", kFoot},
    UnitName{"foot", kFoot},
    UnitName{"ft", kFoot},
    UnitName{"'", kFoot},
    UnitName{"\u2032", kFoot},  // prime
    UnitName{"\u2019", kFoot},  // right single quotation mark
    UnitName{"\u2018", kFoot},
};

struct Glyph {
  std::string_view text;
  std::int64_t numerator;
  std::int64_t denominator;
};
constexpr std::array kGlyphs{
    Glyph{"\u00bc", 1, 4}, Glyph{"\u00bd", 1, 2}, Glyph{"\u00be", 3, 4},
    Glyph{"\u215b", 1, 8}, Glyph{"\u215c", 3, 8}, Glyph{"\u215d", 5, 8},
    Glyph{"\u215e", 7, 8}, Glyph{"\u2153", 1, 3}, Glyph{"\u2154", 2, 3},
};

constexpr std::array kSpaces{" "sv, "\t"sv, "\u00a0"sv, "\u2009"sv, "\u202f"sv};
constexpr std::array kSlashes{"/"sv, "\u2044"sv};
constexpr std::array kMinuses{"-"sv, "\u2212"sv};

bool IsLetter(char c) { return Lower(c) >= 'a' && Lower(c) <= 'z'; }

struct Fraction {
  Int128 numerator = 0;
  Int128 denominator = 1;
};

class Scanner {
 public:
  Scanner(std::string_view text, Unit unit) : text_(text), unit_(unit) {}

  ScannedLength Run() {
    SkipSpaces();
    const bool negative = TakeAny(kMinuses);
    SkipSpaces();
    if (AtEnd()) return Failed("a length is missing", "write it like 15 3/8 or 390.5 mm");
    ScannedLength result;
    if (!ReadQuantities(result)) return Failed();
    result.ok = true;
    if (negative) result.numerator = -result.numerator;
    return result;
  }

 private:
  // A quantity, and inches after feet.
  bool ReadQuantities(ScannedLength& result) {
    const std::optional<Fraction> first = ReadNumber();
    if (!first) return false;
    SkipSpaces();
    const std::int64_t bare = unit_ == Unit::kInch ? Length::kPerInch : Length::kPerMillimeter;
    const std::int64_t first_unit = TakeUnit().value_or(bare);
    result.unit = first_unit % Length::kPerMillimeter == 0 ? Unit::kMillimeter : Unit::kInch;
    result.numerator = first->numerator * first_unit;
    result.denominator = first->denominator;
    SkipSpaces();
    if (AtEnd()) return true;
    if (first_unit != kFoot) return Fail(Rest(), "unexpected", "");
    return AddInches(result);
  }

  bool AddInches(ScannedLength& result) {
    if (TakeAny(kMinuses)) SkipSpaces();
    const std::optional<Fraction> inches = ReadNumber();
    if (!inches) return false;
    SkipSpaces();
    const std::size_t unit_at = at_;
    if (const auto unit = TakeUnit(); unit && *unit != Length::kPerInch) {
      at_ = unit_at;
      return Fail(Rest(), "only inches can follow feet, not", "");
    }
    SkipSpaces();
    if (!AtEnd()) return Fail(Rest(), "unexpected", "");
    // At most 1e15 · 3.1e11 · 1e9 = 3.1e35: fits.
    result.numerator = result.numerator * inches->denominator +
                       inches->numerator * Length::kPerInch * result.denominator;
    result.denominator *= inches->denominator;
    return true;
  }

  // whole | decimal | n/d | whole n/d | whole-n/d | whole glyph | glyph
  std::optional<Fraction> ReadNumber() {
    if (const Glyph* glyph = TakeGlyph()) return Fraction{glyph->numerator, glyph->denominator};
    if (!AtEnd() && Peek() != '.' && !IsDigit(Peek())) {
      return Refuse(Rest(), "expected a number, found", "write it like 15 3/8 or 390.5 mm");
    }
    std::int64_t whole = 0;
    if (IsDigitAt(at_) && !ReadDigits(whole, false)) return std::nullopt;
    if (Is('.')) return ReadDecimals(whole);
    if (Is(','))
      return Refuse(text_.substr(at_, 1), "a decimal comma is not allowed:", "use a decimal point");
    if (const Glyph* glyph = TakeGlyph()) return Mixed(whole, glyph->numerator, glyph->denominator);
    if (TakeAny(kSlashes)) return ReadDenominator(0, whole);
    if ((Is('e') || Is('E')) && at_ + 1 < text_.size() &&
        (IsDigitAt(at_ + 1) || text_[at_ + 1] == '+' || text_[at_ + 1] == '-')) {
      return Refuse(Rest(), "exponents are not allowed:", "write the number out");
    }
    return ReadFractionAfter(whole);
  }

  // The fraction of a mixed number, if one follows.
  std::optional<Fraction> ReadFractionAfter(std::int64_t whole) {
    const std::size_t before = at_;
    SkipSpaces();
    const bool spaced = at_ != before;
    const std::size_t hyphen_at = at_;
    const bool hyphen = TakeAny(kMinuses);
    const Glyph* glyph = TakeGlyph();
    // "15 - 3/8" may be meant as a difference; only "15-3/8" is surely a mixed number.
    if (hyphen && (spaced || (glyph == nullptr && !IsDigitAt(at_)))) {
      at_ = hyphen_at;
      return Refuse(Rest(), "unexpected", "write a mixed number like 15-3/8 or 15 3/8");
    }
    if (glyph != nullptr) return Mixed(whole, glyph->numerator, glyph->denominator);
    if (!(spaced || hyphen) || !IsDigitAt(at_)) return Fraction{whole, 1};
    return ReadNumerator(whole);
  }

  std::optional<Fraction> ReadNumerator(std::int64_t whole) {
    const std::size_t numerator_at = at_;
    std::int64_t numerator = 0;
    if (!ReadDigits(numerator, true)) return std::nullopt;
    if (!TakeAny(kSlashes)) {
      return Refuse(text_.substr(numerator_at, at_ - numerator_at),
                    "a fraction like 3/8 should follow the whole number, found", "");
    }
    return ReadDenominator(whole, numerator);
  }

  std::optional<Fraction> ReadDenominator(std::int64_t whole, std::int64_t numerator) {
    const std::size_t start = at_;
    std::int64_t denominator = 0;
    if (!IsDigitAt(at_)) return Refuse(Rest(), "a denominator should follow the slash, found", "");
    if (!ReadDigits(denominator, true)) return std::nullopt;
    if (denominator == 0) {
      return Refuse(text_.substr(start, at_ - start), "a denominator cannot be zero:", "");
    }
    if (whole != 0 && numerator >= denominator) {
      return Refuse(text_, "the fraction of a mixed number must be less than one:", "");
    }
    return Mixed(whole, numerator, denominator);
  }

  std::optional<Fraction> Mixed(std::int64_t whole, std::int64_t n, std::int64_t d) {
    if (n > kMaxWhole || d > kMaxWhole) return Refuse(text_, "the fraction is too long:", "");
    return Fraction{static_cast<Int128>(whole) * d + n, d};
  }

  std::optional<Fraction> ReadDecimals(std::int64_t whole) {
    const std::size_t dot = at_++;
    Int128 numerator = whole;
    Int128 denominator = 1;
    std::size_t digits = 0;
    for (; IsDigitAt(at_); ++at_) {
      if (++digits > kMaxDecimals) {
        if (text_[at_] != '0') return Refuse(text_, "more than 9 decimals:", "round it");
        continue;  // trailing zeros add nothing
      }
      numerator = numerator * 10 + (text_[at_] - '0');
      denominator *= 10;
    }
    if (digits == 0) {
      return Refuse(text_.substr(dot, 1), "digits should follow the point:", "");
    }
    if (Is('/')) return Refuse(Rest(), "a decimal cannot be used in a fraction:", "");
    if (Is('e') || Is('E')) {
      return Refuse(Rest(), "exponents are not allowed:", "write the number out");
    }
    return Fraction{numerator, denominator};
  }

  // Digits into an integer of at most kMaxWhole. REQUIRES: a digit is next.
  bool ReadDigits(std::int64_t& value, bool in_fraction) {
    const std::size_t start = at_;
    value = 0;
    for (; IsDigitAt(at_); ++at_) {
      if (value <= kMaxWhole) value = value * 10 + (text_[at_] - '0');
    }
    const std::string_view digits = text_.substr(start, at_ - start);
    if (digits.size() > kMaxDigits) return Fail(digits, "too many digits in", "");
    if (value > kMaxWhole && (in_fraction || Is('/'))) {
      return Fail(digits, "the fraction is too long:", "");
    }
    if (value > kMaxWhole) {
      fault_ = {DiagnosticCode::kLengthRange, start, digits.size(),
                "\"" + std::string(text_) + "\" is over the limit of 100 m", "check the unit"};
      return false;
    }
    return true;
  }

  std::optional<std::int64_t> TakeUnit() {
    for (const UnitName& unit : kUnits) {
      if (!StartsWith(unit.text)) continue;
      const std::size_t end = at_ + unit.text.size();
      // "mx" is not meters followed by x.
      if (IsLetter(unit.text.back()) && end < text_.size() && IsLetter(text_[end])) continue;
      at_ = end;
      if (unit.text == "in" && Is('.')) ++at_;  // the abbreviation with its stop
      return unit.pm;
    }
    return std::nullopt;
  }

  bool StartsWith(std::string_view name) const {
    if (text_.size() - at_ < name.size()) return false;
    for (std::size_t i = 0; i < name.size(); ++i) {
      if (Lower(text_[at_ + i]) != name[i]) return false;
    }
    return true;
  }

  const Glyph* TakeGlyph() {
    for (const Glyph& glyph : kGlyphs) {
      if (text_.substr(at_).starts_with(glyph.text)) {
        at_ += glyph.text.size();
        return &glyph;
      }
    }
    return nullptr;
  }

  template <std::size_t N>
  bool TakeAny(const std::array<std::string_view, N>& choices) {
    for (const std::string_view choice : choices) {
      if (text_.substr(at_).starts_with(choice)) {
        at_ += choice.size();
        return true;
      }
    }
    return false;
  }

  void SkipSpaces() {
    while (TakeAny(kSpaces)) {
    }
  }

  [[nodiscard]] bool AtEnd() const { return at_ == text_.size(); }
  [[nodiscard]] char Peek() const { return text_[at_]; }
  [[nodiscard]] bool Is(char c) const { return !AtEnd() && Peek() == c; }
  [[nodiscard]] bool IsDigitAt(std::size_t i) const {
    return i < text_.size() && IsDigit(text_[i]);
  }
  [[nodiscard]] std::string_view Rest() const { return text_.substr(at_); }

  // Records a fault about `part`, which is a piece of the text, and returns false.
  bool Fail(std::string_view part, std::string_view what, std::string_view hint) {
    fault_.offset = static_cast<std::size_t>(part.data() - text_.data());
    fault_.length = part.empty() ? 1 : part.size();
    fault_.message = what;
    if (!part.empty()) fault_.message += " \"" + std::string(part) + "\"";
    if (part.size() != text_.size()) fault_.message += " in \"" + std::string(text_) + "\"";
    fault_.hint = hint;
    return false;
  }
  std::optional<Fraction> Refuse(std::string_view part, std::string_view what,
                                 std::string_view hint) {
    Fail(part, what, hint);
    return std::nullopt;
  }
  ScannedLength Failed() { return {false, 0, 1, unit_, std::move(fault_)}; }
  ScannedLength Failed(std::string_view what, std::string_view hint) {
    fault_.message = what;
    fault_.hint = hint;
    return Failed();
  }

  std::string_view text_;
  Unit unit_;
  std::size_t at_ = 0;
  LengthFault fault_;
};

}  // namespace

ScannedLength ScanLength(std::string_view text, Unit unit) { return Scanner(text, unit).Run(); }

}  // namespace tillwright
