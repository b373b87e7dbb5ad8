// Leftovers of the sheets in work, laid out so that looking through all of them is cheap.
#ifndef TILLWRIGHT_NEST_LEFTS_H_
#define TILLWRIGHT_NEST_LEFTS_H_

#include <array>
#include <bit>
#include <cstdint>
#include <vector>

namespace tillwright::nest {

struct Left {
  std::int32_t width = 0;
  std::int32_t height = 0;
  std::int32_t sheet = 0;
  std::int32_t node = 0;
  float worth = 0;
};

// The leftovers that are looked at, with their sides in columns of their own for speed. The
// columns are whole blocks, filled up with zeros, which no part fits.
class Lefts {
 public:
  static constexpr std::size_t kBlock = 8;

  void Clear() {
    all_.clear();
    widths_.clear();
    heights_.clear();
  }
  void Add(const Left& left) {
    const std::size_t at = all_.size();
    all_.push_back(left);
    if (at == widths_.size()) {
      widths_.resize(at + kBlock);
      heights_.resize(at + kBlock);
    }
    widths_[at] = left.width;
    heights_[at] = left.height;
  }
  void Drop(std::size_t at) { widths_[at] = 0; }
  [[nodiscard]] std::size_t size() const { return all_.size(); }
  [[nodiscard]] const Left& operator[](std::size_t at) const { return all_[at]; }

  // Calls found(at) for every leftover from `from` on, a multiple of kBlock, that a part fits.
  template <class F>
  void ForFitting(std::int32_t width, std::int32_t height, std::size_t from, F found) const {
    for (std::size_t block = from; block < all_.size(); block += kBlock) {
      const std::int32_t* const w = widths_.data() + block;
      const std::int32_t* const h = heights_.data() + block;
      std::array<std::uint8_t, kBlock> fits{};
      for (std::size_t i = 0; i < kBlock; ++i) {
        fits[i] = static_cast<std::uint8_t>((w[i] >= width) & (h[i] >= height));
      }
      for (auto bits = std::bit_cast<std::uint64_t>(fits); bits != 0; bits &= bits - 1) {
        found(block + static_cast<std::size_t>(std::countr_zero(bits)) / 8);
      }
    }
  }

 private:
  std::vector<Left> all_;
  std::vector<std::int32_t> widths_;
  std::vector<std::int32_t> heights_;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_LEFTS_H_
