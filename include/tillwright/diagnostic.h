// Diagnostics: what is wrong with an input, where, and what to write instead.
//
// Errors are values. A layer reports every problem it can find into a Diagnostics list and goes on
// with what is left, so that a maker sees all of them in one run. Nothing here knows about files,
// lines or columns: a Place is a span of bytes in the text that was read, and the reader turns it
// into file:line:column and a JSON Pointer when a message is shown.
//
// Guarantee (1): an Outcome holds a value if and only if none of its diagnostics is an error.
#ifndef TILLWRIGHT_DIAGNOSTIC_H_
#define TILLWRIGHT_DIAGNOSTIC_H_

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tillwright {

enum class Severity : std::uint8_t { kNote, kWarning, kError };

// Stable codes, grouped by the layer that finds the fault. CodeText gives the published name.
enum class DiagnosticCode : std::uint8_t {
  // Text of the spec
  kJsonSyntax,     // not JSON (with comments)
  kTrailingComma,  // a comma before a closing bracket
  kDuplicateKey,   // the same key twice in one object
  kUnknownKey,     // a key this object does not have
  kMissingKey,     // a key that must be there
  kWrongType,      // a list where an object is wanted, and the like
  kBadChoice,      // a word that is not one of the choices
  kTooBig,         // file, depth or count beyond the limits
  // Lengths and numbers
  kLengthSyntax,   // the text is not a length
  kLengthInexact,  // a length that is not a whole count of picometers
  kLengthRange,    // beyond 100 m, or zero or negative where that makes no sense
  kNumberSyntax,   // a ratio, weight or count that cannot be read
  kNumberRange,    // a ratio, weight or count outside its range
  // The job
  kConflict,       // keys that exclude one another
  kNotApplicable,  // a key that the chosen type does not have
  kDoesNotClose,   // sizes and bounds cannot fill the length they share
  kNoRoom,         // a size that would come out at zero or less
  kNoSlide,        // no slide of the series fits the depth
  kNoSuchHeight,   // none of the stock heights fits
  kUnknownPart,    // something was measured on a part that is not there
  // Command line and files
  kUsage,        // the command line is wrong
  kUnknownPath,  // `why` asked for a dimension that does not exist
  kFileRead,     // a file cannot be read
  kFileWrite,    // a file cannot be written
};

// The published name of a code, such as "unknown-key".
std::string_view CodeText(DiagnosticCode code);

// One sentence on what a code means, for help and documentation.
std::string_view CodeMeaning(DiagnosticCode code);

// Every code once, in the order of the enumeration.
const std::vector<DiagnosticCode>& AllCodes();

// A span of bytes in the text of a spec. Default: nowhere in particular.
struct Place {
  static constexpr std::uint32_t kNowhere = 0xffffffffU;
  std::uint32_t offset = kNowhere;
  std::uint32_t length = 0;

  [[nodiscard]] constexpr bool IsSomewhere() const { return offset != kNowhere; }
  friend constexpr bool operator==(const Place&, const Place&) = default;
};

struct Diagnostic {
  DiagnosticCode code = DiagnosticCode::kJsonSyntax;
  Severity severity = Severity::kError;
  Place place;
  std::string message;  // one sentence, lower-case start, no full stop, the author's text in quotes
  std::string hint;     // what to write instead; may be empty
};

using Diagnostics = std::vector<Diagnostic>;

[[nodiscard]] bool HasErrors(const Diagnostics& diagnostics);

// Appends an error. The usual way to report one.
void ReportError(Diagnostics& out, DiagnosticCode code, Place place, std::string message,
                 std::string hint = {});

// A value, or the reasons why there is none; warnings ride along with a value.
template <class T>
class [[nodiscard]] Outcome {
 public:
  Outcome(std::optional<T> value, Diagnostics diagnostics)
      : value_(std::move(value)), diagnostics_(std::move(diagnostics)) {
    if (HasErrors(diagnostics_)) value_.reset();
  }
  [[nodiscard]] bool ok() const { return value_.has_value(); }
  // REQUIRES: ok().
  [[nodiscard]] const T& value() const { return value_.value(); }
  [[nodiscard]] T& value() { return value_.value(); }
  [[nodiscard]] const Diagnostics& diagnostics() const& { return diagnostics_; }
  [[nodiscard]] Diagnostics diagnostics() && { return std::move(diagnostics_); }

 private:
  std::optional<T> value_;
  Diagnostics diagnostics_;
};

// Ends the program: a broken precondition inside the program, never a fault of the input.
[[noreturn]] void Bug(const char* what);

}  // namespace tillwright

#endif  // TILLWRIGHT_DIAGNOSTIC_H_
