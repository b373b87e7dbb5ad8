// The parts of a bank as a table for the shop: alike ones once, their cuts in notes below.
#ifndef TILLWRIGHT_WRITE_PARTS_TABLE_H_
#define TILLWRIGHT_WRITE_PARTS_TABLE_H_

#include <string>

#include "tillwright/bank.h"

namespace tillwright {

// Every part but the fronts, and the notes; empty when there are none.
[[nodiscard]] std::string PartsTable(const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_PARTS_TABLE_H_
