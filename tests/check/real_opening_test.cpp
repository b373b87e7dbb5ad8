// The opening as measured, against exact coordinates.
#include "check/real_opening.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/files.h"
#include "support/specs.h"

namespace tillwright {
namespace {

using testing::L;
using testing::MustSolve;
using testing::Random;
using testing::Solved;

// The distance of two points, rounded to a picometer.
Length Distance(Length x, Length y) {
  const long double a = static_cast<long double>(x.picometers());
  const long double b = static_cast<long double>(y.picometers());
  return Length::Picometers(static_cast<std::int64_t>(std::llround(std::sqrt(a * a + b * b))));
}

// Corners at (0, 0), (bottom, 0), (left, h) and (left + top, h): level, and leaning as its sides
// do.
TEST(RealOpening, LeanIsWhatTheCornersLean) {
  const auto seed = testing::TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  Random random(seed);
  for (int round = 0; round < 1000; ++round) {
    const Length bottom = Length::Inches(random.Int(600, 3000), 64);
    const Length top = bottom + Length::Inches(random.Int(-20, 20), 64);
    const Length height = Length::Inches(random.Int(600, 6000), 64);
    const Length left = Length::Inches(random.Int(-40, 40), 64);
    const Length right = left + top - bottom;  // how far the right side leans
    const Length rising = Distance(left + top, height);
    const Length falling = Distance(bottom - left, height);
    const Length lean = LeanOf(rising, falling, bottom, top);
    // The mean of both sides; a picometer in a diagonal is as much as d / 2W in the lean.
    const double mean = (ToMillimeters(left) + ToMillimeters(right)) / 2;
    EXPECT_NEAR(ToMillimeters(lean), mean, 1e-7);
  }
}

// The worked case: 3-4-5 leaning by nothing, and one leaning exactly: W = 3, lean = 1, height 4:
// rising^2 = 16 + 16 = 32, falling^2 = 4 + 16 = 20; (32 - 20) / 12 = 1.
TEST(RealOpening, LeanOfAWorkedCase) {
  EXPECT_EQ(LeanOf(L("5"), L("5"), L("3"), L("3")), Length());
  const Length rising = Distance(L("4"), L("4"));
  const Length falling = Distance(L("2"), L("4"));
  EXPECT_NEAR(ToMillimeters(LeanOf(rising, falling, L("3"), L("3"))), 25.4, 1e-8);
}

Solved Measured(const std::string& measured) {
  return MustSolve(R"({"units": "mm", "opening": {"width": 400, "height": 600, "depth": 550},
      "fronts": {"style": "inset"}, "drawers": [{}, {}, {}], "measured": {)" +
                   measured + "}}");
}

TEST(RealOpening, WidthsRunInStraightLinesBetweenWhereTheyWereMeasured) {
  const Solved s = Measured(R"("width": [{"at": 500, "size": 398}, {"at": 100, "size": 402},
      {"at": 300, "size": 399}])");
  const RealOpening real(s.spec, s.bank);
  EXPECT_EQ(real.WidthAt(L("0 mm")), L("402 mm"));
  EXPECT_EQ(real.WidthAt(L("200 mm")), L("400.5 mm"));
  EXPECT_EQ(real.WidthAt(L("300 mm")), L("399 mm"));
  EXPECT_EQ(real.WidthAt(L("450 mm")), L("398.25 mm"));
  EXPECT_EQ(real.WidthAt(L("600 mm")), L("398 mm"));
  EXPECT_EQ(real.LeastWidth(L("0 mm"), L("400 mm")), L("398.5 mm"));
  EXPECT_EQ(real.LeastWidth(L("0 mm"), L("200 mm")), L("400.5 mm"));
}

TEST(RealOpening, TheLeastWidthMayLieBetweenTheEnds) {
  const Solved s = Measured(R"("width": [{"at": 0, "size": 402}, {"at": 300, "size": 395},
      {"at": 600, "size": 402}])");
  EXPECT_EQ(RealOpening(s.spec, s.bank).LeastWidth(L("100 mm"), L("500 mm")), L("395 mm"));
}

TEST(RealOpening, OfTwoWidthsAtOneHeightTheSmallerCounts) {
  const Solved s = Measured(R"("width": [{"at": 300, "size": 399}, {"at": 0, "size": 400},
      {"at": 300, "size": 398}, {"at": 600, "size": 400}])");
  const RealOpening real(s.spec, s.bank);
  EXPECT_EQ(real.WidthAt(L("300 mm")), L("398 mm"));
  EXPECT_EQ(real.WidthAt(L("150 mm")), L("399 mm"));
  EXPECT_EQ(real.LeastWidth(L("200 mm"), L("400 mm")), L("398 mm"));
}

TEST(RealOpening, AHeightAtOneSideHoldsForBoth) {
  const Solved one = Measured(R"("height": {"right": 598})");
  EXPECT_EQ(RealOpening(one.spec, one.bank).HeightAt(L("0 mm")), L("598 mm"));
  const Solved both = Measured(R"("height": {"left": 600, "right": 596})");
  EXPECT_EQ(RealOpening(both.spec, both.bank).HeightAt(L("100 mm")), L("599 mm"));
}

// A square front in the leaning opening of exact corners: the gap at each end, from the side's
// line.
TEST(RealOpening, TapersAreThoseOfTheCorners) {
  const Length width = L("400 mm");
  const Length height = L("600 mm");
  const Length lean = L("6 mm");
  const std::string diagonals =
      R"("diagonals": {"rising": ")" + FormatMillimeters(Distance(width + lean, height)) +
      R"( mm", "falling": ")" + FormatMillimeters(Distance(width - lean, height)) + R"( mm"})";
  const Solved s = Measured(diagonals);
  const RealOpening real(s.spec, s.bank);
  const Rect& front = s.bank.spaces[1].front.rect;
  // Each side is at lean * y / 600 further right: over the front's own height.
  const double over = 6.0 * ToMillimeters(front.height) / 600;
  EXPECT_NEAR(ToMillimeters(real.Taper(Edge::kRight, front)), over, 1e-6);
  EXPECT_NEAR(ToMillimeters(real.Taper(Edge::kLeft, front)), -over, 1e-6);
  EXPECT_EQ(real.Taper(Edge::kBottom, front), Length());
}

}  // namespace
}  // namespace tillwright
