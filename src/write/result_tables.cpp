#include <algorithm>

#include "tillwright/write.h"
#include "write/bank_tables.h"
#include "write/finding_groups.h"
#include "write/headings.h"
#include "write/parts_table.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

class Tables {
 public:
  Tables(const Bank& bank, const std::vector<Finding>& findings, TextStyle style)
      : bank_(bank), findings_(findings), style_(style) {}

  std::string Run() {
    Head();
    for (const BankTable& section : BankTables(bank_)) {
      AddHeading(out_, section.heading, section.remark, style_);
      out_ += section.table.ToText();
    }
    Parts();
    Checks();
    AddCautions(out_, style_);
    return std::move(out_);
  }

 private:
  std::string In(Length length) const { return FormatLength(length, bank_.units); }

  void Head() {
    out_ += TitleLines(bank_);
    out_.insert(out_.size() - 1, " Places are from the opening's lower left corner.");
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      out_ += "Case     " + In(c.width) + " wide, " + In(c.height) + " high, " + In(c.depth) +
              " deep\n";
    }
    out_ += "Opening  " + In(bank_.opening_width) + " wide, " + In(bank_.opening_height) +
            " high, " + In(bank_.opening_depth) + " deep\n";
  }

  void Parts() {
    const std::string table = PartsTable(bank_);
    if (table.empty()) return;
    AddHeading(out_, "Parts", "finished sizes, length along the grain", style_);
    out_ += table;
  }

  // --- Checks -----------------------------------------------------------------------------------

  void Checks() {
    const auto count = [&](Level level, const std::string& one) {
      const auto n = std::ranges::count(findings_, level, &Finding::level);
      return std::to_string(n) + " " + one + (n == 1 || level == Level::kPass ? "" : "s");
    };
    AddHeading(out_, "Checks", {}, style_);
    for (const Level level : {Level::kFail, Level::kWarn, Level::kNote}) Those(level);
    out_ += "  " + count(Level::kPass, "pass") + ", " + count(Level::kNote, "note") + ", " +
            count(Level::kWarn, "warning") + ", " + count(Level::kFail, "failure") + "\n";
  }

  void Those(Level level) {
    for (const FindingGroup& group : FindingGroups(findings_, level)) {
      std::string head = "  " + std::string(ToText(level)) + "  " +
                         std::string(ToText(group.finding->code)) + "  ";
      const std::size_t width = head.size();
      if (style_.color) head = Coloured(level) + head + "\x1b[0m";
      AddWrapped(out_, head, width,
                 group.subjects.ToText() + ": " + Printable(group.finding->message), 8);
    }
  }

  static std::string Coloured(Level level) {
    return level == Level::kFail ? "\x1b[31m" : level == Level::kWarn ? "\x1b[33m" : "\x1b[36m";
  }

  const Bank& bank_;
  const std::vector<Finding>& findings_;
  TextStyle style_;
  std::string out_;
};

}  // namespace

std::string ResultTables(const Bank& bank, const std::vector<Finding>& findings, TextStyle style) {
  return Tables(bank, findings, style).Run();
}

}  // namespace tillwright
