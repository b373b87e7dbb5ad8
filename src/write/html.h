// HTML: text that is safe in a page, and tables.
#ifndef TILLWRIGHT_WRITE_HTML_H_
#define TILLWRIGHT_WRITE_HTML_H_

#include <string>
#include <string_view>

#include "write/text_table.h"

namespace tillwright {

// Text for content and quoted attributes, without control characters.
[[nodiscard]] std::string HtmlText(std::string_view text);

// A relative link to a file of the packet: every byte but letters, digits and -._~/ escaped.
[[nodiscard]] std::string HtmlLink(std::string_view path);

// The table; columns with nothing in them are left out, the first cell of a row is its head. A wide
// one is of class "stack": each cell says its column, for a style that sets cells below each other.
[[nodiscard]] std::string HtmlTable(const TextTable& table);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_HTML_H_
