// Slides, boxes and bottoms. Values worked by hand in the comments.
#include <gtest/gtest.h>

#include "support/bank_values.h"

namespace tillwright {
namespace {

using testing::ExpectValues;
using testing::L;
using testing::MustFail;
using testing::MustSolve;
using testing::NameOf;
using testing::SolveCase;
using testing::Solved;

// One drawer in an opening whose cell is the opening: overlay fronts, 20 x 10 x 22 in.
std::string One(const std::string& rest) {
  return R"({"opening": {"width": 20, "height": 10, "depth": 22}, )" + rest +
         R"("drawers": [{}]})";
}
std::string OneMetric(const std::string& rest) {
  return R"({"units": "mm", "opening": {"width": 500, "height": 250, "depth": 520}, )" + rest +
         R"("drawers": [{}]})";
}

class BoxTable : public ::testing::TestWithParam<SolveCase> {};
TEST_P(BoxTable, GivesTheValuesWorkedByHand) { ExpectValues(GetParam()); }

const std::vector<SolveCase>& Cases() {
  static const std::vector<SolveCase> cases{
      // Side-mount: 20 - 2 * 1/2 = 19; butt with 1/2 sides: ends 18. Height 10 - 1/4 - 1/2.
      // Slide: 22 deep, 1/2 behind: 20 (22 + 1/2 is too long). Bottom in a 1/4 groove, play 1/32:
      // 18 + 1/2 - 1/16 = 18 7/16 by 19 + 7/16 = 19 7/16: the longer side is the length.
      {"SideMountButt",
       One(""),
       {{"D1.box.width", "19"},
        {"D1.box_front.length", "18"},
        {"D1.box.inside_width", "18"},
        {"D1.box.height", "9 1/4"},
        {"D1.box.depth", "20"},
        {"D1.box.x", "1/2"},
        {"D1.box.y", "1/4"},
        {"D1.box.z", "0"},
        {"D1.side.length", "20"},
        {"D1.box.inside_depth", "19"},
        {"D1.bottom.width", "18 7/16"},
        {"D1.bottom.length", "19 7/16"},
        {"D1.box.inside_height", "8 3/4"},
        {"D1.slide.line_y", "1 1/8"}}},  // 1/4 + 7/8
      // A pair of side-mount slides takes 1 in of the width: common practice, no source.
      {"APairOfSideMountSlidesTakesAnInch", One(""), {{"D1.box.target_width", "19"}}},
      // Undermount: inside = 20 in - 42 mm = 508 - 42 = 466 mm; W* = 466 + 2 * 12.7 = 491.4; butt:
      // ends down to 1/32 of 466 = 587 * 0.79375 = 465.93125; W = 491.33125. Height 10 - 9/16 -
      // 1/4;
      // slides 9, 12 ... 21: 21 and 3/4 in 22.
      {"Undermount",
       One(R"("slides": {"type": "undermount"}, )"),
       {{"D1.box.target_width", "491.4 mm"},
        {"D1.box_front.length", "465.93125 mm"},
        {"D1.box.width", "491.33125 mm"},
        {"D1.box.height", "9 3/16"},
        {"D1.box.y", "9/16"},
        {"D1.slide.length", "21"},
        {"D1.slide.line_y", "9/16"}}},
      // Metric undermount, sides 16: W* = 500 - 42 + 32 = 490; ends 458; slides 500 + 19 = 519.
      {"UndermountMetric",
       OneMetric(R"("slides": {"type": "undermount"}, "box": {"side": {"thickness": 16}}, )"),
       {{"D1.box.target_width", "490 mm"},
        {"D1.box_front.length", "458 mm"},
        {"D1.box.width", "490 mm"},
        {"D1.box.inside_width", "458 mm"},
        {"D1.slide.length", "500 mm"},
        {"D1.box.height", "229 mm"}}},  // 250 - 21
      // Center-mount: 20 - 2/8 = 19 3/4; clear 1/4 and 1/4: 9 1/2; line on the lower edge.
      {"CenterMount",
       One(R"("slides": {"type": "center-mount"}, )"),
       {{"D1.box.width", "19 3/4"}, {"D1.box.height", "9 1/2"}, {"D1.slide.line_y", "1/4"}}},
      // Wood runners: 20 - 1/16 = 19 15/16; nothing below, 1/8 above; as deep as 22 - 1/2.
      {"WoodRunner",
       One(R"("slides": {"type": "wood-runner"}, )"),
       {{"D1.box.width", "19 15/16"},
        {"D1.box.height", "9 7/8"},
        {"D1.slide.length", "21 1/2"},
        {"D1.box.depth", "21 1/2"},
        {"D1.slide.line_y", "0"}}},
      // Inset: the box stands behind the front: 22 - 3/4 = 21 1/4 usable, slide 20.
      {"InsetStandsBehindTheFront",
       One(R"("fronts": {"style": "inset"}, )"),
       {{"D1.box.z", "3/4"}, {"D1.slide.usable_depth", "21 1/4"}, {"D1.slide.length", "20"}}},
      // box.depth 18 caps the series: 18 + 1/2 fits.
      {"ABoxDepthCapsTheSlide",
       One(R"("box": {"depth": 19}, )"),
       {{"D1.slide.length", "18"}, {"D1.box.depth", "19"}}},
      {"ATypedSlideIsTaken",
       One(R"("slides": {"length": 14}, )"),
       {{"D1.slide.length", "14"}, {"D1.box.depth", "14"}}},
      {"ASeriesOfItsOwn",
       One(R"("slides": {"lengths": [11, 13, 15.5, 40]}, )"),
       {{"D1.slide.length", "15 1/2"}}},
      // Rabbet 1/4 deep in 1/2 sides: ends = 19 - 2 * 1/4 = 18 1/2; W = 19.
      {"Rabbet",
       One(R"("box": {"corner": {"joint": "rabbet", "depth": "1/4"}}, )"),
       {{"D1.box_front.length", "18 1/2"}, {"D1.box.width", "19"}, {"D1.side.length", "20"}}},
      // Dado, default depth half the side; sides 5/8: 5/16: ends 19 - 2 * 5/16 = 18 3/8.
      {"DadoByDefaultHalfTheSide",
       One(R"("box": {"side": {"thickness": "5/8"}, "corner": {"joint": "dado"}}, )"),
       {{"D1.box_front.length", "18 3/8"},
        {"D1.box.width", "19"},
        {"D1.box.inside_width", "17 3/4"}}},
      // Half-blind dovetail, lap 1/4: ends 19, sides 20 - 2 * 1/4 = 19 1/2.
      {"HalfBlindDovetail",
       One(R"("box": {"end": {"thickness": "3/4"}, "corner": {"joint": "half-blind-dovetail", "lap": "1/4"}}, )"),
       {{"D1.box_front.length", "19"},
        {"D1.side.length", "19 1/2"},
        {"D1.box.inside_depth", "18 1/2"}}},
      // By default the lap is a quarter of the end: 3/16: sides 19 5/8.
      {"TheLapIsAQuarterByDefault",
       One(R"("box": {"end": {"thickness": "3/4"}, "corner": {"joint": "half-blind-dovetail"}}, )"),
       {{"D1.side.length", "19 5/8"}}},
      {"ThroughDovetail",
       One(R"("box": {"corner": {"joint": "through-dovetail"}}, )"),
       {{"D1.box_front.length", "19"}, {"D1.side.length", "20"}}},
      {"Finger",
       One(R"("box": {"corner": {"joint": "finger"}}, )"),
       {{"D1.box_front.length", "19"}, {"D1.side.length", "20"}}},
      // The back end 1/2 in: inside depth 20 - 1 - 1/2.
      {"BackSetback",
       One(R"("box": {"corner": {"back_setback": "1/2"}}, )"),
       {{"D1.box.inside_depth", "18 1/2"}, {"D1.side.length", "20"}}},
      // A rabbeted bottom 1/4: panel as in the groove, nothing below it.
      {"BottomInARabbet",
       One(R"("box": {"bottom": {"fit": "rabbet"}}, )"),
       {{"D1.bottom.width", "18 7/16"},
        {"D1.bottom.length", "19 7/16"},
        {"D1.box.inside_height", "9"}}},
      // Applied: the panel is 19 x 20, sides 9 1/4 - 1/4 = 9 high.
      {"BottomApplied",
       One(R"("box": {"bottom": {"fit": "applied"}}, )"),
       {{"D1.bottom.width", "19"},
        {"D1.bottom.length", "20"},
        {"D1.side.width", "9"},
        {"D1.box.height", "9 1/4"},
        {"D1.box.inside_height", "9"},
        {"D1.slide.line_y", "1 1/8"}}},
      // Open back: back end 9 1/4 - 1/4 - 1/4 = 8 3/4; panel 19 + 1/4 + 1/2 - 1/32 = 19 23/32 deep.
      {"OpenBack",
       One(R"("box": {"bottom": {"open_back": true}}, )"),
       {{"D1.box_back.width", "8 3/4"}, {"D1.bottom.length", "19 23/32"}}},
      // A solid bottom has its grain side to side: 18 7/16 is its length.
      {"SolidBottomRunsSideToSide",
       One(R"("box": {"bottom": {"material": "cherry"}}, )"),
       {{"D1.bottom.length", "18 7/16"}, {"D1.bottom.width", "19 7/16"}}},
      // Stock heights: 9 1/4 there is: 8 is the tallest that fits.
      {"StockHeights", One(R"("box": {"heights": [3, 5, 8, 10]}, )"), {{"D1.box.height", "8"}}},
      {"AStockHeightMayFillTheSpaceToTheLast",
       One(R"("box": {"heights": [3, 9.25]}, )"),
       {{"D1.box.height", "9 1/4"}}},
      {"HeightWinsOverHeights",
       One(R"("box": {"heights": [3, 5, 8], "height": 6}, )"),
       {{"D1.box.height", "6"}}},
      // A width off the grid: 19.99 - 1 = 18.99: ends down to 1/32 of 17.99 = 17 31/32; W = 18
      // 31/32;
      // x = (19.99 - 18.96875) / 2 = 0.510625.
      {"TheBoxIsCentredInItsCell",
       R"({"opening": {"width": "19.99", "height": 10, "depth": 22}, "drawers": [{}]})",
       {{"D1.box.width", "18 31/32"}, {"D1.box.x", "0.510625"}}},
  };
  return cases;
}
INSTANTIATE_TEST_SUITE_P(Box, BoxTable, ::testing::ValuesIn(Cases()), NameOf);

TEST(Box, ADrawersOwnKeysWin) {
  const Solved s = MustSolve(R"({"opening": {"width": 20, "height": 20, "depth": 22},
    "box": {"side": {"thickness": "5/8"}, "heights": [4]},
    "drawers": [{}, {"box": {"side": {"thickness": "1/2"}, "height": 6}, "slides": {"behind": 3}}]})");
  EXPECT_EQ(s.bank.spaces[0].box.build.side, L("5/8"));
  EXPECT_EQ(s.bank.spaces[0].box.height, L("4"));
  EXPECT_EQ(s.bank.spaces[1].box.build.side, L("1/2"));
  EXPECT_EQ(s.bank.spaces[1].box.build.end, L("1/2"));  // as the drawer's own sides
  EXPECT_EQ(s.bank.spaces[1].box.height, L("6"));
  EXPECT_EQ(s.bank.spaces[1].slide.length, L("18"));    // 18 + 3 within 22
}

TEST(Box, AChangedSlideTypeInheritsNoSlideKeys) {
  const Solved s = MustSolve(R"({"opening": {"width": 20, "height": 20, "depth": 22},
    "slides": {"length": 12, "clearance": "3/4"}, "box": {"clear_below": 1, "bottom": {"up": "3/8"}},
    "drawers": [{}, {"slides": {"type": "center-mount"}}]})");
  const Space& own = s.bank.spaces[1];
  EXPECT_EQ(own.slide.length, L("20"));
  EXPECT_EQ(own.slide.clearance, L("1/8"));
  EXPECT_EQ(own.box.build.clear_below, L("1/4"));
  EXPECT_EQ(own.box.build.up, L("1/2"));
  EXPECT_EQ(s.bank.spaces[0].slide.length, L("12"));
}

TEST(Box, AChangedJointOrFitDropsWhatItDoesNotHave) {
  const Solved s = MustSolve(R"({"opening": {"width": 20, "height": 20, "depth": 22},
    "box": {"corner": {"joint": "rabbet", "depth": "1/4", "back_setback": "1/2"},
            "bottom": {"up": "1/2", "open_back": true}},
    "drawers": [{"box": {"corner": {"joint": "finger"}}}, {"box": {"bottom": {"fit": "rabbet"}}}]})");
  EXPECT_EQ(s.bank.spaces[0].box.build.joint_depth, Length());
  EXPECT_EQ(s.bank.spaces[0].box.build.back_setback, Length());
  EXPECT_FALSE(s.bank.spaces[1].box.build.open_back);
  EXPECT_EQ(s.bank.spaces[1].box.build.up, Length());
}

struct Refusal {
  const char* name;
  const char* rest;
  DiagnosticCode code;
};
void PrintTo(const Refusal& c, std::ostream* out) { *out << c.name; }
class BoxRefusals : public ::testing::TestWithParam<Refusal> {};
TEST_P(BoxRefusals, AreErrors) {
  const Diagnostics d = MustFail(One(GetParam().rest));
  ASSERT_FALSE(d.empty());
  EXPECT_EQ(d[0].code, GetParam().code) << d[0].message;
}
INSTANTIATE_TEST_SUITE_P(
    Box, BoxRefusals,
    ::testing::Values(
        Refusal{"NoSlideFits", R"("slides": {"lengths": [30]}, )", DiagnosticCode::kNoSlide},
        Refusal{"NoHeightFits", R"("box": {"heights": [12]}, )", DiagnosticCode::kNoSuchHeight},
        Refusal{"SidesFillTheCell", R"("box": {"side": {"thickness": "9 1/2"}}, )",
                DiagnosticCode::kNoRoom},
        Refusal{"NoHeightLeft", R"("box": {"clear_below": 6, "clear_above": 6}, )",
                DiagnosticCode::kNoRoom},
        Refusal{"BottomFillsTheBox", R"("box": {"height": "1/2"}, )", DiagnosticCode::kNoRoom},
        Refusal{"EndsFillTheDepth", R"("box": {"end": {"thickness": 10}}, )",
                DiagnosticCode::kNoRoom},
        Refusal{"ClearanceWithUndermount",
                R"("slides": {"type": "undermount", "clearance": "1/2"}, )",
                DiagnosticCode::kNotApplicable},
        Refusal{"DeductWithSideMount", R"("slides": {"deduct": "42 mm"}, )",
                DiagnosticCode::kNotApplicable},
        Refusal{"DepthWithButt", R"("box": {"corner": {"depth": "1/4"}}, )",
                DiagnosticCode::kNotApplicable},
        Refusal{"UpWithApplied", R"("box": {"bottom": {"fit": "applied", "up": "1/4"}}, )",
                DiagnosticCode::kNotApplicable}),
    [](const auto& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace tillwright
