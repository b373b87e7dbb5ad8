// What stacks and their contributors are called, and which of them matter most.
#include <algorithm>
#include <cmath>

#include "tillwright/gap_check.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

using Kind = Contributor::Kind;

}  // namespace

std::vector<int> HangingOrder(const Bank& bank) {
  std::vector<int> order;
  for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
    if (bank.spaces[i].HasFront()) order.push_back(static_cast<int>(i));
  }
  std::ranges::stable_sort(order, {}, [&](int space) {
    const Rect& r = bank.spaces[static_cast<std::size_t>(space)].front.rect;
    return std::pair(r.y, r.x);
  });
  return order;
}

std::string SubjectOf(const Bank& bank, const StackUp& stack) {
  const auto at = static_cast<std::size_t>(stack.index);
  if (!stack.is_overlap) {
    return ToText(bank, bank.gaps[at].from) + " to " + ToText(bank, bank.gaps[at].to);
  }
  const Overlap& overlap = bank.overlaps[at];
  return ToText(bank.spaces[static_cast<std::size_t>(overlap.space)].id) + " " +
         std::string(Word(overlap.edge));
}

std::string ContributorName(const Bank& bank, const StackUp& stack, const Contributor& c) {
  const bool upright = stack.axis == Axis::kY;
  const auto id = [&] { return ToText(bank.spaces[static_cast<std::size_t>(c.space)].id); };
  switch (c.kind) {
    case Kind::kSpacer:
      return "spacer";
    case Kind::kEdge:
      return ToText(bank, c.edge);
    case Kind::kSize:
      return id() + (upright ? ".front.height" : ".front.width");
    case Kind::kPlace:
      return id() + ".place";
    case Kind::kMovement:
      return id() + ".movement";
    case Kind::kOpening:
      break;
  }
  if (c.edge.kind == GapEnd::Kind::kDivider) return "opening to " + ToText(bank, c.edge);
  return upright ? "opening.height" : "opening.width";
}

std::vector<const Contributor*> Biggest(const StackUp& stack, std::size_t count) {
  const auto weight = [](const Contributor& c) {
    const double most = std::max({ToMillimeters(c.tolerance), std::abs(c.dry), std::abs(c.humid)});
    return std::abs(c.halves) / 2.0 * most;
  };
  std::vector<const Contributor*> list;
  for (const Contributor& c : stack.contributors) {
    if (weight(c) > 0) list.push_back(&c);
  }
  std::ranges::stable_sort(
      list, [&](const Contributor* a, const Contributor* b) { return weight(*a) > weight(*b); });
  if (list.size() > count) list.resize(count);
  return list;
}

}  // namespace tillwright
