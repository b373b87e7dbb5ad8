#include <algorithm>
#include <array>

#include "bank/headings.h"
#include "draw/fitting/fitting.h"
#include "draw/sheets/sheets.h"
#include "tillwright/draw.h"

namespace tillwright {
namespace {

class FittingSheets {
 public:
  FittingSheets(const Spec& spec, const Bank& bank, const GapCheck& check,
                const TextMetrics& metrics)
      : spec_(spec),
        bank_(bank),
        check_(check),
        metrics_(metrics),
        paper_(UsualPaper(bank.units)) {}

  std::vector<Sheet> Draw() {
    if (!OnePage()) SeveralPages();
    std::vector<Sheet> sheets;
    for (std::size_t i = 0; i < plans_.size(); ++i) {
      const std::string name = i == 0 ? "fitting" : "fitting-" + std::to_string(i + 1);
      sheets.push_back(plans_[i].Finished(BlockOf(i), name, metrics_));
    }
    return sheets;
  }

 private:
  // All on one page, the elevation as large as that allows.
  bool OnePage() {
    for (const Scale& scale : ScaleSeries(bank_.units)) {
      const View elevation = FittingElevation(bank_, check_, scale, metrics_);
      if (std::max(elevation.outline.Width(), elevation.outline.Height()) < kSmallest) break;
      for (const EvennessLayout& layout : kEvenness) {
        for (const Orientation turn : {Orientation::kLandscape, Orientation::kPortrait}) {
          SheetPlan plan(paper_, turn);
          if (!Fits(plan, elevation, layout, turn)) continue;
          plans_.push_back(std::move(plan));
          return true;
        }
      }
    }
    return false;
  }

  bool Fits(SheetPlan& plan, const View& elevation, const EvennessLayout& layout,
            Orientation turn) const {
    if (!Put(plan, elevation)) return false;
    for (const View& view : Tables(turn)) {
      if (!Put(plan, view)) return false;
    }
    return Put(plan, EvennessView(bank_, check_, layout, metrics_));
  }

  std::vector<View> Tables(Orientation turn) const {
    return FittingTable(spec_, bank_, check_, SpaceOn(paper_, turn).Height(), metrics_);
  }

  static bool Put(SheetPlan& plan, const View& view) {
    std::vector<View> views{view};
    return plan.Place(views);
  }

  void SeveralPages() {
    constexpr Orientation kTurn = Orientation::kPortrait;
    std::vector<View> views;
    for (const Scale& scale : ScaleSeries(bank_.units)) {
      View elevation = FittingElevation(bank_, check_, scale, metrics_);
      SheetPlan trial(paper_, kTurn);
      if (!Put(trial, elevation)) continue;
      views.push_back(std::move(elevation));
      break;
    }
    views.push_back(EvennessView(bank_, check_, kEvenness.front(), metrics_));
    std::vector<View> tables = Tables(kTurn);
    std::rotate(tables.begin(), tables.end() - 1,
                tables.end());  // what to measure, before the long table
    views.insert(views.end(), tables.begin(), tables.end());
    for (const View& view : views) {
      const bool placed =
          std::ranges::any_of(plans_, [&](SheetPlan& plan) { return Put(plan, view); });
      if (placed) continue;
      plans_.emplace_back(paper_, kTurn);
      Put(plans_.back(), view);
    }
  }

  TitleBlock BlockOf(std::size_t i) const {
    TitleBlock block;
    block.title = TitleOr(bank_.title);
    block.view = "Fitting sheet";
    for (const View& view : plans_[i].views()) {
      if (!view.scale.name.empty()) block.scale = view.scale.name;
    }
    block.units = UnitsWord(bank_.units);
    block.sheet = static_cast<int>(i) + 1;
    block.sheets = static_cast<int>(plans_.size());
    return block;
  }

  static constexpr double kSmallest = 60;  // mm, of an elevation with numbers on it
  // From the most legible down.
  static constexpr std::array kEvenness{EvennessLayout{46, 56, 4}, EvennessLayout{46, 56, 2},
                                        EvennessLayout{36, 44, 4}, EvennessLayout{36, 44, 2},
                                        EvennessLayout{30, 34, 4}, EvennessLayout{30, 34, 2}};

  const Spec& spec_;
  const Bank& bank_;
  const GapCheck& check_;
  const TextMetrics& metrics_;
  Paper paper_;
  std::vector<SheetPlan> plans_;
};

}  // namespace

std::vector<Sheet> DrawFittingSheet(const Spec& spec, const Bank& bank, const GapCheck& check,
                                    const TextMetrics& metrics) {
  return FittingSheets(spec, bank, check, metrics).Draw();
}

}  // namespace tillwright
