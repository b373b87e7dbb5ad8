// A panel of a layout drawn: the sheet, board or piece, its parts by letter and size, its cuts by
// number, its offcuts hatched, which way its grain runs.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_

#include <cstdint>
#include <string>
#include <vector>

#include "draw/stock/stock_names.h"
#include "draw/stock/stock_panel.h"
#include "draw/view.h"
#include "tillwright/stock.h"

namespace tillwright {

// REQUIRES: all outlive the call, and the closed pieces of the panel are named.
struct StockPicture {
  const StockPlan& plan;
  const StockGroup& group;
  const NestLayout& layout;
  const StockNames& names;
  StockPanel panel;
  std::string name;  // of the view
  std::string title;
  double key_width = 0;  // mm the key may take below; 0: it stands elsewhere
};

struct StockPictureDrawn {
  View view;
  // Pieces in which a cut, or something cut from them, found no room for its label.
  std::vector<std::int32_t> crowded;
};

[[nodiscard]] StockPictureDrawn DrawStockPicture(const StockPicture& picture, const Scale& scale,
                                                 const TextMetrics& metrics);

// The rows of the key to what a panel shows.
[[nodiscard]] std::vector<std::string> KeyRowsOf(const StockPicture& picture);

// The key alone, in columns, `width` mm wide at most.
[[nodiscard]] View StockKey(std::string name, std::string title,
                            const std::vector<std::string>& rows, double width,
                            const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_
