#include "tillwright/solve.h"

#include "bank/bands.h"
#include "solve/case_pieces.h"
#include "solve/gaps.h"
#include "solve/layout_rule.h"
#include "solve/parts.h"
#include "solve/tongue_rule.h"

namespace tillwright {
namespace {

// A part is cut smaller by the bands that go on its edges: something must be left of it.
void CheckBands(const Spec& spec, const Bank& bank, Diagnostics& diagnostics) {
  const Entry<Length>& band = spec.edge_band.thickness;
  const bool framed = bank.casework && bank.casework->frame;
  for (const Part& part : bank.parts) {
    const SeenEdge banded = BandedEdge(spec.edge_band, part, framed);
    if (banded == SeenEdge::kNone) continue;
    const Length both = banded == SeenEdge::kAll ? 2 * band.value : band.value;
    if (both < Min(part.length, part.width)) continue;
    return ReportError(diagnostics, DiagnosticCode::kNoRoom, band.place,
                       "edge bands leave nothing of " + PartId(bank, part) + ", which is " +
                           FormatWithUnit(Min(part.length, part.width), bank.units) + " across",
                       "give the thickness of the band, such as \"1/32\" or \"1 mm\"");
  }
}

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
    CheckBands(spec, bank, diagnostics);
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
