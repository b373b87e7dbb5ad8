// The roles that parts have, one row a role: all that differs from role to role and that no size
// decides.
#ifndef TILLWRIGHT_BANK_PART_ROLES_H_
#define TILLWRIGHT_BANK_PART_ROLES_H_

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "spec/kind_table.h"
#include "tillwright/bank.h"

namespace tillwright {

// What a part is a part of.
enum class PartGroup : std::uint8_t {
  kFront,
  kBox,
  kCarcass,  // sides, bottom, top, back
  kMember,
  kCrosspiece,  // stretchers, toe kick
  kFaceFrame,
  kBlocking,
  kWebFrame,
  kWorktop
};

// Of these the solver says where each piece stands: Bank::pieces.
[[nodiscard]] constexpr bool IsInPieces(PartGroup group) {
  return group == PartGroup::kCrosspiece || group == PartGroup::kFaceFrame ||
         group == PartGroup::kBlocking || group == PartGroup::kWebFrame ||
         group == PartGroup::kWorktop;
}

// The edges that are seen when the piece is done, which a band goes on.
enum class SeenEdge : std::uint8_t { kNone, kFront, kUpper, kAll };

// Where such an edge lies in the face that is drawn.
enum class FaceEdge : std::uint8_t { kNone, kLeft, kUpper, kLower, kAll };

// How drawn faces lie: from above, from the front, from the right, from within the box.
inline constexpr PartFrame kLying{{JobAxis::kX, false}, {JobAxis::kZ, false}, {JobAxis::kY, true}};
inline constexpr PartFrame kFacing{
    {JobAxis::kX, false}, {JobAxis::kY, false}, {JobAxis::kZ, false}};
inline constexpr PartFrame kSideways{
    {JobAxis::kZ, false}, {JobAxis::kY, false}, {JobAxis::kX, true}};
inline constexpr PartFrame kFromBehind{
    {JobAxis::kX, true}, {JobAxis::kY, false}, {JobAxis::kZ, true}};
// From below, the front edge above; from above, the front at the left.
inline constexpr PartFrame kFromBelow{
    {JobAxis::kX, false}, {JobAxis::kZ, true}, {JobAxis::kY, false}};
inline constexpr PartFrame kRunning{{JobAxis::kZ, false}, {JobAxis::kX, true}, {JobAxis::kY, true}};

// Which members end in a part, and where: each as the part of that name takes them.
enum class TakesMembers : std::uint8_t {
  kNone,  // what runs along a part is among its own cuts
  kSide,
  kBottom,
  kTop,
  kStretcher,
  kWorktop,
  kPartition,
  kDivider
};

struct PartRoleFacts {
  PartRole kind;
  std::string_view word;    // what lists call it
  std::string_view suffix;  // of its id, after what it is for: ".side"; empty for a member
  PartGroup group = PartGroup::kCarcass;
  std::string_view face = "Inside face";  // the one that is drawn
  PartFrame frame = kLying;               // of a pair the left-hand one's
  // To the right, upward, or as the material and the spec will have it (none).
  Grain grain = Grain::kHorizontal;
  SeenEdge seen = SeenEdge::kNone;
  FaceEdge seen_at = FaceEdge::kNone;
  // The faces that take members, as lists call them: the one that is drawn, and the other.
  std::string_view seats = "inside", other_seats = "inside";
  TakesMembers takes = TakesMembers::kNone;
  // In the exploded drawing of a drawer: its name, and how many steps out along its thickness.
  std::string_view apart{};
  int out = 0;
  bool in_pairs = false;    // there are a left and a right one
  bool joined = false;      // to other parts, at both ends
  bool from_front = false;  // seen in the front view, before the case's edges
};

// By PartRole.
inline constexpr std::array kPartRoles{
    PartRoleFacts{.kind = PartRole::kFront,
                  .word = "front",
                  .suffix = ".front",
                  .group = PartGroup::kFront,
                  .face = "Show face",
                  .frame = kFacing,
                  .grain = Grain::kNone,
                  .seen = SeenEdge::kAll,
                  .seen_at = FaceEdge::kAll,
                  .apart = "Front",
                  .out = -2},
    PartRoleFacts{.kind = PartRole::kBoxSide,
                  .word = "box side",
                  .suffix = ".side",
                  .group = PartGroup::kBox,
                  .frame = kSideways,
                  .seen = SeenEdge::kUpper,
                  .seen_at = FaceEdge::kUpper,
                  .apart = "side",
                  .out = 1,
                  .in_pairs = true},
    PartRoleFacts{.kind = PartRole::kBoxFront,
                  .word = "box front",
                  .suffix = ".box_front",
                  .group = PartGroup::kBox,
                  .frame = kFromBehind,
                  .seen = SeenEdge::kUpper,
                  .seen_at = FaceEdge::kUpper,
                  .apart = "Box front",
                  .out = -1},
    PartRoleFacts{.kind = PartRole::kBoxBack,
                  .word = "box back",
                  .suffix = ".box_back",
                  .group = PartGroup::kBox,
                  .frame = kFacing,
                  .seen = SeenEdge::kUpper,
                  .seen_at = FaceEdge::kUpper,
                  .apart = "Box back",
                  .out = 1},
    PartRoleFacts{.kind = PartRole::kBoxBottom,
                  .word = "box bottom",
                  .suffix = ".bottom",
                  .group = PartGroup::kBox,
                  .grain = Grain::kNone,
                  .apart = "Bottom",
                  .out = -1},
    PartRoleFacts{.kind = PartRole::kCaseSide,
                  .word = "case side",
                  .suffix = ".side",
                  .frame = kSideways,
                  .grain = Grain::kVertical,
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLeft,
                  .seats = "left side",
                  .other_seats = "right side",
                  .takes = TakesMembers::kSide,
                  .in_pairs = true},
    PartRoleFacts{.kind = PartRole::kCaseBottom,
                  .word = "case bottom",
                  .suffix = ".bottom",
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLower,
                  .takes = TakesMembers::kBottom,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kCaseTop,
                  .word = "case top",
                  .suffix = ".top",
                  .frame = kFromBelow,
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kUpper,
                  .takes = TakesMembers::kTop,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kCaseBack,
                  .word = "case back",
                  .suffix = ".back",
                  .frame = kFacing,
                  .grain = Grain::kNone},
    PartRoleFacts{.kind = PartRole::kDivider,
                  .word = "divider",
                  .suffix = "",
                  .group = PartGroup::kMember,
                  .face = "Upper face",
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLower,
                  .seats = "upper face",
                  .other_seats = "lower face",
                  .takes = TakesMembers::kDivider,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kPartition,
                  .word = "partition",
                  .suffix = "",
                  .group = PartGroup::kMember,
                  .face = "Right face",
                  .frame = kSideways,
                  .grain = Grain::kVertical,
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLeft,
                  .seats = "right face",
                  .other_seats = "left face",
                  .takes = TakesMembers::kPartition,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kStretcher,
                  .word = "stretcher",
                  .suffix = ".stretcher",
                  .group = PartGroup::kCrosspiece,
                  .face = "Upper face",
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLower,
                  .seats = "upper face",
                  .other_seats = "lower face",
                  .takes = TakesMembers::kStretcher,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kToeKick,
                  .word = "toe kick",
                  .suffix = ".toe_kick",
                  .group = PartGroup::kCrosspiece,
                  .face = "Front face",
                  .frame = kFacing,
                  .joined = true,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameStile,
                  .word = "stile",
                  .suffix = ".stile",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .frame = kFacing,
                  .grain = Grain::kVertical,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameTopRail,
                  .word = "top rail",
                  .suffix = ".top_rail",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .frame = kFacing,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameBottomRail,
                  .word = "bottom rail",
                  .suffix = ".bottom_rail",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .frame = kFacing,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameRail,
                  .word = "rail",
                  .suffix = ".rail",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .frame = kFacing,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kBlocking,
                  .word = "blocking",
                  .suffix = ".blocking",
                  .group = PartGroup::kBlocking,
                  .face = "Face to the slide",
                  .frame = kSideways},
    PartRoleFacts{.kind = PartRole::kWebRail,
                  .word = "web rail",
                  .suffix = ".web_rail",
                  .group = PartGroup::kWebFrame,
                  .face = "Upper face",
                  .seats = "upper face",
                  .other_seats = "lower face",
                  .takes = TakesMembers::kDivider,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kWebRunner,
                  .word = "web runner",
                  .suffix = ".web_runner",
                  .group = PartGroup::kWebFrame,
                  .face = "Upper face",
                  .frame = kRunning},
    PartRoleFacts{.kind = PartRole::kWorktop,
                  .word = "worktop",
                  .suffix = ".worktop",
                  .group = PartGroup::kWorktop,
                  .face = "Upper face",
                  .seen = SeenEdge::kAll,
                  .seen_at = FaceEdge::kAll,
                  .seats = "underside",
                  .other_seats = "underside",
                  .takes = TakesMembers::kWorktop,
                  .from_front = true},
};
static_assert(InOrder(kPartRoles));

[[nodiscard]] constexpr const PartRoleFacts& Facts(PartRole role) {
  return kPartRoles[static_cast<std::size_t>(role)];
}

// What a piece of the case is made of.
[[nodiscard]] const std::string& CaseMaterial(const CaseBuild& build,
                                              const CasePiece& piece);

}  // namespace tillwright

#endif  // TILLWRIGHT_BANK_PART_ROLES_H_
