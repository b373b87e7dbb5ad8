#include <algorithm>
#include <cmath>
#include <string>

#include "draw/fitting/fitting.h"
#include "sheet/rich_text.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kBalloon = 2.5;  // mm, radius
constexpr double kOutside = 4.5;  // mm, from an outer edge to the center of its balloon

// "1st", "22nd", "113th".
std::string Ordinal(std::size_t n) {
  const bool teen = n % 100 / 10 == 1;
  const std::size_t last = teen ? 0 : n % 10;
  return std::to_string(n) + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
}

class FittingDrawing {
 public:
  FittingDrawing(const Bank& bank, const GapCheck& check, const Scale& scale,
                 const TextMetrics& metrics)
      : bank_(bank), check_(check), metrics_(metrics) {
    view_.name = "fitting";
    view_.title = "FITTING ORDER";
    view_.scale = scale;
    view_.map.scale = scale;
  }

  View Draw() {
    SheetGroup& piece = AddViewGroup(view_, "piece", "Opening and fronts", 0);
    const Rect opening{Length(), Length(), bank_.opening_width, bank_.opening_height};
    piece.primitives.push_back(BoxOutline(Map().Box(opening), Pen::kThin));
    if (bank_.style == FrontStyle::kInset) {
      for (const Divider& member : bank_.dividers) {
        piece.primitives.push_back(BoxOutline(Map().Box(member.rect), Pen::kThin));
      }
    }
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const PaperBox face = Map().Box(space.front.rect);
      piece.primitives.push_back(BoxFill(face, Tone::kPaper));
      piece.primitives.push_back(InsetOutline(face, Pen::kFront));
    }
    view_.outline = Bounds(piece);
    Names();
    Numbers();
    FinishView(view_, view_.outline.left, bank_.units, metrics_);
    return std::move(view_);
  }

 private:
  const PaperMap& Map() const { return view_.map; }

  // Which front it is, and when it is hung, where it has room for that.
  void Names() {
    SheetGroup& group = AddViewGroup(view_, "names", "Fronts and their order", 0);
    const std::vector<int> order = HangingOrder(bank_);
    for (std::size_t i = 0; i < order.size(); ++i) {
      const Space& space = bank_.spaces[static_cast<std::size_t>(order[i])];
      const PaperBox face = Grow(Map().Box(space.front.rect), -1.2);
      const PaperPoint center = Map().Box(space.front.rect).Center();
      const LabelStyle big{
          .cap_height = 2.5, .weight = TextWeight::kBold, .anchor = TextAnchor::kCenter};
      const LabelStyle small{.cap_height = 1.8, .anchor = TextAnchor::kCenter};
      const std::string id = ToText(space.id);
      const std::string step = "fit " + Ordinal(i + 1);
      const Label one = MakePlainLabel(metrics_, id, big, {center.x, center.y - 1.9});
      const Label two = MakePlainLabel(metrics_, step, small, {center.x, center.y + 2});
      if (Holds(face, one.box) && Holds(face, two.box)) {
        Put(group, one);
        Put(group, two);
        continue;
      }
      const Label line = MakePlainLabel(metrics_, std::to_string(i + 1) + ": " + id, small, center);
      if (Holds(face, line.box)) Put(group, line);
    }
  }

  static bool Holds(const PaperBox& room, const PaperBox& box) {
    return box.left >= room.left && box.right <= room.right && box.top >= room.top &&
           box.bottom <= room.bottom;
  }

  void Put(SheetGroup& group, const Label& label) {
    taken_.push_back(label.box);
    group.primitives.emplace_back(label);
  }

  // --- Numbers of the gaps -----------------------------------------------------------------------

  void Numbers() {
    SheetGroup& group = AddViewGroup(view_, "numbers", "Numbers of the gaps", 0);
    int missing = 0;
    for (std::size_t i = 0; i < check_.stacks.size(); ++i) {
      if (!Number(group, check_.stacks[i], std::to_string(i + 1))) ++missing;
    }
    if (missing == 0) return;
    const LabelStyle style{.cap_height = 1.8, .level = TextLevel::kBaseline};
    const PaperBox covered = Bounds(view_.groups);
    group.primitives.emplace_back(MakePlainLabel(metrics_,
                                                 "Numbers that do not fit are in the table.", style,
                                                 {view_.outline.left, covered.bottom + 4}));
  }

  // Along the gap where the first free place is; false when there is none.
  bool Number(SheetGroup& group, const StackUp& stack, const std::string& text) {
    for (const double along : {0.22, 0.78, 0.35, 0.65, 0.12, 0.88}) {
      const PaperPoint at = PlaceOf(stack, along);
      const PaperBox box = Grow({at.x, at.y, at.x, at.y}, kBalloon);
      const auto meets = [&](const PaperBox& other) { return Overlaps(Grow(box, 0.8), other); };
      if (std::ranges::any_of(taken_, meets)) continue;
      Balloon(group, at, text);
      taken_.push_back(box);
      return true;
    }
    return false;
  }

  // A number in a disc, small enough that even four digits keep clear of its edge.
  void Balloon(SheetGroup& group, PaperPoint at, const std::string& text) const {
    group.primitives.push_back(Circle{at, kBalloon, Pen::kLeader, Tone::kPaper});
    LabelStyle style{.cap_height = 1.8, .weight = TextWeight::kBold, .anchor = TextAnchor::kCenter};
    const double room = 2 * kBalloon - 1.4;
    while (style.cap_height > 1 &&
           std::hypot(MeasureLabel(metrics_, text, style).width, style.cap_height) > room) {
      style.cap_height -= 0.1;
    }
    group.primitives.emplace_back(MakePlainLabel(metrics_, text, style, at));
  }

  PaperPoint PlaceOf(const StackUp& stack, double along) const {
    const auto at = static_cast<std::size_t>(stack.index);
    if (stack.is_overlap) return OutsideOf(bank_.overlaps[at], along);
    const Gap& gap = bank_.gaps[at];
    const Length middle = gap.at + HalfBelow(gap.size);
    const double share = gap.axis == Axis::kY ? along : 1 - along;
    const Length other = gap.begin + Part(gap.end - gap.begin, share);
    return gap.axis == Axis::kY ? Map().At(other, middle) : Map().At(middle, other);
  }

  static Length Part(Length whole, double share) {
    return PartBelow(whole * static_cast<int>(share * 100), 100);
  }

  PaperPoint OutsideOf(const Overlap& overlap, double along) const {
    const PaperBox face =
        Map().Box(bank_.spaces[static_cast<std::size_t>(overlap.space)].front.rect);
    const double x = face.left + along * face.Width();
    const double y = face.top + along * face.Height();
    switch (overlap.edge) {
      case Edge::kTop:
        return {x, face.top - kOutside};
      case Edge::kBottom:
        return {x, face.bottom + kOutside};
      case Edge::kLeft:
        return {face.left - kOutside, y};
      case Edge::kRight:
        break;
    }
    return {face.right + kOutside, y};
  }

  const Bank& bank_;
  const GapCheck& check_;
  const TextMetrics& metrics_;
  View view_;
  std::vector<PaperBox> taken_;
};

}  // namespace

View FittingElevation(const Bank& bank, const GapCheck& check, const Scale& scale,
                      const TextMetrics& metrics) {
  return FittingDrawing(bank, check, scale, metrics).Draw();
}

}  // namespace tillwright
