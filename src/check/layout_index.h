// Where every space of a bank stands in the spec's layout.
#ifndef TILLWRIGHT_CHECK_LAYOUT_INDEX_H_
#define TILLWRIGHT_CHECK_LAYOUT_INDEX_H_

#include <algorithm>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

// The way from the layout's root to a node, child by child.
using NodePath = std::vector<int>;

class LayoutIndex {
 public:
  // The spaces of a bank are the leaves of its layout in the same order.
  explicit LayoutIndex(const Spec& spec) : spec_(spec) {
    NodePath path;
    Walk(spec.layout, path);
  }

  [[nodiscard]] const NodePath& PathOf(int space) const {
    return paths_[static_cast<std::size_t>(space)];
  }

  // The split that parts two spaces.
  [[nodiscard]] NodePath Common(int a, int b) const {
    const NodePath& one = PathOf(a);
    const NodePath& other = PathOf(b);
    const auto end = std::ranges::mismatch(one, other).in1;
    return {one.begin(), end};
  }

  [[nodiscard]] const LayoutNode& At(const NodePath& path) const {
    const LayoutNode* node = &spec_.layout;
    for (const int child : path) node = &node->children[static_cast<std::size_t>(child)];
    return *node;
  }

  // The axis that a space's size keys act along: that of the split it is a child of. A lone leaf has
  // no split.
  [[nodiscard]] std::optional<Axis> SplitOf(int space) const {
    NodePath path = PathOf(space);
    if (path.empty()) return std::nullopt;
    path.pop_back();
    return At(path).kind == NodeKind::kRows ? Axis::kY : Axis::kX;
  }

 private:
  void Walk(const LayoutNode& node, NodePath& path) {
    if (!IsSplit(node.kind)) {
      paths_.push_back(path);
      return;
    }
    for (std::size_t i = 0; i < node.children.size(); ++i) {
      path.push_back(static_cast<int>(i));
      Walk(node.children[i], path);
      path.pop_back();
    }
  }

  const Spec& spec_;
  std::vector<NodePath> paths_;
};

// The same for a spec that is to be changed.
[[nodiscard]] inline LayoutNode& NodeAt(Spec& spec, const NodePath& path) {
  LayoutNode* node = &spec.layout;
  for (const int child : path) node = &node->children[static_cast<std::size_t>(child)];
  return *node;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_LAYOUT_INDEX_H_
