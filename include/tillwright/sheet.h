// Sheet: a drawing as plain data, ready for paper.
//
// Unit: paper millimeters in double. The origin is the top left corner of the paper, x runs to the
// right and y runs DOWN. Angles are in degrees, 0 to the right, growing counter-clockwise as seen.
// Everything is final: scaled, clipped, placed. A renderer only draws; it decides nothing.
//
// What a line looks like follows from what it means: a primitive names a Pen, never a width or a
// color, and StyleOf() is the one table that turns pens into widths and dashes. Later groups and
// later primitives are drawn over earlier ones.
//
// Nothing here rounds. Renderers and Dump() round coordinates to 1/1000 mm when they write them.
// Coordinates must be finite: FindLayoutFaults() reports those that are not and renderers refuse
// them.
//
// Example:
//   Sheet sheet{.width = 297, .height = 210, .name = "front-view"};
//   SheetGroup& front = AddGroup(sheet, "front-2", "Drawer front 2", 0);
//   front.primitives.push_back(BoxOutline({40, 30, 120, 60}, Pen::kFront));
#ifndef TILLWRIGHT_SHEET_H_
#define TILLWRIGHT_SHEET_H_

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tillwright {

struct PaperPoint {
  double x = 0;  // mm from the left edge
  double y = 0;  // mm from the top edge, downward
};

// An upright rectangle. Empty (nothing inside) when right < left or bottom < top.
struct PaperBox {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;

  [[nodiscard]] constexpr double Width() const { return right - left; }
  [[nodiscard]] constexpr double Height() const { return bottom - top; }
  [[nodiscard]] constexpr PaperPoint Center() const {
    return {(left + right) / 2, (top + bottom) / 2};
  }
};

// The empty box: joining it with another gives the other.
[[nodiscard]] PaperBox EmptyBox();
[[nodiscard]] bool IsEmpty(const PaperBox& box);
[[nodiscard]] PaperBox Join(const PaperBox& a, const PaperBox& b);
// Grown on every side by `margin` mm (shrunk when negative).
[[nodiscard]] PaperBox Grow(const PaperBox& box, double margin);
[[nodiscard]] bool Overlaps(const PaperBox& a, const PaperBox& b);

// What a line means. StyleOf() says how it is drawn.
enum class Pen : std::uint8_t {
  kNone,         // no stroke: a filled shape without an outline
  kCut,          // edge of a part cut by the section plane
  kDetailCut,    // the same in a full-size detail
  kOutline,      // visible edge
  kFront,        // edge of a drawer front: stroke it inside the true edge, gaps stay white
  kThin,         // lesser visible edge
  kHidden,       // edge behind something
  kCenter,       // center line, axis
  kMoved,        // a part in its other position, such as an open drawer
  kDimension,    // dimension line, extension line, thin tick
  kTick,         // terminator of a dimension in a chain
  kLeader,       // leader, shelf
  kHatch,        // section hatch
  kDetailHatch,  // section hatch in a full-size detail
  kGround,       // the floor under a view
  kSection,      // ends of a section plane
  kCallout,      // circle around a detail, balloon
  kFrame,        // border of the drawing, outer lines of the title block
  kCell,         // inner lines of the title block
  kSymbol,       // projection symbol, underline of a view title
  kRuler,        // graduations of scale bars, check bars and sticks
  kCutLine,      // where paper or stock is to be cut
  kMatchLine,    // where the next tile is laid on
  kTrimLine,     // end of an overlap
};
inline constexpr int kPenCount = 24;

struct PenStyle {
  std::string_view name;           // as in Dump(), such as "hidden"
  double width;                    // mm
  std::span<const double> dashes;  // mm: line, gap, line, gap ...; empty for a continuous line
};

// Widths are from the series 0.13 0.18 0.25 0.35 0.5 0.7 mm of ISO 128-2:2020 with two widths a
// view as 1 : 2; dashes are multiples of the width. The standard's text was not at hand: both are
// from memory [M], as trade practice teaches them.
[[nodiscard]] const PenStyle& StyleOf(Pen pen);

// What a closed shape is filled with.
enum class Tone : std::uint8_t {
  kNone,
  kInk,    // solid
  kShade,  // middle gray: parts too thin to hatch
  kPaper,  // the color of the paper: hides what was drawn before
};

struct Polyline {
  std::vector<PaperPoint> points{};
  bool closed = false;
  Pen pen = Pen::kOutline;
  Tone fill = Tone::kNone;  // even-odd
};

struct Circle {
  PaperPoint center{};
  double radius = 0;
  Pen pen = Pen::kOutline;
  Tone fill = Tone::kNone;
};

// From `start` counter-clockwise over `sweep` degrees; |sweep| < 360.
struct Arc {
  PaperPoint center{};
  double radius = 0;
  double start = 0;
  double sweep = 0;
  Pen pen = Pen::kOutline;
};

// A filled head whose tip lies on `tip`, pointing along `direction`. Its width is a third of its
// length (an angle of 20 degrees).
struct Arrowhead {
  PaperPoint tip{};
  double direction = 0;  // degrees
  double length = 2.5;   // mm
};
inline constexpr double kArrowheadWidth = 1.0 / 3.0;  // of the length

// The oblique stroke that ends a dimension in a chain, centerd on `at`, leaning to the right.
struct Tick {
  PaperPoint at{};
  double length = 2.4;  // mm, over all
  Pen pen = Pen::kTick;
};

struct PaperSegment {
  PaperPoint from{};
  PaperPoint to{};
};

// Strokes that fill an area, already clipped. A segment that starts where the one before it ends
// continues it.
struct HatchLines {
  std::vector<PaperSegment> segments{};
  Pen pen = Pen::kHatch;
};

// A piece of a label.
struct TextRun {
  enum class Kind : std::uint8_t {
    kPlain,     // `text` as it is
    kFraction,  // `text` over `denominator`, stacked, with a bar between
    kDiameter,  // the diameter sign, drawn as a circle with a stroke
  };
  Kind kind = Kind::kPlain;
  std::string text{};
  std::string denominator{};

  friend bool operator==(const TextRun&, const TextRun&) = default;
};
using RichText = std::vector<TextRun>;

enum class TextWeight : std::uint8_t { kRegular, kBold };
enum class TextAnchor : std::uint8_t { kLeft, kCenter, kRight };
enum class TextTurn : std::uint8_t {
  kLevel,
  kUpward,  // turned 90 degrees counter-clockwise: read from the right
};

// Build labels with MakeLabel() (draw/rich_text.h), which measures them and replaces characters
// that the font cannot draw.
struct Label {
  RichText text{};      // what is drawn
  std::string plain{};  // the same, or the whole of it when it was shortened, for search and copy
  std::string path{};   // the dimension it shows, such as "D2.front.height"; may be empty
  PaperPoint at{};      // the anchor, on the baseline
  double cap_height = 2.5;  // mm, height of capitals and digits
  TextWeight weight = TextWeight::kRegular;
  TextAnchor anchor = TextAnchor::kLeft;
  TextTurn turn = TextTurn::kLevel;
  double width = 0;  // mm along the text
  PaperBox box{};    // measured, on paper, as anchored and turned
};

using Primitive = std::variant<Polyline, Circle, Arc, Arrowhead, Tick, HatchLines, Label>;

// Makes a visitor of lambdas: std::visit(Overloaded{...}, primitive).
template <class... Ts>
struct Overloaded : Ts... {
  using Ts::operator()...;
};
template <class... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

// Things that belong together: a view, a front, a chain of dimensions.
struct SheetGroup {
  std::string id{};     // letters, digits and '-'; made unique by the renderer
  std::string title{};  // shown when the pointer rests on it, read by screen readers
  std::string desc{};   // longer; may be empty
  int depth = 0;        // 0: on the sheet; n: inside the nearest group before it of depth n - 1
  std::vector<Primitive> primitives{};
};

struct Sheet {
  double width = 0;   // mm
  double height = 0;  // mm
  std::string title{};
  std::string description{};
  std::string name{};  // stem of the file name
  PaperBox frame{};    // no label may leave it; the whole sheet when empty
  std::vector<SheetGroup> groups{};
};

// Adds an empty group. The reference is good until the next group is added.
SheetGroup& AddGroup(Sheet& sheet, std::string id, std::string title, int depth);

// Shorthands for the commonest primitives.
[[nodiscard]] Polyline LineOf(PaperPoint from, PaperPoint to, Pen pen);
[[nodiscard]] Polyline BoxOutline(const PaperBox& box, Pen pen);
[[nodiscard]] Polyline BoxFill(const PaperBox& box, Tone fill);

// The outline of a box stroked wholly inside it, so that a gap beside it keeps its true width.
[[nodiscard]] Polyline InsetOutline(const PaperBox& box, Pen pen);

// The three corners of a head: tip, left, right.
[[nodiscard]] std::vector<PaperPoint> ArrowheadCorners(const Arrowhead& head);
[[nodiscard]] PaperSegment TickSegment(const Tick& tick);
// The point of a circle at `angle` degrees.
[[nodiscard]] PaperPoint OnCircle(PaperPoint center, double radius, double angle);

// What is covered, strokes included; labels by their measured boxes.
[[nodiscard]] PaperBox Bounds(const Primitive& primitive);
[[nodiscard]] PaperBox Bounds(const SheetGroup& group);
[[nodiscard]] PaperBox Bounds(std::span<const SheetGroup> groups);
[[nodiscard]] PaperBox Bounds(const Sheet& sheet);

// Moves everything by (dx, dy) mm.
void Shift(SheetGroup& group, double dx, double dy);

// The whole sheet as lines of text, one primitive a line, coordinates in mm to 1/1000. For tests.
[[nodiscard]] std::string Dump(const Sheet& sheet);

// Appends `mm` rounded to 1/1000 (halves away from zero) without trailing zeros: 12.5, -0.125, 0.
// Integer arithmetic: the same bytes everywhere. REQUIRES: finite, |mm| < 1e12.
void AppendPaper(std::string& out, double mm);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_H_
