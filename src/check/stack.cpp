#include "check/stack.h"

#include <algorithm>
#include <cmath>

#include "check/measured_parts.h"
#include "check/wood.h"

namespace tillwright {
namespace {

using Kind = Contributor::Kind;

Length Low(const Rect& r, Axis axis) { return axis == Axis::kY ? r.y : r.x; }
Length Size(const Rect& r, Axis axis) { return axis == Axis::kY ? r.height : r.width; }
Length High(const Rect& r, Axis axis) { return Low(r, axis) + Size(r, axis); }
bool IsUpperEdge(const GapEnd& end) {
  return end.kind == GapEnd::Kind::kDivider ||
         (end.kind == GapEnd::Kind::kOpening && (static_cast<Edge>(end.index) == Edge::kTop ||
                                                 static_cast<Edge>(end.index) == Edge::kRight));
}
GapEnd EndOf(Edge edge) { return {GapEnd::Kind::kOpening, static_cast<int>(edge)}; }

class Builder {
 public:
  Builder(const Spec& spec, const Bank& bank, const RealOpening& real, GapCheck& check)
      : spec_(spec), bank_(bank), real_(real), check_(check) {}

  bool Run() {
    Movements();
    Deviations();
    if (check_.setting == Setting::kSpaced) Chains();
    check_.stacks.reserve(bank_.gaps.size() + bank_.overlaps.size());
    for (std::size_t i = 0; i < bank_.gaps.size(); ++i) Gap_(static_cast<int>(i));
    for (std::size_t i = 0; i < bank_.overlaps.size(); ++i) Overlap_(static_cast<int>(i));
    return count_ <= kMostContributors;
  }

 private:
  const Rect& RectOf(int space) const {
    return bank_.spaces[static_cast<std::size_t>(space)].front.rect;
  }

  // --- What is known of every front before its gaps are looked at --------------------------------

  struct FrontState {
    std::array<double, 2> dry{}, humid{};  // change of size along x and y, mm
    std::array<Length, 2> measured{};      // deviation of size along x and y
    int below = -1;                        // the front it is spaced from; -1: a fixed edge
    int chain = 1;                         // fronts from here down to the datum
    GapEnd datum = EndOf(Edge::kBottom);   // the fixed edge at the chain's lower end
  };
  FrontState& StateOf(int space) { return states_[static_cast<std::size_t>(space)]; }

  void Movements() {
    states_.resize(bank_.spaces.size());
    if (!check_.has_season) return;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& space = bank_.spaces[i];
      if (!space.HasFront()) continue;
      const double rate = ChangePerPercent(space.front.material, spec_.fronts.cut.value);
      for (const Axis axis : {Axis::kX, Axis::kY}) {
        if (!MovesAlong(space.front.grain, axis)) continue;
        const double per_percent = ToMillimeters(Size(space.front.rect, axis)) * rate;
        const auto at = static_cast<std::size_t>(axis);
        states_[i].dry[at] = per_percent * (check_.dry - check_.made);
        states_[i].humid[at] = per_percent * (check_.humid - check_.made);
      }
    }
  }

  void Deviations() {
    const MeasuredParts parts(spec_.measured.fronts);
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const MeasuredPart* part = parts.Of(bank_.spaces[i]);
      if (part == nullptr) continue;
      for (const Axis axis : {Axis::kX, Axis::kY}) {
        if (const Entry<Length>* size = MeasuredParts::Along(*part, axis)) {
          states_[i].measured[static_cast<std::size_t>(axis)] =
              size->value - Size(RectOf(static_cast<int>(i)), axis);
        }
      }
    }
  }

  // What each front stands on: the front below it with the longest chain, or a fixed edge. Fronts
  // over an open space stand, through it, on what is below that.
  void Chains() {
    std::vector<std::vector<int>> below(bank_.spaces.size());
    std::vector<bool> fixed(bank_.spaces.size(), false);
    for (const Gap& gap : bank_.gaps) {
      if (gap.axis != Axis::kY || gap.to.kind != GapEnd::Kind::kSpace) continue;
      const auto to = static_cast<std::size_t>(gap.to.index);
      if (gap.from.kind == GapEnd::Kind::kSpace) {
        below[to].push_back(gap.from.index);
      } else {
        fixed[to] = true;
        states_[to].datum = gap.from;
      }
    }
    for (const Overlap& overlap : bank_.overlaps) {
      if (overlap.edge == Edge::kBottom) fixed[static_cast<std::size_t>(overlap.space)] = true;
    }
    const std::vector<int> order = Sorted([&](int space) { return RectOf(space).y; });
    const std::vector<int> by_top = Sorted([&](int space) { return RectOf(space).Top(); });
    for (const int space : order) {
      const auto at = static_cast<std::size_t>(space);
      if (fixed[at]) continue;
      if (below[at].empty()) below[at] = UnderAnOpenSpace(space, by_top);
      for (const int other : below[at]) StandOn(states_[at], other);
    }
  }

  void StandOn(FrontState& state, int other) {
    const FrontState& under = StateOf(other);
    if (state.below >= 0 && under.chain + 1 <= state.chain) return;
    state.below = other;
    state.chain = under.chain + 1;
    state.datum = under.datum;
  }

  // The fronts by a place of theirs, from below.
  template <class F>
  std::vector<int> Sorted(F place) const {
    std::vector<int> order;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      if (bank_.spaces[i].HasFront()) order.push_back(static_cast<int>(i));
    }
    std::ranges::stable_sort(order, {}, place);
    return order;
  }

  // The fronts whose tops are highest among those below, where they face it.
  std::vector<int> UnderAnOpenSpace(int space, const std::vector<int>& by_top) const {
    const Rect& above = RectOf(space);
    const auto top = [&](int other) { return RectOf(other).Top(); };
    std::vector<int> found;
    auto at = std::ranges::upper_bound(by_top, above.y, {}, top);
    while (at != by_top.begin()) {
      const Rect& r = RectOf(*--at);
      if (!found.empty() && r.Top() < top(found.front())) break;
      if (*at != space && r.Right() > above.x && r.x < above.Right()) found.push_back(*at);
    }
    std::ranges::sort(found);
    return found;
  }

  // --- Lists -------------------------------------------------------------------------------------

  void Gap_(int index) {
    const Gap& gap = bank_.gaps[static_cast<std::size_t>(index)];
    StackUp& stack = Start(false, index, gap.axis, gap.size);
    if (gap.behind < 0) stack.greatest = check_.greatest;
    const bool has_lower = gap.from.kind == GapEnd::Kind::kSpace;
    const bool has_upper = gap.to.kind == GapEnd::Kind::kSpace;
    Fill(stack, has_lower ? gap.from.index : -1, has_upper ? gap.to.index : -1,
         has_lower ? gap.to : gap.from, 1);
    SumUp(stack);
  }

  void Overlap_(int index) {
    const Overlap& overlap = bank_.overlaps[static_cast<std::size_t>(index)];
    const bool upright = overlap.edge == Edge::kTop || overlap.edge == Edge::kBottom;
    StackUp& stack = Start(true, index, upright ? Axis::kY : Axis::kX, overlap.size);
    const bool upper = IsUpperEdge(EndOf(overlap.edge));
    Fill(stack, upper ? overlap.space : -1, upper ? -1 : overlap.space, EndOf(overlap.edge), -1);
    SumUp(stack);
  }

  StackUp& Start(bool overlap, int index, Axis axis, Length nominal) {
    StackUp& stack = check_.stacks.emplace_back();
    stack.is_overlap = overlap;
    stack.index = index;
    stack.axis = axis;
    stack.nominal = nominal;
    return stack;
  }

  // The contributors of the space between front `lower` (below or to the left) and front `upper`;
  // -1 for either: the fixed edge `fixed`. `sign` is -1 for an overlap, which is a gap the other
  // way.
  void Fill(StackUp& stack, int lower, int upper, const GapEnd& fixed, int sign) {
    const bool spaced = check_.setting == Setting::kSpaced && stack.axis == Axis::kY;
    if (spaced && upper >= 0) {
      AddSpacer(stack, stack.nominal, 2);
    } else if (spaced) {
      Opening(stack, fixed, StateOf(lower).datum, 2 * sign);
      Chain(stack, lower, -2 * sign);
    } else {
      if (upper < 0) Opening(stack, fixed, EndOf(Edge::kBottom), 2 * sign);
      if (lower < 0) LowerEdge(stack, fixed, -2 * sign);
      if (lower >= 0) Placed(stack, lower, -2 * sign, -sign);
      if (upper >= 0) Placed(stack, upper, 2 * sign, -sign);
    }
    if (check_.has_season) Movement(stack, lower, upper, sign);
  }

  Contributor& Add(StackUp& stack, Kind kind, int space, int halves, HalfLength nominal,
                   Length tolerance) {
    if (++count_ > kMostContributors) stack.contributors.clear();
    Contributor& added = stack.contributors.emplace_back();
    added.kind = kind;
    added.space = space;
    added.halves = halves;
    added.nominal = nominal;
    added.tolerance = tolerance;
    return added;
  }

  void AddSpacer(StackUp& stack, Length size, int halves) {
    Add(stack, Kind::kSpacer, -1, halves, HalfLength::Of(size), Length());
  }

  Length PositionOf(const GapEnd& end, Axis axis, bool upper_side) const {
    if (end.kind == GapEnd::Kind::kDivider) {
      const Rect& r = bank_.dividers[static_cast<std::size_t>(end.index)].rect;
      return upper_side ? High(r, axis) : Low(r, axis);
    }
    if (!IsUpperEdge(end)) return {};
    return axis == Axis::kY ? bank_.opening_height : bank_.opening_width;
  }

  // From the datum, or the opening's own lower edge, to the upper fixed edge.
  void Opening(StackUp& stack, const GapEnd& upper, const GapEnd& datum, int halves) {
    const Length span = PositionOf(upper, stack.axis, false) - PositionOf(datum, stack.axis, true);
    Contributor& opening =
        Add(stack, Kind::kOpening, -1, halves, HalfLength::Of(span), check_.opening);
    opening.edge = upper;
    if (upper.kind == GapEnd::Kind::kOpening) opening.measured = OpeningDeviation(stack);
  }

  // How far the opening is from the plan along the front's own stretch: the least there.
  Length OpeningDeviation(const StackUp& stack) const {
    const auto at = static_cast<std::size_t>(stack.index);
    const int space = stack.is_overlap ? bank_.overlaps[at].space : bank_.gaps[at].from.index;
    const Rect& r = RectOf(space);
    return stack.axis == Axis::kY ? real_.LeastHeight(r.x, r.Right()) - bank_.opening_height
                                  : real_.LeastWidth(r.y, r.Top()) - bank_.opening_width;
  }

  void LowerEdge(StackUp& stack, const GapEnd& edge, int halves) {
    const Length at = PositionOf(edge, stack.axis, true);
    if (at.IsZero()) return;
    Add(stack, Kind::kEdge, -1, halves, HalfLength::Of(at), Length()).edge = edge;
  }

  void Sized(StackUp& stack, int space, int halves) {
    const Length size = Size(RectOf(space), stack.axis);
    Add(stack, Kind::kSize, space, halves, HalfLength::Of(size), check_.cut).measured =
        StateOf(space).measured[static_cast<std::size_t>(stack.axis)];
  }

  // Every front from `space` down to its datum, and the spacers under them.
  void Chain(StackUp& stack, int space, int halves) {
    while (space >= 0 && count_ <= kMostContributors) {
      const FrontState& state = StateOf(space);
      Sized(stack, space, halves);
      const Length under =
          state.below >= 0 ? RectOf(state.below).Top() : PositionOf(state.datum, stack.axis, true);
      AddSpacer(stack, RectOf(space).y - under, halves);
      space = state.below;
    }
  }

  // A front set to its own line, its center: where that is, and half of the front's size.
  void Placed(StackUp& stack, int space, int place_halves, int size_halves) {
    const Rect& r = RectOf(space);
    const Length twice_center = Low(r, stack.axis) + High(r, stack.axis);
    Add(stack, Kind::kPlace, space, place_halves, {twice_center.picometers()}, check_.place);
    Sized(stack, space, size_halves);
  }

  void Movement(StackUp& stack, int lower, int upper, int sign) {
    const bool bottom = spec_.fronts.held.value == Held::kBottom && stack.axis == Axis::kY;
    if (lower >= 0) Moves(stack, lower, bottom ? -2 * sign : -sign);
    if (upper >= 0 && !bottom) Moves(stack, upper, -sign);
  }

  void Moves(StackUp& stack, int space, int halves) {
    const FrontState& state = StateOf(space);
    const auto axis = static_cast<std::size_t>(stack.axis);
    if (std::abs(state.dry[axis]) + std::abs(state.humid[axis]) <= 0) return;
    Contributor& added = Add(stack, Kind::kMovement, space, halves, {}, Length());
    added.dry = state.dry[axis];
    added.humid = state.humid[axis];
  }

  const Spec& spec_;
  const Bank& bank_;
  const RealOpening& real_;
  GapCheck& check_;
  std::vector<FrontState> states_;
  std::size_t count_ = 0;
};

// The one sum of lengths over a list: each coefficient times nominal and deviation. Wide, since
// sizes that are given need not fit together.
template <class F>
HalfLength ValueOf(const std::vector<Contributor>& list, F deviation) {
  Int128 quarters = 0;
  for (const Contributor& c : list) {
    const Int128 size = c.nominal.halves + HalfLength::Of(deviation(c)).halves;
    quarters += c.halves * size;
  }
  return {static_cast<std::int64_t>(FloorDiv<Int128>(quarters, 2))};
}

template <class F>
double Moved(const std::vector<Contributor>& list, F movement) {
  double moved = 0;
  for (const Contributor& c : list) moved += c.halves / 2.0 * movement(c);
  return PlannedValue(list).Millimeters() + moved;
}

}  // namespace

void SumUp(StackUp& stack) {
  double squares = 0;
  stack.spread = {};
  for (const Contributor& c : stack.contributors) {
    stack.spread.halves += std::abs(c.halves) * c.tolerance.picometers();
    const double share = c.halves / 2.0 * ToMillimeters(c.tolerance);
    squares += share * share;
  }
  stack.rss_mm = std::sqrt(squares);
  stack.measured = MeasuredValue(stack.contributors);
  stack.dry_mm = DryValue(stack.contributors);
  stack.humid_mm = HumidValue(stack.contributors);
}

bool BuildStacks(const Spec& spec, const Bank& bank, const RealOpening& real, GapCheck& check) {
  return Builder(spec, bank, real, check).Run();
}

HalfLength PlannedValue(const std::vector<Contributor>& list) {
  return ValueOf(list, [](const Contributor&) { return Length(); });
}

HalfLength MeasuredValue(const std::vector<Contributor>& list) {
  return ValueOf(list, [](const Contributor& c) { return c.measured; });
}

double DryValue(const std::vector<Contributor>& list) {
  return Moved(list, [](const Contributor& c) { return c.dry; });
}

double HumidValue(const std::vector<Contributor>& list) {
  return Moved(list, [](const Contributor& c) { return c.humid; });
}

}  // namespace tillwright
