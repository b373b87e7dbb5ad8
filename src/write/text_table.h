// A table of text: column heads and rows; columns as wide as their widest cell. When that is too wide
// for a page, the cells of columns that may give go on in the next line: nothing is left off.
#ifndef TILLWRIGHT_WRITE_TEXT_TABLE_H_
#define TILLWRIGHT_WRITE_TEXT_TABLE_H_

#include <string>
#include <string_view>
#include <vector>

namespace tillwright {

inline constexpr std::size_t kTableWidth = 100;  // columns of a terminal

class TextTable {
 public:
  struct Column {
    std::string head;
    bool right = true;    // numbers line up at the right
    bool gives = false;   // narrowed, and its cells wrapped, when the table is too wide
  };

  explicit TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}

  // REQUIRES: as many cells as columns.
  void Row(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
  [[nodiscard]] bool empty() const { return rows_.empty(); }

  // The table, every line indented by two and ending in a newline, at most kTableWidth wide
  // as far as the columns that give allow. Columns with nothing in them are left out.
  [[nodiscard]] std::string ToText() const;

 private:
  [[nodiscard]] std::vector<std::size_t> Widths() const;
  void AppendRow(std::string& out, const std::vector<std::string>& row,
                 const std::vector<std::size_t>& widths) const;

  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_TEXT_TABLE_H_
