// A small linear program: cover every demand with patterns at least cost.
//
//   minimise  sum of cost[j] * x[j]   subject to   sum of count[i][j] * x[j] >= demand[i],  x >= 0
//
// Solved by the revised simplex method with the inverse of the basis at hand; the patterns come one
// at a time from whoever prices them. Floating point throughout: its values guide, they prove
// nothing. What is proven is reckoned anew in integers from the rounded duals (columns.cpp).
#ifndef TILLWRIGHT_NEST_COVER_LP_H_
#define TILLWRIGHT_NEST_COVER_LP_H_

#include <cstdint>
#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

class CoverLp {
 public:
  // One pattern for each demand to begin with: pattern i covers demand i. Its other counts are
  // ignored.
  CoverLp(std::vector<double> demands, const std::vector<Pattern>& first,
          const std::vector<double>& costs);

  // What one more of each demand would cost. Never negative once Enter has been called until it
  // returns false for what it was given.
  [[nodiscard]] const std::vector<double>& duals() const { return duals_; }
  [[nodiscard]] double objective() const;

  // Brings a pattern into the basis; false when that would not lessen the cost.
  bool Enter(const Pattern& pattern, double cost);

  // Brings in the slack of a demand whose dual is negative; false when there is none.
  bool EnterSlack();

  // Calls use(pattern, how many) for every pattern in use.
  template <class F>
  void ForUsed(F use) const {
    for (std::size_t r = 0; r < basis_.size(); ++r) {
      if (basis_[r].stock >= 0 && values_[r] > kTiny) use(basis_[r], values_[r]);
    }
  }

 private:
  static constexpr double kTiny = 1e-9;

  static constexpr int kFreshDuals = 32;  // pivots after which the duals are reckoned anew

  bool Pivot(const std::vector<double>& column, const Pattern& pattern, double cost, double gain);
  void FindDuals();
  [[nodiscard]] double* Row(std::size_t r) { return inverse_.data() + r * size_; }

  std::size_t size_;
  std::vector<Pattern> basis_;  // stock -1: the slack of some demand
  std::vector<double> costs_;
  std::vector<double> values_;
  std::vector<double> inverse_;  // of the basis, row by row
  std::vector<double> duals_;
  int pivots_ = 0;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_COVER_LP_H_
