// The tongues of a case joined with grooves: as thick as the grooves are wide.
#ifndef TILLWRIGHT_SOLVE_TONGUE_RULE_H_
#define TILLWRIGHT_SOLVE_TONGUE_RULE_H_

#include "solve/context.h"
#include "spec/kinds.h"

namespace tillwright {
namespace tongue_rule {

// Of all parts that are let in.
inline Length ThinnestMember(const Bank& bank) {
  const CaseBuild& build = *bank.casework;
  Length least = build.top_none ? build.bottom : Min(build.bottom, build.top);
  for (const Divider& member : bank.dividers) {
    least = Min(least, member.partition ? member.rect.width : member.rect.height);
  }
  return least;
}

// A third of the thinnest member in whole increments; of a thin one as much as does not break off,
// but never more than half. One thickness for all: every groove is cut with one setting.
template <class T>
typename T::Number Default(Context<T>& context, Length thinnest) {
  using N = typename T::Number;
  T& t = context.trace;
  const N bottom =
      context.GivenOr("case.bottom", context.spec.casework->bottom, defaults::kCaseStock);
  const N member =
      t.Chosen("the thickness of the thinnest part with tongues", thinnest, bottom, bottom);
  const N third = FloorTo(PartBelow(member, 3), context.round);
  const Length least = Min(defaults::kLeastTongue.In(context.unit()), HalfBelow(thinnest));
  if (Value(third) >= least) return third;
  return t.Chosen("the minimum that will not break off, but no more than half the member", least,
                  third, member);
}

}  // namespace tongue_rule

// REQUIRES: members are laid out. Reports a tongue that leaves a member no shoulder.
template <class T>
void SizeTongue(Context<T>& context) {
  using N = typename T::Number;
  if (!context.bank.casework || !Facts(context.bank.casework->joint).tongue) return;
  T& t = context.trace;
  const Entry<Length>& typed = context.spec.casework->joint.tongue;
  const Length thinnest = tongue_rule::ThinnestMember(context.bank);
  const N tongue =
      typed.typed ? t.Given("case.joint.tongue", typed) : tongue_rule::Default(context, thinnest);
  context.bank.casework->tongue = Value(t.Name("case.joint.tongue", tongue));
  if (Value(tongue) < thinnest) return;
  ReportError(context.diagnostics, DiagnosticCode::kNoRoom, typed.place,
              "a tongue of " + FormatWithUnit(Value(tongue), context.unit()) +
                  " leaves no shoulder on a member " + FormatWithUnit(thinnest, context.unit()) +
                  " thick",
              "make \"tongue\" thinner, or use a dado");
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_TONGUE_RULE_H_
