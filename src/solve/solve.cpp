#include "tillwright/solve.h"

#include "solve/case_pieces.h"
#include "solve/gaps.h"
#include "solve/layout_rule.h"
#include "solve/parts.h"
#include "solve/tongue_rule.h"

namespace tillwright {
namespace {

template <class T>
Outcome<Bank> Solve(const Spec& spec, T& tracer) {
  std::optional<Bank> result(std::in_place);
  Bank& bank = *result;
  Diagnostics diagnostics;
  CheckApplicable(spec, diagnostics);
  bank.title = spec.title.value;
  bank.units = spec.units.value;
  bank.style = spec.fronts.style.value;
  bank.match = spec.fronts.match.value;
  bank.spaces.reserve(spec.leaves.size());
  const Entry<Length> round =
      spec.round.typed ? spec.round : Entry<Length>(defaults::kRound.In(spec.units.value));
  Context<T> context{spec, tracer, bank, diagnostics,
                     tracer.Name("round", tracer.Given("round", round))};
  bank.round = round.value;
  const auto opening = SolveOpening(context);
  if (!HasErrors(diagnostics)) {
    LayoutRule<T>(context, opening).Run();
    SizeTongue(context);
  }
  if (!HasErrors(diagnostics)) {
    AddGaps(context.laid, bank);
    AddCasePieces(spec, bank, diagnostics);
    AddParts(bank);
  }
  return {std::move(result), std::move(diagnostics)};
}

}  // namespace

Outcome<Bank> SolveBank(const Spec& spec) {
  NoTrace none;
  return Solve(spec, none);
}

Outcome<Bank> SolveBank(const Spec& spec, Trace& trace) {
  WithTrace with(trace);
  return Solve(spec, with);
}

}  // namespace tillwright
