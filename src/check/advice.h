// What to change in the spec so that every failing verdict passes.
#ifndef TILLWRIGHT_CHECK_ADVICE_H_
#define TILLWRIGHT_CHECK_ADVICE_H_

#include "check/real_opening.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// The stacks of a bank with all that is reckoned from them but for chance, spacers and words. False
// when there are too many contributors.
[[nodiscard]] bool ReckonGaps(const Spec& spec, const Bank& bank, const RealOpening& real,
                              GapCheck& check);

// Fills in check.advice when a gap, an overlap, a box as measured or a sum of given sizes fails, and
// says it in the findings. The changes are tried: the changed spec was solved and passed.
void Advise(const Spec& spec, const Bank& bank, GapCheck& check);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_ADVICE_H_
