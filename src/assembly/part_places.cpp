#include "assembly/part_places.h"

#include "bank/part_roles.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

// Where what is `own` long begins when its middle lies on the middle of a room.
Length Centered(Length room, Length own) { return HalfBelow(room) - HalfBelow(own); }

Block BoxSideAt(const Box& box, Length wood_y, bool right) {
  const BoxBuild& build = box.build;
  const Length x = right ? box.x + box.width - build.side : box.x;
  // A half-blind dovetail leaves a lap on the ends' outer faces.
  return {x, wood_y, box.z + build.lap, build.side, box.wood_height, box.side_length};
}

Block BoxEndAt(const Box& box, Length wood_y, bool back) {
  const BoxBuild& build = box.build;
  const Length x = box.x + Centered(box.width, box.end_length);
  if (!back) return {x, wood_y, box.z, box.end_length, box.wood_height, build.end};
  return {x,
          wood_y + box.wood_height - box.back_height,
          box.z + box.depth - build.back_setback - build.end,
          box.end_length,
          box.back_height,
          build.end};
}

Block BoxBottomAt(const Box& box) {
  const BoxBuild& build = box.build;
  if (!Facts(build.fit).cut) {
    return {box.x, box.y, box.z, box.panel_width, build.bottom, box.panel_depth};
  }
  const Length x = box.x + Centered(box.width, box.panel_width);
  const Length z = build.open_back
                       ? box.z + box.depth - build.back_setback - box.panel_depth
                       : box.z + build.end + Centered(box.inside_depth, box.panel_depth);
  return {x, box.y + build.up, z, box.panel_width, build.bottom, box.panel_depth};
}

Block SpacePart(const Bank& bank, const Part& part, bool right) {
  const Space& space = bank.spaces[static_cast<std::size_t>(part.space)];
  if (Facts(part.role).group == PartGroup::kFront) {
    const Rect& r = space.front.rect;
    const Length z = bank.style == FrontStyle::kInset ? Length() : -space.front.thickness;
    return {r.x, r.y, z, r.width, r.height, space.front.thickness};
  }
  const Box& box = space.box;
  const bool applied = !Facts(box.build.fit).cut;
  const Length wood_y = applied ? box.y + box.build.bottom : box.y;
  if (part.role == PartRole::kBoxSide) return BoxSideAt(box, wood_y, right);
  if (part.role == PartRole::kBoxBottom) return BoxBottomAt(box);
  return BoxEndAt(box, wood_y, part.role == PartRole::kBoxBack);
}

Block MemberAt(const Bank& bank, const Divider& member) {
  const Length front = bank.casework ? bank.casework->front_in : Length();
  const Rect& r = member.rect;
  if (member.partition) return {r.x, member.begin, front, r.width, member.length, member.depth};
  return {member.begin, r.y, front, member.length, r.height, member.depth};
}

Block CaseBackAt(const Bank& bank, const CaseBuild& c) {
  const bool applied = Facts(c.back).behind;
  return {Centered(bank.opening_width, c.panel_width),
          applied ? -c.base : c.raise + c.back_play - c.base,
          c.front_in + (applied ? c.depth : c.inside_depth),
          c.panel_width,
          c.panel_height,
          c.back_thickness};
}

// Sides, bottom, top and back.
Block CasePart(const Bank& bank, PartRole role, bool right) {
  const CaseBuild& c = *bank.casework;
  if (role == PartRole::kCaseBack) return CaseBackAt(bank, c);
  if (role == PartRole::kCaseSide) {
    const Length left = -c.side_in;
    const Length x = right ? left + c.inside_width : left - c.side;
    return {x, -c.base, c.front_in, c.side, c.height, c.depth};
  }
  // Between the sides, and as far into them as the joint is deep.
  const Length x = Centered(bank.opening_width, c.member_length);
  const bool top = role == PartRole::kCaseTop;
  const Length y = top ? bank.opening_height + c.high_in : -c.low_in - c.bottom;
  return {x, y, c.front_in, c.member_length, top ? c.top : c.bottom, c.inside_depth};
}

// Of a drawer's front and box.
Block ClearInSpace(const Box& box, PartRole role, Block block) {
  const BoxBuild& build = box.build;
  const bool bottom = role == PartRole::kBoxBottom;
  const bool end = role == PartRole::kBoxFront || role == PartRole::kBoxBack;
  if (!end && !(bottom && Facts(build.fit).cut)) return block;
  block.x = box.x + build.side;
  block.width = box.inside_width;
  if (end) return block;
  const Length rear = block.z + block.depth;
  block.z = box.z + build.end;
  block.depth = build.open_back ? rear - block.z : box.inside_depth;
  return block;
}

// Of a web frame: its rails between what takes them, its runners between the rails.
Block ClearInFrame(const CaseBuild& c, const Divider& member, PartRole role, Block block) {
  const Length left = Max(block.x, member.begin + c.joint_depth);
  const Length right = Min(block.x + block.width, member.begin + member.length - c.joint_depth);
  block.x = left;
  block.width = right - left;
  if (role == PartRole::kWebRunner) {
    block.z += c.web->tenon;
    block.depth -= 2 * c.web->tenon;
  }
  return block;
}

}  // namespace

Block ClearOf(const Bank& bank, const Part& part, const Block& block) {
  if (part.space >= 0) {
    return ClearInSpace(bank.spaces[static_cast<std::size_t>(part.space)].box, part.role, block);
  }
  if (part.divider >= 0) {
    const Divider& member = bank.dividers[static_cast<std::size_t>(part.divider)];
    const PartGroup group = Facts(part.role).group;
    if (group == PartGroup::kWebFrame) {
      return ClearInFrame(*bank.casework, member, part.role, block);
    }
    if (group != PartGroup::kMember) return block;
    const Rect& r = member.rect;
    return {r.x, r.y, block.z, r.width, r.height, block.depth};
  }
  const bool lies = part.role == PartRole::kCaseBottom || part.role == PartRole::kCaseTop ||
                    part.role == PartRole::kStretcher;
  const bool let_in_back = part.role == PartRole::kCaseBack && !Facts(bank.casework->back).behind;
  if (!lies && !let_in_back) return block;
  Block clear = block;
  clear.x = -bank.casework->side_in;
  clear.width = bank.casework->inside_width;
  return clear;
}

Block PlaceOf(const Bank& bank, const Part& part, bool right) {
  if (part.space >= 0) return SpacePart(bank, part, right);
  if (part.divider >= 0) {
    return MemberAt(bank, bank.dividers[static_cast<std::size_t>(part.divider)]);
  }
  return CasePart(bank, part.role, right);
}

}  // namespace tillwright
