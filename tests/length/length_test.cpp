// Length: its identities as numbered in length.h, its limits, and what must not compile.
#include "tillwright/length.h"

#include <gtest/gtest.h>

#include <array>
#include <limits>
#include <random>
#include <type_traits>

#include "support/files.h"

namespace tillwright {
namespace {

// --- Passes by compiling ------------------------------------------------------------------------

static_assert(std::is_trivially_copyable_v<Length>);
static_assert(sizeof(Length) == 8);
static_assert(Length() == Length::Picometers(0));

// NIST SP 811 (2008), Appendix B.6 and B.8: 1 inch = 2.54 E-02 m exactly, 1 foot = 3.048 E-01 m.
static_assert(10 * Length::Inches(1) == Length::Millimeters(254));
static_assert(5 * Length::Inches(12) == Length::Millimeters(1524));
static_assert(Length::Inches(15 * 8 + 3, 8) == Length::Picometers(390'525'000'000));
static_assert(Length::Inches(1, 512) * 512 == Length::Inches(1));

template <class A, class B>
concept CanAdd = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept CanMultiply = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept CanDivide = requires(A a, B b) {
  a / b;
};
template <class A, class B>
concept CanRemain = requires(A a, B b) {
  a % b;
};
template <class A, class B>
concept CanCompare = requires(A a, B b) {
  a < b;
};

static_assert(CanAdd<Length, Length> && CanMultiply<Length, int> && CanMultiply<long, Length>);
static_assert(!CanAdd<Length, int>, "a number has no unit");
static_assert(!CanAdd<Length, double>);
static_assert(!CanMultiply<Length, Length>, "an area is no length");
static_assert(!CanMultiply<Length, double>, "a double would lose its fraction without a word");
static_assert(!CanMultiply<float, Length>);
static_assert(!CanMultiply<Length, bool>);
static_assert(!CanDivide<Length, Length> && !CanDivide<Length, int>, "where would the rest go?");
static_assert(!CanRemain<Length, Length>);
static_assert(!CanCompare<Length, int> && !CanCompare<Length, double>);
static_assert(!std::is_constructible_v<Length, double>);
static_assert(!std::is_constructible_v<Length, long>);
static_assert(!std::is_convertible_v<Length, long> && !std::is_convertible_v<Length, double>);
static_assert(!std::is_convertible_v<Length, bool>);

// --- The numbered identities --------------------------------------------------------------------

class Lengths : public ::testing::Test {
 protected:
  Length Any() {
    return Length::Picometers(std::uniform_int_distribution<std::int64_t>(
        -kMaxTyped.picometers(), kMaxTyped.picometers())(engine_));
  }
  Length Positive() { return Max(Any(), Length::Picometers(1)); }

  const std::uint32_t seed_ = testing::TestSeed();
  std::mt19937_64 engine_{seed_};
  ::testing::ScopedTrace trace_{__FILE__, __LINE__,
                                "TILLWRIGHT_TEST_SEED=" + std::to_string(seed_)};
};

TEST_F(Lengths, SumsComeApartAgain) {  // (1)
  for (int i = 0; i < 20'000; ++i) {
    const Length a = Any();
    const Length b = Any();
    const Length c = Any();
    ASSERT_EQ(a + b - b, a);
    ASSERT_EQ((a + b) + c, a + (b + c));
    ASSERT_EQ(a - b, -(b - a));
  }
}

void ExpectFloor(Length value, Length increment) {  // (2)
  const Length floor = FloorTo(value, increment);
  ASSERT_LE(floor, value);
  ASSERT_LT(value, floor + increment);
  ASSERT_EQ(floor.picometers() % increment.picometers(), 0);
  ASSERT_EQ(FloorTo(floor, increment), floor);
  const Length ceiling = CeilTo(value, increment);
  ASSERT_GE(ceiling, value);
  ASSERT_LT(ceiling - increment, value);
  ASSERT_EQ(ceiling == floor, value == floor);
}

TEST_F(Lengths, FloorIsTheLargestMultipleNotAbove) {
  const std::array increments{Length::Picometers(1), Length::Inches(1, 32), Length::Inches(1, 64),
                              Length::Picometers(500'000'000), Length::Millimeters(32)};
  for (const Length increment : increments) {
    for (std::int64_t n = -3; n <= 3; ++n) {
      for (const std::int64_t off : {-1, 0, 1}) {
        ExpectFloor(n * increment + Length::Picometers(off), increment);
      }
    }
    for (int i = 0; i < 2000; ++i) ExpectFloor(Any(), increment);
  }
  for (int i = 0; i < 2000; ++i) ExpectFloor(Any(), Positive());
}

TEST_F(Lengths, HalvesMakeTheWhole) {  // (3)
  const auto expect = [](Length v) {
    ASSERT_EQ(HalfBelow(v) + HalfAbove(v), v);
    ASSERT_GE(HalfAbove(v) - HalfBelow(v), Length());
    ASSERT_LE(HalfAbove(v) - HalfBelow(v), Length::Picometers(1));
  };
  for (std::int64_t pm = -9; pm <= 9; ++pm) expect(Length::Picometers(pm));
  for (int i = 0; i < 20'000; ++i) expect(Any());
}

TEST_F(Lengths, PartsBelowLeaveLessThanOnePicometerEach) {
  for (int i = 0; i < 20'000; ++i) {
    const Length v = Any();
    const std::int64_t n = std::uniform_int_distribution<std::int64_t>(1, 1000)(engine_);
    const Length part = PartBelow(v, n);
    ASSERT_LE(n * part, v);
    ASSERT_LT(v, n * (part + Length::Picometers(1)));
  }
}

TEST(Length, TenThousandOfTheLongestStillAdd) {
  Length sum;
  for (int i = 0; i < 10'000; ++i) sum += kMaxTyped;
  EXPECT_EQ(sum, 10'000 * kMaxTyped);
}

TEST(Length, RectanglesKnowTheirFarEdges) {
  constexpr Rect r{Length::Millimeters(1), Length::Millimeters(2), Length::Millimeters(30),
                   Length::Millimeters(40)};
  EXPECT_EQ(r.Right(), Length::Millimeters(31));
  EXPECT_EQ(r.Top(), Length::Millimeters(42));
}

// --- A broken precondition ends the program: nothing wraps, nothing saturates -------------------

constexpr std::int64_t kLeast = std::numeric_limits<std::int64_t>::min();
constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();

TEST(LengthDeathTest, OverflowEndsTheProgram) {
  const Length most = Length::Picometers(kMost);
  const Length least = Length::Picometers(kLeast);
  const Length one = Length::Picometers(1);
  EXPECT_EQ(most - one + one, most);
  EXPECT_DEATH((void)(most + one), "length overflow");
  EXPECT_DEATH((void)(least - one), "length overflow");
  EXPECT_DEATH((void)(-least), "length overflow");
  EXPECT_DEATH((void)(2 * most), "length overflow");
  EXPECT_DEATH((void)(least * -1), "length overflow");
  EXPECT_DEATH((void)Length::Millimeters(kMost), "length overflow");
}

TEST(LengthDeathTest, InexactFractionsAndEmptyIncrementsAreBugs) {
  EXPECT_DEATH((void)Length::Inches(1, 3), "not exact");
  EXPECT_DEATH((void)Length::Inches(1, 0), "not exact");
  EXPECT_DEATH((void)FloorTo(Length::Inches(1), Length()), "must be positive");
}

}  // namespace
}  // namespace tillwright
