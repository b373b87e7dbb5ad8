// The face of a part as a part sheet draws it: its two sides, the channels, steps and joints cut
// into it, and the holes for pulls.
#ifndef TILLWRIGHT_STOCK_PART_SHAPE_H_
#define TILLWRIGHT_STOCK_PART_SHAPE_H_

#include <cstddef>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

// One cut where it lies on the face; a cut at each end gives two.
struct CutBand {
  std::size_t cut = 0;    // index into Part::cuts, or, of a seat, into SeatsIn()
  bool upright = false;   // from the lower edge to the upper; else from left to right
  Length low, high;       // its two sides, from the face's left (upright) or lower edge
  bool from_far = false;  // measured from the right or upper edge
  Length depth;           // from the face
  bool joint = false;     // dovetails or fingers: only a part of the band is cut away
  bool seat = false;      // takes a divider or partition
  bool behind = false;    // in the face that is not drawn
  bool twin = false;      // behind, and the same in the drawn face
};

struct PartShape {
  Length right, up, thickness;  // left to right, upward, into the paper
  std::string_view right_name;  // "length" or "width": which size of the part lies left to right
  std::string_view up_name;
  std::vector<CutBand> bands;
  std::vector<PullHole> holes;  // from the face's lower left corner
  Notch notch;                  // cut out of the lower left corner
};

[[nodiscard]] PartShape ShapeOf(const Bank& bank, const Part& part);

// True if the mirror image, left for right, is another part.
[[nodiscard]] bool IsHanded(const PartShape& shape);

// Dovetails and fingers.
[[nodiscard]] bool IsJoint(CutKind kind);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_PART_SHAPE_H_
