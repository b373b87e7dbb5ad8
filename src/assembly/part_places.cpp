#include "assembly/part_places.h"

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
  if (build.fit == BottomFit::kApplied) {
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
  if (part.role == PartRole::kFront) {
    const Rect& r = space.front.rect;
    const Length z = bank.style == FrontStyle::kInset ? Length() : -space.front.thickness;
    return {r.x, r.y, z, r.width, r.height, space.front.thickness};
  }
  const Box& box = space.box;
  const bool applied = box.build.fit == BottomFit::kApplied;
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
  const bool applied = c.back == BackFit::kApplied;
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

}  // namespace

Block PlaceOf(const Bank& bank, const Part& part, bool right) {
  if (part.space >= 0) return SpacePart(bank, part, right);
  if (part.divider >= 0) {
    return MemberAt(bank, bank.dividers[static_cast<std::size_t>(part.divider)]);
  }
  return CasePart(bank, part.role, right);
}

}  // namespace tillwright
