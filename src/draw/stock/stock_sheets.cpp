#include <algorithm>

#include "bank/headings.h"
#include "draw/sheets/sheets.h"
#include "draw/sheets/sheets_title.h"
#include "draw/stock/layout_panels.h"
#include "stock/layout_runs.h"
#include "tillwright/length_text.h"
#include "tillwright/stock_draw.h"

namespace tillwright {
namespace {

class StockSheets {
 public:
  StockSheets(const StockPlan& plan, const DrawOptions& options, const TextMetrics& metrics)
      : plan_(plan),
        options_(options),
        metrics_(metrics),
        paper_(options.paper.value_or(UsualPaper(plan.units))) {}

  Drawings Run() {
    for (const StockGroup& group : plan_.groups) {
      for (const LayoutRun& run : LayoutRuns(group)) Add(group, run);
      if (!drawings_.fault.empty()) return std::move(drawings_);
    }
    for (std::size_t i = 0; i < plans_.size(); ++i) Finish(i);
    return std::move(drawings_);
  }

 private:
  // Layouts that are alike are drawn once.
  void Add(const StockGroup& group, const LayoutRun& run) {
    const StockLayoutTitle title{.which = Which(group, run), .material = Material(group)};
    LayoutViews drawn =
        DrawLayout(plan_, group, group.plan.layouts[run.front()], title, drawings_.views.size() + 1,
                   SpaceOn(paper_, Orientation::kLandscape), metrics_);
    if (drawings_.fault.empty()) drawings_.fault = drawn.fault;
    for (View& view : drawn.views) {
      drawings_.views.push_back(OwnPage(view, TitleOr(plan_.title)));
      Place(std::move(view));
    }
  }

  // "SHEETS 2–4 OF 6 (× 3)"
  static std::string Which(const StockGroup& group, const LayoutRun& run) {
    const std::string count = std::to_string(run.size());
    return std::string(group.solid ? "BOARD" : "SHEET") + (run.size() > 1 ? "S " : " ") +
           RunNumbers(run) + " OF " + std::to_string(group.plan.layouts.size()) +
           (run.size() > 1 ? " (× " + count + ")" : "");
  }

  [[nodiscard]] std::string Material(const StockGroup& group) const {
    const std::string thickness = FormatWithUnit(group.thickness, plan_.units);
    return group.material.empty() ? thickness : thickness + " " + group.material;
  }

  void Place(View view) {
    std::vector<View> views{std::move(view)};
    if (!plans_.empty() && plans_.back().Place(views)) return;
    plans_.emplace_back(paper_, Orientation::kLandscape);
    if (!plans_.back().Place(views)) drawings_.fault = "a layout does not fit the paper";
  }

  void Finish(std::size_t index) {
    TitleBlock block;
    block.title = TitleOr(plan_.title);
    block.view = "Stock: parts on sheets and boards";
    block.scale = ScalesOn(plans_[index]);
    block.units = UnitsWord(plan_.units);
    block.date = options_.date;
    block.sheet = static_cast<int>(index) + 1;
    block.sheets = static_cast<int>(plans_.size());
    drawings_.sheets.push_back(
        plans_[index].Finished(block, "stock-sheet-" + std::to_string(index + 1), metrics_));
  }

  const StockPlan& plan_;
  const DrawOptions& options_;
  const TextMetrics& metrics_;
  Paper paper_;
  std::vector<SheetPlan> plans_;
  Drawings drawings_;
};

}  // namespace

Drawings DrawStock(const StockPlan& plan, const DrawOptions& options, const TextMetrics& metrics) {
  return StockSheets(plan, options, metrics).Run();
}

}  // namespace tillwright
