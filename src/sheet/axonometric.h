// Axonometric drawing of boxes: how a place in space lies on paper, and which box hides which.
//
// Dimetric projection after ISO 5456-3 [M]: widths and heights true to scale, depths halved; the
// width falls to the right by 7 degrees, the depth rises to the right by 42. Front, upper and right
// faces are seen. The axes are the bank's: x right, y up, z back.
#ifndef TILLWRIGHT_SHEET_AXONOMETRIC_H_
#define TILLWRIGHT_SHEET_AXONOMETRIC_H_

#include <cstddef>
#include <span>
#include <vector>

#include "sheet/hatch.h"
#include "sheet/scale.h"

namespace tillwright {

struct Place3 {
  Length x, y, z;
};

// A part as a box, its sides along the axes.
struct Cuboid {
  Place3 at;  // left, lower, front corner
  Length width, height, depth;
  // Cut off by a plane square to the depth: no edges are drawn there, and no front face.
  bool cut_in_front = false;
  bool cut_behind = false;

  [[nodiscard]] Length Right() const { return at.x + width; }
  [[nodiscard]] Length Top() const { return at.y + height; }
  [[nodiscard]] Length Rear() const { return at.z + depth; }
};

enum class CuboidFace { kFront, kTop, kRight };

class Axonometry {
 public:
  explicit Axonometry(const Scale& scale) : scale_(scale) {}

  // The place of (0, 0, 0) is the paper's origin.
  [[nodiscard]] PaperPoint At(const Place3& place) const;
  [[nodiscard]] PaperRing Face(const Cuboid& box, CuboidFace face) const;
  [[nodiscard]] PaperBox BoxOf(const Cuboid& box) const;

 private:
  Scale scale_;
};

// The order in which to draw boxes that do not overlap in space, so that the nearer hide the
// farther. Should some hide one another in a circle, it is broken at the one whose rear lies
// farthest back.
[[nodiscard]] std::vector<std::size_t> DepthOrder(std::span<const Cuboid> boxes,
                                                  const Axonometry& view);

// The seen faces filled with paper, right faces lightly hatched, and their edges.
void AddCuboid(SheetGroup& out, const Cuboid& box, const Axonometry& view, Pen pen);

// The part of a box in front of the plane z = `z` and the part behind it; either may be empty (of
// no depth).
struct CuboidHalves {
  Cuboid front, rear;
};
[[nodiscard]] CuboidHalves CutAt(const Cuboid& box, Length z);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_AXONOMETRIC_H_
