// Apportioning, with values worked by hand in the comments.
#include "solve/apportion.h"

#include <gtest/gtest.h>

#include <numeric>

#include "support/specs.h"

namespace tillwright {
namespace {

using testing::L;
using testing::Random;
using Fault = Apportioned::Fault;

ApportionChild Free(Rational weight = {1, 1}) {
  ApportionChild child;
  child.weight = weight;
  return child;
}
ApportionChild Exact(const char* size) {
  ApportionChild child;
  child.is_exact = true;
  child.exact = L(size);
  return child;
}
ApportionChild Bounded(const char* min, const char* max) {
  ApportionChild child;
  child.has_min = *min != '\0';
  child.has_max = *max != '\0';
  if (child.has_min) child.min = L(min);
  if (child.has_max) child.max = L(max);
  return child;
}

ApportionScheme Equal() { return {}; }
ApportionScheme Geometric(Rational ratio) {
  ApportionScheme scheme;
  scheme.scheme = Graduation::kGeometric;
  scheme.ratio = ratio;
  return scheme;
}
ApportionScheme GeometricFrom(const char* first) {
  ApportionScheme scheme;
  scheme.scheme = Graduation::kGeometric;
  scheme.has_first = true;
  scheme.first = L(first);
  return scheme;
}
ApportionScheme Arithmetic(const char* step) {
  ApportionScheme scheme;
  scheme.scheme = Graduation::kArithmetic;
  scheme.step = L(step);
  return scheme;
}
ApportionScheme ArithmeticFrom(const char* first) {
  ApportionScheme scheme;
  scheme.scheme = Graduation::kArithmetic;
  scheme.has_first = true;
  scheme.first = L(first);
  return scheme;
}
ApportionScheme Shares(std::vector<Rational> shares) {
  ApportionScheme scheme;
  scheme.scheme = Graduation::kShares;
  scheme.shares = std::move(shares);
  return scheme;
}

struct Case {
  const char* name;
  const char* length;
  const char* increment;
  std::vector<ApportionChild> children;
  ApportionScheme scheme;
  std::vector<const char*> sizes;
  const char* remainder;
};
void PrintTo(const Case& c, std::ostream* out) { *out << c.name; }

class ApportionTable : public ::testing::TestWithParam<Case> {};

TEST_P(ApportionTable, GivesTheSizesWorkedByHand) {
  const Case& c = GetParam();
  const Apportioned got = Apportion(L(c.length), L(c.increment), c.children, c.scheme);
  ASSERT_EQ(got.fault, Fault::kNone);
  ASSERT_EQ(got.shares.size(), c.sizes.size());
  for (std::size_t i = 0; i < c.sizes.size(); ++i) {
    EXPECT_EQ(FormatInches(got.shares[i].size), FormatInches(L(c.sizes[i]))) << "child " << i;
    EXPECT_EQ(got.shares[i].size, L(c.sizes[i])) << "child " << i;
  }
  EXPECT_EQ(got.remainder, L(c.remainder));
}

const std::vector<Case>& Cases() {
  static const std::vector<Case> cases{
      // 25 3/4 in by three: 824/32 = 3 x 274 + 2; ideals 274 2/3 each, so two get one more, and
      // ties
      // go to the later: 274, 275, 275.
      {"EqualTiesGoToTheLater",
       "25 3/4",
       "1/32",
       {Free(), Free(), Free()},
       Equal(),
       {"8 9/16", "8 19/32", "8 19/32"},
       "0"},
      // 25 49/64 in = 824 1/2 increments of 1/32: the half increment is the remainder.
      {"TheSliverIsLessThanAnIncrement",
       "25 49/64",
       "1/32",
       {Free(), Free(), Free()},
       Equal(),
       {"8 9/16", "8 19/32", "8 19/32"},
       "1/64"},
      // Weights 1 : 2 : 3 of 12 in: 2, 4, 6.
      {"WeightsShareInProportion",
       "12",
       "1/32",
       {Free({1, 1}), Free({2, 1}), Free({3, 1})},
       Equal(),
       {"2", "4", "6"},
       "0"},
      // 4/3 : 1 of 14 in: 8 and 6.
      {"RationalWeights", "14", "1/32", {Free({4, 3}), Free()}, Equal(), {"8", "6"}, "0"},
      // 3 exact leaves 9 for two: 4 1/2 each.
      {"ExactIsTakenAsTyped",
       "12",
       "1/32",
       {Free(), Exact("3"), Free()},
       Equal(),
       {"4 1/2", "3", "4 1/2"},
       "0"},
      // An exact size off the grid leaves a remainder: 12 - 3 1/64 = 8 63/64 = 8 31/32 + 1/64.
      {"AnExactSizeOffTheGridLeavesASliver",
       "12",
       "1/32",
       {Exact("3 1/64"), Free()},
       Equal(),
       {"3 1/64", "8 31/32"},
       "1/64"},
      // min 8 of 18: the other two share 10.
      {"AMinHoldsAndTheOthersShareTheRest",
       "18",
       "1/32",
       {Free(), Free(), Bounded("8", "")},
       Equal(),
       {"5", "5", "8"},
       "0"},
      // max 4 of 18: the other two share 14.
      {"AMaxHolds",
       "18",
       "1/32",
       {Bounded("", "4"), Free(), Free()},
       Equal(),
       {"4", "7", "7"},
       "0"},
      // min 7 1/100 rounds up to 7 1/32, max 4 1/100 down to 4: 18 - 11 1/32 = 6 31/32.
      {"BoundsAreRoundedInward",
       "18",
       "1/32",
       {Bounded("7.01", ""), Bounded("", "4.01"), Free()},
       Equal(),
       {"7 1/32", "4", "6 31/32"},
       "0"},
      // shares 2, 3, 5 of 20 in; the entry of an exact child is not used.
      {"SharesList",
       "20",
       "1/32",
       {Free(), Free(), Free()},
       Shares({{2, 1}, {3, 1}, {5, 1}}),
       {"4", "6", "10"},
       "0"},
      {"SharesSkipExactChildren",
       "24",
       "1/32",
       {Free(), Exact("4"), Free()},
       Shares({{1, 1}, {99, 1}, {3, 1}}),
       {"5", "4", "15"},
       "0"},
      // 2^0 : 2^1 : 2^2 of 21: 3, 6, 12.
      {"GeometricByRatio",
       "21",
       "1/32",
       {Free(), Free(), Free()},
       Geometric({2, 1}),
       {"3", "6", "12"},
       "0"},
      // first 3 of 21 in three: 3 (1 + r + r^2) = 21, r^2 + r - 6 = 0, r = 2.
      {"GeometricFromTheFirst",
       "21",
       "1/32",
       {Free(), Free(), Free()},
       GeometricFrom("3"),
       {"3", "6", "12"},
       "0"},
      // r below one: 12, 6, 3.
      {"GeometricFromALargeFirst",
       "21",
       "1/32",
       {Free(), Free(), Free()},
       GeometricFrom("12"),
       {"12", "6", "3"},
       "0"},
      // step 1 of 18 in three: mu = (18 - 3) / 3 = 5: 5, 6, 7.
      {"ArithmeticByStep",
       "18",
       "1/32",
       {Free(), Free(), Free()},
       Arithmetic("1"),
       {"5", "6", "7"},
       "0"},
      {"ArithmeticByNegativeStep",
       "18",
       "1/32",
       {Free(), Free(), Free()},
       Arithmetic("-1"),
       {"7", "6", "5"},
       "0"},
      // first 4 of 18 in three: s = 2 (18 - 12) / 6 = 2: 4, 6, 8.
      {"ArithmeticFromTheFirst",
       "18",
       "1/32",
       {Free(), Free(), Free()},
       ArithmeticFrom("4"),
       {"4", "6", "8"},
       "0"},
      // step 2 of 18, the last held to 7: mu + mu + 2 = 11, mu = 4 1/2: 4 1/2, 6 1/2, 7.
      {"ArithmeticWithABound",
       "18",
       "1/32",
       {Free(), Free(), Bounded("", "7")},
       Arithmetic("2"),
       {"4 1/2", "6 1/2", "7"},
       "0"},
      {"ALoneFlexibleChildTakesAll",
       "10",
       "1/32",
       {Exact("4"), Free()},
       GeometricFrom("3"),
       {"4", "6"},
       "0"},
      {"AllExactLeavesTheRest", "10", "1/32", {Exact("4"), Exact("5")}, Equal(), {"4", "5"}, "1"},
      {"AllExactMayBeTooLong", "10", "1/32", {Exact("6"), Exact("5")}, Equal(), {"6", "5"}, "-1"},
      // In millimeters: 500.3 by two at 0.5: G = 500, 250 each, remainder 0.3.
      {"Millimetres",
       "500.3 mm",
       "0.5 mm",
       {Free(), Free()},
       Equal(),
       {"250 mm", "250 mm"},
       "0.3 mm"},
  };
  return cases;
}

INSTANTIATE_TEST_SUITE_P(Apportion, ApportionTable, ::testing::ValuesIn(Cases()),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(Apportion, SaysByHowMuchLeastSizesAreTooLong) {
  const Apportioned got =
      Apportion(L("10"), L("1/32"), {Bounded("6", ""), Bounded("5", "")}, Equal());
  EXPECT_EQ(got.fault, Fault::kTooLong);
  EXPECT_EQ(got.amount, L("1"));
}

TEST(Apportion, SaysByHowMuchGreatestSizesAreTooShort) {
  const Apportioned got =
      Apportion(L("10"), L("1/32"), {Bounded("", "4"), Bounded("", "5")}, Equal());
  EXPECT_EQ(got.fault, Fault::kTooShort);
  EXPECT_EQ(got.amount, L("1"));
}

TEST(Apportion, RefusesASizeOfZero) {
  // 1/16 in is two increments for three children.
  const Apportioned got = Apportion(L("1/16"), L("1/32"), {Free(), Free(), Free()}, Equal());
  EXPECT_EQ(got.fault, Fault::kZero);
  EXPECT_EQ(got.child, 0);
}

TEST(Apportion, RefusesAStepThatLeavesNothingForTheFirst) {
  // mu = (6 - 3 * 3) / 3 = -1.
  EXPECT_EQ(Apportion(L("6"), L("1/32"), {Free(), Free(), Free()}, Arithmetic("3")).fault,
            Fault::kZero);
}

TEST(Apportion, RefusesCrossedBounds) {
  // 5.01 up to 5 1/32, 5.02 down to 5.
  EXPECT_EQ(Apportion(L("10"), L("1/32"), {Bounded("5.01", "5.02"), Free()}, Equal()).fault,
            Fault::kCrossed);
}

TEST(Apportion, RefusesAFirstThatLeavesNoRatio) {
  EXPECT_EQ(Apportion(L("10"), L("1/32"), {Free(), Free()}, GeometricFrom("10")).fault,
            Fault::kNoRatio);
}

TEST(Apportion, SaysWhenBoundsMoveTheFirst) {
  // first 4 of 18 asks for 4, 6, 8; the last held to 7 makes it 4 1/2, 6 1/2, 7.
  const Apportioned got =
      Apportion(L("18"), L("1/32"), {Free(), Free(), Bounded("", "7")}, ArithmeticFrom("4"));
  ASSERT_EQ(got.fault, Fault::kNone);
  EXPECT_TRUE(got.first_moved);
  EXPECT_FALSE(
      Apportion(L("18"), L("1/32"), {Free(), Free(), Free()}, ArithmeticFrom("4")).first_moved);
}

// Weights of hundreds of bits are exact too. r = 3/2 over 200 children of 100 m at 1 pm: each size
// is within one increment of its ideal, computed here by an independent recurrence: h[i+1] = 3/2
// h[i] up to the two roundings.
TEST(Apportion, HandlesWeightsOfAnyLengthExactly) {
  const std::vector<ApportionChild> children(60, Free());
  const Apportioned got = Apportion(L("100 m"), L("0.000000001 mm"), children, Geometric({3, 2}));
  ASSERT_EQ(got.fault, Fault::kNone);
  Length sum;
  for (std::size_t i = 0; i < children.size(); ++i) {
    sum += got.shares[i].size;
    if (i == 0) continue;
    const std::int64_t doubled = 2 * got.shares[i].size.picometers();
    const std::int64_t tripled = 3 * got.shares[i - 1].size.picometers();
    EXPECT_LE(std::abs(doubled - tripled), 5) << i;
  }
  EXPECT_EQ(sum, L("100 m"));
}

TEST(Apportion, GivesTheSameByBothIntegerPaths) {
  // The same ratio written so that it needs more than 128 bits and fewer: 1.3 over 8 children fits,
  // and scaling the weights by a common factor must change nothing.
  std::vector<ApportionChild> small;
  std::vector<ApportionChild> large;
  const std::vector<Rational> odd{{999999999989, 1},  {999999999961, 7},  {999999999959, 11},
                                  {999999999937, 13}, {999999999899, 17}, {999999999877, 999983}};
  for (const Rational& weight : odd) large.push_back(Free(weight));
  const Apportioned big = Apportion(L("30"), L("1/32"), large, Equal());
  ASSERT_EQ(big.fault, Fault::kZero);  // the last weight is a millionth of the first
  large.pop_back();
  const Apportioned exact = Apportion(L("30"), L("1/32"), large, Equal());
  ASSERT_EQ(exact.fault, Fault::kNone);
  // 1 : 1/7 : 1/11 : 1/13 : 1/17 of 960 increments, to well under an increment: sum of weights
  // 1.36951..., ideals 700.98, 100.14, 63.73, 53.92, 41.23; one each to .98, .92 and .73.
  EXPECT_EQ(exact.shares[0].size, L("1/32") * 701);
  EXPECT_EQ(exact.shares[1].size, L("1/32") * 100);
  EXPECT_EQ(exact.shares[2].size, L("1/32") * 64);
  EXPECT_EQ(exact.shares[3].size, L("1/32") * 54);
  EXPECT_EQ(exact.shares[4].size, L("1/32") * 41);
}

// Guarantees (1) to (3) of apportion.h over random jobs.
TEST(Apportion, KeepsItsGuaranteesOnRandomJobs) {
  constexpr std::uint32_t kSeed = 20261;
  Random random(kSeed);
  int solved = 0;
  for (int round = 0; round < 4000; ++round) {
    const Length q = random.Chance(50) ? L("1/32") : L("0.5 mm");
    const int n = random.Int(1, 9);
    std::vector<ApportionChild> children;
    for (int i = 0; i < n; ++i) {
      ApportionChild child = Free({random.Int(1, 40), random.Int(1, 12)});
      const int kind = random.Int(0, 9);
      if (kind == 0) child = Exact("3.7");
      if (kind == 1) child = Bounded("2.03", "");
      if (kind == 2) child = Bounded("", "6.11");
      if (kind == 3) child = Bounded("2.5", "5.25");
      children.push_back(child);
    }
    const Length length = Length::Picometers(random.Int(100, 900) * 1'234'567'891LL);
    const Apportioned got = Apportion(length, q, children, Equal());
    if (got.fault != Fault::kNone || got.all_exact) continue;
    ++solved;
    Length flexible;
    Length exact;
    for (std::size_t i = 0; i < children.size(); ++i) {
      const Length size = got.shares[i].size;
      if (children[i].is_exact) {
        exact += size;
        EXPECT_EQ(size, children[i].exact);
        continue;
      }
      flexible += size;
      EXPECT_EQ(FloorTo(size, q), size);
      if (children[i].has_min) {
        EXPECT_GE(size, children[i].min);
      }
      if (children[i].has_max) {
        EXPECT_LE(size, children[i].max);
      }
      EXPECT_TRUE(size == got.shares[i].base || size == got.shares[i].base + q);
    }
    EXPECT_EQ(flexible, FloorTo(length - exact, q)) << "seed " << kSeed << " round " << round;
    EXPECT_EQ(flexible + exact + got.remainder, length);
    EXPECT_LT(got.remainder, q);
  }
  EXPECT_GT(solved, 1000) << "seed " << kSeed;
}

}  // namespace
}  // namespace tillwright
