// Packing: finds places on a sheet for boxes that keep their size.
#ifndef TILLWRIGHT_SHEET_SHEET_PACKER_H_
#define TILLWRIGHT_SHEET_SHEET_PACKER_H_

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "tillwright/sheet.h"

namespace tillwright {

// Which of several boxes is placed first: the highest, the widest, the one with the longest
// outline.
enum class PackOrder : std::uint8_t { kHeight, kWidth, kOutline };
inline constexpr std::array kPackOrders{PackOrder::kHeight, PackOrder::kWidth, PackOrder::kOutline};

// The free space of one sheet, as all the rectangles in it that cannot be made larger; they
// overlap. Boxes are placed from the upper left, each where it fits tightest. Between boxes `gap`
// mm stay free.
class SheetPacker {
 public:
  SheetPacker(const PaperBox& space, double gap) : gap_(gap), free_{space} {}

  // Where the box's upper left corner goes, or nothing when no free rectangle holds it.
  std::optional<PaperPoint> Place(double width, double height);

  // Where boxes of these sizes go, all of them, placed in that order; nothing when one finds no
  // place.
  std::optional<std::vector<PaperPoint>> PlaceAll(const std::vector<PaperBox>& boxes,
                                                  PackOrder order);

 private:
  void Take(const PaperBox& taken);

  double gap_;
  std::vector<PaperBox> free_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_SHEET_PACKER_H_
