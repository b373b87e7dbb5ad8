#include "draw/overview/overview_parts.h"

#include "draw/bank/case_pieces.h"

namespace tillwright {
namespace {

// Lower edges of the wood and of what stands above the bottom.
Length WoodY(const Box& box) {
  return box.build.fit == BottomFit::kApplied ? box.y + box.build.bottom : box.y;
}
Length BackY(const Box& box) { return WoodY(box) + box.wood_height - box.back_height; }
Length BackZ(const Box& box) { return box.z + box.depth - box.build.back_setback - box.build.end; }

SolidPart SideSolid(const Box& box, bool right) {
  const Length x = right ? box.x + box.width - box.build.side : box.x;
  return {
      PartRole::kBoxSide,
      right,
      {{x, WoodY(box), box.z + box.build.lap}, box.build.side, box.wood_height, box.side_length}};
}

// An end of this length, in the middle of the box.
SolidPart EndSolid(const Box& box, bool back, Length length) {
  const Place3 at{box.x + HalfBelow(box.width - length), back ? BackY(box) : WoodY(box),
                  back ? BackZ(box) : box.z};
  return {back ? PartRole::kBoxBack : PartRole::kBoxFront,
          false,
          {at, length, back ? box.back_height : box.wood_height, box.build.end}};
}

Length BottomY(const Box& box) {
  return box.build.fit == BottomFit::kGroove ? box.y + box.build.up : box.y;
}

SolidPart PanelSolid(const Box& box) {
  const BoxBuild& build = box.build;
  const bool applied = build.fit == BottomFit::kApplied;
  const Length z = applied ? box.z : box.z + build.end - build.groove + build.play;
  return {PartRole::kBoxBottom,
          false,
          {{box.x + HalfBelow(box.width - box.panel_width), BottomY(box), z},
           box.panel_width,
           build.bottom,
           box.panel_depth}};
}

// What is seen of a bottom between the sides and ends.
SolidPart SeenPanel(const Box& box) {
  if (box.build.fit == BottomFit::kApplied) return PanelSolid(box);
  const Length front = box.z + box.build.end;
  const Length rear = box.build.open_back ? BackZ(box) + box.build.end : BackZ(box);
  return {PartRole::kBoxBottom,
          false,
          {{box.x + box.build.side, BottomY(box), front},
           box.inside_width,
           box.build.bottom,
           rear - front}};
}

void AddCase(const Bank& bank, const CaseBuild& c, std::vector<SolidPart>& out) {
  const Length low = -c.base;
  const Length left = -c.side_in;
  const Length wide = c.inside_width;
  const auto add = [&](PartRole role, bool right, const Place3& at, Length w, Length h, Length d) {
    out.push_back({role, right, {at, w, h, d}});
  };
  add(PartRole::kCaseSide, false, {left - c.side, low, c.front_in}, c.side, c.height, c.depth);
  add(PartRole::kCaseSide, true, {left + wide, low, c.front_in}, c.side, c.height, c.depth);
  add(PartRole::kCaseBottom, false, {left, -c.low_in - c.bottom, c.front_in}, wide, c.bottom,
      c.inside_depth);
  if (!c.top_none && !c.stretchers) {
    add(PartRole::kCaseTop, false, {left, bank.opening_height + c.high_in, c.front_in}, wide, c.top,
        c.inside_depth);
  }
  for (const CasePiece& piece : bank.pieces) {
    const Block b = SeenBlock(bank, piece);
    add(piece.role, false, {b.x, b.y, b.z}, b.width, b.height, b.depth);
  }
  if (c.back == BackFit::kNone) return;
  const Length x = HalfBelow(bank.opening_width - c.panel_width);
  const Length y = HalfBelow(c.inside_height - c.panel_height);
  if (c.back == BackFit::kApplied) {
    add(PartRole::kCaseBack, false, {x, low, c.front_in + c.depth}, c.panel_width, c.panel_height,
        c.back_thickness);
  } else {
    add(PartRole::kCaseBack, false, {left, Max(y, Length()) - c.low_in, bank.opening_depth}, wide,
        Min(c.panel_height, c.inside_height), c.back_thickness);
  }
}

}  // namespace

SolidPart FrontSolid(const Bank& bank, const Space& space) {
  const Rect& r = space.front.rect;
  const Length z = bank.style == FrontStyle::kInset ? Length() : -space.front.thickness;
  return {PartRole::kFront, false, {{r.x, r.y, z}, r.width, r.height, space.front.thickness}};
}

std::vector<SolidPart> DrawerSolids(const Bank& bank, const Space& space) {
  const Box& box = space.box;
  return {FrontSolid(bank, space), EndSolid(box, false, box.end_length),
          SideSolid(box, false),   SideSolid(box, true),
          PanelSolid(box),         EndSolid(box, true, box.end_length)};
}

std::vector<SolidPart> GluedSolids(const Bank& bank, const Space& space) {
  const Box& box = space.box;
  SolidPart left = SideSolid(box, false);
  SolidPart right = SideSolid(box, true);
  for (SolidPart* side : {&left, &right}) {
    side->box.at.z = box.z;
    side->box.depth = box.depth;
  }
  return {FrontSolid(bank, space), EndSolid(box, false, box.inside_width), left, right,
          SeenPanel(box),          EndSolid(box, true, box.inside_width)};
}

std::vector<SolidPart> CaseSolids(const Bank& bank) {
  std::vector<SolidPart> out;
  if (bank.casework) AddCase(bank, *bank.casework, out);
  const Length front = bank.casework ? bank.casework->front_in : Length();
  for (const Divider& member : bank.dividers) {
    if (IsWebFrame(bank, member)) continue;
    const Rect& r = member.rect;
    out.push_back({member.partition ? PartRole::kPartition : PartRole::kDivider,
                   false,
                   {{r.x, r.y, front}, r.width, r.height, member.depth}});
  }
  return out;
}

}  // namespace tillwright
