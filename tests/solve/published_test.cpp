// Against published work and the trade's own figures. [S]: read in the named source; [C]: common
// practice, no source; [calc]: worked out from named values.
#include <gtest/gtest.h>

#include "support/bank_values.h"
#include "tillwright/check.h"

namespace tillwright {
namespace {

using testing::ExpectValues;
using testing::L;
using testing::MustSolve;
using testing::NameOf;
using testing::SolveCase;
using testing::Solved;

class Published : public ::testing::TestWithParam<SolveCase> {};
TEST_P(Published, Agrees) { ExpectValues(GetParam()); }

const std::vector<SolveCase>& Cases() {
  static const std::vector<SolveCase> cases{
      // H. H. Windsor, Mission Furniture: How to Make It, Part I (1909), dresser, detail p. 102 [S]:
      // a post of 27 in is 5 1/2 foot, 2 bottom rail and 7 + 3/4 + 6 + 3/4 + 5: three openings of
      // 5, 6 and 7 in from the top, 27 wide, rails of 3/4 between. As inset fronts without edge
      // gaps: 19 1/2 to fill, rails of 3/4, arithmetic steps of 1 in.
      {"MissionDresser",
       R"({"opening": {"width": 27, "height": "19 1/2", "depth": 18},
           "fronts": {"style": "inset", "edge": 0}, "slides": {"type": "wood-runner"},
           "divider": "3/4", "graduate": {"scheme": "arithmetic", "step": 1}, "drawers": [{}, {}, {}]})",
       {{"D1.front.height", "5"}, {"D2.front.height", "6"}, {"D3.front.height", "7"},
        {"D1.front.y", "14 1/2"}, {"D2.front.y", "7 3/4"}, {"D3.front.y", "0"}}},
      // The same: the top row is two drawers with a 3/4 partition, 13 1/8 in each [calc].
      {"MissionDresserTopRow",
       R"({"opening": {"width": 27, "height": "19 1/2", "depth": 18},
           "fronts": {"style": "inset", "edge": 0}, "slides": {"type": "wood-runner"},
           "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}], "exact": 5},
                               {"drawer": {"exact": 6}}, {"drawer": {}}], "divider": "3/4"}})",
       {{"D1.front.width", "13 1/8"}, {"D2.front.width", "13 1/8"}, {"D4.front.height", "7"}}},
      // Windsor, Part II, child's dresser p. 85-89 [S]: three equal openings of 4 3/4 in a post of
      // 19 = 1 1/4 + 4 x 7/8 + 3 x 4 3/4; between the outer rails 3 x 4 3/4 + 2 x 7/8 = 16.
      // The drawer's side is 4 5/8 high: 1/8 in of clearance upright, the default above a runner.
      {"MissionChildsDresser",
       R"({"opening": {"width": "16 1/2", "height": 16, "depth": 13},
           "fronts": {"style": "inset", "edge": 0}, "slides": {"type": "wood-runner"},
           "divider": "7/8", "drawers": [{}, {}, {}]})",
       {{"D1.front.height", "4 3/4"}, {"D2.front.height", "4 3/4"}, {"D3.front.height", "4 3/4"},
        {"D2.box.height", "4 5/8"}}},
      // Windsor, Part III (1912), library table p. 7-8 [S]: front 25 wide, sides 3/8 thick and 3 3/4
      // high, back 24 1/4 long and 3 3/8 high (it stands above a 3/8 bottom). As a butt box 25 wide
      // in wood runners with no clearance; bottom at the lower edge.
      {"MissionLibraryTable",
       R"({"opening": {"width": 25, "height": "3 3/4", "depth": 15},
           "slides": {"type": "wood-runner", "clearance": 0, "behind": 0},
           "fronts": {"overlay": 0},
           "box": {"side": {"thickness": "3/8"}, "clear_above": 0, "clear_below": 0,
                   "bottom": {"thickness": "3/8", "up": 0, "open_back": true, "depth": "3/16"}},
           "drawers": [{}]})",
       {{"D1.box_front.length", "24 1/4"}, {"D1.side.width", "3 3/4"},
        {"D1.box_back.width", "3 3/8"}}},
      // Windsor, Part III, sewing table p. 84-87 [S]: sides 3/8; the back is dadoed 1/8 into the
      // sides and stands 1/2 in from their rear ends; back 13 = 13 1/2 - 2 x 3/8 + 2 x 1/8.
      {"MissionSewingTable",
       R"({"opening": {"width": "13 1/2", "height": 5, "depth": 14},
           "slides": {"type": "wood-runner", "clearance": 0, "length": "13 1/4"},
           "fronts": {"overlay": 0},
           "box": {"side": {"thickness": "3/8"},
                   "corner": {"joint": "dado", "depth": "1/8", "back_setback": "1/2"},
                   "bottom": {"thickness": "1/4", "depth": "1/8", "up": "1/4", "play": 0}},
           "drawers": [{}]})",
       {{"D1.box_back.width", "4 7/8"}, {"D1.box_front.length", "13"},
        {"D1.box.width", "13 1/2"}}},
      // The 32 mm system [S, a hobby page on it]: with gaps of 3 mm, fronts of 5, 8 and 10 modules
      // are 157, 253 and 317 mm; together with two gaps 733 mm = 23 modules less a gap.
      {"ThirtyTwoMillimetreSystem",
       R"({"units": "mm", "opening": {"width": 500, "height": 733, "depth": 520},
           "fronts": {"overlay": 0, "gap": 3}, "grid": 32,
           "graduate": {"scheme": "shares", "shares": [5, 8, 10]}, "drawers": [{}, {}, {}]})",
       {{"D1.front.height", "157 mm"}, {"D2.front.height", "253 mm"},
        {"D3.front.height", "317 mm"}, {"D3.front.y", "0"}}},
      // Side-mount [C]: 1/2 in each side, so the box is the opening less 1 in.
      {"SideMountTakesOneInch",
       R"({"opening": {"width": 15, "height": 10, "depth": 22}, "drawers": [{}]})",
       {{"D1.box.width", "14"}}},
      // Undermount [C]: outside = opening - 42 + 2t: t = 16 gives -10, 15 gives -12 mm.
      {"UndermountSixteen",
       R"({"units": "mm", "opening": {"width": 600, "height": 200, "depth": 520},
           "slides": {"type": "undermount"}, "box": {"side": {"thickness": 16}}, "drawers": [{}]})",
       {{"D1.box.width", "590 mm"}}},
      {"UndermountFifteen",
       R"({"units": "mm", "opening": {"width": 600, "height": 200, "depth": 520},
           "slides": {"type": "undermount"}, "box": {"side": {"thickness": 15}}, "drawers": [{}]})",
       {{"D1.box.width", "588 mm"}}},
  };
  return cases;
}
INSTANTIATE_TEST_SUITE_P(Trade, Published, ::testing::ValuesIn(Cases()), NameOf);

// Graduations worked out for four drawers in 30 in with gaps of 3/4 (27 3/4 to share) [calc]:
// ideal sizes from the top; what is cut lies within one increment of them.
TEST(PublishedGraduation, LiesWithinAnIncrementOfTheIdeal) {
  struct Row {
    const char* graduate;
    double ideal[4];
  };
  const Row rows[] = {
      {R"({"scheme": "geometric", "ratio": 1.2})", {5.1695, 6.2034, 7.4441, 8.9329}},
      {R"({"scheme": "shares", "shares": [3, 5, 8, 13]})", {2.8707, 4.7845, 7.6552, 12.4397}},
      {R"({"scheme": "shares", "shares": [1, 2, 3, 5]})", {2.5227, 5.0455, 7.5682, 12.6136}},
  };
  for (const Row& row : rows) {
    const Solved s = MustSolve(
        std::string(R"({"opening": {"width": 20, "height": 30, "depth": 22}, "fronts": {"overlay": 0, "gap": "3/4"}, "graduate": )") +
        row.graduate + R"(, "drawers": [{}, {}, {}, {}]})");
    Length sum;
    for (std::size_t i = 0; i < 4; ++i) {
      const Length height = s.bank.spaces[i].front.rect.height;
      sum += height;
      // The table gives ideals to four decimals of an inch.
      EXPECT_LT(std::abs(ToMillimeters(height) / 25.4 - row.ideal[i]), 1.0 / 32 + 0.0001) << i;
    }
    EXPECT_EQ(sum, L("27 3/4"));
  }
}

// W. H. Varnum, Industrial Arts Design (1916), Rule 2c p. 135 [S]: the largest drawer at the bottom,
// sizes never growing upward.
TEST(PublishedGraduation, NeverGrowsUpward) {
  for (const char* graduate :
       {R"({"scheme": "geometric", "ratio": "7/5"})", R"({"scheme": "geometric", "first": 3})",
        R"({"scheme": "arithmetic", "step": "3/4"})", R"({"scheme": "arithmetic", "first": 2})"}) {
    for (int n = 2; n <= 7; ++n) {
      std::string drawers = "{}";
      for (int i = 1; i < n; ++i) drawers += ", {}";
      const Solved s = MustSolve(
          std::string(R"({"opening": {"width": 20, "height": 80, "depth": 22}, "graduate": )") +
          graduate + R"(, "drawers": [)" + drawers + "]}");
      for (std::size_t i = 1; i < s.bank.spaces.size(); ++i) {
        EXPECT_GE(s.bank.spaces[i].front.rect.height, s.bank.spaces[i - 1].front.rect.height)
            << graduate << " " << n;
      }
    }
  }
}

// Pocket screws [C]: 1 in for 1/2, 1 1/4 in for 3/4, 1 1/2 for 7/8 to 1, 2 1/2 in for 1 1/2.
TEST(TradePractice, PocketScrewsSuitTheStock) {
  EXPECT_EQ(PocketScrewFor(L("1/2")), L("1"));
  EXPECT_EQ(PocketScrewFor(L("3/4")), L("1 1/4"));
  EXPECT_EQ(PocketScrewFor(L("18 mm")), L("1 1/4"));
  EXPECT_EQ(PocketScrewFor(L("7/8")), L("1 1/2"));
  EXPECT_EQ(PocketScrewFor(L("1 1/2")), L("2 1/2"));
  EXPECT_FALSE(PocketScrewFor(L("1/4")).has_value());
}

// A 1/4 in straight bit cuts the groove for a 1/4 in bottom [C]: the groove is as wide as the panel
// is thick, by its measured thickness.
TEST(TradePractice, TheGrooveIsAsWideAsThePanelIsThick) {
  for (const char* thickness : {"1/4", "5.2 mm"}) {
    const Solved s = MustSolve(
        std::string(R"({"opening": {"width": 20, "height": 10, "depth": 22}, "box": {"bottom": {"thickness": ")") +
        thickness + R"("}}, "drawers": [{}]})");
    const Part& side = s.bank.parts[1];
    ASSERT_EQ(side.role, PartRole::kBoxSide);
    ASSERT_EQ(side.cuts.size(), 1U);
    EXPECT_EQ(side.cuts[0].kind, CutKind::kGroove);
    EXPECT_EQ(side.cuts[0].width, L(thickness));
    EXPECT_EQ(side.cuts[0].depth, L("1/4"));
    EXPECT_EQ(side.cuts[0].offset, L("1/4"));
  }
}

}  // namespace
}  // namespace tillwright
