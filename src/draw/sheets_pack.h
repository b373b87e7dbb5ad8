// Packing: finds places on a sheet for boxes that keep their size.
#ifndef TILLWRIGHT_DRAW_SHEETS_PACK_H_
#define TILLWRIGHT_DRAW_SHEETS_PACK_H_

#include <optional>
#include <vector>

#include "tillwright/sheet.h"

namespace tillwright {

// The free space of one sheet. Boxes are placed from the upper left; each cuts the rectangle it is
// put into in two. Between boxes `gap` mm stay free.
class SheetPacker {
 public:
  SheetPacker(const PaperBox& space, double gap) : gap_(gap), free_{space} {}

  // Where the box's upper left corner goes, or nothing when no free rectangle holds it.
  std::optional<PaperPoint> Place(double width, double height);

 private:
  double gap_;
  std::vector<PaperBox> free_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_PACK_H_
