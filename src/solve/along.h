// What a split of the layout works with: a node's region along each axis, and what lies between its
// children.
#ifndef TILLWRIGHT_SOLVE_ALONG_H_
#define TILLWRIGHT_SOLVE_ALONG_H_

#include <optional>

#include "solve/case_rule.h"
#include "solve/context.h"
#include "solve/layout_errors.h"

namespace tillwright {

// A stretch of one axis that fronts may cover.
template <class N>
struct Stretch {
  N low, size;
};
// A stretch of one axis that boxes may use.
template <class N>
struct Clear {
  N low, high;
};
// A node's region along one axis; `split` once a node above has split that axis.
template <class N>
struct Along {
  Stretch<N> front;
  Clear<N> clear;
  bool split = false;
  std::optional<Length> box =
      {};  // of a drawer whose box is to be alike with others along the axis
};

// How one split shares its length: what lies between neighbors.
template <class N>
struct Between {
  N gap;       // between the fronts; with edge gaps, unused
  N low_edge;  // edge gaps on both sides of a member (inset with members)
  N high_edge;
  N thickness;  // of the member
  bool member = false;
  bool edge_gaps = false;
  N total;  // from front to front
};

// REQUIRES: the node is a split.
template <class T>
Between<typename T::Number> BetweenOf(Context<T>& context,
                                      const Opening<typename T::Number>& opening,
                                      const LayoutNode& node, bool rows) {
  const Spec& spec = context.spec;
  Between<typename T::Number> between;
  const Entry<Length>& typed = node.gap.typed ? node.gap : spec.fronts.gap;
  between.gap = context.GivenOr(node.gap.typed ? "gap" : "fronts.gap", typed, defaults::kGap);
  const bool wanted = node.children.size() > 1 && WantsMember(spec, node);
  between.member =
      node.children.size() > 1 && !node.divider.none && (node.divider.thickness.typed || wanted);
  if (wanted && node.divider.none) {
    context.bank.notes.push_back({SolveNote::Kind::kNoDivider, LabelOf(spec, node), Length()});
  }
  between.thickness = !between.member ? context.trace.Zero()
                      : node.divider.thickness.typed
                          ? context.trace.Given("divider", node.divider.thickness)
                          : opening.member_thickness;
  between.edge_gaps = spec.fronts.style.value == FrontStyle::kInset && between.member;
  const auto low = static_cast<std::size_t>(rows ? Edge::kBottom : Edge::kLeft);
  const auto high = static_cast<std::size_t>(rows ? Edge::kTop : Edge::kRight);
  between.low_edge = opening.edge[low];
  between.high_edge = opening.edge[high];
  between.total =
      between.edge_gaps ? between.thickness + between.low_edge + between.high_edge : between.gap;
  return between;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_ALONG_H_
