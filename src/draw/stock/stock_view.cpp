#include "draw/stock/stock_view.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

#include "draw/annotation.h"
#include "draw/dimension.h"
#include "draw/hatch.h"
#include "draw/rich_text.h"
#include "draw/stock/run_marks.h"
#include "draw/stock/stock_labels.h"
#include "draw/view_tools.h"
#include "tillwright/length_text.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

constexpr double kHatchSpacing = 3.0;    // mm
constexpr double kLegendColumn = 82;     // mm: three go on the narrowest paper
constexpr std::size_t kLegendRows = 10;  // in more, it is spread over up to three columns
constexpr double kLegendPitch = 4.6;     // mm
constexpr double kGrainArrow = 24;       // mm
constexpr double kLeastOffcut = 1.0;     // mm on paper; thinner ones are left white

// A, B … Z, AA, AB …
std::string KeyOf(std::size_t index) {
  const std::string last(1, static_cast<char>('A' + index % 26));
  return index < 26 ? last : KeyOf(index / 26 - 1) + last;
}

class StockViewMaker {
 public:
  StockViewMaker(const StockPlan& plan, const StockGroup& group, const NestLayout& layout,
                 const TextMetrics& metrics)
      : plan_(plan),
        group_(group),
        layout_(layout),
        stock_(group.job.stock[static_cast<std::size_t>(layout.stock)]),
        metrics_(metrics) {
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind != NestPieceKind::kPart) continue;
      if (std::ranges::find(keys_, piece.part) == keys_.end()) keys_.push_back(piece.part);
    }
    std::ranges::sort(keys_);
  }

  View Run(std::string name, std::string title, const Scale& scale) {
    view_.name = std::move(name);
    view_.title = std::move(title);
    view_.scale = scale;
    view_.map.scale = scale;
    view_.outline = Box({Length(), Length(), stock_.along, stock_.across});
    AddViewGroup(view_, "sheet", "Sheet", 1)
        .primitives.emplace_back(BoxOutline(view_.outline, Pen::kOutline));
    SheetGroup cuts;
    Cuts(cuts);
    Runs();
    Offcuts();
    Parts();
    AddViewGroup(view_, "cuts", "Cuts in order", 1).primitives = std::move(cuts.primitives);
    Outside();
    Legend();
    FinishView(view_, view_.outline.left, plan_.units, metrics_);
    return std::move(view_);
  }

 private:
  [[nodiscard]] PaperBox Box(const Rect& rect) const { return view_.map.Box(rect); }
  [[nodiscard]] std::string In(Length length) const { return FormatLength(length, plan_.units); }
  [[nodiscard]] std::string Size(Length a, Length b) const { return In(a) + " × " + In(b); }
  [[nodiscard]] std::string KeyFor(std::int32_t part) const {
    return KeyOf(static_cast<std::size_t>(std::ranges::find(keys_, part) - keys_.begin()));
  }

  // Hatched round their sizes.
  void Offcuts() {
    SheetGroup& group = AddViewGroup(view_, "offcuts", "Offcuts", 1);
    for (const NestPiece& piece : layout_.pieces) {
      if (piece.kind != NestPieceKind::kOffcut) continue;
      const PaperBox box = Box(piece.rect);
      if (std::min(box.Width(), box.Height()) < kLeastOffcut) continue;
      const std::string size = Size(piece.rect.width, piece.rect.height);
      const std::vector<std::string> texts{"offcut " + size, size};
      std::optional<Label> label = LabelInBox(texts, box, taken_, metrics_);
      HatchArea area = AreaOf(box);
      if (label) area.box_holes.push_back(Grow(label->box, 1.0));
      group.primitives.emplace_back(HatchAtAngle(area, 45, kHatchSpacing, Pen::kHatch));
      if (label) group.primitives.emplace_back(std::move(*label));
    }
  }

  // Fronts that are cut from one piece: the piece, and in which order.
  void Runs() {
    SheetGroup marks;
    for (const NestPiece& piece : layout_.pieces) {
      if (piece.kind == NestPieceKind::kPart || piece.run < 0) continue;
      runs_.push_back(piece.run);
      const NestPiece* first = nullptr;
      const NestPiece* last = nullptr;
      for (const std::int32_t index : piece.pieces) {
        const NestPiece& part = layout_.pieces[static_cast<std::size_t>(index)];
        if (part.kind != NestPieceKind::kPart) continue;
        if (first == nullptr || part.place < first->place) first = &part;
        if (last == nullptr || part.place > last->place) last = &part;
      }
      if (first == last) continue;  // a stretch of one front
      const std::optional<PaperBox> arrow =
          AddRunMarks(marks, Box(piece.rect), Box(first->rect), Box(last->rect), taken_);
      if (arrow) taken_.push_back(*arrow);
    }
    if (runs_.empty()) return;
    AddViewGroup(view_, "runs", "Fronts cut from one piece", 1).primitives =
        std::move(marks.primitives);
  }

  // What a part may be called, the longest first.
  [[nodiscard]] std::vector<std::string> TextsFor(const NestPiece& piece) const {
    const auto at = static_cast<std::size_t>(piece.part);
    const std::string key = KeyFor(piece.part);
    const NestPart& part = group_.job.parts[at];
    const std::string size = Size(part.along, part.across);
    if (piece.run < 0) {
      return {key + "  " + group_.parts[at].label + "  " + size, key + "  " + size, key};
    }
    const StockRun& run = group_.runs[static_cast<std::size_t>(piece.run)];
    const std::string& front = run.fronts[static_cast<std::size_t>(piece.place)];
    return {key + "  " + run.label + ", " + front + "  " + size, front + "  " + size, front};
  }

  void Parts() {
    SheetGroup& group = AddViewGroup(view_, "parts", "Parts", 1);
    for (const NestPiece& piece : layout_.pieces) {
      if (piece.kind != NestPieceKind::kPart) continue;
      const PaperBox box = Box(piece.rect);
      group.primitives.emplace_back(InsetOutline(box, Pen::kFront));
      if (auto label = LabelInBox(TextsFor(piece), box, taken_, metrics_)) {
        group.primitives.emplace_back(std::move(*label));
      }
    }
  }

  // Every cut along its kerf, numbered in the order it is made. The numbers find their places first
  // and are drawn last.
  void Cuts(SheetGroup& group) {
    std::vector<PaperSegment> lines;
    for (const NestCut& cut : CutsOf(layout_)) {
      const Rect& piece = layout_.pieces[static_cast<std::size_t>(cut.piece)].rect;
      const Length at = cut.at + HalfBelow(group_.job.kerf);
      const PaperMap& map = view_.map;
      lines.push_back(cut.across ? PaperSegment{map.At(at, piece.y), map.At(at, piece.Top())}
                                 : PaperSegment{map.At(piece.x, at), map.At(piece.Right(), at)});
      group.primitives.emplace_back(LineOf(lines.back().from, lines.back().to, Pen::kThin));
    }
    SheetGroup numbers;  // above all leaders
    std::vector<PaperBox> leaders;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const PaperPoint end = lines[i].to;
      const bool outer = end.x > view_.outline.right - 2 || end.y < view_.outline.top + 2;
      const DiscPlace place = ClearPlace(lines[i].from, end, kDisc, outer, taken_);
      group.primitives.emplace_back(LineOf(place.foot, place.at, Pen::kLeader));
      leaders.push_back(Grow(Bounds(group.primitives.back()), 0.3));
      taken_.push_back(AddCutNumber(numbers, place.at, i + 1, metrics_));
    }
    std::ranges::move(numbers.primitives, std::back_inserter(group.primitives));
    taken_.insert(taken_.end(), leaders.begin(), leaders.end());  // for the labels to come
  }

  // Overall sizes, the grain, what is trimmed off.
  void Outside() {
    SheetGroup& group = AddViewGroup(view_, "sizes", "Sizes and grain", 1);
    const PaperBox& box = view_.outline;
    DimensionStack below{.side = PaperSide::kBelow, .edge = box.bottom};
    below.tiers.push_back({.stations = {box.left, box.right}, .texts = {{In(stock_.along), {}}}});
    AddDimensionStack(group, below, DimensionStyle{}, metrics_);
    DimensionStack left{.side = PaperSide::kLeft, .edge = box.left};
    left.tiers.push_back({.stations = {box.top, box.bottom}, .texts = {{In(stock_.across), {}}}});
    AddDimensionStack(group, left, DimensionStyle{}, metrics_);
    const double y = Bounds(view_.groups).bottom + 4;
    AddGrainArrow(group, {box.left + kGrainArrow / 2, y}, kGrainArrow, PaperAxis::kHorizontal);
    const LabelStyle style{.cap_height = 2.2};
    group.primitives.emplace_back(
        MakePlainLabel(metrics_, GrainWords(), style, {box.left + kGrainArrow + 3, y}));
  }

  [[nodiscard]] std::string GrainWords() const {
    std::string words = "grain";
    if (!stock_.trim.IsZero()) words += "; trim " + In(stock_.trim) + " off every edge first";
    return words + "; kerf " + In(group_.job.kerf);
  }

  // The letters of the parts, in columns below.
  void Legend() {
    const double top = Bounds(view_.groups).bottom + 5;
    const double left = view_.outline.left;
    auto columns = static_cast<std::size_t>(
        std::max(1.0, (view_.outline.Width() + kLegendColumn / 4) / kLegendColumn));
    const std::size_t all = keys_.size() + runs_.size();
    while (columns < 3 && all > columns * kLegendRows) ++columns;
    const std::size_t rows = (all + columns - 1) / columns;
    SheetGroup& group = AddViewGroup(view_, "legend", "Parts by letter", 1);
    for (std::size_t i = 0; i < all; ++i) {
      const PaperPoint at{left + kLegendColumn * static_cast<double>(i / rows),
                          top + kLegendPitch * static_cast<double>(i % rows)};
      const LabelStyle style{.cap_height = 2.0, .max_width = kLegendColumn - 4};
      const std::string row = i < keys_.size() ? LegendRow(i) : RunRow(runs_[i - keys_.size()]);
      group.primitives.emplace_back(MakeLabel(metrics_, row, style, at, {}));
    }
  }

  [[nodiscard]] std::string RunRow(std::int32_t index) const {
    const StockRun& run = group_.runs[static_cast<std::size_t>(index)];
    const std::string order =
        run.fronts.size() > 1 ? ", " + std::string(OrderWords(run.match)) : "";
    const bool many = run.fronts.size() > 6;
    const std::string fronts =
        many ? run.fronts.front() + " … " + run.fronts.back() : FrontsOf(run);
    return run.label + "  " + fronts + order + ", one piece " + Size(run.length, run.width);
  }

  [[nodiscard]] std::string LegendRow(std::size_t index) const {
    const std::int32_t part = keys_[index];
    const auto at = static_cast<std::size_t>(part);
    const auto count = std::ranges::count_if(layout_.pieces, [&](const NestPiece& piece) {
      return piece.kind == NestPieceKind::kPart && piece.part == part;
    });
    const NestPart& sawn = group_.job.parts[at];
    return KeyOf(index) + "  " + std::to_string(count) + " of " + Size(sawn.along, sawn.across) +
           ", " + group_.parts[at].label;
  }

  const StockPlan& plan_;
  const StockGroup& group_;
  const NestLayout& layout_;
  const NestStock& stock_;
  const TextMetrics& metrics_;
  std::vector<std::int32_t> keys_;  // the kinds of parts on it, in order
  std::vector<std::int32_t> runs_;  // those that are cut from it
  std::vector<PaperBox> taken_;     // by the numbers of the cuts
  View view_;
};

}  // namespace

View StockView(const StockPlan& plan, std::size_t group, std::size_t layout, std::size_t number,
               const Scale& scale, const TextMetrics& metrics) {
  const StockGroup& g = plan.groups[group];
  std::string title = (g.solid ? "BOARD " : "SHEET ") + std::to_string(layout + 1) + " OF " +
                      std::to_string(g.plan.layouts.size()) + ": " +
                      FormatWithUnit(g.thickness, plan.units);
  if (!g.material.empty()) title += " " + g.material;
  return StockViewMaker(plan, g, g.plan.layouts[layout], metrics)
      .Run("stock-" + std::to_string(number), std::move(title), scale);
}

}  // namespace tillwright
