// Where section A-A cuts the bank: an upright plane from front to back.
#ifndef TILLWRIGHT_DRAW_SECTION_SIDE_PLANE_H_
#define TILLWRIGHT_DRAW_SECTION_SIDE_PLANE_H_

#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

struct SectionPlane {
  Length x;                         // from the opening's left edge
  std::vector<std::size_t> spaces;  // indices into Bank::spaces that it cuts, from the top down
};

// The plane nearest to the middle of the opening that runs through the middle of a cell and meets
// no partition and no gap between fronts.
[[nodiscard]] SectionPlane ChooseSectionPlane(const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SECTION_SIDE_PLANE_H_
