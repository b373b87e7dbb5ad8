// One thread's search: see search.h.
#ifndef TILLWRIGHT_NEST_SEARCHER_H_
#define TILLWRIGHT_NEST_SEARCHER_H_

#include <cstdint>
#include <vector>

#include "nest/packing.h"
#include "nest/random.h"
#include "nest/refill.h"
#include "nest/workbench.h"

namespace tillwright::nest {

class Searcher {
 public:
  // `history`: how many steps back a packing is held against (late acceptance: Burke & Bykov 2017).
  // Short ones find soon, long ones find more.
  Searcher(const Problem& problem, std::uint64_t seed, std::size_t history);
  Searcher(const Searcher&) = delete;
  Searcher& operator=(const Searcher&) = delete;

  // Starts from a packing.
  void Start(const Packing& packing);

  // Lowers the goal: to cost less than `goal`. Sheets are emptied until that holds, and what was in
  // them is missing.
  void Aim(std::int64_t goal);

  // Searches until `work` units are spent or `bound` is reached, aiming lower each time the goal is
  // met.
  void Run(std::int64_t work, std::int64_t bound);

  // From a whole packing: looks for one that costs no more and leaves more in large pieces.
  void Tidy(std::int64_t work);

  // The cheapest whole packing so far, and what it costs.
  [[nodiscard]] const Packing& best() const { return best_; }
  [[nodiscard]] std::int64_t best_cost() const { return best_cost_; }
  [[nodiscard]] std::int64_t goal() const { return goal_; }

 private:
  struct Cost {
    std::int64_t missing = 0;  // area
    double worth = 0;          // of the leftovers

    [[nodiscard]] bool NoWorseThan(const Cost& other) const {
      return missing != other.missing ? missing < other.missing : worth >= other.worth;
    }
  };

  void Keep();
  void RuinAndRecreate();
  bool Accept();
  [[nodiscard]] Cost Now() const;

  Random random_;
  Workbench bench_;
  Refill refill_;
  std::int64_t goal_ = 0;
  Packing best_;
  std::int64_t best_cost_ = 0;

  std::vector<Cost> history_;
  std::size_t turn_ = 0;
  Cost current_;
  std::uint32_t mean_removed_ = 8;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_SEARCHER_H_
