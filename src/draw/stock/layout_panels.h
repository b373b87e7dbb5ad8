// All pictures of one layout: as few panels as it takes for every label to be read, each at the
// largest scale there is room for.
#ifndef TILLWRIGHT_DRAW_STOCK_LAYOUT_PANELS_H_
#define TILLWRIGHT_DRAW_STOCK_LAYOUT_PANELS_H_

#include <string>
#include <vector>

#include "sheet/view.h"
#include "tillwright/stock.h"

namespace tillwright {

struct StockLayoutTitle {
  std::string which;     // "SHEET 2 OF 3"
  std::string material;  // "3/4 in birch plywood"
};

struct LayoutViews {
  std::vector<View> views;
  std::string fault;
};

// `first_number` counts on from the views before. `space` is what a view may cover.
[[nodiscard]] LayoutViews DrawLayout(const StockPlan& plan, const StockGroup& group,
                                     const NestLayout& layout, const StockLayoutTitle& title,
                                     std::size_t first_number, const PaperBox& space,
                                     const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_LAYOUT_PANELS_H_
