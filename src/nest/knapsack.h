// The best way to fill one board: each part at most as often as it is wanted.
#ifndef TILLWRIGHT_NEST_KNAPSACK_H_
#define TILLWRIGHT_NEST_KNAPSACK_H_

#include <cstdint>
#include <vector>

#include "nest/problem.h"

namespace tillwright::nest {

// Whether parts can only lie one after another: a problem of boards.
[[nodiscard]] bool IsOneDimensional(const Problem& problem);

class Knapsack {
 public:
  // REQUIRES: IsOneDimensional(problem).
  explicit Knapsack(const Problem& problem);

  [[nodiscard]] std::int64_t Steps() const { return steps_; }

  // REQUIRES: values and limits of zero or more, one for each part; a board full of them within 32
  // bits.
  void Solve(const std::vector<std::int32_t>& values, const std::vector<std::int32_t>& limits);

  [[nodiscard]] std::int32_t Value(const Stock& sheet) const;
  [[nodiscard]] std::vector<std::int32_t> Counts(const Stock& sheet) const;

 private:
  // A part as many times over as a power of two, so that few of them make any count.
  struct Bundle {
    std::int32_t part = 0;
    std::int32_t count = 1;
  };

  void Offer(std::size_t bundle);
  [[nodiscard]] std::size_t At(std::int32_t width) const;
  [[nodiscard]] std::int32_t Best(std::size_t bundles, std::size_t at) const {
    return best_[bundles * points_.size() + at];
  }

  const Problem& problem_;
  std::vector<std::int32_t> points_;
  bool dense_ = false;  // the points are all whole numbers
  std::vector<Bundle> bundles_;
  std::vector<std::int32_t> values_;
  std::vector<std::int32_t> best_;  // by bundles, then by points
  std::int64_t steps_ = 0;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_KNAPSACK_H_
