// The case as input. Values worked by hand in the comments.
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

std::string Case(const std::string& keys, const std::string& rest = "") {
  return R"({"case": {"width": 18, "height": 30, "depth": 22)" + keys + "}, " + rest +
         R"("drawers": [{}, {}]})";
}

class CaseTable : public ::testing::TestWithParam<SolveCase> {};
TEST_P(CaseTable, GivesTheValuesWorkedByHand) { ExpectValues(GetParam()); }

const std::vector<SolveCase>& Cases() {
  static const std::vector<SolveCase> cases{
      // 3/4 all round, a 1/4 back in a rabbet: 16 1/2 x 28 1/2 x 21 3/4.
      {"Defaults",
       Case(""),
       {{"opening.width", "16 1/2"},
        {"opening.height", "28 1/2"},
        {"opening.depth", "21 3/4"},
        {"case.bottom.length", "16 1/2"}}},
      // A worktop closes it: height 30 - 3/4; the front under it keeps the gap of 1/8.
      {"NoTop",
       Case(R"(, "top": "none")"),
       {{"opening.height", "29 1/4"},
        {"D2.front.y", "-5/8"},
        // fronts cover 29 1/8 + 5/8 - 1/8 = 29 5/8: 14 13/16 each, the top one ending at 29 1/8.
        {"D1.front.height", "14 13/16"},
        {"D1.front.y", "14 5/16"}}},
      // One overlay for all edges is for the edges of the case; the worktop has none to cover.
      {"OneOverlayUnderAWorktop",
       Case(R"(, "top": "none")", R"("fronts": {"overlay": "1/2", "gap": "3/32"}, )"),
       // 29 1/4 - 3/32 + 1/2 - 3/32 = 29 9/16 = 946/32: 473/32 each; the top at 29 5/32.
       {{"D1.front.height", "14 25/32"}, {"D1.front.y", "14 3/8"}, {"D2.front.y", "-1/2"}}},
      {"OverlayTypedUnderAWorktop",
       Case(R"(, "top": "none")", R"("fronts": {"overlay": {"top": "-3/32"}}, )"),
       // 29 5/32 + 5/8 - 1/8 = 29 21/32 = 949/32: 474 and 475; the top at 29 5/32.
       {{"D1.front.height", "14 13/16"}, {"D1.front.y", "14 11/32"}}},
      {"Raise", Case(R"(, "raise": 3)"), {{"opening.height", "25 1/2"}}},
      // A groove 1/2 in from the rear for a 1/4 back: depth 22 - 3/4.
      {"BackInAGroove", Case(R"(, "back": {"fit": "groove"})"), {{"opening.depth", "21 1/4"}}},
      {"BackApplied", Case(R"(, "back": {"fit": "applied"})"), {{"opening.depth", "22"}}},
      {"NoBack", Case(R"(, "back": "none")"), {{"opening.depth", "22"}}},
      // Dados a third of 3/4 = 1/4 deep: members 16 1/2 + 1/2.
      {"Dado", Case(R"(, "joint": {"type": "dado"})"), {{"case.bottom.length", "17"}}},
      // A third of 5/8 is 0.20833: down to 1/32: 6/32. 18 - 1 1/4 + 3/8 = 17 1/8.
      {"DadoRoundedDown",
       Case(R"(, "side": "5/8", "joint": {"type": "dado"})"),
       {{"case.bottom.length", "17 1/8"}}},
      // Flush: overlays 3/4 at each edge: 18 wide, and 30 high less 1/8: 14 15/16 each.
      {"Flush",
       Case("", R"("fronts": {"overlay": "flush"}, )"),
       {{"D1.front.width", "18"},
        {"D1.front.x", "-3/4"},
        {"D2.front.y", "-3/4"},
        {"D1.front.height", "14 15/16"}}},
      // The lowest front may sit flush with the case's bottom: common practice, no source.
      {"TheLowestFrontFlushWithTheBottom",
       Case("", R"("fronts": {"overlay": {"bottom": "flush"}}, )"),
       {{"D2.front.y", "-3/4"}}},
      // raise is not counted in flush: the bottom is 3/4 thick still.
      {"FlushDoesNotCountTheRaise",
       Case(R"(, "raise": 3)", R"("fronts": {"overlay": "flush"}, )"),
       {{"D2.front.y", "-3/4"}}},
      // Reveals of 1/8: overlays 5/8.
      {"Reveal",
       Case("", R"("fronts": {"overlay": {"reveal": "1/8"}}, )"),
       {{"D1.front.width", "17 3/4"}, {"D2.front.y", "-5/8"}}},
      // Under a worktop: flush is 0 and a reveal leaves that gap.
      {"FlushUnderAWorktop",
       Case(R"(, "top": "none")", R"("fronts": {"overlay": {"top": "flush"}}, )"),
       {{"D1.front.y", "14 3/8"}}},
      {"RevealUnderAWorktop",
       Case(R"(, "top": "none")", R"("fronts": {"overlay": {"top": {"reveal": "1/8"}}}, )"),
       // fronts cover 29 1/4 - 1/8 + 5/8 - 1/8 = 29 5/8: 14 13/16 each; the top ends at 29 1/8.
       {{"D1.front.y", "14 5/16"}}},
      // Sides shallower than the worktop by the fronts' thickness bring overlay fronts flush with
      // its edge: common practice, no source. Worktop 24 deep, sides 23 1/4, fronts 3/4: the box
      // side of the front stands at z = 0, its face at -3/4 = the worktop's edge.
      {"SidesShallowerByTheFront",
       R"({"case": {"width": 18, "height": 30, "depth": "23 1/4", "top": "none"}, "drawers": [{}]})",
       {{"D1.box.z", "0"}, {"opening.depth", "23"}}},
  };
  return cases;
}
INSTANTIATE_TEST_SUITE_P(Case, CaseTable, ::testing::ValuesIn(Cases()), NameOf);

TEST(Case, AThinBackSitsInARabbetAndThePanelLapsTheSides) {
  // A 1/4 in back sits in a rabbet: common practice, no source. Lap 3/8: 16 1/2 + 3/4 - 1/16 wide;
  // it covers bottom and top: 28 1/2 + 1 1/2 - 1/16 high.
  const Solved s = MustSolve(Case(R"(, "back": {"lap": "3/8"})"));
  ASSERT_TRUE(s.bank.casework.has_value());
  EXPECT_EQ(s.bank.casework->back, BackFit::kRabbet);
  EXPECT_EQ(s.bank.casework->panel_width, L("17 3/16"));
  EXPECT_EQ(s.bank.casework->panel_height, L("29 15/16"));
}

TEST(Case, MembersStopShortOfTheBack) {
  const Solved s = MustSolve(Case(R"(, "joint": {"type": "dado"})", R"("divider": "3/4", )"));
  ASSERT_EQ(s.bank.dividers.size(), 1U);
  EXPECT_EQ(s.bank.dividers[0].length, L("17"));
  EXPECT_EQ(s.bank.dividers[0].depth, L("21 3/4"));
}

TEST(Case, RefusesFlushWithoutACase) {
  const Diagnostics d = MustFail(R"({"opening": {"width": 15, "height": 20, "depth": 22},
    "fronts": {"overlay": "flush"}, "drawers": [{}]})");
  EXPECT_EQ(d[0].code, DiagnosticCode::kConflict);
}

TEST(Case, RefusesAnOpeningWithoutRoom) {
  const Diagnostics d = MustFail(R"({"case": {"width": 1.5, "height": 20, "depth": 22}, "drawers": [{}]})");
  EXPECT_EQ(d[0].code, DiagnosticCode::kNoRoom);
}

}  // namespace
}  // namespace tillwright
