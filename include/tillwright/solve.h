// Solving: from the spec to every size and place.
#ifndef TILLWRIGHT_SOLVE_H_
#define TILLWRIGHT_SOLVE_H_

#include "tillwright/bank.h"
#include "tillwright/spec.h"
#include "tillwright/trace.h"

namespace tillwright {

// Solves the spec. On success the bank is complete; otherwise the diagnostics say what cannot be
// done, with the place in the spec. Exact: the same spec in inches and in millimeters of the same
// lengths gives the same sizes when `round` and the defaults are typed.
[[nodiscard]] Outcome<Bank> SolveBank(const Spec& spec);

// The same, and how every dimension came about. The sizes are the same: one expression makes both.
[[nodiscard]] Outcome<Bank> SolveBank(const Spec& spec, Trace& trace);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_H_
