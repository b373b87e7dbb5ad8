#include "nest/cover_lp.h"

#include <algorithm>
#include <utility>

namespace tillwright::nest {

CoverLp::CoverLp(std::vector<double> demands, const std::vector<Pattern>& first,
                 const std::vector<double>& costs)
    : size_(demands.size()), costs_(costs), values_(std::move(demands)), inverse_(size_ * size_) {
  for (std::size_t i = 0; i < size_; ++i) {
    const std::int32_t count = first[i].counts[i];
    values_[i] /= count;
    Row(i)[i] = 1.0 / count;
    basis_.push_back({first[i].stock, std::vector<std::int32_t>(size_)});
    basis_.back().counts[i] = count;
  }
  FindDuals();
}

void CoverLp::FindDuals() {
  duals_.assign(size_, 0);
  for (std::size_t r = 0; r < size_; ++r) {
    const double cost = costs_[r];
    if (cost <= 0) continue;
    const double* const row = Row(r);
    for (std::size_t i = 0; i < size_; ++i) duals_[i] += cost * row[i];
  }
}

double CoverLp::objective() const {
  double sum = 0;
  for (std::size_t r = 0; r < size_; ++r) sum += costs_[r] * values_[r];
  return sum;
}

bool CoverLp::Enter(const Pattern& pattern, double cost) {
  double worth = 0;
  std::vector<std::size_t> parts;
  for (std::size_t i = 0; i < size_; ++i) {
    if (pattern.counts[i] == 0) continue;
    parts.push_back(i);
    worth += duals_[i] * pattern.counts[i];
  }
  if (worth <= cost * (1 + kTiny)) return false;
  std::vector<double> column(size_);
  for (std::size_t r = 0; r < size_; ++r) {
    const double* const row = Row(r);
    for (const std::size_t i : parts) column[r] += row[i] * pattern.counts[i];
  }
  return Pivot(column, pattern, cost, cost - worth);
}

bool CoverLp::EnterSlack() {
  const auto least = std::ranges::min_element(duals_);
  if (least == duals_.end() || *least >= -kTiny) return false;
  const auto i = static_cast<std::size_t>(least - duals_.begin());
  std::vector<double> column(size_);
  for (std::size_t r = 0; r < size_; ++r) column[r] = -Row(r)[i];
  return Pivot(column, {-1, std::vector<std::int32_t>(size_)}, 0, duals_[i]);
}

// The pattern whose value falls to zero first leaves; of several, the one with the largest pivot.
// `gain`: what the pattern costs less what the duals say it is worth.
bool CoverLp::Pivot(const std::vector<double>& column, const Pattern& pattern, double cost,
                    double gain) {
  std::size_t out = size_;
  double least = 0;
  for (std::size_t r = 0; r < size_; ++r) {
    if (column[r] <= 1e-7) continue;
    const double ratio = values_[r] / column[r];
    if (out == size_ || ratio < least - kTiny ||
        (ratio <= least + kTiny && column[r] > column[out])) {
      out = r;
      least = ratio;
    }
  }
  if (out == size_) return false;
  double* const pivot = Row(out);
  for (std::size_t i = 0; i < size_; ++i) pivot[i] /= column[out];
  for (std::size_t r = 0; r < size_; ++r) {
    if (r == out) continue;
    const double factor = column[r];
    values_[r] = std::max(0.0, values_[r] - factor * least);
    if (factor < kTiny && factor > -kTiny) continue;
    double* const row = Row(r);
    for (std::size_t i = 0; i < size_; ++i) row[i] -= factor * pivot[i];
  }
  values_[out] = least;
  basis_[out] = pattern;
  costs_[out] = cost;
  if (++pivots_ % kFreshDuals == 0) {
    FindDuals();
  } else {
    for (std::size_t i = 0; i < size_; ++i) duals_[i] += gain * pivot[i];
  }
  return true;
}

}  // namespace tillwright::nest
