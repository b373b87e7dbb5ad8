#include "sheet/dimension.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

#include "sheet/rich_text.h"
#include "support/layout_faults.h"

namespace tillwright {
namespace {

template <class T>
std::vector<T> All(const SheetGroup& group) {
  std::vector<T> found;
  for (const Primitive& p : group.primitives) {
    if (const T* one = std::get_if<T>(&p)) found.push_back(*one);
  }
  return found;
}

const Label& LabelAt(const std::vector<Label>& labels, const std::string& path) {
  const auto found = std::find_if(labels.begin(), labels.end(),
                                  [&](const Label& label) { return label.path == path; });
  EXPECT_NE(found, labels.end()) << path;
  return *found;
}

std::vector<Polyline> LinesAt(const SheetGroup& group, double y) {
  std::vector<Polyline> found;
  for (const Polyline& line : All<Polyline>(group)) {
    if (line.points.size() == 2 && std::abs(line.points[0].y - y) < 1e-9 &&
        std::abs(line.points[1].y - y) < 1e-9) {
      found.push_back(line);
    }
  }
  return found;
}

class DimensionTest : public testing::Test {
 protected:
  // Two tiers left of an object whose left edge is at x = 100.
  DimensionTest() {
    stack_.side = PaperSide::kLeft;
    stack_.edge = 100;
    stack_.tiers.push_back(
        {{40, 40.4, 60, 60.4, 80, 80.4},
         {{"1/8", "gap.0"}, {"6 1/8", "D1"}, {"1/8", "gap.1"}, {"6 1/8", "D2"}, {"1/8", "gap.2"}}});
    stack_.tiers.push_back({{40, 80.4}, {{"12 5/8", "height"}}});
  }

  FixedTextMetrics metrics_;
  DimensionStyle style_;
  DimensionStack stack_;
  SheetGroup group_;
};

TEST_F(DimensionTest, EveryTextAppearsOnceWithItsPath) {
  AddDimensionStack(group_, stack_, style_, metrics_);
  const std::vector<Label> labels = All<Label>(group_);
  ASSERT_EQ(labels.size(), 6U);
  EXPECT_EQ(LabelAt(labels, "D1").plain, "6 1/8");
  EXPECT_EQ(LabelAt(labels, "height").plain, "12 5/8");
}

TEST_F(DimensionTest, OneExtensionLineALevelRunsToTheOutermostTierThatUsesIt) {
  AddDimensionStack(group_, stack_, style_, metrics_);
  const std::vector<Polyline> top = LinesAt(group_, 40);
  ASSERT_EQ(top.size(), 1U);
  EXPECT_DOUBLE_EQ(top[0].points[0].x, 99) << "1 mm gap at the object";
  const std::vector<Polyline> inner = LinesAt(group_, 60);
  ASSERT_EQ(inner.size(), 1U);
  EXPECT_GT(inner[0].points[1].x, top[0].points[1].x + 10);
}

TEST_F(DimensionTest, NarrowPairsGetThinTicksAndNoOvershoot) {
  AddDimensionStack(group_, stack_, style_, metrics_);
  double inner_line = 0;
  for (const Tick& tick : All<Tick>(group_)) {
    const bool narrow = std::abs(tick.at.y - 60) < 0.5;
    if (narrow) inner_line = tick.at.x;
    EXPECT_EQ(tick.pen == Pen::kDimension, tick.at.x > 80) << tick.at.x;
  }
  EXPECT_DOUBLE_EQ(LinesAt(group_, 60)[0].points[1].x, inner_line);
}

TEST_F(DimensionTest, TextStandsInTheLineWhereItFitsElseInAColumnBeyond) {
  AddDimensionStack(group_, stack_, style_, metrics_);
  const std::vector<Label> labels = All<Label>(group_);
  const double line = LabelAt(labels, "D1").box.Center().x;
  EXPECT_NEAR(line, 100 - style_.first_offset, 1e-9);
  EXPECT_LT(LabelAt(labels, "gap.1").box.right, line - 4);
  EXPECT_NEAR(LabelAt(labels, "gap.1").box.Center().y, 60.2, 1e-9);
  EXPECT_LT(LabelAt(labels, "gap.0").box.bottom, 40) << "beyond the end of the chain";
  EXPECT_GT(LabelAt(labels, "gap.2").box.top, 80.4);
}

TEST_F(DimensionTest, TheDimensionLineIsBrokenAtItsText) {
  AddDimensionStack(group_, stack_, style_, metrics_);
  const Label d1 = LabelAt(All<Label>(group_), "D1");
  const double x = d1.box.Center().x;
  int pieces = 0;
  for (const Polyline& line : All<Polyline>(group_)) {
    if (std::abs(line.points[0].x - x) > 1e-9 || std::abs(line.points[1].x - x) > 1e-9) continue;
    ++pieces;
    EXPECT_TRUE(line.points[1].y < d1.box.top || line.points[0].y > d1.box.bottom);
  }
  EXPECT_EQ(pieces, 3);
}

TEST_F(DimensionTest, MirroredSidesGiveMirroredLines) {
  AddDimensionStack(group_, stack_, style_, metrics_);
  SheetGroup other;
  stack_.side = PaperSide::kRight;
  AddDimensionStack(other, stack_, style_, metrics_);
  const std::vector<Polyline> left = All<Polyline>(group_);
  const std::vector<Polyline> right = All<Polyline>(other);
  ASSERT_EQ(left.size(), right.size());
  for (std::size_t i = 0; i < left.size(); ++i) {
    for (std::size_t k = 0; k < left[i].points.size(); ++k) {
      EXPECT_NEAR(left[i].points[k].x + right[i].points[k].x, 200, 1e-9);
    }
  }
}

TEST_F(DimensionTest, ExtensionLinesStartWhereTold) {
  stack_.starts.push_back({60, 110});
  AddDimensionStack(group_, stack_, style_, metrics_);
  EXPECT_DOUBLE_EQ(LinesAt(group_, 60)[0].points[0].x, 109);
}

TEST_F(DimensionTest, SegmentsWithoutTextHaveNoLineAndNoTicks) {
  stack_.tiers = {{{10, 30, 50}, {{"", ""}, {"20", "x"}}}};
  AddDimensionStack(group_, stack_, style_, metrics_);
  EXPECT_EQ(All<Tick>(group_).size(), 2U);
  EXPECT_TRUE(LinesAt(group_, 10).empty());
}

TEST_F(DimensionTest, HorizontalEndTextsStandBeyondTheExtendedLine) {
  stack_.side = PaperSide::kBelow;
  AddDimensionStack(group_, stack_, style_, metrics_);
  const std::vector<Label> labels = All<Label>(group_);
  EXPECT_LT(LabelAt(labels, "gap.0").box.right, 40 - 2);
  EXPECT_GT(LabelAt(labels, "gap.2").box.left, 80.4 + 2);
  EXPECT_NEAR(LabelAt(labels, "gap.0").box.Center().y, LabelAt(labels, "D1").box.Center().y, 1e-9);
}

TEST_F(DimensionTest, AnEmptyStackDrawsNothing) {
  stack_.tiers.clear();
  EXPECT_TRUE(IsEmpty(AddDimensionStack(group_, stack_, style_, metrics_)));
}

// Chains of scattered sizes, with every second and then every station in outer tiers.
DimensionStack Scattered(std::uint32_t seed, PaperSide side) {
  const auto next = [&seed](std::uint32_t n) {
    seed = seed * 1664525U + 1013904223U;
    return (seed >> 16U) % n;
  };
  const std::vector<std::string> texts{"1/8", "3/4", "15 15/32", "9", "127.5", "2 1/2"};
  DimensionStack stack{side, 300, {}, {}};
  DimensionChain parts{{300}, {}};
  const std::uint32_t count = 3 + next(9);
  for (std::uint32_t i = 0; i < count; ++i) {
    const double step = next(3) == 0 ? 0.4 : 3 + 0.25 * next(80);
    parts.stations.push_back(parts.stations.back() + step);
    parts.texts.push_back({texts[next(6)], "p"});
  }
  DimensionChain groups{{300}, {}};
  for (std::size_t i = 2; i + 1 < parts.stations.size(); i += 3) {
    if (parts.stations[i] - groups.stations.back() < 3) continue;
    groups.stations.push_back(parts.stations[i]);
    groups.texts.push_back({texts[next(6)], "g"});
  }
  groups.stations.push_back(parts.stations.back());
  groups.texts.push_back({"88", "g"});
  stack.tiers = {parts, groups, {{300, parts.stations.back()}, {{"400", "o"}}}};
  return stack;
}

TEST_F(DimensionTest, ScatteredStacksHaveNoLayoutFaults) {
  for (const PaperSide side :
       {PaperSide::kLeft, PaperSide::kRight, PaperSide::kAbove, PaperSide::kBelow}) {
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
      Sheet sheet{.width = 900, .height = 900};
      SheetGroup& group = AddGroup(sheet, "g", "G", 0);
      AddDimensionStack(group, Scattered(seed, side), style_, metrics_);
      const auto faults = FindLayoutFaults(sheet, metrics_);
      EXPECT_TRUE(faults.empty()) << "side " << static_cast<int>(side) << " seed " << seed << "\n"
                                  << DescribeFaults(faults);
    }
  }
}

class SingleDimensionTest : public testing::Test {
 protected:
  SheetGroup Draw(double length) {
    SheetGroup group;
    const SingleDimension d{PaperSide::kAbove, 50,    50 + length, 20, 30, 30,
                            {"12", "w"},       false, false};
    AddSingleDimension(group, d, DimensionStyle(), metrics_);
    return group;
  }
  FixedTextMetrics metrics_;
};

TEST_F(SingleDimensionTest, WideOnesHoldTextAndArrowsInside) {
  const SheetGroup group = Draw(30);
  EXPECT_NEAR(All<Label>(group)[0].box.Center().x, 65, 1e-9);
  EXPECT_DOUBLE_EQ(All<Arrowhead>(group)[0].direction, 180);
  EXPECT_DOUBLE_EQ(All<Arrowhead>(group)[1].direction, 0);
}

TEST_F(SingleDimensionTest, MiddlingOnesPutTheTextBeyondAndKeepArrowsInside) {
  const SheetGroup group = Draw(8);
  EXPECT_GT(All<Label>(group)[0].box.left, 58 + 2);
  EXPECT_DOUBLE_EQ(All<Arrowhead>(group)[0].direction, 180);
}

TEST_F(SingleDimensionTest, SmallOnesHaveArrowsOutsidePointingIn) {
  const SheetGroup group = Draw(2);
  EXPECT_DOUBLE_EQ(All<Arrowhead>(group)[0].direction, 0);
  EXPECT_DOUBLE_EQ(All<Arrowhead>(group)[0].tip.x, 50);
  EXPECT_DOUBLE_EQ(All<Arrowhead>(group)[1].direction, 180);
  EXPECT_GT(All<Label>(group)[0].box.left, 52 + 5);
}

TEST_F(SingleDimensionTest, NoneHasLayoutFaultsAtAnyLength) {
  for (const PaperSide side :
       {PaperSide::kLeft, PaperSide::kRight, PaperSide::kAbove, PaperSide::kBelow}) {
    for (double length = 0.3; length < 25; length += 0.3) {
      for (const bool flag : {false, true}) {
        Sheet sheet{.width = 200, .height = 200};
        SheetGroup& group = AddGroup(sheet, "g", "G", 0);
        const SingleDimension d{side, 80, 80 + length, 60, 80, 85, {"1 1/2", "w"}, flag, !flag};
        AddSingleDimension(group, d, DimensionStyle(), metrics_);
        const auto faults = FindLayoutFaults(sheet, metrics_);
        ASSERT_TRUE(faults.empty()) << length << DescribeFaults(faults);
      }
    }
  }
}

TEST(OrdinateColumn, FansOutPairsSymmetricallyUnderItsHeading) {
  const FixedTextMetrics metrics;
  Sheet sheet{.width = 200, .height = 200};
  SheetGroup& group = AddGroup(sheet, "g", "G", 0);
  const OrdinateColumn column{PaperSide::kRight,
                              100,
                              8,
                              {{50, "29 7/8", "a"}, {80, "12", "b"}, {80.4, "11 7/8", "c"}},
                              "FROM FLOOR"};
  AddOrdinateColumn(group, column, DimensionStyle(), metrics);
  const std::vector<Label> labels = All<Label>(group);
  ASSERT_EQ(labels.size(), 4U);
  EXPECT_DOUBLE_EQ(labels[0].box.Center().y, 50);
  EXPECT_NEAR(80 - labels[1].box.Center().y, labels[2].box.Center().y - 80.4, 1e-9);
  EXPECT_EQ(labels[3].plain, "FROM FLOOR");
  EXPECT_LT(labels[3].box.bottom, labels[0].box.top);
  EXPECT_TRUE(FindLayoutFaults(sheet, metrics).empty());
}

}  // namespace
}  // namespace tillwright
