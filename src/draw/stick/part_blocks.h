// Where parts stand in the piece, each of its true size, with what enters other parts.
#ifndef TILLWRIGHT_DRAW_STICK_PART_BLOCKS_H_
#define TILLWRIGHT_DRAW_STICK_PART_BLOCKS_H_

#include <array>

#include "tillwright/bank.h"
#include "tillwright/stick.h"

namespace tillwright {

// From the opening's lower left corner and the case's front edges; of several alike the first, of a
// pair the left one. A bottom panel lies against the left and the front of its groove.
[[nodiscard]] Block PartBlock(const Bank& bank, const Part& part);

// Along which axes the part's length, width and thickness lie.
[[nodiscard]] std::array<StickAxis, 3> PartAxes(const Part& part, const Block& block);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_PART_BLOCKS_H_
