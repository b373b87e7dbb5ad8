// Solving anew around what is made already.
#ifndef TILLWRIGHT_CHECK_REFIT_H_
#define TILLWRIGHT_CHECK_REFIT_H_

#include "check/real_opening.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// Boxes for the opening as measured: one cell a drawer.
[[nodiscard]] std::vector<MeasuredCell> MeasuredCells(const Spec& spec, const Bank& bank,
                                                      const RealOpening& real);

// The width of the box that a clear width asks for, by the drawer's own slide, joint and increment.
[[nodiscard]] Length BoxWidthIn(const Bank& bank, const Space& space, Length clear_width);

// Every front, box and opening measured is held; all else is solved anew around it.
[[nodiscard]] Refit RefitBank(const Spec& spec, const Bank& bank, const RealOpening& real,
                              const std::vector<MeasuredCell>& cells);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_REFIT_H_
