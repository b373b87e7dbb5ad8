#include "write/text_table.h"

#include <algorithm>

#include "text/utf8_width.h"

namespace tillwright {
namespace {

constexpr std::size_t kIndent = 2;
constexpr std::size_t kBetween = 2;
// A giving column is not narrowed below this, nor, up to kLongestWord, below its longest word.
constexpr std::size_t kLeastGiving = 8;
constexpr std::size_t kLongestWord = 20;

std::size_t LongestWord(std::string_view text) {
  std::size_t longest = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    longest = std::max(longest, CharacterCount(text.substr(0, end)));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return longest;
}

// The widest column that gives, down to the next widest, until the table fits.
void Narrow(std::vector<std::size_t>& widths, const std::vector<std::size_t>& least,
            std::size_t total) {
  while (total > kTableWidth) {
    std::size_t widest = widths.size();
    std::size_t next = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (widths[i] <= least[i]) continue;
      if (widest != widths.size()) next = std::max(next, std::min(widths[i], widths[widest]));
      if (widest == widths.size() || widths[i] > widths[widest]) widest = i;
    }
    if (widest == widths.size()) return;
    next = std::max(next, least[widest]);
    const std::size_t over = std::max<std::size_t>(widths[widest] - next, 1);
    const std::size_t give = std::min(total - kTableWidth, over);
    widths[widest] -= give;
    total -= give;
  }
}

void AppendCell(std::string& line, const std::string& cell, std::size_t width, bool right) {
  const std::size_t used = CharacterCount(cell);
  const std::size_t pad = width > used ? width - used : 0;
  if (right) line.append(pad, ' ');
  line += cell;
  if (!right) line.append(pad, ' ');
}

void EndLine(std::string& out, std::string line) {
  while (!line.empty() && line.back() == ' ') line.pop_back();
  out += line;
  out += '\n';
}

}  // namespace

std::vector<std::size_t> TextTable::Widths() const {
  std::vector<std::size_t> widths(columns_.size(), 0);
  std::vector<std::size_t> least(columns_.size(), kLeastGiving);
  for (const auto& row : rows_) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::max(widths[i], CharacterCount(row[i]));
      least[i] = std::max(least[i], std::min(LongestWord(row[i]), kLongestWord));
    }
  }
  std::size_t total = kIndent;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (widths[i] == 0) continue;  // an empty column
    widths[i] = std::max(widths[i], CharacterCount(columns_[i].head));
    if (!columns_[i].gives) least[i] = widths[i];
    total += widths[i] + kBetween;
  }
  Narrow(widths, least, total - kBetween);
  return widths;
}

void TextTable::AppendRow(std::string& out, const std::vector<std::string>& row,
                          const std::vector<std::size_t>& widths) const {
  std::vector<std::vector<std::string>> cells;
  std::size_t lines = 1;
  for (std::size_t i = 0; i < row.size(); ++i) {
    cells.push_back(columns_[i].gives ? WrapText(row[i], std::max<std::size_t>(widths[i], 1))
                                      : std::vector<std::string>{row[i]});
    if (widths[i] > 0) lines = std::max(lines, cells.back().size());
  }
  for (std::size_t n = 0; n < lines; ++n) {
    std::string line(kIndent, ' ');
    bool first = true;
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (widths[i] == 0) continue;
      if (!first) line.append(kBetween, ' ');
      first = false;
      AppendCell(line, n < cells[i].size() ? cells[i][n] : std::string(), widths[i],
                 columns_[i].right);
    }
    EndLine(out, std::move(line));
  }
}

std::vector<std::vector<std::size_t>> TextTable::Blocks() const {
  const std::vector<std::size_t> widths = Widths();
  std::vector<std::vector<std::size_t>> blocks;
  std::size_t used = kTableWidth;
  for (std::size_t i = 1; i < widths.size(); ++i) {
    if (widths[i] == 0) continue;
    if (blocks.empty() || used + kBetween + widths[i] > kTableWidth) {
      blocks.emplace_back(widths.size(), 0);
      blocks.back()[0] = widths[0];
      used = kIndent + widths[0];
    }
    blocks.back()[i] = widths[i];
    used += kBetween + widths[i];
  }
  return blocks;
}

std::string TextTable::ToText() const {
  std::vector<std::string> heads;
  for (const Column& column : columns_) heads.push_back(column.head);
  std::string out;
  for (const std::vector<std::size_t>& widths : Blocks()) {
    if (!out.empty()) out += '\n';
    AppendRow(out, heads, widths);
    for (const auto& row : rows_) AppendRow(out, row, widths);
  }
  return out;
}

}  // namespace tillwright
