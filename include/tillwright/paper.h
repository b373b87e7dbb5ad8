// The papers that sheets are made for.
#ifndef TILLWRIGHT_PAPER_H_
#define TILLWRIGHT_PAPER_H_

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <utility>

#include "tillwright/length_text.h"

namespace tillwright {

enum class Paper : std::uint8_t { kA4, kA3, kLetter, kTabloid };
enum class Orientation : std::uint8_t { kLandscape, kPortrait };

struct PaperSize {
  std::string_view name;  // "A4", "Letter"
  double width = 0;       // mm
  double height = 0;
};

// One row a paper, upright, in the order of the enumeration: ISO 216, ANSI Y14.1 (8 1/2 x 11 and
// 11 x 17 in).
inline constexpr std::array<PaperSize, 4> kPapers{{{"A4", 210, 297},
                                                   {"A3", 297, 420},
                                                   {"Letter", 8.5 * 25.4, 11 * 25.4},
                                                   {"Tabloid", 11 * 25.4, 17 * 25.4}}};

[[nodiscard]] constexpr PaperSize SizeOf(Paper paper, Orientation orientation) {
  PaperSize size = kPapers[static_cast<std::size_t>(paper)];
  if (orientation == Orientation::kLandscape) std::swap(size.width, size.height);
  return size;
}

// Letter for inches, A4 for millimeters.
[[nodiscard]] constexpr Paper UsualPaper(Unit units) {
  return units == Unit::kInch ? Paper::kLetter : Paper::kA4;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_PAPER_H_
