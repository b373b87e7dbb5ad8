// Drawing a solved bank: views on Sheets, ready for the renderers.
#ifndef TILLWRIGHT_DRAW_H_
#define TILLWRIGHT_DRAW_H_

#include "tillwright/bank.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// The front elevation: fronts, case edges, gaps, chains of heights and widths with every gap, and
// overall sizes, at the largest scale of the series that fits Letter (inches) or A4 (millimetres).
[[nodiscard]] Sheet DrawFront(const Bank& bank, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_H_
