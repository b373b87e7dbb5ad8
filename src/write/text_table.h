// A table of text: a heading, column heads, rows; columns as wide as their widest cell.
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
    bool gives = false;   // shortened first when the table is too wide
  };

  explicit TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}

  // REQUIRES: as many cells as columns.
  void Row(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
  [[nodiscard]] bool empty() const { return rows_.empty(); }

  // The table, every line indented by two and ending in a newline, at most kTableWidth wide.
  // Columns with nothing in them are left out.
  [[nodiscard]] std::string ToText() const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_TEXT_TABLE_H_
