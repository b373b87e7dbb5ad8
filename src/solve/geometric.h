// The ratio of a geometric graduation whose sizes have a given sum. A double: it decides nothing
// before it is rounded.
#ifndef TILLWRIGHT_SOLVE_GEOMETRIC_H_
#define TILLWRIGHT_SOLVE_GEOMETRIC_H_

#include <cstddef>
#include <optional>

namespace tillwright {

// 1 + r + … + r^(m-1).
inline double GeometricSum(double ratio, std::size_t m) {
  double sum = 0;
  for (std::size_t i = 0; i < m; ++i) sum = sum * ratio + 1;
  return sum;
}

// The root of 1 + r + … + r^(m-1) = target, by halving; nothing when target <= 1 (r would be 0).
inline std::optional<double> RatioFor(double target, std::size_t m) {
  if (!(target > 1)) return std::nullopt;
  double low = 0;
  double high = target;  // the sum is above 1 + r, so r < target
  for (int i = 0; i < 200 && low < high; ++i) {
    const double middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;  // neighbors: as near as a double gets
    (GeometricSum(middle, m) < target ? low : high) = middle;
  }
  return low + (high - low) / 2;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_GEOMETRIC_H_
