// A sheet that uses every part of the drawing toolkit: a small cabinet for a bookbinding studio.
#ifndef TILLWRIGHT_TESTS_RENDER_DEMO_SHEET_H_
#define TILLWRIGHT_TESTS_RENDER_DEMO_SHEET_H_

#include "sheet/title_block.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

[[nodiscard]] Sheet DemoSheet(Paper paper, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_TESTS_RENDER_DEMO_SHEET_H_
