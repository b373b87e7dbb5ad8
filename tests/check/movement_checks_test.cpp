// Solid bottoms and fronts, held against the handbook's worked example.
#include "check/movement_checks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/specs.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;
using testing::MustSolve;

std::vector<Finding> Those(const std::string& keys, CheckCode code) {
  const testing::Solved s = MustSolve(
      R"({"units": "mm", "opening": {"width": 400, "height": 300, "depth": 300}, )" + keys + "}");
  std::vector<Finding> found;
  AddMovementChecks(s.spec, s.bank, found);
  std::erase_if(found, [&](const Finding& finding) { return finding.code != code; });
  return found;
}

std::string Bottom(const std::string& more, const std::string& material = "white fir") {
  return R"("slides": {"length": 244}, "box": {"bottom": {"thickness": 8, "material": ")" +
         material + "\", " + more + R"(}}, "drawers": [{}])";
}

// Wood Handbook (USDA FPL, GTR-282), chapter 13: flat-grained white fir 232 mm wide at 8 % moisture
// grows 1.705 mm on its way to 11 %. Here the bottom is 232 mm from front to back.
TEST(BottomMoves, ByTheHandbooksWorkedExample) {
  const std::vector<Finding> solid =
      Those(Bottom(R"("play": 0, "depth": 6)"), CheckCode::kBottomMoves);
  ASSERT_EQ(solid.size(), 1U);
  EXPECT_EQ(solid[0].level, Level::kWarn);
  EXPECT_NEAR(ToMillimeters(*solid[0].value), 1.705, 0.0005);
  EXPECT_EQ(*solid[0].limit, Length());
}

TEST(BottomMoves, TheAdviceCuresIt) {
  const Finding warned = Those(Bottom(R"("play": 0)"), CheckCode::kBottomMoves).at(0);
  ASSERT_THAT(warned.message, HasSubstr("0.9 mm more play"));
  EXPECT_EQ(Those(Bottom(R"("play": 0.9)"), CheckCode::kBottomMoves).at(0).level, Level::kPass);
  EXPECT_EQ(Those(Bottom(R"("play": 0, "open_back": true)"), CheckCode::kBottomMoves).at(0).level,
            Level::kPass);
}

TEST(BottomMoves, OneFixedAllRoundIsWarnedOfAndAPanelIsNot) {
  EXPECT_EQ(Those(Bottom(R"("fit": "applied")"), CheckCode::kBottomMoves).at(0).level,
            Level::kWarn);
  EXPECT_TRUE(
      Those(Bottom(R"("fit": "applied")", "birch plywood"), CheckCode::kBottomMoves).empty());
}

TEST(BottomMoves, AShallowGrooveLetsItDropOutInTheDrySeason) {
  const Finding found = Those(Bottom(R"("play": 0.9, "depth": 1)") +
                                  R"(, "season": {"made": 11, "dry": 6, "humid": 11})",
                              CheckCode::kBottomMoves)
                            .at(0);
  EXPECT_EQ(found.level, Level::kWarn);
  EXPECT_THAT(found.message, HasSubstr("drops out"));
}

TEST(FrontMoves, ATallSolidFrontIsSlottedAndALowOneIsNot) {
  const char* cherry = R"("fronts": {"material": "black cherry"}, )";
  const std::vector<Finding> tall =
      Those(cherry + std::string(R"("drawers": [{}])"), CheckCode::kFrontMoves);
  ASSERT_EQ(tall.size(), 1U);
  EXPECT_EQ(tall[0].level, Level::kNote);
  // 332 mm of black cherry, C_T = .00248 (table 13-5), from 8 to 11 %.
  EXPECT_NEAR(ToMillimeters(*tall[0].value), 332 * .00248 * 3, 0.005);
  for (const Finding& low :
       Those(cherry + std::string(R"("drawers": [{}, {}, {}])"), CheckCode::kFrontMoves)) {
    EXPECT_EQ(low.level, Level::kPass);
  }
}

TEST(FrontMoves, AlongTheGrainAndInPanelsNothingMoves) {
  EXPECT_TRUE(
      Those(R"("fronts": {"material": "birch plywood"}, "drawers": [{}])", CheckCode::kFrontMoves)
          .empty());
}

}  // namespace
}  // namespace tillwright
