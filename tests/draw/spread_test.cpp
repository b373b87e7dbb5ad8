#include "sheet/spread.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <vector>

namespace tillwright {
namespace {

std::vector<SpreadItem> Scattered(std::uint32_t seed, int count) {
  std::vector<SpreadItem> items;
  for (int i = 0; i < count; ++i) {
    const auto next = [&seed] {
      seed = seed * 1664525U + 1013904223U;
      return static_cast<double>(seed >> 16U) / 65536.0;
    };
    const double wish = 40 * next();
    const double size = 0.5 + 4 * next();
    items.push_back({wish, size, next() < 0.15 ? kImmovable : 1 + 3 * next()});
  }
  return items;
}

double Cost(const std::vector<SpreadItem>& items, const std::vector<double>& places) {
  double cost = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    cost += items[i].weight * (places[i] - items[i].wish) * (places[i] - items[i].wish);
  }
  return cost;
}

std::vector<std::size_t> Order(const std::vector<SpreadItem>& items) {
  std::vector<std::size_t> order(items.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return items[a].wish < items[b].wish; });
  return order;
}

TEST(Spread, GivesNothingForNothing) { EXPECT_TRUE(Spread({}, 1).empty()); }

TEST(Spread, LeavesItemsThatDoNotCrowdExactlyWhereTheyWishToBe) {
  const std::vector<SpreadItem> items{{30.1, 4, 1}, {0.3, 4, 1}, {10.7, 4, 2}};
  const std::vector<double> places = Spread(items, 0.9);
  for (std::size_t i = 0; i < items.size(); ++i) EXPECT_EQ(places[i], items[i].wish);
}

TEST(Spread, PartsAPairEvenly) {
  const std::vector<double> places = Spread(std::vector<SpreadItem>{{10, 4, 1}, {10.4, 4, 1}}, 1);
  EXPECT_NEAR(places[0], 7.7, 1e-12);
  EXPECT_NEAR(places[1], 12.7, 1e-12);
}

TEST(Spread, HoldsImmovableSlotsAndPushesTheRestAside) {
  const std::vector<SpreadItem> items{{10.2, 4, 1}, {10, 0, kImmovable}};
  const std::vector<double> places = Spread(items, 0.9);
  EXPECT_NEAR(places[1], 10, 1e-5);
  EXPECT_NEAR(places[0], 12.9, 1e-5);
}

TEST(Spread, KeepsOrderAndDistanceForScatteredItems) {
  for (std::uint32_t seed = 1; seed <= 200; ++seed) {
    const std::vector<SpreadItem> items = Scattered(seed, 12);
    const std::vector<double> places = Spread(items, 0.7);
    const std::vector<std::size_t> order = Order(items);
    for (std::size_t i = 1; i < order.size(); ++i) {
      const double gap = (items[order[i - 1]].size + items[order[i]].size) / 2 + 0.7;
      ASSERT_GE(places[order[i]] - places[order[i - 1]], gap - 1e-9) << seed;
    }
  }
}

TEST(Spread, MirrorsWithItsWishes) {
  for (std::uint32_t seed = 1; seed <= 50; ++seed) {
    std::vector<SpreadItem> items = Scattered(seed, 9);
    const std::vector<double> places = Spread(items, 0.7);
    for (SpreadItem& item : items) item.wish = -item.wish;
    const std::vector<double> mirrored = Spread(items, 0.7);
    for (std::size_t i = 0; i < items.size(); ++i) ASSERT_NEAR(mirrored[i], -places[i], 1e-9);
  }
}

// No single item or run of neighbors can be moved a little, within the bounds, to lower the cost.
void ExpectLeastMovement(const std::vector<SpreadItem>& items, const std::vector<double>& best,
                         double low, double high) {
  const std::vector<std::size_t> order = Order(items);
  const auto allowed = [&](const std::vector<double>& places) {
    for (std::size_t i = 0; i < order.size(); ++i) {
      const double half = items[order[i]].size / 2;
      if (places[order[i]] - half < low - 1e-9 || places[order[i]] + half > high + 1e-9) {
        return false;
      }
      if (i == 0) continue;
      const double gap = items[order[i - 1]].size / 2 + half + 0.7;
      if (places[order[i]] - places[order[i - 1]] < gap - 1e-9) return false;
    }
    return true;
  };
  ASSERT_TRUE(allowed(best));
  for (std::size_t from = 0; from < order.size(); ++from) {
    for (std::size_t to = from; to < order.size(); ++to) {
      for (const double step : {-0.01, 0.01}) {
        std::vector<double> moved = best;
        for (std::size_t i = from; i <= to; ++i) moved[order[i]] += step;
        if (allowed(moved)) {
          ASSERT_GE(Cost(items, moved), Cost(items, best) - 1e-6);
        }
      }
    }
  }
}

TEST(Spread, MovesItemsAsLittleAsPossible) {
  for (std::uint32_t seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    const std::vector<SpreadItem> items = Scattered(seed, 8);
    ExpectLeastMovement(items, Spread(items, 0.7), -1e6, 1e6);
  }
}

TEST(Spread, WithinBoundsMovesItemsAsLittleAsPossible) {
  for (std::uint32_t seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    std::vector<SpreadItem> items = Scattered(seed, 8);
    for (SpreadItem& item : items) item.weight = std::min(item.weight, 4.0);
    ExpectLeastMovement(items, SpreadWithin(items, 0.7, 2, 38), 2, 38);
  }
}

TEST(Spread, WideBoundsChangeNothing) {
  const std::vector<SpreadItem> items = Scattered(7, 9);
  const std::vector<double> free = Spread(items, 0.7);
  const std::vector<double> bounded = SpreadWithin(items, 0.7, -1000, 1000);
  for (std::size_t i = 0; i < items.size(); ++i) EXPECT_NEAR(bounded[i], free[i], 1e-9);
}

}  // namespace
}  // namespace tillwright
