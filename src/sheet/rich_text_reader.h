// Reading of typed text into runs, as far as it does not depend on a font.
#ifndef TILLWRIGHT_SHEET_RICH_TEXT_READER_H_
#define TILLWRIGHT_SHEET_RICH_TEXT_READER_H_

#include <algorithm>
#include <array>
#include <string_view>

#include "sheet/rich_text.h"

namespace tillwright {

// Characters from one to another, both counted.
struct CharacterRange {
  char32_t first;
  char32_t last;
};
template <std::size_t N>
[[nodiscard]] bool IsIn(char32_t c, const std::array<CharacterRange, N>& ranges) {
  return std::any_of(ranges.begin(), ranges.end(),
                     [c](const CharacterRange& r) { return c >= r.first && c <= r.last; });
}

// The text as it stands, cleaned, without fractions or signs.
[[nodiscard]] RichText OnePlainRun(std::string_view text);

// Whether a fraction that follows belongs to a whole number.
[[nodiscard]] bool EndsInDigit(const TextRun& run);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_RICH_TEXT_READER_H_
