#include "draw/plan/piece_faces.h"

#include <algorithm>
#include <utility>

#include "bank/part_roles.h"

namespace tillwright {
namespace {

FaceOwner OwnerOf(PartBody body) {
  switch (body) {
    case PartBody::kFront:
      return FaceOwner::kFront;
    case PartBody::kBox:
      return FaceOwner::kBox;
    case PartBody::kCase:
      break;
  }
  return FaceOwner::kCase;
}

FaceLook LookOf(const Part& part, const PlacedPart& piece, JobAxis across) {
  const JobAxis grain = part.grain == Grain::kVertical ? JobAxis::kY : piece.frame.right.axis;
  // The axes of a plane on paper: to the right first.
  const JobAxis a = across == JobAxis::kX ? JobAxis::kZ : JobAxis::kX;
  const FaceLook along = grain == a ? FaceLook::kGrainA : FaceLook::kGrainB;
  return LookOf(part.material, grain == across ? FaceLook::kEndGrain : along,
                piece.frame.into.axis == a ? FaceAxis::kA : FaceAxis::kB);
}

// Hatched the other way than what it lies against.
bool IsTurned(const PlacedPart& piece, JobAxis across) {
  const PartGroup group = Facts(piece.role).group;
  if (group == PartGroup::kFaceFrame || group == PartGroup::kBlocking) {
    return across == JobAxis::kY;
  }
  if (piece.role == PartRole::kBoxSide) return piece.mirrored;
  return Facts(piece.role).group == PartGroup::kFront || piece.role == PartRole::kBoxBottom ||
         piece.role == PartRole::kCaseBack;
}

// A right-hand piece is outlined as its twin is: from its outer lower corner, the other way round.
std::vector<FacePoint> OutlineOf(const PlaneRing& ring, bool mirrored) {
  std::vector<FacePoint> outline;
  outline.reserve(ring.size());
  for (const PlanePoint& p : ring) outline.push_back({p.u, p.v});
  if (!mirrored) return outline;
  std::ranges::reverse(outline);
  const auto first = std::ranges::min_element(outline, [](const FacePoint& p, const FacePoint& q) {
    return p.b != q.b ? p.b < q.b : p.a > q.a;
  });
  std::rotate(outline.begin(), first, outline.end());
  return outline;
}

// Cuts a face off at both ends; false when nothing of it lies between them.
bool BreakOff(CutFace& face, const Extent& within) {
  std::vector<FacePoint>& ring = face.outline;
  const auto [low, high] = std::ranges::minmax(ring, {}, &FacePoint::a);
  if (high.a <= within.low || low.a >= within.high) return false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Length from = ring[i].a;
    const Length to = ring[(i + 1) % ring.size()].a;
    const bool off =
        (from < within.low && to < within.low) || (from > within.high && to > within.high);
    if (off) face.open |= 1U << i;
  }
  for (FacePoint& p : ring) p.a = Min(Max(p.a, within.low), within.high);
  return true;
}

}  // namespace

void AddPieceFaces(Faces& faces, const Bank& bank, const PlacedPart& piece, const CutPlane& plane) {
  const Part& part = bank.parts[piece.part];
  const JointBands bands =
      piece.role == PartRole::kBoxSide ? JointBands::kKeep : JointBands::kTakeAway;
  for (const PlaneRing& ring : CutByPlane(piece, plane.across, plane.at, bands)) {
    CutFace face{OwnerOf(piece.body), LookOf(part, piece, plane.across),
                 IsTurned(piece, plane.across), OutlineOf(ring, piece.mirrored), 0};
    if (plane.within && !BreakOff(face, *plane.within)) continue;
    faces.cut.push_back(std::move(face));
  }
}

}  // namespace tillwright
