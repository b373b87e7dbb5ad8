#include "draw/plan/plan_sizes.h"

#include <utility>
#include <vector>

#include "draw/plan/plan_box.h"
#include "sheet/size_chain.h"
#include "spec/kinds.h"
#include "tillwright/dimensions.h"

namespace tillwright {
namespace {

class PlanSizes {
 public:
  explicit PlanSizes(const PlanOnPaper& plan)
      : plan_(plan), space_(plan.bank.spaces[plan.scope.space]), id_(ToText(space_.id)) {}

  [[nodiscard]] std::vector<DimensionStack> Stacks() const {
    return {Below(), Above(), Beside(), Slides()};
  }

 private:
  [[nodiscard]] std::string Path(std::string_view name) const {
    return id_ + "." + std::string(name);
  }
  void AddTier(DimensionStack& stack, std::vector<SizeStop> stops) const {
    tillwright::AddTier(stack, SizeChain::Through(std::move(stops)), plan_.map, plan_.bank.units);
  }
  [[nodiscard]] bool IsFull() const { return plan_.detail == PlanDetail::kAll; }

  // The path of the gap beside the front: to the opening's edge, a member or the next front.
  [[nodiscard]] const Gap* GapBeside(bool right) const {
    const Rect& own = space_.front.rect;
    for (const Gap& gap : plan_.bank.gaps) {
      if (gap.axis != Axis::kX) continue;
      const GapEnd& end = right ? gap.from : gap.to;
      if (end.kind != GapEnd::Kind::kSpace) continue;
      if (static_cast<std::size_t>(end.index) != plan_.scope.space) continue;
      const GapEnd& other = right ? gap.to : gap.from;
      const PlanSide& side = right ? plan_.scope.right : plan_.scope.left;
      if (other.kind == GapEnd::Kind::kSpace && other.index != side.next) continue;
      if ((right ? gap.at : gap.at + gap.size) == (right ? own.Right() : own.x)) return &gap;
    }
    return nullptr;
  }

  // What lies between the front's edge and whatever is beside it, as two stops of a chain.
  struct Neighbor {
    Length at;
    std::string path{};
    bool covers = false;  // an overlap: its station lies inside the front
  };
  [[nodiscard]] Neighbor BesideFront(bool right) const {
    const PlanSide& side = right ? plan_.scope.right : plan_.scope.left;
    if (const Gap* gap = GapBeside(right)) {
      return {right ? gap->at + gap->size : gap->at, GapPath(plan_.bank, *gap), false};
    }
    if (!IsBounded(side)) return {};
    return {side.cell, "overlap." + id_ + (right ? ".right" : ".left"), true};
  }

  DimensionStack Below() const {
    DimensionStack stack{.side = PaperSide::kBelow, .edge = plan_.outline.bottom};
    const Rect& own = space_.front.rect;
    const Neighbor left = BesideFront(false);
    const Neighbor right = BesideFront(true);
    std::vector<SizeStop> stops;
    const bool short_left = left.covers && left.at < own.x;
    const bool short_right = right.covers && right.at > own.Right();
    if (left.path.empty()) {
      stops.push_back({own.x});
    } else if (left.covers && !short_left) {
      stops.push_back({own.x, left.path});
      stops.push_back({left.at});
    } else {
      stops.push_back({left.at, left.path, short_left});
      stops.push_back({own.x});
    }
    if (right.path.empty()) {
      stops.push_back({own.Right()});
    } else if (right.covers && !short_right) {
      stops.push_back({right.at, right.path});
      stops.push_back({own.Right()});
    } else {
      stops.push_back({own.Right(), right.path, short_right});
      stops.push_back({right.at});
    }
    if (!IsFull()) stops.clear();
    AddTier(stack, std::move(stops));
    AddTier(stack, {{own.x, Path("front.width")}, {own.Right()}});
    return stack;
  }

  DimensionStack Above() const {
    DimensionStack stack{.side = PaperSide::kAbove, .edge = plan_.outline.top};
    const Box& box = space_.box;
    const Length right = box.x + box.width;
    if (IsFull() && !plan_.sized_inside) {
      const Length in = box.x + box.build.side;
      AddTier(stack, {{in, Path("box.inside_width")}, {in + box.inside_width}});
      for (const Length at : {in, in + box.inside_width}) {
        stack.starts.push_back({plan_.map.X(at), plan_.map.Y(box.z + box.depth - box.build.end)});
      }
    }
    std::vector<SizeStop> stops;
    if (plan_.scope.left.bound == PlanBound::kCase) {
      const CaseBuild& c = *plan_.bank.casework;
      stops.push_back({-c.side_in - c.side, "case.side"});
      if (!c.side_in.IsZero()) stops.push_back({-c.side_in, "case.side_in"});
    } else if (plan_.scope.left.bound == PlanBound::kPartition) {
      const Divider& member =
          plan_.bank.dividers[static_cast<std::size_t>(plan_.scope.left.member)];
      stops.push_back({member.rect.x, ToText(member) + ".thickness"});
    }
    stops.push_back({space_.cell.x, Path("clear.left")});
    stops.push_back({box.x, Path("box.width")});
    stops.push_back({right, Path("clear.right")});
    stops.push_back({space_.cell.Right()});
    AddTier(stack, std::move(stops));
    for (const Length at : {box.x, right}) {
      stack.starts.push_back({plan_.map.X(at), plan_.map.Y(box.z + box.depth)});
    }
    AddOverallWidths(stack);
    return stack;
  }

  void AddOverallWidths(DimensionStack& stack) const {
    const bool whole = IsBounded(plan_.scope.left) && IsBounded(plan_.scope.right);
    AddTier(stack,
            {{space_.cell.x, whole ? "opening.width" : Path("cell.width")}, {space_.cell.Right()}});
    if (!whole || !plan_.bank.casework) return;
    const CaseBuild& c = *plan_.bank.casework;
    AddTier(stack, {{-c.side_in - c.side, "case.width"}, {-c.side_in - c.side + c.width}});
  }

  DimensionStack Beside() const {
    DimensionStack stack{.side = PaperSide::kRight, .edge = plan_.outline.right};
    const Box& box = space_.box;
    const Length rear = box.z + box.depth;
    if (IsFull() && !plan_.sized_inside) {
      const Length in = box.z + box.build.end;
      AddTier(stack, {{in, Path("box.inside_depth")}, {in + box.inside_depth}});
      for (const Length at : {in, in + box.inside_depth}) {
        stack.starts.push_back({plan_.map.Y(at), plan_.inside.right});
      }
    }
    AddTier(stack, {{box.z - space_.front.thickness, Path("front.thickness")},
                    {box.z, Path("box.depth")},
                    {rear, Path("clear.behind")},
                    {plan_.bank.opening_depth}});
    const double box_right = plan_.map.X(box.x + box.width);
    stack.starts.push_back({plan_.map.Y(rear), box_right});
    stack.starts.push_back(
        {plan_.map.Y(box.z - space_.front.thickness), plan_.map.X(space_.front.rect.Right())});
    if (plan_.bank.style == FrontStyle::kInset)
      stack.starts.push_back({plan_.map.Y(box.z), box_right});
    std::vector<SizeStop> stops{{Length(), "opening.depth"},
                                {plan_.bank.opening_depth, "case.back_allowance"}};
    const std::optional<CaseBuild>& c = plan_.bank.casework;
    if (c) stops.push_back({c->front_in + c->depth});
    AddTier(stack, std::move(stops));
    if (!c || c->back_allowance.IsZero()) return stack;
    AddTier(stack, {{c->front_in, "case.depth"}, {c->front_in + c->depth}});
    return stack;
  }

  DimensionStack Slides() const {
    DimensionStack stack{.side = PaperSide::kLeft, .edge = plan_.outline.left};
    if (!IsFull()) return stack;
    const Length low = space_.box.z;
    const Length high = low + space_.slide.length;
    AddTier(stack, {{low, Path("slide.length")}, {high}});
    const double from = Facts(space_.slide.type).place == SlidePlace::kUnderMiddle
                            ? plan_.inside.Center().x - plan_.map.Size(CenterHalf(space_.box))
                            : plan_.map.X(space_.cell.x);
    for (const Length at : {low, high}) stack.starts.push_back({plan_.map.Y(at), from});
    return stack;
  }

  const PlanOnPaper& plan_;
  const Space& space_;
  std::string id_;
};

}  // namespace

bool IsBounded(const PlanSide& side) {
  return side.bound == PlanBound::kCase || side.bound == PlanBound::kOpening;
}

void AddPlanSizes(SheetGroup& out, const PlanOnPaper& plan, const TextMetrics& metrics) {
  const DimensionStyle style;
  for (const DimensionStack& stack : PlanSizes(plan).Stacks()) {
    if (!stack.tiers.empty()) AddDimensionStack(out, stack, style, metrics);
  }
}

}  // namespace tillwright
