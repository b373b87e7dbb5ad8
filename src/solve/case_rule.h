// The case as input: the opening from its outer sizes, and how far fronts cover its edges.
#ifndef TILLWRIGHT_SOLVE_CASE_RULE_H_
#define TILLWRIGHT_SOLVE_CASE_RULE_H_

#include <array>

#include "solve/context.h"
#include "tillwright/words.h"

namespace tillwright {

template <class N>
struct Opening {
  N width, height, depth;
  std::array<N, 4> overlay;         // by Edge (overlay fronts)
  std::array<N, 4> edge;            // by Edge (inset fronts)
  N member_thickness;               // of dividers and partitions, unless typed
  N member_entry;                   // how far members enter what they join, at each end
};

namespace case_rule {

// How deep the back takes up the case from the rear, and the sizes of its panel.
template <class T>
typename T::Number BackAllowance(Context<T>& context, CaseBuild& build,
                                 const typename T::Number& side) {
  using N = typename T::Number;
  const BackSpec& back = context.spec.casework->back;
  T& t = context.trace;
  build.back = back.fit.value;  // a rabbet unless typed
  if (build.back == BackFit::kNone) return t.Zero();
  const N thickness =
      context.GivenOr("case.back.thickness", back.thickness, defaults::kBackThickness);
  const N play = context.GivenOr("case.back.play", back.play, defaults::kPlay);
  build.back_thickness = Value(thickness);
  build.back_play = Value(play);
  switch (build.back) {
    case BackFit::kRabbet: {
      const N lap = back.lap.typed ? t.Given("case.back.lap", back.lap) : HalfBelow(side);
      build.back_lap = Value(lap);
      return thickness;
    }
    case BackFit::kGroove: {
      const N inset = context.GivenOr("case.back.inset", back.inset, defaults::kBackInset);
      build.back_inset = Value(inset);
      build.back_depth =
          Value(context.GivenOr("case.back.depth", back.depth, defaults::kGrooveDepth));
      return inset + thickness;
    }
    case BackFit::kApplied:
    case BackFit::kNone: break;
  }
  return t.Zero();
}

// The back panel. In a rabbet or groove it covers the rear edges of bottom and top, which stop
// short of it; across it goes as far into the sides as its rabbet or groove, less the play.
template <class T>
void SizeBack(Context<T>& context, CaseBuild& build, const Opening<typename T::Number>& opening) {
  if (build.back == BackFit::kNone) return;
  if (build.back == BackFit::kApplied) {
    build.panel_width = build.width;
    build.panel_height = build.height;
    return;
  }
  const Length in = build.back == BackFit::kRabbet ? build.back_lap : build.back_depth;
  const Length q = Value(context.round);
  const Length play = 2 * build.back_play;
  build.panel_width = FloorTo(Value(opening.width) + 2 * in - play, q);
  build.panel_height = FloorTo(Value(opening.height) + build.bottom + build.top - play, q);
}

template <class T>
typename T::Number MemberEntry(Context<T>& context, CaseBuild& build,
                               const typename T::Number& side) {
  T& t = context.trace;
  const CaseJointSpec& joint = context.spec.casework->joint;
  build.joint = joint.type.value;  // butt unless typed
  build.fixing = joint.fixing.value;
  if (!joint.fixing.typed && build.joint != CaseJoint::kButt) build.fixing = CaseFixing::kGlue;
  if (build.joint == CaseJoint::kButt) return t.Zero();
  const auto depth = joint.depth.typed ? t.Given("case.joint.depth", joint.depth)
                                       : FloorTo(PartBelow(side, 3), context.round);
  build.joint_depth = Value(depth);
  return depth;
}

template <class T>
Opening<typename T::Number> FromCase(Context<T>& context) {
  using N = typename T::Number;
  const CaseSpec& spec = *context.spec.casework;
  T& t = context.trace;
  CaseBuild build;
  const N side = context.GivenOr("case.side", spec.side, defaults::kCaseStock);
  const N bottom = context.GivenOr("case.bottom", spec.bottom, defaults::kCaseStock);
  const N top = spec.top_none ? t.Zero()
                              : context.GivenOr("case.top", spec.top, defaults::kCaseStock);
  const N raise = t.Given("case.raise", spec.raise);
  const N width = t.Given("case.width", spec.width);
  const N height = t.Given("case.height", spec.height);
  const N depth = t.Given("case.depth", spec.depth);
  build.width = Value(width);
  build.height = Value(height);
  build.depth = Value(depth);
  build.side = Value(side);
  build.bottom = Value(bottom);
  build.top = Value(top);
  build.top_none = spec.top_none;
  build.raise = Value(raise);
  build.material = spec.material.value;
  build.back_material = spec.back.material.value;
  Opening<N> opening;
  opening.width = width - 2 * side;
  opening.height = height - raise - bottom - top;
  opening.depth = depth - BackAllowance(context, build, side);
  build.back_allowance = Value(depth) - Value(opening.depth);
  opening.member_thickness = side;
  opening.member_entry = MemberEntry(context, build, side);
  build.member_length = Value(t.Name("case.bottom.length", opening.width + 2 * opening.member_entry));
  SizeBack(context, build, opening);
  const std::array<N, 4> thickness{top, bottom, side, side};
  for (const Edge edge : kEdges) {
    const auto i = static_cast<std::size_t>(edge);
    const OverlayEdge& asked = context.spec.fronts.overlay[i];
    const std::string key = T::kTracing ? "fronts.overlay." + std::string(Word(edge)) : "";
    if (asked.kind == OverlayEdge::Kind::kFlush) {
      opening.overlay[i] = thickness[i];
    } else if (asked.kind == OverlayEdge::Kind::kReveal) {
      opening.overlay[i] = thickness[i] - t.Given(key + ".reveal", asked.length);
    } else if (edge == Edge::kTop && spec.top_none && asked.from_single) {
      opening.overlay[i] = t.Zero();  // no edge there to cover
    } else {
      opening.overlay[i] = context.GivenOr(key, asked.length, defaults::kOverlay);
    }
  }
  context.bank.casework = std::move(build);
  return opening;
}

template <class T>
Opening<typename T::Number> FromOpening(Context<T>& context) {
  const OpeningSpec& spec = *context.spec.opening;
  T& t = context.trace;
  Opening<typename T::Number> opening;
  opening.width = t.Given("opening.width", spec.width);
  opening.height = t.Given("opening.height", spec.height);
  opening.depth = t.Given("opening.depth", spec.depth);
  opening.member_thickness =
      t.Given("divider", Entry<Length>(defaults::kCaseStock.In(context.unit())));
  opening.member_entry = t.Zero();
  for (const Edge edge : kEdges) {
    const auto i = static_cast<std::size_t>(edge);
    const OverlayEdge& asked = context.spec.fronts.overlay[i];
    const std::string key = T::kTracing ? "fronts.overlay." + std::string(Word(edge)) : "";
    opening.overlay[i] = context.GivenOr(key, asked.length, defaults::kOverlay);
    if (asked.kind == OverlayEdge::Kind::kLength) continue;
    if (asked.from_single && edge != kEdges[0]) continue;  // typed, and told, once for all edges
    const bool flush = asked.kind == OverlayEdge::Kind::kFlush;
    ReportError(context.diagnostics, DiagnosticCode::kConflict, asked.length.place,
                std::string(flush ? "\"flush\"" : "\"reveal\"") +
                    " needs the case, and only its opening is given",
                "give the overlay as a length, or give \"case\" instead of \"opening\"");
  }
  return opening;
}

}  // namespace case_rule

// The opening, from `opening` or `case`. Reports an opening without room.
template <class T>
Opening<typename T::Number> SolveOpening(Context<T>& context) {
  const Spec& spec = context.spec;
  T& t = context.trace;
  const bool from_case = spec.casework.has_value();
  auto opening = from_case ? case_rule::FromCase(context) : case_rule::FromOpening(context);
  opening.width = t.Name("opening.width", opening.width);
  opening.height = t.Name("opening.height", opening.height);
  opening.depth = t.Name("opening.depth", opening.depth);
  for (const Edge edge : kEdges) {
    const auto i = static_cast<std::size_t>(edge);
    const std::string key = T::kTracing ? "fronts.edge." + std::string(Word(edge)) : "";
    opening.edge[i] = context.GivenOr(key, spec.fronts.edge[i], defaults::kEdge);
    context.bank.overlay[i] = Value(opening.overlay[i]);
  }
  context.bank.opening_width = Value(opening.width);
  context.bank.opening_height = Value(opening.height);
  context.bank.opening_depth = Value(opening.depth);
  const Place place = from_case ? spec.casework->width.place : spec.opening->width.place;
  const char* hint = "make the case larger or its stock thinner";
  context.HasRoom(opening.width, "the opening's width", place, hint);
  context.HasRoom(opening.height, "the opening's height",
                  from_case ? spec.casework->height.place : spec.opening->height.place, hint);
  context.HasRoom(opening.depth, "the opening's depth",
                  from_case ? spec.casework->depth.place : spec.opening->depth.place, hint);
  return opening;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_CASE_RULE_H_
