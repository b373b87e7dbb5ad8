#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "draw/annotation.h"
#include "draw/dimension.h"
#include "draw/rich_text.h"
#include "draw/title_block.h"
#include "tillwright/draw.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

struct Scale {
  double paper_per_mm;
  const char* name;
};
// ISO 5455 and the inch scales of architects' rules (both from memory), largest first.
constexpr std::array kInchScales{
    Scale{1.0, "1:1"},       Scale{1.0 / 2, "1:2"},     Scale{1.0 / 4, "1:4"},
    Scale{1.0 / 8, "1:8"},   Scale{1.0 / 12, "1:12"},   Scale{1.0 / 16, "1:16"},
    Scale{1.0 / 24, "1:24"}, Scale{1.0 / 32, "1:32"},   Scale{1.0 / 48, "1:48"},
    Scale{1.0 / 96, "1:96"}, Scale{1.0 / 192, "1:192"}, Scale{1.0 / 384, "1:384"}};
constexpr std::array kMetricScales{
    Scale{1.0, "1:1"},         Scale{1.0 / 2, "1:2"},     Scale{1.0 / 5, "1:5"},
    Scale{1.0 / 10, "1:10"},   Scale{1.0 / 20, "1:20"},   Scale{1.0 / 50, "1:50"},
    Scale{1.0 / 100, "1:100"}, Scale{1.0 / 200, "1:200"}, Scale{1.0 / 500, "1:500"}};

constexpr double kTitleRoom = 16;  // below the view, for its title and scale bar
constexpr double kMargin = 5;      // round everything, inside the border

// A line of stations along one axis, with what the stretches between them are.
struct Chain {
  std::vector<Length> stations;
  std::vector<DimensionText> texts;
};

class FrontView {
 public:
  FrontView(const Bank& bank, const TextMetrics& metrics) : bank_(bank), metrics_(metrics) {
    Outline();
    upright_.push_back(FrontChain(Axis::kY));
    across_.push_back(FrontChain(Axis::kX));
    Overall();
  }

  Sheet Draw() {
    const Paper paper = bank_.units == Unit::kInch ? Paper::kLetter : Paper::kA4;
    const bool wide = (right_ - left_) > (top_ - bottom_);
    const Orientation turn = wide ? Orientation::kLandscape : Orientation::kPortrait;
    Sheet sheet = MakeSheet(paper, turn, "front", Title() + ": front elevation");
    sheet.description = "Front elevation with every front and gap dimensioned";
    ChooseScale(DrawingSpace(sheet));
    TitleBlock block;
    block.title = Title();
    block.view = "Front elevation";
    block.scale = scale_.name;
    block.units = bank_.units == Unit::kInch ? "inch" : "mm";
    if (!bank_.spaces.empty()) block.material = bank_.spaces.front().front.material;
    AddBorderAndTitle(sheet, SizeOf(paper, turn).name, block, metrics_);
    DrawCase(AddGroup(sheet, "case", "Case and opening", 0));
    for (const Space& space : bank_.spaces) DrawSpace(sheet, space);
    DrawChains(AddGroup(sheet, "dimensions", "Dimensions", 0));
    SheetGroup& title = AddGroup(sheet, "view-title", "Front elevation", 0);
    AddViewTitle(title,
                 {.at = {X(left_), title_y_},
                  .title = "FRONT ELEVATION",
                  .caption = std::string("SCALE ") + scale_.name},
                 metrics_);
    return sheet;
  }

 private:
  std::string Title() const { return bank_.title.empty() ? "Drawer bank" : bank_.title; }
  std::string In(Length length) const { return FormatLength(length, bank_.units); }

  // --- What is drawn ----------------------------------------------------------------------------

  // The outermost lines: the case's outer faces, or the opening grown by what fronts cover.
  void Outline() {
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      left_ = -c.side;
      right_ = bank_.opening_width + c.side;
      bottom_ = -c.bottom - c.raise;
      top_ = bank_.opening_height + c.top;
    } else {
      right_ = bank_.opening_width;
      top_ = bank_.opening_height;
    }
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const Rect& r = space.front.rect;
      left_ = Min(left_, r.x);
      bottom_ = Min(bottom_, r.y);
      right_ = Max(right_, r.Right());
      top_ = Max(top_, r.Top());
    }
  }

  // The fronts along the left edge (heights) or the bottom edge (widths), with the gaps between.
  Chain FrontChain(Axis axis) const {
    const bool up = axis == Axis::kY;
    std::vector<const Space*> fronts;
    for (const Space& space : bank_.spaces) {
      if (space.HasFront() && OnEdge(space, up)) fronts.push_back(&space);
    }
    // Paper runs down, so heights are listed from the top.
    std::ranges::sort(fronts, [&](const Space* a, const Space* b) {
      return up ? a->front.rect.y > b->front.rect.y : a->front.rect.x < b->front.rect.x;
    });
    Chain chain;
    for (const Space* space : fronts) {
      const Rect& r = space->front.rect;
      const std::string id = ToText(space->id);
      if (!chain.stations.empty()) {
        const Length gap = up ? chain.stations.back() - r.Top() : r.x - chain.stations.back();
        chain.texts.push_back({In(gap), "gap." + id + (up ? ".top" : ".left")});
      }
      chain.stations.push_back(up ? r.Top() : r.x);
      chain.stations.push_back(up ? r.y : r.Right());
      chain.texts.push_back(up ? DimensionText{In(r.height), id + ".front.height"}
                               : DimensionText{In(r.width), id + ".front.width"});
    }
    return chain;
  }

  bool OnEdge(const Space& space, bool up) const {
    const Rect& r = space.front.rect;
    return std::ranges::none_of(bank_.spaces, [&](const Space& other) {
      if (!other.HasFront() || &other == &space) return false;
      const Rect& o = other.front.rect;
      const bool beside = up ? o.y < r.Top() && r.y < o.Top() : o.x < r.Right() && r.x < o.Right();
      return beside && (up ? o.Right() <= r.x : o.Top() <= r.y);
    });
  }

  void Overall() {
    upright_.push_back(
        {{bank_.opening_height, Length()}, {{In(bank_.opening_height), "opening.height"}}});
    across_.push_back(
        {{Length(), bank_.opening_width}, {{In(bank_.opening_width), "opening.width"}}});
    if (!bank_.casework) return;
    const CaseBuild& c = *bank_.casework;
    upright_.push_back(
        {{bank_.opening_height + c.top, -c.bottom - c.raise}, {{In(c.height), "case.height"}}});
    across_.push_back({{-c.side, bank_.opening_width + c.side}, {{In(c.width), "case.width"}}});
  }

  // --- Scale and place --------------------------------------------------------------------------

  double Mm(Length length) const { return ToMillimeters(length) * scale_.paper_per_mm; }
  double X(Length x) const { return origin_.x + Mm(x); }
  double Y(Length y) const { return origin_.y - Mm(y); }

  void ChooseScale(const PaperBox& space) {
    const auto fits = [&](const Scale& scale) {
      scale_ = scale;
      Place(space);
      const PaperBox need = Needed();
      return need.left >= space.left + kMargin && need.right <= space.right - kMargin &&
             need.top >= space.top + kMargin && need.bottom <= space.bottom - kMargin;
    };
    if (bank_.units == Unit::kInch) {
      (void)std::ranges::any_of(kInchScales, fits);
    } else {
      (void)std::ranges::any_of(kMetricScales, fits);
    }
  }

  // Centres the view with its dimensions in the space.
  void Place(const PaperBox& space) {
    origin_ = {};
    const PaperBox need = Needed();
    origin_.x = space.Centre().x - need.Centre().x;
    origin_.y = space.Centre().y - need.Centre().y;
    title_y_ = Y(bottom_) + StackDepth(Below(), DimensionStyle(), metrics_) + 8;
  }

  PaperBox Needed() const {
    const DimensionStyle style;
    return {X(left_) - StackDepth(Left(), style, metrics_), Y(top_), X(right_),
            Y(bottom_) + StackDepth(Below(), style, metrics_) + kTitleRoom};
  }

  DimensionStack Left() const { return StackOf(PaperSide::kLeft, X(left_), upright_); }
  DimensionStack Below() const { return StackOf(PaperSide::kBelow, Y(bottom_), across_); }

  DimensionStack StackOf(PaperSide side, double edge, const std::vector<Chain>& chains) const {
    DimensionStack stack{.side = side, .edge = edge};
    for (const Chain& chain : chains) {
      if (chain.texts.empty()) continue;
      DimensionChain& tier = stack.tiers.emplace_back();
      for (const Length station : chain.stations) {
        tier.stations.push_back(side == PaperSide::kLeft ? Y(station) : X(station));
      }
      tier.texts = chain.texts;
    }
    return stack;
  }

  // --- Drawing ----------------------------------------------------------------------------------

  PaperBox BoxOf(const Rect& r) const { return {X(r.x), Y(r.Top()), X(r.Right()), Y(r.y)}; }

  void DrawCase(SheetGroup& group) const {
    const bool hidden = bank_.style == FrontStyle::kOverlay;
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      group.primitives.push_back(
          BoxOutline(BoxOf({-c.side, -c.bottom - c.raise, c.width, c.height}), Pen::kOutline));
    }
    const Rect opening{Length(), Length(), bank_.opening_width, bank_.opening_height};
    group.primitives.push_back(BoxOutline(BoxOf(opening), hidden ? Pen::kHidden : Pen::kOutline));
    for (const Divider& divider : bank_.dividers) {
      group.primitives.push_back(
          BoxOutline(BoxOf(divider.rect), hidden ? Pen::kHidden : Pen::kOutline));
    }
  }

  void DrawSpace(Sheet& sheet, const Space& space) const {
    const std::string id = ToText(space.id);
    const std::string title = space.name.empty() ? id : id + " " + space.name;
    SheetGroup& group = AddGroup(sheet, "front-" + id, title, 0);
    if (!space.HasFront()) return;
    const PaperBox box = BoxOf(space.front.rect);
    group.primitives.push_back(BoxFill(box, Tone::kPaper));
    group.primitives.push_back(InsetOutline(box, Pen::kFront));
    LabelFront(group, space, box, id);
  }

  // The number, the size and the name, as far as they fit inside the front.
  void LabelFront(SheetGroup& group, const Space& space, const PaperBox& box,
                  const std::string& id) const {
    const Rect& r = space.front.rect;
    const std::string size = In(r.width) + " \u00d7 " + In(r.height);
    const LabelStyle bold{.cap_height = 3,
                          .weight = TextWeight::kBold,
                          .anchor = TextAnchor::kCentre,
                          .max_width = box.Width() - 3};
    const LabelStyle plain{.cap_height = 2.2, .anchor = TextAnchor::kCentre};
    const double room = box.Height() - 3;
    const bool size_fits = MeasureLabel(metrics_, size, plain).width < box.Width() - 4;
    const double middle = box.Centre().x;
    const int lines = room > 14 && size_fits && !space.name.empty() ? 3
                      : room > 9 && size_fits                       ? 2
                                                                    : 1;
    if (room < 3) return;
    const double top = box.Centre().y - 2.6 * (lines - 1);
    group.primitives.push_back(MakePlainLabel(metrics_, id, bold, {middle, top}));
    if (lines > 1) {
      group.primitives.push_back(MakeLabel(metrics_, size, plain, {middle, top + 5.2},
                                           id + ".front.width " + id + ".front.height"));
    }
    if (lines > 2) {
      LabelStyle name = plain;
      name.max_width = box.Width() - 4;
      group.primitives.push_back(MakePlainLabel(metrics_, space.name, name, {middle, top + 10.4}));
    }
  }

  void DrawChains(SheetGroup& group) const {
    AddDimensionStack(group, Left(), DimensionStyle(), metrics_);
    AddDimensionStack(group, Below(), DimensionStyle(), metrics_);
  }

  const Bank& bank_;
  const TextMetrics& metrics_;
  Length left_, right_, bottom_, top_;
  std::vector<Chain> upright_, across_;
  Scale scale_ = kInchScales.back();
  PaperPoint origin_;
  double title_y_ = 0;
};

}  // namespace

Sheet DrawFront(const Bank& bank, const TextMetrics& metrics) {
  return FrontView(bank, metrics).Draw();
}

}  // namespace tillwright
