#include "draw/front/front_chains.h"

#include <algorithm>
#include <optional>

#include "tillwright/dimensions.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

// Everything along one edge: heights beside the left and right edge, widths along the others.
class EdgeChain {
 public:
  EdgeChain(const Bank& bank, Edge edge)
      : bank_(bank),
        edge_(edge),
        upright_(edge == Edge::kLeft || edge == Edge::kRight),
        axis_(upright_ ? Axis::kY : Axis::kX) {
    FindFronts();
  }

  SizeChain Fronts() const {
    SizeChain chain;
    if (fronts_.empty()) return chain;
    Beginning(chain);
    for (std::size_t i = 0; i < fronts_.size(); ++i) {
      if (i > 0) Between(chain, fronts_[i - 1], fronts_[i]);
      const Space& space = At(fronts_[i]);
      chain.Add(Low(space.front.rect), High(space.front.rect),
                ToText(space.id) + (upright_ ? ".front.height" : ".front.width"));
    }
    Ending(chain);
    return chain;
  }

  SizeChain Pulls() const {
    SizeChain chain;
    for (const int index : fronts_) {
      const Front& front = At(index).front;
      const std::string id = ToText(At(index).id) + ".front.pull.";
      for (std::size_t i = 0; i < front.pulls.size(); ++i) {
        const std::string hole = id + std::to_string(i + 1);
        if (i == 0) chain.Add(front.rect.x, front.pulls[i].x, hole + ".left");
        const bool last = i + 1 == front.pulls.size();
        const Length to = last ? front.rect.Right() : front.pulls[i + 1].x;
        chain.Add(front.pulls[i].x, to, hole + (last ? ".right" : ".next"));
      }
    }
    return chain;
  }

  SizeChain Opening() const {
    SizeChain chain;
    const Length size = upright_ ? bank_.opening_height : bank_.opening_width;
    const Overlap* low = fronts_.empty() ? nullptr : OverlapOf(fronts_.front(), LowEdge());
    const Overlap* high = fronts_.empty() ? nullptr : OverlapOf(fronts_.back(), HighEdge());
    if (low != nullptr) chain.Add(-low->size, Length(), OverlapPath("overlap.", *low));
    chain.Add(Length(), size, upright_ ? "opening.height" : "opening.width");
    if (high != nullptr) chain.Add(size, size + high->size, OverlapPath("overlap.", *high));
    return chain;
  }

 private:
  const Space& At(int index) const { return bank_.spaces[static_cast<std::size_t>(index)]; }
  Length Low(const Rect& r) const { return upright_ ? r.y : r.x; }
  Length High(const Rect& r) const { return upright_ ? r.Top() : r.Right(); }
  Edge LowEdge() const { return upright_ ? Edge::kBottom : Edge::kLeft; }
  Edge HighEdge() const { return upright_ ? Edge::kTop : Edge::kRight; }

  void FindFronts() {
    for (const Overlap& overlap : bank_.overlaps) {
      if (overlap.edge == edge_) fronts_.push_back(overlap.space);
    }
    for (const Gap& gap : bank_.gaps) {
      for (const auto& [end, other] : {std::pair{gap.from, gap.to}, std::pair{gap.to, gap.from}}) {
        const bool here =
            end.kind == GapEnd::Kind::kOpening && end.index == static_cast<int>(edge_);
        if (here && other.kind == GapEnd::Kind::kSpace) fronts_.push_back(other.index);
      }
    }
    // No paper holds a chain of so many sizes; they stand in the table.
    constexpr std::size_t kMost = 250;
    if (fronts_.size() > kMost) return fronts_.clear();
    std::ranges::sort(
        fronts_, [this](int a, int b) { return Low(At(a).front.rect) < Low(At(b).front.rect); });
  }

  const Overlap* OverlapOf(int space, Edge edge) const {
    const auto at = std::ranges::find_if(bank_.overlaps, [&](const Overlap& overlap) {
      return overlap.space == space && overlap.edge == edge;
    });
    return at == bank_.overlaps.end() ? nullptr : &*at;
  }

  std::string OverlapPath(std::string_view kind, const Overlap& overlap) const {
    std::string path(kind);
    path += ToText(At(overlap.space).id);
    path += '.';
    path += Word(overlap.edge);
    return path;
  }

  const Gap* GapBetween(const GapEnd& from, const GapEnd& to) const {
    const auto at = std::ranges::find_if(bank_.gaps, [&](const Gap& gap) {
      return gap.axis == axis_ && gap.from == from && gap.to == to;
    });
    return at == bank_.gaps.end() ? nullptr : &*at;
  }
  static GapEnd EndOf(int space) { return {GapEnd::Kind::kSpace, space}; }
  static GapEnd EndOf(Edge edge) { return {GapEnd::Kind::kOpening, static_cast<int>(edge)}; }

  void AddGap(SizeChain& chain, const Gap* gap) const {
    if (gap != nullptr) chain.Add(gap->at, gap->at + gap->size, GapPath(bank_, *gap));
  }

  // The case's edge at a side of the opening that fronts may cover; nothing without a case.
  std::optional<Length> CaseEdge(Edge edge) const {
    if (!bank_.casework) return std::nullopt;
    return bank_.casework->EdgeAt(edge);
  }

  void Beginning(SizeChain& chain) const {
    AddGap(chain, GapBetween(EndOf(LowEdge()), EndOf(fronts_.front())));
    const Overlap* overlap = OverlapOf(fronts_.front(), LowEdge());
    const std::optional<Length> edge = CaseEdge(LowEdge());
    if (overlap == nullptr || !edge) return;
    chain.Add(-*edge, -overlap->size, OverlapPath("reveal.", *overlap));
  }

  void Ending(SizeChain& chain) const {
    AddGap(chain, GapBetween(EndOf(fronts_.back()), EndOf(HighEdge())));
    const Overlap* overlap = OverlapOf(fronts_.back(), HighEdge());
    const std::optional<Length> edge = CaseEdge(HighEdge());
    if (overlap == nullptr || !edge) return;
    const Length end = upright_ ? bank_.opening_height : bank_.opening_width;
    chain.Add(end + overlap->size, end + *edge, OverlapPath("reveal.", *overlap));
  }

  // The gap between two fronts, or the gaps on both sides of the member between them.
  void Between(SizeChain& chain, int low, int high) const {
    if (const Gap* gap = GapBetween(EndOf(low), EndOf(high))) return AddGap(chain, gap);
    const Length from = High(At(low).front.rect);
    const Length to = Low(At(high).front.rect);
    for (std::size_t i = 0; i < bank_.dividers.size(); ++i) {
      const Divider& member = bank_.dividers[i];
      if (member.partition == upright_ || Low(member.rect) < from || High(member.rect) > to)
        continue;
      const GapEnd end{GapEnd::Kind::kDivider, static_cast<int>(i)};
      const Gap* before = GapBetween(EndOf(low), end);
      const Gap* after = GapBetween(end, EndOf(high));
      if (before == nullptr && after == nullptr) continue;
      AddGap(chain, before);
      // Thicknesses of dividers stand in the table.
      const std::string path = upright_ ? std::string() : ToText(member) + ".thickness";
      chain.Add(Low(member.rect), High(member.rect), path);
      AddGap(chain, after);
    }
  }

  const Bank& bank_;
  Edge edge_;
  bool upright_;
  Axis axis_;
  std::vector<int> fronts_;  // indices of spaces, from the bottom up or from the left
};

}  // namespace

SizeChain FrontsAlong(const Bank& bank, Edge edge) { return EdgeChain(bank, edge).Fronts(); }

SizeChain PullsAlong(const Bank& bank, Edge edge) { return EdgeChain(bank, edge).Pulls(); }

SizeChain OpeningAlong(const Bank& bank, Edge edge) { return EdgeChain(bank, edge).Opening(); }

SizeChain CaseAlong(const Bank& bank, Edge edge) {
  SizeChain chain;
  if (!bank.casework) return chain;
  const CaseBuild& c = *bank.casework;
  if (edge == Edge::kLeft || edge == Edge::kRight) {
    const Length top = c.height - c.base;
    if (!c.feet.IsZero()) chain.Add(-c.base - c.feet, -c.base, "case.feet.height");
    chain.Add(-c.base, top, "case.height");
    if (c.worktop) chain.Add(top, top + c.worktop->thickness, "case.worktop.thickness");
  } else {
    const Length left = -c.side_in - c.side;
    chain.Add(left, left + c.width, "case.width");
  }
  return chain;
}

}  // namespace tillwright
