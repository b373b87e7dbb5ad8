// Single characters, the same in every locale: what readers and writers of text share.
#ifndef TILLWRIGHT_DIAG_CHARACTERS_H_
#define TILLWRIGHT_DIAG_CHARACTERS_H_

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace tillwright {

[[nodiscard]] constexpr bool IsDigit(char c) { return c >= '0' && c <= '9'; }

// A capital letter of ASCII as its small one; anything else as it is.
[[nodiscard]] constexpr char Lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

// Whether a byte of UTF-8 begins a character, rather than going on with one.
[[nodiscard]] constexpr bool StartsCharacter(char c) {
  return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
}

// Characters (code points) in UTF-8 text.
[[nodiscard]] inline std::size_t CharacterCount(std::string_view text) {
  return static_cast<std::size_t>(std::ranges::count_if(text, StartsCharacter));
}

}  // namespace tillwright

#endif  // TILLWRIGHT_DIAG_CHARACTERS_H_
