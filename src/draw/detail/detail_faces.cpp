#include "draw/detail/detail_faces.h"

#include <algorithm>

#include "draw/plan/piece_faces.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

bool IsIn(const FaceWindow& window, const CutFace& face) {
  const auto [left, right] = std::ranges::minmax(face.outline, {}, &FacePoint::a);
  const auto [low, high] = std::ranges::minmax(face.outline, {}, &FacePoint::b);
  return right.a >= window.left && left.a <= window.right && high.b >= window.low &&
         low.b <= window.high;
}

// What an opening is an opening in, where the case is not given.
void AddWalls(Faces& faces, const Bank& bank, Length stub) {
  const Length depth = bank.opening_depth;
  const Length top = bank.opening_height;
  faces.cut.push_back({FaceOwner::kCase, FaceLook::kBeyond, false,
                       RectFace(Length(), -stub, depth, Length()), 0b1011});
  faces.cut.push_back({FaceOwner::kCase, FaceLook::kBeyond, false,
                       RectFace(Length(), top, depth, top + stub), 0b1110});
}

// The far side of the box shows above and below the bottom.
void AddSideBeyond(Faces& faces, const Box& box) {
  const BottomPlace at = BottomPlaceOf(box);
  const Length top = at.wood + box.wood_height;
  const BoxBuild& build = box.build;
  AddLine(faces, FaceOwner::kBox, {at.end_front, top}, {at.end_rear, top}, Pen::kThin);
  const bool covered = !Facts(build.fit).set_up;
  const Length rear =
      build.open_back || !build.back_setback.IsZero() ? box.z + box.depth - build.lap : at.end_rear;
  if (!covered) {
    AddLine(faces, FaceOwner::kBox, {at.end_front, at.wood}, {rear, at.wood}, Pen::kThin);
  }
  if (rear == at.end_rear) return;
  // Its rear end shows below an open back, and all of it where the back end stands in.
  const Length beyond = at.end_rear + build.end;
  const bool stands_in = rear > beyond;
  AddLine(faces, FaceOwner::kBox, {rear, at.wood}, {rear, stands_in ? top : at.low}, Pen::kThin);
  if (!stands_in) return;
  AddLine(faces, FaceOwner::kBox, {beyond, top}, {rear, top}, Pen::kThin);
  if (covered) {
    AddLine(faces, FaceOwner::kBox, {beyond, at.wood}, {rear, at.wood}, Pen::kThin);
  }
}

}  // namespace

BottomPlace BottomPlaceOf(const Box& box) {
  const BoxBuild& build = box.build;
  BottomPlace at;
  at.end_front = box.z + build.end;
  at.end_rear = at.end_front + box.inside_depth;
  if (!Facts(build.fit).cut) {
    at.wood = box.y + build.bottom;
    at.low = box.y;
    at.front = box.z;
  } else {
    at.wood = box.y;
    at.low = box.y + build.up;
    const Length from = at.end_front - build.groove;
    const Length to = at.end_rear + (build.open_back ? build.end : build.groove);
    const Length spare = to - from - box.panel_depth;
    // A panel under an open back lies flush with it; otherwise its play is the same at both ends.
    at.front = from + (build.open_back ? spare : HalfBelow(spare));
  }
  at.high = at.low + build.bottom;
  at.rear = at.front + box.panel_depth;
  return at;
}

Faces SideFaces(const Bank& bank, Length x, const FaceWindow& window, Length stub) {
  Faces faces;
  if (!bank.casework) AddWalls(faces, bank, stub);
  const Assembly assembly = Assemble(bank);
  for (const PlacedPart& piece : assembly.pieces()) {
    AddPieceFaces(faces, bank, piece, {JobAxis::kX, x});
  }
  // A face that the window shows nothing of costs nothing.
  std::erase_if(faces.cut, [&](const CutFace& face) { return !IsIn(window, face); });
  for (const Space& space : bank.spaces) {
    const Rect& r = space.region;
    if (space.HasBox() && r.x <= x && x <= r.Right()) AddSideBeyond(faces, space.box);
  }
  return faces;
}

}  // namespace tillwright
