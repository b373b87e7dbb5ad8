// The chance that every gap keeps its limits, each contributor normal with a standard deviation of a
// third of its tolerance.
#ifndef TILLWRIGHT_CHECK_CHANCE_H_
#define TILLWRIGHT_CHECK_CHANCE_H_

#include "tillwright/gap_check.h"

namespace tillwright {

struct Chance {
  double value = 1;
  double error = 0;  // standard error; zero: exact
  int samples = 0;   // zero: exact
};

// Exact where gaps share no contributor: the product of one normal integral a gap. Gaps that do share
// one (the fronts on both sides, the opening they end at) are thrown together, with a fixed seed.
[[nodiscard]] Chance ChanceOfAll(const GapCheck& check);

// The chance that a normal value stays within [low, high]; with no spread whether the mean does.
[[nodiscard]] double ChanceWithin(double mean, double sigma, double low, double high);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_CHANCE_H_
