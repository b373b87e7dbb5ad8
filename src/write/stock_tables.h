// What to buy to cut a job from, for a page of text or of HTML alike.
#ifndef TILLWRIGHT_WRITE_STOCK_TABLES_H_
#define TILLWRIGHT_WRITE_STOCK_TABLES_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/stock.h"
#include "write/text_table.h"

namespace tillwright {

// "3/4 in, black cherry"
[[nodiscard]] std::string StockName(const StockPlan& plan, const StockGroup& group);
// "sheet" or "board"
[[nodiscard]] std::string_view StockNoun(const StockGroup& group);

// Every kind of sheet and board that the layouts take: how many, of what size, the price where it
// is given, what is on hand.
[[nodiscard]] TextTable StockTable(const StockPlan& plan);

// What they come to: the price when every one has one, the measure of the boards.
[[nodiscard]] std::vector<std::string> StockTotals(const StockPlan& plan);

// For each group: whether it can be done with fewer, and what found no place.
[[nodiscard]] std::vector<std::string> StockProofs(const StockPlan& plan);

// "No place for 2 of front D1, sawn 30 x 5."
[[nodiscard]] std::vector<std::string> StockMissing(const StockPlan& plan, const StockGroup& group);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_STOCK_TABLES_H_
