#include "write/stock_tables.h"

#include "text/utf8_width.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr double kBoardFoot = 25.4 * 304.8 * 304.8;  // in cubic millimeters: 1 in by 1 ft by 1 ft
constexpr double kCubicMeter = 1e9;

// A count of 10 to the -`places` as a decimal.
std::string Decimal(std::int64_t count, std::size_t places) {
  std::string digits = std::to_string(count);
  if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
  return digits.insert(digits.size() - places, ".");
}

const NestStock& StockAt(const StockGroup& group, const StockUse& use) {
  return group.job.stock[static_cast<std::size_t>(use.stock)];
}

std::int64_t PriceOf(const NestStock& stock, const StockUse& use) {
  return stock.on_hand || !stock.price ? 0 : *stock.price * use.count;
}

std::string Size(const StockPlan& plan, Length a, Length b) {
  return FormatLength(a, plan.units) + " x " + FormatLength(b, plan.units);
}

bool IsUsual(const StockGroup& group, const StockUse& use) { return use.stock == group.usual; }

std::string NoteOn(const StockGroup& group, const StockUse& use) {
  const NestStock& stock = StockAt(group, use);
  std::string note = stock.on_hand ? "on hand" : "";
  if (IsUsual(group, use)) note = "usual size";
  if (!stock.label.empty()) note += (note.empty() ? "" : ", ") + Printable(stock.label);
  return note;
}

}  // namespace

std::string StockName(const StockPlan& plan, const StockGroup& group) {
  const std::string material = group.material.empty() ? "material not given" : group.material;
  return FormatWithUnit(group.thickness, plan.units) + ", " + Printable(material);
}

std::string_view StockNoun(const StockGroup& group) { return group.solid ? "board" : "sheet"; }

TextTable StockTable(const StockPlan& plan) {
  TextTable table({{"material", false, true},
                   {"", false},
                   {"pcs"},
                   {"length x width"},
                   {"thick"},
                   {"price"},
                   {"note", false, true}});
  for (const StockGroup& group : plan.groups) {
    for (const StockUse& use : UsesOf(group)) {
      const NestStock& stock = StockAt(group, use);
      const std::int64_t price = PriceOf(stock, use);
      table.Row({StockName(plan, group), std::string(StockNoun(group)), std::to_string(use.count),
                 Size(plan, stock.along, stock.across), FormatLength(group.rough, plan.units),
                 price > 0 ? PriceText(price) : "", NoteOn(group, use)});
    }
  }
  return table;
}

std::vector<std::string> StockTotals(const StockPlan& plan) {
  std::int64_t price = 0;
  double volume = 0;
  bool usual = false;
  for (const StockGroup& group : plan.groups) {
    for (const StockUse& use : UsesOf(group)) usual = usual || IsUsual(group, use);
    for (const StockUse& use : UsesOf(group)) price += PriceOf(StockAt(group, use), use);
    if (group.solid) volume += BoardVolume(plan, group);
  }
  std::vector<std::string> lines;
  if (usual) {
    lines.emplace_back(
        "Usual size: you listed no stock size, so a common one is assumed. List yours under "
        "\"stock\" and make this list again.");
  }
  if (plan.priced && price > 0) lines.push_back("Total " + PriceText(price) + ".");
  if (volume <= 0) return lines;
  const auto rounded = [&](double count) { return static_cast<std::int64_t>(count + 0.5); };
  lines.push_back("Solid wood with " + std::to_string(plan.waste_percent) + " % added for waste: " +
                  Decimal(rounded(volume / kBoardFoot * 100), 2) + " board feet, " +
                  Decimal(rounded(volume / kCubicMeter * 1000), 3) + " cubic meters; an estimate.");
  return lines;
}

std::vector<std::string> StockMissing(const StockPlan& plan, const StockGroup& group) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < group.parts.size(); ++i) {
    if (group.plan.missing[i] == 0) continue;
    const NestPart& sawn = group.job.parts[i];
    lines.push_back(std::to_string(group.plan.missing[i]) + " of " +
                    Printable(group.parts[i].label) + " did not fit, sawn " +
                    Size(plan, sawn.along, sawn.across) + ".");
  }
  return lines;
}

std::vector<std::string> StockProofs(const StockPlan& plan) {
  std::vector<std::string> lines;
  for (const StockGroup& group : plan.groups) {
    lines.push_back(StockName(plan, group) + ": " +
                    NestWords(group.job, group.plan, StockNoun(group)) + ".");
    for (std::string& line : StockMissing(plan, group)) lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace tillwright
