// Layouts that are alike: cut once more rather than drawn and listed again.
#ifndef TILLWRIGHT_STOCK_LAYOUT_RUNS_H_
#define TILLWRIGHT_STOCK_LAYOUT_RUNS_H_

#include <cstddef>
#include <string>
#include <vector>

#include "tillwright/stock.h"

namespace tillwright {

// Indices into NestPlan::layouts, ascending.
using LayoutRun = std::vector<std::size_t>;

// Every layout once, those that are alike together, in the order of their first.
[[nodiscard]] std::vector<LayoutRun> LayoutRuns(const StockGroup& group);

// "1", "1, 2", "2–4, 6": counted from 1.
[[nodiscard]] std::string RunNumbers(const LayoutRun& run);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_LAYOUT_RUNS_H_
