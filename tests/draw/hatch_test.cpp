#include "sheet/hatch.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tillwright {
namespace {

double Length(const PaperSegment& s) { return std::hypot(s.to.x - s.from.x, s.to.y - s.from.y); }

double Total(const HatchLines& hatch) {
  double total = 0;
  for (const PaperSegment& s : hatch.segments) total += Length(s);
  return total;
}

PaperPoint Middle(const PaperSegment& s) {
  return {(s.from.x + s.to.x) / 2, (s.from.y + s.to.y) / 2};
}

bool IsIn(const PaperBox& box, PaperPoint p, double slack) {
  return p.x >= box.left - slack && p.x <= box.right + slack && p.y >= box.top - slack &&
         p.y <= box.bottom + slack;
}

constexpr PaperBox kBox{20, 30, 60, 50};

TEST(HatchAtAngle, CoversTheAreaAtItsSpacing) {
  for (const double angle : {45.0, -45.0, 30.0, 0.0, 90.0}) {
    const HatchLines hatch = HatchAtAngle(AreaOf(kBox), angle, 1.25, Pen::kHatch);
    EXPECT_NEAR(Total(hatch) * 1.25, kBox.Width() * kBox.Height(), 45) << angle;
    for (const PaperSegment& s : hatch.segments) {
      EXPECT_TRUE(IsIn(kBox, s.from, 1e-9) && IsIn(kBox, s.to, 1e-9)) << angle;
    }
  }
}

TEST(HatchAtAngle, IsAnchoredToThePaperSoNeighborsLineUp) {
  const HatchLines whole = HatchAtAngle(AreaOf(kBox), 45, 1.25, Pen::kHatch);
  const HatchLines left = HatchAtAngle(AreaOf(PaperBox{20, 30, 37, 50}), 45, 1.25, Pen::kHatch);
  const HatchLines right = HatchAtAngle(AreaOf(PaperBox{37, 30, 60, 50}), 45, 1.25, Pen::kHatch);
  EXPECT_NEAR(Total(left) + Total(right), Total(whole), 0.2);
}

TEST(HatchAtAngle, LeavesHolesFreeAndStaysInsideTheWindow) {
  HatchArea area = AreaOf(kBox);
  area.box_holes.push_back({30, 35, 40, 45});
  area.disc_holes.push_back({{50, 40}, 4});
  area.window = PaperDisc{{40, 40}, 15};
  const HatchLines hatch = HatchAtAngle(area, 45, 1, Pen::kHatch);
  ASSERT_FALSE(hatch.segments.empty());
  for (const PaperSegment& s : hatch.segments) {
    const PaperPoint m = Middle(s);
    EXPECT_FALSE(IsIn({30, 35, 40, 45}, m, -1e-9));
    EXPECT_GE(std::hypot(m.x - 50, m.y - 40), 4 - 1e-9);
    for (const PaperPoint p : {s.from, s.to}) {
      EXPECT_LE(std::hypot(p.x - 40, p.y - 40), 15 + 1e-9);
    }
  }
}

TEST(HatchAtAngle, FollowsTheEvenOddRuleOfRings) {
  HatchArea area = AreaOf(kBox);
  area.rings.push_back({{30, 35}, {50, 35}, {50, 45}, {30, 45}});
  const double solid = Total(HatchAtAngle(AreaOf(kBox), 0, 1, Pen::kHatch));
  EXPECT_NEAR(Total(HatchAtAngle(area, 0, 1, Pen::kHatch)), solid - 20 * 10, 21);
}

TEST(HatchPatterns, StayInsideAndAreTheSameEveryTime) {
  HatchArea area = AreaOf(kBox);
  area.window = PaperDisc{{45, 42}, 14};
  const auto patterns = [&area] {
    return std::vector<HatchLines>{HatchPlies(area, PaperAxis::kVertical, 7, Pen::kHatch),
                                   HatchPlies(area, PaperAxis::kHorizontal, 5, Pen::kHatch),
                                   HatchEndGrain(area, {40, 70}, 2, Pen::kHatch),
                                   HatchEndGrain(area, {45, 42}, 2, Pen::kHatch),
                                   HatchLongGrain(area, PaperAxis::kVertical, 1.6, Pen::kHatch),
                                   HatchLongGrain(area, PaperAxis::kHorizontal, 1.6, Pen::kHatch)};
  };
  const std::vector<HatchLines> first = patterns();
  const std::vector<HatchLines> second = patterns();
  for (std::size_t i = 0; i < first.size(); ++i) {
    ASSERT_GT(first[i].segments.size(), 10U) << i;
    ASSERT_EQ(first[i].segments.size(), second[i].segments.size());
    for (std::size_t k = 0; k < first[i].segments.size(); ++k) {
      const PaperSegment& s = first[i].segments[k];
      EXPECT_EQ(s.from.x, second[i].segments[k].from.x);
      EXPECT_TRUE(IsIn(kBox, s.from, 1e-6) && IsIn(kBox, s.to, 1e-6)) << i;
      EXPECT_LE(std::hypot(s.to.x - 45, s.to.y - 42), 14 + 1e-6) << i;
    }
  }
}

TEST(HatchPlies, DrawsOneLineBetweenLayers) {
  const HatchLines hatch = HatchPlies(AreaOf(kBox), PaperAxis::kVertical, 1, Pen::kHatch);
  EXPECT_TRUE(hatch.segments.empty());
  const HatchLines three = HatchPlies(AreaOf(kBox), PaperAxis::kVertical, 3, Pen::kHatch);
  EXPECT_NEAR(three.segments[0].from.y, 30 + 20.0 / 3, 1e-9);
  EXPECT_NEAR(Length(three.segments[0]), 40, 1e-9);
}

TEST(HatchOfNothing, IsEmpty) {
  EXPECT_TRUE(HatchAtAngle({}, 45, 1, Pen::kHatch).segments.empty());
  EXPECT_TRUE(HatchEndGrain({}, {0, 0}, 1, Pen::kHatch).segments.empty());
  EXPECT_TRUE(HatchLongGrain({}, PaperAxis::kVertical, 1, Pen::kHatch).segments.empty());
}

TEST(ClipToArea, KeepsWhatIsInsideInOrder) {
  HatchArea area = AreaOf(kBox);
  area.box_holes.push_back({35, 0, 45, 100});
  const auto pieces = ClipToArea(area, {{10, 40}, {70, 40}});
  ASSERT_EQ(pieces.size(), 2U);
  EXPECT_NEAR(pieces[0].from.x, 20, 1e-9);
  EXPECT_NEAR(pieces[0].to.x, 35, 1e-9);
  EXPECT_NEAR(pieces[1].to.x, 60, 1e-9);
}

TEST(ClipToDisc, CutsPolylinesIntoOpenPiecesAndKeepsWholeOnes) {
  const PaperDisc disc{{0, 0}, 10};
  const Polyline inside = BoxOutline({-3, -3, 3, 3}, Pen::kCut);
  const auto whole = ClipToDisc(disc, inside);
  ASSERT_EQ(whole.size(), 1U);
  EXPECT_TRUE(whole[0].closed);
  const auto corner = ClipToDisc(disc, BoxOutline({0, 0, 30, 30}, Pen::kCut));
  ASSERT_EQ(corner.size(), 1U) << "the two sides through the corner are one piece";
  EXPECT_FALSE(corner[0].closed);
  EXPECT_EQ(corner[0].points.size(), 3U);
  EXPECT_TRUE(ClipToDisc(disc, BoxOutline({20, 20, 30, 30}, Pen::kCut)).empty());
  EXPECT_TRUE(ClipToDisc(disc, PaperSegment{{20, 0}, {30, 0}}).empty());
}

}  // namespace
}  // namespace tillwright
