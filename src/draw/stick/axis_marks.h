// The marks along each axis of a bank.
#ifndef TILLWRIGHT_DRAW_STICK_AXIS_MARKS_H_
#define TILLWRIGHT_DRAW_STICK_AXIS_MARKS_H_

#include <optional>

#include "draw/stick/lines_across.h"
#include "draw/stick/mark_book.h"

namespace tillwright {

// What a line meets from below, or from the left.
[[nodiscard]] MarkBook HeightMarks(const Bank& bank, const BankLine& line);
[[nodiscard]] MarkBook WidthMarks(const Bank& bank, const BankLine& line);
// All drawers, from front to back, with rows of screws along the slides when asked for.
[[nodiscard]] MarkBook DepthMarks(const Bank& bank, const std::optional<ScrewRow>& screws);

// A worktop from end to end, and where the case stands under it. Empty when there is none.
[[nodiscard]] MarkBook WorktopMarks(const Bank& bank);

// Screws along a slide go into the case's side: side-mount and undermount.
[[nodiscard]] bool ScrewsIntoSide(SlideType type);

// A front's edges, its name between them and its pulls, along an axis of the elevation; the
// opening's corner stands at `origin`.
void AddFront(MarkBook& book, const Space& space, Axis axis, const StickPlace& origin);

// A box's ends along such an axis, with its name between them.
struct BoxEnds {
  StickPlace low, high;
};
BoxEnds AddBoxEnds(MarkBook& book, const Space& space, Axis axis, const StickPlace& origin);

// Hatched stretches for the gaps that a line crosses; the opening's corner stands `origin` from the
// datum.
void AddGaps(MarkBook& book, const Bank& bank, const BankLine& line, Axis axis, Length origin);

// What marks call a piece of the case, and how its dimensions are reached.
struct PieceMarks {
  PieceMarks(const Bank& bank, std::size_t index);
  std::string id;    // what it is for; empty: the case
  std::string part;  // its role: "stile"
  std::string path;  // "piece.3"
};

// Both ends of the pieces of the case, and of those that go to what the line meets. `origin`: the
// opening's corner.
void AddPieces(MarkBook& book, const Bank& bank, const BankLine& line, Axis axis,
               const StickPlace& origin);

// The names of a member's front-view dimensions along an axis are "H1.y", "V1.width" and so on.
[[nodiscard]] std::string Under(const std::string& id, std::string_view name);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_AXIS_MARKS_H_
