// What of the spec sets a gap, and saying an advice where it bears.
#ifndef TILLWRIGHT_CHECK_CONTROL_H_
#define TILLWRIGHT_CHECK_CONTROL_H_

#include "check/layout_index.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// What sets a gap: the gap of a node, or an edge; or an overlay.
struct Control {
  SpecChange::Key key = SpecChange::Key::kGap;
  NodePath node;
  Edge edge = Edge::kTop;
  friend auto operator<=>(const Control&, const Control&) = default;
};

[[nodiscard]] Control ControlOf(const LayoutIndex& index, const Bank& bank, const StackUp& stack);

// Adds to every failing finding what of check.advice bears on it.
void SayAdvice(const Spec& spec, const Bank& bank, GapCheck& check);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_CONTROL_H_
