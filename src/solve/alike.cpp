#include "solve/alike.h"

#include <algorithm>
#include <optional>
#include <tuple>

namespace tillwright {
namespace {

// Drawers made by the same rules, and the smallest and largest of their sizes.
struct Kin {
  Space made;  // as the first of them comes out by itself
  BoxRules rules;
  std::vector<std::size_t> children;
  Length smallest, largest;
};

bool SameBuild(const Space& a, const Space& b) {
  const auto slide = [](const Slide& s) {
    return std::tuple(s.type, s.line, s.clearance, s.deduct, s.side_max, s.behind);
  };
  return a.box.build == b.box.build && slide(a.slide) == slide(b.slide);
}

BoxRules RulesOf(const Spec& spec, const LeafSpec& leaf) {
  if (leaf.override_index < 0) return BankRules(spec);
  return DrawerRules(spec, spec.overrides[static_cast<std::size_t>(leaf.override_index)]);
}

// A drawer's box as its own cell makes it; nothing where there is no room for one.
std::optional<Space> ByItself(const Spec& spec, Length round, Length opening_depth,
                              const BoxRules& rules, const AlikeDrawer& drawer) {
  NoTrace no_trace;
  Bank bank;
  Diagnostics diagnostics;
  Context<NoTrace> context{spec, no_trace, bank, diagnostics, round};
  Space space;
  // How far the box stands in does not bear on its size along a split.
  BoxRule<NoTrace>(context, opening_depth, Length())
      .Run(space, rules, drawer.node->place, drawer.cell);
  if (HasErrors(diagnostics)) return std::nullopt;
  return space;
}

}  // namespace

std::vector<AlikeSize> AlikeSizes(const Spec& spec, Length round, Length opening_depth, bool rows,
                                  const std::vector<AlikeDrawer>& drawers) {
  std::vector<Kin> all;
  for (const AlikeDrawer& drawer : drawers) {
    const BoxRules rules = RulesOf(spec, spec.leaves[static_cast<std::size_t>(drawer.node->leaf)]);
    const std::optional<Space> made = ByItself(spec, round, opening_depth, rules, drawer);
    if (!made) continue;
    const Length size = rows ? made->box.height : made->box.end_length;
    const auto same = std::ranges::find_if(all, [&](const Kin& kin) {
      return SameBuild(kin.made, *made) && SameSizes(kin.rules, rules);
    });
    Kin& kin = same != all.end() ? *same : all.emplace_back(Kin{*made, rules, {}, size, size});
    kin.children.push_back(drawer.child);
    kin.smallest = Min(kin.smallest, size);
    kin.largest = Max(kin.largest, size);
  }
  std::vector<AlikeSize> sizes;
  for (const Kin& kin : all) {
    if (kin.largest - kin.smallest > defaults::kAlikeWithin.In(spec.units.value)) continue;
    for (const std::size_t child : kin.children) sizes.push_back({child, kin.smallest});
  }
  return sizes;
}

}  // namespace tillwright
