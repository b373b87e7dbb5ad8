// One layout drawn: the sheet or board, its parts by letter and size, its cuts by number, its
// offcuts hatched, which way its grain runs.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_

#include <cstddef>

#include "draw/view.h"
#include "tillwright/stock.h"

namespace tillwright {

// REQUIRES: group and layout are indices of the plan. `number` counts the views.
[[nodiscard]] View StockView(const StockPlan& plan, std::size_t group, std::size_t layout,
                             std::size_t number, const Scale& scale, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_
