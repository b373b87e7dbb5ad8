// Plain-text helpers: width in characters, shortening, and text that is safe to show.
#ifndef TILLWRIGHT_WRITE_UTF8_WIDTH_H_
#define TILLWRIGHT_WRITE_UTF8_WIDTH_H_

#include <string>
#include <string_view>

namespace tillwright {

// Characters (code points) in UTF-8 text.
[[nodiscard]] std::size_t CharacterCount(std::string_view text);

// At most `most` characters, the last of them an ellipsis when something was left off.
[[nodiscard]] std::string Shortened(std::string_view text, std::size_t most);

// Without control characters, so that no name can steer a terminal: each becomes a space.
[[nodiscard]] std::string Printable(std::string_view text);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_UTF8_WIDTH_H_
