// The largest scale at which views fit a sheet.
#ifndef TILLWRIGHT_DRAW_SHEETS_SHEETS_FIT_H_
#define TILLWRIGHT_DRAW_SHEETS_SHEETS_FIT_H_

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

#include "draw/sheets/sheets.h"
#include "sheet/title_block.h"
#include "sheet/view.h"

namespace tillwright {

struct Fitted {
  Views views;
  Orientation orientation = Orientation::kLandscape;
};

// What the piece itself measures, as soon as it was drawn once: tells which scales are not worth
// drawing it at.
class PieceSize {
 public:
  [[nodiscard]] bool MayFit(const Scale& scale, std::span<const Room> rooms) const {
    return std::ranges::any_of(rooms, [&](const Room& room) {
      return width_ * scale.paper_per_mm <= room.width &&
             height_ * scale.paper_per_mm <= room.height;
    });
  }
  void Learn(const Views& views, const Scale& scale) {
    PaperBox outline = EmptyBox();
    for (const View& view : views) outline = Join(outline, view.outline);
    width_ = outline.Width() / scale.paper_per_mm;
    height_ = outline.Height() / scale.paper_per_mm;
  }

 private:
  double width_ = 0;  // mm
  double height_ = 0;
};

// The views in the first room that holds them, or nothing.
[[nodiscard]] inline std::optional<Fitted> FitInto(std::span<const Room> rooms, Views views) {
  const PaperBox box = Covered(views);
  for (const Room& room : rooms) {
    if (box.Width() > room.width || box.Height() > room.height) continue;
    return Fitted{std::move(views), room.orientation};
  }
  return std::nullopt;
}

// Builds views with `make(scale)` from the largest scale down until they fit one of the rooms.
template <class Make>
std::optional<Fitted> LargestFitting(std::span<const Scale> scales, std::span<const Room> rooms,
                                     Make make) {
  PieceSize size;
  for (const Scale& scale : scales) {
    if (!size.MayFit(scale, rooms)) continue;
    Views views = make(scale);
    size.Learn(views, scale);
    if (auto fitted = FitInto(rooms, std::move(views))) return fitted;
  }
  return std::nullopt;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_SHEETS_FIT_H_
