// Panels: what of a layout one picture shows.
//
// A layout is a tree of cuts. Where its parts are too small for their labels at the largest scale
// the paper has room for, a piece of it is drawn closed, as a box with a name, and opened in a
// panel of its own at a larger scale; or a long one is shown in stretches.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_PANEL_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_PANEL_H_

#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <utility>
#include <vector>

#include "tillwright/nest.h"

namespace tillwright {

struct StockPanel {
  std::int32_t piece = 0;  // in NestLayout::pieces
  std::size_t first = 0;   // of what it is cut into, what is shown
  std::size_t last = std::numeric_limits<std::size_t>::max();  // this one too
  std::vector<std::int32_t> closed{};                          // drawn by themselves

  // The whole piece, not a stretch of it.
  [[nodiscard]] bool IsWhole(const NestLayout& layout) const;
};

struct NumberedCut {
  std::size_t number = 1;  // in the order of all cuts of the layout
  NestCut cut;
};

struct PanelContent {
  Rect rect;                         // what is shown of the layout
  std::vector<std::int32_t> leaves;  // parts and offcuts
  std::vector<std::int32_t> closed;
  std::vector<NumberedCut> cuts;
};

[[nodiscard]] PanelContent ContentOf(const NestLayout& layout, Length kerf,
                                     const StockPanel& panel);

// How many cuts deep a piece lies.
[[nodiscard]] int DepthOf(const NestLayout& layout, std::int32_t piece);

// "12–15, 20": the cuts that a piece is cut up with.
[[nodiscard]] std::string CutsWithin(const NestLayout& layout, std::int32_t piece);

// True when the piece is made of more than one stretch and can be shown in two.
[[nodiscard]] bool CanHalve(const NestLayout& layout, const StockPanel& panel);
// Two panels that show the same in stretches about equally long. REQUIRES: CanHalve.
[[nodiscard]] std::pair<StockPanel, StockPanel> Halves(const NestLayout& layout,
                                                       const StockPanel& panel);

// The panel with these pieces closed, of which the outermost count.
[[nodiscard]] StockPanel WithClosed(const NestLayout& layout, const StockPanel& panel,
                                    const std::vector<std::int32_t>& pieces);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_PANEL_H_
