#include "render/demo_sheet.h"

#include <array>
#include <string>
#include <utility>
#include <vector>

#include "sheet/annotation.h"
#include "sheet/dimension.h"
#include "sheet/hatch.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kScale = 25.4 / 8;  // paper millimeters to an inch at 1:8

struct FrontRow {
  double height;  // inches
  const char* text;
};
constexpr std::array kFronts{FrontRow{2.46875, "2 15/32"}, FrontRow{3.5, "3 1/2"},
                             FrontRow{4.625, "4 5/8"}, FrontRow{6.125, "6 1/8"},
                             FrontRow{9.03125, "9 1/32"}};
constexpr std::array kFromFloor{"29 7/8",  "27 13/32", "27 9/32",  "23 25/32", "23 21/32",
                                "19 1/32", "18 29/32", "12 25/32", "12 21/32", "3 5/8"};
constexpr double kGap = 0.125;
constexpr double kWidth = 24;
constexpr double kCase = 26.5;
constexpr double kToe = 3.5;
constexpr double kDepth = 18;
constexpr double kPanel = 0.75;

class Demo {
 public:
  Demo(Paper paper, const TextMetrics& metrics)
      : metrics_(metrics),
        paper_(SizeOf(paper, Orientation::kLandscape)),
        sheet_(MakeSheet(paper, Orientation::kLandscape, "paper-cabinet",
                         "Paper cabinet: elevation, section, details")) {
    TitleBlock block;
    block.project = "Bindery, north wall";
    block.title = "Paper cabinet P5";
    block.view = "Elevation, section, details";
    block.scale = "1:8, details 1:1";
    block.units = "inch";
    block.material = "3/4 ash, 1/4 ply bottoms";
    block.projection = Projection::kThirdAngle;
    space_ = AddBorderAndTitle(sheet_, paper_.name, block, metrics_);
    left_ = space_.left + 33;
    top_ = space_.top + 18;
    floor_ = top_ + (kCase + kToe) * kScale;
    section_ = left_ + kWidth * kScale + (paper == Paper::kA4 ? 34 : 28);
  }

  Sheet Build() {
    Elevation();
    ElevationDimensions();
    Section();
    SectionDimensions();
    Details();
    Notes();
    return std::move(sheet_);
  }

 private:
  [[nodiscard]] double Right() const { return left_ + kWidth * kScale; }
  [[nodiscard]] double CaseBottom() const { return top_ + kCase * kScale; }

  [[nodiscard]] std::vector<PaperBox> Fronts() const {
    std::vector<PaperBox> boxes;
    double y = top_ + kGap * kScale;
    for (const FrontRow& row : kFronts) {
      const double bottom = y + row.height * kScale;
      boxes.push_back({left_ + kGap * kScale, y, Right() - kGap * kScale, bottom});
      y = bottom + kGap * kScale;
    }
    return boxes;
  }

  void Elevation() {
    SheetGroup& view = AddGroup(sheet_, "elevation", "Front elevation", 0);
    view.desc = "Five drawer fronts above a toe space";
    view.primitives.emplace_back(BoxOutline({left_, top_, Right(), CaseBottom()}, Pen::kOutline));
    const double toe = 0.75 * kScale;
    view.primitives.emplace_back(
        BoxOutline({left_ + toe, CaseBottom(), Right() - toe, floor_}, Pen::kThin));
    view.primitives.emplace_back(LineOf({left_ - 5, floor_}, {Right() + 5, floor_}, Pen::kGround));
    AddViewTitle(view, {{left_, floor_ + 25.5}, "", "FRONT ELEVATION", "SCALE 1:8", 0}, metrics_);
    AddScaleBar(view, {{left_ + 46, floor_ + 24.5}, 6 * kScale, 2, {"0", "6", "12"}, "in"},
                metrics_);
    AddSectionMark(view, {{left_ + 12, top_ - 1.8}, {left_ + 12, floor_ + 1.8}, 0, "A", 5},
                   metrics_);
    const std::vector<PaperBox> fronts = Fronts();
    for (std::size_t i = 0; i < fronts.size(); ++i) Front(i, fronts[i]);
  }

  void Front(std::size_t i, const PaperBox& box) {
    const std::string number = std::to_string(i + 1);
    SheetGroup& front = AddGroup(sheet_, "front-" + number, "Drawer front " + number, 1);
    front.primitives.emplace_back(InsetOutline(box, Pen::kFront));
    const PaperPoint center = box.Center();
    AddBalloon(front, {center.x - 14, center.y}, 2.5, number, metrics_);
    LabelStyle style;
    front.primitives.emplace_back(MakeLabel(metrics_, "23 3/4 × " + std::string(kFronts[i].text),
                                            style, {center.x - 9.5, center.y},
                                            "D" + number + ".front"));
    AddGrainArrow(front, {box.right - 7.5, center.y}, 9, PaperAxis::kHorizontal);
  }

  void ElevationDimensions() {
    SheetGroup& dims = AddGroup(sheet_, "elevation-sizes", "Sizes of the elevation", 1);
    DimensionStack stack{PaperSide::kLeft, left_, {}, {}};
    DimensionChain parts{{top_}, {}};
    OrdinateColumn floor{PaperSide::kRight, Right(), 8, {}, "FROM FLOOR"};
    for (std::size_t i = 0; i < kFronts.size(); ++i) {
      const PaperBox box = Fronts()[i];
      const std::string path = "D" + std::to_string(i + 1);
      parts.stations.push_back(box.top);
      parts.texts.push_back({"1/8", path + ".gap"});
      parts.stations.push_back(box.bottom);
      parts.texts.push_back({kFronts[i].text, path + ".front.height"});
      floor.ordinates.push_back({box.top, kFromFloor[2 * i], path + ".front.top"});
      floor.ordinates.push_back({box.bottom, kFromFloor[2 * i + 1], path + ".front.bottom"});
    }
    parts.stations.push_back(CaseBottom());
    parts.texts.push_back({"1/8", "bottom.gap"});
    stack.tiers.push_back(parts);
    stack.tiers.push_back(
        {{top_, CaseBottom(), floor_}, {{"26 1/2", "case.height"}, {"3 1/2", "toe.height"}}});
    stack.tiers.push_back({{top_, floor_}, {{"30", "height"}}});
    AddDimensionStack(dims, stack, style_, metrics_);
    AddOrdinateColumn(dims, floor, style_, metrics_);
    DimensionStack below{PaperSide::kBelow, floor_ + 1.5, {}, {}};
    const PaperBox front = Fronts().front();
    below.tiers.push_back({{left_, front.left, front.right, Right()},
                           {{"1/8", "gap"}, {"23 3/4", "front.width"}, {"1/8", "gap"}}});
    below.tiers.push_back({{left_, Right()}, {{"24", "width"}}});
    AddDimensionStack(dims, below, style_, metrics_);
  }

  [[nodiscard]] double Back() const { return section_ + (kPanel + kDepth) * kScale; }
  [[nodiscard]] double CaseFront() const { return section_ + kPanel * kScale; }

  void Cut(SheetGroup& out, const PaperBox& box, double angle) {
    out.primitives.emplace_back(HatchAtAngle(AreaOf(box), angle, 1.1, Pen::kHatch));
    out.primitives.emplace_back(BoxOutline(box, Pen::kCut));
  }

  void Section() {
    SheetGroup& view = AddGroup(sheet_, "section", "Section A-A", 0);
    const double t = kPanel * kScale;
    Cut(view, {CaseFront(), top_, Back(), top_ + t}, -45);
    Cut(view, {CaseFront(), CaseBottom() - t, Back(), CaseBottom()}, -45);
    Cut(view, {Back() - t / 2, top_ + t, Back(), CaseBottom() - t}, 45);
    Cut(view, {CaseFront() + 2.25 * kScale, CaseBottom(), CaseFront() + 3 * kScale, floor_}, 45);
    view.primitives.emplace_back(
        LineOf({Back() - t / 2, CaseBottom()}, {Back() - t / 2, floor_}, Pen::kHidden));
    view.primitives.emplace_back(
        LineOf({section_ - 5, floor_}, {Back() + 5, floor_}, Pen::kGround));
    const std::vector<PaperBox> fronts = Fronts();
    for (std::size_t i = 0; i < fronts.size(); ++i) Box(view, i, fronts[i]);
    AddDetailCallout(view,
                     {{section_ + t, (fronts[1].bottom + fronts[2].top) / 2},
                      5.5,
                      {section_ + t + 14, fronts[2].top + 9.4},
                      "B"},
                     metrics_);
    AddViewTitle(view, {{section_, floor_ + 25.5}, "", "SECTION A–A", "SCALE 1:8", 0}, metrics_);
  }

  void Box(SheetGroup& view, std::size_t i, const PaperBox& front) {
    const PaperBox cut{section_, front.top, CaseFront(), front.bottom};
    Cut(view, cut, 45);
    const double side = 0.5 * kScale;
    const double top = front.top + (i == 0 ? 0.75 : 0.5) * kScale;
    const double bottom = front.bottom - (i == 0 ? 0.125 : 0.5) * kScale;
    const double end = CaseFront() + 16 * kScale;
    Cut(view, {CaseFront(), top, CaseFront() + side, bottom}, -45);
    Cut(view, {end - side, top, end, bottom}, -45);
    view.primitives.emplace_back(LineOf({CaseFront() + side, top}, {end - side, top}, Pen::kThin));
    const double panel = bottom - (i == 0 ? 0.375 : 0.5) * kScale;
    Polyline thin = BoxOutline(
        {CaseFront() + side / 2, panel, end - side / 2, panel + 0.25 * kScale}, Pen::kHatch);
    thin.fill = Tone::kShade;
    view.primitives.emplace_back(thin);
    LabelStyle style;
    style.cap_height = i == 0 ? 1.8 : 2.2;
    style.anchor = TextAnchor::kCenter;
    view.primitives.emplace_back(
        MakeLabel(metrics_, "BOX " + std::to_string(i + 1), style,
                  {CaseFront() + 10 * kScale, (top + panel) / 2 + (i == 0 ? 0.4 : 0)}, ""));
  }

  void SectionDimensions() {
    SheetGroup& dims = AddGroup(sheet_, "section-sizes", "Sizes of the section", 1);
    DimensionStack below{PaperSide::kBelow, floor_ + 1.5, {}, {}};
    below.tiers.push_back({{section_, CaseFront(), CaseFront() + 16 * kScale, Back()},
                           {{"3/4", "front.thickness"}, {"16", "box.depth"}, {"2", "rear"}}});
    below.tiers.push_back({{section_, Back()}, {{"18 3/4", "depth"}}});
    AddDimensionStack(dims, below, style_, metrics_);
    AddLeaderNote(dims,
                  {{section_ + 30, top_ + 0.6},
                   {section_ + 35, top_ - 6},
                   LeaderEnd::kArrow,
                   false,
                   {"TOP 3/4 × 18, 1 PL"},
                   "top",
                   2.2},
                  metrics_);
  }

  void Details() {
    SheetGroup& view = AddGroup(sheet_, "detail-b", "Detail B: groove and gap", 0);
    const double radius = 19;
    const PaperDisc disc{{space_.right - 27, space_.top + 32}, radius};
    const PaperPoint c = disc.center;
    const PaperBox side{c.x - 7, c.y - 40, c.x - 7 + 12.7, c.y + 9};
    const PaperBox front{c.x - 7 - 19.05, c.y - 40, c.x - 7, c.y + 12};
    const PaperBox lower{front.left, front.bottom + 3.175, front.right, c.y + 40};
    const PaperBox groove{c.x - 0.65, c.y - 3, c.x + 40, c.y - 3 + 6.35};
    DetailPart(view, disc, front, 45, {});
    DetailPart(view, disc, lower, 45, {});
    DetailPart(view, disc, side, -45, {groove});
    HatchArea ply = AreaOf(groove);
    ply.window = disc;
    view.primitives.emplace_back(HatchPlies(ply, PaperAxis::kVertical, 5, Pen::kDetailHatch));
    for (Polyline& piece : ClipToDisc(disc, BoxOutline(groove, Pen::kDetailCut))) {
      view.primitives.emplace_back(std::move(piece));
    }
    view.primitives.emplace_back(Circle{c, radius, Pen::kCallout, Tone::kNone});
    DetailSizes(view, disc, side, front, lower, groove);
    AddViewTitle(view, {{c.x - radius, c.y + radius + 14}, "B", "GROOVE & GAP", "SCALE 1:1", 0},
                 metrics_);
    Joint();
  }

  void DetailSizes(SheetGroup& view, const PaperDisc& disc, const PaperBox& side,
                   const PaperBox& front, const PaperBox& lower, const PaperBox& groove) {
    const PaperPoint c = disc.center;
    SingleDimension gap{PaperSide::kLeft, front.bottom,   lower.top, c.x - 23, c.x - 15.5,
                        c.x - 15.5,       {"1/8", "gap"}, true,      false};
    AddSingleDimension(view, gap, style_, metrics_);
    SingleDimension thick{PaperSide::kAbove,   side.left,  side.right,
                          c.y - 23.5,          c.y - 17.5, c.y - 18.4,
                          {"1/2", "box.side"}, false,      true};
    AddSingleDimension(view, thick, style_, metrics_);
    SingleDimension up{PaperSide::kRight, groove.bottom,        side.bottom, c.x + 23.5, c.x + 17.4,
                       c.x + 5.7,         {"1/4", "groove.up"}, false,       false};
    AddSingleDimension(view, up, style_, metrics_);
    AddLeaderNote(view,
                  {{groove.left + 3, groove.top + 2},
                   {c.x + 5, c.y + 22},
                   LeaderEnd::kDot,
                   false,
                   {"GROOVE", "1/4 × 1/4"},
                   "groove",
                   2},
                  metrics_);
  }

  void DetailPart(SheetGroup& view, const PaperDisc& disc, const PaperBox& box, double angle,
                  const std::vector<PaperBox>& holes) {
    HatchArea area = AreaOf(box);
    area.window = disc;
    area.box_holes = holes;
    view.primitives.emplace_back(HatchAtAngle(area, angle, 1.6, Pen::kDetailHatch));
    for (Polyline& piece : ClipToDisc(disc, BoxOutline(box, Pen::kDetailCut))) {
      view.primitives.emplace_back(std::move(piece));
    }
  }

  // Solid wood and its two patterns, a hole with its center lines.
  void Joint() {
    SheetGroup& view = AddGroup(sheet_, "detail-c", "Detail C: pull and edge", 0);
    const double x = space_.right - 49;
    const double y = space_.top + 88;
    const PaperBox end{x, y, x + 19.05, y + 26};
    const PaperBox rail{x + 19.05, y + 6, x + 42, y + 25.05};
    view.primitives.emplace_back(HatchEndGrain(AreaOf(end), {x + 30, y + 40}, 1.9, Pen::kHatch));
    view.primitives.emplace_back(BoxOutline(end, Pen::kDetailCut));
    HatchArea along = AreaOf(rail);
    const PaperPoint hole{x + 32, y + 15.5};
    along.disc_holes.push_back({hole, 2.4});
    view.primitives.emplace_back(HatchLongGrain(along, PaperAxis::kHorizontal, 1.7, Pen::kHatch));
    view.primitives.emplace_back(BoxOutline(rail, Pen::kDetailCut));
    view.primitives.emplace_back(Circle{hole, 2.38, Pen::kDetailCut, Tone::kPaper});
    AddCenterMark(view, hole, 2.38);
    AddLeaderNote(view,
                  {{hole.x + 1.7, hole.y - 1.7},
                   {x + 37, y - 0.5},
                   LeaderEnd::kArrow,
                   false,
                   {"⌀ 3/16"},
                   "pull.hole",
                   2.2},
                  metrics_);
    SingleDimension thick{
        PaperSide::kBelow,          end.left, end.right, y + 32, end.bottom, end.bottom,
        {"3/4", "front.thickness"}, false,    false};
    AddSingleDimension(view, thick, style_, metrics_);
    view.primitives.emplace_back(Arc{{rail.right, rail.bottom}, 4, 90, 90, Pen::kMoved});
    AddViewTitle(view, {{x, y + 40}, "C", "PULL & EDGE", "SCALE 1:1", 0}, metrics_);
  }

  void Notes() {
    SheetGroup& notes = AddGroup(sheet_, "notes", "Notes", 0);
    const double x = space_.right - 49;
    AddTextBlock(notes, {{x, space_.top + 140}, {"NOTES"}, 2.5, TextWeight::kBold, 2}, metrics_);
    AddTextBlock(notes,
                 {{x, space_.top + 145},
                  {"1. Gaps between fronts 1/8.", "2. Grain of fronts runs level.",
                   "3. Paper sizes: see drawer list."},
                  1.8,
                  TextWeight::kRegular,
                  2.3},
                 metrics_);
  }

  const TextMetrics& metrics_;
  PaperSize paper_;
  Sheet sheet_;
  DimensionStyle style_;
  PaperBox space_;
  double left_ = 0;
  double top_ = 0;
  double floor_ = 0;
  double section_ = 0;
};

}  // namespace

Sheet DemoSheet(Paper paper, const TextMetrics& metrics) { return Demo(paper, metrics).Build(); }

}  // namespace tillwright
