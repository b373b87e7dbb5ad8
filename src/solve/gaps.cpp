#include "solve/gaps.h"

#include <algorithm>
#include <tuple>

namespace tillwright {
namespace {

bool IsUpright(Edge edge) { return edge == Edge::kLeft || edge == Edge::kRight; }

class GapRule {
 public:
  GapRule(const std::vector<LaidNode>& laid, Bank& bank) : laid_(laid), bank_(bank) {}

  void Run() {
    for (std::size_t i = 0; i < laid_.size(); ++i) Between(laid_[i]);
    behind_ = -1;
    for (const Edge edge : kEdges) AtOpening(edge);
    std::ranges::sort(bank_.gaps, [](const Gap& a, const Gap& b) { return Key(a) < Key(b); });
  }

 private:
  using SortKey = std::tuple<bool, Length, Length, Length>;
  static SortKey Key(const Gap& gap) { return {gap.axis == Axis::kX, gap.at, gap.begin, gap.size}; }

  const Rect& FrontOf(int space) const {
    return bank_.spaces[static_cast<std::size_t>(space)].region;
  }

  // The leaves with a front along one side of a node, in order.
  void Collect(int node, Edge side, std::vector<int>& out) const {
    const LaidNode& at = laid_[static_cast<std::size_t>(node)];
    if (!IsSplit(at.kind)) {
      if (bank_.spaces[static_cast<std::size_t>(at.space)].HasFront()) out.push_back(at.space);
      return;
    }
    const bool across = (at.kind == NodeKind::kRows) == IsUpright(side);
    const bool first_only = side == Edge::kTop || side == Edge::kLeft;
    const int first = across || first_only ? 0 : at.child_count - 1;
    const int last = across || !first_only ? at.child_count - 1 : 0;
    for (int i = first; i <= last; ++i) Collect(at.first_child + i, side, out);
  }
  std::vector<int> Along(int node, Edge side) const {
    std::vector<int> out;
    Collect(node, side, out);
    return out;
  }

  void Between(const LaidNode& node) {
    if (!IsSplit(node.kind)) return;
    const bool rows = node.kind == NodeKind::kRows;
    if (rows) NoteOutOfLine(node);
    for (int i = 0; i + 1 < node.child_count; ++i) {
      const int before = node.first_child + i;  // above, or left
      const int lower = rows ? before + 1 : before;
      const int upper = rows ? before : before + 1;
      const std::vector<int> low = Along(lower, rows ? Edge::kTop : Edge::kRight);
      const std::vector<int> high = Along(upper, rows ? Edge::kBottom : Edge::kLeft);
      if (bank_.style == FrontStyle::kInset && node.first_divider >= 0) {
        ToMember(low, high, node.first_divider + i, rows);
      } else {
        behind_ = node.first_divider < 0 ? -1 : node.first_divider + i;
        Facing(low, high, rows);
      }
    }
  }

  // The stretch of the other axis a front takes.
  static Length Begin(const Rect& r, bool rows) { return rows ? r.x : r.y; }
  static Length End(const Rect& r, bool rows) { return rows ? r.Right() : r.Top(); }
  static Length Low(const Rect& r, bool rows) { return rows ? r.y : r.x; }
  static Length High(const Rect& r, bool rows) { return rows ? r.Top() : r.Right(); }

  void Add(bool rows, GapEnd from, GapEnd to, Length at, Length end_at, Length begin, Length end) {
    bank_.gaps.push_back(
        {rows ? Axis::kY : Axis::kX, from, to, at, end_at - at, begin, end, behind_});
  }

  // Whether fronts along a boundary lie one after another, as they do unless sizes that do not
  // close push some over their neighbors. Rows list their leaves left to right, columns from the
  // top down.
  bool InOrder(const std::vector<int>& list, bool rows) const {
    for (std::size_t i = 1; i < list.size(); ++i) {
      const Rect& a = FrontOf(list[i - 1]);
      const Rect& b = FrontOf(list[i]);
      if (rows ? End(a, rows) > Begin(b, rows) : Begin(a, rows) < End(b, rows)) return false;
    }
    return true;
  }

  void AddFacing(int low, int high, bool rows) {
    const Rect& a = FrontOf(low);
    const Rect& b = FrontOf(high);
    const Length begin = Max(Begin(a, rows), Begin(b, rows));
    const Length end = Min(End(a, rows), End(b, rows));
    if (begin < end) Add(rows, Space_(low), Space_(high), High(a, rows), Low(b, rows), begin, end);
  }

  // Fronts on both sides of a boundary: every pair that faces one another.
  void Facing(const std::vector<int>& low, const std::vector<int>& high, bool rows) {
    if (!InOrder(low, rows) || !InOrder(high, rows)) {
      for (const int a : low) {
        for (const int b : high) AddFacing(a, b, rows);
      }
      return;
    }
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < low.size() && j < high.size()) {
      const Rect& a = FrontOf(low[i]);
      const Rect& b = FrontOf(high[j]);
      AddFacing(low[i], high[j], rows);
      const bool a_first = rows ? End(a, rows) < End(b, rows) : Begin(a, rows) > Begin(b, rows);
      const bool both = rows ? End(a, rows) == End(b, rows) : Begin(a, rows) == Begin(b, rows);
      if (a_first || both) ++i;
      if (!a_first || both) ++j;
    }
  }

  void ToMember(const std::vector<int>& low, const std::vector<int>& high, int member, bool rows) {
    const Rect& wood = bank_.dividers[static_cast<std::size_t>(member)].rect;
    const GapEnd end{GapEnd::Kind::kDivider, member};
    for (const int space : low) {
      const Rect& r = FrontOf(space);
      Add(rows, Space_(space), end, High(r, rows), Low(wood, rows), Begin(r, rows), End(r, rows));
    }
    for (const int space : high) {
      const Rect& r = FrontOf(space);
      Add(rows, end, Space_(space), High(wood, rows), Low(r, rows), Begin(r, rows), End(r, rows));
    }
  }

  static GapEnd Space_(int space) { return {GapEnd::Kind::kSpace, space}; }

  // How far a front stands inside the opening's edge: negative when it covers it.
  Length Inside(const Rect& r, Edge edge) const {
    switch (edge) {
      case Edge::kTop:
        return bank_.opening_height - r.Top();
      case Edge::kBottom:
        return r.y;
      case Edge::kLeft:
        return r.x;
      case Edge::kRight:
        break;
    }
    return bank_.opening_width - r.Right();
  }

  bool UnderWorktop(Edge edge) const {
    return edge == Edge::kTop && bank_.casework && bank_.casework->UnderWorktop();
  }

  void AtOpening(Edge edge) {
    const bool rows = !IsUpright(edge);
    for (const int space : Along(0, edge)) {
      const Rect& r = FrontOf(space);
      const Length inside = Inside(r, edge);
      if (bank_.style == FrontStyle::kOverlay && !UnderWorktop(edge)) {
        bank_.overlaps.push_back({space, edge, -inside});
        continue;
      }
      const GapEnd opening{GapEnd::Kind::kOpening, static_cast<int>(edge)};
      const bool low = edge == Edge::kBottom || edge == Edge::kLeft;
      const Length at = low ? Length() : High(r, rows);
      Add(rows, low ? opening : Space_(space), low ? Space_(space) : opening, at, at + inside,
          Begin(r, rows), End(r, rows));
    }
  }

  // Fronts of one stack of rows that start or end at different places across.
  void NoteOutOfLine(const LaidNode& node) {
    if (node.child_count < 2) return;
    Length most;
    std::string subject;
    for (const Edge side : {Edge::kLeft, Edge::kRight}) {
      std::optional<Length> low;
      std::optional<Length> high;
      for (int i = 0; i < node.child_count; ++i) {
        for (const int space : Along(node.first_child + i, side)) {
          const Rect& r = FrontOf(space);
          const Length at = side == Edge::kLeft ? r.x : r.Right();
          low = low ? Min(*low, at) : at;
          high = high ? Max(*high, at) : at;
          if (subject.empty()) subject = ToText(bank_.spaces[static_cast<std::size_t>(space)].id);
        }
      }
      if (low) most = Max(most, *high - *low);
    }
    if (!most.IsZero()) bank_.notes.push_back({SolveNote::Kind::kOutOfLine, subject, most});
  }

  const std::vector<LaidNode>& laid_;
  Bank& bank_;
  int behind_ = -1;  // the member behind the fronts that face one another, overlay
};

}  // namespace

void AddGaps(const std::vector<LaidNode>& laid, Bank& bank) { GapRule(laid, bank).Run(); }

}  // namespace tillwright
