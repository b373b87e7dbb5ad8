#include <algorithm>
#include <tuple>

#include "spec/defaults.h"
#include "tillwright/parts.h"
#include "tillwright/stock.h"

namespace tillwright {
namespace {

// Looks at a part's leftovers for each part laid out: enough for the engine to settle, little for a
// small job.
constexpr std::int64_t kWorkEach = 250'000;
constexpr std::int64_t kMostWork = 60'000'000;

class StockPlanner {
 public:
  explicit StockPlanner(std::span<const StockSource> sources) : sources_(sources) {
    plan_.units = sources.front().bank->units;
    plan_.title = sources.front().bank->title;
    spec_ = &sources.front().spec->stock;
    for (const StockSource& source : sources) {
      if (!spec_->typed && source.spec->stock.typed) spec_ = &source.spec->stock;
    }
  }

  StockPlan Run() {
    const Rational waste = spec_->waste.typed ? spec_->waste.value : Rational{10, 1};
    plan_.waste_percent = static_cast<int>(waste.numerator / waste.denominator);
    for (std::size_t i = 0; i < sources_.size(); ++i) AddSource(i);
    std::ranges::stable_sort(plan_.groups, [](const StockGroup& a, const StockGroup& b) {
      return std::tuple(a.solid, std::string_view(a.material), -a.thickness) <
             std::tuple(b.solid, std::string_view(b.material), -b.thickness);
    });
    plan_.priced = true;
    for (StockGroup& group : plan_.groups) LayOut(group);
    return std::move(plan_);
  }

 private:
  [[nodiscard]] Length In(const Default& value) const { return value.In(plan_.units); }
  [[nodiscard]] static Length Or(const Entry<Length>& typed, Length fallback) {
    return typed.typed ? typed.value : fallback;
  }

  void AddSource(std::size_t index) {
    const StockSource& source = sources_[index];
    const std::vector<CutLine> own =
        source.cuts == nullptr ? CutList(*source.spec, *source.bank) : std::vector<CutLine>();
    for (const CutLine& line : source.cuts == nullptr ? own : *source.cuts) {
      std::string label = line.label;
      if (sources_.size() > 1) label = std::string(1, Letter(index)) + ": " + label;
      AddLine(GroupFor(line), line, std::move(label));
    }
  }

  // A, B, C …; banks past the 26th share the last.
  static char Letter(std::size_t index) {
    return static_cast<char>('A' + std::min<std::size_t>(index, 25));
  }

  StockGroup& GroupFor(const CutLine& line) {
    const auto found = std::ranges::find_if(plan_.groups, [&](const StockGroup& group) {
      return group.material == line.material && group.thickness == line.thickness &&
             group.solid == line.solid;
    });
    if (found != plan_.groups.end()) return *found;
    StockGroup group;
    group.material = line.material;
    group.thickness = line.thickness;
    group.solid = line.solid;
    group.rough = line.thickness;
    AddStock(group);
    plan_.groups.push_back(std::move(group));
    return plan_.groups.back();
  }

  // --- What there is to cut from ----------------------------------------------------------------

  void AddStock(StockGroup& group) const {
    group.job.kerf = Or(spec_->kerf, In(defaults::kKerf));
    group.job.stages = group.solid ? 0 : spec_->stages.value;
    if (group.solid) group.rough = RoughThickness(group);
    const std::vector<StockPieceSpec>& pieces = group.solid ? spec_->boards : spec_->sheets;
    for (const StockPieceSpec& piece : pieces) {
      if (Suits(piece, group)) AddPiece(piece, group);
    }
    if (!group.job.stock.empty()) return;
    StockPieceSpec usual;
    usual.length = In(group.solid ? defaults::kBoardLength : defaults::kSheetLength);
    usual.width = In(group.solid ? defaults::kBoardWidth : defaults::kSheetWidth);
    AddPiece(usual, group);
  }

  static bool OfMaterial(const StockPieceSpec& piece, const StockGroup& group) {
    return piece.material.value.empty() || piece.material.value == group.material;
  }

  // Boards are planed down to the thickness: those that are taken are the thinnest that allow it.
  [[nodiscard]] Length RoughThickness(const StockGroup& group) const {
    Length best;
    for (const StockPieceSpec& piece : spec_->boards) {
      if (!OfMaterial(piece, group) || !piece.thickness.typed) continue;
      if (piece.thickness.value < group.thickness) continue;
      if (best.IsZero() || piece.thickness.value < best) best = piece.thickness.value;
    }
    if (!best.IsZero()) return best;
    return CeilTo(group.thickness + In(defaults::kPlaning), In(defaults::kBoardStep));
  }

  static bool Suits(const StockPieceSpec& piece, const StockGroup& group) {
    return OfMaterial(piece, group) &&
           (!piece.thickness.typed || piece.thickness.value == group.rough);
  }

  // Flaws cut a piece into the clear stretches between them; each such piece is there once.
  void AddPiece(const StockPieceSpec& piece, StockGroup& group) const {
    std::vector<FlawSpec> flaws = piece.flaws;
    std::ranges::sort(flaws, {}, [](const FlawSpec& flaw) { return flaw.from.value; });
    Length begin;
    for (const FlawSpec& flaw : flaws) {
      AddClear(piece, begin, flaw.from.value, group);
      begin = Max(begin, flaw.to.value);
    }
    AddClear(piece, begin, piece.length.value, group);
  }

  void AddClear(const StockPieceSpec& piece, Length from, Length to, StockGroup& group) const {
    const Length trim = group.solid ? Length() : Or(spec_->trim, In(defaults::kTrim));
    if (to - from <= 2 * trim || piece.width.value <= 2 * trim) return;
    NestStock stock;
    stock.label = piece.name.value;
    stock.along = to - from;
    stock.across = piece.width.value;
    stock.trim = trim;
    stock.on_hand = piece.on_hand.value;
    if (piece.count.typed) stock.count = piece.count.value;
    if (!stock.count && (stock.on_hand || !piece.flaws.empty())) stock.count = 1;
    if (piece.price.typed) stock.price = Coins(piece.price.value);
    group.job.stock.push_back(std::move(stock));
    group.begins.push_back(from);
  }

  // Hundredths, to the nearest.
  static std::int64_t Coins(Rational price) {
    return (200 * price.numerator + price.denominator) / (2 * price.denominator);
  }

  // --- What is cut ------------------------------------------------------------------------------

  void AddLine(StockGroup& group, const CutLine& line, std::string label) const {
    StockPart part{.label = std::move(label),
                   .length = line.length,
                   .width = line.width,
                   .count = line.kind.count};
    NestPart nest{.label = {},
                  .along = line.rough_length,
                  .across = line.rough_width,
                  .count = line.kind.count,
                  .may_turn = !group.solid && line.grain == Grain::kNone};
    if (group.solid && !line.boards.empty()) {
      GlueUpAsListed(line, nest, part);
    } else if (group.solid) {
      GlueUp(group, nest, part);
    }
    nest.label = part.label;
    group.parts.push_back(std::move(part));
    group.job.parts.push_back(std::move(nest));
  }

  // The boards the cut list has for it; the last may be narrower and is cut with the others.
  static void GlueUpAsListed(const CutLine& line, NestPart& nest, StockPart& part) {
    part.staves = static_cast<int>(line.boards.size());
    nest.across = line.boards.front();
    nest.count *= part.staves;
  }

  // As few boards of one width as the widest board there is allows, each wider by what jointing
  // its edges takes.
  void GlueUp(const StockGroup& group, NestPart& nest, StockPart& part) const {
    Length widest;
    for (const NestStock& stock : group.job.stock) widest = Max(widest, stock.across);
    const Length joint = In(defaults::kJointing);
    if (nest.across <= widest || widest <= 2 * joint) return;
    const Length each = widest - joint;
    part.staves =
        static_cast<int>((nest.across.picometers() + each.picometers() - 1) / each.picometers());
    nest.across = PartBelow(nest.across, part.staves) + Length::Picometers(1) + joint;
    nest.across =
        CeilTo(nest.across, In(Default{Length::Inches(1, 64), Length::Picometers(100'000'000)}));
    nest.across = Min(nest.across, widest);
    nest.count *= part.staves;
  }

  void LayOut(StockGroup& group) {
    std::int64_t parts = 0;
    for (const NestPart& part : group.job.parts) parts += part.count;
    group.job.work = std::min(kMostWork, parts * kWorkEach);
    group.plan = Nest(group.job);
    for (const StockUse& use : UsesOf(group)) {
      const NestStock& stock = group.job.stock[static_cast<std::size_t>(use.stock)];
      plan_.priced = plan_.priced && (stock.on_hand || stock.price.has_value());
    }
  }

  std::span<const StockSource> sources_;
  const StockListSpec* spec_;
  StockPlan plan_;
};

}  // namespace

StockPlan PlanStock(std::span<const StockSource> sources) { return StockPlanner(sources).Run(); }

std::vector<StockUse> UsesOf(const StockGroup& group) {
  std::vector<StockUse> uses;
  for (std::size_t i = 0; i < group.job.stock.size(); ++i) {
    const auto stock = static_cast<std::int32_t>(i);
    const auto n = std::ranges::count(group.plan.layouts, stock, &NestLayout::stock);
    if (n > 0) uses.push_back({stock, n});
  }
  return uses;
}

double BoardVolume(const StockPlan& plan, const StockGroup& group) {
  double volume = 0;
  for (const NestLayout& layout : group.plan.layouts) {
    const NestStock& stock = group.job.stock[static_cast<std::size_t>(layout.stock)];
    volume += ToMillimeters(stock.along) * ToMillimeters(stock.across) * ToMillimeters(group.rough);
  }
  return volume * (100 + plan.waste_percent) / 100;
}

bool IsWhole(const StockPlan& plan) {
  return std::ranges::all_of(plan.groups, [](const StockGroup& group) {
    return std::ranges::all_of(group.plan.missing, [](std::int64_t n) { return n == 0; });
  });
}

}  // namespace tillwright
