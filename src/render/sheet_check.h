// What every renderer asks of a sheet before it draws it.
#ifndef TILLWRIGHT_RENDER_SHEET_CHECK_H_
#define TILLWRIGHT_RENDER_SHEET_CHECK_H_

#include <string>

#include "tillwright/sheet.h"

namespace tillwright {

// Why the sheet cannot be drawn: no finite positive size (at most 100 m), coordinates that are not
// finite or past 1 km, no font. Empty when all is well.
[[nodiscard]] std::string FaultOf(const Sheet& sheet);

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_SHEET_CHECK_H_
