#include "draw/sheets/sheets.h"

#include <algorithm>
#include <iterator>

namespace tillwright {
namespace {

constexpr double kPageMargin = 6;  // mm, round a view alone on its page

}  // namespace

std::string CaptionOf(const Views& views) {
  std::string caption;
  for (const View& view : views) caption += (caption.empty() ? "" : ", ") + view.caption;
  return caption;
}

PaperBox Covered(const Views& views) {
  PaperBox box = EmptyBox();
  for (const View& view : views) box = Join(box, view.box);
  return box;
}

PaperBox SpaceOn(Paper paper, Orientation orientation) {
  return DrawingSpace(MakeSheet(paper, orientation, {}, {}));
}

SheetPlan::SheetPlan(Paper paper, Orientation orientation)
    : paper_(paper),
      orientation_(orientation),
      space_(SpaceOn(paper, orientation)),
      packer_(space_, kBetweenViews) {}

bool SheetPlan::Place(Views& views) {
  const PaperBox box = Covered(views);
  const std::optional<PaperPoint> corner = packer_.Place(box.Width(), box.Height());
  if (corner) Add(views, *corner);
  return corner.has_value();
}

bool SheetPlan::PlaceByMoving(Views& views) {
  std::vector<PaperBox> boxes;
  for (const Block& block : blocks_) boxes.push_back(block.box);
  boxes.push_back(Covered(views));
  for (const PackOrder order : kPackOrders) {
    SheetPacker packer(space_, kBetweenViews);
    const auto corners = packer.PlaceAll(boxes, order);
    if (!corners) continue;
    packer_ = packer;
    for (std::size_t i = 0; i < blocks_.size(); ++i) MoveTo(blocks_[i], (*corners)[i]);
    Add(views, corners->back());
    return true;
  }
  return false;
}

void SheetPlan::Add(Views& views, PaperPoint corner) {
  blocks_.push_back({views_.size(), views.size(), Covered(views)});
  if (std::string caption = CaptionOf(views);
      std::ranges::find(captions_, caption) == captions_.end()) {
    captions_.push_back(std::move(caption));
  }
  std::ranges::move(views, std::back_inserter(views_));
  MoveTo(blocks_.back(), corner);
}

void SheetPlan::MoveTo(Block& block, PaperPoint corner) {
  const double dx = corner.x - block.box.left;
  const double dy = corner.y - block.box.top;
  for (std::size_t i = 0; i < block.count; ++i) Shift(views_[block.first + i], dx, dy);
  block.box = {corner.x, corner.y, block.box.right + dx, block.box.bottom + dy};
}

Sheet SheetPlan::Finished(const TitleBlock& block, const std::string& name,
                          const TextMetrics& metrics) const {
  Sheet sheet = MakeSheet(paper_, orientation_, name, block.title + ": " + block.view);
  sheet.description = block.view;
  AddBorderAndTitle(sheet, SizeOf(paper_, orientation_).name, block, metrics);
  const PaperBox covered = Covered(views_);
  const double dx = space_.Center().x - covered.Center().x;
  const double dy = space_.Center().y - covered.Center().y;
  for (View view : views_) {
    Shift(view, dx, dy);
    SheetGroup& group = AddGroup(sheet, view.name, view.title, 0);
    group.desc = view.scale.name.empty() ? std::string() : "Scale " + std::string(view.scale.name);
    for (SheetGroup& part : view.groups) {
      ++part.depth;
      sheet.groups.push_back(std::move(part));
    }
  }
  return sheet;
}

Sheet OwnPage(const View& view, const std::string& title) {
  View moved = view;
  Shift(moved, kPageMargin - view.box.left, kPageMargin - view.box.top);
  Sheet sheet;
  // A whole number of CSS pixels is less than this by up to 0.27 mm.
  sheet.width = view.box.Width() + 2 * kPageMargin;
  sheet.height = view.box.Height() + 2 * kPageMargin;
  sheet.name = view.name;
  sheet.title = title + ": " + view.title;
  sheet.frame = {0, 0, sheet.width, sheet.height};
  sheet.groups = std::move(moved.groups);
  return sheet;
}

}  // namespace tillwright
