// A small generator of pseudo-random numbers: the same sequence for the same seed on every machine.
#ifndef TILLWRIGHT_NEST_RANDOM_H_
#define TILLWRIGHT_NEST_RANDOM_H_

#include <cstdint>

namespace tillwright::nest {

class Random {
 public:
  explicit Random(std::uint64_t seed) : state_(seed * 0x9e3779b97f4a7c15U + 0x2545f4914f6cdd1dU) {}

  // xorshift64* (Marsaglia 2003, Vigna 2016).
  std::uint32_t Next() {
    state_ ^= state_ >> 12;
    state_ ^= state_ << 25;
    state_ ^= state_ >> 27;
    return static_cast<std::uint32_t>((state_ * 0x2545f4914f6cdd1dU) >> 32);
  }
  // A number from 0 to n - 1. REQUIRES: n > 0.
  std::uint32_t Below(std::uint32_t n) {
    return static_cast<std::uint32_t>((std::uint64_t{Next()} * n) >> 32);
  }

 private:
  std::uint64_t state_;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_RANDOM_H_
