#include "write/page_text.h"

#include <algorithm>
#include <iterator>

#include "bank/headings.h"
#include "spec/kinds.h"
#include "text/utf8_width.h"
#include "tillwright/length_text.h"
#include "tillwright/words.h"
#include "write/cautions.h"
#include "write/finding_groups.h"
#include "write/text_table.h"

namespace tillwright {
namespace {

std::string Colored(Level level) {
  return level == Level::kFail ? "\x1b[31m" : level == Level::kWarn ? "\x1b[33m" : "\x1b[36m";
}

// What the case is made with besides its sizes, one line each.
class CaseWords {
 public:
  explicit CaseWords(const Bank& bank) : unit_(bank.units), c_(*bank.casework) {}

  std::string Run() const {
    std::string text = "Case     " + In(c_.width) + " wide, " + In(c_.height) + " high, " +
                       In(c_.depth) + " deep\n";
    if (Facts(c_.joint).cut) text += Joint();
    if (!c_.kick_setback.IsZero()) {
      text += "Toe kick " + In(c_.raise) + " high, set back " + In(c_.kick_setback) + "\n";
    }
    if (!c_.feet.IsZero()) {
      text += "Feet     " + std::to_string(c_.feet_count) + ", " + In(c_.feet) + " high\n";
    }
    if (c_.frame) text += Frame(*c_.frame);
    if (c_.worktop) text += TheWorktop(*c_.worktop);
    return text;
  }

 private:
  std::string In(Length length) const { return FormatLength(length, unit_); }

  std::string Joint() const {
    std::string text =
        "Joint    " + std::string(Word(c_.joint)) + ", " + In(c_.joint_depth) + " deep";
    if (Facts(c_.joint).tongue) text += ", tongues " + In(c_.tongue) + " thick";
    return text + "\n";
  }
  std::string Frame(const FaceFrame& frame) const {
    return "Frame    stiles " + In(frame.stile) + ", top rail " + In(frame.rail) +
           ", bottom rail " + In(frame.bottom_rail) + ", " + In(frame.thickness) + " thick\n";
  }
  std::string TheWorktop(const Worktop& worktop) const {
    std::string text = "Worktop  " + In(worktop.thickness) + " thick";
    if (!worktop.leg.IsZero()) {
      text += ", its top surface " + In(worktop.leg + worktop.thickness) + " above the floor";
    }
    return text + "\n";
  }

  Unit unit_;
  const CaseBuild& c_;
};

}  // namespace

void PageText::Title(const Bank& bank, std::string_view remark) {
  out_ += Shortened(Printable(TitleOr(bank.title)), kTableWidth);
  out_ += bank.units == Unit::kInch ? "\nInches" : "\nMillimeters";
  out_ += ", parts cut to " + FormatLength(bank.round, bank.units) + ".";
  out_ += remark;
  out_ += '\n';
}

void PageText::Head(const Bank& bank) {
  const auto in = [&](Length length) { return FormatLength(length, bank.units); };
  Title(bank, " Positions are measured from the lower left corner of the opening.");
  if (bank.casework) out_ += CaseWords(bank).Run();
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
  // Failures of one cause are one, with a list of what they are about.
  const auto count = [&](Level level, const std::string& one) {
    const auto n = level == Level::kFail ? std::ssize(FindingGroups(findings, level))
                                         : std::ranges::count(findings, level, &Finding::level);
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
    if (style_.color) head = Colored(level) + head + "\x1b[0m";
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
