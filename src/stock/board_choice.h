// Which of the sheets and boards a spec lists suit a part.
#ifndef TILLWRIGHT_STOCK_BOARD_CHOICE_H_
#define TILLWRIGHT_STOCK_BOARD_CHOICE_H_

#include <string_view>

#include "tillwright/spec.h"

namespace tillwright {

// What a part is of.
struct StockNeed {
  std::string_view material;
  Length thickness;  // finished
};

// How thick boards for the part are before planing: the thinnest listed that allow it, else what
// planing takes added, in the steps that boards are sold in.
[[nodiscard]] Length RoughThickness(const StockListSpec& stock, const StockNeed& need, Unit unit);

// Whether a part may be cut from the piece; `rough` is the thickness before planing, of a sheet its
// thickness.
[[nodiscard]] bool Suits(const StockPieceSpec& piece, std::string_view material, Length rough);

// The width of the widest board for the part, of those listed or as commonly sold.
[[nodiscard]] Length WidestBoard(const StockListSpec& stock, const StockNeed& need, Unit unit);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_BOARD_CHOICE_H_
