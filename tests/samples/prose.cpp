#include "samples/prose.h"

#include <algorithm>

namespace tillwright::testing {
namespace {

bool IsLetter(char c) { return (c >= 'a' && c <= 'z') || c == '_'; }

// Where the literal that begins at the quote ends: at its closing quote.
std::size_t ClosingQuote(std::string_view source, std::size_t quote) {
  std::size_t at = quote + 1;
  while (at < source.size() && source[at] != source[quote]) at += source[at] == '\\' ? 2U : 1U;
  return std::min(at, source.size());
}

// Past a line comment, a block comment, an include or a character; 0 where none of them begins.
std::size_t PastOther(std::string_view source, std::size_t at) {
  const std::string_view rest = source.substr(at);
  const auto past = [&](std::string_view end, std::size_t from) {
    const std::size_t found = rest.find(end, from);
    return found == std::string_view::npos ? source.size() : at + found + end.size();
  };
  if (rest.starts_with("//") || rest.starts_with("#include")) return past("\n", 0);
  if (rest.starts_with("/*")) return past("*/", 2);
  if (rest.starts_with("'")) return ClosingQuote(source, at) + 1;
  return 0;
}

std::string Unescaped(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\\' && i + 1 < text.size()) {
      out += text[i + 1] == 'n' ? ' ' : text[i + 1];
      ++i;
    } else {
      out += text[i];
    }
  }
  return out;
}

// One space for every run of spaces and line ends, and small letters.
std::string Flat(std::string_view text) {
  std::string out;
  for (const char c : text) {
    const bool space = c == ' ' || c == '\n' || c == '\r' || c == '\t';
    if (space && (out.empty() || out.back() == ' ')) continue;
    out += space ? ' ' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  return out;
}

bool Holds(const std::string& text, std::string word) {
  const bool begins = word.ends_with('*');
  if (begins) word.pop_back();
  for (std::size_t at = 0; (at = text.find(word, at)) != std::string::npos; ++at) {
    const std::size_t end = at + word.size();
    const bool before = at > 0 && IsLetter(text[at - 1]);
    const bool after = !begins && end < text.size() && IsLetter(text[end]);
    if (!before && !after) return true;
  }
  return false;
}

}  // namespace

std::vector<std::string> LiteralsIn(std::string_view source) {
  std::vector<std::string> literals;
  bool follows = false;  // only spaces since the literal before
  for (std::size_t at = 0; at < source.size();) {
    const std::string_view rest = source.substr(at);
    std::string text;
    if (const std::size_t past = PastOther(source, at); past > 0) {
      at = past;
      continue;
    }
    if (rest.starts_with("R\"(")) {
      const std::size_t end = rest.find(")\"");
      text = rest.substr(3, end - 3);
      at += end + 2;
    } else if (rest.front() == '"') {
      const std::size_t end = ClosingQuote(source, at);
      text = Unescaped(source.substr(at + 1, end - at - 1));
      at = end + 1;
    } else {
      follows = follows && (rest.front() == ' ' || rest.front() == '\n');
      ++at;
      continue;
    }
    if (follows) literals.back() += text;
    if (!follows) literals.push_back(std::move(text));
    follows = true;
  }
  return literals;
}

std::vector<std::string> CommentsIn(std::string_view spec) {
  std::vector<std::string> comments;
  for (std::size_t at = 0; at < spec.size(); ++at) {
    if (spec[at] == '"') at = ClosingQuote(spec, at);
    if (!spec.substr(std::min(at, spec.size())).starts_with("//")) continue;
    const std::size_t end = std::min(spec.find('\n', at), spec.size());
    comments.emplace_back(spec.substr(at + 2, end - at - 2));
    at = end;
  }
  return comments;
}

std::vector<std::string> TextsIn(std::string_view markup) {
  std::vector<std::string> texts;
  for (std::size_t at = markup.find('>'); at < markup.size();) {
    const std::size_t end = std::min(markup.find('<', at), markup.size());
    const std::string_view text = markup.substr(at + 1, end - at - 1);
    if (text.find_first_not_of(" \n") != std::string_view::npos) texts.emplace_back(text);
    at = markup.find('>', end);
  }
  return texts;
}

std::vector<std::string> WordsFound(std::string text, const std::vector<std::string>& words,
                                    const std::vector<std::string>& allowed) {
  text = Flat(text);
  for (const std::string& phrase : allowed) {
    for (std::size_t at = 0; (at = text.find(phrase, at)) != std::string::npos;) {
      text.replace(at, phrase.size(), "·");
    }
  }
  std::vector<std::string> found;
  for (const std::string& word : words) {
    if (Holds(text, word)) found.push_back(word);
  }
  return found;
}

}  // namespace tillwright::testing
