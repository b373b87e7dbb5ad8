#include "write/headings.h"

#include "write/cautions.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {

std::string TitleLines(const Bank& bank) {
  std::string out =
      bank.title.empty() ? "Drawer bank" : Shortened(Printable(bank.title), kTableWidth);
  out += bank.units == Unit::kInch ? "\nInches" : "\nMillimetres";
  out += ", parts cut to " + FormatLength(bank.round, bank.units) + ".\n";
  return out;
}

void AddHeading(std::string& out, std::string_view text, std::string_view remark, TextStyle style) {
  out += '\n';
  if (style.color) out += "\x1b[1m";
  out += text;
  if (style.color) out += "\x1b[0m";
  if (!remark.empty()) {
    out += "  (";
    out += remark;
    out += ')';
  }
  out += '\n';
}

void AddWrapped(std::string& out, std::string_view head, std::size_t head_width,
                std::string_view text, std::size_t indent) {
  out += head;
  bool first = true;
  for (const std::string& line : WrapText(text, kTableWidth - indent, head_width - indent)) {
    if (!first) out.append(indent, ' ');
    first = false;
    out += line + "\n";
  }
}

void AddCautions(std::string& out, TextStyle style) {
  AddHeading(out, "Before you cut", {}, style);
  for (const std::string_view caution : kCautions) AddWrapped(out, "  ", 2, caution, 2);
}

}  // namespace tillwright
