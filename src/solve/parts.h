// The parts of the bank: every piece of wood, with its finished size and its cuts.
#ifndef TILLWRIGHT_SOLVE_PARTS_H_
#define TILLWRIGHT_SOLVE_PARTS_H_

#include "tillwright/bank.h"

namespace tillwright {

// Fills Bank::parts: for each drawer front, sides, ends and bottom, then blanks' fronts where they
// come in reading order, then members, then the case. Sizes are those the rules solved.
void AddParts(Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_PARTS_H_
