#include "nest/tree.h"

namespace tillwright::nest {

void Tree::Reset(std::int32_t width, std::int32_t height) {
  nodes_.clear();
  unused_ = kNone;
  nodes_.push_back({.width = width, .height = height});
}

std::int32_t Tree::Add(const Node& node) {
  if (unused_ == kNone) {
    nodes_.push_back(node);
    return static_cast<std::int32_t>(nodes_.size()) - 1;
  }
  const std::int32_t at = unused_;
  unused_ = Get(at).next;
  Get(at) = node;
  return at;
}

void Tree::Free(std::int32_t node) {
  Get(node).what = kUnused;
  Get(node).next = unused_;
  unused_ = node;
}

// Cuts a piece of `size` off a leftover along `direction` and returns it, a leftover still; `rest`
// is what remains, kNone when the piece is the whole.
std::int32_t Tree::CutOff(std::int32_t leftover, std::int32_t direction, std::int32_t size,
                          std::int32_t& rest) {
  const bool columns = direction == kColumns;
  Node piece = Get(leftover);
  rest = kNone;
  if ((columns ? piece.width : piece.height) == size) return leftover;
  (columns ? piece.width : piece.height) = size;
  const std::int32_t parent = Get(leftover).parent;
  if (parent != kNone && Get(parent).what == direction) {  // one more child beside the leftover
    (columns ? Get(leftover).width : Get(leftover).height) -= size;
    piece.next = Get(parent).first;
    const std::int32_t at = Add(piece);
    Get(parent).first = at;
    rest = leftover;
    return at;
  }
  Node remains = Get(leftover);
  (columns ? remains.width : remains.height) -= size;
  remains.parent = piece.parent = leftover;
  remains.next = kNone;
  rest = Add(remains);
  piece.next = rest;
  const std::int32_t at = Add(piece);
  Get(leftover).what = direction;
  Get(leftover).first = at;
  return at;
}

std::array<std::int32_t, 2> Tree::Insert(std::int32_t leftover, const Laid& laid,
                                         std::int32_t first_cut) {
  const bool columns = first_cut == kColumns;
  std::array<std::int32_t, 2> rests{};
  const std::int32_t strip =
      CutOff(leftover, first_cut, columns ? laid.width : laid.height, rests[0]);
  const std::int32_t place =
      CutOff(strip, columns ? kRows : kColumns, columns ? laid.height : laid.width, rests[1]);
  Get(place).what = laid.part;
  Get(place).turned = laid.turned;
  return rests;
}

// Makes one of a leftover and the leftover beside it, and of a node the leftover that fills it.
void Tree::Merge(std::int32_t node) {
  while (Get(node).parent != kNone) {
    const std::int32_t parent = Get(node).parent;
    std::int32_t* link = &Get(parent).first;
    for (; *link != kNone; link = &Get(*link).next) {
      const std::int32_t other = *link;
      if (other == node || Get(other).what != kLeftover) continue;
      const bool columns = Get(parent).what == kColumns;
      if (columns) Get(node).width += Get(other).width;
      if (!columns) Get(node).height += Get(other).height;
      *link = Get(other).next;
      Free(other);
      break;
    }
    if (Get(parent).first != node || Get(node).next != kNone) return;
    Free(node);
    Get(parent).first = kNone;
    Get(parent).what = kLeftover;
    node = parent;
  }
}

int Tree::Depth(std::int32_t node) const {
  int depth = 0;
  for (; At(node).parent != kNone; node = At(node).parent) ++depth;
  return depth;
}

namespace {

// How deep a part would lie.
int DepthAfter(const Tree& tree, std::int32_t leftover, const Laid& laid, std::int32_t first_cut) {
  const Node& left = tree.At(leftover);
  int depth = tree.Depth(leftover);
  std::int32_t direction = left.parent == kNone ? kNone : tree.At(left.parent).what;
  for (const std::int32_t cut : {first_cut, first_cut == kColumns ? kRows : kColumns}) {
    const bool needed = cut == kColumns ? left.width != laid.width : left.height != laid.height;
    if (!needed || direction == cut) continue;
    ++depth;
    direction = cut;
  }
  return depth;
}

}  // namespace

std::int32_t AllowedCut(const Tree& tree, std::int32_t leftover, const Laid& laid, int stages,
                        std::int32_t preferred) {
  for (const std::int32_t cut : {preferred, preferred == kColumns ? kRows : kColumns}) {
    if (DepthAfter(tree, leftover, laid, cut) <= stages) return cut;
  }
  return kNone;
}

}  // namespace tillwright::nest
