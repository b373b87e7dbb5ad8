// FindParts: where the sizes of every part are marked.
#ifndef TILLWRIGHT_DRAW_STICK_FIND_PARTS_H_
#define TILLWRIGHT_DRAW_STICK_FIND_PARTS_H_

#include <span>
#include <vector>

#include "tillwright/stick.h"

namespace tillwright {

// Every kind of part in the order of the bank, each size between two marks of one lane that are its
// own, its drawer's or the case's.
[[nodiscard]] std::vector<StickPart> FindParts(const Bank& bank, std::span<const Stick> sticks);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_FIND_PARTS_H_
