// A table of text: column heads and rows; columns as wide as their widest cell. When that is too wide
// for a page, the cells of columns that may give go on in the next line; when that does not do, the
// columns that have no room follow below in a table of their own: nothing is left off.
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
  [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }
  [[nodiscard]] const std::vector<std::vector<std::string>>& rows() const { return rows_; }

  // The table, every line indented by two and ending in a newline, at most kTableWidth wide.
  // Columns with nothing in them are left out. The first column names the rows.
  // REQUIRES: no cell of a column that does not give is wider than half a page.
  [[nodiscard]] std::string ToText() const;

 private:
  [[nodiscard]] std::vector<std::size_t> Widths() const;
  // The widths of each table that is shown, zero for columns that it leaves to the others.
  [[nodiscard]] std::vector<std::vector<std::size_t>> Blocks() const;
  void AppendRow(std::string& out, const std::vector<std::string>& row,
                 const std::vector<std::size_t>& widths) const;

  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_TEXT_TABLE_H_
