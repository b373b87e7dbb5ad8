// Any text as a length, in either unit: no crash, faults inside the text, and what is accepted comes
// back from both ways of showing it.
#include <cstdint>
#include <cstdlib>
#include <string>

#include "tillwright/length_text.h"
#include "tillwright/rational.h"

namespace {

using tillwright::Length;
using tillwright::Unit;

void Demand(bool holds) {
  if (!holds) std::abort();
}

void Try(std::string_view text, Unit unit) {
  const tillwright::ParsedLength parsed = tillwright::ParseLength(text, unit);
  if (!parsed.value) {
    Demand(parsed.fault.offset <= text.size());
    Demand(parsed.fault.offset + parsed.fault.length <= text.size() + 1);
    Demand(!parsed.fault.message.empty());
    return;
  }
  const Length value = *parsed.value;
  Demand(value <= tillwright::kMaxTyped && -value <= tillwright::kMaxTyped);
  Demand(tillwright::ParseLength(tillwright::FormatWithUnit(value, Unit::kMillimeter), unit).value ==
         value);
  if (tillwright::ToInchParts(value).exact) {
    Demand(tillwright::ParseLength(tillwright::FormatWithUnit(value, Unit::kInch), unit).value ==
           value);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(data, data + size);
  Try(text, Unit::kInch);
  Try(text, Unit::kMillimeter);
  if (const auto ratio = tillwright::ParseRational(text)) {
    Demand(ratio->denominator > 0 && ratio->numerator >= 0);
    Demand(tillwright::ParseRational(tillwright::FormatRational(*ratio)) == ratio);
  }
  return 0;
}
