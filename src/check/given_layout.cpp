#include "check/given_layout.h"

#include <algorithm>

#include "check/layout_index.h"
#include "spec/defaults.h"

namespace tillwright {
namespace {

class Finder {
 public:
  Finder(const Spec& spec, const Bank& bank) : spec_(spec), bank_(bank) {}

  std::vector<GivenLayout> Run() {
    int space = 0;
    Walk(spec_.layout, true, space);
    return std::move(found_);
  }

 private:
  // Goes through the tree in reading order; `space` is the first leaf's index, then the next one's.
  void Walk(const LayoutNode& node, bool root, int& space) {
    if (!IsSplit(node.kind)) {
      ++space;
      return;
    }
    const int first = space;
    std::vector<int> starts;
    for (const LayoutNode& child : node.children) {
      starts.push_back(space);
      Walk(child, false, space);
    }
    const bool given = std::ranges::all_of(
        node.children, [](const LayoutNode& child) { return child.size.exact.typed; });
    if (given) Take(node, root, first, starts);
  }

  void Take(const LayoutNode& node, bool root, int first, const std::vector<int>& starts) {
    GivenLayout layout;
    layout.rows = node.kind == NodeKind::kRows;
    layout.first = first;
    layout.last = starts.back();
    for (const SolveNote& note : bank_.notes) {
      if (note.kind == SolveNote::Kind::kDoesNotClose && note.place == node.place) {
        layout.left_over = note.amount;
      }
    }
    layout.front = Largest(node, starts);
    Gaps(node, root, layout);
    found_.push_back(layout);
  }

  static int Largest(const LayoutNode& node, const std::vector<int>& starts) {
    int largest = -1;
    Length size;
    for (std::size_t i = 0; i < node.children.size(); ++i) {
      const LayoutNode& child = node.children[i];
      const bool is_front = child.kind == NodeKind::kDrawer || child.kind == NodeKind::kBlank;
      if (!is_front || child.size.exact.value <= size) continue;
      size = child.size.exact.value;
      largest = starts[i];
    }
    return largest;
  }

  Length EdgeOf(Edge edge) const {
    const Entry<Length>& typed = spec_.fronts.edge[static_cast<std::size_t>(edge)];
    return LengthOr(typed, defaults::kEdge, bank_.units);
  }

  void Gaps(const LayoutNode& node, bool root, GivenLayout& layout) const {
    const bool inset = bank_.style == FrontStyle::kInset;
    const bool worktop = !inset && layout.rows && bank_.casework && bank_.casework->UnderWorktop();
    const int n = static_cast<int>(node.children.size());
    const Entry<Length>& typed = node.gap.typed ? node.gap : spec_.fronts.gap;
    layout.gap = LengthOr(typed, defaults::kGap, bank_.units);
    layout.gap_count = n - 1 + (!root ? 0 : inset ? 2 : worktop ? 1 : 0);
    layout.spread_gap = layout.gap;
    if (layout.gap_count > 0) layout.spread_gap += PartBelow(layout.left_over, layout.gap_count);
    if (!root) return;
    const Edge end = layout.rows ? Edge::kTop : Edge::kRight;
    const Length overlay = bank_.overlay[static_cast<std::size_t>(end)];
    layout.flush_end = inset     ? EdgeOf(end) + layout.left_over
                       : worktop ? layout.left_over - overlay
                                 : overlay - layout.left_over;
  }

  const Spec& spec_;
  const Bank& bank_;
  std::vector<GivenLayout> found_;
};

}  // namespace

std::vector<GivenLayout> GivenLayouts(const Spec& spec, const Bank& bank) {
  return Finder(spec, bank).Run();
}

}  // namespace tillwright
