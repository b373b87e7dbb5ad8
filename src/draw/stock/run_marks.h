// Fronts that are cut from one piece, marked on a layout: the piece and the order of its fronts.
#ifndef TILLWRIGHT_DRAW_STOCK_RUN_MARKS_H_
#define TILLWRIGHT_DRAW_STOCK_RUN_MARKS_H_

#include <optional>
#include <span>

#include "tillwright/sheet.h"

namespace tillwright {

// Outlines the piece and draws an arrow from the middle of its first front to that of its last,
// beside what is taken, where the piece has room for it. Returns the arrow's box, which labels must
// keep clear of.
std::optional<PaperBox> AddRunMarks(SheetGroup& out, const PaperBox& piece, const PaperBox& first,
                                    const PaperBox& last, std::span<const PaperBox> taken);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_RUN_MARKS_H_
