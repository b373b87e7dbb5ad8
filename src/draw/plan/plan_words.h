// What drawings call joints, bottoms and slides: the words of the trade, in capitals as
// lettering on drawings is.
#ifndef TILLWRIGHT_DRAW_PLAN_PLAN_WORDS_H_
#define TILLWRIGHT_DRAW_PLAN_PLAN_WORDS_H_

#include <string>
#include <string_view>

#include "tillwright/bank.h"

namespace tillwright {

[[nodiscard]] std::string CornerWords(CornerJoint joint);      // "HALF-BLIND DOVETAIL"
[[nodiscard]] std::string BottomWords(const BoxBuild& build);  // "BOTTOM IN GROOVE, BACK OPEN"
[[nodiscard]] std::string SlideWords(SlideType type);          // "SIDE-MOUNT SLIDE"
[[nodiscard]] std::string Lowered(std::string_view text);      // ASCII

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PLAN_WORDS_H_
