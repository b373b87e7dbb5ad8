// The order of work for one bank: what is done when, and what can hurt at each step.
#ifndef TILLWRIGHT_WRITE_WORK_STEPS_H_
#define TILLWRIGHT_WRITE_WORK_STEPS_H_

#include <string>
#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

struct WorkStep {
  std::string title;
  std::vector<std::string> lines;     // what to do
  std::vector<std::string> cautions;  // what to mind while doing it
};

// Only the steps this bank needs: no case, no steps of a case; no solid wood, no moving panels. The
// order and the cautions are common practice, no source.
[[nodiscard]] std::vector<WorkStep> WorkSteps(const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_WORK_STEPS_H_
