#include "write/csv.h"

namespace tillwright {
namespace {

constexpr std::string_view kFormulaStarts = "=+-@\t\r";

}  // namespace

void Csv::Cell(std::string_view text) {
  if (!first_) out_ += ',';
  first_ = false;
  if (text.find_first_of(",\"\r\n") == std::string_view::npos) {
    out_ += text;
    return;
  }
  out_ += '"';
  for (const char c : text) {
    if (c == '"') out_ += '"';
    out_ += c;
  }
  out_ += '"';
}

Csv& Csv::Text(std::string_view text) {
  const bool formula = !text.empty() && kFormulaStarts.find(text.front()) != std::string::npos;
  Cell(formula ? "'" + std::string(text) : std::string(text));
  return *this;
}

Csv& Csv::Number(std::int64_t number) {
  Cell(std::to_string(number));
  return *this;
}

Csv& Csv::Lengths(Length length, Unit unit) {
  Cell(FormatMillimeters(length));
  Cell(DecimalInches(length));
  Cell(MarkedLength(length, unit));
  return *this;
}

Csv& Csv::LengthHeads(std::string_view name) {
  const std::string head(name);
  Cell(head + "_mm");
  Cell(head + "_in");
  Cell(head);
  return *this;
}

Csv& Csv::EmptyLengths() {
  for (int i = 0; i < 3; ++i) Cell("");
  return *this;
}

void Csv::EndRow() {
  out_ += "\r\n";
  first_ = true;
}

std::string DecimalInches(Length length) {
  constexpr Int128 kMillionths = 1'000'000;
  const bool negative = length < Length();
  const Int128 pm = negative ? -length.picometers() : length.picometers();
  const auto count = static_cast<std::int64_t>((2 * pm * kMillionths + Length::kPerInch) /
                                               (2 * Int128{Length::kPerInch}));
  const std::string digits = std::to_string(count % 1'000'000);
  std::string fraction = std::string(6 - digits.size(), '0') + digits;
  fraction.erase(fraction.find_last_not_of('0') + 1);
  std::string text = negative && count != 0 ? "-" : "";
  text += std::to_string(count / 1'000'000);
  return fraction.empty() ? text : text + "." + fraction;
}

std::string MarkedLength(Length length, Unit unit) {
  return unit == Unit::kInch ? FormatInches(length) + "\"" : FormatMillimeters(length) + " mm";
}

}  // namespace tillwright
