#include <algorithm>
#include <map>

#include "bank/headings.h"
#include "tillwright/length_text.h"
#include "tillwright/write.h"
#include "write/page_text.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

// Hundredths as a price.
std::string PriceText(std::int64_t coins) {
  const std::string cents = std::to_string(coins % 100);
  return std::to_string(coins / 100) + (cents.size() < 2 ? ".0" : ".") + cents;
}

// To the hundredth.
std::string Decimal(double value) {
  return PriceText(static_cast<std::int64_t>(value * 100 + 0.5));
}

constexpr double kBoardFoot = 25.4 * 304.8 * 304.8;  // in cubic millimetres: 1 in by 1 ft by 1 ft

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
  static std::string Noun(const StockGroup& group) { return group.solid ? "board" : "sheet"; }

  [[nodiscard]] std::string Name(const StockGroup& group) const {
    const std::string material = group.material.empty() ? "material not told" : group.material;
    return FormatWithUnit(group.thickness, plan_.units) + ", " + Printable(material);
  }

  // --- What is bought ---------------------------------------------------------------------------

  void Buy() {
    page_.Heading("Stock", "what the layouts below take");
    TextTable table({{"material", false, true},
                     {"", false},
                     {"pcs"},
                     {"length x width"},
                     {"thick"},
                     {"price"},
                     {"note", false, true}});
    std::int64_t total = 0;
    for (const StockGroup& group : plan_.groups) {
      for (const StockUse& use : UsesOf(group)) total += BuyRow(group, use, table);
    }
    page_.Put(table.ToText());
    if (plan_.priced && total > 0) page_.Put("  In all " + PriceText(total) + ".\n");
    Boards();
  }

  std::int64_t BuyRow(const StockGroup& group, const StockUse& use, TextTable& table) {
    const NestStock& stock = StockAt(group, use.stock);
    const std::int64_t price = stock.on_hand || !stock.price ? 0 : *stock.price * use.count;
    std::string note = stock.on_hand ? "on hand" : "";
    if (!stock.label.empty()) note += (note.empty() ? "" : ", ") + Printable(stock.label);
    table.Row({Name(group), Noun(group), std::to_string(use.count), Size(stock.along, stock.across),
               In(group.rough), price > 0 ? PriceText(price) : "", note});
    return price;
  }

  void Boards() {
    double volume = 0;
    for (const StockGroup& group : plan_.groups) {
      if (group.solid) volume += BoardVolume(plan_, group);
    }
    if (volume <= 0) return;
    page_.Line("Solid wood with " + std::to_string(plan_.waste_percent) +
               " % for waste: " + Decimal(volume / kBoardFoot) + " board feet, " +
               std::to_string(static_cast<std::int64_t>(volume / 1e6 + 0.5)) +
               " cubic decimetres (thousandths of a cubic metre); an estimate.");
  }

  // --- The layouts ------------------------------------------------------------------------------

  void Group(const StockGroup& group) {
    page_.Heading(Name(group));
    page_.Line(NestWords(group.job, group.plan, Noun(group)) + ".");
    std::string saw = "Kerf " + In(group.job.kerf);
    if (!group.solid && !StockAt(group, 0).trim.IsZero()) {
      saw += "; trim " + In(StockAt(group, 0).trim) + " off every edge first";
    }
    page_.Line(saw + ". Cuts are numbered in order; the fence stands at \"fence\".");
    Missing(group);
    GlueUps(group);
    for (std::size_t i = 0; i < group.plan.layouts.size(); ++i) Layout(group, i);
  }

  void Missing(const StockGroup& group) {
    for (std::size_t i = 0; i < group.parts.size(); ++i) {
      if (group.plan.missing[i] == 0) continue;
      page_.Line("No place for " + std::to_string(group.plan.missing[i]) + " of " +
                 Printable(group.parts[i].label) + ", sawn " +
                 Size(group.job.parts[i].along, group.job.parts[i].across) + ".");
    }
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

  void Layout(const StockGroup& group, std::size_t index) {
    const NestLayout& layout = group.plan.layouts[index];
    const NestStock& stock = StockAt(group, layout.stock);
    std::string head = "\n  " + std::string(group.solid ? "Board " : "Sheet ") +
                       std::to_string(index + 1) + ", " + Size(stock.along, stock.across);
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
