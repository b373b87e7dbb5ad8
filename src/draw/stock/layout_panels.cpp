#include "draw/stock/layout_panels.h"

#include <algorithm>
#include <array>
#include <deque>
#include <optional>
#include <utility>

#include "draw/stock/stock_view.h"
#include "sheet/scale.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr double kKeyPitch = 5.6;        // mm, of a key on paper of its own
constexpr std::size_t kManyCrowded = 3;  // pieces: then a long panel is rather shown in stretches

class LayoutDrawing {
 public:
  LayoutDrawing(const StockPlan& plan, const StockGroup& group, const NestLayout& layout,
                const StockLayoutTitle& title, std::size_t number, const PaperBox& space,
                const TextMetrics& metrics)
      : plan_(plan),
        group_(group),
        layout_(layout),
        title_(title),
        number_(number),
        space_(space),
        metrics_(metrics),
        names_(plan, group, layout) {}

  LayoutViews Run() {
    tasks_.push_back({});
    while (!tasks_.empty() && out_.fault.empty()) {
      const Task task = std::move(tasks_.front());
      tasks_.pop_front();
      Draw(task);
    }
    return std::move(out_);
  }

 private:
  struct Task {
    StockPanel panel{};
    double above = 0;  // the scale at which it found no room; 0: not tried yet
  };

  [[nodiscard]] const NestPiece& At(std::int32_t piece) const {
    return layout_.pieces[static_cast<std::size_t>(piece)];
  }

  // Draws a panel, or what it must be shown in instead.
  void Draw(const Task& task) {
    const StockPanel& panel = task.panel;
    StockNames names = names_;
    const PanelContent content = ContentOf(layout_, group_.job.kerf, panel);
    for (const std::int32_t piece : content.closed) names.NamePiece(piece);
    StockPicture picture{.plan = plan_,
                         .group = group_,
                         .layout = layout_,
                         .names = names,
                         .panel = panel,
                         .name = "stock-" + std::to_string(number_ + out_.views.size()),
                         .title = TitleOf(panel, content.rect)};
    std::optional<StockPictureDrawn> drawn = AtBestScale(picture, task.above);
    if (drawn && !drawn->crowded.empty()) {
      if (Unfold(task, drawn->crowded, drawn->view.scale)) return;
      drawn = AtBestScale(picture, 0);  // smaller, with more room beyond its edges
    }
    if (!drawn || !drawn->crowded.empty()) {
      out_.fault =
          drawn ? "a layout has no room for its labels" : "a layout does not fit the paper";
      return;
    }
    const double scale = drawn->view.scale.paper_per_mm;
    for (const std::int32_t piece : content.closed) {
      names_.NamePiece(piece);
      tasks_.push_back({.panel = {.piece = piece}, .above = scale});
    }
    Keep(picture, std::move(*drawn));
  }

  struct Drawn {
    StockPictureDrawn picture;
    EdgeRows rows = EdgeRows::kAll;
  };

  // Without the key: at the largest scale that fits the paper, or one a little smaller where its
  // labels have room. What had no room at a scale is drawn at the next one that is large enough,
  // so that several share a page. Where nothing has room, as much of it as may be.
  [[nodiscard]] std::optional<StockPictureDrawn> AtBestScale(StockPicture& picture,
                                                             double above) const {
    std::optional<Drawn> best;
    for (const Scale& scale : ScalesFor(picture, above)) {
      std::optional<Drawn> drawn = AtScale(picture, scale);
      if (!drawn) continue;
      if (!best || drawn->picture.crowded.size() < best->picture.crowded.size()) {
        best = std::move(drawn);
      }
      if (best->picture.crowded.empty()) break;
    }
    if (!best && above > 0) return AtBestScale(picture, 0);
    if (!best) return std::nullopt;
    picture.rows = best->rows;
    return std::move(best->picture);
  }

  // Scales to try in turn: those above one, the least first; else the largest that the bare piece
  // fits the paper at, and the next ones.
  [[nodiscard]] std::vector<Scale> ScalesFor(const StockPicture& picture, double above) const {
    constexpr std::size_t kScales = 4;
    const Rect rect = ContentOf(layout_, group_.job.kerf, picture.panel).rect;
    std::vector<Scale> scales;
    for (const Scale& scale : ScaleSeries(plan_.units)) {
      const bool fits = PaperMap{{}, scale}.Size(rect.width) <= space_.Width() &&
                        PaperMap{{}, scale}.Size(rect.height) <= space_.Height();
      if (fits && scale.paper_per_mm > above) scales.push_back(scale);
    }
    if (above > 0) std::ranges::reverse(scales);
    if (scales.size() > kScales) scales.resize(kScales);
    return scales;
  }

  // With as much beyond its edges as it takes to fit the paper and to be read; none when it does
  // not fit.
  [[nodiscard]] std::optional<Drawn> AtScale(StockPicture picture, const Scale& scale) const {
    std::optional<Drawn> best;
    for (const EdgeRows rows : kEdgeRows) {
      picture.rows = rows;
      StockPictureDrawn drawn = DrawStockPicture(picture, scale, metrics_);
      if (!Fits(drawn.view)) continue;
      if (best && best->picture.crowded.size() <= drawn.crowded.size()) continue;
      best = {std::move(drawn), rows};
      if (best->picture.crowded.empty()) break;
    }
    return best;
  }

  [[nodiscard]] bool Fits(const View& view) const {
    return view.box.Width() <= space_.Width() && view.box.Height() <= space_.Height();
  }

  // With its key below where that fits, else what its labels do not tell as pictures of its own.
  void Keep(StockPicture& picture, StockPictureDrawn drawn) {
    const std::vector<std::string> rows = drawn.wanted_key;
    const Scale scale = drawn.view.scale;
    picture.key_width = space_.Width() - 1;
    StockPictureDrawn with_key = DrawStockPicture(picture, scale, metrics_);
    if (Fits(with_key.view)) {
      out_.views.push_back(std::move(with_key.view));
      return;
    }
    out_.views.push_back(std::move(drawn.view));
    const auto most = static_cast<std::size_t>((space_.Height() - 16) / kKeyPitch);
    for (std::size_t i = 0; i < rows.size(); i += most) {
      const auto end = rows.begin() + static_cast<std::ptrdiff_t>(std::min(i + most, rows.size()));
      out_.views.push_back(
          StockKey("stock-" + std::to_string(number_ + out_.views.size()), "KEY TO " + title_.which,
                   {rows.begin() + static_cast<std::ptrdiff_t>(i), end}, space_.Width(), metrics_));
    }
  }

  // Shows a crowded panel in two stretches, or closes what is crowded; false when neither can be.
  bool Unfold(const Task& task, std::vector<std::int32_t> crowded, const Scale& scale) {
    const StockPanel& panel = task.panel;
    const bool itself = std::erase(crowded, panel.piece) > 0;
    const bool halve = CanHalve(layout_, panel) &&
                       (itself || (crowded.size() >= kManyCrowded && GainsByHalving(panel, scale)));
    if (halve) {
      auto [one, other] = Halves(layout_, panel);
      tasks_.push_front({std::move(other), scale.paper_per_mm});
      tasks_.push_front({std::move(one), scale.paper_per_mm});
      return true;
    }
    StockPanel closed = WithClosed(layout_, panel, crowded);
    if (closed.closed == panel.closed) return false;
    tasks_.push_front({std::move(closed), task.above});
    return true;
  }

  // Whether half of a panel would have room at a larger scale.
  [[nodiscard]] bool GainsByHalving(const StockPanel& panel, const Scale& scale) const {
    constexpr double kBeside = 45;  // mm, of sizes, title and callouts
    const std::span<const Scale> series = ScaleSeries(plan_.units);
    const auto at = std::ranges::find(series, scale.name, &Scale::name);
    if (at == series.begin()) return false;
    const PaperMap larger{{}, *(at - 1)};
    const auto [one, other] = Halves(layout_, panel);
    return std::ranges::all_of(std::array{one, other}, [&](const StockPanel& half) {
      const Rect rect = ContentOf(layout_, group_.job.kerf, half).rect;
      return larger.Size(rect.width) + kBeside < space_.Width() &&
             larger.Size(rect.height) + kBeside < space_.Height();
    });
  }

  [[nodiscard]] std::string TitleOf(const StockPanel& panel, const Rect& rect) const {
    const bool piece = panel.piece != 0;
    std::string text =
        piece ? "PIECE " + names_.PieceName(panel.piece) + " OF " + title_.which : title_.which;
    if (!panel.IsWhole(layout_)) {
      const Rect& whole = At(panel.piece).rect;
      const bool columns = At(panel.piece).kind == NestPieceKind::kColumns;
      const Length from = columns ? rect.x - whole.x : rect.y - whole.y;
      const Length to = from + (columns ? rect.width : rect.height);
      text += ", FROM " + FormatLength(from, plan_.units) + " TO " + FormatLength(to, plan_.units);
    }
    return text + ": " + title_.material;
  }

  const StockPlan& plan_;
  const StockGroup& group_;
  const NestLayout& layout_;
  const StockLayoutTitle& title_;
  std::size_t number_;
  PaperBox space_;
  const TextMetrics& metrics_;
  StockNames names_;
  std::deque<Task> tasks_;
  LayoutViews out_;
};

}  // namespace

LayoutViews DrawLayout(const StockPlan& plan, const StockGroup& group, const NestLayout& layout,
                       const StockLayoutTitle& title, std::size_t first_number,
                       const PaperBox& space, const TextMetrics& metrics) {
  return LayoutDrawing(plan, group, layout, title, first_number, space, metrics).Run();
}

}  // namespace tillwright
