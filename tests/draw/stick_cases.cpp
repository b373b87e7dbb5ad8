#include "draw/stick_cases.h"

#include <gtest/gtest.h>

#include <map>
#include <set>
#include <tuple>

#include "support/layout_faults.h"
#include "tillwright/dimensions.h"
#include "tillwright/length_text.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

// Pieces of one strip, in order, by stick, lane and part.
using Strips = std::map<std::tuple<std::size_t, StickLane, int>, std::vector<const StickPiece*>>;

void ExpectChain(const Stick& stick, const std::vector<const StickPiece*>& pieces) {
  EXPECT_EQ(pieces.front()->from, stick.Begin(pieces.front()->lane));
  EXPECT_GE(pieces.back()->to, stick.End(pieces.front()->lane));
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    EXPECT_EQ(pieces[i]->from, pieces[i - 1]->to) << "pieces do not follow on each other";
    EXPECT_EQ(pieces[i]->piece, pieces[i - 1]->piece + 1);
  }
}

int LabelsWith(const SheetGroup& group, const std::string& path) {
  int count = 0;
  for (const Primitive& primitive : group.primitives) {
    const Label* label = std::get_if<Label>(&primitive);
    count += label != nullptr && label->path == path ? 1 : 0;
  }
  return count;
}

// The labels of the piece's group, which is found by what it shows.
void ExpectNamed(const StickSheets& sheets, const StickPiece& piece) {
  const Stick& stick = sheets.sticks[piece.stick];
  const std::string id = stick.name + "-" + std::string(ToText(piece.lane)) + "-" +
                         std::to_string(piece.part) + "-" + std::to_string(piece.piece);
  for (const SheetGroup& group : sheets.sheets[piece.sheet].groups) {
    if (group.id != id) continue;
    for (const std::size_t i : piece.marks) {
      const StickMark& mark = stick.marks[i];
      EXPECT_GE(LabelsWith(group, mark.sums.front()), 1) << id << " does not name " << mark.Name();
      EXPECT_GE(mark.at, piece.from);
      EXPECT_LE(mark.at, piece.to);
    }
    return;
  }
  ADD_FAILURE() << id << " is on no sheet";
}

// How many strips a lane is shared among.
int StripsOf(const StickSheets& sheets, std::size_t stick, StickLane lane) {
  int strips = 0;
  for (const StickPiece& piece : sheets.pieces) {
    if (piece.stick == stick && piece.lane == lane) strips = std::max(strips, piece.part);
  }
  return strips;
}

// The datum stands on every strip of a lane that is shared out.
void ExpectEveryMark(const StickSheets& sheets) {
  std::map<std::pair<std::size_t, std::size_t>, int> seen;
  for (const StickPiece& piece : sheets.pieces) {
    for (const std::size_t i : piece.marks) ++seen[{piece.stick, i}];
  }
  for (std::size_t s = 0; s < sheets.sticks.size(); ++s) {
    for (std::size_t i = 0; i < sheets.sticks[s].marks.size(); ++i) {
      const Stick& stick = sheets.sticks[s];
      const StickMark& mark = stick.marks[i];
      const int strips =
          mark.at.IsZero() && mark.what == stick.datum ? StripsOf(sheets, s, mark.lane) : 1;
      EXPECT_EQ((seen[{s, i}]), strips) << stick.title << ": " << mark.Name();
    }
  }
}

}  // namespace

void ExpectGoodSticks(const std::string& name, const Bank& bank, const StickOptions& options) {
  SCOPED_TRACE(name);
  const StickSheets sheets = DrawSticks(bank, options, DrawingFontMetrics());
  ASSERT_EQ(sheets.fault, "");
  ASSERT_FALSE(sheets.sheets.empty());
  for (const Sheet& sheet : sheets.sheets) {
    const std::vector<LayoutFault> faults = FindLayoutFaults(sheet, DrawingFontMetrics());
    EXPECT_TRUE(faults.empty()) << sheet.name << ":\n" << DescribeFaults(faults);
  }
  if (!options.sticks) return;
  Strips strips;
  for (const StickPiece& piece : sheets.pieces) {
    strips[{piece.stick, piece.lane, piece.part}].push_back(&piece);
    ExpectNamed(sheets, piece);
  }
  for (const auto& [key, pieces] : strips) ExpectChain(sheets.sticks[std::get<0>(key)], pieces);
  ExpectEveryMark(sheets);
}

}  // namespace tillwright::testing
