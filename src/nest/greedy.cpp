#include "nest/greedy.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace tillwright::nest {
namespace {

constexpr int kOrders = 6;
constexpr int kFits = 3;
constexpr int kCuts = 4;

struct Rule {
  int order = 0;
  int fit = 0;
  int cut = 0;
  bool first = false;  // the first sheet that has room, not the best
};

std::int64_t OrderKey(const Part& part, int order) {
  const std::int64_t w = part.width;
  const std::int64_t h = part.height;
  switch (order) {
    case 0:
      return w * h;
    case 1:
      return h * 0x10000 + w;
    case 2:
      return w * 0x10000 + h;
    case 3:
      return std::max(w, h) * 0x10000 + std::min(w, h);
    case 4:
      return std::min(w, h) * 0x10000 + std::max(w, h);
    default:
      return w + h;
  }
}

// How badly a part fits a leftover, by what remains beside and above it.
std::int64_t Misfit(std::int64_t beside, std::int64_t above, const Node& left, const Laid& laid,
                    int fit) {
  switch (fit) {
    case 0:
      return std::int64_t{left.width} * left.height - std::int64_t{laid.width} * laid.height;
    case 1:
      return std::min(beside, above);
    default:
      return std::max(beside, above);
  }
}

std::int32_t FirstCut(const Node& left, const Laid& laid, int cut) {
  const std::int64_t beside = left.width - laid.width;
  const std::int64_t above = left.height - laid.height;
  switch (cut) {
    case 0:
      return kColumns;
    case 1:
      return kRows;
    // The larger of the two remaining strips in one piece, or the smaller.
    case 2:
      return beside * left.height >= above * left.width ? kColumns : kRows;
    default:
      return beside < above ? kColumns : kRows;
  }
}

// Leftovers looked at before the remaining passes are left out.
constexpr std::int64_t kMostWork = 8'000'000;

class Pass {
 public:
  Pass(const Problem& problem, const Rule& rule) : problem_(problem), rule_(rule) {
    for (const Stock& stock : problem.stock) on_hand_.push_back(stock.count);
  }

  // Leaves parts out that would need a sheet more than costs less than `limit` in all.
  Packing Run(std::int64_t limit) {
    std::vector<std::int32_t> order(problem_.parts.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](std::int32_t a, std::int32_t b) {
      return OrderKey(PartAt(a), rule_.order) > OrderKey(PartAt(b), rule_.order);
    });
    for (const Part& part : problem_.parts) packing_.missing.push_back(part.count);
    for (const std::int32_t part : order) {
      std::int32_t& missing = packing_.missing[static_cast<std::size_t>(part)];
      while (missing > 0 && Place(part, limit)) --missing;
    }
    return std::move(packing_);
  }

  [[nodiscard]] std::int64_t work() const { return work_; }

 private:
  struct Left {
    std::int32_t width = 0;
    std::int32_t height = 0;
    std::int32_t sheet = 0;
    std::int32_t node = 0;
  };
  struct Spot {
    std::int64_t misfit = std::numeric_limits<std::int64_t>::max();
    std::size_t left = 0;
    Laid laid;
  };

  [[nodiscard]] const Part& PartAt(std::int32_t part) const {
    return problem_.parts[static_cast<std::size_t>(part)];
  }

  bool Place(std::int32_t part, std::int64_t limit) {
    Spot spot = Best(part);
    if (spot.laid.width == 0) {
      if (!Open(part, limit)) return false;
      spot = Best(part);
      if (spot.laid.width == 0) return false;  // not within the stages
    }
    const Left left = lefts_[spot.left];
    Tree& tree = packing_.sheets[static_cast<std::size_t>(left.sheet)].tree;
    std::int32_t cut = FirstCut(tree.At(left.node), spot.laid, rule_.cut);
    if (problem_.stages > 0) cut = AllowedCut(tree, left.node, spot.laid, problem_.stages, cut);
    const auto rests = tree.Insert(left.node, spot.laid, cut);
    lefts_.erase(lefts_.begin() + static_cast<std::ptrdiff_t>(spot.left));
    for (const std::int32_t rest : rests) {
      if (rest == kNone) continue;
      const Node& node = tree.At(rest);
      Keep({node.width, node.height, left.sheet, rest});
    }
    return true;
  }

  // Keeps leftovers in the order of their sheets.
  void Keep(const Left& left) {
    lefts_.insert(std::ranges::upper_bound(lefts_, left.sheet, {}, &Left::sheet), left);
  }

  Spot Best(std::int32_t part) {
    const Part& p = PartAt(part);
    Spot spot;
    for (std::size_t i = 0; i < lefts_.size(); ++i) {
      if (rule_.first && spot.laid.width > 0 && lefts_[i].sheet != lefts_[spot.left].sheet) break;
      Consider({part, p.width, p.height, false}, i, spot);
      if (p.turn) Consider({part, p.height, p.width, true}, i, spot);
    }
    work_ += static_cast<std::int64_t>(lefts_.size());
    return spot;
  }

  void Consider(const Laid& laid, std::size_t at, Spot& spot) const {
    const Left& left = lefts_[at];
    if (laid.width > left.width || laid.height > left.height) return;
    const Tree& tree = packing_.sheets[static_cast<std::size_t>(left.sheet)].tree;
    if (problem_.stages > 0 &&
        AllowedCut(tree, left.node, laid, problem_.stages, kColumns) == kNone) {
      return;
    }
    const std::int64_t misfit = Misfit(left.width - laid.width, left.height - laid.height,
                                       tree.At(left.node), laid, rule_.fit);
    if (misfit < spot.misfit) spot = {misfit, at, laid};
  }

  // Opens the sheet that costs least for its area among those the part fits.
  bool Open(std::int32_t part, std::int64_t limit) {
    std::size_t best = problem_.stock.size();
    for (std::size_t i = 0; i < problem_.stock.size(); ++i) {
      const Stock& stock = problem_.stock[i];
      if (on_hand_[i] == 0 || !Fits(PartAt(part), stock) || cost_ + stock.cost >= limit) continue;
      if (best == problem_.stock.size() || Cheaper(stock, problem_.stock[best])) best = i;
    }
    if (best == problem_.stock.size()) return false;
    if (on_hand_[best] > 0) --on_hand_[best];
    const Stock& stock = problem_.stock[best];
    cost_ += stock.cost;
    packing_.sheets.push_back({static_cast<std::int32_t>(best), Tree(stock.width, stock.height)});
    Keep({stock.width, stock.height, static_cast<std::int32_t>(packing_.sheets.size()) - 1, 0});
    return true;
  }

  static bool Cheaper(const Stock& a, const Stock& b) {
    return static_cast<double>(a.cost) * static_cast<double>(b.Area()) <
           static_cast<double>(b.cost) * static_cast<double>(a.Area());
  }

  const Problem& problem_;
  Rule rule_;
  Packing packing_;
  std::vector<Left> lefts_;
  std::vector<std::int32_t> on_hand_;
  std::int64_t cost_ = 0;
  std::int64_t work_ = 0;
};

}  // namespace

Packing GreedyPacking(const Problem& problem, std::int64_t bound) {
  constexpr std::int64_t kAny = std::numeric_limits<std::int64_t>::max();
  Packing best;
  std::int64_t best_missing = kAny;
  std::int64_t best_cost = kAny;
  std::int64_t work = 0;
  for (int i = 0; i < kOrders * kFits * kCuts * 2 && work < kMostWork; ++i) {
    const Rule rule{i % kOrders, i / kOrders % kFits, i / (kOrders * kFits) % kCuts,
                    i >= kOrders * kFits * kCuts};
    Pass pass(problem, rule);
    Packing packing = pass.Run(best_missing == 0 ? best_cost : kAny);
    work += pass.work();
    const std::int64_t missing = packing.MissingArea(problem);
    const std::int64_t cost = packing.Cost(problem);
    if (missing > best_missing || (missing == best_missing && cost >= best_cost)) continue;
    best = std::move(packing);
    best_missing = missing;
    best_cost = cost;
    if (missing == 0 && cost <= bound) break;
  }
  return best;
}

}  // namespace tillwright::nest
