#include "sheet/axonometric.h"

#include <algorithm>
#include <array>

namespace tillwright {
namespace {

// Cosine and sine of 7 and of 42 degrees; written out so that every machine has the same.
constexpr double kCos7 = 0.992546151641322;
constexpr double kSin7 = 0.121869343405147;
constexpr double kCos42 = 0.743144825477394;
constexpr double kSin42 = 0.669130606358858;
constexpr double kDepth = 0.5;

constexpr double kRightHatch = 1.8;  // mm

// True if a plane parts the boxes with `a` on the side of the eye.
bool IsNearer(const Cuboid& a, const Cuboid& b) {
  return a.at.x >= b.Right() || a.at.y >= b.Top() || a.Rear() <= b.at.z;
}

// True if `a` must be drawn before `b`.
bool MayHide(const Cuboid& a, const Cuboid& b) { return IsNearer(b, a) && !IsNearer(a, b); }

// The outlines of boxes are hexagons whose sides lie along the three axes: two overlap just when
// they do so across each of these directions.
using Shadow = std::array<std::array<double, 2>, 3>;

Shadow ShadowOf(const Cuboid& box, const Axonometry& view) {
  const PaperPoint origin = view.At({});
  const Length one = Length::Millimeters(1000);
  const std::array axes{view.At({one, {}, {}}), view.At({{}, one, {}}), view.At({{}, {}, one})};
  Shadow shadow;
  for (std::size_t k = 0; k < axes.size(); ++k) {
    const double x = axes[k].y - origin.y;
    const double y = origin.x - axes[k].x;
    shadow[k] = {1e300, -1e300};
    for (const CuboidFace face : {CuboidFace::kFront, CuboidFace::kTop, CuboidFace::kRight}) {
      for (const PaperPoint& p : view.Face(box, face)) {
        shadow[k][0] = std::min(shadow[k][0], p.x * x + p.y * y);
        shadow[k][1] = std::max(shadow[k][1], p.x * x + p.y * y);
      }
    }
  }
  return shadow;
}

bool ShadowsMeet(const Shadow& a, const Shadow& b) {
  for (std::size_t k = 0; k < a.size(); ++k) {
    if (a[k][0] >= b[k][1] || b[k][0] >= a[k][1]) return false;
  }
  return true;
}

using Edge3 = std::array<Place3, 2>;

// The nine edges of the three faces that are seen, but for those a cut took away.
std::vector<Edge3> SeenEdges(const Cuboid& box) {
  const Length l = box.at.x;
  const Length r = box.Right();
  const Length b = box.at.y;
  const Length t = box.Top();
  const Length f = box.at.z;
  const Length k = box.Rear();
  std::vector<Edge3> edges{{Place3{l, t, f}, Place3{l, t, k}},
                           {Place3{r, t, f}, Place3{r, t, k}},
                           {Place3{r, b, f}, Place3{r, b, k}}};
  if (!box.cut_in_front) {
    edges.push_back({Place3{l, b, f}, Place3{r, b, f}});
    edges.push_back({Place3{r, b, f}, Place3{r, t, f}});
    edges.push_back({Place3{r, t, f}, Place3{l, t, f}});
    edges.push_back({Place3{l, t, f}, Place3{l, b, f}});
  }
  if (!box.cut_behind) {
    edges.push_back({Place3{l, t, k}, Place3{r, t, k}});
    edges.push_back({Place3{r, t, k}, Place3{r, b, k}});
  }
  return edges;
}

}  // namespace

PaperPoint Axonometry::At(const Place3& place) const {
  const double x = ToMillimeters(place.x) * scale_.paper_per_mm;
  const double y = ToMillimeters(place.y) * scale_.paper_per_mm;
  const double z = ToMillimeters(place.z) * scale_.paper_per_mm * kDepth;
  return {x * kCos7 + z * kCos42, x * kSin7 - y - z * kSin42};
}

PaperRing Axonometry::Face(const Cuboid& box, CuboidFace face) const {
  const Length l = box.at.x;
  const Length r = box.Right();
  const Length b = box.at.y;
  const Length t = box.Top();
  const Length f = box.at.z;
  const Length k = box.Rear();
  switch (face) {
    case CuboidFace::kFront:
      return {At({l, b, f}), At({r, b, f}), At({r, t, f}), At({l, t, f})};
    case CuboidFace::kTop:
      return {At({l, t, f}), At({r, t, f}), At({r, t, k}), At({l, t, k})};
    case CuboidFace::kRight:
      break;
  }
  return {At({r, b, f}), At({r, b, k}), At({r, t, k}), At({r, t, f})};
}

PaperBox Axonometry::BoxOf(const Cuboid& box) const {
  PaperBox all = EmptyBox();
  for (const CuboidFace face : {CuboidFace::kFront, CuboidFace::kTop, CuboidFace::kRight}) {
    for (const PaperPoint& p : Face(box, face)) all = Join(all, {p.x, p.y, p.x, p.y});
  }
  return all;
}

std::vector<std::size_t> DepthOrder(std::span<const Cuboid> boxes, const Axonometry& view) {
  const std::size_t n = boxes.size();
  std::vector<Shadow> shadows;
  for (const Cuboid& box : boxes) shadows.push_back(ShadowOf(box, view));
  std::vector<std::vector<std::size_t>> nearer(n);
  std::vector<std::size_t> behind(n, 0);  // how many still to be drawn before it
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      if (i == j || !ShadowsMeet(shadows[i], shadows[j]) || !MayHide(boxes[i], boxes[j])) continue;
      nearer[i].push_back(j);
      ++behind[j];
    }
  }
  std::vector<bool> drawn(n, false);
  std::vector<std::size_t> order;
  while (order.size() < n) {
    std::size_t next = n;
    for (std::size_t i = 0; i < n; ++i) {
      if (drawn[i]) continue;
      const bool free = behind[i] == 0;
      if (free) {
        next = i;
        break;
      }
      if (next == n || boxes[i].Rear() > boxes[next].Rear()) next = i;
    }
    drawn[next] = true;
    order.push_back(next);
    for (const std::size_t j : nearer[next]) {
      if (behind[j] > 0) --behind[j];
    }
  }
  return order;
}

void AddCuboid(SheetGroup& out, const Cuboid& box, const Axonometry& view, Pen pen) {
  const auto fill = [&](CuboidFace face) {
    out.primitives.emplace_back(Polyline{view.Face(box, face), true, Pen::kNone, Tone::kPaper});
  };
  fill(CuboidFace::kTop);
  fill(CuboidFace::kRight);
  if (!box.cut_in_front) fill(CuboidFace::kFront);
  HatchLines shade =
      HatchAtAngle(AreaOf(view.Face(box, CuboidFace::kRight)), 42, kRightHatch, Pen::kHatch);
  if (!shade.segments.empty()) out.primitives.emplace_back(std::move(shade));
  for (const Edge3& edge : SeenEdges(box)) {
    out.primitives.emplace_back(LineOf(view.At(edge[0]), view.At(edge[1]), pen));
  }
}

CuboidHalves CutAt(const Cuboid& box, Length z) {
  const Length cut = Max(box.at.z, Min(z, box.Rear()));
  CuboidHalves halves{box, box};
  halves.front.depth = cut - box.at.z;
  halves.rear.at.z = cut;
  halves.rear.depth = box.Rear() - cut;
  if (!halves.front.depth.IsZero() && !halves.rear.depth.IsZero()) {
    halves.front.cut_behind = true;
    halves.rear.cut_in_front = true;
  }
  return halves;
}

}  // namespace tillwright
