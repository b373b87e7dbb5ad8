// Templates at full scale: their holes and edges are as far apart as the solved dimensions.
#include <gtest/gtest.h>

#include <algorithm>

#include "draw/view_cases.h"
#include "support/specs.h"
#include "tillwright/render.h"
#include "tillwright/stick.h"

namespace tillwright::testing {
namespace {

// The holes of a template, from the left, and its cut line.
struct Drawn {
  std::vector<PaperPoint> holes;
  std::vector<PaperSegment> cuts;
};

std::vector<Drawn> TemplatesOf(const Bank& bank, const std::string& kind,
                               const StickOptions& options) {
  std::vector<Drawn> all;
  for (const Sheet& sheet : DrawSticks(bank, options, DrawingFontMetrics()).sheets) {
    for (const SheetGroup& group : sheet.groups) {
      if (!group.id.starts_with("template-" + kind)) continue;
      Drawn& drawn = all.emplace_back();
      for (const Primitive& primitive : group.primitives) {
        if (const Circle* circle = std::get_if<Circle>(&primitive)) {
          drawn.holes.push_back(circle->center);
        }
        const Polyline* line = std::get_if<Polyline>(&primitive);
        if (line != nullptr && line->pen == Pen::kCutLine) {
          drawn.cuts.push_back({line->points[0], line->points[1]});
        }
      }
      std::ranges::sort(drawn.holes, {}, &PaperPoint::x);
    }
  }
  return all;
}

Bank BankWith(const std::string& rest) {
  return MustSolve(R"({"units": "mm", "opening": {"width": 500, "height": 600, "depth": 550}, )" +
                   rest + "}")
      .bank;
}

TEST(StickTemplateTest, PullHolesAreWhereTheFrontHasThem) {
  const Bank bank = BankWith(R"("fronts": {"pull": {"centers": 96, "down": 50}},
                                "drawers": [{}, {}, {}])");
  const std::vector<Drawn> pulls = TemplatesOf(bank, "pull", {});
  ASSERT_EQ(pulls.size(), 1U) << "three fronts alike share a template";
  ASSERT_EQ(pulls[0].holes.size(), 2U);
  ASSERT_EQ(pulls[0].cuts.size(), 1U);
  EXPECT_NEAR(pulls[0].holes[1].x - pulls[0].holes[0].x, 96, 1e-9);
  EXPECT_NEAR(pulls[0].holes[0].y - pulls[0].cuts[0].from.y, 50, 1e-9);
}

TEST(StickTemplateTest, FrontsThatDifferHaveTheirOwn) {
  const Bank bank = BankWith(R"("fronts": {"pull": {}}, "drawers": [{"exact": 100}, {}, {}])");
  EXPECT_EQ(TemplatesOf(bank, "pull", {}).size(), 2U);
  EXPECT_EQ(TemplatesOf(BankWith(R"("drawers": [{}])"), "pull", {}).size(), 0U);
}

// 37 mm and 32 mm: common practice of the 32 mm system, no source.
TEST(StickTemplateTest, SlideScrewsStandInRowsFromTheFrontEdge) {
  const std::vector<Drawn> slides = TemplatesOf(BankWith(R"("drawers": [{}, {}])"), "slide", {});
  ASSERT_EQ(slides.size(), 1U);
  ASSERT_GE(slides[0].holes.size(), 4U);
  ASSERT_EQ(slides[0].cuts.size(), 1U);
  EXPECT_NEAR(slides[0].holes[0].x - slides[0].cuts[0].from.x, 37, 1e-9);
  for (std::size_t i = 1; i < slides[0].holes.size(); ++i) {
    EXPECT_NEAR(slides[0].holes[i].x - slides[0].holes[i - 1].x, 32, 1e-9);
  }
}

TEST(StickTemplateTest, MirroredTheFrontEdgeIsAtTheRight) {
  StickOptions options;
  options.mirror = true;
  const std::vector<Drawn> slides =
      TemplatesOf(BankWith(R"("drawers": [{}, {}])"), "slide", options);
  ASSERT_EQ(slides.size(), 1U);
  EXPECT_NEAR(slides[0].cuts[0].from.x - slides[0].holes.back().x, 37, 1e-9);
}

TEST(StickTemplateTest, RunnersAndGuidesHaveNoScrewsInTheSide) {
  for (const char* type : {"wood-runner", "center-mount"}) {
    const Bank bank =
        BankWith(R"("slides": {"type": ")" + std::string(type) + R"("}, "drawers": [{}])");
    EXPECT_TRUE(TemplatesOf(bank, "slide", {}).empty()) << type;
  }
}

TEST(StickTemplateTest, ACorrectionStretchesThem) {
  StickOptions options;
  options.correct_x = 1.01;
  options.correct_y = 0.99;
  const Bank bank = BankWith(R"("fronts": {"pull": {"centers": 96, "down": 50}}, "drawers": [{}])");
  const std::vector<Drawn> pulls = TemplatesOf(bank, "pull", options);
  ASSERT_EQ(pulls.size(), 1U);
  EXPECT_NEAR(pulls[0].holes[1].x - pulls[0].holes[0].x, 96 * 1.01, 1e-9);
  EXPECT_NEAR(pulls[0].holes[0].y - pulls[0].cuts[0].from.y, 50 * 0.99, 1e-9);
}

// The section of the box side: its corners are at thickness, groove and height as solved.
TEST(StickTemplateTest, TheGrooveIsDrawnAsSolved) {
  const Bank bank = BankWith(R"("box": {"side": {"thickness": 12},
      "bottom": {"thickness": 6, "depth": 5, "up": 9}}, "drawers": [{}])");
  for (const Sheet& sheet : DrawSticks(bank, {}, DrawingFontMetrics()).sheets) {
    for (const SheetGroup& group : sheet.groups) {
      if (!group.id.starts_with("template-groove")) continue;
      for (const Primitive& primitive : group.primitives) {
        const Polyline* side = std::get_if<Polyline>(&primitive);
        if (side == nullptr || !side->closed) continue;
        ASSERT_EQ(side->points.size(), 8U);
        const PaperPoint foot = side->points[7];  // the outer lower corner
        const auto expect = [&](std::size_t i, double x, double up) {
          EXPECT_NEAR(side->points[i].x - foot.x, x, 1e-9) << i;
          EXPECT_NEAR(foot.y - side->points[i].y, up, 1e-9) << i;
        };
        expect(2, 12, 15);
        expect(3, 7, 15);
        expect(4, 7, 9);
        expect(5, 12, 9);
        expect(6, 12, 0);
        return;
      }
    }
  }
  FAIL() << "no groove is drawn";
}

}  // namespace
}  // namespace tillwright::testing
