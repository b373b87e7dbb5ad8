#include "draw/front/front_labels.h"

#include <algorithm>
#include <array>
#include <optional>

#include "sheet/annotation.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kMargin = 1.0;   // mm, from the front's edge to a label
constexpr double kBetween = 1.2;  // mm, between the pieces of a block
constexpr double kBalloon = 2.8;  // mm, radius

// Things that stand together, drawn with their upper left corner somewhere and then moved.
struct Block {
  SheetGroup group;
  PaperBox box;
};

class FrontLabels {
 public:
  FrontLabels(const Bank& bank, const Space& space, const PaperBox& face,
              std::span<const PaperBox> taken, const ViewOptions& options,
              const TextMetrics& metrics)
      : space_(space),
        face_(Grow(face, -kMargin)),
        taken_(taken.begin(), taken.end()),
        metrics_(metrics),
        id_(ToText(space.id)) {
    const Rect& r = space.front.rect;
    if (!options.all_dimensions) return;
    size_ = FormatLength(r.width, bank.units) + " \u00d7 " + FormatLength(r.height, bank.units);
    path_ = id_ + ".front.width " + id_ + ".front.height";
  }

  int Draw(SheetGroup& out, int from) {
    const int arrangement = AddBlock(out, from);
    if (arrangement == kNoArrangement) return arrangement;
    AddName(out);
    AddGrain(out);
    return arrangement;
  }

 private:
  using Maker = Block (FrontLabels::*)() const;
  static constexpr int kWithSize = 6;  // so many of the arrangements show it

  // The first arrangement that finds a place, the richest first.
  int AddBlock(SheetGroup& out, int from) {
    constexpr std::array<Maker, kNoArrangement> kMakers{
        &FrontLabels::Stacked,   &FrontLabels::StackedSmall, &FrontLabels::Beside,
        &FrontLabels::InOneLine, &FrontLabels::InTwoLines,   &FrontLabels::Upright,
        &FrontLabels::Balloon,   &FrontLabels::Number,       &FrontLabels::NumberUpright};
    if (size_.empty()) from = std::max(from, kWithSize);
    for (int i = from; i < kNoArrangement; ++i) {
      if (TryPlace(out, (this->*kMakers[static_cast<std::size_t>(i)])())) return i;
    }
    return kNoArrangement;
  }

  bool TryPlace(SheetGroup& out, Block block) {
    const std::optional<PaperPoint> center = PlaceFor(block.box.Width(), block.box.Height());
    if (!center) return false;
    const PaperPoint now = block.box.Center();
    Shift(block.group, center->x - now.x, center->y - now.y);
    block_ = Bounds(block.group);
    taken_.push_back(Grow(block_, kBetween));
    std::ranges::move(block.group.primitives, std::back_inserter(out.primitives));
    return true;
  }

  bool IsFree(const PaperBox& box) const {
    return std::ranges::none_of(taken_, [&](const PaperBox& t) { return Overlaps(box, t); });
  }

  // The center of a free place of that size: the middle of the face, else towards its sides.
  std::optional<PaperPoint> PlaceFor(double width, double height) const {
    const double spare_x = (face_.Width() - width) / 2;
    const double spare_y = (face_.Height() - height) / 2;
    if (spare_x < 0 || spare_y < 0) return std::nullopt;
    const PaperPoint middle = face_.Center();
    for (const double up : {0.0, 0.5, -0.5, 1.0, -1.0}) {
      for (const double aside : {0.0, -0.5, 0.5, -1.0, 1.0}) {
        const PaperPoint at{middle.x + aside * spare_x, middle.y - up * spare_y};
        const PaperBox box{at.x - width / 2, at.y - height / 2, at.x + width / 2,
                           at.y + height / 2};
        if (IsFree(box)) return at;
      }
    }
    return std::nullopt;
  }

  Label Text(const std::string& text, double cap, TextWeight weight, TextAnchor anchor,
             PaperPoint at, const std::string& path, TextTurn turn) const {
    const LabelStyle style{.cap_height = cap, .weight = weight, .anchor = anchor, .turn = turn};
    return MakeLabel(metrics_, text, style, at, path);
  }
  Label Size(double cap, TextAnchor anchor, PaperPoint at, TextTurn turn = TextTurn::kLevel) const {
    return Text(size_, cap, TextWeight::kRegular, anchor, at, path_, turn);
  }
  Label Id(double cap, TextAnchor anchor, PaperPoint at, TextTurn turn = TextTurn::kLevel) const {
    return Text(id_, cap, TextWeight::kBold, anchor, at, "", turn);
  }

  static Block Finished(SheetGroup group) {
    Block block{std::move(group), {}};
    block.box = Bounds(block.group);
    return block;
  }

  // The number in a balloon about (0, 0), or bold and bare when it is too long for one. Returns
  // what it covers.
  PaperBox AddNumber(SheetGroup& group, double radius) const {
    constexpr double kForThree = 3.6;  // mm, radius that holds three characters
    const bool long_id = id_.size() > 3 || (id_.size() == 3 && radius < kBalloon);
    if (long_id) {
      const Label id = Id(2.2, TextAnchor::kCenter, {0, 0});
      group.primitives.push_back(id);
      return id.box;
    }
    if (id_.size() == 3) radius = kForThree;
    AddBalloon(group, {0, 0}, radius, id_, metrics_);
    return {-radius, -radius, radius, radius};
  }

  Block Stacked() const {
    SheetGroup group;
    const double below = AddNumber(group, kBalloon).bottom;
    group.primitives.push_back(Size(2.5, TextAnchor::kCenter, {0, below + kBetween + 2.3}));
    return Finished(std::move(group));
  }

  Block StackedSmall() const {
    SheetGroup group;
    const double below = AddNumber(group, 2.4).bottom;
    group.primitives.push_back(Size(2.0, TextAnchor::kCenter, {0, below + kBetween + 1.7}));
    return Finished(std::move(group));
  }

  Block Beside() const {
    SheetGroup group;
    const double beside = AddNumber(group, kBalloon).right;
    group.primitives.push_back(Size(2.5, TextAnchor::kLeft, {beside + kBetween, 0}));
    return Finished(std::move(group));
  }

  Block InOneLine() const {
    SheetGroup group;
    const Label id = Id(2.0, TextAnchor::kLeft, {0, 0});
    group.primitives.push_back(Size(1.8, TextAnchor::kLeft, {id.box.right + 1.4, 0}));
    group.primitives.push_back(id);
    return Finished(std::move(group));
  }

  Block InTwoLines() const {
    SheetGroup group;
    group.primitives.push_back(Id(2.0, TextAnchor::kCenter, {0, 0}));
    group.primitives.push_back(Size(1.8, TextAnchor::kCenter, {0, 3.8}));
    return Finished(std::move(group));
  }

  Block Upright() const {
    SheetGroup group;
    const Label id = Id(2.0, TextAnchor::kLeft, {0, 0}, TextTurn::kUpward);
    group.primitives.push_back(
        Size(1.8, TextAnchor::kLeft, {0, id.box.top - 1.4}, TextTurn::kUpward));
    group.primitives.push_back(id);
    return Finished(std::move(group));
  }

  Block Balloon() const {
    SheetGroup group;
    AddNumber(group, kBalloon);
    return Finished(std::move(group));
  }

  Block Number() const {
    SheetGroup group;
    group.primitives.push_back(Id(1.8, TextAnchor::kCenter, {0, 0}));
    return Finished(std::move(group));
  }

  Block NumberUpright() const {
    SheetGroup group;
    group.primitives.push_back(Id(1.8, TextAnchor::kCenter, {0, 0}, TextTurn::kUpward));
    return Finished(std::move(group));
  }

  // The name below the block, or else across the front at its lower or upper edge, where there is
  // room; long ones are shortened.
  void AddName(SheetGroup& out) {
    if (space_.name.empty() || face_.Width() < 12) return;
    const LabelStyle style{.cap_height = 1.8,
                           .anchor = TextAnchor::kCenter,
                           .max_width = std::min(face_.Width() - 1, 90.0)};
    const PaperPoint middle = face_.Center();
    for (const PaperPoint at :
         {PaperPoint{block_.Center().x, block_.bottom + 1.6 + 1.8},
          PaperPoint{middle.x, face_.bottom - 2}, PaperPoint{middle.x, face_.top + 2}}) {
      Label name = MakePlainLabel(metrics_, space_.name, style, at);
      const bool inside = name.box.left >= face_.left && name.box.right <= face_.right &&
                          name.box.top >= face_.top && name.box.bottom <= face_.bottom;
      if (!inside || !IsFree(Grow(name.box, 0.2))) continue;
      taken_.push_back(Grow(name.box, kBetween));
      out.primitives.push_back(std::move(name));
      return;
    }
  }

  void AddGrain(SheetGroup& out) const {
    if (space_.front.grain == Grain::kNone) return;
    const bool level = space_.front.grain == Grain::kHorizontal;
    for (const double length : {9.0, 6.0}) {
      const double half_x = level ? length / 2 : 0.6;
      const double half_y = level ? 0.6 : length / 2;
      if (face_.Width() < 2 * half_x + 4 || face_.Height() < 2 * half_y) continue;
      for (const double side : {1.0, -1.0}) {
        const PaperPoint at{side > 0 ? face_.right - 2 - half_x : face_.left + 2 + half_x,
                            face_.Center().y};
        if (!IsFree({at.x - half_x, at.y - half_y, at.x + half_x, at.y + half_y})) continue;
        AddGrainArrow(out, at, length, level ? PaperAxis::kHorizontal : PaperAxis::kVertical);
        return;
      }
    }
  }

  const Space& space_;
  PaperBox face_;
  std::vector<PaperBox> taken_;
  const TextMetrics& metrics_;
  std::string id_;
  std::string size_;  // empty: not shown
  std::string path_;
  PaperBox block_;
};

}  // namespace

int AddFrontLabels(SheetGroup& out, const Bank& bank, const Space& space, const PaperBox& face,
                   std::span<const PaperBox> taken, const ViewOptions& options, int from,
                   const TextMetrics& metrics) {
  return FrontLabels(bank, space, face, taken, options, metrics).Draw(out, from);
}

}  // namespace tillwright
