// What the title blocks of a bank's sheets say.
#ifndef TILLWRIGHT_DRAW_SHEETS_SHEETS_TITLE_H_
#define TILLWRIGHT_DRAW_SHEETS_SHEETS_TITLE_H_

#include <string>

#include "draw/sheets/sheets.h"
#include "tillwright/bank.h"

namespace tillwright {

// The bank's title, or what stands for it.
[[nodiscard]] std::string TitleOf(const Bank& bank);

// The scales of its views, "as noted" when there are many; empty when none has one.
[[nodiscard]] std::string ScalesOn(const SheetPlan& plan);

// Everything but the date and the number of the sheet.
[[nodiscard]] TitleBlock TitleOf(const Bank& bank, const SheetPlan& plan);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_SHEETS_TITLE_H_
