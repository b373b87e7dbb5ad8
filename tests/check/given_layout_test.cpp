// Layouts whose sizes are all given: what gaps they leave, and the least change that makes them
// fit.
#include "check/given_layout.h"

#include <gtest/gtest.h>

#include "support/files.h"
#include "support/gap_checks.h"

namespace tillwright {
namespace {

using testing::Checked;
using testing::L;
using testing::MustCheck;

// Overlay: 24 + 2 x 5/8 = 25 1/4 to fill; three fronts and two gaps of 1/8.
Checked Overlay(const char* first, const char* second, const char* third) {
  return MustCheck(
      R"({"opening": {"width": 16, "height": 24, "depth": 20}, "drawers": [{"exact": ")" +
      std::string(first) + R"("}, {"exact": ")" + second + R"("}, {"exact": ")" + third +
      R"("}]})");
}

TEST(GivenLayout, TooShortIsSpreadOrLeftAtTheTop) {
  // 7 + 8 + 9 + 1/4 = 24 1/4: an inch short.
  const Checked c = Overlay("7", "8", "9");
  ASSERT_EQ(c.check.layouts.size(), 1U);
  const GivenLayout& layout = c.check.layouts[0];
  EXPECT_EQ(layout.left_over, L("1"));
  EXPECT_EQ(layout.gap_count, 2);
  EXPECT_EQ(layout.spread_gap, L("5/8"));
  EXPECT_EQ(layout.flush_end, L("5/8") - L("1"));  // the top front stops 3/8 short of the edge
  EXPECT_EQ(layout.front, 2);
  EXPECT_EQ(layout.first, 0);
  EXPECT_EQ(layout.last, 2);
}

TEST(GivenLayout, TooLongIsNegative) {
  const GivenLayout layout = Overlay("8", "8", "9 1/8").check.layouts.at(0);
  EXPECT_EQ(layout.left_over, L("-1/8"));
  EXPECT_EQ(layout.spread_gap, L("1/16"));
  EXPECT_EQ(layout.flush_end, L("3/4"));
}

TEST(GivenLayout, WhatClosesIsSaidToClose) {
  const GivenLayout layout = Overlay("8", "8", "9").check.layouts.at(0);
  EXPECT_EQ(layout.left_over, Length());
  EXPECT_EQ(layout.spread_gap, L("1/8"));
}

// Inset: the gaps at both ends take a share too.
TEST(GivenLayout, InsetGapsAtTheEndsTakeTheirShare) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"style": "inset"}, "drawers": [{"exact": 11}, {"exact": "12 1/2"}]})");
  const GivenLayout& layout = c.check.layouts.at(0);
  EXPECT_EQ(layout.left_over, L("1/8"));
  EXPECT_EQ(layout.gap_count, 3);
  EXPECT_EQ(layout.spread_gap, L("1/8") + PartBelow(L("1/8"), 3));
  EXPECT_EQ(layout.flush_end, L("1/4"));
}

TEST(GivenLayout, OneSizeLeftFreeIsNoGivenLayout) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "drawers": [{"exact": 7}, {}]})");
  EXPECT_TRUE(c.check.layouts.empty());
}

// Spread by the reckoned gap the fronts fill the length, to the picometer that a share rounds off.
TEST(GivenLayout, SpreadGapsFillTheLength) {
  const auto seed = testing::TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  testing::Random random(seed);
  for (int round = 0; round < 200; ++round) {
    std::string drawers;
    Length sum;
    const int n = random.Int(2, 6);
    for (int i = 0; i < n; ++i) {
      const Length size = Length::Inches(random.Int(200, 280), 64);
      sum += size;
      drawers += std::string(i == 0 ? "" : ", ") + R"({"exact": ")" + FormatInches(size) + R"("})";
    }
    const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
        "drawers": [)" + drawers +
                                "]}");
    const GivenLayout& layout = c.check.layouts.at(0);
    const Length filled = sum + (n - 1) * layout.spread_gap;
    EXPECT_LE(filled, L("25 1/4"));
    EXPECT_GT(filled + Length::Picometers(n - 1), L("25 1/4"));
  }
}

}  // namespace
}  // namespace tillwright
