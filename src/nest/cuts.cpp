#include <algorithm>
#include <vector>

#include "tillwright/nest.h"

namespace tillwright {
namespace {

Length Size(const Rect& rect, bool across) { return across ? rect.width : rect.height; }
Length Start(const Rect& rect, bool across) { return across ? rect.x : rect.y; }

class CutLister {
 public:
  explicit CutLister(const NestLayout& layout) : layout_(layout) {}

  std::vector<NestCut> Run() {
    std::vector<std::int32_t> level{0};
    while (!level.empty()) {
      std::vector<std::int32_t> next;
      for (const std::int32_t piece : level) {
        CutUp(piece);
        const auto& pieces = At(piece).pieces;
        next.insert(next.end(), pieces.begin(), pieces.end());
      }
      std::ranges::stable_sort(next, [&](std::int32_t a, std::int32_t b) {
        return Longest(At(a).rect) > Longest(At(b).rect);
      });
      level = std::move(next);
    }
    return std::move(cuts_);
  }

 private:
  [[nodiscard]] const NestPiece& At(std::int32_t piece) const {
    return layout_.pieces[static_cast<std::size_t>(piece)];
  }
  static Length Longest(const Rect& rect) { return Max(rect.width, rect.height); }

  // A cut after each piece but one that ends where the whole does.
  void CutUp(std::int32_t index) {
    const NestPiece& whole = At(index);
    if (whole.kind != NestPieceKind::kColumns && whole.kind != NestPieceKind::kRows) return;
    const bool across = whole.kind == NestPieceKind::kColumns;
    const Length end = Start(whole.rect, across) + Size(whole.rect, across);
    Length from = Start(whole.rect, across);
    for (const std::int32_t child : whole.pieces) {
      const Rect& rect = At(child).rect;
      const Length to = Start(rect, across) + Size(rect, across);
      if (to < end) Add(index, across, Size(rect, across), to, whole.rect, from);
      from = to;
    }
  }

  // `left` is the piece as it was; what was cut free before `from` is away.
  void Add(std::int32_t piece, bool across, Length size, Length at, Rect left, Length from) {
    (across ? left.width : left.height) -= from - Start(left, across);
    const bool settled = !cuts_.empty() && cuts_.back().size == size;
    const bool small = Longest(left) < kSmallPiece || size < kNarrowCut;
    cuts_.push_back({piece, across, size, at, settled, small});
  }

  const NestLayout& layout_;
  std::vector<NestCut> cuts_;
};

}  // namespace

std::vector<NestCut> CutsOf(const NestLayout& layout) { return CutLister(layout).Run(); }

std::int32_t LargestOffcut(const NestLayout& layout) {
  std::int32_t best = -1;
  Int128 most = 0;
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
    const NestPiece& piece = layout.pieces[i];
    if (piece.kind != NestPieceKind::kOffcut) continue;
    const Int128 area = Int128{piece.rect.width.picometers()} * piece.rect.height.picometers();
    if (area <= most) continue;
    most = area;
    best = static_cast<std::int32_t>(i);
  }
  return best;
}

}  // namespace tillwright
