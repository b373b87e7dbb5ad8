#include "tillwright/nest.h"

#include <algorithm>

#include "nest/bounds.h"
#include "nest/greedy.h"
#include "nest/search.h"
#include "nest/units.h"

namespace tillwright {

using nest::Integers;
using nest::Packing;

NestPlan Nest(const NestJob& job) {
  const Integers integers = nest::ToIntegers(job);
  const nest::Bounds bounds = nest::BoundsOf(integers.smaller);
  Packing packing = nest::GreedyPacking(integers.problem, bounds.cost);
  if (packing.MissingArea(integers.problem) == 0) {
    packing = nest::Search(integers.problem, std::move(packing), {bounds.cost, job.work});
  }
  NestPlan plan = nest::ToPlan(job, integers, packing);
  plan.bound = bounds.sheets;
  plan.proven = std::ranges::all_of(plan.missing, [](std::int64_t n) { return n == 0; }) &&
                packing.Cost(integers.problem) <= bounds.cost;
  return plan;
}

std::string NestWords(const NestPlan& plan) {
  const std::size_t n = plan.layouts.size();
  const std::string sheets = std::to_string(n) + (n == 1 ? " sheet" : " sheets");
  if (plan.proven) return sheets + "; no layout cut edge to edge can do with fewer (proved)";
  return sheets + "; may be improvable, bound " + std::to_string(plan.bound);
}

}  // namespace tillwright
