// Which of the spacers on hand set a gap.
#ifndef TILLWRIGHT_CHECK_SHIMS_H_
#define TILLWRIGHT_CHECK_SHIMS_H_

#include <vector>

#include "tillwright/gap_check.h"

namespace tillwright {

// Every sum that the pieces on hand can make, up to twice the greatest gap that is wanted (a sum
// beyond that is further off than no piece at all), each with its fewest pieces.
//
// Exact up to 2^15 different sums; past that, sums closer together than 1/16384 of the greatest gap
// are not told apart (a few ten-thousandths of a millimeter).
class ShimChoice {
 public:
  ShimChoice(const std::vector<SpacerSpec>& spacers, Length greatest);

  // The set whose sum comes nearest, fewest pieces first among equals, the thinner sum among those.
  [[nodiscard]] ShimSet Nearest(Length wanted) const;

 private:
  struct Sum {
    Length length;
    int pieces = 0;
    int last = -1;  // into steps_
  };
  struct Step {  // `count` of a spacer on top of what came before
    int spacer, count, before;
  };
  void AddPieces(int spacer, Length thickness, int count, Length most);
  void Thin(Length most);

  std::vector<Sum> sums_;  // by length, each once
  std::vector<Step> steps_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_SHIMS_H_
