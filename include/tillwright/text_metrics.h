// TextMetrics: all that layout needs to know of a font.
//
// Sizes are given as the height of capitals in paper millimeters, as ISO 3098 states lettering, not
// as a font size. There is no kerning and no shaping: a text is as wide as the sum of its
// characters' advances, so it can be measured, cut and drawn character by character.
//
// FixedTextMetrics needs no font and serves tests; DrawingFontMetrics() (render.h) measures the
// font that the renderers draw with.
#ifndef TILLWRIGHT_TEXT_METRICS_H_
#define TILLWRIGHT_TEXT_METRICS_H_

#include <string_view>

#include "tillwright/sheet.h"

namespace tillwright {

struct TextExtent {
  double advance = 0;  // mm, how far the pen moves
  double ascent = 0;   // mm, top of the ink above the baseline, >= 0
  double descent = 0;  // mm, bottom of the ink below the baseline, >= 0
};

class TextMetrics {
 public:
  TextMetrics() = default;
  TextMetrics(const TextMetrics&) = delete;
  TextMetrics& operator=(const TextMetrics&) = delete;
  virtual ~TextMetrics() = default;

  // `utf8` must be valid UTF-8; a character without a glyph counts as nothing.
  [[nodiscard]] virtual TextExtent Measure(std::string_view utf8, TextWeight weight,
                                           double cap_height) const = 0;
  [[nodiscard]] virtual bool HasGlyph(char32_t character, TextWeight weight) const = 0;
};

// Every character is 0.85 of the cap height wide (bold 0.95), reaches up to the cap height and, if
// it is one of "gjpqy,;()[]", 0.3 below the baseline. Has a glyph for U+0020 to U+24FF.
class FixedTextMetrics final : public TextMetrics {
 public:
  [[nodiscard]] TextExtent Measure(std::string_view utf8, TextWeight weight,
                                   double cap_height) const override;
  [[nodiscard]] bool HasGlyph(char32_t character, TextWeight weight) const override;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_TEXT_METRICS_H_
