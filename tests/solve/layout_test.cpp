// The layout tree: regions, remainders, members, grids. Values worked by hand in the comments.
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

// An opening of 15 3/8 x 24 3/4 x 21 3/4 in, and what follows it.
std::string InchSpec(const std::string& rest) {
  return R"({"opening": {"width": "15 3/8", "height": "24 3/4", "depth": "21 3/4"}, )" + rest + "}";
}
std::string MetricSpec(const std::string& rest) {
  return R"({"units": "mm", "opening": {"width": 500, "height": 700, "depth": 520}, )" + rest + "}";
}

class LayoutTable : public ::testing::TestWithParam<SolveCase> {};
TEST_P(LayoutTable, GivesTheValuesWorkedByHand) { ExpectValues(GetParam()); }

const std::vector<SolveCase>& Cases() {
  static const std::vector<SolveCase> cases{
      // Overlay 5/8 all round: 16 5/8 wide, 26 high. Less two gaps of 1/8: 25 3/4 = 824/32;
      // 274, 275, 275. D1 from the top at 25 3/8 down.
      {"OverlayThreeEqual", InchSpec(R"("drawers": [{}, {}, {}])"),
       {{"D1.front.width", "16 5/8"}, {"D1.front.x", "-5/8"},
        {"D1.front.height", "8 9/16"}, {"D2.front.height", "8 19/32"},
        {"D1.front.y", "16 13/16"},   // 25 3/8 - 8 9/16
        {"D2.front.y", "8 3/32"},     // 16 13/16 - 1/8 - 8 19/32
        {"D3.front.y", "-5/8"},       // 8 3/32 - 1/8 - 8 19/32
        {"D1.cell.y", "16 3/4"},      // the middle of the gap below D1: 16 13/16 - 1/16
        {"D1.cell.height", "8"},      // up to the opening's top, 24 3/4
        {"D2.cell.y", "8 1/32"}, {"D2.cell.height", "8 23/32"},
        {"D3.cell.y", "0"}, {"D3.cell.height", "8 1/32"},
        {"D2.cell.width", "15 3/8"}}},
      // Inset, edges 1/8: 15 1/8 wide, 24 1/2 less 1/8 = 24 3/8: 12 3/16 each.
      {"InsetTwo", InchSpec(R"("fronts": {"style": "inset"}, "drawers": [{}, {}])"),
       {{"D1.front.width", "15 1/8"}, {"D1.front.height", "12 3/16"},
        {"D1.front.y", "12 7/16"}, {"D2.front.y", "1/8"}, {"D2.cell.y", "0"},
        {"D1.cell.y", "12 3/8"}}},  // 12 7/16 less half of 1/8
      // An inset divider of 3/4: 24 3/4 - 2/8 - (3/4 + 2/8) = 23 1/2: 11 3/4 each. From the top:
      // 24 5/8 - 11 3/4 = 12 7/8; 1/8; divider 12 to 12 3/4; 1/8; 11 7/8 down to 1/8.
      {"InsetWithADivider",
       InchSpec(R"("fronts": {"style": "inset"}, "divider": "3/4", "drawers": [{}, {}])"),
       {{"D1.front.height", "11 3/4"}, {"D1.front.y", "12 7/8"}, {"D2.front.y", "1/8"},
        {"D1.cell.y", "12 3/4"}, {"D2.cell.height", "12"}, {"H1.length", "15 3/8"}}},
      // Overlay with a divider of 3/4: heights as without; each cell stops 3/8 short of the gap's
      // middle. 26 - 1/8 = 25 7/8: 12 15/16 each. D1.y = 25 3/8 - 12 15/16 = 12 7/16; middle
      // 12 3/8: D1 cell from 12 3/4, D2 cell to 12.
      {"OverlayWithADivider", InchSpec(R"("divider": "3/4", "drawers": [{}, {}])"),
       {{"D1.front.height", "12 15/16"}, {"D1.front.y", "12 7/16"}, {"D1.cell.y", "12 3/4"},
        {"D2.cell.height", "12"}}},
      // Columns: 16 5/8 - 1/8 = 16 1/2: 8 1/4 each; default partition 3/4. D1 from -5/8 to 7 5/8,
      // middle of the gap 7 11/16: D1's cell ends at 7 5/16, D2's begins at 8 1/16.
      {"TwoColumns",
       InchSpec(R"("layout": {"columns": [{"drawer": {}}, {"drawer": {}}]})"),
       {{"D1.front.width", "8 1/4"}, {"D2.front.x", "7 3/4"}, {"D1.cell.width", "7 5/16"},
        {"D2.cell.x", "8 1/16"}, {"D2.cell.width", "7 5/16"}, {"D1.front.height", "26"},
        {"D1.front.y", "-5/8"}, {"V1.length", "24 3/4"}}},
      // Across, a width off the grid: 15.39 + 1 1/4 = 16.64 in = 532.48/32: 16 5/8, and 0.015 in
      // over, half each side: x = -0.625 + 0.0075.
      {"TheSliverAcrossIsShared",
       R"({"opening": {"width": "15.39", "height": 10, "depth": 22}, "drawers": [{}]})",
       {{"D1.front.width", "16 5/8"}, {"D1.front.x", "-0.6175"}}},
      // Upright it lies at the lower edge: 10.01 + 1 1/4 = 11.26 in = 360.32/32: 11 1/4, top at
      // 10.01 + 5/8, so y = 10.635 - 11.25 = -0.615.
      {"TheSliverUprightLiesAtTheBottom",
       R"({"opening": {"width": "15 3/8", "height": "10.01", "depth": 22}, "drawers": [{}]})",
       {{"D1.front.height", "11 1/4"}, {"D1.front.y", "-0.615"}}},
      // Halves of an odd count: a remainder of 1 pm across goes to the right.
      {"HalfAnOddPicometreIsRoundedDown",
       R"({"units": "mm", "round": 1, "opening": {"width": "100.000000001", "height": 100,
           "depth": 400}, "fronts": {"overlay": 0}, "drawers": [{}]})",
       {{"D1.front.width", "100 mm"}, {"D1.front.x", "0"}}},
      // The 32 mm grid: 700 + 2 * 16 + 3 = 735 = 22 * 32 + 31: pitches share 22 steps by three:
      // 7, 7, 8 (7 1/3 each: one more to the last): fronts 221, 221, 253. Left over 31 mm: 15.5 at
      // each end.
      {"Grid",
       MetricSpec(R"("grid": 32, "slides": {"type": "undermount"}, "drawers": [{}, {}, {}])"),
       {{"D1.front.height", "221 mm"}, {"D3.front.height", "253 mm"},
        {"D1.front.y", "479.5 mm"},    // 716 - 15.5 - 221
        {"D3.front.y", "-0.5 mm"}}},   // -16 + 15.5
      // A tree: rows of (columns of 2) over one, 1 : 2. Overlay 5/8: 26 - 1/8 = 25 7/8 = 828/32:
      // 276 and 552: 8 5/8 and 17 1/4.
      {"ColumnsOverOne",
       InchSpec(R"("layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]},
                                        {"drawer": {"weight": 2}}]})"),
       {{"D1.front.height", "8 5/8"}, {"D3.front.height", "17 1/4"}, {"D1.front.y", "16 3/4"},
        {"D3.front.width", "16 5/8"}, {"D2.front.width", "8 1/4"},
        // A row of columns gets a divider below it, 3/4: the gap's middle is 16 11/16, so the
        // upper cells begin at 17 1/16 and the lower one ends at 16 5/16.
        {"D1.cell.y", "17 1/16"}, {"D3.cell.height", "16 5/16"}, {"H1.length", "15 3/8"}}},
      // Per-edge overlays and a gap of its own: 15 3/8 + 1/4 + 3/8 = 16 wide.
      {"EdgesOfTheirOwn",
       InchSpec(R"("fronts": {"overlay": {"left": "1/4", "right": "3/8", "top": 0, "bottom": "1/2"}},
                   "gap": "1/4", "drawers": [{}, {}])"),
       {{"D1.front.width", "16"}, {"D1.front.x", "-1/4"}, {"D1.front.height", "12 1/2"},
        {"D2.front.y", "-1/2"}}},  // 24 3/4 + 1/2 - 1/4 = 25: 12 1/2 each
      // A blank and an open space take their share: three of 8 9/16, 8 19/32, 8 19/32.
      {"BlankAndOpenTakeTheirShare",
       InchSpec(R"("layout": {"rows": [{"blank": {}}, {"open": {}}, {"drawer": {}}]})"),
       {{"B1.front.height", "8 9/16"}, {"O1.space.height", "8 19/32"},
        {"D1.front.height", "8 19/32"}}},
      // A single leaf is a whole bank.
      {"OneLeaf", InchSpec(R"("layout": {"drawer": {}})"),
       {{"D1.front.height", "26"}, {"D1.front.width", "16 5/8"}, {"D1.cell.height", "24 3/4"}}},
  };
  return cases;
}
INSTANTIATE_TEST_SUITE_P(Layout, LayoutTable, ::testing::ValuesIn(Cases()), NameOf);

TEST(Layout, NumbersLeavesInReadingOrder) {
  const Solved s = MustSolve(InchSpec(
      R"("layout": {"rows": [{"columns": [{"drawer": {}}, {"rows": [{"drawer": {}}, {"blank": {}}]}]},
                              {"drawer": {}}]})"));
  std::string ids;
  for (const Space& space : s.bank.spaces) ids += ToText(space.id) + " ";
  EXPECT_EQ(ids, "D1 D2 B1 D3 ");
}

TEST(Layout, ListsGapsBottomUpThenLeftToRight) {
  const Solved s = MustSolve(InchSpec(
      R"("layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]}, {"drawer": {}}]})"));
  std::string gaps;
  for (const Gap& gap : s.bank.gaps) {
    gaps += ToText(s.bank, gap.from) + "-" + ToText(s.bank, gap.to) + " " + FormatInches(gap.size) + "; ";
  }
  EXPECT_EQ(gaps, "D3-D1 1/8; D3-D2 1/8; D1-D2 1/8; ");
}

TEST(Layout, ListsInsetGapsToTheOpeningAndToMembers) {
  const Solved s = MustSolve(InchSpec(
      R"("fronts": {"style": "inset"}, "divider": "3/4", "drawers": [{}, {}])"));
  std::string gaps;
  for (const Gap& gap : s.bank.gaps) {
    EXPECT_EQ(gap.size, L("1/8"));
    gaps += ToText(s.bank, gap.from) + "-" + ToText(s.bank, gap.to) + "; ";
  }
  EXPECT_EQ(gaps,
            "opening.bottom-D2; D2-H1; H1-D1; D1-opening.top; "
            "opening.left-D2; opening.left-D1; D2-opening.right; D1-opening.right; ");
}

TEST(Layout, PutsMembersWhereDrawersNeedThem) {
  struct Case {
    const char* rest;
    std::size_t members;
  };
  const Case cases[] = {
      {R"("drawers": [{}, {}])", 0},
      {R"("slides": {"type": "wood-runner"}, "drawers": [{}, {}])", 1},
      {R"("slides": {"type": "center-mount"}, "drawers": [{}, {}])", 1},
      {R"("slides": {"type": "wood-runner"}, "divider": "none", "drawers": [{}, {}])", 0},
      {R"("drawers": [{}, {"slides": {"type": "wood-runner"}}])", 1},
      {R"("layout": {"columns": [{"drawer": {}}, {"drawer": {}}]})", 1},
      {R"("slides": {"type": "center-mount"}, "layout": {"columns": [{"drawer": {}}, {"drawer": {}}]})", 0},
      {R"("layout": {"columns": [{"blank": {}}, {"open": {}}]})", 0},
      {R"("layout": {"columns": [{"blank": {}}, {"open": {}}], "divider": "3/4"})", 1},
  };
  for (const Case& c : cases) {
    EXPECT_EQ(MustSolve(InchSpec(c.rest)).bank.dividers.size(), c.members) << c.rest;
  }
}

TEST(Layout, SaysWhenExactSizesDoNotClose) {
  // 25 7/8 to share: 12 and 13 leave 7/8.
  const Solved s = MustSolve(InchSpec(R"("drawers": [{"exact": 12}, {"exact": 13}])"));
  ASSERT_EQ(s.bank.notes.size(), 1U);
  EXPECT_EQ(s.bank.notes[0].kind, SolveNote::Kind::kDoesNotClose);
  EXPECT_EQ(s.bank.notes[0].amount, L("7/8"));
}

TEST(Layout, SaysWhenSliversPutEdgesOutOfLine) {
  // 500.3 + 32 = 532.3: the single front is 532 (0.15 each side). Two columns share 529.3: 529
  // (0.15 each side too), so they agree. With a gap of 3.2 they share 529.1: 529, 0.05 each side.
  const std::string spec = R"({"units": "mm", "opening": {"width": 500.3, "height": 700, "depth": 520},
    "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}], "gap": 3.2}, {"drawer": {}}]}})";
  const Solved s = MustSolve(spec);
  ASSERT_EQ(s.bank.notes.size(), 1U);
  EXPECT_EQ(s.bank.notes[0].kind, SolveNote::Kind::kOutOfLine);
  EXPECT_EQ(s.bank.notes[0].amount, L("0.1 mm"));
}

TEST(Layout, RefusesAGridWithoutPlainRows) {
  const Diagnostics d = MustFail(MetricSpec(
      R"("grid": 32, "layout": {"columns": [{"drawer": {}}, {"drawer": {}}]})"));
  ASSERT_EQ(d.size(), 1U);
  EXPECT_EQ(d[0].code, DiagnosticCode::kConflict);
}

TEST(Layout, SaysByHowMuchBoundsAreTooLong) {
  const Diagnostics d = MustFail(InchSpec(R"("drawers": [{"min": 14}, {"min": 13}])"));
  ASSERT_EQ(d.size(), 1U);
  EXPECT_EQ(d[0].code, DiagnosticCode::kDoesNotClose);
  // 27 of 25 7/8.
  EXPECT_NE(d[0].message.find("1 1/8 in too long"), std::string::npos) << d[0].message;
  EXPECT_NE(d[0].message.find("D1 min 14 in"), std::string::npos) << d[0].message;
}

}  // namespace
}  // namespace tillwright
