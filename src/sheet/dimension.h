// Dimensions: chains, single sizes and ordinates, drawn beside a view.
//
// Pure functions from positions on paper and texts to primitives added to a group. The texts come
// from exact lengths and the positions from the drawing; neither is ever derived from the other.
// Text is always level, so that stacked fractions read without tilting the head: it stands in a
// broken dimension line where the segment has room for it, else in a column beyond the chain, with
// a bent leader from the middle of the segment.
//
// Conventions are those of ISO 129-1 from memory [M]: thin lines, oblique strokes as terminators in
// chains, extension lines with a gap at the object and some overshoot past the line.
//
// Example, two tiers left of an elevation whose left edge is at x = 80:
//   DimensionStack stack{.side = PaperSide::kLeft, .edge = 80};
//   stack.tiers.push_back({.stations = {40, 75, 76, 130},
//                          .texts = {{"11", "D1.front.height"}, {"5/16", "D1.gap"}, {"17",
//                          "D2..."}}});
//   stack.tiers.push_back({.stations = {40, 130}, .texts = {{"28 5/16", "case.height"}}});
//   const PaperBox covered = AddDimensionStack(group, stack, DimensionStyle(), metrics);
#ifndef TILLWRIGHT_SHEET_DIMENSION_H_
#define TILLWRIGHT_SHEET_DIMENSION_H_

#include <cstdint>
#include <string>
#include <vector>

#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// The side of the object on which dimensions stand. Left and right: sizes along the vertical.
enum class PaperSide : std::uint8_t { kLeft, kRight, kAbove, kBelow };

// All in mm.
struct DimensionStyle {
  double cap_height = 2.5;
  double object_gap = 1.0;     // between object and extension line
  double overshoot = 1.8;      // of extension lines past the outermost line
  double first_offset = 9.0;   // least distance from the edge to the first dimension line
  double tier_step = 7.5;      // least distance from one line to the next
  double text_gap = 0.9;       // between text and the ends of its broken line
  double room_beside = 1.5;    // text stands in the line if this much of it is left on both sides
  double tick = 2.4;           // length of an oblique stroke
  double narrow = 2.4;         // segments below this get thin strokes and no overshoot
  double column_offset = 5.0;  // least distance from a line to its column of moved texts
  double clearance = 0.9;      // between labels, and between a label and a line
  double arrow = 2.5;          // length of an arrowhead
};

struct DimensionText {
  std::string text{};  // as ParseRichText reads it; empty: this segment is not dimensioned
  std::string path{};  // of the dimension it shows
};

// REQUIRES: stations ascend (top to bottom, left to right); texts.size() + 1 == stations.size().
struct DimensionChain {
  std::vector<double> stations{};  // mm along the chain
  std::vector<DimensionText> texts{};
};

// Where the extension line of one station starts if not at the edge of the object.
struct ExtensionStart {
  double station = 0;
  double cross = 0;  // mm: x beside a view, y above or below it
};

struct DimensionStack {
  PaperSide side = PaperSide::kLeft;
  double edge = 0;                       // x or y of the object's outline on that side
  std::vector<ExtensionStart> starts{};  // exceptions to `edge`
  std::vector<DimensionChain> tiers{};   // from the object outward: parts first, overall last
};

// Draws all tiers with one extension line per station, running out to the last tier that uses it.
// Lines keep at least the style's distances and more where texts need it. Returns what is covered.
PaperBox AddDimensionStack(SheetGroup& out, const DimensionStack& stack,
                           const DimensionStyle& style, const TextMetrics& metrics);

// One size with arrowheads: inside with the text between them if there is room, else outside with
// the text beyond the second. `line` is the x or y of the dimension line, `from_edge` and `to_edge`
// where the two extension lines start (give `line` for none).
struct SingleDimension {
  PaperSide side = PaperSide::kAbove;  // of the object; the text of a small size goes to its end
  double from = 0;                     // REQUIRES: from < to
  double to = 0;
  double line = 0;
  double from_edge = 0;
  double to_edge = 0;
  DimensionText text{};
  bool text_before = false;  // small sizes: text before `from` rather than beyond `to`
  bool ticks = false;        // oblique strokes rather than arrowheads
};
PaperBox AddSingleDimension(SheetGroup& out, const SingleDimension& dimension,
                            const DimensionStyle& style, const TextMetrics& metrics);

// Distances from one datum, one text at each station, fanned out where they crowd.
struct Ordinate {
  double station = 0;  // mm along the edge
  std::string text{};
  std::string path{};
};
struct OrdinateColumn {
  PaperSide side = PaperSide::kRight;
  double edge = 0;                    // of the object
  double offset = 7;                  // from the edge to the start of the texts
  std::vector<Ordinate> ordinates{};  // REQUIRES: stations ascend
  std::string heading{};              // such as "FROM FLOOR"; may be empty; beside views only
};
PaperBox AddOrdinateColumn(SheetGroup& out, const OrdinateColumn& column,
                           const DimensionStyle& style, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_DIMENSION_H_
