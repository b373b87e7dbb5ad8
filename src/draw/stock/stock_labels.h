// Labels that find room: inside the box of a part, or along a cut.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_LABELS_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_LABELS_H_

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

inline constexpr double kDisc = 2.5;  // mm, radius of the number of a cut

// The number of a cut in a disc that hides what is below it. Returns the disc's box.
PaperBox AddCutNumber(SheetGroup& out, PaperPoint centre, std::size_t number,
                      const TextMetrics& metrics);

// The first of the texts that fits the box clear of the obstacles, level or turned up, as large and
// as near the middle as may be; none when none does.
[[nodiscard]] std::optional<Label> LabelInBox(std::span<const std::string> texts,
                                              const PaperBox& box,
                                              std::span<const PaperBox> obstacles,
                                              const TextMetrics& metrics);

// A place for a disc on a line, clear of the boxes, nearest to the line's start; with `beyond` also
// just past its end; else beside the line, as near as may be.
struct DiscPlace {
  PaperPoint at;
  PaperPoint foot;  // the point of the line it belongs to
};
[[nodiscard]] DiscPlace ClearPlace(PaperPoint from, PaperPoint to, double radius, bool beyond,
                                   std::span<const PaperBox> boxes);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_LABELS_H_
