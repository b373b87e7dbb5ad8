// Story sticks: strips marked at full scale with every place along one axis, and drilling
// templates, on sheets ready for the renderers.
//
// A stick is data first: each mark has its lane, its exact distance from the stick's datum, its
// name and the sum of solved dimensions it comes from. DrawSticks() lays the lanes out as strips,
// cuts them into pieces that fit the paper and packs the pieces on pages. A millimeter of a stick
// is a millimeter of the sheet (unless a correction is asked for), so the sheets must be printed at
// 100 %.
//
// Datum: heights count from the lower edge of the case's sides, widths from the outer face of its
// left side, depths from its front edges. Where only the opening is known, heights count from its
// bottom and widths from its left. What lies before the datum (an overlay front's edge below an
// opening, its thickness before the case) has a negative distance.
#ifndef TILLWRIGHT_STICK_H_
#define TILLWRIGHT_STICK_H_

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/length.h"
#include "tillwright/paper.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

enum class StickAxis : std::uint8_t { kHeight, kWidth, kDepth };

// What one strip serves: the case and what is fixed in it, the boxes, the fronts.
enum class StickLane : std::uint8_t { kCase, kBox, kFront };
inline constexpr int kStickLanes = 3;
[[nodiscard]] std::string_view ToText(StickLane lane);  // "case", "box", "front"

// A hairline across the working edge.
struct StickMark {
  StickLane lane = StickLane::kCase;
  Length at;                     // from the datum
  std::vector<std::string> ids;  // "D1", "H2"; empty: the case or opening itself
  std::string part;              // "front", "web rail": of what it is an edge; may be empty
  std::string what;              // "top", "groove top"
  // For each id (once when there is none) the sum of dimensions that gives `at`, in the names that
  // drawings use, with " + " and " - " between: "case.base + D1.box.y + D1.groove.up". A term may
  // end in " / 2" (the lower half of an odd count), or be a plain length such as "37 mm". "0" is
  // the datum itself.
  std::vector<std::string> sums;
  bool is_line = false;  // a center line or a line to work to, not an edge

  // "front D1–D4 top", "D1–D4 groove top".
  [[nodiscard]] std::string Name() const;
};

// A stretch between two marks of a lane.
struct StickSpan {
  enum class Kind : std::uint8_t { kGap, kCut, kBody } kind = Kind::kBody;
  StickLane lane = StickLane::kCase;
  Length from, to;
  std::vector<std::string> ids;  // "D1"
  std::string what;              // of a body: "front"; else empty
  std::string path;              // the dimension it shows, of the first; may be empty
};

struct Stick {
  StickAxis axis = StickAxis::kHeight;
  std::string name;              // "heights", "widths-2": stem of a file name
  std::string sign;              // "Heights", or of several "Heights 2": what the key calls it
  std::string title;             // "Heights D1–D4", "Heights 2: D5–D8"
  std::string alike;             // what stands just so beside it: "D1, D5, D9"; may be empty
  std::string datum;             // "opening bottom"
  std::vector<StickMark> marks;  // by lane, then from the datum on
  std::vector<StickSpan> spans;

  // Where the lane's strip begins (the datum, or the first mark before it) and ends.
  [[nodiscard]] Length Begin(StickLane lane) const;
  [[nodiscard]] Length End(StickLane lane) const;
  [[nodiscard]] bool Has(StickLane lane) const;
};

// Rows of screws along the slides, seen from the case's front edges (behind an inset front).
struct ScrewRow {
  Length setback = Length::Millimeters(37);  // the first hole; 32 mm system, common practice
  Length pitch = Length::Millimeters(32);
};

enum class StickUnits : std::uint8_t { kOwn, kInch, kMillimeter, kBoth };

struct StickOptions {
  std::optional<Paper> paper;  // UsualPaper() unless given
  bool roll = false;           // one long page a stick instead
  double margin = 10;          // mm, of the paper; [0, 40]
  double roll_width = 0;       // mm, of a roll; 0: as wide as the stick needs
  double max_length = 5080;    // mm, longest page of a roll; at most what a PDF page may be
  double correct_x = 1;  // what is drawn across is stretched by this: true / measured; [0.9, 1.1]
  double correct_y = 1;
  std::vector<StickLane> lanes;  // empty: all
  bool datum_up = false;         // the datum's end towards the upper end of the paper
  bool mirror = false;           // working edge at the right
  StickUnits units = StickUnits::kOwn;
  std::optional<ScrewRow> screws;
  bool sticks = true;  // false: templates only
  bool templates = true;
};

// The sticks of a bank: heights, widths and depths, further ones for columns and rows that differ,
// and one for the length of a worktop. Together they bear every part, gap and cut. Never empty.
[[nodiscard]] std::vector<Stick> MakeSticks(const Bank& bank, const StickOptions& options);

// A size of a part: from one mark of a lane to another.
struct StickSize {
  std::size_t stick = 0;  // index into the sticks
  StickLane lane = StickLane::kCase;
  Length from, to;  // from the datum
};

// A kind of part by its label in the cut list, and where its length, width and thickness are
// marked; of parts alike in several places the first. A size is missing when its lane was not asked
// for. The key on the sheets tells the same.
struct StickPart {
  std::string label;  // PartKindLabel()
  std::array<std::optional<StickSize>, 3> sizes;
};

// Where a piece of a lane stands on its sheet: for tests, and for whoever feeds a plotter.
struct StickPiece {
  std::size_t stick = 0;  // index into the sticks
  StickLane lane = StickLane::kCase;
  int part = 1;            // a lane with too many marks for one strip has several: 1, 2 …
  int piece = 1;           // from the datum's end on
  Length from, to;         // from the datum; `from` is where it is cut, `to` its match line or end
  std::size_t sheet = 0;   // index into the sheets
  PaperPoint zero;         // where `from` lies on the working edge
  double toward_end = -1;  // +1 or -1: which way distances grow along the sheet's y
  double inward = 1;       // +1 or -1: which way the strip lies from the working edge
  double width = 0;        // mm
  std::vector<std::size_t> marks;  // indices into the stick's marks: those named on this piece
};

struct StickSheets {
  std::vector<Stick> sticks;
  std::vector<StickPart> parts;  // in the order of PartKinds()
  std::vector<Sheet> sheets;
  std::vector<StickPiece> pieces;
  std::string fault;  // why there are none; empty when all is well
};

// REQUIRES: figures within their ranges. A paper too small to
// hold a piece is a fault.
[[nodiscard]] StickSheets DrawSticks(const Bank& bank, const StickOptions& options,
                                     const TextMetrics& metrics);

// One sheet a stick (and one of templates), of its own size: for plotters and lasers.
[[nodiscard]] StickSheets DrawSticksAlone(const Bank& bank, const StickOptions& options,
                                          const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_STICK_H_
