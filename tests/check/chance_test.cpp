// The chance that all gaps keep their limits: against the normal distribution, and a simulation of
// our own with the standard library's generator and distribution.
#include "check/chance.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "support/gap_checks.h"

namespace tillwright {
namespace {

using testing::Checked;
using testing::MustCheck;

// Within one, two and three standard deviations: 68.27, 95.45 and 99.73 % (any table of the normal
// distribution).
TEST(Chance, OfOneGapIsTheNormalDistributions) {
  EXPECT_NEAR(ChanceWithin(0, 1, -1, 1), .6827, .00005);
  EXPECT_NEAR(ChanceWithin(0, 1, -2, 2), .9545, .00005);
  EXPECT_NEAR(ChanceWithin(0, 1, -3, 3), .9973, .00005);
  EXPECT_NEAR(ChanceWithin(5, 2, 5, 100), .5, 1e-12);
  EXPECT_NEAR(ChanceWithin(0, 1, 6, 7), 9.8531e-10, 1e-14);  // the far tail keeps its digits
  EXPECT_EQ(ChanceWithin(1, 0, 0, 1), 1);
  EXPECT_EQ(ChanceWithin(2, 0, 0, 1), 0);
}

// By plain throws of every contributor, each once a throw wherever it stands.
double Thrown(const Checked& c, int throws, std::uint32_t seed) {
  std::mt19937_64 engine(seed);
  std::normal_distribution<double> normal;
  int kept = 0;
  for (int i = 0; i < throws; ++i) {
    std::map<std::string, double> drawn;
    bool ok = true;
    for (const StackUp& stack : c.check.stacks) {
      if (stack.is_overlap) continue;
      double value = ToMillimeters(stack.nominal);
      for (const Contributor& part : stack.contributors) {
        if (part.tolerance.IsZero()) continue;
        const std::string name = std::string(stack.axis == Axis::kX ? "x " : "y ") +
                                 ContributorName(c.bank, stack, part);
        const auto [at, is_new] = drawn.try_emplace(name, 0);
        if (is_new) at->second = normal(engine);
        value += part.halves / 2.0 * ToMillimeters(part.tolerance) / 3 * at->second;
      }
      ok = ok && value >= ToMillimeters(c.check.least) && value <= ToMillimeters(c.check.greatest);
    }
    kept += ok ? 1 : 0;
  }
  return kept / static_cast<double>(throws);
}

TEST(Chance, AgreesWithAPlainSimulation) {
  const std::string opening = R"({"opening": {"width": 16, "height": 24, "depth": 20}, )";
  for (
      const char* keys : {
          R"("fronts": {"style": "inset", "edge": "1/16"}, "drawers": [{}, {}, {}])",
          R"("fronts": {"style": "inset", "edge": "1/16", "gap": "1/16"}, "setting": "centred", "drawers": [{}, {}, {}])",
          R"("fronts": {"gap": "3/64"}, "setting": "centred", "drawers": [{}, {}, {}, {}])",
          R"("fronts": {"style": "inset", "edge": "3/64"}, "divider": "3/4", "drawers": [{}, {}])",
      }) {
    const Checked c = MustCheck(opening + keys + "}");
    constexpr int kThrows = 40'000;
    const double p = Thrown(c, kThrows, 20);
    const double error = std::sqrt(p * (1 - p) / kThrows);
    EXPECT_NEAR(c.check.chance, p, 5 * std::hypot(error, c.check.chance_error)) << keys;
    EXPECT_GT(c.check.chance, .05) << keys;
    EXPECT_LT(c.check.chance, .9999) << keys;
    EXPECT_GT(c.check.chance_samples, 0);
    EXPECT_GT(c.check.chance_error, 0);
  }
}

// With fronts along y set by spacers and no limits across that matter, only the top gap varies, and
// the chance has a closed form: exact, and what the simulation throws.
TEST(Chance, IsExactWhereGapsShareNothing) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"style": "inset", "edge": {"top": "3/64", "left": "1/8"}}, "drawers": [{}, {}, {}],
      "tolerance": {"cut": "1/32", "place": 0, "opening": 0}, "limits": {"least": "1/32"}})");
  // Top gap: 3/64 and a spread of three fronts; the side gaps share each front's width.
  EXPECT_GT(c.check.chance_samples, 0);
  const Checked overlay = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "drawers": [{}, {}, {}]})");
  EXPECT_EQ(overlay.check.chance, 1);
  EXPECT_EQ(overlay.check.chance_samples, 0);
  GapCheck one;
  one.least = Length::Millimeters(0);
  one.greatest = Length::Millimeters(2);
  StackUp stack;
  stack.nominal = Length::Millimeters(1);
  stack.greatest = one.greatest;
  stack.contributors.emplace_back().tolerance = Length::Millimeters(3);  // sigma 1
  one.stacks.push_back(stack);
  EXPECT_NEAR(ChanceOfAll(one).value, .6827, .00005);
  EXPECT_EQ(ChanceOfAll(one).samples, 0);
}

TEST(Chance, IsNoneWithinLimitsThatCross) {
  EXPECT_EQ(ChanceWithin(1, 1, 2, 1), 0);
  EXPECT_EQ(ChanceWithin(1.5, 1, 2, 1), 0);
  const Checked c = MustCheck(R"({"opening": {"width": "43 1/2", "height": 16, "depth": "24 7/16"},
      "limits": {"least": "1/4"}, "drawers": [{}, {}], "gap": "1/4"})");
  EXPECT_GE(c.check.chance, 0);
  EXPECT_LE(c.check.chance, 1);
}

TEST(Chance, IsTheSameEveryTime) {
  const std::string text = R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"style": "inset", "edge": "1/16"}, "drawers": [{}, {}, {}]})";
  EXPECT_EQ(MustCheck(text).check.chance, MustCheck(text).check.chance);
}

}  // namespace
}  // namespace tillwright
