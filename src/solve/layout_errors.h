// The plain helpers of the layout rule: what a node wants between its children, what it is called,
// and how an apportioning that cannot be done is explained.
#ifndef TILLWRIGHT_SOLVE_LAYOUT_ERRORS_H_
#define TILLWRIGHT_SOLVE_LAYOUT_ERRORS_H_

#include <string>

#include "solve/apportion.h"
#include "tillwright/spec.h"

namespace tillwright {

// Whether a split has members between its children when the spec does not say: columns when any
// drawer in them hangs on their sides, rows when a child is columns or a drawer stands on
// something.
[[nodiscard]] bool WantsMember(const Spec& spec, const LayoutNode& node);

// A child's bounds and weight; with a grid everything grows by the gap, `pitch`.
[[nodiscard]] ApportionChild ChildOf(const SizeSpec& size, Length pitch);
[[nodiscard]] ApportionScheme SchemeOf(const GraduateSpec& graduate);

// "D3" for a leaf, "the rows D1 to D3" for a split, "the bank" for the root.
[[nodiscard]] std::string LabelOf(const Spec& spec, const LayoutNode& node);

// REQUIRES: sizes.fault is not kNone.
void ReportApportion(const Spec& spec, const LayoutNode& node, const Apportioned& sizes, Unit unit,
                     Diagnostics& out);

// Notes what a split had to move, sizes that do not close, and equal ones that come out in two
// sizes `step` apart, which `alike` would make one.
void NoteSplit(const Spec& spec, const LayoutNode& node, const Apportioned& sizes, Length step,
               Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_LAYOUT_ERRORS_H_
