// Reads the lines that a PDF file draws, from its own drawing commands as qpdf unpacks them:
// nothing of ours takes part.
#ifndef TILLWRIGHT_TESTS_DRAW_STICK_READING_H_
#define TILLWRIGHT_TESTS_DRAW_STICK_READING_H_

#include <string>
#include <vector>

#include "tillwright/sheet.h"

namespace tillwright::testing {

struct DrawnPage {
  double width = 0;  // mm
  double height = 0;
  std::vector<PaperSegment> lines;  // stroked, mm from the upper left corner
};

// The document as qpdf --qdf writes it.
std::string Unpacked(const std::string& pdf);
// All pages of an unpacked document.
std::vector<DrawnPage> ReadPages(const std::string& unpacked);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_STICK_READING_H_
