// What a solved bank holds as tables, before they are dressed for a terminal or a page.
#ifndef TILLWRIGHT_WRITE_BANK_TABLES_H_
#define TILLWRIGHT_WRITE_BANK_TABLES_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "write/text_table.h"

namespace tillwright {

struct BankTable {
  std::string heading;
  std::string_view remark;  // about all of the table; may be empty
  TextTable table;
};

// Fronts, pull holes, gaps, overlays, boxes, slide lines, members and open spaces, in that order,
// those that the bank has.
[[nodiscard]] std::vector<BankTable> BankTables(const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_BANK_TABLES_H_
