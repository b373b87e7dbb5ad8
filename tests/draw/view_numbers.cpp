#include "draw/view_numbers.h"

#include "tillwright/dimensions.h"

namespace tillwright::testing {
namespace {

bool IsDigit(char c) { return c >= '0' && c <= '9'; }
bool IsLetter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '_'; }

// The end of the digits, points and strokes from `at` on.
std::size_t EndOfRun(std::string_view text, std::size_t at) {
  while (at < text.size() &&
         (IsDigit(text[at]) || ((text[at] == '.' || text[at] == '/') && at + 1 < text.size() &&
                                IsDigit(text[at + 1])))) {
    ++at;
  }
  return at;
}

}  // namespace

std::vector<std::string> NumbersIn(std::string_view text) {
  std::vector<std::string> numbers;
  for (std::size_t at = 0; at < text.size();) {
    if (IsLetter(text[at])) {
      while (at < text.size() && (IsLetter(text[at]) || IsDigit(text[at]))) ++at;
      continue;
    }
    if (!IsDigit(text[at])) {
      ++at;
      continue;
    }
    std::size_t from = at;
    at = EndOfRun(text, at);
    // A fraction after a whole number belongs to it.
    if (at + 1 < text.size() && text[at] == ' ' && IsDigit(text[at + 1]) &&
        text.substr(from, at - from).find('/') == std::string_view::npos) {
      const std::size_t end = EndOfRun(text, at + 1);
      if (text.substr(at, end - at).find('/') != std::string_view::npos) at = end;
    }
    if (from > 0 && text[from - 1] == '-') --from;
    constexpr std::string_view kAbout = "\u2248 ";
    if (from >= kAbout.size() && text.substr(from - kAbout.size(), kAbout.size()) == kAbout) {
      from -= kAbout.size();
    }
    numbers.emplace_back(text.substr(from, at - from));
  }
  return numbers;
}

std::vector<std::string> PathsOf(const Label& label) {
  std::vector<std::string> paths;
  std::string_view rest = label.path;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    paths.emplace_back(rest.substr(0, end));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return paths;
}

std::string FaultOf(const Bank& bank, const Label& label) {
  const std::vector<std::string> paths = PathsOf(label);
  const std::vector<std::string> numbers = NumbersIn(label.plain);
  const std::string about = "\"" + label.plain + "\" = " + label.path + ": ";
  if (numbers.empty() || paths.size() % numbers.size() != 0) {
    return about + std::to_string(numbers.size()) + " numbers for " + std::to_string(paths.size()) +
           " paths";
  }
  for (std::size_t i = 0; i < paths.size(); ++i) {
    const std::optional<Length> value = DimensionValue(bank, paths[i]);
    if (!value) return about + "there is no " + paths[i];
    const std::string expected = FormatLength(*value, bank.units);
    if (numbers[i % numbers.size()] != expected) {
      return about + paths[i] + " is " + expected + ", not " + numbers[i % numbers.size()];
    }
  }
  return {};
}

}  // namespace tillwright::testing
