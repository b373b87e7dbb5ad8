// Packing: finds places on a sheet for boxes that keep their size.
#ifndef TILLWRIGHT_DRAW_SHEETS_PACK_H_
#define TILLWRIGHT_DRAW_SHEETS_PACK_H_

#include <optional>
#include <vector>

#include "tillwright/sheet.h"

namespace tillwright {

// The free space of one sheet, as all the rectangles in it that cannot be made larger; they
// overlap. Boxes are placed from the upper left, each where it fits tightest. Between boxes `gap`
// mm stay free.
class SheetPacker {
 public:
  SheetPacker(const PaperBox& space, double gap) : gap_(gap), free_{space} {}

  // Where the box's upper left corner goes, or nothing when no free rectangle holds it.
  std::optional<PaperPoint> Place(double width, double height);

  [[nodiscard]] const std::vector<PaperBox>& free() const { return free_; }

 private:
  void Take(const PaperBox& taken);

  double gap_;
  std::vector<PaperBox> free_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_PACK_H_
