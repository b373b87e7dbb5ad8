#include "tillwright/gap_check.h"

#include <algorithm>

#include "check/advice.h"
#include "check/chance.h"
#include "check/gap_findings.h"
#include "check/given_layout.h"
#include "check/refit.h"
#include "check/shims.h"
#include "check/stack.h"
#include "check/wood.h"
#include "spec/defaults.h"

namespace tillwright {
namespace {

void TakeInputs(const Spec& spec, const Bank& bank, GapCheck& check) {
  const Unit unit = bank.units;
  check.cut = LengthOr(spec.tolerance.cut, defaults::kCutTolerance, unit);
  check.place = LengthOr(spec.tolerance.place, defaults::kPlaceTolerance, unit);
  check.opening = LengthOr(spec.tolerance.opening, defaults::kOpeningTolerance, unit);
  check.setting = spec.setting.value;
  check.least = LengthOr(spec.limits.least, defaults::kLeastGap, unit);
  check.greatest = LengthOr(spec.limits.greatest, defaults::kGreatestGap, unit);
  check.has_season = spec.season.typed;
  const SeasonMoisture moisture = MoistureOf(spec.season);
  check.made = moisture.made;
  check.dry = moisture.dry;
  check.humid = moisture.humid;
  check.has_measured = spec.measured.typed;
}

// The edge of the opening that a gap ends at, and the front on its other side.
std::optional<std::pair<Edge, int>> AtOpening(const Gap& gap) {
  if (gap.from.kind == GapEnd::Kind::kOpening && gap.to.kind == GapEnd::Kind::kSpace) {
    return std::pair{static_cast<Edge>(gap.from.index), gap.to.index};
  }
  if (gap.to.kind == GapEnd::Kind::kOpening && gap.from.kind == GapEnd::Kind::kSpace) {
    return std::pair{static_cast<Edge>(gap.to.index), gap.from.index};
  }
  return std::nullopt;
}

void Tapers(const Bank& bank, const RealOpening& real, GapCheck& check) {
  for (StackUp& stack : check.stacks) {
    if (stack.is_overlap) continue;
    if (const auto at = AtOpening(bank.gaps[static_cast<std::size_t>(stack.index)])) {
      const Rect& front = bank.spaces[static_cast<std::size_t>(at->second)].front.rect;
      stack.taper = real.Taper(at->first, front);
    }
  }
}

void SetShims(const Spec& spec, GapCheck& check) {
  if (spec.spacers.empty()) return;
  Length greatest;
  for (const StackUp& stack : check.stacks) {
    if (!stack.is_overlap) greatest = Max(greatest, stack.nominal);
  }
  const ShimChoice choice(spec.spacers, greatest);
  for (StackUp& stack : check.stacks) {
    if (!stack.is_overlap) stack.shims = choice.Nearest(stack.nominal);
  }
}

}  // namespace

bool ReckonGaps(const Spec& spec, const Bank& bank, const RealOpening& real, GapCheck& check) {
  TakeInputs(spec, bank, check);
  if (!BuildStacks(spec, bank, real, check)) return false;
  for (StackUp& stack : check.stacks) {
    const double closes = ToMillimeters(stack.nominal) - stack.humid_mm;
    stack.least_to_leave_mm = ToMillimeters(check.least) + closes;
  }
  if (!check.has_measured) return true;
  check.lean = real.lean();
  Tapers(bank, real, check);
  check.cells = MeasuredCells(spec, bank, real);
  return true;
}

Outcome<GapCheck> CheckGaps(const Spec& spec, const Bank& bank) {
  std::optional<GapCheck> result(std::in_place);
  GapCheck& check = *result;
  Diagnostics diagnostics;
  const RealOpening real(spec, bank);
  if (!ReckonGaps(spec, bank, real, check)) {
    ReportError(diagnostics, DiagnosticCode::kTooBig, spec.layout.place,
                "the stacks of fronts have more sizes than can be calculated together",
                "split the bank into several specs");
    return {std::nullopt, std::move(diagnostics)};
  }
  const Chance chance = ChanceOfAll(check);
  check.chance = chance.value;
  check.chance_error = chance.error;
  check.chance_samples = chance.samples;
  SetShims(spec, check);
  check.layouts = GivenLayouts(spec, bank);
  if (check.has_measured) check.refit = RefitBank(spec, bank, real, check.cells);
  FindGaps(spec, bank, real, check);
  Advise(spec, bank, check);
  return {std::move(result), std::move(diagnostics)};
}

}  // namespace tillwright
