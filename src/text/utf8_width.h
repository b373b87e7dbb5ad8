// Plain-text helpers: width in characters, shortening, and text that is safe to show.
#ifndef TILLWRIGHT_TEXT_UTF8_WIDTH_H_
#define TILLWRIGHT_TEXT_UTF8_WIDTH_H_

#include <string>
#include <string_view>
#include <vector>

#include "diag/characters.h"

namespace tillwright {

// At most `most` characters, the last of them an ellipsis when something was left off.
[[nodiscard]] std::string Shortened(std::string_view text, std::size_t most);

// Lines of at most `width` characters, broken at spaces; a word longer than that is broken where
// the line ends. Of the first line, `taken` characters are spoken for. At least one line. REQUIRES:
// width > 0.
[[nodiscard]] std::vector<std::string> WrapText(std::string_view text, std::size_t width,
                                                std::size_t taken = 0);

// Without control characters (those that set the direction of text among them), so that no name can
// steer a terminal: each becomes a space, and a byte that is not UTF-8 becomes U+FFFD.
[[nodiscard]] std::string Printable(std::string_view text);

}  // namespace tillwright

#endif  // TILLWRIGHT_TEXT_UTF8_WIDTH_H_
