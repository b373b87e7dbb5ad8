// What the tables of every command begin and end with.
#ifndef TILLWRIGHT_WRITE_HEADINGS_H_
#define TILLWRIGHT_WRITE_HEADINGS_H_

#include <string>
#include <string_view>

#include "tillwright/write.h"

namespace tillwright {

// The title and the unit, each on a line.
[[nodiscard]] std::string TitleLines(const Bank& bank);

// An empty line, then the heading, with a remark in brackets unless it is empty.
void AddHeading(std::string& out, std::string_view text, std::string_view remark, TextStyle style);

// `head`, `head_width` characters wide, then text in lines that fit the page, indented after the
// first.
void AddWrapped(std::string& out, std::string_view head, std::size_t head_width,
                std::string_view text, std::size_t indent);

void AddCautions(std::string& out, TextStyle style);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_HEADINGS_H_
