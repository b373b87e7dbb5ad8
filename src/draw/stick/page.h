// Pages of sticks: bars that prove the scale, and what to do by them.
#ifndef TILLWRIGHT_DRAW_STICK_PAGE_H_
#define TILLWRIGHT_DRAW_STICK_PAGE_H_

#include <string>
#include <vector>

#include "draw/stick/strip.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

struct StickPage {
  double width = 0;  // mm
  double height = 0;
  double margin = 10;
  Correction correction;
  std::string title;  // of the piece
  Length longest;     // the longest distance on any stick, for the error budget
  StripStyle style;
  std::vector<std::string> words;  // lines at its foot: see SetWords()
};

// What to do by the bars, in lines as long as the page is wide. To be called again when width,
// margin or `longest` change.
void SetWords(StickPage& page, const TextMetrics& metrics);

// The same in few words, for the pages after the one that says it all.
void SetFewWords(StickPage& page, const TextMetrics& metrics);

// Where pieces may stand: above bars and words.
[[nodiscard]] PaperBox PieceSpace(const StickPage& page);

// The sheet with bars and words; `number` counts from 1.
[[nodiscard]] Sheet MakePage(const StickPage& page, int number, int of, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_PAGE_H_
