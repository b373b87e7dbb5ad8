#include <algorithm>
#include <array>

#include "draw/sheets.h"
#include "draw/stock/stock_view.h"
#include "tillwright/stock_draw.h"

namespace tillwright {
namespace {

constexpr std::array kPapers{Paper::kA4, Paper::kA3, Paper::kLetter, Paper::kTabloid};

class StockSheets {
 public:
  StockSheets(const StockPlan& plan, const DrawOptions& options, const TextMetrics& metrics)
      : plan_(plan), options_(options), metrics_(metrics) {
    for (const Paper paper : kPapers) {
      const bool usual = paper == (plan.units == Unit::kInch ? Paper::kLetter : Paper::kA4);
      const std::string_view name = SizeOf(paper, Orientation::kLandscape).name;
      if (options.paper.empty() ? usual : options.paper == name) paper_ = paper;
    }
  }

  Drawings Run() {
    for (std::size_t g = 0; g < plan_.groups.size(); ++g) {
      for (std::size_t i = 0; i < plan_.groups[g].plan.layouts.size(); ++i) Add(g, i);
      if (!drawings_.fault.empty()) return std::move(drawings_);
    }
    for (std::size_t i = 0; i < plans_.size(); ++i) Finish(i);
    return std::move(drawings_);
  }

 private:
  // At the largest scale that fits the paper.
  void Add(std::size_t group, std::size_t layout) {
    const PaperBox space = SpaceOn(paper_, Orientation::kLandscape);
    for (const Scale& scale : ScaleSeries(plan_.units)) {
      View view = StockView(plan_, group, layout, drawings_.views.size() + 1, scale, metrics_);
      if (view.box.Width() > space.Width() || view.box.Height() > space.Height()) continue;
      drawings_.views.push_back(OwnPage(view, plan_.title.empty() ? "Drawer bank" : plan_.title));
      return Place(std::move(view));
    }
    drawings_.fault = "a layout does not fit the paper";
  }

  void Place(View view) {
    const std::string kind = "stock";
    std::vector<View> views{std::move(view)};
    if (!plans_.empty() && plans_.back().Place(views, kind)) return;
    plans_.emplace_back(paper_, Orientation::kLandscape);
    if (!plans_.back().Place(views, kind)) drawings_.fault = "a layout does not fit the paper";
  }

  void Finish(std::size_t index) {
    TitleBlock block;
    block.title = plan_.title.empty() ? "Drawer bank" : plan_.title;
    block.view = "Stock: parts on sheets and boards";
    block.scale = std::string(plans_[index].views().front().scale.name);
    block.units = plan_.units == Unit::kInch ? "inch" : "mm";
    block.date = options_.date;
    block.sheet = static_cast<int>(index) + 1;
    block.sheets = static_cast<int>(plans_.size());
    drawings_.sheets.push_back(
        plans_[index].Finished(block, "stock-sheet-" + std::to_string(index + 1), metrics_));
  }

  const StockPlan& plan_;
  const DrawOptions& options_;
  const TextMetrics& metrics_;
  Paper paper_ = Paper::kA4;
  std::vector<SheetPlan> plans_;
  Drawings drawings_;
};

}  // namespace

Drawings DrawStock(const StockPlan& plan, const DrawOptions& options, const TextMetrics& metrics) {
  return StockSheets(plan, options, metrics).Run();
}

}  // namespace tillwright
