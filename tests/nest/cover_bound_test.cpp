// The cheapest stock with the area of all parts, against every way to take it.
#include "nest/cover_bound.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

#include "support/files.h"
#include "support/specs.h"

namespace tillwright {
namespace {

using nest::AreaCostBound;
using nest::Part;
using nest::Problem;
using nest::Stock;

constexpr std::int64_t kNothing = std::numeric_limits<std::int64_t>::max();

// Every count of every kind, up to what covers the area alone or is there.
std::int64_t ByAllWays(const Problem& problem, std::size_t at, std::int64_t left,
                       std::int64_t cost) {
  if (left <= 0) return cost;
  if (at == problem.stock.size()) return kNothing;
  const Stock& stock = problem.stock[at];
  std::int64_t most = (left + stock.Area() - 1) / stock.Area();
  if (stock.count >= 0) most = std::min<std::int64_t>(most, stock.count);
  std::int64_t best = kNothing;
  for (std::int64_t n = 0; n <= most; ++n) {
    best =
        std::min(best, ByAllWays(problem, at + 1, left - n * stock.Area(), cost + n * stock.cost));
  }
  return best;
}

TEST(CoverBound, AsEveryWayTogether) {
  const std::uint32_t seed = testing::TestSeed();
  for (std::uint32_t i = 0; i < 500; ++i) {
    testing::Random random(seed + i);
    Problem problem;
    std::int64_t area = 0;
    for (int n = random.Int(1, 4); n > 0; --n) {
      problem.parts.push_back(Part{
          .width = random.Int(10, 90), .height = random.Int(10, 60), .count = random.Int(1, 6)});
      area += problem.parts.back().Area() * problem.parts.back().count;
    }
    for (int n = random.Int(1, 4); n > 0; --n) {
      problem.stock.push_back(Stock{.width = random.Int(60, 120),
                                    .height = random.Int(60, 90),
                                    .cost = random.Int(1, 40),
                                    .count = random.Chance(40) ? random.Int(1, 2) : -1});
    }
    const std::int64_t best = ByAllWays(problem, 0, area, 0);
    if (best == kNothing) continue;
    EXPECT_EQ(AreaCostBound(problem), best) << "seed " << seed + i;
  }
}

}  // namespace
}  // namespace tillwright
