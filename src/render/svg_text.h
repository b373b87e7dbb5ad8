// Pieces of SVG as text: escaped characters, numbers, names, path data.
#ifndef TILLWRIGHT_RENDER_SVG_TEXT_H_
#define TILLWRIGHT_RENDER_SVG_TEXT_H_

#include <string>
#include <string_view>

#include "tillwright/sheet.h"

namespace tillwright {

// Text for content and attributes; what XML cannot hold becomes U+FFFD.
void AppendEscaped(std::string& out, std::string_view text);

// <name>text</name>
void AppendElement(std::string& out, std::string_view name, std::string_view text);

// Nine decimals, for scale factors that multiply font units.
void AppendFine(std::string& out, double value);

// Letters, digits and '-' of a name; other characters become '-'.
[[nodiscard]] std::string NameToken(std::string_view text);

// The commands of a path, level and upright lines in short.
class SvgPathData {
 public:
  explicit SvgPathData(std::string& out) : out_(out) {}

  void MoveTo(PaperPoint p);
  void LineTo(PaperPoint p);
  void Append(PaperPoint p);  // "x y"
  // The same once written.
  [[nodiscard]] static bool IsSame(PaperPoint a, PaperPoint b);

 private:
  std::string& out_;
  PaperPoint at_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_SVG_TEXT_H_
