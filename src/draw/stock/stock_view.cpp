#include "draw/stock/stock_view.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <utility>

#include "draw/stock/panel_labels.h"
#include "draw/stock/run_marks.h"
#include "sheet/annotation.h"
#include "sheet/dimension.h"
#include "sheet/hatch.h"
#include "sheet/rich_text.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kHatchSpacing = 3.0;  // mm
constexpr double kGrainArrow = 24;     // mm
constexpr double kLeastOffcut = 1.0;   // mm on paper; thinner ones are left white
constexpr double kKeyPitch = 5.6;      // mm
constexpr double kKeyApart = 8;        // mm between columns
constexpr std::size_t kKeyRows = 8;    // in more, it is spread over more columns

// The rows in columns, from a point down.
void AddKey(SheetGroup& out, const std::vector<std::string>& rows, PaperPoint at, double width,
            double wished_width, const TextMetrics& metrics) {
  const LabelStyle style{.cap_height = kStockCapHeight, .max_width = width};
  double column = 0;
  for (const std::string& row : rows) {
    column = std::max(column, std::min(width, MeasureLabel(metrics, row, style).width));
  }
  const auto fit = [&](double space) {
    return static_cast<std::size_t>(std::max(1.0, (space + kKeyApart) / (column + kKeyApart)));
  };
  std::size_t columns = std::min(fit(wished_width), fit(width));
  while (columns < fit(width) && rows.size() > columns * kKeyRows) ++columns;
  const std::size_t height = (rows.size() + columns - 1) / columns;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const PaperPoint place{at.x + (column + kKeyApart) * static_cast<double>(i / height),
                           at.y + kKeyPitch * static_cast<double>(i % height)};
    out.primitives.emplace_back(MakeLabel(metrics, rows[i], style, place, {}));
  }
}

class PictureMaker {
 public:
  PictureMaker(const StockPicture& picture, const Scale& scale, const TextMetrics& metrics)
      : picture_(picture),
        names_(picture.names),
        layout_(picture.layout),
        stock_(picture.group.job.stock[static_cast<std::size_t>(layout_.stock)]),
        content_(ContentOf(layout_, picture.group.job.kerf, picture.panel)),
        metrics_(metrics) {
    view_.name = picture.name;
    view_.title = picture.title;
    view_.scale = scale;
    view_.map.scale = scale;
    is_sheet_ = picture.panel.piece == 0 && picture.panel.IsWhole(layout_);
    shown_ = is_sheet_ ? Rect{Length(), Length(), stock_.along, stock_.across} : content_.rect;
    view_.outline = view_.map.Box(shown_);
  }

  StockPictureDrawn Run() {
    const PanelLabels labels(view_.outline, Lines(), Boxes(), metrics_);
    Outline();
    CutLines(labels);
    Offcuts(labels);
    Parts(labels);
    Runs(labels);
    Tags(labels);
    Outside(labels.callouts());
    if (picture_.key_width > 0) Key();
    FinishView(view_, view_.outline.left, picture_.plan.units, metrics_);
    return {std::move(view_), labels.crowded(), names_.KeyRows(Unexplained(labels))};
  }

 private:
  [[nodiscard]] const NestPiece& At(std::int32_t piece) const {
    return layout_.pieces[static_cast<std::size_t>(piece)];
  }

  [[nodiscard]] bool MayUse(PaperSide side) const {
    if (side == PaperSide::kAbove) return picture_.rows != EdgeRows::kBeside;
    return side != PaperSide::kBelow || picture_.rows == EdgeRows::kAll;
  }

  // Parts of the kinds that no label in the picture tells in full.
  [[nodiscard]] std::vector<std::int32_t> Unexplained(const PanelLabels& labels) const {
    std::set<std::int32_t> told;
    for (const PanelBox& box : labels.boxes()) {
      if (box.label && box.label->plain == box.texts.front()) told.insert(At(box.piece).part);
    }
    std::vector<std::int32_t> parts = content_.leaves;
    std::erase_if(parts, [&](std::int32_t piece) {
      return At(piece).run < 0 && told.contains(At(piece).part);
    });
    return parts;
  }

  // The first of two sides of the panel that a rectangle reaches.
  [[nodiscard]] std::optional<PaperSide> Reached(const Rect& rect, PaperSide one,
                                                 PaperSide other) const {
    const Rect& all = content_.rect;
    for (const PaperSide side : {one, other}) {
      const bool reaches = (side == PaperSide::kLeft && rect.x == all.x) ||
                           (side == PaperSide::kRight && rect.Right() == all.Right()) ||
                           (side == PaperSide::kAbove && rect.Top() == all.Top()) ||
                           (side == PaperSide::kBelow && rect.y == all.y);
      if (reaches && MayUse(side)) return side;
    }
    return std::nullopt;
  }

  [[nodiscard]] std::vector<PanelLine> Lines() const {
    std::vector<PanelLine> lines;
    const PaperMap& map = view_.map;
    for (const auto& [number, cut] : content_.cuts) {
      const Rect& piece = cut.piece == picture_.panel.piece ? content_.rect : At(cut.piece).rect;
      const Length at = cut.at + HalfBelow(picture_.group.job.kerf);
      PanelLine line{.number = number, .piece = cut.piece, .depth = DepthOf(layout_, cut.piece)};
      if (cut.across) {
        line.line = {map.At(at, piece.y), map.At(at, piece.Top())};
        line.edge = Reached(piece, PaperSide::kAbove, PaperSide::kBelow);
      } else {
        line.line = {map.At(piece.x, at), map.At(piece.Right(), at)};
        line.edge = Reached(piece, PaperSide::kRight, PaperSide::kLeft);
      }
      lines.push_back(line);
    }
    return lines;
  }

  [[nodiscard]] std::vector<PanelBox> Boxes() const {
    std::vector<PanelBox> boxes;
    for (const auto* pieces : {&content_.leaves, &content_.closed}) {
      for (const std::int32_t piece : *pieces) boxes.push_back(BoxOf(piece));
    }
    return boxes;
  }

  [[nodiscard]] PanelBox BoxOf(std::int32_t index) const {
    const NestPiece& piece = At(index);
    const bool offcut = piece.kind == NestPieceKind::kOffcut;
    const bool level = piece.rect.width >= piece.rect.height;
    return {.box = view_.map.Box(piece.rect),
            .texts = names_.TextsOf(index),
            .piece = index,
            .whole = std::max(piece.parent, 0),
            .optional = offcut && !StockNames::IsUseful(piece),
            .edge = level ? Reached(piece.rect, PaperSide::kRight, PaperSide::kLeft)
                          : Reached(piece.rect, PaperSide::kBelow, PaperSide::kAbove),
            .depth = DepthOf(layout_, index)};
  }

  // Where a stretch was broken off, its edge is dashed.
  void Outline() {
    SheetGroup& group = AddViewGroup(view_, "sheet", is_sheet_ ? "Sheet" : "Piece", 1);
    if (picture_.panel.IsWhole(layout_)) {
      group.primitives.emplace_back(BoxOutline(view_.outline, Pen::kOutline));
      return;
    }
    const Rect& whole = At(picture_.panel.piece).rect;
    const PaperBox& box = view_.outline;
    const std::array corners{PaperPoint{box.left, box.top}, PaperPoint{box.right, box.top},
                             PaperPoint{box.right, box.bottom}, PaperPoint{box.left, box.bottom}};
    const std::array<bool, 4> broken{shown_.Top() < whole.Top(), shown_.Right() < whole.Right(),
                                     shown_.y > whole.y, shown_.x > whole.x};
    for (std::size_t i = 0; i < corners.size(); ++i) {
      group.primitives.emplace_back(LineOf(corners[i], corners[(i + 1) % corners.size()],
                                           broken[i] ? Pen::kHidden : Pen::kOutline));
    }
  }

  void CutLines(const PanelLabels& labels) {
    SheetGroup& group = AddViewGroup(view_, "cut-lines", "Saw cuts", 1);
    for (const PanelLine& line : labels.lines()) {
      group.primitives.emplace_back(LineOf(line.line.from, line.line.to, Pen::kThin));
    }
  }

  // Hatched round their sizes.
  void Offcuts(const PanelLabels& labels) {
    SheetGroup& group = AddViewGroup(view_, "offcuts", "Offcuts", 1);
    for (const PanelBox& box : labels.boxes()) {
      if (At(box.piece).kind != NestPieceKind::kOffcut) continue;
      unsized_ = unsized_ || (box.optional && !box.label);
      if (std::min(box.box.Width(), box.box.Height()) < kLeastOffcut) continue;
      HatchArea area = AreaOf(box.box);
      if (box.label) area.box_holes.push_back(Grow(box.label->box, 1.0));
      group.primitives.emplace_back(HatchAtAngle(area, 45, kHatchSpacing, Pen::kHatch));
      if (box.label) group.primitives.emplace_back(*box.label);
    }
  }

  void Parts(const PanelLabels& labels) {
    SheetGroup& parts = AddViewGroup(view_, "parts", "Parts", 1);
    SheetGroup pieces;
    for (const PanelBox& box : labels.boxes()) {
      const NestPieceKind kind = At(box.piece).kind;
      if (kind == NestPieceKind::kOffcut) continue;
      const bool part = kind == NestPieceKind::kPart;
      SheetGroup& group = part ? parts : pieces;
      group.primitives.emplace_back(InsetOutline(box.box, part ? Pen::kFront : Pen::kHidden));
      if (box.label) group.primitives.emplace_back(*box.label);
    }
    if (pieces.primitives.empty()) return;
    AddViewGroup(view_, "pieces", "Pieces drawn separately", 1).primitives =
        std::move(pieces.primitives);
  }

  // Fronts that are cut from one piece: the piece, and in which order.
  void Runs(const PanelLabels& labels) {
    const std::vector<PaperBox> taken = Taken(labels);
    SheetGroup marks;
    for (const NestPiece& piece : layout_.pieces) {
      if (piece.kind == NestPieceKind::kPart || piece.run < 0) continue;
      std::vector<std::int32_t> fronts = piece.pieces;
      std::erase_if(fronts, [&](std::int32_t front) { return !IsShownPart(front); });
      if (fronts.size() < 2) continue;  // drawn elsewhere, or a stretch of one front
      std::ranges::sort(fronts, {}, [&](std::int32_t front) { return At(front).place; });
      const PaperMap& map = view_.map;
      AddRunMarks(marks, map.Box(piece.rect), map.Box(At(fronts.front()).rect),
                  map.Box(At(fronts.back()).rect), taken);
    }
    if (marks.primitives.empty()) return;
    AddViewGroup(view_, "runs", "Fronts cut from one piece", 1).primitives =
        std::move(marks.primitives);
  }

  [[nodiscard]] bool IsShownPart(std::int32_t piece) const {
    return At(piece).kind == NestPieceKind::kPart &&
           std::ranges::find(content_.leaves, piece) != content_.leaves.end();
  }

  // By labels and by the numbers of cuts inside the panel.
  [[nodiscard]] std::vector<PaperBox> Taken(const PanelLabels& labels) const {
    std::vector<PaperBox> taken;
    for (const PanelBox& box : labels.boxes()) {
      if (box.label) taken.push_back(box.label->box);
    }
    for (const PanelLine& line : labels.lines()) {
      if (!line.tag) continue;
      taken.push_back(CutTag(line.number, metrics_).At(line.tag->at));
      taken.push_back(line.tag->Leader());
    }
    return taken;
  }

  // The numbers of the cuts, above all leaders.
  void Tags(const PanelLabels& labels) {
    SheetGroup& group = AddViewGroup(view_, "cuts", "Cuts in order", 1);
    for (const PanelLine& line : labels.lines()) {
      if (line.tag) {
        group.primitives.emplace_back(LineOf(line.tag->foot, line.tag->at, Pen::kLeader));
      }
    }
    for (const PanelLine& line : labels.lines()) {
      if (line.tag) CutTag(line.number, metrics_).Draw(group, line.tag->at);
    }
    SheetGroup letters;
    labels.callouts().Draw(group, letters);
    if (letters.primitives.empty()) return;
    AddViewGroup(view_, "letters", "Letters of narrow pieces", 1).primitives =
        std::move(letters.primitives);
  }

  // Overall sizes, the grain, what is trimmed off.
  void Outside(const EdgeCallouts& callouts) {
    SheetGroup& group = AddViewGroup(view_, "sizes", "Sizes and grain", 1);
    const PaperBox& box = view_.outline;
    AddSize(group, callouts, PaperSide::kBelow, {box.left, box.right}, shown_.width);
    AddSize(group, callouts, PaperSide::kLeft, {box.top, box.bottom}, shown_.height);
    const double y = Bounds(view_.groups).bottom + 4;
    AddGrainArrow(group, {box.left + kGrainArrow / 2, y}, kGrainArrow, PaperAxis::kHorizontal);
    const LabelStyle style{.cap_height = kStockCapHeight};
    group.primitives.emplace_back(
        MakePlainLabel(metrics_, GrainWords(), style, {box.left + kGrainArrow + 3, y}));
  }

  // Beyond the callouts of its side, joined to the corners unless callouts are in the way.
  void AddSize(SheetGroup& out, const EdgeCallouts& callouts, PaperSide side,
               std::vector<double> stations, Length size) {
    const bool below = side == PaperSide::kBelow;
    const double object = below ? view_.outline.bottom : view_.outline.left;
    const double reach = callouts.Reach(side);
    DimensionStack stack{.side = side, .edge = object + (below ? reach : -reach)};
    if (reach > 0 && callouts.IsWithin(side)) {
      for (const double station : stations) stack.starts.push_back({station, object});
    }
    stack.tiers.push_back({.stations = std::move(stations), .texts = {{names_.In(size), {}}}});
    AddDimensionStack(out, stack, DimensionStyle{}, metrics_);
  }

  [[nodiscard]] std::string GrainWords() const {
    std::string words = "grain";
    if (is_sheet_ && !stock_.trim.IsZero()) {
      words += "; trim " + names_.In(stock_.trim) + " off every edge first";
    }
    words += "; kerf " + names_.In(picture_.group.job.kerf);
    return unsized_ ? words + "; offcuts without a size are waste" : words;
  }

  void Key() {
    const double top = Bounds(view_.groups).bottom + 6;
    AddKey(AddViewGroup(view_, "key", "Parts by letter", 1), names_.KeyRows(content_.leaves),
           {view_.outline.left, top}, picture_.key_width, view_.outline.Width(), metrics_);
  }

  const StockPicture& picture_;
  const StockNames& names_;
  const NestLayout& layout_;
  const NestStock& stock_;
  PanelContent content_;
  const TextMetrics& metrics_;
  bool is_sheet_ = false;  // the whole of it, its trim too
  Rect shown_;
  bool unsized_ = false;
  View view_;
};

}  // namespace

StockPictureDrawn DrawStockPicture(const StockPicture& picture, const Scale& scale,
                                   const TextMetrics& metrics) {
  return PictureMaker(picture, scale, metrics).Run();
}

View StockKey(std::string name, std::string title, const std::vector<std::string>& rows,
              double width, const TextMetrics& metrics) {
  View view;
  view.name = std::move(name);
  view.scale.name = {};
  view.title = std::move(title);
  AddKey(AddViewGroup(view, "key", "Parts by letter", 1), rows, {}, width, width, metrics);
  const double top = Bounds(view.groups).top - 8;
  AddViewTitle(AddViewGroup(view, "title", view.title, 0), {.at = {0, top}, .title = view.title},
               metrics);
  view.box = Bounds(view.groups);
  return view;
}

}  // namespace tillwright
