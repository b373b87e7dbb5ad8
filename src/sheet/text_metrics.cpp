#include "tillwright/text_metrics.h"

#include "text/utf8.h"

namespace tillwright {

TextExtent FixedTextMetrics::Measure(std::string_view utf8, TextWeight weight,
                                     double cap_height) const {
  constexpr std::u32string_view kDescending = U"gjpqy,;()[]";
  const double advance = (weight == TextWeight::kBold ? 0.95 : 0.85) * cap_height;
  TextExtent extent;
  for (std::size_t at = 0; at < utf8.size();) {
    const char32_t c = NextCharacter(utf8, at);
    extent.advance += advance;
    if (c != U' ') extent.ascent = cap_height;
    if (kDescending.find(c) != std::u32string_view::npos) extent.descent = 0.3 * cap_height;
  }
  return extent;
}

bool FixedTextMetrics::HasGlyph(char32_t character, TextWeight) const {
  return character >= 0x20 && character <= 0x24ff;
}

}  // namespace tillwright
