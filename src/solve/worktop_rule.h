// The case under a worktop: its height and depth, where they follow from its surroundings.
#ifndef TILLWRIGHT_SOLVE_WORKTOP_RULE_H_
#define TILLWRIGHT_SOLVE_WORKTOP_RULE_H_

#include "solve/context.h"
#include "spec/kinds.h"

namespace tillwright::case_rule {

// Where to point when a size of the case does not do: at it, or at what it follows from.
[[nodiscard]] inline Place HeightPlace(const CaseSpec& spec) {
  return spec.height.typed ? spec.height.place : spec.worktop.place;
}
[[nodiscard]] inline Place DepthPlace(const CaseSpec& spec) {
  return spec.depth.typed ? spec.depth.place : spec.worktop.place;
}

// From the floor to the worktop's underside.
template <class T>
typename T::Number LegOf(Context<T>& context) {
  const WorktopSpec& worktop = context.spec.casework->worktop;
  if (worktop.leg.typed) return context.Named("case.worktop.leg", worktop.leg);
  return context.trace.Name("case.worktop.leg",
                            context.Named("case.worktop.height", worktop.height) -
                                context.Named("case.worktop.thickness", worktop.thickness));
}

// As typed, or what the feet leave of the worktop's legs.
template <class T>
typename T::Number CaseHeight(Context<T>& context, CaseBuild& build) {
  using N = typename T::Number;
  const CaseSpec& spec = *context.spec.casework;
  T& t = context.trace;
  N feet = t.Zero();
  if (spec.feet.typed) {
    feet = context.Named("case.feet.height", spec.feet.height, defaults::kFootHeight);
    build.feet = Value(feet);
    build.feet_setback = Value(context.Named("case.feet.setback", spec.feet.setback));
    const bool wide = spec.width.value > defaults::kSixFeet.In(context.unit());
    build.feet_count = spec.feet.count.typed ? spec.feet.count.value : (wide ? 6 : 4);
  }
  if (spec.worktop.typed) {
    const WorktopSpec& asked = spec.worktop;
    Worktop worktop;
    worktop.thickness = Value(context.Named("case.worktop.thickness", asked.thickness));
    worktop.width = Value(context.Named("case.worktop.width", asked.width));
    worktop.depth = Value(context.Named("case.worktop.depth", asked.depth));
    worktop.left = Value(context.Named("case.worktop.left", asked.left));
    worktop.material = asked.material.value;
    if (asked.leg.typed || asked.height.typed) worktop.leg = Value(LegOf(context));
    build.worktop = std::move(worktop);
  }
  if (spec.height.typed) return t.Given("case.height", spec.height);
  const N leg = LegOf(context);
  return spec.feet.typed ? leg - feet : leg;
}

// As typed, or what fronts, face frame and an applied back leave of the worktop's depth, so that
// fronts end flush with its edge.
template <class T>
typename T::Number CaseDepth(Context<T>& context, const CaseBuild& /*build*/) {
  using N = typename T::Number;
  const Spec& spec = context.spec;
  const CaseSpec& casework = *spec.casework;
  T& t = context.trace;
  if (casework.depth.typed) return t.Given("case.depth", casework.depth);
  N depth = t.Given("case.worktop.depth", casework.worktop.depth);
  if (spec.fronts.style.value == FrontStyle::kOverlay) {
    depth = depth -
            context.GivenOr("fronts.thickness", spec.fronts.thickness, defaults::kFrontThickness);
  }
  if (casework.face_frame.typed) {
    depth = depth - context.GivenOr("case.face_frame.thickness", casework.face_frame.thickness,
                                    defaults::kFrameThickness);
  }
  if (Facts(casework.back.fit.value).behind) {
    depth = depth - context.GivenOr("case.back.thickness", casework.back.thickness,
                                    defaults::kBackThickness);
  }
  return depth;
}

}  // namespace tillwright::case_rule

#endif  // TILLWRIGHT_SOLVE_WORKTOP_RULE_H_
