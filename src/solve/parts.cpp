#include "solve/parts.h"

#include "bank/part_roles.h"
#include "spec/kinds.h"
#include "spec/materials.h"

namespace tillwright {
namespace {

// The size of a part from its two faces' sides: `along` is parallel to the grain.
void SizePart(Part& part, Length along, Length across, Length thickness) {
  part.length = along;
  part.width = across;
  part.thickness = thickness;
}

// A sheet without a grain lies with its longer side as its length.
void SizeSheet(Part& part, Length a, Length b, Length thickness) {
  SizePart(part, Max(a, b), Min(a, b), thickness);
}

class PartRule {
 public:
  explicit PartRule(Bank& bank) : bank_(bank) {}

  void Run() {
    bank_.parts.reserve(bank_.spaces.size() * 5 + bank_.dividers.size() + 5);
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& space = bank_.spaces[i];
      if (space.HasFront()) FrontPart(space, static_cast<int>(i));
      if (space.HasBox()) BoxParts(space, static_cast<int>(i));
    }
    const bool webs = bank_.casework && bank_.casework->web;
    for (std::size_t i = 0; i < bank_.dividers.size(); ++i) {
      if (!webs || bank_.dividers[i].partition) MemberPart(static_cast<int>(i));
    }
    if (bank_.casework) CaseParts(*bank_.casework);
    PieceParts();
  }

 private:
  Part& Add(PartRole role, int space, int count, Grain grain, const std::string& material) {
    Part& part = bank_.parts.emplace_back();
    part.role = role;
    part.space = space;
    part.count = count;
    part.grain = grain;
    part.material = material;
    return part;
  }

  void FrontPart(const Space& space, int index) {
    const Front& front = space.front;
    Part& part = Add(PartRole::kFront, index, 1, front.grain, front.material);
    const Rect& r = front.rect;
    switch (front.grain) {
      case Grain::kHorizontal:
        return SizePart(part, r.width, r.height, front.thickness);
      case Grain::kVertical:
        return SizePart(part, r.height, r.width, front.thickness);
      case Grain::kNone:
        return SizeSheet(part, r.width, r.height, front.thickness);
    }
  }

  void BoxParts(const Space& space, int index) {
    const Box& box = space.box;
    const BoxBuild& build = box.build;
    Part& side = Add(PartRole::kBoxSide, index, 2, Grain::kHorizontal, build.side_material);
    SizePart(side, box.side_length, box.wood_height, build.side);
    side.cuts.reserve(3);
    AddBottomCut(build, side);
    AddCornerCuts(build, side);
    EndPart(box, index, PartRole::kBoxFront, box.wood_height, true);
    EndPart(box, index, PartRole::kBoxBack, box.back_height, !build.open_back);
    const Grain grain = box.solid_bottom ? Grain::kHorizontal : Grain::kNone;
    Part& bottom = Add(PartRole::kBoxBottom, index, 1, grain, build.bottom_material);
    if (box.solid_bottom) {
      SizePart(bottom, box.panel_width, box.panel_depth, build.bottom);
    } else {
      SizeSheet(bottom, box.panel_width, box.panel_depth, build.bottom);
    }
  }

  void EndPart(const Box& box, int index, PartRole role, Length height, bool takes_bottom) {
    const BoxBuild& build = box.build;
    Part& end = Add(role, index, 1, Grain::kHorizontal, build.end_material);
    SizePart(end, box.end_length, height, build.end);
    if (takes_bottom) AddBottomCut(build, end);
    const CornerFacts& corner = Facts(build.joint);
    if (corner.tailed) {
      end.cuts.push_back({*corner.cut, CutFrom::kEachEnd, Length(), build.side,
                          build.end - build.lap, CutOn::kInside, CutPurpose::kBoxCorner});
    }
  }

  static void AddBottomCut(const BoxBuild& build, Part& part) {
    const std::optional<CutKind> cut = Facts(build.fit).cut;
    if (!cut) return;
    part.cuts.push_back({*cut, CutFrom::kLowerEdge, build.up, build.bottom, build.groove,
                         CutOn::kInside, CutPurpose::kBoxBottom});
  }

  // In the sides: rabbets and dados take the ends; dovetails and fingers are cut through.
  static void AddCornerCuts(const BoxBuild& build, Part& side) {
    const CornerFacts& corner = Facts(build.joint);
    if (!corner.cut) return;
    const auto add = [&](CutKind kind, CutFrom from, Length offset, Length width, Length depth) {
      side.cuts.push_back(
          {kind, from, offset, width, depth, CutOn::kInside, CutPurpose::kBoxCorner});
    };
    if (corner.tailed) {
      return add(*corner.cut, CutFrom::kEachEnd, Length(), build.end - build.lap, build.side);
    }
    add(*corner.cut, CutFrom::kFrontEnd, Length(), build.end, build.joint_depth);
    // A back end that stands in sits in a dado, whatever the front has.
    const CutKind back = build.back_setback.IsZero() ? *corner.cut : CutKind::kDado;
    add(back, CutFrom::kBackEnd, build.back_setback, build.end, build.joint_depth);
  }

  void MemberPart(int index) {
    const Divider& member = bank_.dividers[static_cast<std::size_t>(index)];
    const PartRole role = member.partition ? PartRole::kPartition : PartRole::kDivider;
    const Grain grain = member.partition ? Grain::kVertical : Grain::kHorizontal;
    Part& part = Add(role, -1, 1, grain, bank_.casework ? bank_.casework->material : std::string());
    part.divider = index;
    SizePart(part, member.length, member.depth,
             member.partition ? member.rect.width : member.rect.height);
    AddTongue(part, member.partition ? CutOn::kRightFace : CutOn::kUpperFace);
  }

  // A rabbet at each end that leaves a tongue along the other face.
  void AddTongue(Part& part, CutOn face) const {
    if (!bank_.casework || !Facts(bank_.casework->joint).tongue) return;
    const CaseBuild& build = *bank_.casework;
    part.cuts.push_back({CutKind::kRabbet, CutFrom::kEachEnd, Length(), build.joint_depth,
                         part.thickness - build.tongue, face, CutPurpose::kTongue});
  }

  void CaseParts(const CaseBuild& build) {
    Part& side = Add(PartRole::kCaseSide, -1, 2, Grain::kVertical, build.material);
    SizePart(side, build.height, build.depth, build.side);
    AddCaseCuts(build, side);
    if (!build.kick_setback.IsZero()) {
      side.notch = {build.kick_setback - build.front_in, build.raise};
    }
    Across(PartRole::kCaseBottom, build, build.bottom);
    if (!build.top_none && !build.stretchers) Across(PartRole::kCaseTop, build, build.top);
    if (!Facts(build.back).there) return;
    const bool solid = IsSolidWood(build.back_material);
    Part& back = Add(PartRole::kCaseBack, -1, 1, solid ? Grain::kVertical : Grain::kNone,
                     build.back_material);
    if (solid) {
      SizePart(back, build.panel_height, build.panel_width, build.back_thickness);
    } else {
      SizeSheet(back, build.panel_width, build.panel_height, build.back_thickness);
    }
  }

  void Across(PartRole role, const CaseBuild& build, Length thickness) {
    Part& part = Add(role, -1, 1, Grain::kHorizontal, build.material);
    SizePart(part, build.member_length, build.inside_depth, thickness);
    AddTongue(part, CutOn::kOutside);
  }

  // --- Pieces -----------------------------------------------------------------------------------

  // One part for the pieces alike that go to one place.
  void PieceParts() {
    for (const CasePiece& piece : bank_.pieces) {
      if (!bank_.parts.empty() && IsAnother(bank_.parts.back(), piece)) {
        ++bank_.parts.back().count;
        continue;
      }
      Part& part = Add(piece.role, piece.space, 1, Facts(piece.role).grain,
                       CaseMaterial(*bank_.casework, piece));
      part.divider = piece.divider;
      SizePiece(part, piece);
      part.takes = piece.takes;
      part.ahead = piece.ahead;
      part.cuts = piece.cuts;
      AddPieceCuts(part);
    }
  }

  static bool IsAnother(const Part& part, const CasePiece& piece) {
    if (part.role != piece.role || part.space != piece.space || part.divider != piece.divider ||
        part.takes != piece.takes || part.ahead != piece.ahead) {
      return false;
    }
    Part other;
    other.role = piece.role;
    SizePiece(other, piece);
    return part.length == other.length && part.width == other.width &&
           part.thickness == other.thickness;
  }

  // Which sides of its block are the part's length, width and thickness.
  static void SizePiece(Part& part, const CasePiece& piece) {
    const PartRoleFacts& facts = Facts(piece.role);
    const Length right = SizeAlong(piece.block, facts.frame.right.axis);
    const Length up = SizeAlong(piece.block, facts.frame.up.axis);
    const bool upright = facts.grain == Grain::kVertical;
    SizePart(part, upright ? up : right, upright ? right : up,
             SizeAlong(piece.block, facts.frame.into.axis));
  }

  // Web frames: a groove in the rails' inner edges a third as wide as they are thick, and tenons on
  // the runners to fit it.
  void AddPieceCuts(Part& part) const {
    if (part.role == PartRole::kStretcher) AddTongue(part, CutOn::kUpperFace);
    if (part.role != PartRole::kWebRail && part.role != PartRole::kWebRunner) return;
    const WebFrame& web = *bank_.casework->web;
    const Length third = PartBelow(part.thickness, 3);
    const Length tongue = third < bank_.round ? third : FloorTo(third, bank_.round);
    const Length shoulder = HalfBelow(part.thickness - tongue);
    if (part.role == PartRole::kWebRail) {
      if (!web.open) {
        part.cuts.push_back({CutKind::kGroove, CutFrom::kUpperFace, shoulder, tongue, web.tenon,
                             CutOn::kInnerEdge, CutPurpose::kWebRunner});
      }
      AddTongue(part, CutOn::kUpperFace);
    } else {
      part.cuts.push_back({CutKind::kTenon, CutFrom::kEachEnd, Length(), web.tenon, shoulder,
                           CutOn::kBothFaces, CutPurpose::kTenon});
    }
  }

  // In the sides: dadoes (at the very end: rabbets) for bottom and top, or dadoes for the tongues
  // along their inside faces.
  static void AddJointCuts(const CaseBuild& build, Part& side) {
    const CaseJointFacts& joint = Facts(build.joint);
    if (!joint.cut) return;
    const Length low = build.SeatWidth(build.bottom);
    side.cuts.push_back({build.raise.IsZero() ? *joint.end_cut : *joint.cut, CutFrom::kLowerEdge,
                         build.raise + build.bottom - low, low, build.joint_depth, CutOn::kInside,
                         CutPurpose::kCaseBottom});
    if (build.top_none) return;
    side.cuts.push_back({*joint.end_cut, CutFrom::kLowerEdge, build.height - build.top,
                         build.SeatWidth(build.top), build.joint_depth, CutOn::kInside,
                         CutPurpose::kCaseTop});
  }

  // The joints, and the back's channel.
  static void AddCaseCuts(const CaseBuild& build, Part& side) {
    AddJointCuts(build, side);
    if (const std::optional<CutKind> cut = Facts(build.back).cut) {
      side.cuts.push_back({*cut, CutFrom::kRearEdge, build.back_inset, build.back_thickness,
                           build.BackEntry(), CutOn::kInside, CutPurpose::kCaseBack});
    }
  }

  Bank& bank_;
};

}  // namespace

void AddParts(Bank& bank) { PartRule(bank).Run(); }

}  // namespace tillwright
