// Sheets: puts views on paper, several to a sheet, each at the largest scale there is room for.
#ifndef TILLWRIGHT_DRAW_SHEETS_SHEETS_H_
#define TILLWRIGHT_DRAW_SHEETS_SHEETS_H_

#include <optional>
#include <string>
#include <vector>

#include "sheet/sheet_packer.h"
#include "sheet/title_block.h"
#include "sheet/view.h"
#include "tillwright/draw.h"

namespace tillwright {

inline constexpr double kBetweenViews = 8;  // mm

using Views = std::vector<View>;

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
  // What stands together on it, each named once, in their order: "elevation, section A–A".
  [[nodiscard]] const std::vector<std::string>& captions() const { return captions_; }
  [[nodiscard]] const Views& views() const { return views_; }

  // Places views that keep their places to each other; false when there is no room.
  bool Place(Views& views);
  // The same, moving what is there already if that makes room.
  bool PlaceByMoving(Views& views);

  // Border, title block and views, the views in the middle of the space.
  [[nodiscard]] Sheet Finished(const TitleBlock& block, const std::string& name,
                               const TextMetrics& metrics) const;

 private:
  // Views that keep their places to each other: `count` of views_ from `first` on.
  struct Block {
    std::size_t first = 0;
    std::size_t count = 0;
    PaperBox box;
  };

  void Add(Views& views, PaperPoint corner);
  void MoveTo(Block& block, PaperPoint corner);

  Paper paper_;
  Orientation orientation_;
  PaperBox space_;
  SheetPacker packer_;
  Views views_;
  std::vector<Block> blocks_;
  std::vector<std::string> captions_;
};

// The space for views on such a sheet.
[[nodiscard]] PaperBox SpaceOn(Paper paper, Orientation orientation);

// What the title block calls views that stand together.
[[nodiscard]] std::string CaptionOf(const Views& views);

[[nodiscard]] PaperBox Covered(const Views& views);

// The view alone on paper of its own size.
[[nodiscard]] Sheet OwnPage(const View& view, const std::string& title);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_SHEETS_H_
