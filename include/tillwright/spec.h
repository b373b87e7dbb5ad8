// The spec: what a maker asked for, as plain data, before anything is solved.
//
// Every value is an Entry: the value, whether it was typed, and where it stands in the text. An
// entry that was not typed holds no meaning until the rules give it its default (see rules.h), so
// that a drawer's own keys can be merged over the bank's key by key.
//
// Read from JSON by ReadSpec (read.h); a program may also fill one in by hand. Lengths are within
// +-100 m. specs/README.md describes every key.
#ifndef TILLWRIGHT_SPEC_H_
#define TILLWRIGHT_SPEC_H_

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "tillwright/diagnostic.h"
#include "tillwright/length.h"
#include "tillwright/length_text.h"
#include "tillwright/rational.h"

namespace tillwright {

template <class T>
struct Entry {
  T value{};
  Place place;
  bool typed = false;

  Entry() = default;
  Entry(T v) : value(std::move(v)) {}  // NOLINT: a default is written as its bare value
  Entry(T v, Place p) : value(std::move(v)), place(p), typed(true) {}
};

// Limits on what is read, so that a hostile or mistaken file is refused before any work.
inline constexpr int kMaxDrawers = 10'000;  // leaves of the layout, whatever their kind
inline constexpr int kMaxDepth = 64;        // levels of rows and columns, and of JSON
inline constexpr std::size_t kMaxSpecBytes = 16U << 20U;

enum class FrontStyle : std::uint8_t { kOverlay, kInset };
enum class Grain : std::uint8_t { kHorizontal, kVertical, kNone };
enum class SlideType : std::uint8_t { kSideMount, kUndermount, kCenterMount, kWoodRunner };
enum class CornerJoint : std::uint8_t {
  kButt,
  kRabbet,
  kDado,
  kHalfBlindDovetail,
  kThroughDovetail,
  kFinger
};
enum class BottomFit : std::uint8_t { kGroove, kRabbet, kApplied };
enum class Graduation : std::uint8_t { kEqual, kShares, kArithmetic, kGeometric };
enum class CaseJoint : std::uint8_t { kButt, kDado, kRabbet, kGroove };
enum class CaseFixing : std::uint8_t { kPocketScrews, kDowels, kGlue };
// What a web frame that has no runners is left with: rails at the front, or at front and rear.
enum class OpenRails : std::uint8_t { kFront, kBoth };
enum class BackFit : std::uint8_t { kRabbet, kGroove, kApplied, kNone };
// What a joint or channel is cut as.
enum class CutKind : std::uint8_t {
  kGroove,
  kRabbet,
  kDado,
  kHalfBlindDovetail,
  kThroughDovetail,
  kFinger,
  kTenon
};
enum class Setting : std::uint8_t { kSpaced, kCenterd };
enum class SawnCut : std::uint8_t { kFlat, kQuarter };
enum class Held : std::uint8_t { kMiddle, kBottom };
// Which fronts are cut out of one piece, in their order: those side by side, or over one another.
enum class FrontMatch : std::uint8_t { kNone, kRow, kStack };

// The four edges of the opening, in this order wherever they are listed.
enum class Edge : std::uint8_t { kTop, kBottom, kLeft, kRight };
inline constexpr std::array kEdges{Edge::kTop, Edge::kBottom, Edge::kLeft, Edge::kRight};

// One edge of an overlay: a length, flush with the case's outer face, or short of it by a reveal.
struct OverlayEdge {
  enum class Kind : std::uint8_t { kLength, kFlush, kReveal } kind = Kind::kLength;
  Entry<Length> length;     // the overlay or the reveal
  bool from_single = true;  // one overlay typed for all edges, or the default
};

struct OpeningSpec {
  Entry<Length> width, height, depth;
};

struct CaseJointSpec {
  Entry<CaseJoint> type;
  Entry<Length> depth;
  Entry<Length> tongue;  // groove: its thickness, and so the groove's width
  Entry<CaseFixing> fixing;
};

struct BackSpec {
  Entry<BackFit> fit;
  Entry<Length> thickness, lap, inset, depth, play;
  Entry<std::string> material;
};

struct StretcherSpec {  // two rails that lie across the case instead of a top
  bool typed = false;
  Place place;
  Entry<Length> width;
};

struct ToeKickSpec {  // a board set back under the case, between sides that are notched for the
                      // foot
  bool typed = false;
  Place place;
  Entry<Length> height, setback;
};

struct FeetSpec {  // bought ones, under the case
  bool typed = false;
  Place place;
  Entry<Length> height, setback;
  Entry<int> count;
};

struct FaceFrameSpec {  // stiles and rails on the front of the case
  bool typed = false;
  Place place;
  Entry<Length> thickness, stile, rail, bottom_rail, overlap;
  Entry<Length> blocking;  // height of the blocks behind the stiles that slides are screwed to
  Entry<std::string> material;
};

struct WebFrameSpec {  // dividers made as frames of rails and runners
  bool typed = false;
  Place place;
  Entry<Length> rail, runner, tenon, free;
  Entry<OpenRails> rails;  // typed: rails and no runners
  Entry<std::string> material, front;
};

struct WorktopSpec {  // what the case stands under
  bool typed = false;
  Place place;
  Entry<Length> thickness;
  Entry<Length> height;  // of its upper face above the floor
  Entry<Length> leg;     // of its own legs, from the floor to its underside
  Entry<Length> width, depth;
  Entry<Length> left;  // how far it runs past the case's left side
  Entry<std::string> material;
};

struct CaseSpec {
  Entry<Length> width, height, depth;  // height and depth may follow from the worktop
  Entry<Length> side, bottom, top, raise;
  bool top_none = false;  // a worktop closes the case
  Place top_place;
  CaseJointSpec joint;
  BackSpec back;
  Entry<std::string> material;
  StretcherSpec stretchers;
  ToeKickSpec toe_kick;
  FeetSpec feet;
  FaceFrameSpec face_frame;
  WebFrameSpec web_frame;
  WorktopSpec worktop;
};

// `pull` of the fronts or of one front: a typed "none" takes the bank's away.
struct PullSpec {
  bool typed = false;
  bool none = false;
  Place place;
  Entry<Length> centers;  // between the two holes of a pull; zero: one hole, a knob
  Entry<Length> down;     // from the front's top edge to the holes
  Entry<int> count;       // pulls on one front: 1 or 2
};

// `fronts` of the bank.
struct FrontsSpec {
  Entry<FrontStyle> style;
  Entry<Length> thickness, gap;
  std::array<OverlayEdge, 4> overlay;  // by Edge; meaningful for overlay fronts
  std::array<Entry<Length>, 4> edge;   // by Edge; meaningful for inset fronts
  Place overlay_place, edge_place;     // of the whole key
  bool overlay_typed = false, edge_typed = false;
  Entry<std::string> material;
  Entry<Grain> grain;
  Entry<SawnCut> cut;
  Entry<Held> held;
  Entry<FrontMatch> match;
  PullSpec pull;
};

// `front` of one drawer or blank.
struct FrontSpec {
  Entry<Length> thickness;
  Entry<std::string> material;
  Entry<Grain> grain;
  PullSpec pull;
};

struct SlideSpec {
  Entry<SlideType> type;
  Entry<Length> length;  // typed false with length_auto typed: "auto"
  bool length_auto = false;
  std::vector<Entry<Length>> lengths;
  Place lengths_place;
  bool lengths_typed = false;
  Entry<Length> clearance, deduct, side_max, behind, line;
  Entry<std::string> rating;  // what a pair carries, as a weight (ParseMass)
};

struct StockSpec {  // a side or an end
  Entry<Length> thickness;
  Entry<std::string> material;
};

struct CornerSpec {
  Entry<CornerJoint> joint;
  Entry<Length> depth, lap, back_setback;
};

struct BottomSpec {
  Entry<BottomFit> fit;
  Entry<Length> thickness, depth, up, play;
  Entry<bool> open_back;
  Entry<std::string> material;
};

struct BoxSpec {
  StockSpec side, end;
  CornerSpec corner;
  BottomSpec bottom;
  Entry<Length> clear_below, clear_above;
  Entry<Length> height, depth;
  std::vector<Entry<Length>> heights;
  Place heights_place;
  bool heights_typed = false;
};

struct ScrewSpec {  // lengths of the screws the maker means to use
  Entry<Length> front, slide, pocket;
};

struct AllowanceSpec {  // what solid parts are sawn larger than their finished size
  Entry<Length> length, width;
};

struct GlueUpSpec {  // solid parts wider than a board
  bool typed = false;
  Entry<Length> board;  // widest board at hand
  Entry<Length> joint;  // what jointing takes at each joint
};

struct EdgeBandSpec {  // on the edges of sheet parts that are seen
  bool typed = false;
  Entry<Length> thickness;  // zero: too thin to be reckoned
  Entry<std::string> material;
  Entry<bool> fronts{true}, casework{true}, boxes{false};
};

struct GraduateSpec {
  Entry<Graduation> scheme;
  Entry<Length> step, first;
  Entry<Rational> ratio;
  std::vector<Entry<Rational>> shares;
  Place shares_place;
  bool shares_typed = false;
  Entry<bool> alike{false};  // equal: all of one size, the remainder left at the ends
  Place place;
};

struct SizeSpec {  // along the parent's split
  Entry<Length> exact, min, max;
  Entry<Rational> weight;
};

struct DividerSpec {
  Entry<Length> thickness;
  bool none = false;
  Place place;
};

enum class NodeKind : std::uint8_t { kRows, kColumns, kDrawer, kBlank, kOpen };

[[nodiscard]] constexpr bool IsSplit(NodeKind kind) {
  return kind == NodeKind::kRows || kind == NodeKind::kColumns;
}

// A node of the layout tree. Leaves name their own keys by index into Spec::leaves.
struct LayoutNode {
  NodeKind kind = NodeKind::kRows;
  Place place;
  SizeSpec size;
  int leaf = -1;  // index into Spec::leaves; -1 for a split
  // Splits only:
  std::vector<LayoutNode> children;
  GraduateSpec graduate;
  DividerSpec divider;
  Entry<Length> gap;
};

struct LeafSpec {
  Entry<std::string> name, contents;
  Entry<std::string> load;  // kept as text here; read where strength is checked
  FrontSpec front;
  int override_index = -1;  // into Spec::overrides; -1 when the drawer has no keys of its own
};

struct OverrideSpec {
  BoxSpec box;
  SlideSpec slides;
};

// Inputs of the gap check. Read and kept here; `size` answers for the plan and does not use them,
// but for the limits of a gap.
struct ToleranceSpec {
  Entry<Length> cut, place, opening;
};
struct LimitsSpec {
  Entry<Length> least, greatest;
};
struct MoistureSpec {  // percent, or the climate it comes from
  bool typed = false;
  Place place;
  std::optional<double> percent;
  double celsius = 0;
  double humidity_percent = 0;
};
struct SeasonSpec {
  bool typed = false;
  MoistureSpec made, dry, humid;
};
struct MeasuredAt {
  Entry<Length> at, size;
};
struct MeasuredPart {
  std::string id;
  Place place;
  Entry<Length> width, height, depth;
};
struct MeasuredSpec {
  bool typed = false;
  std::vector<MeasuredAt> width;
  Entry<Length> height_left, height_right, rising, falling, depth;
  std::vector<MeasuredPart> fronts, boxes;
};
struct SpacerSpec {
  Entry<std::string> name;
  Entry<Length> thickness;
  Entry<int> count;
};

struct DefectSpec {  // a stretch of a board's or sheet's length that is left out
  Entry<Length> from, to;
};
struct StockPieceSpec {  // a kind of sheet or board that can be bought, or is on hand
  Entry<std::string> name, material;
  Entry<Length> thickness, length, width;  // no thickness: any
  Entry<int> count;                        // how many there are
  Entry<bool> on_hand;
  Entry<Rational> price;  // of one
  std::vector<DefectSpec> defects;
};
struct StockListSpec {
  bool typed = false;
  Entry<Length> kerf, trim;
  Entry<int> stages;
  Entry<Rational> waste;  // of boards, in percent
  std::vector<StockPieceSpec> sheets, boards;
};

struct Spec {
  Entry<std::string> title;
  Entry<Unit> units;
  Entry<Length> round;
  std::optional<OpeningSpec> opening;  // exactly one of these two
  std::optional<CaseSpec> casework;
  FrontsSpec fronts;
  SlideSpec slides;
  BoxSpec box;
  ScrewSpec screws;
  AllowanceSpec allowance;
  EdgeBandSpec edge_band;
  GlueUpSpec glue_up;
  Entry<Length> grid;
  LayoutNode layout;  // a plain list of drawers is one node of rows
  std::vector<LeafSpec> leaves;
  std::vector<OverrideSpec> overrides;
  ToleranceSpec tolerance;
  Entry<Setting> setting;
  LimitsSpec limits;
  SeasonSpec season;
  MeasuredSpec measured;
  std::vector<SpacerSpec> spacers;
  StockListSpec stock;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_H_
