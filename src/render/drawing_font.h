// The drawing font: DejaVu Sans regular and bold from the bytes built into the program.
//
// Loaded through FreeType on first use, without fontconfig, and kept until the program ends. All
// sizes come from the unscaled font (2048 units to the em, no hinting, no kerning), so that SVG,
// PDF and PNG place every character alike. Not for use from several threads at once.
#ifndef TILLWRIGHT_RENDER_DRAWING_FONT_H_
#define TILLWRIGHT_RENDER_DRAWING_FONT_H_

#include <cstdint>
#include <string>

#include "tillwright/text_metrics.h"

typedef struct FT_FaceRec_* FT_Face;

namespace tillwright {

// All text is set at 90 % of the font's width, as its condensed cut is, to save room.
inline constexpr double kFontStretch = 0.9;

struct FontGlyph {
  std::uint32_t index = 0;  // 0: the font has no such glyph
  int advance = 0;          // font units, before the stretch
  int top = 0;              // ink above the baseline, font units, >= 0
  int bottom = 0;           // ink below the baseline, font units, >= 0
};

class DrawingFont {
 public:
  virtual ~DrawingFont() = default;

  // The face of a weight; loads both on the first call. Check Fault() first.
  [[nodiscard]] static const DrawingFont& Of(TextWeight weight);
  // Why the font cannot be used; empty when it can.
  [[nodiscard]] static const std::string& Fault();

  [[nodiscard]] virtual const FontGlyph& Glyph(char32_t character) const = 0;
  // The outline in font units, y down, as SVG path data; empty for blanks.
  [[nodiscard]] virtual const std::string& Outline(std::uint32_t index) const = 0;
  // Font units of the em and of the height of capitals.
  [[nodiscard]] virtual int UnitsPerEm() const = 0;
  [[nodiscard]] virtual int CapHeight() const = 0;
  [[nodiscard]] virtual FT_Face Face() const = 0;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_DRAWING_FONT_H_
