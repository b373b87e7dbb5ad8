#include "tillwright/diagnostic.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>

namespace tillwright {
namespace {

struct CodeRow {
  DiagnosticCode code;
  std::string_view text;
  std::string_view meaning;
};

using enum DiagnosticCode;

// The one table of codes: in the order of the enumeration (a test holds it to that).
constexpr std::array kRows{
    CodeRow{kJsonSyntax, "json-syntax", "the spec is not JSON (comments are allowed)"},
    CodeRow{kTrailingComma, "trailing-comma", "there is a comma before a closing bracket"},
    CodeRow{kDuplicateKey, "duplicate-key", "the same key is repeated in one object"},
    CodeRow{kUnknownKey, "unknown-key", "the object has no such key"},
    CodeRow{kMissingKey, "missing-key", "a required key is missing"},
    CodeRow{kWrongType, "wrong-type", "the value is not of the kind the key takes"},
    CodeRow{kBadChoice, "bad-choice", "the word is not one of the choices"},
    CodeRow{kTooBig, "too-big", "the file, its nesting or a count is over the limit"},
    CodeRow{kLengthSyntax, "length-syntax", "the text is not a length"},
    CodeRow{kLengthInexact, "length-inexact", "the length is not a whole number of picometers"},
    CodeRow{kLengthRange, "length-range", "the length is over 100 m, or zero or negative"},
    CodeRow{kNumberSyntax, "number-syntax", "the text is not a number or ratio"},
    CodeRow{kNumberRange, "number-range", "the number is outside its range"},
    CodeRow{kConflict, "conflict", "keys that cannot be used together are both given"},
    CodeRow{kNotApplicable, "not-applicable", "the chosen type does not have this key"},
    CodeRow{kDoesNotClose, "does-not-close", "the sizes cannot fill the length they share"},
    CodeRow{kNoRoom, "no-room", "a size works out to zero or less"},
    CodeRow{kNoSlide, "no-slide", "no slide length fits the depth"},
    CodeRow{kNoSuchHeight, "no-height", "none of the stock heights fits"},
    CodeRow{kUnknownPart, "unknown-part", "no part of that name could have been measured"},
    CodeRow{kUsage, "usage", "the command line is wrong"},
    CodeRow{kUnknownPath, "unknown-path", "there is no dimension of that name"},
    CodeRow{kFileRead, "file-read", "a file cannot be read"},
    CodeRow{kFileWrite, "file-write", "a file cannot be written"},
};

const CodeRow& RowOf(DiagnosticCode code) { return kRows.at(static_cast<std::size_t>(code)); }

}  // namespace

std::string_view CodeText(DiagnosticCode code) { return RowOf(code).text; }

std::string_view CodeMeaning(DiagnosticCode code) { return RowOf(code).meaning; }

const std::vector<DiagnosticCode>& AllCodes() {
  static const std::vector<DiagnosticCode> codes = [] {
    std::vector<DiagnosticCode> all;
    for (const CodeRow& row : kRows) all.push_back(row.code);
    return all;
  }();
  return codes;
}

bool HasErrors(const Diagnostics& diagnostics) {
  return std::ranges::any_of(diagnostics,
                             [](const Diagnostic& d) { return d.severity == Severity::kError; });
}

void ReportError(Diagnostics& out, DiagnosticCode code, Place place, std::string message,
                 std::string hint) {
  out.push_back({code, Severity::kError, place, std::move(message), std::move(hint)});
}

void Bug(const char* what) {
  std::fputs("tillwright: internal error: ", stderr);
  std::fputs(what, stderr);
  std::fputc('\n', stderr);
  std::abort();
}

}  // namespace tillwright
