// UTF-8: reading and writing single characters.
//
// Strict as RFC 3629 asks: no overlong forms, no surrogates, nothing past U+10FFFF.
#ifndef TILLWRIGHT_TEXT_UTF8_H_
#define TILLWRIGHT_TEXT_UTF8_H_

#include <cstddef>
#include <string>
#include <string_view>

namespace tillwright {

// What NextCharacter gives for a byte that is not part of valid UTF-8.
inline constexpr char32_t kBadByte = 0xffffffff;

// The character at `position`, which moves past it (past one byte when that is bad).
// REQUIRES: position < text.size().
[[nodiscard]] char32_t NextCharacter(std::string_view text, std::size_t& position);

// REQUIRES: a Unicode scalar value.
void AppendCharacter(std::string& out, char32_t character);

}  // namespace tillwright

#endif  // TILLWRIGHT_TEXT_UTF8_H_
