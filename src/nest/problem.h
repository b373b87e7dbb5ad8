// A nesting job in small integers: what the passes, the bounds and the search work on.
//
// Every size is already inflated by the kerf: a part and the usable sheet each grow by one kerf, so
// that n parts of length l side by side fit where n*l + (n-1)*kerf <= L, exactly.
#ifndef TILLWRIGHT_NEST_PROBLEM_H_
#define TILLWRIGHT_NEST_PROBLEM_H_

#include <cstdint>
#include <vector>

namespace tillwright::nest {

struct Part {
  std::int32_t width = 0;
  std::int32_t height = 0;
  std::int32_t count = 1;
  bool turn = false;  // may lie turned by 90 degrees

  [[nodiscard]] std::int64_t Area() const { return std::int64_t{width} * height; }
};

struct Stock {
  std::int32_t width = 0;
  std::int32_t height = 0;
  std::int64_t cost = 0;    // what one sheet counts: its area, or its price
  std::int32_t count = -1;  // how many there are; -1: as many as wanted

  [[nodiscard]] std::int64_t Area() const { return std::int64_t{width} * height; }
};

// Parts that are alike are one entry. Every part fits some sheet.
struct Problem {
  std::vector<Part> parts;
  std::vector<Stock> stock;
  int stages = 0;  // how often the direction of the cuts may change, plus one; 0: no limit
};

inline bool Fits(std::int32_t width, std::int32_t height, const Stock& sheet) {
  return width <= sheet.width && height <= sheet.height;
}
inline bool Fits(const Part& part, const Stock& sheet) {
  return Fits(part.width, part.height, sheet) ||
         (part.turn && Fits(part.height, part.width, sheet));
}

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_PROBLEM_H_
