// Faces: what a section plane cuts and what shows beyond it, exact, before any scale.
//
// A plane has two axes of its own, `a` to the right and `b` up on paper. In plan they are the
// bank's x and z (the front at the bottom), in side section z and y. The same faces serve the whole
// view and, inside a circle, its details, so that neither can tell another story than the other.
#ifndef TILLWRIGHT_DRAW_PLAN_PLAN_FACES_H_
#define TILLWRIGHT_DRAW_PLAN_PLAN_FACES_H_

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/sheet.h"

namespace tillwright {

struct FacePoint {
  Length a, b;
};

// What the cut shows of the stock.
enum class FaceLook : std::uint8_t {
  kPlain,     // stock without a known structure
  kEndGrain,  // solid wood across the grain
  kGrainA,    // solid wood, its grain along a
  kGrainB,    // solid wood, its grain along b
  kPliesA,    // plywood, its thickness along a
  kPliesB,    // plywood, its thickness along b
  kBeyond,    // no part: the wall round an opening whose case is not given
};

enum class FaceOwner : std::uint8_t { kCase, kFront, kBox, kSlide };

struct CutFace {
  FaceOwner owner = FaceOwner::kCase;
  FaceLook look = FaceLook::kPlain;
  bool turned = false;               // hatched the other way than its neighbors
  std::vector<FacePoint> outline{};  // closed
  std::uint32_t open = 0;            // bit i: edge i, from corner i to the next, is broken off
};

struct FaceLine {
  FaceOwner owner = FaceOwner::kBox;
  FacePoint from, to;
  Pen pen = Pen::kHidden;
};

struct Faces {
  std::vector<CutFace> cut{};
  std::vector<FaceLine> lines{};
};

// The look of a cut in a material: `solid` for solid wood, plies across `thickness` for plywood.
enum class FaceAxis : std::uint8_t { kA, kB };
[[nodiscard]] FaceLook LookOf(std::string_view material, FaceLook solid, FaceAxis thickness);

[[nodiscard]] std::vector<FacePoint> RectFace(Length left, Length low, Length right, Length high);
void AddLine(Faces& faces, FaceOwner owner, FacePoint from, FacePoint to, Pen pen);

// What bounds a drawer's cell on one side.
enum class PlanBound : std::uint8_t {
  kCase,       // the case's side
  kOpening,    // the edge of an opening whose case is not given
  kPartition,  // a partition, and what stands beyond it
  kShared      // nothing: the next cell begins there
};

struct PlanSide {
  PlanBound bound = PlanBound::kShared;
  int member = -1;  // index into Bank::dividers
  int next = -1;    // index into Bank::spaces: the front beyond, if there is one
  Length cell;      // the cell's edge
  Length end;       // where the drawing ends
};

// What a plan takes in: the drawer, both sides of its cell, and how much is drawn of what goes on.
struct PlanScope {
  std::size_t space = 0;
  PlanSide left, right;
  Length stub;  // drawn of what runs on past a partition or an opening's edge
  Length rear;  // the rearmost line
};

// REQUIRES: the space is a drawer.
[[nodiscard]] PlanScope PlanScopeOf(const Bank& bank, std::size_t space, Length stub);

// A horizontal cut through the middle of the drawer's inside height.
[[nodiscard]] Faces PlanFaces(const Bank& bank, const PlanScope& scope);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PLAN_FACES_H_
