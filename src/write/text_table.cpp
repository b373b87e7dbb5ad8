#include "write/text_table.h"

#include <algorithm>

#include "write/utf8_width.h"

namespace tillwright {
namespace {

constexpr std::size_t kIndent = 2;
constexpr std::size_t kBetween = 2;
constexpr std::size_t kLeastGiving = 8;  // a label is not shortened below this

void AppendCell(std::string& line, const std::string& cell, std::size_t width, bool right) {
  const std::string shown = Shortened(cell, width);
  const std::size_t pad = width - CharacterCount(shown);
  if (right) line.append(pad, ' ');
  line += shown;
  if (!right) line.append(pad, ' ');
}

void EndLine(std::string& out, std::string line) {
  while (!line.empty() && line.back() == ' ') line.pop_back();
  out += line;
  out += '\n';
}

}  // namespace

std::string TextTable::ToText() const {
  std::vector<std::size_t> widths(columns_.size(), 0);
  for (const auto& row : rows_) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::max(widths[i], CharacterCount(row[i]));
    }
  }
  std::size_t total = kIndent;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (widths[i] == 0) continue;  // an empty column
    widths[i] = std::max(widths[i], CharacterCount(columns_[i].head));
    total += widths[i] + kBetween;
  }
  total -= kBetween;
  for (std::size_t i = 0; i < widths.size() && total > kTableWidth; ++i) {
    if (!columns_[i].gives || widths[i] <= kLeastGiving) continue;
    const std::size_t give = std::min(total - kTableWidth, widths[i] - kLeastGiving);
    widths[i] -= give;
    total -= give;
  }
  std::string out;
  const auto line_of = [&](const auto& cell_of) {
    std::string line(kIndent, ' ');
    bool first = true;
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (widths[i] == 0) continue;
      if (!first) line.append(kBetween, ' ');
      first = false;
      AppendCell(line, cell_of(i), widths[i], columns_[i].right);
    }
    EndLine(out, std::move(line));
  };
  line_of([&](std::size_t i) { return columns_[i].head; });
  for (const auto& row : rows_) line_of([&](std::size_t i) { return row[i]; });
  return out;
}

}  // namespace tillwright
