#include "nest/knapsack.h"

#include <algorithm>
#include <numeric>

#include "nest/guillotine.h"

namespace tillwright::nest {

bool IsOneDimensional(const Problem& problem) {
  return std::ranges::all_of(problem.parts, [&](const Part& part) {
    return !part.turn && std::ranges::all_of(problem.stock, [&](const Stock& stock) {
      return 2 * std::int64_t{part.height} > stock.height && part.height <= stock.height;
    });
  });
}

Knapsack::Knapsack(const Problem& problem)
    : problem_(problem), points_(RasterPoints(problem, false)) {
  if (points_.back() < 2 * static_cast<std::int32_t>(points_.size())) {
    dense_ = true;
    points_.resize(static_cast<std::size_t>(points_.back()) + 1);
    std::iota(points_.begin(), points_.end(), 0);
  }
  std::int64_t parts = 0;
  for (const Part& part : problem.parts) {
    std::int64_t count = std::min(part.count, points_.back() / part.width);
    for (; count > 0; count /= 2) ++parts;
  }
  steps_ = parts * static_cast<std::int64_t>(points_.size());
}

std::size_t Knapsack::At(std::int32_t width) const {
  return static_cast<std::size_t>(std::ranges::upper_bound(points_, width) - points_.begin()) - 1;
}

void Knapsack::Solve(const std::vector<std::int32_t>& values,
                     const std::vector<std::int32_t>& limits) {
  values_ = values;
  bundles_.clear();
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (values[i] == 0) continue;
    std::int32_t left = std::min(limits[i], points_.back() / problem_.parts[i].width);
    for (std::int32_t count = 1; left > 0; count *= 2) {
      const std::int32_t take = std::min(count, left);
      bundles_.push_back({static_cast<std::int32_t>(i), take});
      left -= take;
    }
  }
  best_.assign((bundles_.size() + 1) * points_.size(), 0);
  for (std::size_t b = 0; b < bundles_.size(); ++b) Offer(b);
}

// Every point with a bundle more, or not.
void Knapsack::Offer(std::size_t bundle) {
  const std::size_t n = points_.size();
  const auto part = static_cast<std::size_t>(bundles_[bundle].part);
  const std::int32_t width = problem_.parts[part].width * bundles_[bundle].count;
  const std::int32_t value = values_[part] * bundles_[bundle].count;
  const std::int32_t* const before = best_.data() + bundle * n;
  std::int32_t* const after = best_.data() + (bundle + 1) * n;
  const auto from =
      static_cast<std::size_t>(std::ranges::lower_bound(points_, width) - points_.begin());
  std::copy_n(before, from, after);
  if (dense_) {
    for (std::size_t at = from; at < n; ++at) {
      after[at] = std::max(before[at], before[at - from] + value);
    }
    return;
  }
  std::size_t rest = 0;
  for (std::size_t at = from; at < n; ++at) {
    while (points_[rest + 1] <= points_[at] - width) ++rest;
    after[at] = std::max(before[at], before[rest] + value);
  }
}

std::int32_t Knapsack::Value(const Stock& sheet) const {
  return Best(bundles_.size(), At(sheet.width));
}

std::vector<std::int32_t> Knapsack::Counts(const Stock& sheet) const {
  std::vector<std::int32_t> counts(problem_.parts.size());
  std::size_t at = At(sheet.width);
  for (std::size_t b = bundles_.size(); b > 0; --b) {
    if (Best(b, at) == Best(b - 1, at)) continue;
    const auto part = static_cast<std::size_t>(bundles_[b - 1].part);
    counts[part] += bundles_[b - 1].count;
    at = At(points_[at] - problem_.parts[part].width * bundles_[b - 1].count);
  }
  return counts;
}

}  // namespace tillwright::nest
