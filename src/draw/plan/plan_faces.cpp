#include "draw/plan/plan_faces.h"

#include <utility>

#include "bank/part_roles.h"
#include "draw/bank/case_pieces.h"
#include "draw/plan/plan_box.h"
#include "spec/materials.h"

namespace tillwright {
namespace {

bool IsLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool IsPlyAt(std::string_view text, std::size_t i) {
  constexpr std::string_view kPly = "ply";
  if (i > 0 && IsLetter(text[i - 1])) return false;
  for (std::size_t k = 0; k < kPly.size(); ++k) {
    const char c = text[i + k];
    if (c != kPly[k] && c != kPly[k] - 'a' + 'A') return false;
  }
  return true;
}

// "birch plywood", "baltic birch ply": a word that begins with "ply".
bool IsPlywood(std::string_view material) {
  for (std::size_t i = 0; i + 3 <= material.size(); ++i) {
    if (IsPlyAt(material, i)) return true;
  }
  return false;
}

// How a mirrored shape finds its other side: a becomes sum - a.
std::vector<FacePoint> Mirrored(std::vector<FacePoint> outline, Length sum) {
  for (FacePoint& p : outline) p.a = sum - p.a;
  return outline;
}

class PlanCase {
 public:
  PlanCase(const Bank& bank, const PlanScope& scope)
      : bank_(bank), scope_(scope), space_(bank.spaces[scope.space]) {}

  void AddTo(Faces& faces) const {
    for (const PlanSide* side : {&scope_.left, &scope_.right}) {
      const bool right = side == &scope_.right;
      AddBound(faces, *side, right);
      if (side->next >= 0) AddNextFront(faces, *side, right);
    }
    if (bank_.casework) {
      if (bank_.casework->back != BackFit::kNone) AddBack(faces, *bank_.casework);
      AddPieces(faces);
    } else {
      AddRearLimit(faces);
    }
    AddFront(faces);
  }

 private:
  void AddBound(Faces& faces, const PlanSide& side, bool right) const {
    switch (side.bound) {
      case PlanBound::kCase:
        return AddCaseSide(faces, *bank_.casework, right);
      case PlanBound::kOpening:
        return AddWall(faces, right);
      case PlanBound::kPartition:
        return AddPartition(faces, side);
      case PlanBound::kShared:
        break;
    }
    AddLine(faces, FaceOwner::kCase,
            {side.cell, bank_.style == FrontStyle::kInset ? space_.front.thickness : Length()},
            {side.cell, bank_.opening_depth}, Pen::kCenter);
  }

  void AddCaseSide(Faces& faces, const CaseBuild& c, bool right) const {
    const Length in = -c.side_in;
    const Length rear = bank_.opening_depth;
    const Length end = c.front_in + c.depth;
    std::vector<FacePoint> ring{{in - c.side, c.front_in}, {in, c.front_in}};
    if (c.back == BackFit::kRabbet) {
      ring.insert(ring.end(), {{in, rear}, {in - c.back_lap, rear}, {in - c.back_lap, end}});
    } else if (c.back == BackFit::kGroove) {
      const Length far = rear + c.back_thickness;
      ring.insert(
          ring.end(),
          {{in, rear}, {in - c.back_depth, rear}, {in - c.back_depth, far}, {in, far}, {in, end}});
    } else {
      ring.push_back({in, end});
    }
    ring.push_back({in - c.side, end});
    if (right) ring = Mirrored(std::move(ring), bank_.opening_width);
    faces.cut.push_back(
        {FaceOwner::kCase, LookOf(c.material, FaceLook::kEndGrain, FaceAxis::kA), false, ring, 0});
  }

  // Only the opening is given: its edge, and a strip of what it is an opening in.
  void AddWall(Faces& faces, bool right) const {
    std::vector<FacePoint> ring = RectFace(-scope_.stub, Length(), Length(), bank_.opening_depth);
    if (right) ring = Mirrored(std::move(ring), bank_.opening_width);
    // Corners run low left, low right, high right, high left: edge 1 is the opening's.
    faces.cut.push_back({FaceOwner::kCase, FaceLook::kBeyond, false, ring, 0b1101});
  }

  void AddRearLimit(Faces& faces) const {
    const auto wall = [&](const PlanSide& side) {
      return side.bound == PlanBound::kOpening ? scope_.stub : Length();
    };
    const Length left = Max(scope_.left.end, -wall(scope_.left));
    const Length right = Min(scope_.right.end, bank_.opening_width + wall(scope_.right));
    faces.cut.push_back(
        {FaceOwner::kCase, FaceLook::kBeyond, false,
         RectFace(left, bank_.opening_depth, right, bank_.opening_depth + scope_.stub), 0b1111});
    AddLine(faces, FaceOwner::kCase, {Max(left, Length()), bank_.opening_depth},
            {Min(right, bank_.opening_width), bank_.opening_depth}, Pen::kCut);
  }

  void AddPartition(Faces& faces, const PlanSide& side) const {
    const Divider& member = bank_.dividers[static_cast<std::size_t>(side.member)];
    const std::string material = bank_.casework ? bank_.casework->material : std::string();
    const Length front = bank_.casework ? bank_.casework->front_in : Length();
    faces.cut.push_back(
        {FaceOwner::kCase, LookOf(material, FaceLook::kEndGrain, FaceAxis::kA), false,
         RectFace(member.rect.x, front, member.rect.Right(), front + member.depth), 0});
  }

  // What the plane cuts of the face frame and the blocking behind it, as far as the plan goes.
  void AddPieces(Faces& faces) const {
    const Box& box = space_.box;
    const Length plane = box.y + box.height - HalfBelow(box.inside_height);
    for (const CasePiece& piece : bank_.pieces) {
      const Block& b = piece.block;
      if (plane <= b.y || plane >= b.y + b.height) continue;
      const Length left = Max(b.x, scope_.left.end);
      const Length right = Min(b.x + b.width, scope_.right.end);
      if (left >= right) continue;
      faces.cut.push_back({FaceOwner::kCase,
                           LookOf(CaseMaterial(*bank_.casework, piece.role), FaceLook::kEndGrain,
                                  b.width < b.depth ? FaceAxis::kA : FaceAxis::kB),
                           true, RectFace(left, b.z, right, b.z + b.depth), 0});
    }
  }

  void AddBack(Faces& faces, const CaseBuild& c) const {
    const Length left = HalfBelow(bank_.opening_width - c.panel_width);
    const Length right = left + c.panel_width;
    std::uint32_t open = 0;
    if (scope_.left.end > left) open |= 0b1000;
    if (scope_.right.end < right) open |= 0b0010;
    const Length low = bank_.opening_depth;
    faces.cut.push_back({FaceOwner::kCase,
                         LookOf(c.back_material, FaceLook::kEndGrain, FaceAxis::kB), true,
                         RectFace(Max(left, scope_.left.end), low, Min(right, scope_.right.end),
                                  low + c.back_thickness),
                         open});
  }

  void AddNextFront(Faces& faces, const PlanSide& side, bool right) const {
    const Front& front = bank_.spaces[static_cast<std::size_t>(side.next)].front;
    const Length left = right ? front.rect.x : Max(front.rect.x, side.end);
    const Length far = right ? Min(front.rect.Right(), side.end) : front.rect.Right();
    if (left >= far) return;
    std::uint32_t open = 0;
    if (left > front.rect.x) open |= 0b1000;
    if (far < front.rect.Right()) open |= 0b0010;
    AddFrontFace(faces, front, left, far, open);
  }

  void AddFront(Faces& faces) const {
    const Front& front = space_.front;
    AddFrontFace(faces, front, front.rect.x, front.rect.Right(), 0);
  }

  void AddFrontFace(Faces& faces, const Front& front, Length left, Length right,
                    std::uint32_t open) const {
    const bool inset = bank_.style == FrontStyle::kInset;
    const Length low = inset ? Length() : -front.thickness;
    const FaceLook solid =
        front.grain == Grain::kVertical ? FaceLook::kEndGrain : FaceLook::kGrainA;
    faces.cut.push_back({FaceOwner::kFront, LookOf(front.material, solid, FaceAxis::kB), true,
                         RectFace(left, low, right, low + front.thickness), open});
  }

  const Bank& bank_;
  const PlanScope& scope_;
  const Space& space_;
};

// Finds what bounds the cell.
class ScopeFinder {
 public:
  ScopeFinder(const Bank& bank, std::size_t space, Length stub)
      : bank_(bank), space_(bank.spaces[space]), stub_(stub) {
    const Box& box = space_.box;
    plane_ = box.y + box.height - HalfBelow(box.inside_height);
  }

  [[nodiscard]] PlanSide Find(bool right) const {
    PlanSide side;
    side.cell = right ? space_.cell.Right() : space_.cell.x;
    if (side.cell == (right ? bank_.opening_width : Length())) {
      side.bound = bank_.casework ? PlanBound::kCase : PlanBound::kOpening;
      side.end = Outermost(side, right);
      return side;
    }
    side.member = MemberAt(side.cell, right);
    if (side.member >= 0) side.bound = PlanBound::kPartition;
    side.next = NextFront(right);
    const Length from = side.member >= 0 ? FarFace(side.member, right) : side.cell;
    side.end = right ? from + stub_ : from - stub_;
    return side;
  }

 private:
  [[nodiscard]] Length Outermost(const PlanSide& side, bool right) const {
    const Length wood = side.bound == PlanBound::kCase ? SideReach() : stub_;
    const Rect& front = space_.front.rect;
    return right ? Max(bank_.opening_width + wood, front.Right()) : Min(-wood, front.x);
  }

  // From the opening's edge to the outermost of the case there.
  [[nodiscard]] Length SideReach() const {
    const CaseBuild& c = *bank_.casework;
    return Max(c.side_in + c.side, c.frame ? c.frame->stile : Length());
  }

  [[nodiscard]] Length FarFace(int member, bool right) const {
    const Rect& r = bank_.dividers[static_cast<std::size_t>(member)].rect;
    return right ? r.Right() : r.x;
  }

  [[nodiscard]] bool Cuts(const Rect& r) const { return r.y <= plane_ && plane_ <= r.Top(); }

  [[nodiscard]] int MemberAt(Length edge, bool right) const {
    for (std::size_t i = 0; i < bank_.dividers.size(); ++i) {
      const Divider& member = bank_.dividers[i];
      if (!member.partition || !Cuts(member.rect)) continue;
      if ((right ? member.rect.x : member.rect.Right()) == edge) return static_cast<int>(i);
    }
    return -1;
  }

  // The nearest front beyond this one that the plane cuts.
  [[nodiscard]] int NextFront(bool right) const {
    const Rect& own = space_.front.rect;
    int found = -1;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& other = bank_.spaces[i];
      const Rect& r = other.front.rect;
      if (!other.HasFront() || !Cuts(r)) continue;
      if (right ? r.x < own.Right() : r.Right() > own.x) continue;
      if (found >= 0) {
        const Rect& best = bank_.spaces[static_cast<std::size_t>(found)].front.rect;
        if (right ? r.x >= best.x : r.Right() <= best.Right()) continue;
      }
      found = static_cast<int>(i);
    }
    return found;
  }

  const Bank& bank_;
  const Space& space_;
  Length stub_;
  Length plane_;
};

}  // namespace

FaceLook LookOf(std::string_view material, FaceLook solid, FaceAxis thickness) {
  if (IsSolidWood(material)) return solid;
  if (!IsPlywood(material)) return FaceLook::kPlain;
  return thickness == FaceAxis::kA ? FaceLook::kPliesA : FaceLook::kPliesB;
}

std::vector<FacePoint> RectFace(Length left, Length low, Length right, Length high) {
  return {{left, low}, {right, low}, {right, high}, {left, high}};
}

void AddLine(Faces& faces, FaceOwner owner, FacePoint from, FacePoint to, Pen pen) {
  faces.lines.push_back({owner, from, to, pen});
}

PlanScope PlanScopeOf(const Bank& bank, std::size_t space, Length stub) {
  const ScopeFinder finder(bank, space, stub);
  PlanScope scope{space, finder.Find(false), finder.Find(true), stub, bank.opening_depth};
  if (!bank.casework) {
    scope.rear += stub;
  } else {
    const CaseBuild& c = *bank.casework;
    scope.rear = c.front_in + c.depth;
    if (c.back == BackFit::kApplied) scope.rear += c.back_thickness;
  }
  return scope;
}

Faces PlanFaces(const Bank& bank, const PlanScope& scope) {
  Faces faces;
  PlanCase(bank, scope).AddTo(faces);
  AddPlanSlides(faces, bank.spaces[scope.space]);
  AddPlanBox(faces, bank.spaces[scope.space].box);
  return faces;
}

}  // namespace tillwright
