// Length: an exact signed distance.
//
// A Length counts picometers (1e-12 m) in a signed 64-bit integer. 1 in = 25.4 mm exactly
// (NIST SP 811, Appendix B; the 1959 agreement), so 1 in = 25 400 000 000 pm = 2^9 · 5^8 · 127 pm:
// every n/64, n/128, n/256 and n/512 in, and every decimal of a millimeter down to 1e-9 mm, is a
// whole count. Sums of parts therefore close exactly and no test needs a tolerance.
//
//   (1) a + b - b == a, and (a + b) + c == a + (b + c), for all Lengths in range.
//   (2) FloorTo(v, q) is the largest multiple of q not above v; FloorTo(v, q) == v for multiples.
//   (3) HalfBelow(v) + HalfAbove(v) == v, and 0 <= HalfAbove(v) - HalfBelow(v) <= 1 pm.
//
// Range: a length read from a spec is at most 100 m (kMaxTyped); sums of 10 000 such lengths fit in
// 64 bits with room to spare. Going past int64 is a bug and ends the program: nothing wraps and
// nothing saturates. There is no operator/ (where would the remainder go?), no Length * Length, and
// no way in from a double.
//
// Example:
//   constexpr Length side = Length::Millimeters(18);
//   constexpr Length inside = Length::Millimeters(450) - 2 * side;   // exactly 414 mm
//   FloorTo(inside, Length::Inches(1, 32));                          // what the saw can cut
#ifndef TILLWRIGHT_LENGTH_H_
#define TILLWRIGHT_LENGTH_H_

#include <compare>
#include <concepts>
#include <cstdint>
#include <type_traits>

#include "tillwright/diagnostic.h"

namespace tillwright {

__extension__ typedef __int128 Int128;

// Integers that may multiply a Length. bool is left out, and so is double, which would otherwise
// slip in through an implicit conversion and lose its fraction without a word.
template <class T>
concept Count = std::integral<T> && !std::same_as<T, bool>;

class Length {
 public:
  static constexpr std::int64_t kPerMillimeter = 1'000'000'000;
  static constexpr std::int64_t kPerInch = 25'400'000'000;  // NIST SP 811: 1 in = 25.4 mm exactly

  constexpr Length() = default;  // zero

  [[nodiscard]] static constexpr Length Picometers(std::int64_t count) { return Length(count); }
  [[nodiscard]] static constexpr Length Millimeters(std::int64_t n) {
    return Length(Times(kPerMillimeter, n));
  }
  // num/den inch. REQUIRES: den > 0 and the result is a whole count of picometers.
  [[nodiscard]] static constexpr Length Inches(std::int64_t num, std::int64_t den = 1) {
    if (den <= 0 || Times(kPerInch, num) % den != 0) Bug("an inch fraction that is not exact");
    return Length(Times(kPerInch, num) / den);
  }

  [[nodiscard]] constexpr std::int64_t picometers() const { return pm_; }
  [[nodiscard]] constexpr bool IsZero() const { return pm_ == 0; }

  friend constexpr auto operator<=>(Length, Length) = default;
  friend constexpr Length operator+(Length a, Length b) { return Length(Plus(a.pm_, b.pm_)); }
  friend constexpr Length operator-(Length a, Length b) { return Length(Minus(a.pm_, b.pm_)); }
  friend constexpr Length operator-(Length a) { return Length(Minus(0, a.pm_)); }
  template <Count N>
  friend constexpr Length operator*(N n, Length a) {
    return Length(Times(static_cast<std::int64_t>(n), a.pm_));
  }
  template <Count N>
  friend constexpr Length operator*(Length a, N n) {
    return n * a;
  }
  constexpr Length& operator+=(Length b) { return *this = *this + b; }
  constexpr Length& operator-=(Length b) { return *this = *this - b; }

 private:
  explicit constexpr Length(std::int64_t pm) : pm_(pm) {}

  static constexpr std::int64_t Plus(std::int64_t a, std::int64_t b) {
    std::int64_t sum = 0;
    if (__builtin_add_overflow(a, b, &sum)) Bug("length overflow");
    return sum;
  }
  static constexpr std::int64_t Minus(std::int64_t a, std::int64_t b) {
    std::int64_t difference = 0;
    if (__builtin_sub_overflow(a, b, &difference)) Bug("length overflow");
    return difference;
  }
  static constexpr std::int64_t Times(std::int64_t a, std::int64_t b) {
    std::int64_t product = 0;
    if (__builtin_mul_overflow(a, b, &product)) Bug("length overflow");
    return product;
  }

  std::int64_t pm_ = 0;
};

static_assert(Length::kPerInch * 10 == Length::kPerMillimeter * 254);
static_assert(Length::kPerInch % 512 == 0, "1/512 in is a whole count");

// The longest length a spec may hold: 100 m.
inline constexpr Length kMaxTyped = Length::Millimeters(100'000);

// n / d rounded toward minus infinity. REQUIRES: d > 0.
template <class Int>
[[nodiscard]] constexpr Int FloorDiv(Int n, Int d) {
  const Int q = n / d;
  return (n % d != 0 && n < 0) ? q - 1 : q;
}

// The largest multiple of `increment` not above `value`. REQUIRES: increment > 0.
[[nodiscard]] constexpr Length FloorTo(Length value, Length increment) {
  if (increment <= Length()) Bug("the increment must be positive");
  return FloorDiv(value.picometers(), increment.picometers()) * increment;
}

// The smallest multiple of `increment` not below `value`. REQUIRES: increment > 0.
[[nodiscard]] constexpr Length CeilTo(Length value, Length increment) {
  return -FloorTo(-value, increment);
}

// The n-th part of `value` rounded down to a picometer. REQUIRES: n > 0.
[[nodiscard]] constexpr Length PartBelow(Length value, std::int64_t n) {
  return Length::Picometers(FloorDiv(value.picometers(), n));
}

// The left or lower half, rounded down, and the other, which takes the rest.
[[nodiscard]] constexpr Length HalfBelow(Length value) { return PartBelow(value, 2); }
[[nodiscard]] constexpr Length HalfAbove(Length value) { return value - HalfBelow(value); }

[[nodiscard]] constexpr Length Min(Length a, Length b) { return b < a ? b : a; }
[[nodiscard]] constexpr Length Max(Length a, Length b) { return a < b ? b : a; }

// The only way out to floating point: for paper, statistics and benches, never for a solved size.
[[nodiscard]] constexpr double ToMillimeters(Length value) {
  return static_cast<double>(value.picometers()) / static_cast<double>(Length::kPerMillimeter);
}

// An axis-parallel rectangle seen from the front: x to the right, y up, lower left corner first.
struct Rect {
  Length x;
  Length y;
  Length width;
  Length height;

  [[nodiscard]] constexpr Length Right() const { return x + width; }
  [[nodiscard]] constexpr Length Top() const { return y + height; }
  friend constexpr bool operator==(const Rect&, const Rect&) = default;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_LENGTH_H_
