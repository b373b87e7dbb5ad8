// From the lengths of a job to small integers, and from a packing back to lengths.
#ifndef TILLWRIGHT_NEST_UNITS_H_
#define TILLWRIGHT_NEST_UNITS_H_

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

#include "nest/packing.h"
#include "nest/problem.h"
#include "tillwright/nest.h"

namespace tillwright::nest {

// A job in integers. Parts that are alike have become one; parts that fit no sheet are left out.
struct Integers {
  Problem problem;
  Problem smaller;  // the same with sizes rounded in the other direction, for bounds
  Length unit;
  bool priced = false;      // costs are prices, else areas
  std::int64_t common = 1;  // of the stock's costs: taken out of them
  std::vector<std::vector<std::int32_t>> sources;  // of each part of the problem: parts of the job
  std::vector<std::int32_t> stock;                 // of each stock of the problem: in the job
};

[[nodiscard]] Integers ToIntegers(const NestJob& job);

// The least price of what costs no less than this, in the smallest coin; none without prices.
[[nodiscard]] std::optional<std::int64_t> PriceOf(const Integers& integers, std::int64_t cost);

[[nodiscard]] NestPlan ToPlan(const NestJob& job, const Integers& integers, const Packing& packing);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_UNITS_H_
