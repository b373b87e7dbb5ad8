// Solid sides of drawers against the room above them. Coefficients: Wood Handbook (USDA FPL,
// GTR-282), table 13-5, tangential: white oak 0.00365, cherry 0.00248, hard maple 0.00353 per %.
#include "check/box_movement.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/specs.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;
using testing::L;
using testing::MustSolve;

std::vector<Finding> Those(const std::string& keys, const std::string& height = "14 1/4") {
  const testing::Solved s = MustSolve(R"({"opening": {"width": 20, "height": ")" + height +
                                      R"(", "depth": 22}, )" + keys + "}");
  std::vector<Finding> found;
  AddBoxMovement(s.spec, s.bank, found);
  return found;
}

std::string Runner(const std::string& side, const std::string& more = "") {
  return R"("slides": {"type": "wood-runner"}, "box": {"side": {"material": ")" + side + "\"}" + more +
         R"(}, "drawers": [{}])";
}
const char* kDamp = R"(, "season": {"made": 6, "dry": 6, "humid": 12})";

// 14 1/8 high in 1/8 of room, from 6 to 12 %: 14.125 x 0.00365 x 6 = 0.3093 in.
TEST(BoxMoves, AnOakBoxSwellsOutOfItsRoom) {
  const std::vector<Finding> found = Those(Runner("white oak") + kDamp);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].level, Level::kFail);
  EXPECT_NEAR(ToMillimeters(*found[0].value), 0.309338 * 25.4, 1e-4);
  EXPECT_EQ(*found[0].limit, L("1/8"));
  // 0.3093 and 1/32 that stay are 0.3406: up to 1/32 in, 11/32.
  EXPECT_THAT(found[0].message, HasSubstr("leave 11/32 in"));
}

TEST(BoxMoves, TheAdviceCuresIt) {
  const std::vector<Finding> found =
      Those(Runner("white oak", R"(, "clear_above": "11/32")") + kDamp);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].level, Level::kPass);
}

TEST(BoxMoves, WithoutASeasonItOnlyWarns) {
  // 14.125 x 0.00365 x 3 = 0.1547 in of 1/8.
  EXPECT_EQ(Those(Runner("white oak")).at(0).level, Level::kWarn);
}

TEST(BoxMoves, SheetsAndUnknownWoodsDoNotMove) {
  EXPECT_TRUE(Those(Runner("birch plywood") + kDamp).empty());
  EXPECT_TRUE(Those(Runner("something") + kDamp).empty());
}

// On slides what lies above their line grows upwards: 14 1/4 - 3/4 = 13 1/2 less 7/8.
TEST(BoxMoves, OnSlidesItGrowsFromTheirLine) {
  const std::vector<Finding> found =
      Those(R"("box": {"side": {"material": "white oak"}}, "drawers": [{}])" + std::string(kDamp));
  ASSERT_EQ(found.size(), 1U);
  EXPECT_NEAR(ToMillimeters(*found[0].value), 12.625 * 0.00365 * 6 * 25.4, 1e-4);
  EXPECT_EQ(*found[0].limit, L("1/2"));
  EXPECT_EQ(found[0].level, Level::kPass);
}

// An inset front of cherry, 13 7/8 high, stands on runners: its middle rises with 7 1/8 in of the oak
// sides, 0.1560 in, and its upper half grows 6 15/16 x 0.00248 x 6 = 0.1032.
TEST(BoxMoves, ItLiftsTheFront) {
  const std::string keys =
      R"("fronts": {"style": "inset", "material": "cherry", "edge": "3/16"}, )" +
      Runner("white oak", R"(, "clear_above": 1)");
  const std::vector<Finding> found = Those(keys + kDamp);
  ASSERT_EQ(found.size(), 2U);
  EXPECT_EQ(found[1].subject, "D1 to opening.top");
  EXPECT_EQ(found[1].level, Level::kFail);
  EXPECT_NEAR(ToMillimeters(*found[1].value), (0.156038 + 0.103230) * 25.4, 1e-3);
  EXPECT_THAT(found[1].message, HasSubstr("lift its front"));
  // A front that the season jams by itself is another check's to tell.
  const std::string tight =
      R"("fronts": {"style": "inset", "material": "cherry", "edge": "1/16"}, )" +
      Runner("white oak", R"(, "clear_above": 1)");
  EXPECT_EQ(Those(tight + kDamp).size(), 1U);
}

}  // namespace
}  // namespace tillwright
