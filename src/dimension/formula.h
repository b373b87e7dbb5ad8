// Dimensions made of others: sums that are read over either number type of the solver, so that one
// text gives the value and its explanation.
//
//   sum = product { ("+" | "-") product }
//   product = integer "x" product | atom { "/" integer }
//   atom = path | "0" | number "mm" | "(" sum ")" | "half of (" sum ")"
//        | "down to" path "of (" sum ")" | ("the greater of (" | "the lesser of (") sum ", " sum
//        ")"
//
// A path that begins with a dot is one of the owner's, as ".box.x" of D1; one that ends with a
// question mark counts nothing where there is no such dimension.
#ifndef TILLWRIGHT_DIMENSION_FORMULA_H_
#define TILLWRIGHT_DIMENSION_FORMULA_H_

#include <charconv>
#include <optional>
#include <string>
#include <string_view>

#include "solve/number.h"
#include "tillwright/length_text.h"

namespace tillwright {

// `Look` gives the number of a path as std::optional<T::Number>.
template <class T, class Look>
class Formula {
 public:
  using N = typename T::Number;
  using Result = std::optional<N>;

  Formula(T& tracer, std::string_view text, std::string_view owner, Look look)
      : t_(tracer), rest_(text), owner_(owner), look_(look) {}

  // Empty when the text is no formula or names what is not there.
  Result Run() {
    Result value = Sum();
    return rest_.empty() ? value : Result();
  }

 private:
  bool Take(std::string_view token) {
    if (!rest_.starts_with(token)) return false;
    rest_.remove_prefix(token.size());
    return true;
  }

  Result Sum() {
    Result value = Product();
    while (value) {
      const bool plus = Take(" + ");
      if (!plus && !Take(" - ")) break;
      const Result next = Product();
      if (!next) return next;
      value = plus ? *value + *next : *value - *next;
    }
    return value;
  }

  Result Product() {
    const std::string_view before = rest_;
    if (const std::int64_t factor = Integer(); factor > 0 && Take(" x ")) {
      const Result value = Product();
      return value ? Result(factor * *value) : value;
    }
    rest_ = before;
    Result value = Atom();
    while (value && Take(" / ")) {
      const std::int64_t divisor = Integer();
      if (divisor == 0) return std::nullopt;
      value = PartBelow(*value, divisor);
    }
    return value;
  }

  // 0 when there is none.
  std::int64_t Integer() {
    std::int64_t value = 0;
    const auto end = std::from_chars(rest_.data(), rest_.data() + rest_.size(), value).ptr;
    if (value <= 0) return 0;
    rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()));
    return value;
  }

  // What stands before a closing bracket, or before a comma and after it.
  Result InBrackets() {
    Result value = Sum();
    return Take(")") ? value : Result();
  }
  Result OneOf(bool greater) {
    const Result a = Sum();
    if (!a || !Take(", ")) return std::nullopt;
    const Result b = InBrackets();
    if (!b) return b;
    return greater ? Max(*a, *b) : Min(*a, *b);
  }

  Result Atom() {
    if (Take("(")) return InBrackets();
    if (Take("the greater of (")) return OneOf(true);
    if (Take("the lesser of (")) return OneOf(false);
    if (Take("half of (")) {
      const Result value = InBrackets();
      return value ? Result(HalfBelow(*value)) : value;
    }
    if (Take("down to ")) {
      const Result step = Path();
      if (!step || !Take(" of (")) return std::nullopt;
      const Result value = InBrackets();
      return value ? Result(FloorTo(*value, *step)) : value;
    }
    return Path();
  }

  Result Path() {
    const std::size_t end = std::min(rest_.find_first_of(" ,()+-/?"), rest_.size());
    const std::string_view word = rest_.substr(0, end);
    if (word.empty()) return std::nullopt;
    rest_.remove_prefix(end);
    if (word == "0") return t_.Zero();
    if (Take(" mm")) {
      const ParsedLength number = ParseLength(word, Unit::kMillimeter);
      if (!number.value) return std::nullopt;
      return t_.Given(std::string(word) + " mm", Entry<Length>(*number.value, Place()));
    }
    const Result found = look_(word[0] == '.' ? std::string(owner_) += word : std::string(word));
    return Take("?") && !found ? Result(t_.Zero()) : found;
  }

  T& t_;
  std::string_view rest_;
  std::string_view owner_;
  Look look_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DIMENSION_FORMULA_H_
