// The cut list and the hardware as tables, before they are dressed for a terminal or a page.
#ifndef TILLWRIGHT_WRITE_PARTS_TABLES_H_
#define TILLWRIGHT_WRITE_PARTS_TABLES_H_

#include <string>
#include <vector>

#include "tillwright/parts.h"
#include "write/cut_notes.h"
#include "write/text_table.h"

namespace tillwright {

// The parts of one material and thickness.
struct CutTable {
  std::string heading;  // "3/4 in, black cherry"
  TextTable table;
};

// Cuts have letters, told in `notes`; rough sizes stand only where they differ from the finished;
// hands: how many pieces are as drawn (left) and how many the mirror image (right).
[[nodiscard]] std::vector<CutTable> CutTables(const Bank& bank, const std::vector<CutLine>& lines,
                                              CutNotes& notes);
// The runs of fronts that are matched, and what is to be said of them.
[[nodiscard]] TextTable RunTable(const Bank& bank, const std::vector<FrontRun>& runs);
[[nodiscard]] std::vector<std::string> RunNotes(const Bank& bank,
                                                const std::vector<FrontRun>& runs);
[[nodiscard]] TextTable HardwareTable(const Bank& bank, const std::vector<HardwareLine>& lines);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_PARTS_TABLES_H_
