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

// The sides of a block: left to right, upward, to the rear.
enum class BlockAxis : std::uint8_t { kX, kY, kZ };

[[nodiscard]] constexpr Length SizeAlong(const Block& block, BlockAxis axis) {
  if (axis == BlockAxis::kX) return block.width;
  return axis == BlockAxis::kY ? block.height : block.depth;
}

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

// The edges that are seen when the piece is done, which a band goes on.
enum class SeenEdge : std::uint8_t { kNone, kFront, kUpper, kAll };

// Where such an edge lies in the face that is drawn.
enum class FaceEdge : std::uint8_t { kNone, kLeft, kUpper, kLower, kAll };

// The sides of the block that a part's drawn face shows to the right and upward, and the third.
struct FacePlane {
  BlockAxis right, up, thick;
};
inline constexpr FacePlane kLying{BlockAxis::kX, BlockAxis::kZ, BlockAxis::kY};
inline constexpr FacePlane kFacing{BlockAxis::kX, BlockAxis::kY, BlockAxis::kZ};
inline constexpr FacePlane kSideways{BlockAxis::kZ, BlockAxis::kY, BlockAxis::kX};

struct PartRoleFacts {
  PartRole kind;
  std::string_view word;    // what lists call it
  std::string_view suffix;  // of its id, after what it is for: ".side"; empty for a member
  PartGroup group = PartGroup::kCarcass;
  std::string_view face = "Inside face";  // the one that is drawn
  FacePlane plane = kLying;
  // To the right, upward, or as the material and the spec will have it (none).
  Grain grain = Grain::kHorizontal;
  SeenEdge seen = SeenEdge::kNone;
  FaceEdge seen_at = FaceEdge::kNone;
  // The faces that take members, as lists call them: the one that is drawn, and the other.
  std::string_view seats = "inside", other_seats = "inside";
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
                  .plane = kFacing,
                  .grain = Grain::kNone,
                  .seen = SeenEdge::kAll,
                  .seen_at = FaceEdge::kAll},
    PartRoleFacts{.kind = PartRole::kBoxSide,
                  .word = "box side",
                  .suffix = ".side",
                  .group = PartGroup::kBox,
                  .plane = kSideways,
                  .seen = SeenEdge::kUpper,
                  .seen_at = FaceEdge::kUpper,
                  .in_pairs = true},
    PartRoleFacts{.kind = PartRole::kBoxFront,
                  .word = "box front",
                  .suffix = ".box_front",
                  .group = PartGroup::kBox,
                  .plane = kFacing,
                  .seen = SeenEdge::kUpper,
                  .seen_at = FaceEdge::kUpper},
    PartRoleFacts{.kind = PartRole::kBoxBack,
                  .word = "box back",
                  .suffix = ".box_back",
                  .group = PartGroup::kBox,
                  .plane = kFacing,
                  .seen = SeenEdge::kUpper,
                  .seen_at = FaceEdge::kUpper},
    PartRoleFacts{.kind = PartRole::kBoxBottom,
                  .word = "box bottom",
                  .suffix = ".bottom",
                  .group = PartGroup::kBox,
                  .grain = Grain::kNone},
    PartRoleFacts{.kind = PartRole::kCaseSide,
                  .word = "case side",
                  .suffix = ".side",
                  .plane = kSideways,
                  .grain = Grain::kVertical,
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLeft,
                  .seats = "left side",
                  .other_seats = "right side",
                  .in_pairs = true},
    PartRoleFacts{.kind = PartRole::kCaseBottom,
                  .word = "case bottom",
                  .suffix = ".bottom",
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLower,
                  .joined = true},
    // Its inside face is seen from below, the front edge above.
    PartRoleFacts{.kind = PartRole::kCaseTop,
                  .word = "case top",
                  .suffix = ".top",
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kUpper,
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kCaseBack,
                  .word = "case back",
                  .suffix = ".back",
                  .plane = kFacing,
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
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kPartition,
                  .word = "partition",
                  .suffix = "",
                  .group = PartGroup::kMember,
                  .face = "Right face",
                  .plane = kSideways,
                  .grain = Grain::kVertical,
                  .seen = SeenEdge::kFront,
                  .seen_at = FaceEdge::kLeft,
                  .seats = "right face",
                  .other_seats = "left face",
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
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kToeKick,
                  .word = "toe kick",
                  .suffix = ".toe_kick",
                  .group = PartGroup::kCrosspiece,
                  .face = "Front face",
                  .plane = kFacing,
                  .joined = true,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameStile,
                  .word = "stile",
                  .suffix = ".stile",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .plane = kFacing,
                  .grain = Grain::kVertical,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameTopRail,
                  .word = "top rail",
                  .suffix = ".top_rail",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .plane = kFacing,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameBottomRail,
                  .word = "bottom rail",
                  .suffix = ".bottom_rail",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .plane = kFacing,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kFrameRail,
                  .word = "rail",
                  .suffix = ".rail",
                  .group = PartGroup::kFaceFrame,
                  .face = "Front face",
                  .plane = kFacing,
                  .from_front = true},
    PartRoleFacts{.kind = PartRole::kBlocking,
                  .word = "blocking",
                  .suffix = ".blocking",
                  .group = PartGroup::kBlocking,
                  .face = "Face to the slide",
                  .plane = kSideways},
    PartRoleFacts{.kind = PartRole::kWebRail,
                  .word = "web rail",
                  .suffix = ".web_rail",
                  .group = PartGroup::kWebFrame,
                  .face = "Upper face",
                  .seats = "upper face",
                  .other_seats = "lower face",
                  .joined = true},
    PartRoleFacts{.kind = PartRole::kWebRunner,  // its front at the left
                  .word = "web runner",
                  .suffix = ".web_runner",
                  .group = PartGroup::kWebFrame,
                  .face = "Upper face",
                  .plane = {BlockAxis::kZ, BlockAxis::kX, BlockAxis::kY}},
    PartRoleFacts{.kind = PartRole::kWorktop,
                  .word = "worktop",
                  .suffix = ".worktop",
                  .group = PartGroup::kWorktop,
                  .face = "Upper face",
                  .seen = SeenEdge::kAll,
                  .seen_at = FaceEdge::kAll,
                  .seats = "underside",
                  .other_seats = "underside",
                  .from_front = true},
};
static_assert(InOrder(kPartRoles));

[[nodiscard]] constexpr const PartRoleFacts& Facts(PartRole role) {
  return kPartRoles[static_cast<std::size_t>(role)];
}

// What a part of the case is made of, but for its back. REQUIRES: the case has such parts.
[[nodiscard]] const std::string& CaseMaterial(const CaseBuild& build, PartRole role);

}  // namespace tillwright

#endif  // TILLWRIGHT_BANK_PART_ROLES_H_
