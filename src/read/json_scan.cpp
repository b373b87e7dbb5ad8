#include "read/json_value.h"

namespace tillwright {
namespace {

std::size_t SkipComment(std::string_view text, std::size_t at) {
  const bool block = text.substr(at).starts_with("/*");
  const std::size_t end = block ? text.find("*/", at + 2) : text.find('\n', at);
  if (end == std::string_view::npos) return text.size();
  return block ? end + 2 : end;
}

bool IsBlank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
bool IsBetweenTokens(char c) { return IsBlank(c) || c == ',' || c == ':'; }

bool IsBracket(char c) { return c == '{' || c == '}' || c == '[' || c == ']'; }

std::size_t EndOfString(std::string_view text, std::size_t at) {
  for (std::size_t i = at + 1; i < text.size(); ++i) {
    if (text[i] == '\\') {
      ++i;
    } else if (text[i] == '"') {
      return i + 1;
    } else if (text[i] == '\n') {
      return i;  // not closed on its line
    }
  }
  return text.size();
}

}  // namespace

const JsonMember* JsonValue::Find(std::string_view key) const {
  for (const JsonMember& member : members) {
    if (member.key == key) return &member;
  }
  return nullptr;
}

std::size_t SkipBlanks(std::string_view text, std::size_t at) {
  if (at == 0 && text.starts_with("\xEF\xBB\xBF")) at = 3;  // a byte order mark
  while (at < text.size() && (text[at] == '/' || IsBlank(text[at]))) {
    at = text[at] == '/' ? SkipComment(text, at) : at + 1;
  }
  return at;
}

std::size_t SkipToToken(std::string_view text, std::size_t at) {
  at = SkipBlanks(text, at);
  while (at < text.size() && IsBetweenTokens(text[at])) at = SkipBlanks(text, at + 1);
  return at;
}

std::size_t EndOfToken(std::string_view text, std::size_t at) {
  if (at >= text.size()) return text.size();
  if (text[at] == '"') return EndOfString(text, at);
  if (IsBracket(text[at])) return at + 1;
  std::size_t end = at + 1;
  while (end < text.size() && !IsBetweenTokens(text[end]) && !IsBracket(text[end]) &&
         text[end] != '"' && text[end] != '/') {
    ++end;
  }
  return end;
}

}  // namespace tillwright
