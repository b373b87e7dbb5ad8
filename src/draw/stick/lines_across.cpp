#include "draw/stick/lines_across.h"

#include <algorithm>
#include <set>
#include <utility>

namespace tillwright {
namespace {

// A rectangle's stretch along the line and across it.
struct Stretch {
  Length from, to;
};
Stretch Along(const Rect& r, Axis along) {
  return along == Axis::kY ? Stretch{r.y, r.Top()} : Stretch{r.x, r.Right()};
}
Stretch Across(const Rect& r, Axis along) {
  return Along(r, along == Axis::kY ? Axis::kX : Axis::kY);
}

class LineFinder {
 public:
  LineFinder(const Bank& bank, Axis along) : bank_(bank), along_(along) {}

  std::vector<BankLine> Find() {
    std::vector<BankLine> all = AllLines();
    // Lines that meet much first, so that few are needed.
    std::vector<std::size_t> order(all.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::ranges::stable_sort(order, std::ranges::greater{},
                             [&](std::size_t i) { return all[i].spaces.size(); });
    std::set<std::size_t> kept;
    for (const std::size_t i : order) {
      if (BringsNew(all[i])) kept.insert(i);
    }
    std::vector<BankLine> lines;
    for (const std::size_t i : kept) {
      AddMembers(all[i]);
      lines.push_back(std::move(all[i]));
    }
    if (lines.empty()) lines.emplace_back();
    return lines;
  }

 private:
  // Between every two neighboring ends of spaces, a line in the middle.
  std::vector<BankLine> AllLines() const {
    std::set<Length> ends;
    for (const Space& space : bank_.spaces) {
      const Stretch stretch = Across(space.region, along_);
      ends.insert(stretch.from);
      ends.insert(stretch.to);
    }
    std::vector<BankLine> lines;
    for (auto at = ends.begin(); at != ends.end() && std::next(at) != ends.end(); ++at) {
      BankLine line = LineAt(*at, *std::next(at));
      if (line.spaces.empty()) continue;
      if (lines.empty() || lines.back().spaces != line.spaces) lines.push_back(std::move(line));
    }
    return lines;
  }

  BankLine LineAt(Length from, Length to) const {
    BankLine line;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Stretch stretch = Across(bank_.spaces[i].region, along_);
      if (stretch.from <= from && stretch.to >= to) line.spaces.push_back(static_cast<int>(i));
    }
    std::ranges::sort(line.spaces, {},
                      [&](int i) { return Along(SpaceOf(i).region, along_).from; });
    return line;
  }

  bool BringsNew(const BankLine& line) {
    bool brings = false;
    for (std::size_t i = 0; i < line.spaces.size(); ++i) {
      brings |= seen_.emplace(line.spaces[i], -1).second;
      if (i > 0) brings |= seen_.emplace(line.spaces[i - 1], line.spaces[i]).second;
    }
    return brings;
  }

  void AddMembers(BankLine& line) const {
    for (std::size_t m = 0; m < bank_.dividers.size(); ++m) {
      const auto beside = [&](int i) { return Bounds(bank_.dividers[m], SpaceOf(i).cell); };
      if (std::ranges::any_of(line.spaces, beside)) line.members.push_back(static_cast<int>(m));
    }
  }

  // Does the member's face bound the cell?
  static bool Bounds(const Divider& member, const Rect& cell) {
    const Rect& r = member.rect;
    if (member.partition) {
      return r.y < cell.Top() && cell.y < r.Top() && (r.Right() == cell.x || r.x == cell.Right());
    }
    return r.x < cell.Right() && cell.x < r.Right() && (r.Top() == cell.y || r.y == cell.Top());
  }

  [[nodiscard]] const Space& SpaceOf(int i) const {
    return bank_.spaces[static_cast<std::size_t>(i)];
  }

  const Bank& bank_;
  Axis along_;
  std::set<std::pair<int, int>> seen_;  // spaces, and pairs of neighbors
};

}  // namespace

std::vector<BankLine> LinesAcross(const Bank& bank, Axis along) {
  return LineFinder(bank, along).Find();
}

}  // namespace tillwright
