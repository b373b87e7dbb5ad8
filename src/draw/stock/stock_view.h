// A panel of a layout drawn: the sheet, board or piece, its parts by letter and size, its cuts by
// number, its offcuts hatched, which way its grain runs.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "draw/stock/stock_names.h"
#include "draw/stock/stock_panel.h"
#include "sheet/view.h"
#include "tillwright/stock.h"

namespace tillwright {

// Where numbers and letters may stand beyond the edges of a panel: each takes room from its scale.
enum class EdgeRows : std::uint8_t { kAll, kNotBelow, kBeside };
inline constexpr std::array kEdgeRows{EdgeRows::kAll, EdgeRows::kNotBelow, EdgeRows::kBeside};

// REQUIRES: all outlive the call, and the closed pieces of the panel are named.
struct StockPicture {
  const StockPlan& plan;
  const StockGroup& group;
  const NestLayout& layout;
  const StockNames& names;
  StockPanel panel;
  std::string name;  // of the view
  std::string title;
  EdgeRows rows = EdgeRows::kAll;
  double key_width = 0;  // mm the key may take below; 0: it stands elsewhere
};

struct StockPictureDrawn {
  View view;
  // Pieces in which a cut, or something cut from them, found no room for its label.
  std::vector<std::int32_t> crowded;
  // Rows of the key that say what no label in the picture does.
  std::vector<std::string> wanted_key;
};

[[nodiscard]] StockPictureDrawn DrawStockPicture(const StockPicture& picture, const Scale& scale,
                                                 const TextMetrics& metrics);

// The key alone, in columns, `width` mm wide at most.
[[nodiscard]] View StockKey(std::string name, std::string title,
                            const std::vector<std::string>& rows, double width,
                            const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_VIEW_H_
