// Drawing a solved bank: views, and the sheets they stand on, ready for the renderers.
//
// Every view is drawn at the largest scale of the standard series that its sheet has room for,
// unless a scale is asked for. Sizes that find no room on a view stand in a table beside it: no
// front and no gap goes without its dimension. Every number that is a solved dimension carries its
// path (Label::path).
#ifndef TILLWRIGHT_DRAW_H_
#define TILLWRIGHT_DRAW_H_

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/gap_check.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// What can be asked for: "front", "side", "plan", "details", "parts", "overview".
[[nodiscard]] std::span<const std::string_view> ViewNames();
// "A4", "A3", "Letter", "Tabloid".
[[nodiscard]] std::span<const std::string_view> PaperNames();

struct DrawOptions {
  std::vector<std::string> views;  // of ViewNames(); empty: all
  std::string paper;               // of PaperNames(); empty: Letter for inches, A4 for millimeters
  std::string scale;          // of elevation, section and plan: "1:8"; empty: the largest that fits
  std::string date;           // for the title block, as given; empty: none
  bool all_sizes = true;      // false: key sizes only
  bool hidden_boxes = false;  // dashed boxes behind the fronts
};

// True for "1:8" and "2:1": whole numbers from 1 to 10000 on both sides.
[[nodiscard]] bool IsScale(std::string_view text);

struct Drawings {
  std::vector<Sheet> views;   // each alone on paper of its own size
  std::vector<Sheet> sheets;  // all of them composed, with borders and title blocks
  std::string fault;          // why there are none; empty when all is well
};

// REQUIRES: the options hold names of the lists above and a scale that IsScale() takes. A scale at
// which a view does not fit the paper is a fault.
[[nodiscard]] Drawings DrawBank(const Bank& bank, const DrawOptions& options,
                                const TextMetrics& metrics);

// The fitting sheet of a gap check: the elevation with every gap numbered and the order of hanging,
// a table of the gaps with range, spacers and blanks for what is measured, and small pictures of
// the bank with its gaps exaggerated. One page, on Letter for inches and A4 for millimeters; a bank
// whose table is longer goes on in further pages.
[[nodiscard]] std::vector<Sheet> DrawFittingSheet(const Spec& spec, const Bank& bank,
                                                  const GapCheck& check,
                                                  const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_H_
