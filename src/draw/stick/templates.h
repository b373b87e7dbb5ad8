// Templates at full scale: holes of pulls in a front, screws of slides in the case's side, the
// groove at a box's lower edge.
//
// Each is an outline to cut out or lay on, whose edges stand for the edges of the piece; what is
// alike for several drawers is drawn once. On the same terms as strips: true distances, the same
// pages with their bars.
#ifndef TILLWRIGHT_DRAW_STICK_TEMPLATES_H_
#define TILLWRIGHT_DRAW_STICK_TEMPLATES_H_

#include <vector>

#include "draw/stick/strip.h"

namespace tillwright {

struct Template {
  SheetGroup group;  // with its upper left corner at (0, 0)
  double width = 0;  // mm
  double height = 0;
};

// All that the bank has use for, each within the room.
[[nodiscard]] std::vector<Template> TemplatesOf(const Bank& bank, const StripStyle& style,
                                                const ScrewRow& screws, const PieceRoom& room,
                                                const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_TEMPLATES_H_
