// Marks of details on the views that they enlarge.
#ifndef TILLWRIGHT_DRAW_SHEETS_SHEETS_MARKS_H_
#define TILLWRIGHT_DRAW_SHEETS_SHEETS_MARKS_H_

#include <vector>

#include "sheet/view.h"

namespace tillwright {

// Draws circle and balloon of a detail on the view, clear of every text, of other marks and as far
// as can be of lines. False, and nothing drawn, where there is no such place.
bool AddMark(View& view, const DetailMark& mark, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_SHEETS_MARKS_H_
