// Rational: which texts are ratios, and how a ratio is shown.
#include "tillwright/rational.h"

#include <gtest/gtest.h>

#include <numeric>

namespace tillwright {
namespace {

struct Accepted {
  const char* text;
  std::int64_t numerator;
  std::int64_t denominator;
  const char* shown;
};

TEST(Rational, ReadsRatiosInLowestTerms) {
  for (const Accepted& row : {
           Accepted{"4/3", 4, 3, "4/3"}, Accepted{"8/6", 4, 3, "4/3"},
           Accepted{"1.3", 13, 10, "13/10"}, Accepted{"1.30", 13, 10, "13/10"},
           Accepted{"2", 2, 1, "2"}, Accepted{"007", 7, 1, "7"}, Accepted{"1 1/2", 3, 2, "3/2"},
           Accepted{"  1  1/2 ", 3, 2, "3/2"}, Accepted{"0", 0, 1, "0"}, Accepted{"0/5", 0, 1, "0"},
           Accepted{"0.000000000001", 1, 1'000'000'000'000, "1/1000000000000"},
           Accepted{"1000000000000", 1'000'000'000'000, 1, "1000000000000"},
       }) {
    SCOPED_TRACE(row.text);
    const std::optional<Rational> ratio = ParseRational(row.text);
    ASSERT_TRUE(ratio.has_value());
    EXPECT_EQ(*ratio, (Rational{row.numerator, row.denominator}));
    EXPECT_EQ(FormatRational(*ratio), row.shown);
    EXPECT_EQ(ParseRational(FormatRational(*ratio)), ratio);
  }
}

TEST(Rational, RefusesWhatIsNoRatio) {
  for (const char* text :
       {"", " ", "a", "-1", "+1", "1/0", "1/", "/2", "1//2", "1/2/3", ".5", "5.", "1.5.2", "1,5",
        "1e3", "1.5/2", "1 2", "1 1/0", "1 1.5", "0x10", "nan", "inf", "4:3", "4/3 x",
        "1000000000001", "1/1000000000001", "0.0000000000001", "1000000000000 1/2",
        "99999999999999999999999999"}) {
    EXPECT_FALSE(ParseRational(text).has_value()) << text;
  }
}

TEST(Rational, EveryShortFractionComesBack) {
  for (std::int64_t n = 0; n <= 60; ++n) {
    for (std::int64_t d = 1; d <= 60; ++d) {
      const std::string text = std::to_string(n) + "/" + std::to_string(d);
      const std::optional<Rational> ratio = ParseRational(text);
      ASSERT_TRUE(ratio.has_value()) << text;
      ASSERT_EQ(ratio->numerator * d, n * ratio->denominator) << text;
      ASSERT_EQ(std::gcd(ratio->numerator, ratio->denominator), 1) << text;
    }
  }
}

}  // namespace
}  // namespace tillwright
