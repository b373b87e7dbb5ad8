#include "render/drawing_font.h"

#include <ft2build.h>
#include FT_FREETYPE_H
#include FT_OUTLINE_H

#include <algorithm>
#include <array>
#include <memory>
#include <unordered_map>
#include <utility>

#include "text/utf8.h"
#include "tillwright/render.h"

extern "C" {
extern const unsigned char tillwright_font_regular[];
extern const unsigned char tillwright_font_regular_end[];
extern const unsigned char tillwright_font_bold[];
extern const unsigned char tillwright_font_bold_end[];
}

namespace tillwright {
namespace {

// Writes an outline as SVG path data: whole font units, y down.
class PathWriter {
 public:
  explicit PathWriter(std::string& out) : out_(out) {}

  void MoveTo(const FT_Vector& to) {
    Close();
    Command('M', {to});
    open_ = true;
  }
  void LineTo(const FT_Vector& to) { Command('L', {to}); }
  void ConicTo(const FT_Vector& control, const FT_Vector& to) { Command('Q', {control, to}); }
  void CubicTo(const FT_Vector& a, const FT_Vector& b, const FT_Vector& to) {
    Command('C', {a, b, to});
  }
  void Close() {
    if (open_) out_ += 'z';
    open_ = false;
  }

 private:
  void Command(char letter, std::initializer_list<FT_Vector> points) {
    out_ += letter;
    bool first = true;
    for (const FT_Vector& point : points) {
      Number(point.x, !first);
      Number(-point.y, true);
      first = false;
    }
  }
  void Number(FT_Pos value, bool after_number) {
    if (after_number && value >= 0) out_ += ' ';
    out_ += std::to_string(value);
  }

  std::string& out_;
  bool open_ = false;
};

PathWriter& WriterOf(void* user) { return *static_cast<PathWriter*>(user); }

const FT_Outline_Funcs kPathFunctions{
    [](const FT_Vector* to, void* user) { return WriterOf(user).MoveTo(*to), 0; },
    [](const FT_Vector* to, void* user) { return WriterOf(user).LineTo(*to), 0; },
    [](const FT_Vector* control, const FT_Vector* to, void* user) {
      return WriterOf(user).ConicTo(*control, *to), 0;
    },
    [](const FT_Vector* a, const FT_Vector* b, const FT_Vector* to, void* user) {
      return WriterOf(user).CubicTo(*a, *b, *to), 0;
    },
    0,
    0};

class EmbeddedFont final : public DrawingFont {
 public:
  explicit EmbeddedFont(FT_Face face) : face_(face) {
    for (std::size_t c = 0; c < near_.size(); ++c) near_[c] = Load(static_cast<char32_t>(c));
    cap_height_ = near_[U'H'].top;
  }

  [[nodiscard]] const FontGlyph& Glyph(char32_t character) const override {
    if (character < near_.size()) return near_[character];
    const auto found = far_.find(character);
    if (found != far_.end()) return found->second;
    return far_.emplace(character, Load(character)).first->second;
  }

  [[nodiscard]] const std::string& Outline(std::uint32_t index) const override {
    const auto found = outlines_.find(index);
    if (found != outlines_.end()) return found->second;
    return outlines_.emplace(index, Trace(index)).first->second;
  }

  [[nodiscard]] int UnitsPerEm() const override { return face_->units_per_EM; }
  [[nodiscard]] int CapHeight() const override { return cap_height_; }
  [[nodiscard]] FT_Face Face() const override { return face_; }

 private:
  [[nodiscard]] bool LoadUnscaled(std::uint32_t index) const {
    return FT_Load_Glyph(face_, index, FT_LOAD_NO_SCALE | FT_LOAD_IGNORE_TRANSFORM) == 0;
  }

  [[nodiscard]] FontGlyph Load(char32_t character) const {
    FontGlyph glyph;
    glyph.index = FT_Get_Char_Index(face_, character);
    if (glyph.index == 0 || !LoadUnscaled(glyph.index)) return {};
    const FT_Glyph_Metrics& metrics = face_->glyph->metrics;
    glyph.advance = static_cast<int>(metrics.horiAdvance);
    if (metrics.height > 0) {
      glyph.top = std::max(0, static_cast<int>(metrics.horiBearingY));
      glyph.bottom = std::max(0, static_cast<int>(metrics.height - metrics.horiBearingY));
    }
    return glyph;
  }

  [[nodiscard]] std::string Trace(std::uint32_t index) const {
    std::string path;
    if (!LoadUnscaled(index)) return path;
    PathWriter writer(path);
    static_cast<void>(FT_Outline_Decompose(&face_->glyph->outline, &kPathFunctions, &writer));
    writer.Close();
    return path;
  }

  FT_Face face_;
  int cap_height_ = 0;
  std::array<FontGlyph, 0x100> near_{};  // Latin-1, where nearly all text is
  mutable std::unordered_map<char32_t, FontGlyph> far_;
  mutable std::unordered_map<std::uint32_t, std::string> outlines_;
};

// Stands in when the font cannot be loaded: nothing has a glyph.
class NoFont final : public DrawingFont {
 public:
  [[nodiscard]] const FontGlyph& Glyph(char32_t) const override { return glyph_; }
  [[nodiscard]] const std::string& Outline(std::uint32_t) const override { return outline_; }
  [[nodiscard]] int UnitsPerEm() const override { return 1; }
  [[nodiscard]] int CapHeight() const override { return 1; }
  [[nodiscard]] FT_Face Face() const override { return nullptr; }

 private:
  FontGlyph glyph_;
  std::string outline_;
};

struct Fonts {
  std::unique_ptr<const DrawingFont> regular;
  std::unique_ptr<const DrawingFont> bold;
  std::string fault;
};

std::unique_ptr<const DrawingFont> LoadFont(FT_Library library, const unsigned char* begin,
                                            const unsigned char* end) {
  FT_Face face = nullptr;
  if (FT_New_Memory_Face(library, begin, end - begin, 0, &face) != 0) return nullptr;
  return std::make_unique<EmbeddedFont>(face);
}

Fonts LoadFonts() {
  Fonts fonts;
  FT_Library library = nullptr;
  if (FT_Init_FreeType(&library) == 0) {
    fonts.regular = LoadFont(library, tillwright_font_regular, tillwright_font_regular_end);
    fonts.bold = LoadFont(library, tillwright_font_bold, tillwright_font_bold_end);
  }
  if (fonts.regular && fonts.bold) return fonts;
  return {std::make_unique<NoFont>(), std::make_unique<NoFont>(),
          "the built-in font cannot be loaded"};
}

// Never destroyed: Cairo keeps faces in caches of its own until the very end of the program.
const Fonts& AllFonts() {
  static const Fonts& fonts = *new Fonts(LoadFonts());
  return fonts;
}

class DrawingTextMetrics final : public TextMetrics {
 public:
  [[nodiscard]] TextExtent Measure(std::string_view utf8, TextWeight weight,
                                   double cap_height) const override {
    const DrawingFont& font = DrawingFont::Of(weight);
    int advance = 0;
    int top = 0;
    int bottom = 0;
    for (std::size_t at = 0; at < utf8.size();) {
      const FontGlyph& glyph = font.Glyph(NextCharacter(utf8, at));
      advance += glyph.advance;
      top = std::max(top, glyph.top);
      bottom = std::max(bottom, glyph.bottom);
    }
    const double unit = cap_height / font.CapHeight();
    return {advance * unit * kFontStretch, top * unit, bottom * unit};
  }

  [[nodiscard]] bool HasGlyph(char32_t character, TextWeight weight) const override {
    return character != kBadByte && DrawingFont::Of(weight).Glyph(character).index != 0;
  }
};

}  // namespace

const DrawingFont& DrawingFont::Of(TextWeight weight) {
  const Fonts& fonts = AllFonts();
  return weight == TextWeight::kBold ? *fonts.bold : *fonts.regular;
}

const std::string& DrawingFont::Fault() { return AllFonts().fault; }

const TextMetrics& DrawingFontMetrics() {
  static const DrawingTextMetrics metrics;
  return metrics;
}

}  // namespace tillwright
