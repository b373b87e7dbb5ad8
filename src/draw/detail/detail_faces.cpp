#include "draw/detail/detail_faces.h"

#include <utility>

#include "bank/part_roles.h"
#include "draw/bank/case_pieces.h"

namespace tillwright {
namespace {

class SideCut {
 public:
  SideCut(const Bank& bank, Length x, const FaceWindow& window, Length stub)
      : bank_(bank), x_(x), window_(window), stub_(stub) {}

  Faces Cut() {
    if (bank_.casework) {
      AddCase(*bank_.casework);
    } else {
      AddWalls();
    }
    AddMembers();
    for (const Space& space : bank_.spaces) {
      if (!Meets(space.region.x, space.region.Right())) continue;
      if (space.HasFront()) AddFront(space.front);
      if (space.HasBox()) AddBox(space.box);
    }
    return std::move(faces_);
  }

 private:
  [[nodiscard]] bool Meets(Length from, Length to) const { return from <= x_ && x_ <= to; }
  // A face that the window shows nothing of costs nothing.
  void Add(FaceOwner owner, FaceLook look, bool turned, std::vector<FacePoint> ring,
           std::uint32_t open = 0) {
    FaceWindow r{ring[0].a, ring[0].b, ring[0].a, ring[0].b};
    for (const FacePoint& p : ring) {
      r = {Min(r.left, p.a), Min(r.low, p.b), Max(r.right, p.a), Max(r.high, p.b)};
    }
    if (r.right < window_.left || r.left > window_.right) return;
    if (r.high < window_.low || r.low > window_.high) return;
    faces_.cut.push_back({owner, look, turned, std::move(ring), open});
  }

  void AddCase(const CaseBuild& c) {
    const Length depth = bank_.opening_depth;
    const FaceLook look = LookOf(c.material, FaceLook::kEndGrain, FaceAxis::kB);
    const Length low_face = -c.low_in;
    Add(FaceOwner::kCase, look, false, RectFace(c.front_in, low_face - c.bottom, depth, low_face));
    if (!c.top_none && !c.stretchers) {
      const Length top = bank_.opening_height + c.high_in;
      Add(FaceOwner::kCase, look, false, RectFace(c.front_in, top, depth, top + c.top));
    }
    AddPieces();
    if (c.back == BackFit::kNone) return;
    const bool applied = c.back == BackFit::kApplied;
    const Length behind = c.inside_height + c.bottom + c.top - c.panel_height;
    const Length low = applied ? -c.base : low_face - c.bottom + HalfBelow(behind);
    Add(FaceOwner::kCase, LookOf(c.back_material, FaceLook::kGrainB, FaceAxis::kA), true,
        RectFace(depth, low, depth + c.back_thickness, low + c.panel_height));
  }

  // What the plane cuts of stretchers, toe kick, frames and worktop.
  void AddPieces() {
    for (const CasePiece& piece : bank_.pieces) {
      const Block b = SeenBlock(bank_, piece);
      if (!Meets(b.x, b.x + b.width)) continue;
      Add(FaceOwner::kCase,
          LookOf(CaseMaterial(*bank_.casework, piece.role), FaceLook::kEndGrain,
                 b.height < b.depth ? FaceAxis::kB : FaceAxis::kA),
          false, RectFace(b.z, b.y, b.z + b.depth, b.y + b.height));
    }
  }

  void AddWalls() {
    const Length depth = bank_.opening_depth;
    const Length top = bank_.opening_height;
    Add(FaceOwner::kCase, FaceLook::kBeyond, false, RectFace(Length(), -stub_, depth, Length()),
        0b1011);
    Add(FaceOwner::kCase, FaceLook::kBeyond, false, RectFace(Length(), top, depth, top + stub_),
        0b1110);
  }

  void AddMembers() {
    const std::string material = bank_.casework ? bank_.casework->material : std::string();
    for (const Divider& member : bank_.dividers) {
      if (member.partition || !Meets(member.rect.x, member.rect.Right())) continue;
      if (IsWebFrame(bank_, member)) continue;
      const Length front = bank_.casework ? bank_.casework->front_in : Length();
      Add(FaceOwner::kCase, LookOf(material, FaceLook::kEndGrain, FaceAxis::kB), false,
          RectFace(front, member.rect.y, front + member.depth, member.rect.Top()));
    }
  }

  void AddFront(const Front& front) {
    const Length low = bank_.style == FrontStyle::kInset ? Length() : -front.thickness;
    const FaceLook solid =
        front.grain == Grain::kVertical ? FaceLook::kGrainB : FaceLook::kEndGrain;
    Add(FaceOwner::kFront, LookOf(front.material, solid, FaceAxis::kA), true,
        RectFace(low, front.rect.y, low + front.thickness, front.rect.Top()));
  }

  // An end of the box: its inner face at `inner`, its outer one a thickness further in `sign`.
  void AddEnd(const Box& box, Length inner, int sign, Length low, Length height) {
    const BoxBuild& build = box.build;
    const Length outer = inner + sign * build.end;
    const Length top = low + height;
    std::vector<FacePoint> ring{{outer, low}};
    const bool whole = build.fit == BottomFit::kApplied || (build.open_back && sign > 0);
    if (whole) {
      ring.push_back({inner, low});
    } else {
      const Length deep = inner + sign * build.groove;
      const Length slot = low + build.up;
      if (build.fit == BottomFit::kGroove) ring.insert(ring.end(), {{inner, low}, {inner, slot}});
      ring.insert(ring.end(),
                  {{deep, slot}, {deep, slot + build.bottom}, {inner, slot + build.bottom}});
    }
    ring.insert(ring.end(), {{inner, top}, {outer, top}});
    Add(FaceOwner::kBox, LookOf(build.end_material, FaceLook::kEndGrain, FaceAxis::kA), false,
        std::move(ring));
  }

  void AddBox(const Box& box) {
    const BottomPlace at = BottomPlaceOf(box);
    const BoxBuild& build = box.build;
    AddEnd(box, at.end_front, -1, at.wood, box.wood_height);
    const Length back_low = build.open_back ? at.high : at.wood;
    AddEnd(box, at.end_rear, 1, back_low, box.back_height);
    const FaceLook solid = box.solid_bottom ? FaceLook::kEndGrain : FaceLook::kPlain;
    FaceLook look = LookOf(build.bottom_material, solid, FaceAxis::kB);
    Add(FaceOwner::kBox, look, true, RectFace(at.front, at.low, at.rear, at.high));
    AddSideBeyond(box, at);
  }

  // The far side of the box shows above and below the bottom.
  void AddSideBeyond(const Box& box, const BottomPlace& at) {
    const Length top = at.wood + box.wood_height;
    const BoxBuild& build = box.build;
    AddLine(faces_, FaceOwner::kBox, {at.end_front, top}, {at.end_rear, top}, Pen::kThin);
    const bool covered = build.fit != BottomFit::kGroove;
    const Length rear = build.open_back || !build.back_setback.IsZero()
                            ? box.z + box.depth - build.lap
                            : at.end_rear;
    if (!covered) {
      AddLine(faces_, FaceOwner::kBox, {at.end_front, at.wood}, {rear, at.wood}, Pen::kThin);
    }
    if (rear == at.end_rear) return;
    // Its rear end shows below an open back, and all of it where the back end stands in.
    const Length beyond = at.end_rear + build.end;
    const bool stands_in = rear > beyond;
    AddLine(faces_, FaceOwner::kBox, {rear, at.wood}, {rear, stands_in ? top : at.low}, Pen::kThin);
    if (!stands_in) return;
    AddLine(faces_, FaceOwner::kBox, {beyond, top}, {rear, top}, Pen::kThin);
    if (covered) {
      AddLine(faces_, FaceOwner::kBox, {beyond, at.wood}, {rear, at.wood}, Pen::kThin);
    }
  }

  const Bank& bank_;
  Length x_;
  const FaceWindow& window_;
  Length stub_;
  Faces faces_;
};

}  // namespace

BottomPlace BottomPlaceOf(const Box& box) {
  const BoxBuild& build = box.build;
  BottomPlace at;
  at.end_front = box.z + build.end;
  at.end_rear = at.end_front + box.inside_depth;
  if (build.fit == BottomFit::kApplied) {
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
  return SideCut(bank, x, window, stub).Cut();
}

}  // namespace tillwright
