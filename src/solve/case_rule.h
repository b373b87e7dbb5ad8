// The case as input: the opening from its outer sizes, and how far fronts cover its edges.
#ifndef TILLWRIGHT_SOLVE_CASE_RULE_H_
#define TILLWRIGHT_SOLVE_CASE_RULE_H_

#include <array>

#include "solve/context.h"
#include "solve/worktop_rule.h"
#include "spec/kinds.h"
#include "spec/moisture.h"
#include "tillwright/words.h"

namespace tillwright {

template <class N>
struct Opening {
  N width, height, depth;
  std::array<N, 4> overlay;  // by Edge (overlay fronts)
  std::array<N, 4> edge;     // by Edge (inset fronts)
  N member_thickness;        // of dividers and partitions, unless typed
  N member_entry;            // how far members enter what they join, at each end
  // With a face frame: how far members go on beyond the opening's edges to the case's own parts.
  bool framed = false;
  N side_in, low_in, high_in;
  N inside_width, inside_height, inside_depth;  // between the case's own parts
};

namespace case_rule {

// The back: how deep it takes up the case from the rear, how far it goes into the sides, its play.
template <class N>
struct BackNumbers {
  N allowance, in, play;
};

template <class T>
BackNumbers<typename T::Number> BackOf(Context<T>& context, CaseBuild& build,
                                       const typename T::Number& side) {
  using N = typename T::Number;
  const BackSpec& back = context.spec.casework->back;
  T& t = context.trace;
  build.back = back.fit.value;  // a rabbet unless typed
  const BackFacts& has = Facts(build.back);
  BackNumbers<N> numbers{t.Zero(), t.Zero(), t.Zero()};
  if (!has.there) return numbers;
  const N thickness =
      context.Named("case.back.thickness", back.thickness, defaults::kBackThickness);
  numbers.play = context.Named("case.back.play", back.play, defaults::kPlay);
  build.back_thickness = Value(thickness);
  build.back_play = Value(numbers.play);
  if (has.lap) {
    numbers.allowance = thickness;
    numbers.in = t.Name("case.back.lap",
                        back.lap.typed ? t.Given("case.back.lap", back.lap) : HalfBelow(side));
    build.back_lap = Value(numbers.in);
  } else if (has.inset) {
    const N inset = context.Named("case.back.inset", back.inset, defaults::kBackInset);
    build.back_inset = Value(inset);
    numbers.allowance = inset + thickness;
    numbers.in = context.Named("case.back.depth", back.depth, defaults::kGrooveDepth);
    build.back_depth = Value(numbers.in);
  }
  return numbers;
}

// The back panel. In a rabbet or groove it covers the rear edges of bottom and top, which stop
// short of it; across it goes as far into the sides as its rabbet or groove, less the play.
template <class T>
void SizeBack(Context<T>& context, CaseBuild& build, const BackNumbers<typename T::Number>& back,
              const typename T::Number& across, const typename T::Number& upright) {
  using N = typename T::Number;
  if (!Facts(build.back).there) return;
  const bool applied = Facts(build.back).behind;
  const auto panel = [&](const N& room) { return FloorTo(room - 2 * back.play, context.round); };
  T& t = context.trace;
  build.panel_width =
      Value(t.Name("case.back.width", applied ? across : panel(across + 2 * back.in)));
  build.panel_height = Value(t.Name("case.back.height", applied ? upright : panel(upright)));
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
  return t.Name("case.joint.depth", depth);
}

// The widths of the frame's members, by the edge they stand at.
template <class T>
std::array<typename T::Number, 4> FrameWidths(Context<T>& context) {
  using N = typename T::Number;
  const FaceFrameSpec& spec = context.spec.casework->face_frame;
  const N stile = context.Named("case.face_frame.stile", spec.stile, defaults::kFrameWidth);
  const N rail = context.Named("case.face_frame.rail", spec.rail, defaults::kFrameWidth);
  const N bottom_rail = spec.bottom_rail.typed
                            ? context.trace.Given("case.face_frame.bottom_rail", spec.bottom_rail)
                            : rail;
  return {rail, context.trace.Name("case.face_frame.bottom_rail", bottom_rail), stile, stile};
}

// Reports a member of the frame that leaves the case's own edge in sight.
template <class T>
void CheckCover(Context<T>& context, Length over, std::string_view what) {
  if (over >= Length()) return;
  ReportError(context.diagnostics, DiagnosticCode::kNoRoom, context.spec.casework->face_frame.place,
              std::string(what) + " of the face frame " + (what == "the stiles" ? "are " : "is ") +
                  FormatWithUnit(-over, context.unit()) + " too narrow to cover the case's edge",
              "make the frame's stiles and rails at least as wide as what they cover");
}

// The frame on the front: its opening is the bank's. `own` are the case's own thicknesses by edge,
// `outer` its width, `upright` what is left of its height above the raise.
template <class T>
std::array<typename T::Number, 4> FrameOpening(Context<T>& context, CaseBuild& build,
                                               Opening<typename T::Number>& opening,
                                               const std::array<typename T::Number, 4>& own,
                                               const typename T::Number& outer,
                                               const typename T::Number& upright) {
  using N = typename T::Number;
  const FaceFrameSpec& spec = context.spec.casework->face_frame;
  const std::array<N, 4> widths = FrameWidths(context);
  const auto& [rail, bottom_rail, stile, same] = widths;
  const N thickness =
      context.Named("case.face_frame.thickness", spec.thickness, defaults::kFrameThickness);
  const N overlap = context.Named("case.face_frame.overlap", spec.overlap);
  const N blocking = context.Named("case.face_frame.blocking", spec.blocking, defaults::kBlocking);
  build.frame = FaceFrame{Value(thickness),
                          Value(stile),
                          Value(rail),
                          Value(bottom_rail),
                          Value(overlap),
                          Value(blocking),
                          spec.material.typed ? spec.material.value : build.material};
  T& t = context.trace;
  opening.framed = true;
  opening.inside_width = t.Name("case.inside_width", opening.inside_width);
  opening.inside_height = t.Name("case.inside_height", opening.inside_height);
  opening.inside_depth = t.Name("case.inside_depth", opening.inside_depth);
  opening.high_in = t.Name("case.high_in", rail - own[0]);
  opening.low_in = t.Name("case.low_in", bottom_rail - own[1]);
  opening.side_in = t.Name("case.side_in", stile - overlap - own[2]);
  opening.width = outer + 2 * overlap - 2 * stile;
  opening.height = upright - bottom_rail - rail;
  opening.depth = opening.inside_depth + thickness;
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
  build.kick_setback =
      Value(context.Named("case.toe_kick.setback", spec.toe_kick.setback, defaults::kKickSetback));
  return context.Named("case.toe_kick.height", spec.toe_kick.height, defaults::kKickHeight);
}

// The overlay at one edge of the opening, `thickness` being what the front covers there. Under a
// worktop nothing is covered: unless the maker says what to do at that very edge, the front keeps
// the gap to it that fronts keep to one another.
template <class T>
typename T::Number OverlayAt(Context<T>& context, Edge edge, const typename T::Number& thickness,
                             bool under_worktop) {
  const OverlayEdge& asked = context.spec.fronts.overlay[static_cast<std::size_t>(edge)];
  const std::string key = T::kTracing ? "fronts.overlay." + std::string(Word(edge)) : "";
  if (asked.kind == OverlayEdge::Kind::kFlush) return thickness;
  if (asked.kind == OverlayEdge::Kind::kReveal) {
    return thickness - context.trace.Given(key + ".reveal", asked.length);
  }
  if (under_worktop && asked.from_single) {
    return context.trace.Zero() -
           context.GivenOr("fronts.gap", context.spec.fronts.gap, defaults::kGap);
  }
  return context.GivenOr(key, asked.length, defaults::kOverlay);
}

// The room behind the rear tenons of web frames: as typed, or what solid sides shrink over their
// depth until the dry season, so that the runners never push the back out.
template <class T>
typename T::Number FreeBehind(Context<T>& context, const CaseBuild& build,
                              const typename T::Number& depth) {
  const Entry<Length>& typed = context.spec.casework->web_frame.free;
  if (typed.typed) return context.trace.Given("case.web_frame.free", typed);
  const SeasonMoisture season = MoistureOf(context.spec.season);
  const double share =
      ChangePerPercent(build.material, SawnCut::kFlat) * (season.made - season.dry);
  if (share <= 0) return context.trace.Zero();
  const Length shrunk = CeilTo(ShareOf(build.depth, share), Value(context.round));
  return context.trace.Chosen("how much solid sides shrink from made to dry, in whole increments",
                              shrunk, depth, depth);
}

template <class T>
void SetFree(Context<T>& context, CaseBuild& build, const typename T::Number& depth) {
  if (!build.web) return;
  build.web->free =
      Value(context.trace.Name("case.web_frame.free", FreeBehind(context, build, depth)));
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
    build.stretcher_width =
        Value(context.Named("case.stretchers.width", spec.stretchers.width, defaults::kStretcher));
  }
  if (spec.web_frame.typed) {
    using N = typename T::Number;
    const WebFrameSpec& asked = spec.web_frame;
    WebFrame web;
    const N rail = context.Named("case.web_frame.rail", asked.rail, defaults::kWebRail);
    web.rail = Value(rail);
    web.runner = Value(context.trace.Name(
        "case.web_frame.runner",
        asked.runner.typed ? context.trace.Given("case.web_frame.runner", asked.runner) : rail));
    web.tenon = Value(context.Named("case.web_frame.tenon", asked.tenon, defaults::kWebTenon));
    if (asked.rails.typed) web.open = asked.rails.value;
    web.material = spec.web_frame.material.typed ? spec.web_frame.material.value : build.material;
    if (spec.web_frame.front.typed) web.front = spec.web_frame.front.value;
    build.web = std::move(web);
  }
}

template <class T>
void SetOverlays(Context<T>& context, const CaseBuild& build,
                 const std::array<typename T::Number, 4>& thickness,
                 Opening<typename T::Number>& opening) {
  for (const Edge edge : kEdges) {
    const auto i = static_cast<std::size_t>(edge);
    const bool under_worktop = edge == Edge::kTop && build.UnderWorktop();
    opening.overlay[i] = OverlayAt(context, edge, thickness[i], under_worktop);
  }
}

template <class T>
Opening<typename T::Number> FromCase(Context<T>& context) {
  using N = typename T::Number;
  const CaseSpec& spec = *context.spec.casework;
  T& t = context.trace;
  CaseBuild build;
  CopyBuild(context, build);
  const N side = context.Named("case.side", spec.side, defaults::kCaseStock);
  const N bottom = context.Named("case.bottom", spec.bottom, defaults::kCaseStock);
  const N top = t.Name(
      "case.top",
      spec.top_none ? t.Zero() : context.GivenOr("case.top", spec.top, defaults::kCaseStock));
  const N raise = t.Name("case.raise", RaiseOf(context, build));
  const N width = context.Named("case.width", spec.width);
  const N height = t.Name("case.height", CaseHeight(context, build));
  const N depth = t.Name("case.depth", CaseDepth(context, build));
  build.width = Value(width);
  build.height = Value(height);
  build.depth = Value(depth);
  SetFree(context, build, depth);
  build.side = Value(side);
  build.bottom = Value(bottom);
  build.top = Value(top);
  build.raise = Value(raise);
  Opening<N> opening;
  const BackNumbers<N> back = BackOf(context, build, side);
  const N allowance = t.Name("case.back_allowance", back.allowance);
  opening.width = opening.inside_width = width - 2 * side;
  opening.height = opening.inside_height = height - raise - bottom - top;
  opening.depth = opening.inside_depth = depth - allowance;
  build.back_allowance = Value(allowance);
  build.inside_width = Value(opening.width);
  build.inside_height = Value(opening.height);
  build.inside_depth = Value(opening.depth);
  opening.member_thickness = side;
  opening.member_entry = MemberEntry(context, build, side);
  build.member_length =
      Value(t.Name("case.member_length", opening.width + 2 * opening.member_entry));
  const bool applied = Facts(build.back).behind;
  SizeBack(context, build, back, applied ? width : opening.width,
           applied ? height : opening.height + bottom + top);
  std::array<N, 4> thickness{top, bottom, side, side};
  if (spec.face_frame.typed) {
    thickness = FrameOpening(context, build, opening, thickness, width, height - raise);
  }
  build.base = build.raise + build.bottom + build.low_in;
  SetOverlays(context, build, thickness, opening);
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
  opening.depth = opening.inside_depth = t.Given("opening.depth", spec.depth);
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
    context.bank.overlay[i] =
        Value(t.Name(T::kTracing ? "overlay." + std::string(Word(edge)) : "", opening.overlay[i]));
  }
  context.bank.opening_width = Value(opening.width);
  context.bank.opening_height = Value(opening.height);
  context.bank.opening_depth = Value(opening.depth);
  const Place place = from_case ? spec.casework->width.place : spec.opening->width.place;
  const char* hint = "make the case larger or its stock thinner";
  context.HasRoom(opening.width, "the opening's width", place, hint);
  context.HasRoom(opening.height, "the opening's height",
                  from_case ? case_rule::HeightPlace(*spec.casework) : spec.opening->height.place,
                  hint);
  context.HasRoom(opening.depth, "the opening's depth",
                  from_case ? case_rule::DepthPlace(*spec.casework) : spec.opening->depth.place,
                  hint);
  return opening;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_CASE_RULE_H_
