// A cut tree: how one sheet is taken apart by cuts from edge to edge.
//
// A node is a part, a leftover, or a piece cut into columns (side by side along x) or rows (one
// over another along y). The direction changes from each node to its children, and a node has at
// most one leftover among its children: leftovers side by side are one.
//
//   (1) The children of a node fill it exactly along its direction and have its size across.
//   (2) Whatever is inserted and removed, every layout can be cut from edge to edge.
#ifndef TILLWRIGHT_NEST_TREE_H_
#define TILLWRIGHT_NEST_TREE_H_

#include <array>
#include <cstdint>
#include <vector>

namespace tillwright::nest {

// What a node is, when it is not a part (a part's index is zero or more).
inline constexpr std::int32_t kLeftover = -1;
inline constexpr std::int32_t kColumns = -2;
inline constexpr std::int32_t kRows = -3;
inline constexpr std::int32_t kUnused = -4;

inline constexpr std::int32_t kNone = -1;

struct Node {
  std::int32_t width = 0;
  std::int32_t height = 0;
  std::int32_t parent = kNone;
  std::int32_t first = kNone;  // the first child
  std::int32_t next = kNone;   // the next child of the same parent
  std::int32_t what = kLeftover;
  bool turned = false;  // of a part
};

// A part as it is to lie: its size after turning.
struct Laid {
  std::int32_t part = 0;
  std::int32_t width = 0;
  std::int32_t height = 0;
  bool turned = false;
};

class Tree {
 public:
  Tree() = default;
  Tree(std::int32_t width, std::int32_t height) { Reset(width, height); }
  void Reset(std::int32_t width, std::int32_t height);

  [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }
  [[nodiscard]] const Node& At(std::int32_t node) const {
    return nodes_[static_cast<std::size_t>(node)];
  }
  [[nodiscard]] bool IsEmpty() const { return nodes_.front().what == kLeftover; }

  // Puts a part into a leftover's corner. `first_cut` (kColumns or kRows) is the cut that is made
  // first where both are needed. Returns the leftovers that come of it, kNone for none.
  // REQUIRES: the node is a leftover and the part fits it.
  std::array<std::int32_t, 2> Insert(std::int32_t leftover, const Laid& laid,
                                     std::int32_t first_cut);

  // Takes a node out with all that is in it, calling `taken(part)` for every part.
  template <class F>
  void Remove(std::int32_t node, F taken) {
    Clear(node, taken);
    Merge(node);
  }

  // How many cuts deep a node lies: the root 0, its children 1.
  [[nodiscard]] int Depth(std::int32_t node) const;

 private:
  [[nodiscard]] Node& Get(std::int32_t node) { return nodes_[static_cast<std::size_t>(node)]; }
  std::int32_t Add(const Node& node);
  void Free(std::int32_t node);
  std::int32_t CutOff(std::int32_t leftover, std::int32_t direction, std::int32_t size,
                      std::int32_t& rest);
  void Merge(std::int32_t node);

  template <class F>
  void Clear(std::int32_t node, F taken) {
    if (Get(node).what >= 0) taken(Get(node).what);
    for (std::int32_t child = Get(node).first; child != kNone;) {
      const std::int32_t next = Get(child).next;
      Clear(child, taken);
      Free(child);
      child = next;
    }
    Get(node).first = kNone;
    Get(node).what = kLeftover;
    Get(node).turned = false;
  }

  std::vector<Node> nodes_;
  std::int32_t unused_ = kNone;  // the first of the freed nodes, linked by `next`
};

// The cut to make first so that a part put into a leftover lies no deeper than `stages` cuts:
// `preferred` if it does, the other direction if that does, else kNone.
[[nodiscard]] std::int32_t AllowedCut(const Tree& tree, std::int32_t leftover, const Laid& laid,
                                      int stages, std::int32_t preferred);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_TREE_H_
