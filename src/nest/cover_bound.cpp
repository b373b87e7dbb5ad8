#include "nest/cover_bound.h"

#include <algorithm>
#include <limits>
#include <vector>

#include "tillwright/length.h"

namespace tillwright::nest {
namespace {

constexpr int kMostSteps = 100'000;

// Branch and bound over how many of each kind are taken, the cheapest for their area first.
class Cover {
 public:
  explicit Cover(const Problem& problem) : stock_(problem.stock) {
    for (const Part& part : problem.parts) area_ += Int128{part.Area()} * part.count;
    std::ranges::stable_sort(stock_, [](const Stock& a, const Stock& b) {
      return Int128{a.cost} * b.Area() < Int128{b.cost} * a.Area();
    });
  }

  std::int64_t Run() {
    const std::int64_t rest = Rest(0, area_);
    if (rest == kNothingDoes) return All();
    Take(0, area_, 0);
    return steps_ < kMostSteps ? best_ : rest;
  }

 private:
  static constexpr std::int64_t kNothingDoes = std::numeric_limits<std::int64_t>::max();

  // Of all there is: when that is not enough, no layout of all parts costs less either.
  [[nodiscard]] std::int64_t All() const {
    std::int64_t cost = 0;
    for (const Stock& stock : stock_) cost += stock.cost * stock.count;
    return cost;
  }

  [[nodiscard]] Int128 MostOf(const Stock& stock, Int128 left) const {
    const Int128 enough = (left + stock.Area() - 1) / stock.Area();
    return stock.count < 0 ? enough : std::min<Int128>(enough, stock.count);
  }

  // What the rest costs at least when sheets may be taken in parts.
  [[nodiscard]] std::int64_t Rest(std::size_t from, Int128 left) const {
    Int128 cost = 0;
    for (std::size_t i = from; i < stock_.size() && left > 0; ++i) {
      const Stock& stock = stock_[i];
      if (stock.count < 0 || left <= Int128{stock.Area()} * stock.count) {
        return static_cast<std::int64_t>(cost +
                                         (left * stock.cost + stock.Area() - 1) / stock.Area());
      }
      cost += Int128{stock.cost} * stock.count;
      left -= Int128{stock.Area()} * stock.count;
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
    if (at == stock_.size()) return;
    const Stock& stock = stock_[at];
    for (Int128 n = MostOf(stock, left); n >= 0; --n) {
      const Int128 rest = left - n * stock.Area();
      const Int128 spent = cost + n * stock.cost;
      const std::int64_t more = rest > 0 ? Rest(at + 1, rest) : 0;
      if (more == kNothingDoes || spent + more >= best_) {
        // All of this kind that are useful, and still not better: fewer are not either, unless
        // these went past the area.
        if (rest > 0) return;
        continue;
      }
      Take(at + 1, rest, static_cast<std::int64_t>(spent));
    }
  }

  std::vector<Stock> stock_;
  Int128 area_ = 0;
  std::int64_t best_ = kNothingDoes;
  int steps_ = 0;
};

}  // namespace

std::int64_t AreaCostBound(const Problem& problem) { return Cover(problem).Run(); }

}  // namespace tillwright::nest
