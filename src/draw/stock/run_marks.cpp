#include "draw/stock/run_marks.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kHead = 2.4;       // mm, length of the arrowhead
constexpr double kBeside = 1.2;     // mm, half of what the arrow keeps free
constexpr double kLeastBeside = 9;  // mm, of a piece across its arrow: names need the rest
// Where the arrow may run, from the piece's upper or right edge, as shares of its size.
constexpr std::array kLanes{0.14, 0.22, 0.86, 0.78, 0.32, 0.68, 0.5};

struct Arrow {
  PaperPoint from, to;
  [[nodiscard]] PaperBox Box() const {
    return {std::min(from.x, to.x) - kBeside, std::min(from.y, to.y) - kBeside,
            std::max(from.x, to.x) + kBeside, std::max(from.y, to.y) + kBeside};
  }
};

bool IsLevel(const PaperBox& first, const PaperBox& last) {
  return std::abs(first.Center().y - last.Center().y) < 0.01;
}

Arrow ArrowIn(const PaperBox& piece, const PaperBox& first, const PaperBox& last, double lane) {
  if (IsLevel(first, last)) {
    const double y = piece.top + lane * piece.Height();
    return {{first.Center().x, y}, {last.Center().x, y}};
  }
  const double x = piece.right - lane * piece.Width();
  return {{x, first.Center().y}, {x, last.Center().y}};
}

}  // namespace

std::optional<PaperBox> AddRunMarks(SheetGroup& out, const PaperBox& piece, const PaperBox& first,
                                    const PaperBox& last, std::span<const PaperBox> taken) {
  out.primitives.emplace_back(BoxOutline(piece, Pen::kDetailCut));
  const double beside = IsLevel(first, last) ? piece.Height() : piece.Width();
  if (beside < kLeastBeside) return std::nullopt;
  const auto is_free = [&](double lane) {
    const PaperBox box = ArrowIn(piece, first, last, lane).Box();
    return std::ranges::none_of(taken, [&](const PaperBox& b) { return Overlaps(b, box); });
  };
  const auto lane = std::ranges::find_if(kLanes, is_free);
  if (lane == kLanes.end()) return std::nullopt;
  const Arrow arrow = ArrowIn(piece, first, last, *lane);
  const double angle =
      std::atan2(arrow.from.y - arrow.to.y, arrow.to.x - arrow.from.x) * 180 / std::acos(-1.0);
  out.primitives.emplace_back(Circle{arrow.from, 0.5, Pen::kThin, Tone::kInk});
  out.primitives.emplace_back(LineOf(arrow.from, arrow.to, Pen::kThin));
  out.primitives.emplace_back(Arrowhead{arrow.to, angle, kHead});
  return arrow.Box();
}

}  // namespace tillwright
