// Csv: comma-separated values as RFC 4180 has them: CRLF, a header row, quotes where they are
// needed.
//
// A text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a carriage
// return) gets an apostrophe in front, as OWASP advises against formula injection; numbers never
// do.
#ifndef TILLWRIGHT_WRITE_CSV_H_
#define TILLWRIGHT_WRITE_CSV_H_

#include <string>
#include <string_view>

#include "tillwright/length_text.h"

namespace tillwright {

class Csv {
 public:
  Csv& Text(std::string_view text);
  Csv& Number(std::int64_t number);
  // The decimal millimeters, exact; the decimal inches, rounded to six places; and the text in the
  // maker's unit with its mark, since a spreadsheet takes a bare 3/8 for a date: three cells.
  Csv& Lengths(Length length, Unit unit);
  // The three heads of such a length: NAME_mm, NAME_in, NAME.
  Csv& LengthHeads(std::string_view name);
  Csv& EmptyLengths();
  void EndRow();

  [[nodiscard]] std::string Take() { return std::move(out_); }

 private:
  void Cell(std::string_view text);

  std::string out_;
  bool first_ = true;
};

// 15.375; rounded half up to six places.
[[nodiscard]] std::string DecimalInches(Length length);
// 15 3/8", 390.5 mm
[[nodiscard]] std::string MarkedLength(Length length, Unit unit);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_CSV_H_
