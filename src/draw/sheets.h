// Sheets: puts views on paper, several to a sheet, each at the largest scale there is room for.
#ifndef TILLWRIGHT_DRAW_SHEETS_H_
#define TILLWRIGHT_DRAW_SHEETS_H_

#include <optional>
#include <string>
#include <vector>

#include "draw/sheets_pack.h"
#include "draw/title_block.h"
#include "draw/view.h"
#include "tillwright/draw.h"

namespace tillwright {

inline constexpr double kBetweenViews = 8;  // mm

// Where views might go.
struct Room {
  Orientation orientation = Orientation::kLandscape;
  double width = 0;  // mm
  double height = 0;
};

using Rooms = std::vector<Room>;

// One sheet in the making: views with their places on paper.
class SheetPlan {
 public:
  SheetPlan(Paper paper, Orientation orientation);

  [[nodiscard]] Orientation orientation() const { return orientation_; }
  [[nodiscard]] bool empty() const { return views_.empty(); }
  // What the views on it are, each named once, in their order.
  [[nodiscard]] const std::vector<std::string>& kinds() const { return kinds_; }
  [[nodiscard]] const std::vector<View>& views() const { return views_; }

  // Where more views might go; these rooms overlap.
  [[nodiscard]] Rooms FreeRooms() const;

  // Places views that keep their places to each other; false when there is no room.
  bool Place(std::vector<View>& views, const std::string& kind);

  // Border, title block and views, the views in the middle of the space.
  [[nodiscard]] Sheet Finished(const TitleBlock& block, const std::string& name,
                               const TextMetrics& metrics) const;

 private:
  Paper paper_;
  Orientation orientation_;
  PaperBox space_;
  SheetPacker packer_;
  std::vector<View> views_;
  std::vector<std::string> kinds_;
};

// The space for views on such a sheet.
[[nodiscard]] PaperBox SpaceOn(Paper paper, Orientation orientation);

// The view alone on paper of its own size.
[[nodiscard]] Sheet OwnPage(const View& view, const std::string& title);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_H_
