// The table of sizes: what the views have no room for, and every box.
#ifndef TILLWRIGHT_DRAW_SHEETS_SHEETS_TABLE_H_
#define TILLWRIGHT_DRAW_SHEETS_SHEETS_TABLE_H_

#include <string>
#include <vector>

#include "sheet/view.h"
#include "sheet/view_tools.h"
#include "tillwright/bank.h"

namespace tillwright {

class Composer;

// One size and the things that have it.
struct TableRow {
  std::string size;    // "14 1/2 × 5 3/4"
  std::string paths;   // for each thing in turn, the paths of the numbers in `size`
  std::string things;  // "D1–D3, D5"
};
struct TableSection {
  std::string heading;  // "GAPS"
  std::vector<TableRow> rows;
};

// Fronts, gaps and overlaps that `shown` does not hold, boxes, and holes for pulls; sections
// without rows are left out. Equal sizes share a row.
[[nodiscard]] std::vector<TableSection> TableOf(const Bank& bank, const PathSet& shown);

// The table in columns no higher than `height` mm, a view each: "sizes", "sizes-2" and so on.
// REQUIRES: height >= 40.
[[nodiscard]] std::vector<View> TableViews(const std::vector<TableSection>& table, double height,
                                           const TextMetrics& metrics);

// Lays on sheets what elevation and section have not shown.
void PlaceSizes(Composer& composer);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_SHEETS_TABLE_H_
