#include "write/html.h"

#include <algorithm>

#include "text/utf8_width.h"

namespace tillwright {
namespace {

constexpr std::size_t kStackedFrom = 4;  // columns: more do not fit a phone side by side

bool IsEmptyColumn(const TextTable& table, std::size_t column) {
  return std::ranges::all_of(table.rows(), [&](const auto& row) { return row[column].empty(); });
}

std::string Cell(std::string_view tag, std::string_view attributes, const std::string& text) {
  std::string out = "<";
  out += tag;
  out += attributes;
  out += '>' + HtmlText(text) + "</";
  out += tag;
  return out + ">";
}

}  // namespace

std::string HtmlText(std::string_view text) {
  std::string out;
  for (const char c : Printable(text)) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      default:
        out += c;
    }
  }
  return out;
}

std::string HtmlLink(std::string_view path) {
  constexpr std::string_view kHex = "0123456789ABCDEF";
  constexpr std::string_view kPlain =
      "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~/";
  std::string out;
  for (const char c : path) {
    if (kPlain.find(c) != std::string_view::npos) {
      out += c;
      continue;
    }
    const auto byte = static_cast<unsigned char>(c);
    out += '%';
    out += kHex[byte >> 4U];
    out += kHex[byte & 15U];
  }
  return out;
}

std::string HtmlTable(const TextTable& table) {
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < table.columns().size(); ++i) {
    if (!IsEmptyColumn(table, i)) shown.push_back(i);
  }
  const bool stacks = shown.size() >= kStackedFrom;
  const auto side = [&](std::size_t column) -> std::string {
    return table.columns()[column].right ? " class=\"n\"" : "";
  };
  const auto named = [&](std::size_t column) {
    const std::string head = stacks ? HtmlText(table.columns()[column].head) : std::string();
    return head.empty() ? side(column) : side(column) + " data-head=\"" + head + "\"";
  };
  std::string out = "<div class=\"wide\"><table";
  out += stacks ? " class=\"stack\">\n<thead><tr>" : ">\n<thead><tr>";
  for (const std::size_t i : shown) out += Cell("th", side(i), table.columns()[i].head);
  out += "</tr></thead>\n<tbody>\n";
  for (const auto& row : table.rows()) {
    out += "<tr>";
    for (const std::size_t i : shown) {
      out += i == shown.front() ? Cell("th", side(i), row[i]) : Cell("td", named(i), row[i]);
    }
    out += "</tr>\n";
  }
  return out + "</tbody>\n</table></div>\n";
}

}  // namespace tillwright
