#include "draw/stock/stock_panel.h"

#include <algorithm>

namespace tillwright {
namespace {

const NestPiece& At(const NestLayout& layout, std::int32_t piece) {
  return layout.pieces[static_cast<std::size_t>(piece)];
}

bool Holds(const std::vector<std::int32_t>& pieces, std::int32_t piece) {
  return std::ranges::find(pieces, piece) != pieces.end();
}

// Whether a piece is another one or was cut from it.
bool IsWithin(const NestLayout& layout, std::int32_t piece, std::int32_t whole) {
  while (piece >= 0 && piece != whole) piece = At(layout, piece).parent;
  return piece == whole;
}

Length StartOf(const Rect& rect, bool columns) { return columns ? rect.x : rect.y; }
Length EndOf(const Rect& rect, bool columns) { return columns ? rect.Right() : rect.Top(); }

std::size_t LastOf(const NestLayout& layout, const StockPanel& panel) {
  const std::size_t count = At(layout, panel.piece).pieces.size();
  return std::min(panel.last, count == 0 ? 0 : count - 1);
}

// What the panel shows, with the saw cut after it.
Rect ShownRect(const NestLayout& layout, Length kerf, const StockPanel& panel) {
  const NestPiece& whole = At(layout, panel.piece);
  if (panel.IsWhole(layout)) return whole.rect;
  const bool columns = whole.kind == NestPieceKind::kColumns;
  const Rect& first = At(layout, whole.pieces[panel.first]).rect;
  const Rect& last = At(layout, whole.pieces[LastOf(layout, panel)]).rect;
  Rect rect = whole.rect;
  (columns ? rect.x : rect.y) = StartOf(first, columns);
  const Length end = Min(EndOf(last, columns) + kerf, EndOf(whole.rect, columns));
  (columns ? rect.width : rect.height) = end - StartOf(first, columns);
  return rect;
}

class ContentFinder {
 public:
  ContentFinder(const NestLayout& layout, Length kerf, const StockPanel& panel)
      : layout_(layout), panel_(panel) {
    content_.rect = ShownRect(layout, kerf, panel);
  }

  PanelContent Run() {
    Visit(panel_.piece);
    const std::vector<NestCut> cuts = CutsOf(layout_);
    for (std::size_t i = 0; i < cuts.size(); ++i) {
      if (Shows(cuts[i])) content_.cuts.push_back({i + 1, cuts[i]});
    }
    return std::move(content_);
  }

 private:
  void Visit(std::int32_t index) {
    const NestPiece& piece = At(layout_, index);
    const bool top = index == panel_.piece;
    if (!top && Holds(panel_.closed, index)) {
      content_.closed.push_back(index);
    } else if (piece.pieces.empty()) {
      content_.leaves.push_back(index);
    } else {
      open_.push_back(index);
      const std::size_t last = top ? LastOf(layout_, panel_) : piece.pieces.size() - 1;
      for (std::size_t i = top ? panel_.first : 0; i <= last; ++i) Visit(piece.pieces[i]);
    }
  }

  [[nodiscard]] bool Shows(const NestCut& cut) const {
    if (!Holds(open_, cut.piece)) return false;
    if (cut.piece != panel_.piece) return true;
    const Rect& shown = content_.rect;
    return cut.at > StartOf(shown, cut.across) && cut.at <= EndOf(shown, cut.across);
  }

  const NestLayout& layout_;
  const StockPanel& panel_;
  std::vector<std::int32_t> open_;
  PanelContent content_;
};

}  // namespace

bool StockPanel::IsWhole(const NestLayout& layout) const {
  const std::size_t count = At(layout, piece).pieces.size();
  return first == 0 && (count == 0 || last >= count - 1);
}

PanelContent ContentOf(const NestLayout& layout, Length kerf, const StockPanel& panel) {
  return ContentFinder(layout, kerf, panel).Run();
}

int DepthOf(const NestLayout& layout, std::int32_t piece) {
  int depth = 0;
  while ((piece = At(layout, piece).parent) >= 0) ++depth;
  return depth;
}

std::string CutsWithin(const NestLayout& layout, std::int32_t piece) {
  const std::vector<NestCut> cuts = CutsOf(layout);
  std::string text;
  const auto is_in = [&](std::size_t i) {
    return i < cuts.size() && IsWithin(layout, cuts[i].piece, piece);
  };
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    if (!is_in(i)) continue;
    const std::size_t from = i;
    while (is_in(i + 1)) ++i;
    text += (text.empty() ? "" : ", ") + std::to_string(from + 1);
    if (i > from) text += (i == from + 1 ? ", " : "–") + std::to_string(i + 1);
  }
  return text;
}

bool CanHalve(const NestLayout& layout, const StockPanel& panel) {
  return LastOf(layout, panel) > panel.first;
}

std::pair<StockPanel, StockPanel> Halves(const NestLayout& layout, const StockPanel& panel) {
  const NestPiece& whole = At(layout, panel.piece);
  const bool columns = whole.kind == NestPieceKind::kColumns;
  const Rect shown = ShownRect(layout, Length(), panel);
  const Length twice = StartOf(shown, columns) + EndOf(shown, columns);  // the middle, twice
  const std::size_t last = LastOf(layout, panel);
  std::size_t next = panel.first + 1;
  while (next < last && 2 * EndOf(At(layout, whole.pieces[next]).rect, columns) <= twice) ++next;
  return {{panel.piece, panel.first, next - 1, {}}, {panel.piece, next, last, {}}};
}

StockPanel WithClosed(const NestLayout& layout, const StockPanel& panel,
                      const std::vector<std::int32_t>& pieces) {
  std::vector<std::int32_t> all = panel.closed;
  all.insert(all.end(), pieces.begin(), pieces.end());
  std::ranges::sort(all);
  all.erase(std::unique(all.begin(), all.end()), all.end());
  StockPanel closed{panel.piece, panel.first, panel.last, {}};
  std::ranges::copy_if(all, std::back_inserter(closed.closed), [&](std::int32_t piece) {
    return std::ranges::none_of(
        all, [&](std::int32_t other) { return other != piece && IsWithin(layout, piece, other); });
  });
  return closed;
}

}  // namespace tillwright
