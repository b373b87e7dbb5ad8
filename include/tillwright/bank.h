// The solved bank: every size and place, as plain data. What the checks judge, the drawings draw
// and the writers write. Nothing here is computed; SolveBank (solve.h) fills it in.
//
// Axes, seen from the front: x to the right from the opening's left edge, y up from its bottom
// edge, z back from the case's front edges (an overlay front has z < 0).
#ifndef TILLWRIGHT_BANK_H_
#define TILLWRIGHT_BANK_H_

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "tillwright/length.h"
#include "tillwright/spec.h"

namespace tillwright {

enum class SpaceKind : std::uint8_t { kDrawer, kBlank, kOpen };

// D1, B1, O1: drawers, blanks and open spaces, each numbered from 1 in reading order.
struct SpaceId {
  SpaceKind kind = SpaceKind::kDrawer;
  int number = 0;
  friend constexpr bool operator==(const SpaceId&, const SpaceId&) = default;
};
[[nodiscard]] std::string ToText(SpaceId id);

// The center of a hole for a pull, from the opening's lower left corner.
struct PullHole {
  Length x, y;
};

struct Front {
  Rect rect;  // the show face, seen from the front
  Length thickness;
  std::string material;
  Grain grain = Grain::kHorizontal;
  std::vector<PullHole> pulls;  // left to right; empty when no pulls are given
  Length pull_centers;          // between the two holes of a pull; zero: knobs, one hole each
};

// How a box is made: the spec's keys with the defaults filled in.
struct BoxBuild {
  Length side, end;  // thicknesses
  CornerJoint joint = CornerJoint::kButt;
  Length joint_depth;   // r: rabbet and dado
  Length lap;           // half-blind dovetail: left uncut on the ends' outer faces
  Length back_setback;  // back end in from the sides' rear ends
  BottomFit fit = BottomFit::kGroove;
  Length bottom;  // thickness
  Length groove;  // depth g: groove and rabbet
  Length up;      // u: lower edge of the groove above the box's lower edge
  Length play;    // p, per edge
  bool open_back = false;
  Length clear_below, clear_above;
  std::string side_material, end_material, bottom_material;

  friend bool operator==(const BoxBuild&, const BoxBuild&) = default;
};

struct Slide {
  SlideType type = SlideType::kSideMount;
  Length length;
  Length line_y;     // slide line above the opening's bottom
  Length line;       // the same above the box's lower edge
  Length clearance;  // c, each side (not undermount)
  Length deduct;     // k (undermount)
  Length side_max;   // thickest side (undermount)
  Length behind;     // least space behind the box
};

struct Box {
  Length x, y, z;  // left, lower and front faces; y is the panel's face with an applied bottom
  Length width, height, depth;
  Length inside_width, inside_depth, inside_height;
  Length side_length, end_length;
  Length wood_height;               // sides and front end: height, less an applied bottom
  Length back_height;               // back end: less what an open back leaves off
  Length panel_width, panel_depth;  // bottom: side to side, front to back
  bool solid_bottom = false;        // solid wood: its grain runs side to side
  BoxBuild build;
};

// One leaf of the layout. A blank has a front and no box; an open space has neither.
struct Space {
  SpaceId id;
  std::string name;  // a label, may be empty
  Rect region;       // the part of the fronts' area this leaf was given, along both axes
  Rect cell;         // the clear space a box may use
  Front front;       // drawers and blanks
  Slide slide;       // drawers
  Box box;           // drawers

  [[nodiscard]] bool HasFront() const { return id.kind != SpaceKind::kOpen; }
  [[nodiscard]] bool HasBox() const { return id.kind == SpaceKind::kDrawer; }
};

enum class Axis : std::uint8_t { kX, kY };

// A member between two children of a split: a divider lies in rows, a partition stands in columns.
struct Divider {
  bool partition = false;
  int number = 0;  // H1, H2 … dividers; V1, V2 … partitions
  Rect rect;       // the clear part of it, seen from the front
  Length length;   // with what enters the neighbors' dados
  Length depth;    // front to back
  Length begin;    // where that length begins, along x (dividers) or y (partitions)
};
[[nodiscard]] std::string ToText(const Divider& divider);

// One end of a gap: a front (or blank), a member, or an edge of the opening.
struct GapEnd {
  enum class Kind : std::uint8_t { kSpace, kDivider, kOpening } kind = Kind::kOpening;
  int index = 0;  // into Bank::spaces or Bank::dividers; an Edge for the opening
  friend constexpr bool operator==(const GapEnd&, const GapEnd&) = default;
};

struct Gap {
  Axis axis = Axis::kY;
  GapEnd from, to;  // lower or left, then upper or right
  Length at;        // where it begins along the axis
  Length size;
  Length begin, end;  // the stretch of the other axis where the two face one another
  int behind = -1;    // overlay: the member whose edge shows in it, into Bank::dividers
};

// How far an overlay front covers the case beyond the opening's edge; may be negative. Under a
// worktop there is no edge to cover, but a gap.
struct Overlap {
  int space = 0;  // index into Bank::spaces
  Edge edge = Edge::kTop;
  Length size;
};

enum class PartRole : std::uint8_t {
  kFront,
  kBoxSide,
  kBoxFront,
  kBoxBack,
  kBoxBottom,
  kCaseSide,
  kCaseBottom,
  kCaseTop,
  kCaseBack,
  kDivider,
  kPartition,
  kStretcher,
  kToeKick,
  kFrameStile,
  kFrameTopRail,
  kFrameBottomRail,
  kFrameRail,
  kBlocking,
  kWebRail,
  kWebRunner,
  kWorktop
};
[[nodiscard]] std::string_view ToText(PartRole role);

[[nodiscard]] std::string_view ToText(CutKind kind);

enum class CutFrom : std::uint8_t {
  kLowerEdge,
  kFrontEnd,
  kBackEnd,
  kEachEnd,
  kRearEdge,
  kUpperFace,
  kLeftEdge  // of a runner: it lies from front to back
};
[[nodiscard]] std::string_view ToText(CutFrom from);

// Where a cut is made: on the inside face unless said. Dividers have an upper, partitions a right
// face instead.
enum class CutOn : std::uint8_t {
  kInside,
  kInnerEdge,
  kBothFaces,
  kOutside,
  kUpperFace,
  kLowerFace,
  kRightFace
};
[[nodiscard]] std::string_view ToText(CutOn face);

// What a cut takes, or what it leaves.
enum class CutPurpose : std::uint8_t {
  kBoxBottom,   // takes a box's bottom
  kBoxCorner,   // joins a box's sides and ends
  kCaseBottom,  // takes the case's bottom,
  kCaseTop,     // its top, or the stretchers in its place,
  kCaseBack,    // and its back
  kMember,      // takes a divider or partition
  kTongue,      // leaves a tongue at the part's end
  kWebRunner,   // in a web frame's rail: takes the runners' tenons
  kTenon,       // leaves a tenon at a runner's end
  kToeKick,     // the notch for the foot
  kPull         // a bore for a pull's bolt
};

// One channel or step: `offset` from the named edge to its near side, then `width`, and `depth`
// into the face.
struct Cut {
  CutKind kind = CutKind::kGroove;
  CutFrom from = CutFrom::kLowerEdge;
  Length offset, width, depth;
  CutOn face = CutOn::kInside;
  CutPurpose purpose = CutPurpose::kMember;
  friend constexpr bool operator==(const Cut&, const Cut&) = default;
};

// Cut out of a case side's lower front corner, for the foot; zero: none.
struct Notch {
  Length width, height;  // from the front edge, from the lower end
  [[nodiscard]] constexpr bool IsNone() const { return width.IsZero(); }
  friend constexpr bool operator==(const Notch&, const Notch&) = default;
};

struct Part {
  PartRole role = PartRole::kFront;
  int space = -1;    // index into Bank::spaces, or
  int divider = -1;  // index into Bank::dividers, or neither: a part of the case
  int takes = -1;    // runners let in for a partition: its index into Bank::dividers
  bool ahead = false;  // the front rail of a web frame, of a wood of its own
  int count = 1;
  Length length, width, thickness;  // length along the grain; without a grain the longer side
  Grain grain = Grain::kNone;       // as the part stands in the piece
  std::string material;
  std::vector<Cut> cuts;  // on the inside face unless the cut says otherwise
  Notch notch;
};

// The frame on the case's front.
struct FaceFrame {
  Length thickness, stile, rail, bottom_rail;
  Length overlap;   // past the sides' outer faces
  Length blocking;  // height of the blocks behind the stiles
  std::string material;
};
// Dividers made as frames: widths of rails and runners, length of the runners' tenons, and the room
// behind the rear ones; or open rails, without runners.
struct WebFrame {
  Length rail, runner, tenon, free;
  std::optional<OpenRails> open;
  std::string material;
  std::optional<std::string> front;  // of the front rails, where it is another
};
// The worktop over the case; width and depth zero where they are not given.
struct Worktop {
  Length thickness, leg;
  Length width, depth, left;
  std::string material;
};

struct CaseBuild {
  Length width, height, depth;
  Length side, bottom, top;  // top zero: closed by a worktop
  bool top_none = false;
  Length raise;
  CaseJoint joint = CaseJoint::kButt;
  Length joint_depth;
  Length tongue;  // groove joint: one thickness for all; zero with another joint
  CaseFixing fixing = CaseFixing::kPocketScrews;
  BackFit back = BackFit::kRabbet;
  Length back_thickness;  // zero when there is none
  Length back_lap, back_inset, back_depth, back_play;
  Length back_allowance;
  Length panel_width, panel_height;  // of the back
  Length member_length;              // bottom and top
  std::string material, back_material;
  bool stretchers = false;  // two rails, `top` thick, instead of a top
  Length stretcher_width;
  Length kick_setback;  // zero: no toe kick; it is as high as `raise`
  Length feet;          // height of the feet, zero when there are none
  int feet_count = 0;
  Length feet_setback;  // from the front; never before the sides' front edges
  std::optional<FaceFrame> frame;
  std::optional<WebFrame> web;
  std::optional<Worktop> worktop;
  // Between the case's own parts; without a face frame the opening's.
  Length inside_width, inside_height, inside_depth;
  // How far the case's parts lie outside the opening that its face frame leaves; without a face
  // frame zero, but for `base`.
  Length base;                      // from the sides' lower ends to the opening's lower edge
  Length side_in, low_in, high_in;  // sides, bottom and top, beyond the opening's edges
  Length front_in;                  // the sides' front edges, behind the opening's front

  // Whether a worktop, and no edge of the case, is over the fronts.
  [[nodiscard]] bool UnderWorktop() const { return top_none && !frame; }
  // The edge that fronts cover: of the case's stock, or its face frame's; zero at a top that is
  // none.
  [[nodiscard]] Length EdgeAt(Edge edge) const;
  // How wide the channel is that takes a member so thick.
  [[nodiscard]] Length SeatWidth(Length member) const { return tongue.IsZero() ? member : tongue; }
  // How far the back goes into the sides.
  [[nodiscard]] Length BackEntry() const { return back_lap + back_depth; }
};

// A block of space: its left, lower and front faces, then its sizes.
struct Block {
  Length x, y, z;
  Length width, height, depth;
};

// To the right, upward, to the rear.
enum class JobAxis : std::uint8_t { kX, kY, kZ };
inline constexpr std::array kJobAxes{JobAxis::kX, JobAxis::kY, JobAxis::kZ};

[[nodiscard]] constexpr Length SizeAlong(const Block& block, JobAxis axis) {
  if (axis == JobAxis::kX) return block.width;
  return axis == JobAxis::kY ? block.height : block.depth;
}

// Along one of the job's axes, or against it.
struct JobWay {
  JobAxis axis = JobAxis::kX;
  bool against = false;
  friend constexpr bool operator==(const JobWay&, const JobWay&) = default;
};

// How the drawn face of a part lies in the job: where its right, its upper side and the way into
// the wood point. The drawn face is the one the cuts are laid out on.
struct PartFrame {
  JobWay right{}, up{}, into{};
  friend constexpr bool operator==(const PartFrame&, const PartFrame&) = default;
};

// A part of the case beyond its sides, bottom, top, back and plain members, where it stands, with
// what enters other parts.
struct CasePiece {
  PartRole role = PartRole::kStretcher;
  int space = -1;    // blocking: index into Bank::spaces
  int divider = -1;  // web frames and what stands before members: index into Bank::dividers
  Block block;
  int takes = -1;              // runners: the partition that they are cut for, in Bank::dividers
  bool ahead = false;          // the front rail of a web frame, of a wood of its own
  std::vector<Cut> cuts = {};  // for it
};

// Remarks of the solver that are no errors: what it had to move, and sums that do not close.
struct SolveNote {
  enum class Kind : std::uint8_t {
    kDoesNotClose,  // all sizes exact, and `amount` is left over (negative: too long)
    kFirstMoved,    // bounds moved the first size of an arithmetic graduation
    kOutOfLine,     // remainders put outer edges of fronts above one another out of line
    kNoDivider,     // "none" took away what a slide stands on
    kTwoSizes       // equal fronts of two sizes; all of one they would leave `amount`
  } kind = Kind::kDoesNotClose;
  std::string subject;
  Length amount;
  Place place = {};  // of the node it is about
};

struct Bank {
  std::string title;
  Unit units = Unit::kInch;
  Length round;
  Length opening_width, opening_height, opening_depth;
  FrontStyle style = FrontStyle::kOverlay;
  FrontMatch match = FrontMatch::kNone;
  std::optional<CaseBuild> casework;
  std::array<Length, 4> overlay;  // by Edge, overlay fronts: as asked, before remainders
  std::vector<Space> spaces;      // leaves in reading order
  std::vector<Divider> dividers;
  std::vector<CasePiece> pieces;
  std::vector<Gap> gaps;          // along y bottom up, then along x left to right
  std::vector<Overlap> overlaps;  // overlay fronts
  std::vector<Part> parts;
  std::vector<SolveNote> notes;
};

// "opening.bottom", "D3", "H1".
[[nodiscard]] std::string ToText(const Bank& bank, const GapEnd& end);
// "D1.side", "case.bottom", "H1": what parts lists, drawings and sticks call a part.
[[nodiscard]] std::string PartId(const Bank& bank, const Part& part);
// What the part is for: "D1", "H1" or "case".
[[nodiscard]] std::string PartFor(const Bank& bank, const Part& part);

}  // namespace tillwright

#endif  // TILLWRIGHT_BANK_H_
