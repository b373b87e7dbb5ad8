#include "write/page_text.h"

#include <algorithm>

#include "bank/headings.h"
#include "tillwright/length_text.h"
#include "write/cautions.h"
#include "write/finding_groups.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

std::string Coloured(Level level) {
  return level == Level::kFail ? "\x1b[31m" : level == Level::kWarn ? "\x1b[33m" : "\x1b[36m";
}

}  // namespace

void PageText::Title(const Bank& bank, std::string_view remark) {
  out_ += Shortened(Printable(TitleOr(bank.title)), kTableWidth);
  out_ += bank.units == Unit::kInch ? "\nInches" : "\nMillimetres";
  out_ += ", parts cut to " + FormatLength(bank.round, bank.units) + ".";
  out_ += remark;
  out_ += '\n';
}

void PageText::Head(const Bank& bank) {
  const auto in = [&](Length length) { return FormatLength(length, bank.units); };
  Title(bank, " Places are from the opening's lower left corner.");
  if (bank.casework) {
    const CaseBuild& c = *bank.casework;
    out_ +=
        "Case     " + in(c.width) + " wide, " + in(c.height) + " high, " + in(c.depth) + " deep\n";
  }
  out_ += "Opening  " + in(bank.opening_width) + " wide, " + in(bank.opening_height) + " high, " +
          in(bank.opening_depth) + " deep\n";
}

void PageText::Heading(std::string_view text, std::string_view remark) {
  out_ += '\n';
  if (style_.color) out_ += "\x1b[1m";
  out_ += text;
  if (style_.color) out_ += "\x1b[0m";
  if (!remark.empty()) {
    out_ += "  (";
    out_ += remark;
    out_ += ')';
  }
  out_ += '\n';
}

void PageText::Wrapped(const std::string& head, std::size_t head_width, const std::string& text,
                       std::size_t indent) {
  out_ += head;
  bool first = true;
  for (const std::string& line : WrapText(text, kTableWidth - indent, head_width - indent)) {
    if (!first) out_.append(indent, ' ');
    first = false;
    out_ += line + "\n";
  }
}

void PageText::Checks(const std::vector<Finding>& findings) {
  const auto count = [&](Level level, const std::string& one) {
    const auto n = std::ranges::count(findings, level, &Finding::level);
    return std::to_string(n) + " " + one + (n == 1 || level == Level::kPass ? "" : "s");
  };
  Heading("Checks");
  for (const Level level : {Level::kFail, Level::kWarn, Level::kNote}) Those(findings, level);
  out_ += "  " + count(Level::kPass, "pass") + ", " + count(Level::kNote, "note") + ", " +
          count(Level::kWarn, "warning") + ", " + count(Level::kFail, "failure") + "\n";
}

void PageText::Those(const std::vector<Finding>& findings, Level level) {
  for (const FindingGroup& group : FindingGroups(findings, level)) {
    std::string head =
        "  " + std::string(ToText(level)) + "  " + std::string(ToText(group.finding->code)) + "  ";
    const std::size_t width = head.size();
    if (style_.color) head = Coloured(level) + head + "\x1b[0m";
    Wrapped(head, width, group.subjects.ToText() + ": " + Printable(group.finding->message), 8);
  }
}

void PageText::Cautions() {
  Heading("Before you cut");
  for (const std::string_view caution : kCautions) {
    Wrapped("  ", 2, std::string(caution), 2);
  }
}

}  // namespace tillwright
