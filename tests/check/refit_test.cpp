// Solving anew around what is made, and the boxes and shims of the opening as measured.
#include "check/refit.h"

#include <gtest/gtest.h>

#include "support/gap_checks.h"

namespace tillwright {
namespace {

using testing::Checked;
using testing::L;
using testing::LevelOf;
using testing::MustCheck;

std::string Bank(const std::string& measured, const char* drawers = "[{}, {}, {}]") {
  return R"({"opening": {"width": 16, "height": 24, "depth": 22}, "measured": {)" + measured +
         R"(}, "drawers": )" + drawers + "}";
}

Length Now(const Refit& refit, const std::string& path) {
  for (const Refit::Change& change : refit.changes) {
    if (change.path == path) return change.now;
  }
  ADD_FAILURE() << path << " does not change";
  return {};
}

TEST(Refit, NothingChangesWhenAllIsAsPlanned) {
  const Checked c = MustCheck(Bank(R"("depth": 22, "width": [{"at": 0, "size": 16}])"));
  EXPECT_TRUE(c.check.refit->changes.empty());
  EXPECT_TRUE(c.check.refit->unmet.empty());
  EXPECT_EQ(LevelOf(c.check, CheckCode::kRefit), Level::kPass);
}

// 25 1/4 to fill, gaps 1/4: 25 to share. D2 came out at 8; the others share 17: 8 1/2 each.
TEST(Refit, AFrontThatIsCutIsHeldAndTheOthersShareTheRest) {
  const Checked c = MustCheck(Bank(R"("fronts": {"D2": {"height": 8}})"));
  const Refit& refit = *c.check.refit;
  ASSERT_TRUE(refit.solved);
  EXPECT_EQ(Now(refit, "D1.front.height"), L("8 1/2"));
  EXPECT_EQ(Now(refit, "D2.front.height"), L("8"));
  EXPECT_EQ(Now(refit, "D3.front.height"), L("8 1/2"));
  EXPECT_TRUE(refit.unmet.empty());
}

TEST(Refit, TheOpeningIsTakenAsMeasured) {
  const Checked c = MustCheck(Bank(R"("height": {"left": "23 7/8", "right": "23 3/4"})"));
  EXPECT_EQ(Now(*c.check.refit, "opening.height"), L("23 3/4"));
  EXPECT_EQ(Now(*c.check.refit, "D1.front.height"), FloorTo(L("8 1/4"), L("1/32")));
}

// An opening 1/16 narrower at the top: the upper boxes come out at 14 15/16, the lowest could be 14
// 31/32. Alike they are all made to the narrowest, and the lowest is packed out by what is left.
TEST(Refit, BoxesStayAlikeAndAreShimmed) {
  const char* tapered =
      R"("width": [{"at": 0, "size": 16}, {"at": 24, "size": "15 15/16"}]}, "graduate": {"alike": )";
  const Checked each = MustCheck(Bank(std::string(tapered) + "false"));
  EXPECT_EQ(Now(*each.check.refit, "D3.box.width"), L("14 31/32"));
  const Checked alike = MustCheck(Bank(std::string(tapered) + "true"));
  for (const char* path : {"D1.box.width", "D2.box.width", "D3.box.width"}) {
    EXPECT_EQ(Now(*alike.check.refit, path), L("14 15/16"));
  }
  const auto shims = [](const Checked& c) {
    return c.check.cells[2].shim_left + c.check.cells[2].shim_right;
  };
  EXPECT_EQ(shims(alike), shims(each) + L("1/32"));
}

TEST(Refit, FrontsThatAreAllCutMayNotFit) {
  const Checked c = MustCheck(
      Bank(R"("fronts": {"D1": {"height": 8}, "D2": {"height": 8}, "D3": {"height": "9 1/4"}})"));
  ASSERT_EQ(c.check.refit->unmet.size(), 1U);
  EXPECT_NE(c.check.refit->unmet[0].find("1/4 in too long"), std::string::npos)
      << c.check.refit->unmet[0];
  EXPECT_EQ(LevelOf(c.check, CheckCode::kRefit), Level::kWarn);
}

TEST(Refit, AFrontTooLargeForAllOthersCannotBeSolvedAround) {
  const Checked c = MustCheck(Bank(R"("fronts": {"D1": {"height": 25}})"));
  EXPECT_FALSE(c.check.refit->solved);
  EXPECT_FALSE(c.check.refit->unmet.empty());
}

TEST(Refit, AWidthThatNoSplitCanHoldIsTold) {
  const Checked c = MustCheck(Bank(R"("fronts": {"D1": {"width": 17}})"));
  ASSERT_EQ(c.check.refit->unmet.size(), 1U);
  EXPECT_NE(c.check.refit->unmet[0].find("off by a total of 1/4 in"), std::string::npos);
}

TEST(Refit, BoxesThatAreMadeMustGoIn) {
  const Checked c = MustCheck(Bank(R"("boxes": {"D1": {"height": 8, "depth": 22, "width": 16}})"));
  EXPECT_EQ(c.check.refit->unmet.size(), 3U);
  EXPECT_EQ(LevelOf(c.check, CheckCode::kBoxMeasured, "D1"), Level::kFail);
}

TEST(Refit, ACaseIsMadeAsMuchNarrowerAsItsOpening) {
  const Checked c = MustCheck(R"({"case": {"width": 20, "height": 30, "depth": 24},
      "fronts": {"overlay": "flush"}, "drawers": [{}, {}],
      "measured": {"width": [{"at": 0, "size": "18 3/8"}]}})");
  EXPECT_EQ(Now(*c.check.refit, "opening.width"), L("18 3/8"));
  EXPECT_EQ(Now(*c.check.refit, "D1.front.width"), L("19 7/8"));
}

// --- Cells and shims -----------------------------------------------------------------------------

// 16 wide at the bottom, 15 3/4 at the top. Every cell is as wide as at its own top; its box leaves
// 1/2 for each slide; at the slide line, lower down, it is wider by what the shims fill.
TEST(MeasuredCells, AreAsWideAsTheLeastOverTheirHeight) {
  const Checked c =
      MustCheck(Bank(R"("width": [{"at": 0, "size": 16}, {"at": 24, "size": "15 3/4"}])"));
  for (const MeasuredCell& cell : c.check.cells) {
    const Space& space = c.bank.spaces[static_cast<std::size_t>(cell.space)];
    const auto width_at = [](Length y) { return 16 * 25.4 - ToMillimeters(y) / 96; };
    EXPECT_NEAR(ToMillimeters(cell.width), width_at(space.cell.Top()), 1e-8);
    EXPECT_EQ(cell.box_width, FloorTo(cell.width - L("1"), L("1/32")));
    const double left_over = width_at(space.slide.line_y) - ToMillimeters(cell.box_width) - 25.4;
    EXPECT_NEAR(ToMillimeters(cell.shim_left + cell.shim_right), left_over, 1e-8);
    EXPECT_GE(cell.shim_left, Length());
  }
}

// The box as reckoned for a clear width is what the solver makes of an opening that wide.
TEST(MeasuredCells, BoxesAreWhatTheSolverMakes) {
  for (const char* keys :
       {R"("slides": {"type": "undermount"})", R"("box": {"corner": {"joint": "rabbet"}})",
        R"("box": {"corner": {"joint": "half-blind-dovetail"}})",
        R"("slides": {"type": "center-mount"}, "round": "1/16")"}) {
    const auto at = [&](const std::string& width) {
      return testing::MustSolve(R"({"opening": {"width": ")" + width +
                                R"(", "height": 24, "depth": 22}, "drawers": [{}], )" + keys + "}")
          .bank;
    };
    const tillwright::Bank planned = at("16");
    for (const char* width : {"15 3/4", "15 61/64", "16.01", "16 1/8"}) {
      EXPECT_EQ(BoxWidthIn(planned, planned.spaces[0], L(width)), at(width).spaces[0].box.width)
          << keys << " " << width;
    }
  }
}

TEST(MeasuredCells, ColumnsGiveTheirRightmostCellsWhatTheOpeningIsOffBy) {
  const Checked c = MustCheck(R"({"opening": {"width": 32, "height": 24, "depth": 22},
      "layout": {"columns": [{"drawer": {}}, {"drawer": {}}]},
      "measured": {"width": [{"at": 0, "size": "31 7/8"}]}})");
  EXPECT_EQ(c.check.cells[0].width, c.bank.spaces[0].cell.width);
  EXPECT_EQ(c.check.cells[1].width, c.bank.spaces[1].cell.width - L("1/8"));
}

TEST(MeasuredDepth, ASlideThatNoLongerFitsFails) {
  const Checked c = MustCheck(Bank(R"("depth": "20 1/4")"));
  EXPECT_EQ(LevelOf(c.check, CheckCode::kDepthMeasured, "D1"), Level::kFail);
  EXPECT_EQ(Now(*c.check.refit, "D1.box.depth"), L("18"));
}

}  // namespace
}  // namespace tillwright
