#include "draw/stick/axis_marks.h"

#include <algorithm>

#include "draw/dimension_paths.h"

namespace tillwright {

std::string Under(const std::string& id, std::string_view name) {
  std::string path = id;
  path += '.';
  path += name;
  return path;
}

bool ScrewsIntoSide(SlideType type) {
  return type == SlideType::kSideMount || type == SlideType::kUndermount;
}

void AddGaps(MarkBook& book, const Bank& bank, const BankLine& line, Axis axis, Length origin) {
  const auto on_line = [&](const GapEnd& end) {
    if (end.kind == GapEnd::Kind::kOpening) return true;
    const std::vector<int>& known = end.kind == GapEnd::Kind::kSpace ? line.spaces : line.members;
    return std::ranges::find(known, end.index) != known.end();
  };
  for (const Gap& gap : bank.gaps) {
    if (gap.axis != axis || !on_line(gap.from) || !on_line(gap.to)) continue;
    const Length from = origin + gap.at;
    book.Span({StickSpan::Kind::kGap,
               StickLane::kFront,
               from,
               from + gap.size,
               {},
               "",
               GapPath(bank, gap)});
  }
}

PieceMarks::PieceMarks(const Bank& bank, std::size_t index)
    : what(ToText(bank.pieces[index].role)), path("piece." + std::to_string(index + 1)) {
  const CasePiece& piece = bank.pieces[index];
  if (piece.space >= 0) id = ToText(bank.spaces[static_cast<std::size_t>(piece.space)].id);
  if (piece.divider >= 0) id = ToText(bank.dividers[static_cast<std::size_t>(piece.divider)]);
}

void AddPieces(MarkBook& book, const Bank& bank, const BankLine& line, Axis axis,
               const StickPlace& origin) {
  const bool up = axis == Axis::kY;
  const auto holds = [](const std::vector<int>& list, int index) {
    return index < 0 || std::ranges::find(list, index) != list.end();
  };
  for (std::size_t i = 0; i < bank.pieces.size(); ++i) {
    const CasePiece& piece = bank.pieces[i];
    if (piece.role == PartRole::kWorktop) continue;  // longer than the piece
    if (!holds(line.spaces, piece.space) || !holds(line.members, piece.divider)) continue;
    const PieceMarks marks(bank, i);
    const Block& b = piece.block;
    const StickPlace low = origin.Plus(up ? b.y : b.x, marks.path + (up ? ".y" : ".x"));
    const StickPlace high =
        low.Plus(up ? b.height : b.width, marks.path + (up ? ".height" : ".width"));
    book.Edge(StickLane::kCase, low, marks.id, marks.what + (up ? " bottom" : " left"));
    book.Edge(StickLane::kCase, high, marks.id, marks.what + (up ? " top" : " right"));
  }
}

}  // namespace tillwright
