// The parts of a case beyond its sides, bottom, top, back and plain members: where each stands.
#ifndef TILLWRIGHT_SOLVE_CASE_PIECES_H_
#define TILLWRIGHT_SOLVE_CASE_PIECES_H_

#include "tillwright/bank.h"
#include "tillwright/diagnostic.h"
#include "tillwright/spec.h"

namespace tillwright {

// Fills Bank::pieces; reports those that have no room. The layout must have been laid.
void AddCasePieces(const Spec& spec, Bank& bank, Diagnostics& diagnostics);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_CASE_PIECES_H_
