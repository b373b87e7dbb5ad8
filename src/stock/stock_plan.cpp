#include <algorithm>
#include <tuple>

#include "spec/defaults.h"
#include "stock/board_choice.h"
#include "stock/stock_parts.h"
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
      if (sources.size() > 1) plan_.banks.push_back(source.bank->title);
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

  void AddSource(std::size_t index) {
    const StockSource& source = sources_[index];
    const std::string prefix =
        sources_.size() > 1 ? std::string(1, BankLetter(index)) + ": " : std::string();
    const std::vector<CutLine> lines =
        source.cuts != nullptr ? *source.cuts : CutList(*source.spec, *source.bank, *spec_);
    const std::vector<std::size_t> line_of = LineOfParts(*source.bank, lines);
    const std::vector<FrontRun> runs = MatchedFronts(*source.bank);
    std::vector<std::int64_t> alone;
    for (const CutLine& line : lines) alone.push_back(line.kind.count);
    for (const FrontRun& run : runs) {
      for (const std::size_t part : run.parts) --alone[line_of[part]];
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (alone[i] == 0) continue;
      StockParts(GroupFor(lines[i])).Add(lines[i], prefix + lines[i].label, alone[i]);
    }
    for (const FrontRun& run : runs) {
      StockGroup& group = GroupFor(lines[line_of[run.parts.front()]]);
      StockParts(group).AddRun({source, lines, line_of, run, prefix});
    }
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
    group.job.kerf = LengthOr(spec_->kerf, defaults::kKerf, plan_.units);
    group.job.stages = group.solid ? 0 : spec_->stages.value;
    if (group.solid) {
      group.rough = RoughThickness(*spec_, {group.material, group.thickness}, plan_.units);
    }
    const std::vector<StockPieceSpec>& pieces = group.solid ? spec_->boards : spec_->sheets;
    for (const StockPieceSpec& piece : pieces) {
      if (Suits(piece, group.material, group.rough)) AddPiece(piece, group);
    }
    const auto is_bought = [](const NestStock& stock) { return !stock.on_hand; };
    if (std::ranges::any_of(group.job.stock, is_bought)) return;
    group.usual = static_cast<std::int32_t>(group.job.stock.size());
    StockPieceSpec usual;
    usual.length = In(group.solid ? defaults::kBoardLength : defaults::kSheetLength);
    usual.width = In(group.solid ? defaults::kBoardWidth : defaults::kSheetWidth);
    AddPiece(usual, group);
  }

  // Defects cut a piece into the clear stretches between them; each such piece is there once.
  void AddPiece(const StockPieceSpec& piece, StockGroup& group) const {
    std::vector<DefectSpec> defects = piece.defects;
    std::ranges::sort(defects, {}, [](const DefectSpec& defect) { return defect.from.value; });
    Length begin;
    for (const DefectSpec& defect : defects) {
      AddClear(piece, begin, defect.from.value, group);
      begin = Max(begin, defect.to.value);
    }
    AddClear(piece, begin, piece.length.value, group);
  }

  void AddClear(const StockPieceSpec& piece, Length from, Length to, StockGroup& group) const {
    const Length trim =
        group.solid ? Length() : LengthOr(spec_->trim, defaults::kTrim, plan_.units);
    if (to - from <= 2 * trim || piece.width.value <= 2 * trim) return;
    NestStock stock;
    stock.label = piece.name.value;
    stock.along = to - from;
    stock.across = piece.width.value;
    stock.trim = trim;
    stock.on_hand = piece.on_hand.value;
    if (piece.count.typed) stock.count = piece.count.value;
    if (!stock.count && (stock.on_hand || !piece.defects.empty())) stock.count = 1;
    if (piece.price.typed) stock.price = Coins(piece.price.value);
    group.job.stock.push_back(std::move(stock));
    group.begins.push_back(from);
  }

  // Hundredths, to the nearest.
  static std::int64_t Coins(Rational price) {
    return (200 * price.numerator + price.denominator) / (2 * price.denominator);
  }

  void LayOut(StockGroup& group) {
    std::int64_t parts = 0;
    for (const NestPart& part : group.job.parts) parts += part.count;
    group.job.work = std::min(kMostWork, parts * kWorkEach);
    group.plan = Nest(group.job);
    while (BreakUnplacedRuns(group)) group.plan = Nest(group.job);
    NameRuns(group);
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

char BankLetter(std::size_t index) {
  return static_cast<char>('A' + std::min<std::size_t>(index, 25));
}

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
