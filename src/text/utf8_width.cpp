#include "text/utf8_width.h"

#include <algorithm>

#include "text/utf8.h"

namespace tillwright {
namespace {

// What steers a terminal or turns the text round, and shows nothing itself.
bool IsControl(char32_t c) {
  const bool c0_or_c1 = c < 0x20 || (c >= 0x7F && c < 0xA0);
  const bool separator = c == 0x2028 || c == 0x2029;
  const bool direction = c == 0x061C || c == 0x200E || c == 0x200F ||
                         (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  return c0_or_c1 || separator || direction;
}

}  // namespace

std::string Shortened(std::string_view text, std::size_t most) {
  if (CharacterCount(text) <= most) return std::string(text);
  std::size_t end = 0;
  for (std::size_t seen = 0; end < text.size(); ++end) {
    if (StartsCharacter(text[end]) && ++seen == most) break;
  }
  return std::string(text.substr(0, end)) + "\u2026";
}

std::vector<std::string> WrapText(std::string_view text, std::size_t width, std::size_t taken) {
  std::vector<std::string> lines(1);
  std::size_t used = taken;
  const auto next_line = [&] {
    lines.emplace_back();
    used = 0;
  };
  while (!text.empty()) {
    const std::size_t space = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, space);
    text.remove_prefix(std::min(space + 1, text.size()));
    if (word.empty()) continue;
    const std::size_t between = lines.back().empty() ? 0 : 1;
    if (used > 0 && used + between + CharacterCount(word) > width) next_line();
    if (!lines.back().empty()) {
      lines.back() += ' ';
      ++used;
    }
    for (const char c : word) {
      if (StartsCharacter(c) && used++ >= width) {
        next_line();
        used = 1;
      }
      lines.back() += c;
    }
  }
  return lines;
}

std::string Printable(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t start = i;
    const char32_t c = NextCharacter(text, i);
    if (c == kBadByte) {
      out += "\uFFFD";
    } else if (IsControl(c)) {
      out += ' ';
    } else {
      out += text.substr(start, i - start);
    }
  }
  return out;
}

}  // namespace tillwright
