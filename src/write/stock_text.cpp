#include <algorithm>
#include <map>

#include "bank/headings.h"
#include "stock/layout_runs.h"
#include "text/utf8_width.h"
#include "tillwright/length_text.h"
#include "tillwright/parts.h"
#include "tillwright/write.h"
#include "write/page_text.h"
#include "write/stock_tables.h"
#include "write/text_table.h"

namespace tillwright {
namespace {

class StockWriter {
 public:
  StockWriter(const StockPlan& plan, TextStyle style) : plan_(plan), page_(style) {}

  std::string Run() {
    page_.Put(Shortened(Printable(TitleOr(plan_.title)), kTableWidth));
    page_.Put(plan_.units == Unit::kInch ? "\nInches.\n" : "\nMillimeters.\n");
    Banks();
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

  // Whose parts are marked how.
  void Banks() {
    for (std::size_t i = 0; i < plan_.banks.size(); ++i) {
      const std::string& title = plan_.banks[i];
      page_.Line(std::string(1, BankLetter(i)) + ": " +
                 (title.empty() ? "a bank without a title" : Printable(title)) + ".");
    }
  }

  // --- What is bought ---------------------------------------------------------------------------

  void Buy() {
    page_.Heading("Stock", "what the layouts below need");
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
    page_.Line(saw + ". Cuts are numbered in order; set the fence to \"fence\".");
    for (const std::string& line : StockMissing(plan_, group)) page_.Line(line);
    GlueUps(group);
    Runs(group);
    for (const LayoutRun& run : LayoutRuns(group)) Layout(group, run);
  }

  void GlueUps(const StockGroup& group) {
    for (std::size_t i = 0; i < group.parts.size(); ++i) {
      const StockPart& part = group.parts[i];
      if (part.boards == 1) continue;
      page_.Line("Glue up " + Printable(part.label) + " of " + std::to_string(part.boards) +
                 " boards " + In(group.job.parts[i].across) + " wide, " +
                 std::to_string(part.boards - 1) + (part.boards == 2 ? " joint" : " joints") +
                 ", grain running the same way, growth rings alternating.");
    }
  }

  // --- Fronts that are matched ------------------------------------------------------------------

  void Runs(const StockGroup& group) {
    if (group.runs.empty() && group.panels.empty()) return;
    for (const StockRun& run : group.panels) RunLine(run, "its panel, once glued up,");
    for (const StockRun& run : group.runs) RunLine(run, "one piece");
    Stretches(group);
    page_.Line(
        "Mark the order across the show faces of a run before you cut it, and keep the fronts "
        "facing that way; each cut takes one kerf out of the figure.");
  }

  void RunLine(const StockRun& run, const std::string& from) {
    std::string line =
        "Run " + run.label + ": front" + (run.fronts.size() > 1 ? "s " : " ") + FrontsOf(run);
    if (run.fronts.size() > 1) line += ", " + std::string(OrderWords(run.match));
    page_.Line(line + ", out of " + from + " " + Size(run.length, run.width) + ".");
  }

  // Which runs no piece is large enough for.
  void Stretches(const StockGroup& group) {
    std::vector<std::string> told;
    for (const std::vector<StockRun>* runs : {&group.panels, &group.runs}) {
      for (const StockRun& run : *runs) {
        if (run.whole.empty() || (!told.empty() && told.back() == run.whole)) continue;
        told.push_back(run.whole);
        page_.Line("No " + std::string(StockNoun(group)) + " is large enough for all of run " +
                   run.whole +
                   ": it is cut in stretches, and the grain does not continue between them.");
      }
    }
  }

  // Layouts that are alike are listed once.
  void Layout(const StockGroup& group, const LayoutRun& run) {
    const NestLayout& layout = group.plan.layouts[run.front()];
    const NestStock& stock = StockAt(group, layout.stock);
    std::string head = "\n  " + std::string(group.solid ? "Board" : "Sheet") +
                       (run.size() > 1 ? "s " : " ") + RunNumbers(run) + ", " +
                       (run.size() > 1 ? "all cut the same, " : "") +
                       Size(stock.along, stock.across);
    if (stock.on_hand) head += ", on hand";
    const Length begins = group.begins[static_cast<std::size_t>(layout.stock)];
    if (!begins.IsZero()) head += ", from " + In(begins) + " on";
    if (const std::int32_t offcut = LargestOffcut(layout); offcut >= 0) {
      const Rect& rect = layout.pieces[static_cast<std::size_t>(offcut)].rect;
      head += "; largest offcut " + Size(rect.width, rect.height);
    }
    page_.Put(head + "\n");
    Parts(group, layout);
    Cuts(group, layout);
  }

  void Parts(const StockGroup& group, const NestLayout& layout) {
    std::map<std::int32_t, std::int64_t> counts;
    TextTable table({{"part", false, true}, {"pcs"}, {"sawn"}});
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind == NestPieceKind::kPart && piece.run < 0) ++counts[piece.part];
      if (piece.kind == NestPieceKind::kPart || piece.run < 0) continue;
      const StockRun& run = group.runs[static_cast<std::size_t>(piece.run)];
      table.Row(
          {"run " + run.label + ": front " + FrontsOf(run), "1", Size(run.length, run.width)});
    }
    for (const auto& [part, count] : counts) {
      const auto at = static_cast<std::size_t>(part);
      table.Row({Printable(group.parts[at].label), std::to_string(count),
                 Size(group.job.parts[at].along, group.job.parts[at].across)});
    }
    page_.Put(table.ToText());
  }

  void Cuts(const StockGroup& group, const NestLayout& layout) {
    TextTable table({{"cut"}, {"fence"}, {"direction", false}, {"of a piece"}, {"", false, true}});
    int number = 0;
    for (const NestCut& cut : CutsOf(layout)) {
      const NestPiece& piece = layout.pieces[static_cast<std::size_t>(cut.piece)];
      std::string note = cut.settled ? "fence stays" : "";
      const auto add = [&](const std::string& more) { note += (note.empty() ? "" : "; ") + more; };
      if (piece.run >= 0) add("run " + group.runs[static_cast<std::size_t>(piece.run)].label);
      if (cut.small) add("small: hold it in a sled");
      table.Row({std::to_string(++number), In(cut.size), cut.across ? "across" : "along",
                 Size(piece.rect.width, piece.rect.height), note});
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
