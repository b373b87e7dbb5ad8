// Solid parts drawn back to front, and the places on them that stay in sight.
#ifndef TILLWRIGHT_SHEET_SOLID_INK_H_
#define TILLWRIGHT_SHEET_SOLID_INK_H_

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "sheet/axonometric.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// Boxes in the order they are drawn: what comes later hides what came before.
class SolidPicture {
 public:
  explicit SolidPicture(const Axonometry& view) : view_(view) {}

  // Adds boxes above all that is there, the farthest first. Returns where each went.
  std::vector<std::size_t> AddLayer(std::span<const Cuboid> boxes);
  // Adds one box above all that is there.
  std::size_t Add(const Cuboid& box);

  [[nodiscard]] const std::vector<Cuboid>& boxes() const { return boxes_; }
  [[nodiscard]] PaperBox Covered() const;

  // Is a point of this box's faces hidden by a box drawn after it?
  [[nodiscard]] bool IsHidden(std::size_t box, PaperPoint point) const;
  // A point in sight on one of its faces, the largest first, as near to the share `across` of the
  // face's width (of the depth, on the right face) as can be; empty when nothing of the box is in
  // sight.
  [[nodiscard]] std::optional<PaperPoint> PointInSight(std::size_t box, double across) const;
  // True if all of `label` lies on the front face and in sight.
  [[nodiscard]] bool HasRoom(std::size_t box, const PaperBox& label) const;

 private:
  const Axonometry& view_;
  std::vector<Cuboid> boxes_;
};

// Is the point inside the ring? REQUIRES: a convex ring.
[[nodiscard]] bool IsInRing(const PaperRing& ring, PaperPoint point);

// A name with a line to its part: in a column beside the picture.
struct PartNote {
  PaperPoint tip{};
  std::string name{};   // drawn as it is
  std::string sizes{};  // below it; may be empty
  std::string path{};   // of the sizes
  bool left = false;    // of the picture
};

// Draws the notes in columns left and right of `picture`, spread so that none crowd. Their lines
// are broken at the labels that `out` holds already.
void AddPartNotes(SheetGroup& out, std::span<const PartNote> notes, const PaperBox& picture,
                  const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_SOLID_INK_H_
