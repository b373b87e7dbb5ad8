// Strips: one lane of a stick on paper, cut into pieces.
//
// Across a strip, from its working edge: hairlines and hatched gaps, leaders, the labels fanned out
// so that none meets another, and the lane's own ruler on the far edge. Distances run along the
// paper's y. A lane with more marks than its pieces have room for is shared among several strips.
#ifndef TILLWRIGHT_DRAW_STICK_STRIP_H_
#define TILLWRIGHT_DRAW_STICK_STRIP_H_

#include <string>
#include <vector>

#include "tillwright/stick.h"

namespace tillwright {

// True distances are drawn this much longer, across and along: what makes up for a printer.
struct Correction {
  double x = 1;
  double y = 1;

  [[nodiscard]] bool IsNone() const { return !(x < 1 || x > 1 || y < 1 || y > 1); }
};

// What all strips have in common.
struct StripStyle {
  Unit unit = Unit::kInch;  // of the bank
  StickUnits units = StickUnits::kOwn;
  bool datum_up = false;
  bool mirror = false;
  Correction correction;
};

// What stands beyond the ends of a piece, in lines.
struct PieceWords {
  std::vector<std::string> foot;  // beyond the datum's end, below its title
  std::vector<std::string> head;  // beyond the other end, or in the overlap
};

// One lane, or its share of marks.
struct Strip {
  const Stick* stick = nullptr;
  StickLane lane = StickLane::kCase;
  int part = 1;
  int parts = 1;
  std::vector<std::size_t> marks;  // indices into the stick's, from the datum on
  Length begin, end;               // of the paper: past the last mark when the strip is very short
  std::vector<Length> joints;      // where it is cut
  double width = 0;                // mm
  std::vector<Label> labels;       // of the marks, with their anchors at (0, 0)
  std::vector<PieceWords> words;   // of the pieces

  [[nodiscard]] int pieces() const { return static_cast<int>(joints.size()) + 1; }
  [[nodiscard]] Length From(int piece) const {
    return piece == 1 ? begin : joints[static_cast<std::size_t>(piece) - 2];
  }
  [[nodiscard]] Length To(int piece) const {
    return piece == pieces() ? end : joints[static_cast<std::size_t>(piece) - 1];
  }
};

// The space there is for a piece.
struct PieceRoom {
  double width = 0;  // mm
  double height = 0;
};

// All strips of a stick, each piece within the room. Empty when the room is too small.
[[nodiscard]] std::vector<Strip> StripsOf(const Stick& stick, const StripStyle& style,
                                          const PieceRoom& room, const TextMetrics& metrics);

// Height of a piece on paper, captions and overlap included.
[[nodiscard]] double PieceHeight(const Strip& strip, int piece, const StripStyle& style);

// Draws a piece with its upper left corner there; tells where it stands (the sheet's number apart).
StickPiece DrawPiece(SheetGroup& out, const Strip& strip, int piece, PaperPoint corner,
                     const StripStyle& style, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_STRIP_H_
