// The generator against the C++ standard's own, and its normal numbers against the distribution.
#include "check/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace tillwright {
namespace {

TEST(Twister, GivesWhatTheStandardsGeneratorGives) {
  Twister ours(5489);
  std::mt19937_64 standard;  // seeded with 5489
  for (int i = 0; i < 9999; ++i) ASSERT_EQ(ours.Next(), standard()) << i;
  // The 10 000th, as ISO/IEC 14882 [rand.predef] prints it.
  EXPECT_EQ(ours.Next(), 9981545732273789042U);
}

TEST(Twister, NormalNumbersHaveTheirMomentsAndTails) {
  Twister random(7);
  constexpr int kCount = 400'000;
  double sum = 0;
  double squares = 0;
  double fourths = 0;
  int beyond_two = 0;
  for (int i = 0; i < kCount; ++i) {
    const double x = random.Normal();
    sum += x;
    squares += x * x;
    fourths += x * x * x * x;
    beyond_two += std::abs(x) > 2 ? 1 : 0;
  }
  EXPECT_NEAR(sum / kCount, 0, 5 / std::sqrt(kCount));
  EXPECT_NEAR(squares / kCount, 1, 5 * std::sqrt(2.0 / kCount));
  EXPECT_NEAR(fourths / kCount, 3, 5 * std::sqrt(96.0 / kCount));
  // erfc(2 / sqrt 2) of them.
  const double tail = std::erfc(std::sqrt(2.0));
  EXPECT_NEAR(beyond_two / static_cast<double>(kCount), tail, 5 * std::sqrt(tail / kCount));
}

}  // namespace
}  // namespace tillwright
