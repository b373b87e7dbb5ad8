// The face of a part as a part sheet draws it: its two sides, the channels, steps and joints cut
// into it, and the holes for pulls.
#ifndef TILLWRIGHT_STOCK_PART_SHAPE_H_
#define TILLWRIGHT_STOCK_PART_SHAPE_H_

#include <string_view>
#include <vector>

#include "tillwright/assembly.h"

namespace tillwright {

struct PartShape {
  Length right, up, thickness;  // left to right, upward, into the paper
  std::string_view right_name;  // "length" or "width": which size of the part lies left to right
  std::string_view up_name;
  std::vector<PlacedCut> bands;  // across the face or upright; of seats those in the drawn face
  std::vector<PullHole> holes;   // from the face's lower left corner
  Notch notch;                   // cut out of the lower left corner
};

// Of the left-hand piece, where there are two hands. REQUIRES: the piece is of that part.
[[nodiscard]] PartShape ShapeOf(const Part& part, const PlacedPart& piece);

// True if the mirror image, left for right, is another part.
[[nodiscard]] bool IsHanded(const PartShape& shape);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_PART_SHAPE_H_
