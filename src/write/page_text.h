// What the pages of text for a maker have alike: headings, wrapped lines, the checks, the cautions.
#ifndef TILLWRIGHT_WRITE_PAGE_TEXT_H_
#define TILLWRIGHT_WRITE_PAGE_TEXT_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/write.h"

namespace tillwright {

class PageText {
 public:
  explicit PageText(TextStyle style) : style_(style) {}

  // The title and the unit, each on a line.
  void Title(const Bank& bank, std::string_view remark = {});
  // The same, and the sizes of case and opening.
  void Head(const Bank& bank);
  void Heading(std::string_view text, std::string_view remark = {});
  // `head`, `head_width` characters wide, then text in lines that fit the page, indented after the
  // first.
  void Wrapped(const std::string& head, std::size_t head_width, const std::string& text,
               std::size_t indent);
  void Line(const std::string& text) { Wrapped("  ", 2, text, 2); }
  void Put(const std::string& text) { out_ += text; }
  // All but the passes, those that say the same together, and how many there are of each.
  void Checks(const std::vector<Finding>& findings);
  void Cautions();

  [[nodiscard]] std::string Take() { return std::move(out_); }

 private:
  void Those(const std::vector<Finding>& findings, Level level);

  TextStyle style_;
  std::string out_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_PAGE_TEXT_H_
