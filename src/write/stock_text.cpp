#include <algorithm>
#include <map>

#include "bank/headings.h"
#include "stock/layout_runs.h"
#include "tillwright/length_text.h"
#include "tillwright/write.h"
#include "write/page_text.h"
#include "write/stock_tables.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

class StockWriter {
 public:
  StockWriter(const StockPlan& plan, TextStyle style) : plan_(plan), page_(style) {}

  std::string Run() {
    page_.Put(Shortened(Printable(TitleOr(plan_.title)), kTableWidth));
    page_.Put(plan_.units == Unit::kInch ? "\nInches.\n" : "\nMillimetres.\n");
    Buy();
    for (const StockGroup& group : plan_.groups) Group(group);
    page_.Cautions();
    return page_.Take();
  }

 private:
  [[nodiscard]] std::string In(Length length) const { return FormatLength(length, plan_.units); }
  [[nodiscard]] std::string Size(Length a, Length b) const { return In(a) + " x " + In(b); }
  static const NestStock& StockAt(const StockGroup& group, std::int32_t stock) {
    return group.job.stock[static_cast<std::size_t>(stock)];
  }

  // --- What is bought ---------------------------------------------------------------------------

  void Buy() {
    page_.Heading("Stock", "what the layouts below take");
    page_.Put(StockTable(plan_).ToText());
    for (const std::string& line : StockTotals(plan_)) page_.Line(line);
  }

  // --- The layouts ------------------------------------------------------------------------------

  void Group(const StockGroup& group) {
    page_.Heading(StockName(plan_, group));
    page_.Line(NestWords(group.job, group.plan, StockNoun(group)) + ".");
    std::string saw = "Kerf " + In(group.job.kerf);
    if (!group.solid && !StockAt(group, 0).trim.IsZero()) {
      saw += "; trim " + In(StockAt(group, 0).trim) + " off every edge first";
    }
    page_.Line(saw + ". Cuts are numbered in order; the fence stands at \"fence\".");
    for (const std::string& line : StockMissing(plan_, group)) page_.Line(line);
    GlueUps(group);
    for (const LayoutRun& run : LayoutRuns(group)) Layout(group, run);
  }

  void GlueUps(const StockGroup& group) {
    for (std::size_t i = 0; i < group.parts.size(); ++i) {
      const StockPart& part = group.parts[i];
      if (part.staves == 1) continue;
      page_.Line("Glue up " + Printable(part.label) + " of " + std::to_string(part.staves) +
                 " boards " + In(group.job.parts[i].across) +
                 " wide, the grain the same way, the rings turned in turn.");
    }
  }

  // Layouts that are alike are listed once.
  void Layout(const StockGroup& group, const LayoutRun& run) {
    const NestLayout& layout = group.plan.layouts[run.front()];
    const NestStock& stock = StockAt(group, layout.stock);
    std::string head = "\n  " + std::string(group.solid ? "Board" : "Sheet") +
                       (run.size() > 1 ? "s " : " ") + RunNumbers(run) + ", " +
                       (run.size() > 1 ? "all cut alike, " : "") + Size(stock.along, stock.across);
    if (stock.on_hand) head += ", on hand";
    const Length begins = group.begins[static_cast<std::size_t>(layout.stock)];
    if (!begins.IsZero()) head += ", from " + In(begins) + " on";
    if (const std::int32_t offcut = LargestOffcut(layout); offcut >= 0) {
      const Rect& rect = layout.pieces[static_cast<std::size_t>(offcut)].rect;
      head += "; largest offcut " + Size(rect.width, rect.height);
    }
    page_.Put(head + "\n");
    Parts(group, layout);
    Cuts(layout);
  }

  void Parts(const StockGroup& group, const NestLayout& layout) {
    std::map<std::int32_t, std::int64_t> counts;
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind == NestPieceKind::kPart) ++counts[piece.part];
    }
    TextTable table({{"part", false, true}, {"pcs"}, {"sawn"}});
    for (const auto& [part, count] : counts) {
      const auto at = static_cast<std::size_t>(part);
      table.Row({Printable(group.parts[at].label), std::to_string(count),
                 Size(group.job.parts[at].along, group.job.parts[at].across)});
    }
    page_.Put(table.ToText());
  }

  void Cuts(const NestLayout& layout) {
    TextTable table({{"cut"}, {"fence"}, {"way", false}, {"of a piece"}, {"", false, true}});
    int number = 0;
    for (const NestCut& cut : CutsOf(layout)) {
      const Rect& piece = layout.pieces[static_cast<std::size_t>(cut.piece)].rect;
      std::string note = cut.settled ? "fence stays" : "";
      if (cut.small) note += (note.empty() ? "" : "; ") + std::string("small: hold it in a sled");
      table.Row({std::to_string(++number), In(cut.size), cut.across ? "across" : "along",
                 Size(piece.width, piece.height), note});
    }
    page_.Put(table.ToText());
  }

  const StockPlan& plan_;
  PageText page_;
};

}  // namespace

std::string StockText(const StockPlan& plan, TextStyle style) {
  return StockWriter(plan, style).Run();
}

}  // namespace tillwright
