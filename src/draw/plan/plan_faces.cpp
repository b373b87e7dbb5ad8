#include "draw/plan/plan_faces.h"

#include <utility>

#include "draw/plan/piece_faces.h"
#include "draw/plan/plan_box.h"
#include "spec/kinds.h"
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

// What bounds the cell where no part does.
class PlanBounds {
 public:
  PlanBounds(const Bank& bank, const PlanScope& scope)
      : bank_(bank), scope_(scope), space_(bank.spaces[scope.space]) {}

  void AddTo(Faces& faces) const {
    for (const PlanSide* side : {&scope_.left, &scope_.right}) {
      if (side->bound == PlanBound::kOpening) AddWall(faces, side == &scope_.right);
      if (side->bound == PlanBound::kShared) AddShared(faces, *side);
    }
    if (!bank_.casework) AddRearLimit(faces);
  }

 private:
  void AddShared(Faces& faces, const PlanSide& side) const {
    AddLine(faces, FaceOwner::kCase,
            {side.cell, bank_.style == FrontStyle::kInset ? space_.front.thickness : Length()},
            {side.cell, bank_.opening_depth}, Pen::kCenter);
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

  const Bank& bank_;
  const PlanScope& scope_;
  const Space& space_;
};

// The drawer, what bounds its cell, the next fronts, and of the rest of the case what is at hand.
bool IsInPlan(const PlanScope& scope, const PlacedPart& piece) {
  const int index = piece.owner.index;
  switch (piece.body) {
    case PartBody::kFront:
      if (index == scope.left.next || index == scope.right.next) return true;
      break;
    case PartBody::kBox:
      break;
    case PartBody::kCase:
      if (piece.role == PartRole::kCaseSide) {
        return (piece.mirrored ? scope.right : scope.left).bound == PlanBound::kCase;
      }
      if (piece.role == PartRole::kPartition || piece.role == PartRole::kDivider) {
        return index == scope.left.member || index == scope.right.member;
      }
      return true;
  }
  return static_cast<std::size_t>(index) == scope.space;
}

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
    if (Facts(c.back).behind) scope.rear += c.back_thickness;
  }
  return scope;
}

Faces PlanFaces(const Bank& bank, const PlanScope& scope) {
  Faces faces;
  const Space& space = bank.spaces[scope.space];
  const Box& box = space.box;
  const CutPlane plane{JobAxis::kY, box.y + box.height - HalfBelow(box.inside_height),
                       Extent{scope.left.end, scope.right.end}};
  PlanBounds(bank, scope).AddTo(faces);
  const Assembly assembly = Assemble(bank);
  for (const PlacedPart& piece : assembly.pieces()) {
    if (IsInPlan(scope, piece)) AddPieceFaces(faces, bank, piece, plane);
  }
  AddPlanSlides(faces, space);
  AddPlanBoxLines(faces, box);
  return faces;
}

}  // namespace tillwright
