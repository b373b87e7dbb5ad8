#include "layers/source_text.h"

#include <algorithm>
#include <array>

namespace tillwright::testing {
namespace {

bool IsWordChar(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}
bool IsBlank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

std::string_view Trimmed(std::string_view text) {
  while (!text.empty() && IsBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && IsBlank(text.back())) text.remove_suffix(1);
  return text;
}

class Stripper {
 public:
  Stripper(std::string_view text, bool keep_directives)
      : text_(text), out_(text), keep_(keep_directives) {}

  std::string Run() {
    while (at_ < text_.size()) Step();
    return std::move(out_);
  }

 private:
  [[nodiscard]] bool Sees(std::string_view what) const {
    return text_.substr(at_).starts_with(what);
  }

  void Step() {
    if (Sees("//")) return BlankTo(std::min(text_.find('\n', at_), text_.size()));
    if (Sees("/*")) return BlankTo(After("*/", at_ + 2));
    if (text_[at_] == '#' && !keep_ && StartsLine()) return Directive();
    if (text_[at_] == '"') return Quoted();
    // An apostrophe within a number is no character.
    if (text_[at_] == '\'' && !(at_ > 0 && IsWordChar(text_[at_ - 1]))) return Quoted();
    ++at_;
  }

  [[nodiscard]] bool StartsLine() const {
    const std::size_t line = text_.substr(0, at_).rfind('\n') + 1;
    return Trimmed(text_.substr(line, at_ - line)).empty();
  }

  void Directive() {
    std::size_t end = at_;
    do {
      end = std::min(text_.find('\n', end + 1), text_.size());
    } while (end < text_.size() && text_[end - 1] == '\\');
    BlankTo(end);
  }

  void Quoted() {
    const char mark = text_[at_];
    if (mark == '"' && at_ > 0 && text_[at_ - 1] == 'R') return Raw();
    std::size_t end = at_ + 1;
    while (end < text_.size() && text_[end] != mark && text_[end] != '\n') {
      end += text_[end] == '\\' ? 2U : 1U;
    }
    ++at_;
    BlankTo(std::min(end, text_.size()));
    ++at_;
  }

  void Raw() {
    const std::size_t open = text_.find('(', at_);
    const std::string close =
        ")" + std::string(text_.substr(at_ + 1, open - at_ - 1)) + std::string(1, '"');
    ++at_;
    BlankTo(After(close, open) - 1);
    ++at_;
  }

  [[nodiscard]] std::size_t After(std::string_view what, std::size_t from) const {
    const std::size_t found = text_.find(what, from);
    return found == std::string_view::npos ? text_.size() : found + what.size();
  }

  void BlankTo(std::size_t end) {
    for (; at_ < end; ++at_) {
      if (out_[at_] != '\n') out_[at_] = ' ';
    }
  }

  std::string_view text_;
  std::string out_;
  bool keep_;
  std::size_t at_ = 0;
};

// Without what stands in ( ), [ ] and the template parameters it begins with.
std::string Outermost(std::string_view head) {
  head = Trimmed(head);
  while (head.starts_with("template")) {
    int depth = 0;
    std::size_t at = head.find('<');
    for (; at < head.size(); ++at) {
      if (head[at] == '<') ++depth;
      if (head[at] == '>' && --depth == 0) break;
    }
    head = Trimmed(head.substr(std::min(at + 1, head.size())));
  }
  std::string out;
  int depth = 0;
  for (const char c : head) {
    if (c == ')' || c == ']') --depth;
    if (depth == 0) out += c;
    if (c == '(' || c == '[') ++depth;
  }
  return out;
}

// Where the initializers of a constructor begin: a colon after the parameter list.
std::size_t InitializersAt(std::string_view outer) {
  std::size_t at = outer.find("()");
  for (; at < outer.size(); ++at) {
    if (outer[at] != ':') continue;
    if (at + 1 < outer.size() && outer[at + 1] == ':') {
      ++at;
    } else {
      return at;
    }
  }
  return std::string_view::npos;
}

enum class Opens { kScope, kFunction, kNothing };

bool StartsWithWord(std::string_view text, std::string_view word) {
  return text.starts_with(word) && (text.size() == word.size() || !IsWordChar(text[word.size()]));
}

Opens WhatOpens(std::string_view head) {
  const std::string all = Outermost(head);
  std::string_view outer = all;
  if (StartsWithWord(outer, "inline") && outer.find("namespace") != outer.npos) {
    return Opens::kScope;
  }
  for (const std::string_view word : {"namespace", "extern", "class", "struct", "union"}) {
    if (StartsWithWord(outer, word)) return Opens::kScope;
  }
  const std::size_t list = outer.find("()");
  if (StartsWithWord(outer, "enum") || list == outer.npos) return Opens::kNothing;
  const std::size_t equals = outer.find('=');
  const bool is_operator = outer.find("operator") < equals;
  const bool lambda = equals < list && Trimmed(outer.substr(equals + 1)).starts_with("[]");
  if (equals < list && !is_operator && !lambda) return Opens::kNothing;
  // A name right before the brace is a member that is initialized with braces.
  const std::string_view last = Trimmed(outer);
  if (InitializersAt(outer) != outer.npos && (IsWordChar(last.back()) || last.back() == '>')) {
    return Opens::kNothing;
  }
  return Opens::kFunction;
}

class Walker {
 public:
  explicit Walker(std::string_view text) : bare_(Bare(text)) {}

  std::vector<FunctionLines> Run() {
    for (at_ = 0; at_ < bare_.size(); ++at_) Look(bare_[at_]);
    return std::move(found_);
  }

 private:
  void Look(char c) {
    if (c == '(' || c == '[') ++parens_;
    if (c == ')' || c == ']') --parens_;
    if (parens_ > 0) return;
    if (c == ';' || c == '}') head_ = at_ + 1;
    if (c == ':' && IsAccess()) head_ = at_ + 1;
    if (c == '{') Open();
  }

  [[nodiscard]] std::string_view Head() const {
    return Trimmed(std::string_view(bare_).substr(head_, at_ - head_));
  }

  [[nodiscard]] bool IsAccess() const {
    const std::string_view head = Head();
    return head == "public" || head == "private" || head == "protected";
  }

  void Open() {
    const Opens opens = WhatOpens(Head());
    if (opens == Opens::kScope) {
      head_ = at_ + 1;
      return;
    }
    const std::size_t open = at_;
    at_ = Closing(open);
    if (opens == Opens::kFunction) {
      Keep(at_);
      head_ = at_ + 1;
    }
  }

  [[nodiscard]] std::size_t Closing(std::size_t open) const {
    int depth = 0;
    for (std::size_t at = open; at < bare_.size(); ++at) {
      if (bare_[at] == '{') ++depth;
      if (bare_[at] == '}' && --depth == 0) return at;
    }
    return bare_.size();
  }

  void Keep(std::size_t end) {
    while (IsBlank(bare_[head_])) ++head_;
    const std::string_view text = bare_;
    const auto line_of = [&](std::size_t at) {
      return static_cast<int>(std::ranges::count(text.substr(0, at), '\n')) + 1;
    };
    const int first = line_of(head_);
    found_.push_back({std::string(text.substr(head_, text.find('\n', head_) - head_)), first,
                      line_of(end) - first + 1});
  }

  std::string bare_;
  std::size_t at_ = 0, head_ = 0;
  int parens_ = 0;
  std::vector<FunctionLines> found_;
};

}  // namespace

std::string Bare(std::string_view text, bool keep_directives) {
  return Stripper(text, keep_directives).Run();
}

std::vector<FunctionLines> FunctionsIn(std::string_view text) { return Walker(text).Run(); }

std::vector<std::string> OwnIncludes(std::string_view text) {
  constexpr std::string_view kInclude = "#include \"";
  std::vector<std::string> out;
  for (std::size_t at = 0; (at = text.find(kInclude, at)) != text.npos;) {
    const bool starts_line = at == 0 || text[at - 1] == '\n';
    at += kInclude.size();
    if (starts_line) out.emplace_back(text.substr(at, text.find('"', at) - at));
  }
  return out;
}

NamedKinds CountKinds(std::string_view text, std::string_view name) {
  const std::string bare = Bare(text);
  const std::string named = std::string(name) + "::k";
  NamedKinds count;
  for (std::size_t at = 0; (at = bare.find(named, at)) != std::string::npos; at += named.size()) {
    if (at > 0 && IsWordChar(bare[at - 1])) continue;
    ++count.all;
    std::size_t end = at + named.size();
    while (end < bare.size() && IsWordChar(bare[end])) ++end;
    const std::string_view before = Trimmed(std::string_view(bare).substr(0, at));
    const std::string_view after = Trimmed(std::string_view(bare).substr(end));
    const bool compared = before.ends_with("==") || before.ends_with("!=") ||
                          before.ends_with("case") || after.starts_with("==") ||
                          after.starts_with("!=");
    if (compared) ++count.compared;
  }
  return count;
}

std::vector<std::string> EnumeratorsOf(std::string_view text, std::string_view name) {
  const std::string bare = Bare(text);
  std::vector<std::string> out;
  const std::size_t found = bare.find("enum class " + std::string(name) + " ");
  if (found == std::string::npos) return out;
  const std::size_t open = bare.find('{', found);
  const std::size_t close = bare.find('}', open);
  std::string_view list = std::string_view(bare).substr(open + 1, close - open - 1);
  while (!list.empty()) {
    const std::size_t comma = std::min(list.find(','), list.size());
    const std::string_view one = Trimmed(list.substr(0, comma));
    if (!one.empty()) out.emplace_back(one.substr(0, one.find_first_of(" =")));
    list.remove_prefix(std::min(comma + 1, list.size()));
  }
  return out;
}

}  // namespace tillwright::testing
