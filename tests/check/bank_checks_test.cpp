// The checks: one spec a row, with the finding it must give.
#include <gtest/gtest.h>

#include <algorithm>

#include "support/specs.h"
#include "tillwright/check.h"

namespace tillwright {
namespace {

using testing::L;
using testing::MustSolve;
using testing::Solved;

struct Case {
  const char* name;
  const char* keys;  // beside the opening
  CheckCode code;
  Level level;
  const char* subject;
  const char* value;   // "" when none
  const char* advice;  // must stand in the message
};
void PrintTo(const Case& c, std::ostream* out) { *out << c.name; }

const char* kOpening = R"("opening": {"width": 20, "height": 20, "depth": 22}, )";
const char* kPlain = R"("drawers": [{}, {}])";

std::vector<Finding> FindingsOf(const std::string& keys) {
  const bool own =
      keys.find("\"case\"") != std::string::npos || keys.find("\"opening\"") != std::string::npos;
  const Solved s = MustSolve("{" + std::string(own ? "" : kOpening) + keys + "}");
  return CheckBank(s.spec, s.bank);
}

class CheckTable : public ::testing::TestWithParam<Case> {};
TEST_P(CheckTable, GivesTheFinding) {
  const Case& c = GetParam();
  const std::vector<Finding> findings = FindingsOf(c.keys);
  const auto found = std::ranges::find_if(findings, [&](const Finding& f) {
    return f.code == c.code && f.subject == c.subject && f.level == c.level;
  });
  ASSERT_NE(found, findings.end());
  if (*c.value != '\0') {
    EXPECT_EQ(found->value, L(c.value));
  }
  EXPECT_NE(found->message.find(c.advice), std::string::npos) << found->message;
  EXPECT_FALSE(found->source.empty());
}

using enum CheckCode;
const std::vector<Case>& Cases() {
  static const std::vector<Case> cases{
      // 21 1/8 to share; 10 and 11 leave 1/8.
      {"ClosesExactly", R"("drawers": [{}, {}])", kClosure, Level::kPass, "bank", "0", "close"},
      {"TooShort", R"("drawers": [{"exact": 10}, {"exact": 11}])", kClosure, Level::kFail,
       "the bank", "1/8", "make one front 1/8 in larger"},
      {"TooLong", R"("drawers": [{"exact": 10}, {"exact": "11 1/4"}])", kClosure, Level::kFail,
       "the bank", "-1/8", "make one front 1/8 in smaller"},
      {"GapWithin", kPlain, kGap, Level::kPass, "D2 to D1", "1/8", "within"},
      {"GapTooSmall", R"("fronts": {"gap": "1/64"}, "drawers": [{}, {}])", kGap, Level::kFail,
       "D2 to D1", "1/64", "1/64 in below the minimum"},
      {"GapTooGreat", R"("fronts": {"gap": "1/4"}, "drawers": [{}, {}])", kGap, Level::kFail,
       "D2 to D1", "1/4", "1/16 in above the maximum"},
      {"LimitsMayBeTyped",
       R"("limits": {"greatest": "1/4"}, "fronts": {"gap": "1/4"}, "drawers": [{}, {}])", kGap,
       Level::kPass, "D2 to D1", "1/4", "within"},
      {"FrontsMeet", R"("limits": {"least": 0}, "gap": 0, "drawers": [{}, {}])", kMeet,
       Level::kFail, "D2 to D1", "0", "collide"},
      // A face frame's or a case's rail in sight between fronts is a style, not a gap too wide.
      {"AMemberShowsInTheGap", R"("gap": "1/2", "divider": "3/4", "drawers": [{}, {}])", kGap,
       Level::kPass, "D2 to D1", "1/2", "not below the minimum"},
      {"AMemberFillsTheGap", R"("gap": "3/4", "divider": "3/4", "drawers": [{}, {}])", kBare,
       Level::kPass, "D2 to D1", "3/4", "nothing but the edge"},
      // 1 1/4 over 3/4: 1/4 above and below it.
      {"SlotsBesideAMember", R"("gap": "1 1/4", "divider": "3/4", "drawers": [{}, {}])", kBare,
       Level::kFail, "D2 to D1", "1 1/4",
       "leaves slots of 1/4 in into the case above and below it"},
      {"SlotsBesideAPartition",
       R"("layout": {"columns": [{"drawer": {}}, {"drawer": {}}], "gap": 1, "divider": "1/2"})",
       kBare, Level::kFail, "D1 to D2", "1", "left and right of it"},
      {"AMemberIsNoExcuseForTooSmallAGap",
       R"("gap": "1/64", "divider": "3/4", "drawers": [{}, {}])", kGap, Level::kFail, "D2 to D1",
       "1/64", "1/64 in below"},
      {"AFrontShortOfTheEdge", R"("fronts": {"overlay": {"left": "-1/16"}}, "drawers": [{}])",
       kBare, Level::kFail, "D1 left", "-1/16", "at least 1/16 in more"},
      {"TheGapUnderAWorktop",
       R"("case": {"width": 20, "height": 30, "depth": 24, "top": "none"}, "drawers": [{}])", kGap,
       Level::kPass, "D1 to worktop", "1/8", "within"},
      {"NothingLeftUnderAWorktop",
       R"("case": {"width": 20, "height": 30, "depth": 24, "top": "none"}, "limits": {"least": 0},
        "fronts": {"overlay": "flush"}, "drawers": [{}])",
       kGap, Level::kFail, "D1 to worktop", "0", "below the minimum"},
      {"TwoSizesOfEqualFronts", R"("drawers": [{}, {}, {}, {}, {}])", kGraduation, Level::kNote,
       // 20 3/4 = 664/32 for five: 132 each and 4/32 left over.
       "the bank", "1/8", "\"alike\""},
      {"OverlayWithin", R"("case": {"width": 20, "height": 30, "depth": 24}, "drawers": [{}])",
       kOverlay, Level::kPass, "D1 left", "5/8", "within"},
      {"OverlayFlushIsWithin",
       R"("case": {"width": 20, "height": 30, "depth": 24}, "fronts": {"overlay": "flush"}, "drawers": [{}])",
       kOverlay, Level::kPass, "D1 top", "3/4", "within"},
      {"OverlayPastTheEdge",
       R"("case": {"width": 20, "height": 30, "depth": 24}, "fronts": {"overlay": "7/8"}, "drawers": [{}])",
       kOverlay, Level::kFail, "D1 left", "7/8", "reduce the overlay by 1/8 in"},
      {"SupportTakenAway",
       R"("slides": {"type": "wood-runner"}, "divider": "none", "drawers": [{}, {}])", kSupport,
       Level::kWarn, "the bank", "", "nothing to mount on or rest on"},
      {"RunnersOverOpenRails",
       R"("case": {"width": 20, "height": 30, "depth": 24, "web_frame": {"rails": "both"}},
        "slides": {"type": "wood-runner"}, "drawers": [{}, {}])",
       kSupport, Level::kWarn, "D1", "", "nothing to rest on"},
      {"BoxTooTall", R"("box": {"height": 12}, "drawers": [{}, {}])", kBoxHeight, Level::kFail,
       // D1's cell is 9 15/16 - ... high; the box stands 1/4 above it.
       "D1", "", "by that much"},
      {"BoxTooDeep", R"("box": {"depth": 23}, "slides": {"length": 20}, "drawers": [{}])",
       kBoxDepth, Level::kFail, "D1", "23", "by 1 in"},
      {"BoxTooLow", R"("box": {"height": "7/8"}, "drawers": [{}])", kLeastHeight, Level::kFail,
       // up 1/4 + bottom 1/4 + 1/2 for glue: 1 in.
       "D1", "7/8", "1/8 in taller"},
      {"BoxTooLowForTails",
       // up 1/4 + bottom 1/4 + 3/4, half as much again as the sides: 1 1/4.
       R"("box": {"height": "1 1/8", "corner": {"joint": "finger"}}, "drawers": [{}])",
       kLeastHeight, Level::kFail, "D1", "1 1/8", "1/8 in taller"},
      // Dovetailed drawers so low are normal in a jewel chest: common practice, no source.
      {"AJewelChestsDrawer",
       R"("box": {"height": "1 1/16", "side": {"thickness": "3/8"},
         "corner": {"joint": "half-blind-dovetail"}}, "drawers": [{}])",
       kLeastHeight, Level::kPass, "D1", "1 1/16", "tall enough"},
      {"SlideTooLong", R"("slides": {"length": 22}, "drawers": [{}])", kSlideDepth, Level::kFail,
       "D1", "22 1/2", "by 1/2 in"},
      {"SlideLongerThanTheBox",
       R"("box": {"depth": 18}, "slides": {"length": 20}, "drawers": [{}])", kSlideBox,
       Level::kFail, "D1", "20", "by 2 in"},
      {"SlideHasItsSpace", kPlain, kSlideClearance, Level::kPass, "D1", "1/2", "clearance"},
      // Ends down to 1/8 of 20.1 - 2 = 18.1: 18; box 19; 1.1 in for both: 0.05 each over, more than
      // 1/32.
      {"SlideHasTooMuchSpace",
       R"("round": "1/8", "opening": {"width": "20.1", "height": 20, "depth": 22}, "drawers": [{}])",
       kSlideClearance, Level::kFail, "D1", "0.55", "shim the slides out"},
      {"SideTooThickForUndermount",
       R"("slides": {"type": "undermount"}, "box": {"side": {"thickness": "3/4"}}, "drawers": [{}])",
       kSideThickness, Level::kFail, "D1", "3/4", "thinner"},
      {"SideFitsUndermount",
       R"("slides": {"type": "undermount"}, "box": {"side": {"thickness": "5/8"}}, "drawers": [{}])",
       kSideThickness, Level::kPass, "D1", "5/8", "thin enough"},
      {"AppliedBottomWithUndermount",
       R"("slides": {"type": "undermount"}, "box": {"bottom": {"fit": "applied"}}, "drawers": [{}])",
       kBottomFit, Level::kFail, "D1", "", "use a groove"},
      // Published work cuts 1/4 into 3/8 (H. H. Windsor, Mission Furniture, part III, 1912): a
      // warning only. Half of 3/8 is 3/16.
      {"GrooveDeeperThanHalf", R"("box": {"side": {"thickness": "3/8"}}, "drawers": [{}])",
       kGrooveDepth, Level::kWarn, "D1", "1/4", "1/16 in shallower"},
      {"GrooveThrough", R"("box": {"side": {"thickness": "1/4"}}, "drawers": [{}])", kGrooveDepth,
       Level::kFail, "D1", "1/4", "shallower"},
      {"LittleUnderTheGroove", R"("box": {"bottom": {"up": "1/8"}}, "drawers": [{}])", kGrooveUnder,
       Level::kWarn, "D1", "1/8", "raise the groove by 1/8 in"},
      {"NothingUnderTheGroove", R"("box": {"bottom": {"up": 0}}, "drawers": [{}])", kGrooveUnder,
       Level::kFail, "D1", "0", "raise the groove by 1/4 in"},
      {"GrooveShowsInFingers", R"("box": {"corner": {"joint": "finger"}}, "drawers": [{}])",
       kGrooveJoint, Level::kWarn, "D1", "1/4", "shows"},
      {"GrooveDeeperThanTheRabbet",
       R"("box": {"corner": {"joint": "rabbet", "depth": "1/8"}}, "drawers": [{}])", kGrooveJoint,
       Level::kNote, "D1", "1/4", "1/8 in deeper"},
      {"RabbetTooDeep",
       R"("box": {"corner": {"joint": "rabbet", "depth": "7/16"}}, "drawers": [{}])", kRabbetDepth,
       Level::kFail, "D1", "7/16", "shallower"},
      {"RabbetFine", R"("box": {"corner": {"joint": "rabbet", "depth": "5/16"}}, "drawers": [{}])",
       kRabbetDepth, Level::kPass, "D1", "5/16", "two thirds"},
      // Through 1/2 of box and into 3/4 of front, 1/8 to stay: 1 1/8 at most.
      {"FrontScrewFits", R"("screws": {"front": "1 1/8"}, "drawers": [{}])", kFrontScrew,
       Level::kPass, "D1", "1 1/8", "does not break through"},
      {"FrontScrewComesThrough", R"("screws": {"front": "1 1/4"}, "drawers": [{}])", kFrontScrew,
       Level::kFail, "D1", "1 1/4", "use one of 1 in"},
      {"SlideScrewComesThrough", R"("screws": {"slide": "5/8"}, "drawers": [{}])", kSlideScrew,
       Level::kFail, "D1", "5/8", "use one of 3/8 in"},
      {"SlideScrewAsThickAsTheSide", R"("screws": {"slide": "1/2"}, "drawers": [{}])", kSlideScrew,
       Level::kNote, "D1", "1/2", "try one"},
      {"SlideScrewFits", R"("screws": {"slide": "7/16"}, "drawers": [{}])", kSlideScrew,
       Level::kPass, "D1", "7/16", "does not break through"},
      // 3/4 in stock takes 1 1/4 in pocket screws: common practice, no source.
      {"PocketScrewsAreNamed",
       R"("case": {"width": 20, "height": 30, "depth": 24}, "drawers": [{}])", kPocketScrew,
       Level::kNote, "case", "3/4", "1 1/4 in"},
      {"PocketScrewsFit",
       R"("case": {"width": 20, "height": 30, "depth": 24}, "screws": {"pocket": "1 1/4"}, "drawers": [{}])",
       kPocketScrew, Level::kPass, "case", "1 1/4", "right length"},
      {"PocketScrewsTooLong",
       R"("case": {"width": 20, "height": 30, "depth": 24}, "screws": {"pocket": "1 1/2"}, "drawers": [{}])",
       kPocketScrew, Level::kFail, "case", "1 1/2", "1 1/4 in"},
      {"BackLapTooWide",
       R"("case": {"width": 20, "height": 30, "depth": 24, "back": {"lap": "5/8"}}, "drawers": [{}])",
       kRabbetDepth, Level::kFail, "case", "5/8", "1/8 in shallower"},
      {"BackGrooveTooNearTheRear",
       R"("case": {"width": 20, "height": 30, "depth": 24, "back": {"fit": "groove", "inset": "1/8"}}, "drawers": [{}])",
       kGrooveUnder, Level::kWarn, "case", "1/8", "move it forward 1/8 in"},
      {"CaseDadoTooDeep",
       R"("case": {"width": 20, "height": 30, "depth": 24, "joint": {"type": "dado", "depth": "1/2"}}, "drawers": [{}])",
       kGrooveDepth, Level::kWarn, "case", "1/2", "1/8 in shallower"},
      // Tongues of 1/8 in hold: common practice, no source; and with 1/4 of depth as much wood is
      // to
      // stand beyond the grooves.
      {"TongueBreaksOff", R"("case": {"width": 20, "height": 30, "depth": 24,
         "joint": {"type": "tongue-and-dado", "tongue": "1/16"}}, "drawers": [{}])",
       kTongue, Level::kFail, "case", "1/16", "1/16 in thicker"},
      {"TongueHolds", R"("case": {"width": 20, "height": 30, "depth": 24,
         "joint": {"type": "tongue-and-dado"}}, "drawers": [{}])",
       kTongue, Level::kPass, "case", "1/4", "hold"},
      {"LittleBeyondATonguesGroove", R"("case": {"width": 20, "height": 30, "depth": 24,
         "joint": {"type": "tongue-and-dado", "tongue": "5/8"}}, "drawers": [{}])",
       kGrooveUnder, Level::kWarn, "case", "1/8", "1/8 in thinner"},
      {"GrooveThroughTheSide", R"("case": {"width": 20, "height": 30, "depth": 24,
         "joint": {"type": "tongue-and-dado", "depth": "3/4"}}, "drawers": [{}])",
       kGrooveDepth, Level::kFail, "case", "3/4", "3/8 in shallower"},
      // A divider of 3/8 that takes a partition by 1/4: half is 3/16.
      {"DividerTooThinForItsPartition", R"("case": {"width": 30, "height": 30, "depth": 24,
         "joint": {"type": "dado"}}, "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]},
           {"drawer": {}}], "divider": "3/8"})",
       kGrooveDepth, Level::kWarn, "H1", "1/4", "1/16 in shallower"},
      // And from both faces: 1/2 of 3/8 comes through.
      {"PartitionsMeetThroughADivider", R"("case": {"width": 30, "height": 30, "depth": 24,
         "joint": {"type": "dado"}}, "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]},
           {"columns": [{"drawer": {}}, {"drawer": {}}]}], "divider": "3/8"})",
       kGrooveDepth, Level::kFail, "H1", "1/2", "1/8 in shallower"},
      // 1/2 of 3/4 leaves a third.
      {"PartitionsLeaveAThird", R"("case": {"width": 30, "height": 30, "depth": 24,
         "joint": {"type": "dado"}}, "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]},
           {"columns": [{"drawer": {}}, {"drawer": {}}]}]})",
       kGrooveDepth, Level::kPass, "H1", "1/2", "a third"},
      {"FirstMoved",
       R"("graduate": {"scheme": "arithmetic", "first": 4}, "drawers": [{}, {}, {"max": 8}])",
       kGraduation, Level::kNote, "the bank", "", "moves the first size"},
  };
  return cases;
}
INSTANTIATE_TEST_SUITE_P(Checks, CheckTable, ::testing::ValuesIn(Cases()),
                         [](const auto& row) { return std::string(row.param.name); });

// Every code of a check is produced by some row of the table or by a test below.
TEST(Checks, EveryCodeHasARow) {
  for (int i = 0; i <= static_cast<int>(kLastOfBank); ++i) {
    const auto code = static_cast<CheckCode>(i);
    // The last two rows of those below, and what other files of tests hold.
    const bool elsewhere = code == kOutOfLine || code == kBoxWidth || code >= kBottomSag;
    const bool has_row =
        std::ranges::any_of(Cases(), [&](const Case& c) { return c.code == code; });
    EXPECT_TRUE(has_row || elsewhere) << ToText(code);
  }
}

TEST(Checks, EdgesOutOfLineAreNoted) {
  const Solved s = MustSolve(
      R"({"units": "mm", "opening": {"width": 500.3, "height": 700, "depth": 520},
      "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}], "gap": 3.2}, {"drawer": {}}]}})");
  const std::vector<Finding> findings = CheckBank(s.spec, s.bank);
  const auto found = std::ranges::find(findings, kOutOfLine, &Finding::code);
  ASSERT_NE(found, findings.end());
  EXPECT_EQ(found->level, Level::kNote);
  EXPECT_EQ(found->value, L("0.1 mm"));
}

// An undermount box is sized by its inside, so thick sides can fill the cell.
TEST(Checks, AnUndermountBoxWiderThanItsCellFails) {
  const Solved s = MustSolve(
      R"({"units": "mm", "opening": {"width": 500, "height": 300, "depth": 520},
      "slides": {"type": "undermount"}, "box": {"side": {"thickness": 22}}, "drawers": [{}]})");
  const std::vector<Finding> findings = CheckBank(s.spec, s.bank);
  const auto found = std::ranges::find(findings, kBoxWidth, &Finding::code);
  ASSERT_NE(found, findings.end());
  EXPECT_EQ(found->level, Level::kFail);
  EXPECT_EQ(found->value, L("502 mm"));
}

TEST(Checks, AStarterSpecPassesThemAll) {
  const Solved s = MustSolve(StarterSpec());
  EXPECT_FALSE(tillwright::HasFailure(CheckBank(s.spec, s.bank)));
}

}  // namespace
}  // namespace tillwright
