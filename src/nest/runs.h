// Runs of parts: laid out as one part each, then taken apart in their order.
#ifndef TILLWRIGHT_NEST_RUNS_H_
#define TILLWRIGHT_NEST_RUNS_H_

#include "tillwright/nest.h"

namespace tillwright::nest {

// The job with a part for every run, after its own, and the parts that stand in runs taken out of
// the counts of their kinds.
[[nodiscard]] NestJob WithRunsWhole(const NestJob& job);

// The plan of that job as a plan of the job itself.
[[nodiscard]] NestPlan WithRunsCut(const NestJob& job, NestPlan plan);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_RUNS_H_
