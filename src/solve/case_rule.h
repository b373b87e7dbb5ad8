// The case as input: the opening from its outer sizes, and how far fronts cover its edges.
#ifndef TILLWRIGHT_SOLVE_CASE_RULE_H_
#define TILLWRIGHT_SOLVE_CASE_RULE_H_

#include <array>

#include "solve/context.h"
#include "solve/worktop_rule.h"
#include "spec/kinds.h"
#include "tillwright/words.h"

namespace tillwright {

template <class N>
struct Opening {
  N width, height, depth;
  std::array<N, 4> overlay;         // by Edge (overlay fronts)
  std::array<N, 4> edge;            // by Edge (inset fronts)
  N member_thickness;               // of dividers and partitions, unless typed
  N member_entry;                   // how far members enter what they join, at each end
  // With a face frame: how far members go on beyond the opening's edges to the case's own parts.
  bool framed = false;
  N side_in, low_in, high_in;
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
  const BackFacts& has = Facts(build.back);
  if (!has.there) return t.Zero();
  const N thickness =
      context.GivenOr("case.back.thickness", back.thickness, defaults::kBackThickness);
  const N play = context.GivenOr("case.back.play", back.play, defaults::kPlay);
  build.back_thickness = Value(thickness);
  build.back_play = Value(play);
  if (has.lap) {
    const N lap = back.lap.typed ? t.Given("case.back.lap", back.lap) : HalfBelow(side);
    build.back_lap = Value(lap);
    return thickness;
  }
  if (has.inset) {
    const N inset = context.GivenOr("case.back.inset", back.inset, defaults::kBackInset);
    build.back_inset = Value(inset);
    build.back_depth =
        Value(context.GivenOr("case.back.depth", back.depth, defaults::kGrooveDepth));
    return inset + thickness;
  }
  return t.Zero();
}

// The back panel. In a rabbet or groove it covers the rear edges of bottom and top, which stop
// short of it; across it goes as far into the sides as its rabbet or groove, less the play.
template <class T>
void SizeBack(Context<T>& context, CaseBuild& build) {
  if (!Facts(build.back).there) return;
  if (Facts(build.back).behind) {
    build.panel_width = build.width;
    build.panel_height = build.height;
    return;
  }
  const Length in = build.BackEntry();
  const Length q = Value(context.round);
  const Length play = 2 * build.back_play;
  build.panel_width = FloorTo(build.inside_width + 2 * in - play, q);
  build.panel_height = FloorTo(build.inside_height + build.bottom + build.top - play, q);
}

template <class T>
typename T::Number MemberEntry(Context<T>& context, CaseBuild& build,
                               const typename T::Number& side) {
  T& t = context.trace;
  const CaseJointSpec& joint = context.spec.casework->joint;
  build.joint = joint.type.value;  // butt unless typed
  build.fixing = joint.fixing.value;
  const bool let_in = Facts(build.joint).cut.has_value();
  if (!joint.fixing.typed && let_in) build.fixing = CaseFixing::kGlue;
  if (!let_in) return t.Zero();
  const auto depth = joint.depth.typed ? t.Given("case.joint.depth", joint.depth)
                                       : FloorTo(PartBelow(side, 3), context.round);
  build.joint_depth = Value(depth);
  return depth;
}

// The widths of the frame's members, by the edge they stand at.
template <class T>
std::array<typename T::Number, 4> FrameWidths(Context<T>& context) {
  using N = typename T::Number;
  const FaceFrameSpec& spec = context.spec.casework->face_frame;
  const N stile = context.GivenOr("case.face_frame.stile", spec.stile, defaults::kFrameWidth);
  const N rail = context.GivenOr("case.face_frame.rail", spec.rail, defaults::kFrameWidth);
  const N bottom_rail = spec.bottom_rail.typed
                            ? context.trace.Given("case.face_frame.bottom_rail", spec.bottom_rail)
                            : rail;
  return {rail, bottom_rail, stile, stile};
}

// Reports a member of the frame that leaves the case's own edge in sight.
template <class T>
void CheckCover(Context<T>& context, Length over, std::string_view what) {
  if (over >= Length()) return;
  ReportError(context.diagnostics, DiagnosticCode::kNoRoom,
              context.spec.casework->face_frame.place,
              std::string(what) + " of the face frame " + (what == "the stiles" ? "are " : "is ") +
                  FormatWithUnit(-over, context.unit()) + " too narrow to cover the case's edge",
              "make the frame's stiles and rails at least as wide as what they cover");
}

// The frame on the front: its opening is the bank's. `own` are the case's own thicknesses by edge,
// `outer` its width, `upright` what is left of its height above the raise.
template <class T>
std::array<typename T::Number, 4> FrameOpening(
    Context<T>& context, CaseBuild& build, Opening<typename T::Number>& opening,
    const std::array<typename T::Number, 4>& own, const typename T::Number& outer,
    const typename T::Number& upright) {
  using N = typename T::Number;
  const FaceFrameSpec& spec = context.spec.casework->face_frame;
  const std::array<N, 4> widths = FrameWidths(context);
  const auto& [rail, bottom_rail, stile, same] = widths;
  const N thickness =
      context.GivenOr("case.face_frame.thickness", spec.thickness, defaults::kFrameThickness);
  const N overlap = context.trace.Given("case.face_frame.overlap", spec.overlap);
  const N blocking =
      context.GivenOr("case.face_frame.blocking", spec.blocking, defaults::kBlocking);
  build.frame = FaceFrame{Value(thickness), Value(stile),    Value(rail), Value(bottom_rail),
                          Value(overlap),   Value(blocking),
                          spec.material.typed ? spec.material.value : build.material};
  opening.framed = true;
  opening.high_in = rail - own[0];
  opening.low_in = bottom_rail - own[1];
  opening.side_in = stile - overlap - own[2];
  opening.width = outer + 2 * overlap - 2 * stile;
  opening.height = upright - bottom_rail - rail;
  opening.depth = opening.depth + thickness;
  build.side_in = Value(opening.side_in);
  build.low_in = Value(opening.low_in);
  build.high_in = Value(opening.high_in);
  build.front_in = Value(thickness);
  CheckCover(context, build.side_in, "the stiles");
  CheckCover(context, build.low_in, "the bottom rail");
  CheckCover(context, build.high_in, "the top rail");
  return widths;
}

template <class T>
typename T::Number RaiseOf(Context<T>& context, CaseBuild& build) {
  const CaseSpec& spec = *context.spec.casework;
  if (!spec.toe_kick.typed) return context.trace.Given("case.raise", spec.raise);
  build.kick_setback = Value(context.GivenOr("case.toe_kick.setback", spec.toe_kick.setback,
                                             defaults::kKickSetback));
  return context.GivenOr("case.toe_kick.height", spec.toe_kick.height, defaults::kKickHeight);
}

// The overlay at one edge of the opening, `thickness` being what the front covers there.
template <class T>
typename T::Number OverlayAt(Context<T>& context, Edge edge, const typename T::Number& thickness,
                             bool nothing_to_cover) {
  const OverlayEdge& asked = context.spec.fronts.overlay[static_cast<std::size_t>(edge)];
  const std::string key = T::kTracing ? "fronts.overlay." + std::string(Word(edge)) : "";
  if (asked.kind == OverlayEdge::Kind::kFlush) return thickness;
  if (asked.kind == OverlayEdge::Kind::kReveal) {
    return thickness - context.trace.Given(key + ".reveal", asked.length);
  }
  if (nothing_to_cover && asked.from_single) return context.trace.Zero();
  return context.GivenOr(key, asked.length, defaults::kOverlay);
}

// What the maker said of the case beyond its sizes.
template <class T>
void CopyBuild(Context<T>& context, CaseBuild& build) {
  const CaseSpec& spec = *context.spec.casework;
  build.material = spec.material.value;
  build.back_material = spec.back.material.value;
  build.top_none = spec.top_none;
  build.stretchers = spec.stretchers.typed;
  if (build.stretchers) {
    build.stretcher_width = Value(context.GivenOr("case.stretchers.width", spec.stretchers.width,
                                                  defaults::kStretcher));
  }
  if (spec.web_frame.typed) {
    WebFrame web;
    web.rail = Value(context.GivenOr("case.web_frame.rail", spec.web_frame.rail, defaults::kWebRail));
    web.runner =
        spec.web_frame.runner.typed ? spec.web_frame.runner.value : web.rail;
    web.tenon =
        Value(context.GivenOr("case.web_frame.tenon", spec.web_frame.tenon, defaults::kWebTenon));
    web.material = spec.web_frame.material.typed ? spec.web_frame.material.value : build.material;
    build.web = std::move(web);
  }
}

template <class T>
Opening<typename T::Number> FromCase(Context<T>& context) {
  using N = typename T::Number;
  const CaseSpec& spec = *context.spec.casework;
  T& t = context.trace;
  CaseBuild build;
  CopyBuild(context, build);
  const N side = context.GivenOr("case.side", spec.side, defaults::kCaseStock);
  const N bottom = context.GivenOr("case.bottom", spec.bottom, defaults::kCaseStock);
  const N top = spec.top_none ? t.Zero()
                              : context.GivenOr("case.top", spec.top, defaults::kCaseStock);
  const N raise = RaiseOf(context, build);
  const N width = t.Given("case.width", spec.width);
  const N height = CaseHeight(context, build);
  const N depth = CaseDepth(context, build);
  build.width = Value(width);
  build.height = Value(height);
  build.depth = Value(depth);
  build.side = Value(side);
  build.bottom = Value(bottom);
  build.top = Value(top);
  build.raise = Value(raise);
  Opening<N> opening;
  opening.width = width - 2 * side;
  opening.height = height - raise - bottom - top;
  opening.depth = depth - BackAllowance(context, build, side);
  build.back_allowance = Value(depth) - Value(opening.depth);
  build.inside_width = Value(opening.width);
  build.inside_height = Value(opening.height);
  build.inside_depth = Value(opening.depth);
  opening.member_thickness = side;
  opening.member_entry = MemberEntry(context, build, side);
  build.member_length =
      Value(t.Name("case.bottom.length", opening.width + 2 * opening.member_entry));
  SizeBack(context, build);
  std::array<N, 4> thickness{top, bottom, side, side};
  if (spec.face_frame.typed) {
    thickness = FrameOpening(context, build, opening, thickness, width, height - raise);
  }
  build.base = build.raise + build.bottom + build.low_in;
  for (const Edge edge : kEdges) {
    const auto i = static_cast<std::size_t>(edge);
    const bool bare = edge == Edge::kTop && spec.top_none && !opening.framed;
    opening.overlay[i] = OverlayAt(context, edge, thickness[i], bare);
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
                  from_case ? case_rule::HeightPlace(*spec.casework) : spec.opening->height.place, hint);
  context.HasRoom(opening.depth, "the opening's depth",
                  from_case ? case_rule::DepthPlace(*spec.casework) : spec.opening->depth.place, hint);
  return opening;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_CASE_RULE_H_
