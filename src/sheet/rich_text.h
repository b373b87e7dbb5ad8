// Rich text: labels made of plain text, stacked fractions and diameter signs.
//
// Inch fractions are drawn as stacked fractions, never with the precomposed signs of a font, which
// are too small at 2.5 mm and stop at eighths. Proportions, in cap heights h: numerals 0.70 h high,
// each 0.16 h from the middle of the bar, bar 0.085 h thick, 0.22 h before a fraction that follows
// a whole number, 1.72 h from top to bottom, centered on half the cap height. The diameter sign is a
// circle with a stroke, since the font's own is too small.
//
// Characters that cannot be drawn. A run of characters for which the font has no glyph is drawn as
// one "‹?›"; so are scripts that run from right to left or need joining or reordering of their
// letters (Hebrew, Arabic, the scripts of India, Tibetan, Khmer and their kin), since letters set
// one by one would read wrongly. Bytes that are not UTF-8 likewise. Control characters become
// spaces; marks of direction and of zero width vanish. Label::plain keeps the name as given, so
// that search and copy still find it. Nothing is ever drawn as an empty box.
#ifndef TILLWRIGHT_SHEET_RICH_TEXT_H_
#define TILLWRIGHT_SHEET_RICH_TEXT_H_

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// Where a label's `at` lies vertically: on its baseline, or half a cap height above it.
enum class TextLevel : std::uint8_t { kBaseline, kMiddle };

struct LabelStyle {
  double cap_height = 2.5;  // mm
  TextWeight weight = TextWeight::kRegular;
  TextAnchor anchor = TextAnchor::kLeft;
  TextLevel level = TextLevel::kMiddle;
  TextTurn turn = TextTurn::kLevel;
  double max_width = 0;  // mm; longer text is cut and ends in "…"; 0: any width
};

// Reads fractions and diameters out of a text. "15 15/32", "3/4", "-1/8", "≈ 5 1/64 in" and
// "ø 3/16" hold stacked fractions; 1 to 3 digits on both sides of a '/' that touches no letter,
// digit, '/' or '.' make one, and a space between whole number and fraction is taken in.
// Precomposed signs such as "½" become fractions too. "ø", "Ø" and "⌀" before a digit or fraction
// (a space may stand between) are diameter signs. Dates and ratios ("1:8", "3/14/2026") and
// everything else stay as they are.
[[nodiscard]] RichText ParseRichText(std::string_view text);

// The text as one line of characters: "15 15/32", "⌀ 3/16".
[[nodiscard]] std::string PlainText(const RichText& text);

// A label with its measured box. `path` names the dimension it shows; empty for other text.
[[nodiscard]] Label MakeLabel(const TextMetrics& metrics, std::string_view text,
                              const LabelStyle& style, PaperPoint at, std::string path);

// As MakeLabel, but "/" never becomes a fraction: for names, dates and the maker's own words.
[[nodiscard]] Label MakePlainLabel(const TextMetrics& metrics, std::string_view text,
                                   const LabelStyle& style, PaperPoint at);

// Size of a text as MakeLabel would draw it: width, and height from top to bottom of the ink.
struct TextSize {
  double width = 0;
  double height = 0;
};
[[nodiscard]] TextSize MeasureLabel(const TextMetrics& metrics, std::string_view text,
                                    const LabelStyle& style);

// Breaks words into lines no wider than `width` (a longer word stands alone and may be wider).
[[nodiscard]] std::vector<std::string> WrapText(const TextMetrics& metrics, std::string_view text,
                                                const LabelStyle& style, double width);

// True if some character of the label was replaced by "‹?›".
[[nodiscard]] bool HasReplacedCharacters(const Label& label);

// ---- for renderers -----------------------------------------------------------------------------

// A piece of a label in its own axes: x along the text from its start, y up from the baseline, mm.
struct PlacedText {
  std::string_view text;  // lives as long as the RichText
  double x = 0;
  double y = 0;
  double cap_height = 0;
};
struct PlacedBar {  // of a fraction: a filled rectangle
  double left = 0;
  double right = 0;
  double bottom = 0;
  double top = 0;
};
struct PlacedDiameter {  // a circle and a stroke through its center
  double x = 0;          // center
  double y = 0;
  double radius = 0;
  double reach_x = 0;  // half the stroke
  double reach_y = 0;
  double width = 0;  // of the lines
};
// Pieces of run i of the text: the parts whose `run` is i.
struct PlacedRun {
  TextRun::Kind kind = TextRun::Kind::kPlain;
  PlacedText text;         // plain text or numerator
  PlacedText denominator;  // of a fraction
  PlacedBar bar;
  PlacedDiameter diameter;
};
struct TextLayout {
  std::vector<PlacedRun> runs;
  double width = 0;
  double ascent = 0;
  double descent = 0;
};
[[nodiscard]] TextLayout LayoutText(const TextMetrics& metrics, const RichText& text,
                                    TextWeight weight, double cap_height);

// The start of the baseline on paper, from the anchor.
[[nodiscard]] PaperPoint BaselineStart(const Label& label);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_RICH_TEXT_H_
