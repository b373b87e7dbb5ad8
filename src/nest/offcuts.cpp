#include "nest/offcuts.h"

#include <cstddef>

namespace tillwright::nest {
namespace {

void Widen(NestLayout& layout, const NestPiece& whole) {
  const bool columns = whole.kind == NestPieceKind::kColumns;
  for (const std::int32_t index : whole.pieces) {
    NestPiece& piece = layout.pieces[static_cast<std::size_t>(index)];
    if (piece.kind == NestPieceKind::kPart) continue;
    (columns ? piece.rect.height : piece.rect.width) =
        columns ? whole.rect.height : whole.rect.width;
    const bool last = index == whole.pieces.back() && piece.kind == NestPieceKind::kOffcut;
    if (last && columns) piece.rect.width = whole.rect.Right() - piece.rect.x;
    if (last && !columns) piece.rect.height = whole.rect.Top() - piece.rect.y;
  }
}

}  // namespace

NestPlan WithOffcutsWhole(NestPlan plan) {
  for (NestLayout& layout : plan.layouts) {
    for (std::size_t i = 0; i < layout.pieces.size(); ++i) {  // parents first
      const NestPiece& whole = layout.pieces[i];
      const bool split =
          whole.kind == NestPieceKind::kColumns || whole.kind == NestPieceKind::kRows;
      if (split) Widen(layout, whole);
    }
  }
  return plan;
}

}  // namespace tillwright::nest
