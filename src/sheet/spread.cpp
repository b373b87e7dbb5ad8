#include "sheet/spread.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

namespace tillwright {
namespace {

// Items first .. first + count - 1 that move together. Positions are measured from the first item.
struct Pool {
  std::size_t first = 0;
  std::size_t count = 0;
  double weight = 0;
  double place = 0;   // of the first item: the weighted mean of what its items wish it to be
  double length = 0;  // from the first item's center to the last one's
};

Pool Merge(const Pool& a, const Pool& b, double distance) {
  // b's first item stands at a.place + a.length + distance.
  const double wish = b.place - a.length - distance;
  const double weight = a.weight + b.weight;
  return {a.first, a.count + b.count, weight, (a.place * a.weight + wish * b.weight) / weight,
          a.length + distance + b.length};
}

std::vector<std::size_t> OrderByWish(std::span<const SpreadItem> items) {
  std::vector<std::size_t> order(items.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&items](std::size_t a, std::size_t b) {
    return items[a].wish < items[b].wish;
  });
  return order;
}

}  // namespace

std::vector<double> Spread(std::span<const SpreadItem> items, double clearance) {
  const std::vector<std::size_t> order = OrderByWish(items);
  const auto distance = [&](std::size_t i) {  // between the i-th in order and the one before
    return (items[order[i - 1]].size + items[order[i]].size) / 2 + clearance;
  };
  std::vector<Pool> pools;
  for (std::size_t i = 0; i < order.size(); ++i) {
    pools.push_back({i, 1, items[order[i]].weight, items[order[i]].wish, 0});
    while (pools.size() > 1) {
      const Pool& last = pools.back();
      const Pool& before = pools[pools.size() - 2];
      const double gap = distance(last.first);
      if (last.place - (before.place + before.length) >= gap) break;
      const Pool merged = Merge(before, last, gap);
      pools.pop_back();
      pools.back() = merged;
    }
  }
  std::vector<double> places(items.size());
  for (const Pool& pool : pools) {
    double place = pool.place;
    for (std::size_t i = pool.first; i < pool.first + pool.count; ++i) {
      if (i > pool.first) place += distance(i);
      places[order[i]] = place;
    }
  }
  return places;
}

std::vector<double> SpreadWithin(std::span<const SpreadItem> items, double clearance, double low,
                                 double high) {
  std::vector<double> places = Spread(items, clearance);
  const std::vector<std::size_t> order = OrderByWish(items);
  double least = low;  // where the next item may begin
  for (const std::size_t i : order) {
    places[i] = std::max(places[i], least + items[i].size / 2);
    least = places[i] + items[i].size / 2 + clearance;
  }
  double most = high;  // where the item before may end
  for (auto i = order.rbegin(); i != order.rend(); ++i) {
    places[*i] = std::min(places[*i], most - items[*i].size / 2);
    most = places[*i] - items[*i].size / 2 - clearance;
  }
  return places;
}

}  // namespace tillwright
