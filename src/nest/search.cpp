#include "nest/search.h"

#include <algorithm>
#include <array>
#include <thread>
#include <utility>

#include "nest/searcher.h"

namespace tillwright::nest {
namespace {

constexpr std::size_t kSearchers = 2;
constexpr std::int64_t kFirstRound = 20'000;  // work of one searcher; not worth a thread yet
constexpr std::int64_t kLongestRound = 4'000'000;
constexpr std::size_t kShortHistory = 30;
constexpr std::size_t kLongHistory = 300;

using Searchers = std::array<Searcher, kSearchers>;

// One round of all searchers, each by itself: what comes out does not depend on who is quicker.
void RunRound(Searchers& searchers, std::int64_t work, std::int64_t bound) {
  if (work <= kFirstRound) {
    for (Searcher& searcher : searchers) searcher.Run(work, bound);
    return;
  }
  std::thread other([&] { searchers[1].Run(work, bound); });
  searchers[0].Run(work, bound);
  other.join();
}

}  // namespace

Packing Search(const Problem& problem, Packing start, const SearchLimits& limits) {
  std::int64_t cost = start.Cost(problem);
  if (cost <= limits.bound) return start;
  Searchers searchers{Searcher(problem, 1, kShortHistory), Searcher(problem, 2, kLongHistory)};
  for (Searcher& searcher : searchers) {
    searcher.Start(start);
    searcher.Aim(cost);
  }
  std::int64_t round = kFirstRound;
  for (std::int64_t left = limits.work; left > 0 && cost > limits.bound;) {
    RunRound(searchers, round, limits.bound);
    left -= round * static_cast<std::int64_t>(kSearchers);
    round = std::min(2 * round, kLongestRound);
    // They share the goal, nothing else: the cheapest packing so far, the first among equals.
    for (Searcher& searcher : searchers) {
      if (searcher.best_cost() >= cost) continue;
      cost = searcher.best_cost();
      start = searcher.best();
    }
    for (Searcher& searcher : searchers) {
      if (searcher.goal() > cost) searcher.Aim(cost);
    }
  }
  return start;
}

Packing Tidied(const Problem& problem, Packing packing, std::int64_t work) {
  Searcher searcher(problem, 3, kShortHistory);
  searcher.Start(packing);
  searcher.Tidy(work);
  return searcher.best();
}

}  // namespace tillwright::nest
