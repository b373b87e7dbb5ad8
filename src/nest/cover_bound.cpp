#include "nest/cover_bound.h"

#include <algorithm>
#include <limits>
#include <utility>
#include <vector>

#include "tillwright/length.h"

namespace tillwright::nest {
namespace {

constexpr int kMostSteps = 100'000;

// What one of a kind brings, and what it costs.
struct Kind {
  Int128 brings = 0;
  std::int64_t cost = 0;
  std::int32_t count = -1;  // -1: as many as wanted
};

// Branch and bound over how many of each kind are taken, the cheapest for what they bring first.
class Cover {
 public:
  explicit Cover(std::vector<Kind> kinds) : kinds_(std::move(kinds)) {
    std::ranges::stable_sort(
        kinds_, [](const Kind& a, const Kind& b) { return a.cost * b.brings < b.cost * a.brings; });
  }

  // The least cost of what brings `need` together.
  std::int64_t Run(Int128 need) {
    const std::int64_t rest = Rest(0, need);
    if (rest == kNothingDoes) return All();
    Take(0, need, 0);
    return steps_ < kMostSteps ? best_ : rest;
  }

 private:
  static constexpr std::int64_t kNothingDoes = std::numeric_limits<std::int64_t>::max();

  // Of all there is: when that does not do, no layout of all parts costs less either.
  [[nodiscard]] std::int64_t All() const {
    std::int64_t cost = 0;
    for (const Kind& kind : kinds_) cost += kind.cost * kind.count;
    return cost;
  }

  [[nodiscard]] static Int128 MostOf(const Kind& kind, Int128 left) {
    const Int128 enough = (left + kind.brings - 1) / kind.brings;
    return kind.count < 0 ? enough : std::min<Int128>(enough, kind.count);
  }

  // What the rest costs at least when sheets may be taken in parts.
  [[nodiscard]] std::int64_t Rest(std::size_t from, Int128 left) const {
    Int128 cost = 0;
    for (std::size_t i = from; i < kinds_.size() && left > 0; ++i) {
      const Kind& kind = kinds_[i];
      const Int128 all = kind.brings * kind.count;
      if (kind.count < 0 || left <= all) {
        return static_cast<std::int64_t>(cost + (left * kind.cost + kind.brings - 1) / kind.brings);
      }
      cost += Int128{kind.cost} * kind.count;
      left -= all;
    }
    return left > 0 ? kNothingDoes : static_cast<std::int64_t>(cost);
  }

  // Fewer of one kind leave more to kinds that cost more for their area, so what the rest costs
  // only grows.
  void Take(std::size_t at, Int128 left, std::int64_t cost) {
    if (++steps_ >= kMostSteps) return;
    if (left <= 0) {
      best_ = std::min(best_, cost);
      return;
    }
    if (at == kinds_.size()) return;
    const Kind& kind = kinds_[at];
    for (Int128 n = MostOf(kind, left); n >= 0; --n) {
      const Int128 rest = left - n * kind.brings;
      const Int128 spent = cost + n * kind.cost;
      const std::int64_t more = rest > 0 ? Rest(at + 1, rest) : 0;
      if (more == kNothingDoes || spent + more >= best_) {
        // All of this kind that are useful, and still not better: fewer are not either, unless
        // these went past the need.
        if (rest > 0) return;
        continue;
      }
      Take(at + 1, rest, static_cast<std::int64_t>(spent));
    }
  }

  std::vector<Kind> kinds_;
  std::int64_t best_ = kNothingDoes;
  int steps_ = 0;
};

}  // namespace

std::int64_t AreaCostBound(const Problem& problem) {
  Int128 area = 0;
  for (const Part& part : problem.parts) area += Int128{part.Area()} * part.count;
  std::vector<Kind> kinds;
  for (const Stock& stock : problem.stock) kinds.push_back({stock.Area(), stock.cost, stock.count});
  return Cover(std::move(kinds)).Run(area);
}

std::int64_t WholeSheetsCost(const Problem& problem, std::int64_t cost) {
  std::vector<Kind> kinds;
  for (const Stock& stock : problem.stock) kinds.push_back({stock.cost, stock.cost, stock.count});
  return Cover(std::move(kinds)).Run(cost);
}

}  // namespace tillwright::nest
