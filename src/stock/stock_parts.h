// Parts of a cut list as parts of a nesting job, alone or in runs.
#ifndef TILLWRIGHT_STOCK_STOCK_PARTS_H_
#define TILLWRIGHT_STOCK_STOCK_PARTS_H_

#include <string>
#include <vector>

#include "stock/front_runs.h"
#include "tillwright/parts.h"
#include "tillwright/stock.h"

namespace tillwright {

// A run of a bank and what it is to be called: `prefix` names the bank, where there are several.
// REQUIRES: all outlive the call.
struct RunToCut {
  const StockSource& source;
  const std::vector<CutLine>& lines;
  const std::vector<std::size_t>& line_of;  // see LineOfParts
  const FrontRun& run;
  std::string prefix;
};

// Adds to a group whose stock is known.
class StockParts {
 public:
  explicit StockParts(StockGroup& group) : group_(group) {}

  // `count` pieces of a line, cut each for itself.
  void Add(const CutLine& line, std::string label, std::int64_t count);

  // A run, in the longest stretches that a piece of the stock is large enough for.
  void AddRun(const RunToCut& run);

 private:
  std::int32_t KindInRun(const RunToCut& run, const CutLine& line);
  [[nodiscard]] CutLine PieceFor(const RunToCut& run, FrontStretch stretch) const;
  [[nodiscard]] bool Fits(const CutLine& piece) const;
  void AddStretch(const RunToCut& run, FrontStretch stretch);
  [[nodiscard]] Length WidestStock() const;

  StockGroup& group_;
};

// Breaks in two what is more than one front of each run that the plan of a group has no place for;
// whether there was any.
[[nodiscard]] bool BreakUnplacedRuns(StockGroup& group);

// Names the stretches of runs, and with several banks whose each run is.
void NameRuns(StockGroup& group);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_STOCK_PARTS_H_
