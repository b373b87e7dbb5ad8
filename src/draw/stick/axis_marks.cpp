#include "draw/stick/axis_marks.h"

#include <algorithm>

#include "bank/part_roles.h"
#include "spec/kinds.h"
#include "tillwright/dimensions.h"

namespace tillwright {
namespace {

// How the dimensions of rectangles, and their ends, are called along an axis.
struct AxisWords {
  const char* at;
  const char* size;
  const char* low;
  const char* high;
};

AxisWords WordsOf(Axis axis) {
  return axis == Axis::kY ? AxisWords{"y", "height", "bottom", "top"}
                          : AxisWords{"x", "width", "left", "right"};
}

// Marks both ends of a thing, and names it between them.
BoxEnds AddEnds(MarkBook& book, StickLane lane, const std::string& id, const std::string& thing,
                Axis axis, const StickPlace& low, Length size) {
  const AxisWords words = WordsOf(axis);
  const std::string path = Under(id, thing + "." + words.size);
  const BoxEnds ends{low, low.Plus(size, path)};
  book.Edge(lane, ends.low, id, words.low, thing);
  book.Edge(lane, ends.high, id, words.high, thing);
  book.Span({StickSpan::Kind::kBody, lane, ends.low.at(), ends.high.at(), {id}, thing, path});
  return ends;
}

}  // namespace

std::string Under(const std::string& id, std::string_view name) {
  std::string path = id;
  path += '.';
  path += name;
  return path;
}

bool ScrewsIntoSide(SlideType type) { return Facts(type).screwed; }

void AddFront(MarkBook& book, const Space& space, Axis axis, const StickPlace& origin) {
  const std::string id = ToText(space.id);
  const std::string at = WordsOf(axis).at;
  const Rect& r = space.front.rect;
  const bool upright = axis == Axis::kY;
  AddEnds(book, StickLane::kFront, id, "front", axis,
          origin.Plus(upright ? r.y : r.x, Under(id, "front." + at)), upright ? r.height : r.width);
  for (std::size_t i = 0; i < space.front.pulls.size(); ++i) {
    const PullHole& hole = space.front.pulls[i];
    const std::string path = Under(id, "front.pull." + std::to_string(i + 1) + "." + at);
    book.Line(StickLane::kFront, origin.Plus(upright ? hole.y : hole.x, path), id, "pull");
  }
}

BoxEnds AddBoxEnds(MarkBook& book, const Space& space, Axis axis, const StickPlace& origin) {
  const std::string id = ToText(space.id);
  const Box& box = space.box;
  const bool upright = axis == Axis::kY;
  const StickPlace low =
      origin.Plus(upright ? box.y : box.x, Under(id, std::string("box.") + WordsOf(axis).at));
  return AddEnds(book, StickLane::kBox, id, "box", axis, low, upright ? box.height : box.width);
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
    : part(ToText(bank.pieces[index].role)), path("piece." + std::to_string(index + 1)) {
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
    if (Facts(piece.role).group == PartGroup::kWorktop && !up)
      continue;  // longer: on a stick of its own
    if (!holds(line.spaces, piece.space) || !holds(line.members, piece.divider)) continue;
    const PieceMarks marks(bank, i);
    const Block& b = piece.block;
    const StickPlace low = origin.Plus(up ? b.y : b.x, marks.path + (up ? ".y" : ".x"));
    const StickPlace high =
        low.Plus(up ? b.height : b.width, marks.path + (up ? ".height" : ".width"));
    book.Edge(StickLane::kCase, low, marks.id, up ? "bottom" : "left", marks.part);
    book.Edge(StickLane::kCase, high, marks.id, up ? "top" : "right", marks.part);
  }
}

}  // namespace tillwright
