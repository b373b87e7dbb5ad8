// Drawing the layouts of a stock plan: every sheet and board with its parts, cuts and offcuts.
#ifndef TILLWRIGHT_STOCK_DRAW_H_
#define TILLWRIGHT_STOCK_DRAW_H_

#include "tillwright/draw.h"
#include "tillwright/stock.h"

namespace tillwright {

// A layout a view, with the letters of its parts explained below it, several views to a sheet where
// there is room. Of the options, paper and date count.
[[nodiscard]] Drawings DrawStock(const StockPlan& plan, const DrawOptions& options,
                                 const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_DRAW_H_
