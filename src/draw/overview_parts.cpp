#include "draw/overview_parts.h"

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
  return {back ? PartRole::kBoxBackEnd : PartRole::kBoxFrontEnd,
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
  const Length low = -(c.bottom + c.raise);
  const auto add = [&](PartRole role, bool right, const Place3& at, Length w, Length h, Length d) {
    out.push_back({role, right, {at, w, h, d}});
  };
  add(PartRole::kCaseSide, false, {-c.side, low, Length()}, c.side, c.height, c.depth);
  add(PartRole::kCaseSide, true, {bank.opening_width, low, Length()}, c.side, c.height, c.depth);
  add(PartRole::kCaseBottom, false, {Length(), -c.bottom, Length()}, bank.opening_width, c.bottom,
      bank.opening_depth);
  if (!c.top_none) {
    add(PartRole::kCaseTop, false, {Length(), bank.opening_height, Length()}, bank.opening_width,
        c.top, bank.opening_depth);
  }
  if (c.back == BackFit::kNone) return;
  const Length x = HalfBelow(bank.opening_width - c.panel_width);
  const Length y = HalfBelow(bank.opening_height - c.panel_height);
  if (c.back == BackFit::kApplied) {
    add(PartRole::kCaseBack, false, {x, low, c.depth}, c.panel_width, c.panel_height,
        c.back_thickness);
  } else {
    add(PartRole::kCaseBack, false, {Length(), Max(y, Length()), bank.opening_depth},
        bank.opening_width, Min(c.panel_height, bank.opening_height), c.back_thickness);
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
  for (const Divider& member : bank.dividers) {
    const Rect& r = member.rect;
    out.push_back({member.partition ? PartRole::kPartition : PartRole::kDivider,
                   false,
                   {{r.x, r.y, Length()}, r.width, r.height, member.depth}});
  }
  return out;
}

}  // namespace tillwright
