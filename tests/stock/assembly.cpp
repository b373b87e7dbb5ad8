#include "stock/assembly.h"

namespace tillwright::testing {
namespace {

const Part& The(const PartsByRole& parts, PartRole role) { return parts.at(role).at(0); }

bool Has(const PartsByRole& parts, PartRole role) { return parts.contains(role); }

// How deep the ends sit in the sides.
Length CornerDepth(const Part& side) {
  for (const CutKind kind : {CutKind::kRabbet, CutKind::kDado}) {
    if (const Cut* cut = CutIn(side, kind, CutFrom::kFrontEnd)) return cut->depth;
  }
  return {};
}

bool IsInterlocked(const Part& side) {
  for (const CutKind kind :
       {CutKind::kHalfBlindDovetail, CutKind::kThroughDovetail, CutKind::kFinger}) {
    if (CutIn(side, kind, CutFrom::kEachEnd) != nullptr) return true;
  }
  return false;
}

// The channel that takes the bottom.
const Cut* BottomCut(const Part& side) {
  const Cut* groove = CutIn(side, CutKind::kGroove, CutFrom::kLowerEdge);
  return groove != nullptr ? groove : CutIn(side, CutKind::kRabbet, CutFrom::kLowerEdge);
}

}  // namespace

const Cut* CutIn(const Part& part, CutKind kind, CutFrom from) {
  for (const Cut& cut : part.cuts) {
    if (cut.kind == kind && cut.from == from) return &cut;
  }
  return nullptr;
}

Size3 BoxOf(const PartsByRole& parts) {
  const Part& side = The(parts, PartRole::kBoxSide);
  const Part& end = The(parts, PartRole::kBoxFront);
  const Part& bottom = The(parts, PartRole::kBoxBottom);
  Size3 box;
  box.width = end.length;
  if (!IsInterlocked(side)) box.width += 2 * (side.thickness - CornerDepth(side));
  // A half-blind dovetail leaves a lap on the ends' outer faces.
  const Cut* blind = CutIn(side, CutKind::kHalfBlindDovetail, CutFrom::kEachEnd);
  box.depth = side.length;
  if (blind != nullptr) box.depth += 2 * (end.thickness - blind->width);
  box.height = side.width;
  if (BottomCut(side) == nullptr) box.height += bottom.thickness;
  return box;
}

Length BoxInsideWidth(const PartsByRole& parts) {
  return BoxOf(parts).width - 2 * The(parts, PartRole::kBoxSide).thickness;
}

Length BoxInsideHeight(const PartsByRole& parts) {
  const Part& side = The(parts, PartRole::kBoxSide);
  const Cut* cut = BottomCut(side);
  return cut == nullptr ? side.width : side.width - cut->offset - cut->width;
}

AssembledCase CaseOf(const PartsByRole& parts, const CaseBuild& told) {
  const Part& side = The(parts, PartRole::kCaseSide);
  const Part& bottom = The(parts, PartRole::kCaseBottom);
  // The bottom's channel in the sides: at the very end a rabbet.
  const Cut* seat = nullptr;
  for (const CutKind kind : {CutKind::kRabbet, CutKind::kDado, CutKind::kGroove}) {
    if (seat == nullptr) seat = CutIn(side, kind, CutFrom::kLowerEdge);
  }
  const Length in = seat == nullptr ? Length() : seat->depth;
  const Length raise =
      Has(parts, PartRole::kToeKick) ? The(parts, PartRole::kToeKick).width : told.raise;
  const Length inside = bottom.length - 2 * in;
  AssembledCase made;
  made.outside = {inside + 2 * side.thickness, side.length, side.width};
  const PartRole above = Has(parts, PartRole::kCaseTop) ? PartRole::kCaseTop : PartRole::kStretcher;
  const Length top = Has(parts, above) ? The(parts, above).thickness : Length();
  made.opening = {inside, side.length - raise - bottom.thickness - top, bottom.width};
  if (!Has(parts, PartRole::kFrameStile)) return made;
  const Part& stile = The(parts, PartRole::kFrameStile);
  const Part& rail = The(parts, PartRole::kFrameTopRail);
  const Part& low = The(parts, PartRole::kFrameBottomRail);
  const Length below = Has(parts, PartRole::kToeKick) ? Length() : raise;
  made.opening = {rail.length, stile.length - rail.width - low.width - below,
                  bottom.width + stile.thickness};
  return made;
}

}  // namespace tillwright::testing
