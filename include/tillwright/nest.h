// Nesting: laying rectangular parts out on sheets or boards by cuts from edge to edge.
//
// It knows nothing of drawers: parts and stock go in, layouts come out, and with them a bound that
// no layout can beat. A board is a sheet whose parts are all as wide as it is.
//
//   (1) Every part of the plan lies on one sheet once, turned only if it may turn, inside what the
//       trim leaves; `missing` counts the rest.
//   (2) Neighbors are at least one kerf apart, and each layout is a tree of cuts from edge to
//   edge. (3) `bound` sheets are needed by any layout; `proven` says that the plan cannot be
//   bettered. (4) The same job gives the same plan: the work is counted, not timed.
#ifndef TILLWRIGHT_NEST_H_
#define TILLWRIGHT_NEST_H_

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/length.h"

namespace tillwright {

// A kind of part. The grain of a part that may not turn runs along the sheet's length.
struct NestPart {
  std::string label;
  Length along;     // the side that lies along the sheet's length; > 0
  Length across{};  // the other side; > 0
  std::int64_t count = 1;
  bool may_turn = false;
};

// A kind of sheet or board, or an offcut on hand.
struct NestStock {
  std::string label;
  Length along;
  Length across;
  Length trim{};                        // taken off each edge first, its saw cut included
  std::optional<std::int64_t> count{};  // how many there are; none: as many as wanted
  bool on_hand = false;                 // paid for already: used before any is bought
  std::optional<std::int64_t> price{};  // of one, in the smallest coin
};

// Parts that are cut one after another out of one piece, a kerf between neighbors, so that the
// grain runs on from each to the next. The piece is laid out as one part and never turned; the cuts
// that take it apart come last and do not count as stages.
struct NestRun {
  std::vector<std::int32_t> parts;  // in NestJob::parts, in order; not empty
  bool across = false;  // over one another, the first uppermost; else side by side, from the left
  Length spare{};       // what the piece has over them at its right or upper end; >= 0
};

struct NestJob {
  std::vector<NestPart> parts;
  std::vector<NestStock> stock;
  Length kerf{};
  std::vector<NestRun> runs{};  // of the parts' counts; the rest lie where they may
  int stages = 0;  // how many times the sheet is gone over, all cuts of one time the same way;
                   // 0: as often as it takes
  // How long to look for better: counted in leftovers looked at, so that the result does not depend
  // on the machine. The default takes less than a second.
  std::int64_t work = 60'000'000;
};

enum class NestPieceKind : std::uint8_t {
  kPart,
  kOffcut,
  kColumns,  // cut across the sheet's length: its pieces lie side by side
  kRows,     // cut along the sheet's length: its pieces lie over one another
};

struct NestPiece {
  NestPieceKind kind = NestPieceKind::kOffcut;
  Rect rect;               // from the sheet's lower left corner; x runs along its length
  std::int32_t part = -1;  // in NestJob::parts
  bool turned = false;     // the part's `along` lies across the sheet
  std::int32_t parent = -1;
  std::vector<std::int32_t> pieces{};  // what it is cut into, left to right or bottom to top
  std::int32_t run = -1;               // in NestJob::runs: of a run's piece and of the parts in it
  std::int32_t place = -1;             // of a part in its run: 0 is the first
};

struct NestLayout {
  std::int32_t stock = 0;         // in NestJob::stock
  std::vector<NestPiece> pieces;  // the first is the sheet less its trim; parents first
};

struct NestPlan {
  std::vector<NestLayout> layouts;
  std::vector<std::int64_t> missing;  // of each part: how many found no place
  std::int64_t bound = 0;             // sheets that any layout needs
  // What any layout costs at least of what this one does: in the smallest coin where there are
  // prices, and in percent, rounded down. With one size of stock `bound` says as much.
  std::optional<std::int64_t> price_bound{};
  std::int64_t percent_bound = 0;
  bool proven = false;  // no layout cut from edge to edge costs less
};

// One saw cut. Pieces are cut free largest first, so that one setting of the fence serves for all
// that are alike.
struct NestCut {
  std::int32_t piece = 0;  // what is cut, in NestLayout::pieces
  bool across = false;     // across the sheet's length, else along it
  Length size;             // of what is cut free: the fence's setting
  Length at;               // where the saw cut begins, from the sheet's left or lower edge
  bool settled = false;    // the fence stands there from the cut before
  bool small = false;      // see kSmallPiece, kNarrowCut
};

// Common practice, no source: what is shorter than this whichever way, or narrower than that when
// cut free, is not safe to push along a fence by hand.
inline constexpr Length kSmallPiece = Length::Millimeters(300);
inline constexpr Length kNarrowCut = Length::Millimeters(40);

// The cuts of a layout in the order a saw makes them: the sheet is broken down first, then the
// pieces, the larger first. The sheet's edges are trimmed before.
[[nodiscard]] std::vector<NestCut> CutsOf(const NestLayout& layout);

// The largest offcut of a layout, an index into its pieces; -1 when there is none.
[[nodiscard]] std::int32_t LargestOffcut(const NestLayout& layout);

// The piece that a run is cut from, as one part: its parts, the kerfs between them, what is spare.
[[nodiscard]] NestPart PieceOf(const NestJob& job, const NestRun& run);

// REQUIRES: positive sizes, counts of zero or more, kerf and trim of zero or more; no part stands
// in runs more often than its count.
[[nodiscard]] NestPlan Nest(const NestJob& job);

// "142.00": the smallest coin is a hundredth. REQUIRES: not negative.
[[nodiscard]] std::string PriceText(std::int64_t coins);

// "2 sheets; no layout cut edge to edge can do with fewer (proved)", or what is known instead.
// `noun` is "sheet" or "board".
[[nodiscard]] std::string NestWords(const NestJob& job, const NestPlan& plan,
                                    std::string_view noun);

}  // namespace tillwright

#endif  // TILLWRIGHT_NEST_H_
