#include "stock/board_choice.h"

#include "spec/defaults.h"

namespace tillwright {
namespace {

bool OfMaterial(const StockPieceSpec& piece, std::string_view material) {
  return piece.material.value.empty() || piece.material.value == material;
}

}  // namespace

Length RoughThickness(const StockListSpec& stock, const StockNeed& need, Unit unit) {
  Length best;
  for (const StockPieceSpec& piece : stock.boards) {
    if (!OfMaterial(piece, need.material) || !piece.thickness.typed) continue;
    if (piece.thickness.value < need.thickness) continue;
    if (best.IsZero() || piece.thickness.value < best) best = piece.thickness.value;
  }
  if (!best.IsZero()) return best;
  return CeilTo(need.thickness + defaults::kPlaning.In(unit), defaults::kBoardStep.In(unit));
}

bool Suits(const StockPieceSpec& piece, std::string_view material, Length rough) {
  return OfMaterial(piece, material) && (!piece.thickness.typed || piece.thickness.value == rough);
}

Length WidestBoard(const StockListSpec& stock, const StockNeed& need, Unit unit) {
  const Length rough = RoughThickness(stock, need, unit);
  Length widest;
  for (const StockPieceSpec& piece : stock.boards) {
    if (Suits(piece, need.material, rough)) widest = Max(widest, piece.width.value);
  }
  return widest.IsZero() ? defaults::kBoardWidth.In(unit) : widest;
}

}  // namespace tillwright
