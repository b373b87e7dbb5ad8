// The 64-bit Mersenne Twister of Matsumoto and Nishimura, as the C++ standard specifies it for
// std::mt19937_64 (a test holds it to that), and normal numbers from it. Our own, because what the
// standard library's distributions give differs from one library to the next.
#ifndef TILLWRIGHT_CHECK_RANDOM_H_
#define TILLWRIGHT_CHECK_RANDOM_H_

#include <array>
#include <cmath>
#include <cstdint>

namespace tillwright {

class Twister {
 public:
  explicit Twister(std::uint64_t seed) {
    state_[0] = seed;
    for (std::size_t i = 1; i < kSize; ++i) {
      state_[i] = 6364136223846793005U * (state_[i - 1] ^ (state_[i - 1] >> 62U)) + i;
    }
  }

  std::uint64_t Next() {
    if (at_ == kSize) Refill();
    std::uint64_t x = state_[at_++];
    x ^= (x >> 29U) & 0x5555555555555555U;
    x ^= (x << 17U) & 0x71d67fffeda60000U;
    x ^= (x << 37U) & 0xfff7eee000000000U;
    return x ^ (x >> 43U);
  }

  // From 0 to 1, 1 not included: the upper 53 bits.
  double Unit() { return static_cast<double>(Next() >> 11U) * 0x1.0p-53; }

  // Normal, mean 0 and standard deviation 1: Marsaglia's polar method.
  double Normal() {
    if (has_spare_) {
      has_spare_ = false;
      return spare_;
    }
    double u = 0;
    double v = 0;
    double s = 0;
    do {
      u = 2 * Unit() - 1;
      v = 2 * Unit() - 1;
      s = u * u + v * v;
    } while (s >= 1 || s <= 0);
    const double scale = std::sqrt(-2 * std::log(s) / s);
    spare_ = v * scale;
    has_spare_ = true;
    return u * scale;
  }

 private:
  static constexpr std::size_t kSize = 312;

  void Refill() {
    for (std::size_t i = 0; i < kSize; ++i) {
      const std::uint64_t x = (state_[i] & 0xffffffff80000000U) |
                              (state_[(i + 1) % kSize] & 0x7fffffffU);
      const std::uint64_t twist = (x & 1U) != 0 ? 0xb5026f5aa96619e9U : 0;
      state_[i] = state_[(i + kSize / 2) % kSize] ^ (x >> 1U) ^ twist;
    }
    at_ = 0;
  }

  std::array<std::uint64_t, kSize> state_{};
  std::size_t at_ = kSize;
  double spare_ = 0;
  bool has_spare_ = false;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_RANDOM_H_
