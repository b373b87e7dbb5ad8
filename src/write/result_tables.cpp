#include "tillwright/write.h"
#include "write/bank_tables.h"
#include "write/page_text.h"
#include "write/parts_table.h"

namespace tillwright {

std::string ResultTables(const Bank& bank, const std::vector<Finding>& findings, TextStyle style) {
  PageText page(style);
  page.Head(bank);
  for (const BankTable& section : BankTables(bank)) {
    page.Heading(section.heading, section.remark);
    page.Put(section.table.ToText());
  }
  if (const std::string parts = PartsTable(bank); !parts.empty()) {
    page.Heading("Parts", "finished sizes, length along the grain");
    page.Put(parts);
  }
  page.Checks(findings);
  page.Cautions();
  return page.Take();
}

}  // namespace tillwright
