// Drawing a solved bank: views, and the sheets they stand on, ready for the renderers.
//
// Every view is drawn at the largest scale of the standard series that its sheet has room for,
// unless a scale is asked for. Sizes that find no room on a view stand in a table beside it: no
// front and no gap goes without its dimension. Every number that is a solved dimension carries its
// path (Label::path).
#ifndef TILLWRIGHT_DRAW_H_
#define TILLWRIGHT_DRAW_H_

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/gap_check.h"
#include "tillwright/paper.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"
#include "tillwright/words.h"

namespace tillwright {

// What a drawing of a bank is made of, in the order in which it is laid on sheets.
enum class ViewKind : std::uint8_t {
  kFront,     // elevation
  kSide,      // section from front to back, beside the elevation
  kPlan,      // section through one drawer, from above
  kSizes,     // a table: every box, and what the elevation has no room for
  kDetails,   // places that the scale of the others hides
  kOverview,  // the piece as it will look, and one drawer taken apart
  kParts,     // each kind of part with its cuts
};
template <>
std::span<const std::string_view> Words<ViewKind>();
template <>
std::span<const std::string_view> Words<Paper>();

struct DrawOptions {
  std::vector<ViewKind> views;  // empty: all; kFront brings kSizes unless key sizes will do
  std::optional<Paper> paper;   // UsualPaper() unless given
  std::string scale;          // of elevation, section and plan: "1:8"; empty: the largest that fits
  std::string date;           // for the title block, as given; empty: none
  bool all_sizes = true;      // false: key sizes only
  bool hidden_boxes = false;  // dashed boxes behind the fronts
};

// True for "1:8" and "2:1": whole numbers from 1 to 10000 on both sides.
[[nodiscard]] bool IsScale(std::string_view text);

struct Drawings {
  std::vector<Sheet> views;          // each alone on paper of its own size
  std::vector<std::size_t> on_page;  // those of them that a page which leads through a job shows
  std::vector<Sheet> sheets;         // all of them composed, with borders and title blocks
  std::string fault;                 // why there are none; empty when all is well
};

// REQUIRES: a scale that IsScale() takes, or none. A scale at which a view does not fit the paper
// is a fault.
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
