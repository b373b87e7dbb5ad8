// The layout tree: each node splits its region among its children.
//
// Every node carries two rectangles: the front region that fronts may cover, and the clear region
// that boxes may use. Rows are laid from the region's top downwards, columns from its left.
#ifndef TILLWRIGHT_SOLVE_LAYOUT_RULE_H_
#define TILLWRIGHT_SOLVE_LAYOUT_RULE_H_

#include <cstdio>
#include <optional>

#include "solve/alike.h"
#include "solve/along.h"
#include "solve/apportion.h"
#include "solve/box_rule.h"
#include "solve/case_rule.h"
#include "solve/context.h"
#include "solve/layout_errors.h"
#include "solve/pull_rule.h"

namespace tillwright {

template <class T>
class LayoutRule {
 public:
  using N = typename T::Number;

  LayoutRule(Context<T>& context, const Opening<N>& opening)
      : context_(context),
        t_(context.trace),
        spec_(context.spec),
        opening_(opening),
        inset_(spec_.fronts.style.value == FrontStyle::kInset),
        bank_rules_(BankRules(spec_)),
        zero_(t_.Zero()) {}

  void Run() {
    if (spec_.grid.typed && !IsSplit(spec_.layout.kind)) return RefuseGrid();
    context_.laid.emplace_back();
    Lay(spec_.layout, 0, RootAlong(Edge::kLeft, Edge::kRight, opening_.width),
        RootAlong(Edge::kBottom, Edge::kTop, opening_.height));
  }

 private:
  using Between = tillwright::Between<N>;

  Along<N> RootAlong(Edge low, Edge high, const N& size) {
    const auto l = static_cast<std::size_t>(low);
    const auto h = static_cast<std::size_t>(high);
    Along<N> along;
    along.clear = {zero_, size};
    if (inset_) {
      along.front = {opening_.edge[l], size - opening_.edge[l] - opening_.edge[h]};
    } else {
      along.front = {zero_ - opening_.overlay[l], size + opening_.overlay[l] + opening_.overlay[h]};
    }
    return along;
  }

  void Lay(const LayoutNode& node, int slot, const Along<N>& x, const Along<N>& y) {
    context_.laid[static_cast<std::size_t>(slot)].kind = node.kind;
    if (IsSplit(node.kind)) {
      Split(node, slot, x, y);
    } else {
      Leaf(node, slot, x, y);
    }
  }

  // --- Leaves -----------------------------------------------------------------------------------

  // An axis that no node above split is a split with one child: whole increments, the remainder
  // shared by both sides across, and at the lower edge upright.
  Stretch<N> Whole(const Along<N>& along, bool across) {
    if (along.split) return along.front;
    const N size = FloorTo(along.front.size, context_.round);
    const N remainder = along.front.size - size;
    return {along.front.low + (across ? HalfBelow(remainder) : remainder), size};
  }

  void Leaf(const LayoutNode& node, int slot, const Along<N>& x, const Along<N>& y) {
    const LeafSpec& leaf = spec_.leaves[static_cast<std::size_t>(node.leaf)];
    Bank& bank = context_.bank;
    context_.laid[static_cast<std::size_t>(slot)].space = static_cast<int>(bank.spaces.size());
    Space& space = bank.spaces.emplace_back();
    space.id = NextId(node.kind);
    space.name = leaf.name.value;
    const Stretch<N> across = Whole(x, true);
    const Stretch<N> upright = Whole(y, false);
    const char* prefix = space.HasFront() ? "front" : "space";
    const N width = NameOf(space.id, prefix, ".width", across.size);
    const N height = NameOf(space.id, prefix, ".height", upright.size);
    const N left = NameOf(space.id, prefix, ".x", across.low);
    const N lower = NameOf(space.id, prefix, ".y", upright.low);
    space.region = {Value(left), Value(lower), Value(width), Value(height)};
    if (Value(width) <= Length()) {
      context_.HasRoom(width, "the width of " + ToText(space.id), node.place,
                       "make the opening wider");
    }
    if (Value(height) <= Length()) {
      context_.HasRoom(height, "the height of " + ToText(space.id), node.place,
                       "make the opening taller");
    }
    Cell<N> cell = CellOf(space, x.clear, y.clear);
    cell.ends = x.box;
    cell.box_height = y.box;
    if (space.HasFront()) Face(space, leaf, {left, lower, width, height});
    if (space.HasBox()) Box(space, leaf, node.place, cell);
  }

  N NameOf(SpaceId id, const char* prefix, const char* suffix, const N& number) {
    return t_.Name(id, T::kTracing ? std::string(prefix) + suffix : std::string(), number);
  }

  Cell<N> CellOf(Space& space, const Clear<N>& x, const Clear<N>& y) {
    Cell<N> cell{t_.Name(space.id, "cell.x", x.low), t_.Name(space.id, "cell.y", y.low),
                 t_.Name(space.id, "cell.width", x.high - x.low),
                 t_.Name(space.id, "cell.height", y.high - y.low)};
    space.cell = {Value(cell.x), Value(cell.y), Value(cell.width), Value(cell.height)};
    return cell;
  }

  void Face(Space& space, const LeafSpec& leaf, const Cell<N>& face) {
    const FrontsSpec& bank = spec_.fronts;
    const FrontSpec& own = leaf.front;
    space.front.rect = space.region;
    space.front.material = own.material.typed ? own.material.value : bank.material.value;
    space.front.grain = own.grain.typed ? own.grain.value : bank.grain.value;
    space.front.thickness = Value(t_.Name(space.id, "front.thickness", FrontThickness(leaf)));
    const PullSpec pull = MergedPull(bank.pull, own.pull);
    if (pull.typed) PullRule<T>(context_, pull, space).Run(face);
  }

  N FrontThickness(const LeafSpec& leaf) {
    const Entry<Length>& own = leaf.front.thickness;
    return context_.GivenOr("fronts.thickness", own.typed ? own : spec_.fronts.thickness,
                            defaults::kFrontThickness);
  }

  void Box(Space& space, const LeafSpec& leaf, Place place, const Cell<N>& cell) {
    BoxRule<T> rule(context_, opening_.depth, inset_ ? FrontThickness(leaf) : zero_);
    if (leaf.override_index < 0) {
      rule.Run(space, bank_rules_, place, cell);
    } else {
      rule.Run(space,
               DrawerRules(spec_, spec_.overrides[static_cast<std::size_t>(leaf.override_index)]),
               place, cell);
    }
  }

  SpaceId NextId(NodeKind kind) {
    switch (kind) {
      case NodeKind::kBlank:
        return {SpaceKind::kBlank, ++blanks_};
      case NodeKind::kOpen:
        return {SpaceKind::kOpen, ++opens_};
      case NodeKind::kDrawer:
      case NodeKind::kRows:
      case NodeKind::kColumns:
        break;
    }
    return {SpaceKind::kDrawer, ++drawers_};
  }

  // --- Splits -----------------------------------------------------------------------------------

  void Split(const LayoutNode& node, int slot, const Along<N>& x, const Along<N>& y) {
    const bool rows = node.kind == NodeKind::kRows;
    const Along<N>& along = rows ? y : x;
    const Between between = BetweenOf(context_, opening_, node, rows);
    const bool grid = &node == &spec_.layout && spec_.grid.typed;
    if (grid && (!rows || between.member)) return RefuseGrid();
    const auto n = static_cast<std::int64_t>(node.children.size());
    const N taken = (n - 1) * between.total;
    const N shared = along.front.size - taken;
    const Apportioned sizes = Share(node, grid, Value(shared), Value(between.gap));
    if (sizes.fault != Apportioned::Fault::kNone) {
      ReportApportion(spec_, node, sizes, context_.unit(), context_.diagnostics);
      return;
    }
    NoteSplit(spec_, node, sizes, grid ? spec_.grid.value : Value(context_.round), context_.bank);
    std::vector<Along<N>> children =
        Place_(node, along, between, sizes, SizesOf(node, sizes, grid, shared, between.gap), grid);
    AddMembers(node, slot, rows, children, rows ? x : y, between);
    if (node.graduate.alike.value) AlikeBoxes(node, rows, rows ? x : y, children);
    const int first = static_cast<int>(context_.laid.size());
    context_.laid[static_cast<std::size_t>(slot)].first_child = first;
    context_.laid[static_cast<std::size_t>(slot)].child_count = static_cast<int>(n);
    context_.laid.resize(context_.laid.size() + node.children.size());
    for (std::size_t i = 0; i < node.children.size(); ++i) {
      Lay(node.children[i], first + static_cast<int>(i), rows ? x : children[i],
          rows ? children[i] : y);
    }
  }

  void RefuseGrid() {
    ReportError(context_.diagnostics, DiagnosticCode::kConflict, spec_.grid.place,
                "\"grid\" works only with rows without dividers",
                "remove \"grid\", or remove the dividers with \"divider\": \"none\"");
  }

  // Sizes along the split; with a grid, pitches (size and gap) share the length in steps of it.
  Apportioned Share(const LayoutNode& node, bool grid, Length shared, Length gap) {
    const auto n = static_cast<std::int64_t>(node.children.size());
    const Length pitch = grid ? gap : Length();
    std::vector<ApportionChild> children;
    children.reserve(node.children.size());
    for (const LayoutNode& child : node.children) children.push_back(ChildOf(child.size, pitch));
    ApportionScheme scheme = SchemeOf(node.graduate);
    scheme.first += pitch;
    scheme.alike = node.graduate.alike.value;
    return Apportion(shared + n * pitch, grid ? spec_.grid.value : Value(context_.round), children,
                     scheme);
  }

  // The apportioned sizes as numbers that say where they come from.
  std::vector<N> SizesOf(const LayoutNode& node, const Apportioned& sizes, bool grid,
                         const N& shared, const N& gap) {
    std::vector<N> out;
    out.reserve(node.children.size());
    for (std::size_t i = 0; i < node.children.size(); ++i) {
      const Share_& share = sizes.shares[i];
      const SizeSpec& typed = node.children[i].size;
      if (typed.exact.typed) {
        out.push_back(t_.Given("exact", typed.exact));
      } else if constexpr (T::kTracing) {
        const N step = grid ? t_.Given("grid", spec_.grid) : context_.round;
        N size = t_.Chosen(ShareWords(node, share), share.base, shared, step);
        if (share.extra) size = size + step;
        out.push_back(grid ? size - gap : size);
      } else {
        out.push_back(grid ? share.size - gap : share.size);
      }
    }
    return out;
  }
  using Share_ = tillwright::Share;

  std::string ShareWords(const LayoutNode& node, const Share_& share) const {
    const Unit unit = context_.unit();
    char ideal[48];
    std::snprintf(ideal, sizeof ideal, "%.4f",
                  unit == Unit::kInch ? share.ideal_mm / 25.4 : share.ideal_mm);
    return "whole increments in its " + std::string(Word(node.graduate.scheme.value)) +
           " share, ideally " + ideal + (unit == Unit::kInch ? " in" : " mm");
  }

  // Gives the flexible drawers of a node the one size that their boxes are made to along the split.
  void AlikeBoxes(const LayoutNode& node, bool rows, const Along<N>& across,
                  std::vector<Along<N>>& children) {
    std::vector<AlikeDrawer> drawers;
    for (std::size_t i = 0; i < children.size(); ++i) {
      const LayoutNode& child = node.children[i];
      if (child.kind != NodeKind::kDrawer || child.size.exact.typed) continue;
      const Clear<N>& x = rows ? across.clear : children[i].clear;
      const Clear<N>& y = rows ? children[i].clear : across.clear;
      drawers.push_back(
          {&child,
           {Value(x.low), Value(y.low), Value(x.high) - Value(x.low), Value(y.high) - Value(y.low)},
           i});
    }
    for (const AlikeSize& size :
         AlikeSizes(spec_, Value(context_.round), Value(opening_.depth), rows, drawers)) {
      children[size.child].box = size.size;
    }
  }

  // Where each child lies along the split.
  std::vector<Along<N>> Place_(const LayoutNode& node, const Along<N>& along,
                               const Between& between, const Apportioned& apportioned,
                               const std::vector<N>& sizes, bool grid) {
    const bool rows = node.kind == NodeKind::kRows;
    std::vector<Along<N>> out(sizes.size());
    N cursor = Start(along, apportioned.remainder, rows, grid, sizes, between);
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      const N low = rows ? cursor - sizes[i] : cursor;
      out[i].front = {low, sizes[i]};
      out[i].split = true;
      if (i == 0)
        (rows ? out[i].clear.high : out[i].clear.low) = rows ? along.clear.high : along.clear.low;
      if (i + 1 == sizes.size()) {
        (rows ? out[i].clear.low : out[i].clear.high) = rows ? along.clear.low : along.clear.high;
        break;
      }
      if (rows) {
        cursor = low - between.total;
        Meet(between, cursor, low, out[i + 1].clear.high, out[i].clear.low);
      } else {
        const N end = low + sizes[i];
        cursor = end + between.total;
        Meet(between, end, cursor, out[i].clear.high, out[i + 1].clear.low);
      }
    }
    return out;
  }

  // Where the first child begins. The remainder is left over at the bottom of rows; columns share
  // it at both ends, and so do the rows of a grid.
  N Start(const Along<N>& along, Length remainder, bool rows, bool grid,
          const std::vector<N>& sizes, const Between& between) {
    const N low = along.front.low;
    if (rows && !grid) return low + along.front.size;
    if (remainder.IsZero()) return rows ? low + along.front.size : low;
    N used = sizes[0];
    for (std::size_t i = 1; i < sizes.size(); ++i) used = used + between.total + sizes[i];
    const N left_over = along.front.size - used;
    return rows ? low + along.front.size - HalfAbove(left_over) : low + HalfBelow(left_over);
  }

  // The clear regions of two neighbors, from the facing edges of their fronts.
  void Meet(const Between& between, const N& lower_front, const N& upper_front, N& lower_clear_high,
            N& upper_clear_low) {
    if (between.edge_gaps) {
      lower_clear_high = lower_front + between.high_edge;
      upper_clear_low = upper_front - between.low_edge;
      return;
    }
    const N middle = lower_front + HalfBelow(between.gap);
    lower_clear_high = between.member ? middle - HalfBelow(between.thickness) : middle;
    upper_clear_low = between.member ? middle + HalfAbove(between.thickness) : middle;
  }

  void AddMembers(const LayoutNode& node, int slot, bool rows,
                  const std::vector<Along<N>>& children, const Along<N>& across,
                  const Between& between) {
    if (!between.member) return;
    Bank& bank = context_.bank;
    context_.laid[static_cast<std::size_t>(slot)].first_divider =
        static_cast<int>(bank.dividers.size());
    for (std::size_t i = 0; i + 1 < node.children.size(); ++i) {
      Divider& member = bank.dividers.emplace_back();
      member.partition = !rows;
      member.number = rows ? ++dividers_ : ++partitions_;
      const Clear<N>& lower = rows ? children[i + 1].clear : children[i].clear;
      const Clear<N>& upper = rows ? children[i].clear : children[i + 1].clear;
      const N run = across.clear.high - across.clear.low;
      const N thick = upper.low - lower.high;
      const N& begin = across.clear.low;
      Rect& r = member.rect;
      r.x = Value(t_.Name(member, "x", rows ? begin : lower.high));
      r.y = Value(t_.Name(member, "y", rows ? lower.high : begin));
      r.width = Value(t_.Name(member, "width", rows ? run : thick));
      r.height = Value(t_.Name(member, "height", rows ? thick : run));
      SizeMember(member, rows, across.clear, run);
      if (Value(run) <= Length()) {
        context_.HasRoom(run, "the length of " + ToText(member), node.place,
                         "make the opening wider");
      }
    }
  }

  // With what enters the neighbors, and, behind a face frame, what goes on to the case's own parts.
  void SizeMember(Divider& member, bool rows, const Clear<N>& clear, const N& run) {
    const N& whole = rows ? opening_.width : opening_.height;
    N length = run + 2 * opening_.member_entry;
    N begin = clear.low - opening_.member_entry;
    if (opening_.framed && Value(clear.low).IsZero()) {
      const N& more = rows ? opening_.side_in : opening_.low_in;
      length = length + more;
      begin = begin - more;
    }
    if (opening_.framed && Value(clear.high) == Value(whole)) {
      length = length + (rows ? opening_.side_in : opening_.high_in);
    }
    member.depth = Value(t_.Name(member, "depth", opening_.inside_depth));
    member.length = Value(t_.Name(member, "length", length));
    member.begin = Value(t_.Name(member, "begin", begin));
  }

  Context<T>& context_;
  T& t_;
  const Spec& spec_;
  const Opening<N>& opening_;
  bool inset_;
  BoxRules bank_rules_;
  N zero_;
  int drawers_ = 0, blanks_ = 0, opens_ = 0, dividers_ = 0, partitions_ = 0;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_LAYOUT_RULE_H_
