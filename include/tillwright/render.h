// Render: Sheets to the bytes of SVG, PDF and PNG files.
//
// True scale: a millimeter of a Sheet is a millimeter of paper. Same Sheets, same bytes, however
// often and in whatever order: no clock, locale, environment or font of the machine is read. All
// text is drawn with the font built into the program (DejaVu Sans, regular and bold, at 90 % of its
// width).
//
// Nothing throws but std::bad_alloc. What cannot be drawn (coordinates that are not finite, a sheet
// larger than a format allows, a library that fails) is said in Rendered::fault and gives no bytes.
//
// Cairo, FreeType and the font are first touched when one of these functions is first called.
// Call them from one thread at a time.
#ifndef TILLWRIGHT_RENDER_H_
#define TILLWRIGHT_RENDER_H_

#include <span>
#include <string>
#include <string_view>

#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

struct Rendered {
  std::string bytes{};  // the file; empty when there is a fault
  std::string fault{};  // one sentence, no full stop; empty when all is well

  [[nodiscard]] bool ok() const { return fault.empty(); }
};

// Measures the built-in font.
[[nodiscard]] const TextMetrics& DrawingFontMetrics();

// One sheet as SVG 1.1 that validates against its DTD. Page and viewBox are a whole number of CSS
// pixels, rounded down (at most 0.26 mm of empty margin is lost at the right and bottom), because
// browsers snap to them and would otherwise print off scale; @page inside the file names the true
// paper. Text is drawn as outlines with one transparent text element over each label, for search,
// copy and screen readers. On screens that ask for dark colors the drawing turns light on dark.
//
// In a page (kInPage) there is no prolog, no paper and no fixed size: the element goes into an HTML
// body as it is and takes the width that the page's style gives it. Sheets of one page need names
// of their own, since ids begin with them. The page's own style sheet must then hold
// SvgPageStyle(), which turns colors over on dark screens.
enum class SvgUse { kFile, kInPage };
[[nodiscard]] std::string_view SvgPageStyle();
[[nodiscard]] Rendered RenderSvg(const Sheet& sheet, SvgUse use = SvgUse::kFile);

struct PdfInfo {
  std::string title{};
  std::string subject{};
  std::string keywords{};
  std::string creator = "Tillwright";
  // ISO 8601, such as "2026-03-14T09:00:00Z". The same every time unless given, so that the same
  // job gives the same bytes.
  std::string created = "2000-01-01T00:00:00Z";
};

// All sheets in one file, a page and a bookmark each, pages of different sizes allowed (up to
// 5080 mm, 200 in, a side). Text is text. The file asks viewers to print at actual size, one-sided.
[[nodiscard]] Rendered RenderPdf(std::span<const Sheet> sheets, const PdfInfo& info);

// One sheet as an 8-bit gray PNG that knows its resolution. dpi in [10, 2400]; at most 32767 pixels
// a side and 400 million in all.
[[nodiscard]] Rendered RenderPng(const Sheet& sheet, double dpi);

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_H_
