// Sizes along one side of a part's face, sorted into tiers of chains.
#ifndef TILLWRIGHT_DRAW_PART_PART_SHEET_DIMS_H_
#define TILLWRIGHT_DRAW_PART_PART_SHEET_DIMS_H_

#include <functional>
#include <string>
#include <vector>

#include "sheet/dimension.h"
#include "tillwright/length_text.h"

namespace tillwright {

// A stretch with the paths of what it is. Stretches that are one and the same share a label.
struct SizeMark {
  Length low, high;
  std::string path;
};

// Chains of the marks, the shortest stretches nearest the object, no two of a chain over one
// another. `paper` gives the place on paper of a length along the side. Marks of no length are left
// out.
[[nodiscard]] std::vector<DimensionChain> ChainsOf(std::vector<SizeMark> marks, Unit unit,
                                                   const std::function<double(Length)>& paper);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PART_PART_SHEET_DIMS_H_
