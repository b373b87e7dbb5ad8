// The whole case: stretchers, toe kick, feet, face frame, web frames, worktop and boards. Values
// worked by hand in the comments.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "stock/part_seats.h"
#include "support/bank_values.h"
#include "tillwright/check.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;
using testing::L;
using testing::MustFail;
using testing::MustSolve;
using testing::Solved;

std::string Case(const std::string& keys, const std::string& more = "") {
  return R"({"case": {"width": "20", "side": "3/4", )" + keys + "}, \"drawers\": [{}, {}]" + more +
         "}";
}
const char* const kSizes = R"("height": "30", "depth": "24")";

const Part& PartNamed(const Bank& bank, const std::string& id) {
  for (const Part& part : bank.parts) {
    if (PartId(bank, part) == id) return part;
  }
  ADD_FAILURE() << "no part " << id;
  return bank.parts.front();
}

void ExpectSize(const Part& part, const char* length, const char* width, const char* thickness,
                int count) {
  EXPECT_EQ(part.length, L(length));
  EXPECT_EQ(part.width, L(width));
  EXPECT_EQ(part.thickness, L(thickness));
  EXPECT_EQ(part.count, count);
}

TEST(WholeCase, StretchersLieWhereTheTopWould) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "joint": {"type": "dado",
    "depth": "1/4"}, "stretchers": {"width": "3"})"))
                        .bank;
  // 18 1/2 between the sides and 1/4 into each.
  ExpectSize(PartNamed(bank, "case.stretcher"), "19", "3", "3/4", 2);
  for (const Part& part : bank.parts) EXPECT_NE(part.role, PartRole::kCaseTop);
  EXPECT_EQ(bank.opening_height, L("28 1/2"));
  ASSERT_EQ(bank.pieces.size(), 2U);
  EXPECT_EQ(bank.pieces[0].block.z, Length());
  EXPECT_EQ(bank.pieces[1].block.z, L("20 3/4"));  // 23 3/4 to the back, less 3
  EXPECT_EQ(bank.pieces[0].block.x, L("-1/4"));
  EXPECT_EQ(bank.pieces[0].block.y, L("28 1/2"));
}

TEST(WholeCase, AToeKickSetsTheBottomUpAndNotchesTheSides) {
  const Bank bank =
      MustSolve(Case(std::string(kSizes) + R"(, "toe_kick": {"height": "3 1/2", "setback": "2"})"))
          .bank;
  EXPECT_EQ(bank.opening_height, L("25"));  // 30 - 3 1/2 - two of 3/4
  ExpectSize(PartNamed(bank, "case.toe_kick"), "18 1/2", "3 1/2", "3/4", 1);
  const Part& side = PartNamed(bank, "case.side");
  EXPECT_EQ(side.notch, (Notch{L("2"), L("3 1/2")}));
  EXPECT_EQ(bank.pieces[0].block.y, L("-4 1/4"));
  // By default 4 in high and 3 in back.
  const Bank plain = MustSolve(Case(std::string(kSizes) + R"(, "toe_kick": {})")).bank;
  EXPECT_EQ(PartNamed(plain, "case.side").notch, (Notch{L("3"), L("4")}));
}

TEST(WholeCase, FeetLeaveTheCaseAsItIs) {
  const Solved solved = MustSolve(Case(std::string(kSizes) + R"(, "feet": {})"));
  EXPECT_EQ(solved.bank.opening_height, L("28 1/2"));
  const std::vector<HardwareLine> lines = HardwareList(solved.spec, solved.bank);
  const auto foot = std::ranges::find(lines, HardwareKind::kFoot, &HardwareLine::kind);
  ASSERT_NE(foot, lines.end());
  EXPECT_EQ(foot->amount, 4);
  EXPECT_EQ(foot->length, L("4"));
}

// Stiles 1 3/4 on sides of 3/4: 1 in of blocking; opening 20 - 3 1/2 wide, 30 - 1 1/2 - 2 high.
TEST(WholeCase, AFaceFramesOpeningIsTheBanks) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "face_frame":
    {"thickness": "3/4", "stile": "1 3/4", "rail": "1 1/2", "bottom_rail": "2"})"))
                        .bank;
  EXPECT_EQ(bank.opening_width, L("16 1/2"));
  EXPECT_EQ(bank.opening_height, L("26 1/2"));
  EXPECT_EQ(bank.opening_depth, L("24 1/2"));  // 24 + 3/4 - 1/4
  ExpectSize(PartNamed(bank, "case.stile"), "30", "1 3/4", "3/4", 2);
  ExpectSize(PartNamed(bank, "case.top_rail"), "16 1/2", "1 1/2", "3/4", 1);
  ExpectSize(PartNamed(bank, "case.bottom_rail"), "16 1/2", "2", "3/4", 1);
  ExpectSize(PartNamed(bank, "D1.blocking"), "23 3/4", "3", "1", 2);
  EXPECT_EQ(PartNamed(bank, "D1.blocking").grain, Grain::kHorizontal);
  ExpectSize(PartNamed(bank, "case.bottom"), "18 1/2", "23 3/4", "3/4", 1);
  // The bottom lies 1 1/4 below the bottom rail's upper edge.
  EXPECT_EQ(bank.casework->low_in, L("1 1/4"));
  EXPECT_EQ(bank.casework->base, L("2"));
}

TEST(WholeCase, StilesPastTheSidesNeedLessBlocking) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "face_frame":
    {"stile": "1 3/4", "overlap": "1/4"})"))
                        .bank;
  EXPECT_EQ(bank.opening_width, L("17"));  // 20 + 1/2 - 3 1/2
  EXPECT_EQ(PartNamed(bank, "D1.blocking").thickness, L("3/4"));
  const Bank none = MustSolve(Case(std::string(kSizes) + R"(, "face_frame":
    {"stile": "1 1/4", "overlap": "1/2"})"))
                        .bank;
  for (const Part& part : none.parts) EXPECT_NE(part.role, PartRole::kBlocking);
}

TEST(WholeCase, OverlaysCountFromTheFramesOuterEdges) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "face_frame": {"stile": "2"})",
                                   R"(, "fronts": {"overlay": "flush"})"))
                        .bank;
  EXPECT_EQ(bank.overlay[static_cast<std::size_t>(Edge::kLeft)], L("2"));
  EXPECT_EQ(bank.overlay[static_cast<std::size_t>(Edge::kTop)], L("1 1/2"));
}

// A divider behind a face frame runs on to the case's sides, where it enters their dados.
TEST(WholeCase, MembersReachBehindTheFrame) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "joint": {"type": "dado",
    "depth": "1/4"}, "face_frame": {"stile": "1 3/4"})",
                                   R"(, "divider": "3/4",
    "fronts": {"style": "inset"})"))
                        .bank;
  ASSERT_EQ(bank.dividers.size(), 1U);
  EXPECT_EQ(bank.dividers[0].rect.width, L("16 1/2"));
  EXPECT_EQ(bank.dividers[0].length, L("19"));
  EXPECT_EQ(bank.dividers[0].begin, L("-1 1/4"));
  EXPECT_EQ(bank.dividers[0].depth, L("23 3/4"));
  ExpectSize(PartNamed(bank, "H1.rail"), "16 1/2", "3/4", "3/4", 1);
}

// --- Tongue and groove --------------------------------------------------------------------------
// A barefaced tongue, as in a tongued housing: the member's end is rabbeted on one face, and what
// is left fills a groove narrower than the member. Common practice, no source; so is a third of the
// member for the tongue.

Cut RabbetAtEnds(const char* width, const char* depth, CutOn face) {
  return {CutKind::kRabbet,   CutFrom::kEachEnd, Length(), L(width), L(depth), face,
          CutPurpose::kTongue};
}

// 18 1/2 between the sides. A third of a side of 3/4 is 1/4, into each; a third of the thinnest
// member, the divider of 1/2, is 1/6, down to 5/32.
TEST(WholeCase, TonguesFillGroovesNarrowerThanTheMembers) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "raise": "2", "back": "none",
    "joint": {"type": "tongue-and-dado"})",
                                   R"(, "divider": "1/2")"))
                        .bank;
  EXPECT_EQ(bank.casework->tongue, L("5/32"));
  ExpectSize(PartNamed(bank, "case.bottom"), "19", "24", "3/4", 1);
  ExpectSize(PartNamed(bank, "case.top"), "19", "24", "3/4", 1);
  ExpectSize(PartNamed(bank, "H1"), "19", "24", "1/2", 1);
  const std::vector<Cut> outside{RabbetAtEnds("1/4", "19/32", CutOn::kOutside)};
  EXPECT_EQ(PartNamed(bank, "case.bottom").cuts, outside);
  EXPECT_EQ(PartNamed(bank, "case.top").cuts, outside);
  EXPECT_EQ(PartNamed(bank, "H1").cuts,
            std::vector<Cut>{RabbetAtEnds("1/4", "11/32", CutOn::kUpperFace)});
  // The bottom's upper face is 2 3/4 up, the top's lower 29 1/4: the grooves end and begin there.
  const std::vector<Cut>& side = PartNamed(bank, "case.side").cuts;
  ASSERT_EQ(side.size(), 2U);
  EXPECT_EQ(side[0], (Cut{CutKind::kDado, CutFrom::kLowerEdge, L("2 19/32"), L("5/32"), L("1/4"),
                          CutOn::kInside, CutPurpose::kCaseBottom}));
  EXPECT_EQ(side[1], (Cut{CutKind::kDado, CutFrom::kLowerEdge, L("29 1/4"), L("5/32"), L("1/4"),
                          CutOn::kInside, CutPurpose::kCaseTop}));
}

// A tongue as typed, between all members; a partition's groove in what takes it lies along its left
// face.
TEST(WholeCase, GroovesTakeTheTonguesOfMembers) {
  const Bank bank = MustSolve(R"({"case": {"width": "30", "height": "30", "depth": "24",
    "joint": {"type": "tongue-and-dado", "tongue": "3/8"}}, "layout": {"rows": [
      {"columns": [{"drawer": {}}, {"drawer": {}}]}, {"drawer": {}}], "divider": "3/4"}})")
                        .bank;
  const std::vector<Divider>& members = bank.dividers;
  ASSERT_EQ(members.size(), 2U);
  const auto divider = std::ranges::find(members, false, &Divider::partition);
  const auto partition = std::ranges::find(members, true, &Divider::partition);
  EXPECT_EQ(PartNamed(bank, "V1").cuts,
            std::vector<Cut>{RabbetAtEnds("1/4", "3/8", CutOn::kRightFace)});
  const std::vector<Seat> in_side = SeatsIn(bank, PartNamed(bank, "case.side"));
  ASSERT_EQ(in_side.size(), 2U);  // of the left side and of the right
  EXPECT_EQ(in_side[0].width, L("3/8"));
  EXPECT_EQ(in_side[0].offset, divider->rect.y + L("3/4"));
  const std::vector<Seat> in_divider = SeatsIn(bank, PartNamed(bank, "H1"));
  ASSERT_EQ(in_divider.size(), 1U);
  EXPECT_EQ(in_divider[0].width, L("3/8"));
  EXPECT_EQ(in_divider[0].offset, partition->rect.x + L("1/4"));
}

// What does not break off, 1/8 in, where a third of the thinnest member would be less; but no more
// than half of it.
TEST(WholeCase, ThinMembersHaveTonguesThatHold) {
  const auto tongue = [](const char* divider) {
    return MustSolve(Case(std::string(kSizes) + R"(, "joint": {"type": "tongue-and-dado"})",
                          std::string(R"(, "divider": ")") + divider + "\""))
        .bank.casework->tongue;
  };
  EXPECT_EQ(tongue("5/16"), L("1/8"));
  EXPECT_EQ(tongue("3/16"), L("3/32"));
}

// The rails of a web frame have tongues; its runners lie along the sides.
TEST(WholeCase, WebFramesAreLetInByTheirRails) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "joint": {"type": "tongue-and-dado"},
    "web_frame": {})",
                                   R"(, "slides": {"type": "wood-runner"})"))
                        .bank;
  ExpectSize(PartNamed(bank, "H1.web_rail"), "19", "2 1/2", "3/4", 2);
  EXPECT_EQ(PartNamed(bank, "H1.web_rail").cuts.at(1),
            RabbetAtEnds("1/4", "1/2", CutOn::kUpperFace));
  for (const CasePiece& piece : bank.pieces) {
    if (piece.role != PartRole::kWebRunner) continue;
    EXPECT_TRUE(piece.block.x == Length() || piece.block.x == L("16")) << "between the sides";
  }
}

// A divider 18 1/2 long and 23 3/4 deep of rails 2 1/2: 18 3/4 between them and 3/8 into each.
TEST(WholeCase, WebFramesTakeTheDividersPlace) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "web_frame": {})",
                                   R"(, "slides": {"type": "wood-runner"})"))
                        .bank;
  ExpectSize(PartNamed(bank, "H1.web_rail"), "18 1/2", "2 1/2", "3/4", 2);
  ExpectSize(PartNamed(bank, "H1.web_runner"), "19 1/2", "2 1/2", "3/4", 2);
  for (const Part& part : bank.parts) EXPECT_NE(part.role, PartRole::kDivider);
  // A third of 3/4 is 1/4, with 1/4 on both sides of it.
  const Cut groove = PartNamed(bank, "H1.web_rail").cuts.at(0);
  EXPECT_EQ(groove, (Cut{CutKind::kGroove, CutFrom::kUpperFace, L("1/4"), L("1/4"), L("3/8"),
                         CutOn::kInnerEdge, CutPurpose::kWebRunner}));
}

// Sides 24 in deep of white oak (0.00365 per %, Wood Handbook, table 13-5), made at 8 and dry at 6 %:
// 0.1752 in, up to 3/16.
TEST(WholeCase, RunnersLeaveTheirRearTenonsRoomBetweenSolidSides) {
  const auto runner = [](const std::string& frame, const std::string& material = "white oak") {
    const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "material": ")" + material +
                                         R"(", "web_frame": )" + frame,
                                     R"(, "slides": {"type": "wood-runner"})"))
                          .bank;
    return PartNamed(bank, "H1.web_runner").length;
  };
  EXPECT_EQ(runner("{}"), L("19 1/2") - L("3/16"));
  EXPECT_EQ(runner("{}", "birch plywood"), L("19 1/2"));
  EXPECT_EQ(runner(R"({"free": 0})"), L("19 1/2"));
  EXPECT_EQ(runner(R"({"free": "1/4"})"), L("19 1/4"));
}

TEST(WholeCase, TheFrontRailMayBeOfAWoodOfItsOwn) {
  const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "material": "poplar",
    "web_frame": {"front": "cherry"})",
                                   R"(, "slides": {"type": "wood-runner"})"))
                        .bank;
  EXPECT_EQ(PartNamed(bank, "H1.web_rail_front").material, "cherry");
  EXPECT_EQ(PartNamed(bank, "H1.web_rail_front").count, 1);
  EXPECT_EQ(PartNamed(bank, "H1.web_rail").material, "poplar");
  EXPECT_EQ(PartNamed(bank, "H1.web_rail").count, 1);
  EXPECT_EQ(PartNamed(bank, "H1.web_runner").material, "poplar");
}

TEST(WholeCase, OpenRailsHaveNoRunners) {
  for (const auto& [rails, count] : {std::pair{"front", 1}, std::pair{"both", 2}}) {
    const Bank bank = MustSolve(Case(std::string(kSizes) + R"(, "web_frame": {"rails": ")" + rails +
                                         "\"}",
                                     R"(, "divider": "3/4")"))
                          .bank;
    ExpectSize(PartNamed(bank, "H1.web_rail"), "18 1/2", "2 1/2", "3/4", count);
    EXPECT_TRUE(PartNamed(bank, "H1.web_rail").cuts.empty());
    for (const Part& part : bank.parts) EXPECT_NE(part.role, PartRole::kWebRunner);
  }
  const Diagnostics d = MustFail(Case(std::string(kSizes) + R"(, "web_frame": {"rails": "both",
    "tenon": "1/2"})"));
  ASSERT_EQ(d.size(), 1U);
  EXPECT_EQ(d[0].code, DiagnosticCode::kNotApplicable);
}

TEST(WholeCase, ARunnerUnderEachPartition) {
  const Bank bank = MustSolve(R"({"case": {"width": "30", "height": "30", "depth": "24",
    "web_frame": {}}, "slides": {"type": "wood-runner"}, "layout": {"rows": [
      {"columns": [{"drawer": {}}, {"drawer": {}}]}, {"drawer": {}}]}})")
                        .bank;
  EXPECT_EQ(PartNamed(bank, "H1.web_runner").count, 3);
}

const char* const kFourInTwoRows = R"("slides": {"type": "wood-runner"}, "layout": {"rows": [
    {"columns": [{"drawer": {}}, {"drawer": {}}]}, {"columns": [{"drawer": {}}, {"drawer": {}}]}]}})";

// Where one partition stands on a frame and another hangs under it, one runner serves both; with
// dados 1/4 deep it is grooved for both, in its middle: 2 1/2 less 3/4, half of it on each side.
TEST(WholeCase, PartitionsAboveAndBelowAFrameShareARunner) {
  const Bank bank = MustSolve(std::string(R"({"case": {"width": "30", "height": "30", "depth": "24",
    "joint": {"type": "dado"}, "web_frame": {}}, )") +
                              kFourInTwoRows)
                        .bank;
  std::vector<const Part*> runners;
  for (const Part& part : bank.parts) {
    if (part.role == PartRole::kWebRunner) runners.push_back(&part);
  }
  ASSERT_EQ(runners.size(), 2U);
  EXPECT_EQ(runners[0]->count, 2);  // at the sides
  EXPECT_EQ(runners[0]->cuts.size(), 1U);
  EXPECT_EQ(runners[1]->count, 1);
  EXPECT_EQ(PartId(bank, *runners[1]), "H1.web_runner_V1");
  EXPECT_EQ(runners[1]->cuts.at(0), (Cut{CutKind::kDado, CutFrom::kLeftEdge, L("7/8"), L("3/4"),
                                         L("1/4"), CutOn::kBothFaces}));
  const std::vector<Seat> seats = SeatsIn(bank, PartNamed(bank, "H1.web_rail"));
  ASSERT_EQ(seats.size(), 2U);  // in its upper and its lower face
  EXPECT_NE(seats[0].other_face, seats[1].other_face);
  EXPECT_EQ(seats[0].offset, seats[1].offset);
  EXPECT_EQ(seats[0].offset, bank.dividers[1].rect.x + L("1/4"));
}

// Stretchers and a worktop take partitions in their lower faces.
TEST(WholeCase, WhatLiesAboveTakesPartitions) {
  const auto seats = [](const char* keys, const char* id) {
    const Bank bank = MustSolve(std::string(R"({"case": {"width": "30", "depth": "24",
      "joint": {"type": "dado"}, )") +
                                keys + "}, " + kFourInTwoRows)
                          .bank;
    return SeatsIn(bank, PartNamed(bank, id));
  };
  // 28 1/2 between the sides: the upper partition begins 13 7/8 in, 14 1/8 from the stretcher's
  // end.
  const auto under = seats(R"("height": "30", "stretchers": {})", "case.stretcher");
  ASSERT_EQ(under.size(), 1U);
  EXPECT_TRUE(under[0].other_face);
  EXPECT_EQ(under[0].offset, L("14 1/8"));
  // The worktop runs 2 past the case's left side, 3/4 thick.
  const auto closing = seats(R"("top": "none", "worktop": {"thickness": "1 1/2", "leg": "30",
    "width": "60", "depth": "25", "left": "2"})",
                             "case.worktop");
  ASSERT_EQ(closing.size(), 1U);
  EXPECT_EQ(closing[0].offset, L("16 5/8"));
}

// A channel off the sides' end is a dado, whatever the joint: a rabbet is a step along an edge.
TEST(WholeCase, ARaisedBottomSitsInADado) {
  const auto kind = [](const char* raise) {
    return PartNamed(MustSolve(Case(std::string(kSizes) + R"(, "joint": {"type": "rabbet"},
                       "raise": )" + raise))
                         .bank,
                     "case.side")
        .cuts.at(0)
        .kind;
  };
  EXPECT_EQ(kind("0"), CutKind::kRabbet);
  EXPECT_EQ(kind("3"), CutKind::kDado);
}

// Worktop 36 high and 1 3/4 thick: legs 34 1/4; feet 4: a case of 30 1/4. Worktop 25 deep, fronts
// 3/4: a case of 24 1/4.
TEST(WholeCase, HeightAndDepthFollowFromTheWorktop) {
  testing::ExpectValues(
      {"worktop",
       Case(R"("feet": {"height": "4"}, "worktop": {"height": "36", "thickness": "1 3/4",
             "depth": "25"})"),
       {{"case.height", "30 1/4"}, {"case.depth", "24 1/4"}, {"opening.height", "28 3/4"}}});
  testing::ExpectValues(
      {"inset, framed, applied back",
       Case(R"("worktop": {"leg": "30", "thickness": "1", "depth": "25"}, "face_frame": {},
             "back": {"fit": "applied", "thickness": "1/4"})",
            R"(, "fronts": {"style": "inset"})"),
       {{"case.height", "30"}, {"case.depth", "24"}}});
}

const Finding* Find(const std::vector<Finding>& findings, CheckCode code) {
  const auto found = std::ranges::find(findings, code, &Finding::code);
  return found == findings.end() ? nullptr : &*found;
}

struct FitCase {
  const char* name;
  const char* keys;
  CheckCode code;
  Level level;
  const char* says;
};

TEST(WholeCase, IsCheckedAgainstItsSurroundings) {
  for (const FitCase& c : {
           FitCase{"fits", R"("feet": {"height": "4"}, "worktop": {"height": "36",
                           "thickness": "1 3/4"}, "height": "30 1/4", "depth": "24")",
                   CheckCode::kFitHeight, Level::kPass, "as tall"},
           FitCase{"too tall", R"("worktop": {"leg": "29", "thickness": "1"}, "height": "30",
                               "depth": "24")",
                   CheckCode::kFitHeight, Level::kFail, "1 in shorter"},
           FitCase{"too short", R"("feet": {"height": "2"}, "worktop": {"leg": "34",
                              "thickness": "1"}, "height": "30", "depth": "24")",
                   CheckCode::kFitHeight, Level::kFail, "2 in taller"},
           FitCase{"three that differ", R"("worktop": {"leg": "30", "height": "32",
                                        "thickness": "1"}, "height": "30", "depth": "24")",
                   CheckCode::kFitHeight, Level::kFail, "by 1 in"},
           FitCase{"flush", R"("worktop": {"thickness": "1", "depth": "24 3/4"}, "height": "30",
                            "depth": "24")",
                   CheckCode::kFitDepth, Level::kPass, "flush"},
           FitCase{"proud", R"("worktop": {"thickness": "1", "depth": "24"}, "height": "30",
                            "depth": "24")",
                   CheckCode::kFitDepth, Level::kWarn, "3/4 in proud"},
           FitCase{"behind", R"("worktop": {"thickness": "1", "depth": "26"}, "height": "30",
                             "depth": "24")",
                   CheckCode::kFitDepth, Level::kNote, "1 1/4 in behind"},
       }) {
    SCOPED_TRACE(c.name);
    const Solved solved = MustSolve(Case(c.keys));
    const std::vector<Finding> findings = CheckBank(solved.spec, solved.bank);
    const Finding* finding = Find(findings, c.code);
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->level, c.level);
    EXPECT_THAT(finding->message, HasSubstr(c.says));
  }
  const Solved plain = MustSolve(Case(kSizes));
  EXPECT_EQ(Find(CheckBank(plain.spec, plain.bank), CheckCode::kFitHeight), nullptr);
}

// Red oak, flat-sawn: 0.00369 per % (Wood Handbook, table 13-5); 600 mm by 5 % move 11.07 mm, to a
// tenth 11.1. Plywood sides do not.
TEST(WholeCase, ASolidWorktopMovesOnTheCase) {
  const auto of = [](const char* worktop, const char* sides) {
    const Solved solved = MustSolve(std::string(R"({"units": "mm", "case": {"width": 500,
      "height": 700, "depth": 600, "material": ")") +
                                    sides + R"(", "worktop": {"thickness": 40,
      "material": ")" + worktop + R"("}}, "season": {"made": 8, "dry": 6, "humid": 11},
      "drawers": [{}]})");
    const std::vector<Finding> findings = CheckBank(solved.spec, solved.bank);
    const Finding* finding = Find(findings, CheckCode::kCaseMovement);
    return std::pair(finding->level, finding->value.value_or(L("-1")));
  };
  EXPECT_EQ(of("northern red oak", "birch plywood"), std::pair(Level::kNote, L("11.1 mm")));
  EXPECT_EQ(of("northern red oak", "northern red oak"), std::pair(Level::kPass, Length()));
  EXPECT_EQ(of("birch plywood", "birch plywood"), std::pair(Level::kPass, Length()));
}

// A solid back 474 mm wide moves 8.7 mm and has 1.6 mm of play.
TEST(WholeCase, ASolidBackNeedsRoom) {
  const Solved solved = MustSolve(R"({"units": "mm", "case": {"width": 500, "height": 700,
    "depth": 600, "back": {"fit": "groove", "material": "northern red oak"}}, "drawers": [{}],
    "glue_up": {"board": 120}})");
  const std::vector<Finding> findings = CheckBank(solved.spec, solved.bank);
  const Finding* finding = Find(findings, CheckCode::kCaseMovement);
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->level, Level::kWarn);
  EXPECT_EQ(finding->subject, "back");
  EXPECT_EQ(finding->value, L("8.7 mm"));
}

// As above: 500 mm by 5 % are 9.2 mm in a back held all round; 600 mm of side 11.1 mm, and the
// runners of web frames, across it, none.
TEST(WholeCase, SolidWoodHeldAcrossItsGrainIsTold) {
  const auto find = [](const std::string& keys, const char* subject) {
    const Solved solved = MustSolve(R"({"units": "mm", "case": {"width": 500, "height": 700,
      "depth": 600, )" + keys + R"(}, "drawers": [{}, {}], "slides": {"type": "wood-runner"}})");
    for (Finding& finding : CheckBank(solved.spec, solved.bank)) {
      if (finding.code == CheckCode::kCaseMovement && finding.subject == subject) {
        return std::optional(std::move(finding));
      }
    }
    return std::optional<Finding>();
  };
  const auto back = find(R"("back": {"fit": "applied", "material": "northern red oak"})", "back");
  ASSERT_TRUE(back.has_value());
  EXPECT_EQ(back->level, Level::kWarn);
  EXPECT_EQ(back->value, L("9.2 mm"));
  const std::string webs = R"("web_frame": {}, "material": )";
  const auto frames = find(webs + R"("northern red oak")", "web frames");
  ASSERT_TRUE(frames.has_value());
  EXPECT_EQ(frames->level, Level::kNote);
  EXPECT_EQ(frames->value, L("11.1 mm"));
  EXPECT_FALSE(find(webs + R"("birch plywood")", "web frames").has_value());
  // From 8 to 11 % the sides swell 6.64 mm; with 3 mm that stay in the groove 9.64, up to 1/2: 10.
  const auto shallow = find(R"("web_frame": {"tenon": 9}, "material": "northern red oak")",
                            "web frames");
  ASSERT_TRUE(shallow.has_value());
  EXPECT_EQ(shallow->level, Level::kWarn);
  EXPECT_THAT(shallow->message, HasSubstr("make \"tenon\" 10 mm"));
}

// 26 1/4 rough of boards 5 1/2 with 1/16 a joint: 5 boards and 4 joints, 26 1/2 together; a fifth
// of that is 5.3, so 5 5/16.
TEST(GlueUp, BoardsByHand) {
  const Solved solved = MustSolve(R"({"case": {"width": "20", "height": "30", "depth": "24",
    "worktop": {"thickness": "1 3/4", "width": "60", "depth": "26", "material": "hard maple"}},
    "glue_up": {"board": "5 1/2"}, "drawers": [{}]})");
  for (const CutLine& line : CutList(solved.spec, solved.bank)) {
    if (line.label != "worktop") {
      EXPECT_EQ(line.boards, 1) << line.label;
      continue;
    }
    EXPECT_EQ(line.boards, 5);
    EXPECT_EQ(line.board_width, L("5 5/16"));
  }
}

// The widest board listed that suits the part serves where nothing else is told; of parts as thin
// as these, 6 in boards where none does.
TEST(GlueUp, OfTheBoardsThereAre) {
  const Solved solved = MustSolve(R"({"case": {"width": "20", "height": "30", "depth": "24",
    "material": "oak"}, "drawers": [{}], "stock": {"boards": [
      {"material": "oak", "thickness": "1", "length": "96", "width": "8"},
      {"material": "oak", "thickness": "1", "length": "96", "width": "10"},
      {"material": "oak", "thickness": "2", "length": "96", "width": "12"},
      {"material": "ash", "thickness": "1", "length": "96", "width": "14"}]}})");
  const std::vector<CutLine> lines = CutList(solved.spec, solved.bank);
  const auto side = std::ranges::find(lines, std::string("case side"), &CutLine::label);
  ASSERT_NE(side, lines.end());
  EXPECT_EQ(side->boards, 3);  // 24 1/4 and 2 joints: 24 3/8
  EXPECT_EQ(side->board_width, L("8 1/8"));
  const std::vector<CutLine> usual = CutList(solved.spec, solved.bank, StockListSpec());
  const auto of_six = std::ranges::find(usual, std::string("case side"), &CutLine::label);
  EXPECT_EQ(of_six->boards, 5);  // 24 1/4 and 4 joints: 24 1/2
  EXPECT_EQ(of_six->board_width, L("4 29/32"));
}

// All boards fit the stock and together make the rough width and what jointing takes, with less
// than an increment a board to spare.
TEST(GlueUp, BoardsAddUp) {
  for (int width = 1; width < 200; ++width) {
    const std::string text =
        R"({"case": {"width": "20", "height": "30", "depth": "24", "worktop": {"thickness": "1",
         "width": "90", "depth": ")" +
        FormatInches(Length::Inches(64 + 7 * width, 64)) +
        R"(", "material": "oak"}}, "glue_up": {"board": "3 7/64", "joint": "3/64"},
         "drawers": [{}]})";
    const Solved solved = MustSolve(text);
    const std::vector<CutLine> lines = CutList(solved.spec, solved.bank);
    const auto line = std::ranges::find(lines, std::string("worktop"), &CutLine::label);
    ASSERT_NE(line, lines.end());
    if (line->rough_width <= L("3 7/64")) {
      EXPECT_EQ(line->boards, 1);
      continue;
    }
    const std::int64_t n = line->boards;
    EXPECT_LE(line->board_width, L("3 7/64"));
    const Length glued = n * line->board_width - (n - 1) * L("3/64");
    EXPECT_GE(glued, line->rough_width);
    EXPECT_LT(glued, line->rough_width + n * solved.bank.round);
    // One board fewer would not do.
    EXPECT_LT((n - 1) * L("3 7/64"), line->rough_width + (n - 2) * L("3/64"));
  }
}

}  // namespace
}  // namespace tillwright
