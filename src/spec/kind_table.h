// Tables of kinds: one row for each enumerator, in the order of the enumeration, which hold all
// that differs from kind to kind. Facts(kind) finds the row, whatever the kind is a kind of.
#ifndef TILLWRIGHT_SPEC_KIND_TABLE_H_
#define TILLWRIGHT_SPEC_KIND_TABLE_H_

#include <array>
#include <cstddef>

namespace tillwright {

// True if every row stands at the place of its own kind.
template <class Row, std::size_t kRows>
[[nodiscard]] consteval bool InOrder(const std::array<Row, kRows>& rows) {
  for (std::size_t i = 0; i < kRows; ++i) {
    if (static_cast<std::size_t>(rows[i].kind) != i) return false;
  }
  return true;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_KIND_TABLE_H_
