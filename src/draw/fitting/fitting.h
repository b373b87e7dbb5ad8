// The fitting sheet: what hangs on the wall while fronts are hung.
#ifndef TILLWRIGHT_DRAW_FITTING_FITTING_H_
#define TILLWRIGHT_DRAW_FITTING_FITTING_H_

#include <vector>

#include "sheet/view.h"
#include "tillwright/bank.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// The elevation with a number at every gap and overlap (those of the table; number n is
// GapCheck::stacks[n - 1]) and the order of hanging on the fronts. Numbers that find no room are
// left out: the table names their fronts.
[[nodiscard]] View FittingElevation(const Bank& bank, const GapCheck& check, const Scale& scale,
                                    const TextMetrics& metrics);

// A row a gap: number, between what, planned, range, spacers, and a blank for what it measures.
// Columns of at most `height` mm, each a view; then a view of what else is to be measured.
[[nodiscard]] std::vector<View> FittingTable(const Spec& spec, const Bank& bank,
                                             const GapCheck& check, double height,
                                             const TextMetrics& metrics);

// How the small pictures stand: each at most so large, so many beside one another.
struct EvennessLayout {
  double width = 46;   // mm
  double height = 56;  // mm
  int across = 4;
};

// Small pictures of the bank, gaps exaggerated: true, dry, humid, worst. Gaps outside their limits
// are black.
[[nodiscard]] View EvennessView(const Bank& bank, const GapCheck& check,
                                const EvennessLayout& layout, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_FITTING_FITTING_H_
