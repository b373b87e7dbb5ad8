// The largest scale at which views fit a sheet.
#ifndef TILLWRIGHT_DRAW_SHEETS_FIT_H_
#define TILLWRIGHT_DRAW_SHEETS_FIT_H_

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

#include "draw/title_block.h"
#include "draw/view.h"

namespace tillwright {

using Views = std::vector<View>;

// Where views might go.
struct Room {
  Orientation orientation = Orientation::kLandscape;
  double width = 0;  // mm
  double height = 0;
};

struct Fitted {
  Views views;
  Orientation orientation = Orientation::kLandscape;
};

[[nodiscard]] inline PaperBox Covered(const Views& views) {
  PaperBox box = EmptyBox();
  for (const View& view : views) box = Join(box, view.box);
  return box;
}

// Builds views with `make(scale)` from the largest scale down until they fit one of the rooms, the
// first that does. What the piece itself measures at one scale tells which others are not worth
// building.
template <class Make>
std::optional<Fitted> LargestFitting(std::span<const Scale> scales, std::span<const Room> rooms,
                                     Make make) {
  double width = 0;  // of the outlines, mm on paper at full size
  double height = 0;
  for (const Scale& scale : scales) {
    const auto may_fit = [&](const Room& room) {
      return width * scale.paper_per_mm <= room.width && height * scale.paper_per_mm <= room.height;
    };
    if (std::ranges::none_of(rooms, may_fit)) continue;
    Views views = make(scale);
    const PaperBox box = Covered(views);
    for (const Room& room : rooms) {
      if (box.Width() > room.width || box.Height() > room.height) continue;
      return Fitted{std::move(views), room.orientation};
    }
    PaperBox outline = EmptyBox();
    for (const View& view : views) outline = Join(outline, view.outline);
    width = outline.Width() / scale.paper_per_mm;
    height = outline.Height() / scale.paper_per_mm;
  }
  return std::nullopt;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_FIT_H_
