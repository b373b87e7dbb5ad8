#include "draw/stick/part_blocks.h"

#include <algorithm>
#include <utility>

#include "bank/part_roles.h"
#include "draw/overview/overview_parts.h"

namespace tillwright {
namespace {

Block BlockOf(const Cuboid& box) {
  return {box.at.x, box.at.y, box.at.z, box.width, box.height, box.depth};
}

// Front, sides, ends and bottom of a drawer; a blank's front.
Block DrawerBlock(const Bank& bank, const Part& part) {
  const Space& space = bank.spaces[static_cast<std::size_t>(part.space)];
  if (part.role == PartRole::kFront) return BlockOf(FrontSolid(bank, space).box);
  const std::vector<SolidPart> solids = DrawerSolids(bank, space);
  Block block = BlockOf(std::ranges::find(solids, part.role, &SolidPart::role)->box);
  const BoxBuild& build = space.box.build;
  if (part.role == PartRole::kBoxBottom && build.fit != BottomFit::kApplied) {
    block.x = space.box.x + build.side - build.groove + build.play;
  }
  return block;
}

Block MemberBlock(const Bank& bank, const Divider& member) {
  const Length front = bank.casework ? bank.casework->front_in : Length();
  const Rect& r = member.rect;
  if (member.partition) return {r.x, member.begin, front, r.width, member.length, member.depth};
  return {member.begin, r.y, front, member.length, r.height, member.depth};
}

// Between the case's sides, and as far into them as the joint is deep.
Block AcrossBlock(const Bank& bank, const CaseBuild& c, Length y, Length height) {
  const Length x = HalfBelow(bank.opening_width - c.member_length);
  return {x, y, c.front_in, c.member_length, height, c.inside_depth};
}

Block BackBlock(const CaseBuild& c) {
  if (c.back == BackFit::kApplied) {
    return {-c.side_in - c.side, -c.base,        c.front_in + c.depth,
            c.panel_width,       c.panel_height, c.back_thickness};
  }
  const Length in = c.back == BackFit::kRabbet ? c.back_lap : c.back_depth;
  return {c.back_play - c.side_in - in,
          c.raise + c.back_play - c.base,
          c.front_in + c.inside_depth,
          c.panel_width,
          c.panel_height,
          c.back_thickness};
}

// Sides, bottom, top and back.
Block CaseBlock(const Bank& bank, const CaseBuild& c, PartRole role) {
  if (role == PartRole::kCaseBack) return BackBlock(c);
  if (role == PartRole::kCaseBottom) {
    return AcrossBlock(bank, c, -c.low_in - c.bottom, c.bottom);
  }
  if (role == PartRole::kCaseTop) {
    return AcrossBlock(bank, c, bank.opening_height + c.high_in, c.top);
  }
  return {-c.side_in - c.side, -c.base, c.front_in, c.side, c.height, c.depth};
}

bool IsOf(const Part& part, const CasePiece& piece) {
  if (part.role != piece.role || part.space != piece.space || part.divider != piece.divider) {
    return false;
  }
  std::array sizes{part.length, part.width, part.thickness};
  std::array block{piece.block.width, piece.block.height, piece.block.depth};
  std::ranges::sort(sizes);
  std::ranges::sort(block);
  return sizes == block;
}

StickAxis ThicknessAxis(PartRole role) {
  switch (Facts(role).plane.thick) {
    case BlockAxis::kX:
      return StickAxis::kWidth;
    case BlockAxis::kY:
      return StickAxis::kHeight;
    case BlockAxis::kZ:
      break;
  }
  return StickAxis::kDepth;
}

}  // namespace

Block PartBlock(const Bank& bank, const Part& part) {
  for (const CasePiece& piece : bank.pieces) {
    if (IsOf(part, piece)) return piece.block;
  }
  if (part.space >= 0) return DrawerBlock(bank, part);
  if (part.divider >= 0) {
    return MemberBlock(bank, bank.dividers[static_cast<std::size_t>(part.divider)]);
  }
  return CaseBlock(bank, *bank.casework, part.role);
}

Length SizeAlong(const Block& block, StickAxis axis) {
  if (axis == StickAxis::kHeight) return block.height;
  return axis == StickAxis::kWidth ? block.width : block.depth;
}

std::array<StickAxis, 3> PartAxes(const Part& part, const Block& block) {
  const StickAxis thick = ThicknessAxis(part.role);
  StickAxis one = thick == StickAxis::kWidth ? StickAxis::kDepth : StickAxis::kWidth;
  StickAxis other = thick == StickAxis::kHeight ? StickAxis::kDepth : StickAxis::kHeight;
  if (SizeAlong(block, one) != part.length) std::swap(one, other);
  return {one, other, thick};
}

}  // namespace tillwright
